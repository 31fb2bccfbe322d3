"""A number that takes the place of a part of a sum, what goes on from a sum that could be two, and layers told anew."""

from __future__ import annotations

import pytest

from tests.talking import last

DOUBTED = "nine foot ate and a quarter minus for foot too"
SIDING = "3/4 plank, inch and a half foam, 3/4 batten and 9/16 siding, how far does the face stand off the studs?"
NAIL = "1 1/4 bite, 7/16 osb 3/4 furr 1/2 sdng, nail len"
BELOW = (
    "It was twelve below when we started, that's fahrenheit, now it's a balmy 20, coffee's froze, what's the dew point at 20"
    " with the humidity at 60 percent?"
)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("47 11/16 less 47 3/16", "what if it was 47 1/4", "the second"), 0.4375),
        (("47 11/16 less 47 3/16", "no, 47 1/4", "the first"), 0.0625),
        (("marked 47 3/16, need 47 11/16, how short", "if I'd marked it 47 1/4"), 0.4375),
        ((DOUBTED, "four foot two"), 66.25),
        ((DOUBTED, "four foot"), 68.25),
        ((DOUBTED, "divide by three", "the second"), 66.25),
        ((SIDING, "they've changed their minds, it's two inch foam"), 4.0625),
        ((SIDING, "he says it's a one inch batten"), 3.8125),
        (("1/2 ply 3/4 strap 5/8 clad face?", "boss says the ply is 5/8"), 2.0),
        ((NAIL, "2 lyrs osb"), 3.375),
        ((NAIL, "two layers of osb"), 3.375),
        (("5/8 clad, 3/4 strap, 1 1/4 bite, scr len", "n if the strap's 1 1/2"), 3.375),
        (("ldr 18 up", "no 16"), 48),
        (("6'8 lss 1 1/2 lss 3/4 lss 5/8",), 77.125),
        (("2 @ 3 5/8 and 3 @ 7 1/4, total",), 29),
    ],
)
def test_it_comes_to(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered"
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(value), "in")


@pytest.mark.parametrize(
    ("lines", "asks"),
    [
        (("47 11/16 less 47 3/16", "and 47 1/4"), "Is the sum 47 1/4 − 47 3/16 or 47 11/16 − 47 1/4?"),
        ((DOUBTED, "divide by three"), "Is the sum nine foot eight and a quarter − four foot or"),
    ],
)
def test_what_is_open_is_asked_again(lines: tuple[str, ...], asks: str) -> None:
    record = last(*lines)
    assert (record["outcome"], asks in record["ask"]) == ("asks", True)


def test_a_number_near_the_answer_is_still_compared() -> None:
    assert last("47 11/16 less 7 3/16", "calculator says 40 3/8")["topic"] == "compare"


def test_scots_words_are_spelled_out() -> None:
    record = last("douglas fir board 190 wide, 18 percent doon tae 12, whit does it lose", "an if it's quarter sawn")
    assert record["answer"]["value"] == pytest.approx(-190 * 0.00165 * 6)


def test_the_air_is_what_the_dew_point_is_asked_at() -> None:
    record = last(BELOW, "and at 40 percent")
    assert [given["text"] for given in record["givens"]][:2] == ["20", "40 percent"]
    assert record["answer"]["value"] == pytest.approx(1.677, abs=0.01)
