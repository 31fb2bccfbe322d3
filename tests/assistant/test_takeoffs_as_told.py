"""Take-offs as people tell them: face by face, how many after what, a price for what there is of it; and what is asked."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation

ANSWERED = [
    # faces told one by one, with words between
    ("We have two walls, one's 30 by 9 and the other is 24 by 9. Total square feet.", "wall area", 486),
    ("Two walls at 34 by 8 foot and one at 20 by 8, how many squares with no waste", "squares", 7.04),
    ("two walls 30 by 9 and another 24 by 9, area", "wall area", 756),
    ("Side walls 36 by 8, both of them, end walls 24 by 8, both. How much am I covering?", "wall area", 960),
    ("I've 2 end walls, 24 by 8 each, and 2 long walls, 36 by 8 each. All in, what area", "wall area", 960),
    ("one wall's 9.2 m by 2.7 and the other is 6.4 by 2.7, cladding area", "wall area", 42.12),
    ("four sides of a shed 14 by 20, eight foot walls, how many squares with no waste", "squares", 5.44),
    # what is no face
    ("wall 30 by 9, and a 9 by 8 slider in it, area", "wall area", 198),
    ("Lap is 6 in. Roll is 9 ft by 100 ft. Wall is 60 ft by 10 ft. How many rolls?", "membrane rolls", 1),
    ("wall 7.2 by 2.4, windows 1200 x 900 and 600 x 600, net area", "wall area", 15.84),
    # openings: how many said after, feet and inches each way, millimetres beside metres
    ("wall 40 by 9, 3 by 5 windows, three of them, one 3 by 7 door, area left", "wall area", 294),
    ("wall 7.8 m long, 2.55 high, take out a 1.2 x 1.0 window twice and a 900 x 2100 door once", "wall area", 15.6),
    ("Wall: 28 feet. Height: 9 feet 6. Windows: five, each 30 by 54 inches. Net area.", "wall area", 209.75),
    ("take a six eight by three foot door off a wall of 14 by 8, area", "wall area", 92),
    ("2 8 by 6 8 door in a wall 20 by 8, net area", "wall area", 160 - 32 * 80 / 144),
    ("wall 30 by 9 with one 3 by 6 8 door, net area", "wall area", 250),
    ("wall 20 by 8 less two 6 by 6 8 doors, net area", "wall area", 80),
    ("A wall 5.4 by 2.4 has a window 1200 by 900. Cladding area?", "wall area", 11.88),
    ("50 by 9 wall less 90 square feet of glass, squares with 12 percent", "squares", 4.032),
    # gables
    ("Both gables are 32 feet wide and nine twelve. What do the two come to?", "gable area", 384),
    ("how high does the gable come to at 24 wide and 8/12", "gable height", 96),
    # soffits: the pieces need no depth
    ("How many soffit panels for a 44 foot eave if each one covers 12 inches?", "soffit panels", 44),
    ("How many 300 mm soffit panels in 14.5 m of eaves?", "soffit panels", 49),
    ("How many soffit pieces for 48'6\" of eave with a 16\" panel, 20\" overhang", "soffit panels", 37),
    ("eave soffit run 27'6\" depth 18\" panel cover 12\"", "soffit panels", 28),
    # what a price or a weight is for
    ("I need 22 squares, they're $189 each. What's the bill?", "cost", 4158),
    ("they want €38.50 a square metre and I've 72 of them to cover", "cost", 2772),
    ("15 sheets, 4 by 8, at 1.5 pounds a square foot, weight of the lot", "weight", 720),
    ("siding runs 1.9 lb to the square foot and there's 1,120 feet of it, weight", "weight", 2128),
    ("1,400 sq ft at 4.35 a foot, what does it cost", "cost", 6090),
    ("38 square metres at 22 kilos", "weight", 836),
    ("16 foot fascia boards, nine of them, at $3.20 a foot, cost", "cost", 460.8),
    # runs and sets
    ("rakes are 19 feet each and there's four of em, trim stock's 16 foot, how many sticks", "trim sticks", 5),
    ("two legs at 81 and a head at 39 for each of five doors, stock is 14 foot, sticks?", "cut list", 7),
    ("each window needs two at 62 and two at 40, there's four windows, 16 foot stock", "cut list", 5),
    ("Starter strip for a house 30 by 50, twelve foot lengths.", "trim sticks", 14),
    ("screws every 8 inches along thirty one strips that are 8 foot long, how many", "fasteners", 403),
    ("40 straps, 8 feet, screwed every foot", "fasteners", 360),
    # sizes of the stuff that are none of the question's
    ("3/4 cedar, 6 inch exposure, 500 sq ft, 12 foot boards how many", "cladding boards", 92),
    ("1x8 boards 16 foot long with 7 inches showing, 600 sq ft, how many", "cladding boards", 71),
    ("how many boards 5 1/2 cedar, 12 footers, 300 sq ft", "cladding boards", 60),
    ("Wall is 30 by 9 less 40 square feet of glass. Boards 12 foot, 7 inch exposure. Boards?", "cladding boards", 37),
    ("girth for 100 up, 60 out, 25 down", "bent flashing", 185),
    ("flashing 4 up 3 out with a half inch hem, girth", "bent flashing", 7.5),
    # waste that is not wanted, and that is
    ("squares for 640 feet of wall, don't add anything", "squares", 6.4),
    ("squares for 640 square feet before waste", "squares", 6.4),
    ("squares for 640 square feet, I'll add the waste myself", "squares", 6.4),
    ("squares for 640 square feet, don't forget the waste", "squares", 7.04),
    ("squares for 640 square feet, don't leave out the waste", "squares", 7.04),
    ("squares for 640 square feet and don't add the garage", "squares", 7.04),
]  # fmt: skip


@pytest.mark.parametrize(("line", "topic", "value"), ANSWERED)
def test_it_is_answered_as_it_was_told(line: str, topic: str, value: float) -> None:
    record = Conversation().answer(line)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("line", "asked"),
    [
        ("a 24 by 24 garage and a wall 24 by 9, area of the wall", "24 by 24"),  # no face of it
        ("soffit is 24 inches wide and 40 ft long, how many panels", ""),  # wide is its depth
        ("How many soffit panels do I need, 12 inch cover, eave 18 inches deep?", "run"),
        ("soffit panels 12 inch cover, 16 foot long, eave 40 ft", "depth"),  # how many of those to buy
        ("22 squares of shingles in bundles at $40 each", ""),  # a bundle is no square
        ("400 square feet at 55 pounds", ""),  # no siding is so heavy
        ("how many 1x6 cedar boards for 300 sq ft, 12 footers", "exposure"),
        ("fascia: 4 runs at 28 feet, boards are 16 footers, number to buy", "trim sticks"),
    ],
)
def test_what_could_be_otherwise_is_asked(line: str, asked: str) -> None:
    record = Conversation().answer(line)
    assert record["outcome"] == "asks"
    assert asked in record["ask"]


@pytest.mark.parametrize("line", ["cut 3 pieces at 28 feet from 16 footers", "how many squares can I fit in a pickup"])
def test_what_cannot_be_is_declined(line: str) -> None:
    assert Conversation().answer(line)["outcome"] == "declined"
