"""What is put to what there was, what stands for a thing, and what is told of the question before and not of another."""

from __future__ import annotations

import pytest

from tests.talking import last

ROLLS = "housewrap for 3550 sq ft, 9 foot wide by 100 foot rolls, 6 inch laps"
BEND = "drip cap, 2 up, 1 3/8 out, 5/8 down, 1/2 hem, how wide do i rip the coil"
CROWN = "crown 38 spring, 90 corner, cut flat on the saw, miter"
GROWS = "6 m aluminium flashing from 5 to 60 celsius, growth"


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        ((ROLLS, "throw in another 900 square foot for the garage"), 6, "count"),
        (("squares for 1240 sq ft no waste", "chuck in another 300 for the shed"), 15.4, "square"),
        (("miter for a box with six sides", "and four more sides than that"), 18, "deg"),
        (("spacing for nine balusters 41 mm wide in 1850 mm, gaps at both ends", "one less baluster"), 169.1111, "mm"),
        (("wall 8.4 m by 2.7 m less a window 1200 x 1500 mm", "make it two of those windows"), 19.08, "m2"),
        ((BEND, "how many of those across a 24 inch roll"), 5, "count"),
        (("bent flashing legs 3/4, 3 3/4, 5 1/2 and 1/2", "make the 5 1/2 leg 6 1/2"), 11.5, "in"),
        (("ramp rises 450 mm, runs 5.4 m level, how long is the slope", "what angle is that", "and the angle if it's 6.3 metres"),
         4.0856, "deg"),
        ((CROWN, "corner is actually 92, so what's the miter now"), 30.7331, "deg"),
        (("arched head over a door, 900 wide, what radius", "it rises 150 in the middle"), 750, "mm"),
        (("dew point at 21 c and 50 percent", "humidity 40", "and with the heat turned up to twenty four"), 9.5626, "degC"),
        (("roof 14 m by 9 m at 25 degrees, area", "he wants that angle as a rise in 12"), 5.5957, "in12"),
        (("27 straps on a 10.2 m wall at 400, how many", "they're 2740 tall, what's the total length of strapping"), 73980, "mm"),
    ],
)  # fmt: skip
def test_the_line_is_of_the_question_before(lines: tuple[str, ...], value: float, unit: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(value, rel=2e-3), unit)


def test_one_of_another_material_is_no_metre_of_it() -> None:
    record = last(GROWS, "what about a vinyl one")
    assert next(given["value"] for given in record["givens"] if given["name"] == "length") == 6


def test_another_corner_is_a_question_of_its_own() -> None:
    assert last(CROWN, "miter for a 92 degree corner")["topic"] == "miter for a corner"


@pytest.mark.parametrize(
    "lines",
    [
        ("14 in round column, how far around", "plus an inch and a half"),
        ("trim all four sides of six windows three foot by four foot six", "add one slider door 6 foot by 6 8"),
    ],
)
def test_what_is_put_to_it_never_takes_its_place(lines: tuple[str, ...]) -> None:
    record = last(*lines)
    assert record["outcome"] == "asks", record["say"]
