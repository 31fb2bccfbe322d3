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
        ("2 n 3 in, in n out", "2 and 3 in , in and out"),
        ("saw n tilt, n sides, n = 4", "saw and tilt , n sides , n = 4"),
        ("nth wall, nth course", "north wall , nth course"),
        ("wht is it frm ea jnt", "what is it from each joint"),
        ("hw lg, hip lg, 9 lg", "how long , hip length , 9 long"),
        ("9 hi, hi", "9 high , hi"),
        ("into lvl band, an lvl, LVL beam", "into level band , an lvl , lvl beam"),
        ("b4 noon, b 4", "before noon , b 4"),
        ("up 9 over 12 wht x/12, 4 x 12", "up 9 over 12 what pitch , 4 × 12"),
        ("7/12 in deg, 5 deg", "7 / 12 in degrees , 5 deg"),
        ("16 in oh, oh 16", "16 in overhang , oh 16"),
        ("if wd is 19-6", "if width is 19 - 6"),
        ("a dr 3x7, dr opng", "a door 3 × 7 , door opening"),
        ("sq of siding", "squares of siding"),
        ("is it sq?", "is it sq ?"),
        ("310 sq ft", "310 sq ft"),
        ("1 dr 3x7, dr", "1 door 3 × 7 , dr"),
        ("osb shts, rftr lgth, trm rnd 5 win", "osb sheets , rafter length , trim round 5 win"),
        ("rf area, vly", "roof area , valley"),
        ("15% wst, wst wall", "15 % waste , west wall"),
        ("corner eighty six meter each", "corner eighty six miter each"),
        ("a corner 6 meter off", "a corner 6 meter off"),
    ],
)
def test_short_words(text: str, spelled: str) -> None:
    assert " ".join(token.text for token in texted(tokenize(text))) == spelled
