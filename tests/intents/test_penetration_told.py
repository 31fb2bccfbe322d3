"""How far a fastener holds: its own length, every layer as often as it is there, and what is named without a thickness."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("60 mm screw, two 13 mm plasterboards - how much thread in the stud", 34 / 25.4),
        ("screw is 5 inches. Two layers of 1 1/2 inch foam plus three quarter batten. How much holds?", 1.25),
        ("two three-quarter battens crossed, half inch sheathing, three and a half inch nail: what hold in stud", 1.5),
        ("6 inch structural screw, 2 inch foam twice, 3/4 furring, embedment in the stud", 1.25),
        ("a 75 mm nail thru 2 x 12 mm ply, how much in the joist", 51 / 25.4),
        ("stud bite: 3-1/2 screw less 1 layer 1-1/8 trim, 1 layer 1/2 ply", 1.875),
        ("two and a half inch ring shank through half inch siding and 3/4 strapping what have i got in the stud", 1.25),
        ("fixing 22 mm larch on with 60 mm nails straight through a 12 mm board. How much nail in the stud?", 26 / 25.4),
        ("screw 7 in / foam 3 in / batten 1-1/2 / sheathing 5/8 - embedment", 1.875),
        ("box of 2 1/2 inch #8 screws, going through 1/2 drywall and 3/4 strapping, how much gets in the stud", 1.25),
        ("skirt board, inch. Half-inch ply. Three inch screw. How deep in?", 1.5),
        ("joist bite? inch deck board, two and a half inch screw", 1.5),
        ("nail 50 mm, board 19 mm, batten 38 mm deep, how far into the batten", 31 / 25.4),
        ("what length is left in the stud if my screw is four and a half inches, layers 1 inch foam and 3/4 strap", 2.75),
    ],
)
def test_it_holds(line: str, value: float) -> None:
    record = last(line)
    assert (record["outcome"], record["topic"]) == ("answered", "fastener penetration")
    assert record["answer"]["value"] / (25.4 if record["answer"]["unit"] == "mm" else 1) == pytest.approx(value, abs=0.001)


@pytest.mark.parametrize(
    ("line", "ask"),
    [
        ("80 mm screw, 19 mm cladding with some battens behind, embedment?", "batten"),
        ("3 inch screw through drywall and 3/4 strapping, how much bite", "drywall"),
        ("3 inch nail, siding and 3/4 strapping, how much bite", "siding"),
        ("3 inch screws at 16 centres through 3/4 strapping, bite", "16"),
    ],
)
def test_what_has_no_thickness_or_place_is_asked_about(line: str, ask: str) -> None:
    record = last(line)
    assert record["outcome"] == "asks"
    assert ask in record["ask"]


def test_what_is_wanted_is_held_against_what_holds() -> None:
    record = last("2 1/2 inch nail, three quarter siding, need 1 1/4 in the stud, is it enough")
    assert record["answer"]["value"] == 1.75
    assert "1 1/4 in: yes, it is as much" in record["say"]


def test_a_length_that_is_asked_for_stays_asked() -> None:
    assert last("what length screw for 3/4 siding and 1/2 ply with 1 1/4 in the stud")["topic"] == "fastener length"
