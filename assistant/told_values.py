"""A value told plainly after an answer, in words that are no question: "the lean-to's only three twelve", "46 boards",
"eight would look better", "it's dropped to 18 and 70".

Who or what it is told of says whether it can be a change: a part of the house, a thing of the question before, or "it". What is
told of the van or the dog is none.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.said_over import places_of, stem
from intents.expressions import expression
from intents.fitting import fit
from intents.question import Heard, Question
from intents.talk import Said, numbers_in
from intents.tokens import tokenize
from solvers.quantities import Angle, Count, Money, Percent, Pitch, Quantity

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.said_over import Place

_GABLE_END = expression(r"\bgable (?:end|wall|side)['’]?s?\b", re.IGNORECASE)
MOST_WORDS = 16  # of a line that tells a value and no story
MOST_SUBJECT = 6  # words that name what it is told of
NEAR, FAR_OFF = 2, 4  # times more or less than what it takes the place of: "it" and a bare number, and all else
NEARER = 1.2  # times nearer to the answer, from which on a number is somebody's answer
FAR = 2  # times farther off than another given, from which on it is rather that
DEGREES = 40  # the most that a temperature under nothing changes by
_SIZE_WORDS = {"higher": "height", "taller": "height", "ceiling": "height", "ceilings": "height", "longer": "length",
               "wider": "width", "deeper": "depth", "narrower": "width",
               "warmer": "temperature", "cooler": "temperature", "hotter": "temperature", "colder": "temperature",
               "damper": "humidity", "drier": "humidity"}  # fmt: skip

HOUSE = frozenset(
    "wall side end gable roof lean-to lean dormer porch garage shed barn corner run rake peak ridge eave opening window door "
    "house cottage cabin place job room bay slab deck frame post beam sill addition extension kitchen workshop bathroom stair "
    "hall elevation face section piece one boathouse annex outbuilding carport hip valley joint span gap stuff kind type "
    "grade back front left right north south east west lake ramp top bottom".split()
)
_ENDS = frozenset("then now please instead actually sorry maybe".split())
_IT = frozenset("it that they this we".split())
_TRADE = frozenset(
    "supplier yard merchant store shop boss owner client inspector engineer foreman architect drawing plan spec roofer framer "
    "carpenter builder mason forecast tape laser".split()
)
# After what it is told of: next corner along.
_BETWEEN = frozenset("now today only reads tonight along over up there opposite across".split())
_INTERJECTION = expression(
    r"\W*(?:(?:yeah|yep|nah|no|oh|ah|right|ok|okay|so|and|but|well|actually|sorry|wait|hang on|mind you|turns out|now|then|hm+"
    r"|hey)\b[\s,.!]*)*",
    re.IGNORECASE,
)
_ADVERB = (
    r"(?:only|just|really|about|nearer|nearly|closer to|more like|actually|now|up|down|back|at|to|an?|gone|dropped|moved|come"
    r"|came|got|out|more|going|on|all)"
)
_TELLS = expression(
    rf"(?:['’]s|['’]re|['’]ve|\b(?:is|are|was|were|reads?|measures?|measured|comes|came|runs?|ran|goes|went|gone|has|have|got|says?"
    rf"|dropped|drops|rose|rises|falls|grew|grown|shrank|jumped|opened|likes|needs|wants|carries|stocks|sells))(?:\s+{_ADVERB})*\s*$",
    re.IGNORECASE,
)
_LETS = expression(
    r"(?:allow|use|go(?: with| for)?|give (?:me|it)|say|call it|try|(?:we|i)(?: only| really)? (?:need|want)"
    r"|(?:(?:we|i|they|you)(?:['’]ll| will|['’]d better)|let(?:['’]s| me| us)?)"
    r" (?:have|take|use|say|go(?: with| for)?|allow|try|do))"
    r"(?:\s+(?:in|for|about|more like|an?))*\s*",
    re.IGNORECASE,
)
_BETTER = expression(
    r"['’]s (?:a bit |much |far )?(?:better|nicer|neater|safer|closer|right)\b"
    r"|\W*(?:[a-z]+\s+)?(?:(?:(?:would|might|could|will|'ll|'d) (?:look|be|suit|work|do|fit)|looks|is|suits|works)"
    r"(?: (?:a bit|much|nearer|far|me))?(?: (?:better|best|nicer|safer|closer|enough|fine|neater|right|easier|cheaper))?"
    r"|(?:actually|then|rather|nicer|if (?:you like|i can|possible)))\b",
    re.IGNORECASE,
)
_MEASURED_ANEW = expression(
    r"\b(?:again|re-?measured|re-?checked|double[- ]checked|another look)\b"
    r"[^.;]*\b(?:got|get|gets|reads?|says?|it['’]?s|makes it)\s*$",
    re.IGNORECASE,
)
_TO_BE_SAFE = expression(r"\s+(?:just )?to be (?:safe|sure|on the safe side)\b", re.IGNORECASE)
_ELSEWHERE = expression(
    r"(?:\s+[a-z]+)?\s+(?:on|for|at|along|over|up|in|round|around) (?:the|that|this|my|our)(?: [a-z]+){1,3}?"
    r"(?: (?:though|then|now|actually|mind))?[\s.!]*",
    re.IGNORECASE,
)
_ASKS = expression(r"\b(?:how|what|what's|whats|which|where|can|could|will|does|do|is it|are they)\b", re.IGNORECASE)
_ASKED_AGAIN = expression(
    r"\s*[,;.]\s*(?:and |so |then |now )*what(?:['’]s| is| would| will| does)? (?:that|it|this)(?: one)?"
    r"(?: (?:be|come to|make|do|then|now|here))*\W*$",
    re.IGNORECASE,
)
_AGAIN = expression(r"\bwhat (?:then|now|there|here)\W*$", re.IGNORECASE)  # asks the question before again
_ANOTHER_ONE = expression(
    r"\bone (?:that['’]?s|that is)\b|\b(?:other|next|long|short|back|front) one\b"
    r"|\b(?:front|back|left|right|north|south|east|west|end)(?:['’]s| is| side| end)\b",
    re.IGNORECASE,
)
_HAS = expression(r"(?:['’]s|['’]ve|\bhas|\bhave|\bis)\s*$", re.IGNORECASE)  # it's opened up to 101
_CLOCK = expression(r"\b(?:it|that)['’]?s?\W+(?:is |gone |only |nearly )*\d+ (?:now|already|o'?clock|gone)\b", re.IGNORECASE)
_BY = expression(r"(?<=[\w'\"])\s*(?:\bby\b|\bx\b|×)\s*(?=[\w])", re.IGNORECASE)
_JOINS = expression(r"\s*(?:by|x|×|and|,|on|with|to)\s*", re.IGNORECASE)


def tells_only(c: Conversation, text: str, question: Question) -> bool:
    """Whether a line that could be a question asks for nothing, and names hardly anything of it or lacks a piece: "46 boards"."""
    if _ASKS.search(_AGAIN.sub("", text)):
        return False
    return len(question.words) < 2 or not c.ways(question)[0].worked.working


def holds_now(text: str, place: Place, last: Asked) -> bool:
    """Whether the line tells that a number holds now, of what the question before can be about."""
    if text.count(" ") >= MOST_WORDS:
        return False
    clause = _clause(text, place)
    before, after = _after_interjection(clause), text[place.end :]
    if labelled_so(text, place, last) or _MEASURED_ANEW.search(text[: place.start]):
        return True
    if not before.strip():
        sized = place.value.unit != "none" or bool(size_named(text, last))
        alone = sized and len(clause) < place.start and not after.strip(" .!")  # higher than that, 8 foot 3; cooler, 62
        return alone or bool(_BETTER.match(after) or elsewhere(after))
    told = _TELLS.search(before)
    if told is None:
        return bool(_LETS.fullmatch(before))
    subject = [token.text for token in tokenize(_HAS.sub("", before[: told.start()]))]
    if not subject or len(subject) > MOST_SUBJECT:
        return False
    return subject[-1] in _IT or _of_the_job(subject, last)


def _clause(text: str, place: Place) -> str:
    return re.split(r"[,;:!]\s|\.\s|[–—]", text[: place.start])[-1]


def elsewhere(after: str) -> bool:
    """Whether words after a number say of which other part of the house it is, or why: 33 feet on the other side."""
    words = [word.strip(" .!?").lower() for word in after.split()]
    if _TO_BE_SAFE.match(after):
        return True
    return bool(_ELSEWHERE.fullmatch(after)) and any(stem(word) in HOUSE | _TRADE for word in words[-2:])


def labelled_so(text: str, place: Place, last: Asked) -> str:
    """The given that is a percent or an amount of money, where the line names it beside the number: ten percent on for waste."""
    words = {token.text for token in tokenize(text)}
    named = [p for p in last.topic.parameters if p.label in words and p.kind in (Percent, Money)]
    return named[0].label if len(named) == 1 and (place.value.unit == "percent" or named[0].kind is Money) else ""


def _of_the_job(subject: list[str], last: Asked) -> bool:
    subject = " ".join(subject).replace("lean to", "lean").split()
    known = {stem(token.text) for token in tokenize(last.text)}
    known |= {stem(part) for parameter in last.topic.parameters for part in parameter.label.split()}
    heads = [stem(word) for word in subject if word not in _BETWEEN]
    return bool(heads) and (heads[-1] in HOUSE | _TRADE or heads[-1] in known)


def _beside_the_same(text: str, place: Place, last: Asked) -> str:
    """The given whose number was said with the word that the line ends in, after a new one: 46 boards; "" for none."""
    after = [stem(token.text) for token in tokenize(text[place.end :]) if token.text[0].isalnum() and token.text not in _ENDS]
    lead = _after_interjection(_clause(text, place)).strip()
    if len(after) != 1 or (lead and not _LETS.fullmatch(f"{lead} ")):
        return ""
    alike = [was.value for was in places_of(last.text) if was.value.unit == place.value.unit
             and [stem(token.text) for token in tokenize(last.text[was.end :])[:1]] == after]  # fmt: skip
    names = [name for name, given in last.givens.items() if given.source != "assumed" and isinstance(given.value, Quantity)
             and any(given.value.value == old.value for old in alike)]  # fmt: skip
    return names[0] if len(names) == 1 and len(alike) == 1 else ""


def likely(text: str, place: Place, name: str, last: Asked) -> bool:
    """Whether a value told plainly can take the place of an old one: "it's 3" is what o'clock it is, and 8 foot 3 no length
    of 20 where there is a height of 8."""
    old = last.givens[name].value if name in last.givens else None  # what the topic could be given, and was not
    if not isinstance(old, Quantity) or (place.value.unit == "none" and _CLOCK.search(text)):
        return False
    others = [given.value for key, given in last.givens.items()
              if key != name and given.source != "assumed" and isinstance(given.value, type(old))]  # fmt: skip
    if as_near(place, name, last):
        return False  # the client only wants 20, of 22 boards at 19.50
    if any(times(place.value, other) * FAR < times(place.value, old) for other in others if isinstance(other, Quantity)):
        return False
    answer = last.record.get("answer")
    anew = _MEASURED_ANEW.search(text[: place.start])
    if anew and answer and answer["value"] and place.value.unit in ("none", answer["unit"]) and place.value.value > 0:
        off = max(float(place.value.value) / answer["value"], answer["value"] / float(place.value.value))
        if 0 < off * NEARER < times(place.value, old):
            return False  # checked again and got 42, near an answer of 42.5
    bare_it = place.value.unit == "none" and re.search(r"\b(?:it|that)\b", text[: place.start], re.IGNORECASE)
    return times(place.value, old) <= (NEAR if bare_it else FAR_OFF)


def as_near(place: Place, name: str, last: Asked) -> bool:
    """Whether a bare number may as well be what things cost as how many there are."""
    if place.value.unit != "none" or not isinstance(last.givens[name].value, Money | Count):
        return False
    others = (given.value for key, given in last.givens.items() if key != name and given.source != "assumed")
    return any(isinstance(other, Money | Count) and times(place.value, other) <= NEARER for other in others)


def size_named(text: str, last: Asked) -> str:
    """The one size that a line says is more or less than was thought: "ceiling's higher than I thought, 8 foot 3"."""
    told = {given for given in last.givens if last.givens[given].source != "assumed"}
    words = {token.text for token in tokenize(text)}
    named = {size for word, size in _SIZE_WORDS.items() if word in words}
    labels = [last.topic.parameter(name).label for name in told]
    return next(iter(named)) if len(named) == 1 and named & set(labels) else ""


def of_the_house(text: str) -> bool:
    """Whether a line tells of a part of the house: the other wall, the gable."""
    words = {stem(token.text) for token in tokenize(text)}
    return bool(_ANOTHER_ONE.search(text)) or bool(words & {"wall", "side", "gable", "roof", "house", "garage", "shed", "porch"})


def times(new: Quantity, old: Quantity) -> float:
    """How many times more or less a new value is than an old one; under nothing, a few degrees are near."""
    if isinstance(new, Angle | Pitch) and new.unit != old.unit:
        return 1  # degrees for a rise in 12
    value = new.beside(old)
    if old.value <= 0 or value <= 0:
        return 1 if abs(value - old.value) <= DEGREES else 99
    return float(max(value / old.value, old.value / value))


def told_anew(text: str, last: Asked) -> Question | None:
    """The last question with what a line of hardly more than numbers tells anew: 46 boards; 18 and 70."""
    text = _ASKED_AGAIN.sub("", text)
    places = places_of(text)
    if any(isinstance(given.value, tuple) for given in last.givens.values()):
        return None
    if len(places) == 2:
        return _both(text, places, last)
    name = _beside_the_same(text, places[0], last) if len(places) == 1 else ""
    value = in_its_place(text, places[0], name, last) if name else None
    return Question(last.topic.name, {name: value}, 1.0) if value and likely(text, places[0], name, last) else None


def _both(text: str, places: list[Place], last: Asked) -> Question | None:
    """The last question with both its numbers anew, in the order in which those were said."""
    asked = [(name, given.value.text.lower()) for name, given in last.givens.items()
             if given.source in ("asked", "earlier") and isinstance(given.value, Quantity)]  # fmt: skip
    said, lead = last.text.lower(), _after_interjection(text[: places[0].start])
    joined = _JOINS.fullmatch(text[places[0].end : places[1].start]) and not text[places[1].end :].strip(" .!?")
    lead = _after_interjection(_clause(text, places[0])) if "," in lead else lead
    told = _TELLS.search(lead)
    subject = [token.text for token in tokenize(lead[: told.start()])] if told else []
    known = told and (_of_the_job(subject, last) or _shaped_alike(text, last))
    fine = not lead.strip() or subject[-1:] == ["it"] or known or _LETS.fullmatch(lead)
    if len(asked) != 2 or not joined or not fine or any(not words or words not in said for _, words in asked):
        return None
    asked.sort(key=lambda one: said.find(one[1]))
    heard = {name: in_its_place(text, place, name, last) for place, (name, _) in zip(places, asked, strict=True)}
    return Question(last.topic.name, {name: one for name, one in heard.items() if one}, 1.0) if all(heard.values()) else None


def _shaped_alike(text: str, last: Asked) -> bool:
    """Whether two numbers are said as the two of the question before were, one by the other: the landing is 9 foot by 12."""
    told, before = (list(_BY.finditer(line)) for line in (text, last.text))
    return len(told) == len(before) == 1


def in_its_place(text: str, place: Place, name: str, last: Asked) -> Heard | None:
    """A number as the given whose place it takes, a bare one in that one's unit; None where it can't be that."""
    words, old = text[place.start : place.end], last.givens[name].value
    readings = numbers_in(words)
    fitted = fit(readings[0], last.topic.parameter(name), words, cued=True) if len(readings) == 1 else None
    if fitted is None or not isinstance(fitted.value, Quantity):
        return None
    value = fitted.value
    if place.value.unit == "none" and old.unit not in ("none", "count"):
        value = replace(old, value=place.value.value, text="")
        if times(place.value, old) > FAR_OFF:
            return None
    return Heard(value, place.start, place.end, words)


def _after_interjection(before: str) -> str:
    found = _INTERJECTION.match(before)
    return before[found.end() :] if found else before


def of_its_wall(last: Asked, said: Said, text: str) -> bool:
    """Whether what is told is how long another wall is, and no gable's width: "gable end's 21", after what has no such width; or
    how high the eave is that a ladder stands at, and no overhang: "eave's really 19"."""
    what = said.words.get("what") if said.topic == "remember" else ""
    if what == "overhang":
        return last.topic.name == "ladder footing" and "hang" not in text.lower()
    others = all(parameter.slot.kept != "gable width" for parameter in last.topic.parameters)
    return what == "gable width" and others and bool(_GABLE_END.search(text))
