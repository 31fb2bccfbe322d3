"""What the encoder learns from (intents/encoder.py): `python -m tests.encoding INTO.jsonl [FOLDER …]`.

One line a sentence of the question sets: its signs, its topic, and for each quantity whose role is known the roles it could
have and the right one. Those kept aside never count.
"""

from __future__ import annotations

import json
import sys
from collections.abc import Iterator
from concurrent.futures import ProcessPoolExecutor
from pathlib import Path
from typing import Any

from intents.chart import Chart, chart_of
from intents.encoded import encoder_signs
from intents.learned import Learned, learned
from intents.matcher import speller
from intents.phrases import compiled
from intents.question import Question
from tests.by_answer import records_of, roles_by_answer
from tests.learning import (
    PARAMETERS,
    SUM,
    TENTH,
    Mentioned,
    as_marked,
    beside_a_remark,
    mentioned_in,
    read_plainly,
    roles_in,
    sentences,
)
from tests.understanding import QUESTIONS, judge, lines

PART = 500  # sentences read at once


def examples(folders: list[Path]) -> Iterator[dict[str, Any]]:
    """Every sentence to learn from, read on all cores."""
    known = [*enumerate(sentences(folders))]
    with ProcessPoolExecutor() as cores:
        for found in cores.map(_examples_of, (known[at : at + PART] for at in range(0, len(known), PART))):
            yield from found


def _examples_of(known: list[tuple[int, tuple[str, str, dict[str, Any]]]]) -> list[dict[str, Any]]:
    model = learned()
    assert model is not None
    found: list[dict[str, Any]] = []
    for turn, (line, topic, case) in known:
        chart = chart_of(line, compiled(), speller())
        best = _read_right(line, topic, case)
        if best is None:
            found.append(told(chart, line, topic, roles_of(line, topic, case, model)))
            continue
        found.append(told(chart, line, topic, roles_in(chart, best)))
        if turn % TENTH == 0:
            other, roles = beside_a_remark(line, best, turn)
            found.append(told(other, "", topic, roles))
    return found


def _read_right(line: str, topic: str, case: dict[str, Any]) -> Question | None:
    """What the grammar makes of a sentence, where that gives the right answer."""
    if topic not in PARAMETERS or "marked" in case or "declined" in case or not case or len(lines(case)) > 1:
        return None
    best = read_plainly(line, topic)
    return best if best is not None and any(judge(case, record).grade == "right" for record in records_of(best)) else None


def roles_of(line: str, topic: str, case: dict[str, Any], model: Learned) -> list[Mentioned]:
    """The roles as the writer marked them, or as the answer tells them."""
    if topic not in PARAMETERS or topic == SUM or case.get("topic") != topic or len(lines(case)) > 1:
        return []
    if "marked" in case:
        return as_marked(case)
    found = roles_by_answer(case, PARAMETERS, model) if "value" in case else None
    return list(mentioned_in(*found)) if found else []


def told(chart: Chart, line: str, topic: str, roles: Iterator[Mentioned] | list[Mentioned]) -> dict[str, Any]:
    each = [[*m.key, m.names, m.role] for m in roles]
    return {"line": line, "topic": topic, "signs": [[*sign[:5], *sign.key] for sign in encoder_signs(chart)], "roles": each}


def main() -> None:
    into, folders = Path(sys.argv[1]), [Path(folder) for folder in sys.argv[2:]] or [QUESTIONS]
    with into.open("w", encoding="utf-8") as file:
        for example in examples(folders):
            file.write(json.dumps(example, ensure_ascii=False) + "\n")


if __name__ == "__main__":
    main()
