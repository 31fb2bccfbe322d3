"""Told sums through the whole assistant: units that were not said, what is left of a board, a result below zero."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("lines", "unit", "value"),
    [
        (["twelve foot less seven and three eighths", "and in millimetres"], "in", 136.625),  # eighths are no millimetres
        (["add 1285 and 764 mm", "less 12"], "mm", 2037),
        (["5.4 metres less 2100"], "mm", 3300),  # no wall is 2100 metres
        (["what's left of a 16 footer after three cuts of 4 foot 2"], "in", 42),
        (["fourteen two and a half less three and five eighths", "and another three and five eighths off that"], "in", 163.25),
        (["nine sixteenths to mm"], "mm", 14.2875),
        (["nine foot by fourteen six, what's the diagonal"], "in", (108**2 + 174**2) ** 0.5),
        (['right triangle 20" 21" hypotenuse'], "in", 29),
        (["radius of an arch, five foot four the width, eight inches the rise"], "in", 68),
    ],
)
def test_what_it_comes_to(lines: list[str], unit: str, value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered"
    size = {"in": 1.0, "mm": 25.4, "m": 0.0254, "ft": 1 / 12}
    got = record["answer"]["value"] / size[record["answer"]["unit"]]
    assert got == pytest.approx(value / size[unit], rel=1e-6)


def test_a_result_below_zero_says_so() -> None:
    record = last("11 1/2 minus 14 inches")
    assert record["answer"]["value"] == -2.5
    assert any("less than nothing" in caution for caution in record["cautions"])
