"""Slopes against values from outside the project; each names where it comes from."""

from __future__ import annotations

import pytest

from tests.working import also, answer, work

# Rise in 12: angle, grade in percent, common rafter and hip in inches per foot of run.
# Geometry, as printed to two decimals on a framing square (from memory).
RAFTER_TABLE = [
    (3, 14.036, 25.00, 12.3693, 17.2337),
    (4, 18.435, 33.33, 12.6491, 17.4356),
    (6, 26.565, 50.00, 13.4164, 18.0000),
    (7, 30.256, 58.33, 13.8924, 18.3576),
    (8, 33.690, 66.67, 14.4222, 18.7617),
    (10, 39.806, 83.33, 15.6205, 19.6977),
    (12, 45.000, 100.00, 16.9706, 20.7846),
]


@pytest.mark.parametrize(("rise", "angle", "grade", "common", "hip"), RAFTER_TABLE)
def test_rafter_table(rise: int, angle: float, grade: float, common: float, hip: float) -> None:
    """geometry: hypot(12, rise), sqrt(288 + rise²); from memory of the framing-square table."""
    worked = work("roof angle", pitch=f"{rise} in12")
    assert answer("roof angle", pitch=f"{rise} in12") == pytest.approx(angle, abs=5e-4)
    assert also(worked, "percent grade") == pytest.approx(grade, abs=5e-3)
    assert answer("sloped length", pitch=f"{rise} in12", run="1 ft") == pytest.approx(common, abs=5e-5)
    per_foot = also(work("hip or valley length", pitch=f"{rise} in12", run="9 ft"), "per foot of run")
    assert per_foot == pytest.approx(hip, abs=5e-5)


@pytest.mark.parametrize(
    ("topic", "givens", "value", "digits"),
    [
        # published: US Navy Builder manual, NAVEDTRA 14044: unit rise 7, 13.89 in per foot of run
        ("sloped length", {"pitch": "7 in12", "run": "1 ft"}, 13.89, 2),
        # published: Griffith, Carpentry: the hip's run is 16.97 in for each foot of common run
        ("hip run", {"pitch": "4 in12", "run": "1 ft"}, 16.97, 2),
        # published: Radford's Cyclopedia of Construction, vol. 3: rise 6, hip 18 in per foot of run
        ("hip or valley length", {"pitch": "6 in12", "run": "1 ft"}, 18.0, 4),
        # published: Radford, vol. 3: jack's side cut at rise 10 on 12 and 15 7/12, the common rafter (to 1/24 in)
        ("sloped length", {"pitch": "10 in12", "run": "1 ft"}, 15 + 7 / 12, 1),
        # geometry: a slope of 2 in 12
        ("roof angle", {"pitch": "2 in12"}, 9.462, 3),
        # published: Ontario building code 9.27.3.8 asks 6 %, which is 0.72 in 12; its angle is geometry
        ("roof angle", {"pitch": "18/25 in12"}, 3.434, 3),
    ],
)
def test_value(topic: str, givens: dict[str, str], value: float, digits: int) -> None:
    hip = topic == "hip run"
    found = also(work("hip or valley length", **givens), "run of the hip") if hip else answer(topic, **givens)
    assert round(found, digits) == pytest.approx(round(value, digits))


@pytest.mark.parametrize(
    ("topic", "givens", "text"),
    [
        # published: NAVEDTRA 14044: 16 ft span at rise 7, 111.12 in, laid out as 9 ft 3 1/8 in
        ("sloped length", {"pitch": "7 in12", "run": "8 ft"}, "111 1/8 in (9 ft 3 1/8 in)"),
        # geometry: worked rafter and hip lengths
        ("sloped length", {"pitch": "8 in12", "run": "12 ft"}, "173 1/16 in (14 ft 5 1/16 in)"),
        ("hip or valley length", {"pitch": "8 in12", "run": "12 ft"}, "225 1/8 in (18 ft 9 1/8 in)"),
        ("sloped length", {"pitch": "4 in12", "run": "9 1/2 ft"}, "120 3/16 in (10 ft 3/16 in)"),
        ("hip or valley length", {"pitch": "4 in12", "run": "9 1/2 ft"}, "165 5/8 in (13 ft 9 5/8 in)"),
        ("sloped length", {"pitch": "12 in12", "run": "10 ft"}, "169 11/16 in (14 ft 1 11/16 in)"),
        ("hip or valley length", {"pitch": "12 in12", "run": "10 ft"}, "207 7/8 in (17 ft 3 7/8 in)"),
        # geometry: a table of two decimals times 12.5 ft gives 167 3/4, a sixteenth too long
        ("sloped length", {"pitch": "6 in12", "run": "12 1/2 ft"}, "167 11/16 in (13 ft 11 11/16 in)"),
        # geometry: gables of shapely's areas, 24 ft at 6 in 12 and 28 ft at 8 in 12
        ("gable height", {"pitch": "6 in12", "width": "24 ft"}, "72 in (6 ft)"),
        ("gable height", {"pitch": "8 in12", "width": "28 ft"}, "112 in (9 ft 4 in)"),
    ],
)
def test_laid_out(topic: str, givens: dict[str, str], text: str) -> None:
    """Lengths as they are laid out on the tape."""
    worked = work(topic, **givens)
    assert worked.working is not None and worked.working.result is not None
    assert worked.working.result.text == text


@pytest.mark.parametrize(
    ("rise", "backing", "dihedral"),
    [(4, 12.921, 154.158), (6, 18.435, 143.130), (8, 23.093, 133.813), (12, 30.000, 120.000)],
)
def test_hip_backing(rise: int, backing: float, dihedral: float) -> None:
    """published: rule "length of hip and rise on the square" (Radford, vol. 3); geometry: two plane normals."""
    worked = work("hip or valley length", pitch=f"{rise} in12", run="10 ft")
    assert also(worked, "backing") == pytest.approx(backing, abs=5e-4)
    assert also(worked, "angle between the roofs") == pytest.approx(dihedral, abs=5e-4)


@pytest.mark.parametrize(
    ("rise", "at_16", "at_24", "side"),
    [
        (3, 16.4924, 24.7386, 11.642),
        (4, 16.8655, 25.2982, 11.384),
        (6, 17.8885, 26.8328, 10.733),
        (7, 18.5233, 27.7849, 10.365),
        (8, 19.2296, 28.8444, 9.985),
        (10, 20.8273, 31.2410, 9.219),
        (12, 22.6274, 33.9411, 8.485),
    ],
)
def test_jack_rafter_table(rise: int, at_16: float, at_24: float, side: float) -> None:
    """geometry: common rafter × spacing / 12, side cut 12 × 12 / common; two decimals on a framing square (from memory)."""
    for spacing, expected in ((16, at_16), (24, at_24)):
        worked = work("jack rafters", pitch=f"{rise} in12", spacing=f"{spacing} in")
        assert answer("jack rafters", pitch=f"{rise} in12", spacing=f"{spacing} in") == pytest.approx(expected, abs=5e-5)
        assert also(worked, "side cut on the framing square, 12 and") == pytest.approx(side, abs=5e-4)


def test_side_cut_of_a_jack_at_eight_in_twelve() -> None:
    """published: US Navy Builder manual, NAVEDTRA 14044: unit rise 8, 12 on the tongue and 10 on the blade (to 1/16 in)."""
    worked = work("jack rafters", pitch="8 in12", spacing="16 in")
    assert also(worked, "side cut on the framing square, 12 and") == pytest.approx(10, abs=1 / 16)
