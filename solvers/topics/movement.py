"""Movement with temperature: how much a length grows, and the gap to leave at its end today."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.coefficients import COEFFICIENTS, Coefficient, Material, beyond, own
from solvers.constants import MM_PER_INCH
from solvers.errors import NeedMore
from solvers.exact import Term, larger, smaller
from solvers.heat import CHANGE_UNIT, KELVIN_PER_FAHRENHEIT, kelvins, on_scale, refuse_impossible
from solvers.quantities import Expansion, Length, Temperature, TemperatureChange
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.strips import gap_view, growth_view
from solvers.working import Working

MaterialOf = Annotated[
    Material,
    Slot("What material: vinyl, PVC, aluminium, steel, copper, glass, wood?", unless="coefficient", instead=("coefficient",)),
]
OwnCoefficient = Annotated[Expansion, Slot("What is its coefficient per degree C?", above=0, most=Fraction(1, 1000), cued=True)]
PieceLength = Annotated[
    Length, Slot("How long is the piece? What length?", bare=("ft", "in"), plain=30, doubt=(20, 40), above=0, usual=(24, 720))
]
ENDS = ("hottest", "coldest")
SUN_CAUTION = "A dark face in the sun runs well above the air; take the surface's own hottest and coldest where you can."
NAILING_CAUTION = "Leave it free to slide: fasteners in the middle of their slots, not driven tight, and don't pin both ends."
CEMENT_CAUTION = "Fibre cement moves more with moisture than with heat: follow its maker's gaps."


class Swing(Choice):
    """Which way the temperature goes."""

    UP = "warming"
    DOWN = "cooling"


@topic("thermal movement", "movement")
def thermal_movement(
    work: Working,
    *,
    material: MaterialOf | None = None,
    length: PieceLength,
    change: Annotated[
        TemperatureChange | None,
        Slot("What temperature change?", name="temperature change", usual=(-300, 300), instead=("start", "end")),
    ] = None,
    start: Annotated[
        Temperature | None,
        Slot(
            "What temperature does it start from?",
            name="temperature before",
            cued=True,
            usual=(-80, 220),
            instead=("change", "swing"),
        ),
    ] = None,
    end: Annotated[
        Temperature | None,
        Slot(
            "What temperature does it go to?",
            name="temperature after",
            cued=True,
            usual=(-80, 220),
            instead=("change", "swing"),
        ),
    ] = None,
    swing: Annotated[Swing | None, Slot("Is it warming or cooling?")] = None,
    coefficient: OwnCoefficient | None = None,
) -> None:
    """Change of length with temperature, inches: positive for growth, negative for shrinkage.

    A coefficient given, per kelvin, goes before the material's own. Refuses temperatures under absolute zero.
    Sources: solvers/coefficients.py, with the range of each.
    """
    refuse_impossible(work, start, end)
    dt = _change(work, change, start, end, swing)
    growth = _growth(work, material, coefficient)
    alpha = _per_degree(work, growth.used, dt.unit)
    moved = work.answer(
        "change of length", alpha * length * dt, "every inch changes by the coefficient for each degree", "in", "ΔL"
    )
    _range(work, growth, length, dt)
    after = work.step("length after", length + moved, "the length it ends at", unit="in")
    work.also("length after", after)
    work.also("coefficient used, per °C", work.term("coefficient", growth.used, "none"))
    degrees = abs(work.value(kelvins(work, dt)))
    metric = work.term("metric", length.value * MM_PER_INCH.value * growth.used * degrees, "mm")
    sign = -1 if dt.value < 0 else 1
    work.check("the same in millimetres and °C", sign * metric / MM_PER_INCH, "=", moved)
    work.caution(CEMENT_CAUTION if material is Material.FIBRE_CEMENT else SUN_CAUTION)
    work.source(growth.source)
    growth_view(work, length, moved)


def _change(work: Working, change: Term | None, start: Term | None, end: Term | None, swing: Swing | None) -> Term:
    """The temperature difference, signed: from two temperatures, or as said."""
    if start is not None and end is not None:
        before = on_scale(work, start, end.unit)
        return work.step("ΔT", end - before, "from before to after", unit=CHANGE_UNIT[end.unit])
    if change is None:
        if start is not None or end is not None:
            raise NeedMore("end" if end is None else "start")
        raise NeedMore("change", "By how much does the temperature change?")
    if swing is Swing.DOWN and change.value > 0:
        return work.step("ΔT", -change, "it cools, so it gets shorter", unit=change.unit)
    return change


def _per_degree(work: Working, used: Fraction, unit: str, name: str = "α") -> Term:
    """The coefficient per degree of the scale that the change was said on."""
    per_kelvin = work.term(f"{name} per °C", used, "none")
    if unit == "dC":
        return per_kelvin
    return work.step(
        name, per_kelvin * KELVIN_PER_FAHRENHEIT, "the coefficient per °F is five ninths of that per °C", unit="none"
    )


def _growth(work: Working, material: Material | None, given: Term | None) -> Coefficient:
    """The coefficient given, or that of the material."""
    if given is not None:
        caution = beyond(given.value, material)
        work.caution(*[caution] if caution else ())
        return own(given.value)
    if material is None:
        raise NeedMore("material")
    return COEFFICIENTS[material]


def _range(work: Working, growth: Coefficient, length: Term, dt: Term) -> None:
    """What the least and the most of the published coefficients would give; nothing for a figure of one's own."""
    if growth.least == growth.most:
        return
    factor = KELVIN_PER_FAHRENHEIT if dt.unit == "dF" else Fraction(1)
    for name, used in (
        ("at the least of the published range", growth.least),
        ("at the most of the published range", growth.most),
    ):
        work.also(name, work.term("coefficient", used * factor, "none") * length * dt, "in")


@topic("end gap", "movement")
def end_gap(
    work: Working,
    *,
    material: MaterialOf | None = None,
    length: PieceLength,
    now: Annotated[Temperature, Slot("What is the temperature now?", name="temperature now", usual=(-60, 160))],
    hottest: Annotated[
        Temperature | None, Slot("What is the hottest it gets?", name="hottest", cued=True, usual=(55, 220))
    ] = None,
    coldest: Annotated[
        Temperature | None, Slot("What is the coldest it gets?", name="coldest", cued=True, usual=(-80, 140))
    ] = None,
    extreme: Annotated[
        Temperature | None,
        Slot("What is the hottest it gets?", name="one end of the year", cued=True, usual=(-80, 220), instead=ENDS),
    ] = None,
    opposite: Annotated[
        Temperature | None,
        Slot("What is the coldest it gets?", name="other end of the year", cued=True, usual=(-80, 220), instead=ENDS),
    ] = None,
    coefficient: OwnCoefficient | None = None,
) -> None:
    """Gap to leave now at the end of a length, inches: the whole growth still to come, at one joint.

    Refuses a hottest under the coldest, a temperature now outside them, and anything under absolute zero.
    Sources: solvers/coefficients.py, with the range of each.
    """
    refuse_impossible(work, now, hottest, coldest, extreme, opposite)
    hot, cold = _extremes(work, now, hottest, coldest, extreme, opposite)
    growth = _growth(work, material, coefficient)
    unit = CHANGE_UNIT[now.unit]
    warming = work.step("warming to come", hot - now, "from today to the hottest", unit=unit)
    cooling = work.step("cooling to come", now - cold, "from today to the coldest", unit=unit)
    alpha = _per_degree(work, growth.used, unit)
    gap = work.answer("gap to leave now", alpha * length * warming, "room for all the growth still to come", "in", "gap")
    shrink = work.step("shrinkage to come", alpha * length * cooling, "how much further it opens in the cold", unit="in")
    widest = work.step("gap at the coldest", gap + shrink, "today's gap and all the shrinkage", unit="in")
    work.also("growth still to come", gap)
    work.also("shrinkage still to come", shrink)
    work.also("gap at the coldest", widest)
    middle = work.step("mid temperature", (hot + cold) / 2, "halfway between the two ends of the year", unit=now.unit)
    slot = work.step(
        "slot offset",
        alpha * length * (now - middle),
        "how far the free end is from the middle of its travel",
        unit="in",
    )
    work.also("free end from the middle of its travel (past it when positive)", slot)
    most = growth.most * (KELVIN_PER_FAHRENHEIT if unit == "dF" else 1)
    if coefficient is None:
        work.also("gap for the make that moves the most", work.term("coefficient", most, "none") * length * warming, "in")
    work.check("both travels are one whole year's", alpha * length * (hot - cold), "=", widest)
    work.caution(NAILING_CAUTION, CEMENT_CAUTION if material is Material.FIBRE_CEMENT else SUN_CAUTION)
    work.source(growth.source)
    gap_view(work, length, gap, shrink)


def _extremes(
    work: Working, now: Term, hottest: Term | None, coldest: Term | None, extreme: Term | None, opposite: Term | None
) -> tuple[Term, Term]:
    """Hottest and coldest on the scale of today's temperature; two said without saying which are sorted."""
    if extreme is not None and opposite is not None and (hottest is None or coldest is None):
        one, other = on_scale(work, extreme, now.unit), on_scale(work, opposite, now.unit)
        if hottest is None:
            hottest = work.step("hottest", larger(one, other), "the larger of the two", unit=now.unit)
        if coldest is None:
            coldest = work.step("coldest", smaller(one, other), "the smaller of the two", unit=now.unit)
    elif extreme is not None:
        hottest = extreme if hottest is None else hottest
        coldest = extreme if coldest is None else coldest
    if hottest is None:
        raise NeedMore("hottest")
    if coldest is None:
        raise NeedMore("coldest")
    hot, cold = on_scale(work, hottest, now.unit), on_scale(work, coldest, now.unit)
    work.refuse_when(
        hot.value < cold.value,
        f"the hottest, {work.text(hottest)}, can't be under the coldest, {work.text(coldest)}: say them again",
    )
    work.refuse_when(
        now.value > hot.value,
        f"it is {work.text(now)} now and the hottest you gave is {work.text(hottest)}: say the hottest again",
    )
    work.refuse_when(
        now.value < cold.value,
        f"it is {work.text(now)} now and the coldest you gave is {work.text(coldest)}: say the coldest again",
    )
    return hot, cold
