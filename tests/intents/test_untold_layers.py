"""Layers named without a thickness, counts of layers, nominal sizes; and what is no layer."""

from __future__ import annotations

from typing import Any

import pytest

from intents.listed import Listing
from intents.lists import layers_in, lists
from intents.measures import readings
from intents.tokens import tokenize


def layers(text: str) -> list[tuple[float | None, str]]:
    """The longest list of layers of a text: thickness in inches (None where it is not said), and name."""
    tokens = tokenize(text)
    found = [reading for reading in lists(Listing(tokens, readings(tokens))) if reading.kind == "layers"]
    best: Any = max(found, key=lambda reading: (reading.end - reading.start, reading.sure), default=None)
    items = best.value if best else ()
    return [(float(item.thickness.to("in").value) if item.thickness else None, item.what) for item in items]


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        ("1/2 sheathing and 5/8 clapboards over strapping", [(0.5, "sheathing"), (0.625, "clapboards"), (None, "strapping")]),
        ("through 3/4 strapping and the sheathing", [(0.75, "strapping"), (None, "sheathing")]),
        ("with strapping over half inch ply", [(None, "strapping"), (0.5, "ply")]),
        ("1/2 sheathing, 1x4 strapping and 5/8 siding", [(0.5, "sheathing"), (0.75, "strapping"), (0.625, "siding")]),
        ("1x3 strapping at 3/4, 5/8 siding", [(0.75, "strapping"), (0.625, "siding")]),
        ("3/4x3 strapping and half inch ply", [(0.75, "strapping"), (0.5, "ply")]),
        ("two layers, 1/2 inch and 3/4 inch", [(0.5, "layer"), (0.75, "layer")]),
        ("two layers, half inch each", [(0.5, "layer"), (0.5, "layer")]),
        ("two layers of 3/4", [(0.75, "layer"), (0.75, "layer")]),
        # Membranes have no thickness that counts; what was told already is not asked for again.
        ("5/8 cladding over housewrap over half inch sheathing", [(0.625, "cladding"), (0.5, "sheathing")]),
        ("1/2 sheathing and 3/4 strapping over the sheathing", [(0.5, "sheathing"), (0.75, "strapping")]),
        ("3/4 strapping under the siding", [(0.75, "strapping")]),
        ("3/4 strapping and the siding, which is 5/8", [(0.75, "strapping")]),
    ],
)
def test_layers(said: str, expected: list[tuple[float | None, str]]) -> None:
    assert layers(said)[: len(expected)] == expected
    assert None in [size for size, _ in expected] or None not in [size for size, _ in layers(said)]


@pytest.mark.parametrize(
    ("line", "count"),
    [("sheathing is 1/2 and the strapping is 3/4", 2), ("the wall is 12 feet, 3/4 ply", 0), ("what now", 0)],
)
def test_how_many_layers_a_line_tells(line: str, count: int) -> None:
    assert len(layers_in(line)) == count
