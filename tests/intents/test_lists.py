"""Pieces, openings, layers, lengths and stock said in a row."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from intents.listed import Listing
from intents.lists import lists
from intents.measures import readings
from intents.tokens import tokenize
from solvers.slots import Layer, Opening, Piece, Stock
from tests.talking import last


def read(text: str, kind: str) -> tuple[Any, ...]:
    """The longest reading of a kind in the text, or nothing."""
    tokens = tokenize(text)
    found = [reading for reading in lists(Listing(tokens, readings(tokens))) if reading.kind == kind]
    best = max(found, key=lambda reading: (reading.end - reading.start, reading.sure), default=None)
    return best.value if best else ()  # type: ignore[return-value]


def short(value: Any) -> tuple[Any, ...]:
    """A list's item as plain numbers, lengths in inches."""
    if isinstance(value, Piece):
        return value.count, value.length.to("in").value
    if isinstance(value, Opening):
        return value.count, value.what, value.width.to("in").value, value.height.to("in").value
    if isinstance(value, Layer):
        return value.thickness.to("in").value, value.what
    if isinstance(value, Stock):
        return value.length.to("ft").value, value.price.value if value.price else None
    return (value.to("in").value,)


PIECES = {
    "four at 40 inches, three at 32": [(4, 40), (3, 32)],
    "2 @ 7'6\", 3 @ 5'2\", 4 @ 3'1\"": [(2, 90), (3, 62), (4, 37)],
    "5x 23 1/2, 2x 61, 1x 88": [(5, Fraction(47, 2)), (2, 61), (1, 88)],
    "four pieces of thirty one and three pieces of sixty two inches": [(4, 31), (3, 62)],
    "71 1/8, 71 1/8, 26": [(1, Fraction(569, 8)), (1, Fraction(569, 8)), (1, 26)],
    "ten pieces of 19 inches and five of 43": [(10, 19), (5, 43)],
    "seven at 4 foot 6, two at 6 foot 8 and one at 9 foot": [(7, 54), (2, 80), (1, 108)],
    "three four foot pieces": [(3, 48)],
    "a 48 and two 36s": [(1, 48), (2, 36)],
    "two jambs at 81, one head at 38 1/4": [(2, 81), (1, Fraction(153, 4))],
    '40" x 4, 32" x 3': [(4, 40), (3, 32)],
    "two at minus 30 inches": [(2, -30)],
}
OPENINGS = {
    "two windows 3 by 4 and a 3-0 by 6-8 door": [(2, "window", 36, 48), (1, "door", 36, 80)],
    "a six foot by four foot window": [(1, "window", 72, 48)],
    "three windows 2'6\" × 4'": [(3, "window", 30, 48)],
    "4 windows 3x5, 1 door 3x7": [(4, "window", 36, 60), (1, "door", 36, 84)],
    "sixteen by seven garage door": [(1, "door", 192, 84)],
    "a 36 by 80 door": [(1, "door", 36, 80)],
    "two windows 3 by 4 and a 6 8 door": [(2, "window", 36, 48), (1, "door", 36, 80)],
    "a 2 8 6 8 door": [(1, "door", 32, 80)],
    "a door 3 wide 7 high": [(1, "door", 36, 84)],
}
LAYERS = {
    "7/16 sheathing, 3/4 strapping and 5/16 siding": [
        (Fraction(7, 16), "sheathing"), (Fraction(3, 4), "strapping"), (Fraction(5, 16), "siding")],
    "half inch plywood, one inch of rigid foam, three quarter strapping": [
        (Fraction(1, 2), "plywood"), (1, "rigid foam"), (Fraction(3, 4), "strapping")],
    "sheathing 7/16 and strapping 3/4": [(Fraction(7, 16), "sheathing"), (Fraction(3, 4), "strapping")],
}  # fmt: skip
LENGTHS = {
    "2, 3 and 1 1/2 inch legs": [2, 3, Fraction(3, 2)],
    "2\" x 3/4\" x 4\", coil 20\"": [2, Fraction(3, 4), 4],
    "three inches up the wall, two and a half out, one and a quarter down, half inch kick": [
        3, Fraction(5, 2), Fraction(5, 4), Fraction(1, 2)],
    "legs 25 mm 90 mm 40 mm coil 600 mm": [Fraction(250, 254), Fraction(900, 254), Fraction(400, 254)],
    "2 legs, 4 and 5 5/8, coil is 20": [4, Fraction(45, 8)],
    "legs 2 and 3 inches, 24 inch coil": [2, 3],
}  # fmt: skip
STOCKS = {
    "8, 12 and 16 foot stock": [(8, None), (12, None), (16, None)],
    "12 footers at $14 and 16 footers at $19.50": [(12, 14), (16, Fraction(39, 2))],
}


@pytest.mark.parametrize(("text", "meant"), PIECES.items())
def test_pieces(text: str, meant: list[Any]) -> None:
    assert [short(piece) for piece in read(text, "pieces")] == meant


@pytest.mark.parametrize(("text", "meant"), OPENINGS.items())
def test_openings(text: str, meant: list[Any]) -> None:
    assert [short(opening) for opening in read(text, "openings")] == meant


@pytest.mark.parametrize(("text", "meant"), LAYERS.items())
def test_layers(text: str, meant: list[Any]) -> None:
    assert [short(layer) for layer in read(text, "layers")] == meant


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("two layers of half inch ply", [(Fraction(1, 2), "ply")] * 2),
        ("5/4 trim, that's an inch thick, over half inch sheathing", [(1, "trim"), (Fraction(1, 2), "sheathing")]),
        ("3/4 claddex and 1/2 sheathing", [(Fraction(3, 4), "claddex"), (Fraction(1, 2), "sheathing")]),
        ("1/2 sheathing, 3/4 strapping, 1 1/2 penetration", [(Fraction(1, 2), "sheathing"), (Fraction(3, 4), "strapping")]),
        ("12 feet of siding", []),
        ("3/4 kerf and 1/2 spacing", []),
    ],
)
def test_layers_told_otherwise(text: str, meant: list[Any]) -> None:
    assert [short(layer) for layer in read(text, "layers")] == meant


@pytest.mark.parametrize(
    ("text", "numbers"),
    [
        ("inspector's due at two", 0),
        ("two of us on site", 0),
        ("it took 3 hours", 0),
        ("boards due at two feet", 1),
        ("11 of them", 1),
        ("detail 7:12", 2),
    ],
)
def test_numbers_of_nothing(text: str, numbers: int) -> None:
    assert len([row for row in readings(tokenize(text)) if row]) == numbers


@pytest.mark.parametrize(("text", "meant"), LENGTHS.items())
def test_lengths(text: str, meant: list[Any]) -> None:
    assert [short(length)[0] for length in read(text, "lengths")] == meant


@pytest.mark.parametrize(("text", "meant"), STOCKS.items())
def test_stocks(text: str, meant: list[Any]) -> None:
    assert [short(stock) for stock in read(text, "stocks")] == meant


def test_a_width_that_was_not_said_is_named() -> None:
    (door,) = read("a 6 8 door", "openings")
    assert "width" in door.assumed
    (door,) = read("a 3-0 by 6-8 door", "openings")
    assert door.assumed == ""


def test_no_openings_is_an_answer() -> None:
    tokens = tokenize("wall 18 by 8 no openings")
    found = [reading for reading in lists(Listing(tokens, readings(tokens))) if reading.kind == "openings"]
    assert [reading.value for reading in found] == [()]


@given(st.lists(st.tuples(st.integers(1, 40), st.integers(8, 190)), min_size=1, max_size=12))
def test_any_list_of_counted_inches_comes_back(pairs: list[tuple[int, int]]) -> None:
    text = ", ".join(f"{count} at {size} inches" for count, size in pairs)
    assert [short(piece) for piece in read(text, "pieces")] == pairs


@given(st.text(max_size=200))
def test_any_text_is_survived(text: str) -> None:
    tokens = tokenize(text)
    for reading in lists(Listing(tokens, readings(tokens))):
        assert 0 <= reading.start < reading.end <= len(tokens)


@pytest.mark.parametrize(
    ("said", "square_feet"),
    [
        ("wall area of a 12 by 16 shed with 8 foot walls", 448),
        ("shed 10 by 12, walls 7 foot, wall area all round", 308),
        ("8 foot walls on a 24 by 32 house, one door 3x7, total wall area?", 875),
        ("my hut is 10 feet by 14 feet and all four walls are 7 feet tall, what's the wall area", 336),
        ("how much wall area on a 4 m by 6 m garage with walls 2.4 high", 48 / 0.3048**2),
        ("the shed wall is 10 by 8, area", 80),  # one wall
        ("walls of the boathouse are 30 by 9, area of one", 270),
    ],
)
def test_the_walls_of_a_building(said: str, square_feet: float) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["say"]
    factor = 1 / 0.3048**2 if record["answer"]["unit"] == "m2" else 1
    assert record["answer"]["value"] * factor == pytest.approx(square_feet)


def test_a_building_with_its_gables_is_no_four_walls() -> None:
    assert last("gable end of a 24 by 30 garage, 9 foot walls, 6/12, area of the end")["outcome"] != "answered"
