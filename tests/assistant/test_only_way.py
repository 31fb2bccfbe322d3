"""What can be only one way is not asked about, and what can't be so is not answered."""

from __future__ import annotations

from math import hypot
from typing import Any

import pytest

from tests.talking import last

SCALE = {"in": 1.0, "ft": 12.0, "mm": 1 / 25.4}


def value_of(record: dict[str, Any]) -> float:
    """The value, a length in inches."""
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    return float(record["answer"]["value"]) * SCALE.get(record["answer"]["unit"], 1.0)


@pytest.mark.parametrize(
    ("said", "topic", "value"),
    [
        ("bay corner's 150, saw?", "miter for a corner", 15),
        ("the corner of the bay is one forty, what do I set", "miter for a corner", 20),
        ("30 degree bay window, what's the saw on, he had it at 30", "polygon", 15),
        ("spring's 38 deg and 135 on the corner, compound settings", "compound cut", 14.33),
        ("Bevel gauge says 84 degrees at the porch, outside. What's each piece cut at?", "miter for a corner", 48),
        ("My saw goes 48 left, 62 right, need 55.", "can my saw cut it", 1),
        ("it goes 50 degrees to the right and 47 to the left, can I cut 49", "can my saw cut it", 1),
        ("swings 45 left 50 right, I want 58, will it go", "can my saw cut it", 0),
        ("two barge rafters, roof's 22 degrees, what's the level cut", "plumb cut", 68),
        ("one degree out on a 4 in trim cut at 45, what gap", "angle off", None),
    ],
)
def test_corners_that_can_be_only_one_way(said: str, topic: str, value: float | None) -> None:
    record = last(said)
    assert record["topic"] == topic
    assert value is None or value_of(record) == pytest.approx(value, abs=0.05)


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("Pad's 7.2 m by 5.4 m and the tape says 9.02 m from corner to corner. How bad is that?", (9.02 - 9) * 1000 / 25.4),
        ("It's 3 m by 4 m, I pulled 5.010 across. What's it off?", 10 / 25.4),
        ("9 ft one way 12 ft the other, diagonal 15 ft 1 in. off how much", 1),
        ("12 ft by 9 ft deck, I got 15 ft 1/2 in across, how bad is it", 0.5),
    ],
)
def test_a_diagonal_that_was_pulled_is_held_against_the_true_one(said: str, value: float) -> None:
    record = last(said)
    assert record["topic"] == "out of square"
    assert value_of(record) == pytest.approx(value, abs=0.01)


def test_somebodys_word_is_no_tape() -> None:
    record = last("what should the diagonal be on a 12 by 16, Dave says it's 21")
    assert record["topic"] == "square check" and value_of(record) == 240


@pytest.mark.parametrize(
    "said",
    [
        "low 28 tonight, frost? I've to be there by 7",
        "The low's 27 F. Will it frost? I've a pour at 9.",
        "overnight low 30 f, any frost, I'm up at 5",
    ],
)
def test_a_bare_number_is_no_dew_point(said: str) -> None:
    record = last(said)
    assert record["outcome"] == "asks" and "dew point" in record["ask"]


def test_six_in_the_morning_is_no_quantity() -> None:
    assert last("frost by 5 am? low 30 F dew point 32 F")["outcome"] == "answered"


@pytest.mark.parametrize(
    "said",
    [
        "its 68F in the house, how much does 12 ft of vinyl grow",
        "it's 70 F now, 10 ft of steel, how much does it move",
        "how much does 16 ft of pvc shrink, it's 65 f in the shop",
    ],
)
def test_how_warm_it_is_is_no_change(said: str) -> None:
    assert last(said)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("said", "unit"),
    [
        ("It's 22 degrees in here and 55%. What's the dew point?", "degC"),
        ("20 degrees in the kitchen and 60% humidity, dew point?", "degC"),
        ("dew point in the shop, 72 degrees and 50 percent", "degF"),
    ],
)
def test_a_room_is_warm_on_one_scale_only(said: str, unit: str) -> None:
    record = last(said)
    assert record["outcome"] == "answered" and record["answer"]["unit"] == unit


@pytest.mark.parametrize("said", ["dew point at 40 degrees and 80%", "21 degrees outside and 60% humidity, dew point?"])
def test_the_air_outside_may_be_on_either(said: str) -> None:
    assert last(said)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("layers 7/16 osb, 3/8 mesh, 7/8 boards, how far out is the face? the window jambs are 4 9/16", 1.6875),
        ("From the stud it's 1/2 ply, 3/4 strapping, 5/8 siding. Where's the face land? Jambs are 6 9/16.", 1.875),
        ("sill 6 in wide at 2/12 slope, drop", 1),
        ("round top 36 wide 8 high, laminations are 1/4 ply, radius?", 24.25),
        ("curved beam 14 ft wide with 10 in crown, marks every 12", 357.8),
        ("It's 25 degrees, they run 4.1 m out. How long is it down the slope? I've six sheets, they're 4.8.", 4523.85 / 25.4),
        ("the valley metal comes 10 ft. 6/12, run 13 ft, valley length?", 234),
        ("sloped wall, run's 6 ft, angle's 45 degrees. How long is the slope? There's 2 more like it.", hypot(72, 72)),
        ("Ramp comes up 600 over 7.2 m. How long's the top of it?", hypot(600, 7200) / 25.4),
        ("Up 3 ft, over 4 ft. Long side?", 60),
    ],
)
def test_what_stands_beside_is_left(said: str, value: float) -> None:
    assert value_of(last(said)) == pytest.approx(value, abs=0.06)


@pytest.mark.parametrize(
    "said",
    [
        "was 1/2 ply, 3/8 mesh, 3/4 cedar, mesh goes out.. 3/8 gone. depth now",
        "sheathing 1/2, strapping 3/4, cladding 5/8, then the 3/4 comes off, build-out?",
    ],
)
def test_a_layer_that_is_gone_is_not_counted_twice(said: str) -> None:
    assert last(said)["outcome"] != "answered"


def test_ten_mil_of_air_are_millimetres() -> None:
    assert "ventilated" in last("we have ten mil behind the cladding is it a vented cavity or not")["answer"]["text"]
    assert "drainage" in last('1/4" mesh behind the boards, drain only? wall 40 ft')["answer"]["text"]


def test_free_area_of_the_soffit_by_the_foot() -> None:
    record = last("1200 square feet of attic, 1/150, and the soffit's 10 a foot. How much do I need?")
    assert record["answer"]["value"] == pytest.approx(1152)


@pytest.mark.parametrize(
    "said",
    [
        "8 mil poly behind, is it vented",
        "is half inch enough of an air gap, 10 mm rule",
        "how wide is each side of an octagon 24 across",
    ],
)
def test_what_is_asked_is_not_taken_as_given(said: str) -> None:
    assert last(said)["outcome"] != "answered"


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("the lad's 19 and he says it's a 118 corner, what do I set", 31),
        ("Skirt board goes round a 140 corner, it's 5 1/2 high, setting?", 20),
        ("six sided post 12 inches across, what do I rip the edges at", 30),
        ("got 88 on the finder, what does each piece get cut at", 46),
        ("the cut is fifty five and my saw only goes to forty seven how do i get it", 35),
    ],
)
def test_the_angle_of_a_cut(said: str, value: float) -> None:
    assert value_of(last(said)) == value


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("1/2 sheathing, 1 1/2 foam, 3/4 strap, 3/4 boards, 6 9/16 jamb, how proud is the siding", 3.5),
        ("sill 140 wide at 5 degrees, drop", 12.248 / 25.4),
        ("tape reads 5.66 m on a 4 m by 4 m slab, is it square", 3.146 / 25.4),
        ("chan 3/4 w 1/2 d 12' lg, water?", 54),
        ("aluminum 12 ft, 40 F now, gets to 120 F, how much does it grow", 0.148),
    ],
)
def test_told_in_few_words(said: str, value: float) -> None:
    assert value_of(last(said)) == pytest.approx(value, abs=0.01)


def test_in_at_the_bottom_and_out_at_the_top() -> None:
    record = last("vent in vs out: bottom 3/4 at 50%, top 1/2 at 45 %, 28 ft")
    assert record["answer"]["value"] == 126


def test_a_question_that_ends_in_a_statement_asks() -> None:
    record = last("whats the height of the gable its seven metres wide")
    assert record["outcome"] == "asks" and "pitch" in record["ask"]


def test_two_scales_are_not_the_other_way_round() -> None:
    assert "°C" in last("minus 2 tonight with dew point minus 4, frost")["ask"]
