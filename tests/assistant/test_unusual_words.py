"""Plain questions in words that are seldom used for them: which part is asked for, from where an angle is told."""

from __future__ import annotations

from math import atan, cos, degrees, radians, tan

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        (("what pitch is a roof that leans 50 degrees off plumb",), "pitch of an angle", 12 * tan(radians(40))),
        (("a roof stands 65 degrees from vertical, what's that in twelve",), "pitch of an angle", 12 * tan(radians(25))),
        (("what pitch is 25 degrees off level",), "pitch of an angle", 12 * tan(radians(25))),
        (("ramp climbs 2 ft at 6 degrees, how much level ground does it use",), "right triangle", 24 / tan(radians(6))),
        (("right triangle, 30 inch base, 40 degree angle, how tall",), "right triangle", 30 * tan(radians(40))),
        (("right triangle, slope 5 ft, 25 degrees off the vertical, find the rise",), "right triangle", 60 * cos(radians(25))),
        (("roof is 5/12, bevel gauge from level?",), "roof angle", degrees(atan(5 / 12))),
        (("the roof is nine twelve", "how far up the shingles is it for 8 foot of run"), "sloped length", 96 * 1.25),
        (("cap is 6 inches deep, a quarter inch in the foot, drop at the front?",), "fall", 6 / 48),
        (("wall 30 ft by 9, three windows in it, each 3 by 4, area?",), "wall area", 270 - 36),
        (("60 ft of soffit 1 ft deep, panels cover 12 inches. What do I need for panels?",), "soffit panels", 60),
        (("eight blocks at 40 inches out of ten footers, blade takes an eighth. How many?",), "cut list", 4),
    ],
)  # fmt: skip
def test_the_part_that_is_asked_for_is_answered(lines: tuple[str, ...], topic: str, value: float) -> None:
    record = last(*lines)
    assert record["topic"] == topic and record["answer"], record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value)


def test_sizes_handed_out_against_their_units_are_asked_about() -> None:
    """A roll 48 wide on a wall 40 inches long is no reading to answer by."""
    told = "papering the lake wall friday, 48 long by 9 high, the felt is 40 inches wide and 60 foot to the roll, 4 inch laps"
    record = last(f"{told}. How many rolls?")
    assert record["outcome"] == "asks" or record["answer"]["value"] == 3


def test_no_question_back_names_an_empty_way() -> None:
    ask = last("What clear opening does each foot of wall give with a half inch slot and a screen half open?")["ask"]
    assert "Is ," not in ask


@pytest.mark.parametrize("line", ["mind the foot of that ladder, it's only sat about two foot out", "ladder footing at 2 ft"])
def test_nobody_leans_a_ladder_at_two_feet(line: str) -> None:
    assert last(line)["outcome"] == "declined"


@pytest.mark.parametrize(
    "line",
    [
        "cost of 12 boards at 14 each, the van is 60",
        "8 sheets at $40 each, cost? delivery is 75",
        "reveal max 8 in, courses? 14 ft stock",
        "no more than 7 to the weather, how many courses, 16 ft stock",
    ],
)
def test_a_number_of_something_else_is_no_count_and_no_height(line: str) -> None:
    record = last(line)
    assert record["outcome"] == "asks" or record["answer"]["value"] in (168, 320), record["say"]


@pytest.mark.parametrize(
    "line", ["wall 108 high, 6 1/2 exposure at most, 14 courses", "108 inches, 12 courses, 7 in reveal at most"]
)
def test_courses_over_the_greatest_exposure_are_refused(line: str) -> None:
    record = last(line)
    assert record["outcome"] == "declined" and "each, over" in record["say"]


def test_courses_that_fit_under_the_greatest_are_laid_out() -> None:
    assert last("wall 108 high, 6 1/2 exposure at most, 17 courses")["answer"]["value"] == pytest.approx(108 / 17)


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("build-out: 3/4 siding, inch foam, half inch osb", 2.25),
        ("fastener through 5/8 boards and inch foam, inch and a half penetration", 3.125),
        ("corner is 94 rather than 90, both cut at 45, 3 1/2 face, how far open", 0.34549),
        ("vinyl 10 ft, it's 32 F now, goes up to hundred and twenty, coldest minus ten F, what gap", 0.39307),
    ],
)
def test_nothing_said_is_let_fall_and_nothing_denied_is_used(line: str, value: float) -> None:
    """An inch with no number, what it is rather than what it is not, and "up to" that is no two (by hand)."""
    record = last(line)
    assert record["answer"], record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-3)


@pytest.mark.parametrize(
    "line", ["52 3/16, half", "ich and a half in mm", "23 3/4, 4 times, in feet", "fir board 6 in, 4% drop. shrinkage."]
)
def test_what_could_be_twice_or_half_as_much_is_asked_about(line: str) -> None:
    assert last(line)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("line", "value", "unit"),
    [
        ("cladding's 18, batten's 20, ply 9, minimum 35 embedment, what nail", 82, "mm"),
        ("screw through 21 board, 25 lath, 12 ply, 30 in the stud", 88, "mm"),
        ("build-out: cladding 19, batten 38, osb 11", 68, "mm"),
        ("build-out: 15/32 ply, 10 mm mesh, 3/4 siding", 15 / 32 + 10 / 25.4 + 0.75, "in"),
        ("build-out: siding 5/8, furring 3/4, sheathing 1/2", 1.875, "in"),
        ("tubes of caulk: joint 10 wide and 5 deep, 30 metres", 6, "count"),
        ("tubes of caulk: joint 8 by 6, 40 ft", 2, "count"),
    ],
)
def test_bare_layers_and_joints_are_in_the_unit_they_can_only_be_in(line: str, value: float, unit: str) -> None:
    """No board is 18 inches thick, no nail goes into the stud by 35, no joint is 8 wide: those are millimetres."""
    record = last(line)
    assert record["answer"], record["ask"] or record["say"]
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(value), unit)
