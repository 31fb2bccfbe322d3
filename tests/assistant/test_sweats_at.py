"""A surface's temperature after a dew point, told by what the surface does."""

from __future__ import annotations

import pytest

from tests.talking import last

AIR = "dew point for 21 c and 55 percent"


@pytest.mark.parametrize(
    ("line", "surface", "what"),
    [
        ("does it sweat at 9 c", "9 c", "gets wet"),
        ("would it sweat at 14", "14", "stays dry"),
        ("the wall sheathing's at 9, will it sweat", "9", "gets wet"),
        ("will a 9 degree window drip", "9 degree", "gets wet"),
    ],
)
def test_what_sweats_is_the_surface(line: str, surface: str, what: str) -> None:
    record = last(AIR, line)
    assert record["answer"]["text"] == "11.6 °C"  # of the air as it was
    assert {"name": "surface temperature", "text": surface} in [{k: g[k] for k in ("name", "text")} for g in record["givens"]]
    assert any(line["name"] == "the surface" and line["text"] == what for line in record["also"])


def test_the_air_is_the_air() -> None:
    record = last(AIR, "and at 40 percent")
    assert record["answer"]["text"] == "6.9 °C"
    assert "surface temperature" not in [given["name"] for given in record["givens"]]


def test_what_temperature_it_sweats_at_is_the_dew_point() -> None:
    assert last(AIR, "at what temp does it sweat")["answer"]["text"] == "11.6 °C"
