"""Rolls of membrane for a wall, and tubes of sealant for a joint."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated, Any

from solvers.common import CODE_CAUTION, HEIGHT_CAUTION
from solvers.coverage import NO_WASTE, CoverArea, Waste, whole_pieces, with_waste
from solvers.errors import NeedMore
from solvers.exact import Term
from solvers.quantities import Length, Volume
from solvers.registry import topic
from solvers.slots import Choice, Opening, Slot
from solvers.wall_faces import Face, FaceLong, FaceOpenings, FaceTall, GablePitch, GableTall
from solvers.wall_parts import OpenedArea, sides_of
from solvers.working import Working

RollWidth = Annotated[
    Length,
    Slot("What is the width of the roll?", bare=("ft", "in"), plain=12, doubt=(12, 18), above=0, most=12_000,
         kept="roll width", name="roll width", usual=(18, 144)),
]  # fmt: skip
RollLength = Annotated[
    Length,
    Slot(
        "What is the length of the roll?",
        unit="ft",
        bare=("ft",),
        above=0,
        most=2000,
        kept="roll length",
        name="roll length",
        usual=(15, 500),
    ),
]
Lap = Annotated[Length, Slot("How wide are the laps?", bare=("in",), least=0, kept="lap", name="lap", usual=(0, 24))]
JointWidth = Annotated[
    Length, Slot("What is the width of the joint?", bare=("in",), above=0, most=2, name="joint width", usual=(Fraction(1, 16), 1))
]
JointDepth = Annotated[
    Length,
    Slot(
        "What is the depth of the joint?", bare=("in",), above=0, most=2, name="joint depth",
        usual=(Fraction(1, 16), Fraction(3, 2))),
]
JointLength = Annotated[
    Length,
    Slot(
        "What is the length of the joint?",
        unit="ft",
        bare=("ft",),
        above=0,
        most=100_000,
        name="length",
        unless="asked sealed_openings",
        usual=(3, 3000),
    ),
]
TubeSize = Annotated[Volume, Slot("How much is in a tube?", above=0, most=1000, name="tube", usual=(5, 60))]
SIX_INCHES = Length(Fraction(6), "in", "6 inches")
TUBE = Volume(Fraction(101, 10), "floz", "10.1 fl oz (US)")


class Tubes(Choice):
    """What is asked of the tubes where no length of joint is told."""

    REACH = "how far one goes"


Reach = Annotated[Tubes, Slot("Do you want how far one tube goes?", name="asked of a tube")]


@topic("membrane rolls", "takeoff")
def membrane_rolls(
    work: Working,
    roll_width: RollWidth,
    roll_length: RollLength,
    area: CoverArea | None = None,
    lap: Lap = SIX_INCHES,
    waste: Waste = NO_WASTE,
    wall_length: FaceLong | None = None,
    wall_height: FaceTall | None = None,
    pitch: GablePitch | None = None,
    gable_height: GableTall | None = None,
    openings: FaceOpenings | None = None,
    opened: OpenedArea | None = None,
) -> None:
    """How many rolls of membrane cover an area, a wall or a gable, every run lapping the one below it; laps of 6 in unless said.

    Refuses a lap as wide as the roll. Source: arithmetic; the laps of IRC R703.2 are named as the common minimum.
    """
    if roll_width.value > 12 * roll_length.value:  # a roll is never wider than it is long: said the other way round
        roll_width, roll_length = (
            work.term("roll width", 12 * roll_length.value, "in"), work.term("roll length", roll_width.value / 12, "ft")
        )  # fmt: skip
        work.caution(f"Taken as a roll {work.text(roll_width)} wide and {work.text(roll_length)} long.")
    refuse_wide_lap(work, lap, roll_width)
    area = Face(area, wall_length, wall_height, pitch, gable_height, openings, opened).measured(work)
    if area is None:
        raise NeedMore("area")
    need = with_waste(work, "area with waste", area, waste)
    shows = work.step("covers", roll_width - lap, "the roll's width less the lap", "in")
    each = work.step("one roll covers", shows / 12 * roll_length, "that by the roll's length", "ft2")
    rolls = whole_pieces(work, "rolls", need, each, "whole rolls, rounded up", "the rolls")
    run = work.step("run needed", need / (shows / 12), "all runs end to end", "ft")
    work.also("area each roll covers", each)
    work.also("width each run covers", shows)
    work.also("membrane lost in laps", run * lap / 12, "ft2")
    lapped = run * roll_width / 12
    work.check("membrane used is the area and its laps", lapped, "=", need + run * lap / 12)
    work.check("that much is on the rolls", rolls * roll_width / 12 * roll_length, ">=", lapped)
    work.caution(
        "End laps and openings are not in it: upper over lower at least 2 in, ends lapped at least 6 in.", CODE_CAUTION,
        HEIGHT_CAUTION,
    )  # fmt: skip
    work.source("published: laps of 2 in and 6 in, IRC R703.2")
    _draw_laps(work, roll_width, lap, shows)


def refuse_wide_lap(work: Working, lap: Term, roll_width: Term) -> None:
    work.refuse_when(
        work.value(lap) >= work.value(roll_width),
        f"a lap of {work.text(lap)} is as wide as the roll of {work.text(roll_width)} and covers nothing: say it again",
    )


def _draw_laps(work: Working, roll_width: Term, lap: Term, shows: Term) -> None:
    wide, step = float(roll_width.value), float(shows.value)
    long = wide * 3
    view = work.view("three runs, each over the one below")
    for number in range(3):
        bottom = number * step
        view.polygon([(0, bottom), (long, bottom), (long, bottom + wide), (0, bottom + wide)], fill="none")
    view.dimension((long, step), (long, wide), work.text(lap), side=-1)
    view.dimension((0, 0), (0, step), work.text(shows), side=1)


Sealed = Annotated[tuple[Opening, ...], Slot("What openings is it round?", cued=True, instead=("length",))]


@topic("sealant", "takeoff")
def sealant(
    work: Working,
    width: JointWidth,
    depth: JointDepth,
    length: JointLength | None = None,
    sealed_openings: Sealed | None = None,
    tube: TubeSize = TUBE,
    waste: Waste = NO_WASTE,
    asked: Reach | None = None,
) -> None:
    """How many tubes of sealant fill a joint, or how far one goes; a tube of 10.1 US fl oz and no waste unless said.

    Openings are sealed on all four sides. Refuses a length of joint that is not what is round them.

    Source: volume, 1 US fl oz is exactly 231/128 in³ (NIST Handbook 44, appendix C).
    """
    section = work.step("section", width * depth, "what one inch of joint takes", "in2")
    if sealed_openings:
        round_ = _round_openings(work, sealed_openings)
        work.refuse_when(
            length is not None and work.value(length) != work.value(round_),
            f"all round those openings is {work.text(round_)}, and you told me another length of joint: say which I should take",
        )
        length = round_
    if length is None:
        far = work.answer("length per tube", tube / section / 12, "what one tube fills", "ft")
        work.check("a tube fills that much joint", section * 12 * far, "=", tube)
        return
    volume = work.step("volume", section * 12 * length, "along the whole joint", "in3")
    need = with_waste(work, "with waste", volume, waste)
    tubes = whole_pieces(work, "tubes", need, tube, "whole tubes, rounded up", "the tubes")
    each = work.step("length per tube", tube / section / 12, "what one tube fills", "ft")
    work.also("length per tube", each)
    work.also("volume of sealant", need)
    work.check("tubes by the length each fills", tubes * each, ">=", length * (1 + waste / 100))
    gallons = work.step("length per gallon", work.term("gallon", 231, "in3") / section / 12, "the same, for a US gallon", "ft")
    work.check("tubes by the gallon", tubes * tube / 231 * gallons, ">=", length * (1 + waste / 100))
    work.caution(
        "Common practice: a joint about half as deep as it is wide, at least 1/4 in, over a backer it can't stick to.",
        HEIGHT_CAUTION,
    )
    work.source("1 US fl oz = 231/128 in³ exactly (NIST Handbook 44, appendix C)")
    _draw_joint(work, width, depth)


def _round_openings(work: Working, openings: tuple[Opening, ...]) -> Term:
    """The joint round openings, ft."""
    total: Any = 0
    for opening, label, wide, high in sides_of(work, openings, "ft"):
        work.refuse_when(work.value(wide * high) <= 0, f"a {opening.what} of no size has no joint: say its size again")
        each = work.step(f"round {label}", 2 * (wide + high), "all four sides", "ft")
        total += opening.count * each
    return work.step("joint round them all", total, "so many of each", "ft")


def _draw_joint(work: Working, width: Term, depth: Term) -> None:
    wide, deep = float(width.value), float(depth.value)
    view = work.view("section of the joint")
    side = max(wide, deep)
    view.polygon([(-side, -deep * 2), (0, -deep * 2), (0, 0), (-side, 0)], fill="wall")
    view.polygon([(wide, -deep * 2), (wide + side, -deep * 2), (wide + side, 0), (wide, 0)], fill="wall")
    view.polygon([(0, -deep), (wide, -deep), (wide, 0), (0, 0)])
    view.arc((wide / 2, -deep - wide / 2), wide / 2, 0, 360, "hidden")
    view.dimension((0, 0), (wide, 0), work.text(width), side=1)
    view.dimension((wide + side, -deep), (wide + side, 0), work.text(depth), side=-1)
