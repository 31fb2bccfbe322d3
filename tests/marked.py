"""Questions whose quantities are marked with their roles: `python -m tests.marked FOLDER INTO` makes cases of them.

A line is a topic, a tab, and a sentence in which each quantity that has a role stands as [words|parameter]. The value is
worked from the marks by the topic's own function (tested against published values elsewhere), so such a case tests how the
sentence is understood and nothing else. Learning takes the roles as they are marked.
"""

from __future__ import annotations

import json
import re
import sys
from collections import Counter
from collections.abc import Iterable
from dataclasses import replace
from pathlib import Path
from typing import Any, NamedTuple

from assistant.conversation import Conversation
from intents.chart import Chart, chart_of
from intents.consulting import OUTSIDE
from intents.features import Mention, mentions
from intents.learned import NOTHING
from intents.matcher import read, speller
from intents.phrases import compiled
from intents.placing import heard_as
from intents.question import Heard, Question
from intents.second_reader import GATHERED, Sentence, each_of, give, prepared
from intents.second_sums import TOPIC as SUM
from solvers.quantities import Quantity
from solvers.registry import load_topics
from tests.by_answer import records_of
from tests.marked_sums import SLIGHT, Summed, as_marked, sum_question

PARAMETERS = {name: topic.parameters for name, topic in load_topics().items()}
FAMILY = {name: topic.family for name, topic in load_topics().items()} | {"height of courses": "courses"}
FILED = {"takeoff": "quantities"}  # families whose questions are filed under another name
MARK = re.compile(r"\[([^\[\]|]+)\|([^\[\]|]+)\]")
NO_WAY = "lands on"  # of a refusal that is right: no exposure that is allowed lands on the openings
UNITS = frozenset("deg degree degrees ° mm in inch inches ft foot feet m pct percent % sq square per".split())
SURE_UNIT = 0.5  # of a reading whose unit was left outside its mark
HALVED = f"{SUM} half"  # the topic of a sum that is halved, as it stands in a file


class Mark(NamedTuple):
    """Characters start to end of the plain sentence and the parameter they give."""

    start: int
    end: int
    role: str


class Told(NamedTuple):
    """A sentence with its quantities and the role of each."""

    question: Question
    sentence: Sentence
    roles: tuple[str, ...]


def plain(marked: str) -> tuple[str, list[Mark]]:
    """The sentence without its marks, and where they were."""
    text, marks, at = "", [], 0
    for found in MARK.finditer(marked):
        text += marked[at : found.start()]
        marks.append(Mark(len(text), len(text) + len(found[1]), found[2]))
        text += found[1]
        at = found.end()
    return text + marked[at:], marks


def told(topic: str, marked: str) -> list[Told]:
    """The sentence with its roles as marked: beside the lists and choices of the grammar's reading, then without.

    Raises ValueError with what is wrong, where a mark is no quantity that its role could take.
    """
    line, marks = plain(marked)
    kinds = {p.name: p.kind for p in PARAMETERS[topic]}
    if strange := {mark.role for mark in marks} - kinds.keys():
        raise ValueError(f"{topic} has no {', '.join(strange)}")
    chart = chart_of(line, compiled(), speller())
    marks = [_with_unit(chart, mark) for mark in marks]
    first = next((q for q in read(line, PARAMETERS, seconds=False).questions if q.topic == topic), None)
    spans = {span for mark in marks if (span := _tokens(chart, mark))}
    found: list[Told] = []
    for start in (first, None) if first else (None,):
        question, sentence = prepared(chart, compiled(), topic, PARAMETERS[topic], start)
        marked_roles = {m.role for m in marks}
        own = {n: h for n, h in question.givens.items() if n not in marked_roles or (kinds[n] is tuple and n not in GATHERED)}
        own |= {m.role: h for m in marks if m.role not in own and (h := _listed(chart, topic, m))}
        question = replace(question, givens=own, swaps=[])
        held = [mark for mark in marks if mark.role in own]
        outside = [m for m in mentions(chart, 0, spans) if not any(_inside(chart, m, mark) for mark in held)]
        open_to = {p.name: each_of(p) for p in PARAMETERS[topic] if p.name not in own}
        sentence = sentence._replace(found=outside, by_name=open_to)
        roles = tuple(_role(chart, mention, marks) for mention in outside)
        _all_read(chart, outside, [mark for mark in marks if mark not in held])
        given = dict(question.givens)
        give(sentence, given, roles)
        if lost := {mark.role for mark in marks} - given.keys():
            raise ValueError(f"{', '.join(lost)} not read")
        found.append(Told(replace(question, givens=given), sentence, roles))
    return found


def summed(marked: str, half: bool = False) -> Summed:
    """The sum as marked. Raises ValueError."""
    line, marks = plain(marked)
    chart = chart_of(line, compiled(), speller())
    places = [(_tokens(chart, mark), mark.role) for mark in marks]
    if not all(place for place, _ in places):
        raise ValueError("a mark holds no word")
    return as_marked(chart, [(*place, role) for place, role in places if place], half)


def _tokens(chart: Chart, mark: Mark) -> tuple[int, int] | None:
    inside = [i for i, t in enumerate(chart.tokens) if mark.start <= t.start and t.end <= mark.end]
    return (inside[0], inside[-1] + 1) if inside else None


def _with_unit(chart: Chart, mark: Mark) -> Mark:
    """The mark with the unit that was left outside it: [92|corner] deg, [60|share] pct."""
    start, end = _tokens(chart, mark) or (0, 0)
    here = (r for r in chart.readings[start] if isinstance(r.value, Quantity) and r.sure >= SURE_UNIT)
    ends = [r.end for r in here if set(chart.words[end : r.end]) <= UNITS]
    return mark._replace(end=max([mark.end, *(chart.tokens[at - 1].end for at in ends if at > end)]))


def _all_read(chart: Chart, found: list[Mention], marks: list[Mark]) -> None:
    """Each mark must be one quantity, but for a word or two. Raises ValueError: "inch and three quarter" read as the 3/4."""
    for mark in marks:
        start, end = _tokens(chart, mark) or (0, 0)
        inside = {at for m in found if _inside(chart, m, mark) for at in range(m.reading.start, m.reading.end)}
        left = [chart.words[at] for at in range(start, end) if at not in inside]
        if not inside or not set(left) <= SLIGHT:
            raise ValueError(f"read only in part: {chart.said(start, end)}")


def _listed(chart: Chart, topic: str, mark: Mark) -> Heard | None:
    """A list of pieces or openings as marked."""
    parameter = next(p for p in PARAMETERS[topic] if p.name == mark.role)
    if parameter.kind is not tuple or mark.role in GATHERED:
        return None
    start, end = _tokens(chart, mark) or (0, 0)
    there = [r for r in chart.readings[start] if r.end == end and isinstance(r.value, tuple)]
    return next((h for r in there if (h := heard_as(chart, parameter, r, False))), None)


def _inside(chart: Chart, mention: Mention, mark: Mark) -> bool:
    return mark.start <= chart.tokens[mention.reading.start].start and chart.tokens[mention.reading.end - 1].end <= mark.end


def _role(chart: Chart, mention: Mention, marks: list[Mark]) -> str:
    return next((mark.role for mark in marks if _inside(chart, mention, mark)), NOTHING)


def case_of(topic: str, marked: str) -> dict[str, Any]:
    """The case of one line. Raises ValueError where the marks give no answer, or two."""
    line, _ = plain(marked)
    if topic == OUTSIDE:
        return {"ask": line, "declined": ""}
    if topic in (SUM, HALVED):
        ways = [sum_question(summed(marked, topic == HALVED))]
    else:
        ways = [each.question for each in told(topic, marked)]
    records = [record for way in ways for record in records_of(way)]
    answers = {(record["answer"]["value"], record["answer"]["unit"], record["answer"]["text"]) for record in records}
    case: dict[str, Any] = {"ask": line, "topic": topic.removesuffix(" half"), "marked": marked}
    case |= {"half": True} if topic == HALVED else {}
    if not answers:
        refused = next((way.worked.refused for q in ways for way in Conversation().ways(q)[:1] if way.worked.refused), "")
        if refused and NO_WAY not in refused:
            raise ValueError(f"refused: {refused}")
        return case | ({"declined": ""} if refused else {"asks": ""})
    if len(answers) > 1:
        raise ValueError(f"two answers: {answers}")
    ((value, unit, text),) = answers
    return case | ({"value": value, "unit": unit} if value is not None else {"word": text.split()[0]})


def gather(files: Iterable[Path]) -> tuple[dict[str, list[dict[str, Any]]], list[str]]:
    """Cases by family, and the lines of which none can be made, each with the reason."""
    cases: dict[str, list[dict[str, Any]]] = {}
    faults: list[str] = []
    for file in files:
        for line in filter(None, map(str.strip, file.read_text(encoding="utf-8").splitlines())):
            topic, _, marked = line.partition("\t")
            try:
                if topic not in PARAMETERS and topic not in (OUTSIDE, HALVED):
                    raise ValueError(f"no topic {topic}")
                family = FAMILY.get(topic.removesuffix(" half"), topic)
                cases.setdefault(FILED.get(family, family), []).append(case_of(topic, marked))
            except ValueError as fault:
                faults.append(f"{fault}: {line}")
    return cases, faults


def main() -> None:
    folder, into = map(Path, sys.argv[1:3])
    cases, faults = gather(sorted(folder.rglob("*.txt")))
    into.mkdir(parents=True, exist_ok=True)
    for family, found in cases.items():
        text = "".join(json.dumps(case, ensure_ascii=False) + "\n" for case in found)
        (into / f"{family}.jsonl").write_text(text, encoding="utf-8")
    print(*faults, sep="\n")
    kinds = Counter(fault.split(":")[0] for fault in faults).most_common(8)
    print(f"{sum(map(len, cases.values()))} cases, {len(faults)} lines without: {kinds}")


if __name__ == "__main__":
    main()
