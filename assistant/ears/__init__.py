"""Ears: recorded or live speech in, words with their confidence out. Start with `hear_file`."""

from __future__ import annotations

from functools import cache
from pathlib import Path

from assistant.ears.words import Ear, EarError, Heard, HeardWord

__all__ = ["Ear", "EarError", "Heard", "HeardWord", "ear", "hear_file"]


@cache
def ear() -> Ear:
    """The ear in use, made once: Vosk where a model is installed, else PocketSphinx.

    Both are imported late: each takes a moment, and a typed question needs neither.
    """
    from assistant.ears.installed import model_folder

    model = model_folder()
    if model is None:
        from assistant.ears.sphinx import SphinxEar

        return SphinxEar()
    from assistant.ears.model import phrases
    from assistant.ears.vosk_ear import VoskEar

    return VoskEar(model, phrases())


def hear_file(path: str | Path) -> Heard:
    """What was said in a WAV file. Raises EarError with one sentence when the file can't be used."""
    from assistant.ears.wav import read_wav

    return ear().hear(read_wav(path))
