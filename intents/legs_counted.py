"""How many legs a bend has is none of their sizes: 2 legs, 1 1/4 and 3. What is on each edge is there twice: a half inch hem on
each edge."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Any

from intents.chart import Chart, quantities
from intents.question import Heard, Question
from intents.second_reader import places_of
from solvers.quantities import Length, Number

_LEGS = "lengths"
TOPIC = "bent flashing"
_EACH, _EDGES = frozenset("each both either".split()), frozenset("edge edges side sides end ends".split())
_TURNED = frozenset("hem hems hemmed hemming return returns lip lips kick kicks flange flanges turn turned dutch".split())
_UP = frozenset("leg legs upstand upstands".split())
_LED = frozenset("leg legs bends of at".split())
_LEGS_SAID = _UP | frozenset("bend bends hem hems".split())
_HEMS, _WIDEST_HEM = frozenset(("hem", "hems", "hemmed")), 2  # in
_LONG, _TIMES = 24, 4  # in; as wide as no leg is, and so many times as wide as the next
_NEAR = 6  # words from a size to the edges that it is on
_PIECES = frozenset("piece pieces pcs pc of off lengths strips blanks needed wanted".split())  # these are counted
_COUNTED = frozenset(("leg", "legs", "sides", "bends"))


def legs_counted(chart: Chart, questions: list[Question], topics: Mapping[str, Any]) -> None:
    """Leave the number of legs out of their sizes, where so many sizes are told besides."""
    counts = _counts(chart) if topics else set()
    for question in questions if counts else ():
        ways = [_without(way, counts) for way in (question.givens, *question.swaps)]
        question.givens = ways[0]
        question.swaps = [way for n, way in enumerate(ways[1:], 1) if all(_sizes(way) != _sizes(other) for other in ways[:n])]


def none_out_of(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """So many out of a coil are no leg: girth of 3 1/2, 1 1/4 and 5/8, three out of a 16 coil."""
    for question in questions:
        heard = question.givens.get(_LEGS)
        if question.topic != TOPIC or heard is None or not isinstance(heard.value, tuple) or len(heard.value) <= 1:
            continue
        *legs, last = heard.value
        end = places_of(chart, heard)[1]
        spelled = last.text.isalpha() and not any(leg.text.isalpha() for leg in legs)
        if chart.words[end : end + 2] in (["out", "of"], ["from", "a"]) and spelled:
            question.givens[_LEGS] = replace(heard, value=heard.value[:-1])


def last_is_a_leg(chart: Chart, question: Question, _parameters: object) -> None:
    """A number that ends the row of the legs, and has no pieces after it, counts nothing: 20, 75, 20 flat width."""
    legs, count = question.givens.get(_LEGS), question.givens.get("count")
    if legs is None or count is None or not isinstance(legs.value, tuple):
        return
    (start, _), (_, end) = places_of(chart, legs), places_of(chart, count)
    whole = next((r for r in chart.readings[start] if r.kind == "lengths" and r.end == end), None)
    if whole is None or not isinstance(whole.value, tuple) or len(whole.value) != len(legs.value) + 1:
        return
    if _PIECES.isdisjoint(chart.words[end : end + 2]):
        del question.givens["count"]
        question.givens[_LEGS] = replace(legs, value=whole.value, end=count.end, text=chart.text[legs.start : count.end])


def long_as_it_is(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """How long a flashing is told to be before its legs is none of them: 48 inches long with 4 and 3 inch legs. A hem is small:
    legs of 3 and a half inch hem are 3 and 1/2."""
    for question in questions:
        heard = question.givens.get(_LEGS)
        if question.topic != TOPIC or heard is None or not isinstance(heard.value, tuple) or len(heard.value) < 2:
            continue
        legs = [leg for leg in heard.value if isinstance(leg, Length)]
        long, *rest = [leg.to("in").value for leg in legs]
        if len(legs) > 2 and long >= _LONG and long >= _TIMES * max(rest) and not _LEGS_SAID.isdisjoint(chart.words):
            start, end = places_of(chart, heard)
            if not _LED.isdisjoint(chart.words[max(0, start - 1) : start]):
                continue  # legs of 24, 3 and 2
            second = [r.start for r in quantities(chart, start, end)][1:2]
            begins = chart.tokens[second[0]].start if second else heard.start
            question.left = [*question.left, chart.said(start, second[0]) if second else legs[0].text]
            heard = replace(heard, value=tuple(legs[1:]), start=begins, text=chart.text[begins : heard.end])
            question.givens[_LEGS], question.swaps = heard, []
        _small_hem(chart, question, heard)


def _small_hem(chart: Chart, question: Question, heard: Heard) -> None:
    """Three and a half inch hem, last of the legs: a leg of three, and half an inch of hem."""
    end, (*legs, last) = places_of(chart, heard)[1], heard.value  # type: ignore[misc]
    hemmed = not _HEMS.isdisjoint(chart.words[end - 1 : end + 1])
    part, fraction = last.value // 1, last.value % 1
    half = heard.text.lower().split(" and a ")[1:]
    if hemmed and last.unit == "in" and last.value > _WIDEST_HEM and fraction and half:
        both = (replace(last, value=part, text=f"{part} in"), replace(last, value=fraction, text=half[-1]))
        question.givens[_LEGS], question.swaps = replace(heard, value=(*legs, *both)), []


def on_each_edge(chart: Chart, questions: list[Question], _topics: Mapping[str, Any]) -> None:
    """Put the leg that is on each edge with the legs twice."""
    words = chart.words
    at = next((at for at in range(1, len(words) - 1) if words[at] in _EACH and words[at + 1] in _EDGES), 0)
    if not at:
        return
    before = [r for start in range(max(0, at - _NEAR), at) for r in chart.readings[start] if r.end <= at]
    size = max((r for r in before if isinstance(r.value, Length | Number)), key=lambda r: (r.end, r.end - r.start), default=None)
    turned = not _TURNED.isdisjoint(words[max(0, at - _NEAR) : at + 1 + _NEAR])
    turned = turned or (size is not None and not _UP.isdisjoint(words[size.end : size.end + 1]))
    for question in questions if size is not None and turned else ():
        heard = question.givens.get(_LEGS)
        if question.topic != TOPIC or heard is None or not isinstance(heard.value, tuple):
            continue
        same = [leg for leg in heard.value if isinstance(leg, Length) and leg.value == size.value.value]  # type: ignore[union-attr]
        if len(same) == 1:
            start, end = chart.tokens[at].start, chart.tokens[at + 1].end
            text = f"{heard.text} {chart.text[start:end]}" if start >= heard.end else heard.text
            question.givens[_LEGS] = replace(heard, value=(*heard.value, same[0]), text=text)


def _counts(chart: Chart) -> set[int]:
    """The whole numbers said right before legs."""
    found: set[int] = set()
    for after, word in enumerate(chart.words):
        if word in _COUNTED and after:
            values = [row.value for row in chart.readings[after - 1] if row.end == after]
            found.update(int(n.value) for n in values if isinstance(n, Number) and n.value.denominator == 1)
    return found


def _without(way: dict[str, Heard], counts: set[int]) -> dict[str, Heard]:
    heard = way.get(_LEGS)
    legs = heard.value if heard is not None else ()
    if heard is None or not isinstance(legs, tuple) or len(legs) - 1 not in counts or not isinstance(legs[0], Length):
        return way
    counted = legs[0].value == len(legs) - 1 and legs[0].text.isalnum()
    return {**way, _LEGS: replace(heard, value=legs[1:])} if counted else way


def _sizes(way: dict[str, Heard]) -> object:
    heard = way.get(_LEGS)
    return [leg.value for leg in heard.value if isinstance(leg, Length)] if heard is not None else None
