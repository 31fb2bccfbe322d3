"""Ears: recorded or live speech in, words with their confidence out. Start with `hear_file`."""

from __future__ import annotations

from functools import cache
from pathlib import Path
from typing import TYPE_CHECKING

from assistant.ears.words import Ear, EarError, Heard, HeardWord

if TYPE_CHECKING:
    from assistant.ears.sphinx import SphinxEar

__all__ = ["Ear", "EarError", "Heard", "HeardWord", "ear", "hear_file"]


@cache
def ear() -> SphinxEar:
    """The ear in use, made once. Imported late: it takes a moment, and a typed question does not need it."""
    from assistant.ears.sphinx import SphinxEar

    return SphinxEar()


def hear_file(path: str | Path) -> Heard:
    """What was said in a WAV file. Raises EarError with one sentence when the file can't be used."""
    from assistant.ears.wav import read_wav

    return ear().hear(read_wav(path))
