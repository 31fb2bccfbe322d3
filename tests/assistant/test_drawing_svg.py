"""Figures as SVG: well formed, escaped, and every word in it once."""

from __future__ import annotations

import itertools
import xml.etree.ElementTree as ET

import pytest
from screen_samples import CORNER, SAW, WALL, pole

from assistant.drawing import FigureError
from assistant.drawing_svg import PEN, svg

NS = "{http://www.w3.org/2000/svg}"


def words_of(picture: str) -> list[str]:
    """The words of a picture."""
    return [element.text or "" for element in ET.fromstring(picture).iter(f"{NS}text")]


def test_every_word_is_there() -> None:
    found = words_of(svg({"views": [CORNER, SAW, WALL]}))
    for view in (CORNER, SAW, WALL):
        assert view["title"] in found
        assert {shape["text"] for shape in view["shapes"] if "text" in shape} <= set(found)


def test_words_of_a_view_do_not_overlap() -> None:
    boxes = []
    for element in ET.fromstring(svg({"views": [pole(16)]})).iter(f"{NS}text"):
        if element.get("class") == "starts":
            boxes.append((float(element.get("x", 0)), float(element.get("y", 0))))
    assert len(boxes) == 16
    assert all(abs(a[1] - b[1]) >= PEN.rows * PEN.cell[1] for a, b in itertools.combinations(boxes, 2))


def test_markup_in_words_stays_words() -> None:
    nasty = "</text><script>&\"'\x00\x1b"
    view = {"title": nasty, "shapes": [{"kind": "label", "at": [0, 0], "text": nasty}, *SAW["shapes"]]}
    picture = svg({"views": [view]}, name=nasty)
    root = ET.fromstring(picture)
    assert not list(root.iter(f"{NS}script"))
    assert any("</text><script>&\"'" in word for word in words_of(picture))


def test_a_fill_or_style_cannot_break_out_of_its_attribute() -> None:
    shape = {"kind": "polygon", "points": [[0, 0], [1, 0], [1, 1]], "fill": '"><b>', "style": '"><b>'}
    ET.fromstring(svg({"views": [{"shapes": [shape]}]}))


def test_paths_stay_on_the_page() -> None:
    root = ET.fromstring(svg({"views": [CORNER, SAW, WALL, pole(200)]}))
    width = float(root.get("width", 0))
    for path in root.iter(f"{NS}path"):
        numbers = [float(n) for n in path.get("d", "").replace("M", "").replace("L", "").replace("Z", "").split()]
        assert all(-1 <= x <= width for x in numbers[::2])


def test_nothing_to_draw_is_nothing() -> None:
    assert svg({"views": []}) == ""


def test_a_broken_figure_is_told_in_a_sentence() -> None:
    with pytest.raises(FigureError):
        svg({"views": [{"shapes": [{"kind": "line"}]}]})
