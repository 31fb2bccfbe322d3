"""How many one pack holds, how many go to each place, and how many there are, by the words beside each."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "boxes"),
    [
        ("How many boxes of brackets, 15 a box, if I put 13 on each of the four walls?", 4),
        ("We run two clips per board on 345 boards, 250 clips to a bucket: buckets?", 3),
        ("Ledger wants 64 structural screws and they only sell em in fifties, how many boxes do I grab", 2),
        ("bundles needed for 190 pickets bundled in sixteens", 12),
        ("240 ties come in 50s, how many boxes", 5),
        ("need 340 hooks sold by the dozen how many packs", 29),
        ("A carton carries 9 soffit vents and we want 40: how many cartons?", 5),
        ("bundle is twenty nine shingles and i need four hundred how many bundles", 14),
        ("sheet takes 32 nails and box is 1,000, how many boxes for 75 sheets", 3),
        ("36 pickets a side, both sides, 8 to a bundle, how many bundles", 9),
        ("wall ties, 5 to each metre, 62 metres, 250 a box, boxes?", 2),
        ("thirty eight post bases each gets for anchors twenty in a box how many boxes", 8),
    ],
)
def test_each_number_has_its_place(line: str, boxes: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("boxes", boxes)


def test_the_size_of_the_screws_is_left_out_and_said() -> None:
    record = last("80 mm screws, 14 per panel, 33 panels, tubs of 250, how many tubs")
    assert record["answer"]["value"] == 2
    assert "Left out: 80 mm" in record["say"]


def test_a_pack_that_goes_over_so_much_is_a_rate() -> None:
    record = last("110 m2 of wall tile, 1.44 m2 in each box, box count")
    assert (record["topic"], record["answer"]["value"]) == ("by the same rate", 77)


@pytest.mark.parametrize(
    "line",
    [
        "screws are a hundred to a box and i put six in every bracket how many boxes",
        "500 screws and 50 nails, boxes of 100 how many boxes",
        "900 pavers, 9 per m2, 450 on a pallet, how many pallets",
        "2 hinges a door, 18 doors, 3 screws a hinge, box of 50",
        "2 nails in each shingle, 29 shingles to a bundle, how many nails for 12 bundles",
        "8 screws per sheet, 40 sheets, 3 sheets spare, box of 200, boxes?",
    ],
)
def test_a_number_too_many_or_too_few_is_asked_about(line: str) -> None:
    assert last(line)["outcome"] != "answered"
