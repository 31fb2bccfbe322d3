"""Roles told by the answer: where the grammar misreads a sentence, the way to hand out its quantities that gives the right one.

Learning from what the grammar reads right teaches the second reader what is known already; these are the sentences it is for.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from typing import Any

from assistant.conversation import Conversation
from assistant.record import blank, put_worked
from intents.chart import chart_of
from intents.learned import NOTHING, Learned
from intents.matcher import read, speller
from intents.phrases import compiled
from intents.question import Question
from intents.second_reader import MOST_MENTIONS, Sentence, give, prepared, roles_of, ways_of
from solvers.slots import Parameter
from solvers.sums import Sum
from tests.understanding import judge, lines

WIDTH = 48  # ways that are worked


def roles_by_answer(
    case: dict[str, Any], parameters: dict[str, tuple[Parameter, ...]], model: Learned
) -> tuple[Sentence, tuple[str, ...]] | None:
    """The sentence and the likeliest roles that give the case's answer, or None where no way does."""
    topic, (line,) = case["topic"], lines(case)
    if any(p.kind is Sum for p in parameters[topic]):
        return None
    chart = chart_of(line, compiled(), speller())
    reading = read(line, parameters, seconds=False)
    first = next((q for q in reading.questions if q.topic == topic), None)
    for start in (first, None) if first else (None,):
        question, sentence = prepared(chart, compiled(), topic, parameters[topic], start)
        if not 0 < len(sentence.found) <= MOST_MENTIONS:
            continue
        for _, roles in ways_of(roles_of(sentence, model), WIDTH):
            if set(roles) != {NOTHING} and _gives(case, question, sentence, roles):
                return sentence, roles
    return None


def _gives(case: dict[str, Any], question: Question, sentence: Sentence, roles: tuple[str, ...]) -> bool:
    """Whether the quantities in these roles give the answer that is right."""
    givens = dict(question.givens)
    give(sentence, givens, roles)
    return any(judge(case, record).grade == "right" for record in records_of(replace(question, givens=givens, swaps=[])))


def records_of(question: Question) -> Iterator[dict[str, Any]]:
    """The record of a question that can be answered."""
    for way in Conversation().ways(question)[:1]:
        if way.worked.working:
            record = blank("", "typed", None, None)
            put_worked(record, way.worked)
            yield record
