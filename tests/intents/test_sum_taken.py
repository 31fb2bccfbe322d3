"""What is joined by plus and taken off goes off as a whole."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "answer"),
    [
        ("Reveal's 92, and it needs 18 plus 6 plus 3 taken from it", "65"),
        ("jamb is 82 1/2, take 3/4 plus 1/2 off it", "81 1/4 in (6 ft 9 1/4 in)"),
        ("take 18 plus 6 plus 3 off 92", "65"),
        ("the opening is 2100, knock 45 plus 12 off it", "2043"),
        ("board's 12 ft, 3/4 plus 1/2 to come off, what's left", "142 3/4 in (11 ft 10 3/4 in)"),
    ],
)
def test_all_of_it_is_taken_off(line: str, answer: str) -> None:
    assert last(line)["answer"]["text"] == answer


@pytest.mark.parametrize(
    ("line", "answer"),
    [
        ("12 ft less 3 in plus 2 in", "143 in (11 ft 11 in)"),
        ("12 ft 6 plus 3 ft minus 2 in", "184 in (15 ft 4 in)"),
        ("take 3/8 off 47 plus 2", "48 5/8 in (4 ft 5/8 in)"),
    ],
)
def test_what_is_added_stays_added(line: str, answer: str) -> None:
    assert last(line)["answer"]["text"] == answer
