"""Draws a figure as lines of text, in braille dots (2 × 4 to a character) or in plain ASCII."""

from __future__ import annotations

import math
import textwrap
import unicodedata
from collections.abc import Callable
from functools import cache
from typing import Any

from assistant.drawing import Fill, Paper, Pen, Stroke, View, bounds, lay_out, views_of

PEN = Pen(cell=(2, 4), rows=1, gap=8, tick=3, least_arc=7, strip=10, blur=2)
LEAST_COLUMNS, LEAST_ROWS = 16, 4  # a view smaller than this says nothing
BRAILLE = 0x2800
BITS = ((0x01, 0x02, 0x04, 0x40), (0x08, 0x10, 0x20, 0x80))  # by column, then row, in the order Unicode gives the dots

# Dots drawn, then dots left out.
DASHES = {"hidden": (3, 3), "level": (6, 2), "dimension": (1, 1), "reach": (1, 2), "angle": (1, 1)}

# Where a fill puts its dots: sparse, so that words and lines stay easy to read.
SPECKS: dict[str, Callable[[int, int], bool]] = {
    "ground": lambda x, y: (x + 2 * y) % 6 == 0,
    "wall": lambda x, y: x % 4 == 0 and y % 4 == 0,
}
ASCII_WORDS = str.maketrans(
    {
        "°": " deg",
        "′": "'",
        "″": '"',
        "×": "x",
        "−": "-",
        "–": "-",
        "—": "-",
        "·": "*",
        "“": '"',
        "”": '"',
        "‘": "'",
        "’": "'",
    }
    | {"α": "alpha", "β": "beta", "γ": "gamma", "δ": "delta", "θ": "theta", "κ": "kappa", "λ": "lambda", "μ": "mu"}
    | {"π": "pi", "ρ": "rho", "σ": "sigma", "τ": "tau", "φ": "phi", "ω": "omega", "Δ": "Delta", "√": "sqrt", "÷": "/"}
    | {"≤": "<=", "≥": ">=", "≈": "~", "≠": "!=", "∆": "Delta", "⌈": "roundup(", "⌉": ")", "⌊": "rounddown(", "⌋": ")"}
)


def draw(figure: dict[str, Any], width: int, height: int, ascii_only: bool = False) -> list[str]:
    """The figure in at most `height` lines of at most `width` characters; [] when there is no room to draw in.

    FigureError when the data can't be drawn.
    """
    views = views_of(figure)
    if not views or width < LEAST_COLUMNS or height < LEAST_ROWS:
        return []
    across = max(range(1, len(views) + 1), key=lambda columns: share(views, columns, width, height))
    down = math.ceil(len(views) / across)
    wide, high = (width - 2 * (across - 1)) // across, height // down
    if wide < LEAST_COLUMNS or high < LEAST_ROWS:
        return draw({"views": views[:-1]}, width, height, ascii_only)
    lines: list[str] = []
    for start in range(0, len(views), across):
        lines += side_by_side([draw_view(view, wide, high, ascii_only) for view in views[start : start + across]], wide)
    return lines


def share(views: list[View], across: int, width: int, height: int) -> float:
    """How large the least of the views comes out with so many side by side, against having the paper to itself."""
    wide, high = (width - 2 * (across - 1)) // across, height // math.ceil(len(views) / across)
    return min(scale(view, wide, high) / scale(view, width, height) for view in views)


def scale(view: View, width: int, height: int) -> float:
    """Roughly the scale of a view in so many columns and lines; a stretched one follows the paper."""
    x0, y0, x1, y1 = bounds(view)
    if view.get("stretch"):
        x0, y0, x1, y1 = 0.0, 0.0, 1.0, 1.0
    return max(0.01, min((width - 10) * 2 / ((x1 - x0) or 1.0), (height - 2) * 4 / ((y1 - y0) or 1.0)))


def side_by_side(blocks: list[list[str]], wide: int) -> list[str]:
    """Views of one height as one block of lines, less the lines that all leave blank under the title or at the foot."""
    rows = list(zip(*blocks, strict=True))
    while rows and not any(rows[-1]):
        rows.pop()
    while len(rows) > 1 and not any(rows[1]):
        del rows[1]
    return ["  ".join(part.ljust(wide) for part in row).rstrip() for row in rows]


def draw_view(view: View, width: int, height: int, ascii_only: bool) -> list[str]:
    """One view in exactly `height` lines: its title, the drawing, then any notes."""
    title = plain(str(view.get("title", "")), ascii_only)
    head = [title[:width].center(width).rstrip()] if title else []
    rows = height - len(head)
    view = worded(view, ascii_only)
    paper = lay_out(view, width * 2, rows * 4, PEN)
    notes = wrapped(paper.notes, width, rows)
    if notes:
        rows -= len(notes)
        paper = lay_out(view, width * 2, rows * 4, PEN)
        notes = wrapped(paper.notes, width, rows)[: len(notes)]
    lines = [*head, *Canvas(width, rows).render(paper, ascii_only), *notes]
    return lines + [""] * (height - len(lines))


def wrapped(notes: list[str], width: int, rows: int) -> list[str]:
    """The notes in lines that fit, taking no more than a third of the height."""
    return [line for note in notes for line in textwrap.wrap(note, width)][: max(1, rows // 3)]


def worded(view: View, ascii_only: bool) -> View:
    """The view with words that the terminal can show."""
    shapes = [{**s, "text": plain(str(s["text"]), ascii_only)} if "text" in s else s for s in view["shapes"]]
    return {**view, "shapes": shapes}


def plain(text: str, ascii_only: bool) -> str:
    """The text on one line without control characters; in ASCII when asked for, a sign with no counterpart as ?."""
    text = "".join(c if c.isprintable() else " " for c in text)
    if not ascii_only or text.isascii():
        return text
    text = unicodedata.normalize("NFKD", text.translate(ASCII_WORDS)).replace("⁄", "/")
    return "".join(c for c in text if not unicodedata.combining(c)).encode("ascii", "replace").decode()


class Canvas:
    """A grid of characters, each eight dots; lines win over specks, words win over both."""

    def __init__(self, columns: int, rows: int) -> None:
        self.columns, self.rows = columns, rows
        self.lines = bytearray(columns * rows)
        self.specks = bytearray(columns * rows)

    def render(self, paper: Paper, ascii_only: bool) -> list[str]:
        """The paper as lines of text."""
        for fill in paper.fills:
            self.fill(fill)
        for stroke in paper.strokes:
            self.stroke(stroke)
        mark = ascii_mark if ascii_only else braille_mark
        cells = [mark(line or speck) for line, speck in zip(self.lines, self.specks, strict=True)]
        for word in paper.words:
            start = word.row * self.columns + word.column
            cells[start : start + len(word.text)] = word.text
        return ["".join(cells[r * self.columns : (r + 1) * self.columns]).rstrip() for r in range(self.rows)]

    def dot(self, grid: bytearray, x: int, y: int, on: bool = True) -> None:
        """Sets or clears one dot; one off the canvas is left out."""
        if 0 <= x < self.columns * 2 and 0 <= y < self.rows * 4:
            bit = BITS[x % 2][y % 4]
            cell = y // 4 * self.columns + x // 2
            grid[cell] = grid[cell] | bit if on else grid[cell] & ~bit

    def stroke(self, stroke: Stroke) -> None:
        """A run of straight pieces, dashed by its style; a cut is drawn two dots thick."""
        on, off = DASHES.get(stroke.style, (1, 0))
        step = 0
        for (ax, ay), (bx, by) in zip(stroke.points, stroke.points[1:], strict=False):
            count = max(1, math.ceil(max(abs(bx - ax), abs(by - ay))))
            steep = abs(by - ay) > abs(bx - ax)
            for i in range(count + 1):
                x, y = int(ax + (bx - ax) * i / count), int(ay + (by - ay) * i / count)
                if step % (on + off) < on:
                    self.dot(self.lines, x, y)
                    if stroke.style == "cut":
                        self.dot(self.lines, x + steep, y + (not steep))
                step += i < count

    def fill(self, fill: Fill) -> None:
        """Specks inside a closed outline, row by row between its crossings; what was there before is cleared."""
        speck = SPECKS.get(fill.fill)
        edges = list(zip(fill.points, [*fill.points[1:], fill.points[0]], strict=True))
        low, high = min(y for _, y in fill.points), max(y for _, y in fill.points)
        for y in range(max(0, math.ceil(low)), min(self.rows * 4 - 1, math.floor(high)) + 1):
            level = y + 0.5
            cuts = sorted(
                ax + (level - ay) * (bx - ax) / (by - ay)
                for (ax, ay), (bx, by) in edges
                if (ay > level) != (by > level)
            )
            for left, right in zip(cuts[::2], cuts[1::2], strict=False):
                for x in range(max(0, math.ceil(left)), min(self.columns * 2 - 1, math.floor(right)) + 1):
                    self.dot(self.specks, x, y, speck is not None and speck(x, y))


def braille_mark(bits: int) -> str:
    """The character with those dots; a blank one is a plain space, so that trailing blanks can go."""
    return chr(BRAILLE + bits) if bits else " "


@cache
def ascii_mark(bits: int) -> str:
    """The ASCII character that looks most like those dots."""
    if not bits:
        return " "
    left = [y for y in range(4) if bits & BITS[0][y]]
    right = [y for y in range(4) if bits & BITS[1][y]]
    if not left or not right:
        return ("'" if (left or right)[0] < 2 else ".") if len(left or right) == 1 else "|"
    slope = sum(right) / len(right) - sum(left) / len(left)
    if len(left) + len(right) > 5:
        return "+"
    if abs(slope) >= 1 and len(left) + len(right) > 2:
        return "\\" if slope > 0 else "/"
    if len(left) + len(right) > 3:
        return "="
    return "_" if min(left + right) >= 3 else "-"
