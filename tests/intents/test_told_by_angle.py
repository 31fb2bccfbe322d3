"""Corners and sprung mouldings told by bare angles alone; the miter of a moulding that lies flat is worked from its spring."""

from math import atan, degrees, radians, sin, tan

import pytest

from tests.talking import last


def miter(spring: float, corner: float) -> float:
    """Of a moulding lying flat: tan(miter) = sin(spring) / tan(corner / 2)."""
    return degrees(atan(sin(radians(spring)) / tan(radians(corner) / 2)))


@pytest.mark.parametrize(
    ("line", "value"),
    [("miter 92", 44), ("miter for 135 degrees", 22.5), ("what's the miter for ninety two and a half", 43.75)],
)
def test_a_corner_by_its_angle(line: str, value: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(value)


def test_an_angle_that_may_be_the_setting_is_asked_about() -> None:
    assert last("miter 45")["outcome"] == "asks"
    assert last("miter")["ask"] == "What is the corner angle, in degrees?"


@pytest.mark.parametrize(
    ("line", "spring", "corner"),
    [
        ("crown 38 on a 90 inside", 38, 90),
        ("38 crown 90 corner", 38, 90),
        ("52/38 crown on a 92 corner", 38, 92),
        ("corner 90 crown 45", 45, 90),
    ],
)
def test_a_sprung_moulding_by_two_angles(line: str, spring: float, corner: float) -> None:
    record = last(line)
    assert record["topic"] == "compound cut"
    assert record["answer"]["value"] == pytest.approx(miter(spring, corner), abs=1e-6)


def test_a_sprung_moulding_is_not_cut_as_a_flat_one_unasked() -> None:
    assert last("crown for a 90 corner")["outcome"] == "asks"
    assert last("crown for a 90 corner", "compound cut", "38")["answer"]["value"] == pytest.approx(miter(38, 90), abs=1e-6)


@pytest.mark.parametrize("line", ["52 38 crown on an 88 corner", "38/52 crown, 88 corner", "crown 52 38 corner 88"])
def test_a_mouldings_two_angles_are_one_spring(line: str) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(miter(38, 88), abs=1e-6)
