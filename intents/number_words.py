"""The words numbers are said in, and what each is worth."""

from __future__ import annotations

_SMALL_WORDS = [
    "zero",
    "one",
    "two",
    "three",
    "four",
    "five",
    "six",
    "seven",
    "eight",
    "nine",
    "ten",
    "eleven",
    "twelve",
    "thirteen",
    "fourteen",
    "fifteen",
    "sixteen",
    "seventeen",
    "eighteen",
    "nineteen",
]
SMALL = {word: value for value, word in enumerate(_SMALL_WORDS)} | {"oh": 0, "nought": 0, "nil": 0}
PLURALS = {  # what stock comes in and studs stand on: sixteens, twenty fours
    word + "s": SMALL[word] for word in ["two", "four", "eight", "ten", "twelve", "fourteen", "sixteen", "eighteen"]
} | {"sixes": 6, "twenties": 20}
TENS = {
    word: 10 * value
    for value, word in enumerate(
        ["twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety"], start=2
    )
} | {"fourty": 40}
SCALES = {"hundred": 100, "thousand": 1000, "million": 1_000_000}
GROUPS = {"dozen": 12, "couple": 2}
_DENOMINATORS = {
    "third": 3,
    "quarter": 4,
    "fourth": 4,
    "fifth": 5,
    "sixth": 6,
    "eighth": 8,
    "tenth": 10,
    "twelfth": 12,
    "sixteenth": 16,
    "hundredth": 100,
    "thousandth": 1000,
}
ORDINALS = {"half": 2, "halves": 2} | _DENOMINATORS | {word + "s": size for word, size in _DENOMINATORS.items()}
ORDINALS |= {"eights": 8, "ates": 8, "sixteens": 16}  # as they are heard, and often written
ORDINALS |= {f"{size}th{s}": size for size in (4, 5, 6, 8, 10, 12, 16, 64, 100) for s in ("", "s")}
ORDINALS |= {"eleventh": 11, "thirteenth": 13, "fifteenth": 15, "seventeenth": 17, "eighteenth": 18, "nineteenth": 19}  # courses
ORDINALS |= {"twentieth": 20} | {f"{size}th": size for size in (7, 9, 11, 13, 14, 15, 17, 18, 19, 20)}
ORDINALS |= {"3rd": 3, "3rds": 3, "32nd": 32, "32nds": 32, "32th": 32, "32ths": 32}
LONG_ORDINALS = {("thirty", "second"): 32, ("sixty", "fourth"): 64}
LONG_ORDINALS |= {(first, second + "s"): size for (first, second), size in LONG_ORDINALS.items()}
TAPE = frozenset((2, 4, 8, 16, 32, 64))
MIXED = TAPE | {3, 5, 6, 10, 12}
STARTS = (
    frozenset(SMALL)
    | frozenset(TENS)
    | frozenset(PLURALS)
    | frozenset(SCALES)
    | frozenset(ORDINALS)
) | frozenset(["a", "an", "point", "minus", "negative", "-", "dozen", "couple"])
# Words before "point" that make it a place or a temperature and no decimal: dew point ten.
POINTS = frozenset(
    (
        "dew", "due", "bearing", "high", "low", "mid", "center", "centre", "end", "start", "starting", "pivot", "fixed",
        "a", "the", "this", "that", "same", "some", "any", "each",
    )
)  # fmt: skip
MINUS = frozenset(("minus", "negative", "-"))
LONGEST_RUN = 6  # single digits said one after another, as "one two five"
