"""Short lines as builders type them: every number counts, and what follows an answer is about that answer."""

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (["gable 24 wide 6/12 area", "half of that"], 36),  # 24 × 6 / 2 / 2
        (["area of a wall 40 by 9", "a third of that"], 120),
        (["130 feet of trim 16 foot sticks", "half that"], 5),  # 65 / 16
        (["45 boards at 12.50", "what about 50 boards"], 625),
        (["45 boards at 12.50", "what about 60 boards", "at 14"], 840),
        (["130 feet 16 foot sticks", "with 10 percent", "make it 150"], 11),  # 165 / 16
        (["1200 square feet 3 by 50 rolls lap 4", "with 10 %"], 10),  # 1320 / (32/12 × 50)
        (["5 at 6 foot from 12 foot", "from 16s"], 3),
        (["squares for 25 by 10", "and 30 by 10", "what about 40 by 10"], 4.4),
        (["wall 7.2 by 2.4 m area", "20 foot by 9"], 180),
        (["tubes for 100 ft 1/4 by 1/4", "3/8 wide"], 7),  # 112.5 in³ of 18.23
        (["9 foot wall 7 exposure", "make it 2.7 m", "180 mm"], 180),  # an exposure, and no wall: 2700 / 15
        (["gable 24 wide 6/12 7 exposure courses", "6 exposure", "26"], 312),  # how wide it is: inches
        (["how many 40 inch pieces from a 12 foot stick", "and from a 16"], 4),
        (["step flashing 18 ft at 7 in", "and one spare"], 32),  # of 216 / 7, rounded up
    ],
)
def test_a_line_after_an_answer(lines: list[str], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize("lines", [["roof angle of 7/12", "half"]])
def test_asked_rather_than_guessed(lines: list[str]) -> None:
    assert last(*lines)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("line", "value", "unit"),
    [
        ("four walls 12 by 8 each total area", 384, "ft2"),
        ("three walls 8.5 by 2.4 m, area", 61.2, "m2"),
        ("shed walls 12 by 10 by 8 high area all round", 352, "ft2"),  # 2 × (12 + 10) × 8
        ("wrap for 4 walls 40 by 9, 9x150 rolls", 2, "count"),  # 1440 / 1275
        ("two walls 30 by 8 in squares", 5.28, "square"),
        ("300 square feet 7 in 12 ft 0 waste how many boards", 43, "count"),  # 514.3 / 12
        ("tubes for 100 ft 1/4 by 1/4", 5, "count"),
        ("step flashing 16 ft 10 inch shakes", 20, "count"),
        ("length 18 exposure 7 step flashing", 31, "count"),
        ("courses 12 length 40 spacing 16 nails", 372, "count"),
        ("2 each 45 and 30 from 12s", 2, "count"),
        ("how many 40s out of a 12", 3, "count"),
        ("how many 2 foot pieces from a 16", 7, "count"),  # 7 × 24 + 6 kerfs, an eighth each
        ("how many 8 footers for 12 pieces 31 1/2", 4, "count"),
        ("how many 3 foot pieces can I get out of a 12 footer no kerf", 4, "count"),
        ("120 ft at 7 dollars a metre", 256.032, "money"),
        ("gable with a 2 by 3 vent, 24 wide, 6/12, area", 66, "ft2"),
        ("wall 40 ft long, area 360, how high", 9, "ft"),
    ],
)
def test_every_number_in_its_place(line: str, value: float, unit: str) -> None:
    answer = last(line)["answer"]
    assert (answer["value"], answer["unit"]) == (pytest.approx(value), unit)


@pytest.mark.parametrize(
    ("line", "asked"),
    [
        ("weight 12 sheets at 60 lb half of them", "half of"),
        ("squares for both gables 24 wide 6/12", "both gables"),
        ("cost of two sets of 12 boards at 9.50", "two sets"),
        ("how far will 3 tubes go at 1/4 by 1/4", "3 tubes"),
        ("girth for two 3 inch legs and a 1/2 inch kick", "two 3"),
        ("18 sticks at 14 dollars and 6 at 22", "18 sticks"),
    ],
)
def test_no_count_is_let_fall(line: str, asked: str) -> None:
    record = last(line)
    assert record["outcome"] == "asks"
    assert asked in record["ask"]


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("9 foot wall, 7 inch max, how many courses", "Courses: 16"),
        ("how much edge channel for 40 feet of soffit, 12 inch panels", "Edge channel, two runs: 80 feet"),
        ("each course shortens how much 5 in 12 at 6 3/4 both ends", "both ends of a gable: 32 3/8 inches"),
        ("130 feet of trim 16 foot sticks how much left over", "Left over: 14 feet"),
    ],
)
def test_what_is_asked_beside_is_said(line: str, said: str) -> None:
    assert said in last(line)["say"]


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        (["54 high 7 exposure", "how many courses"], "Courses: 8."),
        (["soffit 40 foot, 16 inch panels", "how much channel"], "Edge channel, two runs: 80 feet."),
        (["step at the rake 6/12 7 exposure", "both ends"], "Step, both ends of a gable: 28 inches."),
    ],
)
def test_what_stands_beside_the_answer_is_read_off_it(lines: list[str], said: str) -> None:
    record = last(*lines)
    assert (record["outcome"], record["say"]) == ("noted", said)


def test_what_is_not_there_is_a_question_of_its_own() -> None:
    assert last("54 high at 7 exposure", "how many boards")["topic"] == "cladding boards"
    assert last("what's the area of a wall 32 by 9 foot", "how many squares is that")["topic"] == "squares"
