"""Lines that sound like sums and tell none: a range of temperatures, what lumber is called by, what comes off what."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("lines", "asks"),
    [
        (("vinyl 3.6 m, minus 12 to plus 34",), "Do you mean"),
        (("2x4 less 1/2",), "Do you mean"),
        (("1x6 rip 1/4 off ea side, wdth?",), "Take (2 × 1/4) off what?"),
        (("a 1x6 with 1/4 ripped off each edge, how wide is it",), "Take (2 × 1/4) off what?"),
        (
            ("I have 14 foot 2 and I take off 3 and a half twice, what's that", "now only once", "split that in four"),
            "now only once",
        ),
    ],
)
def test_it_asks(lines: tuple[str, ...], asks: str) -> None:
    record = last(*lines)
    assert (record["outcome"], asks in record["ask"]) == ("asks", True)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("5 1/2 board with 1/4 ripped off each edge, how wide is it",), 5),
        (("2x8 ledger, 9'2 less 1 1/2",), 108.5),
        (("84 less 3/4", "1/4 off each side"), 82.75),
        (("3 1/2 x 2 less 1/2",), 6.5),
    ],
)
def test_what_is_a_sum_is_worked(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)


def test_a_slip_is_no_millimetre() -> None:
    assert last("lite 23 5/8 x 4 + 3 muls 7/8, oal")["outcome"] in ("asks", "declined")
