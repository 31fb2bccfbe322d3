"""Strips of a coil, the length of all boards, layers and a bite with no unit, faces counted after their size, and a quantity
that is said not to be the one."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "topic", "value"),
    [
        ("24 inch coil, piece wants 5 1/2 girth, strips across?", "strips from a coil", 4),
        ("how many of those 8 1/2 inch bent pieces can I get across a 24 inch coil", "strips from a coil", 2),
        ("flashing girth 190 mm, coil 600 mm wide, strips across", "strips from a coil", 3),
        ("bent flashing legs 1, 3 1/2, 1 1/2 from 24 in coil", "bent flashing", 6),
        ("lineal feet of 6 inch exposure siding for 340 square feet, no waste", "cladding boards", 680),
        ("running feet of boards, 16 courses on a 32 foot wall, no waste", "cladding boards", 512),
        ("25 strap, 12 ply, 20 board, 38 bite", "fastener length", 95),
        ("5/8 siding 3/4 strap 1/2 ply 1 1/4 bite", "fastener length", 3.125),
        ("So I've got 40 foam, 20 batten, 21 cladding and want 35 in solid wood, that's what screw?", "fastener length", 116),
        ("36 by 8 two side walls, 24 by 8 two end walls, area", "wall area", 960),
        ("380 sq ft, 1.9 pounds per, load on the trailer?", "weight", 722),
        ("So the porch roof drops 18 in over 6 foot, what's that per twelve?", "roof angle", 3),
        ("It's a 6 metre wide gable at 35 degrees with 400 sticking out, how long is each edge board?", "rake length", 4150.63),
        ("Nails every 16 inches on a 32 foot wall, both ends, sixteen courses. How many?", "fasteners", 400),
        ("battens at 400 on a 3600 wall starting at nought, how many?", "strapping", 10),
        ("crown is 45 degree, not the 38, corner 120", "compound cut", 22.2077),
        ("gable is 24 not 22 wide, 6 in 12, rake", "rake length", 160.997),
        ("cut at 22 1/2 each, the corner turned out 138 not 135, face 7 1/4, how wide is the gap", "how far open", 0.41084),
    ],
)
def test_it_is_worked_as_it_was_told(line: str, topic: str, value: float) -> None:
    record = last(line)
    assert record["topic"] == topic
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-4)


def test_what_is_not_known_is_no_strip_and_no_course() -> None:
    assert last("set out 7 posts over 32 feet")["outcome"] != "answered"


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("common rafter for 13 foot 4 of run at 6 and a half", 181.953),
        ("sloped length 14 foot run at 8", 201.911),
        ("rake on a 24 foot gable at 7", 166.709),
        ("run is 12 and it rises 5, how long is the slope", 13),
        ("brace, run 48 at 36 high how long", 60),
    ],
)
def test_a_bare_number_after_at_is_a_pitch_and_a_rise_is_none(line: str, inches: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(inches, rel=1e-4)


def test_what_the_panels_are_is_their_cover_and_what_the_soffit_is_its_depth() -> None:
    record = last("20 foot eave, 18 inch soffit, panels are 16 inch, how many panels")
    assert record["answer"]["value"] == 15


def test_two_who_tell_it_differently_are_asked_about() -> None:
    record = last("owner says it's 5/12, framer says 6/12, plumb cut?")
    assert record["outcome"] == "asks"
    assert "5 in 12" in record["ask"]
    assert last("plan says 24 wide, I measured 24 4, 6/12 gable, rake")["outcome"] == "answered"


@pytest.mark.parametrize(
    "line",
    [
        "3 m aluminium, it's going from minus thirty to plus forty five celsius, how much will it move",
        "3 m aluminium, coldest here is 30 below, hottest is 45, celsius, how much travel",
    ],
)
def test_below_nothing_to_above_it_is_one_range(line: str) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(3000 * 75 * 23e-6, rel=0.06)


@pytest.mark.parametrize(
    ("line", "topic", "value"),
    [
        ("Aluminium angle, 60 mm and 90 mm, out of 450 mm coil. How many across?", "bent flashing", 150),
        ("an L flashing 4 by 4, what's it take out of the coil", "bent flashing", 8),
        ("My tape cost eight dollars and it shows. What's 41 3/16 minus 17 7/8?", "tape arithmetic", 23.3125),
        ("bench 6 foot long, legs in 4 and a half from each end, outside to outside of the legs", "tape arithmetic", 63),
        ("I need seven pieces at 52 inches. Sticks are 14 ft, $23 each. How many and what does it come to?", "cut list", 3),
    ],
)
def test_what_only_looks_like_it(line: str, topic: str, value: float) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == (topic, pytest.approx(value))


@pytest.mark.parametrize(
    "line",
    [
        "how many linear feet can you nail an hour at 5 1/2 exposure with a coil gun",
        "how many nails a minute can a coil nailer shoot, 616 of them to go",
        "He got 14 out of a coil 24 wide and thought he'd won the lottery",
    ],
)
def test_a_coil_of_nails_is_none_of_metal(line: str) -> None:
    assert last(line)["outcome"] == "declined"


@pytest.mark.parametrize(
    ("line", "count"),
    [
        ("screws 2 a stud, 19 studs, 14 boards, how many", 532),
        ("22 courses, 27 studs, 2 nails each, how many nails", 1188),
        ("16 courses 32 feet long every 16 inches, nails, 2 a stud", 800),
        ("the row of nails goes every 8 inches along 10 foot, starting right at the end, number of spots", 16),
    ],
)
def test_so_many_a_stud(line: str, count: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("fasteners", count)


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("brace 48 along the post and 36 out, how long", 60),
        ("65 up the slope, 25 rise, level run?", 60),
        ("9 rails at 12.25 each end to end", 110.25),
    ],
)
def test_legs_and_lengths_that_words_tell(line: str, inches: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(inches)


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("eight boards at 5 and 5 eighths with quarter gaps, total width", 46.75),
        ("6 pieces at 11 and 3/8 with eighth inch gaps, how long overall", 68.875),
        ("4 boards at 5 1/2 with quarter gaps at both ends too, total", 23.25),
        ("nine boards at 5 1/2 with eight gaps of 1/4, total width", 51.5),
    ],
)
def test_gaps_are_one_fewer_than_the_pieces(line: str, inches: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(inches)


def test_the_overhang_of_a_roof_by_its_plan_is_in_its_area() -> None:
    record = last("roof's 24 by 36 with 12 inch overhangs at 5 in 12, how many squares")
    assert record["answer"]["value"] == pytest.approx(26 * 38 * 13 / 12 * 1.1 / 100)  # in squares, with the waste


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("take 2 foot 7 off 9 foot 1 and a half twice", 47.5),
        ("10 foot minus 6 and 3/4 three times", 99.75),
        ("96 less 3 1/2 twice", 89),
        ("add 3 and 4 1/2, all that twice", 15),
        ("14 and 3/8 three times", 43.125),
    ],
)
def test_how_often_is_of_the_last_thing_done(line: str, inches: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(inches)


def test_what_comes_off_is_never_what_is_left() -> None:
    record = last("door is 80 inches, carpet's 5/8 and I want 1/4 clear, how much do I take off the bottom")
    assert record["outcome"] == "asks" or record["answer"]["value"] == 0.875


@pytest.mark.parametrize(
    ("line", "sticks"),
    [
        ("inside corner posts 2 at 8 foot 10 and outside 4 at the same, 10 foot stock", 6),
        ("cut 3 at 40 and 2 of the same from 12 footers", 2),
        ("4 at 31 1/2, two more the same, 10 foot stock", 2),
    ],
)
def test_so_many_more_the_same_are_cut_too(line: str, sticks: int) -> None:
    assert last(line)["answer"]["value"] == sticks


@pytest.mark.parametrize(
    ("line", "pitch"),
    [
        ("it's 28 foot across, 4 foot 8 up at the middle, pitch", 4),
        ("24 wide and 6 foot high at the ridge, pitch", 6),
        ("12 foot wide lean-to, rises 3 foot, pitch", 3),
        ("the deck's 12 wide and drops 3 inches, pitch", 0.25),
    ],
)
def test_a_width_under_a_peak_is_twice_the_run(line: str, pitch: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(pitch)


def test_what_another_wall_took_is_no_count_of_this_one() -> None:
    record = last("we did the north wall Tuesday with 14 courses, the lake wall's 8 foot 3 and 7 max, how many on that one")
    assert record["answer"]["value"] == pytest.approx(99 / 15)
    assert last("14 courses on the north wall, it's 8 foot 3")["answer"]["value"] == pytest.approx(99 / 14)


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("9 brackets on 16 foot starting 6 inches in from each end", 22.5),
        ("7 hooks on a 6 foot rail, 4 inches in from both ends, how far apart", 64 / 6),
        ("5 pickets 3 1/2 wide in 48 inches", 7.625),
    ],
)
def test_so_far_in_from_each_end_is_no_width(line: str, inches: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(inches, abs=0.001)


@pytest.mark.parametrize(
    "line",
    [
        "6 lights across 51 inches with 7/8 bars between, how wide each",
        "deck is 14 foot 9 wide, boards are 5 and a half with a quarter between, how wide's the last one",
        "two boards butt at the corner, one's 11 foot 4 and the other 9 foot 7, total",
    ],
)
def test_what_is_not_known_to_be_a_sum_is_asked_about(line: str) -> None:
    assert last(line)["outcome"] == "asks"
