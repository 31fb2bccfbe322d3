"""Drawings of a length as a strip: what is added at its end, and stacks of layers in section."""

from __future__ import annotations

from collections.abc import Sequence

from solvers.exact import Term
from solvers.working import Working

DEEP = 1.0  # a strip's height, where its length is 10


def growth_view(work: Working, length: Term, moved: Term) -> None:
    """The piece before and after; the change is drawn many times its size, with its true reading."""
    view = work.view("before and after (change not to scale)")
    shift = 1.5 if moved.value > 0 else -1.5 if moved.value < 0 else 0.0
    view.polygon([(0, 2), (10, 2), (10, 2 + DEEP), (0, 2 + DEEP)])
    view.polygon([(0, 0), (10 + shift, 0), (10 + shift, DEEP), (0, DEEP)])
    view.line((10, -0.5), (10, 3.5), "hidden")
    view.dimension((0, 2 + DEEP), (10, 2 + DEEP), work.text(length), side=1)
    view.dimension((min(10, 10 + shift), 0), (max(10, 10 + shift), 0), work.text(moved), side=-1)


def gap_view(work: Working, length: Term, gap: Term, shrink: Term) -> None:
    """The end of the piece in its channel, today, with the gap to leave."""
    view = work.view("the end today (gap not to scale)")
    view.polygon([(0, 0), (7, 0), (7, DEEP), (0, DEEP)])
    view.polygon([(8.5, -0.5), (9, -0.5), (9, DEEP + 0.5), (8.5, DEEP + 0.5)], fill="wall")
    view.dimension((7, DEEP), (8.5, DEEP), f"leave {work.text(gap)}", side=1)
    view.dimension((0, 0), (7, 0), work.text(length), side=-1)
    view.label((7, -1.6), f"opens {work.text(shrink)} more at the coldest")


def stack_view(work: Working, title: str, layers: Sequence[tuple[str, Term]], total: Term, start: str = "stud") -> None:
    """Layers from the stud out, left to right, to scale, with the whole depth."""
    view = work.view(title)
    sizes = [float(work.value(term)) for _, term in layers]
    deep = sum(sizes)
    tall = max(deep, 1e-9)
    view.polygon([(-deep * 0.6, 0), (0, 0), (0, tall), (-deep * 0.6, tall)], fill="wall")
    view.label((-deep * 0.3, tall * 0.5), start)
    at = 0.0
    for step, ((name, term), size) in enumerate(zip(layers, sizes, strict=True)):
        view.polygon([(at, 0), (at + size, 0), (at + size, tall), (at, tall)])
        view.label((at + size / 2, tall * (0.8 - 0.2 * (step % 3))), f"{name} {work.text(term)}")
        at += size
    view.dimension((0, 0), (deep, 0), work.text(total), side=-1)
