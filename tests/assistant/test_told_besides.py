"""What is told to be kept, noted or left alone beside words about something else."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "outcome", "says"),
    [
        ("My drop saw tops out at 44 degrees, hang on to that", "noted", "saw limit 44°"),
        ("Set this job's exposure at 6 inches, whatever number he scratched on the old story pole.", "noted", "exposure 6 in"),
        ("There's 30 feet of drip edge left in the truck, which I want noted before somebody walks off with it.", "noted",
         "30 feet of drip edge left in the truck"),
        ("The last man was 3 inches out over 20 ft, I hear, and he'd measured it 4 times.", "declined", "nothing to work out"),
        ("how do I put up a scaffold", "declined", "kept from falling"),
        ("can I tie off to the scaffold", "declined", "kept from falling"),
    ],
)  # fmt: skip
def test_it_is_kept_noted_or_declined(line: str, outcome: str, says: str) -> None:
    record = last(line)
    assert (record["outcome"], says in record["say"]) == (outcome, True)


@pytest.mark.parametrize(
    "line",
    [
        "He says the 16 footers came in this morning, 20 on the truck, so how many sticks do I need for all the corner trim?",
        "Add 3 and 5/8 to the one he called down from the scaffold, that was 10 minutes back; what's it come to?",
    ],
)
def test_what_is_not_told_is_asked_for(line: str) -> None:
    assert last(line)["outcome"] == "asks"


@pytest.mark.parametrize(
    "line",
    [
        "How long will the 30 ft of trim get this summer, since he says his 12s moved plenty?",
        "how long will the 30 ft of trim get this summer",
        "how long'll the 16 ft of fascia get come summer",
    ],
)
def test_how_long_trim_gets_asks_what_it_is_made_of(line: str) -> None:
    record = last(line)
    assert (record["outcome"], record["topic"]) == ("asks", "thermal movement")
    assert record["ask"].startswith("What material")


@pytest.mark.parametrize(
    "line",
    ["how long can I leave the 16 ft trim out in the sun", "how long does paint take on the 16 ft of trim in the cold"],
)
def test_how_long_something_may_be_left_is_no_movement(line: str) -> None:
    assert (last(line)["outcome"], last(line)["topic"]) == ("declined", None)
