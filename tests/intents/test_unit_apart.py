"""Units said apart from their numbers, rates, plural sizes and exact figures in brackets: the tokens as they are read on."""

from __future__ import annotations

import pytest

from intents.plurals import plural_sizes
from intents.rates import plain_rates
from intents.tokens import tokenize
from intents.unit_apart import beside_numbers


def units(text: str) -> str:
    return " ".join(token.text for token in beside_numbers(tokenize(text)))


def rates(text: str) -> str:
    return " ".join(token.text for token in plain_rates(tokenize(text)))


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("bend a flashing 80 up, 25 out. Millimetres. Strip width?", "bend a flashing 80 mm up , 25 mm out . . strip width ?"),
        ("rise 6, run 14, feet both, slope?", "rise 6 ft , run 14 ft , , slope ?"),
        ("fall on a sill 190 wide (mm) at 8 degrees", "fall on a sill 190 mm wide at 8 degrees"),
        ("trim metres: 31. Sticks of 2.4 m", "trim : 31 m . sticks of 2.4 m"),
        ("girth in mm: 60, 20 and 15", "girth : 60 mm , 20 mm and 15 mm"),
        ("90 less 35 mm, the 90 being inches", "90 inches less 35 mm"),
        ("diagonal for a deck 3000 × 4000, all in mm", "diagonal for a deck 3000 mm × 4000 mm ,"),
        ("caulk from ten ounce tubes (10.1)", "caulk from 10.1 ounce tubes"),
        ("a sheet weighs 20 kg. Pounds?", "a sheet weighs 20 kg in pounds ?"),
    ],
)
def test_a_unit_goes_beside_its_numbers(text: str, read: str) -> None:
    assert units(text) == read


@pytest.mark.parametrize(
    "text",
    [
        "5 3/8, mm",  # a part of the tape is of an inch, and millimetres are asked for
        "450 mm, inches",
        "what is 12 in feet?",
        "step at the rake, 7 exposure, in mm?",
        "how far is 3 feet, and a half?",
        "2 pieces of trim, 3 boards, all metric",
    ],
)
def test_a_unit_that_is_asked_for_or_has_no_bare_number_stays(text: str) -> None:
    assert units(text) == " ".join(token.text for token in tokenize(text))


def test_what_a_length_is_shared_by_has_no_unit() -> None:
    assert "3 inches" not in units("the long board 41 5/8 divided by 3, inches")


def test_counts_and_angles_take_no_unit() -> None:
    read = units("gable 26 wide, pitch 6, 3 windows 4 by 5, all in feet")
    assert "26 ft" in read and "pitch 6 ," in read and "3 windows 4 ft by 5 ft" in read


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("12 squares at 240 lb to the square", "12 squares at 240 lb per square"),
        ("75 sq ft at 3.1 lb per sqft", "75 sq ft at 3.1 lb per square foot"),
        ("a dollar eighty-five a foot", "a dollar eighty five per foot"),
        ("$4.10 for each square foot", "$ 4.10 per square foot"),
        ("11 kg to the square metre", "11 kg per m2"),
        ("if a square of shingles is $385", "if of shingles is $ 385 per square"),
    ],
)
def test_a_rate_is_said_one_way(text: str, read: str) -> None:
    assert rates(text) == read


@pytest.mark.parametrize("text", ["18 lb, a square corner", "a square deck is 12 feet", "$20 a board"])
def test_what_is_no_rate_of_a_measure_stays(text: str) -> None:
    assert rates(text) == " ".join(token.text for token in tokenize(text))


def test_plural_figures_are_sizes_of_stock() -> None:
    assert [token.text for token in plural_sizes(tokenize("trim in 16s, two 4x5s"))] == [
        "trim", "in", "sixteens", ",", "two", "4", "×", "5",
    ]  # fmt: skip
