"""How far two lengths are apart, asked with no word of a sum: "from 21 5/8 up to 64, how far", "how much longer is A than B",
"what do I take off A to get B". Read only where the line tells two lengths and nothing else."""

from __future__ import annotations

from itertools import pairwise

from intents.reading import Reading
from intents.sum_counts import thing
from intents.sum_parts import Found, Parts
from intents.sum_places import two_lengths
from solvers.quantities import Number
from solvers.sums import MINUS, Sum, plain_size, told_as_length

_TELLS = frozenset(
    "between longer shorter wider narrower taller bigger smaller thicker deeper higher lower far off add get make reach "
    "from difference odds apart short more".split()
)
_MORE = _TELLS & frozenset("longer shorter wider narrower taller bigger smaller thicker deeper higher lower more".split())
_BETWEEN = frozenset("whats what's what how far much distance space gap room height".split())
_TO_GET = (("to", "get"), ("to", "make"), ("to", "reach"), ("to", "leave"), ("to", "bring"), ("to", "have"), ("to", "be"),
           ("to", "end"), ("to", "hit"),
           ("to", "come"), ("to", "fit"))  # fmt: skip
_CHANGED = frozenset("take add cut trim rip shave knock lose come comes put".split())
OTHERS = frozenset(
    "degrees degree angle pitch by exposure exposures courses course studs stud rise run slope vinyl pvc oc pickets"
    " balusters many hot cold temperature gable square diagonal marks corner spaced equal boards panels strips nails"
    " screws drops climbs cable rope wire".split()
)
_SHORT_OF = frozenset("add off short longer packing pack".split())  # asked after how much: a peg 6 ft off is none
_OTHER_ASKS = frozenset("angle square out cost area drop fall".split())


def apart(reader: Parts) -> Reading | None:
    """The difference of the two lengths of a line that asks for it."""
    words = reader.words
    said = set(words)
    if said.isdisjoint(_TELLS) or not said.isdisjoint(OTHERS):
        return None
    two = two_lengths(reader)
    if two is None or not any(told_as_length(found.part) for _, found in two):
        return None
    (start, first), (second_at, second) = two
    if any(_counts(reader, each) for each in (first, second)):
        return None
    between, before, after = words[first.end : second_at], words[:start], words[second.end :]
    if not (
        _from_to(before, between, after)
        or ("between" in before[-3:] and between == ["and"] and not _BETWEEN.isdisjoint(before))
        or (between == ["than"] and not _MORE.isdisjoint(before) and "how" in before)
        or _to_get(before, between)
        or _asked_after(after)
    ):
        return None
    if plain_size(first.part) == plain_size(second.part):
        return None  # one of them, said twice
    large, small = (first, second) if plain_size(first.part) > plain_size(second.part) else (second, first)
    return Reading("sum", 0, len(reader.tokens), Sum(MINUS, large.part, small.part))  # type: ignore[arg-type]


def _counts(reader: Parts, found: Found) -> bool:
    """Whether a number counts things: four | shelves in a 60 inch bookcase, how far apart."""
    whole = isinstance(found.part, Number) and found.part.value.denominator == 1
    return whole and thing(reader, found.end) and reader.words[found.end].endswith("s")


def _from_to(before: list[str], between: list[str], after: list[str]) -> bool:
    """From A up to B, how far is that."""
    led = "from" in before[-2:] and between and between[-1] == "to" and len(between) <= 4
    asked = {"far", "long", "between", "distance", "much"} & {*before, *after}
    return bool(led and asked)


def _to_get(before: list[str], between: list[str]) -> bool:
    """What do I take off A to get B, what do I add to A to make B."""
    told = any(tuple(between[at : at + 2]) in _TO_GET for at in range(len(between)))
    asked = not {"what", "whats", "what's", "how"}.isdisjoint(before)
    return told and asked and not _CHANGED.isdisjoint(before) and before[-1] in ("off", "to", "from", "a", "the", "my", "of")


def _asked_after(after: list[str]) -> bool:
    """… how far apart are we; … difference?; … what's the odds between them; … how much do I have to add on."""
    said = {*after}
    if not said.isdisjoint(("difference", "odds")) or ("far", "apart") in pairwise(after):
        return True
    much = next((at for at, pair in enumerate(pairwise(after)) if pair == ("how", "much")), len(after))
    return not _SHORT_OF.isdisjoint(after[much:]) and said.isdisjoint(_OTHER_ASKS)
