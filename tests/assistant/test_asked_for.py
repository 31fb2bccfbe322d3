"""A line whose words leave no doubt about the topic is asked for what it lacks, not declined."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    ("line", "topic", "lacks"),
    [
        ("What do I set the saw at for the corner at the wing?", "miter for a corner", "corner angle"),
        ("How much will the cedar shrink across when it dries", "wood movement", "width"),
        ("How far out from the boathouse do I foot the ladder?", "ladder footing", "height"),
        ("How much will the pvc fascia move between summer and winter?", "thermal movement", "length"),
    ],
)
def test_what_is_missing_is_asked_for_where_the_topic_is_plain(line: str, topic: str, lacks: str) -> None:
    record = Conversation().answer(line)
    assert (record["outcome"], record["topic"]) == ("asks", topic)
    assert lacks in record["ask"]


def test_two_values_no_word_names_are_enough_where_only_one_topic_has_such() -> None:
    record = Conversation().answer("60 F 80 percent porch")
    assert record["topic"] == "dew point"
    assert record["answer"]["text"] == "53.8 °F"


@pytest.mark.parametrize(
    ("line", "topic", "value"),
    [("731 ft². squares, standard waste", "squares", 8.04), ("2.95 m run. 22.5 deg. rise?", "rise over a run", 1222)],
)
def test_a_stop_after_a_unit_is_no_part_of_the_size(line: str, topic: str, value: float) -> None:
    record = Conversation().answer(line)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-3)


@pytest.mark.parametrize(
    "line", ["70 F 30 bags", "how many bundles for the shed", "is a corner like this one tight enough", "22 ounces to grams"]
)
def test_other_lines_of_few_words_are_still_declined(line: str) -> None:
    assert Conversation().answer(line)["outcome"] == "declined"
