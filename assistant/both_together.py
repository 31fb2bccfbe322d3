"""The last two answers put together: the lake wall's area and the north wall's, "add the two together"; and how much more one is.

Only where the line before asked the same of another thing: a value that was put right is no second one.
"""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.record import put_asked
from assistant.said_over import stem
from assistant.several import told_of
from assistant.speech import spoken
from intents.expressions import expression
from intents.question import Question

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

_LEAD = r"(?:(?:and|so|ok|now|then|what(?:'?s| is| are| about)|how much (?:is|are)|the total (?:of|for)|total (?:of|for))[ ,]+)*"
_TWO = (
    r"(?:(?:the|those|these) two(?: lots| loads)?|both(?: (?:the )?(?:lots|loads))?|them both|them|the two of them"
    r"|both of (?:them|those)"
    r"|both (?:the )?(?:walls|sides|ends|gables|rakes))"
)
_UNIT = r"(?: in (?P<unit>feet and inches|inches|feet|metric|mil|mm|millimet(?:re|er)s|met(?:re|er)s))?"
_THE_TWO = r"(?:the|those|these) two(?: of (?:them|those|these))?"
_LINE = expression(
    rf"{_LEAD}(?:(?:add|put) {_TWO} (?:together|up)|add {_THE_TWO}|{_TWO} (?:added )?together|{_TWO} (?:added up|combined|in all"
    rf"|in total)|(?:the )?total (?:of|for) (?:the two|both)(?: of them)?)(?: then| now| please)*{_UNIT}",
    re.IGNORECASE,
)
_FOR_BOTH = expression(  # for both rims how many hangers is that, one per mark
    r"(?:(?:and|so|ok|then|right|now)[ ,]+)*(?:(?:for|on|over|across|in|of|to do) )?(?:both|the two)(?: of (?:them|those))?"
    r"(?: (?:the |those )?(?P<noun>[a-z]+s))?(?: together| altogether| in all)?,? how (?:many|much)(?: (?P<things>[a-z]+))?"
    r"(?: (?:is|are|does|do|would|will) (?:that|it|they|there|i|we)(?: (?:be|come to|make|need|take|want))?)?"
    r"(?: (?:altogether|in all|in total|all up|all told))?"
    r"(?P<each>,? (?:at )?(?:one|1) (?:per|for each|at each|to each|to an?|on each|a) [a-z]+)?"
    r"|(?:(?:and|so|ok|then|right|now)[ ,]+)*how (?:many|much)(?: (?P<of>[a-z]+))?"
    r"(?: (?:is|are|does|do|would|will) (?:that|it|they|there|i|we)(?: (?:be|come to|make|need|take|want))?)?"
    r" (?:for|on|over|across|in|to do) (?:both|the two)(?: of (?:them|those))?(?: (?:the |those )?(?P<kind>[a-z]+s))?"
    r"(?: (?:together|altogether|in all|in total))?",
    re.IGNORECASE,
)
_BOTH = expression(rf"{_LEAD}(?:both|the two)(?: of (?:them|those))?(?: (?:walls|sides|ends|gables|rakes))?{_UNIT}", re.I)
_THE_OTHER = expression(r"\b(?:other|another|second)\b", re.IGNORECASE)
_APART = expression(
    r"(?:(?:and|so|ok|then|what(?:'?s| is)|the|how much(?:'?s| is)|give me)[ ,]+)*(?:difference|odds)"
    r"(?: (?:between|in) (?:them|the two|those two|these two|the two of them|those|both(?: of them)?))?(?: then| now)*"
    r"|(?:(?:and|so|ok|then)[ ,]+)*how (?:much|far) (?:different|apart) are the two(?: of them)?",
    re.IGNORECASE,
)
_MORE = expression(
    r"(?:(?:and|so|ok|then)[ ,]+)*(?:how much (?:more|less|longer|shorter|deeper|bigger|smaller|higher|wider|thicker|extra)"
    r"|(?P<many>how many) (?:more|less|fewer|extra)(?: (?!is\b|was\b|does\b|would\b|than\b)(?P<things>[a-z]+))?)"
    r"(?: (?:is|was|does|would) (?:that|it|this)(?: (?:be|make|come to|take|need|give))?)?"
    r"(?: than (?:before|last time|it was|that was|at first|to start with|the (?:other|last|first|old|earlier|previous)"
    r"(?: (?:way|one|time|lot|go|number|answer|figure))?))?",
    re.IGNORECASE,
)
_ANOTHER = expression(
    r"\b(?:other|another|beside|next|second|lake|ramp|north|south|east|west|front|back|left|right|gable|one"
    r"|same (?:number|amount|count|again)(?: of)?)\b",
    re.IGNORECASE,
)
_AT_FIRST = expression(r"\b(?:first|to start with)\b", re.IGNORECASE)
_BOTH_ENDS = expression(r"\b(?:both|the two) ends\b", re.IGNORECASE)
_NO_SUM = ("deg", "in12", "percent", "degC", "degF", "yesno", "word", "ratio")  # which nobody adds
_PAIR, _EACH_ITS_OWN = "rake length", "conversion"
_AND = expression(r"\W*(?:and|then|plus|now|next)\b", re.IGNORECASE)
_NAMED = expression(r"\b(?:walls|sides|ends|gables|rakes)\b", re.IGNORECASE)  # of one thing, as a rule
_PLAINLY_TWO = expression(rf"\b{_THE_TWO}", re.IGNORECASE)
_UNITS = dict.fromkeys(("feet and inches", "inches", "feet"), ("in", "ft"))
_METRIC = ("mm", "cm", "m")
_PUT_RIGHT = expression(r"\W*(?:no|nope|sorry|i meant|i said|actually|wait)\b", re.IGNORECASE)


def both_together(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line puts the last two answers together, or asks how far they are apart; then that is worked."""
    line = text.strip(" .!?").replace("’", "'")
    if _stands_beside(c, line):
        return False
    line = _plainly_both(c, line)
    together = _LINE.fullmatch(line) or (_BOTH.fullmatch(line) if _of_another(c) else None)
    more, apart = _MORE.fullmatch(line), _APART.fullmatch(line)
    if more and more["things"] and not _counted_as(c, more["things"]):
        return False
    before = _before(c, bool(more and _AT_FIRST.search(line))) if (together or more or apart) and c.pending is None else None
    if apart and c.last is not None and c.records[-1] is not c.last.record:
        return False  # from what somebody else got, it may be
    if before is None or c.last is None or (together and not _may_be_added(c.last, line, together["unit"])):
        return bool(together) and _which_two(c, record, line)
    value = Fraction(str(before["value"]))
    last = replace(c.last, plus=value if together else -value, put="apart" if apart or (more and more["many"]) else "")
    c.finish(record, [c.worked(last, told_of(last))], Question(last.topic.name))
    if record["outcome"] == "answered":
        record["say"] = spoken(f"{'With' if together else 'Against'} the {before['text']} before. ") + record["say"]
    return True


def _of_another(c: Conversation) -> bool:
    """Whether the question before was of another of the same, as it said: the other one's 24 foot | both."""
    return c.last is not None and _THE_OTHER.search(c.last.record.get("heard", "")) is not None


def _may_be_added(last: Asked, line: str, unit: str | None) -> bool:
    """Whether the last question was asked of a second thing, and its answer is in the unit that the two are wanted in."""
    heard, answer = last.record.get("heard", ""), last.record["answer"]
    second = _ANOTHER.search(heard) or last.text == heard or (last.topic.name == _EACH_ITS_OWN and _AND.match(heard))
    if _PUT_RIGHT.match(heard) or not second or (unit and answer["unit"] not in _UNITS.get(unit, _METRIC)):
        return False
    # both rakes of that gable, where no word tells that two were asked of
    return last.topic.name != _PAIR or bool(re.search(r"\b(?:add|two|put)\b", line, re.IGNORECASE))


def _which_two(c: Conversation, record: Record, line: str) -> bool:
    """Ask which two are meant where that can't be told: the two are no number that is added."""
    if c.last is None or c.pending is not None or not c.last.record.get("answer"):
        return False
    if not (_PLAINLY_TWO.search(line) or (_before(c) and c.last.topic.name != _PAIR and not _NAMED.search(line))):
        return False
    put_asked(record, "follow-up", "Put which two together? Say both in one go.")
    return True


def _stands_beside(c: Conversation, line: str) -> bool:
    """Whether both ends that are asked for are those of the last answer itself, which stand beside it: a step at each."""
    beside = c.last.record.get("also", ()) if c.last is not None and _BOTH_ENDS.search(line) else ()
    return any("both ends" in str(shown["name"]) for shown in beside)


def _plainly_both(c: Conversation, line: str) -> str:
    """The line in the plain words for both, where it asks how many there are on both of what was told as two: both rims."""
    found = _FOR_BOTH.fullmatch(line)
    if found is None or c.last is None or not _of_another(c):
        return line
    noun, things = found["noun"] or found["kind"], found["things"] or found["of"]
    if noun and stem(noun.lower()) not in c.last.things and not _NAMED.search(noun):
        return line
    counts = bool(found["each"]) and c.last.record.get("answer", {}).get("unit") == "count"  # one at each of them: as many
    return "both together" if counts or not things or _counted_as(c, things) else line


def _counted_as(c: Conversation, word: str) -> bool:
    """Whether a word is for what the last answer counts."""
    answer = c.last.record.get("answer") if c.last is not None else None
    if c.last is None or not answer or answer["unit"] != "count":
        return False
    return stem(word.lower()) in c.last.things | {stem(part) for part in str(answer["name"]).lower().split()}


def _before(c: Conversation, first: bool = False) -> dict[str, object] | None:
    """The answer before the last, or the first of all, where it is of the same kind."""
    now = c.last.record.get("answer") if c.last else None
    answered = [kept for kept in c.records if kept["outcome"] == "answered" and kept is not (c.last.record if c.last else None)]
    same = [kept for kept in answered if c.last is not None and kept["topic"] == c.last.topic.name] if first else []
    was = same[0] if same else answered[-1] if answered else None
    if not now or was is None or c.last is None or was["topic"] != c.last.topic.name or now["value"] is None:
        return None
    same = was["answer"]["unit"] == now["unit"] and was["answer"]["name"] == now["name"]
    return was["answer"] if same and now["unit"] not in _NO_SUM else None
