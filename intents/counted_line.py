"""The quantities of a line with the things that each one counts, what is asked for, and what stands between two of them.

For the readers that tell roles by the words beside each quantity: `rate_by_words.py`, `boxes_told.py`.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

from intents.chart import Chart, longest, once
from intents.placing import place_of
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.quantities import Area, Length, Number, Quantity, Volume

ARTICLES = frozenset("a an one each every per".split())
STOPS = frozenset((".", "?", ";", "!"))
# What ends the name of a thing: 5 tubes of glue | for 40 feet.
_ENDS_NAME = frozenset(
    "a an the i we he she they it you me us her him this that these there there's theres here is are was were be has have had"
    " how what what's whats what'll which where when while if so and but or then now next to for on in at per with over from out"
    " off onto into by under along around round through across up as about each every one more left still already again today"
    " please plus add did do does done doing got get gets gave give gives went go goes going gone ran run runs took take takes"
    " taken ate eat eats held holds hold laid lay lasted last use uses used need needs needed want wants wanted required make"
    " makes made fill fills cover covers seal seals come comes came will would should can could must not no than came i've i'm"
    " ive we've i'll i'd due coming remaining total altogether wide long high deep thick nothing only just until till kept saw"
    " swallowed spent altogether apiece ea x × gives fits fit put puts bring brought bought buy order grab used-up thanks".split()
)
_PASSED = frozenset("of the of those them these my our more such same other another whole full".split())  # 4 of those tins
NAME, AT_MOST = 3, 5  # words of a thing's name, and from a number on
_ADJECTIVES = 2
_UNITS = frozenset(
    "foot feet ft inch inches in metre metres meter meters m mm cm yard yards square squares sq litre litres gallon gallons"
    " lineal linear running sqft sf m2 ft2".split()
)
_GET = frozenset("get need want order buy grab".split())
_LIQUID = frozenset("litre litres liter liters l gallon gallons gal ml oz".split())
_VOLUMES = frozenset("ml litre l liter oz".split())
_WANTED = frozenset("needed wanted required please count for to total ? . , ; -".split())
_COUNTED = frozenset((("how", "many"), ("number", "of"), ("howmany", "of"), ("many", "of")))
_IS_SIZE = frozenset("mm in".split())
_HOW_FAR = frozenset("far long much tall wide deep".split())


@dataclass(frozen=True, slots=True)
class Told:
    """A quantity of a line: its tokens, value and unit, what it measures, and the things that it counts (their stems)."""

    start: int
    end: int
    value: Fraction
    unit: str
    kind: str  # number, length, area, percent
    things: tuple[str, ...] = ()


def stem(word: str) -> str:
    """A thing in the singular, each letter once: bats and batts are one."""
    one = word.removesuffix("es") if word.endswith(("xes", "shes", "ches", "sses")) else word.removesuffix("s")
    return "".join(letter for letter, after in zip(one, f"{one[1:]} ", strict=bool(one)) if letter != after)


@dataclass(frozen=True, slots=True)
class CountedLine:
    """The words of a line, its quantities in order, and the stems of what it is asked how many of."""

    words: list[str]
    told: list[Told]
    asked: frozenset[str]


@once
def counted_line(chart: Chart) -> CountedLine | None:
    """A line of quantities; None where one is of a kind that no counting takes (an angle, a weight)."""
    words = _with_verbs(chart)
    told = _told_of(chart, words)
    if told is None:
        return None
    # Where a unit took the stop: now 70 m. Cartridges?
    counted = {thing for one in told if one.kind == "number" for thing in one.things}
    last = {one.things[0] for one in told if one.kind != "number" and one.things and words[one.end + 1 : one.end + 2] == ["?"]}
    return CountedLine(words, told, asked_for(words, chart.numbers) | (last & counted))


def _with_verbs(chart: Chart) -> list[str]:
    """The words, with "ate" a verb where a number or "up" comes after it: 11 windows ate 4 cans."""
    typed = [chart.text[token.start : token.end].lower() for token in chart.tokens]
    follows = [*(bool(row) for row in chart.readings[1:]), False]
    return [
        "ate" if said == "ate" and (typed[at + 1 : at + 2] == ["up"] or follows[at]) else word
        for at, (word, said) in enumerate(zip(chart.words, typed, strict=True))
    ]


def _told_of(chart: Chart, words: Sequence[str]) -> list[Told] | None:

    def fits(reading: Reading) -> bool:
        if not isinstance(reading.value, Quantity) or within(words, reading):
            return False
        if reading.kind == "pitch" and any(r.kind == "number" and r.end == reading.end for r in chart.readings[reading.start]):
            return False  # seven for a hundred and twelve mitres
        if reading.kind == "area" and words[reading.start] == "a" and words[reading.end : reading.end + 1] != ["and"]:
            return False  # a square jig
        return not (reading.end == reading.start + 1 and words[reading.start] in ARTICLES | {"ate"})

    told: list[Told] = []
    for reading in longest(chart, 0, len(words), fits):
        kind, value = _kind(reading.value), reading.value
        assert isinstance(value, Quantity)
        if not kind or value.value <= 0:
            return None
        unit = value.unit if kind in ("length", "area") else ""
        things = things_after(words, reading.end) if kind != "number" or unit else ()
        if kind == "number":
            at = reading.end - 1 if isinstance(value, Volume) else reading.end  # the litres are the thing
            things = things_after(words, at)
        told.append(Told(reading.start, reading.end, Fraction(value.value), unit, kind, things))
    return _with_halves(words, told)


def ones(chart: Chart) -> list[Told]:
    """Each "one" that may count a thing: one can, one stair."""
    words = chart.words
    others = (["this"], ["last"], ["new"])
    found = (at for at, word in enumerate(words[:-1]) if word == "one" and words[at - 1 : at] not in others)
    return [Told(at, at + 1, Fraction(1), "", "number", things_after(words, at + 1)) for at in found]


def things_after(words: Sequence[str], at: int) -> tuple[str, ...]:
    """The stems of the words that name what a number before them counts."""
    names: list[str] = []
    for word in words[at : at + AT_MOST]:
        if word in _PASSED:
            continue
        if word == "can" and not names:
            names.append(word)  # of foam
            continue
        if not word.isalpha() or word in _ENDS_NAME or (names and word.endswith("ed")):
            break
        names.append(stem(word))
    return tuple(names[:NAME])


def asked_for(words: Sequence[str], numbers: int = 0) -> frozenset[str]:
    """The stems of the things of which it is asked how many: how many tubes, 40 feet. Tubes?"""
    found: set[str] = set()
    for at, pair in enumerate(pairwise(words)):
        if pair in _COUNTED:
            found.update(things_after(words, at + 2))
    for at, word in enumerate(words):
        if not word.isalpha() or word in _ENDS_NAME or word.endswith("ing") or numbers >> at & 1:
            continue
        before, after = words[at - 1] if at else ".", words[at + 1] if at + 1 < len(words) else "?"
        alone = not before[0].isalnum() and before not in ("$", "%", "/", "×")
        heads = not at and after in (",", "-", ";", ".")  # adhesive, 9 tubes for 200 sq ft
        wanted = before == "know" or (before in _GET and after == "for") or after in ("needed", "wanted", "required")
        if (alone and after in _WANTED and not heads) or wanted:
            found.add(stem(word))
        if before == "in" and after in STOPS | {","} and not {"what", "what's", "whats", "what'll"}.isdisjoint(words[:at]):
            found.add(stem(word))
        if before == "?" and at and after in ("?", "."):
            found.add(stem(word))
    return frozenset(found)


def how_many_units(words: Sequence[str]) -> bool:
    """Whether a length or an area is asked for: how far does one go, how many feet."""
    return any(first == "how" and then in _HOW_FAR for first, then in pairwise(words)) or any(
        tuple(words[at : at + 2]) in _COUNTED and words[at + 2] in _UNITS - {"litres", "gallons"} for at in range(len(words) - 2)
    )


def without_sizes(chart: Chart, told: list[Told]) -> tuple[list[Told], list[str]]:
    """The quantities without those that are only the size of a thing (100 mm tape, the 12 mm staples), and those in words."""
    sizes = [one for one in told if one.kind == "length" and one.unit in _IS_SIZE and _of_a_thing(chart.words, one)]
    return [one for one in told if one not in sizes], [chart.said(one.start, one.end) for one in sizes]


def heard(chart: Chart, one: Told, kind: type[Quantity], unit: str) -> Heard:
    """A quantity as a given of a question."""
    start, end, text = place_of(chart, one.start, one.end)
    return Heard(kind(one.value, unit, text), start, end, text)


def settle(question: Question, givens: dict[str, Heard], left: Sequence[str] = ()) -> None:
    """Give a question all of its quantities in one way, with nothing left to ask."""
    question.givens, question.swaps, question.rival, question.lacking = givens, [], False, 0
    question.missing, question.unplaced = [], []
    question.left = [*question.left, *(text for text in left if text not in question.left)]


def within(words: Sequence[str], reading: Reading) -> bool:
    """Whether a number was read for inches, which are what it lies in: twenty | in a box."""
    last = words[reading.end - 1] == "in" and words[reading.end : reading.end + 1]
    return bool(last) and reading.kind == "length" and words[reading.end] in ARTICLES | {"the", "all", "it"}


def _kind(value: object) -> str:
    if isinstance(value, Length):
        return "length"
    if isinstance(value, Area):
        return "area"
    if isinstance(value, Number | Volume):
        return "number"
    return "percent" if isinstance(value, Quantity) and value.unit == "percent" else ""


def _of_a_thing(words: Sequence[str], one: Told) -> bool:
    """Whether the word right after a size names a thing that is of that size."""
    after = words[one.end : one.end + 1]
    if not after or words[one.start - 1 : one.start] in (["every"], ["at"]):
        return False
    return after[0].isalpha() and after[0] not in _ENDS_NAME | _PASSED and not after[0].endswith("ing")


def _with_halves(words: Sequence[str], told: list[Told]) -> list[Told] | None:
    """The quantities, with what is said after the thing put to them: a gallon | and a half, a pack and a half."""
    done: list[Told] = []
    for one in told:
        last = done[-1] if done else None
        follows = last is not None and last.end == one.start - 1
        if one.value >= 1 or words[one.start - 1 : one.start] != ["and"] or not (follows or words[one.start] == "a"):
            done.append(one)
        elif last is not None and last.end >= one.start - 1 - NAME and last.value.denominator == 1:
            done[-1] = Told(last.start, one.end, last.value + one.value, last.unit, last.kind, (*last.things, *one.things))
        elif not ARTICLES.isdisjoint(before := words[max(0, one.start - NAME) : one.start - 1]):
            at = next(at for at in range(one.start - 2, -1, -1) if words[at] in ARTICLES)
            done.append(Told(at, one.end, 1 + one.value, "", "number", (*(stem(word) for word in before[1:]), *one.things)))
        else:
            return None
    return done


def one_of_a_size(line: CountedLine) -> list[Told] | None:
    """The quantities, with one thing of a size taken for one (a 5 litre tin); None where so many of a size are asked for."""
    words, told = line.words, list[Told]()
    for one in line.told:
        before = words[one.start - 1] if one.start else ""
        liquid = one.kind == "number" and one.end - one.start > 1 and words[one.end - 1] in _LIQUID
        volume, last = liquid and len(one.things) > 1, one.end + len(one.things) - liquid
        if volume and before == "many":
            return None
        name = words[one.end : last] if one.kind == "number" and before in ("a", "an", "one", "each", "every") else []
        if name and not name[-1].endswith("s"):
            told.append(Told(one.start - 1, last, Fraction(1), "", "number", one.things))
        elif volume and words[one.end].isalpha() and words[one.end] != "of":
            return None
        else:
            told.append(one)
    return told


def without_packs(chart: Chart, told: list[Told]) -> tuple[list[Told], list[str]]:
    """The quantities without those that tell what is in one of the things counted right before: 3 boxes of | 500."""
    held = [
        one for before, one in pairwise(told)
        if before.kind == one.kind == "number" and before.things and one.start - before.end <= NAME
        and chart.words[one.start - 1] == "of" and set(one.things) <= _VOLUMES
    ]  # fmt: skip
    return [one for one in told if one not in held], [chart.said(one.start, one.end) for one in held]
