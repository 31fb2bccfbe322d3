"""Tails of rafters, corners told by how far they are out, and what is told last of a pitch: the value, or what is asked."""

from __future__ import annotations

import math

import pytest

from assistant.desk import Desk

TOLD = (
    (("5/12 rafter 12 foot run 18 inch overhang how long",), 162 * 13 / 12),
    (("rafter length 12 foot run 5/12 plus 16 inches overhang",), 160 * 13 / 12),
    (("rafter length, 12 foot run, 5/12, 18 inch tail along the slope",), 174),
    (("how long is a rafter, 12 foot run, 6/12, it sticks out 16 inches past the wall",), 160 * math.sqrt(1.25)),
    (("rafter, 12 foot run, 5 12", "with a 16 inch tail"), 160 * 13 / 12),
    (("rafter, 12 foot run, 5 12", "add 18 inches of overhang"), 162 * 13 / 12),
    (("rafter, 12 foot run, 5 12", "and an 18 inch tail along the rafter"), 174),
    (("how far up the slope from the overhang to the peak, 12 foot run at 6/12",), 144 * math.sqrt(1.25)),
    (("3ft over 8ft rafter length",), 12 * math.hypot(3, 8)),
    (("hip roof, 25 degrees, half span 3300, hip length",), 3300 * math.sqrt(2 + math.tan(math.radians(25)) ** 2)),
    (("verandah roof drops 450 over 2.7 m, what degrees",), math.degrees(math.atan(450 / 2700))),
    (("20 foot wide building with 12 foot rafters what pitch",), 12 * math.sqrt(144 - 100) / 10),
    (("gable wide 18ft rake 11ft no OH pitch?",), 12 * math.sqrt(121 - 81) / 9),
    (("outside corner, boards are 6 inch, the angle's fat by a degree and a half, what's each cut at",), 44.25),
    (("corner's tight by 2 degrees what miter",), 46),
    (("miter for a corner that turns 10 degrees",), 5),
    (("22.5 + 22.5 makes what corner",), 135),
)
ASKED = (
    ("trim return on that plumb fascia, roof's about a four twelve, maybe four and a half, call it four and a half",
     "four and a half"),
    ("peak joint 7/12 meets 9/12", "9/12"),
)  # fmt: skip


@pytest.mark.parametrize(("lines", "value"), TOLD, ids=lambda part: str(part)[-60:])
def test_told_on_the_roof(lines: tuple[str, ...], value: float) -> None:
    with Desk(keep=False) as desk:
        record = [desk.answer(line) for line in lines][-1]
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value, abs=2e-3)


@pytest.mark.parametrize(("said", "piece"), ASKED, ids=lambda part: part[:60])
def test_a_second_pitch_is_asked_about(said: str, piece: str) -> None:
    with Desk(keep=False) as desk:
        record = desk.answer(said)
    assert record["outcome"] == "asks"
    assert piece in record["ask"]
