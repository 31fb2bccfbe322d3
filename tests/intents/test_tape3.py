"""Sums by the rules of the trade: what each length does, and that it answers where those and what was learned agree."""

from __future__ import annotations

import pytest

from assistant.desk import Desk
from intents.chart import chart_of
from intents.matcher import speller
from intents.phrases import compiled
from intents.second_sums import lengths_of
from intents.sum_cues import Line
from intents.sum_told import Told, told_by_rules
from intents.whole_sums import sizes_of
from solvers.quantities import Number


def ruled(text: str) -> Told | None:
    """What the rules make of each quantity of a sentence."""
    chart = chart_of(text, compiled(), speller())
    found = lengths_of(chart)
    values = [mention.reading.value for mention in found]
    may = [isinstance(value, Number) and value.value.denominator == 1 and value.value > 1 for value in values]
    return told_by_rules(Line(chart.words, [(m.start, m.end) for m in found], sizes_of(found), may))


@pytest.mark.parametrize(
    ("text", "roles"),
    [
        ("the bay is 41 1/2 between the posts and I want 3/16 play each side, what gate width", ("+", "--")),
        ("panel shows 22 1/4 and the tongues are 3/8 on each end, panel length", ("+", "++")),
        ("cupboard is 900 outside, gables 18 each side, clear inside", ("+", "--")),
        ("opening 36 1/4, casings 3 1/2 each side, outside to outside", ("+", "++")),
        ("the bay clear is 1650 and a post is 90, posts at what centres", ("+", "+")),
        ("seven joists at 1 1/2 with six spaces of 14 1/2, overall", ("xn", "+", "xn", "+")),
        ("they dug it 4 ft deep, then put 8 inches of stone in, how much is there up to grade", ("+", "-")),
    ],
)
def test_what_each_length_does(text: str, roles: tuple[str, ...]) -> None:
    found = ruled(text)
    assert found is not None
    assert found[0] == roles


@pytest.mark.parametrize(
    "text",
    [
        "opening 36 1/4, the casings are 3 1/2, outside",  # one of them, or both
        "the line is 48 off the floor, the new floor comes up 2, how high is the line off the floor",
    ],
)
def test_what_is_open_is_no_sum(text: str) -> None:
    assert ruled(text) is None


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("from a 10 footer I cut 41 3/4 and 27 1/8, the saw eats 1/8 in those two cuts, what's left", 50.875),
        ("from an 8 footer I cut 31 and 22 1/2, the blade takes 1/8 in those two cuts, what's left", 42.25),
        ("bisect the 11 ft 3 run", 67.5),
        ("the old door was 79 1/2, the floor's coming up 3/4, I want 3/8 clear underneath, what do I trim the door to", 78.375),
    ],
)
def test_conversations(text: str, inches: float) -> None:
    with Desk(keep=False) as desk:
        record = desk.answer(text)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert float(record["answer"]["value"]) == pytest.approx(inches)
