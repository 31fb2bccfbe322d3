"""A share of what was just worked: "half that", "a third of it", "what's two thirds of that".

The share is of the answer, exact and before it is rounded, and never a new value of a given: half of 84 square feet is no
gable half a foot wide. What is bought whole is worked again for that share of the length or area; of a pitch or a word
there is no half, and that is asked.
"""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.names import SUM
from assistant.record import Record, blank, listed, names_of, put_asked
from assistant.several import LONGEST, TOGETHER, told_of
from assistant.speech import spoken
from assistant.told_round import put_back, state_of
from intents.expressions import expression
from intents.question import Question
from intents.talk import numbers_in
from solvers.quantities import Quantity
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

SHARES = {
    "half": Fraction(1, 2), "halve": Fraction(1, 2), "third": Fraction(1, 3), "quarter": Fraction(1, 4),
    "two thirds": Fraction(2, 3), "three quarters": Fraction(3, 4), "tenth": Fraction(1, 10), "fifth": Fraction(1, 5),
}  # fmt: skip
SAID = {share: ("" if word == "half" or " " in word else "a ") + word for word, share in SHARES.items() if word != "halve"}
_SHARE = r"(?:(?:an?|one) )?(?P<share>half|third|quarter|tenth|fifth)|(?P<more>two thirds|three quarters)"
_THEM = r"(?:(?:that|this) (?:angle|length|height|width|area|number|measurement|distance|total|answer)|that|it|them|those|this)"
_LINE = expression(
    r"(?:(?:and|so|ok|well|but|now|then|what about|how about|what(?:'s|s| is| would)|how much (?:is|would)|just|only|say"
    r"|give me)[ ,]+)*"
    rf"(?:(?:{_SHARE})(?P<of> of {_THEM}| {_THEM}| as (?:much|many))|(?P<halve>halve) {_THEM}|(?P<bare>half))"
    r"(?:[ ,]+(?:then|now|please|again|as much|as many|be|come to))*",
    re.IGNORECASE,
)
_ASKED = expression(r"\b(?:how much|would|measurement|distance|total|answer)\b", re.IGNORECASE)
_BETWEEN = expression(
    r"\W*(?:(?:and|so|if|ok|now|that|it|all)\W+)*(?:split|divided?|shared?)(?: (?:it|that|them))?(?: (?:up|out))?"
    r" (?:(?:between|among|amongst|over|across|by|in|into) (?:the )?)?(?P<n>\w+)"
    r"(?: (?:ways?|trips?|loads?|of us|people|men|trucks?|vans?|houses?|owners?|goes|lots|crews?|walls?))?\W*",
    re.IGNORECASE,
)
_SHARED = ("weight", "cost")
MOST_SHARES = 100
_SHARE_OF = expression(
    r"\W*(?:(?:no|and|sorry|now|ok|i meant|make it|what about)\W+)*"
    r"(?P<sum>(?:(?:an?|one|two|three) )?(?:half|thirds?|quarters?|fifth|sixth|eighth)s? of "
    r"(?!it\b|that\b|them\b|this\b)(?P<n>.+))",
    re.IGNORECASE,
)
_OF_A_WALL = expression(
    rf"\b(?:{_SHARE}) (?:of )?(?P<rest>(?:an?|the|my|our|that|this) "
    r"(?!(?:inch|foot|feet|met(?:re|er)|square|mm|m)\b)(?:[\w./'’-]+ ){0,5}?(?:wall|gable|roof)\b)",
    re.IGNORECASE,
)
_FACED = ("wall area", "gable area", "roof area", "squares", "cladding boards", "membrane rolls")
_OF_NOTHING = ("in12", "percent", "word", "yesno", "degC", "degF")


def share_of_last(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for a share of what was just worked; then that is worked or asked."""
    last = c.last
    answer = last.record.get("answer") if last is not None and not c.pending and len(text) <= LONGEST else None
    if last is None or not answer:
        return False
    if among := _among(text, last.topic.name):
        _worked_share(c, record, last, Fraction(1, among), f"one of {among} shares")
        return True
    found = _LINE.fullmatch(text.strip(" .!?").replace("’", "'"))
    if found is None:
        return False
    if last.topic.name == SUM and not found["bare"]:
        return _of_a_sum(c, record, text, found)
    if last.topic.name == SUM:
        c.take(record, f"{text.strip(' .!?')} of that")
        return True
    word = (found["share"] or found["more"] or found["halve"] or "half").lower()
    if found["bare"] or answer["value"] is None or answer["unit"] in _OF_NOTHING:
        labels = [f"the {label}" for label in names_of(last.topic, last.givens.values()).values()]
        put_asked(record, "follow-up", f"{word.capitalize()} of what: the answer, or {listed(labels, 'or')}?")
        return True
    _worked_share(c, record, last, SHARES[word], f"{SAID[SHARES[word]]} of it")
    return True


def _of_a_sum(c: Conversation, record: Record, text: str, found: re.Match[str]) -> bool:
    """Whether a share of the last sum is asked for in more words than a sum is told in; then it is worked as one."""
    word = (found["share"] or found["more"] or found["halve"]).lower()
    plain = f"{SAID[SHARES[word]]} of that"
    if not _ASKED.search(text):
        return False
    c.take(record, plain)
    return True


def share_told(c: Conversation, record: Record, text: str) -> bool:
    """Whether a line asks of a share of a wall or gable, "half a 24 by 9 wall"; then that share of the whole is worked."""
    found = _OF_A_WALL.search(text) if c.pending is None else None
    if found is None or _OF_A_WALL.search(text, found.end()) is not None:
        return False
    state, share = state_of(c), SHARES[" ".join((found["share"] or found["more"]).lower().split())]
    trial = blank(text, record["via"], c.job, record["file"])
    c.take(trial, f"{text[: found.start()]}{found['rest']}{text[found.end() :]}")
    if trial["outcome"] != "answered" or c.last is None or c.last.topic.name not in _FACED:
        put_back(c, state)
        return False
    _worked_share(c, record, c.last, share, f"{SAID[share]} of it")
    return True


def _among(text: str, topic: str) -> int:
    """Among how many the last weight or cost is shared: split between three trips; 0 for any other line."""
    found = _BETWEEN.fullmatch(text) if topic in _SHARED else None
    said = numbers_in(found["n"]) if found is not None else []
    value = said[0].value.value if len(said) == 1 and isinstance(said[0].value, Quantity) else Fraction(0)
    return value.numerator if value.denominator == 1 and 1 < value <= MOST_SHARES else 0


def _worked_share(c: Conversation, record: Record, last: Asked, share: Fraction, said: str) -> None:
    """The last question worked for a share of it."""
    name = TOGETHER.get(last.topic.name, ("", ""))[0]
    if name and name in last.givens:
        before = last.givens[name].value
        less = replace(before, value=before.value * share, text="")
        c.finish(record, [c.worked(last, {**told_of(last), name: Given(name, less, "asked")})], Question(last.topic.name))
    else:
        c.finish(record, [c.worked(replace(last, times=last.times * share), told_of(last))], Question(last.topic.name))
    if record["outcome"] == "answered":
        record["say"] = spoken(f"For {said}. ") + record["say"]


def share_anew(c: Conversation, text: str) -> list[Question] | None:
    """A share of a new length, after a sum: "no, a third of 11 ft 9". It is a sum of its own, and changes nothing."""
    found = _SHARE_OF.match(text) if c.last is not None and c.last.topic.name == SUM else None
    if found is None or not numbers_in(found["n"]):
        return None
    return [q for q in c.read(found["sum"]).questions if q.topic == SUM and q.whole][:1] or None
