"""The ear on speech made on the spot: numbers right or doubted, everything else refused."""

from __future__ import annotations

import math
from array import array
from collections.abc import Iterator
from itertools import pairwise
from pathlib import Path
from random import Random

import pytest

from assistant.ears import Heard
from assistant.ears.colour import SILENCE
from assistant.ears.sphinx import SphinxEar
from assistant.ears.wav import read_wav
from tests.audio.speech import speak
from tests.benchmarks.hearing import numbers

SECOND = 16_000


@pytest.fixture(scope="module")
def ear(tmp_path_factory: pytest.TempPathFactory) -> Iterator[SphinxEar]:
    """One ear for the module: learning the grammars takes a few seconds."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("LATHMARK_HOME", str(tmp_path_factory.mktemp("home")))
        yield SphinxEar()


def heard(ear: SphinxEar, text: str, voice: str, folder: Path) -> Heard:
    return ear.hear(read_wav(speak(text, voice, folder / "said.wav")))


@pytest.mark.parametrize(
    ("voice", "said", "matters"),
    [
        ("slt", "rake return at five twelve", "return five twelve"),
        ("rms", "miter for a ninety two degree corner", "miter ninety two degree corner"),
        ("rms", "how long is the rake on a twenty eight foot gable at eight twelve", "rake twenty gable eight twelve"),
    ],
)
def test_a_clear_question_keeps_what_matters(
    ear: SphinxEar, voice: str, said: str, matters: str, tmp_path: Path
) -> None:
    found = heard(ear, said, voice, tmp_path)
    assert not found.refused and not found.reason
    assert numbers(found.text) == numbers(said)
    assert set(matters.split()) <= set(found.text.split())
    assert found.text == " ".join(word.word for word in found.words)
    assert all(0 <= word.confidence <= 1 and word.start < word.end for word in found.words)
    assert all(a.end <= b.start + 0.011 for a, b in pairwise(found.words))


def test_a_teen_is_right_or_doubted(ear: SphinxEar, tmp_path: Path) -> None:
    """This voice's fifteen sounds like fifty: taking it for fifty without a doubt would be a wrong cut."""
    found = heard(ear, "rise over a fifteen foot run at six twelve", "kal16", tmp_path)
    number = found.words[3]
    assert number.word == "fifteen" or "fifteen" in number.alternatives


@pytest.mark.parametrize(
    "said", ["pass me the hammer and a cup of coffee", "to be or not to be that is the question"]
)
def test_other_talk_is_refused(ear: SphinxEar, said: str, tmp_path: Path) -> None:
    found = heard(ear, said, "slt", tmp_path)
    assert found.refused and not found.text and found.reason.endswith(".")


def sounds() -> dict[str, list[int]]:
    """Two seconds each of what nobody said."""
    random = Random(7)
    return {
        "digital silence": [0] * 2 * SECOND,
        "a faint hum": [round((SILENCE - 4) * math.sin(n / 50)) for n in range(2 * SECOND)],
        "a tone": [round(9000 * math.sin(2 * math.pi * 440 * n / SECOND)) for n in range(2 * SECOND)],
        "noise": [random.randint(-6000, 6000) for _ in range(2 * SECOND)],
        "knocks": [9000 if n % 8000 < 40 else random.randint(-30, 30) for n in range(2 * SECOND)],
    }


@pytest.mark.parametrize("name", sounds())
def test_what_is_no_speech_is_refused(ear: SphinxEar, name: str) -> None:
    found = ear.hear(array("h", sounds()[name]).tobytes())
    assert found.refused and not found.text and not found.words and found.reason.endswith(".")


def test_the_model_is_kept_and_learned_anew_only_for_other_grammars(ear: SphinxEar, tmp_path: Path) -> None:
    from assistant.ears.model import language_model

    first = language_model(lambda word: True)
    stamp = first.stat().st_mtime_ns
    assert language_model(lambda word: False) == first and first.stat().st_mtime_ns == stamp
