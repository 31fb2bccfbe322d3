"""Where boards butt: joints on studs, rows that miss each other."""

from __future__ import annotations

from fractions import Fraction
from itertools import pairwise


def row_joints(
    left: Fraction, right: Fraction, stock: Fraction, spacing: Fraction, avoid: frozenset[Fraction]
) -> list[Fraction] | None:
    """Joints for one row, `left` to `right`, in the fewest boards no longer than `stock`; None when it can't be done.

    Joints stand on studs at whole multiples of `spacing` and never where the row below has one (`avoid`), so rows miss
    each other by at least one stud; no board is left shorter than one bay. Taking the furthest stud each time is the
    fewest: whatever a nearer joint could reach, a further one can.
    """
    joints: list[Fraction] = []
    start = left
    while right - start > stock:
        stud = min(start + stock, right - spacing) // spacing * spacing
        while stud > start and stud in avoid:
            stud -= spacing
        if stud < start + spacing:
            return None
        joints.append(stud)
        start = stud
    return joints


def lengths_between(left: Fraction, right: Fraction, joints: list[Fraction]) -> list[Fraction]:
    """The boards of a row, left to right."""
    ends = [left, *joints, right]
    return [b - a for a, b in pairwise(ends)]
