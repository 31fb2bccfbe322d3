"""The same sound made louder, cleaner or noisier before it is decoded.

PocketSphinx is upset by digital silence, and by voices whose spectrum is unlike those it was trained on. A trace of
noise and a tilt of the spectrum mend that, but not the same for every voice; so the ear listens in several colours.
"""

from __future__ import annotations

from array import array
from dataclasses import dataclass
from functools import cache
from random import Random

FULL_LEVEL = 16_000  # peak that every recording is brought to, half of full scale
MAX_GAIN = 40  # raising a recording by more than this only raises the noise of the room
SILENCE = 24  # a peak under this is 62 dB under full scale: nobody spoke
NOISE_SEED = 5  # fixed, so that the same recording is always heard the same
NOISE_PATTERN = 8_000  # samples before the noise repeats: half a second, longer than any sound of speech


@dataclass(frozen=True, slots=True)
class Colour:
    """`noise` is the peak added; `tilt` takes that share of each sample from the next, which lifts the high end."""

    noise: int
    tilt: float = 0.0


def peak(samples: bytes) -> int:
    """How far the sound goes from its own middle."""
    values = array("h", samples)
    if not values:
        return 0
    middle = sum(values) // len(values)
    return max(max(values) - middle, middle - min(values))


def coloured(samples: bytes, colour: Colour) -> bytes:
    """Samples with no offset, brought to FULL_LEVEL, tilted, and with noise added."""
    values = array("h", samples)
    top = peak(samples)
    gain = min(MAX_GAIN, FULL_LEVEL / top) if top else 1.0
    middle = sum(values) / max(1, len(values))
    level = [(value - middle) * gain for value in values]
    if colour.tilt:
        level = [b - colour.tilt * a for a, b in zip([0.0, *level], level, strict=False)]
    noise = _noise(colour.noise)
    times = len(level) // len(noise) + 1
    return array("h", [int(v + n) for v, n in zip(level, noise * times, strict=False)]).tobytes()


@cache
def _noise(most: int) -> list[int]:
    """Triangular noise within `most` of zero."""
    random = Random(NOISE_SEED)
    return [random.randint(0, most) - random.randint(0, most) for _ in range(NOISE_PATTERN)]
