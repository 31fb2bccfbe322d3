"""What a load weighs and what it costs: so many, or so much area or length, at so much each."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated, Any

from solvers.coverage import CoverArea
from solvers.errors import NeedMore
from solvers.exact import Term, ceil, floor
from solvers.quantities import Count, Length, Money, Percent, Weight
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.wall_faces import Face, FaceLong, FaceOpenings, FaceTall, GablePitch, GableTall
from solvers.wall_parts import OpenedArea
from solvers.working import Working

LIFT_CAUTION = "Lift with a second person or make two trips: common practice is no more than about 50 lb (23 kg) each."
METRES_IN_FOOT = Fraction(3048, 10_000)
HowMany = Annotated[
    Count,
    Slot(
        "How many are there?", least=1, most=10_000_000, name="count", usual=(1, 20_000),
        instead=("area", "length", "wall_length", "wall_height", "pitch", "gable_height", "openings", "opened")),
]  # fmt: skip
Run = Annotated[
    Length,
    Slot("What is the length?", unit="ft", bare=("ft",), above=0, most=1_000_000, name="length", cued=True, usual=(1, 20_000)),
]
EachLong = Annotated[
    Length,
    Slot(
        "How long is each one?",
        unit="ft",
        bare=("ft",),
        above=0,
        most=100,
        name="length of each",
        cued=True,
        quiet=True,
        usual=(3, 40),
    ),
]


Bundles = Annotated[
    Count, Slot("How many bundles to a square?", least=1, most=20, name="bundles to a square", cued=True, usual=(1, 6))
]


class Per(Choice):
    """What a weight or a price is for."""

    EACH = "each"
    FT2 = "a square foot"
    SQUARE = "a square of 100 ft²"
    M2 = "a square metre"
    FT = "a foot"
    M = "a metre"
    HUNDRED = "a hundred"
    THOUSAND = "a thousand"


PER_AREA = (Per.FT2, Per.SQUARE, Per.M2)
PER_LENGTH = (Per.FT, Per.M)
LOTS = {Per.HUNDRED: 100, Per.THOUSAND: 1000}
PerWhat = Annotated[Per, Slot("Is that each, a foot, a square foot, a square or a square metre?", name="per")]


@topic("weight", "takeoff")
def weight(
    work: Working,
    weight: Annotated[Weight, Slot("What does each weigh, or each square foot?", above=0, most=100_000, name="weight")],
    count: HowMany | None = None,
    area: CoverArea | None = None,
    length: Run | None = None,
    per: PerWhat | None = None,
    wall_length: FaceLong | None = None,
    wall_height: FaceTall | None = None,
    pitch: GablePitch | None = None,
    gable_height: GableTall | None = None,
    openings: FaceOpenings | None = None,
    opened: OpenedArea | None = None,
    piece: EachLong | None = None,
    bundles: Bundles | None = None,
) -> None:
    """What a load weighs, lb (kg in, kg out): pieces at so much each, or an area, wall or gable at so much a square foot.

    Source: arithmetic. Refuses a weight of nothing or less.
    """
    face = Face(area, wall_length, wall_height, pitch, gable_height, openings, opened)
    length = _all_pieces(work, count, piece, length, per)
    count = _all_bundles(work, face, bundles, per) or count
    many = _amount(work, count, face, length, per, "area", "How many are there, or how much area?")
    total = work.answer("weight", many * weight, "all together", weight.unit)
    pound = Fraction(45359237, 10**8)
    other, factor = ("kg", pound) if weight.unit == "lb" else ("lb", 1 / pound)
    turned = work.step(f"in {other}", total * factor, "1 lb is exactly 0.45359237 kg", other)
    if not work.metric:
        work.also(f"in {other}", turned)
    _check_bounds(work, many, weight, total)
    work.caution(LIFT_CAUTION)


@topic("cost", "takeoff")
def cost(
    work: Working,
    price: Annotated[
        Money, Slot("What is the price of each, or of a foot or square foot?", above=0, most=10_000_000, name="price")
    ],
    count: HowMany | None = None,
    area: CoverArea | None = None,
    length: Run | None = None,
    per: PerWhat | None = None,
    wall_length: FaceLong | None = None,
    wall_height: FaceTall | None = None,
    pitch: GablePitch | None = None,
    gable_height: GableTall | None = None,
    openings: FaceOpenings | None = None,
    opened: OpenedArea | None = None,
    piece: EachLong | None = None,
    bundles: Bundles | None = None,
    tax: Annotated[Percent, Slot("How much tax, in percent?", least=0, most=100, cued=True, quiet=True, usual=(0, 30))]
    | None = None,
    lost: Annotated[
        Percent,
        Slot("How much waste, in percent?", above=0, most=100, cued=True, quiet=True, name="waste", usual=(1, 35)),
    ]
    | None = None,
    off: Annotated[
        Percent,
        Slot("How much is taken off, in percent?", above=0, below=100, cued=True, quiet=True, name="taken off", usual=(1, 50)),
    ]
    | None = None,
) -> None:
    """What so many, so much area (or a wall or gable), or so much length costs at a price, with waste, what is taken off and tax
    where told.

    So many whole things with waste are whole again. Source: arithmetic. Refuses a price of nothing or less.
    """
    face = Face(area, wall_length, wall_height, pitch, gable_height, openings, opened)
    length = _all_pieces(work, count, piece, length, per)
    count = _all_bundles(work, face, bundles, per) or count
    many = _amount(work, count, face, length, per, "count", "How many, or how much area or length?")
    if lost is not None:
        more = many * (1 + lost / 100)
        many = work.step("with waste", ceil(more) if many is count else more, "what is lost in cutting, bought too", many.unit)
    total = many * price
    if tax is None and off is None:
        total = work.answer("cost", total, "all together", "money")
        work.caution("No tax, delivery or discount in it.")
    else:
        total = _taken_off_and_taxed(work, total, tax, off)
    work.also("each", price)
    _check_bounds(work, many, price, total)
    cents = work.step("in cents", many * (price * 100), "the same in the smallest coin, for the check", "none")
    work.check("counted in cents", cents / 100, "=", total)


def _taken_off_and_taxed(work: Working, total: Any, tax: Term | None, off: Term | None) -> Term:
    """The answer, what is taken off first and then taxed; what it was before either."""
    before = now = work.step("before tax" if off is None else "before what is taken off", total, "all together", "money")
    if off is not None:
        less = now - now * off / 100
        why = "with that taken off"
        now = work.answer("cost", less, why, "money") if tax is None else work.step("before tax", less, why, "money")
        work.also("taken off", before - now, "money")
        work.check("put on again", now / (1 - off / 100), "=", before)
    if tax is not None:
        with_tax = work.answer("cost", now + now * tax / 100, "with the tax on it", "money")
        work.also("before tax", now)
        work.also("tax", with_tax - now, "money")
        work.check("without its tax", with_tax / (1 + tax / 100), "=", now)
    work.caution("No delivery or discount in it." if off is None else "No delivery in it.")
    return before


def _check_bounds(work: Working, many: Term, each: Term, total: Term) -> None:
    """With each rounded down it must be less, and rounded up more."""
    work.check("with each rounded down", total, ">=", many * floor(each))
    work.check("with each rounded up", many * ceil(each), ">=", total)


def _all_pieces(work: Working, count: Term | None, piece: Term | None, length: Term | None, per: Per | None) -> Term | None:
    """The length in all: of so many pieces, where a foot of them is priced or weighed; else as it was said."""
    if count is None or length is not None or per not in PER_LENGTH:
        return length
    if piece is None:
        raise NeedMore("piece")
    return work.step("length in all", count * piece, "so many pieces of that length", "ft")


def _all_bundles(work: Working, face: Face, bundles: Term | None, per: Per | None) -> Term | None:
    """The bundles that an area takes, whole ones, where each of them is priced or weighed."""
    area = face.measured(work) if bundles is not None and per in (None, Per.EACH) else None
    if area is None:
        return None
    squares = work.step("squares", area / 100, "a square is 100 ft²", "square")
    return work.step("bundles", ceil(squares * bundles), "so many to a square, whole ones", "count")


def _amount(
    work: Working,
    count: Term | None,
    face: Face,
    length: Term | None,
    per: Per | None,
    missing: str,
    question: str,
) -> Term:
    """How many times the weight or price counts, in what it is for."""
    if count is not None and per not in (*PER_AREA, *PER_LENGTH):
        return _lots(work, count, per)
    area = face.measured(work) if per not in PER_LENGTH or length is None else None
    if area is not None:
        return _area_amount(work, area, per)
    if length is not None and per not in PER_AREA:
        return _length_amount(work, length, per)
    if per in PER_AREA:
        raise NeedMore("area", "How much area is there?")
    if per in PER_LENGTH:
        raise NeedMore("length", "What is the length?")
    if per in LOTS:
        raise NeedMore("count")
    raise NeedMore(missing, question)


def _lots(work: Working, count: Term, per: Per | None) -> Term:
    """The count in what the price or weight is for: each, or hundreds or thousands, not rounded up."""
    if per not in LOTS:
        return count
    name = "hundreds" if per is Per.HUNDRED else "thousands"
    return work.step(name, count / LOTS[per], "the price or weight is for so many", "none")


def _area_amount(work: Working, area: Term, per: Per | None) -> Term:
    if per is Per.SQUARE:
        return work.step("squares", area / 100, "a square is 100 ft²", "square")
    if per is Per.M:
        work.caution("A metre of an area is taken as a square metre.")
    if per in (Per.M2, Per.M):
        return work.step("square metres", area * Fraction(9290304, 10**8), "1 ft² is exactly 0.09290304 m²", "m2")
    if per is None or per is Per.EACH:
        raise NeedMore("per", "Is that a square foot, a square or a square metre?")
    if per is Per.FT:
        work.caution("A foot of an area is taken as a square foot.")
    return area


def _length_amount(work: Working, length: Term, per: Per | None) -> Term:
    if per is Per.M:
        return work.step("metres", length * METRES_IN_FOOT, "1 ft is exactly 0.3048 m", "m")
    if per is None or per is Per.EACH:
        raise NeedMore("per", "Is that a foot or a metre?")
    return length
