"""Pieces told in other words of the trade: what holds a nail, rows by their other names, ply for a gable, bays so long each."""

from __future__ import annotations

from typing import Any

import pytest

from assistant.conversation import Conversation


def ask(line: str) -> dict[str, Any]:
    return Conversation().answer(line)


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("cleat 1 1/2 on 1/2 ply, 1 1/4 thread in the stud, which screw", 3.25),
        ("packer 10 mm, firring 25 mm, joist wants 40 mm, what length screw", 75),
        ("nails through 20 mm feather-edge and 25 mm firring, a hold of 35 mm wanted, how long", 80),
        ("rail 38 mm, post takes 50 mm, spike length", 88),
        ("tiled floor 3180 mm wide, a tile is 603 mm, what cut at each side so it is centred", 384),
        ("gable 20 ft across at 6/12, how much ply to sheathe it", 50),
        ("gable is 24 ft wide at 8/12, how much does it rise", 96),  # no sheet is asked of it
        ("two gables 24 ft wide at 6/12, sorry, only one, what's the area", 72),
        ("two gables 24 ft wide at 6/12, no, just one coat, what's the area", 144),
        ("ten tiers of shakes at 7 to the weather, how high", 70),
        ("12 strakes showing 6 each, how high have we come", 72),
        ("purlins every 600 on a 5.4 m rafter, how many", 10),
        ("hooks every 400 along 5 m, first one 100 in from the corner, how many", 13),
        ("marks every 16 inches along 20 ft, first one 40 in from the corner", 13),  # inches are spoken of
        ("soaker 1 in, 3 in, 2 in, out of 24 in coil, what girth", 6),
    ],
)
def test_other_words_of_the_trade(said: str, value: float) -> None:
    answer = ask(said)["answer"]
    assert answer is not None
    assert answer["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("nine courses done before the rain comes at three and they're 7 inches each to the weather, how high", 63),
        ("14 ft between the posts, 24 balusters 1 1/2 wide, a gap at both ends too, the old rail had them every six inches and a "
         "dog got out, what gap", 5.28),
        ("94 ft of corner board, they sell it in 12 foot lengths at 22 each, how many lengths", 8),
        ("the ladder rests at 12 ft, my uncle goes by three feet whatever the height, how far out is the foot", 36),
        ("3/4 straps over 1/2 ply, 1 1/4 in the stud, the fella next door used two inch, what screw", 2.5),
        ("my uncle used 3/4 straps over 1/2 ply, siding is 5/8, 1 1/4 in the stud, what screw", 3.125),  # those are layers
    ],
)  # fmt: skip
def test_a_remark_is_no_part_of_it(said: str, value: float) -> None:
    answer = ask(said)["answer"]
    assert answer is not None
    assert answer["value"] == pytest.approx(value, abs=0.02)


@pytest.mark.parametrize(
    "said",
    [
        "standards in six bays of 1.8 m, how many",
        "how many straps on the north wall, studs at sixteen and we've been at it since seven this morning",
    ],
)
def test_it_asks(said: str) -> None:
    assert ask(said)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("said", "value", "verdict"),
    [
        ("I've 40 boards in the shed is that enough for 300 sq ft at 6 inch exposure, 12 foot", 55, "40 boards: not enough"),
        ("I've 60 boards in the shed is that enough for 300 sq ft at 6 inch exposure, 12 foot", 55, "60 boards: enough"),
        ("will 11 sticks do for 118 ft in 12 footers", 10, "11 sticks: enough"),
        ("i've got 4 tubes in the truck, is that enough for 70 ft at 1/4 in by 1/4 in", 3, "4 tubes: enough"),
    ],
)
def test_what_is_there_already_is_held_against_the_answer(said: str, value: int, verdict: str) -> None:
    record = ask(said)
    assert record["answer"]["value"] == value  # 300 ft² and a tenth over 6 ft² a board
    assert record["say"].startswith(verdict)
