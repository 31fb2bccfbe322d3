"""The next question about the same piece: nails for those courses, courses of that gable; what is known is carried over."""

from __future__ import annotations

import pytest

from tests.talking import last, records


@pytest.mark.parametrize("asked", ["how many nails is that gonna be", "nails for that", "how many screws for those courses"])
def test_nails_for_the_courses_just_laid_out(asked: str) -> None:
    *_, lacks, every, found = records("course layout nine foot wall seven inch", asked, "its a 28 foot wall", "every sixteen")
    assert (lacks["topic"], lacks["ask"]) == ("fasteners", "What is the length of each one?")
    assert every["ask"] == "What is the spacing of the fasteners?"
    assert found["answer"]["value"] == 16 * (28 * 12 / 16 + 1)  # 16 courses, one every 16 inches and one at the start


def test_straps_are_as_long_as_the_wall_is_high() -> None:
    found = last("straps for a 26 foot wall 8 high 16 oc", "how many screws is that", "every 16")
    assert found["answer"]["value"] == 21 * 7


@pytest.mark.parametrize(
    ("before", "asked", "courses"),
    [
        ("gable height, 28 foot at six twelve", "how many courses on that", 14),  # 84 / 6
        ("gable area 24 wide 6/12", "how many courses up it", 12),
        ("wall 32 by 9 area", "how many courses is that", 18),
    ],
)
def test_courses_of_what_was_just_worked(before: str, asked: str, courses: int) -> None:
    _, lacks, found = records(before, asked, "6 inch")
    assert lacks["ask"] == "What is the exposure?"
    assert {line["value"] for line in found["also"] if line["name"] == "courses"} == {courses}


@pytest.mark.parametrize(
    ("lines", "topic"),
    [
        (("course layout nine foot wall seven inch", "how many courses is that"), "explain"),
        (("gable height, 28 foot at six twelve", "how many courses on the other wall"), "course layout"),
    ],
)
def test_courses_that_are_known_or_of_another_wall_are_not_asked_anew(lines: tuple[str, ...], topic: str) -> None:
    found = last(*lines)
    assert found["answer"] is None
    assert found["topic"] == topic
