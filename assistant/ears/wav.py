"""A WAV file in, 16 kHz mono 16-bit samples out: any rate, mono or stereo, 8 to 32 bits or float.

The chunks are walked here, so that each kind of bad file gets its own sentence; miniaudio does the decoding and
resampling. Layout: Microsoft/IBM "Multimedia Programming Interface and Data Specifications 1.0", RIFF WAVE.
"""

from __future__ import annotations

import struct
from array import array
from pathlib import Path

import miniaudio

from assistant.ears.words import RATE, SAMPLE_BYTES, EarError

FORMS = (1, 2, 3, 6, 7, 0x11, 0xFFFE)  # whole numbers, ADPCM, float, A-law, µ-law, IMA ADPCM, extensible
MAX_SECONDS = 60  # one question is a few seconds; a minute is a recording left running
MIN_SECONDS = 0.1  # shorter than any word
MAX_FILE_BYTES = 64 * 1024 * 1024  # a minute of 96 kHz stereo float with room to spare
STREAM_SIZE = 0x7FFF_0000  # sizes from here up are what writers to a pipe put when they can't know the length


def read_wav(path: str | Path) -> bytes:
    """The sound of a WAV file as 16 kHz mono signed 16-bit samples.

    Raises EarError, with one sentence naming the file, when it is missing, not WAV, empty, cut short or too long.
    """
    path = Path(path)
    data = _read(path)
    try:
        _check_chunks(data)
        sound = miniaudio.decode(data, miniaudio.SampleFormat.SIGNED16, _channels(data), RATE)
    except EarError as error:
        raise EarError(f"{path} is not a WAV file I can read: {error}.") from error
    except (miniaudio.MiniaudioError, struct.error, ValueError, MemoryError) as error:
        raise EarError(f"{path} is not a WAV file I can read: its sound is in a form I don't know.") from error
    samples = _loudest(sound.samples, sound.nchannels)
    if len(samples) < RATE * MIN_SECONDS:
        raise EarError(f"{path} holds no sound to listen to.")
    return samples.tobytes()


def _read(path: Path) -> bytes:
    """The file's bytes, or an EarError a person can act on."""
    try:
        if path.stat().st_size > MAX_FILE_BYTES:
            raise EarError(f"{path} is too long: a question is at most {MAX_SECONDS} seconds.")
        data = path.read_bytes()
    except FileNotFoundError as error:
        raise EarError(f"There is no file {path}.") from error
    except (OSError, ValueError) as error:
        why = getattr(error, "strerror", None) or str(error)
        raise EarError(f"{path} can't be read: {why}.") from error
    if not data:
        raise EarError(f"{path} is empty.")
    return data


def _chunks(data: bytes) -> dict[bytes, tuple[int, int]]:
    """Where each chunk's body starts and the size it declares; the first of a name wins."""
    found: dict[bytes, tuple[int, int]] = {}
    at = 12
    while at + 8 <= len(data):
        name, size = struct.unpack_from("<4sI", data, at)
        found.setdefault(name, (at + 8, size))
        if name == b"data" and b"fmt " in found:
            break
        at += 8 + size + size % 2
    return found


def _check_chunks(data: bytes) -> None:
    """Raises EarError, with the reason alone, unless this is whole WAV sound of a sensible length."""
    if data[:4] != b"RIFF" or data[8:12] != b"WAVE":
        raise EarError("it doesn't start as one")
    chunks = _chunks(data)
    if b"fmt " not in chunks or chunks[b"fmt "][0] + 16 > len(data):
        raise EarError("its header is cut short")
    form, channels, rate, _, frame, bits = struct.unpack_from("<HHIIHH", data, chunks[b"fmt "][0])
    if not (1 <= channels <= 8 and 4_000 <= rate <= 384_000 and frame and bits):
        raise EarError("its header makes no sense")
    if form not in FORMS:
        raise EarError("its sound is in a form I don't know")
    if b"data" not in chunks:
        raise EarError("it has no sound in it")
    start, size = chunks[b"data"]
    _check_length(len(data) - start, size, frame * rate)


def _check_length(held: int, declared: int, per_second: int) -> None:
    """Raises EarError when the sound is empty, shorter than its header promises, or longer than a question."""
    size = held if declared >= STREAM_SIZE else declared
    if size == 0:
        raise EarError("it has no sound in it")
    if held < size:
        raise EarError(
            f"it is cut short, holding {held / per_second:.1f} of the {size / per_second:.1f} seconds it promises"
        )
    if size > MAX_SECONDS * per_second:
        raise EarError(f"it is too long, {size / per_second:.0f} seconds where a question is at most {MAX_SECONDS}")


def _channels(data: bytes) -> int:
    """How many channels the header names."""
    start, _ = _chunks(data)[b"fmt "]
    return int(struct.unpack_from("<H", data, start + 2)[0])


def _loudest(samples: array[int], channels: int) -> array[int]:
    """The loudest channel alone: mixing can cancel two microphones, and a dead one would halve the level."""
    tracks = [samples[channel::channels] for channel in range(channels)]
    return max(tracks, key=lambda track: sum(map(abs, track)))


def seconds(samples: bytes) -> float:
    """How long a stretch of samples lasts."""
    return len(samples) / (RATE * SAMPLE_BYTES)
