"""A line that asks for what its topic never answers is asked about, and not answered with another thing."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    "line",
    [
        "roof is 7 1/4 in 12, 5 1/2 inch rakes, i rounded the pitch off for the peak joint, what gap",
    ],
)
def test_what_is_no_answer_to_it_is_asked_about(line: str) -> None:
    record = last(line)
    assert record["outcome"] == "asks"
    assert record["answer"] is None


@pytest.mark.parametrize(
    ("line", "topic", "value"),
    [
        ("peak joint on a 6 in 12", "peak joint", 26.565),
        ("stud bite: 3-1/2 screw less 1 layer 1-1/8 trim, 1 layer 1/2 ply", "fastener penetration", 1.875),  # not added to them
        ("holding depth wanted — 120 mm screw, 60 mm PIR, 25 mm batten, 9 mm OSB", "fastener penetration", 26),
        ("screw length through 3/4 siding and 1/2 sheathing, 1 1/4 into the stud", "fastener length", 2.5),
        ("how many boxes of 100 for 1340 screws", "boxes", 14),
        ("twelve flat sides all the same, what should the cut be", "polygon", 15),
    ],
)  # fmt: skip
def test_what_is_an_answer_stays(line: str, topic: str, value: float) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == (topic, pytest.approx(value, abs=0.01))


def test_how_the_last_one_was_cut_is_no_turn_of_a_bay() -> None:
    record = last(
        "so were wrapping the base of a round silo looking thing with twelve flat sides all the same and the last guy cut"
        " them at twelve degrees and they would not close so what should it be"
    )
    assert record["answer"] is None or record["answer"]["value"] == pytest.approx(15)
