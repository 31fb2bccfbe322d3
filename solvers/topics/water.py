"""Water on the wall: the fall of a flashing or sill, and what a channel holds."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.binding import Slope
from solvers.common import CODE_CAUTION
from solvers.errors import NeedMore
from solvers.exact import Term, atan, cos
from solvers.quantities import Length, Percent, Pitch, Ratio
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.working import Working

ASK_SLOPE = "What slope: a percent, degrees, or inches per foot?"
NBC_FLASHING = "National Building Code of Canada 9.27.3.8.(4): a flashing slopes outward at least 6 %, after shrinkage"
WATER_SOURCE = "water 999.84 and ice 916.7 kg per cubic metre at 0 °C (CRC-type data)"
FILM_SOURCE = "water hangs in a slot of width d to 2σ / (ρ g d), σ = 72.75 mN/m at 20 °C (parallel plates), at most"
POUNDS_PER_CUBIC_INCH = Fraction("999.84") * Fraction("0.0254") ** 3 / Fraction("0.45359237")
ICE_GROWTH = Fraction("999.84") / Fraction("916.7") - 1
FILM = 2 * Fraction("0.07275") / (Fraction("998.21") * Fraction("9.80665"))  # m²: height × width of a water film
BRIDGE_MM = 5  # a slot wider than this does not hold a film from wall to wall


@topic("fall", "water")
def fall(
    work: Working,
    width: Annotated[
        Length, Slot("How wide is it, front to back? What width?", bare=("in",), above=0, usual=(Fraction(1, 2), 600))
    ],
    slope: Annotated[Percent | None, Slot(ASK_SLOPE, usual=(Fraction(1, 10), 30), instead=("pitch", "ratio"))] = None,
    pitch: Annotated[Pitch | None, Slot(ASK_SLOPE, name="slope per foot", instead=("slope", "ratio"))] = None,
    ratio: Annotated[Ratio | None, Slot(ASK_SLOPE, name="slope as a ratio", instead=("slope", "pitch"))] = None,
) -> None:
    """Drop of a flashing or sill, inches, over its level width.

    The slope is a percent, degrees, inches per foot or a ratio. Refuses a slope that falls nowhere or to the wall.
    Source: NBC 9.27.3.8.(4) for the 6 % named beside it.
    """
    share = _share(work, slope, pitch, ratio)
    drop = work.answer("drop", width * share, "the fall over the level width", "in", "drop")
    theta = work.step("θ", atan(share), "the same slope, as an angle from level")
    work.also("angle from level", theta)
    work.also("slope", 100 * share, "percent")
    work.also("drop at 6 %", width * work.term("six percent", Fraction(6, 100), "none"), "in")
    along = work.step("along", width / cos(theta), "the sloped face, for the piece to cut", unit="in")
    work.also("sloped width", along)
    work.check("width and drop close on the slope", width**2 + drop**2, "=", along**2)
    work.caution(CODE_CAUTION)
    work.source(NBC_FLASHING)
    view = work.view("section, wall on the left")
    wide, high = float(width.value), float(drop.value)
    view.polygon(
        [(-0.15 * wide, -0.3 * wide), (0, -0.3 * wide), (0, high + 0.3 * wide), (-0.15 * wide, high + 0.3 * wide)],
        fill="wall",
    )
    view.line((0, high), (wide, 0), "cut")
    view.line((0, 0), (wide, 0), "level")
    view.dimension((0, 0), (wide, 0), work.text(width), side=-1)
    view.dimension((wide, 0), (wide, high), work.text(drop), side=-1)


def _share(work: Working, slope: Term | None, pitch: Slope | None, ratio: Term | None) -> Term:
    """The slope as drop over run."""
    if slope is not None:
        term = work.step("drop per run", slope / 100, "a percent is a drop in a hundred", unit="none")
    elif pitch is not None:
        term = work.step("drop per run", pitch.rise / pitch.run, "drop over run", unit="none")
    elif ratio is not None:
        term = work.term("drop per run", ratio.value, "none")
    else:
        raise NeedMore("slope", ASK_SLOPE)
    said = work.text(slope) if slope is not None else work.text(100 * term, "percent")
    work.refuse_when(term.value <= 0, f"a slope of {said} sheds no water: give a slope that falls away from the wall")
    work.refuse_when(term.value > 10, f"a slope of {said} is a wall, not a sill: say the slope again")
    return term


class HeldIn(Choice):
    """The unit the volume is wanted in."""

    CUBIC_INCHES = "cubic inches"
    GALLONS = "gallons"
    LITRES = "litres"


OUT = {
    HeldIn.GALLONS: ("gal", Fraction(1, 231), "231 cubic inches in a US gallon"),
    HeldIn.LITRES: ("L", Fraction("0.016387064"), "a cubic inch is exactly 16.387064 mL"),
}


@topic("water in a channel", "water")
def water_in_a_channel(
    work: Working,
    width: Annotated[
        Length, Slot("How wide is the channel inside? What width?", bare=("in",), above=0, usual=(Fraction(1, 8), 8))
    ],
    depth: Annotated[Length, Slot("How deep is the channel? What depth?", bare=("in",), above=0, usual=(Fraction(1, 8), 8))],
    length: Annotated[
        Length, Slot("How long is the channel? What length?", bare=("ft", "in"), plain=40, above=0, over="width", usual=(12, 600))
    ],
    held_in: Annotated[HeldIn | None, Slot("In cubic inches, gallons or litres?", name="held in")] = None,
) -> None:
    """Volume of water a channel holds with its mouth up, in³ (or gallons, litres): its inside, filled.

    Also its weight, what freezing adds, and the film it holds mouth down. Refuses sizes of nothing.
    """
    volume = work.step("V", width * depth * length, "the inside, filled to the brim", unit="in3")
    if held_in in OUT:
        unit, factor, why = OUT[held_in]
        work.metric = False
        held = work.answer("volume held", volume * factor, why, unit)
        work.check("a sum of foot lengths holds the same", width * depth * 12 * (length / 12) * factor, "=", held)
    else:
        work.answer("volume held", volume)
    _weight_and_ice(work, width, depth, length, volume)
    _film(work, width)
    work.caution("A channel with its mouth up fills and bursts its joint in a frost: mouth down, or drained at the low end.")
    work.source(WATER_SOURCE, FILM_SOURCE)
    view = work.view("mouth up, full, and mouth down")
    wide, deep = float(width.value), float(depth.value)
    view.polygon([(0, 0), (wide, 0), (wide, deep), (0, deep)], fill="opening")
    view.dimension((0, 0), (wide, 0), work.text(width), side=-1)
    view.dimension((0, 0), (0, deep), work.text(depth), side=1)
    at = 2.2 * wide
    view.line((at, 0), (at, deep))
    view.line((at, deep), (at + wide, deep))
    view.line((at + wide, deep), (at + wide, 0))
    view.label((at + wide / 2, deep * 0.5), "drains")


def _weight_and_ice(work: Working, width: Term, depth: Term, length: Term, volume: Term) -> None:
    per_inch = work.term("pounds per cubic inch", POUNDS_PER_CUBIC_INCH, "none")
    weight = work.step("weight", volume * per_inch, "water at 0 °C", unit="lb")
    growth = work.term("growth on freezing", ICE_GROWTH, "none")
    rise = work.step("rise", depth * growth, "ice takes about a tenth more room, and its only way is up", unit="in")
    work.also("weight of the water", weight)
    work.also("rise on freezing", rise)
    work.also("volume as ice", volume * (1 + growth), "in3")
    work.also("growth on freezing", 100 * growth, "percent")
    grams = work.term("grams", volume.value * Fraction("16.387064") * Fraction("0.99984"), "none")
    work.check(
        "weighed in grams, back in pounds",
        grams / work.term("grams in a pound", Fraction("453.59237"), "none"),
        "=",
        weight,
    )
    work.check("risen ice fills what freezing adds", width * length * (depth + rise), "=", volume * (1 + growth))


def _film(work: Working, width: Term) -> None:
    """What stays with the mouth down: a film, in a slot narrow enough to bridge."""
    millimetres = width.value * Fraction("25.4")
    film = work.term("film area", FILM / Fraction("0.0254") ** 2, "none")
    hang = work.step("film", film / width, "how high water hangs in a slot of that width, at most", unit="in")
    work.also("water hangs, mouth down, at most", hang)
    if millimetres > BRIDGE_MM:
        work.also_word("mouth down", "drains: a slot this wide does not hold a film across; the height is an upper bound")
    else:
        work.also_word("mouth down", "holds a film only")
