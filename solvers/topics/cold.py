"""Cold: when the air's water comes out as dew or frost."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.exact import Term, fraction, smaller
from solvers.heat import CHANGE_UNIT, on_scale, refuse_impossible
from solvers.quantities import Percent, Temperature
from solvers.registry import topic
from solvers.slots import Slot
from solvers.vapour import BUCK_SOURCE, CLOSE, ICE, MAGNUS_SOURCE, WATER, branch, buck, point_of, saturation
from solvers.working import Working

ASK_TEMPERATURE = "What is the air temperature?"
SKY_CAUTION = "Under a clear still sky a surface can run several degrees colder than the air: metal and roofs first."
ICE_CAUTION = "Frost and ice on staging, ladders and roofs: wait for it to go, or don't go up."
COLDEST, HOTTEST = -60, 70  # °C, between which the formulas hold
TOO_WARM = {"degF": 68, "degC": 20}  # a low over this was meant on the other scale
NEAR = {"degF": Fraction(9, 10), "degC": Fraction(1, 2)}  # nearer than thermometers and hygrometers of a site agree
SKY = {"degF": 7, "degC": 4}  # how far under the air a surface may fall on a clear still night, common practice
SKY_SOURCE = "4 °C (7 °F) under the air on a clear still night: common practice, it can be more"


@topic("dew point", "water")
def dew_point(
    work: Working,
    temperature: Annotated[Temperature, Slot(ASK_TEMPERATURE, name="temperature", usual=(-40, 130))],
    humidity: Annotated[Percent, Slot("What is the relative humidity, in percent?", above=0, most=100, usual=(5, 100))],
    surface: Annotated[
        Temperature | None, Slot("What is the surface's temperature?", name="surface temperature", cued=True, usual=(-60, 180))
    ] = None,
) -> None:
    """Dew point of air, on the scale of its temperature; below freezing it is the frost point, over ice.

    Refuses a humidity over 100 %, absolute zero and under, and air outside −60 to 70 °C.
    Source: Magnus' formula with the WMO's constants; checked by Buck's.
    """
    refuse_impossible(work, temperature, surface)
    t = on_scale(work, temperature, "degC")
    work.refuse_when(
        not COLDEST <= t.value <= HOTTEST,
        f"I work dew points for air of {COLDEST} to {HOTTEST} °C, and {work.text(temperature)} is outside that",
    )
    over = "over ice, as for any air below freezing" if t.value < 0 else "over water"
    full = saturation(work, "e full", t, branch(t), f"hPa of vapour the air can hold, {over}")
    held = work.step("e", full * humidity / 100, "hPa it does hold", unit="none")
    dew = point_of(work, "dew point in °C", held, WATER, "where that much is all that water lets it hold")
    frosty = dew.value < 0
    point = (
        point_of(work, "frost point in °C", held, ICE, "below freezing it comes out as frost: the same over ice")
        if frosty
        else dew
    )
    kind = "frost point" if frosty else "dew point"
    last = point if temperature.unit == "degC" else on_scale(work, point, temperature.unit)
    work.answer("dew point", last)
    work.also_word("what forms", "frost: this is the frost point, over ice" if frosty else "dew")
    if frosty:
        work.also("dew point over water", _out(dew, temperature.unit), temperature.unit)
    _station(work, temperature, t, humidity)
    drop = work.step("cooling", temperature - last, f"how far the air is from its {kind}", unit=CHANGE_UNIT[temperature.unit])
    work.also(f"air over its {kind}", drop)
    off = work.term("off", _apart(work, t, point, humidity), "none")
    work.check("Buck's equation has the air as full at this point", off, "<=", work.term("allowed", CLOSE, "none"))
    work.source(MAGNUS_SOURCE, BUCK_SOURCE)
    _surface(work, last, surface, frosty)
    work.caution(ICE_CAUTION if frosty else SKY_CAUTION)
    work.said = f"the {kind} is {work.text(last)}"
    _scale_view(work, temperature, last, kind, surface)


def _apart(work: Working, t: Term, point: Term, humidity: Term) -> Fraction:
    """How far, relative, Buck's equation puts the vapour at the point from that in the air."""
    ratio = work.value(buck(point) / (buck(t) * humidity / 100))
    return abs(fraction(ratio) - 1)


def _out(term: Term, unit: str) -> object:
    """A temperature in °C as an expression on another scale."""
    return term if unit == "degC" else term * Fraction(9, 5) + 32


def _station(work: Working, temperature: Term, t: Term, humidity: Term) -> None:
    """Freezing air whose humidity a weather station gives: over water, so it holds more than the tables' over ice."""
    if t.value >= 0:
        return
    full = saturation(work, "e full over water", t, WATER, "weather stations give humidity over water, even in frost")
    held = work.step("e by a station", full * humidity / 100, "what the air holds if the humidity is a station's", unit="none")
    point = point_of(work, "frost point by a station", held, ICE, "its frost point")
    work.also("frost point if the humidity is a weather station's", _out(point, temperature.unit), temperature.unit)


def _surface(work: Working, last: Term, surface: Term | None, frosty: bool) -> None:
    """Whether a surface gets wet or frosts."""
    if surface is None:
        return
    same = on_scale(work, surface, last.unit)
    over = work.step("surface over the point", same - last, "how far the surface is from it", unit=CHANGE_UNIT[last.unit])
    freezing = 0 if last.unit == "degC" else 32
    wet = over.value <= 0
    work.also("surface over the point", over)
    if abs(over.value) < NEAR[last.unit]:
        work.caution("The surface is within half a degree Celsius of that, nearer than it can be measured: take it as wet.")
    work.also_word("the surface", ("frosts" if same.value <= freezing else "gets wet") if wet else "stays dry")


def _scale_view(work: Working, air: Term, point: Term, kind: str, surface: Term | None) -> None:
    view = work.view("temperatures", stretch=True)
    view.line((float(point.value) - 5, 0), (float(air.value) + 5, 0))
    view.tick((float(point.value), 0), f"{kind} {work.text(point)}")
    if float(air.value) - float(point.value) > 0.5:
        view.tick((float(air.value), 0), f"air {work.text(air)}")
    if surface is not None and surface.unit == point.unit:
        view.tick((float(surface.value), 0), f"surface {work.text(surface)}")


@topic("frost tonight", "water")
def frost_tonight(
    work: Working,
    low: Annotated[Temperature, Slot("What is tonight's low?", name="low", usual=(-60, 90))],
    dew: Annotated[Temperature, Slot("What is the dew point?", name="dew point", usual=(-60, 90))],
) -> None:
    """Whether frost forms tonight: yes when a surface at the low is at or under freezing and the frost point.

    A clear sky can put a surface several degrees under the air; what that would do is named beside it.
    Refuses temperatures under absolute zero. Source: Magnus' formula for the frost point of a dew point.
    """
    refuse_impossible(work, low, dew)
    unit = low.unit
    warm = work.term("warm", TOO_WARM[unit], unit)
    work.refuse_when(
        low.value > warm.value,
        f"a low of {work.text(low)} is no night for frost, being over {work.text(warm)}: say the low again, with its scale",
    )
    freezing = work.term("freezing", 0 if unit == "degC" else 32, unit)
    frost = _frost_point(work, dew, unit)
    limit = work.step(
        "frost at or under",
        smaller(freezing, frost),
        "it must be freezing, and cold enough for the air's water to come out",
        unit=unit,
    )
    work.also("frost point", frost)
    work.also("low over the frost limit", low - limit, CHANGE_UNIT[unit])
    yes = work.yes_or_no("frost tonight", low, "<=", limit, "a surface as cold as the air's low")
    colder = work.step("clear-sky surface", low - SKY[unit], "how cold a surface may get under a clear still sky", unit=unit)
    work.also("surface under a clear still sky", colder)
    clear = work.value(limit - colder) >= 0
    work.also_word("under a clear still sky", "frost" if clear else "no frost")
    _check_vapour(work, yes, low, dew, freezing)
    work.caution(ICE_CAUTION, SKY_CAUTION)
    work.source(SKY_SOURCE, MAGNUS_SOURCE)
    work.said = _frost_words(work, yes, clear, colder)
    view = work.view("temperatures", stretch=True)
    values = [float(low.value), float(freezing.value), float(frost.value)]
    view.line((min(values) - 4, 0), (max(values) + 4, 0))
    for name, term in (("low", low), ("freezing", freezing), ("frost point", frost)):
        view.tick((float(term.value), 0), f"{name} {work.text(term)}")


def _check_vapour(work: Working, yes: bool, low: Term, dew: Term, freezing: Term) -> None:
    """The other road: what the surface can hold against what the air holds, by Buck's equation."""
    if not yes and low.value > freezing.value:
        work.check("it does not freeze", low, ">=", freezing)
        return
    t, d = (work.term(term.name, fraction(_celsius(term)), "degC") for term in (low, dew))
    surface = work.term("the surface can hold", work.value(buck(t)), "none")
    near = 1 + CLOSE if yes else 1 - CLOSE
    held = work.term("the air holds", work.value(buck(d, over_ice=False) * near), "none")
    work.check("the vapour says the same, by Buck's equation", surface, "<=" if yes else ">=", held)


def _celsius(term: Term) -> Fraction:
    value = fraction(term.value)
    return value if term.unit == "degC" else (value - 32) * Fraction(5, 9)


def _frost_words(work: Working, yes: bool, clear: bool, colder: Term) -> str:
    if yes:
        return "yes, frost tonight"
    if clear:
        return f"not at the air's low, but under a clear still sky a surface at {work.text(colder)} would frost"
    return "no frost tonight"


def _frost_point(work: Working, dew: Term, unit: str) -> Term:
    """The frost point that goes with a dew point, on the scale of the low; above freezing they are one."""
    celsius = on_scale(work, dew, "degC")
    work.refuse_when(
        not COLDEST <= celsius.value <= HOTTEST,
        f"a dew point of {work.text(dew)} is outside the {COLDEST} to {HOTTEST} °C I can work",
    )
    if celsius.value >= 0:
        return on_scale(work, dew, unit)
    held = saturation(work, "e", celsius, WATER, "hPa of vapour at the dew point, which forecasts give over water")
    frost = point_of(work, "frost point in °C", held, ICE, "frost forms over ice, a little above that dew point")
    return frost if unit == "degC" else on_scale(work, frost, unit)
