"""How many boxes, packs or cases so many things come in."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "boxes", "over"),
    [
        ("I need 960 screws and they come in boxes of 200", 5, 40),
        ("how many boxes of 100 for 1340 screws", 14, 60),
        ("tubes come 12 to a case, I need 40, how many cases", 4, 8),
        ("240 brackets, 4 screws in each, boxes of 200, how many boxes", 5, 40),
        ("how many packs of 50 for 200 ties", 4, 0),
    ],
)
def test_whole_boxes_and_what_is_over(line: str, boxes: int, over: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("boxes", boxes)
    assert next(also["value"] for also in record["also"] if also["name"] == "left over") == over


@pytest.mark.parametrize(
    ("line", "topic"),
    [
        ("fasteners for 16 courses 32 feet long every 16 inches, boxes of 200, how many boxes", "fasteners"),
        ("cost of 12 boxes at 54 a box", "cost"),
        ("12 boxes of nails at 50 lb a box", "weight"),
        ("how many cases of caulk for 300 feet of 1/4 by 1/4 joint", "sealant"),
    ],
)
def test_boxes_of_what_is_worked_otherwise(line: str, topic: str) -> None:
    assert last(line)["topic"] == topic
