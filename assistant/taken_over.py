"""What another question of the same job lacks and an earlier one of the talk was given, or came to: it is taken over, saying so.

"Length of the common rafter over that run", after a hip; "what bite do I get with 5 inch screws", after the length of one; "fifty
dollars a sheet, how much for the lot". A piece is taken where it can only be that: by what it is (`roles_alike.py`), the last
question first. A line that names another thing takes nothing, and where two could be it the question stays open.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.also_asked import beside
from assistant.asked_after import lines_of, said_of, said_of_any
from assistant.at_the_saw import JOINTS, SAW, pass_on
from assistant.from_last import carried
from assistant.heard_all import unheard
from assistant.pending import Asked, Pending
from assistant.piece_before import legs_of, piece, stale
from assistant.record import Record, put_noted, the_same
from assistant.said_over import Place, places_of
from assistant.several import told_of
from assistant.still_open import let_fall
from intents.chart import LIGHT
from intents.expressions import expression
from intents.question import Question
from intents.talk import numbers_in
from solvers.registry import Topic
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.ways import Way

_RAFTER = "sloped length"
MOST = 6  # pieces of one question that are taken so
# Another thing than those before. A place or part of the house that was not spoken of is one too.
_ANOTHER = expression(r"\b(?:another|different|new|next|second|(?<!each )other(?! (?:side|end|way|corner|cut)))\b", re.IGNORECASE)
_PLACES = expression(
    r"\b(?:garage|shed|dormer|porch|house|barn|cabin|deck|floor|fence|roof|gable|wall|soffit|attic|window|door|addition|carport"
    r"|kitchen|bathroom|hall|bedroom|north|south|east|west|bay"
    r"|(?:front|back)(?= (?:wall|side|gable|roof|porch|one|half))|(?:left|right)(?=[ -](?:side|wall|hand|end)))"
    r"(?:['’]s|s)?\b",
    re.IGNORECASE,
)
_POINTED = expression(r"\b(?:that|this|those|these|same)\W+(?:\w+\W+)?$", re.IGNORECASE)
_WHICH = expression(r"\b([a-z]+)\s+$")
_NO_OTHER = frozenset("that this those these the a an same whole all my our your his their its each per every as is so".split())
_ASKS = expression(r"\?|\b(?:how|what|whats|which|where|is it|are they|do i|will it|length of|number of)\b", re.IGNORECASE)
_CHANGES = expression(  # which tells another value of what was asked before, and asks nothing else
    r"\b(?:now|changed?|instead|actually|really|sorry|wait|no|nope|make (?:it|that)|should|meant|only|wrong|after all)\b",
    re.IGNORECASE,
)
_JOINTS = (
    ("rake return", expression(r"\breturns?\b", re.IGNORECASE)), ("peak joint", expression(r"\b(?:peak|apex)\b", re.IGNORECASE)),
    ("plumb cut", expression(r"\bplumb cuts?\b", re.IGNORECASE)),
    ("rake to level joint", expression(r"\blevel (?:joint|trim|fascia)\b", re.IGNORECASE)),
    ("miter for a corner", expression(r"\bcorner\b", re.IGNORECASE)),
)  # fmt: skip
_THAT = expression(r"\b(?:that|this|each|every|same|last|which)\s+$", re.IGNORECASE)


def taken_over(c: Conversation, record: Record, text: str, waited: Pending | None) -> None:
    """Give a question that was put back for a piece what an earlier one has of it; it is answered then, or the rest asked."""
    open_, base = c.pending, c.last
    if open_ is None or open_.asked is None or base is None or not _may_lack(c, record, text, open_, waited):
        return
    asked, said = open_.asked, _lines_of_it(c, open_.asked.topic, text, waited)
    known = {name: given for name, given in asked.givens.items() if given.source != "assumed"}
    if _fell(c, asked.topic):
        return
    if asked.topic is base.topic:
        _read_off(c, record, text)
        return
    if stale(c, base) or any(_of_another(c, line) for line in said) or _left_out(text, known):
        return
    legs = legs_of(c, base) if asked.topic.name == _RAFTER and open_.wanted in ("pitch", "run") and "tail" not in known else None
    if asked.topic.name == SAW and open_.wanted == "setting":
        joint = _joint(c, base, text)
        if joint is not None and joint.worked.working:
            record["ask"], c.pending = "", None
            pass_on(c, record, joint, known)
    elif legs is not None:
        _up_the_slope(c, record, legs)
    else:
        _with_what_is_known(c, record, open_, known, " ".join(said))


def _may_lack(c: Conversation, record: Record, text: str, open_: Pending, waited: Pending | None) -> bool:
    """Whether a piece of a question that this line asked is wanted, after an answer; and the line tells no change of that."""
    if open_ is waited or record["outcome"] != "asks" or c.last is None or not c.last.record.get("answer"):
        return False
    if not open_.wanted or open_.ways or open_.topics:
        return False
    return not (waited is None and numbers_in(text) and _CHANGES.search(text) and not _ASKS.search(text))


def _with_what_is_known(c: Conversation, record: Record, open_: Pending, known: dict[str, Given], text: str) -> None:
    """Work the question with each piece that an earlier one has, until nothing lacks or none has it."""
    asked, taken = open_.asked, False
    assert asked is not None
    way = c.worked(asked, known)
    for _ in range(MOST):
        found = piece(c, asked.topic, way.worked.wanted, known, text) if way.worked.asks else {}
        if not found:
            break
        known, taken = {**known, **found}, True
        way = c.worked(asked, known)
    if not taken or way.worked.refused:
        return
    more = next((q for reading in c.reads.values() for q in reading.questions if q.topic == asked.topic.name), None)
    question = Question(asked.topic.name, unplaced=_without_that_one(text, open_.left))
    if more is not None:
        question.left, question.claim = more.left, more.claim
    record["ask"], c.pending = "", None
    c.finish(record, [way], question)
    if c.pending is not None:
        c.pending.saw = open_.saw
    if record["outcome"] == "answered":
        record["say"] = the_same(record) + record["say"]


def _read_off(c: Conversation, record: Record, text: str) -> None:
    """Read a value beside the last answer off its page, where a longer line asks for that of it and tells nothing."""
    last = c.last.record if c.last is not None else {}
    text = said_of_any(text)
    lines = [] if _numbers(text) or _of_another(c, text) else beside({**last, "also": lines_of(last)}, last["topic"] or "", text)
    if not lines:
        return
    record["ask"], c.pending = "", None
    put_noted(record, "explain", said_of(lines))
    record["givens"] = []
    record["also"] = [line for line in lines_of(last) if f"{line['name']}: {line['text']}" in lines]


def _joint(c: Conversation, base: Asked, text: str) -> Way | None:
    """The joint whose setting the saw is asked about: the one just worked, or another of the talk that the line names."""
    named = [topic for topic, words in _JOINTS if words.search(text)]
    if base.topic.name in JOINTS and (not named or base.topic.name in named):
        return c.worked(base, base.givens)
    before = next((asked for asked in reversed(c.earlier) if asked.topic.name in named), None)
    if before is None or stale(c, before):
        return None
    return c.worked(before, {**told_of(before), **carried(base, before.topic.parameters)})


def _up_the_slope(c: Conversation, record: Record, legs: tuple[Given, Given]) -> None:
    """The rafter over a rise and a run that were both told, as the triangle that it is: a change is then of either."""
    topic = c.topics["right triangle"]
    wanted = topic.parameter("wanted").kind["SLOPE"]  # type: ignore[index]
    givens = {leg.name: Given(leg.name, leg.value, "earlier") for leg in legs}
    record["ask"], c.pending = "", None
    c.finish(record, [c.worked(Asked(topic, {}), {**givens, "wanted": Given("wanted", wanted, "asked")})], Question(topic.name))
    if record["outcome"] == "answered":
        record["say"] = the_same(record) + record["say"]


def _lines_of_it(c: Conversation, topic: Topic, text: str, waited: Pending | None) -> list[str]:
    """The line, and those before it that the question was asked and told in: now the crown on the porch ceiling | 38 spring."""
    lines = [text]
    for before in reversed(c.records if waited is not None else []):
        if before["outcome"] != "asks" or before["topic"] not in (None, topic.name):
            break
        lines.append(before["heard"])
    return lines


def _fell(c: Conversation, topic: Topic) -> bool:
    """Whether a number that the line before told of the questions so far was let fall: what they came to no longer holds."""
    open_, c.pending = c.pending, None
    fell = let_fall(c)
    c.pending = open_
    return fell is not None and fell["topic"] != topic.name


def _left_out(text: str, known: dict[str, Given]) -> bool:
    """Whether a number of the line is in nothing that the question was given: it may be the piece, or change it."""
    return any(unheard(text[place.start : place.end], known.values()) for place in _numbers(text))


def _without_that_one(text: str, left: list[str]) -> list[str]:
    """What has no place, without what is no number: that one in three."""
    said = {text[place.start : place.end] for place in _numbers(text)}
    return [each for each in left if not each.startswith("one ") or each in said]


def _numbers(text: str) -> list[Place]:
    """The numbers of a line, without "that one in three pieces"."""
    said = [place for place in places_of(text) if place.words not in (("one",), ("a", "square"))]
    return [place for place in said if not (place.words[0] == "one" and _THAT.search(text[: place.start]))]


def _of_another(c: Conversation, text: str) -> bool:
    """Whether the line is about another thing than the questions before."""
    if _ANOTHER.search(text):
        return True
    before = " ".join(kept["heard"] for kept in c.records if kept["heard"] != text).lower()
    for found in _PLACES.finditer(text):
        which = _WHICH.search(text[: found.start()].lower())
        if which is not None and which[1] not in LIGHT | _NO_OTHER and which[1] not in before:
            return True  # the lake wall
        if not _POINTED.search(text[: found.start()]) and found[0].lower().rstrip("s").rstrip("'’") not in before:
            return True
    return False


