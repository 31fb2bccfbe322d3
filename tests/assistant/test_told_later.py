"""What a later line tells: one of a row, a choice, that there is none of something, one side of a door, so many of them."""

from __future__ import annotations

import pytest

from tests.talking import last

SLATS = "9 slats 70 wide across 1800, equal gaps, gaps at both ends too"
LEGS = "flashing legs 20, 80, 35 and 10, what girth"
WALL = "depth to the face, 9 sheathing, 19 batten, 22 cladding"
RAKE = "rake, 5 wide, 24 degrees, 250 overhang"
SCREW = "screw through a 21 board and a 25 batten, 35 into the stud"
DROPS = "aluminium, 4.8 m long, temperature drops 25 C, how much"
SPRUNG = "sprung trim, 38 from the ceiling, 90 corner"
BAY = "36 degree bay, saw?"
PIECES = "kerf is 3, cut 3 at 1450 from 4.8 lengths"
DOOR = "wall 32 by 9 ft less a door 3 by 7"
CEDAR = "vertical grain western red cedar, 140 wide, 10 to 14 percent"
BOARDS = "boards for 30 square metres, 150 cover, 4.8s"
FEET = "boards for 300 square feet 12 ft long 7 inch exposure"


@pytest.mark.parametrize(
    ("lines", "answer"),
    [
        ((SLATS, "no gap at the ends"), "146 mm"),
        ((SLATS, "without a gap at the ends"), "146 mm"),
        ((SLATS, "no gaps at the ends, 10 slats"), "122 mm"),
        ((SLATS, "no, gaps at the ends"), "117 mm"),  # as it was
        ((LEGS, "80's 90"), "155 mm"),
        ((LEGS, "the 35 is 40"), "150 mm"),
        ((LEGS, "how many out of a 625 coil", "80 should be 90"), "155 mm"),
        ((LEGS, "make the 80 a 90"), "155 mm"),
        ((WALL, "and a 38 batten", "no, 25"), "56 mm"),
        ((WALL, "with 12 sheathing", "sorry, fifteen"), "56 mm"),
        ((WALL, "add 12 ply"), "62 mm"),
        ((SCREW, "30 in the stud"), "76 mm"),
        ((SCREW, "batten's 38", "and 30 in the framing"), "89 mm"),
        ((RAKE, "no overhang and 5.4 wide"), "2956 mm"),
        ((RAKE, "5.4 wide and no overhang"), "2956 mm"),
        ((RAKE, "without the overhang, 40 degrees"), "3264 mm"),
        ((BOARDS, "no waste and 45 square metres"), "63"),
        ((DROPS, "goes up 25"), "2.8 mm"),
        ((DROPS, "and 30"), "−3.3 mm"),
        ((DROPS, "and if it rises 30", "drops 20"), "−2.2 mm"),
        ((CEDAR, "flat grain"), "1.3 mm"),
        ((CEDAR, "flat grain", "185 wide"), "1.7 mm"),
        ((SPRUNG, "no, from the wall"), "31.6°"),
        ((SPRUNG, "from the wall I should say"), "31.6°"),
        ((BAY, "no sorry it's a corner of 124"), "28°"),
        ((BAY, "the corner's 124"), "28°"),
        ((BAY, "it's a 30 degree bay"), "15°"),
        ((PIECES, "make it five of them"), "2"),
        ((PIECES, "what's left over", "sorry, 6 of those"), "2"),
        ((DOOR, "no the door is 8 high"), "264 ft²"),
        ((DOOR, "the door's 4 foot wide", "the wall is 10 high"), "292 ft²"),
        (("wall 9.6 m by 2.4 m less a door 2.1 by 0.9", "no the door is two metres high"), "21.24 m²"),
        (("wall 10 m by 2.7 m less a 2400 by 2110 sliding door", "the door is 2.2 m high"), "21.72 m²"),
        (("diagonal of a 3 foot by 7 foot frame", "three foot by six foot"), "80 1/2 in (6 ft 8 1/2 in)"),
        (("diagonal of 3.6 m by 2.4 m", "I measure 4335, how far out"), "8.3 mm"),
        (("gable height, 6.4 wide, 40 degrees", "and the area of it", "what if it's 45"), "10.24 m²"),
        (("rake return, 35 degree roof", "fascia's square to the rake on this one"), "45°"),
        ((BOARDS, "at 7.2 kilos each, weight"), "331.2 kg"),
        ((FEET, "what does that weigh at 2 pounds a square foot"), "600 lb"),
        ((FEET, "at twelve fifty each"), "600.00"),
        ((FEET, "at twenty each"), "960.00"),
        (("house wrap rolls for 190 square metres, 1.5 by 50, no laps", "two hundred and forty"), "4"),
        (("weight of 32 boards at 7.5 kilos", "split between three trips"), "80 kg"),
        (("cost of 30 boards at 12", "split three ways", "40 boards"), "480.00"),
        (("wall 8.1 by 2.7 m less two windows 1.2 by 1.05", "they're 1.5 wide"), "18.72 m²"),
        (("wall 32 by 9 ft less two windows 3 by 4", "each is 5 high", "it's 10 high"), "290 ft²"),
        (("cut 12 noggings at 362 from 4.8s", "14 of them", "from 3.6s"), "2"),
        (("courses, sill 900 head 2100 wall 2700 between 120 and 160", "between 160 and 210"), "200 mm"),
        (("ten foot by seven foot six squared up, corner to corner?", "twelve by nine"), "180 in (15 ft)"),
        (("height 9 foot, base 3 foot, slope length?", "angle?", "base 4 foot"), "118 3/16 in (9 ft 10 3/16 in)"),
        (("145 inches in three", "four parts please"), "36 1/4 in (3 ft 1/4 in)"),
        (("wall 6.3 by 2.4 m and gable 1.5 m high on top, area", "gable 1.8 high"), "20.79 m²"),
        (("water in a channel 100 wide 60 deep 3 m long", "half full"), "9 L"),
        (("water in a channel 4 in wide 2 deep 10 ft long", "only half full so an inch deep"), "480 in³"),
        (("rake return 35 degrees", "square fascia", "plumb again"), "62.5°"),
        (("peak joint 32 degrees", "35 after all"), "35°"),
        (("marks on centre 600 along 5.4 m", "from 200"), "9"),
        (("vent area 105 square metres 1/150", "in square inches"), "1085 in²"),
    ],
)
def test_what_changes_is_what_the_line_tells(lines: tuple[str, ...], answer: str) -> None:
    record = last(*lines)
    assert (record["outcome"], record["answer"] and record["answer"]["text"]) == ("answered", answer), record["say"]


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        (("rake return, 40 degree roof", "what's the other corner set to"), "other corner's setting 25"),
        (("rake return, 40 degree roof", "what is the corner"), "Corner 50"),
        (("miter for a 120 corner", "what's that on the edge"), "Edge angle: 60"),
        (("course layout, 2.55 m high, about 150", "fourth mark?", "how many is that"), "Courses: 17"),
        ((PIECES, "what's left over"), "Length of each offcut kept: 441"),
        ((DOOR, "how much came out"), "Openings: 21 square feet"),
        (("ladder 5.4 m up", "is a 6.5 m ladder long enough"), "Working length: 5566"),
    ],
)
def test_what_is_read_back(lines: tuple[str, ...], said: str) -> None:
    record = last(*lines)
    assert (record["outcome"], said in record["say"]) == ("noted", True), record["say"]


@pytest.mark.parametrize(
    "lines",
    [
        (WALL, "no, 25"),  # of which layer
        (LEGS, "50's 60"),  # there is no 50
        ("wall 32 by 9 ft", "the door's 4 foot wide"),
        ("3 at 1150 and 2 at 875 total", "less 3 mm each"),  # of how many
        ("aluminium, 4.8 long, temperature drops 25, how much",),  # nobody takes a length off a temperature
    ],
)
def test_what_cannot_be_told_is_never_answered(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] != "answered"


def test_no_is_no_yes_with_a_number_in_it() -> None:
    lines = ("27 straps on a wall 31 feet long at 16 inches", "my father in law says every twenty four inches is plenty")
    assert last(*lines)["ask"].startswith("Do you mean")
    assert last(*lines, "no sixteen was right and it is one strap too many")["outcome"] != "answered"
