"""A layer that is told and then taken off again: "1/2 ply, 3/8 mesh, 5/8 siding, but the mesh comes off".

Where how deep the rest is is asked, that layer is none of it; where it is asked what its going changes, or which layer goes
is not plain, the conversation asks. A layer told as gone before the others are is no part of the list and needs nothing.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from itertools import pairwise

from intents.chart import Chart
from intents.no_layers import OLD
from intents.question import Heard, Question
from intents.untold_layers import kind_of
from solvers.slots import Layer

BEFORE, AFTER = "before", "after"
LAYERS, TOPICS = "layers", frozenset(("build-out", "fastener length"))
_OFF = {(verb, way) for verb in "comes goes come go coming going is was gets".split() for way in ("off", "out", "away", "gone")}
_OFF |= {(verb, done) for verb in "is was gets got been".split() for done in "removed scrapped dropped ditched skipped".split()}
_OUT = frozenset("skip ditch lose scrap remove omit drop without skipping ditching losing removing dropping".split())
_SIZED, _OLD_BEFORE = 3, 6  # words before a layer that goes in which its size stands, and that it is old
_BEING = frozenset("is are s be been being all".split())  # the ply is | coming off
_SMALL = frozenset("the a that my our out off no in inch mm of".split())
_CHANGES = frozenset(
    "less more move moves shift shifts change changes gain gains difference further back save instead replace replaced swap new"
    " use using put putting".split()
)
_FROM_TO = frozenset(("from", "to"))
_MORE = frozenset("more less further farther extra difference deeper thicker prouder wider".split())
_ROOM_SIDE = frozenset("drywall sheetrock plasterboard wallboard".split())
_STAYS = frozenset("not never stays stay nothing doesn't don't won't isn't".split())
_REACH = 7  # tokens after the verb in which a layer is named: skip the 7/16 in drain mesh
_TELLING = frozenset(word for pair in _OFF for word in pair[1:]) | _OUT | {"twice"}


def layers_gone(chart: Chart, question: Question) -> None:
    """Take the layer that goes out of the list, or name it where the sentence asks what its going changes."""
    heard, words = question.givens.get(LAYERS), chart.words
    if question.topic not in TOPICS or heard is None or not isinstance(heard.value, tuple):
        return
    if question.topic == "build-out" and len(heard.value) == len(_FROM_TO) and _changed(words):
        _one_for_the_other(chart, question, heard)
        return
    if question.topic == "build-out" and (inside := _inside(heard.value)):
        question.unplaced = [inside]
        return
    if _TELLING.isdisjoint(words):
        return
    by_size = _size_gone(chart) or _size_twice(chart, heard.value)
    if by_size:
        question.unplaced = [by_size]
        return
    layers = [layer for layer in heard.value if isinstance(layer, Layer)]
    for name, old in _names(chart):
        named = [layer for layer in layers if kind_of(name) in map(kind_of, layer.what.split())]
        if not named or len(layers) < 2:
            continue
        if old and (layers[-1:] == named or old == BEFORE):
            continue  # the old siding comes off, the new is the face
        if old or len(named) > 1 or not _CHANGES.isdisjoint(words) or not _STAYS.isdisjoint(words) or "gone" in question.givens:
            question.unplaced = [name]
            return
        layers.remove(named[0])
        question.swaps = []
    if len(layers) < len(heard.value):
        question.givens[LAYERS] = replace(heard, value=tuple(layers))


def _inside(layers: tuple[object, ...]) -> str:
    """The layer that is on the room's side of the studs, of which the face outside stands no further off: drywall."""
    named = [layer.what for layer in layers if isinstance(layer, Layer)]
    return next((what for what in named if not _ROOM_SIDE.isdisjoint(what.lower().split())), "")


def _changed(words: list[str]) -> bool:
    """Whether it is asked how much one layer in place of another makes: from 3/8 mesh to 3/4 strapping, how much more."""
    two = {*words} >= _FROM_TO or "than" in words
    return two and not _MORE.isdisjoint(words) and ("how", "much") in pairwise(words)


def _one_for_the_other(chart: Chart, question: Question, heard: Heard) -> None:
    """From the one layer to the other is one in place of the other, told in that order, and so is the one than the other,
    the other way round; else it is asked about."""
    words = chart.words
    said = [at for at in range(len(words)) if chart.numbers >> at & 1]
    between = next((word for word in ("than", "to") if word in words[said[0] : said[-1]]), "")
    led = between == "than" or (between == "to" and "from" in words[: said[0]])
    if not led or question.unplaced:
        question.lacking = question.lacking or 1
        return
    layers = heard.value[::-1] if between == "than" else heard.value
    question.givens[LAYERS] = replace(heard, value=layers)
    question.givens["swap"] = Heard("FOR", heard.start, heard.end, heard.text)
    question.swaps = []


def _size_gone(chart: Chart) -> str:
    """The thickness that is said to go, with no name: "then the 3/4 comes off" may be either of two."""
    for at, pair in enumerate(pairwise(chart.words)):
        if at and pair in _OFF and chart.numbers >> (at - 1) & 1:
            start = at - 1
            while start and chart.numbers >> (start - 1) & 1:
                start -= 1
            return chart.said(start, at)
    return ""


def _size_twice(chart: Chart, layers: tuple[object, ...]) -> str:
    """A thickness that is there twice, where no layer is: so 5/16 twice."""
    if "twice" not in chart.words or len(set(layers)) < len(layers):
        return ""
    at = chart.words.index("twice")
    return "twice" if at and chart.numbers >> (at - 1) & 1 else ""


def _names(chart: Chart) -> Iterator[tuple[str, str]]:
    """The word before each "comes off", and the words soon after each "skip the"; no layer that is told with its own size.

    With each, whether it is said to be old, and then if before or after the first size.
    """
    words = chart.words
    sizes = [at for at in range(len(words)) if chart.numbers >> at & 1]
    for at, pair in enumerate(pairwise(words)):
        if pair in _OFF and at:
            named = at - 1 - (at > 1 and words[at - 1] in _BEING)
            sized = any(chart.numbers >> k & 1 for k in range(max(0, named - _SIZED), named))
            old = not OLD.isdisjoint(words[max(0, named - _OLD_BEFORE) : named])
            if not (sized and old):
                yield words[named], (BEFORE if at < sizes[0] else AFTER) if old and sizes else ""
        elif pair[0] in _OUT or (pair[0] in ("take", "taking", "leave", "leaving") and pair[1] in ("out", "off")):
            yield from ((word, "") for word in words[at + 1 : at + 1 + _REACH] if word.isalpha() and word not in _SMALL)
