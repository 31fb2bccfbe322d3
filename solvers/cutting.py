"""Cutting pieces from stock of one or several lengths: the least sticks or the least money, with a proof or a bound.

All lengths are whole numbers of one unit (a common denominator of everything given), so that nothing is decided by a
rounding. A piece takes its length and one kerf; a stick has its length and one kerf of room, because the last piece
needs no cut when it ends flush. A simple plan and a simple bound come first; the exact search (`cutting_exact`) is
brought in only when they do not meet.
"""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field, replace
from fractions import Fraction
from functools import lru_cache
from math import ceil, gcd, lcm
from time import monotonic

Pattern = tuple[int, ...]  # how many of each kind of piece come from one stick


@dataclass(frozen=True, slots=True)
class Cutting:
    """`sizes` of pieces, longest first, and how many; `rooms` and `costs` of stock. A kerf is put on both."""

    sizes: tuple[int, ...]
    wanted: tuple[int, ...]
    rooms: tuple[int, ...]
    costs: tuple[int, ...]


@dataclass(slots=True)
class Plan:
    """Sticks to cut, as (stock number, pattern) with how many alike; `least` is what no plan can cost less than."""

    sticks: Counter[tuple[int, Pattern]]
    cost: int
    least: int
    log: list[str] = field(default_factory=list)

    @property
    def proven(self) -> bool:
        return self.least >= self.cost

    @property
    def count(self) -> int:
        return self.sticks.total()


def in_whole_numbers(lengths: list[Fraction]) -> tuple[list[int], int]:
    """The lengths over their common denominator, and that denominator."""
    bottom = lcm(*(length.denominator for length in lengths))
    return [int(length * bottom) for length in lengths], bottom


def best_plan(cutting: Cutting, seconds: float) -> Plan:
    """The cheapest plan that can be found in the time, and the most that is proven about cheaper ones."""
    plan = _best_plan(cutting, seconds)
    return replace(plan, sticks=Counter(plan.sticks), log=[*plan.log])


@lru_cache(maxsize=8)
def _best_plan(cutting: Cutting, seconds: float) -> Plan:
    """Kept for a while: a line that can be read in several ways cuts the same pieces in each, and is asked about after."""
    deadline = monotonic() + seconds
    plan = first_plan(cutting)
    plan.least = max(plan.least, simple_bound(cutting))
    if not plan.proven:
        from solvers.cutting_exact import search  # HiGHS and numpy are slow to load, and most lists do without

        search(cutting, plan, deadline)
    return plan


def fits(cutting: Cutting, stock: int, pattern: Pattern) -> bool:
    return sum(size * n for size, n in zip(cutting.sizes, pattern, strict=True)) <= cutting.rooms[stock]


def cheapest_room(cutting: Cutting, pattern: Pattern) -> int:
    """The cheapest stock that holds a pattern, the shortest of those."""
    able = [stock for stock in range(len(cutting.rooms)) if fits(cutting, stock, pattern)]
    return min(able, key=lambda stock: (cutting.costs[stock], cutting.rooms[stock]))


def priced(cutting: Cutting, patterns: Counter[Pattern]) -> Plan:
    """The plan that cuts these patterns, each from the cheapest stock that holds it."""
    sticks: Counter[tuple[int, Pattern]] = Counter()
    for pattern, times in patterns.items():
        sticks[cheapest_room(cutting, pattern), pattern] += times
    return Plan(sticks, sum(cutting.costs[stock] * times for (stock, _), times in sticks.items()), 0)


def first_plan(cutting: Cutting) -> Plan:
    """The best of first-fit-decreasing and fill-the-stick-fullest, for each stock and for the cheapest mix."""
    plans = []
    for room in sorted(set(cutting.rooms)):
        if room < max(cutting.sizes):
            continue
        plans.append(priced(cutting, _first_fit(cutting, room)))
        plans.append(priced(cutting, _fullest(cutting, room)))
    return min(plans, key=lambda plan: (plan.cost, plan.count))


def _first_fit(cutting: Cutting, room: int) -> Counter[Pattern]:
    """Longest piece first, into the first stick with room for it."""
    left: list[int] = []
    sticks: list[list[int]] = []
    for kind, (size, wanted) in enumerate(zip(cutting.sizes, cutting.wanted, strict=True)):
        place = 0  # a stick with no room for one piece of a size has none for the next
        for _ in range(wanted):
            while place < len(left) and left[place] < size:
                place += 1
            if place == len(left):
                left.append(room)
                sticks.append([0] * len(cutting.sizes))
            left[place] -= size
            sticks[place][kind] += 1
    return Counter(tuple(stick) for stick in sticks)


def _fullest(cutting: Cutting, room: int) -> Counter[Pattern]:
    """Stick after stick, each begun with the longest piece left and filled longest first."""
    left = list(cutting.wanted)
    sticks: Counter[Pattern] = Counter()
    while any(left):
        space, stick = room, [0] * len(left)
        for kind, size in enumerate(cutting.sizes):
            n = min(left[kind], space // size)
            stick[kind] = n
            space -= n * size
        times = min(left[kind] // n for kind, n in enumerate(stick) if n)
        sticks[tuple(stick)] += times
        left = [have - n * times for have, n in zip(left, stick, strict=True)]
    return sticks


def simple_bound(cutting: Cutting) -> int:
    """What no plan can cost less than: by length, by the pieces over half a stick, and the dearer of the two."""
    total = sum(size * n for size, n in zip(cutting.sizes, cutting.wanted, strict=True))
    by_length = min(Fraction(cost, room) for cost, room in zip(cutting.costs, cutting.rooms, strict=True)) * total
    longest = max(cutting.rooms)
    halves = sum(n for size, n in zip(cutting.sizes, cutting.wanted, strict=True) if 2 * size > longest)
    return step_up(cutting, max(by_length, Fraction(halves * min(cutting.costs))))


def step_up(cutting: Cutting, bound: Fraction) -> int:
    """The least cost at or over a bound that whole sticks can come to."""
    step = gcd(*cutting.costs)
    return ceil(bound / step) * step


def refined(cutting: Cutting, count: int) -> Cutting:
    """The same cutting where, among plans of the fewest sticks, the least length is wanted: `count` is known to do."""
    lengths = [room - min(cutting.rooms) + 1 for room in cutting.rooms]
    much = max(lengths) * count + 1
    return Cutting(cutting.sizes, cutting.wanted, cutting.rooms, tuple(much + length for length in lengths))
