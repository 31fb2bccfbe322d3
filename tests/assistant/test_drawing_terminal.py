"""Figures drawn in the terminal: every label whole, no label on a line, within the size given, whatever the figure."""

from __future__ import annotations

import copy
import math
import re
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from screen_samples import CORNER, SAW, WALL, pole

from assistant.drawing import FigureError, bounds, lay_out
from assistant.drawing_terminal import PEN, draw

FIGURES = {"corner": [CORNER], "saw": [SAW], "both": [CORNER, SAW], "wall": [WALL], "pole": [pole(16)]}
SIZES = [(76, 20), (46, 18), (80, 12), (120, 30)]


def texts(view: dict[str, Any]) -> list[str]:
    """The words a view wants shown."""
    return [shape["text"] for shape in view["shapes"] if "text" in shape]


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("name", FIGURES)
def test_fits_the_size_given(name: str, size: tuple[int, int]) -> None:
    lines = draw({"views": FIGURES[name]}, *size)
    assert 4 <= len(lines) <= size[1]
    assert max(map(len, lines)) <= size[0]


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("name", ["corner", "saw", "wall"])
def test_every_label_is_readable(name: str, size: tuple[int, int]) -> None:
    page = "\n".join(draw({"views": FIGURES[name]}, *size))
    for text in texts(FIGURES[name][0]):
        assert text in page


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("view", [CORNER, SAW, WALL, pole(16), pole(200)])
def test_no_label_lies_on_a_line_or_another_label(view: dict[str, Any], size: tuple[int, int]) -> None:
    paper = lay_out(view, size[0] * 2, size[1] * 4, PEN)
    cells = [(word.row, word.column + i) for word in paper.words for i in range(len(word.text))]
    assert len(cells) == len(set(cells))
    for stroke in paper.strokes:
        for (ax, ay), (bx, by) in zip(stroke.points, stroke.points[1:], strict=False):
            for i in range(201):
                x, y = ax + (bx - ax) * i / 200, ay + (by - ay) * i / 200
                assert (math.floor(y / 4), math.floor(x / 2)) not in cells


def test_proportions_are_kept() -> None:
    square = {"shapes": [{"kind": "polygon", "points": [[0, 0], [5, 0], [5, 5], [0, 5]]}]}
    paper = lay_out(square, 160, 60, PEN)
    (x0, y0), (x1, y1) = paper.strokes[0].points[0], paper.strokes[0].points[2]
    assert x1 - x0 == pytest.approx(y0 - y1)
    assert y0 > y1, "up in the figure is up on the paper"


def test_an_angle_is_drawn_at_its_true_size() -> None:
    paper = lay_out(SAW, 150, 60, PEN)
    cut = next(stroke for stroke in paper.strokes if stroke.style == "cut")
    (ax, ay), (bx, by) = cut.points
    assert math.degrees(math.atan2(ay - by, bx - ax)) == pytest.approx(math.degrees(math.atan2(3, 2)))


def test_the_side_of_a_dimension() -> None:
    for side, expected in ((1, "above"), (-1, "below")):
        shape = {"kind": "dimension", "from": [0, 0], "to": [10, 0], "text": "10 in", "side": side}
        paper = lay_out({"shapes": [shape]}, 100, 60, PEN)
        reach = next(stroke for stroke in paper.strokes if stroke.style == "reach")
        rises = reach.points[1][1] < reach.points[0][1]
        assert rises == (expected == "above")


def test_sixteen_marks_are_all_named_in_order_up_the_pole() -> None:
    lines = draw({"views": [pole(16)]}, 40, 20)
    read = [float(found[1]) for line in lines if (found := re.search(r"([\d.]+) in", line))]
    assert read == [n * 6.75 for n in range(16, 0, -1)]


def test_two_hundred_marks_are_thinned_and_it_says_so() -> None:
    lines = draw({"views": [pole(200)]}, 40, 20)
    note = re.search(r"Every (\d+)th mark", " ".join(lines))
    assert note
    stride = int(note[1])
    read = [float(found[1]) for line in lines if (found := re.search(r"([\d.]+) in$", line))]
    assert read == [n * 6.75 for n in range(1, 201, stride)][::-1]


def test_a_level_strip_is_read_left_to_right() -> None:
    strip = pole(6)
    for shape in strip["shapes"]:
        for key in ("at",):
            if key in shape:
                shape[key] = shape[key][::-1]
        if "points" in shape:
            shape["points"] = [point[::-1] for point in shape["points"]]
    page = "\n".join(draw({"views": [strip]}, 76, 8))
    places = [page.index(f"{n * 6.75:g} in") for n in range(1, 7)]
    assert places == sorted(places)


def test_ascii_is_ascii_and_still_names_everything() -> None:
    lines = draw({"views": [CORNER]}, 76, 16, ascii_only=True)
    page = "\n".join(lines)
    assert page.isascii()
    for text in ("67.4 deg", "22.6 deg", "5 1/2 in", "rake trim", "the corner, from the side"):
        assert text in page


def test_a_label_without_room_is_keyed_or_spelled_out() -> None:
    crowd = [{"kind": "line", "from": [0, y / 4], "to": [30, y / 4]} for y in range(41)]
    label = {"kind": "label", "at": [15, 5], "text": "drip edge"}
    page = "\n".join(draw({"views": [{"shapes": [*crowd, label]}]}, 40, 12))
    assert "drip edge" in page


def test_no_room_no_drawing() -> None:
    assert draw({"views": [CORNER]}, 10, 3) == []
    assert draw({"views": []}, 80, 24) == []


def test_unknown_shapes_are_left_out() -> None:
    assert draw({"views": [{"shapes": [*SAW["shapes"], {"kind": "swirl"}]}]}, 60, 12) == draw(
        {"views": [{"shapes": SAW["shapes"]}]}, 60, 12
    )


@pytest.mark.parametrize(
    "figure",
    [
        {},
        {"views": None},
        {"views": [{"shapes": [{"kind": "line"}]}]},
        {"views": [{"shapes": [{"kind": "line", "from": [0, 0]}]}]},
        {"views": [{"shapes": [{"kind": "line", "from": [0, "x"], "to": [1, 1]}]}]},
        {"views": [{"shapes": [{"kind": "line", "from": [0, math.nan], "to": [1, 1]}]}]},
        {"views": [{"shapes": [{"from": [0, 0]}]}]},
        {"views": [{"shapes": [{"kind": "label", "at": [0, 0]}]}]},
        {"views": [{"shapes": ["line"]}]},
        {"views": [{"shapes": [{"kind": "polygon", "points": [1, 2]}]}]},
    ],
)
def test_a_broken_figure_is_told_in_a_sentence(figure: dict[str, Any]) -> None:
    with pytest.raises(FigureError, match=r"^The drawing .*\.$"):
        draw(figure, 60, 20)


points = st.lists(st.floats(-1e6, 1e6), min_size=2, max_size=2)


@settings(max_examples=60, deadline=None)
@given(
    st.lists(points, min_size=2, max_size=8),
    st.text(max_size=30),
    st.booleans(),
    st.integers(1, 150),
    st.integers(1, 50),
    st.booleans(),
)
def test_any_figure_is_drawn_within_the_size(
    corners: list[list[float]], text: str, stretch: bool, width: int, height: int, ascii_only: bool
) -> None:
    shapes: list[dict[str, Any]] = [
        {"kind": "polygon", "points": corners, "fill": "wall"},
        {"kind": "dimension", "from": corners[0], "to": corners[1], "text": text},
        {"kind": "label", "at": corners[-1], "text": text},
        *({"kind": "tick", "at": corner, "text": text} for corner in corners),
    ]
    lines = draw({"views": [{"title": text, "shapes": shapes, "stretch": stretch}]}, width, height, ascii_only)
    assert len(lines) <= height
    assert all(len(line) <= width and line.isprintable() for line in lines)
    assert not ascii_only or all(line.isascii() for line in lines)


def test_the_figure_is_not_changed() -> None:
    figure = {"views": [CORNER, WALL, pole(200)]}
    before = copy.deepcopy(figure)
    draw(figure, 80, 24, ascii_only=True)
    assert figure == before


def test_bounds_take_in_the_whole_of_an_arc() -> None:
    arc = {"shapes": [{"kind": "arc", "centre": [1, 2], "radius": 3, "start": 0, "end": 180}]}
    assert bounds(arc) == pytest.approx((-2, 2, 4, 5))
