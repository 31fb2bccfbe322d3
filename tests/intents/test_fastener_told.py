"""A screw of known length, a ladder's own length, and small words beside numbers."""

from __future__ import annotations

import pytest

from tests.talking import last

CREW = (
    "Four of us, two ladders, one of them's a 32 footer that weighs as much as my truck, and the eave we're all staring at is"
    " 23 feet up, so how far out does the bottom go?"
)


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        (("screws are 3 inch", "how much bite through 3/4 and 5/8"), "fastener penetration", 1.625),
        (("nails are 2 1/2, siding 3/4, ply 1/2, how much do they hold",), "fastener penetration", 1.25),
        (("screw through 3/4 and 5/8, 1 1/2 in the stud",), "fastener length", 2.875),
        (("screws at 1 1/2 into the stud through 3/4",), "fastener length", 2.25),
        ((CREW,), "ladder footing", 69),
        (("larch 120 mm wide, 20 percent to 14", "an for 95 wide"), "wood movement", -95 * 0.00323 * 6),
    ],
)
def test_it_comes_to(lines: tuple[str, ...], topic: str, value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["value"] == pytest.approx(value)


def test_two_layers_and_a_bite_are_no_sum() -> None:
    assert last("how much bite through 3/4 and 5/8")["outcome"] == "asks"


def test_nothing_is_cut_by_how_far_out_a_ladder_stands() -> None:
    said = last("ladder at 17 feet", "I reckon 4 foot")["say"]
    assert "3 inches less" in said
    assert "cut by: measure" not in said
