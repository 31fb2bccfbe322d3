"""DEVELOPERS.md promises that a topic is one function and one rule: follow its very steps on a copy of the project."""

from __future__ import annotations

import json
import re
import shutil
import subprocess
import sys
from math import radians, tan
from pathlib import Path

import pytest

HOUSE = Path(__file__).parent.parent


@pytest.fixture
def copy(tmp_path: Path) -> Path:
    for folder in ("assistant", "intents", "solvers", "grammars"):
        shutil.copytree(HOUSE / folder, tmp_path / folder, ignore=shutil.ignore_patterns("__pycache__"))
    return tmp_path


def ask(house: Path, words: str) -> dict[str, object]:
    done = subprocess.run(
        [sys.executable, "-m", "assistant", "ask", "--json", "--no-notebook", words],
        cwd=house, capture_output=True, text=True, check=True,
    )  # fmt: skip
    return json.loads(done.stdout)  # type: ignore[no-any-return]


def test_the_steps_of_developers_md_add_a_topic(copy: Path) -> None:
    guide = (HOUSE / "DEVELOPERS.md").read_text(encoding="utf-8")
    code = re.search(r"```python\n# (\S+)\n(.*?)```", guide, re.DOTALL)
    rule = re.search(r"```jsgf\n(.*?)```", guide, re.DOTALL)
    example = re.search(r"@example (.*)", guide)
    assert code and rule and example
    assert not (copy / code.group(1)).exists()
    before = ask(copy, example.group(1))
    assert before["topic"] != "long point"

    (copy / code.group(1)).write_text(code.group(2), encoding="utf-8")
    grammar = copy / "grammars" / "corners.jsgf"
    grammar.write_text(grammar.read_text(encoding="utf-8") + "\n" + rule.group(1), encoding="utf-8")

    record = ask(copy, example.group(1))
    assert record["topic"] == "long point"
    answer = record["answer"]
    assert isinstance(answer, dict)
    assert answer["value"] == pytest.approx(3.5 * tan(radians(22.5)), rel=1e-9)
    assert answer["text"] in guide
    assert ask(copy, "long point at 30 degrees")["ask"] == "How wide is the face?"
