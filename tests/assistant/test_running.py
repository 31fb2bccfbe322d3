"""A running total in one conversation, kept exact past what was shown."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


def values(*lines: str) -> list[float]:
    conversation = Conversation()
    return [conversation.answer(line)["answer"]["value"] for line in lines]


def test_a_running_total_goes_on_from_the_answer_before() -> None:
    found = values(
        "12 foot 6 plus 3 foot 4 and a half",
        "plus another 4 and 3 eighths",
        "take three eighths off that",
        "divided by 3",
    )
    assert found == pytest.approx([190.5, 194.875, 194.5, 194.5 / 3])


def test_what_was_rounded_on_the_page_is_not_rounded_in_the_total() -> None:
    assert values("101 inches divided by 3", "times 3")[-1] == pytest.approx(101, abs=1e-12)


def test_with_nothing_before_it_asks_what_to_add_to() -> None:
    record = Conversation().answer("plus another 4 and 3 eighths")
    assert record["outcome"] == "asks" and "what" in record["ask"].lower()


def test_bare_whole_numbers_go_on_in_the_millimetres_of_the_total() -> None:
    assert values("add 1150 and 640 mm", "less 15")[-1] == pytest.approx(1775)
    assert values("2 m minus 40 mm", "less 3/8")[-1] == pytest.approx(1960 - 0.375 * 25.4)
