"""Questions with a story round them, and stories that ask nothing, as the conversation takes them."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from assistant.told_round import MOST_TAKEN, TAKES, may_take
from tests.talking import last


@pytest.mark.parametrize(
    ("text", "topic", "value", "left"),
    [
        ("We spent 3 days on the east side, 14 squares of it. 7/12, 26 ft gable, 12 inch overhang. Rake length?",
         "rake length", 194.5, "14 squares"),
        ("The shed next door is 8 by 10. Our deck is 9 by 12. Diagonal?", "square check", 180, "8 and 10"),
    ],
)  # fmt: skip
def test_the_question_is_answered_and_what_was_left_out_is_said(text: str, topic: str, value: float, left: str) -> None:
    record = last(text)
    assert (record["outcome"], record["topic"], record["heard"]) == ("answered", topic, text)
    assert round(record["answer"]["value"], 1) == value
    assert left in record["say"]
    assert any(line["name"] == "left out" and left in line["text"] for line in record["also"])


@pytest.mark.parametrize(
    "text",
    [
        "I cut 4 at 30 inches yesterday. 6 at 40 and 2 at 52 from 12 foot stock, how many sticks?",
        "Temperature was 40 when I cut them, 3 broke. PVC 12 ft, hottest 110, coldest -5. Gap?",
    ],
)
def test_what_the_answer_may_need_is_asked_about(text: str) -> None:
    assert last(text)["outcome"] == "asks"


def test_what_the_job_knows_is_not_taken_for_what_the_story_says() -> None:
    asked = "The roof was 9/12 and took 2 men 4 days and 300 bucks. Gable is 24 ft wide, how long is the rake?"
    record = last("the roof is 7/12", asked)
    assert record["outcome"] != "answered" or all(given["from"] != "job" for given in record["givens"])


def test_a_number_of_the_story_that_changes_the_answer_is_asked_about() -> None:
    story = "Two of the lads walked off at noon, 18 courses short. Wall is 108 high, 6 1/2 max. Exposure?"
    assert (last(story)["outcome"], last(story)["topic"]) == ("asks", "course layout")
    assert last("The roof was 9/12 and took 2 men 4 days. Corner's 96. What do I set it at?")["outcome"] == "answered"
    assert last("I hung a gauge in the shed and it shows 61 F and 82 percent. What is the dew point?")["outcome"] == "answered"


def test_a_follow_up_goes_on_from_the_question() -> None:
    record = last("He paid 600 for that saw in 2015. The corner's 96. What do I set it at?", "and at 90?")
    assert record["answer"]["value"] == 45


@pytest.mark.parametrize(
    "text",
    [
        "That corner was 93 degrees and old Frank scribed it by eye, closed like a door",
        "My back's gone after 48 sheets at 42 pounds, you finish",
        "I had 11 sticks and now there's 9, somebody's building a rabbit hutch",
        "Is 35 degrees steep for slates, in your opinion",
        "at what age does cedar go silver, 2 years, 5?",
        "what's the fire rating on 5/8 board over a 3/4 vented gap",
        "why do old houses have 4 inch exposure low down and 6 up high",
        "could a lad of 15 be let use the mitre saw at 31 degrees",
        "he quoted 9,200 for 1,180 square feet, do you think that's dear",
    ],
)
def test_what_asks_nothing_of_ours_is_declined(text: str) -> None:
    assert last(text)["outcome"] == "declined"


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("Is 45 right for a 92 corner", "44°"),
        ("in your opinion what miter closes best on a 92 degree corner", "44°"),
        ("does that sound right to you, 44 for a 92 degree corner", "44°"),
        ("what kind of gap is 3/8 behind the siding", "ventilated"),
        ("would you say it's steep at 9/12, what angle is that", "36.9°"),
        ("channel .625 wide, .5 deep, 146 inches long, cubic inches of water, and what happens when that freezes", "45.6 in³"),
    ],
)
def test_what_sounds_like_it_and_is_of_ours_is_answered(text: str, answer: str) -> None:
    assert last(text)["answer"]["text"] == answer


def test_after_an_answer_a_story_may_be_a_change_of_it() -> None:
    assert last("miter for a 92 degree corner", "I told you 93")["answer"]["value"] == 43.5
    assert last("miter for a 92 degree corner", "I had it at 45 and he laughed at me")["topic"] == "compare"


@pytest.mark.parametrize(
    "line",
    [
        "is still 48 width rise sorry, too, 13",
        "Opening's 62 1/8. Take a half inch o\\each side for shim.2at's left?",
        "wall's a hundred and eight, sill at thirty four, head at eighty, between right triangle, slope 3.9, rise?",
    ],
)
def test_a_line_is_tried_in_few_ways(line: str) -> None:
    talk = Conversation()
    talk.answer("half span 9 ft 8, five twelve, valley?")
    assert talk.answer(line)["say"]
    assert talk.taken <= MOST_TAKEN + TAKES + len(line)  # the last of them may lead to one more


def test_a_line_that_is_understood_is_taken_once() -> None:
    talk = Conversation()
    talk.answer("half span 9 ft 8, five twelve, valley?")
    assert talk.answer("make it 10 ft")["outcome"] == "answered"
    assert talk.taken == TAKES + len("make it 10 ft")


def test_words_that_no_grammar_knows_are_tried_in_fewer_ways() -> None:
    talk = Conversation()
    talk.taken = MOST_TAKEN - TAKES - 40
    assert may_take(talk, "and the wall is 9 foot now")
    assert not may_take(talk, "and the wxqll is 9 fzzbk brglm now")
