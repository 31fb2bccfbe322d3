"""How many there are of a thing, which no given took: "wrap for 4 walls 30 by 9, 9 by 150 rolls", "half of them".

How much it takes is a product, and what there is several of makes it so many times as much: a count of walls that is let
fall makes the answer wrong, and is asked about.
"""

from __future__ import annotations

from itertools import pairwise

from intents.chart import Chart, quantities, span
from intents.consulting import numbers_in
from intents.listed_totals import AMOUNTS
from intents.number_words import SMALL
from intents.of_doings import SWORE
from intents.question import Heard, Question
from intents.reading import Dims, Reading
from solvers.quantities import Area, Count, Length, Number, Pitch, Quantity

_THINGS = frozenset("walls gables eaves rakes soffits corners cheeks valleys perimeters buildings sheds houses garages"
                    " sets lots batches stacks piles pallets edges layers coats storeys stories".split())
_COUNTS = frozenset(("both", *(str(n) for n in range(2, 13)), *(word for word, n in SMALL.items() if 2 <= n <= 12)))
_THEM = frozenset("them those these it that".split())
_TIMED = AMOUNTS | {"gable courses"}  # how much it takes, or what is cut
_HOLES = frozenset("window windows door doors vent vents opening openings louvre louver hatch doorway".split())
_FACES, _SIZES = ("wall area", "gable area", "squares", "membrane rolls"), 3
_NO_HOLES = ("gable area", "gable courses", "strapping")
_CUES = _THINGS | _HOLES | {"half"}
_IN_ALL = frozenset("all together altogether total combined started left only".split())
_MOVES, _TOGETHER = ("wood movement", "thermal movement"), frozenset("total altogether together overall combined".split())
_BOARDS = frozenset("boards planks pieces lengths sticks panels sheets".split())
_SHARED = 4  # tokens from "half of them" to the end of what is asked
_ENDED = ("strapping", "marks on centre", "fasteners", "step flashing")
_LEFT_OFF = frozenset("count counting without except skip minus less".split())
_AT_END = frozenset("last first end corner".split())
_EACH_AT, _SEVERAL, _SURE = frozenset(("@", "×", "at")), range(2, 13), 0.9
_LED = (["at"], ["@"], ["by"], ["×"], ["/"], ["-"])
_OF = frozenset("area squares total boards straps panels weight cost".split())
_ENDS: tuple[list[str], ...] = ([], ["?"], ["."], [","])
_MAYBES = frozenset(("maybe", "perhaps", "possibly"))
_SWORN = 5  # words from who swears to what
_PITCHES, _SAID = frozenset(("pitch", "pitched", "pich")), 0.9
_CALLS = (("call", "it"), ("call", "that"), ("make", "that"))
_CALLED = frozenset(pair[0] for pair in _CALLS)
_NEAR = 2  # words from the count to the things: four long walls


def let_fall(chart: Chart, question: Question) -> list[str]:
    """The count of things, or the share of them, that is in none of a whole question's givens, as it was said."""
    words = chart.words
    if several := _times_a_length(chart, question) or _end_one(chart, question):
        return [several]
    if question.topic in _FACES and (third := _third(chart, question)):
        return [third]
    if called := _called(chart, question):
        return [called]
    if "pitch" in question.givens and not question.left and (pitch := _other_pitch(chart, question)):
        return [pitch]
    if question.topic in _MOVES and (boards := _boards_in_all(chart, question)):
        return [boards]
    if question.topic not in _TIMED or question.left or not _IN_ALL.isdisjoint(words):
        return []
    if _CUES.isdisjoint(words) and _OF.isdisjoint(words):
        return []
    left = ~numbers_in(chart, question)
    if question.topic in _NO_HOLES and (hole := _hole(chart, left)):
        return [hole]
    for at, (word, then) in enumerate(pairwise((*words, ""))):
        half = word == "half" and then == "of" and not _THEM.isdisjoint(words[at + 2 : at + 3]) and at + _SHARED >= len(words)
        told = half or _so_many(words, at) or _of_so_many(words, at)
        if told and left >> at & 1 and not any(_of_all(heard, word) for heard in question.givens.values()):
            return [chart.said(at, min(at + 2, len(words)))]
    return []


def _end_one(chart: Chart, question: Question) -> str:
    """The one at an end that is not to be counted, which a count takes in: don't count the last one."""
    words = chart.words
    for at in range(2, len(words)) if question.topic in _ENDED else ():
        left_off = not _LEFT_OFF.isdisjoint(words[max(0, at - 3) : at])
        if left_off and words[at - 1] in _AT_END and words[at] in ("one", "ones", "two", "both"):
            return chart.said(at - 1, at + 1)
    return ""


def _times_a_length(chart: Chart, question: Question) -> str:
    """So many of a length that is used, where how many is in none of the givens: 2 @ 38', 2 × 30 foot."""
    if _EACH_AT.isdisjoint(chart.words):
        return ""
    used = numbers_in(chart, question)
    for at, word in enumerate(chart.words):
        if word not in _EACH_AT or not at or used >> (at - 1) & 1 or not used >> (at + 1) & 1:
            continue
        many = next((r for r in chart.readings[at - 1] if r.end == at and isinstance(r.value, Number)), None)
        long = [r for r in (chart.readings[at + 1] if at + 1 < len(chart.words) else ()) if isinstance(r.value, Length)]
        whole = many is not None and isinstance(many.value, Number) and many.value.value in _SEVERAL
        if whole and any(r.kind == "length" and r.sure >= _SURE for r in long) and chart.words[at - 2 : at - 1] not in _LED:
            return chart.said(at - 1, max(r.end for r in long))
    return ""


def _called(chart: Chart, question: Question) -> str:
    """The number that something is called in the end, where none of it was used: about four twelve, call it four and a half."""
    words = chart.words
    if _CALLED.isdisjoint(words):
        return ""
    used = numbers_in(chart, question)
    for at, pair in enumerate(pairwise(words), 2):
        said = [r for r in chart.readings[at] if isinstance(r.value, Quantity)] if pair in _CALLS and at < len(words) else []
        longest = max(said, key=lambda r: r.end, default=None)
        if longest is not None and not used & span(longest.start, longest.end) and not _given_so(question, longest):
            return chart.said(longest.start, longest.end)
    return ""


def _given_so(question: Question, reading: Reading) -> bool:
    """Whether a given is as much: fifteen degrees, near enough, call it fifteen."""
    given = [heard.value.value for heard in question.givens.values() if isinstance(heard.value, Quantity)]
    return isinstance(reading.value, Quantity) and reading.value.value in given


def _other_pitch(chart: Chart, question: Question) -> str:
    """A second pitch, of a question that takes one: five pitch one side and eight pitch the other."""
    taken, used = question.givens["pitch"], numbers_in(chart, question)
    if taken.end <= taken.start or not isinstance(taken.value, Pitch):
        return ""
    for reading in quantities(chart, 0, len(chart.words)):
        value = reading.value.value if isinstance(reading.value, Pitch | Number) else None
        called = not _PITCHES.isdisjoint(chart.words[reading.end : reading.end + 1])
        maybe = not _MAYBES.isdisjoint(chart.words[max(0, reading.start - 1) : reading.start])
        pitch = isinstance(reading.value, Pitch) and reading.sure >= _SAID
        bare = reading.kind == "number" and (called or maybe)
        sworn = not SWORE.isdisjoint(chart.words[max(0, reading.start - _SWORN) : reading.start])  # he swears it's a 6/12
        if value is None or sworn or used >> reading.start & 1 or not (pitch or (bare and value >= 1)):
            continue
        if value != taken.value.value:
            return chart.said(reading.start, reading.end + called)
    return ""


def _boards_in_all(chart: Chart, question: Question) -> str:
    """How many boards there are, where it is asked what all of them move: 20 boards, total."""
    words, left = chart.words, ~numbers_in(chart, question)
    if _TOGETHER.isdisjoint(words):
        return ""
    pairs = enumerate(pairwise(words))
    return next((chart.said(at, at + 2) for at, (n, of) in pairs if left >> at & 1 and n.isdigit() and of in _BOARDS), "")


def _third(chart: Chart, question: Question) -> str:
    """The third of three sizes said together, where two were taken: walls 12 by 10 by 8."""
    values = [r.value for row in chart.readings for r in row if isinstance(r.value, Dims)]
    three = [value.parts for value in values if len(value.parts) == _SIZES]
    used = numbers_in(chart, question) if three else 0
    fallen = (parts for parts in three if used >> parts[0].start & 1 and not used >> parts[-1].start & 1)
    return next((chart.said(parts[0].start, parts[-1].end) for parts in fallen), "")


def _hole(chart: Chart, left: int) -> str:
    """An opening with its size, where a topic takes none: a gable with a 2 by 3 vent."""
    if _HOLES.isdisjoint(chart.words):
        return ""
    for reading in (r for row in chart.readings for r in row if r.kind == "dims" and left >> r.start & 1):
        near = chart.words[max(0, reading.start - 1) : reading.start] + chart.words[reading.end : reading.end + 1]
        if not _HOLES.isdisjoint(near):
            return chart.said(reading.start, reading.end)
    return ""


def _so_many(words: list[str], at: int) -> bool:
    """Whether the word at a place says how many of the things that follow there are."""
    if words[at] not in _COUNTS or words[max(0, at - 3) : max(0, at - 1)] == ["one", "of"]:
        return False  # one of the four gables
    after = words[at + 1 : at + 1 + _NEAR]
    return bool(after) and after[0].isalpha() and not _THINGS.isdisjoint(after)


def _of_so_many(words: list[str], at: int) -> bool:
    """Whether it is asked of so many, and of what need not be said: area of two, squares for both."""
    after = words[at + 1 : at + 2]
    return words[at] in _COUNTS and words[at - 1 : at] in (["of"], ["for"]) and at > 1 and words[at - 2] in _OF and after in _ENDS


def _of_all(heard: Heard, word: str) -> bool:
    """Whether a given is of all of them as it was said: four walls, 1720 square feet gross; or is as many of them."""
    many = SMALL.get(word, 2 if word == "both" else int(word) if word.isdecimal() else 0)
    counted = isinstance(heard.value, Count) and heard.value.value == many
    return isinstance(heard.value, Area) or counted or word in heard.text.lower().split()
