"""What people say beside the question: the size of a thing it does not turn on, the hour, a year, somebody's word."""

from __future__ import annotations

from math import cos, radians, sin, sqrt
from typing import Any

import pytest

from assistant.conversation import Conversation
from tests.talking import last


def in_unit(record: dict[str, Any], unit: str) -> float:
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    scale = {"in": 1.0, "mm": 1 / 25.4}
    answer = record["answer"]
    return float(answer["value"] * scale.get(answer["unit"], 1.0) / scale.get(unit, 1.0))


@pytest.mark.parametrize(
    ("said", "unit", "value"),
    [
        ("ladder's a 9 metre one and it bears on the wall at 6 m, how far out", "mm", 1500),
        ("I've a 32 foot extension ladder and the plate's at 20 feet, how far out do I set it", "in", 60),
        ("what does the saw read for a 118 corner, the saw's a 12 inch", "deg", 31),
        ("hexagon column from boards 7 inches wide, what bevel on the saw", "deg", 30),
        ("I've got 16 foot boards, the rake is six twelve and I show 5, how much shorter does each course get", "in", 10),
        ("six twelve roof 24 feet wide, I've half a dozen 16 footers, how long is one rake", "in", 72 * sqrt(5)),
        ("screw for 3/4 strapping over half inch ply, inch and a quarter into the stud, fixing every 16", "in", 2.5),
        ("level trim runs for about 4 feet then turns up the rake at 12/12, what miter", "deg", 22.5),
        ("3/4 strapping makes the gap behind 1x6s, what class is it", "mm", 19.05),
    ],
)
def test_the_size_of_a_thing_the_question_does_not_turn_on_is_passed_over(said: str, unit: str, value: float) -> None:
    record = last(said)
    if record["topic"] == "air gap":
        assert "ventilated" in record["answer"]["text"]
    else:
        assert in_unit(record, unit) == pytest.approx(value, abs=0.01)


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        ("how far out does the 28 foot ladder go", "height"),
        ("what rafter rise at 6/12, my sticks are 16 foot", ""),
        ("octagon 24 inches across, how long is each side", ""),
        ("a 4 m ladder, how high does it reach", ""),
    ],
)
def test_the_size_of_a_thing_is_taken_for_nothing_else(said: str, asked: str) -> None:
    record = last(said)
    assert record["outcome"] != "answered"
    assert asked in (record["ask"] or record["say"])


@pytest.mark.parametrize(
    "aside",
    [
        "We knock off at 5.", "I'm 58, so no climbing.", "The house is from 1962.", "It's for plot 9.", "I'm 80 kilos.",
        "It's quarter to 4.", "I came up at 8 this morning.", "It's number 3 on my list.", "I've a couple of 12 footers.",
    ],
)  # fmt: skip
def test_the_hour_a_year_and_what_people_weigh_measure_nothing(aside: str) -> None:
    assert in_unit(last(f"{aside} The run is 12 feet and it's a five twelve. How long is the slope?"), "in") == 156
    assert in_unit(last(f"The run is 12 feet and it's a five twelve. How long is the slope? {aside}"), "in") == 156


def test_a_temperature_or_a_size_that_looks_like_an_hour_counts() -> None:
    assert last("It's 14 C and 78%, dew point?")["answer"]["value"] == pytest.approx(10.2, abs=0.05)
    assert in_unit(last("cut back from 1974 mm to 1900 mm, how much comes off"), "mm") == pytest.approx(74)


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("It goes up 1.5 m in 3. What pitch is that?", 6),
        ("up 0.9 m over a run of 2.4, pitch", 4.5),
        ("rise of 450 over a run of 1.2 m, pitch?", 4.5),
    ],
)
def test_a_bare_length_beside_metres_is_of_metres_where_it_could_be_nothing_else(said: str, value: float) -> None:
    assert last(said)["answer"]["value"] == pytest.approx(value)
    assert last("wall 7.2 m long with gap of 6 at each joint, how much is open")["outcome"] != "answered"


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("A prop goes up 9 feet and out 40 inches. How long is it?", sqrt(108**2 + 40**2)),
        ("the brace is 10 foot long and the foot of it is 6 foot out, how high up does it land", 96),
        ("It's 13 feet down the slope. It drops 5. How far out is that on the level?", 144),
        ("sloped side is 10 feet and it's 30 degrees off level, how high does it get", 120 * sin(radians(30))),
        ("sloped side is 10 feet and it's 30 degrees off level. What's that on the flat?", 120 * cos(radians(30))),
        ("the ramp climbs 5 feet in 12 feet. How long is the slope?", 156),
    ],
)
def test_a_triangle_is_told_by_which_way_its_sides_go(said: str, value: float) -> None:
    assert in_unit(last(said), "in") == pytest.approx(value, abs=0.01)


@pytest.mark.parametrize(
    "said",
    [
        "the brace leans 30 degrees off the wall and is 6 foot long, how high up",
        "a strut leaning 20 degrees, 8 foot long, how far out is the bottom",
        "that brace lands 6 feet up the wall, what length do I cut it",
        "One side of the slab's 30 feet. What's my diagonal?",
    ],
)
def test_what_is_told_from_upright_or_not_at_all_is_asked(said: str) -> None:
    assert last(said)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("said", "sign"),
    [
        ("white oak 6 inches wide, it was 14 percent when it went in and it's 8 now, how much gap", -1),
        ("red oak floor 5 inches wide, 6 percent when laid and now 11, how much wider", 1),
        ("flat grain douglas fir 8 inches wide, came in at 19 percent and 11 today, shrinkage?", -1),
    ],
)
def test_moisture_then_and_now(said: str, sign: int) -> None:
    assert in_unit(last(said), "in") * sign > 0


@pytest.mark.parametrize(
    "said",
    [
        "Dave reckons the roof is five twelve", "the lads think the roof's a nine twelve", "apparently the roof is 6 in 12",
        "the roof's at forty", "it's ninety percent and the metal roof is at forty, would there be water on it",
    ],
)  # fmt: skip
def test_somebody_s_word_and_how_warm_a_roof_is_are_no_pitch_to_keep(said: str) -> None:
    talk = Conversation()
    assert talk.answer(said)["outcome"] != "noted"
    assert "pitch" not in talk.facts.values


def test_somebody_s_word_is_kept_once_it_is_said_for_sure() -> None:
    talk = Conversation()
    talk.answer("Dave reckons the roof is five twelve")
    talk.answer("five twelve")
    assert talk.facts.values["pitch"].value == 5
    assert last("he swears it's a six twelve but the level says the roof is five twelve")["outcome"] == "noted"


@pytest.mark.parametrize(
    "said",
    [
        "Panels cover 16 inches, 8 in a box. What are the end pieces so both sides match?",
        "what is the diagonal if one side is 12 foot and the other side is one foot longer",
        "12 foot sticks at 6/12, how many sticks do I cut for a rake on a 24 foot gable",
    ],
)
def test_what_stands_for_no_size_makes_no_answer(said: str) -> None:
    assert last(said)["outcome"] != "answered"


@pytest.mark.parametrize(
    ("said", "unit", "value"),
    [
        ("20 ft wall, 8 ft 3 tall, 16 in studs, one door 3x7. How many strips of 1x3?", "count", 16),
        ("what does a nine twelve climb in 16 inches? I want to mark the next stud", "in", 12),
        ("I've 10 lengths of aluminium at 3 m. 15 degrees today, gets to 55, down to -20. What gap?", "mm", 2.8),
        ("Got some fascia, 7 1/4 wide, going round a 120 degree corner. Saw?", "deg", 30),
        ("My level's 4 foot long. It reads 45 degrees. What pitch is that?", "in12", 12),
    ],
)
def test_each_quantity_has_the_place_its_words_give_it(said: str, unit: str, value: float) -> None:
    assert in_unit(last(said), unit) == pytest.approx(value, abs=0.1)


def test_a_height_in_words_takes_the_bounds_after_it() -> None:
    said = (
        "from the skirt to the soffit its a hundred and six and a half and no more than four inches and no less than three"
        " what do the courses come to"
    )
    assert last(said)["answer"]["value"] == pytest.approx(106.5 / 27)
