"""What goes at so much for so many, told in one breath: "3 tubes did 40 foot, how many for 160", "35 feet a tube, 300 foot of
joint", "2 screws per joist on 16 joists", "21 straps and 7 screws in each".

An outline must take every quantity of its line, so that none is let fall; a size more (a joint's width, a spacing) and the line
is read by the rules of its own topic.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from fractions import Fraction
from itertools import pairwise
from re import Match
from typing import Any, NamedTuple

from intents.chart import Chart, longest, once, quantity_word
from intents.counted_line import within
from intents.expressions import expression
from intents.question import Heard, Question
from intents.reading import Reading
from intents.sum_joints import in_a_row
from solvers.quantities import Area, Count, Length, Number, Percent, Quantity

SCORE = 9.0  # as of a rule that fits whole
RATE, FASTENERS = "by the same rate", "fasteners"
_KINDS = ("number", "plural", "length", "area", "percent")
_ARTICLES = frozenset("a an one each every per the".split())
_THING = (
    r"(?P<thing>tubes?|cartridges?|sausages?|rolls?|boxes|box|bags?|bundles?|packs?|packets?|coils?|cases?|cartons?|pails?|tubs?"
    r"|sticks?|sheets?|boards?|pallets?|skids?|crates?)"
)
_OF = r"(?: of [a-z]+(?: [a-z]+)??)?"
_NAMED = rf"(?: (?!of\b|and\b|in\b|to\b|per\b)[a-z]+)??(?: (?!an?\b|the\b)[a-z]+)?? {_THING}\b{_OF}"
_SO_MANY = rf"(?:(?P<many>Q)|\b(?:a|an|one|each|every|per)){_NAMED}"
_THE = rf"(?:\bthe{_NAMED}|(?:^|(?<=[,.;] )){_THING.replace('thing', 'other')}\b{_OF})"  # a tube, of which nobody says so
_LITTLE = r"(?: (?!how\b|and\b|Q\b)[a-z']+){0,4}"  # the whole porch at
_DOES = (
    r"(?:did|does|do|done|doing|covers?|covered|covering|goes|go|went|lasts?|lasted|fills?|filled|seals?|sealed|runs?|ran|gets?|got"
    r"|gives?|gave|makes?|made|took care)"
)
_DOES_OR_FOR = rf"(?:{_DOES}|good|is good|was|for|on|per|to)"
_TAKES = r"(?:took|used|needed|ate|takes|needs|uses|wants|eats|eaten|wanted|used up|went through)"
_RATES = tuple(
    expression(said)
    for said in (
        rf"{_SO_MANY} {_DOES_OR_FOR}{_LITTLE} (?P<done>Q)",
        rf"{_THE} {_DOES}{_LITTLE} (?P<done>Q)",
        rf"(?P<done>Q)(?: [a-z]+s)?(?: (?:of [a-z]+|lineal|linear|running|feet|foot|out|to|from|of|in|for|on|with))*"
        rf" (?:a|per|each|every|the|one)(?: (?!of\b)[a-z]+)?? {_THING}\b",
        rf"(?P<done>Q)(?: of [a-z]+)? {_TAKES}{_LITTLE} {_SO_MANY}",
    )
)
_ELSEWHERE = frozenset(
    "paint stain primer coat coats concrete mortar render grout insulation seed gravel centre centres center centers oc"
    " both either".split()
)  # is no work of ours, or is set out, or is there twice
_ASKED_FOR = frozenset("for do does will would to on is are in here now then it that this we i am should".split())
_ENDS = frozenset("lineal linear running feet foot how and today total altogether so what but please i've of".split())
_FIXED = r"(?:screws?|nails?|clips?|staples?|fasteners?|ties?|bolts?|lags?|anchors?|plugs?|pegs?)"
_LINK = r"(?:per|a|each|every|to (?:a|each|every|the)|(?:in|at|for|on|into) (?:a|each|every))"
_EACH = r"(?:(?:in|to|per|for|at|on|into|through) )?(?:each|apiece|every one|a piece)(?: one| of them)?"
_IN_EACH = tuple(
    expression(said)
    for said in (
        rf"(?P<each>Q)(?: [a-z]+)?? (?:{_FIXED} )?{_LINK} (?P<place>[a-z]+)",
        rf"{_FIXED} {_LINK} (?P<place>[a-z]+) (?:is |are |at |of |, )?(?P<each>Q)",
        rf"(?P<many>Q)(?: [a-z]+)?? (?P<place>[a-z]+s)\b.*? (?P<each>Q)(?: [a-z]+)?? (?:{_FIXED} )?{_EACH}",
        r"\b(?:each|every|a|an|one)(?: [a-z]+)?? (?P<place>[a-z]+) (?:gets?|takes?|has|wants?|needs?|holds?) (?P<each>Q)",
    )
)
_FOR_ONE = expression(rf"(?P<each>Q)(?: [a-z]+)?? {_THING} {_LINK} (?P<place>[a-z]+)")
_HAS_FIXED = expression(rf"\b{_FIXED}\b")
_LONG = frozenset("board boards course courses row rows plank planks siding wall walls".split())  # which cross every stud
_PACKED = frozenset(
    "box boxes pack packs packet packets bag bags case cases carton cartons tub tubs pail pails weigh weighs".split()
)
_NO_PLACE = frozenset("foot feet inch inches metre metres meter meters ft mm cm m minute hour day box square yard".split())
_CUT = frozenset(("board", "sheet", "stick"))
_HOLDS = frozenset("box case pack packet bag carton tub pail crate".split())
_MORE, _MOST_SAID = frozenset("plus extra waste spare more add over add".split()), 4
_LEFT_TO_DO = (("to", "go"), ("to", "do"), ("do", "yet"))
_DID = frozenset("did does done covered covers went goes sealed seals filled fills took".split())
_NEXT = 3  # words from a number to what it counts


class _Line(NamedTuple):
    words: str  # with Q in the place of each quantity
    found: list[Reading]

    def reading(self, told: Match[str], name: str) -> Reading:
        """The quantity that a group of an outline stands for."""
        return self.found[self.words[: told.start(name)].count("Q")]


@once
def told_outright(chart: Chart) -> Question | None:
    """The question of a line that has one outline as a whole: a row and its joints, a rate, so many for each."""
    return in_a_row(chart) or by_rate(chart) or in_each(chart)


def by_rate(chart: Chart) -> Question | None:
    """How many it takes, where it is told how far so many went."""
    asks = ("how", "many") in pairwise(chart.words) or _thing_last(chart.words) or _to_go(chart.words)
    if not asks or not _ELSEWHERE.isdisjoint(chart.words):
        return None
    line = _lettered(chart)
    for outline in _RATES if line is not None and 2 <= len(line.found) <= _MOST_SAID else ():
        for told in outline.finditer(line.words):  # type: ignore[union-attr]
            question = _rate(chart, line, told)  # type: ignore[arg-type]
            if question is not None:
                return question
    return None


def rate_done(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Put how far so many went for what is done, and no more for what is to do: 3 tubes did 85 feet."""
    for question in (one for one in questions if one.topic == RATE):
        for now in ("length", "area", "number"):
            heard, done = question.givens.get(now), f"{now}_done"
            if heard is None or done in question.givens or heard.end <= heard.start:
                continue
            before = chart.text[: heard.start].lower().split()
            if before and before[-1] in _DID:
                question.givens[done] = question.givens.pop(now)
                question.missing = [now if name == done else name for name in question.missing]


def in_each(chart: Chart) -> Question | None:
    """How many screws there are, where it is told how many go in each and how many there are of those."""
    if "many" not in chart.words and not _HAS_FIXED.search(" ".join(chart.words)):
        return None
    line = _lettered(chart)
    if line is None or len(line.found) != 2 or not _HAS_FIXED.search(line.words) or not _PACKED.isdisjoint(chart.words):
        return _one_for_each(chart, line)
    for outline in _IN_EACH:
        for told in outline.finditer(line.words):
            each = line.reading(told, "each")
            many = next(one for one in line.found if one is not each)
            if "or" in told[0].split():
                continue  # four nails or six in each shingle
            if _counts(chart, many, told["place"]) and not _crossed(chart.words, told["place"]) and _whole(each) and _whole(many):
                givens = {"things": _heard(chart, many, Count), "in_each": _heard(chart, each, Count)}
                return Question(FASTENERS, givens, SCORE, words=told[0].split())
    return None


def _one_for_each(chart: Chart, line: _Line | None) -> Question | None:
    """How many tubes, boxes … there are where so many go to each place: 2 tubes per window, 14 windows."""
    if line is None or len(line.found) != 2 or ("how", "many") not in pairwise(chart.words):
        return None
    for told in _FOR_ONE.finditer(line.words):
        each = line.reading(told, "each")
        many = next(one for one in line.found if one is not each)
        if _counts(chart, many, told["place"]) and isinstance(each.value, Number) and _asks(chart.words, told["thing"]):
            at = chart.text.lower().index(told["place"])
            one = Heard(Count(Fraction(1), "count", told["place"]), at, at, f"one {told['place']}")
            givens = {"many": _heard(chart, each, Number), "number_done": one, "number": _heard(chart, many, Count)}
            return Question(RATE, givens, SCORE, words=told[0].split())
    return None


@once
def _lettered(chart: Chart) -> _Line | None:
    """The line with a letter for each quantity; None where it holds one of another kind."""
    found = list(longest(chart, 0, len(chart.words), lambda r: _is_told(chart, r)))
    if any(r.kind not in _KINDS or r.value.value <= 0 for r in found):  # type: ignore[union-attr]
        return None
    words, at = list[str](), 0
    for reading in found:
        words += [*chart.words[at : reading.start], "Q"]
        at = reading.end
    words += chart.words[at:]
    return None if any(quantity_word(word) and word[0].isdigit() for word in words) else _Line(" ".join(words), found)


def _is_told(chart: Chart, reading: Reading) -> bool:
    return isinstance(reading.value, Quantity) and not (_article(chart, reading) or within(chart.words, reading))


def _article(chart: Chart, reading: Reading) -> bool:
    return reading.end == reading.start + 1 and chart.words[reading.start] in _ARTICLES


def _rate(chart: Chart, line: _Line, told: Match[str]) -> Question | None:
    many = line.reading(told, "many") if "many" in told.groupdict() and told["many"] else None
    done = line.reading(told, "done")
    rest = [one for one in line.found if one is not many and one is not done]
    more = next((one for one in rest if isinstance(one.value, Percent)), None)
    if more is not None and not _MORE.isdisjoint(chart.words):
        rest.remove(more)
    thing = told["thing"] or told.groupdict().get("other") or ""
    if len(rest) != 1 or not _asks(chart.words, thing) or (many is not None and not isinstance(many.value, Number)):
        return None
    if many is not None and chart.words[many.start - 1 : many.start] in (["a"], ["an"]) and not thing.endswith("s"):
        return None  # a 24 sheet pack
    if many is None and _stem(thing) in _CUT:
        return None  # behind the boards go at 16 inches
    name, unit = _measure(chart, done, rest[0])
    held = name == "number" or getattr(done.value, "unit", "") == "in"
    if not name or (held and many is None and _stem(thing) in _HOLDS):
        return None  # 12 to a case, 12 in a pack
    kind = {"length": Length, "area": Area, "number": Count}[name]
    givens = {f"{name}_done": _heard(chart, done, kind, unit), name: _heard(chart, rest[0], kind, unit)}
    if many is not None:
        givens["many"] = _heard(chart, many, Number)
    if more is not None:
        givens["waste"] = _heard(chart, more, Percent)
    return Question(RATE, givens, SCORE, words=told[0].split())


def _to_go(words: Sequence[str]) -> bool:
    """Whether a line ends with what is still to be done: 3 tubes did 85 feet, 420 to go."""
    said = [word for word in words if word not in (".", "?", "left")]
    return tuple(said[-2:]) in _LEFT_TO_DO


def _thing_last(words: Sequence[str]) -> str:
    """The thing that is asked for alone at the end: I need 27 square, pallets?"""
    said = [word for word in words if word != "?"]
    return _stem(said[-1]) if len(said) > 1 and said[-2] in (",", ".") and said[-1].endswith("s") else ""


def _asks(words: Sequence[str], thing: str) -> bool:
    """Whether it is asked how many of the thing."""
    at = next((at for at, pair in enumerate(pairwise(words)) if pair == ("how", "many")), -1)
    if at < 0:
        return _thing_last(words) == _stem(thing) or _to_go(words)
    after = [word for word in words[at + 2 :] if word.isalpha()][:2]
    return not after or after[0] in _ASKED_FOR or any(_stem(word) == _stem(thing) for word in after)


def _measure(chart: Chart, done: Reading, rest: Reading) -> tuple[str, str]:
    """What is measured, and the unit of a number said with none beside one that has one; "" where they are not of one kind."""
    kinds = [type(each.value) for each in (done, rest)]
    for kind, name in ((Length, "length"), (Area, "area")):
        if kinds == [kind, kind]:
            return name, ""
        if {*kinds} == {kind, Number}:
            bare, sized = (done, rest) if kinds[0] is Number else (rest, done)
            return ("", "") if _of_something(chart, bare) else (name, sized.value.unit)  # type: ignore[union-attr]
    alike = kinds == [Number, Number] and _things(chart, done) in ("", _things(chart, rest))
    return ("number", "") if alike else ("", "")


def _of_something(chart: Chart, number: Reading) -> bool:
    """Whether a number with no unit is of something that is named: 6 exposure, 12 windows."""
    after = chart.words[number.end : number.end + 1]
    return bool(after) and after[0].isalpha() and after[0] not in _ASKED_FOR | _ENDS


def _things(chart: Chart, number: Reading) -> str:
    """The things right after a number."""
    after = chart.words[number.end : number.end + 1]
    return (
        _stem(after[0])
        if after and after[0].isalpha() and after[0].endswith("s") and after[0] not in ("is", "does", "us")
        else ""
    )


def _counts(chart: Chart, number: Reading, place: str) -> bool:
    """Whether a number counts the places: 16 floor joists, there are 16 joists."""
    after = chart.words[number.end : number.end + _NEXT]
    named = any(_stem(word) == _stem(place) for word in after if word.endswith("s"))
    return place not in _NO_PLACE and (named or after[:2] == ["of", "them"])


def _crossed(words: Sequence[str], place: str) -> bool:
    """Whether boards are named besides, each of which is fixed at every place."""
    return any(_stem(word) != _stem(place) for word in words if word in _LONG)


def _stem(word: str) -> str:
    return word.removesuffix("es") if word.endswith("xes") else word.removesuffix("s")


def _whole(reading: Reading) -> bool:
    return isinstance(reading.value, Number) and reading.value.value.denominator == 1


def _heard(chart: Chart, reading: Reading, kind: type[Quantity], unit: str = "") -> Heard:
    start, end = chart.tokens[reading.start].start, chart.tokens[reading.end - 1].end
    text, value = chart.text[start:end], reading.value
    assert isinstance(value, Quantity)
    own = "count" if kind is Count else value.unit if isinstance(value, kind) else unit
    return Heard(kind(Fraction(value.value), own, text), start, end, text)
