"""A circle by its radius or how far across it is, in other words; and what is no size of it."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("string 1.1 m from the peg swung full circle, area of ground inside", 3.8013),
        ("I tied a rope to a stake, 9 foot long, and walked round it. how far did I walk once round", 678.584),
        ("center to edge is 11, so all around is what, inches", 69.115),
        ("edge to center is 15 inches, circumference", 94.2478),
        ("halfway across is 33 inches, whole way round is what", 207.3451),
        ("R 22 1/2 in circle, sq ft?", 11.0447),
        ("how many square foot of floor in a round grain bin eighteen foot diameter", 254.469),
        ("its a circle to foot across how far is it round", 75.398),
        ("tank is 5 ft across and 8 ft high, how far round", 188.4956),
        ("how many feet round is a silo that is 24 feet across", 904.779),
        ("post 5 inch diameter 9 foot tall, how much rope goes once round", 15.708),
    ],
)
def test_its_size_is_told_in_other_words(line: str, value: float) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("circle", pytest.approx(value, rel=1e-3))


def test_what_is_no_size_of_it_is_left_out_and_said() -> None:
    record = last("the manhole cover is twenty four inches across and weighs a hundred and thirty pounds how far round the rim")
    assert record["answer"]["value"] == pytest.approx(75.3982, rel=1e-3)
    assert "Left out: a hundred and thirty pounds" in record["say"]


@pytest.mark.parametrize(
    "line",
    [
        "We have a round chimney pot, 24 inches high, and want mesh around it once. How much mesh?",
        "pipe 4 inch od, wrap twice round, how long",
        "circumference of a 12 inch circle times 3",
        "a circle is 100 inches round, how far across",
        "circle 5 foot across, what is its radius",
        "round deck 16 ft wide and 2 ft off the ground, area in square feet",
        "trampoline 12 ft wide 3 ft off the ground, padding round the edge",
    ],
)
def test_what_is_not_told_or_asked_so_is_no_answer(line: str) -> None:
    assert last(line)["outcome"] != "answered"


def test_an_arch_that_wide_and_high_is_no_circle() -> None:
    assert last("arch 5 ft across and 2 ft high, how far round the curve")["topic"] != "circle"
