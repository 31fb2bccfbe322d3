"""What short lines after an answer ask of it: a gap in millimetres, so much a foot, half at the soffit, how wet a wall gets."""

from __future__ import annotations

import pytest

from tests.talking import last

GAP = "air gap 3/8"
VENT = "vent opening 3/4 gap, 40 ft, 50 percent screen"
ATTIC = "attic 1500 at 1/300"
DEW = "dew point 20 C 45 percent"


@pytest.mark.parametrize(
    ("lines", "words"),
    [
        ((GAP, "what's that in mm"), "9.5 millimetres"),
        ((GAP, "is that enough"), "10 millimetres rule: not deep enough"),
        ((VENT, "how much per foot"), "4.5 square inches per foot"),
        ((ATTIC, "half at the soffit"), "360 square inches"),
        ((ATTIC, "how many feet of strip"), "40 feet"),
    ],
)
def test_is_read_off(lines: tuple[str, ...], words: str) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("noted", "explain")
    assert words in record["say"]


def test_half_of_it_is_still_a_share() -> None:
    assert last(ATTIC, "half of it")["answer"]["value"] == pytest.approx(360)


@pytest.mark.parametrize(
    ("line", "what"),
    [
        ("will a wall at 5 get wet", "gets wet"),
        ("glass at 12", "stays dry"),
        ("sheathing is at 3", "gets wet"),
        ("does a window at 9 sweat", "stays dry"),
    ],
)
def test_a_surface_told_after_is_the_surface(line: str, what: str) -> None:
    words = {also["name"]: also["text"] for also in last(DEW, line)["also"]}
    assert words["the surface"] == what


def test_a_surface_told_again_is_no_humidity() -> None:
    record = last(DEW, "will a wall at 5 get wet", "and at 60 percent", "what about glass at 14")
    assert [(given["name"], given["value"]) for given in record["givens"]][1:] == [("humidity", 60), ("surface temperature", 14)]


@pytest.mark.parametrize(("line", "count"), [("boxes of 250", 392), ("two per stud", 784)])
def test_fasteners_are_told_their_box_and_how_many_at_each(line: str, count: int) -> None:
    assert last("fasteners 14 courses 36 ft 16 oc", line)["answer"]["value"] == count


@pytest.mark.parametrize("text", ["it's 40 square feet", "vents are 50 square inches each"])
def test_a_unit_is_not_turned_into_itself(text: str) -> None:
    assert last(text)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("text", "topic", "value"),
    [
        ("30 foot gutter falling 1 in 200", "fall", 1.8),
        ("gutter run 45 feet, 1/4 per 10 feet, how much lower is the far end", "fall", 1.125),
        ("fall of a 40 ft gutter, half inch per 20 feet", "fall", 1),
        ("what slope is 1/4 inch over 5 1/2", "pitch from rise and run", 0.54545),
        ("what slope is half an inch in 6", "pitch from rise and run", 1),
    ],
)
def test_falls_over_a_run(text: str, topic: str, value: float) -> None:
    record = last(text)
    assert record["topic"] == topic
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-3)
