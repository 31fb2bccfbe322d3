"""Angles, temperatures, ratios, areas, money and the rest; and what holds of the chart for any text at all."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from intents.measures import readings
from intents.reading import Dims
from intents.tokens import tokenize
from tests.intents.spoken import read, sure, values

F = Fraction

CERTAIN = [
    ("22.5°", "angle", F(45, 2), "deg"),
    ("22 and a half degrees", "angle", F(45, 2), "deg"),
    ("22 1/2 deg", "angle", F(45, 2), "deg"),
    ("ninety degree", "angle", F(90), "deg"),
    ("62 degrees 15 minutes", "angle", F(249, 4), "deg"),
    ("91° 45'", "angle", F(367, 4), "deg"),
    ("250 mm per metre", "pitch", F(3), "in12"),
    ("1 in 2.5", "pitch", F(24, 5), "in12"),
    ("70F", "temperature", F(70), "degF"),
    ("70 °F", "temperature", F(70), "degF"),
    ("minus ten C", "temperature", F(-10), "degC"),
    ("minus 10 celsius", "temperature", F(-10), "degC"),
    ("-10°C", "temperature", F(-10), "degC"),
    ("thirty two degrees f", "temperature", F(32), "degF"),
    ("20 below celsius", "temperature", F(-20), "degC"),
    ("freezing", "temperature", F(0), "degC"),
    ("60 F swing", "tempchange", F(60), "dF"),
    ("a 100 degree F change", "tempchange", F(100), "dF"),
    ("40 K", "tempchange", F(40), "dC"),
    ("40 celsius drop", "tempchange", F(-40), "dC"),
    ("change of 30 C", "tempchange", F(30), "dC"),
    ("10%", "percent", F(10), "percent"),
    ("ten per cent", "percent", F(10), "percent"),
    ("1/300", "ratio", F(1, 300), "ratio"),
    ("1 in 300", "ratio", F(1, 300), "ratio"),
    ("1:150", "ratio", F(1, 150), "ratio"),
    ("one to three hundred", "ratio", F(1, 300), "ratio"),
    ("one three hundredth", "ratio", F(1, 300), "ratio"),
    ("one over one fifty", "ratio", F(1, 150), "ratio"),
    ("1,500 sq ft", "area", F(1500), "ft2"),
    ("1500 square feet", "area", F(1500), "ft2"),
    ("1500 sf", "area", F(1500), "ft2"),
    ("12 m²", "area", F(12), "m2"),
    ("12 square metres", "area", F(12), "m2"),
    ("3 squares", "area", F(3), "square"),
    ("nine square inches", "area", F(9), "in2"),
    ("2 square yards", "area", F(18), "ft2"),
    ("$3.50", "money", F(7, 2), "money"),
    ("$1,200", "money", F(1200), "money"),
    ("three dollars and fifty cents", "money", F(7, 2), "money"),
    ("3 dollars fifty", "money", F(7, 2), "money"),
    ("minus $8", "money", F(-8), "money"),
    ("two dollars and a quarter", "money", F(9, 4), "money"),
    ("80 cents", "money", F(4, 5), "money"),
    ("10.1 oz", "volume", F(101, 10), "floz"),
    ("ten fluid ounces", "volume", F(10), "floz"),
    ("300 ml", "volume", F(3, 10), "L"),
    ("2 gallons", "volume", F(2), "gal"),
    ("a quart", "volume", F(1, 4), "gal"),
    ("6 cubic inches", "volume", F(6), "in3"),
    ("12 lb", "weight", F(12), "lb"),
    ("twelve and a half pounds", "weight", F(25, 2), "lb"),
    ("5 kg", "weight", F(5), "kg"),
]


@pytest.mark.parametrize(("text", "kind", "value", "unit"), CERTAIN)
def test_said_in_full(text: str, kind: str, value: F, unit: str) -> None:
    assert values(text, kind)[0] == (value, unit)
    assert read(text, kind)[0].sure >= 0.8


DOUBTFUL = [
    ("twenty below", "temperature", (F(-20), "degF"), (F(-20), "degC")),
    ("5 above", "temperature", (F(5), "degF"), (F(5), "degC")),
    ("ten below freezing", "temperature", (F(22), "degF"), (F(-10), "degC")),
    ("70 degrees", "temperature", (F(70), "degF"), (F(70), "degC")),
    ("100 degree swing", "tempchange", (F(100), "dF"), (F(100), "dC")),
    ("swing of 100 degrees", "tempchange", (F(100), "dF"), (F(100), "dC")),
    ("100 degree drop", "tempchange", (F(-100), "dF"), (F(-100), "dC")),
]


@pytest.mark.parametrize(("text", "kind", "first", "other"), DOUBTFUL)
def test_a_scale_left_unsaid_keeps_both(text: str, kind: str, first: tuple[F, str], other: tuple[F, str]) -> None:
    best = read(text, kind)[0]
    assert values(text, kind)[0] == first
    assert [(each.value, each.unit) for each in best.also] == [other]
    assert best.sure <= 0.6


@pytest.mark.parametrize(
    ("text", "kind", "value"),
    [
        ("twenty below the sill", "temperature", F(-20)),
        ("a square corner", "area", F(1)),
        ("70 degrees", "temperature", F(70)),
        ("3/8", "ratio", F(3, 8)),
        ("5/12", "ratio", F(5, 12)),
        ("three fifty a board", "money", F(7, 2)),
        ("12 foot square post", "area", F(12)),
        ("100 degree swing", "angle", F(100)),
        ("60 F swing", "temperature", F(60)),
        ("5 tons", "weight", F(5)),
        ("dew point ten celsius", "temperature", F(1, 10)),
        ("15/32 sheathing", "ratio", F(15, 32)),
        ("145 to 155 mm", "ratio", F(29, 31)),
        ("two pounds a square foot", "area", F(1)),
        ("a point 5 up the wall", "number", F(1, 2)),
    ],
)
def test_never_read_with_confidence(text: str, kind: str, value: F) -> None:
    assert sure(text, kind, value) <= 0.5


WORDS = [
    "a",
    "an",
    "half",
    "quarter",
    "and",
    "of",
    "in",
    "by",
    "to",
    "for",
    "twelve",
    "five",
    "7",
    "1/2",
    "12",
    "'",
    '"',
    "foot",
    "inch",
    "degrees",
    "below",
    "f",
    "-",
    "/",
    "×",
    "point",
    "hundred",
    "$",
    "square",
]


@given(st.lists(st.sampled_from(WORDS), max_size=25).map(" ".join) | st.text(max_size=60))
def test_any_words_make_a_chart_in_order(text: str) -> None:
    tokens = tokenize(text)
    chart = readings(tokens)
    assert len(chart) == len(tokens)
    for start, row in enumerate(chart):
        assert [reading.end for reading in row] == sorted((reading.end for reading in row), reverse=True)
        for reading in row:
            assert reading.start == start < reading.end <= len(tokens)
            assert 0 < reading.sure <= 1
            assert isinstance(reading.value, Dims) == (reading.kind == "dims")


@given(
    st.sampled_from(["12' 6\"", "five in twelve", "ten and five eighths inches", "$3.50", "1/300", "two metres forty"])
)
def test_words_around_a_quantity_do_not_change_it(text: str) -> None:
    alone = {(each.kind, str(each.value)) for each in readings(tokenize(text))[0]}
    within = {(each.kind, str(each.value)) for each in readings(tokenize(f"please {text}, thanks"))[1]}
    assert alone == within
