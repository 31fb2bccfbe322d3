"""Short words spelled out, and those that their neighbours do not tell left alone."""

from __future__ import annotations

import pytest

from intents.texted import texted
from intents.tokens import tokenize


@pytest.mark.parametrize(
    ("text", "spelled"),
    [
        ("9 hgt, hgt 9", "9 high , height 9"),
        ("6 wdws w/ trim", "6 windows with trim"),
        ("wall w/o gable", "wall without gable"),
        ("28-6 lg 8-0 hgt w 6/12 gable", "28 - 6 long 8 - 0 high with 6 / 12 gable"),
        ("120 lf at 2 a lf", "120 ft at 2 a foot"),
        ("qty soakers", "how many soakers"),
        ("qty 12", "qty 12"),
        ("2 n 3 in, in n out", "2 and 3 in , in n out"),
        ("sq of siding", "squares of siding"),
        ("is it sq?", "is it sq ?"),
        ("310 sq ft", "310 sq ft"),
        ("1 dr 3x7, dr", "1 door 3 × 7 , dr"),
    ],
)
def test_short_words(text: str, spelled: str) -> None:
    assert " ".join(token.text for token in texted(tokenize(text))) == spelled
