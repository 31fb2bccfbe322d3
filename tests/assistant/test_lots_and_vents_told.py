"""What one vent or a foot of strip gives, what one layer adds in place of another; lots of several prices are asked about."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("text", "free", "feet"),
    [
        ("attic vents give 6 sq in a foot, 1200 sq ft attic at 1/300, how many feet", 576, 48),
        ("attic 1600 sq ft at 1/300, soffit vents give 6 square inches per foot", 768, 64),
        ("1/300 on a 1200 sq ft attic with 8 square inch per foot soffit strip", 576, 36),
        ("vent strip 6 sq in a lineal foot, attic 1200 sq ft 1/300", 576, 48),
        ("attic 1600 sq ft at 1/300, strip is 6 a foot, how many feet", 768, 64),
    ],
)
def test_a_foot_of_strip_gives_so_much(text: str, free: float, feet: float) -> None:
    record = last(text)
    assert record["answer"]["value"] == pytest.approx(free)
    strip = next(also for also in record["also"] if also["name"] == "length of vented soffit")
    assert strip["value"] == pytest.approx(feet * 12)
    assert not any(given["from"] == "assumed" for given in record["givens"])


@pytest.mark.parametrize(
    ("text", "vents"),
    [
        ("1400 square foot attic, 1/150, vents are 50 sq in each, how many", 27),
        ("attic 864 sq ft at 1/300, how many vents at 56 square inches each", 8),
        ("how many 50 square inch roof vents for a 1400 sq ft attic at 1/300", 14),
    ],
)
def test_each_vent_gives_so_much(text: str, vents: int) -> None:
    also = {value["name"]: value["value"] for value in last(text)["also"]}
    assert also["vents for all of it"] == vents


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("going from 3/8 mesh to 3/4 strap, how much deeper do the jambs get", 0.375),
        ("how much more build-out from 3/8 mat to 3/4 battens", 0.375),
        ("how much further out does 3/4 strapping put me than 3/8 mesh", 0.375),
        ("how much thicker is 3/4 strapping than 1/4 mesh", 0.5),
    ],
)
def test_one_layer_for_another_is_what_it_adds(text: str, inches: float) -> None:
    record = last(text)
    assert record["topic"] == "build-out"
    assert record["answer"]["value"] == pytest.approx(inches)


def test_the_layers_from_the_stud_out_are_still_added() -> None:
    assert last("from the stud to the face with 1/2 sheathing and 3/4 strapping, how deep")["answer"]["value"] == 1.25


def test_a_layer_inside_the_room_is_asked_about() -> None:
    record = last("1/2 drywall, 7/16 osb, 3/4 strapping, how deep is the build-out")
    assert record["outcome"] == "asks"
    assert "drywall" in record["ask"]


def test_no_lot_of_several_is_left_out_of_a_cost() -> None:
    assert last("3 rolls at 149 each and 12 tubes at 8.50")["answer"]["value"] == 549
    assert last("cost of 3 rolls at 149 and 12 tubes at 8.50")["answer"]["value"] == 549


@pytest.mark.parametrize(
    ("text", "inches"),
    [
        ("will a 2 inch nail hold through 3/4 with 1 1/4 bite", 2),
        ("will a 2 inch nail reach through 3/4 with 1 1/4 bite", 2),
        ("will a 2 1/2 screw go through 3/4 and get 1 1/4 in the stud", 2),
        ("will a 3 inch screw do through 1 1/2 and 3/4, 1 inch bite", 3.25),
    ],
)
def test_the_nail_that_is_asked_about_is_no_layer(text: str, inches: float) -> None:
    assert last(text)["answer"]["value"] == pytest.approx(inches)


@pytest.mark.parametrize(
    "text", ["pine shiplap 7 1/4 going from 15 down to 8, 20 boards, total", "vinyl 12 ft 100F change, 10 pieces total"]
)
def test_boards_in_all_are_asked_about(text: str) -> None:
    assert last(text)["outcome"] == "asks"
