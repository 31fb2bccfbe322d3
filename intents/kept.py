"""What the files of the grammars folder come to, kept beside them as Python keeps its own bytecode: a start needs no parsing.

Each is only ever a copy: it is made again whenever a file or the code it was made from has changed, and where the
folder can't be written there is none.
"""

from __future__ import annotations

import marshal
import os
import sys
from collections.abc import Iterable
from pathlib import Path
from types import ModuleType
from typing import Any

Stamp = list[tuple[str, int, int]]  # name, time of change and size of all that the copy was made from


def stamp(files: Iterable[Path], makers: Iterable[ModuleType] = ()) -> Stamp:
    """What the files, and the modules that make something of them, look like now."""
    stats = ((file.name, file.stat()) for file in (*files, *(Path(maker.__file__ or "") for maker in makers)))
    return [(name, stat.st_mtime_ns, stat.st_size) for name, stat in stats]


def fetch(folder: Path, name: str, wanted: Stamp) -> Any:
    """What was stored under this name and stamp, or None."""
    try:
        found, plain = marshal.loads(_place(folder, name).read_bytes())
    except (OSError, EOFError, ValueError, TypeError):  # not there, not readable, or cut off
        return None
    return plain if found == wanted else None


def store(folder: Path, name: str, wanted: Stamp, plain: Any) -> None:
    """Keep plain data (tuples, lists, dicts, strings, numbers); another process sees all of it or none."""
    place = _place(folder, name)
    part = place.with_suffix(f".{os.getpid()}")
    try:
        place.parent.mkdir(exist_ok=True)
        part.write_bytes(marshal.dumps((wanted, shared(plain))))
        part.replace(place)
    except OSError:
        part.unlink(missing_ok=True)


def shared(plain: Any) -> Any:
    """Plain data with its equal parts made one object, so that each is stored and read once.

    A trie of islands ends alike in tens of thousands of places: shared, it is a sixth of the size. Nobody may change it then.
    """
    seen: dict[tuple[Any, ...], Any] = {}

    def one(part: Any) -> Any:
        if isinstance(part, dict):
            part = {one(key): one(value) for key, value in part.items()}
            key: tuple[Any, ...] = (dict, *((id(name), id(value)) for name, value in part.items()))
        elif type(part) in (list, tuple):
            part = type(part)(map(one, part))
            key = (type(part), *map(id, part))
        else:
            key = (type(part), part) if not isinstance(part, set) else (set, frozenset(part))
        return seen.setdefault(key, part)

    return one(plain)


def _place(folder: Path, name: str) -> Path:
    return folder / "__pycache__" / f"{name}.{sys.implementation.cache_tag}.bin"
