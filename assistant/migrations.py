"""The notebook's shape on disk: numbered steps, forward only, each run once and never edited afterwards.

The number of the last step run is the file's user_version; the application_id says that the file is ours. Word search
is not among the steps: it is an index made from the rows (notebook_search.py), which some builds of SQLite can't keep.
"""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager

APPLICATION_ID = 0x4C415448  # "LATH"

# The INSERT guards are needed because INSERT OR REPLACE deletes the old row without firing a DELETE trigger.
_TABLES = """
CREATE TABLE entries (
    seq INTEGER PRIMARY KEY,
    id TEXT NOT NULL UNIQUE CHECK (length(id) = 36),
    at TEXT NOT NULL,
    day TEXT NOT NULL,
    job TEXT COLLATE NOCASE,
    via TEXT NOT NULL,
    heard TEXT NOT NULL,
    outcome TEXT NOT NULL,
    topic TEXT COLLATE NOCASE,
    points_at TEXT,
    kind TEXT NOT NULL CHECK (kind IN ('question', 'note', 'flag', 'tag', 'strike', 'correction', 'remember')),
    record TEXT NOT NULL CHECK (json_valid(record)),
    took_ms REAL
);
CREATE TABLE facts (
    id TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 36),
    at TEXT NOT NULL,
    job TEXT COLLATE NOCASE,
    name TEXT NOT NULL,
    value TEXT CHECK (value IS NULL OR json_valid(value)),
    entry TEXT
);
CREATE TRIGGER entries_keep BEFORE UPDATE ON entries BEGIN SELECT RAISE(ABORT, 'the notebook is append-only'); END;
CREATE TRIGGER entries_hold BEFORE DELETE ON entries BEGIN SELECT RAISE(ABORT, 'the notebook is append-only'); END;
CREATE TRIGGER entries_once BEFORE INSERT ON entries
    WHEN EXISTS (SELECT 1 FROM entries WHERE id = NEW.id OR seq = NEW.seq)
    BEGIN SELECT RAISE(ABORT, 'the notebook is append-only'); END;
CREATE TRIGGER facts_keep BEFORE UPDATE ON facts BEGIN SELECT RAISE(ABORT, 'the notebook is append-only'); END;
CREATE TRIGGER facts_hold BEFORE DELETE ON facts BEGIN SELECT RAISE(ABORT, 'the notebook is append-only'); END;
CREATE TRIGGER facts_once BEFORE INSERT ON facts WHEN EXISTS (SELECT 1 FROM facts WHERE id = NEW.id)
    BEGIN SELECT RAISE(ABORT, 'the notebook is append-only'); END;
"""

_INDEXES = """
CREATE INDEX entries_by_day ON entries (day, id);
CREATE INDEX entries_by_target ON entries (points_at) WHERE points_at IS NOT NULL;
CREATE INDEX entries_struck ON entries (kind) WHERE kind = 'strike';
CREATE INDEX facts_by_job ON facts (job, id);
"""

MIGRATIONS = (_TABLES, _INDEXES)
NEWEST = len(MIGRATIONS)


class WrongFile(Exception):
    """The file is a database, but not a notebook this program can write in; the message says why, in one clause."""


@contextmanager
def transaction(db: sqlite3.Connection, kind: str) -> Iterator[None]:
    """All inside lands on disk together or not at all. IMMEDIATE to write; DEFERRED to read one state of the file."""
    db.execute(f"BEGIN {kind}")
    try:
        yield
        db.execute("COMMIT")
    except BaseException:
        if db.in_transaction:  # SQLite has already rolled back when the disk filled up
            db.execute("ROLLBACK")
        raise


def migrate(db: sqlite3.Connection) -> None:
    """Bring an open file to the newest shape, all steps or none. Raises WrongFile, sqlite3.Error."""
    with transaction(db, "DEFERRED"):
        if _checked_version(db) == NEWEST:
            return
    with transaction(db, "IMMEDIATE"):
        # Read again under the lock: another process may have run the steps while this one waited.
        for number in range(_checked_version(db) + 1, NEWEST + 1):
            for statement in _statements(MIGRATIONS[number - 1]):
                db.execute(statement)
            db.execute(f"PRAGMA user_version = {number}")
        db.execute(f"PRAGMA application_id = {APPLICATION_ID}")


def _checked_version(db: sqlite3.Connection) -> int:
    """The number of the last step run; 0 when empty. Inside a transaction: another process may be starting the file."""
    version: int = db.execute("PRAGMA user_version").fetchone()[0]
    owner: int = db.execute("PRAGMA application_id").fetchone()[0]
    empty = db.execute("SELECT 1 FROM sqlite_master").fetchone() is None
    if owner != APPLICATION_ID and not (empty and version == 0 and owner == 0):
        raise WrongFile("is a database of some other program")
    if version > NEWEST:
        raise WrongFile("was written by a newer version of this program")
    return version


def _statements(script: str) -> list[str]:
    """A script, cut where SQLite says a statement is complete (a trigger holds semicolons of its own)."""
    found, so_far = [], ""
    for line in script.splitlines(keepends=True):
        so_far += line
        if sqlite3.complete_statement(so_far):
            found.append(so_far)
            so_far = ""
    return found
