"""The cut list: the fewest sticks, or the least money, for the pieces wanted, and what to cut from each."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.common import DUST_CAUTION, SAW_CAUTION, SMALL_PIECE_CAUTION
from solvers.cut_plan import Order, Stick, order_of, planned
from solvers.cutting import Plan
from solvers.errors import NeedMore
from solvers.exact import Term, ceil
from solvers.quantities import Length, Money
from solvers.registry import topic
from solvers.slots import Piece, Slot, Stock
from solvers.working import Working

Pieces = Annotated[tuple[Piece, ...], Slot("What pieces: how many, and how long?", name="pieces")]
Stocks = Annotated[tuple[Stock, ...], Slot("What lengths is the stock sold in?", name="stock lengths")]
StockLength = Annotated[
    Length,
    Slot(
        "How long is your stock?",
        bare=("ft", "in"),
        plain=24,
        above=0,
        most=1200,
        kept="stock length",
        name="stock length",
        usual=(36, 300),
    ),
]
Kerf = Annotated[
    Length,
    Slot("How wide is the saw's kerf?", bare=("in",), least=0, most=1, kept="kerf", name="kerf", usual=(0, Fraction(3, 8))),
]
Useful = Annotated[
    Length,
    Slot(
        "How long must an offcut be to keep?",
        bare=("in",),
        least=0,
        kept="useful offcut",
        name="shortest offcut kept",
        usual=(0, 60),
    ),
]
Price = Annotated[Money, Slot("What does a stick cost?", above=0, name="price of a stick", usual=(Fraction(1, 2), 500))]
EIGHTH, FOOT = Length(Fraction(1, 8), "in"), Length(Fraction(12), "in")
MOST_STICKS_SHOWN, MOST_MARKS = 24, 200


@topic("cut list", "takeoff")
def cut_list(
    work: Working,
    pieces: Pieces,
    stocks: Stocks | None = None,
    stock_length: StockLength | None = None,
    price: Price | None = None,
    kerf: Kerf = EIGHTH,
    useful: Useful = FOOT,
) -> None:
    """The fewest sticks the pieces can be cut from, proven, and what to cut from each; by money where prices are said.

    Several stock lengths without prices: fewest sticks first, then the least length. No kerf after a piece that ends
    flush. Refuses a piece longer than every stock, by name. When time runs out it says by how much it may be off.
    Source: cutting stock by column generation (Gilmore and Gomory 1961), whole numbers by HiGHS.
    """
    if not stocks:
        if stock_length is None:
            raise NeedMore("stock_length", "How long is your stock?")
        stocks = (Stock(Length(Fraction(stock_length.value), "in")),)
    order = order_of(work, pieces, stocks, Fraction(kerf.value))
    plan, sticks = planned(order)
    least = _lower_bound(work, order, kerf)
    used = [_stick_step(work, order, number, stick, kerf) for number, stick in enumerate(sticks, 1)]
    answer = _count(work, order, sticks)
    _prove(work, order, plan, answer, least)
    _check_sticks(work, order, sticks, used)
    _offcuts(work, order, sticks, Fraction(useful.value))
    _money(work, order, sticks, price)
    _list_sticks(work, order, sticks, Fraction(useful.value))
    work.caution(
        "Cut in this order, longest first, each measured from the fresh end.",
        SAW_CAUTION,
        SMALL_PIECE_CAUTION,
        DUST_CAUTION,
    )
    work.source("cutting stock by column generation, Gilmore and Gomory 1961; whole numbers by HiGHS")
    _draw(work, order, sticks, Fraction(useful.value))


def _inches(work: Working, value: Fraction) -> str:
    return work.text(value, "in").split(" (")[0]


def _stock_name(work: Working, order: Order, stock: int) -> str:
    length = order.stocks[stock]
    return work.text(work.term("", length / 12, "ft")) if length % 12 == 0 else _inches(work, length)


def _letters(number: int) -> str:
    """A to Z, then AA, AB and on."""
    return (_letters(number // 26 - 1) if number >= 26 else "") + chr(65 + number % 26)


def _lower_bound(work: Working, order: Order, kerf: Term) -> Term:
    terms = [work.term(_letters(kind), size, "in") for kind, size in enumerate(order.sizes)]
    total = work.step(
        "pieces", sum(n * term for n, term in zip(order.wanted, terms, strict=True)), "all the pieces end to end", "in"
    )
    count = work.term("how many", sum(order.wanted), "count")
    longest = work.term("longest stock", order.stocks[-1], "in")
    why = "each piece takes a kerf, but the last on a stick may end flush: no plan can do with fewer than this"
    return work.step("at least", ceil((total + count * kerf) / (longest + kerf)), why, "count")


def _stick_step(work: Working, order: Order, number: int, stick: Stick, kerf: Term) -> Term:
    used = sum(
        stick.pieces.count(size) * work.term(_letters(kind), size, "in")
        for kind, size in enumerate(order.sizes)
        if size in stick.pieces
    )
    # The blade of a last cut may run past the end: what it takes then is only what is there.
    room = order.stocks[stick.stock] - sum(stick.pieces) - order.kerf * (len(stick.pieces) - 1)
    kerfs = stick.cuts if room == 0 or room >= order.kerf else stick.cuts - 1
    pieces = "+".join(_inches(work, piece).removesuffix(" in") for piece in stick.pieces)
    why = f"{pieces} and {kerfs} kerfs, from {_stock_name(work, order, stick.stock)}"
    return work.step(f"stick {number}", used + kerfs * kerf, why, "in")


def _count(work: Working, order: Order, sticks: list[Stick]) -> Term:
    terms = [work.term(f"like stick {number}", stick.times, "count") for number, stick in enumerate(sticks, 1)]
    one = len(order.stocks) == 1
    name = f"sticks of {_stock_name(work, order, 0)}" if one else "sticks in all"
    answer = work.answer(name, sum(terms[1:], start=terms[0]), "how many are cut alike, added up", "count", "sticks")
    if not one:
        for stock in range(len(order.stocks)):
            many = sum(stick.times for stick in sticks if stick.stock == stock)
            if many:
                work.also(f"sticks of {_stock_name(work, order, stock)}", work.term("sticks", many, "count"))
    return answer


def _prove(work: Working, order: Order, plan: Plan, answer: Term, least: Term) -> None:
    """Say what is proven, and check it."""
    sticks = f"{work.text(answer)} {'stick' if answer.value == 1 else 'sticks'}"
    if order.prices is None:
        total, bound, what = answer, work.term("proven bound", plan.least, "count"), "the fewest"
        work.check("no fewer than length alone needs", answer, ">=", least)
    else:
        cost = sum(order.prices[stock] * times for (stock, _), times in plan.sticks.items())
        total, what = work.term("cost", cost, "money"), "the least money"
        bound = work.term("proven bound", cost * Fraction(plan.least, plan.cost), "money")
    work.check("what is proven that any plan needs", total, ">=", bound)
    if plan.proven:
        work.check("no plan can do with less", bound, ">=", total)
        work.also_word("proof", f"proven {what}")
        work.said = f"{sticks}, proven {what}"
        return
    over = work.text(total - bound, total.unit)
    work.also_word("proof", f"time ran out: any plan needs at least {work.text(bound)}, so this may be {over} over")
    work.said = f"{sticks}, but time ran out before it was proven: it may be {over} over"


def _check_sticks(work: Working, order: Order, sticks: list[Stick], used: list[Term]) -> None:
    for number, (stick, term) in enumerate(zip(sticks, used, strict=True), 1):
        stock = work.term("stock", order.stocks[stick.stock], "in")
        work.check(f"stick {number} fits its stock", term, "<=", stock)
    cut = sum(len(stick.pieces) * stick.times for stick in sticks)
    work.check("pieces cut", work.term("cut", cut, "count"), "=", work.term("wanted", sum(order.wanted), "count"))
    wrong = [
        size
        for size, wanted in zip(order.sizes, order.wanted, strict=True)
        if sum(stick.pieces.count(size) * stick.times for stick in sticks) != wanted
    ]
    work.check("lengths cut too often or too seldom", work.term("wrong", len(wrong), "count"), "=", 0)


def _offcuts(work: Working, order: Order, sticks: list[Stick], useful: Fraction) -> None:
    kept = [stick for stick in sticks if stick.left >= useful and stick.left > 0]
    count = work.term("offcuts", sum(stick.times for stick in kept), "count")
    scrap = sum((stick.left * stick.times for stick in sticks if stick not in kept), Fraction(0))
    work.also("offcuts kept as stock", count)
    if len(kept) == 1:
        work.also("length of each offcut kept", work.term("offcut", kept[0].left, "in"))
    elif kept:
        listed = ", ".join(f"{_inches(work, stick.left)}{f' × {stick.times}' if stick.times > 1 else ''}" for stick in kept)
        work.also_word("lengths of the offcuts kept", listed)
    work.also("left over as scrap", work.term("scrap", scrap, "in"))


def _money(work: Working, order: Order, sticks: list[Stick], price: Term | None) -> None:
    if order.prices is not None:
        cost = sum(order.prices[stick.stock] * stick.times for stick in sticks)
        work.also("cost", work.term("cost", cost, "money"))
    elif price is not None:
        work.also("cost", sum(stick.times for stick in sticks) * price, "money")


def _list_sticks(work: Working, order: Order, sticks: list[Stick], useful: Fraction) -> None:
    """What to cut from each, in words, and the cut lines as marks."""
    at = 1
    for number, stick in enumerate(sticks, 1):
        which = f"stick {at}" if stick.times == 1 else f"sticks {at} to {at + stick.times - 1}"
        at += stick.times
        pieces = ", ".join(_inches(work, piece) for piece in stick.pieces)
        work.also_word(f"{which}, {_stock_name(work, order, stick.stock)}", f"{pieces}; {_left_words(work, stick, useful)}")
        line = Fraction(0)
        for cut, piece in enumerate(stick.pieces[: stick.cuts], 1):
            line += piece
            if len(work.marks) < MOST_MARKS:
                work.mark(f"stick {number} cut {cut}", line)
            line += order.kerf


def _left_words(work: Working, stick: Stick, useful: Fraction) -> str:
    if stick.left == 0:
        return "nothing left"
    return f"{_inches(work, stick.left)} left, {'keep it' if stick.left >= useful else 'scrap'}"


def _draw(work: Working, order: Order, sticks: list[Stick], useful: Fraction) -> None:
    """A strip for each stick, the order to cut from left to right."""
    view = work.view("cut from the left, in this order", stretch=True)
    longest = float(order.stocks[-1])
    high = longest / 12
    for row, stick in enumerate(sticks[:MOST_STICKS_SHOWN]):
        bottom, at = -row * high * 2, 0.0
        stock = float(order.stocks[stick.stock])
        view.polygon([(0, bottom), (stock, bottom), (stock, bottom + high), (0, bottom + high)], fill="none")
        for piece in stick.pieces:
            end = at + float(piece)
            view.polygon([(at, bottom), (end, bottom), (end, bottom + high), (at, bottom + high)])
            view.label(((at + end) / 2, bottom + high / 2), _inches(work, piece).removesuffix(" in"))
            at = end + float(order.kerf)
        if stick.left >= useful and stick.left > 0:
            view.label(((at + stock) / 2, bottom + high / 2), f"keep {_inches(work, stick.left)}")
        if stick.times > 1:
            view.label((longest, bottom + high * 1.4), f"{stick.times} like this", anchor="end")
    if len(sticks) > MOST_STICKS_SHOWN:
        more = len(sticks) - MOST_STICKS_SHOWN
        view.label((0, -MOST_STICKS_SHOWN * high * 2), f"and {more} more, in the list", anchor="start")
