"""Pieces told by their size and then how many of them, and boards named by their section, which is no count of pieces."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "pieces", "sticks"),
    [
        ("1x4s at 40 inches, 22 of em, from 16 footers", "22 at 40 in", 6),
        ("i need 1x4s at 7 foot 2 and a half, 22 of em, from 16 footers, kerf is 3/32", "22 at 86 1/2 in", 11),
        ("2x6s at 7 foot, 10 of em, cut from 16s", "10 at 7 ft", 5),
        ("22 1x4s at 40 inches from 16 footers", "22 at 40 in", 6),
        ("40 inches 22 of them and 30 inches 6 of them from 12 foot stock, cut list", "22 at 40 in, 6 at 30 in", 9),
        ("cut list 2 x 40, 3 x 52, 12 foot stock", "2 at 40 in, 3 at 52 in", 2),
    ],
)
def test_pieces(line: str, pieces: str, sticks: int) -> None:
    record = last(line)
    assert {each["name"]: each["text"] for each in record["givens"]}["pieces"] == pieces
    assert record["answer"]["value"] == sticks


@pytest.mark.parametrize(
    ("line", "pieces", "sticks"),
    [
        ("stock's 14 foot, pieces 5 foot 1 and 3 foot 7, ten of each", "10 at 61 in, 10 at 43 in", 7),
        ("cut list 12 foot stock: 40, 32 and 25, 4 of each", "4 at 40 in, 4 at 32 in, 4 at 25 in", 3),
    ],
)
def test_so_many_of_each(line: str, pieces: str, sticks: int) -> None:
    record = last(line)
    assert {each["name"]: each["text"] for each in record["givens"]}["pieces"] == pieces
    assert record["answer"]["value"] == sticks
