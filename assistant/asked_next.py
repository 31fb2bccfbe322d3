"""What is asked next in words that lean on the answer before: the boxes at so many a sheet, what a frame should measure, how many
vents of a size make up the free area, a slope in degrees as so many in twelve, the roof of an addition at the same pitch.

A line must be that question whole, with the numbers it tells and no other: what is left of it would change the answer.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.pending import Asked
from assistant.piece_before import stale
from assistant.record import become, blank, put_asked, put_noted, the_same
from assistant.said_over import as_length, stem, times_apart, whole
from assistant.several import told_of
from assistant.speech import spoken
from assistant.still_open import let_fall
from intents.expressions import expression
from intents.matcher import read_as
from intents.question import Question
from intents.talk import numbers_in
from solvers.quantities import Angle, Area, Count, Length, Number, Pitch, Quantity
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

_LEAD = r"\W*(?:(?:and|so|ok|okay|then|now|right|but|well|also)\W+)*"
_FIXINGS = r"(?:screws?|nails?|clips?|staples?|fixings?|fasteners?|hooks?|brads?|pins?)"
_PACKS = r"(?:boxes|packs|packets|bags|tubs|cartons|pails)"
_FOR_EACH = r"(?:an?|per|to an?|to the|to each|for each|for every|each|every|in each|in every)"
_IS_THAT = (
    r"(?:(?: is| are| does| do| will| would)? (?:that|it|i|we|those)(?: (?:be|come to|need|want|take|make"
    r"|buy))?)?(?: then| now)*\W*"
)
_BOXES = (  # at 32 screws a sheet how many boxes of a hundred is that
    expression(
        rf"{_LEAD}(?:at |with |using |if (?:it['’]?s|i use|we use) |it['’]?s |allow(?:ing)? |say )?(?P<each>\d+|[a-z -]+?)"
        rf" {_FIXINGS} {_FOR_EACH} (?P<thing>[a-z]+)[, ]+(?:and |so |then )*how many {_PACKS} of (?P<box>[^,;?]+?){_IS_THAT}",
        re.IGNORECASE,
    ),
    expression(
        rf"{_LEAD}how many {_PACKS} of (?P<box>[^,;?]+?)(?: {_FIXINGS})?(?: (?:do i need|is that|would that be|will i need))?"
        rf"(?: at| with| for|,|, at)+ (?P<each>\d+|[a-z -]+?)(?: {_FIXINGS})? {_FOR_EACH} (?P<thing>[a-z]+)\W*",
        re.IGNORECASE,
    ),
)
_EACH_IN_ALL = expression(  # at 32 screws a sheet how many screws is that
    rf"{_LEAD}(?:at |with |using |if (?:it['’]?s|i use|we use) |it['’]?s |allow(?:ing)? |say )?(?P<each>\d+|[a-z -]+?)"
    rf" {_FIXINGS} {_FOR_EACH} (?P<thing>[a-z]+)[, ]+(?:and |so |then )*how many(?: {_FIXINGS})?{_IS_THAT}"
    r"(?:(?:altogether|in all|all told|in total|total)\W*)?",
    re.IGNORECASE,
)
_AT_SO_MANY = expression(
    rf"{_LEAD}(?:(?:what about|how about|if it['’]?s|make it) )?(?:at |with )?(?P<each>\d+|[a-z -]+?)(?: {_FIXINGS})? {_FOR_EACH}"
    r" (?P<thing>[a-z]+)\W*",
    re.IGNORECASE,
)
_SHOULD = expression(  # and what should it measure
    rf"{_LEAD}what (?:should|ought|would|must) (?:it|that|the (?:diagonal|tape|frame|lining|corner to corner)|they"
    rf"|(?P<one>(?:an?|one|the)"
    r" (?:(?:that['’]?s|which is) )?(?P<n>[^,;?]+?) (?P<side>wide|high|tall|long|one|deep)(?: one)?))"
    r" (?:to )?(?:measure|be|read|come to|come out at|tape)(?: (?:corner to corner|on the diagonal|across(?: the corners)?|if it"
    r"(?:['’]?s| is| was| were) square|to be square|when it['’]?s square|square|dead square|then))*\W*",
    re.IGNORECASE,
)
_TO_BE = expression(
    rf"{_LEAD}what(?:['’]?s| is)? (?:the |its )?(?:right|true|proper|correct|square) (?:diagonal|measurement|size|one)"
    r"(?: (?:be|then|meant to be|supposed to be))*\W*",
    re.IGNORECASE,
)
_VENTS = expression(  # how many 50 square inch roof vents is that
    rf"{_LEAD}how many (?:of (?:the|those) )?(?P<n>[^,;?]*?\d[^,;?]*?|[a-z -]+?)(?P<unit> ?(?:square inch(?:es)?"
    rf"|sq\.? ?in(?:ch(?:es)?)?"
    r"|in2|inch2|square cm|sq\.? ?cm|square centimet(?:re|er)s?))(?: (?:roof|box|gable|ridge|soffit|round|static"
    r"|turtle|mushroom))?"
    rf" (?:vents?|ventilators?|cowls?|louvres?|louvers?|ones){_IS_THAT}",
    re.IGNORECASE,
)
_STRAPS_LONG = expression(
    rf"{_LEAD}(?:(?:the )?wall|(?:each|every)(?: (?:one|batten|strap|strip))?|they|(?:the )?(?:battens|straps|strips))"
    r"(?:s|['’]s| is|s are| are| stands?| goes| go| runs?)? (?P<n>[^,;?]+?)(?P<unit> (?:foot|feet|ft|m|met(?:re|er)s?))?"
    r" (?:high|tall|long)[, ]+"
    r"(?:and |so |then )*(?:how (?:many|much)(?: (?:lineal|linear))? (?:feet|foot|met(?:re|er)s|length|strapping)\b"
    r"|what(?:['’]?s| is)? (?:the )?total (?:length|feet|footage|met(?:re|er)s)"
    r"|what length\b(?=.*\b(?:total|all|altogether)\b))[^\d]*",
    re.IGNORECASE,
)
_STRAP_STICKS = expression(  # how many 4.8 metre lengths to get all those
    rf"{_LEAD}how many (?:of (?:the|those) )?(?P<n>[^,;?]+?)(?P<unit> ?(?:foot|feet|ft|m|met(?:re|er)s?))?(?:er)?s?"
    r"(?: (?:lengths?|sticks?|boards?|ones))?"
    r"(?: (?:do (?:i|we) need|will (?:i|we) need|is that|to (?:get|make|cut|do)|does that take|for|would (?:that|it) be|out of))*"
    r"(?: (?:all )?(?:of )?(?:those|that|them|it|the lot|that lot|all))*(?: (?:battens|straps|strips|lot))?\W*",
    re.IGNORECASE,
)
_IN_TWELVE = expression(  # what's that as so many in twelve
    rf"{_LEAD}(?:what(?:['’]?s| is| would| does)?|how (?:much|many) is) (?:that|it|this|(?:that|the|this) (?:roof"
    rf"|pitch|angle|slope))"
    r"(?: be| come to| come out at| make)?"
    r" (?:as|in|to|expressed as|into) (?:an? )?(?:(?:so many|so much|something|x|what|inches|rise|how many) )?"
    r"(?:in|over|per|to) (?:12|twelve|the foot|a foot)(?: (?:of run|run|pitch))*\W*"
    rf"|{_LEAD}(?:what(?:['’]?s| is)?|how much is) (?:that|it|this) (?:as|in) (?:an? )?(?:roof )?pitch(?: in (?:12|twelve))?\W*"
    rf"|{_LEAD}(?:what['’]?s that |which is |that['’]?s )?(?:how many|what) in (?:12|twelve)(?: is (?:that|it))?\W*"
    rf"|{_LEAD}what(?:['’]?s| is|s) (?:that|it|this) (?:in|over) (?:12|twelve)\W*"
    r"|[a-z'’ ]{0,40}\b(?:that|the|this|it)(?: (?:angle|slope|roof|pitch))? (?:as|in|to) (?:a )?rise in (?:12|twelve)[^\d]*",
    re.IGNORECASE,
)
_SAME_PITCH = expression(
    r"\b(?:match(?:es|ing|ed)?|at|with|to|on|of) (?:to )?(?:that|the same|this|the old|same) (?:pitch|slope)\b|\bsame pitch\b",
    re.IGNORECASE,
)
_ROOF_AREA = expression(
    r"\b(?:how much|what(?:['’]?s| is)?(?: the)?|how big(?:['’]?s| is)?(?: the)?) roof(?:ing)?(?: area)?\b", re.IGNORECASE
)
_MATCHING = expression(
    rf"{_LEAD}(?:the |my |our )?(?:addition|extension|new (?:bit|part|wing|roof|porch)|porch|garage|lean[- ]to|wing"
    rf"|shed)?(?:['’]s| is| will)?"
    r" ?(?:to )?(?:match(?:es|ing|ed)?(?: to)?|at|with|has|same as)? ?(?:that|the same|this|the old|same) (?:pitch|slope)[, ]+",
    re.IGNORECASE,
)
_BESIDE, _APART = 1.25, 1.5  # times as large: a size that is of one side, and of the other not
LONGEST = 160  # characters of such a line
_OTHER = expression(r"\b(?:other|another|next|different|second)\b", re.IGNORECASE)
_WHOLE_MM = 100  # a bare height from here on is in millimetres
_FRAMES = ("out of square", "square check")


def boxes_of_each(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks how many boxes it takes at so many for each of what was just counted; then those are worked."""
    last = c.last if _short(c, text) else None
    answer = last.record.get("answer") if last is not None else None
    found = next((match for shape in _BOXES if (match := shape.fullmatch(text))), None) if answer else None
    if last is None or not answer or found is None or answer["unit"] != "count" or _OTHER.search(text):
        return False
    each, box = (_number(found[name]) for name in ("each", "box"))
    if each is None or box is None or stem(found["thing"].lower()) not in {stem(word) for word in answer["name"].lower().split()}:
        return False
    count = Count(Fraction(str(answer["value"])), "count", answer["text"])
    told = {"each": Count(each, "count", found["each"]), "box": Count(box, "count", found["box"])}
    return _worked(c, record, "boxes", {"count": count}, told)


def each_again(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells another number for each of what was counted, after its boxes: and at 36 a sheet, no price."""
    last = c.last if _short(c, text) and c.last is not None and c.last.topic.name == "boxes" else None
    found = _AT_SO_MANY.fullmatch(text) if last is not None and "each" in last.givens else None
    each = _number(found["each"]) if found is not None else None
    if last is None or found is None or each is None or stem(found["thing"].lower()) not in last.things:
        return False
    told = {**told_of(last), "each": Given("each", Count(each, "count", found["each"]), "asked")}
    c.finish(record, [c.worked(last, told)], Question(last.topic.name))
    if record["outcome"] == "answered":
        record["say"] = spoken(f"With {found['each']} for each. ") + record["say"]
    return True


def fixings_in_all(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks how many screws it takes at so many for each of what was just counted; then those are worked."""
    last = c.last if _short(c, text) else None
    answer = last.record.get("answer") if last is not None else None
    found = _EACH_IN_ALL.fullmatch(text) if answer else None
    if last is None or not answer or found is None or answer["unit"] != "count":
        return False
    each = _number(found["each"])
    if each is None or stem(found["thing"].lower()) not in {stem(word) for word in answer["name"].lower().split()}:
        return False
    count = Count(Fraction(str(answer["value"])), "count", answer["text"])
    told = {"many": Number(each, "none", found["each"]), "number_done": Count(Fraction(1), "count", "1")}
    return _worked(c, record, "by the same rate", {"number": count}, told)


def should_measure(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks what a frame that was measured, or one with one side other, should be corner to corner."""
    last = c.last if _short(c, text) else None
    found = _SHOULD.fullmatch(text) or _TO_BE.fullmatch(text) if last is not None and last.topic.name in _FRAMES else None
    if last is None or found is None or not {"side", "other_side"} <= last.givens.keys():
        return False
    sides = {name: last.givens[name].value for name in ("side", "other_side")}
    if found.re is not _TO_BE and found.groupdict().get("one"):
        place = whole(found["n"])
        if place is None:
            return False
        value = place.value
        near = [name for name, was in sides.items() if _apart(value, was) <= _BESIDE]
        if len(near) > 1:
            was = " or ".join(f"the {side.text}" for side in sides.values())
            put_asked(record, "follow-up", f"Which side is {found['n']}, {was}? Say both sides.")
            return True
        if len(near) != 1 or any(_apart(value, was) < _APART for name, was in sides.items() if name not in near):
            return False
        new = (
            value
            if isinstance(value, Length)
            else Length(value.value, sides[near[0]].unit, f"{found['n']} {sides[near[0]].unit}")
        )
        del sides[near[0]]
        if _worked(c, record, "square check", sides, {near[0]: new}) and c.last is not None:
            c.last.changed = frozenset(near)  # which the next size is of too
        return True
    return _worked(c, record, "square check", sides, {})


def vents_of_a_size(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks how many vents of a free area make up what was just worked; then that is read off it."""
    last = c.last if c.last is not None and c.last.topic.name == "vent area" and _short(c, text) else None
    found = _VENTS.fullmatch(text) if last is not None and last.record.get("answer") else None
    number = _number(found["n"]) if found is not None else None
    if last is None or found is None or number is None:
        return False
    unit = "cm2" if re.search(r"cm|cent", found["unit"], re.IGNORECASE) else "in2"
    if unit not in Area.units:
        return False
    each = Area(number, unit, f"{found['n']}{found['unit']}")
    return _read_with(c, record, {"each": Given("each", each, "asked")}, "vents for all of it")


def straps_in_all(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells how high the wall is, and asks how much strapping that is in all."""
    last = c.last if c.last is not None and c.last.topic.name == "strapping" and _short(c, record["heard"]) else None
    found = _STRAPS_LONG.fullmatch(record["heard"]) if last is not None and last.record.get("answer") else None
    place = whole(found["n"]) if found is not None else None
    if last is None or found is None or place is None:
        return False
    long, value = last.givens["length"].value, place.value
    metric = re.match(r" m", found["unit"] or "", re.IGNORECASE) or (not found["unit"] and long.unit in ("m", "mm", "cm"))
    unit = "ft" if not metric else "mm" if value.value >= _WHOLE_MM else "m"
    high = value if isinstance(value, Length) else Length(value.value, unit, f"{found['n']} {unit}")
    return _read_with(c, record, {"height": Given("height", high, "asked")}, "total length")


def straps_in_sticks(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks how many lengths of stock the straps just worked are cut from; then that is read off them."""
    last = c.last if c.last is not None and c.last.topic.name == "strapping" and _short(c, text) else None
    found = _STRAP_STICKS.fullmatch(text) if last is not None and last.record.get("answer") and "height" in last.givens else None
    if last is None or found is None:
        return False
    said = f"{found['n']}{found['unit'] or ''}".strip()
    place = whole(said)
    if place is None or not isinstance(place.value, Length):
        return False
    stock = replace(place.value, text=said)
    return _read_with(c, record, {"stock": Given("stock", stock, "asked")}, "sticks")


def pitch_of_degrees(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for the slope that was told in degrees as so many in twelve; then that is worked."""
    last = c.last if _short(c, text) else None
    answer = last.record.get("answer") if last is not None else None
    if last is None or not answer or not _IN_TWELVE.fullmatch(text):
        return False
    told = [g.value for g in told_of(last).values() if isinstance(g.value, Pitch) and g.value.unit == "deg"]
    if len(told) != 1 or (answer["unit"] == "deg" and abs(float(answer["value"]) - float(told[0].value)) > 0.01):
        return False  # what the saw is set to is no slope
    return _worked(c, record, "pitch of an angle", {"angle": Angle(told[0].value, "deg", told[0].text)}, {})


def roof_at_that_pitch(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks the roof area of a plan at the pitch that was just told, or worked; then that is worked."""
    last = c.last if _short(c, text) else None
    answer = last.record.get("answer") if last is not None else None
    if last is None or not answer or not (_SAME_PITCH.search(text) and _ROOF_AREA.search(text)):
        return False
    pitches: list[Quantity] = [g.value for g in told_of(last).values() if isinstance(g.value, Pitch)]
    if answer["name"] == "pitch":
        pitches = [Pitch(Fraction(str(answer["value"])), answer["unit"], answer["text"])]
    more = read_as(_MATCHING.sub("", text), "roof area", c.parameters)
    if len(pitches) != 1 or more.unplaced or "pitch" in more.givens or not {"length", "width"} <= more.givens.keys():
        return False
    c.finish(record, c.ways(more, Asked(c.topics["roof area"], {"pitch": Given("pitch", pitches[0], "earlier")})), more)
    if record["outcome"] == "answered":
        record["say"] = the_same(record) + record["say"]
    return True


def _short(c: Conversation, text: str) -> bool:
    """Whether nothing waits for a reply, and the line is no longer than such a line is."""
    return c.pending is None and len(text) <= LONGEST


def _number(words: str) -> Fraction | None:
    """The one bare number that these words are."""
    place = whole(words.strip())
    bare = place is not None and isinstance(place.value, Number) and place.value.unit == "none"
    return place.value.value if place is not None and bare else None


def _apart(value: Quantity, was: Quantity) -> float:
    """How many times as large one of two lengths is as the other; a bare number is in the unit of what was told."""
    size = as_length(value, was.unit).to("in").value
    return times_apart(size, was.to("in").value) if size > 0 else _APART


def _worked(c: Conversation, record: Record, topic: str, before: Mapping[str, Quantity], told: Mapping[str, Quantity]) -> bool:
    """Work a topic with what is as before and what the line tells; not where what was before may be so no more."""
    if c.last is None:
        return False
    if stale(c, c.last) and let_fall(c) is None:
        put_asked(record, "follow-up", "A number told since the last answer came to nothing: say all of that question in one go.")
        return True
    known = {name: Given(name, value, "earlier") for name, value in before.items()}
    known |= {name: Given(name, value, "asked") for name, value in told.items()}
    c.finish(record, [c.worked(Asked(c.topics[topic], {}, metric=c.last.metric), known)], Question(topic))
    if record["outcome"] == "answered":
        record["say"] = the_same(record) + record["say"]
    return True


def _read_with(c: Conversation, record: Record, told: dict[str, Given], name: str) -> bool:
    """Work the last question with what the line tells, and read the value it asks for off that."""
    last = c.last
    if last is None or numbers_in(" ".join(given.value.text for given in told.values())) == []:
        return False
    trial = blank(record["heard"], record["via"], c.job, record["file"])
    c.finish(trial, [c.worked(last, {**told_of(last), **told})], Question(last.topic.name))
    line = next((line for line in trial["also"] if line["name"] == name), None) if trial["outcome"] == "answered" else None
    if line is None:
        become(record, trial)
        return True
    with_ = ", ".join(f"{last.topic.parameter(given.name).label} {given.value.text}" for given in told.values())
    put_noted(record, "explain", spoken(f"With the {with_}. {line['name'][:1].upper()}{line['name'][1:]}: {line['text']}."))
    record["also"] = [line]
    return True


ASKED_NEXT = (
    boxes_of_each,
    each_again,
    fixings_in_all,
    should_measure,
    vents_of_a_size,
    straps_in_all,
    straps_in_sticks,
    pitch_of_degrees,
    roof_at_that_pitch,
)  # in this order
