"""The cut list's search: against OR-Tools CP-SAT, against bounds, and on lists that are hard."""

from __future__ import annotations

import random
from collections import Counter
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from ortools.sat.python import cp_model

from solvers.cut_plan import order_of, planned
from solvers.cutting import Cutting, Plan, best_plan, first_plan, fits, in_whole_numbers, simple_bound
from solvers.quantities import Length, Money
from solvers.slots import Piece, Stock
from solvers.working import Working


def cutting(pieces: dict[int, int], rooms: list[int], kerf: int, costs: list[int] | None = None) -> Cutting:
    sizes = sorted(pieces, reverse=True)
    return Cutting(
        tuple(size + kerf for size in sizes),
        tuple(pieces[size] for size in sizes),
        tuple(room + kerf for room in rooms),
        tuple(costs or [1] * len(rooms)),
    )


def check_plan(made: Cutting, plan: Plan) -> None:
    """Every piece once, no stick over-filled, cost added up, never under the bound."""
    assert all(fits(made, stock, pattern) for stock, pattern in plan.sticks)
    for kind, wanted in enumerate(made.wanted):
        assert sum(pattern[kind] * times for (_, pattern), times in plan.sticks.items()) == wanted
    assert plan.cost == sum(made.costs[stock] * times for (stock, _), times in plan.sticks.items())
    assert plan.least <= plan.cost


def by_cp_sat(made: Cutting) -> int:
    """The least cost, by another program: sticks as bins, pieces put in them."""
    sizes = [size for size, n in zip(made.sizes, made.wanted, strict=True) for _ in range(n)]
    model = cp_model.CpModel()
    bins = [(stock, number) for stock in range(len(made.rooms)) for number in range(len(sizes))]
    used = {bin_: model.new_bool_var(f"u{bin_}") for bin_ in bins}
    put = {(piece, bin_): model.new_bool_var(f"p{piece}{bin_}") for piece in range(len(sizes)) for bin_ in bins}
    for piece in range(len(sizes)):
        model.add_exactly_one(put[piece, bin_] for bin_ in bins)
    for bin_ in bins:
        model.add(
            sum(sizes[piece] * put[piece, bin_] for piece in range(len(sizes))) <= made.rooms[bin_[0]] * used[bin_]
        )
        if bin_[1]:
            model.add(used[bin_] <= used[bin_[0], bin_[1] - 1])
    model.minimize(sum(made.costs[bin_[0]] * used[bin_] for bin_ in bins))
    solver = cp_model.CpSolver()
    solver.parameters.num_workers = 2
    assert solver.solve(model) == cp_model.OPTIMAL
    return round(solver.objective_value)


@pytest.mark.parametrize("seed", range(8))
def test_the_least_is_what_cp_sat_finds(seed: int) -> None:
    """LIB OR-Tools: two stock lengths and prices, up to nine pieces, kerf and all."""
    rng = random.Random(seed)
    pieces: Counter[int] = Counter(rng.randrange(10, 90) for _ in range(rng.randrange(4, 10)))
    made = cutting(pieces, [96, 144], rng.choice([0, 1, 2]), [rng.randrange(5, 12), rng.randrange(8, 18)])
    plan = best_plan(made, 20)
    check_plan(made, plan)
    assert plan.proven
    assert plan.cost == by_cp_sat(made)


sizes_and_counts = st.dictionaries(st.integers(3, 100), st.integers(1, 6), min_size=1, max_size=8)


@settings(max_examples=60, deadline=None)
@given(sizes_and_counts, st.integers(0, 3), st.integers(0, 60))
def test_a_plan_cuts_every_piece_once_and_keeps_over_its_bound(pieces: dict[int, int], kerf: int, longer: int) -> None:
    made = cutting(pieces, [100, 100 + longer], kerf, [7, 7 + longer // 12])
    plan = best_plan(made, 5)
    check_plan(made, plan)
    assert plan.least >= simple_bound(made)
    assert plan.cost <= first_plan(made).cost


@settings(max_examples=40, deadline=None)
@given(sizes_and_counts, st.integers(0, 3))
def test_dearer_stock_never_helps_and_more_pieces_never_need_fewer(pieces: dict[int, int], kerf: int) -> None:
    alone = best_plan(cutting(pieces, [120], kerf), 5)
    with_dearer = best_plan(cutting(pieces, [120, 119], kerf, [10, 11]), 5)
    assert alone.proven
    assert with_dearer.cost == 10 * alone.count
    more = {size: n + 1 for size, n in pieces.items()}
    assert best_plan(cutting(more, [120], kerf), 5).count >= alone.count


def test_two_sticks_filled_to_the_end() -> None:
    """By hand: 60 + 40 and 50 + 30 + 20 fill two sticks of 100 exactly."""
    made = cutting({60: 1, 50: 1, 40: 1, 30: 1, 20: 1}, [100], 0)
    plan = best_plan(made, 5)
    assert plan.proven
    assert plan.count == 2


def test_no_kerf_after_a_piece_that_ends_flush() -> None:
    work = Working()
    order = order_of(
        work, [Piece(2, Length(Fraction(575, 16), "in"))], [Stock(Length(Fraction(72), "in"))], Fraction(1, 8)
    )
    plan, sticks = planned(order)
    assert plan.count == 1
    assert sticks[0].left == 0
    assert sticks[0].cuts == 1


def test_a_stick_with_less_left_than_a_kerf_still_takes_its_last_cut() -> None:
    """Two of 35 15/16 and a kerf of 1/8 is 72 exactly; from 72 1/16 a sliver of 1/16 goes in the last cut."""
    order = order_of(
        Working(),
        [Piece(2, Length(Fraction(575, 16), "in"))],
        [Stock(Length(Fraction(1153, 16), "in"))],
        Fraction(1, 8),
    )
    _, sticks = planned(order)
    assert (sticks[0].cuts, sticks[0].left) == (2, 0)


def test_several_lengths_without_prices_take_the_fewest_then_the_shortest() -> None:
    stocks = [Stock(Length(Fraction(feet), "ft")) for feet in (8, 12, 16)]
    order = order_of(
        Working(), [Piece(3, Length(Fraction(46), "in")), Piece(1, Length(Fraction(90), "in"))], stocks, Fraction(1, 8)
    )
    plan, sticks = planned(order)
    assert plan.count == 2
    assert sorted(order.stocks[stick.stock] for stick in sticks for _ in range(stick.times)) == [96, 144]


def test_sixty_pieces_from_three_lengths_is_proven_or_bounded() -> None:
    rng = random.Random(7)
    pieces = [Piece(1, Length(Fraction(rng.randrange(8 * 16, 140 * 16), 16), "in")) for _ in range(60)]
    prices = [
        Stock(Length(Fraction(feet), "ft"), Money(Fraction(price), "money"))
        for feet, price in ((8, 9), (12, 15), (16, 19))
    ]
    order = order_of(Working(), pieces, prices, Fraction(1, 8))
    plan, sticks = planned(order)
    assert sum(len(stick.pieces) * stick.times for stick in sticks) == 60
    assert plan.least <= plan.cost <= plan.least * 1.05


def test_thirds_and_millimetres_are_exact() -> None:
    whole, bottom = in_whole_numbers([Fraction(1, 3), Fraction(10, 254), Fraction(1, 8)])
    assert [Fraction(n, bottom) for n in whole] == [Fraction(1, 3), Fraction(10, 254), Fraction(1, 8)]


def test_a_plan_is_found_once_and_each_asker_has_one_of_their_own() -> None:
    made = cutting({50: 4, 45: 4}, [144], 0)
    mine = best_plan(made, 5)
    mine.sticks.clear()
    mine.log.append("mine")
    other = best_plan(made, 5)
    assert other.count == 3 and "mine" not in other.log
