"""Sizes that belong elsewhere: nails in the van, a box of fifty, what the rope holds; and what a corner split up lacks."""

from __future__ import annotations

from typing import Any

import pytest

from assistant.conversation import Conversation


def ask(line: str) -> dict[str, Any]:
    return Conversation().answer(line)


@pytest.mark.parametrize(
    "said",
    [
        "19 mm weatherboard and a 20 mm cavity batten, what's the least nail, I've 65s and 75s in the van",
        "3/4 board, 1/2 ply, got 2 inch and 3 inch nails in the truck, least nail",
        "splitting the 135 degree corner up so it looks round, what do I set the saw to",
        "I break a 120 corner into facets so it looks smooth, saw angle",
        "corner boards cut for 135 degrees and the wall says 131, what gap will I see",
    ],
)
def test_what_is_missing_is_asked(said: str) -> None:
    assert ask(said)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("3/4 board, 1/2 ply, and 1 1/4 in the stud, least nail", 2.5),
        ("miter for a 135 corner, the joint wants splitting evenly", 22.5),
        ("I've a box of 50 step flashings, 21 feet of wall and slates showing 8 inch, how many will I use", 32),
        ("trim comes at 1.4 pounds a foot, 310 feet of it, how heavy, rope's good for 200", 434),
        ("eleven windows, 176 foot of bead altogether, 3/8 wide and quarter inch deep, how many tubes", 11),
        ("screen closes off 45 percent, slot's 1/2 inch and runs 24 foot, free area", 79.2),
        ("I bought mesh and the label says it closes off 45%, my slot's 1/2 inch and runs 24 foot, free area", 79.2),
        ("mesh is 45% open, slot's 1/2 inch and runs 24 foot, free area", 64.8),
        ("brace at 30 degrees with the wall, 5 ft long, how high up the wall does it land", 51.96),
        ("legs 19 1/4 and 27 1/2, rite angle, hypotenuse", 33.57),
        ("what would a 1:40 slope drop in 900 mm", 22.5),
        ("wall is 108 high, exposure 6 inches at least, 7 at most, what exposure", 6.75),
        ("9 foot wall course layout, 7 at most, 6 at least", 6.75),
        ("75 30 12 girth?", 117),
        ("legs 6 4 2 girth", 12),
    ],
)
def test_each_size_is_what_it_was_said_of(said: str, value: float) -> None:
    record = ask(said)
    assert record["outcome"] == "answered", record["ask"]
    assert float(record["answer"]["value"]) == pytest.approx(value, rel=2e-3)
