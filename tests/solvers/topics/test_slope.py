"""Slope topics: what must hold for any roof, and what no number can be right for."""

from __future__ import annotations

from fractions import Fraction
from math import atan2, degrees, hypot, isclose, radians, sqrt, tan
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.quantities import Angle, Length, Pitch
from solvers.topics.rakes import Measured
from solvers.topics.slope import SlopeAs
from tests.working import also, answer, work

pitches = st.fractions(Fraction(1, 4), 24, max_denominator=16).map(lambda rise: Pitch(rise, "in12"))
lengths = st.fractions(1, 600, max_denominator=32).map(lambda inches: Length(inches, "in"))
few = settings(max_examples=40, deadline=None)


@few
@given(pitches)
def test_pitch_and_angle_are_each_other_turned_round(pitch: Pitch) -> None:
    theta = answer("roof angle", pitch=pitch)
    assert isclose(theta, degrees(atan2(pitch.value, 12)), rel_tol=1e-12)
    exact = Fraction(theta).limit_denominator(10**12)
    assert answer("pitch of an angle", angle=Angle(exact, "deg")) == pytest.approx(float(pitch.value), rel=1e-9)


@few
@given(pitches, lengths)
def test_slope_run_and_rise_close(pitch: Pitch, run: Length) -> None:
    worked = work("sloped length", pitch=pitch, run=run)
    slope, rise = answer("sloped length", pitch=pitch, run=run), also(worked, "rise")
    assert isclose(slope, hypot(float(run.value), rise), rel_tol=1e-12)
    assert isclose(rise, answer("rise over a run", pitch=pitch, run=run), rel_tol=1e-12)
    back = answer("pitch from rise and run", rise=Length(run.value * pitch.value / 12, "in"), run=run)
    assert isclose(back, float(pitch.value), rel_tol=1e-12)


@few
@given(pitches, lengths)
def test_from_the_rise_is_the_same_slope(pitch: Pitch, run: Length) -> None:
    rise = Length(run.value * pitch.value / 12, "in")
    assert isclose(
        answer("sloped length", pitch=pitch, rise=rise), answer("sloped length", pitch=pitch, run=run), rel_tol=1e-12
    )


@few
@given(pitches, lengths, st.fractions(0, 48, max_denominator=16))
def test_rake_reaches_from_the_peak_to_the_end_of_the_overhang(pitch: Pitch, width: Length, over: Fraction) -> None:
    height = answer("gable height", pitch=pitch, width=width)
    peak, out = np.array([0.0, height]), float(width.value / 2 + over)
    tail = np.array([out, height - out * float(pitch.value) / 12])
    rake = answer("rake length", pitch=pitch, width=width, overhang=Length(over, "in"))
    assert isclose(rake, float(np.linalg.norm(peak - tail)), rel_tol=1e-12)
    along = answer("rake length", pitch=pitch, width=width, overhang=Length(over, "in"), measured=Measured.SLOPE)
    assert isclose(along, answer("rake length", pitch=pitch, width=width) + float(over), rel_tol=1e-12)


@few
@given(pitches, lengths)
def test_hip_is_the_diagonal_of_its_box_and_two_roofs_meet_on_it(pitch: Pitch, run: Length) -> None:
    worked = work("hip or valley length", pitch=pitch, run=run)
    across, up = float(run.value), float(run.value * pitch.value / 12)
    assert isclose(answer("hip or valley length", pitch=pitch, run=run), sqrt(2 * across**2 + up**2), rel_tol=1e-12)
    first, second = np.array([-up, 0, across]), np.array([0, -up, across])  # normals of the two roofs
    cosine = first @ second / (np.linalg.norm(first) * np.linalg.norm(second))
    assert also(worked, "angle between the roofs") == pytest.approx(180 - degrees(np.arccos(cosine)), abs=1e-7)


def test_the_grade_answers_when_it_is_asked_for() -> None:
    assert answer("roof angle", pitch="6 in12", asked=SlopeAs.GRADE) == 50


def test_a_pitch_said_as_an_angle_is_the_same_roof() -> None:
    assert answer("rise over a run", pitch="30 deg", run="12 ft") == pytest.approx(144 * tan(radians(30)))


def test_metric_in_gives_metric_out() -> None:
    worked = work("gable height", pitch="4 in12", width="7800 mm")
    assert worked.working is not None and worked.working.result is not None
    assert (worked.working.result.text, worked.working.result.unit) == ("1300 mm", "mm")


@pytest.mark.parametrize(
    ("topic", "givens", "word"),
    [
        ("rake length", {"pitch": "0 in12", "width": "24 ft"}, "flat"),
        ("gable height", {"pitch": "0 in12", "width": "24 ft"}, "flat"),
        ("hip or valley length", {"pitch": "0 in12", "run": "24 ft"}, "flat"),
        ("roof angle", {"pitch": "400 in12"}, "400"),
        ("roof angle", {"pitch": "-5 in12"}, "pitch"),
        ("pitch of an angle", {"angle": "95 deg"}, "95"),
        ("pitch of an angle", {"angle": "90 deg"}, "90"),
        ("pitch from rise and run", {"rise": "5 ft", "run": "0 ft"}, "run"),
        ("pitch from rise and run", {"rise": "-4 in", "run": "2 ft"}, "rise"),
        ("sloped length", {"pitch": "5 in12", "run": "-8 ft"}, "run"),
        ("sloped length", {"pitch": "5 in12", "run": "10 ft", "rise": "3 ft"}, "not at that pitch"),
        ("sloped length", {"pitch": "0 in12", "rise": "3 ft"}, "never rises"),
        ("rake length", {"pitch": "5 in12", "width": "-20 ft"}, "width"),
    ],
)
def test_refused(topic: str, givens: dict[str, Any], word: str) -> None:
    """No number can be right; the sentence names what is wrong."""
    worked = work(topic, **givens)
    assert worked.working is None and word in worked.refused


def test_a_flat_roof_has_an_angle_and_a_length() -> None:
    assert answer("roof angle", pitch="0 in12") == 0
    assert answer("sloped length", pitch="0 in12", run="10 ft") == 120


@pytest.mark.parametrize(
    ("topic", "givens", "wanted"),
    [
        ("sloped length", {"pitch": "6 in12"}, "run"),
        ("rake length", {"width": "24 ft"}, "pitch"),
        ("gable height", {"pitch": "6 in12"}, "width"),
        ("pitch from rise and run", {"rise": "6 ft"}, "run"),
    ],
)
def test_asks_for_what_is_missing(topic: str, givens: dict[str, Any], wanted: str) -> None:
    worked = work(topic, **givens)
    assert worked.working is None and worked.wanted == wanted and worked.asks.endswith("?")
