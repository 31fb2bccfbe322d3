"""What is said of a question that was put back, and is no reply: "what's that?", "what's usual", "why do you need it".

It is answered with what the piece is for, how it is found and what it mostly is; the question stays open.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.acts.manners import why_needed
from assistant.hearing import asks_too
from assistant.record import put_asked
from assistant.usual import mostly
from intents.expressions import expression
from intents.talk import numbers_in

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Pending
    from assistant.record import Record

_LEAD = r"\W*(?:(?:ok|okay|well|um|uh|er|hmm|sorry|oh|and|but|so|wait|hang on|hold on|hey|right|no)\W+)*"
_WHY = expression(
    _LEAD + r"(?:(?:how come|why|what) (?:do |would |on earth do |does it |does that )?(?:you |we |it )?"
    r"(?:need|want|ask|asking|matter|make a difference)\b(?: to know)?(?: that| it| this| to know| me| for)*"
    r"|what for|how so"
    r"|why['’]?s (?:that|it) (?:matter|needed|important)"
    r"|what(?:['’]s| is| has) (?:that|it) (?:for|got to do with it|to do with it|matter)"
    r"|(?:does|is) (?:it|that) (?:matter|make (?:a|any) difference|important|needed|necessary)(?: much| here| really)?"
    r"|do you (?:really )?need (?:it|that|to know)(?: that| it)?)\W*",
    re.IGNORECASE,
)
_WHAT = expression(
    _LEAD + r"(?:what(?:['’]?s| is| are)? (?:that|it|this|those|they)(?: mean| then| when it['’]?s at home)?"
    r"|what (?:do|did|does) (?:you|that|it|they|this) (?:mean|want)\b[^;.]*"
    r"|(?:what|which) [a-z]+(?: [a-z]+)? (?:do|did|would) you mean|what(?:['’]?s| is) the difference(?: between them)?"
    r"|(?:meaning|like|such as|in other words|as in) ?(?:what)?"
    r"|(?:i )?(?:don['’]?t|do not|didn['’]?t) (?:get|follow|understand)(?: (?:that|it|you|the question|what you mean))?"
    r"|(?:huh|pardon|eh|come again|say (?:that |it )?again|what was that|which (?:is|means) what)(?: again)?"
    r"|(?:what|which) (?:do you mean|one|of them)(?: by (?:that|it|the \w+|\w+))?"
    r"|how (?:do|would|can) (?:i|you|we) (?:tell|know|measure|find (?:it|that|out))(?: (?:that|it|out))?)\W*",
    re.IGNORECASE,
)
_USUAL = expression(
    _LEAD + r"(?:(?:what(?:['’]?s| is| are)?|is there|which is|tell me|give me) (?:an? |the |my |your )?"
    r"(?:most )?(?:usual|common|normal|typical|standard|regular|ordinary|average|choices|options|sensible|good|best|right|safe)"
    r"(?: .{1,40})?"
    r"|(?:what|which)(?: one)? (?:would|do|does|should|could|can) (?:you|people|most|folks?|everyone|everybody|i|we|they|it)"
    r"(?: people| folks?| of them| guys)?(?: (?:usually|normally|mostly|typically|generally))?"
    r"(?: (?:use|go with|pick|recommend|suggest|say|do|put|allow|leave|have|choose|take|want|need|reckon|be))(?: .{1,25})?"
    r"|any (?:idea|suggestion|suggestions|advice)|what (?:sort|kind) of .{1,30})\W*",
    re.IGNORECASE,
)
_LEFT = expression(
    r"\W*(?:(?:(?:i )?(?:don['’]?t|do not) know(?: that| it)?(?: yet)?|no idea|not sure(?: yet)?"
    r"|ok|okay|well|oh|no|actually|ah)\W+)*(?:never ?mind|skip|forget|leave|park|scrap|drop)"
    r"(?: (?:it|that|this|about it|about that|the \w+|that one))?"
    r"(?: (?:for now|then|now|for a (?:minute|second|bit)|just now))?\s*"
    r"(?:[.,;:!–—]|\bbut\b)\s*(?P<rest>\S.*\w.*)",
    re.IGNORECASE,
)
_WHAT_IS = expression(
    r"\W*(?:(?:and|so|but|sorry|ok|hmm+)\W+)*(?:which \w+ (?:do|is|are|would|of)\b|what(?:['’]?s| is| are) [\w ]+ here\b"
    r"|what (?:do|does) .* mean\b|what(?:['’]?s| is) (?:an? |the )?[\w ]+ mean\b)",
    re.IGNORECASE,
)
_SHORT = 8  # words of such a line
_LONGEST = 90  # characters of such a line


def asked_back(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks something of the piece that is waited for; that is told, and it is asked for again."""
    open_ = c.pending
    if open_ is None or open_.asked is None or not open_.question or len(text) > _LONGEST or numbers_in(text):
        return False
    if not (open_.wanted or open_.ways or open_.left):
        return False
    usual = _USUAL.fullmatch(text) is not None and bool(open_.wanted)
    if usual and any(choice.topic not in (open_.asked.topic.name,) and choice.whole for choice in c.read(text).questions):
        return False
    if not (usual or _WHY.fullmatch(text) or _WHAT.fullmatch(text) or _asks_what_it_is(text, open_)):
        return False
    put_asked(record, open_.asked.topic.name, _with_usual(open_) if usual else why_needed(open_))
    return True


def _asks_what_it_is(text: str, pending: Pending) -> bool:
    """Whether a short line with no number asks what is meant by the piece that is waited for: which corner do you mean."""
    if pending.asked is None or not pending.wanted or numbers_in(text) or not _WHAT_IS.match(text):
        return False
    label = pending.asked.topic.parameter(pending.wanted).label.lower().split()
    return label[0] in text.lower().split() and len(text.split()) <= _SHORT


def left_for_another(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line drops what is waited for, and asks something else: skip it for now, area of a 24 wide gable; worked."""
    found = _LEFT.fullmatch(text) if c.pending is not None else None
    best = next((q for q in c.read(found["rest"]).questions if q.score > 0), None) if found is not None else None
    if found is None or best is None or best.lacking or not (asks_too(found["rest"]) or len(best.words) > 1):
        return False
    c.pending = None
    c.take(record, found["rest"])
    return True


def _with_usual(open_: Pending) -> str:
    """What the piece mostly is, where that is known, and the question again."""
    assert open_.asked is not None
    range_ = mostly(open_.asked.topic.parameter(open_.wanted))
    return f"{range_} {open_.question}" if range_ else why_needed(open_)
