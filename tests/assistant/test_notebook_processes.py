"""More than one process at the notebook, and processes that die: real ones, on a real file."""

from __future__ import annotations

import json
import signal
import subprocess
import sys
from collections.abc import Callable
from pathlib import Path
from typing import Any

from assistant.notebook import Notebook

Make = Callable[..., dict[str, Any]]

# Writes `count` entries (forever when 0), printing each id once write() has returned. Waits for a line to start.
WRITER = """
import itertools, json, sys
from assistant.notebook import Notebook
folder, name, count, record = sys.argv[1], sys.argv[2], int(sys.argv[3]), json.loads(sys.argv[4])
print("ready", flush=True)
sys.stdin.readline()
with Notebook.open(folder) as notebook:
    for turn in range(count) if count else itertools.count():
        id = notebook.write({**record, "heard": f"{name} {turn}"})
        notebook.remember(name, "turn", turn, entry=id)
        print(id, flush=True)
"""

# Starts an entry and dies before the commit.
HALF = """
import os, signal, sys
from assistant.notebook import Notebook
notebook = Notebook.open(sys.argv[1])
with notebook._file.writing() as db:
    db.execute("INSERT INTO facts (id, at, name) VALUES ('019df3d1-0000-7000-8000-00000000000c', '', 'half')")
    os.kill(os.getpid(), signal.SIGKILL)
"""


def start(folder: Path, name: str, count: int, record: dict[str, Any]) -> subprocess.Popen[str]:
    arguments = [sys.executable, "-c", WRITER, str(folder), name, str(count), json.dumps(record)]
    writer = subprocess.Popen(
        arguments, stdin=subprocess.PIPE, stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True
    )
    assert writer.stdout is not None
    assert writer.stdout.readline() == "ready\n"
    return writer


def test_writers_at_once_all_succeed_from_a_file_that_is_not_there_yet(tmp_path: Path, make_record: Make) -> None:
    names = ["north wall", "lake wall", "east gable", "ramp wall"]
    writers = [start(tmp_path / "new", name, 60, make_record()) for name in names]
    for writer in writers:
        assert writer.stdin is not None
        writer.stdin.write("\n")
        writer.stdin.flush()
    said = [writer.communicate(timeout=120) for writer in writers]
    assert [(writer.returncode, errors) for writer, (_, errors) in zip(writers, said, strict=True)] == [(0, "")] * 4
    with Notebook.open(tmp_path / "new") as notebook:
        kept = notebook.last(1000)
        assert {entry.id for entry in kept} == {id for out, _ in said for id in out.split()}
        assert len(kept) == 240
        for name in names:
            own = [entry.heard for entry in kept if entry.heard.startswith(name)]
            assert own == [f"{name} {turn}" for turn in range(60)], "ids go up in the order of writing"
            assert notebook.facts(name) == {"turn": 59}
        assert len(notebook.find("gable 59")) == 1


def test_killed_while_writing_loses_nothing_it_had_said_was_kept(tmp_path: Path, make_record: Make) -> None:
    said: list[str] = []
    for least in (1, 7, 25):
        writer = start(tmp_path, "north wall", 0, make_record())
        assert writer.stdin is not None
        assert writer.stdout is not None
        writer.stdin.write("\n")
        writer.stdin.flush()
        said += [writer.stdout.readline().strip() for _ in range(least)]
        writer.send_signal(signal.SIGKILL)
        out, _ = writer.communicate(timeout=60)
        assert writer.returncode == -signal.SIGKILL
        said += [line for line in out.split("\n")[:-1] if line]
    with Notebook.open(tmp_path) as notebook:
        kept = [entry.id for entry in notebook.last(100_000)]
        assert set(said) <= set(kept)
        assert len(kept) <= len(said) + 3, "at most the one under way each time"
        assert notebook._file.rows("PRAGMA integrity_check") == [("ok",)]
        notebook.write(make_record())


def test_killed_before_the_commit_leaves_no_half_entry_and_no_lock(tmp_path: Path, make_record: Make) -> None:
    with Notebook.open(tmp_path) as notebook:
        id = notebook.write(make_record())
    ran = subprocess.run([sys.executable, "-c", HALF, str(tmp_path)], capture_output=True, text=True, check=False)
    assert (ran.returncode, ran.stderr) == (-signal.SIGKILL, "")
    with Notebook.open(tmp_path, wait=0) as notebook:
        assert [entry.id for entry in notebook.last(9)] == [id]
        assert notebook._file.rows("SELECT * FROM facts") == []
        notebook.write(make_record())
