"""Taking in another notebook: the entries and facts whose ids are missing here, and nothing else.

Ids are unique and sort by time and rows never change, so the result is the same in any order and any number of times.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterable
from contextlib import closing
from pathlib import Path
from typing import Any

from assistant import migrations, notebook_search
from assistant.ids import is_id
from assistant.notebook_entry import COLUMNS
from assistant.notebook_file import NotebookError, NotebookFile, explained

TABLES = {"entries": COLUMNS, "facts": "id, at, job, name, value, entry"}


def take_in(file: NotebookFile, other: Path) -> int:
    """Insert into `file` what `other` has and it lacks; gives back how many entries came. Raises NotebookError."""
    if not other.is_file():
        raise NotebookError(f"There is no notebook at {other}.")
    with closing(_copy(other)) as copy, file.writing() as db:
        came = 0
        for table, columns in TABLES.items():
            rows = copy.execute(f"SELECT {columns} FROM {table} ORDER BY id")
            added = _insert_missing(db, table, columns, rows, other)
            came += added if table == "entries" else 0
        notebook_search.catch_up(db)
    return came


def _copy(other: Path) -> sqlite3.Connection:
    """A throw-away copy of the other notebook, brought to the shape of ours; the other file is never written."""
    copy = sqlite3.connect("", isolation_level=None)
    try:
        with explained(other):
            with closing(_open_to_read(other)) as source:
                source.backup(copy)
            copy.execute("PRAGMA journal_mode = MEMORY")
            migrations.migrate(copy)
    except NotebookError:
        copy.close()
        raise
    return copy


def _open_to_read(other: Path) -> sqlite3.Connection:
    """The other file, read only; one on a medium that can't be written is taken as it lies."""
    address = other.absolute().as_uri()
    source = sqlite3.connect(f"{address}?mode=ro", uri=True)
    try:
        source.execute("SELECT count(*) FROM sqlite_master")
    except sqlite3.Error as error:
        source.close()
        if getattr(error, "sqlite_errorcode", 0) & 0xFF not in (sqlite3.SQLITE_CANTOPEN, sqlite3.SQLITE_READONLY):
            raise
        source = sqlite3.connect(f"{address}?mode=ro&immutable=1", uri=True)
    return source


def _insert_missing(
    db: sqlite3.Connection, table: str, columns: str, rows: Iterable[tuple[Any, ...]], other: Path
) -> int:
    places = ", ".join("?" * len(columns.split(",")))
    held = {id for (id,) in db.execute(f"SELECT id FROM {table}")}
    added = 0
    for row in rows:
        if not is_id(row[0]):
            raise NotebookError(f"The notebook {other} holds an entry with a damaged id, so nothing was taken from it.")
        if row[0] not in held:
            db.execute(f"INSERT INTO {table} ({columns}) VALUES ({places})", row)
            added += 1
    return added
