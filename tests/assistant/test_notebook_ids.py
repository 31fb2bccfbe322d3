"""Ids: version 7 UUIDs that only ever go up. Places: where the file is."""

from __future__ import annotations

import subprocess
import sys
import time
import uuid
from concurrent.futures import ThreadPoolExecutor
from pathlib import Path

import platformdirs
import pytest

from assistant import ids, places
from assistant.ids import is_id, new_id
from assistant.notebook import Notebook


def test_an_id_is_a_version_7_uuid_of_this_moment() -> None:
    before = time.time_ns() // 1_000_000
    made = uuid.UUID(new_id())
    after = time.time_ns() // 1_000_000
    assert (made.version, made.variant) == (7, uuid.RFC_4122)
    assert before <= made.int >> 80 <= after + 1000


def test_the_published_example_is_an_id_and_others_are_not() -> None:
    assert is_id("017f22e2-79b0-7cc3-98c4-dc0c0c07398f")  # RFC 9562, appendix A.6
    assert not is_id("919108f7-52d1-4320-9bac-f847db4148a8")  # the same, A.3: version 4
    assert not any(
        map(is_id, ("", None, 7, "017F22E2-79B0-7CC3-98C4-DC0C0C07398F", "017f22e279b07cc398c4dc0c0c07398f"))
    )


def test_the_published_example_packs_and_unpacks() -> None:
    text = "017f22e2-79b0-7cc3-98c4-dc0c0c07398f"
    assert ids._unpack(ids._pack(text)) == text
    assert ids._pack(text) >> ids.RANDOM_BITS == 0x017F22E279B0


def test_ids_go_up_within_a_millisecond_and_from_many_threads() -> None:
    made = [new_id() for _ in range(5000)]
    assert made == sorted(set(made))
    with ThreadPoolExecutor(8) as pool:
        threaded = list(pool.map(lambda _: new_id(), range(5000)))
    assert len(set(threaded)) == 5000
    assert min(threaded) > made[-1]


def test_ids_go_up_when_the_clock_goes_back(monkeypatch: pytest.MonkeyPatch) -> None:
    last = new_id()
    monkeypatch.setattr(time, "time_ns", lambda: 1_000_000_000_000_000_000)  # 2001
    after = [new_id() for _ in range(50)]
    assert [last, *after] == sorted({last, *after})
    assert all(map(is_id, after))
    assert len({id[-8:] for id in after}) == 50, "the part shown stays random"


def test_an_id_goes_after_the_one_named() -> None:
    future = "0fffffff-ffff-7fff-bfff-ffffffffffff"  # carries into the time field
    assert is_id(made := new_id(after=future))
    assert made > future


def test_a_clock_set_back_does_not_bring_an_old_value_back(notebook: Notebook, monkeypatch: pytest.MonkeyPatch) -> None:
    notebook.remember("north wall", "pitch", 5)
    monkeypatch.setattr(ids, "_last", 0)  # as in a new process
    monkeypatch.setattr(time, "time_ns", lambda: 1_000_000_000_000_000_000)
    notebook.remember("north wall", "pitch", 9)
    assert notebook.facts("north wall") == {"pitch": 9}


def test_lathmark_home_is_where_everything_is(monkeypatch: pytest.MonkeyPatch, tmp_path: Path) -> None:
    monkeypatch.setenv("LATHMARK_HOME", str(tmp_path / "shed"))
    assert places.notebook_file() == tmp_path / "shed" / "notebook.db"
    assert places.cache_dir().is_relative_to(tmp_path)
    with Notebook.open() as notebook:
        assert notebook.path.is_file()


@pytest.mark.parametrize("value", [None, "", "  "])
def test_without_it_the_platform_says_where(monkeypatch: pytest.MonkeyPatch, value: str | None) -> None:
    monkeypatch.delenv("LATHMARK_HOME", raising=False)
    if value is not None:
        monkeypatch.setenv("LATHMARK_HOME", value)
    assert places.home() == Path(platformdirs.user_data_dir("lathmark", False))
    assert places.cache_dir() == Path(platformdirs.user_cache_dir("lathmark", False))


def test_a_notebook_is_named_by_its_file_or_its_folder(tmp_path: Path) -> None:
    (tmp_path / "copy.bak").touch()
    assert places.notebook_file(tmp_path) == tmp_path / "notebook.db"
    assert places.notebook_file(tmp_path / "v1.2") == tmp_path / "v1.2" / "notebook.db"
    assert places.notebook_file(tmp_path / "mine.db") == tmp_path / "mine.db"
    assert places.notebook_file(tmp_path / "copy.bak") == tmp_path / "copy.bak"


def test_opening_a_notebook_loads_nothing_heavy(tmp_path: Path) -> None:
    program = (
        "import sys; from assistant.notebook import Notebook; Notebook.open().close();"
        "print([m for m in ('platformdirs', 'sympy', 'textual', 'uuid', 'asyncio') if m in sys.modules])"
    )
    ran = subprocess.run(
        [sys.executable, "-c", program],
        env={"LATHMARK_HOME": str(tmp_path)},
        capture_output=True,
        text=True,
        check=True,
    )
    assert ran.stdout.strip() == "[]"
