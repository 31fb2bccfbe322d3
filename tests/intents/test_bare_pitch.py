"""A pitch told by its rise alone is taken where nothing else is lacking, and the number can be nothing else."""

from math import atan, degrees

import pytest

from tests.talking import last


def theta(rise: float) -> float:
    return degrees(atan(rise / 12))


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("rake return 7", (90 + theta(7)) / 2),
        ("rake return seven", (90 + theta(7)) / 2),
        ("peak joint at 7", theta(7)),
        ("plumb cut at 8 and a half", theta(8.5)),
        ("rake to level 9", theta(9) / 2),
        ("angle of a 7 roof", theta(7)),
    ],
)
def test_the_rise_alone(line: str, value: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(value, abs=1e-6)


@pytest.mark.parametrize(
    "line", ["rake return for 2 gables", "rake return on wall 3", "rake return detail 4", "rake return 7 inch fascia"]
)
def test_another_number_is_no_pitch(line: str) -> None:
    assert last(line)["outcome"] == "asks"


def test_one_that_may_be_degrees_is_asked_about() -> None:
    assert "18 in 12 or 18°" in last("rake return 18")["ask"]
