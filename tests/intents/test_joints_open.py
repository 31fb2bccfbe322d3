"""Joints that stand open: which angle is how far off, which the setting, which pitch is the roof's, and which joint it is."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "topic", "value"),
    [
        ("one degree shy of square, set the saw at 45, 7 1/4 inch skirting. Gap?", "angle off", 0.1789),
        ("set the saw at forty five corners out two degrees five and a half face how big a gap", "angle off", 0.2715),
        ("22.5 each on a 135 corner that's 1 degree out, 4 inch boards, how wide's the gap", "angle off", 0.0756),
        ("2 degrees fat on a 45 miter, 3 1/2 casing, how far open", "angle off", 0.1728),
        ("two cuts at 22.5 on 190 mm barge, joint a full degree off. How big is the gap?", "angle off", 3.5893),
        ("mitre gap for one degree out, 30 setting, 90 mm face, mm", "angle off", 1.8138),
        ("corner drawn at 135, both cut at 22.5, actual corner's 137. Face 235 mm. How many mm open?", "how far open", 8.8785),
        ("room corner measures 91.5 and I cut both skirtings at 45. 145 mm face, what gap?", "how far open", 5.3683),
        ("rake return, 160 mm face. Gable's 18.4 degrees; joiner cut for 19. Gap in mm?", "rounded pitch", 2.8853),
        ("cut for 8 in 12, its really 8 and a half, the two meet at the top, 5 inch boards, gap", "rounded pitch", 0.34),
        ("true pitch 4.8, saw table pitch 4.5, both in 12, rake return face 4 inches. Gap?", "rounded pitch", 0.1526),
        ("cut the rake tops to 8/12, but the string line says 7 3/4. Boards are 5 1/2. What opens?", "rounded pitch", 0.1925),
        ("we cut the ridge joint to suit 40 degrees. Roof came up 41.5. 200 mm barge. mm gap?", "rounded pitch", 13.6686),
    ],
)
def test_it_opens_by(line: str, topic: str, value: float) -> None:
    record = last(line)
    same = {topic, "how far open"} if topic == "angle off" else {topic}  # a degree shy of square is a corner of 89
    assert record["outcome"] == "answered" and record["topic"] in same
    size = record["answer"]["value"]
    assert size * (25.4 if record["answer"]["unit"] == "in" and value > 1 else 1) == pytest.approx(value, rel=0.01)


@pytest.mark.parametrize(
    "line",
    [
        "saw off 1 degree one way and 2 the other, cut at 45, 4 inch face, gap",
        "corner's out 1 degree in 4 feet, 45s, 5 inch face, gap",
        "roof is 8/12, cut for 7 1/2 and then 7 3/4 in 12, peak, 5 inch face, gap",
        "cut peak for 6 in 12, roof 6 1/2 in 12 on one side and 6 1/4 in 12 on the other, 5 1/2 face, gap",
        "corner is a degree out, 5 1/2 inch face, what gap",
    ],
)
def test_two_ways_to_mean_it_are_asked_about(line: str) -> None:
    assert last(line)["outcome"] == "asks"
