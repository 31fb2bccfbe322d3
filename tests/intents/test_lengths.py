"""Lengths, pitches and sizes: every way of saying one, and the words that must not be taken for one."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from intents.reading import Dims
from tests.intents.spoken import figures, mixed, quantity, read, sure, values, whole

F = Fraction

LENGTHS = [
    ("12'", F(12), "ft"),
    ("12 ft", F(12), "ft"),
    ("twelve feet", F(12), "ft"),
    ("12 and a half foot", F(25, 2), "ft"),
    ("3 yards", F(9), "ft"),
    ("12'6\"", F(150), "in"),
    ("12'-6\"", F(150), "in"),
    ("12' 6 1/2\"", F(301, 2), "in"),
    ("12’-6½″", F(301, 2), "in"),
    ("12 foot 6", F(150), "in"),
    ("12 ft. 6 1/2 in.", F(301, 2), "in"),
    ("twelve foot six", F(150), "in"),
    ("twelve foot six and a half", F(301, 2), "in"),
    ("twelve feet six and five eighths inches", F(1205, 8), "in"),
    ("12 foot three quarters of an inch", F(579, 4), "in"),
    ("twelve feet and six inches", F(150), "in"),
    ("a foot and a half", F(3, 2), "ft"),
    ("foot and a half", F(3, 2), "ft"),
    ("half a foot", F(1, 2), "ft"),
    ("six inches", F(6), "in"),
    ("6in", F(6), "in"),
    ('6-1/2"', F(13, 2), "in"),
    ("six inches and a half", F(13, 2), "in"),
    ("inch and a half", F(3, 2), "in"),
    ("an inch and three eighths", F(11, 8), "in"),
    ("twelve foot and three eighths", F(1155, 8), "in"),
    ("3/8 of an inch", F(3, 8), "in"),
    ("three-eighths inch", F(3, 8), "in"),
    ("a quarter of an inch", F(1, 4), "in"),
    ("quarter inch", F(1, 4), "in"),
    ("half an inch", F(1, 2), "in"),
    ('-3 1/2"', F(-7, 2), "in"),
    ("minus 12 foot 6", F(-150), "in"),
    ("sixty thou", F(6, 100), "in"),
    ("2.4 m", F(12, 5), "m"),
    ("2.4m", F(12, 5), "m"),
    ("2400 mm", F(2400), "mm"),
    ("90 centimetres", F(90), "cm"),
    ("two metres forty", F(12, 5), "m"),
    ("1 m 20", F(6, 5), "m"),
    ("1 m 250 mm", F(5, 4), "m"),
    ("three metres and eight mil", F(376, 125), "m"),
    ("a foot and a third", F(4, 3), "ft"),
    ("eighteen hundred mil", F(1800), "mm"),
    ("two and a half dozen feet", F(30), "ft"),
    ("half of a dozen feet", F(6), "ft"),
    ("two and a half meters", F(5, 2), "m"),
]


@pytest.mark.parametrize(("text", "value", "unit"), LENGTHS)
def test_lengths(text: str, value: F, unit: str) -> None:
    assert values(text, "length")[0] == (value, unit)
    assert read(text, "length")[0].sure >= 0.9


@given(st.integers(1, 99), st.integers(0, 12 * 16 - 1))
def test_feet_and_inches_read_back(feet: int, sixteenths: int) -> None:
    inches = F(sixteenths, 16)
    total = feet * 12 + inches
    for text in (
        f"{feet}' {figures(inches)}\"",
        f"{feet}'-{figures(inches)}\"",
        f"{feet} ft {figures(inches)} in",
        f"{whole(feet)} foot {mixed(inches)} inches",
    ):
        assert values(text, "length")[0] == (total, "in")


@pytest.mark.parametrize(
    ("text", "value", "other"),
    [
        ("twelve foot and a half", F(25, 2), F(289, 2)),
        ("twelve foot and a quarter", F(49, 4), F(577, 4)),
        ("two meters four", F(51, 25), F(12, 5)),
    ],
)
def test_both_meanings_of_a_part_are_kept(text: str, value: F, other: F) -> None:
    best = read(text, "length")[0]
    assert (quantity(best).value, best.also[0].value) == (value, other)
    assert best.sure < 0.9


@pytest.mark.parametrize("text", ["12-6", "12 6 1/2", "twelve six and a half", "12 6"])
def test_feet_and_inches_with_neither_said_are_a_guess(text: str) -> None:
    assert 0.4 <= read(text, "length")[0].sure <= 0.6


PITCHES = [
    ("5 in 12", F(5)),
    ("5-in-12", F(5)),
    ("5/12", F(5)),
    ("7/12", F(7)),
    ("5:12", F(5)),
    ("5-12", F(5)),
    ("5 12", F(5)),
    ("five twelve", F(5)),
    ("a five twelve", F(5)),
    ("twelve twelve", F(12)),
    ("five on twelve", F(5)),
    ("five over twelve", F(5)),
    ("five and a half twelve", F(11, 2)),
    ("four and a half in twelve", F(9, 2)),
    ("4.5/12", F(9, 2)),
    ("5 1/2/12", F(11, 2)),
    ("0/12", F(0)),
    ("-3/12", F(-3)),
    ("400 in 12", F(400)),
    ("6 in 10", F(36, 5)),
    ("1 in 4", F(3)),
    ("3 over 8", F(9, 2)),
    ("a quarter inch per foot", F(1, 4)),
    ("5 inches in 12", F(5)),
]


@pytest.mark.parametrize(("text", "rise"), PITCHES)
def test_pitches(text: str, rise: F) -> None:
    assert values(text, "pitch")[0] == (rise, "in12")
    assert read(text, "pitch")[0].sure >= 0.8


@pytest.mark.parametrize("text", ["3/8", "1/2", "5/8", "12-6", "five eighths", "1/300"])
def test_what_is_no_pitch(text: str) -> None:
    assert not read(text, "pitch")


@pytest.mark.parametrize("text", ["5 in 12 foot", "four twelve inch boards", "5 by 12", "from 6 to 12", "1 in 300"])
def test_what_is_hardly_a_pitch(text: str) -> None:
    assert all(sure(text, "pitch", F(n, 25)) <= 0.5 for n in (1, 100, 125, 150))


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("5 in 12", F(5)),
        ("put 6 in the wall", F(6)),
        ("12 foot 5 in 12", F(149)),
        ("16 foot 5 12 pitch", F(197)),
        ("16-24 inches", F(16 * 12 + 24)),
        ("6-8 inches", F(80)),
        ("12 foot 6 foot", F(150)),
        ("12 ft, 6", F(150)),
        ("20 feet, 7 inch exposure", F(247)),
        ("gable 24 ft 6/12", F(577, 2)),
        ("convert 2 m to feet", F(2 * 12)),
        ("five twelve in degrees", F(12)),
        ("exposure of 6 3/4", F(291, 4)),
        ("36 by 10 two windows", F(122)),
        ("divide 100 inches by 7", F(700)),
    ],
)
def test_words_that_are_no_length_are_not_read_as_one_with_confidence(text: str, value: F) -> None:
    assert sure(text, "length", value) <= 0.9 if "3/8" in text else sure(text, "length", value) <= 0.3


DIMS = [
    ("ten and five eighths by eight", [(F(85, 8), "none"), (F(8), "none")]),
    ("32 by 9 foot", [(F(32), "ft"), (F(9), "ft")]),
    ("10 by 12 ft 6", [(F(10), "ft"), (F(150), "in")]),
    ("3' x 4'", [(F(3), "ft"), (F(4), "ft")]),
    ("3' x 4", [(F(3), "ft"), (F(4), "ft")]),
    ("10x12", [(F(10), "none"), (F(12), "none")]),
    ("3 foot by 4 foot", [(F(3), "ft"), (F(4), "ft")]),
    ('36" × 80"', [(F(36), "in"), (F(80), "in")]),
    ("3-0 by 6-8", [(F(36), "in"), (F(80), "in")]),
    ("2 by 4", [(F(2), "none"), (F(4), "none")]),
    ("2x4x8'", [(F(2), "none"), (F(4), "none"), (F(8), "ft")]),
    ("3/8 x 3/8 x 47 ft", [(F(3, 8), "none"), (F(3, 8), "none"), (F(47), "ft")]),
    ("9 ft by 100 ft", [(F(9), "ft"), (F(100), "ft")]),
    ("thirty six by forty eight inches", [(F(36), "in"), (F(48), "in")]),
    ("3 feet wide by 4 feet", [(F(3), "ft"), (F(4), "ft")]),
    ("2.4 m by 1.2 m", [(F(12, 5), "m"), (F(6, 5), "m")]),
]


@pytest.mark.parametrize(("text", "parts"), DIMS)
def test_sizes(text: str, parts: list[tuple[F, str]]) -> None:
    best = read(text, "dims")[0].value
    assert isinstance(best, Dims)
    assert [(quantity(part).value, quantity(part).unit) for part in best.parts] == parts


def test_a_unit_said_once_is_less_sure_where_it_was_not_said() -> None:
    best = read("32 by 9 foot", "dims")[0].value
    assert isinstance(best, Dims)
    assert [part.sure for part in best.parts] == [0.8, 1.0]
