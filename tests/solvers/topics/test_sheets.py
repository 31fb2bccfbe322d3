"""Sheets over walls, gables and areas: by area, and standing or lying where no offcut is used again."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from tests.working import also, answer, work


@pytest.mark.parametrize(
    ("given_", "sheets"),
    [
        ({"area": "640 ft2"}, 20),
        ({"area": "641 ft2"}, 21),
        ({"area": "640 ft2", "waste": "10 percent"}, 22),
        ({"area": "480 ft2", "sheet_width": "4 ft", "sheet_length": "12 ft"}, 10),
        ({"wall_length": "36 ft", "wall_height": "9 ft", "sheet_length": "9 ft"}, 9),
        ({"wall_length": "24 ft", "pitch": "6 in12", "alike": "2 count"}, 5),
        ({"wall_length": "40 ft", "wall_height": "15 ft", "alike": "2 count"}, 38),
    ],
)
def test_sheets_by_area(given_: dict[str, str], sheets: int) -> None:
    """Arithmetic, worked by hand: a 4 by 8 covers 32 ft²; gable 24 by 6 / 2 = 72 ft², two of them 144."""
    assert answer("sheets", **given_) == sheets


def test_standing_and_lying_use_no_offcut_again() -> None:
    """10 ft 6 of wall 9 ft high: 3 across by 2 up standing, 2 across by 3 up lying."""
    worked = work("sheets", wall_length="21/2 ft", wall_height="9 ft")
    assert also(worked, "sheets standing, no offcut used again") == 6
    assert also(worked, "sheets lying, no offcut used again") == 6
    assert also(work("sheets", area="320 ft2", sheet_thickness="3/4 in"), "height of the stack") == pytest.approx(7.5)


@given(long=st.integers(4, 80), high=st.integers(4, 20), wide=st.sampled_from((2, 4, 5)), tall=st.sampled_from((8, 9, 10, 12)))
def test_by_area_is_never_more_than_unpieced_and_the_way_said_does_not_matter(long: int, high: int, wide: int, tall: int) -> None:
    sizes = {"wall_length": f"{long} ft", "wall_height": f"{high} ft"}
    one = work("sheets", **sizes, sheet_width=f"{wide} ft", sheet_length=f"{tall} ft")
    other = work("sheets", **sizes, sheet_width=f"{tall} ft", sheet_length=f"{wide} ft")
    assert one.working and other.working
    assert one.working.result.value == other.working.result.value
    for way in ("standing", "lying"):
        assert also(one, f"sheets {way}, no offcut used again") == also(other, f"sheets {way}, no offcut used again")
        assert float(one.working.result.value) <= also(one, f"sheets {way}, no offcut used again")


def test_what_no_sheet_covers_is_refused() -> None:
    assert "openings" in work("sheets", area="100 ft2", opened="120 ft2").refused
    assert "area" in work("sheets").asks
