"""What the words beside a length of a roof, a triangle or a frame tell of it, and whose it is."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


def _asked(text: str) -> tuple[str, float | None, str]:
    record = Conversation().answer(text)
    answer = record["answer"]
    return record["topic"] or "", answer["value"] if answer and record["outcome"] == "answered" else None, record["say"]


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("hip rafter on a 24 foot wide building at 6 12", 216),
        ("valley rafter on a 30 wide house at 8/12", 281.425),
        ("the hip, 5/12, house is 30 foot", 265.4),
        ("Valley between two 10/12 roofs with 7 foot of run, how long", 137.87),
        ("9/12, rafter's 14 feet, how much does it go up", 100.8),
        ("the house is 26 foot, 6/12, how much does the roof rise", 78),
        ("twelve twelve gable fourteen feet wide how long are the sloped edges", 118.79),
        ("The ridge is 7 feet above the plate and the building's 24 wide, what pitch is the roof?", 7),
        ("the house is 32 across, peak's 8 ft over the plate, pitch?", 6),
        ("6 foot from plate to ridge, barn's 36 wide, pitch", 4),
    ],
)
def test_what_a_length_of_a_roof_is(text: str, value: float) -> None:
    assert _asked(text)[1] == pytest.approx(value, rel=1e-3)


def test_the_run_itself_stays_the_run() -> None:
    assert _asked("rafter run is 9 feet, 6/12, rise")[1] == pytest.approx(54)
    assert _asked("hip rafter, run 12 feet, 6/12")[1] == pytest.approx(216)
    assert _asked("the porch is 8 foot at 3/12, rise")[1] == pytest.approx(24)


def test_the_wall_under_a_gable_is_told_with_it() -> None:
    topic, value, said = _asked("how high does the peak get, 28 ft, 4.5/12, walls are 10")
    assert (topic, value) == ("gable height", 63)
    assert "183 inches" in said
    assert _asked("how tall is the gable on a 30 foot wide wall at 7/12")[2].count("wall") == 0


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("knee brace 32 inches on each leg, how long point to point", 45.25),
        ("both legs are 4 feet, whats the brace", 67.88),
        ("brace, 3 foot each way, how long", 50.91),
        ("legs both 30, hypotenuse", 42.43),
        ("gusset, two sides at 20, long side?", 28.28),
        ("guy rope off a 20 foot mast pegged 15 foot away, how long", 300),
        ("50 inch brace at 45 degrees, how far down the post", 35.36),
        ("brace is 5 foot long and 3 out on each side, how high", 48),
    ],
)
def test_both_legs_and_what_leans(text: str, value: float) -> None:
    assert _asked(text)[1] == pytest.approx(value, rel=1e-3)


def test_what_a_thing_is_tells_the_unit_of_its_sides() -> None:
    assert _asked("footing 30 x 40, string it corner to corner, how long")[1] == pytest.approx(600)
    assert _asked("screen 30 by 40, diagonal")[1] == pytest.approx(50)
    assert _asked("26 by 40 what's the diagonal")[1] is None
    assert _asked("door on the garage is 36 by 45, diagonal")[1] is None


@pytest.mark.parametrize(
    "text",
    [
        "How long is the rake on a 24 foot gable? The neighbour's is 8/12",
        "what's the plumb cut? The house next door was a 9/12",
        "miter for the corner please. the last one was 92",
        "hip length, 12 foot run. the next door house is 6/12",
        "Where do the marks go on a 15 foot 8 board? My brother put 9 on his",
    ],
)
def test_somebody_elses_is_no_given(text: str) -> None:
    assert _asked(text)[1] is None


def test_unless_it_is_to_be_the_same() -> None:
    assert _asked("next door is 8/12 like ours. Rake on a 24 foot gable?")[1] == pytest.approx(173.07, rel=1e-3)
    assert _asked("the next one is 91 degrees. miter?")[1] == pytest.approx(44.5)


def test_whether_it_is_right_is_held_against_the_answer() -> None:
    assert "no, it is not that" in _asked("Do you think 45 is right for a 92 corner")[2]
    assert "yes" in _asked("is 15 feet right for the diagonal of a 9 by 12")[2]


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("between the 16 inch mark and the 61 and a half mark", 45.5),
        ("from the 2 foot mark to the 9 foot 7 mark, how long", 91),
        ("there's 10 ft 4 of wall and the window's 46 wide in the middle of it. how much each side", 39),
        ("two lengths butted together, one's 6'8\" the other's 5'11 1/2\", total", 151.5),
        ("one leg's 41 1/4 and the other is 39, what's the difference", 2.25),
        ("cut 1/16 strong of 43 7/8", 43.9375),
        ("leave it 1/8 light of 27", 26.875),
        ("add a half inch both ends to 29 and 1/4", 30.25),
        ("take half of 33 and 3/8 then add 2", 18.6875),
        ("Convert 14.3 feet to feet and inches", 171.6),
    ],
)
def test_two_lengths_of_a_tape(text: str, value: float) -> None:
    assert _asked(text)[1] == pytest.approx(value, rel=1e-3)


def test_the_middle_is_no_difference() -> None:
    for text in (
        "middle between the marks at 22 1/2 and 61",
        "one is 24 long, the other is 30 long, total area at 8 high",
    ):
        assert _asked(text)[1] is None or _asked(text)[0] != "tape arithmetic"
