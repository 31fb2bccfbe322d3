"""A layer that is left of a whole depth, counts whose size is not told, and what is asked of a screw of known length."""

from __future__ import annotations

import pytest

from tests.talking import last

WORKED = (
    (("I've got a customer who wants the siding to stick out exactly 2 and a half inches from the stud, I've half inch ply and"
      " 7/16 siding, what strapping does that leave me",), 1.5625),
    (("face has to be 2 1/2 off the stud, 1/2 ply and 7/16 siding, how thick a strapping",), 1.5625),
    (("jamb is 4 9/16, wall is 3 1/2 plus 1/2 ply, what's left for the strapping",), 0.5625),
    (("what strapping do I need to get 2 1/2 from 1/2 ply and 7/16 siding",), 1.5625),
    (("total depth 3 inches, ply 1/2 and foam 1 1/2, how much strapping is that",), 1.0),
    (("how far out is the face with 2 1/2 foam, 1/2 ply and 7/16 siding",), 3.4375),
    (("3/4 strapping 7/16 osb screw 2 1/2, bite?",), 1.3125),
    (("3/4 strapping, 7/16 osb, 2 1/2 bite, how long a screw",), 3.6875),
    (("12 3/8 and 2 gaps of 1/8",), 12.625),
    (("40 1/2 and 3 joints at 1/4",), 41.25),
    (("96 less 2 plts 1 1/2 ea",), 93),
    (("96 less 2 plates at 1 1/2", "less 3 plates"), 91.5),
    (("thirty six inches divided buy for",), 9),
)  # fmt: skip


@pytest.mark.parametrize(("lines", "value"), WORKED)
def test_it_comes_to(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["answer"]["unit"]) == ("answered", "in")
    assert record["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    "lines",
    [
        ("96 less 2 plates 1 1/2 each", "less 3 plates"),
        ("96 1/2 less 2", "less 3 posts"),
        ("ladder at 15 feet", "what if it's only 3 feet out"),
    ],
)
def test_a_count_is_no_size(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] in ("asks", "declined")


@pytest.mark.parametrize(
    ("line", "layers"),
    [
        ("strapping 25, cladding 21, ply 15, screw needs 40 in the stud", "25 mm strapping, 21 mm cladding, 15 mm ply"),
        ("ply 15, strapping 25, cladding 21, screw needs 40 in the stud", "15 mm ply, 25 mm strapping, 21 mm cladding"),
        ("18 larch and 38 batten with 35 in the wood, screw", "18 mm larch, 38 mm batten"),
    ],
)
def test_a_layer_has_its_own_name(line: str, layers: str) -> None:
    assert next(given["text"] for given in last(line)["givens"] if given["name"] == "layers") == layers


@pytest.mark.parametrize(
    ("line", "size", "value"),
    [("96 less 2 plates", "1 1/2", 93), ("12 foot less 2 boards", "5 1/2", 133)],
)
def test_what_size_they_are_is_asked(line: str, size: str, value: float) -> None:
    assert last(line)["ask"].startswith("What size is each of the ")
    assert last(line, size)["answer"]["value"] == pytest.approx(value)


def test_what_the_saw_takes_comes_off() -> None:
    assert last("84 minus 3 1/2", "the blade takes an eighth")["answer"]["value"] == pytest.approx(80.375)
    assert last("3.6 metres off 5.1", "and the saw takes 3")["outcome"] == "asks"
    assert last("3 metres less 450 mm", "and off that take 1275 mil")["answer"]["value"] == pytest.approx(1275)


def test_a_bite_beside_a_screw_is_what_the_screw_holds() -> None:
    record = last("3/4 strp 7/16 osb scr 2 1/2 bite?")
    assert (record["topic"], record["answer"]["value"]) == ("fastener penetration", 1.3125)
