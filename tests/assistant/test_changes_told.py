"""Changes told by so much, with what stays, with a story; openings and the saw after an answer; what is told in a story."""

from __future__ import annotations

import pytest

from tests.talking import last

WALL = "area of a wall 30 foot long and 9 foot high"
STICKS = "stock 12 foot, four at 70 inches and two at 36 inches, how many sticks"
CORNER = "miter for a 135 degree corner"


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        ((WALL, "make it two foot longer"), 288),
        ((WALL, "six inches higher than that"), 285),
        (("roof angle of 6/12", "what if it was two steeper"), 33.69),
        (("hip length for a 12 foot run at 6/12", "make it a foot shorter"), 198),
        ((STICKS, "stock 16 foot, same pieces"), 2),
        ((STICKS, "Change the stock to 16 foot, 192 inches, same six pieces"), 2),
        (("drop of a sill 6 inches wide at 5 degrees", "8 inches and a half wide, same slope"), 0.744),
        (("90 degree corner in three pieces", "Four pieces, one more than before."), 15),
        (("pitch for a rise of 7 and a half over a run of 18 inches", "the rise is 8 and a quarter, run still 18"), 5.5),
        (("girth of legs 3, a half and 4 inches", "the last leg is 4 and a half, not 4"), 8),
        (("area of a wall 7.4 m long by 2.6 high", "less a window 1.2 by 1.5"), 17.44),
        (("area of a wall 8.2 m by 2.4 m", "take out two windows 1.2 by 0.9"), 17.52),
        ((WALL, "Oh and there's two windows in it, both 3 by 4 foot, take those off"), 246),
        (("42 boards at 18.75 each, what do they cost", "the yard rang and it's gone up to 21.50, robbery, so at that?"), 903),
        (("squares for 1275 sq ft", "my wife says fifteen percent would be safer, so go fifteen"), 14.6625),
        (("miter for a box with six sides", "she wants eight sides now, apparently six is unlucky"), 22.5),
        (("ladder footing for 16 foot", "it turned out to be 18 foot, so what now"), 54),
        (("940 square feet, how many squares, no waste", "and what about the other side, that one's 815"), 8.15),
        ((CORNER, "I checked the back one and that one's 128"), 26),
        (("the roof is seven twelve", "rake return", "no I said for twelve"), 54.2175),
        (("gap of 7 battens 45 mm wide across 1200", "eight battens"), 120),
    ],
)
def test_changed(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value, rel=2e-3)


@pytest.mark.parametrize(
    "lines",
    [
        ("square check 12 by 16 foot", "no, make it 14"),  # the 12 has its unit said after the 16
        ("square check 12 by 16", "two foot longer than that"),
        ("miter for a box with six sides", "the wife wants 2 sugars in her tea"),
        ("courses for a 9 foot wall at 7 inches", "hand us up two of the fourteen footers"),
        ("cost of 40 boards at 18 dollars", "the owner wants it done by 5"),
        ("rise over a 12 foot run at 5/12", "the boss wants 3 foot of cable"),
        (CORNER, "that one is the north wall"),
    ],
)
def test_no_answer_where_nothing_is_changed_for_sure(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] in ("asks", "declined")


ASKED = ["rake return at 5/12", "rake length for a 24 foot gable at 6/12", "square check 12 by 16 foot",
         "squares for 1275 square feet", "ladder footing for 16 foot", "cost of 40 boards at 18 dollars",
         "3/8 inch in mm"]  # fmt: skip
CHAT = ["that one's done", "number 4 is next", "only 2 to go", "page 12 says otherwise", "it's a 2 man job",
        "I'll be there at 5", "100 percent agree", "the neighbour has 3 dogs", "she said 7 but who knows",
        "leave the 8 footers by the door"]  # fmt: skip


@pytest.mark.parametrize("line", CHAT)
def test_chat_with_a_number_in_it_changes_nothing(line: str) -> None:
    assert [asked for asked in ASKED if last(asked, line)["outcome"] == "answered"] == []


def test_the_saw_is_asked_of_the_joint_answered_last() -> None:
    asked = last("saw stops at 52", "rake return at 5/12", "can my saw do that one")
    assert (asked["topic"], asked["outcome"]) == ("can my saw cut it", "answered")
    reached = last(CORNER, "would the saw reach this one, it stops at 20")
    assert reached["say"].startswith("The corner sets the saw to 22.5 degrees. No")


def test_a_pitch_told_in_a_story_is_kept() -> None:
    told = last("we've finally got the tarp off the east gable and it's all a five and a half twelve, would you believe")
    assert (told["topic"], told["outcome"]) == ("remember", "noted")
    assert last("my brother in law swears it's a six twelve but it's a five twelve roof, so go with five")["outcome"] == "noted"
    assert last("my brother in law swears it's a six twelve")["outcome"] != "noted"


def test_other_talk() -> None:
    assert last("remind me of this later: note the bug screen ran out, six foot short")["say"].startswith("Noted: the bug screen")
    assert last(CORNER, "show me step two, the second step")["say"].startswith("Step 2")
    assert last("the exposure is 7, sorry, 6 and a half")["say"] == "Kept for this job: exposure 6 1/2 in."
    assert last("quanto costa un caffè, 2 euro o 3")["outcome"] == "declined"
    assert last("stock is 16 foot, can I legally drive with that hanging out the back")["outcome"] == "declined"


def test_another_foot_is_for_the_stock_that_it_is_near() -> None:
    assert last("How many twelve footers for 140 feet of trim?", "make it 16 foot")["answer"]["value"] == 9
    assert last("How many twelve footers for 140 feet of trim?", "make it 160 foot")["answer"]["value"] == 14
