"""One entry of the notebook as it is read: the record that was kept, and what later entries say about it."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, replace
from datetime import datetime
from typing import Any

Record = dict[str, Any]

KINDS = ("question", "note", "flag", "tag", "strike", "correction", "remember")
COLUMNS = "id, at, day, job, via, heard, outcome, topic, points_at, kind, record, took_ms"
SHORT = 8


@dataclass(frozen=True, slots=True)
class Entry:
    """A row of the notebook. The fields from `struck` on are not stored but read off the entries pointing here."""

    id: str
    at: str
    day: str
    job: str | None
    via: str
    heard: str
    outcome: str
    topic: str | None
    points_at: str | None
    kind: str
    record: Record
    took_ms: float | None
    struck: bool = False
    flagged: bool = False
    tags: tuple[str, ...] = ()
    notes: tuple[str, ...] = ()
    corrected_by: str | None = None

    @property
    def short(self) -> str:
        """The end of the id, which is random and so tells entries of one day apart; `Notebook.get` takes it."""
        return self.id[-SHORT:]

    @property
    def mark(self) -> str:
        """The words of a note or a tag; "" for other kinds."""
        return next((given["text"] for given in self.record["givens"] if given["name"] == self.kind), "")


def mark_record(kind: str, word: str, target: Entry | None, job: str | None) -> Record:
    """The record of a note, flag, tag or strike made by a key or a command rather than by a sentence."""
    what = f" {target.short}" if target else ""
    says = {"note": f"Noted: {word}", "flag": "Flagged.", "tag": f"Tagged: {word}", "strike": "Struck out."}
    empty: Record = {"answer": None, "also": [], "steps": [], "checks": [], "marks": [], "figure": None}
    return {
        "record": 1,
        "id": None,
        "at": datetime.now().astimezone().isoformat(timespec="seconds"),
        "job": target.job if target else job,
        "via": "typed",
        "file": None,
        "heard": f"{kind}{what}" + (f": {word}" if word else ""),
        "doubt": [],
        "outcome": "noted",
        "topic": kind,
        "givens": [],
        **empty,
        "cautions": [],
        "sources": [],
        "say": says[kind],
        "ask": "",
    }


def with_word(record: Record, kind: str, word: str) -> Record:
    """The record, holding the word of a tag or the words of a note among its givens, where `Entry.mark` finds it."""
    given = {"name": kind, "value": None, "unit": "word", "text": word, "from": "asked"}
    others = [held for held in record["givens"] if held["name"] != kind]
    return {**record, "givens": [*others, given]}


def read_entry(row: Sequence[Any], pointing: Iterable[Sequence[Any]], struck: set[str]) -> Entry:
    """An entry from its row and the rows pointing at it (both as COLUMNS, oldest first), and the ids struck out."""
    plain = _plain(row)
    standing = [mark for mark in map(_plain, pointing) if mark.id not in struck]
    own = own_marks(plain.record) if plain.kind == "note" else {}
    corrections = [mark.id for mark in standing if mark.kind == "correction"]
    return replace(
        plain,
        struck=plain.id in struck,
        flagged="flag" in own or any(mark.kind == "flag" for mark in standing),
        tags=tuple(dict.fromkeys([*own.get("tag", ()), *(mark.mark for mark in standing if mark.kind == "tag")])),
        notes=tuple(mark.mark for mark in standing if mark.kind == "note"),
        corrected_by=corrections[-1] if corrections else None,
    )


def own_marks(record: Record) -> dict[str, list[str]]:
    """The flag and the tags that a note was made with: "flag the east gable flashing"."""
    found: dict[str, list[str]] = {}
    for given in record["givens"]:
        if given["name"] in ("flag", "tag") and record["topic"] == "note":
            found.setdefault(given["name"], []).append(given["text"])
    return found


def struck_ids(strikes: Iterable[tuple[str, str | None]]) -> set[str]:
    """The ids struck out, from all strikes as (id, what it strikes). A strike that is struck itself counts no more."""
    targets = {id: target for id, target in strikes if target}
    struck: set[str] = set()
    # Newest first: a strike is made after what it strikes, so by its turn it is known whether it stands.
    for id in sorted(targets, reverse=True):
        if id not in struck:
            struck.add(targets[id])
    return struck


def _plain(row: Sequence[Any]) -> Entry:
    """An entry as stored, before anything is read off the entries that point at it."""
    held = dict(zip(COLUMNS.split(", "), row, strict=True))
    return Entry(**{**held, "record": json.loads(held["record"])})
