"""What a builder tells besides, which is no part of a sum and no given: what is to be ignored, an hour, how tall somebody is."""

from __future__ import annotations

import pytest

from tests.talking import last


def _value(said: str) -> float:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    return float(record["answer"]["value"])


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("beam 107 1/2 long, notched 15 7/8 in from either end. Distance between notches is what, ignore the bolt at 54", 75.75),
        ("the alcove's 88 3/4 wide and the shelf wants a quarter off each end, the owner is six foot two, how long's the shelf",
         88.25),
        ("ridge stands 22 ft 5 over the slab, the eave 19 ft 8 5/8; scaffold boards are at 18. How much higher is the ridge than"
         " the eave?", 32.375),
        ("144 inch counter. sink base 27, and a dishwasher I'm told is 24 but that's going elsewhere, drawer packs both 31 1/2."
         " How much is spare?", 54),
    ],
)  # fmt: skip
def test_no_part_of_the_sum(said: str, value: float) -> None:
    assert _value(said) == pytest.approx(value)


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("640 square feet, 6 inch exposure, 16 foot boards, 10 percent waste, the mill's open till four, how many boards", 88),
        ("what's 64 clips at 7.25 each, they only had 40 on the shelf Friday but the rest is in, I want the total for all", 464),
        ("85 boards at 2.4 lb each, with a trailer rated for 300, what's the total weight of the boards", 204),
        ("17 feet up the slope, shingles show 7 inches, the roof's a six twelve, how many step flashings", 30),
        ("bearing point's 9 foot 10 and the apprentice reckons 4 foot out, where do I put the foot of the ladder", 29.5),
        ("310 feet of batten at $1.85 a foot, the other yard was 2.10, what's that come to before tax", 573.5),
    ],
)
def test_no_given(said: str, value: float) -> None:
    assert _value(said) == pytest.approx(value)


def test_what_is_a_part_all_the_same() -> None:
    """A length that stays, though words near it are those of a remark."""
    assert _value("wall's 144, the door is 36 and the owner wants a 24 cabinet beside it, how much is left") == 84
    assert _value("two shelves at 31 1/4 and a 12 inch one, how much board is that in total") == 74.5


def test_a_box_of_nails_is_no_hold() -> None:
    """Will need to know: no claim that the nails will do."""
    record = last("half inch siding over one inch strapping over half inch sheathing and a box of two and a half inch nails, will"
                  " need to know what length is right")  # fmt: skip
    assert record["outcome"] == "asks"
    assert "penetration" in record["ask"].lower()
