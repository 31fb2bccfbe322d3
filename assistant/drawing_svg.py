"""Draws a figure as one standalone SVG picture: readable on white paper, themed by CSS classes, every word escaped."""

from __future__ import annotations

from typing import Any
from xml.sax.saxutils import escape, quoteattr

from assistant.drawing import Fill, Paper, Pen, Point, Stroke, View, bounds, lay_out, views_of
from assistant.drawing_words import Word

WIDTH = 640  # pixels
PEN = Pen(cell=(8, 3), rows=6, gap=26, tick=7, least_arc=26, strip=28, blur=3)
LEAST_HEIGHT, GREATEST_HEIGHT = 150, 460
LINE = PEN.rows * PEN.cell[1]
MARGIN = 12

# A page of the notebook may set these classes again; a picture on its own carries them.
STYLE = """
.lathmark-figure { background: #fff; color: #111; font: 14px sans-serif; }
.lathmark-figure path { fill: none; stroke: currentColor; stroke-width: 1.5; stroke-linejoin: round; }
.lathmark-figure .cut { stroke-width: 3.5; }
.lathmark-figure .level { stroke-width: 1; stroke-dasharray: 12 4; }
.lathmark-figure .hidden { stroke-width: 1; stroke-dasharray: 5 4; }
.lathmark-figure .dimension, .lathmark-figure .angle, .lathmark-figure .reach { stroke-width: 0.8; }
.lathmark-figure .reach { stroke-dasharray: 2 2; }
.lathmark-figure .fill-piece { fill: #efe2c8; stroke: none; }
.lathmark-figure .fill-wall { fill: #eef0f2; stroke: none; }
.lathmark-figure .fill-opening { fill: #fff; stroke: none; }
.lathmark-figure .fill-ground { fill: #d6d2ca; stroke: none; }
.lathmark-figure text { fill: currentColor; text-anchor: middle; dominant-baseline: central; }
.lathmark-figure .starts { text-anchor: start; }
.lathmark-figure .ends { text-anchor: end; }
.lathmark-figure .title { font-weight: bold; }
.lathmark-figure .note { text-anchor: start; font-size: 12px; }
""".strip()


def svg(figure: dict[str, Any], name: str = "drawing") -> str:
    """The figure as SVG text, its views one under the other; `name` is read out by a screen reader.

    An empty string when there is nothing to draw; FigureError when the data can't be drawn.
    """
    parts, top = [], float(MARGIN)
    for view in views_of(figure):
        block, high = drawn_view(view, top)
        parts.append(block)
        top += high + MARGIN
    if not parts:
        return ""
    size = f'width="{WIDTH}" height="{top:.0f}" viewBox="0 0 {WIDTH} {top:.0f}"'
    head = f'<svg xmlns="http://www.w3.org/2000/svg" class="lathmark-figure" role="img" {size}'
    head = f"{head} aria-label={quoteattr(clean(name))}>"
    return "\n".join([head, f"<style>\n{STYLE}\n</style>", *parts, "</svg>\n"])


def drawn_view(view: View, top: float) -> tuple[str, float]:
    """One view as a group moved down by `top` pixels, and the height it takes."""
    width, high = WIDTH - 2 * MARGIN, height_of(view)
    paper = lay_out(view, width, high, PEN)
    rows = []
    down = 0.0
    if view.get("title"):
        rows.append(f'<text class="title" x="{width / 2:.0f}" y="{LINE / 2:.0f}">{words(str(view["title"]))}</text>')
        down = LINE + 6
    rows.append(f'<g transform="translate(0 {down:.0f})">')
    rows += drawn_paper(paper)
    rows.append("</g>")
    down += high
    for note in paper.notes:
        down += LINE
        rows.append(f'<text class="note" x="0" y="{down - LINE / 2:.0f}">{words(note)}</text>')
    return f'<g class="view" transform="translate({MARGIN} {top:.0f})">\n' + "\n".join(rows) + "\n</g>", down


def height_of(view: View) -> float:
    """Pixels high enough for the view's own proportions at the width of the page, within reason."""
    x0, y0, x1, y1 = bounds(view)
    ticks = sum(shape["kind"] == "tick" for shape in view["shapes"])
    if view.get("stretch"):
        tall = y1 - y0 >= x1 - x0
        return min(GREATEST_HEIGHT, max(LEAST_HEIGHT, ticks * LINE * 1.2)) if tall else LEAST_HEIGHT
    wanted = (y1 - y0) / (x1 - x0) * WIDTH if x1 > x0 else GREATEST_HEIGHT
    return min(GREATEST_HEIGHT, max(LEAST_HEIGHT, wanted))


def drawn_paper(paper: Paper) -> list[str]:
    """Fills, then strokes, then words, so that words lie on top."""
    return [
        *(fill_path(fill) for fill in paper.fills),
        *(stroke_path(stroke) for stroke in paper.strokes),
        *(placed(word) for word in paper.words),
    ]


def path_data(points: list[Point]) -> str:
    """Points as SVG path data, to a tenth of a pixel."""
    return "M" + " L".join(f"{x:.1f} {y:.1f}" for x, y in points)


def fill_path(fill: Fill) -> str:
    """A filled region without its outline."""
    return f'<path class={quoteattr("fill-" + clean(fill.fill))} d="{path_data(fill.points)} Z"/>'


def stroke_path(stroke: Stroke) -> str:
    """A run of straight pieces."""
    return f'<path class={quoteattr(clean(stroke.style))} d="{path_data(stroke.points)}"/>'


def placed(word: Word) -> str:
    """Words in the cells kept for them, close to the side they lean from, since letters are narrower than cells."""
    x = (word.column + len(word.text) * (1 - word.lean) / 2) * PEN.cell[0]
    y = (word.row + PEN.rows / 2) * PEN.cell[1]
    side = {1: ' class="starts"', -1: ' class="ends"'}.get(word.lean, "")
    return f'<text{side} x="{x:.1f}" y="{y:.1f}">{words(word.text)}</text>'


def words(text: str) -> str:
    """Text for between tags."""
    return escape(clean(text))


def clean(text: str) -> str:
    """The text without the control characters that XML 1.0 does not allow."""
    return "".join(c if c.isprintable() else " " for c in text)
