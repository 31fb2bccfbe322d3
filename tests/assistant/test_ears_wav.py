"""Any WAV file becomes 16 kHz mono; every unusable file gets one sentence that says why."""

from __future__ import annotations

import math
import struct
from array import array
from itertools import pairwise
from pathlib import Path

import pytest

from assistant.ears.wav import read_wav
from assistant.ears.words import EarError

TONE = 440  # Hz
SECONDS = 0.5


def tone(rate: int, channels: int = 1) -> list[float]:
    """A sine of half the full scale, frames side by side; channels after the first are silent."""
    wave = [0.5 * math.sin(2 * math.pi * TONE * n / rate) for n in range(int(rate * SECONDS))]
    return [value if channel == 0 else 0.0 for value in wave for channel in range(channels)]


def packed(values: list[float], bits: int, kind: int) -> bytes:
    """Samples as the WAV format stores them: 8 bits unsigned, others signed, kind 3 float."""
    if kind == 3:
        return struct.pack(f"<{len(values)}{'f' if bits == 32 else 'd'}", *values)
    if bits == 8:
        return bytes(round(128 + 127 * value) for value in values)
    top = 2 ** (bits - 1) - 1
    return b"".join(round(top * value).to_bytes(bits // 8, "little", signed=True) for value in values)


def wav(
    sound: bytes, rate: int = 16_000, channels: int = 1, bits: int = 16, kind: int = 1, says: int | None = None
) -> bytes:
    """A WAV file, its data chunk claiming `says` bytes."""
    frame = channels * bits // 8
    fmt = struct.pack("<HHIIHH", kind, channels, rate, rate * frame, frame, bits)
    note = b"LIST" + struct.pack("<I", 3) + b"abc\0"  # an odd chunk before the sound, padded to even
    body = b"fmt " + struct.pack("<I", 16) + fmt + note + b"data"
    body += struct.pack("<I", len(sound) if says is None else says) + sound
    return b"RIFF" + struct.pack("<I", 4 + len(body)) + b"WAVE" + body


@pytest.mark.parametrize("rate", [8_000, 11_025, 16_000, 22_050, 44_100, 48_000, 96_000])
@pytest.mark.parametrize(("bits", "kind"), [(8, 1), (16, 1), (24, 1), (32, 1), (32, 3), (64, 3)])
@pytest.mark.parametrize("channels", [1, 2])
def test_any_form_becomes_the_same_sound(rate: int, bits: int, kind: int, channels: int, tmp_path: Path) -> None:
    path = tmp_path / "tone.wav"
    path.write_bytes(wav(packed(tone(rate, channels), bits, kind), rate, channels, bits, kind))
    samples = array("h", read_wav(path))
    assert len(samples) == pytest.approx(16_000 * SECONDS, abs=80)
    middle = samples[1000:-1000]
    rises = sum(a < 0 <= b for a, b in pairwise(middle))
    assert rises / (len(middle) / 16_000) == pytest.approx(TONE, rel=0.02)
    assert max(middle) == pytest.approx(16_384, rel=0.06)


def test_the_louder_channel_is_taken(tmp_path: Path) -> None:
    """Two microphones wired against each other would cancel if they were mixed."""
    both = [value for n in tone(16_000) for value in (n, -n)]
    path = tmp_path / "tone.wav"
    path.write_bytes(wav(packed(both, 16, 1), channels=2))
    assert max(array("h", read_wav(path))) > 15_000


def test_a_length_unknown_to_its_writer_runs_to_the_end(tmp_path: Path) -> None:
    path = tmp_path / "piped.wav"
    path.write_bytes(wav(packed(tone(16_000), 16, 1), says=0xFFFFFFFF))
    assert len(read_wav(path)) == 16_000


GOOD = packed(tone(16_000), 16, 1)


@pytest.mark.parametrize(
    ("content", "why"),
    [
        (b"", "is empty"),
        (b"miter for a corner\n", "doesn't start as one"),
        (b"RIFF\0\0\0\0WAVE", "header is cut short"),
        (wav(GOOD)[:30], "header is cut short"),
        (wav(GOOD)[:-4000], "cut short, holding 0.4 of the 0.5 seconds"),
        (wav(b""), "no sound in it"),
        (wav(GOOD[:200]), "no sound to listen to"),
        (wav(GOOD, channels=0), "makes no sense"),
        (wav(GOOD, rate=0), "makes no sense"),
        (wav(GOOD, kind=0x7777), "a form I don't know"),
        (wav(bytes(2 * 16_000 * 61)), "too long, 61 seconds"),
    ],
)
def test_a_bad_file_gets_one_sentence(content: bytes, why: str, tmp_path: Path) -> None:
    path = tmp_path / "bad.wav"
    path.write_bytes(content)
    with pytest.raises(EarError) as told:
        read_wav(path)
    message = str(told.value)
    assert why in message and str(path) in message and message.endswith(".") and "\n" not in message


def test_what_is_no_file_gets_one_sentence(tmp_path: Path) -> None:
    with pytest.raises(EarError, match="There is no file"):
        read_wav(tmp_path / "none.wav")
    with pytest.raises(EarError, match="can't be read"):
        read_wav(tmp_path)
