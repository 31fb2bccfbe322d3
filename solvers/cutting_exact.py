"""The exact search behind the cut list: column generation and integer programming with HiGHS.

The linear program over all ways to cut a stick is solved by adding ways one at a time; its dual prices, rounded to
whole numbers, give a bound by whole-number arithmetic alone (Farley 1990), so that no float decides what is called
proven. The whole-number plan is then sought among those ways, and among all ways that a cheaper plan could use, where
these are few enough to list. Method: Gilmore and Gomory 1961.
"""

from __future__ import annotations

from collections import Counter
from fractions import Fraction
from math import ceil, floor, gcd
from time import monotonic
from typing import Any, NamedTuple

import highspy
import numpy as np

from solvers.cutting import Cutting, Pattern, Plan, priced, step_up

MOST_UNITS = 400_000  # length of the longest stock in units: past it the tables grow too large
MOST_WAYS = 20_000  # ways to cut a stick, past which not all are listed
MOST_ROUNDS = 400
FEW_WAYS = 200  # of a small list
SHARES = (Fraction(1, 8), Fraction(1))  # of the gap left to close: a small one is quick and may shrink it
FLOAT_SLACK = Fraction(1, 10**7)  # what HiGHS may be off in its bound, relative
WHOLE = 1 << 36  # what the dual prices are counted in
TOLERANCE = 1e-9


def search(cutting: Cutting, plan: Plan, deadline: float) -> None:
    """Better `plan` and its bound until they meet or the time is out."""
    knapsack = _Knapsack(cutting)
    if knapsack.units > MOST_UNITS:
        plan.log.append("lengths too fine for the exact search")
        return
    ways, worth = _generate(cutting, plan, knapsack, _part(deadline, 0.4))
    prices = _prices(cutting, knapsack, worth)
    plan.least = max(plan.least, step_up(cutting, prices.bound))
    if not plan.proven:
        _whole(cutting, plan, sorted(ways), _part(deadline, 0.3))
    for share in SHARES:
        # Every way no further over its worth than `slack`: a plan with any other costs more than bound and slack.
        slack = share * (plan.cost - gcd(*cutting.costs) - prices.bound)
        if plan.proven or monotonic() > deadline:
            break
        everything = _Ways(cutting, prices, slack, _part(deadline, 0.4)).all()
        if everything:
            _whole(cutting, plan, everything, _part(deadline, 0.9), prices.bound + slack)


def _part(deadline: float, share: float) -> float:
    """When a share of the time that is left will be over."""
    now = monotonic()
    return now + (deadline - now) * share


class _Knapsack:
    """The most valuable way to fill each stock, pieces worth what they are given; whole numbers or floats."""

    def __init__(self, cutting: Cutting) -> None:
        step = int(np.gcd.reduce(np.array(cutting.sizes, dtype=np.int64)))
        self.rooms = [room // step for room in cutting.rooms]
        self.units = max(self.rooms)
        self.kinds = len(cutting.sizes)
        self.parts: list[tuple[int, int, int]] = []  # kind, how many at once, their size
        for kind, (size, wanted) in enumerate(zip(cutting.sizes, cutting.wanted, strict=True)):
            left, times = min(wanted, self.units // (size // step)), 1
            while left > 0:
                n = min(times, left)
                self.parts.append((kind, n, n * (size // step)))
                left, times = left - n, times * 2

    def best(self, worth: list[int] | list[float]) -> list[tuple[Any, Pattern]]:
        """For each stock the greatest worth and the pattern that has it."""
        whole = isinstance(worth[0], int)
        table = np.zeros(self.units + 1, dtype=np.int64 if whole else np.float64)
        taken: list[Any] = []
        for kind, n, size in self.parts:
            if size > self.units:
                taken.append(None)
                continue
            with_it = table[: self.units + 1 - size] + worth[kind] * n
            better = with_it > table[size:]
            taken.append(better)
            table[size:] = np.where(better, with_it, table[size:])
        return [(table[room].item(), self._way(taken, room)) for room in self.rooms]

    def _way(self, taken: list[Any], room: int) -> Pattern:
        pattern = [0] * self.kinds
        for (kind, n, size), better in zip(reversed(self.parts), reversed(taken), strict=True):
            if better is not None and room >= size and better[room - size]:
                pattern[kind] += n
                room -= size
        return tuple(pattern)


def _generate(
    cutting: Cutting, plan: Plan, knapsack: _Knapsack, deadline: float
) -> tuple[set[tuple[int, Pattern]], list[float]]:
    """The ways to cut that the linear program wants, and the worth of each piece by it."""
    ways = list(plan.sticks) + [_alone(cutting, kind) for kind in range(len(cutting.sizes))]
    ways = list(dict.fromkeys(ways))
    known = set(ways)
    solver = _solver(cutting, ways, whole=False)
    for _ in range(MOST_ROUNDS):
        solver.run()
        worth = [max(float(price), 0.0) for price in solver.getSolution().row_dual]
        found = [
            (stock, pattern)
            for stock, (value, pattern) in enumerate(knapsack.best(worth))
            if value > cutting.costs[stock] * (1 + TOLERANCE) and (stock, pattern) not in known
        ]
        if not found or monotonic() > deadline:
            break
        for way in found:
            known.add(way)
            _add(solver, cutting, way)
    return known, worth


def _alone(cutting: Cutting, kind: int) -> tuple[int, Pattern]:
    """As many of one kind as the stock that is cheapest for it holds: so that every kind can be cut at all."""
    able = [stock for stock, room in enumerate(cutting.rooms) if room >= cutting.sizes[kind]]

    def many(stock: int) -> int:
        return min(cutting.rooms[stock] // cutting.sizes[kind], cutting.wanted[kind])

    stock = min(able, key=lambda stock: Fraction(cutting.costs[stock], many(stock)))
    return stock, tuple(many(stock) if other == kind else 0 for other in range(len(cutting.sizes)))


class _Prices(NamedTuple):
    """Whole-number worths of the pieces; times `shrink`, no way to cut a stick is worth more than it costs."""

    worth: list[int]
    shrink: Fraction
    bound: Fraction


def _prices(cutting: Cutting, knapsack: _Knapsack, worth: list[float]) -> _Prices:
    scale = Fraction(WHOLE, max(cutting.costs))
    prices = [int(Fraction(price) * scale) for price in worth]
    filled = knapsack.best(prices)
    shrink = min(Fraction(cost, value) for cost, (value, _) in zip(cutting.costs, filled, strict=True) if value)
    return _Prices(prices, shrink, shrink * sum(price * n for price, n in zip(prices, cutting.wanted, strict=True)))


def _solver(cutting: Cutting, ways: list[tuple[int, Pattern]], whole: bool) -> Any:
    solver = highspy.Highs()
    solver.silent()
    solver.setOptionValue("threads", 1)
    for n in cutting.wanted:
        solver.addRow(float(n), highspy.kHighsInf, 0, np.array([], dtype=np.int32), np.array([], dtype=np.float64))
    for way in ways:
        _add(solver, cutting, way)
    if whole:
        kinds = np.full(len(ways), highspy.HighsVarType.kInteger, dtype=object)
        for column, kind in enumerate(kinds):
            solver.changeColIntegrality(column, kind)
    return solver


def _add(solver: Any, cutting: Cutting, way: tuple[int, Pattern]) -> None:
    stock, pattern = way
    rows = np.array([kind for kind, n in enumerate(pattern) if n], dtype=np.int32)
    values = np.array([n for n in pattern if n], dtype=np.float64)
    solver.addCol(float(cutting.costs[stock]), 0.0, highspy.kHighsInf, len(rows), rows, values)


def _whole(
    cutting: Cutting, plan: Plan, ways: list[tuple[int, Pattern]], deadline: float, beyond: Fraction | None = None
) -> None:
    """The best whole-number plan among `ways`; plans with any other way are known to cost more than `beyond`."""
    solver = _solver(cutting, ways, whole=True)
    solver.setOptionValue("time_limit", max(deadline - monotonic(), 0.05))
    solver.setOptionValue("mip_rel_gap", 0.0)
    solver.setOptionValue("mip_abs_gap", 0.0)
    solver.setOptionValue("mip_heuristic_run_feasibility_jump", False)  # nine tenths of the time of a list of a dozen pieces
    if len(ways) <= FEW_WAYS:
        solver.setOptionValue("presolve", "off")  # which takes longer than it saves
    solver.run()
    info = solver.getInfo()
    if info.primal_solution_status == highspy.SolutionStatus.kSolutionStatusFeasible:
        times = [round(value) for value in solver.getSolution().col_value]
        _take(cutting, plan, Counter({way: n for way, n in zip(ways, times, strict=True) if n > 0}))
    if beyond is not None and 0 < info.mip_dual_bound < highspy.kHighsInf:
        bound = step_up(cutting, Fraction(info.mip_dual_bound) * (1 - FLOAT_SLACK))
        step = gcd(*cutting.costs)
        plan.least = max(plan.least, min(bound, floor(beyond / step) * step + step, plan.cost))


def _take(cutting: Cutting, plan: Plan, sticks: Counter[tuple[int, Pattern]]) -> None:
    """Use a found plan when it covers everything and costs less; pieces cut twice too often are left out."""
    spare = [
        sum(pattern[kind] * n for (_, pattern), n in sticks.items()) - wanted
        for kind, wanted in enumerate(cutting.wanted)
    ]
    if min(spare) < 0:
        return
    patterns: Counter[Pattern] = Counter()
    for (_, pattern), n in sticks.items():
        for _ in range(n):
            kept = []
            for kind, many in enumerate(pattern):
                drop = min(many, spare[kind])
                spare[kind] -= drop
                kept.append(many - drop)
            if any(kept):
                patterns[tuple(kept)] += 1
    found = priced(cutting, patterns)
    if (found.cost, found.count) < (plan.cost, plan.count):
        plan.sticks, plan.cost = found.sticks, found.cost


class _Ways:
    """All full ways to cut a stick whose cost is at most `slack` over the worth of their pieces."""

    def __init__(self, cutting: Cutting, prices: _Prices, slack: Fraction, deadline: float) -> None:
        step = gcd(*cutting.sizes)
        self.sizes = [size // step for size in cutting.sizes]
        self.rooms = [room // step for room in cutting.rooms]
        self.wanted, self.worth, self.deadline = cutting.wanted, prices.worth, deadline
        self.spare = {stock: ceil((cost - slack) / prices.shrink) for stock, cost in enumerate(cutting.costs)}
        self.found: list[tuple[int, Pattern]] = []
        self.best = self._best_of_the_rest()

    def _best_of_the_rest(self) -> list[Any]:
        """For each kind and room, the most that it and the kinds after it are worth in that room."""
        units = max(self.rooms)
        table = np.zeros(units + 1, dtype=np.int64)
        tables = [table]
        for size, worth, wanted in zip(self.sizes[::-1], self.worth[::-1], self.wanted[::-1], strict=True):
            table = table.copy()
            for _ in range(min(wanted, units // size)):
                better = np.maximum(table[size:], table[: units + 1 - size] + worth)
                if (better == table[size:]).all():
                    break
                table[size:] = better
            tables.append(table)
        return tables[::-1]

    def all(self) -> list[tuple[int, Pattern]] | None:
        """The ways, or None when they are too many or the time is out."""
        if all(self._fill(stock, 0, room, 0, []) for stock, room in enumerate(self.rooms)):
            return self.found
        return None

    def _fill(self, stock: int, kind: int, room: int, worth: int, chosen: list[int]) -> bool:
        if worth + self.best[kind][room] < self.spare[stock]:
            return True
        if kind == len(self.worth):
            if not self._more_fits(room, chosen):
                self.found.append((stock, tuple(chosen)))
            return len(self.found) <= MOST_WAYS and monotonic() < self.deadline
        size = self.sizes[kind]
        for n in range(min(self.wanted[kind], room // size), -1, -1):
            chosen.append(n)
            going = self._fill(stock, kind + 1, room - n * size, worth + n * self.worth[kind], chosen)
            chosen.pop()
            if not going:
                return False
        return True

    def _more_fits(self, room: int, chosen: list[int]) -> bool:
        """Whether some piece still fits: then the fuller way is listed instead."""
        return any(size <= room and n < most for size, n, most in zip(self.sizes, chosen, self.wanted, strict=True))
