"""Topics that take an area take the sizes of a wall or a gable as well, and come to the same."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest

from solvers.quantities import Weight
from solvers.topics.loads import Per
from tests.working import work

FACES = [
    ({"wall_length": "60 ft", "wall_height": "10 ft"}, 600),
    ({"wall_length": "60 ft", "wall_height": "10 ft", "opened": "84 ft2"}, 516),
    ({"wall_length": "28 ft", "pitch": "6 in12"}, 98),
    ({"wall_length": "28 ft", "gable_height": "7 ft"}, 98),
    ({"wall_length": "28 ft", "wall_height": "10 ft", "pitch": "6 in12"}, 378),
    ({"wall_length": "28 ft", "wall_height": "10 ft", "gable_height": "7 ft"}, 378),
]
TOPICS = [
    ("squares", {}),
    ("cladding boards", {"exposure": "6 in", "board_length": "12 ft"}),
    ("membrane rolls", {"roll_width": "3 ft", "roll_length": "50 ft"}),
    ("sheets", {}),
    ("weight", {"weight": Weight(Fraction(5, 2), "lb"), "per": Per.FT2}),
    ("cost", {"price": "17/4 money", "per": Per.FT2}),
]


@pytest.mark.parametrize(("topic", "rest"), TOPICS)
@pytest.mark.parametrize(("sizes", "area"), FACES)
def test_a_face_comes_to_what_its_area_comes_to(
    topic: str, rest: dict[str, Any], sizes: dict[str, str], area: int
) -> None:
    by_sizes, by_area = work(topic, **rest, **sizes), work(topic, **rest, area=f"{area} ft2")
    assert by_sizes.working and by_area.working, by_sizes.refused or by_sizes.asks
    assert by_sizes.working.result == by_area.working.result
    assert len(by_sizes.working.steps) > len(by_area.working.steps)


@pytest.mark.parametrize(("topic", "rest"), TOPICS)
def test_an_area_and_sizes_at_odds_are_refused(topic: str, rest: dict[str, Any]) -> None:
    worked = work(topic, **rest, area="500 ft2", wall_length="60 ft", wall_height="10 ft")
    assert "say which" in worked.refused
    assert "pitch" in work(topic, **rest, area="500 ft2", pitch="6 in12").refused
    assert "openings" in work(topic, **rest, area="500 ft2", opened="500 ft2").refused
    assert "high" in work(topic, **rest, wall_length="60 ft").asks
