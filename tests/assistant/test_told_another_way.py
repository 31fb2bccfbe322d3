"""What is told another way takes the place of how it was told before, and never stands unused beside it."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from tests.talking import last

FALL = "fall of a 6 inch sill at 5 percent"
VINYL = "vinyl 12 ft from 70 to 0 F, how much does it move"
SWING = "vinyl 12 ft 100 degree F change, how much does it move"
ATTIC = "attic 24 x 36 at 1/300, how much vent"
SCREEN = "half inch gap 40 ft, screen 60% open, free vent area"
GAP = "end gap vinyl 12 ft, 40F now, 100 hottest, -10 coldest"
CEDAR = "red cedar 7 1/4 wide from 18 to 9 percent moisture, how much does it shrink"


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        ((FALL, "5 degrees i mean"), 0.52493),
        ((FALL, "what about 1 in 10"), 0.6),
        ((FALL, "1/4 per foot", "2 percent"), 0.12),
        ((VINYL, "what about a 100 degree change"), 0.536),
        ((SWING, "and from 20 to 90 F"), 0.3752),
        ((SWING, "use 0.00003 per degree F"), 0.432),
        ((SWING, "use 0.00003 per degree F", "steel"), 0.096),
        ((ATTIC, "1,200 square feet"), 576),
        ((ATTIC, "1,200 square feet", "and 30 by 36"), 518.4),
        ((ATTIC, "at the 150 rule"), 829.44),
        ((SCREEN, "what about no screen"), 240),
        ((SCREEN, "no screen", "half open"), 120),
        ((GAP, "if it sees -20 to 110"), 0.3752),
        ((GAP, "sees -20 to 110", "at 60 now"), 0.268),
        ((GAP, "sees -20 to 110", "hottest 120", "75 today"), 0.2412),
        ((CEDAR, "what if it loses 5 percent"), -0.084825),
        ((CEDAR, "what if it loses 5 percent", "and from 12 to 15"), 0.050895),
        (("cost of 40 boards at 12.50", "14 squares at 210 a square"), 2940),
        (("gable area 24 wide 8 12", "and 9 high"), 108),
        (("gable area 24 wide 8 12", "and 9 high", "at 6 12"), 72),
    ],
)
def test_the_new_way_holds(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"] or record["ask"]
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-3)


def test_no_given_of_the_old_way_is_on_the_page() -> None:
    names = [given["name"] for given in last(FALL, "5 degrees i mean")["givens"]]
    assert names == ["width", "slope per foot"]


def test_what_the_job_knows_gives_way_to_the_screen_that_was_said() -> None:
    record = last("bug screen is 55 percent open", "vent opening, 3/4 gap, 40 ft wall, mesh blocks 20 percent")
    assert record["answer"]["value"] == pytest.approx(288)


def test_a_doubt_stays_open_until_it_is_cleared() -> None:
    conversation = Conversation()
    asked = [conversation.answer(line) for line in ("vinyl 12 ft 60F change, how much growth", "make it 900 ft", "steel")]
    assert [record["outcome"] for record in asked] == ["answered", "asks", "asks"]
    assert "900 ft" in asked[2]["ask"]


def test_from_under_nothing_to_something_is_no_sum() -> None:
    assert last("how much is it from -20 to 110")["outcome"] != "answered"
    assert last("sees -20 to 110")["outcome"] != "answered"
