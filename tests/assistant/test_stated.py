"""What was stated and is used later, what sounds like reading it back and asks another thing, and what is compared."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        (["pitch is 8 in 12", "fascia is square to the rake here", "rake return please"], "rake return", 45),
        (["the roof is 5/12 and the fascia is square", "rake return"], "rake return", 45),
        (["the trim is PVC", "end gap for 12 feet at 60F, hottest 60, coldest 0"], "end gap", 0),
        (["corner is 135 degrees", "what do I set the saw to"], "miter for a corner", 22.5),
        (["roof is 7 in 12", "what's the angle in degrees"], "roof angle", 30.2564),
        (["roof is 5 in 12", "run is 12 feet", "how long is the slope"], "sloped length", 156),
        (["sill slopes 8 degrees", "how much does it fall in 6 inches"], "fall", 0.8432),
        (["rakes go up at 5 twelve", "rake overhang is 12 inches", "rake length on a 22 foot gable"], "rake length", 156),
        (["boards are 16 foot", "exposure is 6 inches", "boards for 640 square feet, no waste"], "cladding boards", 80),
    ],
)
def test_what_was_stated_is_used(lines: list[str], topic: str, value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["say"] or record["ask"]
    assert record["answer"]["value"] == pytest.approx(value, abs=0.01)


def test_a_choice_gives_way_to_what_the_question_says_and_to_a_later_one() -> None:
    told = ["pitch is 6 in 12", "fascia is square to the rake"]
    assert last(*told, "rake return, plumb fascia")["answer"]["value"] == pytest.approx(58.2825, abs=0.01)
    assert last(*told, "the fascia is plumb", "rake return")["answer"]["value"] == pytest.approx(58.2825, abs=0.01)
    assert last(*told, "forget everything", "yes", "rake return 6/12")["answer"]["value"] == pytest.approx(58.2825, abs=0.01)


def test_what_is_kept_under_one_name_is_not_used_for_another() -> None:
    record = last("stud spacing is 16", "how tall is the gable if it's 20 foot wide")
    assert record["outcome"] == "asks" and "pitch" in record["ask"]


def test_the_layers_that_were_stated_are_kept_while_the_penetration_is_asked_for() -> None:
    lines = ["sheathing is 7/16, strapping 3/4 and the siding 3/4", "what length screw to go through it all into the stud"]
    assert "penetration" in last(*lines)["ask"].lower()
    assert last(*lines, "1 1/4")["answer"]["value"] == pytest.approx(3.1875)


@pytest.mark.parametrize(
    ("lines", "topic"),
    [
        (["rake return 5/12", "how did you get there"], "explain"),
        (["rake return 5/12", "and 8/12?", "how come it goes up"], "explain"),
        (["rake length 6/12 24 foot gable", "I make it 13 foot 5 but my tape is old"], "compare"),
        (["roof is 5 in 12", "what's the pitch"], "recall"),
        (["saw stops at 50", "how far does my saw go"], "recall"),
        (["roof is 5 in 12", "what angle did I say the roof was"], "recall"),
    ],
)
def test_loose_words_about_an_answer(lines: list[str], topic: str) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("noted", topic), record["say"] or record["ask"]


def test_a_given_measured_again_is_a_correction_and_no_number_to_compare() -> None:
    record = last("trim sticks for 148 feet in 16 foot stock", "I measured again, it's 184")
    assert (record["outcome"], record["answer"]["value"]) == ("answered", 12)
