"""Lines that put something to what was just worked or take it off: what there is already, so many of it, both of two."""

from __future__ import annotations

import pytest

from tests.talking import last

BLOCKS = ("how many 14 1/2 inch blocks from an 8 footer",)
NOGGINS = ("how many 385 mm noggins from a 4.8 metre length, 3 mm blade",)
SHEETS = ("wall 20 foot long and 9 foot high, how many 4x8 sheets",)
POSTS = ("five bags set eight posts, how many bags for thirty posts at that rate",)
RIMS = (
    "deck rim 22 ft long, marks at 12 inch centres, how many marks",
    "the other rim is 18 foot 6, same centres, how many on that",
)
NORTH = ("north wall 42 by 9, two windows 3 by 5 and a door 3 by 7, net area",)
SOUTH = "south wall is the same but no windows, only the door"
FLASHING = ("flashing folded 25, 90 and 40 mm with a 10 mm hem, what's the girth",)
RISE = ("lean-to at 22 degrees with a run of 3750 mm, how far does it rise", "and the rafter up the slope?")
ROOF = ("roof on a 24 by 30 foot garage at 5/12 with 12 inch overhang, how many square feet of roof",)
BRACE = ("brace goes up 42 inches and over 30, how long is it",)
ROW = ("pickets 3 1/2 wide in a 92 1/2 inch panel, fourteen of them, gaps at both ends too, what gap",)
STEP = ("boards show 140 mm up a 35 degree gable, what does each one lose at one end",)


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        ((*BLOCKS, "what about from a 12"), 9, "count"),
        ((*BLOCKS, "out of a twelve", "we've got 6 twelves in the shed, how many is that"), 54, "count"),
        ((*BLOCKS, "from a 12", "got 6 of those, how many blocks", "we need 80, how many more twelves do I need"), 3, "count"),
        ((*BLOCKS, "make them 10 and a half long"), 9, "count"),
        ((*NOGGINS, "what if they were 410", "and from a 3.6 length"), 8, "count"),
        ((*NOGGINS, "I've nine of those lengths, how many noggins in all?"), 108, "count"),
        (("how many 385 mm noggins will I get from a 4.8 metre length, blade takes 3", "what if they were 410"), 11, "count"),
        ((*SHEETS, "there's two walls like that, for the both"), 12, "count"),
        ((*SHEETS, "two of those walls", "what if I bought 4 by 9 sheets"), 10, "count"),
        ((*SHEETS, "there's two in the van already, how many more do I buy"), 4, "count"),
        ((*POSTS, "there's 12 bags in the trailer already, how many more do I pick up"), 7, "count"),
        ((*POSTS, "we have 12 already so how many more do I need", "at 7.50 a bag what will the rest cost"), 52.5, "money"),
        ((*RIMS, "for both rims how many hangers is that, one per mark"), 42, "count"),
        ((*RIMS, "how many marks for both rims"), 42, "count"),
        ((*RIMS, "so how many fewer is that than the first one"), 4, "count"),
        ((*ROOF, "put that in squares with ten percent waste"), 9.91, "square"),
        ((*ROOF, "put that in squares with ten percent waste", "7 on 12"), 10.6, "square"),
        ((*ROOF, "and no overhang at all on it"), 780, "ft2"),
        ((*BRACE, "two of those plus 12 inches spare, how much stock"), 115.23, "in"),
        ((*BRACE, "two of them"), 103.23, "in"),
        ((*ROW, "same again but one more picket"), 2.5, "in"),
        ((*STEP, "what angle do I cut those ends at"), 35, "deg"),
        ((*STEP, "what angle do I cut those ends at", "how high up do seventeen of them come"), 2380, "mm"),
        ((*NORTH, SOUTH), 357, "ft2"),
        ((*NORTH, SOUTH, "both walls together?"), 684, "ft2"),
        ((*NORTH, SOUTH, "both walls together?", "in squares, with 15 percent waste"), 7.87, "square"),
        ((*FLASHING, "the 90 wants to be 110"), 185, "mm"),
        ((*RISE, "25 degrees"), 4137.67, "mm"),
        ((*RISE, "with a 450 tail on the end, measured level"), 4529.85, "mm"),
        (("plumb cut on a 9 in 12", "and the level cut", "the lean-to's 4/12, plumb cut for that one"), 18.43, "deg"),
        ((*BLOCKS, "out of a twelve", "i got for of those twelves how many blocks in all"), 36, "count"),
        ((*BLOCKS, "make the blocks 10 and a half"), 9, "count"),
        ((*BLOCKS, "i need a hundred and ten of them so how many eight footers"), 19, "count"),
        (("jack rafters at 18 inch centres on an 8 in 12 roof, each gains", "four of those differences"), 86.533, "in"),
        (("gable 7.2 m wide at 35 degrees, 300 overhang, rake length", "and if there's no oversail"), 4394.8, "mm"),
        (("gable 6400 mm wide at 35 degrees, how high", "and how long is each bargeboard with 300 of overhang"), 4272.71, "mm"),
        (("2440 mm less 75 less 18", "for of them end to end"), 9388, "mm"),
    ],
)
def test_what_comes_of_the_answer_before(lines: tuple[str, ...], value: float, unit: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    near = 0.51 if unit == "mm" else 0.01
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(value, abs=near), unit)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("attic 28 by 44 feet at 1/150, how much vent", "half of that is for the soffit, how much is the half?"), 591.36),
        ((*STEP, "both ends together then"), 399.88),
    ],
)
def test_it_stands_beside_the_answer(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "noted", record["say"]
    assert any(line["value"] == pytest.approx(value, abs=0.51) for line in record["also"])


@pytest.mark.parametrize(
    "lines",
    [
        (*POSTS, "there's 40 bags in the trailer already, how many more do I pick up"),  # more than it takes
        (*BLOCKS, "I need 80, how many more do I need"),  # how many sticks there are was not told
    ],
)
def test_nothing_is_worked_where_there_is_nothing_to_take_off(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] != "answered"


@pytest.mark.parametrize(
    "lines",
    [
        (*FLASHING, "the back one goes up to a hundred and ten", "how many strips of that across a 1200 coil"),
        (*NORTH, "the barn is the same but no skylights in it", "both walls together?"),
    ],
)
def test_nothing_goes_on_from_an_answer_that_the_line_between_was_to_change(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] == "asks"


def test_what_there_is_of_another_thing_is_not_taken_off() -> None:
    assert last(*POSTS, "there's 12 lads in the trailer already, how many more beers do I pick up")["outcome"] != "answered"
