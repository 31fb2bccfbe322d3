"""Long questions and other trades' words: what the words beside one quantity tell of it."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "asked"),
    [
        ("the barn's 36 foot long and 6/12, rise", "What is the run?"),
        ("rafter length, the house is 40 foot long and five twelve", "What is the run?"),
        ("30 foot long garage 8 in 12 pitch what's the rise", "What is the run?"),
        ("my shed's 16 long, 8/12, how high's the ridge over the plate", "How wide is the gable?"),
        ("can you work out the gable, 14 ft wide, 6/12", "Do you mean a gable area: width 14 ft, pitch 6/12?"),
        ("24 foot gable 8/12, not counting the foot of overhang, rake length", "Is the overhang 1 ft or 0 in?"),
        ("wall kicks out at 100 degrees, what's the miter for the skirting", "Is the turn 100°, or the corner 100°?"),
    ],
)
def test_what_the_words_leave_open_is_asked(line: str, asked: str) -> None:
    """The length of a building is no run, a gable may be asked for its height, and an overhang may be in the width."""
    assert last(line)["ask"] == asked


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("window unit 35 1/2 wide, leave half an inch each side for foam, RO width", 36.5),
        ("the unit's 48 1/2 tall, I want 3/4 clearance top and bottom, what's the rough opening", 50),
        ("rough opening is 37 wide, leave half inch each side, what size window", 36),
        ("door unit 36 wide, jambs 3/4 each side, what's the clear opening", 34.5),
        ("door opening has to be 80 plus 2 1/2 for frame and floor", 82.5),
        ("run is 12 foot 6 not counting the 6 inch fascia, 5/12, rafter length", 162.5),
        ("twelve foot six, that's the run, it's 5/12, how long do the rafters come out", 162.5),
        ("7 foot 4, which is the rise, 12 in 12, rafter length", 124.450793),
        ("brace goes from 4 foot up the post to 3 foot out on the beam, four by four, how long", 60),
        ("ramp is 7 foot high at the tall end and 24 foot long on the ground, how long's the top edge", 300),
        ("rise on a 9 pitch for 11 foot run", 99),
        ("rafter length, 12 foot run, nine and twelve", 180),
        ("the gable's 22, call it 24, eight twelve, how high", 96),
    ],
)
def test_lengths_that_go_where_their_words_tell(line: str, inches: float) -> None:
    """A gap goes on to a unit and comes off an opening; a name may come a clause later; a section is no leg."""
    record = last(line)
    assert record["outcome"] == "answered"
    assert record["answer"]["value"] == pytest.approx(inches, abs=1e-3)


@pytest.mark.parametrize(
    ("line", "degrees"),
    [
        ("octagon deck, the skirt is five quarter by six, saw setting", 22.5),
        ("bay out front is 45, thirty years old, saw setting", 22.5),
        ("the wall kicks out at 135 degrees, what do I turn the saw to for the skirting", 22.5),
        ("the wall kicks out 30 degrees, saw setting for the skirting", 15),
        ("skirting on a 91 degree external, what do I cut it at", 44.5),
        ("what angle is a 12 in 12, I've a metal man asking me for degrees", 45),
    ],
)
def test_angles_beside_what_measures_nothing(line: str, degrees: float) -> None:
    """The section of a trim, the age of a bay and who asks for degrees are no givens; 135 is a corner and no turn."""
    record = last(line)
    assert record["outcome"] == "answered"
    assert record["answer"]["value"] == pytest.approx(degrees, abs=0.05)
