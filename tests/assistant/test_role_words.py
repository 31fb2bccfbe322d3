"""Words beside a new number tell which given of the question before it is for."""

import pytest

from tests.talking import last

CAN_CUT = "saw only goes to 47 can it cut forty four degrees"
FRAME = "frame is 5 ft by 12 ft and the diagonal measures 13 ft 0 and 1/4, how far out of square"
COURSES = "9 foot 2 high, no more than 7 inches exposure, lay out the courses"
STRAPS = "strapping for a 30 foot wall 9 feet high at 16"
GAP = "end gap, 3.6 m vinyl, 5 C now, 45 C hottest, minus 25 C coldest"


@pytest.mark.parametrize(
    ("lines", "setting", "limit"),
    [
        ((CAN_CUT, "and forty eight"), 48, 47),
        ((CAN_CUT, "what about 46"), 46, 47),
        ((CAN_CUT, "and forty eight", "my saw stops at 50", "and 51"), 51, 50),
        (("my saw stops at 52", "can it cut 56 degrees", "and 48"), 48, 52),
        (("can a saw that stops at 48 do 52", "and 45", "what if it goes to 55"), 45, 55),
    ],
)
def test_another_cut_is_no_other_saw(lines: tuple[str, ...], setting: float, limit: float) -> None:
    record = last(*lines)
    assert [given["value"] for given in record["givens"][:2]] == [setting, limit]
    assert record["answer"]["value"] == (setting <= limit)


@pytest.mark.parametrize(
    ("line", "changed", "value"),
    [
        ("what if it's 20 C now", "temperature now", 20), ("if it's minus 5 now", "temperature now", -5),
        ("minus 10 now", "temperature now", -10), ("hottest is 38", "hottest", 38),
        ("and a coldest of minus 30", "coldest", -30), ("it's down to 10 C this morning", "temperature now", 10),
    ],
)  # fmt: skip
def test_temperatures_are_told_apart_by_their_words(line: str, changed: str, value: float) -> None:
    givens = {given["name"]: given["value"] for given in last(GAP, line)["givens"]}
    assert givens == {**{given["name"]: given["value"] for given in last(GAP)["givens"]}, changed: value}


@pytest.mark.parametrize(
    ("line", "sticks"), [("six pieces", 2), ("make it 8 pieces", 3), ("and for twelve pieces", 4), ("only 3 pieces", 1)]
)
def test_so_many_pieces_are_no_stock(line: str, sticks: int) -> None:
    record = last("how many sixteen foot sticks to cut four pieces at forty eight inches", line)
    assert record["answer"]["value"] == sticks
    assert record["answer"]["name"] == "sticks of 16 ft"


@pytest.mark.parametrize(
    ("lines", "inches", "system"),
    [
        (("five and three eighths times nine", "in feet"), 48.375, "in"),
        (("five and three eighths times nine", "in feet", "less two inches"), 46.375, "in"),
        (("96 less 3 5/8", "how many feet is that"), 92.375, "in"),
        (("ladder bearing at 4.4 m, foot out how far", "in feet"), 1100 / 25.4, "in"),
        (("ladder bears at 16 feet, how far out is the foot", "in metres"), 48, "mm"),
    ],
)
def test_a_length_is_told_in_feet_and_its_numbers_stay(lines: tuple[str, ...], inches: float, system: str) -> None:
    answer = last(*lines)["answer"]
    assert answer["unit"] == system
    assert answer["value"] * (1 if system == "in" else 1 / 25.4) == pytest.approx(inches)


def test_numbers_of_no_unit_are_feet_where_that_is_said() -> None:
    assert last("45 and 46 and 47", "in feet")["answer"]["value"] == 138 * 12


def test_metres_are_told_beside_the_millimetres() -> None:
    record = last("rake length 30 degrees 8 m gable", "in metres")
    assert {"name": "in metres", "value": pytest.approx(8 / 3**0.5), "unit": "m", "text": "4.619 m"} in record["also"]
    assert last("rake length 30 degrees 8 m gable", "in cm")["also"][-1]["unit"] == "cm"


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        (("course layout for 108 inches at 7", "how many courses"), 16, "count"),
        (("divide 13 feet into 5 equal parts", "what's the third mark"), 93.6, "in"),
        (("miter for a 112 degree corner", "edge angle?"), 56, "deg"),
        (("roof angle for 7.5 in 12", "what's that as a percent grade"), 62.5, "percent"),
    ],
)
def test_what_is_read_back_stands_in_the_record(lines: tuple[str, ...], value: float, unit: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "noted"
    assert any(line["value"] == pytest.approx(value) and line["unit"] == unit for line in record["also"])


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        (("diagonal for 3 m by 4 m", "how far out of square if it measures 5012 mm"), 12, "mm"),
        ((FRAME, "and if it's 12 ft 11 and 3/4"), -0.25, "in"),
        ((FRAME, "make the long side 12 foot 1"), 156.25 - (60**2 + 145**2) ** 0.5, "in"),
        ((COURSES, "nails for those courses, wall 20 feet long, 16 inch spacing"), 256, "count"),
        ((STRAPS, "screws for those straps, 9 foot long, every 12 inches"), 240, "count"),
        (("rake length for a 23 feet 6 wide gable, 7 in 12", "it's only 22 wide"), 152.816884, "in"),
        (("rake length 6/12 on a 3 foot 6 wide gable", "make it 40 inches wide"), 20 * 1.25**0.5, "in"),
    ],
)
def test_what_was_worked_before_is_taken_where_the_words_say_so(lines: tuple[str, ...], value: float, unit: str) -> None:
    answer = last(*lines)["answer"]
    assert answer["value"] == pytest.approx(value)
    assert answer["unit"] == unit


def test_no_other_courses_are_taken() -> None:
    assert "How many courses" in last(COURSES, "screws for the north wall, 20 feet long, 16 inch spacing")["ask"]


def test_how_many_out_of_a_coil_tells_the_coil() -> None:
    record = last("bent flashing, legs 2, 3 1/2 and 1/2, what's the girth", "how many out of a 24 inch coil")
    assert "Pieces per coil width: 4" in record["say"]
    assert "width: 3" in last("bent flashing, legs 2, 3 1/2 and 1/2", "how many out of a 20 inch coil")["say"]


@pytest.mark.parametrize(
    ("lines", "corner"),
    [
        (("ten sided gazebo base, what's the saw on", "and the corner"), 144),
        (("peak joint on a 30 degree roof", "and the rake return on it", "corner of the return?"), 60),
        (("rake return 7/12", "corner?"), 59.7436),
    ],
)
def test_the_corner_is_read_off(lines: tuple[str, ...], corner: float) -> None:
    assert last(*lines)["also"][0]["value"] == pytest.approx(corner, abs=1e-3)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("course layout 9 foot at 7", "same wall with 8 inch"), 108 / 14),
        (("course layout 9 foot at 7", "same wall but 10 foot high"), 120 / 18),
        (("miter for a 92", "same with an 88"), 46),
        (("rake length 24 foot gable 7/12", "both of them", "how many 16 footers is that"), 2),
        (("rake length 24 foot gable 7/12", "both of them", "how many twelve footers"), 3),
    ],
)
def test_the_same_wall_is_none_of_another_size(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)


def test_what_was_changed_meanwhile_is_not_asked_again_as_it_was() -> None:
    lines = ("soffit 40 foot run 16 inches deep 12 inch panels", "and 18 deep", "how many boxes")
    record = last(*lines)
    assert (record["topic"], record["outcome"]) == ("boxes", "asks")  # of what, and how many are in one, is not told


@pytest.mark.parametrize(
    ("lines", "out", "unit"),
    [
        (("slab is 24 by 36 foot diagonal please", "we have forty three foot four what does that make it"), 0.8006, "in"),
        (("3 m by 4 m diagonal", "5012"), 12, "mm"),
    ],
)
def test_what_the_diagonal_measures_tells_how_far_out(lines: tuple[str, ...], out: float, unit: str) -> None:
    record = last(*lines)
    assert record["topic"] == "out of square"
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(out, abs=1e-3), unit)


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        (("my saw stops at 47", "miter for an 84 degree corner", "can it do that", "and 88"), "miter for a corner", 46),
        (("my saw stops at 52", "rake return on a 5/12", "will my saw do that", "and on a square fascia?"), "rake return", 45),
        (("my saw stops at 50", "rake return at 7/12", "will my saw do that", "my saw goes to 62"), "can my saw cut it", 1),
    ],
)
def test_the_joint_is_changed_and_not_the_saw(lines: tuple[str, ...], topic: str, value: float) -> None:
    record = last(*lines)
    assert (record["topic"], record["answer"]["value"]) == (topic, pytest.approx(value))


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("how high is a gable 22 foot wide at 7 1/2 in 12", "and how long is the rake on it", "double that"), 311.32),
        (("arch 3 foot wide, rises 18 inches, radius?", "arc length", "half of that"), 28.274),
        (("arch 3 foot wide, rises 18 inches, radius?", "arc length", "in mm", "and a 4 foot wide one"), 25),
        (("studs at 16 on a 20 foot wall how many marks", "at 24", "and the other wall is 14 foot", "back to 16"), 11),
        (("what's 93 and 7/16 split in half", "in thirds"), 31.1458),
        (("8 foot 1/2 inch times 3", "half of that", "less 2 and a quarter", "feet?"), 142.5),
        (("nine and three quarters and six and seven eighths total", "forty eight less that"), 31.375),
        (("16 ft 4 1/2 - 3 x 2 ft 1 1/4", "half"), 60.375),
        (("arched trim five foot wide eighteen inch rise what radius", "six foot wide and a foot high"), 60),
        (("rake 16 foot gable 4/12, 9 inch overhang", "same but six twelve and no overhang"), 107.3313),
        (("12 mm board, 19 mm strapping, 50 mm foam, 25 mm into the stud, screw?", "no foam, 38 into the stud"), 69),
        (("one 12 foot stick, cut 40, 40 and 40 inches with an eighth kerf, how many sticks", "make it four of the 40s"), 2),
        (("lay out courses in 108 inches at 7", "half of that", "make it 8 inch"), 108 / 14),
    ],
)  # fmt: skip
def test_lines_that_go_on(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value, abs=0.01)


def test_a_share_is_no_size_and_a_number_alone_no_other_topic() -> None:
    lines = ("water in a gutter channel 4 inches wide 3 deep 20 foot long", "it's only half full so an inch and a half deep")
    assert last(*lines)["answer"]["value"] == pytest.approx(1440)
    assert last("dew point 70 F 50 percent", "eighty degrees at seventy")["outcome"] == "asks"


@pytest.mark.parametrize(
    "lines",
    [
        ("24", "sixty out instead", "twelve"),
        ("roof angle for 10 degrees", "make it 8 degrees", "back to 9/12"),
        ("fall over five inches at 10 degrees", "say it's two thousand", "plumb cut on a 9/12"),
    ],
)
def test_no_line_trips_it(lines: tuple[str, ...]) -> None:
    for upto in range(1, len(lines) + 1):
        assert "tripped" not in last(*lines[:upto])["say"]
