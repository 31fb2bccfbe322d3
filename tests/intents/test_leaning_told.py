"""Slopes and arcs told as a story, with none of the terms: which length goes which way, and which part is asked for."""

from __future__ import annotations

import pytest

from assistant.desk import Desk

SLOPES = (
    ("peak's 5 foot 8 above the plate and 11 foot in from it on the level, how long is the line up the slope", 148.486),
    ("the ridge stands 1.9 m over the plates and 3.4 m in from the wall, what length is the rafter line", 3894.868 / 25.4),
    ("boards run up the slope 14 foot on a 9 twelve, what's the climb", 100.8),
    ("how much cable from the top of a 20 foot mast to a stake 15 ft out from its base", 300),
    ("the piece that slants from the corner of the building up to the ridge, 9 foot in on an 8 12, how long", 168.855),
    ("a wall 2.4 m high at the back and 3.1 m high at the front, 3.6 m along, how long is the slope", 3667.424 / 25.4),
    ("shelf sticks out 14 inches and the strut drops 18 inches down the wall, how long is the strut", 22.804),
    ("two 14 ft rafters meet in the middle, each comes in 11 ft, how high is the peak", 103.923),
    ("two 3 m boards lean against each other, feet 2.8 m apart, how high is the top", 2653.3 / 25.4),
    ("3.1 m in at 35 degrees, how long is the rafter", 3784.401 / 25.4),
    ("rafters run 4200 mm flat at 28 degrees, how high is the ridge", 2233.18 / 25.4),
    ("ramp's 1:12, it rises 30 inches, how long is the ramp", 361.248),
    ("a rope from the top of a 6 m pole to a peg 2.5 m off its foot, how much rope", 6500 / 25.4),
)
STEEP = (
    ("the lean-to goes from 7 ft tall to 10 ft tall over 14 ft, what angle is that", "deg", 12.095),
    ("ramp climbs 18 inches over 20 feet, what's the grade in percent", "percent", 7.5),
    ("a path dropping 400 mm in 8 m, what grade in percent", "percent", 5),
)
CURVES = (
    ("arched door 36 wide and 8 up in the middle, how much bendy trim goes over the top", 40.545),
    ("curved head over the window, 900 mm wide, rises 150, length of the curve", 965.14 / 25.4),
    ("half round window 28 inches across, how much casing goes round the top", 43.982),
    ("the top is a full half circle 1.2 m wide, how long a strip goes over it", 1884.956 / 25.4),
)
OTHERS = (  # what none of these may take
    ("arch 60 wide with 18 rise, what radius", "arc", "radius"),
    ("arch 60 wide with 18 rise, radius and how long is the curve", "arc", "radius"),
    ("Leaning a prop on the wall. It reaches 7 ft 6 up and the foot is 4 ft 3 away. How long is it and at what angle?",
     "right triangle", "slope"),
    ("rises 6 feet over 14 feet, what pitch", "pitch from rise and run", "pitch"),
)  # fmt: skip


def record_of(line: str) -> dict[str, object]:
    with Desk(keep=False) as desk:
        return dict(desk.answer(line))


def inches(answer: object) -> float:
    assert isinstance(answer, dict)
    return float(answer["value"]) / (25.4 if answer["unit"] == "mm" else 1)


@pytest.mark.parametrize(("line", "value"), SLOPES + CURVES)
def test_a_length_told_without_the_terms(line: str, value: float) -> None:
    assert inches(record_of(line)["answer"]) == pytest.approx(value, abs=0.04)


@pytest.mark.parametrize(("line", "unit", "value"), STEEP)
def test_how_steep_told_without_the_terms(line: str, unit: str, value: float) -> None:
    answer = record_of(line)["answer"]
    assert isinstance(answer, dict)
    assert (answer["unit"], answer["value"]) == (unit, pytest.approx(value, abs=0.01))


@pytest.mark.parametrize(("line", "topic", "name"), OTHERS)
def test_what_asks_for_something_else_stays(line: str, topic: str, name: str) -> None:
    record = record_of(line)
    answer = record["answer"]
    assert isinstance(answer, dict)
    assert (record["topic"], answer["name"]) == (topic, name)


def test_the_radius_stands_beside_the_curve_and_is_kept_in_a_change() -> None:
    with Desk(keep=False) as desk:
        first = desk.answer("arch is 5 ft wide rise 1 ft, how much trim runs round the curve")
        second = desk.answer("make it 6 ft wide")
    assert {line["name"]: line["value"] for line in first["also"]}["radius"] == pytest.approx(43.5)
    assert second["answer"] is not None
    assert second["answer"]["value"] == pytest.approx(77.22, abs=0.01)
