"""The right triangle: any two of rise, run, slope and angle give the others."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated, Any

from solvers.common import From, MeasuredFrom
from solvers.errors import NeedMore
from solvers.exact import Term, asin, atan, cos, real, sin, sqrt, tan
from solvers.quantities import Angle, Length
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.working import Working


class Part(Choice):
    """A part of the triangle that is asked for."""

    RISE = "rise"
    RUN = "run"
    SLOPE = "slope"
    ANGLE = "angle"


@topic("right triangle", "triangles")
def right_triangle(
    work: Working,
    rise: Annotated[Length, Slot("What is the rise?", bare=("in",), above=0, alike=True, usual=(Fraction(1, 2), 240))]
    | None = None,
    run: Annotated[
        Length, Slot("What is the run, the slope or the angle?", bare=("in",), above=0, alike=True, usual=(Fraction(1, 2), 240))
    ]
    | None = None,
    slope: Annotated[Length, Slot("How long is the slope?", bare=("in",), above=0, alike=True, usual=(Fraction(1, 2), 240))]
    | None = None,
    angle: Annotated[Angle, Slot("What is the angle?", above=0, below=90)] | None = None,
    wanted: Annotated[Part, Slot("Which part do you want: rise, run, slope or angle?")] | None = None,
    lengths: Annotated[tuple[Length, ...], Slot("How long are the sides?", name="sides")] | None = None,
    measured: MeasuredFrom | None = None,
) -> None:
    """The missing parts of a right triangle from any two of rise, run, slope (inches) and angle (degrees, from level).

    `measured` from plumb, the angle is the one at the top, between the rise and the slope.

    Refuses sides that do not make a right angle, a fourth side, and a slope that is not the longest.
    Source: Pythagoras.
    """
    if angle is not None and measured is From.PLUMB:
        angle = work.step("angle from level", 90 - angle, "the two sharp corners make 90°")
    parts: dict[str, Any] = {"rise": rise, "run": run, "slope": slope, "angle": angle}
    for name, term in _sides(work, lengths, [name for name in ("run", "rise", "slope") if parts[name] is None]).items():
        parts[name] = term
    known = [name for name, term in parts.items() if term is not None]
    if len(known) < 2:
        _ask(known)
    _refuse_impossible(work, parts)
    full = _solve(work, parts)
    chosen = wanted.value if wanted and wanted.value not in known else _best(known)
    work.answer(chosen, full[chosen])
    for name, term in full.items():
        if name != chosen:
            work.also(name, term)
    other = work.step("other angle", 90 - full["angle"], "the two sharp corners make 90°")
    work.also("other angle", other)
    work.check("the squares on the legs make the square on the slope",
               full["rise"] ** 2 + full["run"] ** 2, "=", full["slope"] ** 2)  # fmt: skip
    work.check("the rise by the other road", full["slope"] * sin(full["angle"]), "=", full["rise"])
    work.caution("Measure twice: the parts are only as true as the right angle they start from.")
    _draw(work, full)


def _sides(work: Working, lengths: tuple[Length, ...] | None, open_: list[str]) -> dict[str, Term]:
    """Lengths said in a row, as parts: two are the legs, three are legs and slope, the longest being the slope."""
    if not lengths:
        return {}
    values = sorted(length.to("in").value for length in lengths)
    said = ", ".join(work.text(work.term("side", value, "in")) for value in values)
    work.refuse_when(len(values) > 3, f"a triangle has three sides, and I count {len(values)} ({said}): say two or three")
    work.refuse_when(values[0] <= 0, "a side must be more than 0 in: say its length again")
    names = open_ if len(values) < 3 else ["run", "rise", "slope"]
    ordered = [length.to("in").value for length in lengths] if len(values) < 3 else [values[1], values[0], values[2]]
    return {name: work.term(name, value, "in") for name, value in zip(names, ordered, strict=False)}


def _ask(known: list[str]) -> None:
    """Raises NeedMore for a second part."""
    if not known:
        raise NeedMore("rise", "Which two of rise, run, slope and angle do you have? Say the rise first.")
    if known == ["rise"]:
        raise NeedMore("run", "What is the run, the slope or the angle?")
    raise NeedMore("rise", "What is the rise, or another part of the triangle (run, slope, angle)?")


def _refuse_impossible(work: Working, parts: dict[str, Any]) -> None:
    for leg in ("rise", "run"):
        if parts["slope"] is None or parts[leg] is None:
            continue
        work.refuse_when(
            work.value(parts["slope"] - parts[leg]) <= 0,
            f"the slope is the longest side, and {work.text(parts['slope'])} of slope is not longer than "
            f"{work.text(parts[leg])} of {leg}: check which is which",
        )
    _refuse_not_right(work, parts)


def _refuse_not_right(work: Working, parts: dict[str, Any]) -> None:
    """Three or more parts must agree to the mark of the tape, or a tenth of a degree."""
    rise, run, slope, angle = (parts[name] for name in ("rise", "run", "slope", "angle"))
    if rise is not None and run is not None and slope is not None:
        true = sqrt(rise**2 + run**2)
        work.refuse_when(
            abs(real(work.value(true - slope))) > real(work.tape_step),
            f"sides of {work.text(rise)}, {work.text(run)} and {work.text(slope)} do not make a right angle: "
            f"with the two short ones the long side is {work.text(true, 'in')}",
        )
    if angle is None or sum(parts[name] is not None for name in ("rise", "run", "slope")) < 2:
        return
    by_sides = atan(rise / run) if rise is not None and run is not None else (
        asin(rise / slope) if rise is not None else 90 - asin(run / slope))  # fmt: skip
    work.refuse_when(
        abs(float(work.value(by_sides - angle))) > 0.1,
        f"an angle of {work.text(angle)} does not go with those sides, which make {work.text(by_sides, 'deg')}: "
        "say two parts only",
    )


def _solve(work: Working, parts: dict[str, Any]) -> dict[str, Term]:
    """All four parts, each missing one a step from the first two known."""
    rise, run, slope, angle = (parts[name] for name in ("rise", "run", "slope", "angle"))
    if rise is not None and run is not None:
        slope = work.step("slope", sqrt(rise**2 + run**2), "the square on the slope is the squares on both legs", "in")
        angle = work.step("angle", atan(rise / run), "how steep, from level")
    elif rise is not None and slope is not None:
        run = work.step("run", sqrt(slope**2 - rise**2), "what is left of the square on the slope", "in")
        angle = work.step("angle", asin(rise / slope), "how steep, from level")
    elif run is not None and slope is not None:
        rise = work.step("rise", sqrt(slope**2 - run**2), "what is left of the square on the slope", "in")
        angle = work.step("angle", atan(rise / run), "how steep, from level")
    elif rise is not None:
        run = work.step("run", rise / tan(angle), "level distance for that rise", "in")
        slope = work.step("slope", rise / sin(angle), "length along the slope", "in")
    elif run is not None:
        rise = work.step("rise", run * tan(angle), "height over that run", "in")
        slope = work.step("slope", run / cos(angle), "length along the slope", "in")
    else:
        rise = work.step("rise", slope * sin(angle), "the height of it", "in")
        run = work.step("run", slope * cos(angle), "the level distance", "in")
    return {"rise": rise, "run": run, "slope": slope, "angle": angle}


def _best(known: list[str]) -> str:
    """What is most likely wanted when it is not said: the missing length, the slope first."""
    return next((name for name in ("slope", "rise", "run", "angle") if name not in known), "angle")


def _draw(work: Working, full: dict[str, Term]) -> None:
    run, rise = float(work.value(full["run"])), float(work.value(full["rise"]))
    steep = float(work.value(full["angle"]))
    view = work.view("side view")
    view.polygon([(0, 0), (run, 0), (run, rise)], fill="piece")
    corner = min(run, rise) / 8
    view.polygon([(run - corner, 0), (run, 0), (run, corner), (run - corner, corner)], fill="none")
    view.angle((0, 0), run / 4, 0, steep, work.text(full["angle"]))
    view.dimension((0, 0), (run, 0), work.text(full["run"]), -1)
    view.dimension((run, 0), (run, rise), work.text(full["rise"]), -1)
    view.dimension((0, 0), (run, rise), work.text(full["slope"]), 1)
