"""Words that turn one question into another: where the gaps are, turn or corner, a setting or a pitch, what can't be."""

from __future__ import annotations

import pytest

from tests.talking import last

SLATS = "7 slats 1 1/2 wide in 40 inches, even gaps"  # 40 − 10.5 = 29.5: a sixth of it between only, an eighth with the ends


@pytest.mark.parametrize(
    "ends",
    [
        "", ", one hard against each end", ", outer two flush with the ends", ", with a slat at each end", ", a slat at each end",
        ", no gap at the ends", ", tight at both ends", ", first and last tight to the posts", " with the end ones flush",
        ", one slat at each end", ", with slats at the ends", " with none at the ends", ", starting and ending with a slat",
    ],
)  # fmt: skip
def test_pieces_at_the_ends_leave_gaps_between_only(ends: str) -> None:
    assert last(SLATS + ends)["answer"]["value"] == pytest.approx(29.5 / 6, abs=1 / 16)


@pytest.mark.parametrize(
    "ends",
    [
        " at both ends too", ", gaps at both ends too", ", gap top and bottom as well", " between and one at each end",
        ", the same gap on each side", ", ends too", ", including the ends", ", same gap between each slat and at both ends",
        ", a space before the first and after the last", ", starting and ending with a gap", ", sides included",
    ],
)  # fmt: skip
def test_gaps_at_the_ends_are_counted(ends: str) -> None:
    assert last(SLATS + ends)["answer"]["value"] == pytest.approx(29.5 / 8, abs=1 / 16)


def test_half_a_gap_at_each_end_makes_as_many_gaps_as_pieces() -> None:
    assert last(SLATS + " with half a gap at each end")["answer"]["value"] == pytest.approx(29.5 / 7, abs=1 / 16)


def test_a_length_without_unit_that_may_be_either_is_asked_about() -> None:
    record = last("4 posts 5 1/4 over 30 equal gaps between")
    assert (record["outcome"], record["ask"]) == ("asks", "Is the length 30 ft or 30 in?")


def test_boards_fill_most_of_what_they_stand_in() -> None:
    assert last("4 boards 5 1/4 over 30 equal gaps between")["answer"]["value"] == 3  # (30 − 21) / 3 in


@pytest.mark.parametrize(
    ("text", "topic", "value"),
    [
        ("the wall turns 30 degrees off straight, mitre for the skirt board there", "miter for a corner", 15),
        ("miter for a 22 degree bend in the wall", "miter for a corner", 11),
        ("the trim turns a 135 degree corner, what miter", "miter for a corner", 22.5),
        ("turn a 120 degree corner in 3 pieces, saw per joint", "corner in several pieces", 15),
        ("turn a ninety degree corner in for peaces what saw setting on each joint", "corner in several pieces", 15),
        ("my saw swings to 47, the rake return works out at sixty degrees, how do I cut it", "can my saw cut it", 30),
        ("for every five inch course on a ten twelve, how far does the end move in", "step at the rake", 6),
        ("three same-size panels out of 88 and five eighths, what's each one", "divide evenly", 29.5417),
        ("what's each space if eleven of them make up 20 foot 2", "divide evenly", 22),
        ("on centre marks for nineteen feet of plate, ten inches to the first and sixteen after that", "marks on centre", 14),
        ("goes up six for every twelve across, what's that in degrees", "roof angle", 26.565),
        ("slope length 15 ft, run 9 ft, what's the rise", "right triangle", 144),
    ],
)
def test_what_is_asked_is_told_by_the_words_beside_it(text: str, topic: str, value: float) -> None:
    record = last(text)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["say"] or record["ask"]
    assert record["answer"]["value"] == pytest.approx(value, abs=0.05)


def test_pieces_without_their_number_are_asked_for() -> None:
    record = last("miter for a 90 degree corner done in several pieces")
    assert (record["outcome"], record["topic"]) == ("asks", "corner in several pieces")
    assert "How many pieces" in record["ask"]


@pytest.mark.parametrize(
    "text",
    [
        "right triangle with a leg of 12 inches and a hypotenuse of 10 inches, other leg?",
        "right triangle, rise 10 ft and slope 8 ft, what's the run",
    ],
)
def test_sides_that_make_no_triangle_are_declined_and_not_given_other_roles(text: str) -> None:
    record = last(text)
    assert record["outcome"] == "declined"
    assert "longest side" in record["say"]


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("a planter with seven sides, what does my saw get set at for a seven sided box", 180 / 7),
        ("ive got twelve more rafters to do at nine in twelve, saw setting for the plumb cut", 36.87),
    ],
)
def test_a_number_said_again_or_of_things_to_do_wants_no_place(text: str, value: float) -> None:
    assert last(text)["answer"]["value"] == pytest.approx(value, abs=0.05)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("the turret has ten sides", "what saw setting for the sill nosing"), 18),
        (("legs of a right triangle are 7 inches and 24 inches", "hypotenuse?"), 25),
        (("the rafter's run is 14 feet", "it rises 9 foot 4, what's my pitch"), 8),
    ],
)
def test_what_was_stated_before_goes_into_a_question_that_lacks_it(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value, abs=0.05)


def test_what_somebody_swears_to_is_held_against_the_answer() -> None:
    record = last("the helper reckons it's 30 degrees, what is a 7/12 in degrees")
    assert record["answer"]["value"] == pytest.approx(30.256, abs=0.05)
    assert "no, it is not that" in [line["text"] for line in record["also"]]
