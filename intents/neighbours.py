"""What stands beside a quantity and casts doubt on it: the name of another thing, or more of the number."""

from __future__ import annotations

from itertools import pairwise

from intents.chart import LIGHT, Chart
from intents.number_words import SCALES, SMALL, TENS
from intents.phrases import Phrases
from intents.placing import Placed
from intents.question import Heard, Question
from intents.sound_words import MEASURES, UNITS
from solvers.quantities import Count, Length
from solvers.slots import Parameter

MOST_BETWEEN = 2  # small words between a name and its size: "window is at 36 in"
BEING = frozenset("which that is are being".split())  # between a name and its size: sheathing which is half inch
# Things with a size of their own that people mention beside a question about something else.
THINGS = frozenset(
    "window windows door doors ladder ladders exposure reveal overhang eave kerf board boards siding cladding sheathing plywood"
    " ply osb foam strapping".split()
)


def of_something_else(
    chart: Chart, phrases: Phrases, placed: Placed, parameters: tuple[Parameter, ...]
) -> list[str]:  # fmt: skip
    """The lengths with no role from their topic, as they were said, that stand after another thing's name."""
    if not placed.loosely or THINGS.isdisjoint(chart.words):
        return []
    small = phrases.fillers | LIGHT | BEING
    own = {p.name: f"{p.label} {p.slot.ask} {p.slot.kept or ''}".lower() for p in parameters if p.name in placed.loosely}
    found = ((name, heard) for name, heard in placed.givens.items() if name in placed.loosely)
    return [
        heard.text
        for name, heard in found
        if isinstance(heard.value, Length) and (thing := _thing(chart, small, placed.covered, heard))
        and thing.removesuffix("s") not in own[name]
    ]  # fmt: skip


def _thing(chart: Chart, small: frozenset[str], covered: int, heard: Heard) -> str:
    """The name of a thing that stands before a length and that the topic has no use for, or nothing."""
    before = max((i for i, token in enumerate(chart.tokens) if token.end <= heard.start), default=-1)
    for _ in range(MOST_BETWEEN):
        if before >= 0 and chart.words[before] in small:
            before -= 1
    unused = before >= 0 and not covered >> before & 1
    return chart.words[before] if unused and chart.words[before] in THINGS else ""


_TONS = frozenset("ton tons tonne tonnes".split())
_AND_A_PART = (["and", "a", "half"], ["and", "a", "quarter"])
_TENS_ON = {word: value for word, value in (SMALL | TENS | SCALES).items() if value > 1}


def cut_off(chart: Chart, phrases: Phrases, question: Question) -> list[str]:
    """Numbers half of which no given took, with the words that may be their other half, as they were said.

    A number word right after a given (or tens right before one) belongs to some number; so does a word nobody knows
    between a number and its unit ("a hundred and elefen degrees"). What is left of such a number is no number to work with.
    """
    words = chart.words
    units, parted = not UNITS.isdisjoint(words), ("and", "a") in pairwise(words)
    if not (units or parted or any(word in _TENS_ON or word.isdecimal() for word in words)):
        return []
    inside = 0
    spans = [(heard.start, heard.end) for heard in question.givens.values()]
    # What is left out is no half of another number: a sixteen foot | two by four.
    spans += [(at, at + len(text)) for text in question.left if (at := chart.text.find(text)) >= 0]
    for i, token in enumerate(chart.tokens):
        start = token.start
        for first, last in spans:
            if first <= start < last:
                inside |= 1 << i
                break
    found = []
    for i, word in enumerate(words):
        if inside >> i & 1 and not units:
            continue
        value = _TENS_ON.get(word, 0)
        left = (value or word.isdecimal()) and not inside >> i & 1
        after, before = i > 0 and inside >> (i - 1) & 1, inside >> (i + 1) & 1
        if left and ((value and (after or (before and value > 9))) or (not value and _beside_count(chart, question, i))):
            found.append(chart.said(i, i + 1))
        elif units and words[i + 1 : i + 2] and words[i + 1] in UNITS and _garbled(chart, phrases, i):
            found.append(chart.said(i, i + 2))
        elif parted and not inside >> i & 1 and _lost_whole(chart, phrases, i):
            found.append(chart.said(i, i + 4))  # ich and a half
    return [text for text in found if text not in question.unplaced]


def _beside_count(chart: Chart, question: Question, i: int) -> bool:
    """Whether a number in digits stands right after a count: 4 23 boxes are no four."""
    before = chart.tokens[i - 1]
    return i > 0 and bool(chart.numbers >> i & 1) and any(
        isinstance(heard.value, Count) and heard.start <= before.start < heard.end and chart.words[i - 1].isdecimal()
        for heard in question.givens.values()
    )  # fmt: skip


def _lost_whole(chart: Chart, phrases: Phrases, i: int) -> bool:
    """Whether a word that means nothing stands where the whole of "and a half" should: ich and a half."""
    word = chart.words[i]
    part = chart.words[i + 1 : i + 4] in _AND_A_PART
    return part and word not in MEASURES and word not in _TONS and not known(phrases, word)


def known(phrases: Phrases, word: str) -> bool:
    """Whether a word means something here, or is none that a number could have been."""
    meant = (phrases.vocabulary, phrases.ordinary, phrases.fillers, LIGHT, _TENS_ON)
    return not word.isalpha() or any(word in words for words in meant)


def _garbled(chart: Chart, phrases: Phrases, i: int) -> bool:
    """Whether a word that means nothing stands between a number in words and a unit."""
    words = chart.words
    if not 0 < i < len(words) - 1 or words[i + 1] not in UNITS or not words[i].isalpha() or chart.numbers >> i & 1:
        return False
    first = words[i - 2] if words[i - 1] == "and" and i > 1 else words[i - 1]
    return first in _TENS_ON and not known(phrases, words[i]) and (first == words[i - 1] or first in SCALES)
