"""The notebook: every question and what came of it, kept for good, in one SQLite file.

Append-only: an entry is never changed. A correction, flag, tag, note or strike is an entry of its own that points at
another, and what an entry is now is read off those. Ids sort by time and are never reused, so two notebooks merge
without a conflict. Every list is oldest first. Whatever goes wrong is a NotebookError, one sentence long.
"""

from __future__ import annotations

import json
import sqlite3
from datetime import date, datetime
from pathlib import Path
from types import TracebackType
from typing import Any, Self

from assistant import notebook_merge, notebook_search
from assistant.ids import is_id, new_id
from assistant.notebook_entry import (
    COLUMNS,
    KINDS,
    Entry,
    Record,
    mark_record,
    read_entry,
    struck_ids,
    with_word,
)
from assistant.notebook_file import WAIT_SECONDS, NotebookError, NotebookFile
from assistant.notebook_order import OrderLine, order_lines
from assistant.places import notebook_file

LEAST_DIGITS = 4


class Notebook:
    """An open notebook; usable from any thread, and beside other processes that have the same file open."""

    def __init__(self, file: NotebookFile) -> None:
        self._file = file

    @classmethod
    def open(cls, path: str | Path | None = None, wait: float = WAIT_SECONDS) -> Self:
        """Open, or start, the notebook at `path` (a file or its folder; None: the one at home).

        `wait`: seconds to wait for another process that is writing.
        """
        return cls(NotebookFile(notebook_file(path), wait))

    def __enter__(self) -> Self:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        self.close()

    @property
    def path(self) -> Path:
        """The file it is kept in."""
        return self._file.path

    def close(self) -> None:
        """Let go of the file."""
        self._file.close()

    # writing

    def write(
        self, record: Record, kind: str = "question", points_at: str | None = None, took_ms: float | None = None
    ) -> str:
        """Keep a record and give back the id it was given. `points_at`: the entry it is about, whole id or a piece."""
        if kind not in KINDS:
            raise NotebookError(f"An entry can't be a {kind}: it is one of {', '.join(KINDS)}.")
        target = self.get(points_at).id if points_at else None
        at = _moment(record.get("at"))
        with self._file.writing() as db:
            id = new_id(after=_newest_id(db))
            text = _as_json({**record, "id": id, "at": at})
            # Read back from the text, so that the columns can't differ from the record.
            kept = json.loads(text)
            row = [id, at, at[:10], kept["job"], kept["via"], kept["heard"], kept["outcome"], kept["topic"]]
            row += [target, kind, text, took_ms]
            db.execute(f"INSERT INTO entries ({COLUMNS}) VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)", row)
            notebook_search.catch_up(db)
        return id

    def note(self, text: str, about: str | None = None, record: Record | None = None, job: str | None = None) -> str:
        """Keep a note, about an entry or on its own. `record`: that of the sentence which asked for it, if one did."""
        return self._mark("note", text, about, record, job)

    def flag(self, target: str, record: Record | None = None) -> str:
        """Flag an entry, to be found again."""
        return self._mark("flag", "", target, record)

    def tag(self, target: str, word: str, record: Record | None = None) -> str:
        """Put a word of the person's own on an entry."""
        return self._mark("tag", word, target, record)

    def strike(self, target: str, record: Record | None = None) -> str:
        """Strike an entry out: it stays, shown as struck. Striking a flag, a tag or a strike takes that back."""
        return self._mark("strike", "", target, record)

    def remember(self, job: str | None, name: str, value: Any, entry: str | None = None) -> None:
        """Keep a value for a job under a name; `entry` is the entry that said so (striking it takes the value back)."""
        if value is None:
            raise NotebookError(f"There is nothing to remember as the {name}.")
        self._add_fact(job, name, _as_json(value), entry)

    def forget(self, job: str | None, name: str, entry: str | None = None) -> None:
        """Keep that a job has no such value any more."""
        self._add_fact(job, name, None, entry)

    def merge(self, other: str | Path) -> int:
        """Take in what another notebook (file or folder) has and this one lacks; how many entries came. Repeatable."""
        return notebook_merge.take_in(self._file, notebook_file(other))

    # reading

    def facts(self, job: str | None) -> dict[str, Any]:
        """What is remembered for a job, by name: the latest value of each that was not struck or forgotten."""
        struck = self._struck()
        rows = self._file.rows("SELECT name, value, entry FROM facts WHERE job IS ? ORDER BY id", [job])
        latest = {name: value for name, value, entry in rows if entry not in struck}
        return {name: json.loads(value) for name, value in latest.items() if value is not None}

    def get(self, piece: str) -> Entry:
        """The one entry whose id is, begins with or ends with `piece` (dashes are optional)."""
        if is_id(piece):
            return self._one(self._entries("WHERE id = ?", [piece]), piece)
        digits = piece.strip().lower().replace("-", "")
        if len(digits) < LEAST_DIGITS or not set(digits) <= set("0123456789abcdef"):
            raise NotebookError(f'"{piece[:40]}" is not an id: give {LEAST_DIGITS} or more of its digits (0-9, a-f).')
        like = [f"{digits}%", f"%{digits}"]
        return self._one(self._entries("WHERE replace(id, '-', '') LIKE ? OR replace(id, '-', '') LIKE ?", like), piece)

    def day(self, day: date | str | None = None, job: str | None = None) -> list[Entry]:
        """The entries of a day (None: today) by its local date, of one job or of all (None)."""
        wanted = day or date.today()
        where, values = _filters(job=job, since=wanted, until=wanted)
        return self._entries(f"WHERE {where}", values)

    def last(self, n: int = 1) -> list[Entry]:
        """The newest `n` entries."""
        newest = "WHERE id IN (SELECT id FROM entries ORDER BY id DESC LIMIT ?)"
        return self._entries(newest, [n]) if n > 0 else []

    def find(
        self,
        words: str,
        job: str | None = None,
        topic: str | None = None,
        since: date | str | None = None,
        until: date | str | None = None,
    ) -> list[Entry]:
        """Entries that hold all the words, or carry a tag or a note that does. No words: whatever the rest allows."""
        where, values = _filters(job, topic, since, until)
        if words.strip():
            query = notebook_search.match(words)
            if not query:
                return []
            self._need_search()
            where += f" AND (seq IN ({_HITS}) OR id IN ({_MARKED_BY_HITS}))"
            values += [query, query]
        return self._entries(f"WHERE {where}", values)

    def order(self, job: str | None = None, day: date | str | None = None) -> list[OrderLine]:
        """What the take-offs add up to, of one job or all, of one day or all; see notebook_order.py."""
        where, values = _filters(job=job, since=day, until=day)
        return order_lines(self._entries(f"WHERE {where} AND outcome = 'answered'", values))

    # inside

    def _mark(self, kind: str, word: str, target: str | None, record: Record | None, job: str | None = None) -> str:
        word = " ".join(word.split())
        if kind in ("note", "tag") and not word:
            raise NotebookError(f"The {kind} has no words in it.")
        entry = self.get(target) if target else None
        kept = record or mark_record(kind, word, entry, job)
        return self.write(with_word(kept, kind, word) if word else kept, kind, entry.id if entry else None)

    def _add_fact(self, job: str | None, name: str, value: str | None, entry: str | None) -> None:
        source = self.get(entry).id if entry else None
        with self._file.writing() as db:
            row = [new_id(after=_newest_id(db)), _moment(None), job, name, value, source]
            db.execute("INSERT INTO facts (id, at, job, name, value, entry) VALUES (?, ?, ?, ?, ?, ?)", row)

    def _entries(self, where: str, values: list[Any]) -> list[Entry]:
        """The entries a WHERE clause picks, each with what points at it."""
        rows = self._file.rows(f"SELECT {COLUMNS} FROM entries {where} ORDER BY id", values)
        ids = json.dumps([row[0] for row in rows])
        marks = f"SELECT {COLUMNS} FROM entries WHERE points_at IN (SELECT value FROM json_each(?)) ORDER BY id"
        pointing: dict[str, list[tuple[Any, ...]]] = {}
        for mark in self._file.rows(marks, [ids]):
            pointing.setdefault(mark[8], []).append(mark)
        struck = self._struck()
        return [read_entry(row, pointing.get(row[0], []), struck) for row in rows]

    def _struck(self) -> set[str]:
        return struck_ids((id, target) for id, target in self._file.rows(_STRIKES))

    @staticmethod
    def _one(found: list[Entry], piece: str) -> Entry:
        if not found:
            raise NotebookError(f"No entry has an id that begins or ends with {piece[:40]}.")
        if len(found) > 1:
            raise NotebookError(f"{len(found)} entries have an id that begins or ends with {piece}: give more digits.")
        return found[0]

    def _need_search(self) -> None:
        if not self._file.searchable():
            raise NotebookError(
                "The SQLite of this computer has no word search (FTS5): read the notebook by day instead."
            )


_STRIKES = "SELECT id, points_at FROM entries WHERE kind = 'strike'"
_HITS = "SELECT rowid FROM search WHERE search MATCH ?"
_MARKED_BY_HITS = f"SELECT points_at FROM entries WHERE kind IN ('tag', 'note') AND seq IN ({_HITS})"


def _filters(
    job: str | None = None,
    topic: str | None = None,
    since: date | str | None = None,
    until: date | str | None = None,
) -> tuple[str, list[Any]]:
    """A condition and its values for what is given; both days count in."""
    given = {"job = ?": job, "topic = ?": topic}
    given |= {"day >= ?": _as_day(since) if since else None, "day <= ?": _as_day(until) if until else None}
    held = {condition: value for condition, value in given.items() if value is not None}
    return " AND ".join(["1", *held]), list(held.values())


def _as_day(day: date | str) -> str:
    """An ISO date (2026-05-04) from a date or from itself."""
    try:
        return (date.fromisoformat(day) if isinstance(day, str) else day).isoformat()[:10]
    except ValueError as error:
        raise NotebookError(f'"{str(day)[:40]}" is not a day: write it as 2026-05-04.') from error


def _moment(at: str | None) -> str:
    """A time with its zone, so that its first ten characters are the day where the person stood."""
    try:
        moment = datetime.fromisoformat(at) if at else datetime.now()
    except ValueError as error:
        raise NotebookError(f'"{str(at)[:40]}" is not a time: write it as 2026-05-04T09:31:07-07:00.') from error
    return (moment if moment.tzinfo else moment.astimezone()).isoformat(timespec="seconds")


def _as_json(value: Any) -> str:
    """JSON text. Half characters, which a badly encoded question may hold, become "?": SQLite can't keep them."""
    try:
        text = json.dumps(value, ensure_ascii=False, allow_nan=False)
    except (TypeError, ValueError) as error:
        raise NotebookError(f"The answer can't be kept in the notebook: {error}.") from error
    return text.encode("utf-8", "replace").decode("utf-8")


def _newest_id(db: sqlite3.Connection) -> str | None:
    """The greatest id in the file: new ones go after it, even when the clock was set back, since the latest wins."""
    sql = "SELECT max(id) FROM (SELECT max(id) AS id FROM entries UNION ALL SELECT max(id) FROM facts)"
    newest: str | None = db.execute(sql).fetchone()[0]
    return newest
