"""How many pieces a stick gives, however it is put; and what only looks like it."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "pieces"),
    [
        ("how many pieces of 22 1/4 from a 16 foot board, kerf 1/8", 8),
        ("I've a 16 foot board and I need pieces of 22 and a quarter out of it, blade takes an eighth, how many do I get", 8),
        ("got a 12 footer, need 14 inch bits out of it, how many", 10),
        ("a sixteen footer gives me how many 22 and a quarter inch pieces", 8),
        ("i got 22 and a quarter inch blocks to cut, how many from each 8 footer", 4),
        ("how many 455s can I cut from one 3.6 m board, no kerf", 7),
        ("a board of 14 foot, how many 16 inch pieces does it yield", 10),
    ],
)
def test_pieces_of_one_stick(line: str, pieces: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("pieces from a stick", pieces)


@pytest.mark.parametrize(
    ("line", "topic"),
    [
        ("how many 12 foot boards for 90 feet", "trim sticks"),
        ("how many sticks of 12 foot for 22 pieces at 30 inches", "cut list"),
        ("marks every 16 inches on a 12 foot board, how many", "marks on centre"),
    ],
)
def test_sticks_and_marks_are_no_pieces_of_one(line: str, topic: str) -> None:
    assert last(line)["topic"] == topic


@pytest.mark.parametrize(
    ("line", "pieces"),
    [
        ("how many 2 foot pieces of strapping can I get from 14 eight footers", 42),
        ("how many 16 inch blocks from 5 12 foot boards", 40),
    ],
)
def test_pieces_of_so_many_sticks(line: str, pieces: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("pieces from a stick", pieces)
