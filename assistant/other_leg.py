"""A rise told anew of a slope that was worked from its pitch and its run, or a run of one worked from its rise.

Both cannot stay: at the same pitch the run is another, over the same run the pitch is. Which it is, is asked.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING

from assistant.pending import Pending
from assistant.record import Record, put_asked
from assistant.ways import same_answer
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

SLOPED, TRIANGLE = "sloped length", "right triangle"
_OTHER = {"rise": "run", "run": "rise"}
_STAYS = expression(
    r"\W*(?:(?:it['’]?s|keep|leave|hold|no|yes|ok|well|that['’]?d be|the|same|one|of course|still)\W+)*"
    r"(?P<what>pitch|slope|run|rise)"
    r"(?:\W+(?:stays?|is|the|same|as|it|was|put|fixed|set|kept|doesn['’]?t|change|please|then))*\W*"
)


def other_leg(c: Conversation, record: Record, found: Sequence[Question], last: Asked) -> bool:
    """Whether a change tells the other leg of a slope, so that its pitch or the leg before cannot be as it was; asks which."""
    legs = {name: heard for name, heard in found[0].givens.items() if name != "across"} if len(found) == 1 else {}
    if last.topic.name != SLOPED or len(legs) != 1:
        return False
    name, told = next(iter(legs.items()))
    pitch, leg = last.givens.get("pitch"), last.givens.get(_OTHER.get(name, ""))
    if pitch is None or leg is None or name in last.givens or "across" in last.givens:
        return False
    wanted = Heard("SLOPE", 0, 0, "")
    topics = [
        Question(SLOPED, {"pitch": _heard(pitch), name: told}, words=["pitch"]),
        Question(TRIANGLE, {leg.name: _heard(leg), name: told, "wanted": wanted}, words=[leg.name]),
    ]
    if same_answer([c.ways(question)[0].worked for question in topics]):
        return False  # it rises so much as it is
    c.pending = Pending(c.asked(topics[0]), topics=topics)
    texts = [_heard(given).text for given in (pitch, leg)]
    put_asked(record, SLOPED, f"Which stays as it was: the pitch of {texts[0]}, or the {leg.name} of {texts[1]}?")
    return True


def what_stays(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells which of the two stays; then the slope is worked with it."""
    said = _STAYS.fullmatch(text.lower()) if c.pending is not None and len(c.pending.topics) > 1 else None
    if said is None or c.pending is None:
        return False
    what = "pitch" if said["what"] == "slope" else said["what"]
    chosen = next((q for q in c.pending.topics if q.words == [what] and q.topic in (SLOPED, TRIANGLE)), None)
    if chosen is None:
        return False
    c.pending = None
    c.finish(record, c.ways(chosen), chosen)
    return True


def _heard(given: Given) -> Heard:
    text = given.value.text or f"{float(given.value.value):g} {given.value.unit}"
    return Heard(given.value, 0, 0, text)
