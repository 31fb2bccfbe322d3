"""Records as the conversation would make them, and a notebook of one's own for each test."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any

import pytest

from assistant.notebook import Notebook

Record = dict[str, Any]


@pytest.fixture
def make_record() -> Callable[..., Record]:
    """A full record of a rake return at the boathouse; keyword arguments replace its fields."""

    def make(**fields: Any) -> Record:
        return {
            "record": 1,
            "id": None,
            "at": "2026-05-04T09:31:07-07:00",
            "job": "north wall",
            "via": "typed",
            "file": None,
            "heard": "miter for a 5-in-12 rake return",
            "doubt": [],
            "outcome": "answered",
            "topic": "rake return",
            "givens": [{"name": "pitch", "value": 5, "unit": "in12", "text": "5 in 12", "from": "asked"}],
            "answer": {"name": "saw setting", "value": 56.3099324740, "unit": "deg", "text": "56.3°"},
            "also": [{"name": "edge angle", "value": 33.690067526, "unit": "deg", "text": "33.7°"}],
            "steps": [
                {"why": "the pitch, as an angle", "formula": "atan(p/12)", "filled": "atan(5/12)", "result": "22.6°"}
            ],
            "checks": [{"what": "both cuts and the corner make a half turn", "holds": True}],
            "marks": [],
            "figure": None,
            "cautions": ["Saw: wait for the blade to stop."],
            "sources": [],
            "say": "Set the saw to fifty six point three degrees.",
            "ask": "",
            **fields,
        }

    return make


@pytest.fixture
def notebook(tmp_path: Path) -> Iterator[Notebook]:
    """An empty notebook, closed afterwards."""
    with Notebook.open(tmp_path / "notebook.db") as opened:
        yield opened
