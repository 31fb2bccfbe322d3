"""Falls, vents, corners and pitches told in other words than the rule's own."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("text", "topic", "value"),
    [
        ("gutter 28 feet, an eighth to the foot, total fall?", "fall", 3.5),
        ("a gutter 32 feet long at a sixteenth a foot, how far does it drop", "fall", 2),
        ("how much lower is the low end of a 30 foot gutter at a quarter inch in ten feet", "fall", 0.75),
        ("shim under a 6 inch sill pitched 7 degrees, how thick at the back", "fall", 0.73671),
        ("free vent area, 3/4 gap, 30 foot wall, screen blocks 30 percent", "vent opening", 189),
        ("5/8 gap open at the top, screen is two thirds open, wall is 22 feet, free area", "vent opening", 110),
        ("there's 127 degrees between the two walls, mitre for the skirt", "miter for a corner", 26.5),
        ("wall makes a 30 degree change of direction, saw setting", "miter for a corner", 15),
        ("trimming a 45 degree bay, saw at each corner", "polygon", 22.5),
        ("porthole frame out of 16 equal segments, saw setting", "polygon", 11.25),
        ("both halves cut at 45 on an 89 degree corner in 4 inch trim, what's the gap", "how far open", 0.09873),
        ("what pitch is a gable 30 feet wide with the peak 10 feet above the plate", "pitch from rise and run", 8),
        ("rises 6 feet over 14 feet, what pitch", "pitch from rise and run", 5.142857),
        ("what's the pitch if it drops an inch and a half in 4 feet", "pitch from rise and run", 0.375),
        ("a gable 22 ft wide, eight twelve, foot overhang, rake length", "rake length", 173.066),
        ("what does a hip come to per foot of common run on a seven twelve", "hip or valley length", 18.3576),
    ],
)
def test_is_worked_by_what_the_words_tell(text: str, topic: str, value: float) -> None:
    record = last(text)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["say"] or record["ask"]
    assert record["answer"]["value"] == pytest.approx(value, abs=0.01)


def test_the_twelve_of_in_twelve_is_no_angle() -> None:
    assert last("I have the roof's angle off the drawings, what's the pitch in twelve?")["outcome"] == "asks"


def test_what_the_saw_is_set_to_is_no_value_kept() -> None:
    record = last("the corner is 92 degrees", "what do I set the saw to?")
    assert (record["topic"], record["answer"]["value"]) == ("miter for a corner", 44)


@pytest.mark.parametrize(
    ("text", "topic", "value"),
    [
        ("a ramp climbs 18 inches over 12 feet of level run, length along the ramp?", "right triangle", 145.121),
        ("guy wire fixed 12 ft up the pole and anchored 7 ft away, how long", "right triangle", 166.709),
        ("triangle bracket with a right angle, 18 in up and 14 in out, length of the sloping side?", "right triangle", 22.8035),
        ("half round louvre, 32 inches wide, so the rise is half of that; radius?", "arc", 16),
        ("bearing point nineteen feet, foot out?", "ladder footing", 57),
        ("stiles rest at 13 feet, pull the foot out how far", "ladder footing", 39),
    ],
)
def test_braces_and_ladders(text: str, topic: str, value: float) -> None:
    record = last(text)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["say"] or record["ask"]
    assert record["answer"]["value"] == pytest.approx(value, abs=0.01)


def test_a_ramp_wall_is_no_ramp() -> None:
    assert last("the ramp wall is 30 feet long and 9 high, what area")["topic"] == "wall area"


@pytest.mark.parametrize(("limit", "says"), [(47, "yes"), (40, "no")])
def test_a_square_corner_is_no_area(limit: int, says: str) -> None:
    assert last(f"my saw stops at {limit}, can it do the 45s on a square corner")["answer"]["text"] == says
