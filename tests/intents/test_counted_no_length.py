"""A number of things is no length, and how many gaps there are tells whether they are at the ends too."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("Whats the spacing if I want 6 coat hooks on a 36 inch board, first and last 3 inches from the end?", "3 inches"),
        ("rip a 48 inch sheet into 7 strips, no kerf", "7 strips"),
    ],
)
def test_things_are_no_length(line: str, said: str) -> None:
    record = last(line)
    assert record["outcome"] == "asks"
    assert said in record["ask"]


@pytest.mark.parametrize(
    ("line", "gap"),
    [
        ("i want 5 equal gaps with 4 pickets 89 mm wide in 1.2 metres", 168.8),
        ("4 pickets 89 mm wide in 1.2 metres 3 equal gaps", 281.33),
    ],
)
def test_so_many_gaps(line: str, gap: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(gap, abs=0.01)


def test_gaps_that_do_not_go_with_the_pieces_are_asked_about() -> None:
    assert last("4 pickets 89 mm wide in 1.2 metres 7 equal gaps")["outcome"] == "asks"


@pytest.mark.parametrize(("line", "straps"), [("strap 40 foot wall at 16 studs", 31), ("strap a 40 foot wall at 24", 21)])
def test_studs_at_a_spacing_are_that(line: str, straps: int) -> None:
    assert last(line)["answer"]["value"] == straps


def test_so_many_flashings_are_no_length() -> None:
    record = last("i've got 20 step flashings at 7 inch exposure, how far up the wall do they go")
    assert (record["outcome"], "20 step flashings" in record["ask"]) == ("asks", True)


@pytest.mark.parametrize(
    ("line", "pieces"),
    [
        ("one and three quarters inch slats gap three quarters how many in 47", 19),
        ("3 1/2 slats, gap 1/2, how many in 8 foot", 24),
        ("3/4 spindles, 3 inch gap, in 6 foot", 20),
    ],
)
def test_what_they_go_in_is_no_count(line: str, pieces: int) -> None:
    assert {each["name"]: each["value"] for each in last(line)["also"]}["pieces"] == pieces


@pytest.mark.parametrize(
    "line",
    [
        "5/8 screws no i mean screws for 5/8 board, 12 rows 14 foot long every 8 inch",
        "screws for 5/8 board, 12 rows 14 foot long every 8 inch",
    ],
)
def test_rows_are_the_whole_number(line: str) -> None:
    record = last(line)
    assert (record["answer"]["value"], record["givens"][0]["text"]) == (264, "12")
