"""How a sentence was read, for the person who mends a grammar: tokens, quantities, candidates and their scores."""

from __future__ import annotations

from assistant.facts import places
from assistant.record import value_line
from intents.chart import chart_of
from intents.elsewhere import outside_of
from intents.matcher import read, speller
from intents.phrases import compiled
from intents.question import Question
from intents.talk import talk_of
from solvers.registry import load_topics


def why_match(text: str) -> str:
    """A page of plain text."""
    parameters = {name: topic.parameters for name, topic in load_topics().items()}
    phrases = compiled()
    chart = chart_of(text, phrases, speller())
    lines = ["tokens: " + " | ".join(chart.words)]
    lines += [f"slip forgiven: {typed} → {word}" for typed, word in chart.changed]
    for row in chart.readings:
        for reading in row:
            lines.append(f"  {chart.said(reading.start, reading.end)!r} as {reading.kind}, sure {reading.sure:.2f}")
    for start, row_of_classes in enumerate(chart.classes):
        lines += [f"  {chart.said(start, end)!r} as {name}" for name, end in row_of_classes]
    lines += _talk(text)
    reading_of = read(text, parameters)
    lines += reading_of.trace
    lines.append("candidates:" if reading_of.questions else "candidates: none")
    for question in reading_of.questions:
        lines += _candidate(question)
    lines.append(f"nearest topics by their words: {', '.join(reading_of.near) or 'none'}")
    return "\n".join(lines)


def _talk(text: str) -> list[str]:
    """The line as talk about the job, or as another trade's."""
    found = {"talk": talk_of(text, places(load_topics().values())), "other trades": outside_of(text)}
    return [f"{name}: {said.topic} {dict(said.words)}" for name, said in found.items() if said is not None]


def _candidate(question: Question) -> list[str]:
    lines = [f"  {question.score:6.2f}  {question.topic}   (words: {' '.join(question.words)})"]
    for name, heard in question.givens.items():
        others = "".join(f" or {value_line(other)[2]}" for other in heard.others)
        lines.append(
            f"          {name} = {value_line(heard.value)[2]}{others}, sure {heard.sure:.2f}, from {heard.text!r}"
        )
    for label, items in (
        ("missing", question.missing),
        ("no place for", question.unplaced),
        ("unknown", question.unknown),
    ):
        if items:
            lines.append(f"          {label}: {', '.join(items)}")
    if question.swaps:
        lines.append(f"          could be swapped {len(question.swaps)} ways")
    return lines
