"""Quantities and courses said in ways of their own: sizes with no name, several walls, distances, greatest gaps."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


def answer_to(*lines: str) -> dict[str, object]:
    """The record of the last of these lines, each said in one conversation."""
    conversation = Conversation()
    return [conversation.answer(line) for line in lines][-1]  # type: ignore[return-value]


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        # pieces at the very ends leave gaps between only
        (["seven fins 40 mm wide over 2400 mm, first and last fins right at the ends, gap?"], "equal spacing", 353.3333),
        (["space evenly 6 boards 5 1/2 wide in 48 inches, a board at each end"], "equal spacing", 3.0),
        (["space 8 slats 2 inches wide in 60 inches, gaps right at both ends too"], "equal spacing", 44 / 9),
        # a greatest gap is never passed
        (["pickets 3 1/2 wide, 94 inch opening, gap at most 2 inches, gaps at both ends"], "equal spacing", 34.5 / 18),
        (["spindles 1 1/4 wide, opening 58 inches, spaces can't exceed 4 inches, how many"], "equal spacing", 43 / 11),
        # limits settle what is what
        (["straps over studs, 42 ft, 16s"], "strapping", 33),
        (["95 ft trim, 12s?"], "trim sticks", 8),
        # a unit stated once, or before its number
        (["bent flashing legs 40, 90, 25, all in mm"], "bent flashing", 155),
        (["trim feet: 148, stock 16 ft, how many sticks"], "trim sticks", 10),
        (["step at the rake, 40 degrees, boards at 150 cover, in mm"], "step at the rake", 178.763),
        # openings with no name, and of kinds nobody has heard of
        (["wall 28 x 9, take two 3x4s and a 3x7 out, square feet?"], "wall area", 207),
        (["wall 36x9, less a 3x7 and two 3x4s"], "wall area", 279),
        (["net area of a 40 by 10 wall, 12 by 8 roll up door"], "wall area", 304),
        (["area of a wall 32 by 9 with two windows 3 by 4 and one 2 by 3"], "wall area", 258),
        # several walls, and all the way round
        (["area of two walls 40 by 9 and two 20 by 9"], "wall area", 1080),
        (["walls nine high all the way round 20 by 30, how many square feet"], "wall area", 900),
        (["frieze all round a 30 by 40 garage in 12 foot sticks, how many"], "trim sticks", 12),
        (["trim round six windows 3 by 4, 16 foot stock, sticks?"], "trim round openings", 6),
        # the gable counted in takes the job's pitch; else it is no part of the wall
        (["the pitch is 6/12", "wall 30 by 9, area, gable counted"], "wall area", 382.5),
        (["the pitch is 6/12", "area of a wall 30 by 9"], "wall area", 270),
        # distances between the lines, in the place of heights
        (["courses to land: 24 from bottom to sill, 42 sill to head, 18 head to frieze, exposure between 5 1/2 and 6 1/4"],
         "courses to openings", 6.0),
        (["courses on the window, window from 36 to 84, top at 108, exposure between 5 3/4 and 6"], "courses to openings", 6.0),
        # panels
        (["planks cover 7 across a 121 inch wall, first and last planks the same, how wide"], "balanced panels", 4.5),
        (["even rips 100 3/8, 6 cover"], "balanced panels", 5.1875),
        # cut lists in any order
        (["out of 16 foot boards I need three sills at 41, three heads at 44 1/2 and six legs at 62"], "cut list", 4),
        (["jambs 6 @ 80 in, heads 3 @ 34 in, stock 16 ft, cut list"], "cut list", 4),
        (["Need nine battens 1090 mm each from 2.4 m stock, sticks?"], "cut list", 5),
        # loads, tubes, screws
        (["cost of 30 12 foot boards at $1.10 a foot"], "cost", 396),
        (["forty boards at twenty two fifty apiece, what does it cost"], "cost", 900),
        (["how far does a 10.1 oz tube go on a 3/8 by 3/8 bead"], "sealant", 10.8014),
        (["How many feet of joint per standard tube at 3/8 wide and half that deep?"], "sealant", 21.602778),
        (["how many screws down one 10 foot strap at 16 inch centers"], "fasteners", 9),
        (["squares for 900 square feet, nothing for waste"], "squares", 9),
    ],
)  # fmt: skip
def test_is_worked(lines: list[str], topic: str, value: float) -> None:
    record = answer_to(*lines)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["topic"] == topic
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-4)  # type: ignore[index]


@pytest.mark.parametrize(
    "line",
    [
        "How many square feet in a gable-end wall, 24 wide, 9 to the eave, gable included?",  # no pitch is known
        "how many tubes for a joint 1/4 wide and 1/4 deep",  # no word of how far one goes
        "story pole at 6 3/4 exposure",
        "what's the gap for 9 pickets evenly spaced in 10 feet",
    ],
)
def test_is_asked_back(line: str) -> None:
    assert answer_to(line)["outcome"] == "asks"


def test_a_width_that_boards_are_named_by_is_left_out() -> None:
    record = answer_to("how many boards for 575 square feet, 8 1/4 boards showing 7, 12 ft long")
    assert record["answer"]["value"] == 91  # 575 ft² and a tenth over 7 ft² a board: 8 1/4 is no length that is sold
    assert "Left out: 8 1/4" in record["say"]


def test_too_few_pieces_for_the_greatest_gap_are_refused() -> None:
    record = answer_to("equal spacing for 3 balusters 1 1/2 wide in 60 inches, gaps at both ends, no gap over 4 inches")
    assert record["outcome"] == "declined"
    assert "over the greatest" in str(record["say"])


def test_the_course_asked_for_stands_beside_the_first() -> None:
    record = answer_to("length of the fifth course up a 30 foot gable at 6/12 with 6 inch exposure")
    also = {line["name"]: line["value"] for line in record["also"]}  # type: ignore[attr-defined]
    assert also["course 5, counted from the bottom"] == 264
    assert also["courses"] == 15
    assert also["total length"] == 2880
    assert len(record["marks"]) == 15  # type: ignore[arg-type]
    assert "Course 5" in str(record["say"])


def test_a_size_that_has_no_place_is_named() -> None:
    record = answer_to("wall area 20 by 9, 4 by 5 gone for the window")
    assert record["outcome"] == "asks"
    assert "4 by 5" in str(record["ask"])
