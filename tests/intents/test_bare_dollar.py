"""A dollar whose one is not said: buck eighty."""

from __future__ import annotations

from fractions import Fraction

import pytest

from intents.talk import numbers_in
from solvers.quantities import Money


@pytest.mark.parametrize(
    ("said", "value"), [("buck eighty apiece", "1.80"), ("at dollar ten each", "1.10"), ("a buck eighty-five", "1.85")]
)
def test_a_buck_and_cents_is_one_dollar_and_those(said: str, value: str) -> None:
    (found,) = numbers_in(said)
    assert isinstance(found.value, Money) and found.value.value == Fraction(value)


@pytest.mark.parametrize(
    ("said", "values"),
    [
        ("twenty dollar, ten of them", [20, 10]),
        ("per dollar 40", [40]),
        ("window buck thirty six by forty eight inches", [36, 48]),
    ],
)
def test_other_numbers_beside_a_dollar_stay(said: str, values: list[int]) -> None:
    assert [found.value.value for found in numbers_in(said)] == values  # type: ignore[union-attr]
