"""Sums as they are told: steps along the tape, the same at each end, so many of a size, what is left, how far apart."""

from __future__ import annotations

from fractions import Fraction

import pytest

from intents.said_once import said_once
from intents.tokens import tokenize
from tests.intents.spoken import inches_of


def inches(text: str) -> Fraction | None:
    """What the one sum of a text comes to, worked in millimetres; None where there is none."""
    return inches_of(*said_once(tokenize(text)))


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        ("start at 38 1/2, drop 1 1/4 for the sill, then add three 5 5/8 inch courses, where am I", "54.125"),
        ("starting from 40 1/8 I go down 2 3/4, down another 1 1/2 and then up 6, where have I landed", "41.875"),
        ("from the slab it is nineteen inches, then six courses at five and a half, where is the top", "52"),
        ("it was 96 1/4 then we chopped 2 1/2 off the top then they say add an inch so what length is it", "94.75"),
        ("47 1/4 less three quarters all round", "45.75"),
        ("9 foot 6 less 5 1/2 at each end", "103"),
        ("48 minus five eighths both sides", "46.75"),
        ("83 1/2 wide, add 4 1/2 on both ends, how long", "92.5"),
        ("half an inch off each end of 47", "46"),
        ("38 1/2, less a half inch all round, so a half off each side", "37.5"),
        ("91 1/4 less two 3/4 inch jambs", "89.75"),
        ("100 inches minus four posts at three and a half each", "86"),
        ("4 courses of 6 3/4 plus 2 courses of 7", "41"),
        ("10 1/4 plus an eighth for each of two cuts", "10.5"),
        ("what is left of a 16 footer after three cuts of 4 foot 2", "42"),
        ("what's left of a 10 footer after two cuts of 4 foot 3 with an eighth kerf", "17.75"),
        ("16 foot minus 11 foot 5 3/4, what's left", "54.25"),
        ("from 21 5/8 up to 64 3/8, how far is that", "42.75"),
        ("how much longer is 8 foot 1 than 93 1/2", "3.5"),
        ("how much do I take off 82 1/2 to get 79 5/8", "2.875"),
        ("my two side legs came out at 57 5/16 and 57 1/8. Difference?", "0.1875"),
        ("3/16 under 27 5/8", "27.4375"),
        ("in three runs ten foot five then nine foot eleven then seven foot, whats the whole wall", "328"),
        ("32 inch opening minus an eighth each side", "31.75"),
        ("10 1/2. Less 3/8.", "10.125"),
    ],
)
def test_told(said: str, expected: str) -> None:
    assert inches(said) == Fraction(expected)


@pytest.mark.parametrize(
    ("said", "left"),
    [
        ("it is 9 foot, no 10 foot, less 4", "it is 10 foot , less 4"),
        ("I had nine hundred written down but it's really 830, plus 45", "i had 830 , plus 45"),
        ("55 1/4 plus 8, I mean 9 1/2", "55 1 / 4 plus 9 1 / 2"),
        ("22 3/8 times six, no wait, times seven", "22 3 / 8 times seven"),
        ("12 courses, no, 13 courses", "13 courses"),
        ("a 12 foot wall, no 2 foot overhang", "a 12 foot wall , no 2 foot overhang"),
        ("5 in 12 roof, no overhang", "5 in 12 roof , no overhang"),
        ("gable 24 foot, no 1 foot overhang", "gable 24 foot , no 1 foot overhang"),
    ],
)
def test_what_is_said_instead(said: str, left: str) -> None:
    tokens, _ = said_once(tokenize(said))
    assert " ".join(token.text for token in tokens) == left


@pytest.mark.parametrize(
    "said",
    [
        "3 1/2 inches up, 6 inches across, 1 inch down",  # the legs of a flashing
        "start at 38 1/2, then 1 1/4, where am I with the exposure",
        "walls 9 foot and 10 foot each side",
        "add up the hours for the week, seven and a half plus eight and a quarter",
    ],
)
def test_no_sum_is_told(said: str) -> None:
    assert inches(said) is None
