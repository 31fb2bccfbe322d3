"""Of a thing's sizes the one that a topic takes; the others are passed over, and none that may be meant."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("said", "unit", "value"),
    [
        ("The wall is 8 ft high and 30 ft long, 3/4 strapping gap, bug screen 50 percent. Intake free area?", "in2", 135),
        ("slot 3/4 high and 30 feet long with 50 percent screen", "in2", 135),
        ("the attic is 5 feet high at the ridge, floor 20 by 36, one over 150. Vent needed?", "in2", 691.2),
        ("Flashing is 10 foot long and 4 inches wide, pitched at five degrees. Drop across it?", "in", 0.35),
        ("J channel 1/2 by 3/4, 12 ft long, 20 feet up. How much water?", "in3", 54),
        ("cedar boards 5 1/2 wide, 3/4 thick, 12 ft long, western red flat sawn, 16 to 10 percent, shrink?", "in", -0.0772),
        ("aluminum gutter, house is 60 ft, each length 10 ft, 80 F swing, movement of one?", "in", 0.123),
        ("PVC board 6 ft wide, 60 F rise, growth", "in", 0.161),
        ("vinyl 10 ft, 30 F now, 110 high, minus 20 low, end gap", "in", 0.357),
        ("it's 12 by 16, the room, 68 F, 55 percent, dew point?", "degF", 51.2),
        ("the sill's at 11 feet but the ladder bears on the fascia at 16, so where does the bottom go", "in", 48),
        ("ladder rests on a window sill at 8 ft, how far out", "in", 24),
    ],
)
def test_the_size_that_is_taken(said: str, unit: str, value: float) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"]
    assert (record["answer"]["unit"], record["answer"]["value"]) == (unit, pytest.approx(value, rel=0.02))


@pytest.mark.parametrize(
    "said",
    [
        "flashing 10 ft long, 4 inches wide, falls 1/8 per foot along it, total",
        "sill 6 inches wide and 8 inches deep, 10 degrees, drop?",
    ],
)
def test_where_either_may_be_meant_it_asks(said: str) -> None:
    assert last(said)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("said", "kind"),
    [
        ("boards are 18 mm and there's 5 mm behind them. is it a ventilated cavity", "drainage"),
        ("3/4 siding with a 3/8 gap behind, ventilated?", "ventilated"),
        ("22 mm larch on 6 mm battens, what kind of cavity", "drainage"),
        ("6 mm ply furring strips behind 18 mm boards. Ventilated?", "drainage"),
        ("I've got three quarter straps behind the siding. Does that count as ventilated or only drainage?", "ventilated"),
        ("Ten mil gap behind the boards, is that a vented cavity or just drainage? Ten millimetres I mean.", "ventilated"),
        ("my furring is half inch ply so half inch air gap, what's that count as", "ventilated"),
        ("siding 1/4 off the sheathing, drained or vented", "drainage"),
    ],
)
def test_the_gap_is_no_board(said: str, kind: str) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"]
    assert kind in record["answer"]["text"]


@pytest.mark.parametrize(
    ("said", "grows"),
    [
        (
            "western red cedar flat-sawn 140 mm wide, twenty percent when we got it and fourteen when it settles, shrinkage?",
            False,
        ),
        ("flat sawn red oak 5 in wide 12 percent once dry, 18 when we got it, how much did it shrink", False),
        ("flat sawn red oak 5 in wide from 12 percent to 18 in winter", True),
    ],
)
def test_which_moisture_was_first(said: str, grows: bool) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"]
    assert (record["answer"]["value"] > 0) == grows


@pytest.mark.parametrize(
    "said",
    [
        "two vents of 3/4 by 20 feet each, 60 percent screen",
        "both walls 24 ft, 3/4 gap, 50 percent screen, free area",
        "three channels 1/2 by 3/4, 10 ft each, how much water",
    ],
)
def test_of_several_it_is_asked(said: str) -> None:
    assert last(said)["outcome"] == "asks"


@pytest.mark.parametrize(
    "said",
    [
        "top of ladder 3 ft past the landing at 12 ft, how far out",
        "the landing's at 12 feet, ladder goes 3 feet past it, foot out?",
    ],
)
def test_a_ladder_bears_at_the_landing_that_it_passes(said: str) -> None:
    assert last(said)["answer"]["value"] == pytest.approx(36)
