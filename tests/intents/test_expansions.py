"""Coefficients of expansion of one's own: how they are written, per which degree, and what they change."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from intents.measures import readings
from intents.tokens import tokenize
from solvers.quantities import Expansion
from tests.talking import last

MILLIONTH = Fraction(1, 10**6)


def per_kelvin(text: str) -> list[tuple[Fraction, str]]:
    """What the surest reading of a coefficient in the text may be, in millionths per kelvin, and its words."""
    row = next((row for row in readings(tokenize(text)) if any(r.kind == "expansion" for r in row)), [])
    for reading in row:
        if isinstance(reading.value, Expansion):
            choices = [reading.value, *reading.also]
            return [(value.to("none").value / MILLIONTH, value.unit) for value in choices]  # type: ignore[attr-defined]
    return []


@pytest.mark.parametrize(
    ("text", "millionths"),
    [
        ("58 millionths per kelvin", "58"),
        ("fifty eight millionths per degree celsius", "58"),
        ("70e-6 per K", "70"),
        ("5.8e-5/K", "58"),
        ("5.8×10⁻⁵/°C", "58"),
        ("58 x 10^-6 /K", "58"),
        ("70 μm/m·K", "70"),
        ("70 microns a metre per kelvin", "70"),
        ("0.07 mm per metre per °C", "70"),
        ("0.000023 per C", "23"),
        ("30 millionths per deg F", "54"),
        ("3e-5 in/in/°F", "54"),
        ("0.00003 inch per inch per degree fahrenheit", "54"),
        ("3 in 100,000 per degree F", "54"),
        ("three hundred thousandths per fahrenheit", "54"),
        ("30 ppm per F", "54"),
    ],
)
def test_every_dress_of_a_coefficient_is_one_number(text: str, millionths: str) -> None:
    assert [value for value, _ in per_kelvin(text)] == [Fraction(millionths)]


@pytest.mark.parametrize("text", ["30 millionths", "30e-6", "30 millionths per degree"])
def test_a_degree_of_no_scale_is_either(text: str) -> None:
    assert [value for value, _ in per_kelvin(text)] == [30, 54]


@pytest.mark.parametrize(
    "text", ["3 in 12", "1/300", "0.5 per cent", "6 in by 10", "2 mm per metre fall", "0.0005", "16 in per foot", "40 e 6"]
)
def test_what_only_looks_like_one_is_none(text: str) -> None:
    assert per_kelvin(text) in ([], [(Fraction(40), "perC"), (Fraction(72), "perF")])  # 40e6 with its minus gone


@given(st.integers(1, 300))
def test_a_figure_per_fahrenheit_is_nine_fifths_of_it_per_kelvin(figure: int) -> None:
    (fahrenheit, _), (kelvin, _) = *per_kelvin(f"{figure} millionths per F"), *per_kelvin(f"{figure} millionths per K")
    assert fahrenheit == kelvin * Fraction(9, 5) == figure * Fraction(9, 5)


@pytest.mark.parametrize(
    ("line", "value", "unit"),
    [
        ("polycarbonate sheet, 68 millionths per K, 3.05 m long, gets 45 kelvin warmer, how much longer", 9.3330, "mm"),
        ("thermal movement 12 ft composite, 0.000032 per °F, 90 F rise", 0.41472, "in"),
        ("how much does a 16 ft vinyl panel grow over 80 F if the maker says 36 millionths per degree F", 0.55296, "in"),
        ("end gap for 20 ft trim, coefficient 3.3e-5 per F, 50F now, hottest 120F, coldest -20F", 0.5544, "in"),
        ("how much will 3.6 m of fascia at 5.8e-5/C shrink dropping 40 C", -8.352, "mm"),
    ],
)
def test_a_coefficient_given_is_the_one_used(line: str, value: float, unit: str) -> None:
    """ΔL = α L ΔT by hand."""
    record = last(line)
    assert record["answer"]["unit"] == unit, record["ask"]  # type: ignore[index]
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-6)  # type: ignore[index]


def test_a_coefficient_of_no_scale_is_asked_about_and_the_reply_taken() -> None:
    asked = "thermal movement of 10 ft trim at 30 millionths, 100 F rise"
    assert "per °C or" in str(last(asked)["ask"])
    assert last(asked, "per fahrenheit")["answer"]["value"] == pytest.approx(0.36)  # type: ignore[index]
    assert last(asked, "celsius")["answer"]["value"] == pytest.approx(0.2)  # type: ignore[index]


def test_a_figure_outside_what_is_published_of_the_material_is_said_to_be() -> None:
    cautions = last("how much does 12 ft of vinyl grow at 200 millionths per K over 100 F")["cautions"]
    assert any("outside the 54 to 80" in line for line in cautions)  # type: ignore[attr-defined]
    usual = last("how much does 12 ft of vinyl grow at 60 millionths per K over 100 F")["cautions"]
    assert not any("outside" in line for line in usual)  # type: ignore[attr-defined]


def test_a_coefficient_can_be_put_in_after_the_answer() -> None:
    lines = ("what does 12 ft of vinyl grow over 100 F", "make the coefficient 58 millionths per K")
    assert last(*lines)["answer"]["value"] == pytest.approx(144 * 58e-6 * 100 * 5 / 9)  # type: ignore[index]


@pytest.mark.parametrize(
    "line", ["cools off eighty degrees F", "drops 80 F", "shrink over an 80 F change", "contracts with an 80 F swing"]
)
def test_what_shrinks_is_negative(line: str) -> None:
    assert last(f"20 ft of steel roof panel {line}, how much does it move")["answer"]["value"] < 0  # type: ignore[index]
