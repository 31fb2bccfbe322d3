"""A number heard as a small word, or half of one: answered where only one reading makes sense, asked about where two do."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("miter for an eighty for degree corner", 48),
        ("squares for ate hundred and sixty to square feet, no waste", 8.62),
        ("how many twelve foot sticks for a hundred and for tea feet of trim", 12),
        ("diagonal for twelve foot too by sixteen foot ate", 247.63),
        ("divide ten foot for inches into ate parts", 15.5),
        ("plumb cut for a nine an a half twelve", 38.4),
        ("miter for a one hundred and elevn degree corner", 34.5),
    ],
)
def test_answered(text: str, value: float) -> None:
    record = Conversation().answer(text)
    assert record["outcome"] == "answered", record["say"] or record["ask"]
    assert record["answer"]["value"] == pytest.approx(value, abs=0.05)


@pytest.mark.parametrize(
    ("text", "asked"),
    [
        ("can my saw cut forty degrees if it stops at fifty too", ""),
        ("how far open: corner ninety too, cut at forty five, four inch face", "92"),
        ("coarse layout for a nine foot for wall seven inch exposure", "112"),
        ("miter for a one hundred and elefunt degree corner", "elefunt"),
    ],
)
def test_where_both_make_sense_and_the_answers_differ_it_asks(text: str, asked: str) -> None:
    record = Conversation().answer(text)
    same = not asked  # both come to the same answer: nothing to ask
    assert record["outcome"] == ("answered" if same else "asks"), record["say"]
    assert asked in record["ask"]


def test_the_reply_settles_which_number_was_said() -> None:
    talk = Conversation()
    talk.answer("how far open: corner ninety too, cut at forty five, four inch face")
    record = talk.answer("ninety two")
    assert record["outcome"] == "answered"
    assert record["answer"]["value"] == pytest.approx(0.1975, abs=0.03)
