"""How many boxes so many things come in: how many are in one, how many go to each place, and how many there are.

What a number is for stands beside it: "250 to a box", "packs of 12", "a tub's got 375 in it", "sold in fifties" are what one
holds; "6 screws a bracket", "every picket takes 8" go to each; the one number left is how many there are. Where a number more is
said, or what it counts is neither the thing nor the place, nothing is changed, and it is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction
from typing import NamedTuple

from intents.chart import Chart, once
from intents.counted_line import CountedLine, Told, counted_line, heard, settle, stem, things_after, without_sizes
from intents.expressions import expression
from intents.features import NUMBER_WORDS
from intents.question import Heard, Question
from intents.rates_told import RATE, SCORE
from solvers.quantities import Area, Count, Length
from solvers.slots import Parameter

BOXES = "boxes"
_PACK = (
    r"(?:box|boxes|boxs|bx|carton|cartons|ctn|ctns|case|cases|packet|packets|pack|packs|bag|bags|sack|sacks|tub|tubs|bucket|buckets"
    r"|bundle|bundles|pallet|pallets|crate|crates|jar|jars|strip|strips|tray|trays|sleeve|sleeves|keg|kegs|roll|rolls|coil|coils"
    r"|drum|drums|tin|tins|pail|pails|skid|skids|bale|bales|lot|lots)"
)
PACKS = frozenset(_PACK.removeprefix("(?:").removesuffix(")").split("|"))
_THING = (
    r"(?:(?!in\b|to\b|per\b|an?\b|each\b|every\b|the\b|at\b|on\b|for\b|and\b|into\b|eats?\b|ate\b|takes?\b|took\b|used?\b"
    r"|needs?\b|wants?\b|fill|cover|did\b|does?\b|gets?\b|went\b|goes?\b)[a-z]+ ){0,3}?"
)
_ONE = r"(?:an?|each|every|the|one|any)"
_IN_ONE_AFTER = expression(
    rf"(?:of (?:them|em) )?(?:{_THING}(?:(?:in|to|per|into|/|for|on|inside) (?:{_ONE} )?|{_ONE} )(?:(?!of\b)[a-z]+ )?{_PACK}\b"
    rf"|ct {_PACK}\b|(?:per|/)(?: [,.;?].*)?$|{_THING}on the (?:lid|label|side)\b|at a time\b)"
)
_IN_ONE_BEFORE = expression(
    rf"\b{_PACK} (?:s |'s |is |are |was )?(?:of|has|have|had|holds?|holding|carr(?:y|ies)|contains?|with|does|do|got|=|is|are|at"
    r"|count|takes?|s|'s)(?: got| about| up to)?$"
    r"|\b(?:boxed|packed|bundled|bundle|banded|pack|box)(?: up)?(?: in| at| by)?$"
    r"|\b(?:come|comes|came|sold|sell em|sell them) (?:in|by the)$"
)
_WITHOUT_PACK = frozenset("pack box bundle".split())
_NO_PLACE = r"(?:how|what|and|so|then|box|in|at|for|with|of|is|are|they|it|i|we)\b"
_EACH_AFTER = expression(
    rf"{_THING}(?:(?:to|in|on|at|into|for|with|through) )?"
    rf"(?:(?:each|every|per|an?|/) (?:one\b|of (?:the|those|my|our)\b|(?!{_NO_PLACE})(?P<place>[a-z]+))"
    r"|to the (?P<place2>[a-z]+)|(?:each|apiece|ea)\b)"
)
_EACH_BEFORE = expression(
    r"\b(?:each|every)(?: of (?:the|them|those|my)(?: [a-z]+)?| one| (?P<place>[a-z]+)(?: (?P<place2>[a-z]+))??)?"
    r" (?:gets?|takes?|wants?|needs?|has|have|having|holds?|uses?|eats?|is given)$"
    r"|\b(?:each|every) (?!of\b)(?P<place3>[a-z]+)$|×$"
)
_FIXED = frozenset("screw nail staple bolt".split())
_TIME = frozenset("day week hour minute year box time piece".split())
_NONE = frozenset("one each apiece ea them".split())
_TENS = {
    "dozens": 12, "twenties": 20, "thirties": 30, "forties": 40, "fifties": 50, "sixties": 60, "hundreds": 100, "thousands": 1000,
}  # fmt: skip
_TAKES_ONE, _PAIR = frozenset("takes gets needs wants has eats uses".split()), 2
_BY, _TWICE = frozenset("in by".split()), frozenset("both either twice double".split())
_BY_THE = {"dozen": 12, "hundred": 100, "thousand": 1000, "score": 20}


class _Boxes(NamedTuple):
    topic: str
    givens: dict[str, Heard]
    left: list[str]
    asked: bool  # whether it is asked how many packs


def boxes_told(chart: Chart, question: Question, _parameters: tuple[Parameter, ...]) -> None:
    """Give the quantities of a question about boxes the places that the words beside them tell."""
    found = _found(chart)
    if found is None and (not _TWICE.isdisjoint(chart.words) or _told_otherwise(chart, question)):
        question.lacking = question.lacking or 1
    if found is not None:
        question.topic = found.topic
        settle(question, found.givens, found.left)


@once
def boxes_outright(chart: Chart) -> Question | None:
    """The question of a line that asks for packs, and tells how many are in one and how many there are."""
    if PACKS.isdisjoint(chart.words):
        return None
    found = _found(chart)
    if found is None or not found.asked:
        return None
    return Question(found.topic, found.givens, SCORE, words=["how", "many", "boxes"], left=found.left)


def _found(chart: Chart) -> _Boxes | None:
    """The givens of such a question, and what is left out; None where the words leave more than one way."""
    line = counted_line(chart)
    if line is None or not line.told:
        return None
    told, left = without_sizes(chart, line.told)
    sorted_ = _sorted(chart, line, told)
    if sorted_ is None:
        return None
    box, each, rest = sorted_
    place = each[0][1] if each else ""
    if not _counts(line, rest[0], place, bool(each)):
        return None
    asked = not line.asked.isdisjoint(map(stem, PACKS))
    if not each and (box[0].kind != "number" or box[0].value.denominator != 1):
        return _of_size(chart, box[0], rest[0], left, asked)
    if box[0].kind != "number" or (rest[0].kind != "number" and place not in _unit(line, rest[0])):
        return None
    givens = {"count": heard(chart, rest[0], Count, "count"), "box": heard(chart, box[0], Count, "count")}
    if each:
        givens["each"] = heard(chart, each[0][0], Count, "count")
    return _Boxes(BOXES, givens, left, asked)


def _sorted(
    chart: Chart, line: CountedLine, told: Sequence[Told]
) -> tuple[list[Told], list[tuple[Told, str]], list[Told]] | None:  # fmt: skip
    """What one pack holds, what goes to each place, and how many there are; None where one is told twice, or not at all."""
    box, each, rest = _tens(chart, line), list[tuple[Told, str]](), list[Told]()
    for one in (one for one in told if all(one.start != other.start for other in box)):
        place = _each(line.words, one)
        if in_one(line.words, one):
            box.append(one)
        elif place is not None:
            each.append((one, place))
        else:
            rest.append(one)
    if not rest and len(each) == 1 and "both" in line.words:  # 36 a side, both sides
        at = line.words.index("both")
        rest = [Told(at, at + 1, Fraction(2), "", "number", things_after(line.words, at + 1))]
    elif not _TWICE.isdisjoint(line.words):
        return None
    if not each and len(rest) == _PAIR:
        each, rest = _one_takes(line.words, rest)
    return (box, each, rest) if len(box) == len(rest) == 1 and len(each) <= 1 else None


def _told_otherwise(chart: Chart, question: Question) -> bool:
    """Whether a number was taken to go to each place, and no word says so (500 screws and 50 nails), or what is
    counted is none of the places (900 pavers, 9 to the metre), or another number is what one pack holds."""
    line = counted_line(chart)
    starts = {name: heard.start for name, heard in question.givens.items()}
    if line is None:
        return False
    at = {chart.tokens[one.start].start: one for one in line.told}
    each, box = (at.get(starts.get(name, -1)) for name in ("each", "box"))
    held = [one for one in line.told if in_one(line.words, one)]
    place, count = _each(line.words, each) if each is not None else "", at.get(starts.get("count", -1))
    elsewhere = bool(place) and count is not None and bool(count.things) and not _counts(line, count, place or "", True)
    return place is None or elsewhere or (box is not None and bool(held) and box not in held)


def _of_size(chart: Chart, box: Told, count: Told, left: list[str], asked: bool) -> _Boxes | None:
    """How many packs it takes where one goes over so much: 1.44 m² in each box, for 110 m²."""
    kind = count.kind if box.kind in (count.kind, "number") else box.kind if count.kind == "number" else ""
    if kind not in ("area", "length") or (count.kind == "number" and count.things):
        return None
    of, unit = (Area, Length)[kind == "length"], box.unit or count.unit
    givens = {f"{kind}_done": heard(chart, box, of, box.unit or unit), kind: heard(chart, count, of, count.unit or unit)}
    return _Boxes(RATE, givens, left, asked)


def _one_takes(words: Sequence[str], rest: list[Told]) -> tuple[list[tuple[Told, str]], list[Told]]:
    """Which of two numbers goes to each of what the other counts, where one of those is said to take it: a sheet takes 32."""
    for one, other in (rest, rest[::-1]):
        place = stem(words[one.start - 2]) if one.start > 1 and words[one.start - 1] in _TAKES_ONE else ""
        if place and place in other.things:
            return [(one, place)], [other]
    return [], rest


def in_one(words: Sequence[str], one: Told) -> bool:
    """Whether a number is how many are in one pack."""
    before = " ".join(words[max(0, one.start - 5) : one.start])
    after = " ".join(words[one.end : one.end + 8])
    return _IN_ONE_AFTER.match(after) is not None or _IN_ONE_BEFORE.search(before) is not None


def _each(words: Sequence[str], one: Told) -> str | None:
    """The place that so many go to, by its stem; "" where it is only "each", and None where the number is of no place."""
    after, before = " ".join(words[one.end : one.end + 8]), " ".join(words[max(0, one.start - 6) : one.start])
    for found in (_EACH_AFTER.match(after), _EACH_BEFORE.search(before)):
        if found is not None:
            names = found.groupdict()
            place = names.get("place2") or names.get("place") or names.get("place3") or ""
            return None if stem(place) in _TIME else "" if place in _NONE | NUMBER_WORDS else stem(place)
    return None


def _counts(line: CountedLine, count: Told, place: str, each: bool) -> bool:
    """Whether the number that is left counts the places, or where there are none, the things in the boxes."""
    if each:
        return not place or not count.things or place in count.things or stem(count.unit) == place or place in _unit(line, count)
    fixed = {stem(word) for word in line.words} & _FIXED
    return not (fixed and count.things) or not fixed.isdisjoint(count.things) or len(fixed & _beside(line, count)) > 0


def _unit(line: CountedLine, count: Told) -> set[str]:
    return {stem(word) for word in line.words[count.start : count.end]}  # 5 to each metre, 62 metres


def _beside(line: CountedLine, count: Told) -> set[str]:
    """The stems of the words just before and after a number: screws needed 640, 1700 of the trim head screws."""
    return {stem(word) for word in (*line.words[max(0, count.start - 3) : count.start], *line.words[count.end : count.end + 6])}


def _tens(chart: Chart, line: CountedLine) -> list[Told]:
    """What packs hold, by how they are sold: in fifties, by the dozen."""
    words = line.words
    found = []
    for at, word in enumerate(words):
        by_the = word in _BY_THE and words[max(0, at - 2) : at] == ["by", "the"]
        if by_the or (word in _TENS and at and words[at - 1] in _BY and not chart.readings[at]):
            found.append(Told(at, at + 1, Fraction(_BY_THE[word] if by_the else _TENS[word]), "", "number"))
    return found
