"""Numbers that are none of the job's are passed over, and those that may be wanted are not."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


def told(line: str) -> tuple[str, str | None, float | None]:
    """How a line went: the outcome, the topic and the value."""
    record = Conversation().answer(line)
    answer = record["answer"] or {}
    return record["outcome"], record["topic"], answer.get("value")


@pytest.mark.parametrize(
    ("line", "topic", "value"),
    [
        ("how many boards for 420 sq ft at 6 in exposure, 12 ft boards, my budget is 900", "cladding boards", 77),
        ("wall number 3, 30 ft by 9 ft, how many square feet", "wall area", 270),
        ("I've 15 sheets in the shed. Wall is 40 ft by 9 ft, how many squares, no waste", "squares", 3.6),
        ("The old boards were 5 inch. 420 sq ft at 6 in exposure, 12 ft boards, how many?", "cladding boards", 77),
        ("One of the four gables is 20 ft wide at 6/12. what's its area", "gable area", 50),
        ("We had 10 footers last week. 212 ft of trim, 16 ft sticks, how many?", "trim sticks", 14),
        ("420 sq ft at 6 in exposure, the boards are 12 ft, not 16 ft. how many boards", "cladding boards", 77),
        ("squares for a wall 40 ft by 9 ft not 8 ft, no waste", "squares", 3.6),
        ("How many boards for the shed? It's 20 ft by 9 ft. They're 12 footers and I'm showing 6 inches.", "take-off", 33),
        ("The nails are 2 inch. 20 straps, 8 ft tall, spaced 16 in. How many?", "fasteners", 140),
    ],
)
def test_a_remark_has_no_part_in_the_answer(line: str, topic: str, value: float) -> None:
    outcome, found, number = told(line)
    assert (outcome, found) == ("answered", topic)
    assert number == pytest.approx(value)


@pytest.mark.parametrize(
    "line",
    [
        "I've 15 boards in the shed. 420 sq ft at 6 in exposure, 12 ft boards, how many more do I need?",
        "cost of 4 23 boxes at $118 a box",
    ],
)
def test_what_may_be_wanted_is_asked(line: str) -> None:
    assert told(line)[0] == "asks"


@pytest.mark.parametrize(
    ("line", "topic", "value"),
    [
        ("East gable is 26 ft wide, 9 ft to the eave, 8/12 over it. Total square feet?", "wall area", 26 * 9 + 13 * 26 / 3),
        ("East gable, 26 ft wide, 9 ft to the plate, 8/12. only the triangle, square feet?", "gable area", 13 * 26 / 3),
        ("squares for a wall 20 ft by 12 ft with a gable 6 ft high on top, no waste", "squares", 3.0),
        ("gable end 24 foot across with 8 foot walls and a 6/12 roof, how many squares of siding, no waste", "squares", 2.64),
        ("lake wall 8.4 m long, 2.7 high, how many square metres", "wall area", 8.4 * 2.7),
        ("the three walls come to 900 sq ft, squares, no waste", "squares", 9.0),
        ("the three walls are 300 sq ft each, squares, no waste", "squares", 9.0),
        ("the four walls are 352 sq ft, squares, no waste", "squares", 3.52),
        ("Wall 400 sq ft, take 60 off for windows, how many squares with no waste", "squares", 3.4),
    ],
)
def test_a_wall_and_the_gable_over_it(line: str, topic: str, value: float) -> None:
    outcome, found, number = told(line)
    assert (outcome, found) == ("answered", topic)
    assert number == pytest.approx(value, rel=1e-3)


@pytest.mark.parametrize(
    ("line", "topic", "value"),
    [
        ("soffit panels, 60 foot, 14 inch depth, panels 10 ft long covering 12 inches, no waste", "soffit panels", 60),
        ("Trim is $2 a foot, sticks are 14 ft, I want 10 of them. Total cost?", "cost", 280),
        ("The two gables are alike. One is 20 ft wide and rises 5 ft. What's one of them in area?", "gable area", 50),
        (
            "The sill's 31 1/2 inches up and it's 48 from there to the head, then 20 to the top. 4 to 5 inch exposure, courses?",
            "courses to openings",
            4.8,
        ),
        ("Lap is 6 in. Roll is 9 ft by 100 ft. Wall is 60 ft by 10 ft. How many rolls?", "membrane rolls", 1),
    ],
)
def test_a_role_that_can_be_only_one_way(line: str, topic: str, value: float) -> None:
    outcome, found, number = told(line)
    assert (outcome, found) == ("answered", topic)
    assert number == pytest.approx(value)


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("strut is 2.4 m and its foot is 1.1 m out from the wall on the level, what angle is it at", 62.7178),
        ("the plank is 12 ft long and reaches 4 ft up the wall, what angle does it make with the level deck", 19.4712),
        ("right triangle, slope 10 ft, run 8 ft, which angle is that on level ground", 36.8699),
    ],
)
def test_what_angle_it_makes_is_no_side(line: str, value: float) -> None:
    outcome, topic, number = told(line)
    assert (outcome, topic) == ("answered", "right triangle")
    assert number == pytest.approx(value, rel=1e-4)


def test_a_size_somebody_reckons_is_no_answer_to_hold_against() -> None:
    said = "he reckons the deck is ten foot by thirteen foot and I get sixteen foot five on the diagonal, how far is it out"
    assert told(said)[1] == "out of square"
