"""Areas, counts, sealant, membrane and cut lists against values from outside; each names where it comes from."""

from __future__ import annotations

from fractions import Fraction
from math import hypot

import pint
import pytest
import shapely

from solvers.cutting import Cutting, best_plan
from solvers.quantities import Length, Money, Percent, Volume, Weight
from solvers.slots import Opening, Piece, Stock
from solvers.topics.loads import Per
from tests.working import also, answer, work

UNITS = pint.UnitRegistry()


def inches(value: object, unit: str = "in") -> Length:
    return Length(Fraction(str(value)), unit)


def opening(count: int, width: object, height: object, what: str = "window") -> Opening:
    return Opening(count, inches(width, "ft"), inches(height, "ft"), what)


# ── areas: shapely and closed form ──

WALLS = [
    # length, height, openings (count, width, height in ft), net ft²
    (32, 9, [(2, 3, 4)], 264),
    (40, 9, [(1, 3, 4), (1, 3, Fraction(20, 3))], 328),  # worked with shapely: 3.28 squares
    (24, 10, [(1, 6, 4)], 216),
    (50, 12, [(4, 3, 5), (1, 3, 7)], 519),
]


@pytest.mark.parametrize(("length", "height", "holes", "net"), WALLS)
def test_wall_area_is_the_polygon_with_its_holes_cut_out(
    length: int, height: int, holes: list[tuple[int, int, Fraction]], net: int
) -> None:
    """LIB shapely: the wall as a polygon, every opening a hole in it."""
    found = answer(
        "wall area", length=f"{length} ft", height=f"{height} ft", openings=tuple(opening(*hole) for hole in holes)
    )
    wall = shapely.box(0, 0, length, height)
    at = 0.1
    for count, wide, high in holes:
        for _ in range(count):
            wall = wall.difference(shapely.box(at, 0.5, at + wide, 0.5 + float(high)))
            at += wide + 0.1
    assert found == pytest.approx(net, rel=1e-12) == pytest.approx(wall.area, rel=1e-12)


GABLES = [
    (24, 6, 72.0),
    (28, 8, 130.6666666667),
    (26, 5, 70.4166666667),
    (36, 9, 243.0),
    (40, 3, 100.0),
    (20, 12, 100.0),
]


@pytest.mark.parametrize(("width", "rise", "area"), GABLES)
def test_gable_area(width: int, rise: int, area: float) -> None:
    """LIB shapely + geometry: the triangle of the gable."""
    triangle = shapely.Polygon([(0, 0), (width, 0), (width / 2, width / 2 * rise / 12)])
    found = work("gable area", width=f"{width} ft", pitch=f"{rise} in12")
    assert answer("gable area", width=f"{width} ft", pitch=f"{rise} in12") == pytest.approx(area, rel=1e-9)
    assert triangle.area == pytest.approx(area, rel=1e-9)
    assert also(found, "each rake, no overhang") == pytest.approx(hypot(width / 2, width / 2 * rise / 12), rel=1e-12)


def test_a_gable_over_a_wall() -> None:
    """LIB shapely: a 24 ft gable of 6 in 12 over a 9 ft wall is 288 ft²."""
    house = shapely.Polygon([(0, 0), (24, 0), (24, 9), (12, 15), (0, 9)])
    assert answer("wall area", length="24 ft", height="9 ft", pitch="6 in12") == house.area == 288.0


def test_squares_of_that_wall() -> None:
    """LIB shapely: 328 ft² is 3.28 squares of 100 ft² (a square of roofing or siding: common trade definition)."""
    assert answer("squares", area="328 ft2", waste="0 percent") == pytest.approx(3.28)


# ── sealant: volume, with the fluid ounce of NIST Handbook 44 and LIB pint ──

FEET_PER_TUBE = [
    # joint width and depth in, feet per 10.1 US fl oz, feet per US gallon (geometry: 231 / (w d 12))
    ("1/4", "1/4", 24.30, 308.0), ("3/8", "1/4", 16.20, 205.3), ("3/8", "3/8", 10.80, 136.9),
    ("1/2", "1/4", 12.15, 154.0),
    ("1/2", "1/2", 6.08, 77.0), ("3/4", "3/8", 5.40, 68.4), ("1/8", "1/8", 97.21, 1232.0),
]  # fmt: skip


@pytest.mark.parametrize(("width", "depth", "tube", "gallon"), FEET_PER_TUBE)
def test_length_of_joint_a_tube_fills(width: str, depth: str, tube: float, gallon: float) -> None:
    """Geometry; 308 ft a gallon and 24 ft a cartridge of a 1/4 in joint are also printed (from memory)."""
    given = {"width": f"{width} in", "depth": f"{depth} in", "length": "100 ft"}
    assert also(work("sealant", **given), "length per tube") == pytest.approx(tube, abs=0.006)
    by_gallon = work("sealant", **given, tube=Volume(Fraction(1), "gal"))
    assert also(by_gallon, "length per tube") == pytest.approx(gallon, abs=0.06)


def test_a_tube_in_cubic_inches_and_millilitres() -> None:
    """LIB pint: 10.1 US fl oz is 18.2273 in³ and 298.69 mL; a 300 mL cartridge is 18.307 in³."""
    ounces = (10.1 * UNITS.US_fluid_ounce).to("inch**3").magnitude
    assert (
        float(Volume(Fraction(101, 10), "floz").to("in3").value)
        == pytest.approx(ounces, rel=1e-9)
        == pytest.approx(18.2273, abs=1e-4)
    )
    assert float(Volume(Fraction(101, 10), "floz").to("L").value) * 1000 == pytest.approx(298.69, abs=0.01)
    millilitres = (300 * UNITS.milliliter).to("inch**3").magnitude
    assert float(Volume(Fraction(3, 10), "L").to("in3").value) == pytest.approx(millilitres, rel=1e-9)


# ── membrane ──


@pytest.mark.parametrize(
    ("area", "width", "length", "lap", "rolls"),
    [(1800, "9 ft", "100 ft", "6 in", 3), (700, "36 in", "75 ft", "4 in", 4), (520, "36 in", "65 ft", "7/2 in", 3)],
)
def test_membrane_rolls(area: int, width: str, length: str, lap: str, rolls: int) -> None:
    """Geometry: each run covers its width less the lap (6 in end and 2 in upper laps: published, IRC R703.2)."""
    assert answer("membrane rolls", area=f"{area} ft2", roll_width=width, roll_length=length, lap=lap) == rolls


def test_membrane_laps_of_the_code() -> None:
    """Published: upper over lower at least 2 in, IRC R703.2. A 3 by 144 ft roll so lapped covers 408 ft²: geometry."""
    worked = work("membrane rolls", area="1000 ft2", roll_width="3 ft", roll_length="144 ft", lap="2 in")
    assert also(worked, "area each roll covers") == pytest.approx(408)
    assert "published: laps of 2 in and 6 in, IRC R703.2" in worked.working.sources  # type: ignore[union-attr]


# ── fasteners, flashing, load ──


def test_fasteners_at_sixteen_inches() -> None:
    """Published: horizontal vinyl siding at most 16 in on centre, IRC 2018 R703.11.1; 25 in a course of 32 ft."""
    worked = work("fasteners", rows="16 count", length="32 ft", spacing="16 in")
    assert also(worked, "fasteners in each") == 25
    assert answer("fasteners", rows="16 count", length="32 ft", spacing="16 in") == 400


def test_step_flashing_one_to_a_course() -> None:
    """Geometry: 18 ft of rake at 7 in is 30.86 courses; the size named is published, IRC R905.2.8.3."""
    worked = work("step flashing", length="18 ft", exposure="7 in")
    assert answer("step flashing", length="18 ft", exposure="7 in") == 31
    assert any("IRC R905.2.8.3" in source for source in worked.working.sources)  # type: ignore[union-attr]


def test_weight_by_area_against_pint() -> None:
    """LIB pint: 18.5 m² at 12 kg/m², and the same in pounds a square foot."""
    kilos = answer("weight", weight=Weight(Fraction(12), "kg"), area="37/2 m2", per=Per.M2)
    assert kilos == pytest.approx((18.5 * UNITS.meter**2 * 12 * UNITS.kilogram / UNITS.meter**2).magnitude)
    each = (12 * UNITS.kilogram / UNITS.meter**2).to("pound / foot**2").magnitude
    pounds = answer("weight", weight=Weight(Fraction(str(each)), "lb"), area="200 ft2", per=Per.FT2)
    assert pounds == pytest.approx(
        (200 * UNITS.foot**2 * 12 * UNITS.kilogram / UNITS.meter**2).to("pound").magnitude, rel=1e-9
    )


def test_cost_by_the_square_and_the_foot() -> None:
    """Arithmetic: 3.5 squares at 385 is 1347.50; 160 ft at 2.25 is 360."""
    assert answer("cost", price="385 money", area="7/2 square", per=Per.SQUARE) == 1347.5
    assert answer("cost", price="9/4 money", length="160 ft", per=Per.FT) == 360


# ── cut lists: known optima ──

OPTIMA = [
    # sizes and how many, stock, kerf, fewest, source
    ({45: 97, 36: 610, 31: 395, 14: 211}, 100, 0, 453),  # GAMS Model Library CUTSTOCK, from Gilmore and Gomory 1961
    ({3: 25, 5: 20, 9: 15}, 17, 0, 19),  # the lumber example of Winston, Operations Research (from memory)
    ({48: 1, 30: 2, 19: 1, 36: 3, 27: 1, 42: 2, 24: 1}, 100, 0, 4),  # OR-Tools bin-packing example (from memory)
    ({48 * 8: 4}, 192 * 8, 1, 2),  # geometry: four of 48 in from 192 in, 1/8 in kerf
    ({48: 4}, 192, 0, 1),  # the same with no kerf
    ({72 * 8: 4, 36 * 8: 4}, 144 * 8, 1, 4),  # geometry, LIB HiGHS: four of 72 and four of 36 from 144, 1/8 in kerf
    ({72: 4, 36: 4}, 144, 0, 3),  # the same with no kerf
]


@pytest.mark.parametrize(("pieces", "stock", "kerf", "fewest"), OPTIMA)
def test_known_fewest_sticks(pieces: dict[int, int], stock: int, kerf: int, fewest: int) -> None:
    sizes = sorted(pieces, reverse=True)
    cutting = Cutting(tuple(s + kerf for s in sizes), tuple(pieces[s] for s in sizes), (stock + kerf,), (1,))
    plan = best_plan(cutting, 20)
    assert plan.proven
    assert plan.count == plan.least == fewest


@pytest.mark.parametrize(
    ("pieces", "stock", "kerf", "fewest"),
    [
        ([(4, "48 in")], "192 in", "1/8 in", 2),  # geometry: (192 + 1/8) / (48 + 1/8) is 3.99
        ([(4, "48 in")], "192 in", "0 in", 1),
        ([(4, "72 in"), (4, "36 in")], "144 in", "0 in", 3),  # LIB HiGHS
        ([(4, "72 in"), (4, "36 in")], "144 in", "1/8 in", 4),
        ([(25, "3 ft"), (20, "5 ft"), (15, "9 ft")], "17 ft", "0 in", 19),  # Winston (from memory)
    ],
)
def test_cut_list_topic_on_known_optima(pieces: list[tuple[int, str]], stock: str, kerf: str, fewest: int) -> None:
    given = tuple(Piece(count, inches(*size.split())) for count, size in pieces)
    worked = work("cut list", pieces=given, stock_length=stock, kerf=kerf)
    assert answer("cut list", pieces=given, stock_length=stock, kerf=kerf) == fewest
    assert any(line.text == "proven the fewest" for line in worked.working.also_lines)  # type: ignore[union-attr]


def test_stock_of_two_prices_is_bought_for_the_least_money() -> None:
    """By hand: two of 7 ft and one of 8 ft. From 8s at 9 and 16s at 20: three 8s cost 27, one 16 and one 8 cost 29."""
    stocks = (
        Stock(inches(8, "ft"), Money(Fraction(9), "money")),
        Stock(inches(16, "ft"), Money(Fraction(20), "money")),
    )
    worked = work("cut list", pieces=(Piece(2, inches(7, "ft")), Piece(1, inches(8, "ft"))), stocks=stocks)
    assert also(worked, "cost") == 27
    assert also(worked, "sticks of 8 ft") == 3


# ── cladding ──


@pytest.mark.parametrize(
    ("area", "exposure", "board", "waste", "boards"),
    [
        ("264 ft2", "6 in", "12 ft", "10 percent", 49),
        ("1500 ft2", "7 in", "16 ft", "10 percent", 177),
        ("612 ft2", "29/4 in", "12 ft", "0 percent", 85),
    ],
)  # fmt: skip
def test_boards_for_an_area(area: str, exposure: str, board: str, waste: str, boards: int) -> None:
    """Geometry: area over exposure, waste (common practice), over the board's length."""
    assert answer("cladding boards", area=area, exposure=exposure, board_length=board, waste=waste) == boards


def test_girth_of_a_bent_flashing() -> None:
    """Arithmetic: 1 + 3 1/2 + 1 1/2 is 6, four out of 24; bend lines at 1 and 4 1/2."""
    legs = (inches(1), inches(Fraction(7, 2)), inches(Fraction(3, 2)))
    worked = work("bent flashing", lengths=legs, coil="24 in")
    assert answer("bent flashing", lengths=legs, coil="24 in") == 6
    assert also(worked, "pieces per coil width") == 4
    assert [float(mark.value) for mark in worked.working.marks] == [1.0, 4.5]  # type: ignore[union-attr,arg-type]


# ── trim round openings ──


@pytest.mark.parametrize(
    ("kind", "count", "width", "height", "length"),
    [("window", 4, 36, 60, 4 * 192), ("door", 2, 36, 80, 2 * 196), ("garage door", 1, 192, 84, 360), ("opening", 1, 30, 50, 160)],
)
def test_trim_round_openings(kind: str, count: int, width: int, height: int, length: int) -> None:
    """Geometry: all four sides; of a door two legs and a head, no piece at the floor (common practice)."""
    trimmed = (Opening(count, Length(Fraction(width), "in"), Length(Fraction(height), "in"), kind),)
    assert answer("trim round openings", openings=trimmed) == length


def test_trim_round_openings_in_sticks() -> None:
    """Arithmetic: six windows 3 by 5 ft are 96 ft round, six sticks of 16 ft end to end, in which no cut is left: seven.

    105.6 ft with a tenth for waste are seven too. A garage door's 16 ft head is joined from 12 ft: 30 ft is three.
    """
    windows = (Opening(6, Length(Fraction(3), "ft"), Length(Fraction(5), "ft"), "window"),)
    assert answer("trim round openings", openings=windows, stock="16 ft") == 7
    assert answer("trim round openings", openings=windows, stock="16 ft", waste=Percent(Fraction(10), "percent")) == 7
    door = (Opening(1, Length(Fraction(16), "ft"), Length(Fraction(7), "ft"), "garage door"),)
    assert answer("trim round openings", openings=door, stock="12 ft") == 3


def test_trim_in_sticks_is_never_less_than_the_pieces_can_be_cut_from() -> None:
    """Counted by hand: two 60s, or three 36s, from a 12 ft stick: three and two are five, though 48 ft are four sticks."""
    windows = (Opening(3, Length(Fraction(3), "ft"), Length(Fraction(5), "ft"), "window"),)
    assert answer("trim round openings", openings=windows, stock="12 ft") == 5
