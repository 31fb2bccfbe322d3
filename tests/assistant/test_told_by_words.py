"""What a line after an answer tells by its words: a length by those after it, how many go in at each place."""

from __future__ import annotations

import pytest

from tests.talking import last

NAILS = ("14 courses, each 36 ft long, a nail every 16 inches, nails total",)
SPINDLES = ("spindles are 41 mm square, 1845 clear between the newels, thirteen of them and a gap at both ends too, what gap",)
STRAPS = ("battens at 450 centres along 14.2 metres of wall, how many battens",)
LADDER = ("ladder against an eave at eighteen foot, how far out does the foot go",)
CROWN = ("crown with a 38 spring on a 92 corner, miter?", "and the bevel?")


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        ((*NAILS, "two nails at each spot"), 784, "count"),
        ((*NAILS, "put three in every one"), 1176, "count"),
        ((*NAILS, "two per spot", "boxes of 250, how many boxes"), 4, "count"),
        ((*SPINDLES, "I've measured it again and it's 1795 between newels"), 90.14, "mm"),
        ((*SPINDLES, "try fourteen", "no hang on, it's 1795 between the newels"), 81.4, "mm"),
        ((*STRAPS, "and at 600"), 25, "count"),
        (("eleven balusters 1 1/2 inch wide between posts 72 inches apart, gaps at both ends too, what gap",
          "and if the posts were really 70 1/2 inches apart"), 4.5, "in"),
        (("nail for 16 board, 45 batten", "30 into the stud", "with 60 insulation in there", "40 into the stud"), 161, "mm"),
        (("lap siding on a 102 inch wall, 4 at most, what exposure", "courses at 5 inch at most"), 4.857, "in"),
        (("lap siding on a 9 foot 4 wall, 6 1/2 at most, what exposure", "the tape says 9'1\" on this side, exposure there?"),
         6.4118, "in"),
        ((*SPINDLES, "hold on, circumference of a 110 mm soil pipe"), 345.58, "mm"),
        (("14 inch round column, how far round", "plus inch and a half for the lap"), 45.48, "in"),
        (("14 inch round column, how far round", "and two inches for the overlap"), 45.98, "in"),
        (("underlay for 1200 square feet, rolls of 3 by 66 feet, 4 inch laps, how many rolls", "and 6 inches for the lap"),
         8, "count"),
        ((*CROWN, "bevel with an 88 corner"), 34.53, "deg"),
        ((*CROWN, "bevel with an 88 corner", "now the miter for it if the spring is 45"), 36.21, "deg"),
    ],
)  # fmt: skip
def test_the_words_tell_it(lines: tuple[str, ...], value: float, unit: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    near = 0.51 if unit == "mm" else 0.01
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(value, abs=near), unit)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        ((*STRAPS, "each one stands 2.4 high, so what length of batten in total"), 79200),
        ((*STRAPS, "they stand 2.4 high, so what total length", "how many 4.8 metre lengths to get all those"), 17),
        ((*LADDER, "how long a ladder do I want to stick 3 foot past it"), 259.76),
        ((*LADDER, "and at 13 foot 6", "back to the 18 footer: how long a ladder do I want to stick 3 foot past it"), 259.76),
        ((*SPINDLES, "what's that middle to middle"), 134.71),
    ],
)
def test_it_is_read_off_the_page(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "noted", record["say"]
    assert any(line["value"] == pytest.approx(value, abs=0.51) for line in record["also"]), record["also"]


@pytest.mark.parametrize(
    "lines",
    [
        (*LADDER, "how long a ladder do I want to stick 4 foot past it"),  # which is no height it bears at
        (*SPINDLES, "the newels are 90 square"),
    ],
)
def test_it_is_not_taken_for_another_given(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] != "answered"
