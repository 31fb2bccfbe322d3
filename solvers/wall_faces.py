"""What is to be covered, as an area or as the sizes of a wall or a gable: the area is worked, and every step shown."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from solvers.binding import Slope
from solvers.errors import NeedMore
from solvers.exact import Term
from solvers.quantities import Length, Pitch
from solvers.slots import Opening, Slot
from solvers.wall_parts import measure_wall, opening_area
from solvers.working import Working

# All are taken only where words beside them tell their role: what is said of boards and rolls is lengths too.
FaceLong = Annotated[
    Length,
    Slot("How long is the wall?", unit="ft", bare=("ft",), above=0, most=400, name="wall length", cued=True, usual=(6, 200),
         instead=("area", "count", "length")),
]  # fmt: skip # "eleven hundred foot of wall" is square feet
FaceTall = Annotated[
    Length,
    Slot("How high is the wall?", unit="ft", bare=("ft", "in"), plain=40, above=0, most=200, name="wall height",
         cued=True, usual=(5, 60), instead=("area", "count", "length")),
]  # fmt: skip
GableTall = Annotated[
    Length,
    Slot("How high is the gable?", unit="ft", bare=("ft", "in"), plain=40, above=0, most=200, name="gable height",
         cued=True, usual=(1, 40), instead=("area", "pitch")),
]  # fmt: skip
FaceOpenings = Annotated[tuple[Opening, ...], Slot("What openings are in it?", cued=True)]
GablePitch = Annotated[
    Pitch,
    Slot(
        "What is the pitch of the gable, or its height?",
        above=0,
        name="pitch of the gable",
        cued=True,
        instead=("area", "gable_height"),
    ),
]

MOST_APART = 0.05  # a height off a tape, or rounded in the telling, may differ so much from the pitch


@dataclass(frozen=True, slots=True)
class Face:
    """A wall (length and height), a wall with a gable over it, or a gable alone (a length, and its pitch or height).

    `area` is what was said outright; openings come out of whichever there is.
    """

    area: Term | None = None  # ft²
    length: Term | None = None  # ft, as the other lengths
    height: Term | None = None
    pitch: Slope | None = None
    peak: Term | None = None  # height of the gable alone
    openings: tuple[Opening, ...] | None = None
    opened: Term | None = None  # ft²

    def measured(self, work: Working) -> Term | None:
        """The net area, ft², or None where neither an area nor a size was said. Refuses both at odds, and misfits."""
        if self.area is not None:
            return self._said(work, self.area)
        if self.length is None:
            if self.height is not None:
                raise NeedMore("wall_length", "How long is the wall?")
            return None
        if self.height is not None:
            wall = measure_wall(work, self.length, self.height, self.openings, self.pitch, self.opened, self.peak)
            return wall.net
        if self.pitch is None and self.peak is None:
            raise NeedMore("wall_height", "How high is the wall? For a gable, say its pitch.")
        return self._less(work, self._gable(work, self.length))

    def _said(self, work: Working, area: Term) -> Term:
        work.refuse_when(
            self.pitch is not None,
            f"an area of {work.text(area)} is taken as it stands, so a pitch has no part in it: leave the pitch out, or "
            "for a gable say its width and the pitch",
        )
        if self.length is not None and self.height is not None:
            wall = work.value(self.length * self.height)
            work.refuse_when(
                self.opened is not None or wall != work.value(area),
                f"you gave me an area of {work.text(area)} and a wall of {work.text(self.length)} by "
                f"{work.text(self.height)}: say which I should take, and call the openings openings",
            )
        return self._less(work, area)

    def _gable(self, work: Working, width: Term) -> Term:
        peak = self.peak
        if self.pitch is not None:
            why = "the pitch over half the width"
            name = "gable height" if peak is None else "height by the pitch"
            rise = work.step(name, width / 2 * self.pitch.rise / self.pitch.run, why, "ft")
            refuse_unlike(work, width, peak, rise)
            peak = peak or rise
        assert peak is not None
        area = work.step("gable", width * peak / 2, "half of width by height, a triangle", "ft2")
        work.check("two right triangles, one each side of the peak", 2 * (width / 2 * peak / 2), "=", area)
        return area

    def _less(self, work: Working, area: Term) -> Term:
        """The area with the openings out."""
        taken = opening_area(work, self.openings or ())
        if self.opened is not None:
            taken = self.opened if taken is None else work.step(
                "all openings", taken + self.opened, "those by size and the rest", "ft2"
            )  # fmt: skip
        if taken is None:
            return area
        work.refuse_when(
            work.value(area - taken) <= 0,
            f"the openings come to {work.text(taken)} and all there is to cover is {work.text(area)}: check their sizes",
        )
        return work.step("net", area - taken, "what is left when the openings are out", "ft2")


def refuse_unlike(work: Working, width: Term, peak: Term | None, rise: Term) -> None:
    """Refuse a height said for a gable that its pitch does not make: it may be of the wall under it."""
    if peak is not None:
        apart = abs(float(work.value(peak)) / float(work.value(rise)) - 1)
        work.refuse_when(
            apart > MOST_APART,
            f"a gable {work.text(width)} wide at that pitch is {work.text(rise)} high, and you said {work.text(peak)}: leave "
            "one out, or call it the height of the wall",
        )
