"""How well questions are understood: `python -m tests.understanding [--aside] [family …]` prints misses and figures.

A question set is a file of JSON lines in tests/questions (see DEVELOPERS.md): what is said, and the value, the question
back, or the refusal that is right. The sets in tests/questions/aside are measured and never tuned on.
"""

from __future__ import annotations

import argparse
import json
import subprocess
import sys
import tempfile
from collections.abc import Iterable
from concurrent.futures import ThreadPoolExecutor
from dataclasses import dataclass
from os import cpu_count, environ
from pathlib import Path
from typing import Any

QUESTIONS = Path(__file__).parent / "questions"
PART = 1000  # questions that one command is given; a part on each core
SPANS = (("to 8 words", 0, 9), ("9 to 17", 9, 18), ("18 and more", 18, 10**6))  # what is said longer is understood less
RELATIVE = 1e-4  # how near a value must be where the case does not say
# Exact factors to compare a value given in one unit with an expectation in another.
SAME = {
    "in": ("length", 1.0), "ft": ("length", 12.0), "mm": ("length", 1 / 25.4), "cm": ("length", 1 / 2.54),
    "m": ("length", 1000 / 25.4), "in2": ("area", 1 / 144), "ft2": ("area", 1.0), "m2": ("area", 10.763910416709722),
    "square": ("area", 100.0), "in3": ("volume", 1.0), "ft3": ("volume", 1728.0), "gal": ("volume", 231.0),
    "L": ("volume", 61.02374409473229), "lb": ("weight", 1.0), "kg": ("weight", 2.2046226218487757),
}  # fmt: skip


@dataclass(slots=True)
class Verdict:
    """How one case went: right, cautious (asked or declined where an answer was due), or wrong with confidence."""

    case: dict[str, Any]
    record: dict[str, Any]
    grade: str
    why: str = ""


def load(folder: Path = QUESTIONS, families: Iterable[str] = ()) -> dict[str, list[dict[str, Any]]]:
    """The cases by family."""
    wanted = set(families)
    return {
        path.stem: [json.loads(line) for line in path.read_text(encoding="utf-8").splitlines() if line.strip()]
        for path in sorted(folder.glob("*.jsonl"))
        if not wanted or path.stem in wanted
    }


def ask_all(cases: list[dict[str, Any]]) -> list[dict[str, Any]]:
    """The last record of each case, through the real command: a conversation a case, blank lines between, a part on each core."""
    parts = [cases[at : at + PART] for at in range(0, len(cases), PART)]
    with ThreadPoolExecutor(cpu_count()) as threads:
        return [record for records in threads.map(_ask_part, parts) for record in records]


def _ask_part(cases: list[dict[str, Any]]) -> list[dict[str, Any]]:
    text = "\n\n".join("\n".join(lines(case)) for case in cases) + "\n"
    with tempfile.TemporaryDirectory() as home:
        done = subprocess.run(
            [sys.executable, "-m", "assistant", "ask", "--json", "-"],
            input=text.encode("utf-8"), capture_output=True, check=False, cwd=QUESTIONS.parent.parent,
            env={**environ, "LATHMARK_HOME": home, "LATHMARK_STRICT": "1"},
        )  # fmt: skip
    if done.returncode:
        raise RuntimeError(done.stderr.decode("utf-8", errors="replace")[-3000:])
    records = [json.loads(line) for line in done.stdout.decode("utf-8").splitlines()]
    last, at = [], -1
    for case in cases:
        at += len(lines(case))
        last.append(records[at])
    return last


def lines(case: dict[str, Any]) -> list[str]:
    said = case["ask"]
    return [said] if isinstance(said, str) else said


def judge(case: dict[str, Any], record: dict[str, Any]) -> Verdict:
    """Grade one record against its case."""
    outcome = record["outcome"]
    confident = "wrong" if outcome == "answered" else "cautious"
    if "asks" in case:
        good = outcome == "asks" and case["asks"].lower() in record["ask"].lower()
        return Verdict(case, record, "right" if good else confident, "should ask for " + case["asks"])
    for kind in ("declined", "noted"):
        if kind in case:
            good = outcome == kind and case[kind].lower() in record["say"].lower()
            return Verdict(case, record, "right" if good else confident, f"should be {kind}, saying {case[kind]!r}")
    if outcome == "noted" and record["also"] and "word" not in case:  # read back off the answer before
        missing = _not_shown(case, record["also"])
        return Verdict(case, record, "wrong" if missing else "right", missing)
    if outcome != "answered":
        return Verdict(case, record, "cautious", "should answer")
    return _judge_answer(case, record)


def _not_shown(case: dict[str, Any], shown: Iterable[dict[str, Any]]) -> str:
    """The first value that should stand beside the answer and does not; "" where all are there."""
    lines = [*shown]
    own = [(case["value"], case["unit"])] if "value" in case else []
    for value, unit in (*own, *case.get("also", ())):
        if not any(close(line, value, unit, case.get("within")) for line in lines):
            return f"also lacks {value} {unit}"
    return ""


def _judge_answer(case: dict[str, Any], record: dict[str, Any]) -> Verdict:
    answer = record["answer"]
    if record["topic"] != case.get("topic", record["topic"]):
        if "value" in case and close(answer, case["value"], case["unit"], case.get("within")):
            return Verdict(case, record, "right")  # another topic, the same number: nobody is misled
        return Verdict(case, record, "wrong", f"topic {record['topic']}, not {case['topic']}")
    if "word" in case and case["word"].lower() not in answer["text"].lower():
        return Verdict(case, record, "wrong", f"{answer['text']}, not {case['word']}")
    if "value" in case and not close(answer, case["value"], case["unit"], case.get("within")):
        return Verdict(case, record, "wrong", f"{answer['value']} {answer['unit']}, not {case['value']} {case['unit']}")
    if missing := _not_shown(case, (*record["also"], *record["marks"], answer)):
        return Verdict(case, record, "wrong", missing)
    for mark, value in zip(record["marks"], case.get("marks", ()), strict=False):
        if not close(mark, value, mark["unit"], None):
            return Verdict(case, record, "wrong", f"mark {mark['value']}, not {value}")
    return Verdict(case, record, "right")


def close(line: dict[str, Any], value: float, unit: str, within: float | None) -> bool:
    """Whether a record's value is the expected one, in its unit or another of the dimension."""
    if line["value"] is None:
        return False
    mine, theirs = SAME.get(line["unit"], (line["unit"], 1.0)), SAME.get(unit, (unit, 1.0))
    if mine[0] != theirs[0]:
        return False
    got, want = line["value"] * mine[1], value * theirs[1]
    return bool(abs(got - want) <= (within * theirs[1] if within else RELATIVE * max(1.0, abs(want))))


def run(folder: Path = QUESTIONS, families: Iterable[str] = ()) -> dict[str, list[Verdict]]:
    """All verdicts by family."""
    sets = load(folder, families)
    everything = [case for cases in sets.values() for case in cases]
    records = iter(ask_all(everything))
    return {family: [judge(case, next(records)) for case in cases] for family, cases in sets.items()}


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--aside", action="store_true", help="the sets kept aside")
    parser.add_argument("--folder", type=Path, help="another folder of question sets")
    parser.add_argument("--quiet", action="store_true", help="figures only")
    parser.add_argument("family", nargs="*")
    choices = parser.parse_args()
    folder = choices.folder or (QUESTIONS / "aside" if choices.aside else QUESTIONS)
    verdicts = run(folder, choices.family)
    if not choices.quiet:
        for family, found in verdicts.items():
            for verdict in found:
                if verdict.grade != "right":
                    print(miss(family, verdict))
    total: list[Verdict] = []
    for family, found in verdicts.items():
        print(_figures(family, found))
        total += found
    for name, fewest, most in SPANS:
        print(_figures(name, [v for v in total if fewest <= sum(len(line.split()) for line in lines(v.case)) < most]))
    print(_figures("all", total))


def miss(family: str, verdict: Verdict) -> str:
    """What went wrong with one case, in two lines."""
    record = verdict.record
    got = record["ask"] or (record["answer"] or {}).get("text") or record["say"]
    said = f"{verdict.grade:8} {family}: {verdict.case['ask']!r}"
    return f"{said}\n         {verdict.why} | {record['outcome']} {record['topic']}: {got}"


def _figures(name: str, found: list[Verdict]) -> str:
    count = {grade: sum(v.grade == grade for v in found) for grade in ("right", "cautious", "wrong")}
    whole = len(found) or 1
    shares = ", ".join(f"{grade} {n} ({100 * n / whole:.1f} %)" for grade, n in count.items())
    return f"{name:12} {len(found):5} cases: {shares}"


if __name__ == "__main__":
    main()
