"""Roofs told by how high their parts are, 3-4-5s by one side, edges, bays and faces: the value, and what it is of."""

from __future__ import annotations

import math

import pytest

from assistant.desk import Desk

HEIGHTS = (
    ("eave's at 8 foot and the ridge at 13, building's 20 wide, what pitch is she", "in12", 6),
    (
        "so the porch roof leaves the house at nine foot four and comes down to seven foot ten at the beam, and the beam's eight"
        " foot out, what pitch is that",
        "in12",
        2.25,
    ),
    ("the low side is 7 foot 6 the high side is 10 foot and it's 12 foot across what pitch do I have", "in12", 2.5),
    ("roof drops from 3.2 to 2.4 over 4 metres what pitch", "in12", 2.4),
    ("eaves 2400, ridge 4200, 6 m wide, what's the roof pitch", "in12", 7.2),
    ("lean-to is 9 foot high at the wall and 7 foot at the front, 10 foot deep, what's the rafter", "in", math.hypot(24, 120)),
    ("ridge is 5 foot over the plates on a 20 foot wide house what's the rafter", "in", math.hypot(60, 120)),
    ("gable end is thirty two foot the peak is ten foot eight up how long is the rake", "in", math.hypot(128, 192)),
    ("my rafter's 15 foot and it covers 12 foot of run, how high does that put the ridge", "in", 108),
    ("what's the slope length over 12 foot with a 5 foot rise", "in", 156),
    ("rafter length over 3600 with a rise of 1500", "mm", 3900),
    ("slope length 14 foot, run 12, pitch", "in12", math.sqrt(14**2 - 12**2)),
    ("sloped length 15 foot run 12 foot what's the angle", "deg", math.degrees(math.acos(0.8))),
    (
        "a bank goes up at 28 degrees, 7.5 metres measured up the slope, how much higher is the top",
        "mm",
        7500 * math.sin(math.radians(28)),
    ),
    ("rafter eight to the foot with 12 foot of run", "in", 144 * math.sqrt(208) / 12),
)
ENDS = (
    ("wall with a sloped top, 12 foot long, 8 foot one end 10 foot the other, area", "ft2", 108),
    ("wall's 9 foot at one end and 8 foot at the other, 20 foot long, what's the area", "ft2", 170),
    ("north wall is 2.4 one end and 3 m the other and 6 long, area?", "m2", 16.2),
)
PARTS = (
    ("rafter 10ft 2 run 8ft rise?", "in", math.sqrt(122**2 - 96**2)),
    ("run 8ft rafter 10ft 2 rise?", "in", math.sqrt(122**2 - 96**2)),
    ("rise 5 run 12 hyp", "in", 13),
    ("the stringer goes up 8 foot 4 and out 11 foot, what's it measure along the slope", "in", math.hypot(100, 132)),
    ("rafters are 14 foot on a 24 wide house what pitch is it", "in12", math.sqrt(14**2 - 12**2)),
    ("gable's 22 foot, ridge is 5 foot 6 up, is that 6/12", "in12", 6),
    ("eave at 8, ridge at 14, house is 24 wide, is that a 6/12?", "in12", 6),
    ("peak on a thirteen and a half foot half span at five twelve how high", "in", 67.5),
)
SQUARES = (
    ("3 4 5 with the short side 6 foot, what's the diagonal", "in", 120),
    ("set out 3 4 5 with 900 as the three, what are the others", "mm", 1500),
    ("three four five and the long side is sixteen foot how long is the short one", "in", 144),
    ("3-4-5, diagonal is 15 foot, what are the legs", "in", 108),
    ("pulled a 3-4-5 and the diagonal's 5 foot 1/2, how far out", "in", 0.5),
    ("did a 3-4-5, the diagonal reads 4 foot 11 and 3/4, is that square", "in", -0.25),
    ("40 x 64 pole barn, corner to corner for the stringline", "in", 12 * math.hypot(40, 64)),
)
CORNERS = (
    ("my T bevel reads 67 and a half on the edge of the board, what's that on the saw", "deg", 22.5),
    ("edge angle 60, what do I set the saw to", "deg", 30),
    ("it's three degrees shy of square, miter it to what", "deg", 46.5),
    ("the corner reads 87 on the gauge where it ought to be 90, what do I turn the saw to", "deg", 46.5),
    ("bay window with three sides, walls meet at 135, what miter", "deg", 22.5),
    ("bay window, the middle's 5 foot and the sides turn off at 45, what miter", "deg", 22.5),
    ("two windows at 150 to each other, so each side of it is cut what", "deg", 15),
    ("corner's dead square, what miter", "deg", 45),
    ("miter for a 92 corner on a 5 1/2 board", "deg", 44),
    ("architrave's 70 wide, door frame corner reads 89, what's the mitre", "deg", 45.5),
    ("crown's a 45 45 spring, inside corner 90, lay it flat on the saw, what miter and what bevel", "deg",
     math.degrees(math.atan(math.sin(math.radians(45))))),
)  # fmt: skip
ASKED = (
    ("i got a five pitch one side and an ate pitch the other whats the peak joint", "five pitch"),
    ("my 3-4-5 diagonal measured 1530 is it square", "How long is one side"),
    ("24 foot wide, rise 6 foot, what pitch", "Is the 24 ft the run or the width of the building?"),
    ("rafter 12 run 10 rise", "run 12 in"),
    ("gable's 30 foot wide and walls are 8 foot high how long's the rake", "pitch"),
    ("square check 30 by 40", "side 30 ft and the other side 40 ft, or the side 30 in and the other side 40 in"),
)


@pytest.mark.parametrize(
    ("said", "unit", "value"), (*HEIGHTS, *ENDS, *PARTS, *SQUARES, *CORNERS), ids=lambda part: str(part)[:60]
)
def test_told_by_its_heights(said: str, unit: str, value: float) -> None:
    with Desk(keep=False) as desk:
        record = desk.answer(said)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["unit"] == unit
    assert record["answer"]["value"] == pytest.approx(value, abs=2e-3)


@pytest.mark.parametrize(("said", "piece"), ASKED, ids=lambda part: part[:60])
def test_what_they_do_not_tell_is_asked(said: str, piece: str) -> None:
    with Desk(keep=False) as desk:
        record = desk.answer(said)
    assert record["outcome"] == "asks"
    assert piece in record["ask"]


def test_what_to_set_is_how_it_is_cut() -> None:
    with Desk(keep=False) as desk:
        record = desk.answer("mitre saw's stop is 47, got to do 58, what do I set with the work square on the jig")
    assert (record["answer"]["unit"], record["answer"]["value"]) == ("deg", pytest.approx(32))


def test_a_question_of_a_gable_keeps_no_width_of_it() -> None:
    with Desk(keep=False) as desk:
        record = desk.answer("I've got 22 foot of gable and the ridge is 5 foot 6 above the plate, is that a six twelve")
        kept = desk.answer("what do you know about this job")
    assert (record["outcome"], record["answer"]["value"]) == ("answered", pytest.approx(6))
    assert "Nothing is kept" in kept["say"]
