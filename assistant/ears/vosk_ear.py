"""The better ear: Vosk, used when a model for it is installed. Its grammar is the sentences drawn from `grammars/`."""

from __future__ import annotations

import json
from collections.abc import Callable, Iterable
from pathlib import Path
from typing import Any

from vosk import KaldiRecognizer, Model, SetLogLevel

from assistant.ears.twins import twins
from assistant.ears.words import RATE, Heard, HeardWord, refusal

UNKNOWN = "[unk]"  # what models for grammars say for speech that is in no phrase
MOST_UNKNOWN = 0.3  # share of the spoken time outside every phrase past which it was no question
LEAST_CONFIDENCE = 0.5  # mean over the words: under it the grammar was forced on other talk
SURE = 0.9  # a number word heard with less is given its twins
STEP = 8_000  # bytes at a time, a quarter of a second: how often the words so far are shown
SILENT = -1  # Vosk's log level that prints nothing


class VoskEar:
    """A Vosk model behind the one interface of ears; `phrases` are the sentences it may hear, none for free speech."""

    name = "Vosk"

    def __init__(self, model: Path, phrases: Iterable[str] = ()) -> None:
        SetLogLevel(SILENT)
        self._model = Model(str(model))
        said = list(phrases)
        self._grammar = json.dumps([*said, UNKNOWN], ensure_ascii=False) if said else ""

    def hear(self, samples: bytes, partial: Callable[[str], None] | None = None) -> Heard:
        """The words in 16 kHz mono signed 16-bit samples; silence and out-of-grammar speech come back refused."""
        more = (self._grammar,) if self._grammar else ()
        recogniser = KaldiRecognizer(self._model, RATE, *more)
        recogniser.SetWords(True)
        found: list[dict[str, Any]] = []
        for at in range(0, len(samples), STEP):
            if recogniser.AcceptWaveform(samples[at : at + STEP]):
                found += json.loads(recogniser.Result()).get("result", [])
            elif partial:
                partial(json.loads(recogniser.PartialResult()).get("partial", ""))
        return _heard(found + json.loads(recogniser.FinalResult()).get("result", []))


def _heard(found: list[dict[str, Any]]) -> Heard:
    """Vosk's words as ours, unless too much of them is unknown or unsure."""
    known = [word for word in found if word["word"] != UNKNOWN]
    if not known:
        return refusal("I heard no words in that; say it again, closer.")
    spoken = sum(word["end"] - word["start"] for word in found)
    unknown = spoken - sum(word["end"] - word["start"] for word in known)
    confidence = sum(word["conf"] for word in known) / len(known)
    if unknown > MOST_UNKNOWN * spoken or confidence < LEAST_CONFIDENCE:
        return refusal("That did not sound like anything I work out; say it again, or ask what I can do.")
    text = [word["word"] for word in known]
    words = []
    for at, word in enumerate(known):
        doubts = twins(text, at) if word["conf"] < SURE else []
        words.append(HeardWord(word["word"], word["conf"], word["start"], word["end"], doubts))
    return Heard(" ".join(text), words)
