"""Which sentences before a question are story, and which may say something of the job."""

from __future__ import annotations

import pytest

from intents.stories import stories_of, without_story

ASKED = " 7/12, 26 ft gable. Rake length?"


def told(sentence: str) -> bool:
    return bool(stories_of(sentence + ASKED))


@pytest.mark.parametrize(
    "sentence",
    [
        "The neighbours did theirs at 8 inches and 14 rows.",
        "He paid 600 for that saw in 2015.",
        "We spent 3 days on the east side, 14 squares of it.",
        "The shed next door is 8 by 10.",
        "Last gable was 10/12 and 30 foot.",
        "Helper hire was 85 a week.",
        "The hoist is 20 years old.",
        "400 in the box at 30 bucks.",
        "The fridge reads 4 degrees, forget that.",
    ],
)
def test_a_story(sentence: str) -> None:
    assert told(sentence)


@pytest.mark.parametrize(
    "sentence",
    [
        "The overhang is a foot.",
        "The overhang was 14 inches and it cost 40 bucks.",
        "The owner wants 14 inches and has 2 dogs.",
        "I need 63 feet of it.",
        "The wall is 32 ft.",
        "We went with 12 inches.",
        "We settled on 12 inches in 2 minutes.",
        "Boards are 16 ft and cost 22 dollars.",
        "Tape says 33 ft.",
        "This one was 30 foot and took 2 days.",
        "One piece was cut at 44 and the other is at 46.",
        "I measured 32 ft across.",
        "What was it, 6 days?",
    ],
)
def test_what_may_be_of_the_job_is_none(sentence: str) -> None:
    assert not told(sentence)


def test_a_turn_leaves_what_stood_before_it_behind() -> None:
    assert stories_of("The shop wants 19.99 for 50 foot of it. Mine's 45 percent open, wall 12 m. Free area?")
    assert not stories_of("They come 12 ft and 3 short. Here's the list: 4 at 40 and 2 at 61. How many sticks?")
    assert not stories_of("The shop wants 19.99 for 50 foot of it. It's 45 percent open, wall 12 m. Free area?")


@pytest.mark.parametrize(
    "asked",
    [
        "The same at 8/12?",
        "How many more at 6 inches?",
        "9 ft of it, what's left?",
        "How many do I order for 40 ft?",
        "What's the bill?",
    ],
)
def test_nothing_is_left_out_where_the_question_points_back(asked: str) -> None:
    text = f"I bought 12 at 4 dollars in the yard. {asked}"
    assert stories_of(text)
    assert not without_story(text, stories_of(text))


def test_what_remains_stands_where_it_stood() -> None:
    text = "He paid 600 for it. Corner's 97, miter?"
    rest = without_story(text, stories_of(text))
    assert len(rest) == len(text)
    assert rest.strip() == "Corner's 97, miter?"
