"""The likeliest of the sums a story's lengths can make: a log-linear model of whole sums.

`second_sums.py` gives each length its role by the words around it. Which sum is meant is a matter of all of them together: what
is asked ("how much is left"), what is taken off against what it is taken from, the same done to each of a list. So every sum that
the roles can make is weighed by features of what each length does, of two neighbours, and of the whole; `tests.learning` learns
the weights over all the sums each sentence could have meant.
"""

from __future__ import annotations

from bisect import bisect_right
from collections.abc import Iterable, Iterator, Mapping, Sequence
from functools import cached_property
from itertools import pairwise, product
from math import exp, log2
from typing import Any, NamedTuple

from intents.chart import LIGHT, Chart
from intents.features import Mention
from intents.learned import NOTHING, SCALE
from intents.sum_signs import SIGNS, SIGNS_OF

# What a length does: added or taken off, once or twice ("both ends"); and a number: counts the next, or the last, or divides all.
ADDED, TAKEN, ADDED_TWICE, TAKEN_TWICE, OF_NEXT, OF_LAST, DIVIDES = "+", "-", "++", "--", "xn", "xp", "/"
LENGTHWAYS = frozenset((ADDED, TAKEN, ADDED_TWICE, TAKEN_TWICE))  # what a length does
DOUBLED = frozenset(
    "twice double doubled both two pair each again".split()
)  # a length said alone is taken twice only with one of these
EVERY = 2  # quantities of which each way to make a sum is weighed
BESIDE = 8.0  # how far the pieces of a sum may be less likely than those of the likeliest
NEVER = 1000.0
NEAR = 5  # words to a side of a quantity
SMALL = 1e-9  # inches: next to nothing
MM, CM, M = 1 / 25.4, 1 / 2.54, 1000 / 25.4  # inches in one
METRIC = {"mm": MM, "cm": CM, "m": M}
FEW_METRES, FAR_MORE = 30, 3  # a bare number below this beside metres is metres, unless so many times what is said in metres
STEPS = (0.015, 0.03, 0.06, 0.12, 0.25, 0.4, 0.6, 0.8, 0.92, 0.98, 0.9999, 1.0001, 1.2, 2, 4)  # of one length to another

Way = tuple[tuple[str, ...], bool]  # what each quantity does, and whether all is halved
Seen = tuple[str, list[str]]  # a part of a sum, and what is seen there


class Candidate(NamedTuple):
    """A sum that the quantities can make, and what it comes to in inches."""

    roles: tuple[str, ...]
    half: bool
    inches: float


class Told:
    """What is seen of a sentence and its quantities: words by place, and sizes in inches."""

    def __init__(self, chart: Chart, found: Sequence[Mention], idle: frozenset[int] = frozenset()) -> None:
        self.chart, self.found, self.idle = chart, found, idle  # idle: the tokens of quantities that are none of the sum's
        self.sizes = sizes_of(found)
        self.counts = [float(mention.reading.value.value) for mention in found]  # type: ignore[union-attr]
        self.spans = [(mention.start, mention.end) for mention in found]

    @cached_property
    def content(self) -> list[tuple[int, str]]:
        """The words that say something, with their places."""
        inside = {at for start, end in self.spans for at in range(start, end)} | self.idle
        words = enumerate(self.chart.words)
        return [(i, w) for i, w in words if w[0].isalpha() and w not in LIGHT and i not in inside]

    @cached_property
    def words(self) -> list[str]:
        """All words, what they are signs of, and what is asked or said after the last quantity."""
        every = {sign for _, w in self.content for sign in (w, *SIGNS_OF.get(w, ()))}
        every |= {name for i, _ in self.content for name, _ in self.chart.classes[i]}
        signs, asked = sorted(every & SIGNS), sorted(set(self.asked) & SIGNS)
        pairs = [f"{a}&{b}" for a in signs for b in signs if a < b] + [f"{a}&e:{b}" for a in signs for b in asked]
        return ["", *sorted(every), *self.marked, *pairs]

    @cached_property
    def asked(self) -> list[str]:
        """The words after the last quantity, and what they are signs of."""
        last = self.spans[-1][1]
        return sorted({sign for i, w in self.content if i >= last for sign in (w, *SIGNS_OF.get(w, ()))})

    @cached_property
    def marked(self) -> list[str]:
        """The same, as they are seen beside other things."""
        return [f"e:{word}" for word in self.asked]

    @cached_property
    def between(self) -> list[list[str]]:
        """The words between each two neighbours, and all of them as one."""
        found = []
        for (_, end), (start, _) in pairwise(self.spans):
            words = self.chart.words[end:start]
            joined = " ".join(w for w in words if w not in ("the", "a"))
            found.append([*_with_signs(words), f"={joined[:30]}"])
        return found

    @cached_property
    def beside(self) -> list[list[str]]:
        """For each quantity the words beside it, its place, and its size among the others; the same whatever it does."""
        order, count = sorted(range(len(self.sizes)), key=lambda i: self.sizes[i]), min(len(self.sizes), 4)
        ranks = {n: rank for rank, n in enumerate(order)}
        return [
            ["", *self.near(n), f"at{min(n, 4)}/{count}", f"rank{min(ranks[n], 4)}/{count}"] for n in range(len(self.sizes))
        ]

    @cached_property
    def own(self) -> list[tuple[list[str], list[str], list[str]]]:
        """What is seen of each quantity where it does nothing, where it is a length, and where it counts."""
        found = []
        most = max(self.sizes)
        for size, count, mention, beside in zip(self.sizes, self.counts, self.found, self.beside, strict=True):
            value, bare = mention.reading.value, mention.reading.kind == "number"
            unit, large, kind = getattr(value, "unit", ""), f"b{_step(size, most)}", "num" if bare else "len"
            fraction = ["frac"] if value.value.denominator > 1 else []  # type: ignore[union-attr]
            length = [*beside, f"{kind}{unit}", large, f"v{_doublings(size)}"]
            found.append(([*beside, kind, f"u{unit}", large, *fraction], length, [*beside, f"v{min(int(count), 12)}"]))
        return found

    @cached_property
    def neighbours(self) -> list[tuple[list[str], list[str]]]:
        """What is seen of each two neighbours whatever they do, with the size of one to the other and without."""
        found, last = [], len(self.sizes) - 2
        for n, (words, (one, other)) in enumerate(zip(self.between, pairwise(self.sizes), strict=True)):
            asked = self.marked if n == last else []
            found.append((["", *words, f"r{_step(other, one)}", *asked], ["", *words, *asked]))
        return found

    def near(self, n: int) -> list[str]:
        """The words to both sides of a quantity, up to its neighbours."""
        start, end = self.spans[n]
        words = self.chart.words
        low = self.spans[n - 1][1] if n else 0
        high = self.spans[n + 1][0] if n + 1 < len(self.spans) else len(words)
        left, right = words[max(low, start - NEAR) : start], words[end : min(high, end + NEAR + 1)]
        sides = [f"L:{sign}" for sign in _with_signs(left)] + [f"R:{sign}" for sign in _with_signs(right)]
        first = [f"L1:{left[-1]}", f"L2:{' '.join(left[-2:])}"] if left else ["L1:^"]
        last = [f"R1:{right[0]}", f"R2:{' '.join(right[:2])}"] if right else ["R1:$"]
        return [*sides, *first, *last]


def _with_signs(words: Iterable[str]) -> list[str]:
    return sorted({sign for word in words for sign in (word, *SIGNS_OF.get(word, ()))})


def sizes_of(found: Sequence[Mention]) -> list[float]:
    """The quantities in inches; a bare number is in the unit of the others: 1140 out of 3.9 m is millimetres."""
    units = [getattr(mention.reading.value, "unit", "") for mention in found]
    values = [float(mention.reading.value.value) for mention in found]  # type: ignore[union-attr]
    bare = [value for value, unit in zip(values, units, strict=True) if unit not in METRIC]
    each = 1.0
    if (said := {*units} & METRIC.keys()) and not {*units} & {"in", "ft"}:
        each = CM if said == {"cm"} else M if said == {"m"} and _in_metres(values, units, bare) else MM
    known = {**METRIC, "in": 1.0, "ft": 12.0}
    return [value * known.get(unit, each) for value, unit in zip(values, units, strict=True)]


def _in_metres(values: Sequence[float], units: Sequence[str], bare: Sequence[float]) -> bool:
    """Whether numbers beside metres are metres too: no 15 beside 3.2 m."""
    most = max(value for value, unit in zip(values, units, strict=True) if unit in METRIC)
    return all(value < FEW_METRES and (value < FAR_MORE * most or value % 1) for value in bare)


def worth(sizes: Sequence[float], counts: Sequence[float], roles: Sequence[str], half: bool) -> float | None:
    """What the sum comes to; None where the roles make none."""
    total, times, terms = 0.0, 0.0, 0
    done = half or DIVIDES in roles
    for n, role in enumerate(roles):
        if role == OF_NEXT:
            if times:
                return None
            times, done = counts[n], True
        elif role in LENGTHWAYS:
            value = sizes[n] * len(role) * (times or 1)
            if roles[n + 1 : n + 2] == (OF_LAST,):
                value *= counts[n + 1]
            total += value if role[0] == ADDED else -value
            times, terms, done = 0.0, terms + 1, done or len(role) > 1
        elif role == OF_LAST:
            if n == 0 or roles[n - 1] not in LENGTHWAYS:
                return None
            done = True
    if times or not {ADDED, ADDED_TWICE} & {*roles} or (terms < 2 and not done):
        return None
    for n, role in enumerate(roles):
        total /= counts[n] if role == DIVIDES else 1
    return total / 2 if half else total


def candidates(
    told: Told, names: Sequence[Sequence[str]], likely: Iterable[tuple[str, ...]], halves: tuple[bool, ...] = (False, True)
) -> list[Candidate]:
    """The sums that come to something: of few quantities each there is, of more those of the `likely` roles."""
    found = []
    alone = len(names) == 1 and DOUBLED.isdisjoint(told.chart.words)
    for roles in product(*names) if len(names) <= EVERY else likely:
        if alone and ADDED_TWICE in roles:
            continue
        for half in halves if ADDED_TWICE not in roles else (False,):
            inches = worth(told.sizes, told.counts, roles, half)
            if inches is not None and inches > SMALL:  # nobody tells a length below nothing
                found.append(Candidate(roles, half, inches))
    return found


def shares(told: Told, found: Sequence[Candidate], weights: Mapping[str, Mapping[str, int]]) -> list[float]:
    """How likely each of the sums is meant; adds up to 1."""
    known: dict[tuple[Any, ...], float] = {}  # of the pieces met so far
    scores: list[float] = []
    for candidate in found:
        total = 0.0
        for key in keys_of(candidate):
            one = known.get(key)
            if one is None:
                one = known[key] = _weighed(seen_of(told, key), weights)
            total += one
        scores.append(total)
    least = max(scores, default=0) - BESIDE  # what the whole of one says does not make up for more
    for at, candidate in enumerate(found):
        scores[at] = scores[at] + _weighed(_of_all(told, candidate), weights) if scores[at] >= least else -NEVER
    top = max(scores, default=0)
    powers = [exp(one - top) for one in scores]
    every = sum(powers)
    return [power / every for power in powers]


def _weighed(found: Iterable[Seen], weights: Mapping[str, Mapping[str, int]]) -> float:
    """What speaks for a piece by what is seen of it."""
    total = 0
    for part, seen in found:
        mine = weights.get(part)
        if mine:
            total += sum(filter(None, map(mine.get, seen)))
    return total / SCALE


def parts(told: Told, sum_: Candidate) -> Iterator[tuple[tuple[Any, ...], Iterable[Seen]]]:
    """All that is seen of a sum: of its pieces, and of the whole."""
    yield from ((key, seen_of(told, key)) for key in keys_of(sum_))
    yield tuple(sum_), _of_all(told, sum_)


def keys_of(sum_: Candidate) -> list[tuple[Any, ...]]:
    """The pieces of a sum: what each quantity does, what each two neighbours do, what sort of sum it is. Many share a piece."""
    roles = sum_.roles
    both = [(n, *pair) for n, pair in enumerate(pairwise(roles))]
    return [*enumerate(roles), *both, *[(kind,) for kind in kinds_of(sum_)]]


def seen_of(told: Told, key: tuple[Any, ...]) -> list[Seen]:
    """What is seen of a piece."""
    if len(key) == 1:
        return [(key[0], told.words)]
    return _of_one(told, *key) if len(key) == 2 else _of_two(told, *key)


def kinds_of(sum_: Candidate) -> list[str]:
    """What sort of sum it is: of what is taken off, added up, done at both ends, halved, shared, counted, left out."""
    roles, half = sum_.roles, sum_.half
    firsts = [role[0] for role in roles]
    added, taken = firsts.count(ADDED), firsts.count(TAKEN)
    sort = "M" if taken and added < 2 else "X" if taken else "P" if added > 1 else "1"
    kinds = [sort, "m" if taken else "nm"]
    kinds += ["TP"] * (ADDED_TWICE in roles) + ["TM"] * (TAKEN_TWICE in roles) + (["H", f"H{sort}"] if half else [])
    return kinds + ["D"] * (DIVIDES in roles) + [f"C{sort}"] * (OF_NEXT in roles or OF_LAST in roles) + ["I"] * (NOTHING in roles)


def _of_one(told: Told, n: int, role: str) -> list[Seen]:
    """What one quantity does: by the words beside it, its place, and its size among the others."""
    nothing, length, count = told.own[n]
    return [(role, nothing if role == NOTHING else length if role in LENGTHWAYS else count)]


def _of_two(told: Told, n: int, role: str, after: str) -> list[Seen]:
    """What two neighbours do: by the words between, and, of the last two, by what is asked."""
    part, sizes = f"t{role} {after}", told.sizes
    seen, words = told.neighbours[n]
    return [(part, seen), (part + (">" if sizes[0] > sizes[1] else "<"), words)] if len(sizes) == 2 else [(part, seen)]


def _of_all(told: Told, sum_: Candidate) -> Iterator[Seen]:
    """The shape of the whole, what it comes to, and what is taken off or added against the rest."""
    roles, sizes = sum_.roles, told.sizes
    added = [sizes[n] * len(role) for n, role in enumerate(roles) if role[0] == ADDED]
    taken = [sizes[n] * len(role) for n, role in enumerate(roles) if role[0] == TAKEN]
    marks = "t" * any(role in (ADDED_TWICE, TAKEN_TWICE) for role in roles) + "h" * sum_.half
    marks += "x" * (OF_NEXT in roles or OF_LAST in roles) + "/" * (DIVIDES in roles)
    shape = f"{min(len(added), 3)}p{min(len(taken), 3)}m{marks}"
    yield "s", [shape, f"{min(len(roles), 5)}:{shape}"]
    yield "val", [str(_doublings(sum_.inches))]
    if len(roles) < 4:
        yield "seq", [" ".join(roles) + "h" * sum_.half]
    if NOTHING in roles:
        yield "idle", [f"{min(roles.count(NOTHING), 3)}/{min(len(roles), 4)}"]
    if taken:
        size = _step(sum(taken), sum(added))
        yield "r", [str(size), f"{size}{shape}"]
        yield "o", [f"{_step(max(taken), max(added))}{'t' in marks}"]
        yield "ord", [f"{'-' if roles[0][0] == TAKEN else '+'}{'g' if sizes[0] == max(sizes) else 'l'}"]
    if len(added) > 1:
        yield "p", [str(_step(min(added), max(added)))]
    if len(roles) > 2 and len({*roles} - {NOTHING}) == 1:
        yield "same", [roles[0]]
    if roles.count(TAKEN) > 1:
        yield "list", [TAKEN]


def _step(one: float, other: float) -> int:
    return bisect_right(STEPS, one / other) if other else len(STEPS)


def _doublings(size: float) -> int:
    return round(log2(size)) if size > SMALL else 0
