"""What found a place, but can't be what it was taken for, is put right or asked about."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        # Nothing says that a size holds: it is the thickness of the layer it stands after, or is asked about.
        ("furring measured 5/8. Boards are 7/8, ply's 1/2. Nail length?", "penetration"),
        ("nobody told me how far into the framing. 3/4 board over 1/2 strips over 7/16 sheathing, which screw", "penetration"),
        ("nail length for 5/8 siding and 1/2 ply, my brother said 1 1/2 to me", "1 1/2"),
        # A face stands off by all its layers.
        ("how proud of the studs is the face with 1/2 sheathing?", "other layers"),
        ("we left out the 6 mm mesh, what does that do to the face", "other layers"),
        # A number in the middle of a list that is none of its sizes, and a part of an inch nobody knows.
        ("build out haff inch ply, three quarter strap, 5/8 boards", "haff inch"),
        # A size of the stock, and a count, are no legs of a bend.
        ("girth of an L with 3 in and 5 in legs for the base, 12 ft lengths", ""),
        # An exposure that is aimed at, and another that it may not pass.
        ("course layout 110 inches, aiming for 7 but never over 7 1/4", "7"),
        # What is asked at the end is no answer of the topic.
        ("with 1/2 inch gaps 26 ft wide at 7/12, boards 6 in to the weather, what will the siding cost", ""),
        # The length of the pieces, not of what they stand in.
        ("what gap for 7 slats 3 1/2 wide, they're cedar and 6 foot long", "6 foot"),
        # Two end panels are no panel of 2 in, two corners no length.
        ("rip the two end panels so they balance, wall is 27 foot 4", "cover"),
        ("wall 11.5 m long needs panels and matching end cuts, 3 corners are done", "cover"),
        # The panels' own length is not the run.
        ("Soffit's 500 mm deep, the panels cover 300 mm and are 3 m long. How many?", "run"),
    ],
)
def test_what_is_asked(said: str, asked: str) -> None:
    record = last(said)
    assert record["outcome"] != "answered"
    assert asked.lower() in (record["ask"] or record["say"]).lower()


@pytest.mark.parametrize(
    ("lines", "unit", "value"),
    [
        (["furring measured 5/8. Boards are 7/8, ply's 1/2. Nail length?", "1 1/4"], "in", 3.25),
        (["fixing for 18 mm board on 45 mm battens, 35 mm into the batten"], "mm", 53),
        (["screw for a 20 mm board and 30 mm batten on 12 mm OSB, with 45 in the stud behind"], "mm", 107),
        (["12 mm OSB, 60 rigid, 25 batten, 18 board. jamb extension?"], "mm", 115),
        (["fixings for 20 battens of 1800 with a fixing each 300"], "count", 140),
        # "is 11.4 m" states the run, and asks nothing of the answer.
        (["The soffit is 11.4 m in length and 450 mm deep. Panels cover 300 mm. How many panels?"], "count", 38),
        (["attic thirty by forty foot one to one fifty rule how many square inches of vent"], "in2", 1152),
    ],
)
def test_what_it_comes_to(lines: list[str], unit: str, value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["ask"]
    answer = record["answer"]
    got = answer["value"] * (25.4 if (unit, answer["unit"]) == ("mm", "in") else 1)
    assert got == pytest.approx(value)
    assert answer["unit"] == unit or (unit, answer["unit"]) == ("mm", "in")
