"""What is asked of the rows, the height or the corner just worked; and letting go of what is open for another question."""

from __future__ import annotations

import pytest

from tests.talking import last, records

LAYOUT = "course layout nine foot wall seven inch"  # 16 courses
GABLE = "gable height, 28 foot at six twelve"  # 84 inches
OPENS = "both cut at 45 on a 93 corner, 5 1/2 inch face, how far open"


@pytest.mark.parametrize(
    "line", ["how many nails is that gonna be", "how many screws do i need for that", "how many nails do i need"]
)
def test_the_nails_are_of_the_courses_just_laid_out(line: str) -> None:
    _, asked, wall, told = records(LAYOUT, line, "its a 28 foot wall", "every sixteen")
    assert [asked["outcome"], wall["outcome"]] == ["asks", "asks"]
    assert (told["topic"], told["answer"]["value"]) == ("fasteners", 352)


def test_nails_that_point_at_nothing_are_of_no_courses_long_before() -> None:
    assert last(LAYOUT, "why", "how many nails do i need")["outcome"] != "answered"


@pytest.mark.parametrize("line", ["how many courses on that", "how many courses is that"])
def test_courses_are_of_the_height_just_worked(line: str) -> None:
    assert last(GABLE, line)["ask"] == "What is the exposure?"
    assert {"name": "courses", "value": 12}.items() <= last(GABLE, line, "seven inch")["also"][0].items()


def test_an_exposure_told_with_it_is_used() -> None:
    assert last(GABLE, "how many courses in that at 6")["answer"]["value"] == 14


def test_courses_after_a_rake_are_of_its_gable() -> None:
    asks = last("rake 28 foot at six twelve", "how many courses is that")
    assert (asks["topic"], asks["ask"]) == ("gable courses", "What is the exposure?")


@pytest.mark.parametrize("line", ["and whats the right setting for 93", "what should the saw be at for 93"])
def test_the_right_setting_is_no_gap(line: str) -> None:
    found = last(OPENS, line)
    assert (found["topic"], found["answer"]["value"]) == ("miter for a corner", 43.5)


def test_how_far_it_opens_is_of_the_corner_just_worked() -> None:
    found = last("whats the miter on a 92 corner", "how far does it open if i just leave it at 45", "trims three and a half")
    assert found["answer"]["value"] == pytest.approx(0.172770009)


@pytest.mark.parametrize("line", ["corner reads 91", "91 even", "the corner measures 91"])
def test_what_the_corner_reads_is_the_piece_and_no_miter(line: str) -> None:
    found = last("how far off is my joint i set 45 both sides with a five and a half inch face", line)
    assert (found["topic"], found["answer"]["value"]) == ("how far open", pytest.approx(0.135753033))


def test_the_small_one_is_no_diagonal_of_one() -> None:
    lines = ("checking the slab for square its 30 by 40 foot", "tape says 50 foot 1 and a quarter how far out")
    small = (*lines, "now the small one how far out of square, 9 foot by 12 foot")
    assert last(*small)["ask"] == "What does the diagonal measure?"
    assert last(*small, "fifteen foot even")["answer"]["value"] == 0


@pytest.mark.parametrize("line", ["at least 6 and 7 at the most", "6 at least, 7 at most"])
def test_a_reply_leaves_what_was_told(line: str) -> None:
    found = last("wall is 108 tall sill at 36 and head at 80 what exposure lands on the window", line)
    assert found["answer"]["value"] == pytest.approx(44 / 7)


@pytest.mark.parametrize(
    "line", ["dont know yet, leave it. miter on a 135 corner", "skip it. miter on a 135 corner", "miter on a 135 corner"]
)
def test_another_question_is_no_pitch(line: str) -> None:
    found = last("peak joint saw setting", line)
    assert (found["topic"], found["answer"]["value"]) == ("miter for a corner", 22.5)


@pytest.mark.parametrize("line", ["leave it at 6/12", "leave it, 6/12"])
def test_leaving_it_at_a_pitch_tells_the_pitch(line: str) -> None:
    assert last("peak joint saw setting", line)["answer"]["value"] == pytest.approx(26.5650512)


def test_a_corner_that_is_no_pitch_leaves_the_pitch_asked() -> None:
    assert last("peak joint saw setting", "a corner of 135", "6/12")["answer"]["value"] == pytest.approx(26.5650512)


@pytest.mark.parametrize("line", ["pieces from a coil of that", "how many pieces out of a coil"])
def test_the_coil_of_the_bend_is_asked_for(line: str) -> None:
    bend = "girth on a drip flashing 2 legs, 1 and a quarter and three"
    assert last(bend)["answer"]["value"] == 4.25
    assert last(bend, line)["ask"] == "How wide is the coil?"
    assert last(bend, line, "24 inches wide")["also"][0]["value"] == 5


def test_a_line_that_states_the_piece_in_a_sentence_is_no_other_question() -> None:
    crown = "I'm putting crown under the porch roof and it has a 38 degree spring from the wall. What do I set the saw to?"
    found = last(crown, "It's an outside corner and I measured it at 92 degrees.")
    assert (found["topic"], found["answer"]["value"]) == ("compound cut", pytest.approx(30.7330656))


def test_a_whole_question_of_its_own_is_no_reply() -> None:
    roof = "My roof climbs 1.2 metres over a level distance of 3 metres, what angle is that, please?"
    found = last("How many soffit panels go along an eave that's 44 feet?", roof)
    assert found["answer"]["value"] == pytest.approx(21.8014095)
    assert last("rake length on a 24 foot gable", "what if the roof is a 6 in 12")["topic"] == "rake length"
