"""What an ear hands back: the words, how sure it is of each, and what else each may have been."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Protocol

RATE = 16_000  # samples a second: what both engines' models were trained on
SAMPLE_BYTES = 2  # signed 16-bit, little-endian, one channel


class EarError(Exception):
    """Sound that can't be used; the message is one clear sentence to show as it stands."""


@dataclass(frozen=True, slots=True)
class HeardWord:
    """One word: confidence 0 to 1, seconds from the start of the sound, and the other words it may have been."""

    word: str
    confidence: float
    start: float
    end: float
    alternatives: list[str] = field(default_factory=list)


@dataclass(frozen=True, slots=True)
class Heard:
    """One stretch of speech. Refused means that no answer may be worked from it; reason says why, for a person."""

    text: str
    words: list[HeardWord] = field(default_factory=list)
    refused: bool = False
    reason: str = ""

    @property
    def doubtful(self) -> list[HeardWord]:
        """The words that may have been something else, which the conversation asks about before anything is cut."""
        return [word for word in self.words if word.alternatives]


def refusal(reason: str) -> Heard:
    """Nothing heard that can be answered, and why."""
    return Heard("", [], True, reason)


class Ear(Protocol):
    """An engine that turns sound into words. `partial` is called with the words so far while it listens."""

    name: str

    def hear(self, samples: bytes, partial: Callable[[str], None] | None = None) -> Heard:
        """The words in 16 kHz mono signed 16-bit samples; silence and out-of-grammar speech come back refused."""
        ...
