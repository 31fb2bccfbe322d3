"""What is told or asked next of a roof, a screw or a row: tails, members, bites, openings more, the same again."""

from __future__ import annotations

import pytest

from tests.talking import last

RAKE = ("rake on a 26 foot wide gable at 8 in 12",)  # 156 / 12 · √208 = 187.5
RAFTER = ("shed roof run is 13 foot 4 at 3 in 12, how long is the rafter",)
GABLE = ("24 foot gable at 6 in 12, how high",)
SCREW = ("screw length through 1/2 ply, 3/4 strapping and 5/8 siding with 1 1/2 into the stud",)
ROW = ("11 balusters 1 1/2 wide in 72 inches with gaps at both ends, gap",)
TRIM = ("trim round six windows 3 by 4 foot all four sides",)
WALL = ("wall 34 by 9 less two windows 3 by 5 and a door 3-0 6-8, area",)
SOFFIT = ("13.5 m of eave 450 deep, panels cover 300, how many soffit panels",)
STEP = ("step flashing up 14 foot of wall, 5 inch exposure, how many",)  # 168 / 5: 34
COURSES = ("wall 8 foot 7 high, no more than 7 inches exposure, what comes out even",)


@pytest.mark.parametrize(
    ("lines", "topic", "value", "unit"),
    [
        ((*RAKE, "put a 16 inch tail on it, measured level"), "rake length", 206.72, "in"),
        ((*RAKE, "and if it runs past the wall by 16 inches measured level"), "rake length", 206.72, "in"),
        ((*RAKE, "put a 16 inch tail on it, measured level", "nah make that tail a foot"), "rake length", 201.91, "in"),
        ((*RAKE, "with 16 inch overhang", "and if there's no oversail"), "rake length", 187.49, "in"),
        ((*RAFTER, "stick an eighteen inch tail on it measured level"), "sloped length", 183.48, "in"),
        ((*GABLE, "whats the rake on it"), "rake length", 161, "in"),
        ((*RAKE, "OK, and both of them together at that pitch?"), "rake length", 374.98, "in"),
        ((*SCREW, "guy only has 3 inch ones, whats my bite"), "fastener penetration", 1.125, "in"),
        ((*SCREW, "no strapping on this wall"), "fastener length", 2.625, "in"),
        ((*ROW, "and if the posts were really 70 1/2 inches apart"), "equal spacing", 4.5, "in"),
        ((*TRIM, "there's seven of em actually"), "trim round openings", 1176, "in"),
        ((*WALL, "forgot one, make it three windows"), "wall area", 241, "ft2"),
        ((*SOFFIT, "that's only the front, there's another 13.5 m at the back, so both"), "soffit panels", 90, "count"),
        ((*SOFFIT, "there's another 13.5 m at the back", "supplier rang, his panels cover 250"), "soffit panels", 108, "count"),
        ((*STEP, "that's one side, do both sides of the dormer"), "step flashing", 68, "count"),
        (("planter with six equal sides, saw setting", "my daughter says eight would look nicer"), "polygon", 22.5, "deg"),
        (("column 11 inches across, how far round", "I put the tape on it again and it's 10 5/8 across"), "circle", 33.38, "in"),
        ((*COURSES, "how high up is the top of the 9th one at that"), "height of courses", 61.8, "in"),
        ((*COURSES, "top of the 4th one's how far up from the starter"), "height of courses", 27.47, "in"),
        ((*COURSES, "I can stretch to 7 1/2, so make it 14 courses"), "course layout", 7.357, "in"),
        (("six inch exposure at 9 in 12, how much does each course step in", "and what angle do i mark on the ends"),
         "end cut along the rake", 36.87, "deg"),
        (("six inch exposure at 9 in 12, how much does each course step in", "and what angle do i mark on the ends",
          "right so if the exposure's five and a half instead how much does it step"), "step at the rake", 7.333, "in"),
        (("house wrap for 2400 square feet, rolls 9 by 150, how many", "boss wants foot laps"), "membrane rolls", 2, "count"),
        (("5 1/2 western red cedar, flat grain, 9 to 15 percent, how much wider", "and if that one dries from 15 down to 9"),
         "wood movement", -0.0775, "in"),
        (("step flashing for a wall 14 foot along the roof, how many", "five inches, I just went up and measured one"),
         "step flashing", 34, "count"),
        (("deck 14 by 18 feet, diagonal", "I pulled 22 foot 11, how far out",
          "if I made the deck 16 by 18 instead, what's the diagonal"),
         "square check", 288.998, "in"),
        (("divide 80 inches into four parts", "three of those pieces end to end"), "tape arithmetic", 60, "in"),
    ],
)
def test_what_comes_next_is_in_the_terms_of_its_topic(lines: tuple[str, ...], topic: str, value: float, unit: str) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["say"]
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(value, abs=0.06), unit)


@pytest.mark.parametrize(
    "lines",
    [
        (*RAKE, "the cat has a 16 inch tail and no manners"),
        (*ROW, "the two towns are 70 miles apart"),
        (*TRIM, "there's seven of us actually"),
        ("planter with six equal sides, saw setting", "a day at 21 degrees would be nicer"),
        (*SCREW, "no luck on this wall"),
    ],
)
def test_other_things_in_such_words_change_nothing(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] != "answered"
