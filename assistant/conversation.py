"""The conversation: each line of talk becomes one record; what was asked last, what is missing and what the job knows stay.

It works a question in every way it could be meant. Where the ways agree it answers; where they differ it asks, and never
picks one.
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from fractions import Fraction
from typing import Any

from assistant import acts
from assistant.facts import Facts
from assistant.outside import outside_the_job
from assistant.record import Record, blank, given_line, listed, put_asked, put_declined, put_worked
from assistant.ways import Way, chosen_way, same_answer, ways_of, which_way
from intents.matcher import read, read_as
from intents.question import Question, Reading
from solvers.registry import Topic, Worked, load_topics, work_out
from solvers.rounding import SIXTEENTH
from solvers.slots import Given

NEAR = 0.3  # two topics this near in score are both likely
ENOUGH = 0.9  # score of a sentence that stands on its own when a piece was asked for


@dataclass(slots=True)
class Asked:
    """A question as it was worked, for follow-ups, corrections and explaining."""

    topic: Topic
    givens: dict[str, Given]
    tape_step: Fraction = SIXTEENTH
    metric: bool | None = None
    record: Record = field(default_factory=dict)


@dataclass(slots=True)
class Pending:
    """A question that was put back: the topic and its givens so far, and what would settle it."""

    asked: Asked
    wanted: str = ""  # the parameter that is missing
    ways: list[Way] = field(default_factory=list)  # or the ways between which to choose
    topics: list[Question] = field(default_factory=list)  # or the topics between which to choose


@dataclass(slots=True)
class Points:
    """How the notebook files the record being made: its kind, and the entry it points at."""

    kind: str = "question"
    at: str | None = None


class Conversation:
    """One conversation. `facts` outlive it when a job is named; `keeper` writes the notebook before an answer is shown."""

    def __init__(self, job: str | None = None, facts: Facts | None = None, notebook: Any = None) -> None:
        self.job, self.facts, self.notebook = job, facts or Facts(), notebook
        self.topics = load_topics()
        self.parameters = {name: topic.parameters for name, topic in self.topics.items()}
        self.parameters |= {name: act.parameters for name, act in acts.load().items()}
        self.last: Asked | None = None
        self.pending: Pending | None = None
        self.last_record: Record | None = None
        self.step_shown = -1
        self.points = Points()
        self.alternatives: Sequence[tuple[str, str]] = ()

    def answer(
        self, text: str, via: str = "typed", file: str | None = None, alternatives: Sequence[tuple[str, str]] = ()
    ) -> Record:
        """The record of one line. Never raises for anything a person can say.

        `alternatives` are pairs (word, what it may have been) for words that were heard with doubt.
        """
        record = blank(text, via, self.job, file)
        self.points, self.alternatives = Points(), alternatives
        self._answer(record, text)
        self.last_record = record
        return record

    # ── one line ──

    def _answer(self, record: Record, text: str) -> None:
        reading = read(text, self.parameters)
        if reading.broken:
            put_declined(record, reading.broken)
            return
        pending, self.pending = self.pending, None
        if pending and self._settles(record, text, reading, pending):
            return
        questions = [question for question in reading.questions if question.score > 0]
        best = questions[0] if questions else None
        if best is None or (best.topic in acts.CHANGES and self.last):
            if self._changes(record, text, best):
                return
        if best is None:
            self._no_match(record, text, reading)
        elif best.topic in acts.load():
            acts.perform(self, record, best, text)
        else:
            self._work(record, questions)

    def _work(self, record: Record, questions: list[Question]) -> None:
        """Answer the best reading, or ask where another topic is as likely."""
        best = questions[0]
        near = [q for q in questions[1:] if best.score - q.score < NEAR and q.topic in self.topics]
        near = [q for q in near if len(q.missing) <= len(best.missing)]
        ways = self._ways(best) + self._doubted(record["heard"], best)
        if near and not self._agree(ways, near):
            self.pending = Pending(self._asked(best), topics=[best, *near[:2]])
            names = listed(f"{article(q.topic)}" for q in [best, *near[:2]])
            put_asked(record, None, f"Do you mean {names}?")
            return
        self._finish(record, ways, best)

    def _doubted(self, text: str, question: Question) -> list[Way]:
        """The question as it would be with each doubtful word heard the other way."""
        found: list[Way] = []
        for word, other in self.alternatives:
            again = re.sub(rf"\b{re.escape(word)}\b", other, text)
            twin = next((q for q in read(again, self.parameters).questions if q.topic == question.topic), None)
            if twin and twin.givens and not twin.unplaced:
                found += self._ways(twin)[:1]
        return found

    def _agree(self, ways: list[Way], near: list[Question]) -> bool:
        results = [way.worked for way in ways] + [way.worked for q in near for way in self._ways(q)]
        return same_answer(results)

    def _asked(self, question: Question, base: Asked | None = None) -> Asked:
        topic = self.topics[question.topic]
        givens = dict(base.givens) if base and base.topic is topic else {}
        asked = Asked(topic, givens)
        if base:
            asked.tape_step, asked.metric = base.tape_step, base.metric
        if "nearest" in question.manner:
            asked.tape_step = tape_step(question.manner["nearest"])
        if "system" in question.manner:
            asked.metric = question.manner["system"] == "metric"
        return asked

    def _ways(self, question: Question, base: Asked | None = None) -> list[Way]:
        """Every way the question could be meant, each worked."""
        asked = self._asked(question, base)
        source = "earlier" if base is self.last and base else "asked"
        earlier = {name: replace(given, source=source) for name, given in asked.givens.items()
                   if given.source in ("asked", "earlier")}  # fmt: skip
        found = []
        for givens in ways_of(question, asked.topic.parameters):
            merged = self.facts.fill(asked.topic.parameters, {**earlier, **givens})
            worked = work_out(asked.topic, merged, asked.tape_step, asked.metric)
            found.append(Way(replace(asked, givens=merged), worked))
        answered = [way for way in found if not way.worked.refused]
        return answered or found[:1]

    def _finish(self, record: Record, ways: list[Way], question: Question) -> None:
        """Put the one answer, the one question back, or the refusal into the record."""
        first = ways[0]
        worked = first.worked
        if len(ways) > 1 and not same_answer([way.worked for way in ways]):
            self.pending = Pending(first.asked, ways=ways)
            put_asked(record, worked.topic.name, which_way(ways), self._lines(first.worked))
        elif worked.refused:
            self.last = first.asked
            put_declined(record, worked.refused)
        elif worked.asks:
            self.pending = Pending(first.asked, worked.wanted)
            put_asked(record, worked.topic.name, worked.asks, self._lines(worked))
        elif question.unplaced and self._could_matter(question, first):
            self.pending = Pending(first.asked, ways=ways)
            named = listed(question.unplaced, "and")
            put_asked(record, worked.topic.name, f"What is the {named}? I have no place for it in {article(worked.topic.name)}.",
                      self._lines(worked))  # fmt: skip
        else:
            self._answered(record, first, question)

    def _answered(self, record: Record, way: Way, question: Question) -> None:
        put_worked(record, way.worked)
        if question.unplaced:
            record["say"] += f" I did not need the {listed(question.unplaced, 'and')}."
        way.asked.record = record
        self.last, self.step_shown = way.asked, -1

    def _lines(self, worked: Worked) -> list[dict[str, Any]]:
        return [given_line(worked.topic.parameter(given.name).label, given) for given in worked.givens]

    def _could_matter(self, question: Question, way: Way) -> bool:
        """Whether something said and not placed could change the answer: the topic has an open place of its kind."""
        open_ = {p.name for p in way.worked.topic.parameters} - set(question.givens)
        kinds = {way.worked.topic.parameter(name).kind.__name__ for name in open_}
        return bool(kinds & question.unplaced_kinds)

    # ── a piece, a choice, a change ──

    def _settles(self, record: Record, text: str, reading: Reading, pending: Pending) -> bool:
        """Whether the line answers what was asked back; if so it is worked."""
        best = reading.questions[0] if reading.questions else None
        if pending.topics:
            return self._settles_topic(record, text, reading, pending)
        if pending.ways and self._settles_way(record, text, pending):
            return True
        topic = pending.asked.topic
        more = read_as(text, topic.name, self.parameters, wanted=pending.wanted)
        if not more.givens or (best and best.topic != topic.name and best.score > more.score + ENOUGH):
            return False
        if more.unplaced or (pending.wanted and pending.wanted not in more.givens and len(more.unknown) > 1):
            return False
        self._finish(record, self._ways(more, pending.asked), more)
        return True

    def _settles_way(self, record: Record, text: str, pending: Pending) -> bool:
        way = chosen_way(text, pending.ways)
        if way is None:
            return False
        self._finish(record, [way], Question(way.worked.topic.name))
        return True

    def _settles_topic(self, record: Record, text: str, reading: Reading, pending: Pending) -> bool:
        words = text.lower()
        named = [q for q in pending.topics if q.topic in words]
        if not named:
            inside = [q for q in pending.topics if set(words.split()) & set(q.topic.split())]
            named = inside if len(inside) == 1 else []
        if "first" in words.split():
            named = pending.topics[:1]
        elif "second" in words.split() or "other" in words.split():
            named = pending.topics[1:2]
        if not named:
            return False
        self._finish(record, self._ways(named[0]), named[0])
        return True

    def _changes(self, record: Record, text: str, best: Question | None) -> bool:
        """Whether the line changes the question before it ("and at eight twelve?"); if so that is worked again."""
        if self.last is None:
            return False
        more = read_as(text, self.last.topic.name, self.parameters)
        named = best is not None and best.topic in acts.CHANGES
        if not (more.givens or more.manner) or (more.unknown and not named) or more.unplaced:
            return False
        corrected = self.last.record.get("id")
        self._finish(record, self._ways(more, self.last), more)
        if best is not None and best.topic == "correct" and corrected:
            self.points = Points("correction", corrected)
        return True

    def _no_match(self, record: Record, text: str, reading: Reading) -> None:
        put_declined(record, outside_the_job(text, reading, self.topics))


def article(name: str) -> str:
    """a rake return, an end gap."""
    return f"{'an' if name[0] in 'aeiou' else 'a'} {name}"


def tape_step(value: Any) -> Fraction:
    """The tape fraction a person asked for: 1/32, or "32nd" heard as 32."""
    size = Fraction(value)
    return 1 / size if size > 1 else size
