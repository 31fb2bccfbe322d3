"""Remember, recall and forget: values said once for the job."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.acts import Talk, act
from assistant.acts.explaining import told_line
from assistant.acts.manners import why_needed
from assistant.asked_after import asked_after
from assistant.facts import value_for
from assistant.pending import Asked, Pending
from assistant.record import listed, put_asked, put_declined, put_noted
from assistant.usual import unusual
from intents.expressions import expression
from intents.question import Heard, Question
from intents.reading import Reading
from solvers.errors import Refusal
from solvers.quantities import Pitch, Quantity
from solvers.rounding import SIXTEENTH, reading

if TYPE_CHECKING:
    pass

EVERYTHING = "everything"
# The roof's got 12 sheets on it: so many things, and no value of its own.
_TO_KEEP = expression(
    r"\W*(?:(?:and|ok|okay|now|so|please|then|oh)\W+)*"
    r"(?:remember|keep in mind|bear in mind|for the record|write down|put down)\b",
    re.IGNORECASE,
)  # a line that says so asks for no answer anew
_COUNTS = expression(r"\d\s+(?!inches|feet|degrees|cent(?:re|er)s|metres|meters|mils|footers|in\b)[a-z]+s\b", re.IGNORECASE)
_NUMBERED = expression(r"\bnumber \d+ (?:is|are|was|has|needs|wants)\b", re.IGNORECASE)  # of blades, or of walls
_SO_MANY_OF = expression(  # two rooms, which are no pitch
    r"\W*(?:(?:and|ok|so|now|for|there['’]?s|there are)\W+)*(?:\d{1,2}|one|two|three|four|five|six|seven|eight|nine|ten|eleven"
    r"|twelve)"
    r" (?:roofs|rooms|rakes|gables|walls|houses|units)\W*",
    re.IGNORECASE,
)
_PRICED_EACH = expression(r"\b(?:are|is|cost|at) [$£€]?\d+\.\d\d (?:each|apiece|a (?:board|stick|piece))\b", re.IGNORECASE)
LIKELY = 0.8  # how sure a pitch is that is said of a gable


@act("remember")
def remember(talk: Talk) -> bool | None:
    """Keep a value for this job, to be used where a question leaves it out; not the number that a thing goes by."""
    heard = talk.record["heard"]
    if _NUMBERED.search(heard) or _PRICED_EACH.search(heard) or _SO_MANY_OF.fullmatch(heard):
        return False
    parts = talk.conversation.statements or [talk.said]
    kept: list[str] = []
    if "hearsay" in talk.said.words:
        name = talk.said.words["what"]
        talk.conversation.pending = Pending(keep=name)
        put_asked(talk.record, "remember", f"That is somebody's word for it, so I keep nothing yet. What is the {name}?")
        return None
    for said in parts:
        name = said.words["what"]
        line = keep(talk, name, said.values.get("value", ()), said.words.get("value", ""))
        if line is None:
            return None
        kept.append(line)
    talk.conversation.kept_by.append((talk.record, dict(talk.conversation.just_kept)))
    put_noted(talk.record, "remember", f"Kept for this job: {listed(kept, 'and')}")
    asked_again(talk)
    return None


def asked_again(talk: Talk) -> None:
    """The question before worked again, where it had what is now kept as another value: "we dropped the exposure to 6"."""
    c = talk.conversation
    last = c.last if c.last and len(c.just_kept) == 1 else None
    name, value = next(((name, c.facts.values[name]) for name in c.just_kept if name in c.facts.values), ("", None))
    answered = last is not None and bool(last.record.get("answer"))
    found = [p for p in (last.topic.parameters if last is not None and answered else ()) if name == p.slot.kept]
    before = _had(talk, last, found[0].name) if last is not None and len(found) == 1 else None
    if last is None or before is None or value is None or _COUNTS.search(talk.text) or _same(before, value):
        return
    new = replace(value, text=talk.said.words.get("value", ""))
    question = Question(last.topic.name, {found[0].name: Heard(new, 0, len(talk.text), new.text)}, 1.0)
    ways = c.ways(question, last)
    if len(ways) != 1 or not ways[0].worked.working or unusual(ways[0].asked):
        return
    said, kept = talk.record["say"], c.just_kept
    if _TO_KEEP.match(talk.text):  # nothing is asked; what is asked after it is of the question as it is now
        c.finish(dict(talk.record), ways, question)
        c.just_kept = kept
        return
    c.finish(talk.record, ways, question)
    if c.last is not None:
        c.last.changed = frozenset(question.givens)
    talk.record["say"], c.just_kept = f"{said.rstrip('.')}. {talk.record['say']}", kept


def _had(talk: Talk, last: Asked, name: str) -> object:
    """What a question was given under a name, or worked with unsaid right before; None where it had none of it."""
    default = last.topic.parameter(name).default if talk.conversation.records[-1:] == [last.record] else None
    return last.givens[name].value if name in last.givens else default if isinstance(default, Quantity) else None


def _same(one: object, other: Quantity) -> bool:
    if not isinstance(one, type(other)) or isinstance(one, Pitch) or not isinstance(one, Quantity):
        return isinstance(one, Quantity) and (one.value, one.unit) == (other.value, other.unit)
    return other.to(one.unit).value == one.value


def keep(talk: Talk, name: str, readings: tuple[Reading, ...] | list[Reading], words: str) -> str | None:
    """Keep a value under a name; what to say of it, or None when it could not be (the record then says why)."""
    conversation = talk.conversation
    name = _meant(name, readings)
    try:
        value = value_for(name, readings, conversation.places)
    except Refusal as refusal:
        put_declined(talk.record, str(refusal))
        return None
    if value is None:
        conversation.pending = Pending(keep=name)
        put_asked(talk.record, "remember", f"“{words}” is no {name} I can use. What is the {name}?")
        return None
    before = conversation.facts.remember(name, value)
    conversation.just_kept[name] = before
    conversation.points.kind = "remember"
    return f"{name} {short(value)}" + (f" (it was {short(before)})" if before is not None else "")


def _meant(name: str, readings: tuple[Reading, ...] | list[Reading]) -> str:
    """What is said of a gable may be its pitch: "the gable is eight twelve"."""
    longest = max((reading.end for reading in readings), default=0)
    kinds = {reading.kind for reading in readings if reading.end == longest and reading.sure >= LIKELY}
    return "pitch" if name == "gable width" and "pitch" in kinds and "length" not in kinds else name


@act("recall")
def recall(talk: Talk) -> bool | None:
    """Read back what the job knows, all of it or one value."""
    name = talk.said.words["what"]
    conversation = talk.conversation
    heard = talk.record["heard"]
    if name.lower() not in heard.lower() and asked_after(conversation, talk.record, heard):  # and the rake for that: no pitch
        return None
    known = conversation.facts.values
    if name == EVERYTHING:
        lines = [f"{key} {short(value)}" for key, value in known.items()]
        nothing = "Nothing is kept for this job yet. Tell me, like “the roof is five twelve” or “my saw stops at 52”"
        put_noted(talk.record, "recall", f"For this job: {listed(lines, 'and')}" if lines else nothing)
        return None
    if name in known:
        put_noted(talk.record, "recall", f"For this job: {name} {short(known[name])}")
        return None
    if told_line(talk, name):
        return None
    open_ = conversation.pending
    if open_ and open_.asked and open_.wanted:
        put_asked(talk.record, open_.asked.topic.name, why_needed(open_))
        return None
    conversation.pending = Pending(keep=name)
    put_asked(talk.record, "recall", f"You have not told me the {name} yet. What is the {name}?")
    return None


@act("forget")
def forget(talk: Talk) -> None:
    """Let go of what was kept, one value or all of them."""
    name = talk.said.words["what"]
    facts = talk.conversation.facts
    if name == EVERYTHING:
        talk.conversation.chosen = []
    if name != EVERYTHING:
        was = facts.values.get(name)
        facts.forget(name)
        gone = f"Forgotten: the {name} was {short(was)}" if was is not None else f"There was no {name} to forget"
        put_noted(talk.record, "forget", gone)
    elif not facts.values:
        put_noted(talk.record, "forget", "Nothing is kept for this job, so there is nothing to forget")
    else:
        talk.conversation.pending = Pending(forget=True)
        names = listed(facts.values, "and")
        put_asked(talk.record, "forget", f"Forget all that is kept for this job ({names}): yes or no?")


def short(value: Quantity) -> str:
    """A kept value as people read it."""
    if value.unit == "in" and value.value.denominator in (5, 10, 25, 50) and not value.text:
        return f"{float(value.value):g} in"  # studs at 19.2: no mark of the tape
    fine = value.unit == "in" and value.value.denominator in (32, 64)  # 3/32 is kept as it was said
    return value.text or reading(value.value, value.unit, Fraction(1, 64) if fine else SIXTEENTH).split(" (")[0]
