"""What a line asks for that the topic it was read as never answers; then it is asked which is meant.

A gap is no angle of a joint; the screw that is there is no layer that a screw goes through; what one box would hold anyway
nobody asks the boxes of; a ring whose sides are counted is not told by how somebody cut it; and a percentage of humidity is no
waste in a rate. Nor is a number of tubes a size of the joint; and how many more it takes may leave out what is done.
"""

from __future__ import annotations

from collections.abc import Callable
from itertools import pairwise

from intents.chart import Chart
from intents.circle_told import asks_across
from intents.features import size_of
from intents.half_round import CIRCLE
from intents.question import Heard, Question
from intents.rate_by_words import SET_OUT
from intents.rates_told import RATE
from solvers.quantities import Count, Length, Number, Weight
from solvers.slots import Layer

_JOINTS = frozenset(("peak joint", "rake return", "rake to level joint", "plumb cut"))
_GAPS = frozenset("gap gaps crack cracks daylight opens".split())
_FASTENERS = frozenset("screw screws nail nails".split())
_BITES = frozenset("bite bites biting embedment hold holding holds penetration penetrate left reach reaches".split())
_WHATS = frozenset("what what's whats how".split())
_MORE, _TUBES = frozenset(("more", "extra")), frozenset("tube tubes cartridge cartridges sausage sausages".split())
_TO_GO = frozenset("left remaining remain remains still next further rest go coming other".split())
LAST, MOST_OF_A_BAY = 3, 5  # words; sides
_CROWNS = frozenset("crown coving cove cornice cornices".split())
_MORE_THAN_TWO = frozenset("3 4 5 6 three four five six several".split())
_PIECES = frozenset("pcs pc pieces piece bits segments facets".split())
_MEMBERS = frozenset("lintel lintels girder girders".split())
_ROUNDED = frozenset(("rounding", "rounded"))
_SEVERAL = frozenset("windows doors openings wdws".split())
_GABLES = frozenset("gable gables end ends peak".split())
_FLAT = frozenset(("roof area", "wall area", "gable area", "side of a wall"))
_VOLUMES = frozenset("volume cubic cube cubed".split())
_STANDING = {"arc": "rise", "gable area": "height"}


def not_its_answer(chart: Chart, questions: list[Question], _topics: object) -> None:
    """Doubt a reading whose topic does not answer what is asked."""
    for question in questions:
        doubts = (*_DOUBTS.get(question.topic, ()), _uncounted)
        if any(doubt(chart, question) for doubt in doubts):
            question.lacking = question.lacking or 1


def _asks_a_gap_or_rounds(chart: Chart, _question: Question) -> bool:
    """Whether a gap is asked for, or what a rounded pitch does: neither is the angle of a joint."""
    return _asks_a_gap(chart.words) or not _ROUNDED.isdisjoint(chart.words)


def _damp(chart: Chart, question: Question) -> bool:
    return "waste" in question.givens and "humidity" in chart.words


def _bites(chart: Chart, _question: Question) -> bool:
    """Whether it is of what a screw holds, which is no sum of its layers."""
    return not (_BITES.isdisjoint(chart.words) or _FASTENERS.isdisjoint(chart.words))


def _one_way_and_the_other(chart: Chart, _question: Question) -> bool:
    """Whether a saw is off by two angles: one way and the other."""
    return {"one", "other"} <= {*chart.words}


def _a_volume(chart: Chart, _question: Question) -> bool:
    return not _VOLUMES.isdisjoint(chart.words)


def _marks_at(chart: Chart, _question: Question) -> bool:
    """Whether marks are told by how far apart they are: marks at 16 over 40 foot."""
    return ("marks", "at") in pairwise(chart.words)


def _how_far_across(chart: Chart, _question: Question) -> bool:
    return asks_across(chart.words)


def _hangs_over(chart: Chart, _question: Question) -> bool:
    """Whether what goes all the way round is the overhang of a roof."""
    return not {"overhang", "overhangs", "oversail", "eaves", "eave"}.isdisjoint(chart.words)


def _uncounted(_chart: Chart, question: Question) -> bool:
    """Whether windows were taken for one window, and nothing says how many there are: with windows 3 by 4."""
    openings = question.givens.get("openings")
    if openings is None or not isinstance(openings.value, tuple) or len(openings.value) != 1 or openings.value[0].count != 1:
        return False
    return openings.text.lower().split()[0] in _SEVERAL


def _pitch_of_a_roof(chart: Chart, question: Question) -> bool:
    """Whether the pitch beside a wall is the roof's, and no gable's."""
    return "pitch" in question.givens and "roof" in chart.words and _GABLES.isdisjoint(chart.words)


def _set_out(chart: Chart, _question: Question) -> bool:
    """Whether it is asked how many there are of what is set out: so many posts have one space less between them."""
    return any(first == "many" and then in SET_OUT for first, then in pairwise(chart.words))


def _more_of_it(chart: Chart, _question: Question) -> bool:
    """Whether it is asked how many more it takes, and nothing says that what was done is no part of what there is."""
    words = chart.words
    return any(first == "many" and then in _MORE for first, then in pairwise(words)) and _TO_GO.isdisjoint(words)


def _counted_tubes(chart: Chart, question: Question) -> bool:
    """Whether a number of tubes was taken for a size of the joint: 2 tubes did 30 feet."""
    sizes = {heard.start for name, heard in question.givens.items() if name in ("width", "depth")}
    said = ((chart.tokens[r.start].start, r.end) for row in chart.readings for r in row if r.end < len(chart.words))
    return any(start in sizes and chart.words[end] in _TUBES for start, end in said)


def _counted_each(chart: Chart, question: Question) -> bool:
    """Whether so many for each of a thing were taken for a length: 3 screws a hinge."""
    sizes = {heard.start for name, heard in question.givens.items() if name in ("length", "spacing") and heard.bare}
    said = ((chart.tokens[r.start].start, r.end) for row in chart.readings for r in row if r.kind == "number")
    ends = [end for start, end in said if start in sizes]
    return any(
        "".join(chart.words[end : end + 1]).endswith("s") and chart.words[end + 1 : end + 2] in (["a"], ["per"], ["to"])
        for end in ends
    )


def _off_the_ground(chart: Chart, question: Question) -> bool:
    """Whether what was taken for the rise of an arc, or a gable's, is how far something stands off the ground."""
    rise = question.givens.get(_STANDING[question.topic])
    after = [token.text for token in chart.tokens if rise is not None and token.start >= rise.end][:1]
    return after == ["off"]


def _asks_a_gap(words: list[str]) -> bool:
    """Whether a gap is what is asked for, and not one that somebody fills: it stands last, or after "what"."""
    places = [at for at, word in enumerate(words) if word in _GAPS]
    return any(at >= len(words) - LAST or not _WHATS.isdisjoint(words[max(0, at - 2) : at]) for at in places)


def _takes_it_for_a_layer(chart: Chart, question: Question) -> bool:
    """Whether what holds is asked, and a length said right before a screw was taken for a layer, or for what is to hold."""
    if _BITES.isdisjoint(chart.words):
        return False
    layers, holds = (question.givens.get(name) for name in ("layers", "penetration"))
    thick = [layer.thickness for layer in (layers.value if layers is not None else ()) if isinstance(layer, Layer)]
    sizes = {each.to("in").value for each in (*thick, holds.value if holds is not None else None) if isinstance(each, Length)}
    said = (r for row in chart.readings for r in row if r.end < len(chart.words) and chart.words[r.end] in _FASTENERS)
    return any(isinstance(r.value, Length | Number) and size_of(r) in {float(size) for size in sizes} for r in said)


def _one_holds_it(_chart: Chart, question: Question) -> bool:
    if "each" in question.givens:
        return False
    count, box = (_number(question.givens.get(name)) for name in ("count", "box"))
    return count is not None and box is not None and count <= box


def _sides_let_fall(chart: Chart, question: Question) -> bool:
    """Whether more sides are said than a bay has, and a ring is told by the angle of a bay, which then is what counts."""
    if "bay" not in question.givens:
        return False
    many = (r.end for row in chart.readings for r in row if isinstance(r.value, Number) and r.value.value > MOST_OF_A_BAY)
    return any("sides" in chart.words[end : end + 2] for end in many)


def _number(heard: Heard | None) -> float | None:
    return float(heard.value.value) if heard is not None and isinstance(heard.value, Count | Number) else None


def _holds_up(chart: Chart, _question: Question) -> bool:
    """Whether it is of what carries a wall over an opening, which nothing here sizes."""
    return not _MEMBERS.isdisjoint(chart.words)


def _sprung(chart: Chart, _question: Question) -> bool:
    """Whether trim that stands off the wall lies flat on the saw: then what it springs at tells the miter."""
    return not _CROWNS.isdisjoint(chart.words) and "flat" in chart.words


def _in_pieces(chart: Chart, _question: Question) -> bool:
    """Whether a corner is gone round in so many pieces, more than the two that any corner has: 90 corner, 3 pcs."""
    pairs = pairwise(chart.words)
    return any(word in _MORE_THAN_TWO and after in _PIECES for word, after in pairs)


def _another_lot(chart: Chart, question: Question) -> bool:
    """Whether another weight is put to the lot that was taken: 16 bundles at 20 lb, plus a 45 lb roll."""
    if "plus" not in chart.words:
        return False
    heard = question.givens.get("weight")
    told = [(chart.tokens[r.start].start, r) for row in chart.readings for r in row if isinstance(r.value, Weight)]
    return heard is not None and any(start > heard.end and chart.words[max(0, r.start - 2)] == "plus" for start, r in told)


# What may be asked that a topic does not answer, by the topic; windows that nobody counted are any topic's.
_DOUBTS: dict[str, tuple[Callable[[Chart, Question], bool], ...]] = {
    **dict.fromkeys(_JOINTS, (_asks_a_gap_or_rounds,)),
    **dict.fromkeys(_FLAT, (_a_volume,)),
    "gable area": (_a_volume, _off_the_ground),
    "arc": (_off_the_ground,),
    "fastener length": (_takes_it_for_a_layer,),
    "tape arithmetic": (_bites,),
    "air gap": (_holds_up,), "miter for a corner": (_sprung, _in_pieces), "weight": (_another_lot,),
    "boxes": (_one_holds_it,),
    "polygon": (_sides_let_fall,),
    "sealant": (_counted_tubes,),
    "fasteners": (_counted_each,),
    "divide evenly": (_marks_at,),
    "angle off": (_one_way_and_the_other,),
    "squares": (_pitch_of_a_roof,),
    RATE: (_damp, _more_of_it, _set_out),
    CIRCLE: (_how_far_across, _hangs_over),
}
