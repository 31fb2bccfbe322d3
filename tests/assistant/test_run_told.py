"""What was measured where a run or a gable's width is wanted, and corners told by how far they are from square."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from assistant.record import Record


def told(line: str) -> Record:
    return Conversation().answer(line)


def worked(line: str) -> float:
    answer = told(line)["answer"]
    assert answer is not None and answer["value"] is not None
    return float(answer["value"])


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("hip length, building is 24 ft wide, 6/12", 216),
        ("30 foot span at 6/12, what do the hips come to", 270),
        ("half span is 12 ft at 6/12, valley length", 216),
        ("length of the hip when the roof rises 6 ft at 6/12", 216),
        ("hip rafter, the common rafter is 13 ft 5 long at 6/12", 216.0),
        ("how much does the roof rise on a house 24 ft wide at 6/12", 72),
        ("span 24 ft, 6/12, how long up the slope", 160.997),
        ("how high does 10 ft of rafter rise at 9/12", 72),
        ("the cabin is 24 ft wide and the ridge is 6 ft above the plates, what pitch", 6),
        ("what pitch is it when 10 ft of rafter goes up 6 ft", 9),
        ("how tall is the gable when the run is 12 ft at 6/12", 72),
        ("rake length on a lean-to 12 ft wide at 6/12", 160.997),
        ("a roof rises 3 over a 12 ft wide gable, what pitch", 6),
    ],
)
def test_a_run_is_made_of_what_was_measured_in_its_place(line: str, value: float) -> None:
    assert worked(line) == pytest.approx(value, abs=0.3)


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("hip, 12 ft run, 6/12", 216),
        ("how tall is a gable 24 ft wide at 6/12", 72),
        ("how much does a 6/12 rise across 8 ft", 48),
        ("the lean-to is 12 ft wide and rises 3 ft, what pitch", 3),
        ("hip, the commons run 12 feet at 6/12", 216),
        ("how long is each rake run on a 24 ft gable at 6/12", 160.997),
        ("rise over half of 24 feet at 6/12", 72),
        ("rake length, shed roof, 6/12, run 12 ft", 160.997),
    ],
)
def test_a_run_and_a_width_that_were_said_stay(line: str, value: float) -> None:
    assert worked(line) == pytest.approx(value, abs=0.3)


def test_a_shed_that_may_have_one_slope_is_asked_about() -> None:
    record = told("the shed is 10 ft wide and rises 2 ft, what pitch")
    assert record["outcome"] == "asks" and "width of the building" in record["ask"]


@pytest.mark.parametrize(("line", "value"), [
    ("the span is 30 foot and it rises 10, what pitch", 8),
    ("rise 7 over a 12 foot run, pitch", 7),
    ("it rises 30 over a run of 5 ft, what pitch", 6),
])  # fmt: skip
def test_a_bare_rise_is_in_the_unit_that_makes_a_roof(line: str, value: float) -> None:
    assert worked(line) == pytest.approx(value)


def test_a_bare_rise_that_may_be_either_is_asked_about() -> None:
    assert told("rise 12 over an 8 foot run, pitch")["outcome"] == "asks"


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("the corner is 3 degrees over square, what miter", 43.5),
        ("inside corner a degree and a half shy of ninety, saw setting", 45.75),
        ("miter for a corner 4 degrees under a right angle", 47),
        ("corner is a degree out, 91, miter each", 44.5),
        ("the corner's square. saw setting?", 45),
        ("corner isn't square, it's 87, miter", 46.5),
        ("deflection of 22 degrees at the corner, what's the miter", 11),
    ],
)
def test_a_corner_may_be_told_from_square(line: str, value: float) -> None:
    assert worked(line) == pytest.approx(value)


def test_which_way_a_corner_is_out_is_asked() -> None:
    record = told("corner is out of square by 2 degrees, saw setting")
    assert record["outcome"] == "asks" and "92" in record["ask"] and "88" in record["ask"]


def test_how_far_a_saw_is_out_is_no_corner() -> None:
    record = told("my saw's 1 degree off square, what gap does that make on a 3 1/2 board cut at 45")
    assert record["topic"] == "angle off"


def test_how_far_a_frame_is_out_of_square_stays_a_length() -> None:
    assert worked("how far out of square is 12 by 16 ft with a diagonal of 20 ft 1/2") == pytest.approx(0.5)


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ("my saw goes to 50 one way and 55 the other, need 58", "No"),
        ("saw goes 60 one side, 50 the other side. can it cut 48", "Yes"),
        ("mine swings 48 one way and 60 the other, wants 55, will it do?", "left"),
        ("saw stops at 50 on one side, can it cut 55", "left"),
        ("can my saw cut 61 one way or another, it stops at 50", "dial"),
    ],
)
def test_a_saw_may_be_told_one_way_and_the_other(line: str, says: str) -> None:
    record = told(line)
    assert says in (record["ask"] or record["say"])


@pytest.mark.parametrize("line", ["fold of 60 degrees in the fascia line", "take a 45 degree turn in two joints",
                                  "hip length from rise 6 ft and run 12 ft",
                                  "a 7 pitch over 16 feet",
                                  "3.6 by 5.4 slab to square, what's the long measure"])  # fmt: skip
def test_what_words_tell_to_be_something_else_is_asked_about(line: str) -> None:
    assert told(line)["outcome"] in ("asks", "declined")


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("angle of a brace 30 up 40 out", 36.87),
        ("brace: 30 up, 40 along, how long", 50),
        ("brace 4 ft down the post and 4 ft along the beam, length", 67.88),
        ("going up forty inches and out thirty how long is the sloping piece and whats the angle", 50),
        ("right triangle, legs 9 and 12, what's the third side", 15),
        ("arch 2400 wide 400 rise, offsets every 300", 2000),
        ("segment: chord 60 rise 5", 92.5),
        ("16 x 28 deck, diag?", 386.99),
        ("one leg is 31 inches the other's 42, whats the long side", 52.2),
        ("it goes 12 ft along and 5 ft up, how long's the brace", 156),
        ("plank 13 ft long, 5 ft up, how far out", 144),
        ("half round top thirty three inches across rad for the trammel", 16.5),
    ],
)
def test_sides_and_arcs_as_they_are_told(line: str, value: float) -> None:
    assert worked(line) == pytest.approx(value, abs=0.01)


def test_a_shed_roof_has_one_slope_or_is_a_shed_s() -> None:
    assert told("rake length at 5/12 for a shed roof 12 foot wide")["ask"] == "Is the 12 ft the run or the width of the building?"


@pytest.mark.parametrize(
    ("line", "corner"),
    [
        ("what's the corner if I set the saw at 30", 120),
        ("set the saw to 40 for the corner", 100),
        ("each piece is cut 31, corner?", 118),
        ("miter on the inside is 44.5, what's the corner", 91),
        ("saw's on 22.5, what corner does that make", 135),
    ],
)
def test_what_the_saw_is_set_at_tells_the_corner(line: str, corner: float) -> None:
    assert told(line)["answer"]["value"] == corner  # 180 less twice the setting


def test_a_rake_that_is_told_tells_how_wide_the_gable_is() -> None:
    record = told("rake is 16 ft 4 along the slope, 6/12, how wide's the gable")
    assert record["answer"]["value"] == pytest.approx(2 * 196 * 2 / 5**0.5)  # twice its run, 2 to 1


def test_what_the_saw_is_set_to_for_a_corner_is_worked() -> None:
    assert worked("set the saw to what for a 100 degree corner") == 40


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("miter for a corner less than 90, it's 87", 46.5),
        ("miter for a corner more than 90, 95", 42.5),
        ("miter for a corner, it's 87, less than 90", 46.5),
        ("miter for a corner 2 degrees less than 90", 46),
        ("miter for a 90 corner", 45),
    ],
)
def test_which_side_of_square_a_corner_is_on_is_not_the_corner(line: str, value: float) -> None:
    assert worked(line) == value


def test_45_off_square_is_either_corner() -> None:
    assert told("miter for a corner 45 degrees off square")["ask"] == "Is the corner 135° or 45°?"


def test_what_was_measured_goes_by_its_own_name() -> None:
    givens = told("hip rafter, the common rafter is 13 ft 5 long at 6/12")["givens"]
    assert [given["name"] for given in givens] == ["pitch", "common rafter"]


@pytest.mark.parametrize(("reply", "pitch"), [("the run", 2.4), ("width of the building", 4.8), ("it's the width", 4.8)])
def test_which_it_is_may_be_said_in_the_words_it_was_asked_in(reply: str, pitch: float) -> None:
    c = Conversation()
    asked = c.answer("the shed is 10 ft wide and rises 2 ft, what pitch")
    assert asked["ask"] == "Is the 10 ft the run or the width of the building?"
    assert c.answer(reply)["answer"]["value"] == pitch


@pytest.mark.parametrize(
    ("line", "change", "value"),
    [
        ("hip, 24 ft wide building, 6/12", "make the run 14 ft", 252),
        ("hip, 24 ft wide building, 6/12", "what if it's 30 wide", 270),
        ("hip, 24 ft wide building, 6/12", "and at 12 twelve", 249.415),
        ("how high does a 5/12 climb in 16 ft of rafter", "and with a run of 14 ft", 70),
        ("how high does a 5/12 climb in 16 ft of rafter", "and 13 ft", 60),
        ("rake length 6/12, run of 12 ft", "and 30 ft wide", 201.246),
        ("rise at 6/12 in 12 ft run", "and over a 30 ft span", 90),
        ("rake length 6/12, run of 12 ft", "gable height", 72),
        ("rake length 6/12, gable 24 ft wide", "gable height", 72),
    ],
)
def test_a_change_says_anew_what_the_length_is(line: str, change: str, value: float) -> None:
    c = Conversation()
    c.answer(line)
    assert c.answer(change)["answer"]["value"] == pytest.approx(value, abs=0.1)


def test_a_run_that_stood_for_a_width_is_no_width_elsewhere() -> None:
    c = Conversation()
    c.answer("rake length 6/12, run of 12 ft")
    assert c.answer("and the gable area")["ask"] == "What is the width of the gable?"
