"""Whether a saw reaches a setting, and the ways round when it does not."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from solvers.common import JIG_CAUTION, SAW_CAUTION, SMALL_PIECE_CAUTION
from solvers.errors import NeedMore
from solvers.exact import Term, cos, larger, sin
from solvers.quantities import Angle
from solvers.registry import topic
from solvers.saw_drawing import on_the_jig, on_the_saw
from solvers.slots import Choice, Slot
from solvers.working import Working

Setting = Annotated[
    Angle, Slot("What setting do you need on the saw, in degrees?", least=0, below=90, name="setting")
]
SawLimit = Annotated[
    Angle,
    Slot(
        "How far does your saw swing, in degrees?",
        above=0,
        most=90,
        name="saw limit",
        kept="saw limit",
        cued=True,
        usual=(15, 75),
        instead=("asked",),  # how it is cut was asked of that saw alone
    ),
]
LeftLimit = Annotated[
    Angle, Slot("How far does your saw swing left?", least=0, most=90, name="swing left", kept="saw limit left", usual=(15, 75))
]
RightLimit = Annotated[
    Angle,
    Slot("How far does your saw swing right?", least=0, most=90, name="swing right", kept="saw limit right", usual=(15, 75)),
]
BevelWanted = Annotated[Angle, Slot("What bevel do you need, in degrees?", least=0, below=90, name="bevel")]
BevelLimit = Annotated[
    Angle, Slot("How far does your saw tilt, in degrees?", above=0, most=90, name="saw tilt", kept="saw tilt", usual=(30, 60))
]


class Side(Choice):
    """A side of the saw, as one stands at it."""

    LEFT = "left"
    RIGHT = "right"
    BOTH = "both sides"


class Asked(Choice):
    """Whether the saw can, or how to make the cut."""

    WHETHER = "whether it can"
    HOW = "how to cut it"


@dataclass(frozen=True, slots=True)
class Saw:
    """What a saw reaches: the swing to each side, and the side it tilts to where that was told."""

    left: Term
    right: Term
    tilt: Side | None

    @property
    def furthest(self) -> Term:
        return self.left if self.left.value >= self.right.value else self.right

    def reaches(self, side: Side, setting: Term) -> bool:
        return bool(setting.value <= (self.left if side is Side.LEFT else self.right).value)


@topic("can my saw cut it", "corners")
def can_my_saw_cut_it(
    work: Working,
    setting: Setting,
    limit: SawLimit | None = None,
    left: LeftLimit | None = None,
    right: RightLimit | None = None,
    bevel: BevelWanted | None = None,
    bevel_limit: BevelLimit | None = None,
    tilt: Side | None = None,
    side: Side | None = None,
    asked: Asked | None = None,
) -> None:
    """Whether the saw's scale reaches a setting (yes or no), or the degrees to dial when asked how.

    Past the scale: from the other side, against a square jig at 90° − setting, or marked with a bevel gauge and cut by
    hand. Refuses a setting of 90° and over. Source: geometry, and common practice at the saw.
    """
    saw = _saw(limit, left, right, tilt)
    dial = work.step("jig dial", 90 - setting, "against a square jig the piece stands a quarter turn round")
    way = _way(setting, dial, saw)
    if asked is Asked.HOW:
        _answer_how(work, way, setting, dial)
    elif bevel is None:
        work.yes_or_no("on the scale", setting, "<=", saw.furthest, "a setting at the stop is still on the scale")
    else:
        _with_bevel(work, setting, saw, bevel, bevel_limit)
    work.also("dial against a square jig", dial)
    how = _how_words(work, way, setting, dial, saw, side)
    work.also_word("how", how)
    work.said = _said(work, how, asked)
    if bevel is not None:
        work.also_word("tilt", _tilt_words(work, saw.tilt, bevel, bevel_limit))
    work.check("a square jig swaps the two legs of the cut", sin(dial), "=", cos(setting))
    work.source("common practice at the saw")
    work.caution(SAW_CAUTION, SMALL_PIECE_CAUTION)
    if way is Way.SWING:
        on_the_saw(work, setting, dial)
    else:
        work.caution(JIG_CAUTION)
        on_the_jig(work, dial)


class Way(Choice):
    """How a cut gets made."""

    SWING = "on the scale"
    JIG = "against a square jig"
    HAND = "by hand"


def _saw(limit: Term | None, left: Term | None, right: Term | None, tilt: Side | None) -> Saw:
    left, right = left or limit, right or limit
    if left is None and right is None:
        raise NeedMore("limit")
    if left is None or right is None:
        raise NeedMore("left" if left is None else "right")
    return Saw(left, right, tilt)


def _way(setting: Term, dial: Term, saw: Saw) -> Way:
    if setting.value <= saw.furthest.value:
        return Way.SWING
    return Way.JIG if dial.value <= saw.furthest.value else Way.HAND


def _answer_how(work: Working, way: Way, setting: Term, dial: Term) -> None:
    if way is Way.SWING:
        work.answer("dial", setting, "it is on the scale", "deg")
    elif way is Way.JIG:
        work.answer("dial against a square jig", dial)
    else:
        work.answer("edge angle for the bevel gauge", dial)


def _with_bevel(work: Working, setting: Term, saw: Saw, bevel: Term, bevel_limit: Term | None) -> None:
    """Yes only when the swing and the tilt are both on their scales."""
    if bevel_limit is None:
        raise NeedMore("bevel_limit")
    over = larger(setting - saw.furthest, bevel - bevel_limit)
    past = work.step("past", over, "the worse of the two, past its stop; under nothing when it is on the scale")
    work.yes_or_no("on both scales", past, "<=", work.term("stop", 0, "deg"), "neither may be past its stop")


def _how_words(work: Working, way: Way, setting: Term, dial: Term, saw: Saw, side: Side | None) -> str:
    swing, jig = work.text(setting), work.text(dial)
    if way is Way.HAND:
        past = f"{swing} and the jig's {jig} are both past the scale"
        return f"{past}: set a bevel gauge to {jig}, mark the edge, cut by hand"
    if way is Way.JIG:
        return f"stand the piece against a square jig and dial {jig}; its mirror takes {jig} to the other side"
    sides = [s for s in (Side.LEFT, Side.RIGHT) if saw.reaches(s, setting)]
    if side in (Side.LEFT, Side.RIGHT):
        if side in sides:
            return f"swing {side.value} to {swing}"
        return f"swing it from the other side: {sides[0].value} to {swing}, the piece face down, same edge to the fence"
    if len(sides) == 2:
        return f"swing right to {swing} for one piece, left to {swing} for its mirror"
    return f"swing {sides[0].value} to {swing} for both; the mirror piece lies face down, same edge to the fence"


def _said(work: Working, how: str, asked: Asked | None) -> str:
    """The answer and the way round in one breath, the signs as words."""
    whether = "" if asked is Asked.HOW or work.result is None else f"{work.result.text}: "
    return (whether + how).replace("°", " degrees")


def _tilt_words(work: Working, tilt: Side | None, bevel: Term, bevel_limit: Term | None) -> str:
    if bevel_limit is not None and bevel.value > bevel_limit.value:
        return "past the tilt: hold the trim sprung against the fence, upside down, and swing half the corner's turn"
    if tilt in (Side.LEFT, Side.RIGHT):
        tilted = f"tilt {tilt.value} to {work.text(bevel)}"
        return f"{tilted}; for the mirror turn the piece end for end and swing the other way"
    return f"tilt to {work.text(bevel)}, the other way for the mirror"
