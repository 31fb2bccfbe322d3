"""Words texted without their vowels are read whole, and only where one word comes to them."""

import pytest

from intents.matcher import speller
from intents.texted import texted
from intents.tokens import tokenize
from intents.vowelless import WORDS, without_vowels


@pytest.mark.parametrize(("short", "whole"), [
    ("bhnd", "behind"), ("vntd", "vented"), ("rk", "rake"), ("ntch", "notch"), ("bm", "beam"), ("blks", "blocks"),
    ("lddr", "ladder"), ("wtr", "water"), ("plywd", "plywood"), ("mtr", "miter"), ("dgnl", "diagonal"),
])  # fmt: skip
def test_one_word_is_read_whole(short: str, whole: str) -> None:
    assert [token.text for token in texted(tokenize(f"9 {short}"))][-1] == whole


@pytest.mark.parametrize("short", ["stl", "drp", "frz", "mts", "lft", "cnts", "tns", "slt"])
def test_what_two_words_come_to_is_let_be(short: str) -> None:
    assert without_vowels(frozenset()).get(short) is None  # steel, still; drop, drip; frieze, freeze; metres, meets


def test_no_word_of_its_own_is_another_ones_short_form() -> None:
    right = speller().leave - {"pcs", "eql", "crs", "brds"}  # which the grammars know as just these
    assert not [short for short in without_vowels(frozenset()) if short in right]
    assert len(set(WORDS)) == len(WORDS)
