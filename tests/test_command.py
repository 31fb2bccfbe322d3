"""The real command on bad input and good: one clear sentence, the right exit status, a record of exactly its shape."""

from __future__ import annotations

import json
import re
import subprocess
import sys
import uuid
from datetime import datetime
from os import environ
from pathlib import Path
from typing import Any

import pytest

ROOT = Path(__file__).resolve().parent.parent
UNITS = set(
    "deg in12 percent in ft mm cm m in2 ft2 m2 square in3 ft3 gal L lb kg count degF degC dF dC ratio money yesno"
    " in2perft word none".split()
)
LINE = {"name": str, "value": (float, int, type(None)), "unit": str, "text": str}
SHAPE: dict[str, Any] = {
    "record": int, "id": (str, type(None)), "at": str, "job": (str, type(None)), "via": str,
    "file": (str, type(None)), "heard": str, "doubt": list, "outcome": str, "topic": (str, type(None)), "givens": list,
    "answer": (dict, type(None)),
    "also": list, "steps": list, "checks": list, "marks": list, "figure": (dict, type(None)), "cautions": list,
    "sources": list, "say": str, "ask": str,
}  # fmt: skip


def lathmark(
    *arguments: str, text: bytes = b"", home: Path | str | None = None
) -> subprocess.CompletedProcess[bytes]:
    kept = {**environ, **({"LATHMARK_HOME": str(home)} if home else {})}
    command = [sys.executable, "-m", "assistant", *arguments]
    return subprocess.run(command, input=text, capture_output=True, check=False, cwd=ROOT, env=kept)


def records(*lines: str | bytes) -> list[dict[str, Any]]:
    """The records of lines of one conversation, nothing written down."""
    text = b"\n".join(line.encode() if isinstance(line, str) else line for line in lines) + b"\n"
    done = lathmark("ask", "--json", "--no-notebook", "-", text=text)
    assert done.returncode == 0, done.stderr
    assert done.stderr == b""
    return [json.loads(line) for line in done.stdout.decode("utf-8").splitlines()]


def refused(done: subprocess.CompletedProcess[bytes]) -> str:
    """The one clear line of a command that could not be run."""
    assert done.returncode == 2
    assert done.stdout == b""
    said = done.stderr.decode("utf-8")
    assert said.startswith("lathmark: "), said
    assert said.count("\n") == 1, said
    assert "Traceback" not in said and "Error" not in said, said
    return said


# ── bad input ──


def test_an_empty_line() -> None:
    assert "no words" in refused(lathmark("ask", "--no-notebook", ""))
    assert "no words" in refused(lathmark("ask", "--no-notebook", "   "))


LONG = {
    "letters": "x" * 10_000, "numbers": "12 " * 3_300, "a question again": "miter for a 5-in-12 rake return " * 320,
    "brackets": "(" * 10_000, "halves": "half of " * 1_250, "digits": "9" * 10_000,
}  # fmt: skip


@pytest.mark.parametrize("line", LONG.values(), ids=LONG)
def test_ten_thousand_characters(line: str) -> None:
    record, after = records(line, "roof angle of 5/12")
    assert record["outcome"] in ("declined", "asks")
    assert record["say"] and record["heard"]
    assert after["answer"]["text"] == "22.6°"


NO_WORDS = (b"\x00\x01\x02\x7f", b"\xff\xfe\xfa", "🔨🏠".encode(), "🔨 5/12 🏠".encode(), b"?!;:", b"...")


@pytest.mark.parametrize("line", NO_WORDS)
def test_what_is_no_word(line: bytes) -> None:
    records_found = records(line, b"roof angle of 5/12")
    assert all(record["say"] for record in records_found)
    assert records_found[-1]["answer"]["text"] == "22.6°"
    assert all(record["outcome"] != "answered" for record in records_found[:-1])


def test_control_characters_inside_a_question_are_not_heard() -> None:
    (record,) = records("roof\x07 angle\x00 of 5/12\x1b[31m")
    assert record["outcome"] != "answered" or record["answer"]["text"] == "22.6°"
    assert not re.search(r"[\x00-\x1f\x7f]", record["heard"])


@pytest.mark.parametrize(
    ("line", "says"),
    [
        ("miter for a 190 degree corner", "190"),
        ("rake return on a 0 in 12 roof", "flat"),
        ("rake return at 400 in 12", "400"),
        ("rake return at a pitch of minus 5 in 12", "negative"),
        ("7/0", "7/0"),
        ("courses for a -8 ft wall at a 7 inch exposure", "-8"),
        ("lay out courses on a 9 foot wall at minus 7 inches", "7"),
        ("how many courses of 20 inches on a 12 inch wall", "20 in"),
    ],
)
def test_what_can_not_be_is_declined_by_name(line: str, says: str) -> None:
    (record,) = records(line)
    assert record["outcome"] == "declined", record["say"]
    assert record["answer"] is None and record["steps"] == []
    assert says in record["say"].replace("−", "-"), record["say"]


def test_a_wav_that_is_none(tmp_path: Path) -> None:
    wav = tmp_path / "said.wav"
    wav.write_bytes(b"this is no sound at all")
    for path in (wav, tmp_path / "nowhere.wav", tmp_path):
        assert path.name in refused(lathmark("hear", "--json", "--no-notebook", str(path)))


def test_a_notebook_folder_that_can_not_be_written(tmp_path: Path) -> None:
    (tmp_path / "file").write_text("not a folder")
    for home in (tmp_path / "file" / "home", "/proc/lathmark"):
        refused(lathmark("ask", "roof angle of 5/12", home=home))
    assert (tmp_path / "file").read_text() == "not a folder"
    assert lathmark("ask", "--no-notebook", "roof angle of 5/12", home=tmp_path / "file" / "home").returncode == 0


def test_a_notebook_that_is_no_database(tmp_path: Path) -> None:
    assert lathmark("ask", "roof angle of 5/12", home=tmp_path).returncode == 0
    (notebook,) = [path for path in tmp_path.rglob("*") if path.is_file() and path.suffix not in (".db-wal", ".db-shm")]
    for left in tmp_path.rglob("*-*"):
        left.unlink()
    notebook.write_bytes(b"a shopping list\n" * 100)
    refused(lathmark("ask", "roof angle of 5/12", home=tmp_path))
    assert notebook.read_bytes() == b"a shopping list\n" * 100, "nothing is lost"


@pytest.mark.parametrize("arguments", [("fly",), ("ask",), ("ask", "--loudly", "x"), ("hear",), ("say-what", "quarks")])
def test_arguments_that_are_none(arguments: tuple[str, ...]) -> None:
    refused(lathmark(*arguments))


def test_a_reader_that_leaves_early(tmp_path: Path) -> None:
    ask = f"{sys.executable} -m assistant ask --json --no-notebook -"
    lines = "roof angle of 5/12\n" * 200
    shell = ["bash", "-c", f"{ask} | head -n 1"]
    done = subprocess.run(shell, input=lines.encode(), capture_output=True, check=True, cwd=ROOT)
    assert b"Traceback" not in done.stderr


# ── the record ──

CASES = {
    "answered": ["miter for a 5-in-12 rake return"],
    "asks": ["miter for a rake return"],
    "declined": ["miter for a 190 degree corner"],
    "noted": ["the roof is five twelve"],
}


@pytest.mark.parametrize("outcome", CASES)
def test_a_record_has_exactly_its_fields(outcome: str) -> None:
    record = records(*CASES[outcome])[-1]
    assert record["outcome"] == outcome
    assert list(record) == list(SHAPE)
    for name, kind in SHAPE.items():
        assert isinstance(record[name], kind) and not isinstance(record[name], bool), name
    assert record["record"] == 1 and record["via"] == "typed" and record["id"] is None and record["file"] is None
    assert datetime.fromisoformat(record["at"]).tzinfo is not None
    assert record["heard"] == CASES[outcome][-1]
    assert record["say"]
    assert (record["ask"] != "") == (outcome == "asks")
    assert (record["answer"] is not None) == (outcome == "answered")
    assert (record["topic"] is None) == (outcome == "declined")


def test_the_parts_of_an_answer() -> None:
    marks, area = "marks at 16 inches on centre on a 10 foot wall", "square feet of a 10 by 12 wall"
    for record in records("miter for a 5-in-12 rake return", marks, area):
        assert record["outcome"] == "answered", record["say"]
        for part in (record["answer"], *record["also"], *record["marks"]):
            well_formed(part, LINE)
        for given in record["givens"]:
            well_formed(given, {**LINE, "from": str})
            assert given["from"] in ("asked", "job", "earlier", "assumed")
        for step in record["steps"]:
            assert list(step) == ["why", "formula", "filled", "result"] and all(step.values())
        for check in record["checks"]:
            assert list(check) == ["what", "holds"] and check["holds"] is True
        assert record["checks"] and record["steps"]


def well_formed(line: dict[str, Any], shape: dict[str, Any]) -> None:
    assert list(line) == list(shape)
    for name, kind in shape.items():
        assert isinstance(line[name], kind), (name, line)
    assert line["unit"] in UNITS, line
    assert (line["value"] is None) == (line["unit"] == "word"), line


def test_the_first_question_of_all() -> None:
    (record,) = records("miter for a 5-in-12 rake return")
    values = {line["name"]: line["value"] for line in (record["answer"], *record["also"])}
    assert values["saw setting"] == pytest.approx(56.309932474020215, rel=1e-12)
    assert values["roof angle"] == pytest.approx(22.619864948040426, rel=1e-12)
    assert values["corner"] == pytest.approx(67.38013505195957, rel=1e-12)
    assert values["turn"] == pytest.approx(112.61986494804043, rel=1e-12)
    assert values["edge angle"] == pytest.approx(33.690067525979785, rel=1e-12)
    assert record["cautions"] and record["checks"] and record["figure"]


def test_a_missing_piece_is_asked_for_and_may_come_alone() -> None:
    asked, answered = records("miter for a rake return", "five twelve")
    assert asked["outcome"] == "asks" and "pitch" in asked["ask"].lower()
    assert answered["answer"]["text"] == "56.3°"


def test_a_blank_line_starts_afresh() -> None:
    first, second = records("the roof is five twelve", "", "miter for a rake return")
    assert (first["outcome"], second["outcome"]) == ("noted", "asks")


def test_entries_are_written_before_they_are_shown(tmp_path: Path) -> None:
    done = lathmark("ask", "--json", "--job", "north wall", "roof angle of 5/12", home=tmp_path)
    record = json.loads(done.stdout)
    assert uuid.UUID(record["id"]).version == 7 and record["job"] == "north wall"
    shown = lathmark("notebook", "show", record["id"], home=tmp_path)
    assert shown.returncode == 0 and "22.6°" in shown.stdout.decode()
    found = lathmark("notebook", "find", "angle", home=tmp_path)
    assert found.returncode == 0 and "roof angle" in found.stdout.decode()


def test_a_person_sees_the_working() -> None:
    done = lathmark("ask", "--no-notebook", "miter for a 5-in-12 rake return")
    page = done.stdout.decode("utf-8")
    for part in ("22.62°", "67.38°", "112.62°", "56.31°", "33.69°", "saw setting", "scrap"):
        assert part in page, part


def test_ears_tells_which_is_in_use_and_takes_no_folder_without_a_model(tmp_path: Path) -> None:
    assert b"PocketSphinx" in lathmark("ears", home=tmp_path / "home").stdout
    assert "no Vosk model" in refused(lathmark("ears", "add", str(tmp_path), home=tmp_path / "home"))
    assert "ears add" in refused(lathmark("ears", "sharpen", home=tmp_path / "home"))


def test_sixty_pieces_said_one_by_one_are_one_cut_list() -> None:
    pieces = ", ".join(f"{20 + n} 1/2" for n in range(60))
    record = records(f"cut list from 12 foot stock: {pieces}")[0]
    assert record["topic"] == "cut list"
    # 60 pieces of 20 1/2 … 79 1/2 in come to 3000 in: 21 sticks of 144 in can't hold that with their kerfs (arithmetic).
    assert record["answer"]["value"] >= 21
    assert "proven" in record["say"]
