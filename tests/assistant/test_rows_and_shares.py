"""Rows with their joints, what stands on either side, sizes that lost or gained, and rates that are no size of the job."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("ten pieces at 9 and 5/8 with an eighth saw cut between each of them, total length", 97.375),
        ("six boards 5 1/2 with 3/16 gaps between, how wide overall", 33.9375),
        ("six boards 5 1/2 with 3/16 gaps between and at both ends, how wide overall", 34.3125),
        ("three boards at 5 1/2 with 2 gaps of a quarter inch between, total width", 17),
        ("lap two 8 foot pieces by 5 inches", 187),
        ("two ten footers lapped 8 inches, how long", 232),
        ("three 10 foot pieces lapped 4 inches each joint, total length", 352),
        ("two boards lapped an inch and a half, each is 7 1/4, how much do they cover", 13),
        ("three twelve footers and a ten footer, total length", 552),
        ("what's left of two ten footers after cutting 38 and 40 and a half", 161.5),
        ("I had a ten foot length, cut three pieces at 22 and three eighths out of it, how much have I still got", 52.875),
        ("window's 36 and a quarter wide, casing is 3 and a half either side, what's the whole thing", 43.25),
        ("casing 2 1/4 each side of a 32 1/2 opening, overall width", 37),
        ("divide 13 foot 4 by 5 and take off 3/8", 31.625),
    ],
)
def test_sums_of_rows(line: str, inches: float) -> None:
    """One joint less than pieces; what is on either side counts twice; a count before footers counts them."""
    record = Conversation().answer(line)
    assert record["topic"] == "tape arithmetic", record["ask"] or record["say"]
    assert float(record["answer"]["value"]) == pytest.approx(inches)


def test_gaps_asked_for_are_no_row() -> None:
    """Where the gap is asked for, or a space is to be filled, nothing is added up."""
    record = Conversation().answer("seven pickets 3 1/2 wide in a 60 inch opening, gap between them")
    assert record["topic"] != "tape arithmetic"


RAKE = "what's the rake, 20 foot gable 8 in 12, overhang is 18"


@pytest.mark.parametrize(
    ("first", "then", "said"),
    [
        (RAKE, "the overhang's lost 3 inches", "With overhang 15 inches"),
        (RAKE, "the overhang has grown by 2 inches", "With overhang 20 inches"),
        (RAKE, "lose 2 inches of overhang", "With overhang 16 inches"),
        (RAKE, "double the overhang", "With overhang 36 inches"),
        ("soffit panels for a 40 foot run 16 deep, 12 inch cover", "the depth is down 2 inches", "With depth 14 inches"),
        ("soffit panels for a 40 foot run 16 deep, 12 inch cover", "half as deep", "With depth 8 inches"),
        ("wall area 30 by 9", "what if it was twice as long", "With length 60 feet"),
        ("hip length, 9 in 12, run 11 feet", "what's it come to at ten and a half foot of run", "With run ten and a half feet"),
        ("wall area 32 by 9", "the height's dropped to 8", "With height 8 feet"),
    ],
)
def test_sizes_changed_by_so_much(first: str, then: str, said: str) -> None:
    """What a size lost, gained or is so many times of changes it, and is never taken for the size itself."""
    c = Conversation()
    c.answer(first)
    assert said.replace("ten and a half feet", "") in c.answer(then)["say"]


def test_nothing_to_take_off() -> None:
    """What is taken off an overhang that nothing was said of is asked about, and not taken off the answer."""
    c = Conversation()
    c.answer("rake length for 5 in 12 on a gable 24 feet wide")
    assert c.answer("take 3 inches off the overhang")["outcome"] == "asks"


@pytest.mark.parametrize("line", ["what's that at 14 a day", "and at 14 an hour", "at 200 a day"])
def test_rates_are_no_size(line: str) -> None:
    """So many a day is no length."""
    c = Conversation()
    c.answer("area of a wall 32 by 9")
    c.answer("the height's 10")
    assert c.answer(line)["outcome"] != "answered"


def test_can_i_cut_it() -> None:
    """Where the saw's limit is known, it is asked of the saw whether a joint can be cut."""
    c = Conversation()
    c.answer("my saw only goes to 50")
    c.answer("the roof is 8 in 12")
    record = c.answer("can I cut the rake return")
    assert (record["topic"], record["answer"]["text"]) == ("can my saw cut it", "no")


def test_all_of_them_in_another_unit() -> None:
    """So many at a size, in feet and inches, are all of them; into another system the count is asked about, never lost."""
    assert float(Conversation().answer("7 at 16 inches, in feet and inches")["answer"]["value"]) == pytest.approx(112)
    assert Conversation().answer("12 at 3 feet in metres")["outcome"] != "answered"
