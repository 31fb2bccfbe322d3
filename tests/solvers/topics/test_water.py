"""Air, vents, falls, channels, dew and frost: properties that can fail, and refusals."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.quantities import Length, Percent, Quantity, Ratio, Temperature
from solvers.slots import Layer
from solvers.topics.vents import Screen
from solvers.topics.water import HeldIn
from tests.working import also, answer, work

SIXTEENTHS = st.integers(1, 96).map(lambda n: Length(Fraction(n, 16), "in"))
QUICK = settings(max_examples=40, deadline=None)


def percent(value: Any) -> Percent:
    return Percent(Fraction(value), "percent")


def celsius(value: Any) -> Temperature:
    return Temperature(Fraction(value), "degC")


def fahrenheit(value: Any) -> Temperature:
    return Temperature(Fraction(value), "degF")


def word(topic: str, **givens: Any) -> str:
    worked = work(topic, **givens)
    assert worked.working is not None and worked.working.result is not None, worked.refused or worked.asks
    return worked.working.result.text


def words(topic: str, **givens: Any) -> dict[str, str]:
    worked = work(topic, **givens)
    assert worked.working is not None, worked.refused or worked.asks
    return {line.name: line.text for line in worked.working.also_lines}


# ── air ──


@given(SIXTEENTHS)
@QUICK
def test_a_gap_is_ventilated_from_three_eighths_on(depth: Length) -> None:
    assert word("air gap", depth=depth) == ("ventilated" if depth.value >= Fraction(3, 8) else "drainage only")


@pytest.mark.parametrize(
    ("depth", "kind"), [("9.5 mm", "drainage only"), ("9.525 mm", "ventilated"), ("10 mm", "ventilated")]
)
def test_the_edge_of_the_rule_in_millimetres(depth: str, kind: str) -> None:
    assert word("air gap", depth=depth) == kind


def test_three_eighths_says_the_half_millimetre() -> None:
    worked = work("air gap", depth="3/8 in")
    assert worked.working is not None
    assert "half a millimetre" in worked.working.said
    assert any("10 mm" in caution for caution in worked.working.cautions)


@given(st.lists(SIXTEENTHS, min_size=2, max_size=6))
@QUICK
def test_the_face_stands_at_the_sum_of_the_layers(sizes: list[Length]) -> None:
    layers = tuple(Layer(size, "board") for size in sizes)
    assert answer("build-out", layers=layers) == pytest.approx(float(sum(size.value for size in sizes)))


def test_metric_layers_give_millimetres() -> None:
    layers = tuple(Layer(Length(Fraction(size), "mm"), "layer") for size in (11, 19, 16))
    assert answer("build-out", layers=layers) == pytest.approx(46)


# ── vents ──


@given(SIXTEENTHS, st.integers(1, 100), st.integers(1, 80))
@QUICK
def test_free_area_is_per_foot_times_feet(gap: Length, share: int, feet: int) -> None:
    length = Length(Fraction(feet), "ft")
    per_foot = answer("vent opening", gap=gap, share=percent(share))
    assert answer("vent opening", gap=gap, share=percent(share), length=length) == pytest.approx(per_foot * feet)
    assert per_foot <= answer("vent opening", gap=gap, screen=Screen.NONE)


def test_the_smaller_opening_limits() -> None:
    both = words("vent opening", gap="3/4 in", share=percent(60), top_gap="3/8 in")
    assert both["what limits"] == "the top"
    worked = work("vent opening", gap="3/4 in", share=percent(60), top_gap="3/8 in")
    assert also(worked, "working free area, per foot") == pytest.approx(0.375 * 12 * 0.6)
    assert words("vent opening", gap="3/8 in", share=percent(60), top_share=percent(80))["what limits"] == "the bottom"


def test_vent_area_of_two_sides_is_that_of_their_area() -> None:
    ratio = Ratio(Fraction(1, 150), "ratio")
    assert answer("vent area", ratio=ratio, length="24 ft", width="36 ft") == answer(
        "vent area", ratio=ratio, area="864 ft2"
    )


# ── falls and channels ──


@given(SIXTEENTHS, st.integers(1, 40))
@QUICK
def test_a_fall_is_the_same_by_percent_and_by_pitch(width: Length, hundredths: int) -> None:
    by_percent = answer("fall", width=width, slope=percent(hundredths))
    by_pitch = answer("fall", width=width, pitch=f"{Fraction(12 * hundredths, 100)} in12")
    assert by_percent == pytest.approx(by_pitch) == pytest.approx(float(width.value) * hundredths / 100)


@given(SIXTEENTHS, SIXTEENTHS, st.integers(1, 40))
@QUICK
def test_a_channel_holds_the_same_whichever_way_it_is_turned(width: Length, depth: Length, feet: int) -> None:
    length = Length(Fraction(feet), "ft")
    inches = answer("water in a channel", width=width, depth=depth, length=length)
    assert inches == pytest.approx(answer("water in a channel", width=depth, depth=width, length=length))
    gallons = answer("water in a channel", width=width, depth=depth, length=length, held_in=HeldIn.GALLONS)
    assert gallons * 231 == pytest.approx(inches)


# ── dew and frost ──


@given(st.integers(-40, 45), st.integers(1, 100))
@QUICK
def test_the_dew_point_never_passes_the_air(temperature: int, humidity: int) -> None:
    point = answer("dew point", temperature=celsius(temperature), humidity=percent(humidity))
    assert point <= temperature + 1e-6
    drier = answer("dew point", temperature=celsius(temperature), humidity=percent(Fraction(humidity, 2)))
    assert drier < point


@given(st.integers(-30, 40), st.integers(5, 100))
@QUICK
def test_both_scales_give_one_dew_point(temperature: int, humidity: int) -> None:
    in_celsius = answer("dew point", temperature=celsius(temperature), humidity=percent(humidity))
    in_fahrenheit = answer("dew point", temperature=celsius(temperature).to("degF"), humidity=percent(humidity))
    assert in_fahrenheit == pytest.approx(in_celsius * 1.8 + 32, abs=1e-9)


@pytest.mark.parametrize(
    ("surface", "air", "humidity", "expected"),
    [(5, 20, 50, "gets wet"), (15, 20, 50, "stays dry"), (-6, 2, 70, "frosts"), (0, 2, 60, "stays dry")],
)
def test_a_surface_under_the_dew_point_gets_wet(surface: int, air: int, humidity: int, expected: str) -> None:
    found = words("dew point", temperature=celsius(air), humidity=percent(humidity), surface=celsius(surface))
    assert found["the surface"] == expected


@pytest.mark.parametrize(
    ("low", "dew", "expected"),
    [(28, 30, "yes"), (25, 10, "no"), (50, 30, "no"), (32, 32, "yes"), (33, 40, "no"), (20, 22, "yes"), (58, 55, "no")],
)
def test_frost_needs_freezing_and_the_frost_point(low: int, dew: int, expected: str) -> None:
    assert word("frost tonight", low=fahrenheit(low), dew=fahrenheit(dew)) == expected


def test_a_clear_sky_is_named_where_the_air_alone_gives_no_frost() -> None:
    worked = work("frost tonight", low=fahrenheit(36), dew=fahrenheit(30))
    assert worked.working is not None and "clear still sky" in worked.working.said


@given(st.integers(-25, 20), st.integers(-25, 20))
@QUICK
def test_no_frost_check_ever_fails(low: int, dew: int) -> None:
    worked = work("frost tonight", low=celsius(low), dew=celsius(dew))
    assert worked.working is not None, worked.refused


# ── refusals ──


@pytest.mark.parametrize(
    ("topic", "givens", "says"),
    [
        ("air gap", {"depth": Length(Fraction(-1, 4), "in", "minus 1/4 inch")}, "minus 1/4 inch"),
        (
            "dew point",
            {"temperature": fahrenheit(70), "humidity": Percent(Fraction(140), "percent", "140 percent")},
            "140",
        ),
        ("dew point", {"temperature": celsius(-300), "humidity": percent(50)}, "absolute zero"),
        ("dew point", {"temperature": celsius(300), "humidity": percent(50)}, "outside"),
        ("frost tonight", {"low": fahrenheit(-500), "dew": fahrenheit(20)}, "absolute zero"),
        ("vent opening", {"gap": "3/4 in", "share": Percent(Fraction(140), "percent", "140 percent")}, "140"),
        ("fall", {"width": "4 in", "slope": percent(-2)}, "sheds no water"),
        ("fall", {"width": "4 in", "slope": percent(0)}, "sheds no water"),
        ("build-out", {"layers": (Layer(Length(Fraction(-3, 4), "in", "minus 3/4"), "strapping"),)}, "minus 3/4"),
        ("water in a channel", {"width": "1 in", "depth": "0 in", "length": "1 ft"}, "depth"),
        ("vent area", {"ratio": Ratio(Fraction(1, 300), "ratio"), "area": "0 ft2"}, "area"),
    ],
)
def test_what_can_not_be_right_is_refused(topic: str, givens: dict[str, Quantity], says: str) -> None:
    worked = work(topic, **givens)
    assert worked.working is None and says in worked.refused


@pytest.mark.parametrize(
    ("topic", "givens", "asks"),
    [
        ("air gap", {}, "depth"),
        ("vent opening", {"gap": "3/4 in"}, "percent"),
        ("vent area", {"area": "1500 ft2"}, "1/300"),
        ("vent area", {"ratio": Ratio(Fraction(1, 300), "ratio")}, "area"),
        ("fall", {"width": "4 in"}, "slope"),
        ("dew point", {"temperature": fahrenheit(70)}, "humidity"),
        ("build-out", {}, "layers"),
    ],
)
def test_what_is_missing_is_asked_for(topic: str, givens: dict[str, Quantity], asks: str) -> None:
    assert asks in work(topic, **givens).asks
