"""A number with no unit that a brace is on is its angle; a side is never taken for one."""

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("brace on a 45, run of 30 inches, how long is the slope of that triangle", 30 * 2**0.5),
        ("triangle on a 30, run of 40 inches, how long is the slope", 80 / 3**0.5),
        ("run of 30 inches on a 45, how long's the brace", 30 * 2**0.5),
        ("right triangle on a 30, slope 96, what's the rise", 48),
        ("right triangle, rise 7 on a 12 run, slope?", (49 + 144) ** 0.5),
    ],
)
def test_on_a_number(said: str, value: float) -> None:
    assert last(said)["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("said", "tubes"),
    [
        ("tubes of caulking for eighty feet half inch wide quarter deep", 7),  # 960 × 1/8 = 120 in³, 18.2 a tube
        ("caulk 80 feet half inch wide by a quarter deep", 7),
    ],
)
def test_half_an_inch_wide_is_none_of_the_feet(said: str, tubes: int) -> None:
    assert last(said)["answer"]["value"] == tubes


def test_feet_and_half_an_inch_stay_together() -> None:
    assert last("opening 12 feet half inch wide, 6 feet high, area")["answer"]["value"] == pytest.approx(144.5 * 72 / 144)


@pytest.mark.parametrize("price", ["twelve fifty bucks each", "nine ninety five dollars each"])
def test_dollars_and_cents_in_words_are_asked_about(price: str) -> None:
    assert "Is the price" in last(f"9 sticks at {price}")["ask"]


def test_hundreds_of_dollars_are_those() -> None:
    assert last("12 boards at a hundred and five dollars each")["answer"]["value"] == 1260
    assert last("trim sticks for 130 feet of 16 foot stock", "thirty-one bucks each")["answer"]["value"] == 279
