"""Movement told by temperatures in any words, and follow-ups whose bare number takes the unit of the value it replaces."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("text", "topic", "value", "unit"),
    [
        ("steel flashing 30 feet put up at 50 F, the sun takes it to 140, does it grow", "thermal movement", 3 / 16, "in"),
        ("how far does a 24 foot aluminium gutter creep between 20 and 120 F", "thermal movement", 3 / 8, "in"),
        ("how much will a 16 ft uPVC board move from -10 C up to 40", "thermal movement", 5 / 8, "in"),
        ("26 foot copper gutter laid at 55 F hits 130 in the afternoon, how much longer", "thermal movement", 1 / 4, "in"),
        ("5 metre uPVC soffit board at 15 C, extremes -10 and 40, gap to leave?", "end gap", 8.4, "mm"),
        ("aluminium coping 3 m, fitted at 12 degrees C, it swings from -20 to 60, what gap", "end gap", 3.3, "mm"),
        # by the published coefficients: 5400 mm × 25 × 67e-6, 192 in × 80 × 12e-6 ÷ 1.8
        ("it'll be forty five celsius on that wall, pvc board 5.4 m, fitted at twenty. growth?", "thermal movement", 9.045, "mm"),
        ("sixteen foot of steel trim cooling from eighty degrees f too zero f, change", "thermal movement", -0.1024, "in"),
        ("PVC 18 feet hung at 40 F, 110 at worst, -5 in winter, gap today?", "end gap", 9 / 16, "in"),
    ],
)
def test_two_temperatures_are_a_change_and_three_a_gap(text: str, topic: str, value: float, unit: str) -> None:
    record = last(text)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["say"] or record["ask"]
    assert record["answer"]["unit"] == unit
    assert record["answer"]["value"] == pytest.approx(value, abs=0.04)


def test_how_warm_it_is_is_no_change() -> None:
    assert last("vinyl soffit 12 foot, put up at 30 F")["outcome"] == "asks"


def test_a_wood_not_in_the_table_is_asked_about() -> None:
    assert last("how much does an 8 inch birch board shrink from 12 to 7 percent")["outcome"] == "asks"


GAP = "what end gap for 12 ft PVC at 60 F, hottest 110, coldest 0"
FALL = "how much does a 5 inch sill fall at 10 degrees?"


@pytest.mark.parametrize(
    ("first", "then", "value"),
    [
        (GAP, "and if I hang it at 35?", 0.402),
        (FALL, "and at 14?", 1.24664),
        (FALL, "what if it's 15", 1.33975),
        (FALL, "and a 7 inch one?", 1.23429),
        ("rake return for a 22 degree roof", "and at 30?", 60),
        ("rake return for a 6/12 roof", "and at 8?", 61.845),
    ],
)
def test_a_bare_number_takes_the_unit_of_what_it_replaces(first: str, then: str, value: float) -> None:
    assert last(first, then)["answer"]["value"] == pytest.approx(value, abs=0.07)


def test_a_pitch_no_roof_has_is_not_taken_from_a_bare_number() -> None:
    assert last("rake return for a 6/12 roof", "and at 30?")["outcome"] == "asks"
