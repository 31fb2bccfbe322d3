"""Lines of people who build in metres and millimetres, and name neither: what is certain is taken, what is not is asked about."""

from __future__ import annotations

import pytest

from tests.talking import last

GAP = "end gap, aluminium, 3.6 long, 5 degrees now, hottest 40, coldest minus 20"


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        ("wall area, 7.2 by 2.4", "17.28 m²"),  # no wall is 2.4 ft high
        ("area of a wall nine point six by two point four", "23.04 m²"),
        ("ladder foot, bearing at 4.4", "1100 mm"),
        ("gable height, 6.4 wide, 40 degrees", "2685 mm"),
        (GAP, "2.9 mm"),  # 40 °F is no summer
        ("nine of sheathing, twenty five batten, eighteen cladding, how deep to the face", "52 mm"),
        ("screw through twenty two cladding and thirty eight batten, thirty five into the stud", "95 mm"),
        ("cut four at sixteen hundred from four point twos three mil kerf", "2"),
        ("how deep with half inch ply and three quarter strapping", "1 1/4 in"),
        ("gable 6 wide 8/12 how high", "24 in"),
        ("gable 24 wide, 39 degrees, how high", "116 5/8 in (9 ft 8 5/8 in)"),
    ],
)
def test_what_can_be_one_unit_only_is_that(said: str, answer: str) -> None:
    record = last(said)
    assert (record["outcome"], record["answer"] and record["answer"]["text"]) == ("answered", answer), record["say"]


@pytest.mark.parametrize(
    ("lines", "asked"),
    [
        (("diagonal of 3.6 by 2.4",), "3.6 m and the other side 2.4 m, or the side 3.6 ft"),
        (("squares for a wall 2.6 by 9",), "2.6 ft and the wall height 9 ft, or the wall length 2.6 m"),
        (("wall 9.6 by 4.2, area",), "9.6 ft and the height 4.2 ft, or the length 9.6 m"),
        (("rise over 1.9 at 30 degrees",), "Is the run 1.9 m or 1.9 ft?"),
        (("how tall's the peak, 9.6 wide, 35 degrees",), "Is the gable width 9.6 m or 9.6 ft?"),
        (("how high's the gable, 6 wide", "40 degrees"), "Is the gable width 6 ft or 6 m?"),
        (("the roof is 39 degrees", "gable height five wide"), "Is the gable width 5 ft or 5 m?"),
        (("end gap, vinyl, 12 ft, 40 F now, hottest 50 F, coldest 0 F",), "Is the hottest 50 °F?"),
        (("courses for a 7.2 wall", "6"), "Is the height 7.2 m or 7.2 ft?"),
        (("gable 7.2 wide how high", "8/12"), "Is the gable width 7.2 m or 7.2 ft?"),
        (("24 square metres at 42 a square metre", "27"), "the price 42.00 and the area 27 m², or the price 27.00"),
    ],
)
def test_what_may_be_two_is_asked_about(lines: tuple[str, ...], asked: str) -> None:
    record = last(*lines)
    assert (record["outcome"], asked in record["ask"]) == ("asks", True), record["say"]


@pytest.mark.parametrize(
    ("lines", "answer"),
    [
        (("how high's the gable, 6 wide, 40 degrees", "and at 35", "metres"), "2101 mm"),
        (("valley length, run 2.7, 35 degree roof", "at 30?", "run's 2.4", "metres"), "3666 mm"),
        (("27 degrees and 62 percent, dew point", "26", "I said 36", "celsius"), "27.6 °C"),
        (("rise over 1.9 of run at 40 degrees", "6 metres"), "5035 mm"),  # another run, and no unit of the 1.9
        (("base is 4.2 by 2.7, diagonal", "measures 4990"), "−3 mm"),
        (("deck is 4.8 by 3.6, diagonal", "it measures 6008", "in inches"), "5/16 in"),
        (("diagonal of 3.6 by 2.4", "it measures 52 inches"), "1/16 in"),
        (("wall 2.6 by 9, squares, no waste", "2.6 metres"), "2.52 squares"),
        (("24 square metres at 42 a square metre", "27", "28", "the area"), "1176.00"),
        (("vinyl 12 ft long 30 F rise", "and 16", "20", "the length"), "1/4 in"),
        (("deck 3.6 m by 4.8 m diagonal", "4.2", "and the other way 3.9"), "5731 mm"),
        (("deck 3.6 m by 4.8 m diagonal", "4.2", "the other one"), "5532 mm"),
        (("courses for a two point five five wall", "one fifty"), "150 mm"),
        (("dew point at 68 F, 45 percent", "55", "at 60 F"), "43.8 °F"),  # the 55 was of the humidity
        (("square check 2400 mm by 1800 mm", "wrong, the second side is 1000 mm"), "2600 mm"),
        (("cladding boards 21 courses of 6.6 m, boards 4.8 m", "7.2 long", "the courses"), "35"),
        (("vinyl 3.6 m long 30 C rise", "and 4.2", "40"), "11 mm"),  # of the rise, as it is far from 4.2
    ],
)
def test_what_is_told_while_a_unit_is_in_doubt(lines: tuple[str, ...], answer: str) -> None:
    record = last(*lines)
    assert (record["outcome"], record["answer"] and record["answer"]["text"]) == ("answered", answer), record["say"]


def test_what_fits_no_way_is_none_of_them() -> None:
    lines = ("diagonal of 3.6 by 2.4", "it measures 100")
    assert last(*lines)["outcome"] == "asks"
    assert last(lines[0], "saw stops at 50")["topic"] == "remember"


@pytest.mark.parametrize("fix", ["no, it's a 40 degree roof", "sorry, 40 degrees", "actually it's 40 degrees"])
def test_what_the_job_knew_is_put_right_while_a_question_is_open(fix: str) -> None:
    assert last("the roof's 42 degrees", "gable height", fix, "24 ft", "peak cut")["answer"]["value"] == 40


@pytest.mark.parametrize(("line", "kept"), [("roofs thirty nine degrees", "39"), ("my roofs 22.5 degrees", "22.5")])
def test_a_roof_that_was_dictated(line: str, kept: str) -> None:
    record = last(line)
    assert (record["topic"], kept in record["say"]) == ("remember", True)
    assert last(f"{line} what's the pitch")["topic"] == "pitch of an angle"


@pytest.mark.parametrize(
    ("line", "kept"),
    [
        ("kerf is 3", "kerf 3 mm"), ("kerf is 1/8", "kerf 1/8 in"), ("lap is 100", "lap 100 mm"),
        ("exposure is 7", "exposure 7 in"),
        ("overhang is 12", "overhang 12 in"), ("overhang is 300", "overhang 300 mm"), ("stock is 12", "stock length 12 ft"),
    ],
)  # fmt: skip
def test_a_value_kept_with_no_unit_has_that_of_its_size(line: str, kept: str) -> None:
    assert f"Kept for this job: {kept}." in last(line)["say"]


@pytest.mark.parametrize(("line", "sticks"), [("how many 4.8s", 25), ("from 5.4s", 13), ("how many 3.6s do I need", 25)])
def test_what_straps_are_cut_from_is_no_height(line: str, sticks: int) -> None:
    record = last("strapping for a wall 9.6 m long and 2.7 m high at 400", line)
    assert [one["value"] for one in record["also"] if one["name"] == "sticks"] == [sticks]


def test_a_fall_over_an_odd_decimal_is_asked_about() -> None:
    assert "3.6 m" in last("fall of 1 in 80 over 3.6")["ask"]


def test_millimetres_in_place_of_metres() -> None:
    record = last("2.4 m wall, 3 metre exposure, courses", "300 I mean")
    assert record["answer"]["text"] == "300 mm"
    assert last("2.4 wall, 3 metre exposure, courses", "300 I mean", "and 2.5 high")["answer"]["text"] == "278 mm"
