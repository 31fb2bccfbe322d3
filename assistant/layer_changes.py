"""A wall asked about again with one layer other: "and if I add strapping", "instead of the mesh", "make the battens 38"."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.pending import Asked
from assistant.said_over import places_of
from intents.expressions import expression
from intents.question import Heard, Question
from intents.reading import Reading
from intents.talk import numbers_in
from intents.untold_layers import kind_of
from solvers.quantities import Length
from solvers.slots import Layer

if TYPE_CHECKING:
    from assistant.meant_for import Wanted

LAYERS = "layers"
_INSTEAD = expression(r"\b(?:instead of|in place of|rather than|where)\s+(?:the |my |that |a )?((?:[a-z]+ ?){1,2})", re.I)
_SWAP = expression(r"\b(?:swap|change|switch|replace)\w* (?:out )?(?:the |my )?([a-z]+)(?: out)? (?:for|with|to|by)\b", re.I)
_ADD = expression(
    r"\b(?:add|adds|added|adding|another(?!\s*[:;]| one\b| wall\b)|extra|plus|as well|on top|more"
    r"|too(?! (?:inch|inches|foot|feet|mil|mm|and)\b)"
    r"|(?:under|behind|over) (?:it|that|them))\b",
    re.I,
)
_OUT = expression(
    r"\b(?:without|no|skip\w*|lose|losing|drop(?:ped|ping)?|ditch\w*|scrap\w*|forget|omit\w*"
    r"|(?:leav\w+|left|tak\w+|took) (?:out|off))"
    r"(?: (?:the|my|that|any))? ([a-z]+)\b|\b(?:leav\w+|left|tak\w+|took) (?:the |my |that )([a-z]+) (?:out|off)\b"
    r"|\b([a-z]+)(?:'s| is| was)? (?:gone|coming off|left out|come off)\b",
    re.I,
)
_GOES_AND = expression(
    r"\W*(?:(?:and|but|ok|so|now|with)\W+)*(?:no|without|lose|skip|drop|ditch|leave out|forget) (?:the |any )?(?P<what>[a-z]+)"
    r"(?: (?:this time|then|now))?(?:\s*[,;]\s*|\s+(?=and\b|but\b|just\b|with\b))(?:(?:and|but|just|with)\s+)*(?P<rest>.+)",
    re.I,
)
_STAYS = expression(r"n't\b|\b(?:not|never|cannot|dont)\b|^(?:is|are|was|were|did|do|does|why|have|has)\b", re.I)
_WITH_IT = expression(
    r"\b(?:again |still |but )*(?:with|and|over|plus) the (?P<what>[a-z]+)(?: (?:still )?(?:in|on|there))?\W*$", re.I
)
_ANOTHER_WALL = expression(r"\W*(?:and |now |ok )*another(?: one| wall)?\s*[:;,-]", re.I)
_SO_MANY = expression(r"\b(2|3|two|three|double) (?:layers|lyrs|sheets|thicknesses)(?: of)?\b", re.I)
_THERE = expression(r"\bthere(?:['’]s| is| are| was)\b|\bforgot\b|\bi(?:['’]ve| have) got\b", re.I)
_GO_TO = expression(r"\b(?:go|going|gone|went|up|down|change|changed|switch|switched|moved) (?:up |down )?to\b", re.I)
_COUNTS = {"2": 2, "two": 2, "double": 2, "3": 3, "three": 3}

_ALONE = expression(  # what a number that puts one right may have beside it
    r"(?:\b(?:no|sorry|wait|oh|actually|i meant?|i said|make it|make that|it['’]?s|that['’]?s|mm|mil)\b|\W)*", re.I
)
_IN_THERE = expression(
    r"\W*(?:(?:and|but|oh|so|ok|plus|with|also|what if|there['’]?s|there is|i put|we put|if)\W+)*(?P<what>[^,;?]+?)"
    r"\W+(?:in there|in it|in the wall|in between|on (?:it|there|that wall)|under(?:neath)? it|behind it|as well|too)\W*",
    re.I,
)
_ONE_MORE = expression(r"\b(?:add|adding|added|another|extra)\b", re.I)
_KIND_NAMES = frozenset(("sheathing", "strapping", "foam", "cladding"))

Layers = tuple[Layer, ...]


def layers_changed(text: str, old: str, last: Asked, more: Question) -> list[Question] | None:
    """The last question with its layers as the line changes them: none where that can't be told, None where it changes none.

    `old` is what the line says it takes the place of, `more` the line read as about the same topic.
    """
    before = last.givens.get(LAYERS)
    if before is None or not all(isinstance(layer, Layer | Length) for layer in before.value):
        return None
    before = replace(before, value=tuple(layer if isinstance(layer, Layer) else Layer(layer) for layer in before.value))
    text = _WITH_IT.sub(lambda kept: "" if named_in(kept["what"], before.value) else kept[0], text)
    both = _gone_and_more(text, last, more)
    if both is not None:
        return [both]
    heard = more.givens.get(LAYERS)
    told = [layer if isinstance(layer, Layer) else Layer(layer) for layer in heard.value] if heard else []
    said: Layers = _without_places(tuple(told), before.value)
    if not said:
        after = _without(text, before.value) or _so_many(text, before.value) or _thickness_of(text, before.value)
        after = after or _one_more(text, before.value) or _changed_again(text, before.value, last)
        after = after or _for_old(text, old, before.value)
        return None if after is None else [_question(last, after, text)]
    named = _INSTEAD.search(text) or _SWAP.search(text)
    gone = old or (named[1] if named else "")
    if gone:
        found = _for_old(text, gone, before.value) or _swapped(before.value, gone, said)
    elif _ADD.search(text):
        found = (*before.value, *said)
    elif len(said) > 1 and _ANOTHER_WALL.match(text):
        found = said
    elif len(said) > 1:
        return None  # another wall
    else:
        found = _swapped(before.value, said[0].what, said)
        if found is None and _THERE.search(text) and said[0].what not in ("layer", ""):
            found = (*before.value, *said)  # there's half inch of sheathing behind, I forgot the sheathing
    return [] if found is None else [_question(last, found, text)]


def _gone_and_more(text: str, last: Asked, more: Question) -> Question | None:
    """The last question without the layer that goes, and with what else the line tells: "no foam, 38 into the stud"."""
    found = _GOES_AND.match(text)
    given = {name: heard for name, heard in more.givens.items() if name != LAYERS}
    if found is None or not given or not numbers_in(found["rest"]) or numbers_in(text[: found.start("rest")]):
        return None
    kind = kind_of(found["what"].lower())
    before = last.givens[LAYERS].value
    rest = tuple(layer for layer in before if kind not in map(kind_of, layer.what.split()))
    if len(rest) != len(before) - 1 or not rest:
        return None
    question = _question(last, rest, text)
    question.givens |= given
    return question


def tells_layer(text: str, last: Asked) -> bool:
    """Whether the one size of a line is told of a layer of the question before: we've had to go to 1 inch on the strapping."""
    return _GO_TO.search(text) is not None and names_layer(text, last)


def names_layer(text: str, last: Asked | None) -> bool:
    """Whether a line tells one size and names a layer of the question before: it's two inch foam."""
    before, said = last.givens.get(LAYERS) if last is not None else None, numbers_in(text)
    if before is None or len(said) != 1 or not all(isinstance(layer, Layer) for layer in before.value):
        return False
    kinds = {kind_of(word) for layer in before.value for word in layer.what.split()}
    return any(kind_of(word) in kinds for word in re.findall(r"[a-z]+", text.lower()))


def _swapped(before: Layers, name: str, said: Layers) -> Layers | None:
    """The layers with the one of that name taken out and those that were said in its place; None where none is its kind."""
    kinds = {kind_of(word) for word in re.findall(r"[a-z]+", name.lower())}
    at = [n for n, layer in enumerate(before) if kinds & {kind_of(word) for word in layer.what.split()}]
    new = tuple(layer for layer in said if len(said) == 1 or not kinds & {kind_of(word) for word in layer.what.split()})
    return (*before[: at[0]], *new, *before[at[0] + 1 :]) if len(at) == 1 and new else None


def _without_places(said: Layers, before: Layers) -> Layers:
    """What a line tells of layers, without those it only names to say where another is: half inch sheathing under the foam."""
    told = tuple(layer for layer in said if layer.thickness is not None or layer.what not in {one.what for one in before})
    return told if len(said) > 1 else said


def in_there(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with one more layer, of which a line tells that it is in the wall."""
    return put_in(wanted.line or wanted.rest, last)


def put_in(text: str, last: Asked) -> list[Question]:
    """A question with one more layer, of which a line tells that it is in the wall: "with 60 insulation in there"."""
    before, found = last.givens.get(LAYERS), _IN_THERE.fullmatch(text)
    if before is None or found is None or not all(isinstance(layer, Layer) for layer in before.value):
        return []
    after = None if named_in(found["what"], before.value) else _one_more(f"and {found['what']}", before.value)
    return [] if after is None else [_question(last, after, found["what"])]


def for_old(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with the layer that was so thick at what is said instead: "25 foam, not 50"."""
    before = last.givens.get(LAYERS)
    if before is None or not wanted.old or not all(isinstance(layer, Layer) for layer in before.value):
        return []
    text = f"{wanted.rest} {wanted.old}"
    found = _for_old(text, wanted.old, before.value)
    return [] if found is None else [_question(last, found, text)]


def _for_old(text: str, old: str, before: Layers) -> Layers | None:
    """The layers with the one that was so thick at what is said instead, unless another is named: "25 foam, not 50"."""
    was, said = places_of(old), [row for row in numbers_in(text) if row.kind in ("number", "length")]
    at = [n for n, layer in enumerate(before) if was and layer.thickness and layer.thickness.value == was[0].value.value]
    new = [row for row in said if row.value.value != was[0].value.value] if was else []  # type: ignore[union-attr]
    if len(was) != 1 or len(at) != 1 or len(new) != 1 or (named_in(text, before) or at) != at:
        return None
    return (*before[: at[0]], replace(before[at[0]], thickness=_length(new[0], before[at[0]]), assumed=""), *before[at[0] + 1 :])


def _without(text: str, before: Layers) -> Layers | None:
    """The layers without the one that is told to go: "we left the ply off", "and with no strapping"."""
    found = None if numbers_in(text) or _STAYS.search(text) else _OUT.search(text)
    if found is None:
        return None
    kind = kind_of(next(name for name in found.groups() if name).lower())
    rest = tuple(layer for layer in before if kind not in map(kind_of, layer.what.split()))
    return rest if len(rest) == len(before) - 1 and rest else None


def _so_many(text: str, before: Layers) -> Layers | None:
    """The layers with the one that is named so many times: "it's two layers of ply"."""
    found = _SO_MANY.search(text)
    at = named_in(text, before) if found else []
    if found is None or len(at) != 1:
        return None
    return (*before[: at[0]], *[before[at[0]]] * _COUNTS[found[1].lower()], *before[at[0] + 1 :])


def named_in(text: str, before: Layers) -> list[int]:
    """The places of the layers that a line names."""
    kinds = {kind_of(word) for word in re.findall(r"[a-z]+", text.lower())}
    return [n for n, layer in enumerate(before) if layer.what and kind_of(layer.what.split()[-1]) in kinds]


def _thickness_of(text: str, before: Layers) -> Layers | None:
    """The layers with the one that is named at the one thickness that is said, in its unit where none is: "the battens 38"."""
    at = named_in(text, before)
    numbers = [row for row in numbers_in(text) if row.kind in ("number", "length")]
    if len(at) != 1 or len(numbers) != 1 or _SO_MANY.search(text) or _ONE_MORE.search(text):
        return None
    thickness = _length(numbers[0], before[at[0]])
    return (*before[: at[0]], replace(before[at[0]], thickness=thickness, assumed=""), *before[at[0] + 1 :])


def _changed_again(text: str, before: Layers, last: Asked) -> Layers | None:
    """The layers with the one that the last change was of at the one thickness that puts it right: and a 38 batten | no, 25."""
    said, places = [row for row in numbers_in(text) if row.kind in ("number", "length")], places_of(text)
    past = [one if isinstance(one, Layer) else Layer(one) for one in last.past[-1].get(LAYERS, ())] if last.past else []
    if len(said) != 1 or len(places) != 1 or len(past) != len(before):
        return None
    if not _ALONE.fullmatch(f"{text[: places[0].start]} {text[places[0].end :]}"):
        return None
    at = [n for n, layer in enumerate(before) if layer.thickness != past[n].thickness]
    if len(at) != 1:
        return None
    return (*before[: at[0]], replace(before[at[0]], thickness=_length(said[0], before[at[0]]), assumed=""), *before[at[0] + 1 :])


def _one_more(text: str, before: Layers) -> Layers | None:
    """The layers with one more whose name comes before its thickness, in the unit of the others: "foam 25 as well"."""
    words = re.findall(r"[a-z]+", text.lower())
    names = [word for word in words if kind_of(word) in _KIND_NAMES]
    numbers = [row for row in numbers_in(text) if row.kind in ("number", "length")]
    if len(names) != 1 or len(numbers) != 1 or (named_in(text, before) and not _ONE_MORE.search(text)):
        return None
    if not (_ADD.search(text) or words[0] == "and"):
        return None
    return (*before, Layer(_length(numbers[0], before[-1]), names[0]))


def _length(said: Reading, layer: Layer) -> Length:
    if isinstance(said.value, Length):
        return said.value
    unit = layer.thickness.unit if isinstance(layer.thickness, Length) else "in"
    return Length(said.value.value, unit)  # type: ignore[union-attr]


def _question(last: Asked, layers: Layers, text: str) -> Question:
    return Question(last.topic.name, {LAYERS: Heard(layers, 0, len(text), text)}, score=1.0 + len(layers))
