"""The compiled grammars, kept in a file beside them, as Python keeps its own bytecode: a start needs no parsing.

The file is only ever a copy: it is made again whenever a grammar or the code that compiles one has changed, and where
the folder can't be written there is none.
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


def stamp(folder: Path, makers: Iterable[ModuleType]) -> Stamp:
    """What the grammars of a folder and the modules that compile them look like now."""
    files = [*sorted(folder.glob("*.jsgf")), *(Path(maker.__file__ or "") for maker in makers)]
    stats = ((file.name, file.stat()) for file in files)
    return [(name, stat.st_mtime_ns, stat.st_size) for name, stat in stats]


def fetch(folder: Path, wanted: Stamp) -> Any:
    """What was stored under this stamp, or None."""
    try:
        found, plain = marshal.loads(_place(folder).read_bytes())
    except (OSError, EOFError, ValueError, TypeError):  # not there, not readable, or cut off
        return None
    return plain if found == wanted else None


def store(folder: Path, wanted: Stamp, plain: Any) -> None:
    """Keep plain data (tuples, lists, dicts, strings, numbers); another process sees all of it or none."""
    place = _place(folder)
    part = place.with_suffix(f".{os.getpid()}")
    try:
        place.parent.mkdir(exist_ok=True)
        part.write_bytes(marshal.dumps((wanted, plain)))
        part.replace(place)
    except OSError:
        part.unlink(missing_ok=True)


def _place(folder: Path) -> Path:
    return folder / "__pycache__" / f"phrases.{sys.implementation.cache_tag}.bin"
