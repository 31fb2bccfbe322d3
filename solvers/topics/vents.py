"""Air in and out: free area through the bug screen of a wall, and the vents of an attic or soffit."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.common import CODE_CAUTION
from solvers.errors import NeedMore
from solvers.exact import Term, ceil, smaller
from solvers.quantities import Area, Length, Number, Percent, Ratio
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.working import Working

ASK_OPEN = "How open is the bug screen, in percent?"
OPEN_SHARE = "open share of the screen"  # as it is kept for the job
ASK_AREA = "What is the area of the ceiling or attic?"
ASK_STRIP = "How many in² of free area per foot has your soffit vent?"
ASK_RATIO = "Is it 1/150 or 1/300?"
IRC = "IRC R806.2: 1/150 of the vented area; 1/300 where the conditions it lists are met (editions differ)"
NBC = "National Building Code of Canada 9.19.1.2: 1/300 of the insulated ceiling; 1/150 under a slope of 1 in 6"
UPPER = "IRC R806.2: with 1/300, 40 to 50 % of the free area stands in the upper part of the roof"
PER_FOOT_SOURCE = "free area of a continuous soffit vent: about 9 in² per foot, common practice; its maker's decides"
STRIP_VENT = Number(Fraction(9), "none")


class Rule(Choice):
    """The two ratios by the name they go by."""

    ONE_FIFTY = "1/150"
    THREE_HUNDRED = "1/300"


RULES = {Rule.ONE_FIFTY: Fraction(1, 150), Rule.THREE_HUNDRED: Fraction(1, 300)}


class Screen(Choice):
    """How open the screen is, said in words."""

    NONE = "no screen"
    HALF = "half open"


SHARES = {Screen.NONE: 100, Screen.HALF: 50}


@topic("vent opening", "water")
def vent_opening(
    work: Working,
    gap: Annotated[Length, Slot("How deep is the gap?", bare=("in",), above=0, most=6, kept="gap", usual=(Fraction(1, 8), 4))],
    share: Annotated[
        Percent | None,
        Slot(
            ASK_OPEN,
            above=0,
            most=100,
            name="open share of the screen",
            kept=OPEN_SHARE,
            usual=(10, 95),
            instead=("screen", "closed"),
        ),
    ] = None,
    length: Annotated[Length | None, Slot("How long is the wall?", bare=("ft",), least=12, usual=(48, 2400))] = None,
    screen: Annotated[Screen | None, Slot(ASK_OPEN, instead=("share", "closed"))] = None,
    closed: Annotated[
        Percent | None,
        Slot(
            "How much does the screen close, in percent?",
            least=0,
            below=100,
            name="closed share",
            cued=True,
            usual=(5, 90),
            instead=("share", "screen"),
        ),
    ] = None,
    top_gap: Annotated[
        Length | None,
        Slot(
            "How deep is the gap at the top?", bare=("in",), above=0, name="gap at the top", cued=True, usual=(Fraction(1, 8), 4)
        ),
    ] = None,
    top_share: Annotated[
        Percent | None,
        Slot("How open is the screen at the top, in percent?", above=0, most=100, name="open share at the top", cued=True),
    ] = None,
) -> None:
    """Free area of a wall's vent slot through its bug screen: in² in all, or in² per foot when no length is said.

    Refuses an open share over 100 %. With a gap or screen of its own at the top, says which of the two limits.
    """
    if share is None and closed is not None:
        share = work.step("share", 100 - closed, "what the screen leaves open", unit="percent")
    share = _share(work, share, screen)
    per_foot = work.step("per foot", gap * 12 * share / 100, "a foot of slot, less what the screen closes", unit="in2perft")
    if length is None:
        free = work.answer("free area per foot", per_foot)
    else:
        free = work.answer("free area", gap * length * share / 100, "slot by length, less what the screen closes", "in2", "A")
        work.also("free area per foot", per_foot)
    shut = work.step("closed", gap * 12 * (100 - share) / 100, "what the screen closes, per foot", unit="in2perft")
    work.also("before the screen, per foot", gap * 12, "in2perft")
    work.check("open and closed make the whole slot", per_foot + shut, "=", gap * 12)
    if length is not None:
        work.check("per foot times the feet", per_foot * length / 12, "=", free)
    _limits(work, per_foot, gap, share, top_gap, top_share)
    work.caution("Paint, dust and nests close a screen: keep it where you can clean it.")
    _slot_view(work, gap, per_foot)


def _share(work: Working, share: Term | None, screen: Screen | None) -> Term:
    if share is not None:
        return share
    if screen is None:
        raise NeedMore("share", ASK_OPEN)
    return work.term("open share of the screen", SHARES[screen], "percent")


def _limits(work: Working, bottom: Term, gap: Term, share: Term, top_gap: Term | None, top_share: Term | None) -> None:
    """In at the bottom against out at the top: the smaller one limits the air."""
    if top_gap is None and top_share is None:
        work.also_word("in against out", "the same at the top: neither limits; a different top limits to the smaller")
        return
    top_gap, top_share = top_gap if top_gap is not None else gap, top_share if top_share is not None else share
    top = work.step("top per foot", top_gap * 12 * top_share / 100, "the same for the outlet", unit="in2perft")
    least = work.step("limit", smaller(bottom, top), "air moves no better than through the smaller", unit="in2perft")
    work.also("free area at the top, per foot", top)
    work.also("working free area, per foot", least)
    work.also_word(
        "what limits",
        "neither" if bottom.value == top.value else "the bottom" if bottom.value < top.value else "the top",
    )


def _slot_view(work: Working, gap: Term, per_foot: Term) -> None:
    view = work.view("bottom of the wall, from below")
    deep = float(gap.value)
    view.polygon([(0, deep), (12, deep), (12, deep + 1), (0, deep + 1)], fill="wall")
    view.polygon([(0, 0), (12, 0), (12, deep), (0, deep)], fill="opening")
    view.polygon([(0, -0.6), (12, -0.6), (12, 0), (0, 0)])
    view.dimension((12, 0), (12, deep), work.text(gap), side=-1)
    view.dimension((0, deep + 1), (12, deep + 1), "one foot", side=1)
    view.label((6, deep / 2), work.text(per_foot))


@topic("vent area", "water")
def vent_area(
    work: Working,
    ratio: Annotated[Ratio | None, Slot(ASK_RATIO, above=0, most=Fraction(1, 10), instead=("rule",))] = None,
    area: Annotated[Area | None, Slot(ASK_AREA, bare=("ft",), above=0, usual=(50, 20_000), instead=("length", "width"))] = None,
    length: Annotated[
        Length | None, Slot("How long is the attic?", bare=("ft",), above=0, cued=True, usual=(96, 1800), instead=("area",))
    ] = None,
    width: Annotated[
        Length | None, Slot("How wide is the attic?", bare=("ft",), above=0, cued=True, usual=(72, 1200), instead=("area",))
    ] = None,
    rule: Annotated[Rule | None, Slot(ASK_RATIO, instead=("ratio",))] = None,
    soffit: Annotated[
        Number | None,
        Slot(ASK_STRIP, above=0, name="soffit vent free area per foot", instead=("strip",)),
    ] = STRIP_VENT,
    strip: Annotated[
        Area | None,
        Slot(ASK_STRIP, unit="in2", above=0, name="free area of a foot of strip", cued=True, usual=(1, 60), instead=("soffit",)),
    ] = None,
    each: Annotated[
        Area | None,
        Slot("How much free area has each vent?", unit="in2", above=0, name="free area of each vent", cued=True, usual=(4, 600)),
    ] = None,
) -> None:
    """Net free vent area of an attic or soffit, in², at 1/150 or 1/300 of the ceiling.

    With what one vent has, also how many of them. Refuses an area of nothing or less, asks which ratio where it was not said.
    Sources: IRC R806.2, NBC 9.19.1.2.
    """
    if ratio is None:
        if rule is None:
            raise NeedMore("ratio", ASK_RATIO)
        ratio = work.term("ratio", RULES[rule], "ratio")
    if area is None:
        if length is None or width is None:
            raise NeedMore("area" if length is None and width is None else "width" if width is None else "length")
        area = work.step("area", length * width / 144, "length by width", unit="ft2")
    need = work.step("share of the area", area * ratio, "the free area is this share of the ceiling", unit="ft2")
    free = work.answer("free area", need * 144, "144 in² in a square foot", "in2", "A")
    half = work.step("half", free / 2, "half low, half high", unit="in2")
    per_foot = strip if strip is not None else soffit
    run = work.step("soffit strip", half / per_foot * 12, "the low half, through the soffit's own free area per foot", unit="in")
    work.also("low, at the soffit", half)
    work.also("high, at the ridge", half)
    work.also("length of vented soffit", run)
    if each is not None:
        work.also("vents for all of it", ceil(free / each), "count")
        work.also("vents for the high half alone", ceil(half / each), "count")
    other = Fraction(1, 150) if ratio.value == Fraction(1, 300) else Fraction(1, 300)
    work.also(f"at 1/{other.denominator}", area * work.term("ratio", other, "ratio") * 144, "in2")
    work.check("one square inch for each share of the ceiling's inches", free / ratio, "=", area * 144)
    work.caution(CODE_CAUTION)
    work.source(IRC, NBC, UPPER, PER_FOOT_SOURCE)
    _roof_view(work, half)


def _roof_view(work: Working, half: Term) -> None:
    view = work.view("section of the roof space")
    view.polygon([(0, 0), (10, 0), (5, 3)], fill="none")
    view.label((5, 3.4), f"high: {work.text(half)}")
    view.label((0.4, -0.7), f"low: {work.text(half)}")
    view.label((9.6, -0.7), "both eaves together")
