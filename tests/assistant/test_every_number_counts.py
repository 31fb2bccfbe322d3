"""No number that is said is let fall: it changes the answer, or it is asked about."""

from __future__ import annotations

from typing import Any

import pytest

from assistant.conversation import Conversation


def answered(line: str) -> dict[str, Any]:
    return Conversation().answer(line)


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("212 pieces, 16 foot each, 1.42 a foot. What's it come to?", 4816.64),
        ("40 boards 12 ft each at 1.85 a foot, cost", 888),
        ("20 boards 16 ft each at $30 each, cost", 600),
        ("how heavy are 22 planks, each one 4 m at 2 kg a metre", 176),
        ("nails for 20 courses 32 ft long every 16 inches, 2 nails per stud", 1000),
        ("nails for 14 courses of 22 ft every 8 inches, double nailed", 952),
        ("both gables together: 32 wide each, seven twelve. Total square feet?", 298.6667),
        ("area of three gables 20 wide and 6 high", 180),
        ("ignore the kerf: 12 ft stock, 3 pieces at 4 ft, how many sticks", 1),
        ("12 squares, 3 bundles to the square, 65 lb a bundle, weight", 2340),
        ("squares for 1 250 sq ft, no waste", 12.5),
        ("net wall area: a door at 3 by 5 ft, 49 by twelve", 573),
        ("wall 40 by 9, three 3 by 4s and a 3 by 7, net area", 303),
        ("28 foot across, rise 4 ft: gable area", 56),
        ("one bundle is 61 pounds, I've 14 bundles, what do they weigh", 854),
        ("gable no. 2, 7.2 m, 2.1 m tall, area?", 7.56),
        ("26 gauge, 3 inch and 4 inch legs, girth", 7),
        ("on the 3rd I bought 64 boards at $18.40 each, what's the bill", 1177.6),
        ("cost of the 3rd load: 40 boards at $12 each", 480),
        ("soffit panels: 15 in covers, 44 ft run, depth 14 in: soffit panel count", 36),
    ],
)
def test_each_number_has_its_part(line: str, value: float) -> None:
    record = answered(line)
    assert record["outcome"] == "answered", record["ask"]
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-4)


@pytest.mark.parametrize(
    ("line", "asked"),
    [
        ("30 sticks of trim, 16 ft, at $2.10 a foot, cost?", "30"),
        ("wall is 40 by 8 with three doors, net area", "three"),
        ("wall's 36 by 9 and there's four windows to come out of it, what's net", "four"),
        ("both sides of the house get soffit, 40 ft run, 16 inch deep, 12 in cover, panels", "both sides"),
        ("depth 14 in soffit panels, 15 inch ones, 44 ft run", "other way round"),
        ("covering size 15 in, run 44 ft, depth 14 in: soffit panel count", "panel cover"),
        ("What screw do I want through 18 mm cladding and 25 mm battens into the stud?", "penetrat"),
        ("L flashing, four inches each leg, girth", "leg"),
        ("2 300 sq ft walls, how many squares, no waste", "2"),
        ("how long a screw, siding is three quarters and straps three quarters on the sheathing which is half inch", "half inch"),
    ],
)
def test_what_has_no_part_is_asked_about(line: str, asked: str) -> None:
    record = answered(line)
    assert record["outcome"] == "asks", record["say"]
    assert asked in record["ask"]


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("even courses on 80 inches, exposure between 6 and 7 inches", 80 / 12),
        ("Girth for 8 pieces of corner flashing with legs 6 in and 6 in", 12),
        ("how far will a 22 foot copper flashing in one piece move over 120 degrees fahrenheit", None),
    ],
)
def test_what_may_change_nothing_is_no_matter(line: str, value: float | None) -> None:
    record = answered(line)
    assert record["outcome"] == "answered", record["ask"]
    assert value is None or record["answer"]["value"] == pytest.approx(value, rel=1e-3)
