"""How many pieces so many sticks give: how many sticks there are is never let fall, and a section is no size."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "pieces"),
    [
        ("three 20 ft pipes and I'm cutting 38 inch lengths, how many all told", 18),  # 6 of each
        ("eight lengths of 6 metre pipe chopped into 450 mm stubs, how many stubs", 104),
        ("12 bars at 6 m, 1150 mm each piece, 3 mm cut, how many pieces", 60),
        ("how many 300s out of seven 3.6s", 77),
        ("seven 4.8 m lengths of 90x45, noggins 562, how many noggins", 56),
        ("a pair of 20 footers, 64 inch pieces how many", 6),
        ("dowel 36 inch, 2 1/2 inch pegs, eight dowels, how many pegs", 104),
        ("Sticks are 12 ft, I've 8 of 'em, pieces 3'2\". How many pieces in total?", 24),
        ("lookouts twenty one and three quarters out of ten footers and we got too of em how many lookouts", 10),
        ("Six 12 ft lengths cut at 34-1/2. Total pieces?", 24),
        ("He bought 6 furring strips, each 8 ft, for 21 dollars. We need 31 inch peices, how many in all?", 18),
        ("how many fourteen and a half inch blocks out of a sixteen foot two by four", 13),
        ("how many fourteen and a half inch blocks can i get out of one twelve foot stick", 9),
        ("4 boards 16 foot, pieces 21, 1/8 kerf, how many", 36),
        ("5.4 m skirting x 2, 485 mm returns, how many", 22),
        ("picked up a couple of 20 foot rebars, 19 inch dowels, how many dowels", 24),
        ("2x12x20, how many 36 inch treads", 6),
        ("my lad's 12, anyway sixteen foot board and thirteen inch cleats how many", 14),
    ],
)
def test_pieces_of_so_many(line: str, pieces: int) -> None:
    record = last(line)
    assert (record["topic"], record["answer"] and record["answer"]["value"]) == ("pieces from a stick", pieces), record["ask"]


@pytest.mark.parametrize(
    "line",
    [
        "we use 12 per bay, how many 14 inch blocks from a 16 footer",
        "rebar comes 20 ft, we've fifteen, dowels are 18 inch, how many dowels",
        "three 16 footers and two 12 footers, 22 inch blocks, how many",
        "12 shelves, 16 ft board, 14 inch each, how many",
    ],
)
def test_a_number_that_may_be_of_sticks_is_not_let_fall(line: str) -> None:
    assert last(line)["outcome"] != "answered"


def test_pieces_that_are_counted_want_sticks() -> None:
    assert last("40 blocks at 14 inches from 16 footers how many sticks")["topic"] == "cut list"
