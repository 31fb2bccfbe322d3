"""A mark or a course asked after by where it is: the bottom one, the mark for the fourth one."""

from __future__ import annotations

import pytest

from tests.talking import last

GABLE = "24 foot gable at 8/12 with 7 inch exposure how many courses"
POLE = "9 feet 2 wall, courses at 6 and a half max"


@pytest.mark.parametrize(
    ("line", "after", "said"),
    [
        (GABLE, "how long's the bottom one", "288 inches"),
        (GABLE, "and the top one", "15 inches"),
        (GABLE, "the shortest one", "Course 14"),
        (POLE, "so what's the mark for the fourth one", "25 7/8 inches"),
        (POLE, "where's the top course", "110 inches"),
    ],
)
def test_which_mark(line: str, after: str, said: str) -> None:
    record = last(line, after)
    assert record["outcome"] == "noted"
    assert said in record["say"]


def test_the_longest_one_is_only_of_what_is_told_by_length() -> None:
    assert last(POLE, "how long is the longest one")["outcome"] != "noted"
