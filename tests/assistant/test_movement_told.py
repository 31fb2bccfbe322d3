"""Movement as people tell it: which moisture was first, a change with its sign, the gap somebody reckons."""

from __future__ import annotations

from typing import Any

import pytest

from assistant.conversation import Conversation


def ask(line: str) -> dict[str, Any]:
    return Conversation().answer(line)


def given(record: dict[str, Any]) -> dict[str, float]:
    return {each["name"]: each["value"] for each in record["givens"] if each["value"] is not None}


@pytest.mark.parametrize(
    ("said", "before", "after"),
    [
        ("cherry panel 14 inches across, 11 percent today, the heating brings it down to 6, what does it do", 11, 6),
        ("maple sill, 4 3/4 wide, came from a 6% shop to a porch at 12%, growth?", 6, 12),
        ("flat sawn beech 9 inches wide, it was 15 percent in the yard, it'll settle at 9 indoors, how much narrower", 15, 9),
    ],
)
def test_two_moistures_are_in_the_order_they_were_told(said: str, before: float, after: float) -> None:
    record = ask(said)
    assert record["outcome"] == "answered", record["ask"]
    assert given(record)["moisture before"] == before
    assert given(record)["moisture after"] == after


@pytest.mark.parametrize(
    ("said", "sign"),
    [
        ("ponderosa pine, flat grain, 5.5 in, +7% moisture: change?", 1),
        ("red oak board 8 wide picks up 7 points, how much wider", 1),
        ("red oak board 8 wide loses 7 points, how much", -1),
        ("hemlock 7 1/4, minus 5% moisture, change in width", -1),
    ],
)
def test_a_change_of_moisture_has_its_sign(said: str, sign: int) -> None:
    record = ask(said)
    assert record["outcome"] == "answered", record["ask"]
    assert "moisture change" in given(record)
    assert float(record["answer"]["value"]) * sign > 0


def test_a_board_no_wood_is_as_wide_as_was_said_in_millimetres() -> None:
    assert ask("larch, 145 wide, 20% down to 13%, how much narrower")["answer"]["unit"] == "mm"
    assert ask("larch, 11 wide, 20% down to 13%, how much narrower")["answer"]["unit"] == "in"


def test_one_moisture_alone_is_no_change() -> None:
    assert ask("white oak 3 1/2 wide, it reads 9 percent, how much does it move")["outcome"] == "asks"


def test_a_gap_somebody_reckons_is_no_length_of_the_piece() -> None:
    record = ask("he said a quarter inch but it's 28 F now, the vinyl is 12 ft, hottest 100 F, coldest -5 F, what end gap")
    assert given(record)["length"] == 12
    assert "quarter inch" in record["say"]


@pytest.mark.parametrize(
    ("said", "start", "end"),
    [
        ("20 ft of vinyl, it was 34 F in the shed and it'll be cooking at 130 on the wall, how much does it grow", 34, 130),
        ("copper lining, 2.4 m, minus 5 to plus 65 celsius, expansion", -5, 65),
        ("PVC boards are 20 ft, it was 45 degrees when he did it and got to 105, how much did they move", 45, 105),
    ],
)
def test_both_ends_of_a_warming(said: str, start: float, end: float) -> None:
    record = ask(said)
    assert record["outcome"] == "answered", record["ask"]
    assert (given(record)["temperature before"], given(record)["temperature after"]) == (start, end)


def test_a_start_and_a_rise_are_not_two_ends() -> None:
    record = ask("12 ft vinyl, starts at 40 F and goes up 60 F, growth")
    assert record["outcome"] == "asks" or "temperature after" not in given(record)


@pytest.mark.parametrize(
    ("said", "least", "most"),
    [
        ("how much longer's my 5.4 m PVC fascia at 35 C than when I cut it at 12", 7, 10),
        ("how much shorter is 3.6 m of vinyl at minus 5 C than it is at 30 C", -10, -7),
        ("polycarbonate sheet 3.6 m long, heats up 40 C. how much does it grow", 9, 10.5),
    ],
)
def test_what_it_is_longer_than_was_first(said: str, least: float, most: float) -> None:
    answer = ask(said)["answer"]
    assert answer["unit"] == "mm" and least < answer["value"] < most


def test_a_swing_whose_scale_is_said_last_is_not_asked_about() -> None:
    assert ask("copper flashing 10 ft, 80 degree swing F, how much change")["outcome"] == "answered"
    assert ask("copper flashing 10 ft, 80 degree swing, how much change")["outcome"] == "asks"


def test_bare_moistures_go_the_way_that_is_asked() -> None:
    record = ask("white oak boards four and a half inches, 6 percent in the shop, 12 on the porch, how much wider")
    assert (given(record)["moisture before"], given(record)["moisture after"]) == (6, 12)
    assert ask("red oak 5 in, 8 percent, 12 percent, how much narrower")["outcome"] == "asks"


def test_a_sum_is_no_rival_of_a_question_with_percents_in_it() -> None:
    assert ask("movement of 3 1/4 sugar maple flooring between 6 and 11 percent")["topic"] == "wood movement"


def test_in_here_is_a_place() -> None:
    record = ask("its 75 in here and sixty percent humidity, fahrenheit, what's the dew point")
    assert record["answer"]["value"] == pytest.approx(60.1, abs=0.5)


@pytest.mark.parametrize(
    ("said", "coldest"),
    [
        ("Vinyl 12 ft. 72 F now. 118 F max. 12 F below zero min. Gap?", -12),
        ("put up at 8 C, 3.8 m vinyl, forty C the hottest it'll see and twenty below the coldest, what gap", -20),
    ],
)
def test_below_zero_is_below_zero(said: str, coldest: float) -> None:
    assert given(ask(said))["coldest"] == coldest
