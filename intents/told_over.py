"""Roles that what a thing can be, or the words of the question, put right: a panel of 52 ft, sticks of 16 ft priced by the
foot, the height of a head told from the sill, one of two gables."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

from intents.about_so_much import about_so_much
from intents.chart import Chart
from intents.counted_things import system_told
from intents.cover_told import cover_told
from intents.drop_told import drop_told
from intents.lengths import UNITS
from intents.question import Heard, Question
from intents.reading import Dims
from intents.remarks import up_to_stop
from intents.second_reader import places_of
from intents.soffit_told import soffit_told
from intents.triangle_told import both_legs, leans_at, level_told, part_asked, run_on_the_flat, up_the_roof
from intents.unsaid_units import layers_no_inches
from solvers.quantities import Count, Length

LONGEST_STICK = 24  # ft
WIDEST_LEG = 48  # in
LONGEST_SPACING = 4  # ft, of what is set out on centre; posts are further apart, and are said to be
_CENTRES = frozenset("centre centres center centers oc apart every spacing spaced space intervals".split())
_STICKS = frozenset("stick sticks board boards lengths pieces pcs pc they're they".split())
_FROM = (["from", "there"], ["from", "sill"], ["sill", "to", "head"], ["above", "sill"], ["from", "that"])
_ON = frozenset("more another further".split())
_SAID = 6  # words after a size that tell from where it is measured
_ONE_OF = (["one", "of", "them"], ["just", "one"], ["only", "one"], ["one", "gable"])
_AFTER_ONE = frozenset(", . ; : ? gable gablet end of".split())
_COILS = frozenset("coil sheet roll stock".split())
_NO_MORE, _TOOK_BACK = _ONE_OF[1:3], frozenset("no nope nah sorry wait actually".split())
_PARTS_OF_INCH = frozenset("half quarter quarters eighth eighths sixteenth sixteenths".split())
_WHOLE, ASKED = {"length", "height", "exposure", "board_length"}, 0.8
_BOARDS = ("how", "many", "boards")
_PARTS = {
    **dict.fromkeys("rise height tall high upright".split(), "RISE"), **dict.fromkeys("run base out flat bottom".split(), "RUN"),
    **dict.fromkeys("slope hypotenuse hypotenus hypot long length longest sloping slant diagonal".split(), "SLOPE"),
    **dict.fromkeys("angle angles degrees steep".split(), "ANGLE"),
}  # fmt: skip
_ANGLES = ("angle", "angled", "angles", "degrees")
_RIGHT = {(right, angle) for right in ("right", "rite", "rt") for angle in _ANGLES[:3]}
_LARGE = frozenset(
    "deck decks slab slabs floor pad patio building house shed garage foundation footprint footing footings barn roof"
    " batter".split()
)
_LITTLE = frozenset("cabinet screen sash door window panel gate drawer hatch shutter pane mirror shelf glass vent".split())
MOST_FEET = 60
_SLOPES = frozenset("slope slopes sloping sloped slant hypotenuse hypot hyp longest long diagonal".split())
_NO_ANGLES = frozenset("right rite rt no any by with and an a".split())
_AND = frozenset("and the side length & slope".split())
_NEXT = 4  # what angle, whats the angle
_REACH = 7  # words from the one that asks to what is asked for
_ASKS = frozenset("what whats how which".split())


def put_over(chart: Chart, question: Question) -> None:
    """Put right what can be only one way."""
    topic = question.topic
    if topic in _ONE_RULE:
        _ONE_RULE[topic](chart, question)
    elif topic == "courses to openings":
        _bounds(question, "greatest")
        _heights(chart, question)
    elif topic == "course layout":
        _bounds(question, "exposure")
        cover_told(chart, question)
        about_so_much(chart.text, question)
    elif topic == "gable area" and "count" in question.givens:
        _one(chart, question)
    elif topic in ("square check", "out of square"):
        _large(chart, question)
    elif topic == "right triangle":
        leans_at(chart, question)
        level_told(chart, question)
        both_legs(chart, question)
        _not_given(chart, question)
        _two_legs(chart, question)
        _part(chart, question)
        part_asked(chart, question)
    elif topic == "conversion":
        system_told(chart, question)
    elif topic == "vent area":
        _ratio(question)
    elif topic == "bent flashing":
        legs_in_millimetres(question)
        _coil(chart, question)
    elif topic in ("build-out", "fastener length"):
        layers_no_inches(question)
    elif topic == "marks on centre" and "spacing" in question.givens:
        _spacing(chart, question)


def _no_sticks(chart: Chart, question: Question) -> None:
    """The sticks that straps are cut from tell nothing of how many there are, where it is not told how long they are."""
    stock = question.givens.get("stock")
    wanted = [after for pair, after in zip(pairwise(chart.words), chart.words[2:], strict=False) if pair == ("how", "many")]
    if stock is not None and "height" not in question.givens and _STICKS.isdisjoint(wanted):
        question.left = [*question.left, question.givens.pop("stock").text]


def _told_pitch(chart: Chart, question: Question) -> None:
    """Nobody asks for a pitch that was told: it's a 7 pitch, 18 feet across."""
    drop_told(chart, question)
    by_legs = question.topic == "pitch from rise and run" and "asked" not in question.givens
    if by_legs and ("in", "degrees") in pairwise(chart.words):
        question.givens["asked"] = Heard("ANGLE", 0, 0, "")
    for name in ("rise", "run"):
        heard = question.givens.get(name)
        if heard is not None and heard.end > heard.start and UNITS.isdisjoint(heard.text.lower().split()):
            start, end = places_of(chart, heard)
            if chart.words[max(0, start - 1)] in ("a", "an") and chart.words[end : end + 1] == ["pitch"]:
                question.lacking = question.lacking or 1


def _part(chart: Chart, question: Question) -> None:
    """Nobody asks for a part that was given ("on level ground" asks for no run): what is asked for stands after "what" or
    "how"; where no word there names a part, the question is asked back."""
    wanted, words = question.givens.get("wanted"), chart.words
    if wanted is None and "angle" not in question.givens and (at := _angle_named(words)) >= 0:
        question.givens["wanted"] = Heard("ANGLE", chart.tokens[at].start, chart.tokens[at].end, words[at])
        return
    starts = [at for at, word in enumerate(words) if word in _ASKS or word in ("find", "need")]
    after = [(at, start) for start in starts for at in range(start + 1, min(start + _REACH, len(words)))]
    parts = ((at, at - start, _PARTS.get(words[at], "")) for at, start in after)
    asked = [each for each in parts if each[2] and each[2].lower() not in question.givens]
    if wanted is not None and any(part == wanted.value for _, _, part in asked):
        _first_asked(words, question, wanted, asked)
        return
    if not starts and wanted is not None and wanted.value == "ANGLE" and _only_right(words):
        named = {_PARTS[word] for word in words if word in _PARTS} - {"ANGLE"}
        named -= {part for part in named if part.lower() in question.givens}
        if len(named) == 1:
            question.givens["wanted"] = replace(wanted, value=named.pop())  # legs, right angle, hypotenuse
        else:
            del question.givens["wanted"]
        return
    next_to = bool(asked) and asked[0][1] < _NEXT and asked[0][2] == "ANGLE"
    if not next_to and (wanted is None or str(wanted.value).lower() not in question.givens):
        return
    if asked:
        at, _, part = asked[0]
        question.givens["wanted"] = Heard(part, chart.tokens[at].start, chart.tokens[at].end, chart.said(at, at + 1))
        return
    last = _PARTS.get(next((word for word in reversed(words) if word.isalpha()), ""), "")
    if wanted is not None and last and last.lower() not in question.givens:
        question.givens["wanted"] = replace(wanted, value=last)
    elif wanted is not None and "angle" not in question.givens:
        del question.givens["wanted"]  # of two sides the third is asked for: what's the other leg
    else:
        question.lacking = question.lacking or 1


def _bounds(question: Question, most: str) -> None:
    """The least of an exposure is never more than the greatest: 6 at least, 7 at most."""
    ways = [way for way in (question.givens, *question.swaps) if _ordered(way, most)]
    if ways:
        question.givens, question.swaps = ways[0], ways[1:]
        return
    least, greatest = question.givens["least"], question.givens[most]
    question.givens = question.givens | {"least": greatest, most: least}
    question.swaps = []


def _ordered(way: dict[str, Heard], most: str) -> bool:
    sizes = [way[name].value for name in ("least", most) if name in way and isinstance(way[name].value, Length)]
    return len(sizes) < 2 or sizes[0].to("in").value <= sizes[1].to("in").value


def _first_asked(words: list[str], question: Question, wanted: Heard, asked: list[tuple[int, int, str]]) -> None:
    """Of a side and the angle, the side was asked first: the long side and the angle to cut it at."""
    at, _, part = asked[0]
    then = next((later for later, _, other in asked[1:] if other == wanted.value), at)
    between = {*words[at + 1 : then]}
    if part != wanted.value == "ANGLE" and "and" in between and between <= _AND:
        question.givens["wanted"] = replace(wanted, value=part)


def _large(chart: Chart, question: Question) -> None:
    """The sides of a deck said with no unit are of feet (16 x 28), or of metres where no tape has such tenths (3.6 x 5.4)."""
    sides: dict[str, Heard] = {name: question.givens[name] for name in ("side", "other_side") if name in question.givens}
    if len(sides) < 2 or not all((side.bare or side.others) and side.text.isascii() for side in sides.values()):
        return
    little, large = (not things.isdisjoint(chart.words) for things in (_LITTLE, _LARGE))
    if little or not large:
        if little and not large:
            _little(question, sides)
        return
    if any(side.value.unit == "mm" or "-" in side.text or "/" in side.text for side in sides.values()):
        return
    sizes = [side.value.value for side in sides.values()]
    tenths = all(size.denominator in (5, 10) for size in sizes)
    if not tenths and (max(sizes) > MOST_FEET or any(size.denominator > 1 for size in sizes)):
        return
    ways = [{name: replace(side, value=Length(side.value.value, unit, side.text), others=()) for name, side in sides.items()}
            for unit in (("m", "ft") if tenths else ("ft",))]  # fmt: skip
    first, *question.swaps = [question.givens | way for way in ways]
    question.givens = first


def _little(question: Question, sides: dict[str, Heard]) -> None:
    """The sides of a screen or a cabinet, each of which could be of feet or inches, are of inches: 30 x 40."""
    if not all(side.others for side in sides.values()):
        return
    inches = {name: Length(side.value.value, "in", side.text) for name, side in sides.items()}
    question.givens = question.givens | {name: replace(side, value=inches[name], others=()) for name, side in sides.items()}


def _not_given(chart: Chart, question: Question) -> None:
    """Without the ways that are given the one part that is asked for: of two lengths, whats the long side."""
    words = chart.words
    starts = [at for at, word in enumerate(words) if word in _ASKS]
    after = (words[start + 1 : start + _REACH] for start in starts)
    asked = {_PARTS[word] for said in after for word in up_to_stop(said) if word in _PARTS}
    ways = [question.givens, *question.swaps]
    kept = [way for way in ways if not any(part.lower() in way for part in asked)]
    if len(asked) == 1 and kept and len(kept) < len(ways):
        question.givens, *question.swaps = kept


def _two_legs(chart: Chart, question: Question) -> None:
    """What is no longer than the other side, and no word says slopes, is a leg too: 4 ft down and 4 ft along the beam."""
    givens = question.givens
    slope, other = givens.get("slope"), givens.get("rise") or givens.get("run")
    if slope is None or other is None or slope.end <= slope.start or len({"rise", "run", "angle"} & givens.keys()) != 1:
        return
    start, end = places_of(chart, slope)
    longer = slope.value.to("in").value > other.value.to("in").value
    if longer or not _SLOPES.isdisjoint(chart.words[max(0, start - 4) : end + 3]):
        return
    leg = "run" if "rise" in givens else "rise"
    wanted = {name: heard for name, heard in givens.items() if name not in ("slope", "wanted")}
    question.givens, question.swaps = wanted | {leg: slope}, []


def _angle_named(words: list[str]) -> int:
    """Where an angle that is no right one is all that is asked for: angle of a brace 30 up 40 out; rise 3, run 4, angle?"""
    last = len(words) - 1 - (words[-1:] == ["?"])
    first = next((at for at, word in enumerate(words[:3]) if word not in ("the", "a", "an", "and")), 0)
    for at in (first, last):
        angle = words[at : at + 1] in (["angle"], ["degrees"])
        if at == last and not _ASKS.isdisjoint(words):
            continue  # how long is it and whats the angle
        if angle and (at == last or words[at + 1] in ("of", "on", "for")) and (words[at - 1] if at else "") not in _NO_ANGLES:
            return at
    return -1


def _only_right(words: list[str]) -> bool:
    """Whether the only angle that is named is the right one."""
    said = [pair for pair in pairwise(["", *words]) if pair[1] in _ANGLES]
    return bool(said) and all(pair in _RIGHT for pair in said)


def _ratio(question: Question) -> None:
    """The rule of one in three hundred, heard as a rule and as a ratio."""
    rule, ratio = question.givens.get("rule"), question.givens.get("ratio")
    if rule is not None and ratio is not None and rule.start < ratio.end and ratio.start < rule.end:
        del question.givens["rule"]


def legs_in_millimetres(question: Question) -> None:
    """Bare legs of which one is too great for inches are all in millimetres: 75 30 12; 100 up, 60 out, 25 down."""
    heard = question.givens.get("lengths")
    if heard is None or not isinstance(heard.value, tuple) or any(mark in "'\"" for mark in heard.text):
        return
    if not UNITS.isdisjoint(heard.text.lower().split()) or not _PARTS_OF_INCH.isdisjoint(heard.text.lower().split()):
        return
    legs = [leg for leg in heard.value if isinstance(leg, Length)]
    inches = len(legs) == len(heard.value) and all(leg.unit == "in" and leg.value.denominator == 1 for leg in legs)
    if legs and inches and max(leg.value for leg in legs) > WIDEST_LEG:
        question.givens["lengths"] = replace(heard, value=tuple(Length(leg.value, "mm", leg.text) for leg in legs))


def _coil(chart: Chart, question: Question) -> None:
    """What a bend is said to be cut from is no leg of it: out of 24 in, a 1250 mm sheet."""
    heard = question.givens.get("coil")
    if heard is None or heard.end <= heard.start or not question.swaps:
        return
    start, end = places_of(chart, heard)
    cut_from = chart.words[max(0, start - 1) : start] == ["outta"] or chart.words[max(0, start - 2) : start] == ["out", "of"]
    if cut_from or not _COILS.isdisjoint(chart.words[end : end + 1]):
        question.swaps = [swap for swap in question.swaps if "coil" in swap]


def _spacing(chart: Chart, question: Question) -> None:
    """A great length that no word tells to be a spacing may be something else: marks 9 ft along and 12 ft out."""
    heard = question.givens["spacing"]
    if _CENTRES.isdisjoint(chart.words) and heard.value.to("ft").value > LONGEST_SPACING:
        question.lacking = question.lacking or 1


def _first_line(chart: Chart, question: Question) -> None:
    """How many boards a wall takes is the first line of its take-off: that is what was asked."""
    words = chart.words
    _size_of_wall(chart, question)
    boards = _BOARDS in zip(words, words[1:], words[2:], strict=False) or chart.likely.get("cladding boards", 0) >= ASKED
    if question.lacking == 1 and not question.swaps and boards and question.givens.keys() >= _WHOLE:
        question.lacking = 0


def _size_of_wall(chart: Chart, question: Question) -> None:
    """Of the ways to hand out the lengths, keep those that take the size beside "wall" for the wall's: a 52 by 9 wall."""
    ways = [question.givens, *question.swaps]
    if len(ways) == 1:
        return
    sizes = [r for row in chart.readings for r in row if isinstance(r.value, Dims) and len(r.value.parts) == 2]
    words = ["", "", *chart.words, ""]
    of_wall = [r for r in sizes if "wall" in (words[r.end + 2], words[r.start + 1], words[r.start])]
    kept = [
        way for way in ways if {"length", "height"} <= way.keys()
        and any(all(r.start <= places_of(chart, way[n])[0] < r.end for n in ("length", "height")) for r in of_wall)
    ]  # fmt: skip
    if kept and len(kept) < len(ways):
        question.givens, question.swaps = kept[0], kept[1:]


def _stick(chart: Chart, question: Question) -> None:
    """So many of a length priced by the foot: the length said of the sticks is that of each."""
    givens = question.givens
    heard, per = givens.get("length"), givens.get("per")
    if heard is None or per is None or "count" not in givens or "piece" in givens or not isinstance(heard.value, Length):
        return
    start, end = places_of(chart, heard)
    of_each = not _STICKS.isdisjoint(up_to_stop(chart.words[max(0, start - 3) : start][::-1]))
    of_each = of_each or chart.words[end - 1].startswith("footer") or not _STICKS.isdisjoint(chart.words[end : end + 2])
    if per.value in ("FT", "M") and of_each and heard.value.to("ft").value <= LONGEST_STICK:
        givens["piece"] = givens.pop("length")


def _heights(chart: Chart, question: Question) -> None:
    """Heights told one from another are the distances between: 48 from there to the head, then 20 to the top."""
    givens = question.givens
    for name, apart, below in (("head", "window", "sill"), ("top", "over", "head")):
        heard, under = givens.get(name), givens.get(below) or givens.get("sill")
        if heard is None or under is None or apart in givens or not isinstance(heard.value, Length):
            continue
        size = Length(heard.value.value, "in", heard.text) if heard.bare else heard.value
        under_it = size.to("in").value <= under.value.to("in").value  # then 20 to the top: no top is under the head
        if _from_below(chart, heard, under_it):
            givens[apart] = replace(heard, value=size, others=())
            del givens[name]
            question.swaps = []


def _from_below(chart: Chart, heard: Heard, under_it: bool) -> bool:
    start, end = places_of(chart, heard)
    before, told = chart.words[max(0, start - 1) : start], up_to_stop(chart.words[end : end + _SAID])
    if not _ON.isdisjoint(before + told[:2]) or (under_it and before == ["then"]):
        return True
    return any(told[at : at + len(cue)] == cue for cue in _FROM for at in range(len(told)))


def _one(chart: Chart, question: Question) -> None:
    """What is asked is one of the gables: "what's one of them in area", "two gables, no, just the one"."""
    words = [word for word in chart.words if word != "the"]
    asked = next((at for at in range(len(words) - 1, -1, -1) if words[at] in _ASKS), len(words))
    rest = words[asked:]
    if _no_more(words) or any(rest[at : at + len(cue)] == cue for cue in _ONE_OF for at in range(len(rest))):
        count = question.givens["count"]
        question.givens["count"] = replace(count, value=Count(Fraction(1), "count", count.text))


def _no_more(words: list[str]) -> bool:
    """Whether so many turn out to be one: no, just one; sorry, only one gable; never "no, just one coat"."""
    for at, word in enumerate(words):
        if word in _TOOK_BACK:
            start = at + 1 + (words[at + 1 : at + 2] == [","])
            after = words[start + 2 : start + 3]
            if words[start : start + 2] in _NO_MORE and (not after or after[0] in _AFTER_ONE):
                return True
    return False


_ONE_RULE = {
    "soffit panels": soffit_told, "cost": _stick, "weight": _stick, "take-off": _first_line,
    "pitch from rise and run": _told_pitch, "rise over a run": up_the_roof, "sloped length": run_on_the_flat,
    "strapping": _no_sticks,
}  # fmt: skip
