"""A share of the last answer is of it, and no number of the question's own."""

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("question", "after", "said", "value"),
    [
        (
            "vent opening for a 3/4 gap, 40 foot wall, bug screen 60 percent open",
            "plus 10 percent",
            "is 237.6 square inches",
            237.6,
        ),
        ("14 boards at 8.50", "plus 8 percent tax", "119.00 plus 8 percent is 128.52", 128.52),
        ("14 boards at 8.50", "10% off", "119.00 less 10 percent is 107.10", 107.1),
        ("cost of 45 boards at $12.50 each", "times 3", "562.50 times 3 is 1687.50", 1687.5),
        ("fall of a 100 mm sill at 1:10", "less 5%", "less 5 percent is 9.5 millimetres", 9.5),
    ],
)
def test_said_of_the_answer(question: str, after: str, said: str, value: float) -> None:
    record = last(question, after)
    assert record["outcome"] == "answered"
    assert said in record["say"]
    assert record["answer"]["value"] == pytest.approx(value)


def test_it_goes_on_from_so_much_put_to_it() -> None:
    record = last("wall 30 by 8", "two of those walls", "plus ten percent", "in square metres")
    assert record["answer"]["value"] == pytest.approx(528 * 0.3048**2)
    assert last("96 less 3 5/8", "times 2", "plus 10 percent")["answer"]["name"] == "length, 2.2 times it"
    boards = last("how many boards for 264 sq ft, 6 inch exposure, 12 foot boards", "less 13 percent")
    assert boards["answer"]["value"] == 43  # 49 boards, and 42.63 is rounded up


def test_half_of_it_is_worked() -> None:
    assert last("free area of a 3/4 gap, 40 foot wall, bug screen 60 percent open", "half of that")["answer"]["value"] == 108
    assert last("miter for a 92 degree corner", "half of that")["answer"]["value"] == 22
    assert last("96 less 4 inches", "half of that")["answer"]["value"] == 46
    assert last("rake length for a 24 foot gable at 6/12", "half of that")["answer"]["value"] == pytest.approx(80.498, abs=1e-3)


@pytest.mark.parametrize("after", ["half of that", "plus 10 percent"])
def test_no_share_of_a_temperature(after: str) -> None:
    record = last("dew point at 20 C and 50%", after)
    assert record["outcome"] == "asks"
    assert "of what" in record["ask"]


def test_what_is_bought_takes_it_for_waste() -> None:
    assert last("trim sticks for 130 feet of 16 foot stock", "plus 10 percent")["answer"]["value"] == 9  # 143 / 16


def test_a_length_is_told_in_decimals_and_the_question_stays() -> None:
    assert "18.275 inches" in last("divide 91 3/8 into 5 equal parts", "as a decimal")["say"]
    assert last("divide 91 3/8 into 5 equal parts", "in yards", "make it 6")["answer"]["value"] == pytest.approx(91.375 / 6)


@pytest.mark.parametrize(("line", "text"), [("11/32 as a decimal", "0.3438 in"), ("14 3/16 in decimals", "14.1875 in")])
def test_a_decimal_that_was_asked_for_is_not_rounded_to_the_tape(line: str, text: str) -> None:
    assert last(line)["answer"]["text"] == text
