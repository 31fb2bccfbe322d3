"""What is said after an answer: so many of it, a sum that goes on, a given named in the trade's way, its area used again."""

from __future__ import annotations

import math

import pytest

from tests.talking import last


def value(*lines: str) -> float:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    return record["answer"]["value"]


WALL, STRAPS = "wall area, 24 by 9", "straps for a 30 foot wall 9 high at 16"
SUM = "12 foot 4 and a half less 3 and three eighths"
STEP, MARKS = "step at the rake 7 twelve 5 exposure", "marks on centre 16 in 20 foot"


@pytest.mark.parametrize(
    "lines, found",
    [
        ((WALL, "two of those walls"), 432),
        ((WALL, "I've three walls like that"), 648),
        ((WALL, "two of those", "what about a 30 footer"), 540),
        (("gable area 28 foot wide at 8 twelve", "there's one each end"), 2 * 14 * 14 * 8 / 12),
        ((STRAPS, "I've got two walls like that"), 48),
        (("trim sticks for 130 feet in 12 footers", "and for three of those"), 33),
        (("rake length 6 twelve 24 foot gable", "all four rakes"), 4 * 144 * math.hypot(6, 12) / 12),
        (("rake length 6 twelve 24 foot gable", "four rakes"), 4 * 144 * math.hypot(6, 12) / 12),
        (("rake length 6 twelve 24 foot gable", "both sides"), 2 * 144 * math.hypot(6, 12) / 12),
        (("wall area three walls 20 by 9", "two of those walls"), 360),
        (("wall area three walls 20 by 9", "double that"), 1080),
    ],
)
def test_so_many_of_what_was_worked(lines: tuple[str, ...], found: float) -> None:
    assert value(*lines) == pytest.approx(found)


@pytest.mark.parametrize(
    "lines",
    [
        (WALL, "two of those boards"),
        (WALL, "two gables"),
        (WALL, "two of those", "less a 3 by 4 window"),  # in each, or in one
        ("miter for a 92 degree corner", "two of them"),
        ("gable area 28 foot wide at 8 twelve, two gables", "two of them"),
        (WALL, "plus a 12 by 8 wall"),
        (SUM, "and another 3 3/8"),
        (SUM, "from 16 foot"),
        ("divide 14 foot 2 by 5", "less an inch first"),
        ("rise over 14 foot at 6 12", "with a 2 foot overhang"),
        (WALL, "squares for the other wall"),
    ],
)
def test_what_leaves_two_readings_is_not_answered(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] != "answered"


@pytest.mark.parametrize(
    "said, found",
    [
        ("plus 2", 147.125),
        ("and take another inch off", 144.125),
        ("with a sixteenth off that", 145.0625),
        ("no, less 4", 144.5),
        ("what's left of a 16 footer", 192 - 145.125),
        ("cut in half", 145.125 / 2),
    ],
)
def test_a_sum_goes_on_from_its_answer(said: str, found: float) -> None:
    assert value(SUM, said) == pytest.approx(found)


def test_a_sum_of_bare_numbers_goes_on_bare_and_into_eight_changes_the_parts() -> None:
    assert value("2440 less 617", "less another 617") == 1206
    assert value("divide 100 inches into 7", "now into eight parts") == 12.5


@pytest.mark.parametrize(
    "lines, found",
    [
        (("14 foot 2 and a quarter minus 3 foot 7 and five eighths", "take another half inch off"), 126.125),
        ((STRAPS, "what about on twenty fours"), 16),
        ((MARKS, "24 o.c."), 11),
        ((MARKS, "start at 15 and a quarter"), 15),
        ((STEP, "on a nine"), 5 * 12 / 9),
        (("course layout for 9 foot at max 7", "nah make the wall 9 foot 3"), 111 / 16),
        (("course layout for 9 foot at max 7", "make the wall 10"), 120 / 18),
        (("square check 12 foot by 16 foot", "the long side's 17 actually"), 12 * math.hypot(12, 17)),
        (("square check 12 foot by 16 foot", "no the short one's 11"), 12 * math.hypot(11, 16)),
        (("course layout 108 inches max 7", "the owner wants six"), 6),
        (("exposure for a 2.7 m wall, no more than 180 mm", "try two hundred"), 2700 / 14),
    ],
)
def test_words_of_the_trade_say_what_a_new_number_is_for(lines: tuple[str, ...], found: float) -> None:
    assert value(*lines) == pytest.approx(found)


def test_the_area_just_worked_is_what_is_covered_next() -> None:
    record = last("wall area 30 foot by 8 foot", "and boards at 6 inch exposure, 12 foot long")
    assert record["answer"]["value"] == 44 and "240 square feet as before" in record["say"]
    assert value("straps for a 30 foot wall 9 high at 16", "cost at 4 dollars each") == 96


def test_no_height_is_carried_to_what_is_called_something_else() -> None:
    record = last("course layout 108 inches max 7", "and boards for that, 12 foot long")
    assert not any(given["name"] == "wall length" for given in record["givens"])


@pytest.mark.parametrize(
    "said, found",
    [
        ("somewhere round 6 inches to the weather", 97 / 16),
        ("six inch exposure or thereabouts", 97 / 16),
        ("six-ish exposure", 97 / 16),
        ("6 inch exposure tops", 97 / 17),
        ("exposure 6 or less", 97 / 17),
    ],
)
def test_an_exposure_about_so_much_is_aimed_at(said: str, found: float) -> None:
    assert value(f"97 inch wall, {said}") == pytest.approx(found)


def test_about_of_the_wall_says_nothing_of_its_courses() -> None:
    assert value("wall of 97 inches or so, 6 inch exposure, lay out the courses") == pytest.approx(97 / 17)


def test_what_a_stick_is_called_multiplies_nothing() -> None:
    assert value("a 16 foot 2x4 less 3 inches how long") == 189
    assert last("how much does a 12 foot 2x10 weigh wet")["outcome"] != "answered"


def test_a_whole_question_of_its_own_changes_nothing_before_it() -> None:
    record = last(WALL, "gable area 28 wide at 8 twelve")
    assert record["topic"] == "gable area" and record["answer"]["value"] == pytest.approx(14 * 14 * 8 / 12)
    assert value(WALL, "two of those", "wall area 30 by 8 with a 3 by 4 window") == 228


def test_a_price_after_what_has_none_is_a_cost() -> None:
    assert value("trim sticks 40 ft, 12 ft sticks", "and at $14 a stick") == 56
    assert last("trim sticks 40 ft, 12 ft sticks", "what's that at $1.50 a foot")["ask"] == "What is the length?"


def test_lengths_to_add_up_are_no_sizes_of_the_wall_before() -> None:
    assert value(WALL, "add it up: 3 foot 4 and 7 foot 9") == 133


@pytest.mark.parametrize(
    ("lines", "found"),
    [
        (("trim sticks 40 ft, 12 ft sticks", "add 10 feet"), 5),
        (("soffit panels 40 ft, 12 deep, 12 cover", "plus 2 feet"), 42),
        (("squares 400 sq ft", "add 10 for waste"), 4.4),
    ],
)
def test_more_of_an_amount_is_added_to_it(lines: tuple[str, ...], found: float) -> None:
    assert value(*lines) == pytest.approx(found)


@pytest.mark.parametrize(
    "lines",
    [
        ("squares 400 sq ft", "add 10"),
        ("equal spacing 7 pieces 3 1/2 wide in 96", "plus an inch"),
        ("fastener length through 3/4 siding 1 1/4 penetration", "plus 1/4"),
        ("course layout 9 ft, 6 exposure", "plus 2 inches"),
    ],
)
def test_what_is_added_takes_no_given_s_place(lines: tuple[str, ...]) -> None:
    assert last(*lines)["ask"].startswith("Put ")
