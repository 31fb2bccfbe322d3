"""The second and third line of a conversation: what it goes on from, goes back to, reads off, changes; and what it must not."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("lines", "says"),
    [
        (("sloped length 14 foot run 6/12", "whats the rise"), "Rise: 84 inches"),
        (("wall 36 by 9 area", "area"), "Net wall area: 324"),
        (("cut list stock 16, 4 at 52, 6 at 37 1/2", "how many sticks"), "Sticks of 16 feet: 3"),
        (("end cut along the rake for 7/12", "saw setting"), "Saw setting: 59.7"),
        (("marks on centre 16 in 20 foot", "how many"), "Marks: 16"),
        (("marks at 16 along 14 foot", "how far to the end"), "Left after the last mark: 8 inches"),
        (("hip length 6/12 run 12", "plumb cut"), "Plumb cut of the hip: 19.5"),
        (("hip length 6/12 run 12", "the seat cut"), "Level cut of the hip: 70.5"),
        (("cladding boards 300 square feet 7 inch exposure 12 foot boards", "whats that in squares"), "Squares: 3.3"),
        (("miter for 92", "whats the angle"), "Saw setting 44 degrees"),
        (("miter for 92", "so it's a 46"), "your 46 degrees is the edge angle"),
        (("miter for 92", "so 44 it is"), "the same to what a scale or tape can show"),
        (("rake length 6/12 24 foot gable", "8/12", "go back to step one"), "Step 1 of 6"),
    ],
)
def test_what_is_read_off_the_page(lines: tuple[str, ...], says: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "noted"
    assert says in record["say"]


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        (("courses in 9 foot 2 no more than 7", "8", "back to 7"), "course layout", 6.875),
        (("rake length 6/12 24 foot gable", "peak joint", "back to the rake length", "and at 8/12"), "rake length", 173.066),
        (("miter for 92", "rake length 6/12 24 foot gable", "back to the first question"), "miter for a corner", 44),
        (("wall 36 by 9 area", "in squares", "back to the wall area with a 3 by 7 door"), "wall area", 303),
        (("rake return for 5/12", "peak joint", "and level joint"), "rake to level joint", 11.31),
        (("gable 26 wide 7/12", "how high"), "gable height", 91),
        (("gable 26 wide 7/12", "how big is it"), "gable area", 98.583),
        (("wall 36 by 9 area", "strapping for it at 16"), "strapping", 28),
        (("wall 36 by 9 area", "courses at 7 inch"), "course layout", 6.75),
        (("wall 36 by 9 area", "how many 12 foot boards at 7 inch"), "cladding boards", 51),
        (("courses in 108 at 7", "how many boards", "12 footers", "the wall is 32 foot"), "cladding boards", 47),
        (("trim 86 feet from 12 footers", "how many 16s"), "trim sticks", 6),
        (("cut list stock 16, 4 at 52, 6 at 37 1/2", "drop the 52s"), "cut list", 2),
        (("10 balusters 1 1/2 in 6 foot equal spacing, gap under 4", "16"), "equal spacing", 3.2),
        (("roof area 40 by 24 at 6/12", "1 foot overhang"), "roof area", 42 * 26 * 1.25**0.5),
        (("roof area 40 by 24 6/12",), "roof area", 960 * 1.25**0.5),
        (("9 foot wall courses about 6", "about 7", "no more than 7"), "course layout", 6.75),
        (("9 foot wall courses at 7", "about 6"), "course layout", 6),
        (("courses 4 to 6", "9 foot"), "course layout", 6),
        (("rafter run 12 foot at 7 12 how long", "plus 18 inches tail"), "tape arithmetic", 144 * 193**0.5 / 12 + 18),
        (("hip length 6/12 run 12", "rafter length", "12 foot"), "sloped length", 144 * 1.25**0.5),
        (("gable area 24 wide 6/12", "wall area 36 by 9", "the gable again"), "gable area", 72),
        (("miter for a 95 degree corner", "in three pieces"), "corner in several pieces", 21.25),
        (("rise over 3.6 m at 22 degrees", "4.2"), "rise over a run", 4200 * 0.404026),
    ],
)
def test_what_is_worked_next(lines: tuple[str, ...], topic: str, value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["value"] == pytest.approx(value, abs=0.005)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("wall 36 by 9 area", "in squares", "make the wall 40"), 3.96),
        (("wall 36 by 9 area", "in squares", "make the wall 40", "less a 3 by 7 door"), 3.729),
        (("gable area 24 wide 6/12 less a window 2 by 3", "in squares", "make the window 3 by 4"), 0.66),
        (("wall 36 by 9 area", "in squares", "no waste"), 3.24),
        (("roof area 40 by 24 at 6/12", "in squares", "16 inch overhang"), 13.993),
    ],
)
def test_a_change_of_the_wall_goes_through_to_its_squares(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert record["topic"] == ("roof area" if lines[0].startswith("roof") else "squares")
    assert record["answer"]["value"] == pytest.approx(value, abs=0.005)


STRAPS = "strapping 36 foot wall 9 foot high 16 on centre"


@pytest.mark.parametrize(
    ("lines", "name", "text"),
    [
        ((STRAPS, "from 12 footers", "at 24"), "stud spacing", "24 in"),
        ((STRAPS, "from 12 footers", "on 24s"), "stud spacing", "24 in"),
        ((STRAPS, "how many 12s do i need"), "stock", "12 footers"),
        ((STRAPS, "how many sticks from 12 footers"), "stock", "12 footers"),
        (("marks on centre 16 in 20 foot", "at 24"), "spacing", "24 in"),
        (("cut list stock 16, 4 at 52, 6 at 37 1/2", "no 37 1/4"), "pieces", "4 at 52 in, 6 at 37 1/4 in"),
        (("cut list stock 16, 4 at 52, 6 at 37 1/2", "make the 52s 54"), "pieces", "4 at 54 in, 6 at 37 1/2 in"),
        (("cut list stock 16, 4 at 52, 6 at 37 1/2", "and 3 at 24"), "pieces", "4 at 52 in, 6 at 37 1/2 in, 3 at 24 in"),
        (("roof area 40 by 24 at 6/12", "15 percent"), "waste", "15 percent"),
        (("siding 30 by 9 wall 7 exposure 16 footers how many boards", "8 high"), "wall height", "8 ft"),
        (("how many 12 foot boards for 250 square feet at 6 inch", "exposure 5", "300"), "area", "300 ft²"),
        (("window sill 34 head 82 wall 108 courses 5 to 7", "sill 36"), "sill", "36 in"),
        ((STRAPS, "10 foot lengths"), "stock", "10 foot"),
        (("compound cut slope 20 corner 90", "25", "92"), "corner", "92°"),
        (("compound cut slope 20 corner 90", "92", "24"), "spring angle", "24°"),
        (("roof area 40 by 24 at 6/12", "15 percent", "44 long"), "length", "44 ft"),
    ],
)
def test_a_number_goes_where_it_belongs(lines: tuple[str, ...], name: str, text: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered"
    assert {row["name"]: row["text"] for row in record["givens"]}[name] == text


@pytest.mark.parametrize(
    "lines",
    [
        ("right triangle rise 6 run 8", "run 9", "slope 12 instead", "how long"),  # refused, and read on from by nobody
        ("wall 36 by 9 area", "strapping on the lake wall at 16"),
        ("wall 36 by 9 area", "courses at 7 inch", "so how many boards from 12 footers"),
        ("gable end 24 wide 10 high less a 3 by 7 door, area",),
        ("miter for 92", "back to the roof"),
        ("soffit 48 foot 16 deep 12 inch panels", "vent area for it"),
        ("cut list stock 16, 4 at 52, 6 at 37 1/2", "12"),
    ],
)
def test_what_is_in_doubt_is_not_answered(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] in ("asks", "declined")


def test_a_gap_of_balusters_is_no_air_gap() -> None:
    record = last("10 balusters 1 1/2 in 6 foot equal spacing, gap under 4", "less than 4 inch gap")
    assert "say more pieces" in record["say"]


def test_what_had_no_place_is_left_out_aloud() -> None:
    record = last("squares for 264 square feet", "44 long")
    assert record["outcome"] == "asks" and "How high is the wall" in record["ask"]  # another wall, and no part of the area


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("how many boards", "36 long 9 high", "6 inch exposure", "12 footers"), 60),
        (("squares", "36 foot by 9 foot 6"), 3.762),
        (("squares", "10 by 4 m"), 4.736),
    ],
)
def test_the_sizes_of_a_wall_tell_its_area(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value, abs=0.005)


@pytest.mark.parametrize(
    ("reply", "topic"), [("crown", "compound cut"), ("it's sprung", "compound cut"), ("flat", "miter for a corner")]
)
def test_crown_by_its_corner_alone_names_both_readings(reply: str, topic: str) -> None:
    assert last("corner 90 crown")["ask"] == "Do you mean a miter for a corner or a compound cut?"
    assert last("crown 90")["outcome"] == "asks"
    assert last("corner 90 crown", reply)["topic"] == topic


def test_what_is_taken_out_one_after_the_other_adds_up() -> None:
    lines = ["wall 36 by 9 area", "less a 3 by 7 door", "less a 3 by 4 window", "less a 2 by 3 window", "minus a 2 by 2"]
    assert last(*lines)["answer"]["value"] == 324 - 21 - 12 - 6 - 4
    assert last(*lines, "make the door 3 by 6")["answer"]["value"] == 324 - 18 - 12 - 6 - 4


@pytest.mark.parametrize("line", ["minus 1/8 each", "less a 3 by 7 opening", "plus 1/8 each"])
def test_what_is_put_to_nothing_is_no_sum(line: str) -> None:
    assert last(line)["outcome"] == "asks"


def test_so_much_each_goes_on_from_the_part() -> None:
    assert last("divide 97 1/2 into 5", "minus 1/8 each")["answer"]["value"] == 19.375


def test_a_unit_said_alone_is_the_answers_or_asked_about() -> None:
    assert last("gable height 6/12 28 foot wide", "metres")["answer"]["unit"] == "mm"
    assert "I meant inches" in last("rise over run 7/12 16", "inches")["ask"]


@pytest.mark.parametrize("line", ["no five windows", "make it five windows", "only 5 windows"])
def test_windows_counted_again_are_no_height(line: str) -> None:
    record = last("wall 40 by 9 area less six windows 3 by 4", line)
    assert record["answer"]["value"] == 360 - 60


def test_a_door_does_not_take_the_place_of_windows() -> None:
    lines = ["wall 40 by 9 area less six windows 3 by 4", "two doors 3 by 7"]
    assert last(*lines)["answer"]["value"] == 360 - 72 - 42
    assert last(*lines, "one door")["answer"]["value"] == 360 - 72 - 21


def test_the_rake_after_a_gables_height_is_no_pitch() -> None:
    assert "Rake length: 210" in last("gable 28 wide 9/12 height", "and the rake")["say"]
