"""What a question takes from the one before it: the same pitch, its answer ("can my saw cut it?"), its area or count."""

from __future__ import annotations

import re
from collections.abc import Sequence
from fractions import Fraction
from typing import TYPE_CHECKING, Any

from assistant.asked_after import asked_after
from assistant.asked_next import ASKED_NEXT
from assistant.asked_of_it import OF_IT
from assistant.counted_anew import counted_again, counted_anew
from assistant.frame_after import MEASURED_AGAIN, another_frame, taped_across
from assistant.goes_on import goes_on
from assistant.last_in_unit import last_in_unit
from assistant.next_of_it import courses_of_it, nails_of_it, of_the_coil, rows_of, so_long_each
from assistant.openings_told import openings_told
from assistant.pending import Asked
from assistant.put_to_it import put_to_it
from assistant.roles_alike import ALTERED, NO_OPENINGS, SEVERAL
from assistant.same_wall import of_the_same_wall
from assistant.still_open import goes_on_from, let_fall
from intents.expressions import expression
from intents.question import Question
from solvers.quantities import Area, Count, Length, Money, Pitch, Quantity
from solvers.registry import Topic
from solvers.slots import Given, Parameter

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

_POINTS = {"it", "that", "this", "them"}
_PRICED = ("cost", "weight")
_MEASURED, _METRIC = ("ft2", "m2"), ("mm", "cm", "m", "m2")  # squares have their waste in them
_ASKS_AREA = expression(r"How much area\b")
_ASKS_LENGTH = "What is the length"
_COVERS = ("squares", "cladding boards", "membrane rolls", "sheets")  # what is asked of the wall that was just measured
# Another wall than the one before, or an area that is still to be told.
_ANOTHER = expression(
    r"\b(?:other|another|next|second|different|new|north|south|east|west|lake|ramp|front|back|left|right|whole|rest|total|if)\b",
    re.IGNORECASE,
)
_OPEN = "how far open"
_PUT_RIGHT = expression(r"^\W*(?:no|nope|nah|sorry|wait|actually|hang on|make it|i meant?)\b|\bit['’]?s\b", re.IGNORECASE)
_COMMON = expression(r"\b(?:the|a) commons?\b", re.IGNORECASE)
_IF_I = expression(r"\bif (?:i|we)\b", re.IGNORECASE)  # which supposes no other corner
_WORKED_ON = ("cost", "weight", "conversion", "tape arithmetic", "squares", "can my saw cut it")  # which go on from an answer
_THOSE_ROWS = expression(
    r"\b(?:those|these|them|that many)\b|\b(?:up|on|in|to|per) (?:each|every)\b"
    r"|\bthe (?:courses|rows|straps|battens|strapping)\b",
    re.IGNORECASE,
)
_EACH = expression(r"\b(?:each|apiece|(?:per|an?) (?:stick|board|piece|panel|roll|tube|length))\b", re.IGNORECASE)
_UNITS = "one|two|three|four|five|six|seven|eight|nine"
_WORD = (  # a number of dollars in words; "twelve fifty" has cents, and is read elsewhere
    rf"(?:(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -](?:{_UNITS}))?|{_UNITS}|ten|eleven|twelve"
    r"|(?:thir|four|fif|six|seven|eigh|nine)teen|(?:a|one) hundred)(?: and a half)?"
    r"(?=\s+(?:dollars|bucks|quid|euros?|each|apiece|an?|per|the)\b|\W*$)"
)
_COINS = (  # dollars and cents in words, of each: eleven fifty
    rf"(?:{_UNITS}|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen"
    rf"|(?:twenty|thirty|forty|fifty)(?:[ -](?:{_UNITS}))?)"
    r" (?:ten|twenty|twenty[ -]five|thirty|forty|fifty|sixty|seventy|seventy[ -]five|eighty|ninety|ninety[ -](?:five|nine))"
    r"(?= (?:each|apiece|an? (?:sheet|board|stick|box|tube|bag|roll|length|piece|panel|square|bundle))\b)"
)
_PRICED_AT = expression(
    r"(?:(?:and|so|ok|okay|then|now|what do (?:i|we) pay(?: for)?|what['’]?s|what is|what would|what do|what does|what['’]ll"
    r"|how much(?: is| for)?|that|it|they|them|those|these|all|the lot|price|priced|come to|comes to|cost|be|if|are|is|theyre"
    r"|its|['’]s|['’]re|at|for|say)[ ,]*)*"
    rf"(?P<how>\b(?:at|for|cost|costs)\s+|[$£€])?(?P<n>\d*(?P<cents>\.\d\d)|\d+|(?P<coins>{_COINS})|{_WORD})\s*"
    r"(?P<money>dollars|bucks|quid|euros?|cents)?"
    r"(?P<of>\s+(?:each|apiece|(?:an?|per|the) (?P<noun>[a-z]+(?: foot| feet| metre| meter)?)))?",
    re.IGNORECASE,
)
_SAYS_COST = expression(r"\b(?:cost|price)", re.IGNORECASE)
_WHAT_COST = expression(  # at 1.90 a foot | what's it cost
    r"[ ,]+(?:so )?(?:what(?:['’]?s| is| does| do| will| would|['’]ll)?"
    r"(?: (?:it|that|they|this|(?:the|those|these) [a-z]+))?(?: all)? (?:cost|come too?|run|set (?:me|us) back)(?: me| us)?"
    r"|what (?:am i|are we) looking at|how much(?: is (?:it|that))?"
    r"|what['’]?s (?:that(?: cost)?(?: me| us)?|the (?:total|whole )?(?:cost|damage|bill)))$",
    re.IGNORECASE,
)
_STICKS = expression(
    r"(?:(?:and|so|ok|then|now)[ ,]+)*(?P<short>\d+(?:'|ft| ft| foot)(?: ?(?:\d ?x ?\d+|stock|sticks))+"
    r"(?: how many)? for (?:that|it|both|those|them))"
    r"|(?:(?:and|so|ok|then|now)[ ,]+)*(?P<both>both (?:sides|rakes|of them)),? (?:in|from|out of)"
    r" (?P<of>\d+)[ -]?(?:foot(?:er)?s?|'?s)"
    r"|(?:(?:and|so|ok|then|now)[ ,]+)*how many (?P<n>\d+|eight|ten|twelve|fourteen|sixteen|eighteen|twenty)"
    r"(?:[ -]?(?:foot|ft|')(?:er)?s?|'?s)(?: (?:sticks|boards|lengths|pieces))?"
    r"(?: (?:is|for|does|do|would|will|are|in)\b(?: (?:that|it|them|those|both|i need|we need|take|be|need))*)?",
    re.IGNORECASE,
)
_OF_BOTH = expression(  # how many 16 footers for both sides
    r"\bhow many (\d+)[ -]?(?:foot|ft|')?(?:er)?s?(?: sticks)? (?:for|to do|in|do) (?:both (?:sides|rakes|of them)|the two)$",
    re.IGNORECASE,
)
_THINGS_AT = expression(
    r"^\W*(?:(?:and|so|ok|the|if|say)\W+)*(?:boards|sticks|tubes|panels|rolls|sheets|planks|lengths|pieces|they)"
    r"(?:['’]re| are| cost| come)? (?=(?:at |for )?[$£€]?\d)",
    re.IGNORECASE,
)
_PACKS = ("box", "stick", "roll", "tube")  # what is counted beside the things in it, or cut from it
_OF_AREA = {
    "square": ("square",), "ft2": ("foot", "sq foot", "square foot"), "m2": ("metre", "meter", "square metre", "square meter")
}  # fmt: skip


def of_the_last(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line only asks something of the last answer: a share of it, a value beside it, it in another unit, its cost."""
    works = (goes_on, put_to_it, last_in_unit, asked_after, *OF_IT, *ASKED_NEXT, priced, openings_told, sticks_of_it,
             taped_across, another_frame, counted_anew, nails_of_it, courses_of_it, of_the_coil)  # fmt: skip
    return goes_on_from(c, record, text, works)


def priced(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells what each of the things just counted, or a foot of the area just worked, costs: what they cost."""
    answer = c.last.record.get("answer") if c.last and c.pending is None else None
    line = _WHAT_COST.sub("", text.strip(" .!?"))
    found = _PRICED_AT.fullmatch(line) or _PRICED_AT.fullmatch(_THINGS_AT.sub("", line)) if answer else None
    if c.last is None or not answer or found is None or _has_a_price(c.last):
        return False
    led = re.search(rf"\b(?:at|for|costs?)\s+{re.escape(found['n'])}", text, re.IGNORECASE)
    if not (found["how"] or found["cents"] or found["money"] or led):
        return False  # 26 each may be pounds
    cents = found["cents"] and not any(getattr(g.value, "unit", "") in _METRIC for g in c.last.givens.values())  # no 2.40 m
    if not found["of"] and (answer["unit"] != "count" or not (found["money"] or cents or _SAYS_COST.search(text))):
        return False  # at 16 is a spacing
    noun = (found["noun"] or "").lower()
    covered = c.last.givens.get("area")
    if noun.startswith("square ") and answer["unit"] not in _OF_AREA and covered is not None and isinstance(covered.value, Area):
        answer = {"unit": covered.value.unit, "value": covered.value.value, "text": covered.value.text}  # weighed, and priced
    area = answer["unit"] in _OF_AREA and noun in _OF_AREA[answer["unit"]]
    by_length = noun in ("foot", "metre", "meter") and not area  # of how many feet of things counted it can't be told: asked
    if by_length and answer["unit"] == "count":  # of the straps' whole length, where that is known
        answer = next((line for line in c.last.record["also"] if line["name"] == "total length"), answer)
    answer = _packed(c.last.record, noun) or answer
    long = by_length and answer["unit"] in Length.units
    counts = answer.get("name") == "needed" and {noun, f"{noun}s"} & c.last.things  # so many tubes, by the same rate
    if noun in _PACKS and noun not in answer["name"] and not counts:
        return False  # how many boxes was never asked
    if (answer["unit"] != "count" and not area and not long) or noun in ("hour", "day"):
        return False
    of = f"per {_OF_AREA[answer['unit']][-1]}" if area else f"a {noun}" if by_length else "each"
    money = "cents" if (found["money"] or "").lower() == "cents" else "" if found["coins"] else "dollars"
    questions = [q for q in c.read(f"cost at {found['n']} {money} {of}").questions if q.topic == "cost"]
    for question in questions[:1]:
        parameter = c.topics["cost"].parameter("area" if area else "length" if long else "count")
        kind = Area if area else Length if long else Count
        value = kind(Fraction(str(answer["value"])), answer["unit"], answer["text"])
        base = None if by_length and not long else _with(c.topics["cost"], parameter, value)
        c.finish(record, c.ways(question, base), question)
        if record["outcome"] == "answered":
            record["say"] = f"With the {parameter.label} {answer['text']} as before. {record['say']}"
    return bool(questions)


def _has_a_price(last: Asked) -> bool:
    """Whether a price was told already, or is what the question is about: another is a change of that."""
    money = [p.name for p in last.topic.parameters if p.kind is Money]
    return bool(money) and (last.topic.name in _PRICED or any(name in last.givens for name in money))


def _packed(record: dict[str, Any], noun: str) -> dict[str, Any] | None:
    """The count beside the answer that a price is for each of: the boxes of the nails, at 30 a box."""
    return next((line for line in record["also"] if noun in _PACKS and noun in line["name"] and line["unit"] == "count"), None)


def sticks_of_it(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks how many sticks so long the length just worked takes: how many 16 footers is that."""
    answer = c.last.record.get("answer") if c.last and c.pending is None else None
    line = _OF_BOTH.sub(r"both sides in \1 footers", text.strip(" .!?").replace("’", "'"))
    found = _STICKS.fullmatch(line) if answer else None
    if not answer or found is None or answer["value"] is None or answer["unit"] not in Length.units:
        return False
    topic, shown = c.topics["trim sticks"], c.shown
    answer = shown if shown is not None and shown["unit"] in Length.units else answer  # both rakes, read off before it
    if found["both"] or SEVERAL.search(record["heard"]):
        answer = next((line for line in c.last.record["also"] if line["name"].startswith("both ")), None)  # type: ignore[union-attr]
    if answer is None:
        return False
    feet = found["n"] or found["of"] or re.match(r"\d+", found["short"])[0]  # type: ignore[index]
    questions = [q for q in c.read(f"trim sticks of {feet} foot stock").questions if q.topic == topic.name]
    total = topic.parameter("total")
    for question in questions[:1]:
        base = _with(topic, total, Length(Fraction(str(answer["value"])), answer["unit"], answer["text"]))
        c.finish(record, c.ways(question, base), question)
        if record["outcome"] == "answered":
            record["say"] = f"For {answer['text']}. {record['say']}"
    return bool(questions)


def carried(base: Asked, parameters: Sequence[Parameter]) -> dict[str, Given]:
    """What another topic was given under a name that values are kept under ("and the peak joint?": the same pitch)."""
    known = {}
    for name, given in base.givens.items():
        kept = base.topic.parameter(name).slot.kept
        if kept and given.source != "assumed":
            known[kept] = given
    even = base.record.get("answer") if base.topic.name == "course layout" else None
    if even and even["name"] == "exposure":  # which the courses have, and not the most that was allowed
        known["exposure"] = Given("exposure", Length(Fraction(str(even["value"])), even["unit"], even["text"]), "earlier")
    found = {
        p.name: Given(p.name, known[p.slot.kept].value, known[p.slot.kept].source)
        for p in parameters
        if p.slot.kept in known and isinstance(known[p.slot.kept].value, p.kind)
    }
    for told in (p for p in base.topic.parameters if p.slot.names and p.name in base.givens):
        same = next((p for p in parameters if p.kind is told.kind and p.slot.names in found), None)
        if same is not None:
            found[same.name] = base.givens[told.name]
        else:  # a run that stood for the gable's width is no width elsewhere
            kept = base.topic.parameter(told.slot.names).slot.kept
            found = {p.name: found[p.name] for p in parameters if p.name in found and p.slot.kept != kept}
    return found


def pointed(c: Conversation, text: str, question: Question) -> Asked | None:
    """What a question that lacks a value takes of the last answer, which it points at or plainly goes on from."""
    answer = c.last.record.get("answer") if c.last else None
    if not answer or answer["value"] is None or let_fall(c) is not None:
        return None
    topic = c.topics[question.topic]
    same = of_the_same_wall(c, topic, question, text) or _same_corner(c, topic, question, text)
    same = same or so_long_each(topic, question, text, answer)
    if same is not None:
        return same
    value = Fraction(str(answer["value"]))
    if question.missing == ["pitch"] and answer["name"] == "pitch" and not question.lacking and not _ANOTHER.search(text):
        return _with(topic, topic.parameter("pitch"), Pitch(value, answer["unit"], answer["text"]))
    if (named := _same_named(c, topic, question, text)) is not None:
        return named
    if _POINTS & set(text.lower().strip("?.! ").split()):
        for parameter in (topic.parameter(name) for name in question.missing):
            is_that = set(parameter.label.split()) <= set(answer["name"].lower().split())
            is_that = is_that and not answer["name"].startswith("change of ")  # how much longer it gets is no length of it
            if is_that and issubclass(parameter.kind, Quantity) and answer["unit"] in parameter.kind.units:
                return _with(topic, parameter, parameter.kind(value, answer["unit"], answer["text"]))
    return (
        _measured_again(c, topic, question)
        or _rows_of_it(c, topic, question, text)
        or _so_long(c, topic, question, text, answer)
        or _covering(c, topic, question, text, answer["unit"], value, answer["text"])
        or counted_again(c, topic, question, text)
        or _of_what_was_priced(c, topic, question, text)
    )


def _of_what_was_priced(c: Conversation, topic: Topic, question: Question, text: str) -> Asked | None:
    """What a question lacks of the one whose answer was weighed, priced or put in another unit: the gable, and how high is it."""
    if c.last is None or c.last.topic.name not in _WORKED_ON or question.unplaced or question.lacking:
        return None
    if not (question.missing or c.ways(question)[0].worked.asks):
        return None
    if _ANOTHER.search(text) or c.last.topic is topic:
        return None
    before = next((asked for asked in reversed(c.earlier) if asked.topic.name not in _WORKED_ON), None)
    corrects = before is not None and before.topic is topic and _PUT_RIGHT.search(text)
    if before is not None and corrects and c.ways(question, before)[0].worked.working:
        return before  # an inch off the sloped length, and then no, it's five twelve, what's the sloped length
    known = carried(before, topic.parameters) if before is not None else {}
    return Asked(topic, known) if question.missing and set(question.missing) <= known.keys() else None


def _same_named(c: Conversation, topic: Topic, question: Question, text: str) -> Asked | None:
    """What a question lacks of the one before, where the line says that it is the same ("on the same run"); or its layers."""
    if c.last is None or not question.missing or question.unplaced or question.lacking:
        return None
    told = {c.last.topic.parameter(n).label: given for n, given in c.last.givens.items() if given.source != "assumed"}
    named = {p.label for p in topic.parameters if p.label in told and re.search(rf"\bsame {p.label}\b", text, re.I)}
    named |= {"run"} & told.keys() if _COMMON.search(text) else set()  # of a hip, and then of the common rafter
    same = {p.name: told[p.label] for p in topic.parameters if p.label in named}
    layers = c.last.givens.get("layers")
    if layers is not None and question.missing == ["layers"] and not _ANOTHER.search(text) and not ALTERED.search(text):
        same["layers"] = layers
    known = carried(c.last, topic.parameters) if same else {}
    if not same or not set(question.missing) <= {*same, *known}:
        return None
    return Asked(topic, {**known, **{name: Given(name, given.value, "earlier") for name, given in same.items()}})


def _measured_again(c: Conversation, topic: Topic, question: Question) -> Asked | None:
    """The sides of the frame whose diagonal was just worked, for how far out of square that measures."""
    if c.last is None or (c.last.topic.name, topic.name) != MEASURED_AGAIN or not question.missing or question.unplaced:
        return None
    sides = {n: Given(n, given.value, "earlier") for n, given in c.last.givens.items() if n in ("side", "other_side")}
    return Asked(topic, sides) if set(question.missing) <= sides.keys() and not sides.keys() & question.givens.keys() else None


def _rows_of_it(c: Conversation, topic: Topic, question: Question, text: str) -> Asked | None:
    """The count of courses or straps just laid out, for the fasteners of "those courses"."""
    if topic.name != "fasteners" or "rows" not in question.missing or question.unplaced or not _THOSE_ROWS.search(text):
        return None
    rows = rows_of(c.last) if c.last is not None and c.last.record.get("answer") else None
    return _with(topic, topic.parameter("rows"), rows) if rows is not None else None


def _same_corner(c: Conversation, topic: Topic, question: Question, text: str) -> Asked | None:
    """The corner that was just worked, for another joint of it: in three pieces."""
    here = c.last is not None and c.last.topic is not topic and not _ANOTHER.search(_IF_I.sub("", text))
    corner = c.last.givens.get("corner") if c.last is not None and here else None
    lacks = question.missing == ["corner"] or (topic.name == _OPEN and "corner" in question.missing)  # and its face
    if corner is None or not lacks or question.unplaced or question.lacking:
        return None
    return Asked(topic, {"corner": Given("corner", corner.value, "earlier")})


def _so_long(c: Conversation, topic: Topic, question: Question, text: str, answer: dict[str, Any]) -> Asked | None:
    """The length just worked, for what a foot of it costs or weighs: what does that weigh at two pounds a foot."""
    points = _POINTS & set(re.findall(r"[a-z]+", text.lower()))
    if topic.name not in _PRICED or answer["unit"] not in Length.units or not points or question.unplaced:
        return None
    parameter = next((p for p in topic.parameters if p.name == "length"), None)
    if parameter is None or "length" in question.givens or not c.ways(question)[0].worked.asks.startswith(_ASKS_LENGTH):
        return None
    return _with(topic, parameter, Length(Fraction(str(answer["value"])), answer["unit"], answer["text"]))


def _covering(
    c: Conversation, topic: Topic, question: Question, text: str, unit: str, value: Fraction, said: str
) -> Asked | None:
    """The area just worked, for what covers it; the count just worked, for what each of them costs or weighs."""
    parameters = {parameter.label: parameter for parameter in topic.parameters}
    each = unit == "count" and topic.name in _PRICED and _EACH.search(text)  # of the boards counted, and not of their area
    covered = c.last.givens.get("area") if c.last is not None and c.last.topic.name in _COVERS and not each else None
    if covered is not None:  # squares of it
        was = covered.value
        unit, value, said = was.unit, was.value, was.text
    area = unit in _MEASURED and topic.name in (*_COVERS, *_PRICED) and not _ANOTHER.search(text)
    count = unit == "count" and topic.name in _PRICED and _EACH.search(text)
    parameter = parameters.get("area") if area else parameters.get("count") if count else None
    if parameter is None or parameter.name in question.givens or question.missing or question.unplaced:
        return None
    if area and c.last is not None and ((c.last.times == 1 and SEVERAL.search(text)) or NO_OPENINGS.search(text)):
        return None  # the squares for both of them, where the area is of one
    asks = c.ways(question)[0].worked.asks
    if not _ASKS_AREA.match(asks) if area else not asks.startswith("How many"):
        return None  # it lacks something else
    kind = Area if area else Count
    known = carried(c.last, topic.parameters) if c.last else {}
    return Asked(topic, {**known, **_with(topic, parameter, kind(value, unit, said)).givens})


def _with(topic: Topic, parameter: Parameter, value: Quantity) -> Asked:
    return Asked(topic, {parameter.name: Given(parameter.name, value, "earlier")})
