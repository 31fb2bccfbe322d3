"""The second reader of sums: what each length does in a sum that no rule fits, and that it asks unless all but sure."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from intents import consulting, second_sums
from intents.chart import chart_of
from intents.learned import NOTHING, Learned
from intents.matcher import speller
from intents.phrases import compiled
from tests.marked import HALVED, case_of, plain, summed
from tests.marked_sums import by_answer
from tests.understanding import SAME


def worth(marked: str, half: bool) -> float:
    """What a marked sum comes to, in inches."""
    case = case_of(HALVED if half else second_sums.TOPIC, marked)
    return float(case["value"]) * SAME[case["unit"]][1]


@pytest.mark.parametrize(
    ("marked", "half", "inches"),
    [
        ("floor to plate [97 1/8|+], floor to head [82 1/2|-], how much above the head", False, 14.625),
        ("header is [6 ft 4|+] and sits on [an inch and a half|--] of jack each end, clear between", False, 73),
        ("[a quarter|-] shy of [62 1/2|+]", False, 62.25),
        ("[three|xn] battens at [45 mm|+] and [18 mm|+] of board", False, 153 / 25.4),
        ("a rail of [5 1/2|+], [seven|xp] times, less [1/2|-]", False, 38),
        ("the middle of a [9 ft 5|+] wall", True, 56.5),
        ("[94 1/2|+] shared into [three|/]", False, 31.5),
        ("[12 ft|+] minus [7 3/8|-]", False, 136.625),
    ],
)
def test_what_the_lengths_do_makes_the_sum(marked: str, half: bool, inches: float) -> None:
    assert worth(marked, half) == pytest.approx(inches)


@pytest.mark.parametrize(
    ("marked", "fault"),
    [
        ("[97 1/8|-] less [82 1/2|-]", "no sum"),
        ("[two|xn] of [three|xn] at [4 ft|+]", "no sum"),
        ("take [boards 1/2 in|-] off [8 ft|+]", "not read"),
        ("[97 1/8|xn] by [2 ft|+]", "can't be xn"),
        ("take [some|-] off [2 ft|+]", "not read"),
    ],
)
def test_marks_that_make_no_sum_are_named(marked: str, fault: str) -> None:
    with pytest.raises(ValueError, match=fault):
        summed(marked)


def test_the_answer_tells_what_each_length_does() -> None:
    case = {"ask": "the wall is 302 mm, the frame 68 mm, set in 25 mm: inside reveal?", "value": 209, "unit": "mm"}
    found = by_answer(case, None)
    assert found is not None
    assert found.roles == ("+", "-", "-")
    assert by_answer({**case, "value": 211}, None) is None


def told(text: str) -> second_sums.Second | None:
    """With models that know one thing: a length after "lose" is taken off."""
    knows = {"-": {"L1:lose": 1900}, "+": {"L1:lose": -900, "": 500}, NOTHING: {"": -500}, "half": {"": -900}}
    roles = {f"{second_sums.TOPIC}.{role}": weights for role, weights in knows.items()}
    model = Learned([], [], {}, roles, sums={"-": {"L1:lose": 500}, "+": {"": 300}, "m": {"lose": 100}})
    return second_sums.sum_again(chart_of(text, compiled(), speller()), compiled(), model)


def test_what_was_learned_of_a_word_is_what_a_length_does() -> None:
    second = told("8 ft , lose 9 1/4 in")
    assert second is not None
    assert str(second.question.givens["sum"].value) == "8 ft − 9 1/4 in"
    assert second.sure == second_sums.AGREED  # hardly sure for itself, but the story tells it outright


def test_a_sum_below_nothing_is_not_meant() -> None:
    second = told("9 1/4 in , lose 8 ft")
    assert second is None or str(second.question.givens["sum"].value) != "9 1/4 in − 8 ft"


def test_a_minus_is_no_part_of_a_length() -> None:
    text, _ = plain("[2440 mm|+] minus [118 mm|-]")
    found = second_sums.lengths_of(chart_of(text, compiled(), speller()))
    assert [float(mention.reading.value.value) for mention in found] == [2440, 118]  # type: ignore[union-attr]


def test_a_sum_that_is_told_freely_is_asked_about_and_a_yes_answers_it() -> None:
    talk = Conversation()
    asked = talk.answer("Porch beam twenty years old, 16 ft 5 long, want a post at its middle")
    if asked["outcome"] == "asks":
        assert "16 ft 5" in asked["ask"]
        asked = talk.answer("yes")
    assert asked["answer"]["value"] == pytest.approx(98.5)


def test_another_question_is_no_yes_to_a_sum_that_was_put_back(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(consulting, "SUMMED", 2)
    talk = Conversation()
    asked = talk.answer("floor to plate 97 1/8, floor to head 82 1/2, how much above the head")
    assert (asked["outcome"], asked["ask"]) == ("asks", "Do you mean 97 1/8 − 82 1/2?")
    assert talk.answer("what beam do I need over 12 foot")["answer"] is None
    talk.answer("floor to plate 97 1/8, floor to head 82 1/2, how much above the head")
    assert talk.answer("do that, please")["answer"]["value"] == pytest.approx(14.625)


def test_one_that_tells_which_is_no_part_of_a_length() -> None:
    chart = chart_of("one leg is eighty and a half, the other one eighty and an eighth", compiled(), speller())
    found = second_sums.lengths_of(chart)
    assert [float(mention.reading.value.value) for mention in found] == [80.5, 80.125]  # type: ignore[union-attr]
    chart = chart_of("cut it at one hundred and two", compiled(), speller())
    assert [float(m.reading.value.value) for m in second_sums.lengths_of(chart)] == [102]  # type: ignore[union-attr]


@pytest.mark.parametrize(
    "said",
    [
        "Need three at 22 1/2 out of a ten footer. what's the offcut",
        "two pieces of 31 out of a 12 footer, how much is left over",
        "board's 14 foot, took a 61 1/2 out of it. what's the remainder",
    ],
)
def test_what_is_left_of_a_board_is_no_count_of_sticks(said: str) -> None:
    record = Conversation().answer(said)
    assert record["outcome"] == "asks" or record["topic"] == "tape arithmetic"


@pytest.mark.parametrize(("said", "inches"), [("Middle of 77 1/4 please", 38.625), ("Add these: 11 1/2, 23 3/4, 6 1/8", 41.375)])
def test_a_sum_needs_no_second_word(said: str, inches: float) -> None:
    record = Conversation().answer(said)
    assert record["answer"]["value"] == pytest.approx(inches) if record["answer"] else record["outcome"] == "asks"
