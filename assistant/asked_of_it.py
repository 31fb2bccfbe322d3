"""What is asked next of the thing just worked, by another topic: the angle of that roof, its boxes, what a screw bites.

"And the angle with that?" after a rake, "boxes of 500, how many boxes" after nails, "what does a 3 inch screw leave in the stud"
after layers: read as changes they would be a pitch, a box or a penetration of the question before.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.bite_words import asks_its_bite
from assistant.in_its_terms import counted_to
from assistant.pending import Asked
from assistant.piece_before import piece, stale
from assistant.record import blank, put_asked, the_same
from assistant.roles_alike import ALTERED
from assistant.said_over import places_of
from assistant.several import told_of
from assistant.still_open import let_fall
from intents.expressions import expression
from intents.matcher import read_as
from intents.question import Question
from intents.talk import numbers_in
from solvers.quantities import Angle, Area, Count, Length, Number, Pitch
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

_LEAD = r"\W*(?:(?:and|so|ok|okay|then|now|right|but|well|also)\W+)*"
_THAT = r"(?:it|that|this|them|those|(?:the|that|this) (?:roof|rake|rafters?|gable|slope|hip|pitch|one))"
_ANGLE = expression(
    _LEAD + r"(?:which is |that['’]?s )?(?:(?:what about|how about|what['’]?s|what is|give me|and) )?"
    r"(?:the |its )?(?:roof )?angle"
    rf"(?: in degrees)?(?: (?:of|on|for|with|at|to|from level))?(?: {_THAT})?(?: (?:then|again|now|in degrees))*\W*"
    rf"|{_LEAD}(?:what|which) angle (?:is|does|would|are|will) {_THAT}(?: (?:make|at|be|come to|in degrees))*\W*"
    rf"|{_LEAD}(?:how many|what(?:['’]?s)?(?: is)?) (?:that in )?degrees(?: (?:is|are|of))?(?: {_THAT})?\W*",
    re.IGNORECASE,
)
_PITCH = expression(
    _LEAD + r"(?:which is |that['’]?s |which makes (?:it|that) )?what(?:['’]?s)? (?:the )?pitch(?: (?:is|in|of|for|on))*"
    rf"(?: {_THAT})?(?: in)?(?: (?:12|twelve))?(?: (?:then|again|now))*\W*",
    re.IGNORECASE,
)
_MANY_BOXES = expression(
    r"\bhow many (?:boxes|packs|packets|cartons|cases|bags|bundles|tubs|pails|coils|strips|buckets)\b", re.IGNORECASE
)
_BOXES_OF = expression(
    r"\W*(?:(?:and|so|in|they|come|['’]re|are) )*(?:boxes|packs|packets|tubs|bags|coils|pails) of \d+\W*", re.IGNORECASE
)
_BOX_OF = expression(r"\b(?:box|case|pack|packet|carton|bag|tub|pail|coil|strip|bucket)(?:es|s)? of $", re.IGNORECASE)
_TO_A_BOX = expression(
    r" (?:[a-z]+ )?(?:to|in|per|a|each) (?:an? |the |each )?"
    r"(?:box|case|pack|packet|carton|bag|tub|pail|coil|strip|bucket)\b",
    re.IGNORECASE,
)
_COME_UP = expression(  # how high do the bottom six of those come up
    rf"{_LEAD}how (?:high|tall|far up|high up) (?:do|does|will|would|are|is) (?:the )?(?:(?:first|bottom|lowest) )?"
    r"(?P<n>\d{1,2}|[a-z]+)(?: (?:courses|rows))?(?: of (?:those|them|these|'?em|the courses))?"
    r"(?: (?:come|go|get|reach|be|stand|take me|bring me|make))?(?: (?:up|to|up to|high|then|now))*\W*"
    rf"|{_LEAD}how (?:high|far up)(?: up)?(?:['’]?s| is| will| would"
    rf"| does)?(?: the)? top (?:edge )?of (?:the )?(?P<nth>\d{{1,2}}(?:st|nd|rd|th)"
    r"|[a-z]+(?:[ -][a-z]+)??)(?: (?:one|course|row))?(?: (?:be|come|come to|from the (?:bottom|starter|start)"
    r"|at (?:that|those)|then))*\W*"
    rf"|{_LEAD}(?:the )?top (?:edge )?of (?:the )?(?P<nth_one>\d{{1,2}}(?:st|nd|rd|th)|[a-z]+(?:[ -][a-z]+)??)(?: (?:one|course"
    r"|row))?(?:['’]?s| is| sits?| comes?| lands?| ends up| will be)?"
    r" how (?:far|high)(?: up)?(?: (?:from|off|over|above) (?:the )?(?:bottom|starter|start|floor))?\W*",
    re.IGNORECASE,
)
_NO_NUMBER = expression(  # a 4 inch one
    r"(?<=inch )one(?=\W*(?:,|$| (?:leave|bite|get|go|hold|be|give|have|sit)))", re.IGNORECASE
)
_OTHER = expression(r"\b(?:other|another|next|different|new|second)\b", re.IGNORECASE)
_TOLD = ("waste", "box", "fastener", "count", "spring")  # what these lines tell themselves
_SQUARE = expression(r"\b(?:square|right[- ]angled?|normal)\b|\ban? (?:inside |outside )?corner\b", re.IGNORECASE)  # another
_CROWN = expression(r"\bcrown\b", re.IGNORECASE)
_OF_ONE_CORNER = ("miter for a corner", "corner in several pieces", "polygon")
_SUPPOSES = expression(  # the peak joint alone is another question
    r"\b(?:instead|rather|(?:say|suppose|if|what if) (?:it|that) (?:was|were|is)|make (?:it|that)|call it)\b", re.IGNORECASE
)
_COURSED = ("course layout", "height of courses", "step at the rake", "gable courses")
_END_CUT = "end cut along the rake"
_RAKED = ("step at the rake", "gable courses")
_ENDS_CUT = expression(  # what angle do I cut those ends at
    _LEAD + r"(?:what|which)(?:['’]?s| is)?(?: the)? (?:angle|bevel|cut)\b(?!.*\b(?:saw|mit(?:er|re)|corner|hip|valley)\b)"
    r"[^\d?]*\b(?:cut|cuts|ends?|board'?s?)\b[^\d?]*\W*"
    rf"|{_LEAD}(?:the )?angle\b[^\d?]*\b(?:end cuts?|ends?)\b[^\d?]*\W*",  # the angle between the end cut and the long edge
    re.IGNORECASE,
)
_IN_SQUARES = expression(  # in squares, with 15 percent waste
    _LEAD + r"(?:(?:put|call|make|give me|what['’]?s|what is|say) )*(?:(?:that|it|them|both|the lot|all of it) )?"
    r"(?:in|as|into|to) squares,?"
    r" (?:with|at|plus|allow|allowing|adding|add|and)(?: an?)? (?P<waste>[^,;?]+?)(?: ?%| per ?cent)"
    r"(?: (?:of |for )?(?:waste|wastage|cuts|cutting|extra|on top))?(?: (?:then|please))*\W*",
    re.IGNORECASE,
)
_ROOF_ANGLE, _BY_LEGS, _TRIANGLE = "roof angle", "pitch from rise and run", "right triangle"


def angle_of_it(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for the angle of the slope that the last question was told; then that is worked."""
    last = c.last if c.pending is None else None
    if last is None or not last.record.get("answer") or not _ANGLE.fullmatch(text) or last.topic.name == _ROOF_ANGLE:
        return False
    pitch = next((g for g in last.givens.values() if isinstance(g.value, Pitch) and g.source != "assumed"), None)
    if last.topic.name == "hip or valley length" and "roof" not in text.lower():
        return False  # the hip lies flatter than the roof
    if pitch is None or last.record["answer"]["unit"] == "deg":  # what the saw is set to is an angle too
        return False
    return _worked(c, record, _ROOF_ANGLE, {"pitch": Given("pitch", pitch.value, "earlier", pitch.sure)})


def pitch_of_it(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for the pitch of the rise and run that the last question was told; then that is worked."""
    last = c.last if c.pending is None else None
    if last is None or last.topic.name != _TRIANGLE or not _PITCH.fullmatch(text):
        return False
    legs: dict[str, Given] = {name: last.givens[name] for name in ("rise", "run") if name in last.givens}
    return legs.keys() == {"rise", "run"} and _worked(c, record, _BY_LEGS, legs)


def boxed(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks how many boxes of so many the things just counted take; then those are worked."""
    last = c.last if c.pending is None else None
    answer = last.record.get("answer") if last is not None else None
    if last is None or not answer or answer["unit"] != "count" or last.topic.name in ("boxes", "take-off"):
        return False
    of_all = last.times != 1 and _BOXES_OF.fullmatch(text)  # of so many of them: boxes of 350
    asks = of_all or _MANY_BOXES.search(record["heard"]) or _MANY_BOXES.search(text)
    if not asks or _OTHER.search(text) or len(places_of(text)) != 1:
        return False
    more = read_as(text, "boxes", c.parameters, wanted="box")
    heard = more.givens.get("box") or more.givens.get("count")  # a box of 12 tubes
    place = places_of(text)[0]
    of_a_box = _BOX_OF.search(text[: place.start]) or _TO_A_BOX.match(text[place.end :])
    if heard is None or len(more.givens) > 1 or more.unplaced or ("box" not in more.givens and not of_a_box):
        return False
    count = Given("count", Count(Fraction(str(answer["value"])), "count", answer["text"]), "earlier")
    box = Given("box", heard.value, "asked")
    if not _worked(c, record, "boxes", {"count": count, "box": box}):
        return False
    if record["outcome"] == "answered" and last.topic.name == "fasteners":  # and 18 battens is a change of the screws
        counted, boxes = blank(record["heard"], record["via"], c.job, record["file"]), c.last
        c.finish(counted, [c.worked(last, {**told_of(last), "box": box})], Question(last.topic.name))
        if counted["outcome"] != "answered":
            c.last, c.pending = boxes, None
        elif c.last is not None:
            c.last.text = last.text
    return True


def height_of_some(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks how high so many of the courses just laid out come; then that is worked, at their own exposure."""
    last = c.last if c.pending is None else None
    found = _COME_UP.fullmatch(text) if last is not None and last.record.get("answer") else None
    if last is not None and found is not None and last.topic.name == _END_CUT:  # asked between, of the same boards
        last = next((asked for asked in reversed(c.earlier) if asked.topic.name in _COURSED), last)
    if last is None or found is None or last.topic.name not in _COURSED:
        return False
    words = found["n"] or counted_to(found["nth"] or found["nth_one"])
    said = [row.value for row in numbers_in(words)]
    lines = [last.record["answer"], *last.record["also"]]
    each = next((line for line in lines if line["name"] == "exposure" and line["value"] is not None), None)
    given = last.givens.get("exposure")
    exposure = Length(Fraction(str(each["value"])), each["unit"], each["text"]) if each else given.value if given else None
    if len(said) != 1 or not isinstance(said[0], Number) or exposure is None:
        return False
    known = {
        "count": Given("count", Count(said[0].value, "count", words), "asked"),
        "exposure": Given("exposure", exposure, "earlier"),
    }
    return _worked(c, record, "height of courses", known)


def crown_on_it(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks of a crown lying flat on the corner just worked, by its spring; then that is worked."""
    last = c.last if c.pending is None else None
    places = places_of(text) if last is not None and last.topic.name in _OF_ONE_CORNER and _CROWN.search(text) else []
    if len(places) != 1 or not isinstance(places[0].value, Angle | Number) or _OTHER.search(text) or _SQUARE.search(text):
        return False
    topic = c.topics["compound cut"]
    spring = Angle(places[0].value.value, "deg", text[places[0].start : places[0].end])
    known = {"spring": Given("spring", spring, "asked")}
    corner = piece(c, topic, "corner", known, text)
    return bool(corner) and _worked(c, record, topic.name, {**known, **corner})


def ends_cut(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks at what angle the boards of the gable just worked are cut at their ends; then that is worked."""
    last = c.last if c.pending is None else None
    if last is None or last.topic.name not in _RAKED or not last.record.get("answer") or not _ENDS_CUT.fullmatch(text):
        return False
    pitch = last.givens.get("pitch")
    if pitch is None or numbers_in(text) or _OTHER.search(text):
        return False
    return _worked(c, record, _END_CUT, {"pitch": Given("pitch", pitch.value, "earlier", pitch.sure)})


def squares_of_it(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line puts the area just worked in squares, with so much waste; then those are worked."""
    last = c.last if c.pending is None else None
    answer = last.record.get("answer") if last is not None else None
    found = _IN_SQUARES.fullmatch(text) if answer and answer["unit"] in ("ft2", "m2") else None
    if last is None or not answer or found is None or last.topic.name == "roof area":  # which has squares of its own
        return False
    more = read_as(f"{found['waste']} percent waste", "squares", c.parameters, wanted="waste")
    if more.unplaced or more.givens.keys() != {"waste"}:
        return False
    area = Given("area", Area(Fraction(str(answer["value"])), answer["unit"], answer["text"]), "earlier")
    return _worked(c, record, "squares", {"area": area, "waste": Given("waste", more.givens["waste"].value, "asked")})


def joint_instead(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line supposes another joint of a gable that was cut for another pitch; then that is worked."""
    last = c.last if c.pending is None else None
    if last is None or last.topic.name != "rounded pitch" or numbers_in(text) or not _SUPPOSES.search(text):
        return False
    kind = last.topic.parameter("joint").kind
    named = [joint for joint in kind if str(joint.value) in text.lower()]  # type: ignore[attr-defined]
    if len(named) != 1:
        return False
    c.finish(record, [c.worked(last, {**told_of(last), "joint": Given("joint", named[0], "asked")})], Question(last.topic.name))
    return True


def bite_of(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks what a screw of such a length bites behind the layers just told; then that is worked."""
    last = c.last if c.pending is None else None
    layers = last.givens.get("layers") if last is not None else None
    text = _NO_NUMBER.sub("screw", text)
    places = places_of(text) if layers is not None else []
    if layers is None or len(places) != 1 or not isinstance(places[0].value, Length | Number):
        return False
    if not asks_its_bite(text, places[0]) or _OTHER.search(text) or ALTERED.search(text):
        return False
    more = read_as(text, "fastener penetration", c.parameters, wanted="fastener")
    long = more.givens.get("fastener")
    if long is None or more.unplaced or more.givens.keys() != {"fastener"}:
        return False
    given = Given("fastener", long.value, "asked", long.sure)
    return _worked(c, record, "fastener penetration", {"layers": Given("layers", layers.value, "earlier"), "fastener": given})


def _worked(c: Conversation, record: Record, topic: str, known: dict[str, Given]) -> bool:
    """Work a topic with what the line tells and what is as before, saying that; not where that may be so no more."""
    if c.last is None:
        return False
    if stale(c, c.last) and let_fall(c) is None:  # a line right before is asked about by whoever tries these
        put_asked(record, "follow-up", "A number told since the last answer came to nothing: say all of that question in one go.")
        return True
    own = {name for name, given in known.items() if given.source == "asked" and name in _TOLD}
    before = {name: given if name in own else Given(name, given.value, "earlier") for name, given in known.items()}
    c.finish(record, [c.worked(Asked(c.topics[topic], {}, metric=c.last.metric), before)], Question(topic))
    if record["outcome"] == "answered":
        record["say"] = the_same(record) + record["say"]
    return True


# tried in this order
OF_IT = (
    angle_of_it, pitch_of_it, boxed, bite_of, height_of_some, crown_on_it, ends_cut, squares_of_it, joint_instead,
)  # fmt: skip
