"""What is left each side of something in its opening, values from a forecast, and Scots spelling."""

from __future__ import annotations

import pytest

from tests.talking import last

LAKE_WALL = (
    "Right, we've four windows on the lake wall and I've done three, the last one's rough opening is 36 and a half and the unit's"
    " 35 and three quarters, so what's the gap each side?"
)
SUMS = (
    ((LAKE_WALL,), 0.375),
    ((LAKE_WALL, "and if the unit was 35 and a half like the others"), 0.5),
    (("rough opening 36 1/2, unit 35 3/4, gap each side?", "what if the unit's 35 1/2"), 0.5),
    (("opn 36 1/4, dr 35 5/8, gap ea side?", "if dr 35 1/2"), 0.375),
    (("RO is 38 1/2 and the window is 37 3/4 wide, how much shim space either side",), 0.375),
    (("window 36 wide, 3/8 gap each side, what opening",), 36.75),
    (("opening 36 1/2, window 35 1/2 with 1/4 gap each side, what's left",), 0.5),
    (("Pat measured the hole at 30 and 5/16, I make it 30 and 1/4, what's halfway",), 30.28125),
    (("how far oot for a ladder at 16 feet", "mak it 14"), 42),
)  # fmt: skip


@pytest.mark.parametrize(("lines", "value"), SUMS)
def test_it_comes_to(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["answer"]["unit"]) == ("answered", "in")
    assert record["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("line", "frost", "dew"),
    [
        ("dew point 15 though", 0, 15),
        ("the wife's app says dew point 15 though", 0, 15),
        ("the forecast says a low of 22 though", 1, 24),
    ],
)
def test_what_a_forecast_says_is_the_given(line: str, frost: int, dew: int) -> None:
    record = last("low 26, dew point 24, frost?", line)
    assert (record["topic"], record["answer"]["value"]) == ("frost tonight", frost)
    assert [given["value"] for given in record["givens"] if given["name"] == "dew point"] == [dew]


def test_a_year_is_no_millimetres() -> None:
    record = last("my sister's new place, 1978 house, attic's 28 by 44, she wants to know the vent at one three hundred")
    assert record["answer"]["value"] == pytest.approx(28 * 44 / 300 * 144)


def test_what_an_app_makes_of_it_is_compared() -> None:
    assert last("roof angle for 7/12", "my app says 30.3")["topic"] == "compare"
