"""Ladders: how far out the foot stands."""

from __future__ import annotations

from fractions import Fraction
from typing import Annotated

from solvers.common import LADDER_CAUTION
from solvers.exact import acos, atan, sqrt
from solvers.quantities import Length
from solvers.registry import topic
from solvers.slots import Slot
from solvers.working import Working

OSHA = "29 CFR 1926.1053(b)(5)(i): the foot stands out about a quarter of the working length of the ladder"
RAILS = "29 CFR 1926.1053(b)(1): side rails 3 ft above the landing, or the ladder tied and a grab rail"
SITE_RULE = "a quarter of the height: the rule as said on site, common practice"
PAST = 36  # inches of rail past the landing
LOWEST = 36  # inches; nobody leans a ladder lower, but a foot stands that far out
TALLEST = 480  # inches; past it no portable ladder is right


@topic("ladder footing", "fastening")
def ladder_footing(
    work: Working,
    height: Annotated[
        Length,
        Slot("What height does the ladder bear at?", bare=("ft",), above=0, name="height of the bearing point", usual=(72, 480)),
    ],
) -> None:
    """How far out the ladder's foot stands, inches: a quarter of the height where it bears.

    Also a quarter of the working length, as the regulation words it (75.5°). Refuses under 3 ft, and over 40 ft.
    """
    work.refuse_when(
        height.value > TALLEST,
        f"a ladder bearing at {work.text(height)} is past any portable ladder: use a scaffold or a lift",
    )
    work.refuse_when(
        height.value < LOWEST,
        f"{work.text(height)} is too low for a ladder to bear at: say the height it bears at, not how far out its foot is",
    )
    out = work.answer("foot out", height / 4, "one out for every four up", "in", "out")
    rule = work.step("by the rule", height / sqrt(15), "a quarter of the ladder's own length instead of the height", unit="in")
    length = work.step("working length", sqrt(height**2 + out**2), "from foot to bearing point", unit="in")
    past = work.step("length to buy", length * (height + PAST) / height, "and on to 3 ft above the landing", unit="in")
    theta = work.step("θ", atan(height / out), "the ladder's angle from level")
    wording = work.step("θ rule", acos(work.term("quarter", Fraction(1, 4), "none")), "the angle of a quarter of the length")
    work.also("a quarter of the working length", rule)
    work.also("angle, a quarter of the height", theta)
    work.also("angle, a quarter of the working length", wording)
    work.also("working length", length)
    work.also("length for 3 ft past the landing", past)
    work.check("the rule's triangle closes: its length is four times its foot", rule**2 + height**2, "=", (4 * rule) ** 2)
    work.check("the foot as said on site stands nearer than the rule's", out, "<=", rule)
    work.caution(LADDER_CAUTION)
    work.source(SITE_RULE, OSHA, RAILS)
    view = work.view("side view")
    tall, foot = float(height.value), float(out.value)
    more = PAST / tall
    view.polygon([(0, 0), (-tall * 0.08, 0), (-tall * 0.08, tall), (0, tall)], fill="wall")
    view.line((-tall * 0.1, 0), (foot * 1.4, 0), "level")
    view.line((foot, 0), (-foot * more, tall * (1 + more)), "cut")
    view.dimension((0, 0), (foot, 0), work.text(out), side=-1)
    view.dimension((0, 0), (0, tall), work.text(height), side=1)
    view.angle((foot, 0), foot * 0.5, 180 - float(theta.value), 180, work.text(theta))
