"""Number words that are easily taken for one another, and so are weighed against each other before one is believed."""

from __future__ import annotations

_UNITS = "one two three four five six seven eight nine".split()
_TEENS = "thirteen fourteen fifteen sixteen seventeen eighteen nineteen".split()
_TENS = "thirty forty fifty sixty seventy eighty ninety".split()

# Each row is one set of words; a word may stand in several rows. Rows come from what was misheard in measurements.
_ROWS = (
    *zip(_TEENS, _TENS, strict=True),
    ("five", "nine"),
    ("four", "forty", "fourteen"),
    ("six", "sixty", "sixteen"),
    ("seven", "seventy", "seventeen", "eleven"),
    ("eight", "eighty", "eighteen"),
    ("nine", "ninety", "nineteen"),
    ("ten", "two"),
    ("two", "three"),
    ("six", "three"),
    ("one", "nine"),
    ("twelve", "twenty"),
    ("sixteen", "sixty", "fifteen", "fifty"),
    ("thirty", "forty"),
    ("half", "quarter"),
    ("inch", "foot"),
    ("inches", "feet"),
    ("eighth", "eighths"),
)


def twins(words: list[str], at: int) -> list[str]:
    """The words that the number word at `at` is taken for, where they would leave a number; [] for any other word."""
    word = words[at]
    found = {other: None for row in _ROWS if word in row for other in row if other != word}
    if word in _TENS and words[at + 1 : at + 2] and words[at + 1] in _UNITS:
        return [other for other in found if other in _TENS]  # thirty four is no "thirteen four"
    if word in _UNITS and at and words[at - 1] in _TENS:
        return [other for other in found if other in _UNITS]
    return list(found)
