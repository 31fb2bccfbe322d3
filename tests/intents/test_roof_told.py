"""A roof told by its plan: sides, plan areas, overhangs and squares by the words beside each; the rest is asked about."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "value", "unit"),
    [
        ("roof squares please: 24 wide, 36 long, 6/12, a foot of overhang all round, 10% waste", 12.151, "square"),
        ("the footprint's 1,120 sq ft and it's an 8 in 12. How many squares with 10% waste?", 14.807, "square"),
        ("roof of a barn fifty two by thirty six with a nine twelve pitch in squares no waste", 23.4, "square"),
        ("footprint 2,200. Ten in twelve. Roof squares, ten percent waste.", 31.501, "square"),
        ("roof area 40x28 5/12", 1213.333, "ft2"),
        ("fifty by thirty two ten twelve two foot overhang all the way around whats the roof in square feet", 2530.521, "ft2"),
        ("garage is 24 by 30 in plan, six twelve roof, no overhang. How many square feet of roof is that?", 804.984, "ft2"),
        ("gazebo is 14 ft on a side, square, 10/12. How much roof?", 255.138, "ft2"),
        ("pyramid roof, 20 feet square, 9/12: area of it all?", 500, "ft2"),
        ("how much tin in square meters nine by six building roof at fifteen degrees", 55.905, "m2"),
    ],
)
def test_each_size_has_its_place(line: str, value: float, unit: str) -> None:
    record = last(line)
    assert (record["outcome"], record["topic"], record["answer"]["unit"]) == ("answered", "roof area", unit)
    assert record["answer"]["value"] == pytest.approx(value, abs=0.01)


@pytest.mark.parametrize(
    "line",
    [
        "roof area 24 by 36, 6/12, less two skylights 2 by 4",
        "roof of 1200 square feet at 6/12, how many squares",  # up the slopes, or flat?
        "wall is 24 by 9, roof 6/12, how many squares",
        "one side of the roof of a 24 by 36 at 6/12, area",
        "24 by 36, 18 inch eaves and 12 inch rakes, 6/12, roof area",
        "6/12 roof, 30 foot wide, area?",
    ],
)
def test_what_has_no_place_is_asked_about(line: str) -> None:
    assert last(line)["outcome"] == "asks"


def test_squares_may_be_asked_for_after_the_area() -> None:
    record = last("roof area 24 by 36 at 6/12", "in squares", "no waste")
    assert record["answer"]["value"] == pytest.approx(9.66, abs=0.005)
