"""Where things are kept on disk: every path the program uses is named here and nowhere else.

Everything lives in one folder: LATHMARK_HOME when it is set, else the per-user data folder of the platform.
"""

from __future__ import annotations

import os
from pathlib import Path

NOTEBOOK = "notebook.db"


def home() -> Path:
    """The folder that holds what must be kept; it may not exist yet."""
    chosen = _chosen()
    if chosen:
        return chosen
    import platformdirs  # imported late: a question asked with LATHMARK_HOME set should not pay for it

    return platformdirs.user_data_path("lathmark", appauthor=False)


def cache_dir() -> Path:
    """The folder for what can be made again at any time; it may not exist yet."""
    chosen = _chosen()
    if chosen:
        return chosen / "cache"
    import platformdirs

    return platformdirs.user_cache_path("lathmark", appauthor=False)


def notebook_file(path: str | Path | None = None) -> Path:
    """The notebook's file: `path` itself, the file inside it when it names a folder, or the one at home."""
    if path is None:
        return home() / NOTEBOOK
    place = Path(path).expanduser()
    return place if place.suffix == ".db" or place.is_file() else place / NOTEBOOK


def _chosen() -> Path | None:
    """The folder named by LATHMARK_HOME, or None."""
    chosen = os.environ.get("LATHMARK_HOME", "").strip()
    return Path(chosen).expanduser() if chosen else None
