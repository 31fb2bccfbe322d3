"""First lines told as to a mate: every opening and layer counts, whatever is said between two, and words are no numbers."""

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("wall 36 foot by 8 foot 6, the big door nine foot by seven foot out of it, and one window three by four, net", 231),
        ("wall 40 by 9 with a door 3 by 7 out of that and two windows 3 by 4, area", 315),
        ("wall 36 foot by 8 foot 6, big door nine by seven, oh and one window three by four, net", 231),
        ("wall 36 foot by 8 foot 6, door nine by seven in it and there's one window three by four, net", 231),
        ("wall 36 by 9, there's a door 3 by 7, area", 303),
        ("11 by 2.7 m wall with a door nine hundred mil by two point one, area", 27.81),
    ],
)
def test_every_opening_is_taken_off(line: str, value: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(value)


def test_no_ten_in_a_verb_and_no_eighths_in_a_price() -> None:
    assert last("what if we flatten it to a two twelve, rise over 14 foot of run")["answer"]["value"] == pytest.approx(28)
    record = last("I've six pieces at 17 5/8 each to go along the bench, butted up tight, what's the run of them")
    assert (record["topic"], record["answer"]["value"]) == ("tape arithmetic", pytest.approx(105.75))
    assert last("42 boards at 12 and a quarter, cost")["answer"]["value"] == pytest.approx(514.5)


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("how long's a brace two foot by two foot six", (24**2 + 30**2) ** 0.5),
        ("ladder goes sixteen foot to where it bears, what do I pull the foot out to", 48),
        ("I've an inch and a half of foam now on the outside of the sheathing on the north wall, seven sixteenths sheathing,"
         " three quarter strapping over it, an inch and a half in the stud, how long a screw", 4.1875),
        ("the porch drops 14 inches over its depth, it was 7 foot but they moved it out to 8 foot, what's the pitch", 1.75),
        ("nine and thirteen sixteenths in one hand and six and a half in the other, what's the odds between them", 3.3125),
    ],
)  # fmt: skip
def test_a_first_line_told_as_to_a_mate(line: str, value: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(value)
