"""A roof's area by its plan, a gable's with its openings out, and a hip that was measured worked backwards."""

from __future__ import annotations

import math
from fractions import Fraction
from typing import Any

import pytest

from solvers.quantities import Length
from solvers.registry import Worked
from solvers.roof import Across
from solvers.slots import Opening
from solvers.topics.rakes import HipAsked
from solvers.topics.roof_area import RoofIn
from tests.working import also, work


def answer(worked: Worked) -> float:
    assert worked.working is not None and worked.working.result is not None, worked.refused or worked.asks
    assert worked.working.result.value is not None
    return float(worked.working.result.value)


def opening(wide: int, high: int, count: int = 1) -> Opening:
    return Opening(count, Length(Fraction(wide), "ft"), Length(Fraction(high), "ft"))


@pytest.mark.parametrize(("rise", "per_foot"), [(3, 12.369), (6, 13.416), (8, 14.422), (12, 16.971)])  # the framing square's
def test_a_roof_is_its_plan_by_the_common_rafter_for_a_foot_of_run(rise: int, per_foot: float) -> None:
    worked = work("roof area", pitch=f"{rise} in12", length="40 ft", width="24 ft")
    assert answer(worked) == pytest.approx(960 * per_foot / 12, rel=1e-4)
    assert also(worked, "plan area") == 960


def test_an_overhang_goes_all_round_the_plan() -> None:
    worked = work("roof area", pitch="5 in12", length="30 ft", width="20 ft", overhang="12 in")
    assert also(worked, "plan area") == 32 * 22
    assert answer(worked) == pytest.approx(32 * 22 * 13 / 12)


def test_a_plan_area_takes_no_overhang_and_gives_the_same() -> None:
    assert answer(work("roof area", pitch="5 in12", plan="600 ft2")) == pytest.approx(650)
    assert work("roof area", pitch="5 in12", plan="600 ft2", overhang="12 in").refused
    assert work("roof area", pitch="5 in12").asks


def test_the_waste_goes_into_the_squares_alone() -> None:
    worked = work("roof area", pitch="5 in12", plan="600 ft2", waste="20 percent")
    assert answer(worked) == pytest.approx(650)
    assert also(worked, "squares with the waste") == pytest.approx(7.8)


def test_squares_are_the_answer_where_they_are_asked_for() -> None:
    worked = work("roof area", pitch="5 in12", plan="600 ft2", waste="20 percent", asked=RoofIn.SQUARES)
    assert answer(worked) == pytest.approx(7.8)
    assert also(worked, "roof area") == pytest.approx(650)


@pytest.mark.parametrize(("openings", "net"), [((opening(2, 3),), 66), ((opening(2, 3, 2), opening(3, 4)), 48)])
def test_openings_come_out_of_a_gable(openings: tuple[Opening, ...], net: int) -> None:
    worked = work("gable area", width="24 ft", pitch="6 in12", openings=openings)
    assert answer(worked) == net
    assert also(worked, "gross area") == 72


@pytest.mark.parametrize("more", [{"openings": (opening(12, 6),)}, {"openings": (opening(2, 3),), "count": "2 count"}])
def test_openings_that_leave_nothing_or_may_be_in_each_are_refused(more: dict[str, Any]) -> None:
    assert work("gable area", width="24 ft", pitch="6 in12", **more).refused


@pytest.mark.parametrize("pitch", [4, 6, 12])
@pytest.mark.parametrize("asked", [None, HipAsked.RUN, HipAsked.RISE])
def test_a_measured_hip_gives_back_the_run_it_was_made_from(pitch: int, asked: HipAsked | None) -> None:
    forwards = work("hip or valley length", pitch=f"{pitch} in12", run="120 in")
    hip = Fraction(answer(forwards)).limit_denominator(10**9)
    told = {"asked": asked} if asked else {}
    back = work("hip or valley length", pitch=f"{pitch} in12", run=f"{hip} in", across=Across.ALONG, **told)
    rise = 10 * pitch
    assert answer(back) == pytest.approx(rise if asked is HipAsked.RISE else 120, abs=1e-6)
    plumb, level = (also(back, f"{cut} cut of the hip") for cut in ("plumb", "level"))
    assert plumb == pytest.approx(math.degrees(math.atan(pitch / (12 * math.sqrt(2)))), abs=0.01)
    assert plumb + level == pytest.approx(90)
