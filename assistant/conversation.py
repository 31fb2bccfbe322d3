"""The conversation: each line becomes one record; what was asked last, what is missing and what the job knows stay.

It works a question in every way it could be meant. Where the ways agree it answers; where they differ it asks, and
never picks one. Talk about the job goes to its act, a reply to replies.py, a change of the last question to changes.py.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from itertools import takewhile
from typing import Any

from assistant import acts, at_the_saw, changes, choices, context, from_last, hearing, replies, taken_over, to_remember
from assistant.claims import hold_against
from assistant.facts import Facts, places
from assistant.going_back import remember
from assistant.heard_all import denied
from assistant.idle import of_no_effect
from assistant.joined_reply import joined_reply
from assistant.kind_asked import hold_to_what_is_asked
from assistant.likely_change import as_is_likely
from assistant.line_apart import without_opening
from assistant.marks_told import markable
from assistant.names import article, by_its_name, meant
from assistant.of_the_one_before import of_the_one_before
from assistant.openings_told import ask_their_size
from assistant.outside import in_other_words, outside_the_job
from assistant.pending import Asked, Pending, Points
from assistant.record import Record, blank, given_lines, leave_out, listed, put_asked, put_declined, put_worked, said_as, the_same
from assistant.running import running
from assistant.several import worked_out
from assistant.shown import shows
from assistant.still_open import goes_on_from, hold_to_what_fell
from assistant.tail_clauses import look_past_remarks
from assistant.taken_first import TAKEN_FIRST
from assistant.told_in_parts import told_in_parts
from assistant.told_round import COSTLY, MOST_HEARD, TAKES, look_past_story, may_read, state_of
from assistant.two_changes import two_changes
from assistant.units_kept import on_known_scale, units_as_before
from assistant.usual import is_it_meant, unusual
from assistant.ways import Way, adds, same_answer, still_either, sureness, tape_step, ways_of, which_way
from intents.asks_nothing import asks_nothing
from intents.elsewhere import of_another
from intents.matcher import read
from intents.question import Question, Reading
from intents.talk import Said
from solvers.quantities import Quantity
from solvers.registry import load_topics
from solvers.slots import Given, said_anew

NEAR, LEVEL = 0.3, 0.12  # two topics this near in score are both likely; and equally so
STATED = frozenset(("remember", "compare"))  # talk that a story is taken for
NOTHING_ASKED = "I hear nothing to work out in that: ask me for something, as in “what is the miter for a 92 degree corner”"


class Conversation:
    """One conversation. `facts` outlive it when a job is named; the `notebook` is only read (`writes`: it is on)."""

    def __init__(self, job: str | None = None, facts: Facts | None = None, notebook: Any = None, writes: bool = False) -> None:
        self.job, self.facts, self.notebook, self.writes = job, facts or Facts(), notebook, writes
        self.topics = load_topics()
        self.parameters = {name: topic.parameters for name, topic in self.topics.items()}
        self.places = places(self.topics.values())
        self.last: Asked | None = None  # the question before this
        self.earlier: list[Asked] = []  # those that were answered
        self.pending: Pending | None = None  # what was put back and waits
        self.waiting: Pending | None = None  # and what did, while another question was worked
        self.shown: dict[str, Any] | None = None  # the one value that the line before read back
        self.records: list[Record] = []
        self.target: Record | None = None  # what "flag that" means
        self.marked: Record | None = None  # the last flag or tag
        self.pointed: list[tuple[str, Record, Record]] = []  # flag, tag or note, the entry it is on, and its own
        self.just_kept: dict[str, Quantity | None] = {}  # names kept by the line before, and what they were
        self.kept_by: list[tuple[Record, dict[str, Quantity | None]]] = []  # the same of every line that kept something
        self.statements: list[Said] = []  # of a line that says several things to keep
        self.told: list[str] = []  # lines before this that stated measurements and asked nothing
        self.chosen: list[str] = []  # choices that were stated, the last first
        self.step_shown = self.mark_called = -1
        self.points = Points()
        self.reads: dict[str, Reading] = {}  # what was read for the line being answered
        self.taken = 0  # what it took so far, in signs that were taken as a line
        self.alternatives: Sequence[tuple[str, str]] = ()

    def answer(
        self, text: str, via: str = "typed", file: str | None = None, alternatives: Sequence[tuple[str, str]] = ()
    ) -> Record:
        """The record of one line. Never raises for anything a person can say.

        `alternatives` are pairs (word, what it may have been) for words that were heard with doubt.
        """
        record = blank(text, via, self.job, file)
        self.points, self.alternatives, self.reads, self.taken = Points(), alternatives, {}, 0
        waited, before, state = self.pending, self.last, state_of(self)
        self.take(record, without_opening(text, self.last, self.pending is not None))
        look_past_remarks(self, record, text, state)
        at_the_saw.go_on_at_the_saw(self, record, waited)
        if context.may_be_joined(self, record, text):
            asked = self.pending
            context.joined(self, record, text)
            at_the_saw.go_on_at_the_saw(self, record, asked)
        if waited is None and before is None:
            look_past_story(self, record, text)
        ask_their_size(self, record, text)
        taken_over.taken_over(self, record, text, waited)
        told_in_parts(self, record, text, waited)
        for look in (joined_reply, as_is_likely, two_changes, of_the_one_before, hold_to_what_is_asked, hold_to_what_fell):
            look(self, record, text, state)
        context.keep_in_mind(self, record, text, waited)
        if self.pending and record["outcome"] == "asks" and not self.pending.question:
            self.pending.question = record["ask"]
        self._remember_record(record)
        shows(self, record)
        return record

    def strike(self, record: Record) -> None:
        """Take a record out of what "that" means; the one before it is meant next."""
        self.last = None if self.last and self.last.record is record else self.last
        self.records = [kept for kept in self.records if kept is not record]
        self.target = next((kept for kept in reversed(self.records) if markable(kept)), None)

    def _remember_record(self, record: Record) -> None:
        self.records.append(record)
        if record["topic"] in ("flag", "tag"):
            self.marked = record
        if markable(record) and record["topic"] != "strike":
            self.target = record

    def read(self, text: str) -> Reading:
        """Words as a question; each text once a line, which is asked again beside what was stated before it."""
        if text not in self.reads:
            found = self.reads[text] = read(text, self.parameters)
            named = by_its_name(text, self.topics)
            found.questions = [named] if named else found.questions
        return self.reads[text]

    def take(self, record: Record, text: str) -> None:
        """Fill in the record of one line, as whatever it is."""
        reading, self.taken = self.read(text), self.taken + TAKES + len(text)
        if reading.broken:
            put_declined(record, reading.broken)
            return
        if goes_on_from(self, record, text, TAKEN_FIRST):
            return
        questions = [q for q in reading.questions if q.score > 0 and not (self.last and denied(text, q.givens.values()))]
        said = hearing.talk_in(self, text, reading, questions)
        if self._acted_first(record, said, text, questions):
            return
        if reading.too_long and said is None:
            put_declined(record, reading.too_long)
            return
        pending, self.pending = self.pending, None
        if pending and replies.settle(self, record, text, reading, pending):
            return
        if (questions or said) and self._told_only(said, text):
            put_declined(record, NOTHING_ASKED)
            return
        if said and self._acted_after(record, said, text, questions):
            return
        if at_the_saw.ask_the_saw(self, record, text) or from_last.of_the_last(self, record, text):
            return
        if context.rather_joined(self, record, text, questions) or changes.change(self, record, text, said, questions):
            return
        alone = said is None and changes.of_numbers_alone(self, record, text, questions)
        if alone or ((not questions or questions[0].missing) and choices.keep_choice(self, record, text)):
            return
        if questions and not self._vain(said, questions[0]) and not in_other_words(text, reading):
            self.work(record, questions, said)
        else:
            self._no_match(record, text, reading, said)

    def _acted_first(self, record: Record, said: Said | None, text: str, questions: list[Question]) -> bool:
        """What no reply could be: another trade's work; marks, reading back, explaining; a value of another name."""
        maybe = said is None or said.loose or said.topic in acts.CHANGES
        maybe = maybe or (said is not None and said.topic == "remember" and hearing.asks_too(text))
        plain = bool(questions) and questions[0].whole and len(questions[0].words) >= hearing.PLAIN
        other = of_another(text, questions[0] if plain else None) if maybe else None
        if other is not None:
            return acts.perform(self, record, other, text)
        if said is None or said.loose or said.topic in acts.CHANGES:
            return False
        if said.topic not in acts.VALUES:
            return acts.perform(self, record, said, text)
        if self.pending is None or not replies.tells_another(self, said, text, self.pending):
            return False
        self._tell_meanwhile(record, said, text)
        return True

    def _told_only(self, said: Said | None, text: str) -> bool:
        """Whether the line is a story that asks for nothing; after a question it may be a change of that, told as one."""
        if self.last is not None or self.told or not (said is None or said.topic in STATED):
            return False
        return asks_nothing(text)

    def _tell_meanwhile(self, record: Record, said: Said, text: str) -> None:
        """Keep a value that was told while a question for another is open, and leave that open."""
        open_, self.just_kept = self.pending, {}
        acts.perform(self, record, said, text)
        if open_ is not None and self.pending is open_ and open_.question:
            record["say"] += f" Still open: {open_.question}"

    def _acted_after(self, record: Record, said: Said, text: str, questions: list[Question]) -> bool:
        """Talk that holds a value, once it is no reply; loose talk, once it is no question."""
        if said.topic in acts.CHANGES or (said.loose and not self._loosely(said, questions)):
            return False
        if said.topic in acts.VALUES and replies.doubted(self, record, text):
            return True
        if hearing.rather_a_change(self.last, said, text) and changes.change(self, record, text, None, questions):
            return True
        if said.topic == "remember":
            self.just_kept = {}
        return acts.perform(self, record, said, text)

    def _loosely(self, said: Said, questions: list[Question]) -> bool:
        """Whether talk that could be more goes ahead: no question is whole, and no change is likelier."""
        best = questions[0] if questions else None
        if said.topic in ("explain", "compare", "note", "review"):
            if said.topic == "explain" and hearing.asks_with_a_number(best):
                return False
            return best is None or bool(best.missing)
        if said.topic == "remember" and not self.last:  # "roof 6/12" asks nothing, "gap behind cladding 12 mm" does
            whole = best is not None and best.whole
            return best is None or not (whole or set(best.topic.split()) <= set(best.words))
        return best is None and said.topic != "remember"

    def _no_match(self, record: Record, text: str, reading: Reading, said: Said | None) -> None:
        if to_remember.noted_as_told(self, record, text):
            return
        if said is None or not hearing.nothing_to_change(self.last, said) or not acts.perform(self, record, said, text):
            put_declined(record, outside_the_job(text, reading, self.topics))

    def _vain(self, said: Said | None, best: Question) -> bool:
        """Whether the line wants a question changed that was never asked, or changed how can't be told."""
        if self.last is not None and said is not None and said.topic in acts.CHANGES and not best.words:
            return True  # numbers alone, and words that lead to a change
        if said is None or said.topic not in acts.CHANGES or said.loose or self.last is not None:
            return False
        rest = self.read(said.words.get("rest", "")).questions
        return not any(question.score > 0 and question.words for question in rest)

    # ── a question ──

    def work(self, record: Record, questions: list[Question], said: Said | None = None) -> None:
        """Answer the best reading, or ask where another topic is as likely."""
        best = questions[0]
        near = [q for q in questions[1:] if best.score - q.score < NEAR and q.topic in self.topics]
        near = [q for q in near if len(q.missing) <= len(best.missing) + best.lacking and sureness(q) >= sureness(best) - NEAR]
        best, near = self._whole_first(best, near)
        follows = (said is not None and said.topic == "follow-up" and not said.loose) or hearing.same_as_before(record["heard"])
        same = not follows and self.of_the_same(best)
        carry = self.last if follows or same else None
        pointed = from_last.pointed(self, record["heard"], best)
        near = [] if pointed else near  # what it lacks alone was worked right before
        ways = self.ways(best, pointed or carry)
        vain = all(self._first(q).worked.refused for q in (best, *near))  # no reading can be right
        unsure = bool(best.lacking or (near and not vain))  # half its words told no topic
        apart = unsure and not (near and self._agree(ways, near))
        if not apart:  # those that differ agree no better with more
            ways += self._doubted(record["heard"], best)
            apart = unsure and not self._agree(ways, near)
        if apart:
            if to_remember.noted_as_told(self, record, record["heard"]):
                return
            self.pending = Pending(self.asked(best), topics=[best, *near[:2]])
            put_asked(record, None, f"Do you mean {meant([best, *near[:2]], self.topics)}?")
            return
        self.finish(record, units_as_before(ways, self.earlier), best)
        if (same or pointed) and record["outcome"] == "answered":
            record["say"] = the_same(record) + record["say"]

    def of_the_same(self, question: Question) -> bool:
        """Whether all that a question lacks was given to the one before, under the names that values are kept by: the pitch."""
        if self.last is None or not question.missing or question.topic == self.last.topic.name or question.lacking:
            return False
        parameters = self.topics[question.topic].parameters
        carried = from_last.carried(self.last, parameters)
        return set(question.missing) <= carried.keys()

    def _whole_first(self, best: Question, near: list[Question]) -> tuple[Question, list[Question]]:
        """Without the near ones that lack a piece or can't be, where the best (or one as good) comes to an answer."""
        whole = [q for q in (best, *near) if near and self._first(q).worked.working]
        vain = best not in whole and bool(self._first(best).worked.refused)
        if (best.lacking and best in whole) or not whole or best.score - whole[0].score > LEVEL or (vain and whole[0].rival):
            return best, near
        return whole[0], whole[1:]

    def _doubted(self, text: str, question: Question) -> list[Way]:
        """The question as it would be with each doubtful word heard the other way."""
        found: list[Way] = []
        for again in takewhile(lambda line: may_read(self, line, MOST_HEARD), replies.other_lines(text, self.alternatives)):
            twin = next((q for q in self.read(again).questions if q.topic == question.topic), None)
            if twin and twin.givens and not twin.unplaced:
                found += self.ways(twin)[:1]
        return found

    def _agree(self, ways: list[Way], near: list[Question]) -> bool:
        results = [way.worked for way in ways]
        for question in near:
            if not same_answer([*results, self._first(question).worked]):  # no more of its ways bring them together
                return False
            results += [way.worked for way in self.ways(question)]
        return same_answer(results)

    def asked(self, question: Question, base: Asked | None = None) -> Asked:
        """The question's topic with what is known of it: the givens of `base`, where that is about the same."""
        topic = self.topics[question.topic]
        givens = dict(base.givens) if base and base.topic is topic else from_last.carried(base, topic.parameters) if base else {}
        asked = Asked(topic, givens)
        if base:
            asked.tape_step, asked.metric = base.tape_step, base.metric
            told = {name for name, given in base.givens.items() if given.source != "assumed"}
            if base.topic is topic:
                asked.past = (*base.past, {name: given.value for name, given in base.givens.items()})
            keeps = base.topic is topic and not told <= question.givens.keys() and isinstance(base.times, int)
            keeps = keeps or (base.topic is topic and question.givens.keys() <= {"to"})  # only another unit
            asked.times = base.times if keeps else 1  # a half, or ten percent more, was of that answer alone
            asked.plus = base.plus if base.topic is topic and question.givens.keys() <= {"openings", "opened"} else asked.plus
        if "nearest" in question.manner:
            asked.tape_step = tape_step(question.manner["nearest"])
        if "system" in question.manner:
            asked.metric = question.manner["system"] == "metric"
        return asked

    def ways(self, question: Question, base: Asked | None = None) -> list[Way]:
        """Every way the question could be meant, each worked."""
        found = list(self._each_way(question, base))
        answered = [way for way in found if not way.worked.refused]
        if question.rival and found[0].worked.refused:  # what the words say is impossible: no other reading puts that right
            return found[:1]
        # Where what the job knows makes one way whole, a way that says it again and lacks something else was not meant.
        whole = [way for way in answered if way.worked.working]
        known = any(given.source == "job" for way in whole for given in way.asked.givens.values())
        return (whole if known else answered) or found[:1]

    def _first(self, question: Question) -> Way:
        """The first of its ways, with no more of them worked than that takes: a take-off has up to ten."""
        if self.facts.values:
            return self.ways(question)[0]
        found = self._each_way(question)
        first = next(found)
        if question.rival or not first.worked.refused:
            return first
        return next((way for way in found if not way.worked.refused), first)

    def _each_way(self, question: Question, base: Asked | None = None) -> Iterator[Way]:
        asked = self.asked(question, base)
        source, told = "earlier" if base else "asked", ("asked", "earlier")
        earlier = {name: replace(given, source=source) for name, given in asked.givens.items() if given.source in told}
        known = on_known_scale(question, earlier, asked.topic, self.facts.values, self.earlier)
        for givens in ways_of(known, asked.topic.parameters, earlier):
            yield self.worked(asked, running(asked.topic, said_anew(asked.topic.parameters, earlier, givens), self.last))

    def worked(self, asked: Asked, givens: dict[str, Given]) -> Way:
        """One way worked, with what the job knows; what a question may do without must not change its answer."""
        givens, self.taken = choices.with_choices(self, asked.topic, givens), self.taken + COSTLY.get(asked.topic.name, 0)
        full, lean = (self.facts.fill(asked.topic.parameters, givens, lean) for lean in (False, True))
        way = Way(replace(asked, givens=full), worked_out(asked, full))
        if lean == full:
            return way
        other = Way(replace(asked, givens=lean), worked_out(asked, lean))
        return way if adds(way.worked, other.worked) else other

    def finish(self, record: Record, ways: list[Way], question: Question) -> None:
        """Put the one answer, the one question back, or the refusal into the record."""
        first = ways[0]
        worked = first.worked
        if len(ways) > 1 and not same_answer([way.worked for way in ways]):
            self.pending = Pending(first.asked, ways=ways)
            put_asked(record, worked.topic.name, which_way(ways), given_lines(first.worked.topic, first.worked.givens))
        elif worked.refused:
            self.last, self.just_kept = None if question.unplaced else first.asked, {}  # a change of it would let those fall
            first.asked.record = record
            put_declined(record, worked.refused)
        elif name := unusual(first.asked, bool(worked.asks)):
            sure = replace(first, asked=replace(first.asked, meant=first.asked.meant | {name}))
            self.pending = Pending(first.asked, wanted=name, ways=[sure])
            sentence = is_it_meant(worked.topic.parameter(name), first.asked.givens[name])
            put_asked(record, worked.topic.name, sentence, given_lines(worked.topic, worked.givens))
        elif worked.asks:
            left = [*question.unplaced, *question.left]  # which is said once the answer comes
            self.pending = Pending(first.asked, worked.wanted, alike=still_either(ways), left=left)
            put_asked(record, worked.topic.name, worked.asks, given_lines(worked.topic, worked.givens))
        elif unplaced := question.unplaced or of_no_effect(first.asked, worked):
            self.pending = Pending(first.asked, ways=ways, left=unplaced)
            doubt = f"What is the {listed(unplaced, 'and')}? I have no place for it in {article(worked.topic.name)}."
            put_asked(record, worked.topic.name, doubt, given_lines(worked.topic, worked.givens))
        else:
            self._answered(record, first, question)

    def _answered(self, record: Record, way: Way, question: Question) -> None:
        put_worked(record, way.worked)
        record["say"] += said_as(way.worked)
        leave_out(record, question.left)
        hold_against(record, question.claim)
        way.asked.record = record
        way.asked.text = way.asked.text or record["heard"]
        self.last, self.step_shown, self.mark_called, self.just_kept = way.asked, -1, -1, {}
        remember(self, way.asked)
