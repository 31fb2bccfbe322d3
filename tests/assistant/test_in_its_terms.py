"""What a line tells of the question before in words of the job is told in the terms of its topic; where it may be two things, it
is asked about."""

from __future__ import annotations

import pytest

from tests.talking import last

RAIL = "equal spacing 7'3\" between posts, pickets 1 1/2 wide, gap at each end too, nothing over 4 inches"
COURSES = "course layout for a wall 8 foot 6 with exposure no more than 6"
VENTS = "vent area for a 1250 square foot attic, 1/300"
FRAME = "how far out of square is a frame 838 by 2040 that measures 2212 mm"
STRAPS = "straps on a 31 foot wall at 24"
WALL = "area of a wall 34 by 8.5"
SHEETS = "wall 30 by 8 how many sheets"
SUM = "18 foot less 6 inches"
MOVES = "vinyl siding 12 foot long from -30 to 35 celsius, how much does it grow"
STEP = "six inch exposure under an eight in twelve rake, how much shorter is every course at the one end"


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        ((RAIL, "what if the pickets were 2 inch"), "equal spacing", 3.9333),
        ((COURSES, "what would the exposure be with eighteen"), "course layout", 5.6667),
        ((COURSES, "how many courses", "what would it be with 18"), "course layout", 5.6667),
        (("height of 9 courses at 5 inch", "and the twenty first one"), "height of courses", 105),
        ((COURSES, "how high up is the top of the seventh one"), "height of courses", 42),
        ((VENTS, "inspector wants one in a hundred and fifty"), "vent area", 1200),
        (("venting for a 1250 square foot attic", "one in three hundred", "inspector wants 1/150"), "vent area", 1200),
        ((VENTS, "we're only counting 900 sq ft of it"), "vent area", 432),
        ((FRAME, "I was reading the tape wrong, it's 2208"), "out of square", 2.5876),
        ((FRAME, "no, it's 2209"), "out of square", 3.5876),
        ((FRAME, "i measured the height wrong, it's 2042"), "out of square", 4.738),
        ((FRAME, "and what should it measure?"), "square check", 2205.4124),
        ((FRAME, "what should one 926 wide measure?"), "square check", 2240.3294),
        (("diagonal of 3 foot 6 by 8 foot", "what about 3 foot"), "square check", 102.53),
        ((WALL, "theres a patio door in it 6 foot by 6 foot 8, take that out"), "wall area", 249),
        (("how many 600 mm pieces from a 2.4 m stick", "got five of those, so how many bars altogether"), None, 15),
        (("fall on a 165 mm sill at 8 degrees", "ease it to 7 degrees"), "fall", 20.2595),
        (("dew point at 18 C and 70 percent", "it's dropped to 15 down there"), "dew point", 9.5693),
        (("dew point at 15 C and 70 percent", "and if the humidity climbs to 80?"), "dew point", 11.58),
        (("14 sheets at 38 kg each, weight", "and the same number of 12 mil at 25 and a half kilo"), "weight", 357),
        (("14 sheets at 38 kg each, weight", "and the same number of oak at 20 kilo", "so both lots together?"), "weight", 812),
        (("roof area 16 by 20 at 5/12", "with a one foot overhang all the way around"), "roof area", 429),
        ((SHEETS, "at 32 screws a sheet how many boxes of a hundred is that"), "boxes", 3),
        ((SHEETS, "at 32 screws a sheet how many screws is that"), "by the same rate", 256),
        (("peak joint on a 35 degree roof", "what's that as so many in twelve"), "pitch of an angle", 8.4025),
        (("plumb cut for 5/12", "addition matches that pitch, 16 by 20 feet in plan, how much roof area?"), "roof area", 346.67),
        ((SUM, "half that", "ah no not half i want three equal bits out of it"), "tape arithmetic", 70),
        ((SUM, "half that", "no not half, a third"), "tape arithmetic", 70),
        ((SUM, "half that", "no, divided by 3"), "tape arithmetic", 70),
        ((MOVES, "and its five degrees out today so what gap do i leave at the end of it"), "end gap", 0.289),
        (
            (STEP, "what angle do i mark on the ends off the long edge", "back to how much each one loses at ten in twelve"),
            None,
            7.2,
        ),
        (("fourteen sheets of 18 mil MDF at 38 kilo each, what's the load",), "weight", 532),
        ((SHEETS, "at 28 screws a sheet how many boxes of 100", "and at 36 a sheet"), "boxes", 3),
        ((VENTS, "how many 60 sq in vents is that", "we're only doing 600 square feet of it"), "vent area", 288),
        (("strip round a circular window 600 mm across", "how many 2.4 metre lengths is that"), "trim sticks", 1),
    ],
)
def test_it_is_told_in_the_terms_of_its_topic(lines: tuple[str, ...], topic: str | None, value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    assert topic is None or record["topic"] == topic
    assert record["answer"]["value"] == pytest.approx(value, rel=0.005)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        ((VENTS, "how many 50 square inch roof vents is that?"), 12),
        ((STRAPS, "walls nine high how many feet of strapping all told"), 1836),
        (("straps on a 7 m wall at 600", "walls 2.7 high how many metres of strapping all told"), 35100),
    ],
)
def test_what_it_asks_of_the_change_is_read_off(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "noted", record["say"]
    assert [line["value"] for line in record["also"]] == [pytest.approx(value)]


@pytest.mark.parametrize(
    "lines",
    [
        (RAIL, "what if the pickets were 12"),
        ("diagonal of 12 by 14", "what about 13"),
        (FRAME, "sorry, 2045"),
        (FRAME, "what should one 1500 wide measure"),
        ("frame 1200 by 1500, diagonal", "what should a 1250 wide one measure"),
        (SHEETS, "40 nails a stud, how many boxes of 500"),
        ("miter for a 35 degree corner", "what's that as so many in twelve"),
        ("rake return at 40 degrees plumb", "what's that as so many in twelve"),
        ("12 bags at 25 kg each, weight", "no, 20 kg", "both lots together"),
        (SUM, "no not half, three equal bits"),
        ("strip round a circular window 900 mm across", "two of those", "how many 2.4 metre lengths is that"),
    ],
)
def test_what_may_be_two_things_is_not_taken_for_one(lines: tuple[str, ...]) -> None:
    record = last(*lines)
    assert record["outcome"] in ("asks", "declined"), record["say"]
