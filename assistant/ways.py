"""The ways one question could be meant, what tells them apart, and which one a reply chooses."""

from __future__ import annotations

import re
from collections.abc import Collection, Iterable
from dataclasses import dataclass, replace
from enum import Enum
from fractions import Fraction
from itertools import islice, product
from typing import TYPE_CHECKING, Any

from assistant.metric_talk import told_in_metric
from assistant.record import listed, value_line
from assistant.usual import STRETCH, far_out, impossible, in_usual_units, no_unit
from intents.chart import LIGHT
from intents.expressions import expression
from intents.lengths import METRES
from intents.measures import readings
from intents.question import Heard, Question
from intents.sound_alikes import settled
from intents.stated_units import MILLIMETRES
from intents.talk import numbers_in
from intents.tokens import tokenize
from solvers.exact import real
from solvers.quantities import Length, Pitch, Quantity, Temperature, TemperatureChange
from solvers.registry import Worked
from solvers.slots import Choice, Given, Parameter, Slot
from solvers.sums import Sum, leaves

if TYPE_CHECKING:
    from assistant.conversation import Asked

MOST_WAYS = 6
ROOFED = frozenset("roof run rafter hip valley".split())  # words of a question whose length is of a roof's frame
SCALE_SAID = 0.9  # a temperature surer than this had its scale said
SCALE_UNSAID = 0.5
NEXT_TO = 4  # letters between two sizes said together, as " by "
INCHES = frozenset(("in", "ins", "inch", "inches"))
INCHES_FROM = 12  # a bare number under this, beside one in inches, may be of feet
FEW = 4  # so many times as long as the other the one side mostly is at most: 22 one way and 31 foot 6 the other
_TAPE_PART = expression(r"\d{1,2}/(?:2|4|8|16|32)")
HALVES = 30  # two sizes this large or more, both told to the half, are of inches: nobody measures 47 1/2 feet so
TOO_HOT = {Temperature: 60, TemperatureChange: 90}  # from here on degrees of no scale are no Celsius
UNIT_WORDS = {
    "ft": {"feet", "foot", "ft", "'"}, "in": {"inches", "inch", "in", '"'}, "degF": {"f", "fahrenheit"},
    "degC": {"c", "celsius", "centigrade"}, "dF": {"f", "fahrenheit"}, "dC": {"c", "celsius", "centigrade"},
    "mm": MILLIMETRES, "cm": {"cm", "centimetres", "centimeters"}, "m": METRES,
    "deg": {"degrees", "degree", "deg", "°"}, "in12": {"12", "twelve", "rise"},
    "perF": {"f", "fahrenheit"}, "perC": {"c", "celsius", "centigrade", "k", "kelvin"},
}  # fmt: skip


@dataclass(slots=True)
class Way:
    """One way to mean the question, worked."""

    asked: Asked
    worked: Worked


def ways_of(question: Question, parameters: tuple[Parameter, ...], known: Collection[str] = ()) -> list[dict[str, Given]]:
    """All ways to give the question's quantities to its parameters, the likeliest first; `known` are those given before."""
    kinds = {parameter.name: parameter.kind for parameter in parameters}
    slots = {parameter.name: parameter.slot for parameter in parameters}
    found: list[tuple[Given, ...]] = []
    roofed = not ROOFED.isdisjoint(question.words)
    for said in _likely(_per_foot(question), slots):
        for heard in in_usual_units(_one_unit(said, slots), slots, roofed):
            choices = [_choices(name, given, kinds[name]) for name, given in heard.items() if name in kinds]
            pair = [n for n, h in heard.items() if n in slots and h.others and isinstance(h.value, Length) and slots[n].doubt]
            one_unit = (way for way in product(*choices) if len(pair) != 2 or _of_one_unit(way, pair))
            found += islice(one_unit, MOST_WAYS * 2)
    found = _first_of_twins(_each_once(found), slots, known)
    on_scale = [way for way in found if _one_scale(way)] or found[:1]  # a wall said to be at 70 °C is refused by what is worked
    return [{given.name: given for given in way} for way in on_scale[:MOST_WAYS]]


def _of_one_unit(way: tuple[Given, ...], pair: list[str]) -> bool:
    """Whether two sizes that may each be of two units are of the same: 30 by 40 is no 30 feet by 40 inches."""
    return len({given.value.unit for given in way if given.name in pair}) == 1


def twins(one: Slot, other: Slot) -> bool:
    """Whether two quantities are the two sides of one thing, so that no word tells which: 16 foot long | 9 wide."""
    return one.doubt is not None and (one.doubt, one.bare, one.usual) == (other.doubt, other.bare, other.usual)


def _first_of_twins(ways: list[tuple[Given, ...]], slots: dict[str, Slot], known: Collection[str]) -> list[tuple[Given, ...]]:
    """The ways without those that give the second of two sides alone what another gives the first: a 16 foot wall."""
    sides = [name for name, slot in slots.items() if any(twins(slot, other) for n, other in slots.items() if n != name)]
    names = [name for name in sides if name not in known]
    if not names or len(names) < len(sides):
        return ways
    told = [{given.name for given in way}.intersection(names) for way in ways]
    return [way for way, has in zip(ways, told, strict=True) if has != {names[1]}] if {names[0]} in told else ways


def _per_foot(question: Question) -> Question:
    """A fall told as a part of the tape alone, which may be per foot: a fall of 1/8 is rarely one in eight."""
    named = [name for name in ("ratio", "slope") if name in question.givens and _TAPE_PART.fullmatch(question.givens[name].text)]
    if question.topic != "fall" or len(named) != 1:
        return question
    heard = question.givens[named[0]]
    others = {name: given for name, given in question.givens.items() if name != named[0]}
    per_foot = others | {"pitch": replace(heard, value=Pitch(Fraction(heard.text), "in12", heard.text), others=())}
    return replace(question, swaps=[per_foot, *question.swaps])


def _each_once(ways: list[tuple[Given, ...]]) -> list[tuple[Given, ...]]:
    """The ways without those that give the same quantities as one before them, in whatever words."""
    seen: list[dict[str, Any]] = []
    kept = []
    for way in ways:
        said = {given.name: given.value for given in way}
        values = {name: replace(one, text="") if isinstance(one, Quantity) else one for name, one in said.items()}
        if values not in seen:
            seen.append(values)
            kept.append(way)
    return kept


def _likely(question: Question, slots: dict[str, Slot]) -> list[dict[str, Heard]]:
    """The ways to hand out the quantities without those that make one of them what none is; a rival saves nothing."""
    said = [question.givens, *question.swaps]
    can = [givens for givens in said if not impossible(givens, slots)]
    said, rival = (can, False) if can and can[0] is not said[0] else (said, question.rival)
    for stretch in (1, STRETCH):
        usual = [givens for givens in said if not far_out(givens, slots, stretch)]
        if usual and (usual[0] is said[0] or not rival):
            return usual
    return said


def _one_unit(heard: dict[str, Heard], slots: dict[str, Slot]) -> dict[str, Heard]:
    """Two sides of one thing said with no unit are of one unit: 82 1/2 can only be inches, so 38 beside it is too."""
    bare = {n: h for n, h in heard.items() if isinstance(h.value, Length) and n in slots and slots[n].doubt and no_unit(h)}
    if len(bare) == 1 and (both := _of_both(heard, next(iter(bare)), slots)):
        return both
    doubtful = [name for name, given in bare.items() if given.others]
    if len(bare) == len(doubtful) == 2 and all(h.value.value.denominator == 2 and h.value.value >= HALVES for h in bare.values()):
        return heard | {n: replace(h, value=Length(h.value.value, "in", h.text), others=()) for n, h in bare.items()}
    if len(bare) != 2 or len(doubtful) != 1:
        return heard
    (name,), (other,) = doubtful, [n for n in bare if n not in doubtful]
    slot, sure = slots[name], bare[other].value
    if slots[other].doubt != slot.doubt or sure.unit == "ft":  # 36 by 12 may be either
        return heard
    likely = [value for value in (bare[name].value, *bare[name].others) if value.unit == sure.unit]
    return {**heard, name: replace(bare[name], value=likely[0], others=())} if likely else heard


def _of_both(heard: dict[str, Heard], name: str, slots: dict[str, Slot]) -> dict[str, Heard] | None:
    """The unit of one of two sizes is that of the other: 30x44 in; 22 one way and 31 foot 6 the other.

    But 3 by 44 in may be feet and inches, and 36 by 6 foot 8 is a door.
    """
    first = heard[name]
    for other, second in heard.items():
        if other not in slots or slots[other].doubt != slots[name].doubt or not isinstance(second.value, Length):
            continue
        if not second.value.value:
            continue  # no foot is as large as nothing
        words = set(second.text.lower().replace('"', " inches").split())
        unit = ""
        if words & UNIT_WORDS["ft"]:
            of_a_size = 1 / FEW <= float(first.value.value * 12 / second.value.to("in").value) <= FEW
            unit = "ft" if of_a_size else ""
        elif words & INCHES and first.value.value >= INCHES_FROM and 0 < second.start - first.end <= NEXT_TO:
            unit = "in"
        if unit:
            return heard | {name: replace(first, value=Length(first.value.value, unit, first.text), others=())}
    return None


def still_either(ways: list[Way]) -> list[Way]:
    """The ways that all lack the same piece, where there are several: what tells them apart is still open once it is told."""
    return ways if len(ways) > 1 else []


_NO_SCALE = expression(r"(?:[−\d.+ -]|minus|below|zero)*(?:°|deg(?:ree)?s?)?\W*", re.IGNORECASE)


def on_one_scale(ways: list[Way]) -> list[Way]:
    """Those of the ways that take all degrees of no scale for the same, where there are any; Celsius beside metric lengths."""
    ways = [way for way in ways if _one_scale(tuple(way.asked.givens.values()))] or ways
    metric = bool(ways) and all(told_in_metric(way.asked) for way in ways)
    return [way for way in ways if not _in_fahrenheit(way)] or ways if metric else ways


def _in_fahrenheit(way: Way) -> bool:
    """Whether degrees that were said with no scale are of Fahrenheit there."""
    unsaid = [given.value for given in way.asked.givens.values() if given.sure < SCALE_SAID]
    return any(isinstance(value, Temperature | TemperatureChange) and value.unit in ("degF", "dF") for value in unsaid)


def _one_scale(way: tuple[Given, ...]) -> bool:
    """Nobody says one temperature in Fahrenheit and the next in Celsius without naming both; no wall is at 110 °C."""
    unsaid = [given.value for given in way if given.sure < SCALE_SAID and type(given.value) in TOO_HOT]
    bare = [given.value for given in way if type(given.value) in TOO_HOT and _NO_SCALE.fullmatch(given.value.text or "C")]
    scales = {value.unit for value in unsaid if isinstance(value, Temperature)}
    hot = any(value.unit in ("degC", "dC") and value.value > TOO_HOT[type(value)] for value in (*unsaid, *bare))
    return len(scales) < 2 and not hot


def _choices(name: str, heard: Heard, kind: type) -> list[Given]:
    values = [heard.value, *heard.others]
    if issubclass(kind, Enum):
        values = [kind[value] if isinstance(value, str) else value for value in values]
    unsaid = bool(heard.others) and type(heard.value) in TOO_HOT  # 45 degrees, of either scale
    return [Given(name, value, "asked", min(heard.sure, SCALE_UNSAID) if unsaid else heard.sure) for value in values]


def same_answer(worked: Iterable[Worked]) -> bool:
    """Whether all of them come to the same answer, or to the same question back."""
    results = list(worked)
    answers = [w.working.result for w in results if w.working and w.working.result]
    if not answers:
        return len({(w.topic.name, w.wanted, w.refused) for w in results}) == 1
    if len(answers) < len(results):
        return False
    first = answers[0]
    return all(
        answer.unit == first.unit
        and answer.text == first.text
        and (answer.value is None or first.value is None or abs(real(answer.value) - real(first.value)) < 1e-9)
        for answer in answers
    )


def adds(full: Worked, lean: Worked) -> bool:
    """Whether what is known besides (`full`) is of use: it answers what could not be, or the same answer and more."""
    if lean.working is None or full.working is None:
        return lean.working is None
    return same_answer([full, lean]) and len(full.working.also_lines) > len(lean.working.also_lines)


def differences(ways: list[Way]) -> list[str]:
    """The parameters whose values differ between ways."""
    names = [given.name for way in ways for given in way.worked.givens]
    return [
        name
        for name in dict.fromkeys(names)
        if len({_value(way, name) for way in ways}) > 1
    ]  # fmt: skip


def _value(way: Way, name: str) -> Any:
    given = next((given for given in way.worked.givens if given.name == name), None)
    if given is None:
        return None
    return replace(given.value, text="") if isinstance(given.value, Quantity) else given.value


def which_way(ways: list[Way]) -> str:
    """The one short question that tells the ways apart."""
    names = differences(ways)
    label = {name: ways[0].worked.topic.parameter(name).label for name in names}
    if len(names) == 1:
        values = list(dict.fromkeys(_text(way, names[0]) for way in ways))
        named = ways[0].worked.topic.parameter(names[0]).slot.names
        if named and _value(ways[0], named) is not None:
            return f"Is the {_text(ways[0], named)} {listed(f'the {value}' for value in values)}?"
        return f"Is the {label[names[0]]} {listed(values)}?"
    first = listed([f"the {label[name]} {_text(ways[0], name)}" for name in names if _value(ways[0], name) is not None], "and")
    if len(ways) == 2 and _turned(ways, names):
        return f"Is {first}, or the other way round?"
    others = []
    for way in ways[1:3]:
        others.append(listed([f"the {label[name]} {_text(way, name)}" for name in names if _value(way, name) is not None], "and"))
    if not first:  # the one way gives none of what the other does
        return f"Is {listed(dict.fromkeys(others))}, or is that not said?"
    return f"Is {first}, or {listed(dict.fromkeys(others))}?"


def _turned(ways: list[Way], names: list[str]) -> bool:
    """Whether two ways hand the same values to the same parameters the other way round."""
    mine, theirs = ({_text(way, name) for name in names if _value(way, name) is not None} for way in ways)
    return mine == theirs and len(mine) == len(names)


def _text(way: Way, name: str) -> str:
    value = _value(way, name)
    if isinstance(value, Sum):
        return str(replace(value, text=""))
    return value_line(value)[2].split(" (")[0] if value is not None else "unsaid"


def chosen_way(text: str, ways: list[Way]) -> Way | None:
    """The way a reply chooses, or None when it does not say."""
    tokens = settled(tokenize(text)).tokens
    words = {token.text for token, after in zip(tokens, [*tokens[1:], None], strict=True) if token.text != "in" or after is None}
    if words & {"second", "other", "round", "latter", "no"} and len(ways) == 2:
        return ways[1]
    if words & {"first", "yes", "yep", "former"}:
        return ways[0]
    said = {(r.value.value, r.value.unit) for row in readings(tokens) for r in row if isinstance(r.value, Quantity)}
    numbers = {value for value, unit in said if unit == "none"}
    whole = {r.value.value for r in numbers_in(text) if isinstance(r.value, Quantity) and r.value.unit == "none"}
    names = differences(ways)
    if not said and (named := _said_of(ways, names, words)) is not None:
        return named
    if (summed := _by_its_part(text, ways, names)) is not None:
        return summed
    points = []
    for way in ways:
        score = 0
        for name in names:
            value = _value(way, name)
            if not isinstance(value, Quantity):
                score += 2 * _named(words, way, ways, name)
                continue
            label = set(way.worked.topic.parameter(name).label.split())
            exact = (value.value, value.unit) in said
            score += 4 * exact + (value.value in whole) + bool(words & UNIT_WORDS.get(value.unit, set())) * 2
            score += bool(label & words) * (2 if exact or value.value in numbers or not said else 0)
        points.append(score)
    best = max(points)
    tied = [way for way, score in zip(ways, points, strict=True) if score == best]
    alike = all(_value(way, name) == _value(tied[0], name) for way in tied for name in names)
    return tied[0] if best and alike else None


def _by_its_part(text: str, ways: list[Way], names: list[str]) -> Way | None:
    """Of ways to mean a sum, the one with a part that the reply says and no other has: "four foot two"."""
    said = [(r.value.value, r.value.unit) for r in numbers_in(text) if isinstance(r.value, Quantity)]
    sums = [[value for name in names if isinstance(value := _value(way, name), Sum)] for way in ways]
    parts = [{(part.value, part.unit) for value in own for part in leaves(value)} for own in sums]
    if len(said) != 1 or not all(sums):
        return None
    having = [n for n, own in enumerate(parts) if said[0] in own]
    return ways[having[0]] if len(having) == 1 else None


def _said_of(ways: list[Way], names: list[str], words: set[str]) -> Way | None:
    """The way that puts what was said last to the one given that is named: "the width"."""
    labels = {name: set(ways[0].worked.topic.parameter(name).label.split()) for name in names}
    said = words | {word.removesuffix("s") for word in words}
    named = [name for name, label in labels.items() if label & said]
    if len(named) > 1:  # the courses, of a course length and a board length
        own = {name: labels[name].difference(*(label for one, label in labels.items() if one != name)) for name in named}
        named = [name for name in named if own[name] & said]
    if len(named) != 1:
        return None
    fresh = [way for way in ways if (given := way.asked.givens.get(named[0])) is not None and given.source == "asked"]
    return fresh[0] if len(fresh) == 1 else None


def _named(words: set[str], way: Way, ways: list[Way], name: str) -> bool:
    """Whether a word of the choice that one way makes is said, and is in no other's: the run; the width of the building."""
    others = [{*_text(other, name).split()} for other in ways if _value(other, name) != _value(way, name)]
    return isinstance(_value(way, name), Choice) and bool(words & {*_text(way, name).split()}.difference(LIGHT, *others))


def sureness(question: Question) -> float:
    """How sure the least sure of its quantities is."""
    return min((heard.sure for heard in question.givens.values()), default=1.0)


def tape_step(value: Any) -> Fraction:
    """The tape fraction a person asked for: 1/32, or "32nd" heard as 32."""
    size = Fraction(value)
    return 1 / size if size > 1 else size
