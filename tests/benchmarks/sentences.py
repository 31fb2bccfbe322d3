"""The sentences the benchmarks run on: the question sets, and others that match nothing."""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager
from statistics import median

from assistant import garbage
from assistant.desk import Desk
from tests.understanding import QUESTIONS, lines, load

NO_MATCH = (
    "why is the sky blue", "what time is it", "the quick brown fox jumps over the lazy dog", "is the kettle on",
    "seventeen purple elephants at forty two", "x" * 300, "12 12 12 12 12 12 12 12 12", "call my brother about lunch",
    "how do i size a beam over a ten foot span", "where did i leave the blue ladder yesterday afternoon",
)  # fmt: skip


WARM = (
    "miter for a 5-in-12 rake return",
    "cut 4 at 50 in and 4 at 45 in from 12 foot stock",
    "what do the two of them come out at where they go in under there",  # which the words alone tell nothing of
)  # loads what is loaded late


def loaded() -> None:
    """From here on garbage is looked for as the command looks for it in a conversation: between lines alone."""
    gc.collect()
    garbage.loaded()
    garbage.only_between_lines()


@contextmanager
def warmed() -> Iterator[Desk]:
    """A desk at which a line or two was asked, and where garbage is looked for between lines alone."""
    with Desk(keep=False) as desk:
        for count, line in enumerate(WARM, 1):
            desk.answer(line)
            garbage.between_lines(count)
        loaded()
        yield desk


def questions() -> list[str]:
    """Every line of the question sets, those kept aside included."""
    sets = [*load().values(), *load(QUESTIONS / "aside").values()]
    return [line for cases in sets for case in cases for line in lines(case)]


def share(times: list[float], part: float) -> float:
    """The time that `part` of the runs stay under."""
    return sorted(times)[min(len(times) - 1, int(part * len(times)))]


def figures(times: list[float]) -> str:
    """Median, 99th percentile and longest, in milliseconds."""
    return f"median {1000 * median(times):.2f}, p99 {1000 * share(times, 0.99):.2f}, longest {1000 * max(times):.2f} ms"
