"""What was said over several lines is one sentence: a number next is known by the word that its old one was said with there."""

from __future__ import annotations

import pytest

from tests.talking import records


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("weight of 42 boards", "7.5 kilos apiece", "38 boards"), 285),
        (("cost of 22 boards", "31.50 each", "and if I get 25 of them?"), 787.5),
        (("soffit boards across, eave 9.6 long, 400 deep", "300 cover", "10.2 eave"), 34),
        (("screws, 14 battens 2.7 long", "300 centres", "18 battens"), 180),
        (("nails for 15 rows of siding 24 feet long", "every 16 inches", "there are 18 rows now that I count them"), 342),
    ],
)
def test_the_word_beside_a_number_tells_which_is_other(lines: tuple[str, ...], value: float) -> None:
    found = records(*lines)
    assert [record["outcome"] for record in found] == ["asks", "answered", "answered"]
    assert found[-1]["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize("line", ["4 boards wide", "6 windows"])
def test_another_word_is_of_none_of_it(line: str) -> None:
    last = records("soffit boards across, eave 9.6 long, 400 deep", "300 cover", line)[-1]
    assert last["outcome"] != "answered" or last["topic"] != "soffit panels"


@pytest.mark.parametrize("edge", ["slanted edge", "sloped edge", "slanting board", "angled edge"])
def test_a_rake_by_how_it_looks(edge: str) -> None:
    last = records(f"how long is the trim along the {edge} of the roof, it's 24 feet across", "9 in 12")[-1]
    assert (last["topic"], last["answer"]["value"]) == ("rake length", pytest.approx(180))


def test_what_was_kept_of_the_saw_is_no_corner() -> None:
    last = records("My saw goes to 47 degrees.", "Can it cut the trim at the bottom of the roof edge where it turns under?")[-1]
    assert last["outcome"] != "answered"


@pytest.mark.parametrize("line", ["with no overhang at all?", "no overhang at all then"])
def test_none_at_all(line: str) -> None:
    last = records("rake length 24 foot gable 9 in 12 overhang 18 inches", line)[-1]
    assert last["answer"]["value"] == pytest.approx(180)


@pytest.mark.parametrize(
    "line",
    [
        "if I take away 14 of the boards?",
        "what if we drop 14 of the boards",
        "14 fewer boards",
        "take 14 boards off",
        "leave out 14 of them",
    ],
)
def test_so_many_are_taken_away_from_those_counted(line: str) -> None:
    assert records("weight of 64 boards", "9.5 pounds each", line)[-1]["answer"]["value"] == pytest.approx(475)


def test_what_the_number_was_for_is_open_until_the_piece_is_told() -> None:
    last = records("The long side of my triangle is 10 feet. What's the rise?", "Well the run is 8 feet.")[-1]
    assert last["answer"]["value"] == pytest.approx(72)


BOARDS = ("boards for 300 sq ft, 6 inch exposure, 12 footers, 15 percent waste", "at 14 each")  # 58 of them


@pytest.mark.parametrize(
    ("line", "boards"), [("10 percent then", 55), ("with 10 percent waste", 55), ("5 inch exposure", 69), ("no waste", 50)]
)
def test_what_things_were_counted_by_changes_what_they_cost(line: str, boards: int) -> None:
    last = records(*BOARDS, line)[-1]
    assert (last["topic"], last["answer"]["value"]) == ("cost", pytest.approx(14 * boards))


@pytest.mark.parametrize(("line", "money"), [("less 10 percent", 58 * 14 * 0.9), ("plus 10 percent tax", 58 * 14 * 1.1)])
def test_a_share_of_the_money_is_of_the_money(line: str, money: float) -> None:
    assert records(*BOARDS, line)[-1]["answer"]["value"] == pytest.approx(money)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("How many feet is 4,200?", "Millimeters."), 13.78),
        (("How many feet is 4,200?", "mm", "and 3,600?"), 11.81),
        (("how many inches is 38", "mm"), 1.5),
    ],
)
def test_the_unit_of_what_is_to_be_converted_may_come_alone(lines: tuple[str, ...], value: float) -> None:
    assert records(*lines)[-1]["answer"]["value"] == pytest.approx(value, abs=0.01)


def test_a_size_that_was_stated_is_no_count() -> None:
    assert records("panels then", "cover 300", "6.20 each")[-1]["outcome"] != "answered"
