"""A temperature of no scale is on that of those given before it, whichever line gave them."""

from __future__ import annotations

import pytest

from tests.talking import last

WET = "dew point 20 C 45 percent"


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("end gap vinyl 3.6 m, 5 C now", "35", "-20"), 7.236),
        (("vinyl 3.6 m long going from 20 C, how much", "-10"), -7.236),
        (("thermal movement 3 m aluminium 40 C", "what about 50"), 3.45),
        (("thermal movement 3 m aluminium 40 C", "and from -20 to 30"), 3.45),
        (("frost tonight low of -2 C", "-1"), 1),
        (("frost tonight low of 30", "28"), 0),
    ],
)
def test_is_worked_on_that_scale(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"] or record["ask"]
    assert record["answer"]["value"] == pytest.approx(value, abs=0.01)


@pytest.mark.parametrize(
    ("line", "what"), [("what about a surface at 10", "stays dry"), ("surface is 5", "gets wet"), ("surface at 41 F", "gets wet")]
)
def test_a_surface_is_on_the_scale_of_the_air(line: str, what: str) -> None:
    words = {also["name"]: also["text"] for also in last(WET, line)["also"]}
    assert words["the surface"] == what


def test_a_number_too_hot_for_celsius_told_in_a_reply_puts_all_in_fahrenheit() -> None:
    found = last("end gap on vinyl 12 foot", "it's 60 out", "110 hottest 0 coldest")
    assert {given["unit"] for given in found["givens"] if given["name"] in ("temperature now", "hottest")} == {"degF"}


def test_what_may_be_of_either_scale_is_still_asked() -> None:
    assert last("end gap on vinyl 12 foot", "it's 20 out", "35 hottest -10 coldest")["outcome"] == "asks"
