"""Sums on the tape and conversions: properties that can fail, orders, remainders and refusals."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.quantities import Area, Length, Number, Quantity, Temperature
from solvers.sums import Measure, Part, Sum
from solvers.topics.conversion import Unit
from solvers.topics.tape_arithmetic import BareUnit
from tests.working import also, answer, work

QUICK = settings(max_examples=60, deadline=None)
LENGTHS = st.tuples(st.integers(1, 3000), st.sampled_from([1, 2, 4, 8, 16])).map(lambda p: Length(Fraction(*p), "in"))
WHOLE = st.integers(1, 20).map(lambda n: Number(Fraction(n), "none"))


def inches(value: str) -> Length:
    return Length(sum((Fraction(part) for part in value.split()), Fraction(0)), "in")


def number(value: int) -> Number:
    return Number(Fraction(value), "none")


def words(topic: str, **givens: Any) -> dict[str, str]:
    worked = work(topic, **givens)
    assert worked.working is not None, worked.refused or worked.asks
    return {line.name: line.text for line in worked.working.also_lines}


@given(st.recursive(LENGTHS, lambda inner: st.builds(Sum, st.sampled_from("+−"), inner, inner), max_leaves=8))
@QUICK
def test_a_sum_is_what_fractions_say(part: Part) -> None:
    def exact(piece: Part) -> Fraction:
        if isinstance(piece, Length):
            return piece.value
        assert isinstance(piece, Sum) and piece.left is not None and piece.right is not None
        sign = 1 if piece.operation == "+" else -1
        return exact(piece.left) + sign * exact(piece.right)

    said = part if isinstance(part, Sum) else Sum("+", part, inches("0"))
    assert answer("tape arithmetic", sum=said) == pytest.approx(float(exact(part)))


@given(LENGTHS, WHOLE)
@QUICK
def test_dividing_leaves_less_than_a_mark_for_each(length: Length, parts: Number) -> None:
    worked = work("tape arithmetic", sum=Sum("÷", length, parts))
    each, rest = also(worked, "each, down to the tape mark"), also(worked, "left over at that mark")
    assert each * float(parts.value) + rest == pytest.approx(float(length.value))
    assert 0 <= rest < float(parts.value) / 16 + 1e-9
    assert each * 16 == pytest.approx(round(each * 16))


@given(LENGTHS, LENGTHS)
@QUICK
def test_a_length_in_a_length_goes_whole_times_and_a_rest(length: Length, piece: Length) -> None:
    worked = work("tape arithmetic", sum=Sum("÷", length, piece))
    times, rest = also(worked, "whole times"), also(worked, "left over")
    assert times == int(length.value // piece.value)
    assert rest == pytest.approx(float(length.value % piece.value))


def test_a_running_total_takes_the_part_that_was_not_said() -> None:
    more = Sum("+", None, Number(Fraction(35, 8), "none"))
    assert "what" in work("tape arithmetic", sum=more).asks.lower()
    assert answer("tape arithmetic", sum=more, other="150 in") == pytest.approx(154.375)


def test_metric_in_gives_metric_out_and_a_mix_gives_inches() -> None:
    metric = Sum("+", Length(Fraction("1.2"), "m"), Length(Fraction(35), "cm"))
    assert answer("tape arithmetic", sum=metric) == pytest.approx(1550)
    mixed = Sum("+", Length(Fraction(254), "mm"), inches("5"))
    assert answer("tape arithmetic", sum=mixed) == pytest.approx(15)


def test_the_order_taken_is_named_with_what_the_other_gives() -> None:
    spoken = Sum(
        "÷",
        Sum("−", inches("144"), inches("6")),
        number(2),
        "",
        "as spoken, left to right",
        Sum("−", inches("144"), Sum("÷", inches("6"), number(2))),
    )
    found = work("tape arithmetic", sum=spoken)
    assert answer("tape arithmetic", sum=spoken) == pytest.approx(69)
    assert also(found, "in the other order") == pytest.approx(141)
    assert found.working is not None and "left to right" in found.working.said


def test_a_bare_number_beside_feet_is_asked_about() -> None:
    said = Sum("+", Length(Fraction(12), "ft"), number(7))
    assert "feet or inches" in work("tape arithmetic", sum=said).asks
    assert answer("tape arithmetic", sum=said, bare=BareUnit.INCHES) == pytest.approx(151)
    assert answer("tape arithmetic", sum=said, bare=BareUnit.FEET) == pytest.approx(228)


def test_readings_never_show_twelve_inches_beside_feet() -> None:
    assert words("tape arithmetic", sum=Sum("+", inches("23 63/64"), inches("1/64")))["in feet and inches"] == "2 ft"
    assert words("tape arithmetic", sum=Sum("+", inches("47"), inches("31/32")))["in feet and inches"] == "4 ft"


@pytest.mark.parametrize(
    ("said", "says"),
    [
        (Sum("÷", inches("148"), number(0)), "zero"),
        (Sum("×", inches("12"), inches("12")), "area"),
        (Sum("÷", number(12), inches("3")), "divided by a length"),
    ],
)
def test_what_has_no_meaning_on_a_tape_is_refused(said: Sum, says: str) -> None:
    worked = work("tape arithmetic", sum=said)
    assert worked.working is None and says in worked.refused


@given(LENGTHS, st.sampled_from([Unit.MILLIMETRES, Unit.METRES, Unit.FEET, Unit.CENTIMETRES]))
@QUICK
def test_there_and_back_is_where_it_was(length: Length, unit: Unit) -> None:
    there = answer("conversion", value=Measure(length), to=unit)
    back = {Unit.MILLIMETRES: 25.4, Unit.METRES: 0.0254, Unit.FEET: 1 / 12, Unit.CENTIMETRES: 2.54}[unit]
    assert there / back == pytest.approx(float(length.value))


def test_the_error_at_the_tape_mark() -> None:
    worked = work("conversion", value=Measure(Length(Fraction(10), "mm")), to=Unit.INCHES)
    assert also(worked, "error at that mark, in mm") == pytest.approx(0.475)
    assert words("conversion", value=Measure(Length(Fraction(10), "mm")), to=Unit.INCHES)["on the tape"] == "3/8 in"


@pytest.mark.parametrize(
    ("given_value", "to", "says"),
    [
        (Length(Fraction(5), "ft"), Unit.KILOGRAMS, "length"),
        (Area(Fraction(5), "ft2"), Unit.METRES, "area"),
        (Temperature(Fraction(-300), "degC"), Unit.FAHRENHEIT, "absolute zero"),
    ],
)
def test_units_of_another_kind_are_refused(given_value: Quantity, to: Unit, says: str) -> None:
    worked = work("conversion", value=Measure(given_value), to=to)
    assert worked.working is None and says in worked.refused
