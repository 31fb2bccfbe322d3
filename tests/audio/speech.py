"""Speech made on the spot, so that the ear is tested on sound and no recordings need keeping.

flite and espeak-ng are Debian packages; both run offline. Where espeak-ng is not installed as a command, the tests
that need speech need flite at least (`apt-get install flite espeak-ng`).
"""

from __future__ import annotations

import subprocess
import wave
from pathlib import Path

FLITE = ("kal16", "slt", "awb", "rms")
ESPEAK = ("en-us", "en-gb")
VOICES = FLITE + ESPEAK


def speak(text: str, voice: str, path: Path) -> Path:
    """Writes text, spoken in one of VOICES, to a WAV file, and hands its path back."""
    if voice in FLITE:
        command = ["flite", "-voice", voice, "-t", text, "-o", str(path)]
    else:
        command = ["espeak-ng", "-v", voice, "-w", str(path), text]
    subprocess.run(command, check=True, capture_output=True, timeout=60)
    return path


def write_wav(path: Path, samples: bytes, rate: int = 16_000, channels: int = 1, width: int = 2) -> Path:
    """Writes raw samples as a WAV file, and hands its path back."""
    with wave.open(str(path), "wb") as out:
        out.setnchannels(channels)
        out.setsampwidth(width)
        out.setframerate(rate)
        out.writeframes(samples)
    return path
