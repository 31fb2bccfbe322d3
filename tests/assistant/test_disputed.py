"""Sums that are said to be wrong, or to be done otherwise, and sums that only metres make more than nothing."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("lines", "says"),
    [
        (("7/8 plus 5/8", "that's wrong it's 1 and a half"), "is my length"),
        (("12 3/8 plus 5 5/8", "that's wrong, it's 18"), "is my length"),
        (("12 3/8 plus 5 5/8", "that's not right, it's 17 7/8"), "1/8 inch less than my length"),
        (("half of 37", "that's not right, it's 19"), "0.5 more than my result"),
    ],
)
def test_what_it_should_come_to_is_compared(lines: tuple[str, ...], says: str) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"], says in record["say"]) == ("noted", "compare", True)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("what's 22 1/2 times 3", "no divided by 3"), 7.5),
        (("what's 22 1/2 times 3", "no, plus 3"), 25.5),
        (("12 less 3 1/2", "no, plus 3 1/2"), 15.5),
        (("12 less 3 less 2", "no, plus 2"), 11),
        (("12 3/8 plus 5 5/8", "no, minus 5 5/8"), 6.75),
        (("1.8 less 45 less 45",), 1710),
        (("1.8 less 45 less 45", "in inches"), 1710 / 25.4),
        (("2.37 minus 400 minus 12",), 1958),
        (("12.5 less 20",), -7.5),
        (("96 3/8 - 2 1/4", "/2"), 47.0625),
        (("96 3/8 - 2 1/4", "+ 1/8", "/ 2"), 47.125),
    ],
)
def test_it_comes_to(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)
