"""Word search in the notebook: an FTS5 index over the rows, made and filled here.

The index is kept beside the rows rather than by triggers, so that a notebook stays writable on a build of SQLite
without FTS5; whatever was written there is indexed when the file is next opened with it.
"""

from __future__ import annotations

import re
import sqlite3
import unicodedata

# Stemmed, so that "miters" finds "miter"; content='' because the rows never change and are kept once already.
_CREATE = """CREATE VIRTUAL TABLE IF NOT EXISTS search
    USING fts5(words, content='', tokenize='porter unicode61 remove_diacritics 2')"""

_FILL = """INSERT INTO search (rowid, words)
    SELECT seq, heard || ' ' || coalesce(topic, '') || ' ' || coalesce(job, '')
        || ' ' || coalesce(json_extract(record, '$.say'), '')
        || ' ' || coalesce(json_extract(record, '$.answer.name'), '')
        || ' ' || coalesce((SELECT group_concat(json_extract(value, '$.text'), ' ')
            FROM json_each(record, '$.givens') WHERE type = 'object'), '')
    FROM entries WHERE seq > ? ORDER BY seq"""


def available(db: sqlite3.Connection) -> bool:
    """Whether this build of SQLite has FTS5."""
    return db.execute("SELECT 1 FROM pragma_module_list WHERE name = 'fts5'").fetchone() is not None


def behind(db: sqlite3.Connection) -> bool:
    """Whether some entries are not indexed yet, or the index was never made."""
    if not available(db):
        return False
    if not _made(db):
        return True
    newest: int = db.execute("SELECT coalesce(max(seq), 0) FROM entries").fetchone()[0]
    return newest > _indexed(db)


def catch_up(db: sqlite3.Connection) -> None:
    """Index every entry that is not; to be called inside a transaction. Does nothing without FTS5."""
    if available(db):
        db.execute(_CREATE)
        db.execute(_FILL, (_indexed(db),))


def match(words: str) -> str:
    """The FTS5 query that asks for all of `words`, each taken as plain text; "" when there is no word in it."""
    plain = re.findall(r"[^\W_]+", unicodedata.normalize("NFC", words))
    return " ".join(f'"{word}"' for word in plain)


def _made(db: sqlite3.Connection) -> bool:
    return db.execute("SELECT 1 FROM sqlite_master WHERE name = 'search'").fetchone() is not None


def _indexed(db: sqlite3.Connection) -> int:
    """The seq of the last entry indexed; 0 when none is."""
    row = db.execute("SELECT rowid FROM search ORDER BY rowid DESC LIMIT 1").fetchone()
    return int(row[0]) if row else 0
