"""Records for the page, the drawings and the screen, and a desk that answers from them: Teal Point boathouse."""

from __future__ import annotations

import threading
from typing import Any

Record = dict[str, Any]
EMPTY: Record = {
    "record": 1,
    "id": "01970000-0000-7000-8000-000000000000",
    "at": "2026-05-04T09:31:07-07:00",
    "job": "north wall",
    "via": "typed",
    "file": None,
    "heard": "",
    "doubt": [],
    "outcome": "answered",
    "topic": None,
    "givens": [],
    "answer": None,
    "also": [],
    "steps": [],
    "checks": [],
    "marks": [],
    "figure": None,
    "cautions": [],
    "sources": [],
    "say": "",
    "ask": "",
}

CORNER = {
    "title": "the corner, from the side",
    "shapes": [
        {"kind": "polygon", "points": [[0, 0], [0, 6], [-1, 6], [-1, 0]], "fill": "piece", "style": "edge"},
        {"kind": "polygon", "points": [[0, 0], [6, 2.5], [6, 1.4], [0, -1.1]], "fill": "none", "style": "edge"},
        {"kind": "line", "from": [-1, 0], "to": [0.5, 0], "style": "cut"},
        {"kind": "line", "from": [0, 0], "to": [6, 0], "style": "level"},
        {"kind": "angle", "centre": [0, 0], "radius": 2.2, "start": 22.62, "end": 90, "text": "67.4°"},
        {"kind": "angle", "centre": [0, 0], "radius": 3.6, "start": 0, "end": 22.62, "text": "22.6°"},
        {"kind": "dimension", "from": [-1, 0], "to": [-1, 6], "text": "5 1/2 in", "side": 1},
        {"kind": "label", "at": [4.5, 3.5], "text": "rake trim", "anchor": "middle"},
    ],
}
SAW = {
    "title": "the saw",
    "shapes": [
        {"kind": "polygon", "points": [[0, 0], [8, 0], [8, 3], [2, 3]], "fill": "piece", "style": "edge"},
        {"kind": "line", "from": [0, 0], "to": [2, 3], "style": "cut"},
        {"kind": "angle", "centre": [0, 0], "radius": 1.5, "start": 0, "end": 56.31, "text": "56.3°"},
        {"kind": "label", "at": [4, 1.5], "text": "keep", "anchor": "start"},
    ],
}
WALL = {
    "title": "north wall",
    "shapes": [
        {"kind": "polygon", "points": [[-20, -10], [260, -10], [260, 0], [-20, 0]], "fill": "ground", "style": "edge"},
        {"kind": "polygon", "points": [[0, 0], [240, 0], [240, 108], [120, 158], [0, 108]], "fill": "wall"},
        {"kind": "polygon", "points": [[90, 32], [150, 32], [150, 82], [90, 82]], "fill": "opening", "style": "edge"},
        {"kind": "dimension", "from": [0, 0], "to": [0, 108], "text": "9 ft", "side": 1},
        {"kind": "dimension", "from": [90, 32], "to": [150, 32], "text": "5 ft", "side": -1},
        {"kind": "label", "at": [120, 57], "text": "window"},
        {"kind": "arc", "centre": [200, 50], "radius": 20, "start": 0, "end": 180, "style": "hidden"},
    ],
}


def item(name: str, value: float, unit: str, text: str, **more: str) -> dict[str, Any]:
    """A given, an answer, or a mark."""
    return {"name": name, "value": value, "unit": unit, "text": text, **more}


def step(formula: str, filled: str, result: str, why: str) -> dict[str, str]:
    """One step of a working."""
    return {"formula": formula, "filled": filled, "result": result, "why": why}


def pole(count: int, exposure: float = 6.75) -> dict[str, Any]:
    """A story pole with `count` marks, as the view of a figure."""
    top = count * exposure
    marks = [{"kind": "tick", "at": [2, n * exposure], "text": f"{n * exposure:g} in"} for n in range(1, count + 1)]
    edge = {"kind": "polygon", "points": [[0, 0], [2, 0], [2, top], [0, top]], "fill": "piece", "style": "edge"}
    return {"title": "story pole", "stretch": True, "shapes": [edge, *marks]}


RAKE: Record = EMPTY | {
    "id": "01970000-0000-7000-8000-000000000001",
    "heard": "miter for a 5-in-12 rake return",
    "topic": "rake return",
    "givens": [
        item("pitch", 5, "in12", "5 in 12", **{"from": "asked"}),
        item("fascia", 0, "word", "plumb", **{"from": "assumed"}),
    ],
    "answer": item("saw setting", 56.3099325, "deg", "56.3°"),
    "also": [item("edge angle", 33.6900675, "deg", "33.7°"), item("corner", 67.3801351, "deg", "67.4°")],
    "steps": [
        step("θ = atan(rise / run)", "atan(5 / 12)", "22.62°", "the pitch, as an angle from level"),
        step("γ = 90° − θ", "90° − 22.62°", "67.38°", "a plumb fascia stands square to level"),
        step("τ = 180° − γ", "180° − 67.38°", "112.62°", "the trim goes round the outside of that corner"),
        step("s = τ / 2", "112.62° / 2", "56.31°", "half on each piece"),
    ],
    "checks": [{"what": "both cuts and the corner make a half turn", "holds": True}],
    "figure": {"views": [CORNER, SAW]},
    "cautions": ["Let the blade stop before lifting the offcut, and keep hands out of its line."],
    "sources": ["common practice"],
    "say": "Set the saw to 56.3 degrees for each piece.",
}
COURSES: Record = EMPTY | {
    "id": "01970000-0000-7000-8000-000000000002",
    "at": "2026-05-04T10:02:44-07:00",
    "heard": "course layout 9 foot wall 7 inch exposure",
    "topic": "course layout",
    "givens": [
        item("height", 108, "in", "9 ft", **{"from": "asked"}),
        item("greatest exposure", 7, "in", "7 in", **{"from": "job"}),
    ],
    "answer": item("exposure", 6.75, "in", "6 3/4 in"),
    "also": [item("courses", 16, "count", "16")],
    "steps": [
        step("n = roundup(height / greatest)", "roundup(108 / 7)", "16", "no course higher than the greatest"),
        step("e = height / n", "108 / 16", "6.75 in", "the same for every course"),
    ],
    "checks": [{"what": "courses × exposure is the height", "holds": True}],
    "marks": [item(f"course {n}", n * 6.75, "in", f"{n * 6.75:g} in") for n in range(1, 17)],
    "figure": {"views": [pole(16)]},
    "sources": ["common practice"],
    "say": "Sixteen courses at six and three quarters.",
}
ASKS: Record = EMPTY | {
    "id": "01970000-0000-7000-8000-000000000003",
    "at": "2026-05-04T10:20:00-07:00",
    "job": None,
    "heard": "rake length for a 24 foot gable",
    "outcome": "asks",
    "topic": "rake length",
    "say": "What is the pitch?",
    "ask": "What is the pitch?",
}
DECLINED: Record = EMPTY | {
    "id": "01970000-0000-7000-8000-000000000004",
    "at": "2026-05-04T10:31:00-07:00",
    "heard": "miter for a corner of 190 degrees",
    "outcome": "declined",
    "say": "A corner of 190° has no miter: the two pieces would pass each other. Corners run from 0° to 180°.",
}
NOTED: Record = EMPTY | {
    "id": "01970000-0000-7000-8000-000000000005",
    "at": "2026-05-05T08:00:30-07:00",
    "heard": "note: bug screen ran out on the north wall",
    "outcome": "noted",
    "topic": "note",
    "say": "Noted: bug screen ran out on the north wall.",
}
DAY = [RAKE, COURSES, ASKS, DECLINED, NOTED]
EXAMPLES = [
    ("corners and the saw", "miter for a 5-in-12 rake return"),
    ("corners and the saw", "what is the peak joint at 8 in 12"),
    ("courses and spacing", "course layout 9 foot wall 7 inch exposure"),
    ("the job", "note: bug screen ran out on the north wall"),
]


class FakeDesk:
    """Answers every line with a record of the day whose words it starts like, else declines; `gate` can hold it up."""

    def __init__(self, day: list[Record] | None = None) -> None:
        self.day = list(day or [])
        self.asked: list[str] = []
        self.flags: list[str] = []
        self.threads: set[int] = set()
        self.gate = threading.Event()
        self.gate.set()
        self.broken = False

    def answer(self, text: str) -> Record:
        """The record of one line."""
        self.threads.add(threading.get_ident())
        self.gate.wait(10)
        if self.broken:
            raise RuntimeError("the desk is broken")
        self.asked.append(text)
        kept = {"heard": text, "id": f"01970000-0000-7000-8000-{len(self.asked):012d}"}
        record = next((r for r in DAY if r["heard"] == text), DECLINED) | kept
        self.day.append(record)
        return record

    def entries(self) -> list[Record]:
        """The day so far."""
        return list(self.day)

    def examples(self) -> list[tuple[str, str]]:
        """What can be asked."""
        return EXAMPLES

    def flag(self, entry: str) -> Record:
        """Flags an entry."""
        self.flags.append(entry)
        return NOTED | {"heard": "flag that", "say": "Flagged."}
