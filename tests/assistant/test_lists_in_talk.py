"""Lists and choices changed as people tell it: named by what they were, put on, left off, forgotten, or another one instead."""

from __future__ import annotations

import pytest

from tests.talking import last

FLASHING = "bent flashing legs 3/4, 4 1/4 and 2 inches and a 3/8 hem, girth"
WALL = "area of a wall 7.2 m by 2.6 m with a 1.8 by 2.1 door"
SCREW = "screw through 5/8 siding, 3/4 strapping, 1/2 sheathing, 1 1/4 into the stud"
BATTENS = "5 battens 2 1/2 wide over 54 inches, end ones flush with the edges, what gap between"
OAK = "white oak, flat sawn, 140 mm wide, from 12% to 8%, how much does it move"
CUT = "four pieces at 41 1/2 and six at 27 3/4 from 16 foot stock"

CHANGED = [
    ([FLASHING, "make the 4 1/4 leg a 5"], 8.125),
    ([FLASHING, "lose the hem"], 7),
    ([FLASHING, "drop the 2"], 5.375),
    ([FLASHING, "the 2's a 2 1/2"], 7.875),
    (["bent flashing legs 2, 5/8, 3 1/2", "put a half inch hem on it"], 6.625),
    (["bent flashing legs 1, 3 1/2, 1 1/2", "add another leg of 2 inches"], 8),
    (["bent flashing legs 40, 90, 25 mm", "add a 10 hem both edges"], 175),
    ([WALL, "forgot there's a window an all, 1200 by 1050"], 13.68),
    ([WALL, "missed a window, 900 by 1200"], 13.86),
    (["wall area 12 m by 2.7 m less two windows 1.2 by 1", "oh forgot the door, .9 by 2.1"], 28.11),
    (["wall area 12 m by 2.7 m less two windows 1.2 by 1", "client wants three windows"], 28.8),
    ([SCREW, "oh and there's an inch and a half of foam in that stack as well"], 4.625),
    ([CUT, "plus two more pieces at 60"], 3),
    (["six at 900 and four at 1200 from 3.6 m lengths", "plus another two at 600"], 4),
    ([BATTENS, "yeah put one at both ends too, all gaps the same"], 6.92),
    ([BATTENS, "put a gap at each end too", "make it six of them"], 5.57),
    (["course layout 100 inches, 7 at most", "scrap the 7, just give me 14 courses"], 7.14),
    ([OAK, "and quarter sawn?", "do me white ash instead, still quarter sawn"], -0.95),
    ([OAK, "yard's only got quarter sawn"], -1.02),
    (["14 ft PVC trim, 85 F swing, how much does it grow", "client wants aluminum"], 0.18),
    (["rafter 13'6 run 7/12 18 inch overhang", "lose the tail"], 187.56),
    (["rafter 13'6 run 7/12 18 inch overhang", "no tail, 8/12"], 194.7),
    (["circle 1.4 m across, circumference", "that's the radius, not across"], 8796.46),
]


@pytest.mark.parametrize(("lines", "value"), CHANGED)
def test_a_list_or_a_choice_as_it_is_after_all(lines: list[str], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value, abs=0.08)


def test_the_tail_is_gone_from_what_is_asked_in_the_same_breath() -> None:
    record = last("rafter 13'6 run 7/12 18 inch overhang", "lose the tail. how much does it rise over that run")
    assert record["answer"]["value"] == pytest.approx(94.5), record["say"]


def test_a_limit_that_is_scrapped_is_on_the_page_no_more() -> None:
    record = last("course layout 100 inches, 7 at most", "scrap the 7, just give me 14 courses")
    assert "exposure" not in [line["name"] for line in record["givens"]]


def test_both_numbers_stay_where_they_change_places() -> None:
    record = last("wall 30 by 9 area", "30 is the height not the length")
    assert {line["name"]: line["value"] for line in record["givens"][:2]} == {"length": 9, "height": 30}
