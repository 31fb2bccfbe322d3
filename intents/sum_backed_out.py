"""What one layer makes in the place of another: "the old boards were 3/4, the new ones are 1 1/16, how much further out"; and
how thick a layer may be, where the whole depth is told and the other layers are: "the face 2 1/2 off the stud, 1/2 ply and
7/16 siding, what strapping does that leave me".

The whole is no layer beside the others, and what is asked is what they leave of it.
"""

from __future__ import annotations

from functools import reduce

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Question
from intents.sum_outlines import line_of, whole_line
from solvers.sums import MINUS, Part, Sum, plain_size, told_as_length

_LAYER = (
    r"(?:strapping|straps?|battens?|furring|furr|foam|insulation|ply|plywood|osb|sheathing|siding|cladding|spacers?|shims?"
    r"|packers?|packing|layer)"
)
_ASKED = expression(
    rf"\b(?:what|which|how thick|how much|how deep)(?: \w+){{0,3}}? {_LAYER}\b(?! (?:is )?Q)"
    rf"|\b(?:left|leaves?|leaving|room)(?: \w+){{0,3}}? for (?:the |a |my )?{_LAYER}\b"
)
_WHOLE = (
    expression(
        r"\b(?:sticks? out|stands? (?:off|out)|comes? out|face|finish(?:es)?|total|overall|jamb|build ?out|to get|out to)\b"
        r"(?: \w+){0,5}? (?P<whole>Q)"
    ),
    expression(
        r"(?P<whole>Q)(?: (?:total|overall|altogether|in all)|(?: \w+){0,2}? (?:from|off|past|beyond) the (?:studs?|wall))\b"
    ),
)
_FASTENED = frozenset("screw screws nail nails penetration bite long".split())
_TELLS = frozenset("what which how left leave leaves leaving room".split())


def backed_out(chart: Chart) -> Question | None:
    """The sum of a line that tells the whole depth and all layers but one, and asks how thick that is."""
    if _TELLS.isdisjoint(chart.words) or not _FASTENED.isdisjoint(chart.words):
        return None
    line = line_of(chart)
    if line is None or len(line.parts) < 2 or not _ASKED.search(line.words):
        return None
    found = next((told for pattern in _WHOLE if (told := pattern.search(line.words)) is not None), None)
    if found is None or not all(told_as_length(part) for part in line.parts):
        return None  # 8 pieces: a count, and no layer
    at = line.place(found, "whole")
    others = [part for n, part in enumerate(line.parts) if n != at]
    if sum(plain_size(part) for part in others) >= plain_size(line.parts[at]):
        return None

    def less(so_far: Part, part: Part) -> Part:
        return Sum(MINUS, so_far, part)

    whole = reduce(less, others, line.parts[at])
    return whole_line(chart, whole, sorted(_TELLS & {*chart.words}))


_SWAPPED = (
    expression(
        r"\b(?:old|existing|original)\b[^Q]*(?P<old>Q)\b[^Q]*\bnew\b[^Q]*(?P<new>Q)\b[^Q]*"
        r"\bhow (?:much|far)(?: \w+){0,2}? (?:further|farther|more|thicker|deeper|prouder|out|move|difference)\b"
    ),
    expression(
        r"(?P<old>Q)\b[^Q]*\b(?:comes?|coming|came|goes|going|taken|take) (?:off|out)\b[^Q]*(?P<new>Q)\b[^Q]*"
        r"\b(?:goes|going|put|goes back|comes) (?:on|in|up)\b[^Q]*\bhow (?:much|far)(?: \w+){0,3}? "
        r"(?:further|farther|more|thicker|deeper|prouder|out|move|moves|difference)\b"
    ),
)


def swapped(chart: Chart) -> Question | None:
    """How much more one layer is than the one that it takes the place of; negative for less."""
    said = frozenset(chart.words)
    if said.isdisjoint(("new", "on", "in", "up")) or "how" not in said:
        return None
    line = line_of(chart)
    found = next((told for pattern in _SWAPPED if (told := pattern.search(line.words)) is not None), None) if line else None
    if line is None or found is None or len(line.parts) != 2:
        return None
    old, new = line.parts
    if not (told_as_length(old) and told_as_length(new)):
        return None
    return whole_line(chart, Sum(MINUS, new, old), ["how"])
