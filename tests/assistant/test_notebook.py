"""Writing entries and reading them back, with what later entries say about them."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing
from datetime import date, datetime
from typing import Any

import pytest

from assistant.ids import is_id
from assistant.notebook import Notebook
from assistant.notebook_file import NotebookError

Make = Callable[..., dict[str, Any]]


def test_a_record_comes_back_whole(notebook: Notebook, make_record: Make) -> None:
    record = make_record()
    id = notebook.write(record, took_ms=3.25)
    entry = notebook.get(id)
    assert is_id(id)
    assert entry.record == {**record, "id": id}
    assert record["id"] is None, "the caller's record is its own"
    assert (entry.at, entry.day, entry.job) == ("2026-05-04T09:31:07-07:00", "2026-05-04", "north wall")
    assert (entry.via, entry.heard, entry.outcome) == ("typed", "miter for a 5-in-12 rake return", "answered")
    assert (entry.topic, entry.kind, entry.points_at, entry.took_ms) == ("rake return", "question", None, 3.25)
    assert not entry.struck
    assert not entry.flagged


def test_an_entry_is_on_disk_before_write_returns(notebook: Notebook, make_record: Make) -> None:
    id = notebook.write(make_record())
    with closing(sqlite3.connect(notebook.path)) as other:
        assert other.execute("SELECT id FROM entries").fetchall() == [(id,)]


@pytest.mark.parametrize(
    "sql",
    [
        "UPDATE entries SET heard = 'something else'",
        "DELETE FROM entries",
        "INSERT OR REPLACE INTO entries SELECT * FROM entries",
        "REPLACE INTO entries (seq, id, at, day, via, heard, outcome, kind, record) SELECT seq, "
        "'00000000-0000-7000-8000-000000000000', at, day, via, 'forged', outcome, kind, record FROM entries",
        "UPDATE facts SET value = '9'",
        "DELETE FROM facts",
        "INSERT OR REPLACE INTO facts SELECT id, at, job, name, '9', entry FROM facts",
    ],
)
def test_nothing_written_can_be_changed_by_any_program(notebook: Notebook, make_record: Make, sql: str) -> None:
    id = notebook.write(make_record())
    notebook.remember("north wall", "pitch", 5, entry=id)
    refused = pytest.raises(sqlite3.IntegrityError, match="append-only")
    with closing(sqlite3.connect(notebook.path)) as other, refused:
        other.execute(sql)
    assert [entry.heard for entry in notebook.last(9)] == ["miter for a 5-in-12 rake return"]
    assert notebook.facts("north wall") == {"pitch": 5}


def test_flag_tag_and_note_are_entries_that_show_on_their_target(notebook: Notebook, make_record: Make) -> None:
    id = notebook.write(make_record())
    marks = [
        notebook.flag(id),
        notebook.tag(id, "punch  list"),
        notebook.note("the east\nend is out", about=id),
        notebook.tag(id, "punch list"),
    ]
    entry = notebook.get(id)
    assert (entry.flagged, entry.tags, entry.notes) == (True, ("punch list",), ("the east end is out",))
    assert [mark.id for mark in notebook.last(4)] == marks
    assert {mark.points_at for mark in notebook.last(4)} == {id}
    assert [mark.kind for mark in notebook.last(4)] == ["flag", "tag", "note", "tag"]
    assert all(mark.outcome == "noted" and mark.heard and mark.record["say"] for mark in notebook.last(4))
    assert all(mark.job == "north wall" for mark in notebook.last(4)), "a mark belongs to the job of its target"


def test_a_struck_entry_stays_and_is_shown_as_struck(notebook: Notebook, make_record: Make) -> None:
    id = notebook.write(make_record())
    strike = notebook.strike(id)
    assert notebook.get(id).struck
    assert [entry.id for entry in notebook.day("2026-05-04")] == [id]
    again = notebook.strike(strike)
    assert not notebook.get(id).struck, "striking the strike takes it back"
    notebook.strike(again)
    assert notebook.get(id).struck


@pytest.mark.parametrize("kind", ["flag", "tag", "note", "correction"])
def test_striking_a_mark_takes_it_off(notebook: Notebook, make_record: Make, kind: str) -> None:
    id = notebook.write(make_record())
    mark = {
        "flag": lambda: notebook.flag(id),
        "tag": lambda: notebook.tag(id, "look again"),
        "note": lambda: notebook.note("look again", about=id),
        "correction": lambda: notebook.write(make_record(), kind="correction", points_at=id),
    }[kind]()
    marked = notebook.get(id)
    assert any((marked.flagged, marked.tags, marked.notes, marked.corrected_by))
    notebook.strike(mark)
    entry = notebook.get(id)
    assert (entry.flagged, entry.tags, entry.notes, entry.corrected_by) == (False, (), (), None)


def test_a_correction_points_at_what_it_corrects(notebook: Notebook, make_record: Make) -> None:
    wrong = notebook.write(make_record())
    right = notebook.write(make_record(heard="no, nine twelve"), kind="correction", points_at=wrong[-8:])
    assert notebook.get(right).points_at == wrong
    assert notebook.get(wrong).corrected_by == right


def test_a_spoken_mark_keeps_the_record_of_its_sentence(notebook: Notebook, make_record: Make) -> None:
    id = notebook.write(make_record())
    said = make_record(heard="tag that punch list", via="spoken", outcome="noted", topic="tag", answer=None, givens=[])
    tag = notebook.get(notebook.tag(id, "punch list", record=said))
    assert (tag.heard, tag.via, tag.mark) == ("tag that punch list", "spoken", "punch list")
    assert notebook.get(id).tags == ("punch list",)


def test_a_note_can_stand_alone(notebook: Notebook) -> None:
    note = notebook.get(notebook.note("bug screen ran out", job="north wall"))
    assert (note.points_at, note.job, note.mark) == (None, "north wall", "bug screen ran out")
    assert note.day == date.today().isoformat()


@pytest.mark.parametrize(("kind", "word"), [("note", ""), ("note", " \n "), ("tag", "")])
def test_a_mark_without_words_is_refused(notebook: Notebook, make_record: Make, kind: str, word: str) -> None:
    id = notebook.write(make_record())
    with pytest.raises(NotebookError, match="no words"):
        notebook.note(word) if kind == "note" else notebook.tag(id, word)
    assert len(notebook.last(9)) == 1


def test_an_id_is_found_whole_by_its_beginning_and_by_its_end(notebook: Notebook, make_record: Make) -> None:
    ids = [notebook.write(make_record()) for _ in range(5)]
    for id in ids:
        for piece in (id, id.upper(), id.replace("-", ""), f" {id[-8:]} ", id[:30], id[-14:]):
            assert notebook.get(piece).id == id


@pytest.mark.parametrize("piece", ["", "abc", "%", "____", "'; drop table entries", "🔨🔨🔨🔨", "x" * 9999])
def test_what_is_not_an_id_gets_a_sentence(notebook: Notebook, make_record: Make, piece: str) -> None:
    notebook.write(make_record())
    with pytest.raises(NotebookError, match="is not an id") as caught:
        notebook.get(piece)
    assert len(str(caught.value)) < 200


def test_an_unknown_or_doubtful_id_is_never_guessed(notebook: Notebook, make_record: Make) -> None:
    first, second = (notebook.write(make_record()) for _ in range(2))
    unknown = next(piece for piece in ("0bad0bad", "1bad1bad") if piece not in (first[-8:], second[-8:]))
    with pytest.raises(NotebookError, match="No entry has"):
        notebook.flag(unknown)
    with pytest.raises(NotebookError, match="2 entries"):
        notebook.get(first[:6])
    assert len(notebook.last(9)) == 2


def test_a_day_is_the_day_where_the_person_stood(notebook: Notebook, make_record: Make) -> None:
    late = notebook.write(make_record(at="2026-05-04T23:30:00-07:00"))  # already the 5th by universal time
    early = notebook.write(make_record(at="2026-05-05T00:30:00-07:00", job="lake wall"))
    assert [entry.id for entry in notebook.day("2026-05-04")] == [late]
    assert [entry.id for entry in notebook.day(date(2026, 5, 5))] == [early]
    assert notebook.day(date(2026, 5, 5), job="north wall") == []
    assert [entry.id for entry in notebook.day("2026-05-05", job="Lake Wall")] == [early]


def test_today_needs_no_date(notebook: Notebook, make_record: Make) -> None:
    notebook.write(make_record())
    today = notebook.write(make_record(at=datetime.now().astimezone().isoformat()))
    assert [entry.id for entry in notebook.day()] == [today]


def test_last_gives_the_newest_oldest_first(notebook: Notebook, make_record: Make) -> None:
    ids = [notebook.write(make_record()) for _ in range(5)]
    assert [entry.id for entry in notebook.last(3)] == ids[2:]
    assert [entry.id for entry in notebook.last()] == ids[4:]
    assert notebook.last(0) == notebook.last(-1) == []


@pytest.mark.parametrize("day", ["today", "2026-02-30", "", "04/05/2026"])
def test_what_is_not_a_day_gets_a_sentence(notebook: Notebook, day: str) -> None:
    if day:
        with pytest.raises(NotebookError, match="is not a day"):
            notebook.day(day)
    else:
        assert notebook.day(day) == [], "no day named is today"


def test_what_cannot_be_kept_gets_a_sentence_and_leaves_nothing(notebook: Notebook, make_record: Make) -> None:
    for record in (make_record(figure={"at": float("nan")}), make_record(figure=object())):
        with pytest.raises(NotebookError, match="can't be kept"):
            notebook.write(record)
    with pytest.raises(NotebookError, match="is not a time"):
        notebook.write(make_record(at="this morning"))
    with pytest.raises(NotebookError, match="can't be a riddle"):
        notebook.write(make_record(), kind="riddle")
    assert notebook.last(9) == []


@pytest.mark.parametrize(
    "heard", ["½ of 3 ft 7⅜", "pitch 🔨 5\x00 12", "half \udce9 character", "x" * 100_000, "'); --"]
)
def test_any_words_can_be_kept(notebook: Notebook, make_record: Make, heard: str) -> None:
    entry = notebook.get(notebook.write(make_record(heard=heard)))
    assert entry.heard == entry.record["heard"] == heard.replace("\udce9", "?")


def test_a_name_that_is_badly_encoded_gets_a_sentence(notebook: Notebook) -> None:
    for attempt in (
        lambda: notebook.remember("wall \udce9", "pitch", 5),
        lambda: notebook.facts("wall \udce9"),
        lambda: notebook.find("miter", job="wall \udce9"),
    ):
        with pytest.raises(NotebookError, match="half a character"):
            attempt()
    assert notebook.find("miter \udce9") == []


def test_threads_share_one_notebook(notebook: Notebook, make_record: Make) -> None:
    def ask(turn: int) -> str:
        id = notebook.write(make_record(heard=f"question {turn}"))
        assert notebook.get(id).heard == f"question {turn}"
        return id

    with ThreadPoolExecutor(8) as pool:
        ids = list(pool.map(ask, range(80)))
    assert [entry.id for entry in notebook.last(999)] == sorted(ids)
    assert len(notebook.find("question")) == 80


def test_values_are_remembered_for_a_job_and_the_latest_wins(notebook: Notebook) -> None:
    notebook.remember("north wall", "pitch", {"value": 5, "unit": "in12", "text": "5 in 12"})
    notebook.remember("lake wall", "pitch", {"value": 9, "unit": "in12", "text": "9 in 12"})
    notebook.remember("North Wall", "stock", 144)
    notebook.remember("north wall", "stock", 192)
    notebook.remember(None, "kerf", 0.125)
    assert notebook.facts("north wall") == {"pitch": {"value": 5, "unit": "in12", "text": "5 in 12"}, "stock": 192}
    assert notebook.facts(None) == {"kerf": 0.125}
    notebook.forget("north wall", "stock")
    assert list(notebook.facts("north wall")) == ["pitch"]
    notebook.remember("north wall", "stock", 120)
    assert notebook.facts("north wall")["stock"] == 120
    assert notebook.facts("ramp wall") == {}
    with pytest.raises(NotebookError, match="nothing to remember"):
        notebook.remember("north wall", "pitch", None)


def test_striking_what_was_said_takes_back_the_value_it_set(notebook: Notebook, make_record: Make) -> None:
    notebook.remember("north wall", "pitch", 5)
    said = notebook.write(make_record(heard="the roof is nine twelve", outcome="noted"), kind="remember")
    notebook.remember("north wall", "pitch", 9, entry=said)
    assert notebook.facts("north wall") == {"pitch": 9}
    notebook.strike(said)
    assert notebook.facts("north wall") == {"pitch": 5}
