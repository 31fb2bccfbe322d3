"""Changes of walls, costs, fasteners and flashings: what a number is for, and what it is not."""

from __future__ import annotations

from typing import Any

import pytest

from tests.talking import last

WRAP = "house wrap 9 by 100, wall 120 long 9 high"
NAILS = "will 2 1/2 inch nails do, 5/8 siding 1/2 ply 1 1/4 bite"


def beside(record: dict[str, Any], name: str) -> str:
    """The text of a value beside the answer."""
    return next((also["text"] for also in record["also"] if also["name"] == name), "")


def given(record: dict[str, Any]) -> dict[str, str]:
    return {line["name"]: line["text"] for line in record["givens"]}


def test_a_size_goes_where_that_word_was_said_before() -> None:
    record = last(WRAP, "10 high", "140 long")
    assert given(record)["wall height"] == "10 ft"
    assert given(record)["wall length"] == "140 ft"
    assert "gable height" not in given(record)
    assert last("60 boards at 2 lb a foot, 12 feet long", "16 feet long")["answer"]["value"] == 1920


@pytest.mark.parametrize(
    ("lines", "name", "verdict"),
    [
        ((NAILS, "and 3 inch"), "3 inch", "enough"),
        ((NAILS, "and 3 inch", "and 2"), "2 inch", "not enough"),
        ((NAILS, "what about 2 1/4 inch ones"), "2 1/4 inch", "not enough"),
        (("ladder for a 20 ft eave, is a 16 foot ladder long enough",), "16 foot", "not enough"),
        (("ladder for a 20 ft eave, is a 24 foot ladder long enough",), "24 foot", "enough"),
        (("is 4 feet out enough for a ladder at 16 feet",), "4 feet", "enough"),
    ],
)
def test_what_somebody_has_is_held_against_what_it_must_be(lines: tuple[str, ...], name: str, verdict: str) -> None:
    assert beside(last(*lines), name) == verdict


def test_a_ladder_that_is_asked_about_is_no_height() -> None:
    record = last("ladder for a 14 ft eave", "is 24 foot long enough")
    assert (record["outcome"], record["topic"]) == ("noted", "explain")
    assert "210 1/4" in record["say"]


@pytest.mark.parametrize("line", ["and delivery is 85", "and 85 for delivery"])
def test_another_charge_is_no_price(line: str) -> None:
    assert last("cost of 14 squares at 210", line)["outcome"] != "answered"


def test_a_tax_is_put_to_the_cost() -> None:
    assert last("cost of 14 squares at 210", "with 13% tax")["answer"]["value"] == pytest.approx(14 * 210 * 1.13)


def test_the_sticks_of_a_run_are_no_run() -> None:
    assert last("how much for 300 feet at 2.15 a foot", "in 16 footers how many")["outcome"] != "answered"


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("bent flashing 1/2, 3, 1 1/4 coil 24", "make the 3 a 4"), 5.75),
        (("bent flashing 1/2, 3, 1 1/4 coil 24", "change the 1/2 to a 3/4"), 5),
        (("build out 1/2 3/4 5/8", "make the 3/4 a 3/8"), 1.5),
        (("nails for 20 courses 40 ft", "16 inch"), 620),
        (("screws for 24 straps 8 ft long", "12"), 216),
    ],
)
def test_the_one_that_is_named_is_changed(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)


def test_a_roll_said_after_a_wall_as_high_is_no_echo() -> None:
    record = last("rolls for 160 feet of wall 10 feet high, 10 foot by 100 foot rolls")
    assert record["outcome"] == "asks"
