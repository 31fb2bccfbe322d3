"""Finding entries by their words, and taking in another notebook."""

from __future__ import annotations

import sqlite3
from collections.abc import Callable
from contextlib import closing
from datetime import date
from pathlib import Path
from typing import Any

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from assistant.notebook import Notebook
from assistant.notebook_file import NotebookError
from assistant.notebook_search import match

Make = Callable[..., dict[str, Any]]


@pytest.fixture
def written(notebook: Notebook, make_record: Make) -> dict[str, str]:
    """Four entries by name, as id."""
    soffit = make_record(
        heard="soffit panels for 24 feet, 18 inches deep",
        topic="soffit panels",
        at="2026-05-05T10:00:00-07:00",
        givens=[],
        say="",
    )
    declined = make_record(
        heard="what beam do I need", topic=None, outcome="declined", answer=None, job=None, givens=[]
    )
    courses = make_record(heard="café courses 5-in-12", topic="course layout", job="lake wall", say="Near the window.")
    records = {"miter": make_record(), "soffit": soffit, "beam": declined, "courses": courses}
    return {name: notebook.write(record) for name, record in records.items()}


@pytest.mark.parametrize(
    ("words", "names"),
    [
        ("miter", ["miter"]),
        ("MITERS", ["miter"]),  # any case, any ending
        ("panel", ["soffit"]),
        ("rake 5 12", ["miter"]),
        ("5-in-12", ["miter", "courses"]),
        ("cafe", ["courses"]),
        ("cafe\u0301", ["courses"]),
        ("window", ["courses"]),  # said, not asked
        ("edge", []),  # `also` is not searched
        ("soffit miter", []),
        ("lake", ["courses"]),
        ("beam", ["beam"]),
        ("degrees", ["miter", "beam"]),
        ('"soffit panels"', ["soffit"]),
        ("soff*", []),
        ("soffit NEAR panels", []),
        ("soffit OR miter", []),
        ("NOT soffit", []),
        ("heard:soffit", []),
        ("(soffit", ["soffit"]),
        ("soffit ^ - + : ; ' \" ) {", ["soffit"]),
        ("🔨 soffit", ["soffit"]),
        ("🔨", []),
        ("***", []),
        ("_", []),
    ],
)
def test_words_are_found_as_plain_words(
    notebook: Notebook, written: dict[str, str], words: str, names: list[str]
) -> None:
    assert [entry.id for entry in notebook.find(words)] == [written[name] for name in names]


def test_the_rest_narrows_it_down(notebook: Notebook, written: dict[str, str]) -> None:
    def names(words: str = "", **rest: Any) -> list[str]:
        found = {entry.id for entry in notebook.find(words, **rest)}
        return [name for name, id in written.items() if id in found]

    assert names() == ["miter", "soffit", "beam", "courses"]
    assert names("  ", job="north wall") == ["miter", "soffit"]
    assert names("5 12", job="Lake Wall") == ["courses"]
    assert names(topic="Soffit panels") == ["soffit"]
    assert names(since="2026-05-05") == ["soffit"]
    assert names(until=date(2026, 5, 4)) == ["miter", "beam", "courses"]
    assert names("miter", since="2026-05-04", until="2026-05-04") == ["miter"]
    assert names("miter", since="2026-05-05") == []


def test_a_tag_or_a_note_finds_what_it_is_on(notebook: Notebook, written: dict[str, str]) -> None:
    tag = notebook.tag(written["miter"], "punch list")
    note = notebook.note("crooked sill", about=written["beam"])
    assert [entry.id for entry in notebook.find("punch")] == [written["miter"], tag]
    assert [entry.id for entry in notebook.find("sill")] == [written["beam"], note]


@settings(max_examples=200, suppress_health_check=[HealthCheck.function_scoped_fixture], deadline=None)
@given(words=st.text() | st.text(alphabet="\"'*():^-+AND NEAR{}\x00ab7½"))
def test_no_words_at_all_can_break_the_search(notebook: Notebook, words: str) -> None:
    assert notebook.find(words) == []


@given(word=st.text(alphabet=st.characters(categories=("Lu", "Ll", "Nd")), min_size=1))
def test_every_word_is_quoted(word: str) -> None:
    assert all(part.startswith('"') and part.endswith('"') for part in match(f"{word} AND {word}").split(" "))


def rows(notebook: Notebook) -> tuple[list[Any], list[Any]]:
    """Everything in a notebook but the order it came in."""
    return notebook.last(10_000), notebook._file.rows("SELECT * FROM facts ORDER BY id")


@pytest.fixture
def two(tmp_path: Path, make_record: Make) -> list[Path]:
    """Two devices' notebooks; the second began as a copy of the first's early hours."""
    folders = [tmp_path / "saw", tmp_path / "ladder"]
    with Notebook.open(folders[0]) as saw:
        common = saw.write(make_record(heard="begun on the saw"))
        with Notebook.open(folders[1]) as ladder:
            ladder.merge(folders[0])
            ladder.write(make_record(heard="on the ladder", job="lake wall"))
            ladder.remember("north wall", "pitch", 9)
            ladder.strike(common)
        saw.write(make_record(heard="back at the saw"))
        saw.flag(common)
        saw.remember("north wall", "stock", 144)
    return folders


def test_merged_either_way_two_notebooks_are_the_same(two: list[Path]) -> None:
    with Notebook.open(two[0]) as saw, Notebook.open(two[1]) as ladder:
        assert (saw.merge(two[1]), ladder.merge(two[0] / "notebook.db")) == (2, 2)
        assert rows(saw) == rows(ladder)
        begun = saw.find("begun")[0]
        assert begun.struck
        assert begun.flagged
        assert saw.facts("north wall") == {"pitch": 9, "stock": 144}
        assert [entry.heard for entry in saw.find("ladder")] == ["on the ladder"], "what came is searchable"


def test_merging_again_or_with_itself_changes_nothing(two: list[Path]) -> None:
    with Notebook.open(two[0]) as saw:
        saw.merge(two[1])
        before = rows(saw)
        assert (saw.merge(two[1]), saw.merge(two[0])) == (0, 0)
        assert rows(saw) == before


def test_three_notebooks_merge_the_same_in_any_order(two: list[Path], tmp_path: Path, make_record: Make) -> None:
    with Notebook.open(tmp_path / "truck") as truck:
        truck.write(make_record(heard="in the truck"))
    others = [*two, tmp_path / "truck"]
    results = []
    for turn, order in enumerate(([0, 1, 2], [2, 1, 0], [1, 2, 0])):
        with Notebook.open(tmp_path / f"home {turn}") as home:
            for number in order:
                home.merge(others[number])
            results.append(rows(home))
    assert results[0] == results[1] == results[2]


def test_merging_leaves_the_other_file_alone_even_one_that_is_older(tmp_path: Path, make_record: Make) -> None:
    with Notebook.open(tmp_path / "old") as old:
        id = old.write(make_record())
    path = tmp_path / "old" / "notebook.db"
    with closing(sqlite3.connect(path)) as db:
        for (name,) in db.execute("SELECT name FROM sqlite_master WHERE type = 'index' AND sql IS NOT NULL").fetchall():
            db.execute(f"DROP INDEX {name}")
        db.execute("PRAGMA user_version = 1")
        db.commit()
    before = path.read_bytes()
    with Notebook.open(tmp_path / "new") as new:
        assert new.merge(path) == 1
        assert new.last()[0].id == id
    assert path.read_bytes() == before


def test_merging_a_notebook_that_is_open_elsewhere_takes_all_it_holds(tmp_path: Path, make_record: Make) -> None:
    with Notebook.open(tmp_path / "a") as busy, Notebook.open(tmp_path / "b") as home:
        ids = [busy.write(make_record()) for _ in range(3)]
        assert home.merge(tmp_path / "a") == 3
        assert [entry.id for entry in home.last(9)] == ids


@pytest.mark.parametrize("kind", ["missing", "folder", "text", "foreign", "newer", "damaged id"])
def test_what_cannot_be_merged_gets_a_sentence_and_adds_nothing(
    notebook: Notebook, tmp_path: Path, make_record: Make, kind: str
) -> None:
    other = tmp_path / "other" / "notebook.db"
    (other if kind == "folder" else other.parent).mkdir(parents=True)
    if kind == "text":
        other.write_text("not a notebook " * 99)
    elif kind == "foreign":
        with closing(sqlite3.connect(other)) as db:
            db.execute("CREATE TABLE entries (id)")
    elif kind in ("newer", "damaged id"):
        with Notebook.open(other) as opened:
            opened.write(make_record())
        with closing(sqlite3.connect(other)) as db:
            db.execute("PRAGMA user_version = 99") if kind == "newer" else db.execute(
                "INSERT INTO entries SELECT 2, substr('zz' || id, 1, 36), at, day, job, via, heard, outcome, topic, "
                "points_at, kind, record, took_ms FROM entries"
            )
            db.commit()
    with pytest.raises(NotebookError) as caught:
        notebook.merge(other)
    assert str(other) in str(caught.value)
    assert str(caught.value).endswith(".")
    assert notebook.last(9) == []
