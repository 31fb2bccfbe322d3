"""Lines that say first what goes, and then ask what comes of it."""

from __future__ import annotations

import pytest

from tests.talking import last

FLASHING = ("bending a head flashing, legs 2, 3 1/4, 1/2 and a 3/8 hem, whats the stretchout",
            "how many strips that wide across a 24 inch coil")  # fmt: skip
WALL = "wall 32 by 9 with a 3 by 7 door and 2 windows 3 by 4, net area"


@pytest.mark.parametrize("line", ["lose the hem, how many strips then", "no hem, how many strips then"])
def test_what_goes_is_taken_away_before_it_is_read_off(line: str) -> None:
    record = last(*FLASHING, line)
    assert (record["outcome"], record["topic"]) == ("answered", "bent flashing")
    also = {one["name"]: one["value"] for one in record["also"]} | {record["answer"]["name"]: record["answer"]["value"]}
    assert (also["pieces per coil width"], also["girth"]) == (4, 5.75)  # 24 / (2 + 3 1/4 + 1/2)


def test_a_door_goes() -> None:
    assert last(WALL, "drop the door, what's it now")["answer"]["value"] == 32 * 9 - 2 * 3 * 4


def test_what_goes_of_another_question_is_asked_about() -> None:
    record = last(WALL, "how many squares with 10%", "lose the door, how many squares then")
    assert record["outcome"] == "asks"
    assert "lose the door" in record["ask"]


def test_another_question_is_its_own() -> None:
    record = last("run's 13'6 on a 7/12, rafter length with a 14 inch tail, measured level?",
                  "lose the tail. how much does it rise over that run")  # fmt: skip
    assert (record["topic"], record["answer"]["value"]) == ("rise over a run", 94.5)


def test_trim_round_no_opening_is_asked_about() -> None:
    assert last(WALL, "how many squares with 10%", "no door, how much is it now")["outcome"] == "asks"
