"""How many parts of an inch a length has, a tape's case inside a frame, and numbers that are no given of a kind."""

from __future__ import annotations

import pytest

from tests.talking import last

SUMS = (
    (("how many sixteenths in 2 and 3/8",), 38),
    (("how many eighths in 3 1/4",), 26),
    (("how many 32nds in an inch and a quarter",), 40),
    (("how many sixteenths of an inch in 7/8",), 14),
    (("inside measure 44 1/2, tape case is 3 1/4",), 47.75),
    (("44 1/2 inside measure with a 3 inch tape body, what's that",), 47.5),
    (("tape reads 44 1/2 inside the frame and the case is 3 1/4 long",), 47.75),
    (("103 1/4 minus 3/4", "7/8 i mean"), 102.375),
    (("103 1/4 minus 3/4", "no, 7/8"), 102.375),
    (("9 foot minus 3/4", "minus 3 times 3/4"), 105),
    (("how far out for a ladder at 16", "18 i mean"), 54),
)


@pytest.mark.parametrize(("lines", "value"), SUMS)
def test_it_comes_to(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered"
    assert record["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("lines", "asks"),
    [
        (("if the gap's 3/8 now at 40 on 12 foot vinyl, what's it at 100",), "What is the coldest it gets?"),
        (("12 ft vinyl, 40 F now, hottest 100, coldest 3/8, end gap",), "What is the coldest it gets?"),
        (("ladder's foot is out 4 feet, how high can it bear",), "What height does the ladder bear at?"),
        (("103 1/4 minus 2 times 3/4", "minus 3 times i mean"), "minus 3 times what?"),
        (("103 1/4 minus 3/4", "minus 3 times"), "minus 3 times what?"),
    ],
)
def test_what_is_not_told_is_asked(lines: tuple[str, ...], asks: str) -> None:
    record = last(*lines)
    assert (record["outcome"], record["ask"]) == ("asks", asks)
