"""Strips across a coil: its width, not its length, and a girth that is told by its legs."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "strips"),
    [
        ("brake corner is 2.5 + 2.5 + 0.5 + 0.5 inches all flattened out, coil 24, how many strips", 4),
        ("coil 1250 mm wide, apron girth 165 + 40 + 15, how many strips", 5),
        ("fascia with 6 inch face, 1 1/4 bottom leg and 1/2 inch hem, 24 inch coil, how many lengths across", 3),
        ("50 ft coil 24 in wide cut into 7 in strips how many", 3),
        ("ive a fifty foot roll eighteen inches wide how many strips of too and a quarter inch girth across it", 8),
        ("how many for inch strips can i slit from a fourteen inch coil", 3),
    ],
)
def test_strips_across(line: str, strips: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"] and record["answer"]["value"]) == ("strips from a coil", strips), record["ask"]


@pytest.mark.parametrize(
    "line",
    [
        "I've three coils 24 wide and the girth is 7, how many strips all told",
        "We have 4 chimneys to flash, and each strip is 9 inch girth. How many strips across the coil?",
        "cap flashing 8 wide with 3 inch down each side, coil is 30, how many strips",
    ],
)
def test_what_counts_coils_or_chimneys_is_no_width(line: str) -> None:
    assert last(line)["outcome"] != "answered"
