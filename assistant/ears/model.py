"""The language model of the ear: trained on sentences drawn from the grammars, kept in the cache folder.

The trainer comes in PocketSphinx's own wheel. Training takes a few seconds and happens when a grammar has changed.
"""

from __future__ import annotations

import hashlib
import os
import tempfile
from collections.abc import Callable
from contextlib import suppress
from pathlib import Path
from random import Random

from pocketsphinx.lm import ArpaBoLM

from assistant.ears.phrasing import Phrasings
from assistant.places import cache_dir
from intents.grammars import FOLDER

VERSION = "1"  # raise when sentences are drawn in another way, so that kept models are made anew
SENTENCES = 30_000  # about three seconds of training; half as many again heard no better
PHRASES = 6_000  # Vosk builds its graph from them in about a second
LEAST_EACH = 40  # sentences drawn from each phrasing, however many there are
SEED = 12  # fixed, so that the same grammars always make the same ear
HELD_BACK = 0.5  # probability kept for word orders that were not drawn: people say things in many ways


def language_model(sayable: Callable[[str], bool], folder: Path = FOLDER) -> Path:
    """The ARPA file for a folder of grammars, trained now unless it is kept already.

    Only words that are `sayable` are learned. Where the cache folder can't be written, a temporary folder serves.
    """
    name = f"ear-{_stamp(folder)}.lm"
    for place in (cache_dir(), Path(tempfile.gettempdir()) / f"lathmark-{os.getuid() if hasattr(os, 'getuid') else 0}"):
        if (place / name).is_file():
            return place / name
        try:
            place.mkdir(parents=True, exist_ok=True)
            return _train(place / name, sayable, folder)
        except OSError:
            continue
    raise OSError("there is no folder to keep the ear's language model in")


def _stamp(folder: Path) -> str:
    """What tells one set of grammars from another."""
    digest = hashlib.sha256(VERSION.encode())
    for path in sorted(folder.glob("*.jsgf")):
        digest.update(path.name.encode() + b"\0" + path.read_bytes())
    return digest.hexdigest()[:16]


def phrases(folder: Path = FOLDER) -> list[str]:
    """Sentences for an engine that takes its grammar as a list; it leaves out what its own model can't say."""
    return sentences(Phrasings(folder), lambda word: word.isalpha(), PHRASES)


def sentences(phrasings: Phrasings, sayable: Callable[[str], bool], count: int = SENTENCES) -> list[str]:
    """Sentences to learn from, the same each time, every word of them sayable."""
    random = Random(SEED)
    each = max(LEAST_EACH if count == SENTENCES else 1, count // max(1, len(phrasings.all)))
    drawn = (phrasings.sentence(phrasing, random) for phrasing in phrasings.all for _ in range(each))
    return [sentence for sentence in drawn if sentence and all(map(sayable, sentence.split()))]


def _train(path: Path, sayable: Callable[[str], bool], folder: Path) -> Path:
    """Write the model beside its place and move it there whole; models of older grammars go."""
    trainer = ArpaBoLM(
        text="\n".join(sentences(Phrasings(folder), sayable)), add_start=True, discount_mass=HELD_BACK
    )
    trainer.compute()
    handle, draft = tempfile.mkstemp(prefix="ear-", suffix=".part", dir=path.parent)
    with os.fdopen(handle, "w", encoding="utf-8") as out:
        trainer.write(out)
    Path(draft).replace(path)
    for old in path.parent.glob("ear-*.lm"):
        if old != path:
            with suppress(OSError):  # another process may be reading it
                old.unlink()
    return path
