"""A rate told in any order: how many that took, what was done, and what is to do; and where the words leave two ways."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "needed"),
    [
        ("11 windows ate up 4 cans of foam, 38 windows to go, cans?", 14),
        ("For 33 posts, what'll I need in bags, if 5 posts took 12 bags?", 80),
        ("how many sausages of sealant do 26 windows, nine windows used 5?", 15),
        ("what about 64 windows if 14 rolls of flashing tape did 24", 38),
        ("the garage wall was 28 feet and took 3 coils. house wall is 96 feet. how many coils", 11),
        ("a gallon and a half of primer went on five hundred and fifty square feet of trim how many gallons for two thousand", 6),
        ("took a pack and a half for 3 rooms how many packs for 10 rooms", 5),
        ("six anchors did one stair fifteen stairs how many anchors", 90),
        ("Each tin covers 14 m2. I have 123 m2 of cladding. Tins?", 9),
        ("4 boxes clad 150 square feet, how many for 900 plus ten percent", 27),
        ("last job it was nine bundles for three squares how many bundles for fourteen squares", 42),
        ("175 feet of trench, how many pipe lengths, when 90 feet swallowed 9", 18),
        ("3 cartridges for 12 m, now 70 m. cartridges?", 18),
        ("3 tubes did 40 feet, 120 feet left to do, how many more tubes", 9),
    ],
)
def test_each_quantity_has_its_place(line: str, needed: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("by the same rate", needed)


@pytest.mark.parametrize(
    ("line", "needed", "left"),
    [
        ("Number of rolls of 100 mm tape for 240 m of joints, where 2 rolls have done 46 m", 11, "100 mm"),
        ("3 boxes of 500 did 40 sheets, how many boxes for 130 sheets", 10, "500"),
        ("6 tubes of 300 ml did 72 m, how many for 200 m", 17, "300 ml"),
    ],
)
def test_the_size_of_a_thing_is_left_out_and_said(line: str, needed: int, left: str) -> None:
    record = last(line)
    assert record["answer"]["value"] == needed
    assert f"Left out: {left}" in record["say"]


@pytest.mark.parametrize(
    ("line", "needed"),
    [
        ("a 5 litre tin did 40 m2, how many tins for 300 m2", 8),
        ("a 24 sheet pack did 2 rooms, how many packs for 9 rooms", 5),
    ],
)
def test_one_thing_of_a_size_is_one(line: str, needed: int) -> None:
    assert last(line)["answer"]["value"] == needed


@pytest.mark.parametrize(
    "line",
    [
        "3 tubes did 40 feet, the whole wall is 160, how many more tubes",
        "3 tubes did 40 feet of the 160 feet, how many more tubes",
        "4 tubes did 6 windows, how many tubes for 14 doors",
        "2 rolls did 3 windows and 1 door, how many rolls for 12 windows",
        "I had 6 tubes and used 4 on 50 feet, how many for 200 feet",
        "5 gallons does 1,200 sq ft at two coats, how many gallons for 3,000 sq ft",
        "10 litres did 85 m2, how many 5 litre tins for 300 m2",
        "the 3 boxes did 40 sheets, we have 100 boxes, how many sheets",
        "2 tubes did 30 feet, how far will 5 go",
        "3 men did 40 feet in a day, how many men for 160",
        "6 posts on 40 feet, how many posts for 100 feet",  # set out: one more than the spaces between them
        "12 posts carried 40 feet of beam, how many posts for 100 feet of beam",
    ],
)
def test_what_may_be_meant_otherwise_is_no_answer(line: str) -> None:
    assert last(line)["outcome"] != "answered"


@pytest.mark.parametrize(
    ("line", "topic"),
    [
        ("My chop saw only swings to 47 and I need 58, how do I cut it, what do I dial with the piece against a square jig?",
         "can my saw cut it"),
        ("what's 64 clips at 7.25 each, they only had 40 on the shelf Friday but the rest is in, total for all", "cost"),
        ("how many 16 foot boards if each of the four windows takes 13 feet of casing", "trim sticks"),
        ("Soffit on the north side is 13.2 m long, 450 mm deep, panels cover 300 a piece. How many pieces am I cutting?",
         "soffit panels"),
    ],
)  # fmt: skip
def test_another_topic_with_such_words_stays(line: str, topic: str) -> None:
    assert last(line)["topic"] == topic
