"""Where the grammar's reading and the second reader's are held against each other, and which one goes on.

A sentence that a rule fits whole goes on as the rule reads it, unless the second reader is all but sure that it is about
something else. Otherwise the likeliest topic is read again with each quantity in its likeliest role.
"""

from __future__ import annotations

from intents.chart import Chart
from intents.features import of_sentence
from intents.learned import Learned
from intents.phrases import Phrases
from intents.question import Question, Reading
from intents.second_reader import Second, read_again
from solvers.slots import Parameter

DOUBTED = 0.05  # a topic less likely than this is doubted though a rule fits
CERTAIN = 0.9  # the share from which on the second reader's topic goes before a rule that fits
LIKELY = 0.5  # the share from which on a topic is read again
ROLES = 0.5  # how sure the roles must be, to be answered by
AHEAD = 3.0  # score of a reading by the second reader over the grammar's


def consult(
    reading: Reading, chart: Chart, phrases: Phrases, topics: dict[str, tuple[Parameter, ...]], model: Learned
) -> None:  # fmt: skip
    """Put the reading's questions right by what sentences like this one meant."""
    top = next((question for question in reading.questions if question.score > 0), None)
    if top is not None and (top.topic not in model.topics or top.claim):
        return
    likely = model.likely(of_sentence(chart, phrases))
    best = max(likely, key=lambda topic: likely[topic])
    reading.trace.append(f"second reader: {best} {likely[best]:.2f}")
    fits = top is not None and plain(top)
    if fits and (likely[top.topic] >= DOUBTED or likely[best] < CERTAIN):  # type: ignore[union-attr]
        return
    if likely[best] < LIKELY:
        return
    if best not in topics:
        if not fits or likely[best] >= CERTAIN:
            reading.questions = []
        return
    first = next((q for q in reading.questions if q.topic == best), None)
    second = read_again(chart, phrases, model, best, topics[best], first)
    if second is not None and better(second, first, likely[best]):
        second.question.score = AHEAD + max(0.0, top.score if top else 0.0)
        reading.questions = [second.question]


def better(second: Second, first: Question | None, likely: float) -> bool:
    question = second.question
    if first is None or first.score <= 0:
        return not (question.missing or question.unplaced) or likely >= CERTAIN
    rest = len(question.missing) + len(question.unplaced)
    return rest < len(first.missing) + len(first.unplaced) + bool(first.lacking) + bool(first.swaps)


def plain(question: Question) -> bool:
    """Whether a rule fits whole: nothing missing, nothing left over, no two ways."""
    return not (question.missing or question.unplaced or question.lacking or question.swaps)
