"""Each quantity once: what was put right in the same breath stands for what was wrong, a repeat has no role of its own."""

from __future__ import annotations

import pytest

from intents.said_once import said_once
from intents.tokens import tokenize


def left(text: str) -> str:
    return " ".join(token.text for token in said_once(tokenize(text))[0])


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("a deck 9 foot, no, 10 foot, by 12 foot 6", "a deck 10 foot , by 12 foot 6"),
        ("it is 9 foot tall, sorry, 10, and 26 long", "it is 10 foot tall , and 26 long"),
        ("the pitch is six, I mean eight twelve", "the pitch is eight twelve"),
        ("roof 5/12, no 6, run 14 foot", "roof 6 / 12 , run 14 foot"),
        ("four at 70, no, five at 70 and two at 36", "five at 70 and two at 36"),
        ("12 by 16 foot, no, 14 by 16 foot", "14 foot by 16 foot"),
        ("24 on centre, hang on, 16 on centre", "16 on centre"),
        ("run 12 foot 6, make that 12 foot 9", "run 12 foot 9"),
        ("40 F, wait, 50, hottest 110", "50 f , hottest 110"),
        ("five eighths, no wait, seven eighths of an inch", "seven eighths of an inch"),
        ("exposure is 7, no, the exposure is 6", "exposure is 6"),
        ("laths at 19, no they're 12 inch, wall 30 foot", "laths at 12 inch , wall 30 foot"),
        ("overhang's 14, no he cut it back to 11", "overhang 11"),
        ("lining's 5/8, no she's the 3/4 stuff", "lining 3 / 4 stuff"),
        ("they come in 3.9s, no I tell a lie 4.2", "they come in 4.2 s"),
        ("the 118 corner no sorry 121 degrees", "the 121 degrees corner"),
        ("the corner's 118, hold on I had it upside down, 122", "the corner 122"),
        ("run's 14 foot, actually I measured from the wrong side, 13 foot 9", "run 13 foot 9"),
        ("pitch is 8/12, no that's the porch, main one's 10 in 12", "pitch is 10 in 12"),
        ("depth 380, no with the facing off it's 410. cover 300", "depth 410 . cover 300"),
        ("500 centres I think it was, no, make that 450, first at 0", "450 centres , first at 0"),
        ("sill 40, 40 1/2 sorry, head 80", "sill 40 1 / 2 , head 80"),
        ("divide 96 in 7, no make it 8", "divide 96 in 8"),
    ],
)
def test_what_is_put_right(said: str, meant: str) -> None:
    assert left(said) == meant


@pytest.mark.parametrize(
    "said",
    [
        "run is 12 foot , no 2 foot overhang",
        "12 foot long , no 2 foot overhang",
        "16 foot sticks for 83 foot , no waste",
        "no 5 foot boards left , 6 foot ones then",
        "roof 6 in 12 , no 12 inch overhang",
        "cut my pair at 30 when the corner is really 118.5",
        "he marked 65 when it should be 63 9 / 16",
        "a wall of 27 feet , call it 8 1 / 2 feet high",
        "16 foot , no i forgot , overhang 1 foot",
        "wall 20 ft , sorry i should have said , 9 ft high",
        "it is 28 wide , no hang on , the pitch is 6 / 12",
        "3 / 4 strap , no there is 1 / 2 ply as well",
        "wall 30 long , no door in it , 9 high",
        "gable 24 wide , no i'm wrong , 8 high",
        "stock 16 , no they want a lap of 4",
        "they're 16 foot , no we've none of the 12 foot boards",
        "36 no . @ 22 kg",
    ],
)
def test_no_is_also_none(said: str) -> None:
    assert left(said) == said


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("wall is 22 foot, 264 inches, studs at 16", "wall is 22 foot , studs at 16"),
        ("6 inches wide, six, and slopes 5 degrees", "6 inches wide , and slopes 5 degrees"),
        ("15 foot 6, fifteen six, 186 inches", "15 foot 6"),
        ("a 142 degree corner, one four two.", "a 142 degree corner ."),
        ("the rise is 8 and a quarter, 8.25, run 18", "the rise is 8 and a quarter , run 18"),
        ("a run of 11 foot 4, that's 136 inches?", "a run of 11 foot 4 ?"),
        ("half open, fifty percent, 20 foot", "open , fifty percent , 20 foot"),
        ("square corner, ninety.", "square corner ."),
        ("with no kerf, zero", "with no kerf"),
        ("four at 70 and two at 36, so six pieces. how many", "four at 70 and two at 36 . how many"),
        ("12, 12 inches wide", "12 inches wide"),
        ("5/8 cladding, 3/4 strapping, so 1 3/8 all told, into the stud", "5 / 8 cladding , 3 / 4 strapping , into the stud"),
    ],
)
def test_a_repeat_is_left_out(said: str, meant: str) -> None:
    assert left(said) == meant


@pytest.mark.parametrize(
    "said",
    [
        "legs 4 , 4 and 6",
        "wall 8 foot , 96 inch panels",
        "12 inch boards , 12 pieces",
        "3 , a half , and 4 inches",
        "6 by 6 foot",
        "a door three by seven , seven inch to the weather",
        "a right angle , 90 degrees",
        "2 , 3 , 5 , 12 all told",
    ],
)
def test_two_of_a_size_are_two(said: str) -> None:
    assert left(said) == said
