"""A bay is cut by what it turns, not by how many sides it has."""

from __future__ import annotations

import pytest

from tests.talking import records


@pytest.mark.parametrize("asks", ["miter a 3 sided bay", "miter for a 5 sided bay", "saw setting for a bay"])
def test_a_bay_is_asked_for_its_angle(asks: str) -> None:
    lacks, found = records(asks, "45")
    assert lacks["ask"] == "What is the bay angle, in degrees?"
    assert found["answer"]["value"] == pytest.approx(22.5)


def test_a_bay_told_by_its_angle_is_no_ring() -> None:
    assert records("3 sided bay at 45, miter")[-1]["answer"]["value"] == pytest.approx(22.5)
