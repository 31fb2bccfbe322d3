"""Quantities and courses as people tell them: heights in any order, so much of each, stock by its metric length."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from tests.talking import last


def answered(text: str) -> tuple[str, str]:
    """The topic and the answer to one question; nothing where it is asked or declined."""
    record = Conversation().answer(text)
    return (record["topic"], record["answer"]["text"]) if record["outcome"] == "answered" else ("", "")


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("courses to the window, sill at 30 and it's 52 tall, then 20 more to the eave, 5 min 6 max", 5.2),
        ("shingles, 4 is the least I'd show and 5 the most, sill at 2 foot 11, head 6 foot 8, the eave comes at 8 foot 4", 5.0),
        ("courses on the window, sill's 31 off the start, window is 46 tall, 22 more to the soffit, 5 to 6 showing", 5.111),
        ("courses to hit a window that starts 30 inches up and finishes at 75, total height 98, from 4 1/2 to 5 1/2", 5.0),
    ],
)  # fmt: skip
def test_heights_of_a_window_in_any_order(line: str, inches: float) -> None:
    """A sill is under its head and a head under the top."""
    record = last(line)
    assert record["topic"] == "courses to openings"
    assert record["answer"]["value"] == pytest.approx(inches, abs=0.01)


def test_heights_named_out_of_order_are_not_put_in_order() -> None:
    """What a word names otherwise is not taken for something else."""
    assert "not below" in last("sill 84, head 36, top 110, courses 5 to 6, land them on the window")["say"]


@pytest.mark.parametrize(
    ("line", "topic", "answer"),
    [
        ("4 windows need 11 foot 6 of casing each, stock is 12 foot", "trim sticks", "4"),
        ("how many 16 foot boards if each of the four windows takes 13 feet of casing", "trim sticks", "4"),
        ("77 metres of scotia in 5.4s", "trim sticks", "15"),
        ("six at 820 and four at 1140 from 2.4 lengths", "cut list", "5"),
        ("our 5.1s, that's 5.1 m cladding, straps at 300, joint pattern please", "staggered joints", "300 mm"),
        ("even gaps for 6 planks 5 1/2 wide across 36", "equal spacing", "5/8 in"),
        ("soffit 85 1/2, panel 10 1/2, cut both ends same, what width", "balanced panels", "6 in"),
        ("six slats 2 inches wide in 30 inches with the same gap against the walls too", "equal spacing", "2 9/16 in"),
        ("stair guys left 8 foot 7 1/4 and I need 13 risers out of it, what's each one", "divide evenly", "7 15/16 in"),
        ("22 bags of mortar 9.85 each how much", "cost", "216.70"),
        ("13 gallons of stain, $46.75 a gallon, whats it come to", "cost", "607.75"),
        ("35 m of flashing at 6.20 a metre", "cost", "217.00"),
        ("it's 3.40 a metre and 30 metres what does it come to", "cost", "102.00"),
        ("$3.40 a linear foot for primed trim and I've 186 feet to do, what's he getting off me", "cost", "632.40"),
        ("legs 50, 75 and 20 mil, girth", "bent flashing", "145 mm"),
        ("what am I siding on a gable 26 wide 7 in 12", "gable area", "98.6 ft²"),
        ("gable on each end, both 24 foot wide with a 5 12, how many square feet for the two of em", "gable area", "120 ft²"),
        ("walls total 1860, squares with ten percent", "squares", "20.46 squares"),
        ("i've got 4 tubes in the truck, is that enough for 70 ft at 1/4 in by 1/4 in", "sealant", "3"),
        ("the eave is nine foot off the ground and runs 26 feet; soffit 20 inches deep; panels cover 12. How many panels?",
         "soffit panels", "26"),
        ("186 ft of 5/4x4 trim in 16 footers, how many sticks", "trim sticks", "12"),
        ("the two long walls are 36 by 8 and the short ones are 20 by 8, total square feet please", "wall area", "896 ft²"),
        ("both ends are 22 by 9, how many square feet", "wall area", "396 ft²"),
        ("wall 36 by 9 with three windows 4 foot square, area", "wall area", "276 ft²"),
        ("wall area: 36 by 9, openings are a 3 by 7 door, two 4 by 4s and a 2 by 3", "wall area", "265 ft²"),
        ("28 by 9 wall with a 28 foot gable over it, 8 12, area less one 3 by 4 window", "wall area", "370.7 ft²"),
        ("30 boards 16 foot long, two screws per joist, joists at 16 centres, how many screws", "fasteners", "780"),
        ("walls come to 1,720 square feet, laps are 12 inches now, the wrap comes 9 foot wide in 150 foot rolls, how many rolls",
         "membrane rolls", "2"),
    ],
)  # fmt: skip
def test_told_plainly(line: str, topic: str, answer: str) -> None:
    assert answered(line) == (topic, answer)


@pytest.mark.parametrize(
    "line",
    [
        "5 posts 5 1/2 wide across 36 even gaps",  # feet or inches: posts stand apart
        "2.25 a side, 4 sides, total",  # sides cost nothing
        "got 3 tubes already, how many more for 120 feet of 3/8 by 3/8",  # those three come off
        "strapping 40 feet of wall at 2.4s",  # feet are said
        "paid $9 a bag last year and had 15 bags over, what a waste",
    ],
)
def test_what_the_words_leave_open_is_not_answered(line: str) -> None:
    assert last(line)["outcome"] != "answered"


def test_so_long_each_is_no_price() -> None:
    """A total of lengths is a sum, though each of them is so much."""
    assert answered("12 risers, 7 3/8 apiece, total rise") == ("tape arithmetic", "88 1/2 in (7 ft 4 1/2 in)")


def test_one_wall_of_each_is_one() -> None:
    """The plural tells that there are two of a kind."""
    assert answered("long wall is 40 by 9 and short wall 24 by 9, how many square feet") == ("wall area", "576 ft²")


def test_a_plan_is_no_face() -> None:
    assert answered("four sides of a shed 14 by 20, eight foot walls, how many squares with no waste")[1] == "5.44 squares"
