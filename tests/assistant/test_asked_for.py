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
    [
        ("The ridge is 6 feet 8 above the wall, and half of the building is 13 feet 4. Pitch?", "pitch from rise and run", 6),
        ("half inch ply, two by fours laid flat for strapping, 3/4 boards, how far out is the face", "build-out", 2.75),
        ("731 ft². squares, standard waste", "squares", 8.04),
        ("2.95 m run. 22.5 deg. rise?", "rise over a run", 1222),
    ],
)
def test_it_is_answered_as_it_was_said(line: str, topic: str, value: float) -> None:
    record = Conversation().answer(line)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-3)


def test_half_of_a_building_is_no_half_inch_of_the_rise() -> None:
    record = Conversation().answer("rise is 6 ft 8 and half of the building is 13 feet 4, what pitch")
    assert record["answer"] is None or record["answer"]["value"] == pytest.approx(6)


def test_one_layer_in_place_of_another_is_no_sum_of_both() -> None:
    record = Conversation().answer("If I go from 3/8 mesh to 3/4 strapping, how much more does the trim need to stand out")
    assert record["answer"]["value"] == pytest.approx(0.375)


@pytest.mark.parametrize(
    "line", ["70 F 30 bags", "how many bundles for the shed", "is a corner like this one tight enough", "22 ounces to grams"]
)
def test_other_lines_of_few_words_are_still_declined(line: str) -> None:
    assert Conversation().answer(line)["outcome"] == "declined"
