"""All the givens of a topic with a question no topic answers, and the same givens with one that a topic does."""

from __future__ import annotations

import pytest

from intents.elsewhere import outside_of
from tests.remarks import REMARKS
from tests.talking import last


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("how heavy a fascia can the rake return hold on a six twelve, plumb fascia", "engineer"),
        ("how many pounds will an arch 5 feet wide with an 8 inch rise carry", "engineer"),
        ("how far can a 2x6 at 24 centres span on a 5/12", "engineer"),
        ("is it ok to walk on a 12/12 roof, 14 feet of run", "fall protection"),
        ("can I climb on a ladder that bears at 16 feet in the wind", "fall protection"),
        ("how long will it take to cut twenty peak joints at 8/12", "How long things take"),
        ("how many guys does it take to hang 22 courses at 6 inch exposure on a 9 foot wall", "How long things take"),
        ("would a 22.5 degree miter be legal on an octagon", "inspector"),
        ("which glue sticks best in a peak joint on a 7/12", "Which product"),
        ("should I seal the plumb cuts on a 5 in 12 rafter", "How that is best done"),
        ("how many coats of stain does a 10 by 32 wall want", "Paint"),
        ("what should I charge for a 24 foot gable at 8 in 12", "What the trade charges"),
        ("how many watts does the saw need for a 45 degree miter", "electrician"),
        ("what R value does a 3/4 gap with half inch sheathing give", "insulation"),
        ("toss me the ladder, it bears at 16 feet", "hands"),
    ],
)
def test_what_no_topic_gives_is_declined(text: str, says: str) -> None:
    record = last(text)
    assert record["outcome"] == "declined", record["ask"] or record["answer"]
    assert says in record["say"]


@pytest.mark.parametrize(
    ("text", "topic", "value"),
    [
        ("miter for a rake return on a six twelve, plumb fascia, then we prime it", "rake return", 58.283),
        ("is it safe to lean the ladder at 14 feet, and how far out does the foot go", "ladder footing", 42),
        ("how many tubes of caulk for 140 feet of joint 3/8 wide 1/4 deep", "sealant", 9),
        ("what do I set the saw to for a 92 corner, we need to paint it after", "miter for a corner", 44),
        ("two of us have been at it how many hours, anyway what miter for a 97 degree corner", "miter for a corner", 41.5),
        ("how heavy is 320 square feet of cladding at 2.3 lb per square foot", "weight", 736),
        ("how many pounds of water will a 1 inch by 1 inch channel 10 feet long hold", "water in a channel", 120),
        ("$6.40 per square foot, 875 square feet, what do I charge for the material", "cost", 5600),
        ("do I need to cover the caulking against frost tonight, low of 5 C and dew point 4 C", "frost tonight", None),
    ],
)
def test_what_a_topic_gives_is_answered(text: str, topic: str, value: float | None) -> None:
    record = last(text)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["say"] or record["ask"]
    assert value is None or record["answer"]["value"] == pytest.approx(value, abs=0.05)


@pytest.mark.parametrize(
    "text",
    [
        "Strong enough, the engineer says. How many marks at 24 on centre along a plate 19'6\", starting at zero?",
        "Ramp's been passed as legal. It rises 2 foot over a 24 foot run: how long is the sloping side?",
        "it won't bow, it's only hats on it: divide 14 foot 5 in nine, what's each part",
    ],
)
def test_what_is_only_stated_is_not_asked(text: str) -> None:
    assert outside_of(text, whole=True) is None


@pytest.mark.parametrize("remark", REMARKS)
def test_a_remark_beside_a_question_asks_for_nothing(remark: str) -> None:
    assert outside_of(remark, whole=True) is None
