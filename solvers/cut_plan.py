"""A cut list on the page: the pieces and stock as given, the plan found for them, stick by stick, with what is left."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from fractions import Fraction
from time import monotonic

from solvers.cutting import Cutting, Plan, best_plan, in_whole_numbers, refined
from solvers.slots import Piece, Stock
from solvers.working import Working

SECONDS = 4.0  # for the exact search; with start and page a builder waits five at most
MOST_PIECES, MOST_KINDS = 2000, 300


@dataclass(frozen=True, slots=True)
class Order:
    """What is asked, in exact inches: kinds of piece longest first, and lengths of stock shortest first with prices."""

    sizes: tuple[Fraction, ...]
    wanted: tuple[int, ...]
    stocks: tuple[Fraction, ...]
    prices: tuple[Fraction, ...] | None
    kerf: Fraction


@dataclass(frozen=True, slots=True)
class Stick:
    """`times` sticks cut alike: stock number, pieces longest first, and what is left of each after the last cut."""

    stock: int
    pieces: tuple[Fraction, ...]
    times: int
    cuts: int
    left: Fraction


def order_of(work: Working, pieces: Sequence[Piece], stocks: Sequence[Stock], kerf: Fraction) -> Order:
    """The order, checked. Refuses pieces that can't be, and names a piece that is longer than every stock."""
    kinds: dict[Fraction, int] = {}
    prices = {stock.length.to("in").value: stock.price.value for stock in stocks if stock.price is not None}
    lengths = sorted({stock.length.to("in").value for stock in stocks})
    work.refuse_when(lengths[0] <= 0, "stock of no length can't be cut: say how long it is")
    work.refuse_when(bool(prices) and len(prices) < len(lengths), "say a price for every length of stock, or for none")
    work.refuse_when(
        any(price <= 0 for price in prices.values()), "a price of nothing or less can't be right: say the prices again"
    )
    for piece in pieces:
        size = piece.length.to("in").value
        text = work.text(work.term("", size, "in"))
        said = f"{piece.length.text} ({text})" if piece.length.text else text
        work.refuse_when(size <= 0, f"a piece can't be {said} long: say its length again")
        work.refuse_when(piece.count < 1, f"I can't cut {piece.count} pieces of {said}: say how many")
        longest = work.text(work.term("", lengths[-1], "in"))
        work.refuse_when(
            size > lengths[-1],
            f"the piece of {said} is longer than the longest stock, {longest}: it needs longer stock or a joint",
        )
        kinds[size] = kinds.get(size, 0) + piece.count
    work.refuse_when(
        sum(kinds.values()) > MOST_PIECES, f"{sum(kinds.values())} pieces are more than I plan at once: {MOST_PIECES}"
    )
    work.refuse_when(
        len(kinds) > MOST_KINDS, f"{len(kinds)} different lengths are more than I plan at once: {MOST_KINDS}"
    )
    sizes = tuple(sorted(kinds, reverse=True))
    money = tuple(prices[length] for length in lengths) if prices else None
    return Order(sizes, tuple(kinds[size] for size in sizes), tuple(lengths), money, kerf)


def planned(order: Order, seconds: float = SECONDS) -> tuple[Plan, list[Stick]]:
    """The plan and its sticks, the longest stock first. Without prices: fewest sticks, then the least length."""
    whole, _ = in_whole_numbers([order.kerf, *order.sizes, *order.stocks])
    kerf, sizes, rooms = whole[0], whole[1 : 1 + len(order.sizes)], whole[1 + len(order.sizes) :]
    costs = [1] * len(rooms) if order.prices is None else in_whole_numbers(list(order.prices))[0]
    cutting = Cutting(tuple(s + kerf for s in sizes), order.wanted, tuple(r + kerf for r in rooms), tuple(costs))
    start = monotonic()
    plan = best_plan(cutting, seconds)
    if order.prices is None and len(rooms) > 1:
        shorter = best_plan(refined(cutting, plan.count), seconds - (monotonic() - start))
        if shorter.count <= plan.count:
            plan.sticks, plan.cost = shorter.sticks, shorter.count
    return plan, [_stick(order, stock, pattern, times) for (stock, pattern), times in _ranked(plan)]


def _ranked(plan: Plan) -> list[tuple[tuple[int, tuple[int, ...]], int]]:
    return sorted(plan.sticks.items(), key=lambda item: (-item[0][0], tuple(-n for n in item[0][1])))


def _stick(order: Order, stock: int, pattern: tuple[int, ...], times: int) -> Stick:
    pieces = tuple(size for size, n in zip(order.sizes, pattern, strict=True) for _ in range(n))
    rest = order.stocks[stock] - sum(pieces) - order.kerf * (len(pieces) - 1)
    flush = rest == 0
    return Stick(
        stock, pieces, times, len(pieces) - flush, Fraction(0) if flush else max(rest - order.kerf, Fraction(0))
    )
