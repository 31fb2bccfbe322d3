"""A slip in a number word is read as that number or as none: never as another."""

from __future__ import annotations

import string

import pytest
from hypothesis import given
from hypothesis import strategies as st

from intents.matcher import speller
from intents.number_words import ORDINALS, PLURALS, SCALES, SMALL, TENS

WORTH = {**ORDINALS, **PLURALS, **TENS, **SCALES, **SMALL}
LONG = sorted(word for word in (*SMALL, *TENS, *SCALES) if len(word) > 4)


@given(
    st.sampled_from(LONG),
    st.integers(1, 20),
    st.sampled_from(["drop", "double", "swap", "change"]),
    st.sampled_from(string.ascii_lowercase),
)
def test_one_slip_makes_no_other_number(word: str, place: int, slip: str, letter: str) -> None:
    at = min(place, len(word) - 1)
    before, after = word[:at], word[at + 1 :]
    typed = {
        "drop": before + after,
        "double": before + 2 * word[at] + after,
        "swap": before[:-1] + word[at] + before[-1:] + after,
        "change": before + letter + after,
    }[slip]
    read = speller().read(typed)
    if typed not in WORTH and read in WORTH:
        assert WORTH[read] == WORTH[word]


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("elevn", "eleven"),
        ("twelv", "twelve"),
        ("ninty", "ninety"),
        ("thrity", "thirty"),
        ("forteen", "fourteen"),
        ("fiveteen", "fifteen"),
        ("hunderd", "hundred"),
        ("eigth", "eight"),
        ("fift", "fift"),  # fifty, or fifth
        ("sight", "sight"),
        ("nite", "nite"),
        ("hite", "height"),
    ],
)
def test_slips_of_numbers(typed: str, meant: str) -> None:
    assert speller().read(typed) == meant
