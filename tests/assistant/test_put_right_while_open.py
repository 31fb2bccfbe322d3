"""A number put right while another is still asked for: the one told that is near it is meant, and the question stays open."""

from __future__ import annotations

import math

import pytest

from tests.talking import records


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("how many boards for 300 square feet", "no it's 320", "6 inch exposure, 12 footers"), 59),  # 320 x 1.1 / 6, up
        (("lay out courses on a 9 foot wall", "actually 8 foot 10", "6 1/2"), 106 / 17),
        (("rake length 24 foot gable", "no 26", "6 in 12"), 13 * 12 * 1.25**0.5),
        (("cost of 40 boards", "no 44", "14.50"), 638),
        (("wall area 32 long", "no 34", "9"), 306),
    ],
)
def test_the_number_told_is_put_right(lines: tuple[str, ...], value: float) -> None:
    found = records(*lines)
    assert [record["outcome"] for record in found] == ["asks", "asks", "answered"]
    assert found[-1]["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("lay out courses on a 9 foot wall", "no 6 1/2"), 108 / 17),
        (("cost of 40 boards", "no 14.50"), 580),
        (("wall area 32 long", "no 9"), 288),
        (("rake length 24 foot gable", "sorry 6 in 12"), 12 * 12 * 1.25**0.5),
    ],
)
def test_a_number_near_none_that_was_told_is_the_reply(lines: tuple[str, ...], value: float) -> None:
    assert records(*lines)[-1]["answer"]["value"] == pytest.approx(value)


def test_one_or_the_other_is_no_reply() -> None:
    _, doubt, last = records("lay out courses on a 9 foot wall", "6 or 7", "6 1/2")
    assert doubt["outcome"] == "asks"
    assert {given["name"]: given["text"] for given in last["givens"]}["height"] == "9 foot"


def test_it_chooses_no_topic() -> None:
    assert records("cut 6 at 41", "make it 8")[-1]["outcome"] != "answered"


@pytest.mark.parametrize(
    ("open_", "other", "reply", "value"),
    [
        ("can my saw do a 7/12 rake return", "60 teeth", "48 degrees", 0),
        ("lay out courses on a 9 foot wall", "7 windows", "6 1/2", 108 / 17),
        ("rake return miter", "9 rafters", "7", 45 + math.degrees(math.atan(7 / 12)) / 2),
        ("how many boards for 300 square feet", "8 people", "6 inch exposure, 12 footers", 55),
        ("what nail for 1/2 inch cladding over 3/4 strapping", "8d", "1 1/2", 2.75),  # the nail is what is asked for
    ],
)
def test_what_counts_or_is_named_is_no_measure(open_: str, other: str, reply: str, value: float) -> None:
    _, again, last = records(open_, other, reply)
    assert (again["outcome"], last["outcome"]) == ("asks", "answered")
    assert last["answer"]["value"] == pytest.approx(value, abs=1e-4)


def test_a_measure_that_can_be_nothing_told_goes_where_it_can() -> None:
    _, still, last = records("vent opening 3/4 gap", "40 feet", "60 percent")
    assert "bug screen" in still["ask"]
    assert {given["name"]: given["text"] for given in last["givens"]}["length"] == "40 feet"


@pytest.mark.parametrize(
    ("reply", "outcome"),
    [("its 26", "asks"), ("26 degrees", "answered"), ("7", "answered"), ("40", "answered")],
)
def test_a_pitch_only_in_degrees_may_be_a_width_put_right(reply: str, outcome: str) -> None:
    last = records("rake length 24 foot gable", reply)[-1]
    assert last["outcome"] == outcome
    assert ("or the gable width 26 ft?" in (last["ask"] or "")) == (reply == "its 26")


BOARDS = "boards for a wall 7.2 by 2.4, 4.8 m lengths"


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        ((BOARDS, "sorry 2.7 high not 2.4", "150 cover"), 30),
        ((BOARDS, "2.7 instead of 2.4", "150 cover"), 30),
        (("courses, 2.55 high, gable end", "2.7 not 2.55", "near 160"), 2700 / 17),
        (("rake on a 24 foot gable", "not 24, 26", "6 in 12"), 13 * 12 * 1.25**0.5),
        (("screw for 19 board, 38 batten, 50 foam", "25 foam, not 50", "38"), 120),
        (("screw for 19 board, 38 batten, 50 foam", "45 not 38", "38"), 152),
    ],
)
def test_what_a_number_takes_the_place_of_tells_which_is_meant(lines: tuple[str, ...], value: float) -> None:
    found = records(*lines)
    assert [record["outcome"] for record in found] == ["asks", "asks", "answered"]
    assert found[-1]["answer"]["value"] == pytest.approx(value)


def test_a_number_that_was_never_told_is_no_given() -> None:
    last = records("rake on a 24 foot gable", "it's 8 not 6")[-1]
    assert last["answer"]["value"] == pytest.approx(12 * 12 * (1 + (8 / 12) ** 2) ** 0.5)


def test_which_of_two_alike_is_meant_is_not_guessed() -> None:
    last = records("screw for 3/4 board, 3/4 strap", "1/2 not 3/4")[-1]
    assert last["outcome"] == "asks"


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("diagonal of a 14 foot wall", "no, 12 foot long", "9"), 180),
        (("wall area, wall is 8 feet long", "sorry 9 long", "10"), 90),
        (("wall area, wall is 8 feet long", "no, 9 high"), 72),
    ],
)
def test_the_word_of_a_size_tells_whether_it_puts_right(lines: tuple[str, ...], value: float) -> None:
    assert records(*lines)[-1]["answer"]["value"] == pytest.approx(value)


def test_what_is_across_a_building_is_no_run() -> None:
    assert records("Hip length, run is 11 feet", "sorry, 12 feet across")[-1]["outcome"] == "asks"
