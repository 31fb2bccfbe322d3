"""Quantities: what must hold whatever the sizes are, and what is refused and how."""

from __future__ import annotations

from fractions import Fraction
from math import ceil

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from solvers.quantities import Length, Money, Volume, Weight
from solvers.registry import Worked
from solvers.slots import Opening, Piece, Stock
from solvers.topics.loads import Per
from tests.working import also, answer, work

feet = st.integers(2, 80).map(lambda n: Fraction(n, 2))
inches = st.integers(8, 192).map(lambda n: Fraction(n, 8))


def length(value: object, unit: str = "in") -> Length:
    return Length(Fraction(str(value)), unit)


def window(count: int, width: object, height: object) -> Opening:
    return Opening(count, length(width, "ft"), length(height, "ft"), "window")


def refused(topic: str, *words: str, **givens: object) -> None:
    """Declined, with these words in the sentence and no answer."""
    worked = work(topic, **givens)
    assert worked.working is None
    assert all(word in worked.refused for word in words), worked.refused


def word(worked: Worked, name: str) -> str:
    assert worked.working is not None, worked.refused or worked.asks
    return next(line.text for line in worked.working.also_lines if line.name == name)


@settings(max_examples=60, deadline=None)
@given(feet, feet, st.integers(1, 3), st.integers(1, 8), st.integers(1, 8))
def test_net_and_openings_are_the_wall(long: Fraction, high: Fraction, count: int, wide: int, tall: int) -> None:
    worked = work("wall area", length=f"{long} ft", height=f"{high} ft", openings=(window(count, wide, tall),))
    turned = tall > high and wide <= high and tall <= long  # taken the other way round, and said so
    if count * wide * tall >= long * high or not (turned or (wide <= long and tall <= high)):
        assert "opening" in worked.refused
    else:
        net = answer("wall area", length=f"{long} ft", height=f"{high} ft", openings=(window(count, wide, tall),))
        assert net == pytest.approx(float(long * high - count * wide * tall))
        assert net + also(worked, "openings") == pytest.approx(also(worked, "gross area"))


def test_a_door_that_fits_only_the_other_way_is_turned_and_said_so() -> None:
    worked = work("wall area", length="18 ft", height="8 ft", openings=(window(1, 7, 9),))
    assert worked.working is not None and any("9 ft wide and 7 ft high" in each for each in worked.working.cautions)
    assert answer("wall area", length="18 ft", height="8 ft", openings=(window(1, 7, 9),)) == 81


@settings(max_examples=40, deadline=None)
@given(st.integers(10, 3000), inches, st.integers(4, 20), st.integers(0, 30))
def test_boards_reach_and_one_fewer_does_not(area: int, exposure: Fraction, board: int, waste: int) -> None:
    boards = answer(
        "cladding boards",
        area=f"{area} ft2",
        exposure=f"{exposure} in",
        board_length=f"{board} ft",
        waste=f"{waste} percent",
    )
    need = Fraction(area) * 12 / exposure * (1 + Fraction(waste, 100))
    assert boards * board >= need > (boards - 1) * board


@settings(max_examples=40, deadline=None)
@given(st.integers(1, 40), feet, inches)
def test_fasteners_are_never_further_apart_than_said(rows: int, long: Fraction, spacing: Fraction) -> None:
    worked = work("fasteners", rows=f"{rows} count", length=f"{long} ft", spacing=f"{spacing} in")
    each = also(worked, "fasteners in each")
    assert also(worked, "even spacing") <= float(spacing) + 1e-9
    assert each == ceil(long * 12 / spacing) + 1
    assert answer("fasteners", rows=f"{rows} count", length=f"{long} ft", spacing=f"{spacing} in") == rows * each


@settings(max_examples=40, deadline=None)
@given(inches, inches, st.integers(1, 300))
def test_tubes_hold_the_joint(width: Fraction, depth: Fraction, long: int) -> None:
    if width > 2 or depth > 2:
        return
    tubes = answer("sealant", width=f"{width} in", depth=f"{depth} in", length=f"{long} ft")
    volume, tube = width * depth * 12 * long, Fraction(101, 10) * Fraction(231, 128)
    assert tubes * tube >= volume > (tubes - 1) * tube


def test_waste_is_assumed_for_cladding_and_for_nothing_else() -> None:
    boards = work("cladding boards", area="100 ft2", exposure="6 in", board_length="10 ft")
    assert [given.value.value for given in boards.givens if given.source == "assumed"] == [10]
    sticks = work("trim sticks", total="64 ft", stock="8 ft")
    assert [given.value.value for given in sticks.givens if given.source == "assumed"] == [0]
    assert answer("trim sticks", total="64 ft", stock="8 ft") == 8


def test_take_off_is_one_list_and_agrees_with_the_topics_it_is_made_of() -> None:
    given = {
        "length": "32 ft",
        "height": "9 ft",
        "openings": (window(2, 3, 4),),
        "exposure": "6 in",
        "board_length": "12 ft",
    }
    worked = work("take-off", **given)
    assert answer("take-off", **given) == answer(
        "cladding boards", area="264 ft2", exposure="6 in", board_length="12 ft"
    )
    assert also(worked, "squares") == pytest.approx(answer("squares", area="264 ft2"))
    assert also(worked, "net wall area") == 264
    assert also(worked, "channel") == 2 * 2 * (3 + 4)
    assert also(worked, "starter") == 32
    assert also(worked, "corner trim") == 18
    assert also(worked, "membrane rolls") == answer(
        "membrane rolls", area="288 ft2", roll_width="9 ft", roll_length="100 ft", lap="6 in"
    )
    assert also(worked, "strapping") == 25 * 9
    assert also(worked, "cladding fasteners") == 25 * 18
    assert also(worked, "bug screen") == 64


def test_metric_in_gives_metric_out() -> None:
    worked = work("wall area", length="32/5 m", height="27/10 m")
    result = worked.working.result  # type: ignore[union-attr]
    assert result is not None
    assert result.unit == "m2"
    assert float(result.value) == pytest.approx(17.28)  # type: ignore[arg-type]


def test_a_door_of_unsaid_width_is_named_as_assumed() -> None:
    door = Opening(1, length(3, "ft"), length(80), "door", "the width of the door was not said, so 3 ft is taken")
    worked = work("wall area", length="32 ft", height="9 ft", openings=(door,))
    assert "width of the door was not said" in worked.working.cautions[0]  # type: ignore[union-attr]


def test_cut_list_says_what_to_cut_and_what_to_keep() -> None:
    pieces = (Piece(4, length(40)), Piece(3, length(32)))
    worked = work("cut list", pieces=pieces, stock_length="12 ft")
    assert word(worked, "stick 1, 12 ft") == "40 in, 40 in, 40 in; 23 5/8 in left, keep it"
    assert word(worked, "stick 2, 12 ft") == "40 in, 32 in, 32 in, 32 in; 7 1/2 in left, scrap"
    assert word(worked, "proof") == "proven the fewest"
    assert also(worked, "offcuts kept as stock") == 1
    marks = {mark.name: float(mark.value) for mark in worked.working.marks}  # type: ignore[union-attr,arg-type]
    assert marks["stick 1 cut 2"] == 40 + 0.125 + 40
    assert [view.title for view in worked.working.views] == ["cut from the left, in this order"]  # type: ignore[union-attr]


def test_what_can_not_be_is_refused_by_name() -> None:
    refused("wall area", "openings", length="10 ft", height="8 ft", openings=(window(3, 6, 5),))
    refused("wall area", "opening", "12", length="10 ft", height="8 ft", openings=(window(1, 12, 5),))
    refused("wall area", "length", length="-12 ft", height="9 ft")
    refused("wall area", "-2 openings", length="30 ft", height="9 ft", openings=(window(-2, 3, 4),))
    refused("gable area", "gable", width="24 ft", pitch="0 in12")
    refused("cladding boards", "exposure", area="300 ft2", exposure="0 in", board_length="12 ft")
    refused("squares", "waste", area="900 ft2", waste="-10 percent")
    refused("soffit panels", "cover", run="40 ft", depth="16 in", cover="0 in")
    refused("soffit panels", "depth", run="40 ft", depth="30 in", cover="12 in", panel_length="2 ft")
    refused("trim sticks", "stock", total="100 ft", stock="0 ft")
    refused("membrane rolls", "lap", area="500 ft2", roll_width="36 in", roll_length="75 ft", lap="40 in")
    refused("fasteners", "spacing", rows="10 count", length="8 ft", spacing="0 in")
    refused("sealant", "joint width", width="0 in", depth="1/4 in", length="100 ft")
    refused("weight", "weight", weight=Weight(Fraction(-5), "lb"), count="12 count")
    refused("cost", "price", price=Money(Fraction(-8), "money"), count="20 count")
    refused("step flashing", "exposure", length="12 ft", exposure="0 in")
    refused("bent flashing", "leg", lengths=(length(-2), length(3)), coil="24 in")
    refused("bent flashing", "coil", lengths=(length(20), length(9)), coil="24 in")


def test_cut_list_refusals() -> None:
    long = Length(Fraction(13), "ft", "13 feet")
    refused("cut list", "13 feet", "longer", pieces=(Piece(2, long),), stock_length="12 ft")
    refused("cut list", "−30 in", pieces=(Piece(2, length(-30)),), stock_length="12 ft")
    refused("cut list", "0 pieces", pieces=(Piece(0, length(30)),), stock_length="12 ft")
    some_priced = (Stock(length(8, "ft"), Money(Fraction(9), "money")), Stock(length(12, "ft")))
    refused("cut list", "price", pieces=(Piece(2, length(30)),), stocks=some_priced)


@pytest.mark.parametrize(
    ("topic", "givens", "asked"),
    [
        ("wall area", {"length": "32 ft"}, "height"),
        ("gable area", {"width": "24 ft"}, "pitch"),
        ("cladding boards", {"area": "300 ft2", "board_length": "12 ft"}, "exposure"),
        ("cladding boards", {"area": "300 ft2", "exposure": "6 in"}, "boards"),
        ("cladding boards", {}, "area"),
        ("cut list", {"pieces": (Piece(4, length(40)),)}, "stock"),
        ("cut list", {"stock_length": "12 ft"}, "pieces"),
        ("fasteners", {"length": "9 ft", "spacing": "12 in"}, "straps"),
        ("sealant", {"length": "100 ft"}, "width"),
        ("weight", {"count": "24 count"}, "each"),
        ("weight", {"weight": Weight(Fraction(2), "lb"), "per": Per.FT2}, "area"),
        ("cost", {"price": "10 money"}, "many"),
        ("take-off", {"length": "32 ft", "height": "9 ft", "board_length": "12 ft"}, "exposure"),
    ],
)
def test_what_is_missing_is_asked_for_in_one_short_question(topic: str, givens: dict[str, object], asked: str) -> None:
    worked = work(topic, **givens)
    assert worked.working is None
    assert asked in worked.asks
    assert len(worked.asks) < 90


def test_a_tube_of_another_size_is_used() -> None:
    given = {"width": "1/2 in", "depth": "1/2 in", "length": "200 ft"}
    assert answer("sealant", **given, tube=Volume(Fraction(29), "floz")) == 12
    assert answer("sealant", **given) == 33
