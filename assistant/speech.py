"""Text for the ear: units and signs as words, so that the voice says them and a reader of `say` sees no signs."""

from __future__ import annotations

import re

_SIGNS = (
    (re.compile(r"°F\b"), " degrees Fahrenheit"),
    (re.compile(r"°C\b"), " degrees Celsius"),
    (re.compile(r"°"), " degrees"),
    (re.compile(r"\bin²/ft"), "square inches per foot"),
    (re.compile(r"\bin²"), "square inches"),
    (re.compile(r"\bft²"), "square feet"),
    (re.compile(r"\bm²"), "square metres"),
    (re.compile(r"\bin³"), "cubic inches"),
    (re.compile(r"\bft³"), "cubic feet"),
    (re.compile(r"(?<=\d) in(?= 12\b)"), " in"),
    (re.compile(r"(?<=\d) in\b(?! 12\b)"), " inches"),
    (re.compile(r"(?<=\d) ft\b"), " feet"),
    (re.compile(r"(?<=\d) mm\b"), " millimetres"),
    (re.compile(r"(?<=\d) ?%"), " percent"),
    (re.compile(r"(?<=\d) lb\b"), " pounds"),
    (re.compile(r"(?<=\d) ×"), " times"),
    (re.compile(r"−(?=\d)"), "minus "),
)
_ONE_INCH = re.compile(r"(?<![\d./] )(?<![\d./])(1|\d+/\d+) inches\b")  # one inch, or a part of one: 1/16 inch
_ONE_FOOT = re.compile(r"(?<![\d./] )(?<![\d./,])1 feet\b")


def spoken(text: str) -> str:
    """`Saw setting: 56.3°.` as it is said: `Saw setting: 56.3 degrees.`"""
    for sign, words in _SIGNS:
        text = sign.sub(words, text)
    return _ONE_FOOT.sub("1 foot", _ONE_INCH.sub(r"\1 inch", re.sub(r" {2,}", " ", text)))
