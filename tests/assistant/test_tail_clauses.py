"""Lines with reasons and remarks round them, what a number is not, and job talk in a region's words."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation

ANSWERED = [
    (["my saw stops at 50 degrees, I found that out the hard way last week", "can my saw cut 57"], 0, "yesno"),
    (["what do 64 boards cost at 22.50 each", "and if I took 80 of them instead, since there's another wall"], 1800, ""),
    (["rise, 10 foot run at five twelve", "could I have that in millimetres too because he's all metric"], 1270, "mm"),
    (["sloped length, 13 foot run at 6 in 12", "no, the run is 15 foot, it's the other wing that's thirteen"], 201.246, "in"),
    (["step flashing, 21 foot wall, 5 inch exposure", "and the shingles, the lads say, are showing 6 inches, not 5"], 42, ""),
    (["step flashing, 21 foot wall, 5 inch exposure", "and 24 feet, not 21"], 58, "count"),
    (
        [
            "screw length: 5/8 cladding, 3/4 strapping, 1/2 sheathing, 1 1/4 into the stud",
            "make the strapping three eighths, not three quarters, everything else as before",
        ],
        2.75,
        "in",
    ),
    (["square check for 12 foot by 16", "and the landing is 9 foot by 12, what would that be"], 180, "in"),
    (["ladder bears at 16 feet, how far out is the foot", "it'll be 18 feet up, so what's it then"], 54, "in"),
    (["diagonal for 9 by 12 foot", "holler that in millimeters"], 4572, "mm"),
    (["the wash on a water table cap: 2 1/4 out, 15 degrees. what's it shed in height"], 0.6029, "in"),
    (["sill comes out 4 1/2, 8 degrees, what does it lose in height"], 0.6324, "in"),
    (["white oak 6 wide, 9 percent now, goes to 13 in dog days, how much wider"], None, "in"),
    (["an aluminium mullion of 4 m, from 5 C to 38 C, how much does it grow"], None, "mm"),
]
KEPT = [
    ("the roof is six in twelve, the owner told me himself", "pitch", "6 in 12"),
    ("blade eats an eighth", "kerf", "1/8"),
    ("my old saw quits at 47", "saw limit", "47"),
    ("firring's on 24 inch centers", "stud spacing", "24"),
    ("margin's 6 inches on this job", "exposure", "6"),
]
ASKED = [  # near misses
    (["what do 64 boards cost at 22.50 each", "and if I took 80 of them instead, since they went up to 24"], "change"),
    (["larch you couldn't get, so it's cedar, 145 mm wide, 12 to 8 percent, how much does it shrink"], "species"),
    (["the roof is six in twelve, I need the rake length"], "gable"),
]


@pytest.mark.parametrize(("lines", "value", "unit"), ANSWERED)
def test_answered(lines: list[str], value: float | None, unit: str) -> None:
    """The last line is answered, and no remark or number that is denied is in the answer."""
    talk = Conversation()
    record = [talk.answer(line) for line in lines][-1]
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert unit in ("", record["answer"]["unit"])
    assert value is None or record["answer"]["value"] == pytest.approx(value, abs=0.001)


@pytest.mark.parametrize(("line", "name", "value"), KEPT)
def test_kept(line: str, name: str, value: str) -> None:
    """What is told of the job is kept under its name."""
    record = Conversation().answer(line)
    assert (record["outcome"], record["topic"]) == ("noted", "remember")
    assert f"{name} {value}" in record["say"]


@pytest.mark.parametrize(("lines", "asks"), ASKED)
def test_asked(lines: list[str], asks: str) -> None:
    """A reason that tells a number or another material is not passed over."""
    talk = Conversation()
    record = [talk.answer(line) for line in lines][-1]
    assert record["outcome"] == "asks" and asks in record["ask"]


def test_whether_not_how() -> None:
    """So can my saw cut it: whether, with the stop that was told before."""
    talk = Conversation()
    talk.answer("my saw stops at 50 degrees, I found that out the hard way last week")
    record = talk.answer("there's a return that wants 57 and a half on the other gable, so can my saw cut it")
    assert (record["answer"]["unit"], record["answer"]["value"]) == ("yesno", 0)


def test_explained() -> None:
    """How did you get that is explained, whatever somebody else says."""
    talk = Conversation()
    talk.answer("peak joint on an eight twelve")
    because = "how did you get that, because the old fella says you halve it"
    for line in (because, "where'd you dig that up", "walk me through the ciphering"):
        assert talk.answer(line)["outcome"] == "noted"
