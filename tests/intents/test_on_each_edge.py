"""A hem or return that is on each edge is bent twice."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "girth"),
    [
        ("legs 3 4 and 1 with a half inch hem on each edge, girth", 9),
        ("girth of a drip edge 3 and 2 with a half inch hem both edges", 6),
        ("coil wrap 5 1/2 face 1 inch return each side, how wide a strip", 7.5),
        ("channel flashing 40 mm base and 25 mm legs both sides, girth", 90),
        ("girth 1/2 hem, 4, 1/2 hem both edges", 5),
        ("sill pan legs 6 2 2 each end turned up, girth", 10),
        ("fascia wrap, 7 1/4 face, an inch under and a half inch hem, girth", 8.75),
    ],
)
def test_girth(line: str, girth: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(girth)


@pytest.mark.parametrize(
    "line",
    ["girth of 3 1/2, 1 1/4 and 5/8, three out of a 16 coil?", "girth of 3 1/2, 1 1/4 and 5/8, two from a 16 coil"],
)
def test_so_many_out_of_a_coil_are_no_leg(line: str) -> None:
    record = last(line)
    assert record["outcome"] == "asks" or record["answer"]["value"] == pytest.approx(5.375)


def test_a_leg_out_of_a_coil_is_one() -> None:
    assert (
        last("i'm at the brake bending legs 5 and 4 out of 24 inch coil, girth and how many per coil width")["answer"]["value"]
        == 9
    )
