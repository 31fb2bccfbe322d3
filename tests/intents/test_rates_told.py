"""So many for so much, and so many in each, told in one breath; and what only looks like it."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "needed"),
    [
        ("3 tubes did 40 foot of joint, how many for 160 foot", 12),
        ("last job 3 tubes did 40 foot of joint, this one is 160 foot, how many tubes", 12),
        ("35 lineal feet a tube, I've 300 foot of joint, how many tubes", 9),
        ("box of nails does 8 square, i got 30 square, how many boxes", 4),
        ("2 and a half tubes did 30 foot so how many for 100", 9),
        ("it took 4 cartridges to do 55 metres, there's 130 metres on this side, how many", 10),
        ("how many boxes do I want for 24 windows if 2 boxes did 10 windows", 5),
        ("90 feet took 4 tubes, how many tubes for 250 feet", 12),
        ("2 tubes a door, i got 9 doors how many tubes", 18),
        ("if two tubes did the porch at 44 foot how many for the whole house at 310", 15),
        ("a roll covers 1350 sq ft, how many rolls for 2600 sq ft plus 10 percent", 3),
    ],
)
def test_the_same_rate(line: str, needed: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("by the same rate", needed)


def test_another_length_at_the_same_rate() -> None:
    assert last("3 tubes did 40 feet of joint, how many for 160 feet", "and 200 feet")["answer"]["value"] == 15


@pytest.mark.parametrize(
    "line",
    [
        "3 tubes did 40 foot in 2 hours, how many for 160",
        "gallon does 250 square feet, wall is 900, how many gallons",
        "3 tubes did 40 feet, how many for 160 feet, 20 percent humidity",
        "3 men did 40 feet in a day, how many men for 160",
        "1 tube does 12 windows, how many for 90 feet",
    ],
)
def test_a_rate_with_something_else_in_it_is_none(line: str) -> None:
    assert last(line)["outcome"] != "answered"


@pytest.mark.parametrize(
    ("line", "fasteners"),
    [
        ("need 2 screws per joist on 16 joists, what's that come to", 32),
        ("theres 21 straps and 7 screws in each", 147),
        ("8 nails in every hanger and I've 26 hangers", 208),
        ("each strap gets 7 screws, there's 21 straps", 147),
        ("4 screws a bracket, 11 brackets, how many screws", 44),
        ("screws per strap is 7 and there are 33 straps", 231),
        ("6 screws per strap, no wait 5 a strap, 21 straps", 105),
    ],
)
def test_so_many_in_each(line: str, fasteners: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("fasteners", fasteners)


@pytest.mark.parametrize(
    "line",
    [
        "2 screws a stud, 22 studs, and the boards?",
        "2 screws per foot of strap, 21 straps 8 foot long",
        "2 screws per joist on 16 joists at 16 centres",
    ],
)
def test_boards_and_spacings_are_asked_about(line: str) -> None:
    assert last(line)["outcome"] != "answered"


def test_each_board_crosses_every_stud() -> None:
    assert last("nails for 14 boards, 2 per stud, 19 studs")["answer"]["value"] == 532


@pytest.mark.parametrize(
    ("after", "fasteners"),
    [("what about 30 straps", 210), ("30 straps", 210), ("8 each", 168)],
)
def test_so_many_in_each_goes_on(after: str, fasteners: int) -> None:
    assert last("theres 21 straps and 7 screws in each", after)["answer"]["value"] == fasteners


def test_pallets_are_asked_for_and_no_money() -> None:
    record = last("5 squares a pallet, i need 27 square, pallets?")
    assert (record["topic"], record["answer"]["value"]) == ("by the same rate", 6)


def test_boards_that_go_at_so_much_are_no_rate() -> None:
    line = "The thin upright strips behind the boards go at 16 inches on centre along a 24 foot wall, how many do I need?"
    record = last(line, "And if I put them at 24 inches?", "Sorry, the wall is actually 22 feet.")
    assert record["answer"]["value"] == 12


def test_twelve_in_a_pack_are_boxes() -> None:
    record = last("There's 12 in a pack and I need 50, how many packs")
    assert (record["topic"], record["answer"]["value"]) == ("boxes", 5)
