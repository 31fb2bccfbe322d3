"""Vosk models a person has added: kept in one folder at home, the one added last in use."""

from __future__ import annotations

import shutil
import tempfile
import zipfile
from pathlib import Path

from assistant.ears.words import EarError
from assistant.places import home

FOLDER = "ears"
NEEDED = ("am/final.mdl", "conf/mfcc.conf")  # in every Vosk model, small or large; older ones keep them at the top
FLAT = ("final.mdl", "mfcc.conf")


def model_folder() -> Path | None:
    """The Vosk model in use: the one added last, or None."""
    place = home() / FOLDER
    models = [path for path in place.iterdir() if _is_model(path)] if place.is_dir() else []
    return max(models, key=lambda path: path.stat().st_mtime, default=None)


def add_model(source: str | Path) -> str:
    """Copies a model from a folder or a ZIP into the home folder and hands back its name. Raises EarError."""
    source = Path(source).expanduser()
    place = home() / FOLDER
    place.mkdir(parents=True, exist_ok=True)
    with tempfile.TemporaryDirectory(dir=place, prefix=".adding-") as draft:
        found = _find(_unpacked(source, Path(draft)))
        if found is None:
            raise EarError(f"{source} holds no Vosk model: {NEEDED[0]} is not in it.")
        name = source.stem if found in (source, Path(draft)) else found.name
        target = place / name
        copy = Path(draft) / ".copy"
        shutil.copytree(found, copy)
        if target.exists():
            shutil.rmtree(target)
        copy.rename(target)
    target.touch()
    return name


def _unpacked(source: Path, draft: Path) -> Path:
    """The folder itself, or the draft folder with a ZIP's contents."""
    if source.is_dir():
        return source
    if not source.exists():
        raise EarError(f"There is no file or folder {source}.")
    try:
        with zipfile.ZipFile(source) as packed:
            packed.extractall(draft)
    except (zipfile.BadZipFile, OSError, RuntimeError) as error:
        raise EarError(f"{source} is neither a folder nor a ZIP that I can open.") from error
    return draft


def _is_model(path: Path) -> bool:
    return any(all((path / name).is_file() for name in names) for names in (NEEDED, FLAT))


def _find(folder: Path) -> Path | None:
    """The model in a folder: the folder itself or one inside it, since models are often packed in their own."""
    inside = sorted(path for path in folder.rglob("*") if path.is_dir())
    return next((path for path in [folder, *inside] if _is_model(path)), None)
