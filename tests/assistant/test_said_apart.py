"""What is told apart from the quantity it belongs to: a unit said once, a size by its name, a place, a kerf with each cut."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        # openings told to be in the wall, with more of them after
        ("wall is 36 foot long and 9 high, two windows 3 by 5 foot in it and a 36 by 80 inch door, how much to side", "274 ft²"),
        ("wall 30 by 9 with 3 windows 3 by 4 in it, and a 6 by 7 door in that wall, net area", "192 ft²"),
        ("wall 30 by 9, two six by six eight doors and a window 3 by 4, net", "178 ft²"),  # 6 ft 8 in high
        ("how many square metres on a wall 7.2 by 2.7 with a 1.8 by 1.2 window", "17.28 m²"),
        ("wall 24 ft by 8 ft with a 3 by 4 window, net area in feet", "180 ft²"),
        # areas in a row of which the last has the unit
        ("3 walls, 212, 318 and 190 sq ft. squares with 15% waste", "8.28 squares"),
        ("walls are 240, 310 and 96 square feet, how many squares, no waste", "6.46 squares"),
        ("two walls, 212 sq ft and 318 sq ft, how many squares, no waste", "5.3 squares"),
        ("wall 240 sq ft, 15 percent waste, squares", "2.76 squares"),
        # what lumber is called is no size
        ("eight pieces of 31 1/2 from 8 foot 1x4, how many sticks does that take", "3"),
        ("54 feet of trim from 16 foot 1x4 stock, how many sticks", "4"),
        ("cut 1x8 and 2x36 from 8 foot stock", "1"),
        # bent metal
        ("z bar two up inch and an eighth out one down, whats the stretchout", "4 1/8 in"),
        ("apron four inches up the wall, six down the roof with a half hem, blank width", "10 1/2 in"),
        ("three leg flashing 2 up 4 out 1 down, girth", "7 in"),
        ("46 lineal metres of trim, 3.6 m sticks, how many", "13"),
        ("openings 4 at 3 foot by 4 foot 6, wall 52 by 9 foot 6, what's left to side", "440 ft²"),
        ("wrap's 9 by 150, wall area 1840, 6 inch laps, how many rolls", "2"),
        # counts
        ("dozen pieces of 22 1/2 from 12 footers, how many sticks", "2"),
        ("couple dozen at 18 inches from 10 foot stock", "4"),
        ("dozen battens at thirty eight mil each, laid flat side by side, total width in mil", "456 mm"),
        # courses from nothing
        ("wall top 2700 mm, sill 900, head 2100, boards min 145 max 155, start from zero. exposure to hit sill", "150 mm"),
    ],
)
def test_in_a_takeoff(said: str, answer: str) -> None:
    record = last(said)
    assert (record["outcome"], record["answer"] and record["answer"]["text"]) == ("answered", answer), record["say"]


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        (
            "16 footer, five bits at 27 5/8 out of it, an eighth gone to the blade each cut. Whats left",
            "53 1/4 in (4 ft 5 1/4 in)",
        ),
        ("from a 16 footer five at 27 5/8 gone and an eighth per cut, what's left", "53 1/4 in (4 ft 5 1/4 in)"),
        ("take three lengths of 40 inches off a 12 foot stick, blade eats 1/8 a cut, what remains", "23 5/8 in"),
        ("three at 36 out of 12 foot with a sixteenth off each end, what's left", "35 7/8 in"),
        ("Deck board 5 1/2, gap 3/16, nine boards with eight gaps in between, overall width", "51 in (4 ft 3 in)"),
        ("tile 300, joint 3, seven tiles and six joints, how far in mm", "2118 mm"),
        ("floor to ceiling's 2438, skirting takes 145 and cornice 90. clear between in mm", "2203 mm"),
        ("From 3.6 metres I need to lose 47 mm off one end and 92 off the other. Remaining, in mm", "3461 mm"),
        ("2.44 metres less 63 mm in inches", "93 9/16 in (7 ft 9 9/16 in)"),
    ],
)
def test_on_the_tape(said: str, answer: str) -> None:
    record = last(said)
    assert (record["outcome"], record["answer"] and record["answer"]["text"]) == ("answered", answer), record["say"]


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        ("squaring up a bay window frame, sides are 52 and 67 and a half, what should I read across", "85 3/16 in"),
        ("diag 30x44 in", "53 1/4 in"),
        ("diagonal 12x16", "240 in"),
        ("wot wood the diagnal be on a sheet for foot by ate foot", "107 5/16 in"),
        ("wall area for eight foot by ten foot", "80 ft²"),  # "for" before a size is no four
        ("Leg one is 37 1/2, leg two is 22. Hypotenuse.", "43 1/2 in"),
        ("one leg 9, other leg 12 inches, hypotenuse", "15 in"),
        ("Offcut of a circle I'm matching, 400 wide, 55 high in millimetres, radius", "391 mm"),
        ("arch 36 wide 8 high, radius in mm", "616 mm"),
        ("Both pieces of 3 1/2 trim cut at 45 on a corner that's really 93. How far open is the joint", "1/4 in"),
    ],
)
def test_on_the_frame(said: str, answer: str) -> None:
    record = last(said)
    text = record["answer"]["text"].split(" (")[0] if record["answer"] else ""
    assert (record["outcome"], text) == ("answered", answer), record["say"]


@pytest.mark.parametrize(
    "said",
    [
        "2 walls, 8 and 240 sq ft, squares",  # 8 is the height
        "4 walls, 212, 318 and 190 sq ft, squares",
        "how many mm is 12 feet less 3",
        "12 plus 9 in mm",
        "shelf 31 7/8, take two 3/4 sides off it",  # 2 3/4, or two of 3/4
        "8 footer, cut five of 24, what's left",  # more than there is
        "rise 7 1/4, run 10 1/2, 13 rises and 12 runs, overall",
        "2 m plus 3.5 minus 40 mm",
    ],
)
def test_asked_about(said: str) -> None:
    record = last(said)
    assert record["outcome"] == "asks", (record["answer"], record["say"])


@pytest.mark.parametrize(
    "said",
    [
        "boards cut at 44, should be 45, 7 1/4 face how open",  # no corner of 45 was said
        "cut both pieces at 67 and the bay corner is 134, 3 1/2 face, how open is it",  # the angle of the edge
    ],
)
def test_no_gap_of_a_hand(said: str) -> None:
    assert last(said)["outcome"] in ("asks", "declined")


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        ("10 feet less three times eleven and a half", "85 1/2 in"),
        ("108 plus 4 times 7 1/4", "137 in"),
        ("46 5/8 plus a 1/4 gap either end", "47 1/8 in"),
        ("96 less 3 1/2, halve it", "46 1/4 in"),
        ("8 plus 3 times 2", "22"),  # numbers alone go as spoken
        ("from 5.1 m cut 3 of 1190 with 4 mm each cut, left?", "1518 mm"),
        ("cut 4 of 27 5/8 from 10 foot, whats left", "9 1/2 in"),
        ("4.8 m divided by 7 in mm", "686 mm"),
        ("1830 plus 915 less 38 in mm", "2707 mm"),
    ],
)
def test_as_spoken(said: str, answer: str) -> None:
    record = last(said)
    text = record["answer"]["text"].split(" (")[0] if record["answer"] else ""
    assert (record["outcome"], text) == ("answered", answer), record["say"]
