"""Whole courses in every zone of a wall, with exposures as near alike as whole courses allow."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from dataclasses import dataclass
from fractions import Fraction
from math import ceil, floor, lcm


@dataclass(frozen=True, slots=True)
class Zone:
    """A band of wall between two lines that courses must land on, exact inches from the pole's start."""

    name: str
    bottom: Fraction
    top: Fraction

    @property
    def height(self) -> Fraction:
        return self.top - self.bottom

    def counts(self, least: Fraction, greatest: Fraction) -> range:
        """How many whole courses fit with an exposure from `least` to `greatest`; empty when none do."""
        return range(max(1, ceil(self.height / greatest)), floor(self.height / least) + 1)


def smallest_spread(zones: list[Zone], least: Fraction, greatest: Fraction) -> list[int] | None:
    """Courses per zone so that the widest and the narrowest exposure differ least; fewest courses where two ways tie.

    None when some zone has no whole number of courses in range. Exact: the narrowest window that holds one exposure of
    each zone always starts at one of the exposures, so every exposure is tried as its lower end. All are held in one
    unit so small that each is a whole number of it, since there may be thousands to compare.
    """
    ranges = [zone.counts(least, greatest) for zone in zones]
    if not all(ranges):
        return None
    unit = lcm(*(zone.height.denominator for zone in zones)) * lcm(*{n for row in ranges for n in row})
    choices = [[int(zone.height * unit) // n for n in reversed(row)] for zone, row in zip(zones, ranges, strict=True)]
    best: tuple[int, int] | None = None
    counts: list[int] = []
    for low in sorted({exposure for row in choices for exposure in row}):
        places = [bisect_left(row, low) for row in choices]
        if any(place == len(row) for place, row in zip(places, choices, strict=True)):
            break
        top = max(row[place] for place, row in zip(places, choices, strict=True))
        # Within the window each zone takes its widest exposure: the spread is the same and the courses fewer.
        ends = [bisect_right(row, top) for row in choices]
        widest = [row[end - 1] for end, row in zip(ends, choices, strict=True)]
        found = [row[-end] for end, row in zip(ends, ranges, strict=True)]
        key = (max(widest) - min(widest), sum(found))
        if best is None or key < best:
            best, counts = key, found
    return counts


@dataclass(frozen=True, slots=True)
class Miss:
    """What a zone costs when no exposure in range lands on its top line."""

    zone: Zone
    fewer: int  # courses wider than the greatest exposure; 0 when one course already is too narrow
    more: int  # courses narrower than the least
    rip: Fraction  # height of the last course when the greatest exposure runs through


def miss(zone: Zone, greatest: Fraction) -> Miss:
    """The two nearest choices for a zone without a whole count in range, and the rip left by running through."""
    more = max(1, ceil(zone.height / greatest))
    return Miss(zone, more - 1, more, zone.height - floor(zone.height / greatest) * greatest)
