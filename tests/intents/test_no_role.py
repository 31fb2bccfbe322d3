"""Quantities that a question of this kind never uses are left out and said; those that may belong to it are asked about."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from assistant.record import Record


def said(text: str) -> Record:
    return Conversation().answer(text)


def left(record: Record) -> str:
    return next((line["text"] for line in record["also"] if line["name"] == "left out"), "")


@pytest.mark.parametrize(
    ("text", "topic", "answer", "out"),
    [
        (
            "How tall is the triangle on top, the gable's 22 ft 8 wide and framed at 8 in 12, the wall below it is 9 foot and the"
            " scaffold goes Friday",
            "gable height", "90 11/16 in", "9 foot",
        ),
        (
            "Rake trim comes in 16s and I'd like one each side, gable's 24 feet 6, it's a six in twelve, no overhang at all, how"
            " long is each rake then",
            "rake length", "164 3/8 in", "16s",
        ),
        (
            "the lads are holding the wall on the deck, it's 15'8 by 9'1 1/8 tall with a 3 foot door in it, diagonal if it's"
            " square?",
            "square check", "217 3/8 in", "3 foot",
        ),
        (
            "slats 45 mm wide along 2.35 m of bench, want about 8 mm between them, was 10 till the wife vetoed it, what gap comes"
            " out exactly?",
            "equal spacing", "8.6 mm", "10",
        ),
        (
            "the slab's 36 ft by 24 ft, concrete's 165 a yard and it's coming at eight, what diagonal should the tape read",
            "square check", "519 3/16 in", "165 a yard",
        ),
        (
            "2x4s are what I have, the brace hits 6 ft up the stud and its foot is 4 ft 6 out, how long is the brace",
            "right triangle", "90 in", "2x4s",
        ),
    ],
)  # fmt: skip
def test_what_has_no_role_is_left_out_and_said(text: str, topic: str, answer: str, out: str) -> None:
    record = said(text)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["text"].startswith(answer)
    assert left(record) == out
    assert f"Left out: {out}." in record["say"]


@pytest.mark.parametrize(
    "text",
    [
        "it's a 14 foot wall, 7 inches to the weather, but 2 feet of it at the bottom is stone, how many courses",
        "the wall's 9 ft high, exposure no more than 7, and the frieze takes 8 inches off the top, what exposure do I get",
        "boards go on a 26 ft wide end, panels cover 16, the corner trims take 4 inches each, what's the end rip",
        "the hip runs 9 ft at 6/12 on one side and 8/12 on the other, how long is it",
        "we go up 22 courses at 5 inches, the first one's a double and starts an inch down, how high is it",
    ],
)
def test_what_may_belong_to_the_question_is_asked_about(text: str) -> None:
    assert said(text)["outcome"] == "asks"


def test_an_overhang_in_any_words_is_no_quantity_without_a_role() -> None:
    record = said(
        "The gable on the lake side is 24 ft wide, it's a 6/12, and the roof sails a foot past the wall, how long is the rake"
    )
    assert record["outcome"] != "answered" or left(record) == ""


@pytest.mark.parametrize(
    ("text", "topic", "answer"),
    [
        (
            "so dad says he ordered it in '88, that's the story, but the string and level give us 6 1/2 in 12 all day long,"
            " whats that as an angle",
            "roof angle", "28.4°",
        ),
        (
            "The two legs of the skirting meet at 127 degrees, I tried 27 and it gapped, I tried 25 and it gapped the other way,"
            " what should the saw read?",
            "miter for a corner", "26.5°",
        ),
        (
            "inside corner of the boot room, architect drew 90 but the slab's old and it's 88 and a half by the digital finder,"
            " cutting with the board flat, what goes on the scale",
            "miter for a corner", "45.8°",
        ),
    ],
)  # fmt: skip
def test_a_question_is_read_without_the_clauses_it_has_no_use_for(text: str, topic: str, answer: str) -> None:
    record = said(text)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["text"] == answer


@pytest.mark.parametrize(
    ("text", "topic", "answer"),
    [
        ("how high up is the eleventh course at 6 5/8", "height of courses", "72 7/8 in"),
        ("the ridge stands 6 ft 9 over the plate and it's a 9/12 roof, how long are the rafters", "sloped length", "135 in"),
        ("how far up the roof from plate to ridge, run 4.2 m pitch 30 degrees", "sloped length", "4850 mm"),
        ("The staircase goes up 2.7 m and takes 3.4 m on the floor, how long is the string along the slope", "right triangle",
         "4342 mm"),
        ("how far out is the foot of a 16 ft plank with its top 5 ft 2 up", "right triangle", "181 11/16 in"),
        ("guy rope goes from a cleat 3.4 m up the mast to a peg 1.9 m off on the ground, how much rope between the two",
         "right triangle", "3895 mm"),
        ("My porch goes off at 45 degrees from the house line, so the skirt board turns by that much, what do I cut each at",
         "miter for a corner", "22.5°"),
        ("How long is the slope on a shed roof running 3.4 m at 18 degrees, we've two purlins up and the neighbour's cat there",
         "sloped length", "3575 mm"),
        ("what's a 7 in 12 in degrees, the apprentice has gone home and now he's sulking in the van", "roof angle", "30.3°"),
    ],
)  # fmt: skip
def test_words_that_tell_which_size_is_which(text: str, topic: str, answer: str) -> None:
    record = said(text)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["text"].startswith(answer)


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("The hall wall's 13 ft 9 and she wants 5 panels all the same width, moulding on order from abroad, how wide is each",
         33),
        ("the gable's 32 feet across and the pitch is 3 in 12, the rakes finish flush, old ones were rotten for eight feet up,"
         " how long's each", 197.909),
        ("stair opening's 10 ft 6 long and floor to floor is 8 ft 10, it's going to have fourteen risers, how long's the stringer"
         " along the slope", 164.657),
        # What stays: the tube's size, the most that shows, a height that is no cold, and where the wall begins to count.
        ("We're going round 14 windows and it comes to 266 feet of bead. The bead's 3/8 wide and 3/8 deep. How many 28 oz tubes"
         " should I bring?", 9),
        ("We're shingling the boathouse with 18 inch shingles and the guy at the yard said never over 7 1/2. From the ledger to"
         " the underside of the frieze is 10 feet 3 and three quarters. What's my reveal?", 7.27941),
        ("ok squares for the gable end, it's 28 wide with 8 ft 3 below and an 8/12 peak above", 3.97833),
        ("canopy stay inclined 35 degrees, sticking out 900 mm horizontally, how much does it climb", 630.187),
    ],
)  # fmt: skip
def test_only_what_is_asked_is_worked_with(text: str, value: float) -> None:
    assert said(text)["answer"]["value"] == pytest.approx(value, rel=1e-4)


def test_a_level_is_a_tool_only_beside_both_lengths() -> None:
    told = said("I held a 2 foot level on the roof, level, and measured 11 inches down at the end. pitch?")
    assert told["answer"]["text"] == "5.5 in 12"
    told = said(
        "stood on the plank with a four foot level, bubble dead centre, 48 inches along and 22 inches up to the sheathing, what"
        " pitch is this roof then"
    )
    assert told["answer"]["text"] == "5.5 in 12"


def test_what_was_paid_for_something_else_is_no_price() -> None:
    record = said("A survey came back with a roof of 22.6 degrees, cost me 180 quid that, could you tell me the rise per twelve")
    assert record["topic"] != "cost"
    assert said("cost me 40 a sheet, what do 12 sheets cost")["answer"]["text"] == "480.00"
