"""How a topic is named in a question back: "a rake return", "squares", “how far open”."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from assistant.record import listed
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.quantities import Quantity
from solvers.registry import Topic
from solvers.slots import Opening

SUM = "tape arithmetic"  # the topic whose answer, and no other, goes on as a running total
NO_NAMES = (SUM, "conversion")  # questions whose numbers are called nothing
MOST_GIVENS = 4  # that are said with a topic, so that a person hears at once what was understood
_QUESTIONS = frozenset(("can my saw cut it", "how far open", "divide evenly", "frost tonight", "out of square"))
_MANY = frozenset((
    "balanced panels", "boxes", "cladding boards", "courses to openings", "fasteners", "gable courses", "jack rafters",
    "marks on centre", "membrane rolls", "sheets", "soffit panels", "squares", "staggered joints", "strips from a coil",
    "trim sticks",
))  # fmt: skip
_MUCH = frozenset((
    "equal spacing", "sealant", "step flashing", "strapping", "tape arithmetic", "thermal movement", "water in a channel",
    "trim round openings", "wood movement",
))  # fmt: skip


# What a thing is called for what is asked of it, where that is all that is said.
_SHORT = {
    "soffit": "soffit panels", "trim": "trim sticks", "sticks": "trim sticks", "sticks of trim": "trim sticks",
    "crown": "compound cut", "crown moulding": "compound cut", "crown molding": "compound cut",
    "hip": "hip or valley length", "valley": "hip or valley length", "rake": "rake length",
    "straps": "strapping", "penetration": "fastener penetration",
    "take off": "take-off", "takeoff": "take-off", "material list": "take-off", "materials list": "take-off",
    "quantities": "take-off", "material": "take-off", "materials": "take-off",
}  # fmt: skip


def meant(questions: Sequence[Question], topics: Mapping[str, Topic]) -> str:
    """What one of these questions, or the only one with the values it was understood with, is about."""
    names = [_named(question) for question in questions]
    if len(questions) > 1:
        return listed(names)
    said = _values(questions[0], topics.get(questions[0].topic))
    return f"{names[0]}: {said}" if said and names[0] == article(questions[0].topic) else names[0]


def _values(question: Question, topic: Topic | None) -> str:
    """rise 450, run 5.4 m: the quantities as they were said, by their roles."""
    if topic is None or question.swaps:
        return ""
    said = [(p, heard) for p in topic.parameters if (heard := question.givens.get(p.name)) and _shown(heard.value)]
    return ", ".join(f"{p.label} {_counted(heard)}" for p, heard in said) if len(said) <= MOST_GIVENS else ""


def _shown(value: Any) -> bool:
    return isinstance(value, Quantity) or (isinstance(value, tuple) and all(isinstance(each, Opening) for each in value))


def _counted(heard: Heard) -> str:
    """What was said; of openings how many of each were understood: 1 window (windows 3 by 4)."""
    if not isinstance(heard.value, tuple):
        return heard.text
    return f"{' and '.join(f'{each.count} {each.what}' for each in heard.value)} ({heard.text})"


def _named(question: Question) -> str:
    """A topic as one asks whether it is meant; a sum as it was understood."""
    whole = question.givens.get("sum")
    return str(whole.value) if question.complete and whole and not whole.value.text else article(question.topic)


_LEAD = expression(
    r"^(?:(?:ok|okay|so|and|now|hey|please)\s+)*(?:(?:(?:can you|could you|please)\s+)?(?:i need|i want|we need|let['’]?s do|do"
    r"|give me|work out|figure(?: out)?|get me)\s+(?:(?:an?|the|my|our|some)\s+)?|how much |how many )"
)
_THING = r"(?:wall|gable|house|roof|deck|frame|slab|floor|shed|foundation|footing|lay-?out|box|opening|platform|pad|job|garage)"
_OF_WHAT = expression(
    r"\s+(?:for|of|on) (?:(?:the|my|this|that|our|a)\s+)?(?:(?:north|south|east|west|lake|ramp|front|back|big|long|short)\s+)?"
    rf"{_THING}$"
)
_IS_SQUARE = expression(
    r"(?:is|check(?: if| whether)?|see if|checking)(?: (?:the|my|this|that|our|a))?(?: [a-z]+)?"
    rf" {_THING}(?: (?:for|is|to see if it['’]?s))? ?square|(?:check|checking) (?:this|it|that) (?:for|is) square"
)


def by_its_name(text: str, topics: Mapping[str, Topic]) -> Question | None:
    """The question that a line asks which says the name of a topic and no more: "wood movement", "sealant"."""
    line = " ".join(text.lower().strip(" .!?").split())
    name = _OF_WHAT.sub("", _LEAD.sub("", line)) or line
    name = "square check" if _IS_SQUARE.fullmatch(line) else _SHORT.get(name, name)
    topic = topics.get(name)
    if topic is None:
        return None
    return Question(name, score=1.0, missing=[p.name for p in topic.parameters if p.lacks(())], words=name.split())


def article(name: str) -> str:
    """a rake return, an end gap, squares; a name that is a question stands in quotes."""
    if name in _QUESTIONS:
        return f"“{name}”"
    if name in _MANY or name in _MUCH:
        return name
    return f"{'an' if name[0] in 'aeiou' else 'a'} {name}"
