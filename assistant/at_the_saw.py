"""Whether the saw reaches a joint that is named and not set: "can my saw cut the rake return at 5/12".

The joint is worked first, and its setting goes to `can my saw cut it` as a given that is named with its joint.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.pending import Asked, Pending
from assistant.record import Record, given_lines, put_asked
from assistant.speech import spoken
from intents.expressions import expression
from intents.matcher import read, read_as
from intents.question import Heard, Question
from intents.talk import numbers_in
from solvers.exact import fraction
from solvers.quantities import Angle, Quantity
from solvers.rounding import reading
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.ways import Way

SAW = "can my saw cut it"
# The topics whose answer is what the saw is set to, and what each is called.
JOINTS = {
    "miter for a corner": "corner", "rake return": "rake return", "peak joint": "peak joint", "plumb cut": "plumb cut",
    "rake to level joint": "rake to level joint", "polygon": "polygon", "corner in several pieces": "corner in pieces",
}  # fmt: skip
_LIMITS = ("limit", "left", "right")
_CAN_IT = expression(r"\bcan (?:it|that|he|she|(?:my|the|this) saw) (?:do|cut|make|reach|manage|get|take)\b", re.IGNORECASE)
_MINE = r"(?:my|the|our|this|that|his|her|a|any)?\s*(?:\w+\s+)?saws?"
_CUTS = r"(?:cut|make|do|reach|handle|manage|get|go|swing|take|miter|mitre)\b"
_ASKS = expression(
    rf"\b(?:can|could|will|would|does|do|might)\s+(?:{_MINE}|it|she)\b(?:\s+\w+)?\s+{_CUTS}"
    rf"|\b(?:can|could)\s+(?:i|we|you|he|she)\s+(?:still\s+)?{_CUTS}.*\b(?:on|with|using)\s+{_MINE}\b"
    rf"|^(?:so\s+)?(?:is|are|will|would|can)\b.*\b(?:on|within|in|past|beyond|over)\s+(?:the\s+)?(?:(?:reach|scale|range|limit|swing)\s+(?:of|on|for)\s+)?{_MINE}"
    r"(?:'?s?\s+(?:reach|scale|range|limit|swing))?\s*\??$"
    rf"|\b(?:can|could|will|would|does)\s+{_MINE}\s+(?:that|which|what)\s+(?:[\w°]+\s+){{1,6}}{_CUTS}"
    rf"|\b(?:with|on|using)\s+{_MINE}\b[\s,]*(?:can|could)\s+(?:i|we|you|he|she)\s+(?:still\s+)?{_CUTS}",
    re.IGNORECASE,
)
_WITH_IT = expression(rf"\b(?:can|could)\s+(?:i|we|you|he|she)\s+(?:still\s+)?{_CUTS}.*\b(?:on|with|using)\s+it\b", re.IGNORECASE)
_CAN_I = expression(rf"\W*(?:so |then |and )*\b(?:can|could|will) (?:i|we|you) (?:still )?{_CUTS}", re.IGNORECASE)
_IT = expression(r"\b(?:it|that|this|them|those|these|jig)\b", re.IGNORECASE)
_WHAT = expression(r"\b(?:what|whats|what's|where|which|how)\b", re.IGNORECASE)  # asks for the setting itself
_HOW = expression(r"\bhow\b.*\b(?:cut|make|do|get)\b|\b(?:set|dial|setting)\b.*\bjig\b|\bjig\b.*\b(?:set|dial)\b", re.IGNORECASE)
_REACH = expression(
    r"[\s,;]*(?:\b(?:and|if|when|with|but|since|as|on|which|that|whose|says)\b\s*)*"
    r"(?:\b(?:it|(?:(?:my|the|our|a|this)\s+)?(?:\w+\s+)?saw)\s+)?(?:(?:only|just|that)\s+)*"
    r"(?:\b|(?<=['’]s ))(?:stop(?:s|ped|ping)?|good|max(?:es|imum)?|tops?|goes|go|swings?"
    r"|ends|quits|runs|limit(?:ed)?|reaches|limited)\b"
    r"(?:\s+(?:is|out|up|only|at|to|of|past))*\s*$",
    re.IGNORECASE,
)
_COMES_TO = expression(
    r"\b(?:(?:work|come)s?|came|worked) (?:out|to)(?: (?:at|to|as|about))?\s*$|\b(?:wants|needs|calls for)\s*$", re.IGNORECASE
)
_TOLD = expression(r"\bsaw\s+(?:only |just )?(?:goes|stops|tops|maxes|swings|reaches|quits|tilts)\b", re.IGNORECASE)
_WHETHER = expression(r"\b(?:can|could|will|would|does|do) (?:i|we|you|it|he|she|that|this)\b", re.IGNORECASE)
_EACH_WAY = expression(r"^\s*(?:deg(?:ree)?s?\s+)?(?:(?:on|to)\s+)?(?:both|each|either)\s+(?:sides?|ways?|hands?)\b", re.I)
_PAST = "That is past the"
_ONLY_THE_SAW = expression(
    r"\W*(?:(?:and|so|ok|then) )*(?:can|could|will|would) (?:my|the|this|that|a) saw (?:do|cut|make|reach) (?:an? )?"
    r"[a-z0-9./ ]+\W*",
    re.IGNORECASE,
)
_STOPS = expression(r"[\s°]*(?:deg(?:ree)?s?\s+)?(?:saw|stop|limit|swing|max)\b", re.IGNORECASE)
UNANSWERED: Record = {
    "answer": None, "also": [], "steps": [], "checks": [], "marks": [], "figure": None, "cautions": [], "sources": []
}  # fmt: skip


def ask_the_saw(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks if the saw reaches a joint that it names; then that is answered, or asked about."""
    asks = _ASKS.search(text) or ("saw limit" in c.facts.values and _WITH_IT.search(text)) or _known_saw(c, text)
    if not (asks or _HOW.search(text)):
        return _beside_its_limit(c, record, text)
    if asks and _WHAT.search(text[: asks.start()]):
        return False
    saw = read_as(text, SAW, c.parameters)
    limit = _limit(text, saw)
    if limit is None and asks_of_a_saw(text) and saw.givens.keys() == {"limit"}:
        saw.givens = {"setting": saw.givens["limit"]}
    if not (asks or (limit is not None and _HOW.search(text))):
        return limit is None and _of_the_last(c, record, text, False, {})
    rest = _without(text, limit)
    joint = _joint(c, rest)
    if joint is None and asks and "setting" in saw.givens and not saw.unplaced and (limit or _may_be_set(c, text)):
        c.work(record, [saw])
        return True
    givens: dict[str, Given] = {}
    if limit is not None:
        givens["limit"] = Given("limit", limit.value, "asked", limit.sure)
    if joint is None and _of_the_last(c, record, rest, bool(asks), givens):
        return True
    if joint is None or _set_already(rest, joint):
        return False
    if not asks:
        kind = c.topics[SAW].parameter("asked").kind
        givens["asked"] = Given("asked", kind["HOW"], "asked")  # type: ignore[index]
    ways = c.ways(joint)
    if len(ways) > 1 or not ways[0].worked.working:
        c.finish(record, ways, joint)
        if c.pending is not None:
            c.pending.saw = givens
        return True
    pass_on(c, record, ways[0], givens)
    _asked_of_it_too(c, givens)
    return True


def _beside_its_limit(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for a joint and tells how far the saw goes; then the joint is worked, and says if that is past it."""
    if not _TOLD.search(text) or _WHETHER.search(text):
        return False
    limit = _limit(text, read_as(text, SAW, c.parameters))
    joint = _joint(c, _without(text, limit)) if limit is not None else None
    if limit is None or joint is None or joint.missing or not isinstance(limit.value, Quantity):
        return False
    c.work(record, [joint])
    if _past(record, limit.value) and c.last is not None:
        c.last.saw = {"limit": Given("limit", limit.value, "asked", limit.sure)}
    return True


def _past(record: Record, limit: Quantity) -> bool:
    """Whether a joint's setting lies past what the saw goes to; then the record says so, once."""
    answer = record["answer"]
    if record["topic"] not in JOINTS or not answer or answer["value"] <= limit.value or _PAST in record["say"]:
        return False
    record["say"] += spoken(f" {_PAST} {reading(limit.value, 'deg')} that the saw goes to: say “how do I cut it” for a way.")
    return True


def _known_saw(c: Conversation, text: str) -> re.Match[str] | None:
    """Can I cut the rake return: of a joint, where the job knows how far the saw goes."""
    asks = _CAN_I.match(text) if "saw limit" in c.facts.values else None
    return asks if asks and _joint(c, text) is not None else None


def _of_the_last(c: Conversation, record: Record, text: str, asks: bool, givens: dict[str, Given]) -> bool:
    """Whether the line asks of the joint answered last ("can my saw do that one"), or how it is cut; then answered."""
    last = c.last
    if last is None or not _IT.search(text) or numbers_in(text):
        return False
    how = {} if asks else {"asked": Given("asked", c.topics[SAW].parameter("asked").kind["HOW"], "asked")}  # type: ignore[index]
    if last.topic.name in JOINTS and (asks or last.saw or "saw limit" in c.facts.values):
        way = c.worked(last, last.givens)
        if way.worked.working:
            pass_on(c, record, way, {**(last.saw or {}), **givens, **how})
        return bool(way.worked.working)
    if asks or last.topic.name != SAW:
        return False
    c.finish(record, [c.worked(last, {**last.givens, **how})], Question(SAW))
    return True


def asks_the_saw(text: str) -> bool:
    """Whether a line asks if the saw reaches something."""
    return bool(_ASKS.search(text))


def go_on_at_the_saw(c: Conversation, record: Record, waited: Pending | None) -> None:
    """After a reply: once the joint is whole the saw is asked; till then the rest waits on. Past a kept limit it says so."""
    saw, kept = waited.saw if waited else None, c.facts.values.get("saw limit")
    if saw is None:
        if isinstance(kept, Quantity):
            _past(record, kept)
        return
    if record["outcome"] == "asks" and c.pending is not None:
        c.pending.saw = saw
    elif record["outcome"] == "answered" and record["topic"] in JOINTS and c.last is not None:
        pass_on(c, record, c.worked(c.last, c.last.givens), saw)
        _asked_of_it_too(c, saw)


def _asked_of_it_too(c: Conversation, saw: dict[str, Given]) -> None:
    """Another corner, or pitch, is asked of that saw too."""
    if c.last is not None and c.last.joint is not None:
        c.last.saw = saw


def asks_of_a_saw(text: str) -> bool:
    """Whether a line asks if the saw does one setting: "will my saw do 58 degrees" is no corner and no reply."""
    return _ONLY_THE_SAW.fullmatch(text) is not None and len(numbers_in(text)) == 1


def _may_be_set(c: Conversation, text: str) -> bool:
    """Whether the one number of a line is a setting: where the saw stops is known, or the line names nothing but the saw."""
    return "saw limit" in c.facts.values or asks_of_a_saw(text)


def _limit(text: str, saw: Question) -> Heard | None:
    """How far the saw goes, where words beside it say that it is that."""
    limit = saw.givens.get("limit")
    if limit is None or _REACH.search(text[: limit.start]) or _STOPS.match(text[limit.end :]):
        return limit
    return None


def _without(text: str, limit: Heard | None) -> str:
    """The line without the saw's own limit."""
    if limit is None:
        return text
    before = text[: limit.start]
    reach = _REACH.search(before)
    after = _EACH_WAY.sub(" ", text[limit.end :].lstrip(" °"), count=1)  # the sides that it swings to are no polygon's
    return (before[: reach.start()] if reach else before) + " " + after


def _joint(c: Conversation, text: str) -> Question | None:
    """The joint that is named."""
    found = [q for q in read(text, c.parameters, only=JOINTS).questions if q.score > 0]
    best = found[0] if found else None
    return None if best is None or best.unplaced or best.lacking else best


def _set_already(text: str, joint: Question) -> bool:
    """Whether the degrees of the joint are what the saw is to be set to: "the return works out at sixty"."""
    angles = (heard for heard in joint.givens.values() if getattr(heard.value, "unit", "") == "deg")
    return any(_COMES_TO.search(text[: heard.start]) for heard in angles)


def pass_on(c: Conversation, record: Record, way: Way, saw: dict[str, Given]) -> None:
    """The joint's setting to the saw, with the joint's own working before the saw's."""
    result = way.worked.working.result if way.worked.working else None
    assert result is not None and result.value is not None
    name = JOINTS[way.worked.topic.name]
    setting = Angle(Fraction(fraction(result.value)), "deg", f"{result.text}, for the {name}")
    topic = c.topics[SAW]
    worked = c.worked(Asked(topic, {}), {**saw, "setting": Given("setting", setting, "earlier")})
    joint = way.worked
    before = given_lines(joint.topic, joint.givens)
    if worked.worked.asks:
        c.pending = Pending(worked.asked, worked.worked.wanted)
        record.update(UNANSWERED)
        put_asked(record, SAW, worked.worked.asks, [*before, *given_lines(worked.worked.topic, worked.worked.givens)])
        return
    c.finish(record, [worked], Question(SAW))
    if c.last is not None and c.last.topic.name == SAW:
        c.last.joint = way.asked
    record["givens"] = [*before, *record["givens"]]
    if record["outcome"] == "answered" and joint.working:
        record["steps"] = [*joint.working.steps, *record["steps"]]
        record["checks"] = [*joint.working.checks, *record["checks"]]
        record["say"] = spoken(f"The {name} sets the saw to {result.text}. ") + record["say"]


def another_setting(c: Conversation, record: Record, text: str, pending: Pending) -> bool:
    """Whether a line asks of another setting while how far the saw goes is waited for: can it do 48 tells no limit."""
    waits = pending.asked is not None and pending.asked.topic.name == SAW and pending.wanted in _LIMITS
    if not waits or pending.asked is None or not _CAN_IT.search(text):
        return False
    more = read_as(text, SAW, c.parameters, wanted="setting")
    if "setting" not in more.givens:
        return False
    c.finish(record, c.ways(more, pending.asked), more)
    return True
