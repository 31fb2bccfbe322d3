"""The file itself: migrations, other people's files, newer files, locked files, full disks."""

from __future__ import annotations

import hashlib
import sqlite3
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path
from typing import Any

import pytest

from assistant import migrations, notebook_search
from assistant.notebook import Notebook
from assistant.notebook_file import NotebookError

Make = Callable[..., dict[str, Any]]

# The first shape a notebook ever had, with rows in it, as a file of that time holds it. Never edit: such files exist.
SCHEMA_1 = """
PRAGMA application_id = 1279349832;
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
INSERT INTO entries VALUES (1, '019df3d1-0000-7000-8000-00000000000a', '2026-05-04T09:31:07-07:00', '2026-05-04',
    'north wall', 'typed', 'how many boards', 'answered', 'cladding boards', NULL, 'question',
    '{"heard": "how many boards", "givens": [], "answer": {"name": "boards", "text": "63 boards"}, "say": "63"}', 2.5);
INSERT INTO entries VALUES (2, '019df3d1-0000-7000-8000-00000000000b', '2026-05-04T09:32:00-07:00', '2026-05-04',
    'north wall', 'spoken', 'flag that', 'noted', 'flag', '019df3d1-0000-7000-8000-00000000000a', 'flag',
    '{"heard": "flag that", "givens": [], "answer": null, "say": "Flagged."}', NULL);
INSERT INTO facts VALUES ('019df3d1-0000-7000-8000-00000000000c', '2026-05-04T09:33:00-07:00', 'north wall', 'pitch',
    '5', NULL);
PRAGMA user_version = 1;
"""


@pytest.fixture
def oldest(tmp_path: Path) -> Path:
    path = tmp_path / "notebook.db"
    with closing(sqlite3.connect(path)) as db:
        db.executescript(SCHEMA_1)
    return path


def shape(path: Path) -> list[tuple[str, str]]:
    with closing(sqlite3.connect(path)) as db:
        rows = db.execute("SELECT name, coalesce(sql, '') FROM sqlite_master ORDER BY name").fetchall()
        return [(name, " ".join(sql.split())) for name, sql in rows]


def versions(path: Path) -> tuple[int, str]:
    with closing(sqlite3.connect(path)) as db:
        return db.execute("PRAGMA user_version").fetchone()[0], db.execute("PRAGMA journal_mode").fetchone()[0]


@pytest.fixture
def holder(notebook: Notebook) -> Iterator[sqlite3.Connection]:
    """Another program, with the notebook open."""
    with closing(sqlite3.connect(notebook.path, isolation_level=None)) as other:
        yield other


def test_the_oldest_notebook_with_rows_in_it_opens_and_works(oldest: Path, make_record: Make) -> None:
    with Notebook.open(oldest) as notebook:
        boards, flag = notebook.day("2026-05-04")
        assert (boards.heard, boards.took_ms, boards.flagged) == ("how many boards", 2.5, True)
        assert (flag.kind, flag.points_at) == ("flag", boards.id)
        assert notebook.facts("north wall") == {"pitch": 5}
        assert [entry.id for entry in notebook.find("board")] == [boards.id], "old rows are searchable"
        written = notebook.write(make_record())
        assert [entry.id for entry in notebook.last(9)] == sorted([boards.id, flag.id, written])
    assert versions(oldest) == (migrations.NEWEST, "wal")


def test_an_old_notebook_ends_up_shaped_like_a_new_one(oldest: Path, tmp_path: Path) -> None:
    for path in (oldest, tmp_path / "fresh.db"):
        Notebook.open(path).close()
    assert shape(oldest) == shape(tmp_path / "fresh.db")


def test_an_empty_file_becomes_a_notebook(tmp_path: Path) -> None:
    (tmp_path / "notebook.db").touch()
    Notebook.open(tmp_path).close()
    assert versions(tmp_path / "notebook.db") == (migrations.NEWEST, "wal")


def test_a_migration_that_fails_changes_nothing(oldest: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    before = shape(oldest)
    broken = (migrations.MIGRATIONS[0], "CREATE TABLE extra (a);\nCREATE TABLE extra (b);\n")
    monkeypatch.setattr(migrations, "MIGRATIONS", broken)
    with pytest.raises(NotebookError):
        Notebook.open(oldest)
    assert shape(oldest) == before
    assert versions(oldest)[0] == 1


def test_a_newer_notebook_is_left_alone(tmp_path: Path) -> None:
    Notebook.open(tmp_path).close()
    path = tmp_path / "notebook.db"
    with closing(sqlite3.connect(path)) as db:
        db.execute(f"PRAGMA user_version = {migrations.NEWEST + 1}")
    before = hashlib.sha256(path.read_bytes()).digest()
    with pytest.raises(NotebookError, match="newer version"):
        Notebook.open(tmp_path)
    assert hashlib.sha256(path.read_bytes()).digest() == before


def test_another_programs_database_is_left_alone(tmp_path: Path) -> None:
    path = tmp_path / "notebook.db"
    with closing(sqlite3.connect(path)) as db:
        db.execute("CREATE TABLE songs (name)")
    before = path.read_bytes()
    with pytest.raises(NotebookError, match="some other program"):
        Notebook.open(tmp_path)
    assert path.read_bytes() == before


def test_a_file_that_is_no_database_is_left_alone(tmp_path: Path) -> None:
    path = tmp_path / "notebook.db"
    path.write_text("shopping: 3 in screws, coffee\n" * 200)
    with pytest.raises(NotebookError, match="holds something else"):
        Notebook.open(tmp_path)
    assert path.read_text().startswith("shopping")


def test_a_damaged_notebook_says_so(tmp_path: Path, make_record: Make) -> None:
    with Notebook.open(tmp_path) as notebook:
        for _ in range(40):
            notebook.write(make_record())
    path = tmp_path / "notebook.db"
    whole = bytearray(path.read_bytes())
    whole[4096:] = b"\xa5" * (len(whole) - 4096)
    path.write_bytes(whole)
    with pytest.raises(NotebookError, match="is damaged"), Notebook.open(tmp_path) as notebook:
        notebook.last(40)


def test_a_folder_that_cannot_be_made_says_so(tmp_path: Path) -> None:
    (tmp_path / "shed").write_text("a file, not a folder")
    with pytest.raises(NotebookError, match=r"folder .*shed.* can't be made") as caught:
        Notebook.open(tmp_path / "shed" / "today")
    assert "\n" not in str(caught.value)


def test_a_folder_in_the_files_place_says_so(tmp_path: Path) -> None:
    (tmp_path / "notebook.db").mkdir()
    with pytest.raises(NotebookError, match="can't be opened"):
        Notebook.open(tmp_path)


def test_a_file_that_may_only_be_read_says_so(notebook: Notebook, make_record: Make) -> None:
    notebook._file._db.execute("PRAGMA query_only = 1")  # a stand-in: file modes don't bind the tests' root user
    with pytest.raises(NotebookError, match="read-only"):
        notebook.write(make_record())


def test_a_full_disk_says_so_and_keeps_what_was_there(notebook: Notebook, make_record: Make) -> None:
    id = notebook.write(make_record())
    db = notebook._file._db
    db.execute(f"PRAGMA max_page_count = {db.execute('PRAGMA page_count').fetchone()[0]}")
    with pytest.raises(NotebookError, match="the disk is full"):
        notebook.write(make_record(heard="long " * 10_000))
    assert [entry.id for entry in notebook.last(9)] == [id]
    db.execute("PRAGMA max_page_count = 1000000")
    assert notebook.write(make_record()) == notebook.last()[0].id, "it goes on when there is room again"


def test_a_locked_notebook_says_so(notebook: Notebook, holder: sqlite3.Connection, make_record: Make) -> None:
    with Notebook.open(notebook.path, wait=0) as impatient:
        holder.execute("BEGIN IMMEDIATE")
        with pytest.raises(NotebookError, match="in use by another program"):
            impatient.write(make_record())
        holder.execute("COMMIT")
        impatient.write(make_record())
    assert len(notebook.last(9)) == 1


def test_a_file_locked_whole_says_so_on_opening(tmp_path: Path) -> None:
    with closing(sqlite3.connect(tmp_path / "notebook.db", isolation_level=None)) as other:
        other.execute("BEGIN EXCLUSIVE")
        with pytest.raises(NotebookError, match="in use by another program"):
            Notebook.open(tmp_path, wait=0)


def test_a_reader_opens_and_reads_while_another_writes(
    notebook: Notebook, holder: sqlite3.Connection, make_record: Make
) -> None:
    id = notebook.write(make_record())
    holder.execute("BEGIN IMMEDIATE")
    holder.execute("INSERT INTO facts (id, at, name) VALUES ('019df3d1-0000-7000-8000-00000000000c', '', 'pitch')")
    with Notebook.open(notebook.path, wait=0) as reader:  # wait=0: anything that had to wait would fail
        assert [entry.id for entry in reader.day("2026-05-04")] == [id]
        assert [entry.id for entry in reader.find("miter")] == [id]
        assert reader.facts(None) == {} == reader.facts("north wall")
        assert reader.order() == []
    holder.execute("ROLLBACK")


def test_a_closed_notebook_says_so(tmp_path: Path) -> None:
    notebook = Notebook.open(tmp_path)
    notebook.close()
    notebook.close()
    with pytest.raises(NotebookError, match="could not be used"):
        notebook.last()


def test_without_word_search_all_but_find_works(
    tmp_path: Path, make_record: Make, monkeypatch: pytest.MonkeyPatch
) -> None:
    with monkeypatch.context() as patched:
        patched.setattr(notebook_search, "available", lambda db: False)
        with Notebook.open(tmp_path) as notebook:
            id = notebook.write(make_record())
            assert [entry.id for entry in notebook.find("", topic="rake return")] == [id]
            with pytest.raises(NotebookError, match="no word search"):
                notebook.find("miter")
        assert "search" not in dict(shape(tmp_path / "notebook.db"))
    with Notebook.open(tmp_path) as notebook:
        assert [entry.id for entry in notebook.find("miter")] == [id], "found once search is there"
