"""Marks called out one at a time after a layout, and never mistaken for a question about marks."""

from __future__ import annotations

from assistant.conversation import Conversation


def say(*lines: str) -> list[str]:
    talk = Conversation()
    return [talk.answer(line)["say"] for line in lines]


def test_marks_are_called_in_order_and_stop_at_the_last() -> None:
    _, first, second, third, back, last, past = say(
        "9 foot wall, 7 inch exposure, lay out the courses",
        "call out the marks", "next mark", "mark", "back one mark", "last mark", "next mark",
    )  # fmt: skip
    # 108 in over 16 courses is 6 3/4 in each: 6 3/4, 13 1/2, 20 1/4 (geometry).
    assert "6 3/4 inches; 15 more" in first
    assert "13 1/2 inches; 14 more" in second
    assert "20 1/4 inches" in third
    assert "13 1/2 inches" in back
    assert "108 inches" in last and "that is the last" in last
    assert "16 marks" in past


def test_one_mark_by_its_number() -> None:
    assert "101 1/4 inches" in say("9 foot wall, 7 inch exposure, lay out the courses", "mark 15")[1]


def test_with_no_layout_there_is_nothing_to_call() -> None:
    talk = Conversation()
    assert talk.answer("next mark")["outcome"] in ("asks", "declined")


def test_a_question_about_marks_stays_a_question() -> None:
    talk = Conversation()
    talk.answer("9 foot wall, 7 inch exposure, lay out the courses")
    record = talk.answer("marks every 16 inches on 12 feet")
    assert record["topic"] == "marks on centre"
    assert record["answer"]["value"] == 10  # 0, 16 … 144: a mark while the mark is within the length
