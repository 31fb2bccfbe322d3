"""Where a number of a later line goes: not to what its words say it is not."""

from __future__ import annotations

import pytest

from tests.talking import last

COURSES = "gable 32 wide 7 12, 6 inch exposure, how many courses"
GABLE = "gable area 24 wide 6/12"
RISE = "ridge 9 12 from a 13 foot 6 run how high"
VENT = "vent opening 3/4 gap at 60%"


@pytest.mark.parametrize(
    ("lines", "answer"),
    [
        ((GABLE, "with 10 percent"), "79.2 ft²"),
        ((GABLE, "with 10 percent for waste"), "79.2 ft²"),
        ((RISE, "plus 8 foot wall"), "217 1/2 in (18 ft 1 1/2 in)"),
        ((VENT, "on 40 foot"), "216 in²"),
        ((VENT, "1/2"), "3.6 in²/ft"),
        (("6 foot 8 door plus 2 3/8", "to the half"), "82 1/2 in (6 ft 10 1/2 in)"),
        (("siding 2600 square feet how many squares", "12 percent waste", "at 185 a square"), "5387.20"),
        (("corner 87 and a half miter", "if i cut 45 how much gap on 4 1/2"), "1/4 in"),
        (("roof at 12 percent grade what angle", "15 percent"), "8.5°"),
        (("wall 32 by 9", "with a door 3 0 by 6 8"), "268 ft²"),
        (("wall 31 by 8", "less a 3 by 6 8 door"), "228 ft²"),
        (("boards for 600 sq ft 6 inch cover 16 footers", "at 24.50"), "2033.50"),
        (("joint 1/2 wide 3/8 deep 140 feet", "tubes at 9 bucks"), "162.00"),
        (("rake on the porch, 12 foot wide 5 12 with 8 inch overhang", "both sides in 10 footers"), "2"),
        (("attic 24 by 40 1/300",), "460.8 in²"),
        (("hip 9/12 run 12 how long", "and the jacks at 24"), "30 in"),
        (("wall's 97 1/4 high, want about 6 and a half exposure", "what if i start 3/4 lower"), "6 9/16 in"),  # 98 / 15
    ],
)
def test_a_number_goes_where_it_was_meant(lines: tuple[str, ...], answer: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["text"] == answer


@pytest.mark.parametrize(
    "lines",
    [
        (COURSES, "with 10 percent"),  # of waste, which it has none of, and no slope
        ("sloped length 14 foot run 7 12", "birdsmouth"),
    ],
)
def test_what_can_not_be_told_is_asked_or_declined(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] in ("asks", "declined")


@pytest.mark.parametrize(
    ("lines", "stock", "count"),
    [
        (("strapping 30 foot wall 16 oc", "9 high in 12s"), "12s", "24"),
        (("strapping 30 foot wall 16 oc", "9 high, from 12 footers"), "12 footers", "24"),
        (("battens at 600 on an 8.4 wall", "2.4 high, in 4.8s"), "4.8s", "15"),
    ],
)
def test_what_sticks_come_in_is_no_size_of_the_wall(lines: tuple[str, ...], stock: str, count: str) -> None:
    record = last(*lines)
    assert record["answer"]["text"] == count
    assert ("stock", stock) in [(given["name"], given["text"]) for given in record["givens"]]


def test_no_kerf_leaves_a_metric_list_metric() -> None:
    assert "mm" in last("cut 6 at 840 and 4 at 610 out of 3.6", "no kerf")["answer"]["name"]
