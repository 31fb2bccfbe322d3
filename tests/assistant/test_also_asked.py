"""What is asked beside the value that a topic answers is said with it, or read off it when it is asked after."""

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "value", "said"),
    [  # √(192² + 48²) in; 30 in × 2 × asin(18 / 30)
        ("how long a ladder to reach a 16 ft eave", 48, "Working length: 197 15/16 inches"),
        ("what length ladder for a 16 ft gutter", 48, "Length for 3 feet past the landing: 235 inches"),
        ("radius of an arch 36 inches wide with a 6 inch rise, and the arc length?", 30, "Arc length: 38 5/8 inches"),
        ("9 foot wall at 6 inch exposure, how many courses", 6, "Courses: 18"),
        ("attic 1200 square feet 1/300 how many feet of vented soffit", 576, "Length of vented soffit: 384 inches (32 feet)"),
        ("how heavy is the water in a 1/2 by 1 inch channel 12 foot long", 72, "Weight of the water: 2.6 pounds"),
        ("40 foot at 16 inch centres, where's the third mark", 31, "Mark 3: 32 inches"),
        ("vent opening 3/4 gap 60 percent screen 30 foot wall in square feet", 162, "That is 1.1 square feet"),
    ],
)
def test_said_with_the_answer(line: str, value: float, said: str) -> None:
    record = last(line)
    assert record["answer"]["value"] == value
    assert said in record["say"]


@pytest.mark.parametrize(  # a dew point of 44.6 °F, 9.3 °C; the formula's own value is checked in tests/published
    ("line", "said"),
    [
        ("dew point at 70 F and 40 percent, the window's at 45 F, will it sweat", "The surface stays dry"),
        ("dew point at 70 F and 50 percent, the window's at 45 F, will it sweat", "The surface gets wet"),
        ("dew point in celsius for 70 F and 50 percent", "That is 10.3 degrees Celsius"),
        ("dew point 20 C 50% in fahrenheit", "That is 48.7 degrees Fahrenheit"),
    ],
)
def test_what_becomes_of_the_surface_and_the_other_scale(line: str, said: str) -> None:
    assert said in last(line)["say"]


@pytest.mark.parametrize(
    ("line", "name"),
    [
        ("ladder footing for a 16 foot eave", "Working length"),
        ("radius of an arch 36 in wide with a rise of 6 in", "Arc length"),
        ("exposure for a 9 foot wall, 6 inch at most", "Courses"),
        ("attic 1200 square feet 1/300", "vented soffit:"),
    ],
)
def test_not_said_where_it_is_not_asked(line: str, name: str) -> None:
    assert name not in last(line)["say"]


@pytest.mark.parametrize(
    ("question", "after", "said"),
    [
        ("8 foot wall 5 1/4 exposure", "how many courses", "Courses: 19"),
        ("8 foot wall 5 1/4 exposure", "where's the second course", "Course 2: 10 1/8 inches"),  # 96 / 19 × 2
        ("40 foot at 16 centres", "and the tenth mark?", "Mark 10: 144 inches (12 feet)"),
        ("40 foot at 16 centres", "where's the 40th mark", "There are 31 marks, and no 40th mark"),
        ("rake length for a 24 foot gable at 6/12", "height", "Gable height: 72 inches (6 feet)"),
        ("ladder to 14 foot", "how long a ladder", "Working length: 173 3/16 inches"),  # √(168² + 42²)
        ("trim sticks for 130 feet from 16 foot stock", "how much left over", "Left over: 14 feet"),
        ("miter for a 5/12 rake return", "the other corner", "The other corner's setting 33.7 degrees"),
    ],
)
def test_read_off_the_answer_after_it(question: str, after: str, said: str) -> None:
    record = last(question, after)
    assert record["outcome"] == "noted"
    assert said in record["say"]


@pytest.mark.parametrize(
    ("question", "after", "value"),
    [("ladder to 14 foot", "what about 18", 54), ("rake length for a 24 foot gable at 6/12", "height of a 28 foot gable", 84)],
)
def test_a_line_that_changes_the_question_reads_nothing_off(question: str, after: str, value: float) -> None:
    assert last(question, after)["answer"]["value"] == value
