"""Untidy text into tokens: every spelling of a sign is one sign, and every token knows where it stood."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from intents.tokens import literal, tokenize

SPELLINGS = [
    ("12'6\"", "12 ' 6 \""),
    ("12'-6\"", "12 ' - 6 \""),
    ("12’-6½″", "12 ' - 6 1 / 2 \""),
    ("12 ′ 6 ″", "12 ' 6 \""),
    ("6''", '6 "'),
    ("5-in-12", "5 in 12"),
    ("5/12 5:12 1/300 12-6", "5 / 12 5 : 12 1 / 300 12 - 6"),
    ('16"oc 16oc', '16 " oc 16 oc'),
    ("16 in. o.c., 16 o/c", "16 in oc , 16 oc"),
    ("10x12 32×9 10 X 12 2*3", "10 × 12 32 × 9 10 × 12 2 × 3"),
    ("10ftx12ft", "10 ft × 12 ft"),
    ("2.4m 9mm .5", "2.4 m 9 mm 0.5"),
    ("$3.50 10% 22.5°", "$ 3.50 10 % 22.5 °"),
    ("-10C −10°C 70F ℃", "- 10 c - 10 ° c 70 f ° c"),
    ("1,200 1,234,567.5", "1200 1234567.5"),
    ("96,104,88", "96 , 104 , 88"),
    ("1 1/2, 3/4", "1 1 / 2 , 3 / 4"),
    ("7½ ⅜ １２", "7 1 / 2 3 / 8 12"),
    ("12 m² 12m2 5in12", "12 m2 12 m2 5 in 12"),
    ("three-eighths on-centre", "three eighths on centre"),
    ("What's the saw's limit?", "what is the saw limit ?"),
    ("flag 'that' \"now\"", "flag that now"),
    ("5/16ths 32nds", "5 / 16ths 32nds"),
    ("a\x00b\x1b 3\u200b4", "a b 34"),
    ("", ""),
]


@pytest.mark.parametrize(("text", "expected"), SPELLINGS)
def test_spellings(text: str, expected: str) -> None:
    assert " ".join(token.text for token in tokenize(text)) == expected


def test_places_are_of_the_original_text() -> None:
    text = "rake at 7½″, “five”"
    found = {token.text: text[token.start : token.end] for token in tokenize(text)}
    assert found == {
        "rake": "rake",
        "at": "at",
        "7": "7",
        "1": "½",
        "/": "½",
        "2": "½",
        '"': "″",
        ",": ",",
        "five": "five",
    }


@given(st.text(max_size=60))
def test_places_stay_in_order_and_inside_any_text(text: str) -> None:
    end = 0
    for token in tokenize(text):
        assert token.text
        assert end <= token.start + 1
        assert token.start < token.end <= len(text)
        end = token.end


@given(st.text(alphabet="0123456789abc .,'\"/-:x%$", max_size=60))
def test_plain_text_is_found_where_it_stands(text: str) -> None:
    for token in tokenize(text):
        if token.text.isalpha() and token.text not in ("is", "oc"):
            assert text[token.start : token.end] in (token.text, "x")


def test_ten_thousand_digits_are_one_token_and_no_number() -> None:
    tokens = tokenize("9" * 10_000)
    assert len(tokens) == 1
    assert not literal(tokens[0].text)
