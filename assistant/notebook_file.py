"""The notebook's file: opening it, reading and writing safely, and one clear sentence for whatever goes wrong."""

from __future__ import annotations

import sqlite3
import threading
import time
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any

from assistant import migrations, notebook_search

# Long enough for another process to finish writing, short enough that a person still stands there.
WAIT_SECONDS = 5.0

_TROUBLE = {
    sqlite3.SQLITE_NOTADB: "can't be read: the file holds something else",
    sqlite3.SQLITE_CORRUPT: "is damaged; put back a copy of it, or move it away to start a new one",
    sqlite3.SQLITE_BUSY: "is in use by another program; try again when that one is done",
    sqlite3.SQLITE_LOCKED: "is in use by another program; try again when that one is done",
    sqlite3.SQLITE_FULL: "could not be written: the disk is full",
    sqlite3.SQLITE_READONLY: "can't be written: the file or its folder is read-only",
    sqlite3.SQLITE_PERM: "can't be written: no permission",
    sqlite3.SQLITE_CANTOPEN: "can't be opened: the file or its folder is missing, or may not be written",
    sqlite3.SQLITE_IOERR: "could not be read or written: the disk reports an error",
    sqlite3.SQLITE_CONSTRAINT: "holds an entry that is damaged",
}


class NotebookError(Exception):
    """Something the person can be told: the message is one whole sentence."""


class NotebookFile:
    """One open notebook file, usable from any thread. Every method raises NotebookError and nothing of SQLite's."""

    def __init__(self, path: Path, wait: float = WAIT_SECONDS) -> None:
        self.path = path
        self._wait = wait
        self._lock = threading.RLock()
        self._db = self._connect()
        try:
            with self._explained():
                self._prepare()
        except NotebookError:
            self.close()
            raise

    def close(self) -> None:
        """Let go of the file. Closing twice is harmless."""
        with self._explained():
            self._db.close()

    def rows(self, sql: str, values: Sequence[object] = ()) -> list[tuple[Any, ...]]:
        """All rows of a query, read at once so that nothing is held open."""
        with self._explained():
            return self._db.execute(sql, values).fetchall()

    def searchable(self) -> bool:
        """Whether the words can be searched on this computer."""
        with self._explained():
            return notebook_search.available(self._db)

    @contextmanager
    def writing(self) -> Iterator[sqlite3.Connection]:
        """A transaction: everything inside lands on disk together, or not at all."""
        with self._lock, self._explained(), migrations.transaction(self._db, "IMMEDIATE"):
            yield self._db

    def _connect(self) -> sqlite3.Connection:
        try:
            self.path.parent.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            reason = (error.strerror or "unknown trouble").lower()
            raise NotebookError(f"The notebook's folder {self.path.parent} can't be made: {reason}.") from error
        with self._explained():
            return sqlite3.connect(self.path, timeout=self._wait, isolation_level=None, check_same_thread=False)

    def _prepare(self) -> None:
        """Bring the file up to date. One that already is costs reads only: a reader never waits for a writer."""
        migrations.migrate(self._db)
        self._keep_journal()
        # FULL waits for the disk at every commit: a battery that dies must not take the last answer with it.
        self._db.execute("PRAGMA synchronous = FULL")
        if notebook_search.behind(self._db):
            with self.writing() as db:
                notebook_search.catch_up(db)

    def _keep_journal(self) -> None:
        """Write-ahead journal. SQLite does not wait its usual time for this one switch, so the wait is here."""
        until = time.monotonic() + self._wait
        while self._db.execute("PRAGMA journal_mode").fetchone()[0] != "wal":
            try:
                self._db.execute("PRAGMA journal_mode = WAL")
            except sqlite3.OperationalError as error:
                if _primary(error) != sqlite3.SQLITE_BUSY or time.monotonic() >= until:
                    raise
                time.sleep(0.01)

    @contextmanager
    def _explained(self) -> Iterator[None]:
        with explained(self.path):
            yield


@contextmanager
def explained(path: Path) -> Iterator[None]:
    """Turns what SQLite raises inside into a NotebookError about `path`."""
    try:
        yield
    except migrations.WrongFile as error:
        raise NotebookError(f"{path} {error}, so it is left alone.") from error
    except UnicodeEncodeError as error:
        raise NotebookError("The notebook can't look for, or keep, a name with half a character in it.") from error
    except sqlite3.Error as error:
        trouble = _TROUBLE.get(_primary(error), f"could not be used ({error})")
        raise NotebookError(f"The notebook {path} {trouble}.") from error


def _primary(error: sqlite3.Error) -> int:
    """SQLite's error number without the finer part; 0 when Python itself refused."""
    return getattr(error, "sqlite_errorcode", 0) & 0xFF
