"""Text for the ear: units and signs as words, so that the voice says them and a reader of `say` sees no signs."""

from __future__ import annotations

import re

from intents.expressions import expression

_SIGNS = (
    (expression(r"°F\b"), " degrees Fahrenheit"),
    (expression(r"°C\b"), " degrees Celsius"),
    (expression(r"°"), " degrees"),
    (expression(r"\bin²/ft"), "square inches per foot"),
    (expression(r"\bin²"), "square inches"),
    (expression(r"\bft²"), "square feet"),
    (expression(r"\bm²"), "square metres"),
    (expression(r"\bin³"), "cubic inches"),
    (expression(r"\bft³"), "cubic feet"),
    (expression(r"(?<=\d) in(?= 12\b)"), " in"),
    (expression(r"(?<=\d) in\b(?! 12\b)"), " inches"),
    (expression(r"(?<=\d) ft\b"), " feet"),
    (expression(r"(?<=\d) mm\b"), " millimetres"),
    (expression(r"(?<=\d) ?%"), " percent"),
    (expression(r"(?<=\d) lb\b"), " pounds"),
    (expression(r"(?<=\d) ×"), " times"),
    (expression(r"−(?=\d)"), "minus "),
)
_ONE_INCH = expression(r"(?<![\d./] )(?<![\d./])(1|\d+/\d+) inches\b")  # one inch, or a part of one: 1/16 inch
_ONE_FOOT = expression(r"(?<![\d./] )(?<![\d./,])1 feet\b")


def spoken(text: str) -> str:
    """`Saw setting: 56.3°.` as it is said: `Saw setting: 56.3 degrees.`"""
    for sign, words in _SIGNS:
        text = sign.sub(words, text)
    return _ONE_FOOT.sub("1 foot", _ONE_INCH.sub(r"\1 inch", re.sub(r" {2,}", " ", text)))
