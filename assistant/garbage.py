"""What is done while nobody waits: Python looks for garbage not while loading and not while somebody waits for an answer, and
what no line has needed so far is made ready between lines.

Loading makes half a million objects and drops none; looking through them, at the start and again at the end, takes a quarter
of the time of a short command. Later a search through what is old takes 60 ms, so it waits until a line is answered.
"""

from __future__ import annotations

import gc
from collections.abc import Iterator
from contextlib import contextmanager

from intents.expressions import make_ready

AT_ONCE = 200  # expressions made ready between two lines, in some 30 ms
OFTEN = 200  # lines between two searches
NEVER = 10**9
FEW = 200_000  # objects more than before at which the young are searched: a long line makes twenty thousand, none of them waste
USUAL = gc.get_threshold()


@contextmanager
def put_off() -> Iterator[None]:
    """No search until `loaded`, nor through what is left at the end."""
    gc.disable()
    try:
        yield
    finally:
        gc.freeze()
        gc.set_threshold(*USUAL)
        gc.enable()


def loaded() -> None:
    """Everything is there that stays: it is never searched again."""
    gc.freeze()
    gc.enable()


def only_between_lines() -> None:
    """What is old is searched by `between_lines` alone."""
    gc.set_threshold(FEW, USUAL[1], NEVER)


def between_lines(count: int) -> None:
    """The line after `count` others is not asked yet: time to search, now and then."""
    make_ready(AT_ONCE)
    if count % OFTEN == 0:
        gc.collect()
