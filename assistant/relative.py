"""A change by so much: "make it two foot higher than that", "what if the run was a foot longer", "6 inches narrower".

The number is what is put to a given or taken from it, never the given itself. Where it can't be told which given is
meant nothing is changed, and the conversation asks.
"""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.change_words import takes_none_such
from assistant.meant_for import OF_NO_WALL, labelled
from assistant.pieces_added import pieces_added
from assistant.said_over import places_of
from assistant.told_values import HOUSE
from intents.chart import LIGHT
from intents.expressions import expression
from intents.question import Heard, Question
from intents.tokens import tokenize
from solvers.quantities import Area, Count, Length, Number, Pitch, Quantity

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

# Words that say by how much a thing is more or less, and the words of the givens they are said of.
_MORE = {
    "higher": "height", "taller": "height", "longer": "length run", "wider": "width", "deeper": "depth", "thicker": "thickness",
    "steeper": "pitch slope", "farther": "run length", "further": "run length", "bigger": "", "larger": "", "more": "",
    "hotter": "", "warmer": "",
}  # fmt: skip
_LESS = {
    "lower": "height", "shorter": "length run height", "narrower": "width", "shallower": "depth pitch", "thinner": "thickness",
    "flatter": "pitch slope", "closer": "spacing", "tighter": "spacing", "smaller": "", "less": "", "fewer": "", "colder": "",
    "cooler": "",
}  # fmt: skip
_BY = expression(
    rf"\W*(?:of\s+)?({'|'.join([*_MORE, *_LESS])})\b(\s+than\s+(?:that|it|this|before|last|the last))?", re.IGNORECASE
)
# Lower there makes a wall higher.
_AT_ITS_FOOT = expression(r"\b(?:start|starts|starting|started|begin|bottom|first course)\b", re.IGNORECASE)
_ONE_MORE = expression(
    r"(?:(?:and|then|now|so|ok)[ ,]+)*(?:plus|add(?: on| in)?|also|as well as|and|throw in)? *(?:an?|another|one more) +"
    r"(?!.*\b(?:windows?|doors?|openings?|vents?|garage)\b)[^,;]+",
    re.IGNORECASE,
)
_ADDED = expression(
    r"(?:(?:and|so|then|now|but|also|oh|actually|we|i|need|want|we['’]ll|i['’]ll|have|with|can|you|please)[ ,]+)*"
    r"(?P<add>(?:(?:add(?: on| in)?|plus|throw in|put on)\s+)?(?:another|an extra)?)\s*(?P<n>\d+|[a-z]+(?:[ -][a-z]+)??)"
    r"(?P<more> (?:more|extra|another|additional))? (?P<noun>[a-z]+)"
    r"(?: to (?:it|that)| than (?:that|it|this|before))?",
    re.IGNORECASE,
)
_TAKEN_AWAY = expression(  # if I take away 14 of the boards; 4 fewer boards; leave 3 of them out
    r"(?:(?:and|so|then|now|but|also|oh|actually|we|i|if|what|with|say|can|you|let's)[ ,]+)*(?:"
    r"(?:take|leave|drop|lose|remove|skip|scrap|knock)(?: away| off| out)? (?P<n>\d+|[a-z]+)(?: of)?(?: (?:the|my|those))?"
    r" (?P<noun>[a-z]+)(?: (?:off|away|out))?|(?P<few>\d+|[a-z]+) (?:fewer|less)(?: (?P<nouns>[a-z]+))?)",
    re.IGNORECASE,
)
_TO_A_PART = expression(  # knock seven inches off the wall, add a foot to the run
    r"(?:(?:and|so|then|now|but|also|oh|actually|we|i|they|we['’]ll|i['’]ll|can|you|please)[ ,]+)*"
    r"(?:(?P<less>knock|take|cut|trim|lose|shave|drop|chop)|add|put|stick)\s+(?P<n>.+?)\s+(?:off|out of|from|to|onto|on)\s+"
    r"(?:the|my|our|that|this)\s+(?:[a-z]+\s+)?(?P<of>[a-z]+)",
    re.IGNORECASE,
)
_OF_A_PART = expression(  # lose 2 inches of overhang
    r"(?:(?:and|so|then|now|but|also|oh|actually|we|i|they)[ ,]+)*"
    r"(?P<less>lose|drop|(?:knock|take|cut|trim|shave|chop)(?: off)?)\s+(?P<n>.+?)\s+(?:off )?of\s+"
    r"(?:the |my |our |that )?(?P<of>[a-z]+)",
    re.IGNORECASE,
)
_SO_MANY_TIMES = expression(  # twice as wide, half the height, double the overhang
    r"(?:(?:and|so|then|now|but|also|what if|what about|how about|make|it|that|it's|its|was|were|is|we|say|with|at|the|if)[ ,]+)*"
    r"(?:(?P<f>twice|double|half|halve|triple|three times)\s+"
    r"(?:as\s+(?P<as>[a-z]+)(?:\s+as that)?|(?:the|that|its)\s+(?P<of>[a-z]+)))",
    re.IGNORECASE,
)
_FACTORS = {"twice": 2, "double": 2, "half": Fraction(1, 2), "halve": Fraction(1, 2), "triple": 3, "three times": 3}
_EXTENT = {"wide": "width", "long": "length run", "tall": "height", "high": "height", "deep": "depth", "thick": "thickness",
           "steep": "pitch", "far": "run"}  # fmt: skip
_PART_CHANGED = expression(  # the overhang's lost 3 inches, the run has grown by a foot, the depth is down 2
    r"(?:(?:and|so|then|now|but|also|oh|actually)[ ,]+)*(?:the|my|our)\s+(?:[a-z]+\s+)?"
    r"(?P<of>(?!(?:is|has|have|got|been|come|gone)\b)[a-z]+?)(?:'s|\s+is|\s+has|\s+have|\s+got)?"
    r"(?:\s+(?:got|been|come|gone|now))*\s+(?:"
    r"(?P<less>lost|shrunk|shortened|cut(?= back|\s+by| down)|trimmed|dropped(?=\s+by)|(?:come |gone )?down(?! to))"
    r"|gained|grown|lengthened|raised(?= by)|risen(?= by)|(?:come |gone )?up(?! to))(?:\s+(?:back|down))?(?:\s+by)?\s+(?P<n>.+)",
    re.IGNORECASE,
)
_ANOTHER_SIZE = expression(  # plus another 40 foot for the porch; I forgot the garage, another 240
    r"(?:(?:oh |and |ah |damn )*(?:i|we|you)(?:['’]ve)? (?:forgot|missed|left out|left off|didn['’]?t count|never counted)"
    r"[^,;\d]*[,;]\s*)?"
    r"(?:(?:and|so|then|now|but|also|plus|add|throw|chuck|put|with|there['’]?s|we|i|need|have|got|forgot|on|in)[ ,]+)*"
    r"(?:(?:another|an extra|a further)\s+|(?<=plus )(?=.* (?:for|on|round|along) (?:the|that|my|our) ))"
    r"(?P<n>[^,;]+?)(?:\s+(?:for|on|in|of|at|round|along)\s+(?P<what>.*))?",
    re.IGNORECASE,
)
_LESS_STRETCH = expression(  # less the last 4 foot, that's brick; leave out the garage, that's 130 of it
    r"(?:(?:and|so|then|now|but|also|oh|actually|ok|we|i|you|can|with)[ ,]+)*"
    r"(?:less|minus|leave (?:off|out)|take (?:off|out)|not counting|except(?: for)?|don['’]?t count|forget)\s+(?:"
    r"(?:the|that)\s+(?:last|first|other|end|back|front|top|bottom)\s+(?P<n>[^,;]+?)"
    r"(?:[,;]?\s+(?:that['’]?s|it['’]?s|which is|for|at|on|by)\s+.*)?"
    r"|(?:the|that|my|our)\s+[a-z]+(?: [a-z]+)?[,;]?\s+(?:that['’]?s|it['’]?s|which is|that is)\s+(?P<m>[^,;]+?)"
    r"(?:\s+of (?:it|that|them))?)",
    re.IGNORECASE,
)
_EXTENTS = ("total length", "area", "length", "run", "wall length")  # what grows by another stretch of the same
_BARELY = ("more", "less", "fewer", "bigger", "larger", "smaller")  # said of anything: only where "than that" follows, or nothing


def by_so_much(wanted: Wanted, last: Asked) -> list[Question] | None:
    """The last question with one given more or less by the number said; none where it can't be told which, None where
    the line says no such thing."""
    said = places_of(wanted.rest)
    if pieces := pieces_added(wanted, last):
        return pieces
    if takes_none_such(wanted, last):
        return []
    if len(said) == 2 and last.topic.name == "wall area" and _ONE_MORE.fullmatch(f"{wanted.lead} {wanted.rest}".strip(" .!?")):
        return []  # another wall's sizes, and no new sizes of this one
    times = _so_many_times(f"{wanted.lead} {wanted.rest}", last)
    if times is not None:
        return times
    if len(said) != 1:
        return None
    added = _so_many_more(f"{wanted.lead} {wanted.rest}", last)
    if added is not None:
        return [added]
    part = _put_to_a_part(f"{wanted.lead} {wanted.rest}", last)
    if part is not None:
        return part
    by = _BY.match(wanted.rest[said[0].end :])
    if by is None or not (wanted.led or by[2]):
        return None
    if by[1].lower() in _BARELY and not by[2] and wanted.rest[said[0].end + by.end() :].strip(" .?!"):
        return None  # two more at 20
    word = by[1].lower()
    name = _meant(wanted, last, word, said[0].value)
    if not name:
        return []
    before, step = last.givens[name].value, said[0].value
    size = step.beside(before)
    more = word in _MORE
    if word in ("higher", "lower") and _AT_ITS_FOOT.search(wanted.line or f"{wanted.lead} {wanted.rest}"):
        more = not more
    value = replace(before, value=before.value + (size if more else -size), text="")
    return [Question(last.topic.name, {name: Heard(value, 0, len(wanted.rest), wanted.rest)}, 1.0)]


def _so_many_times(text: str, last: Asked) -> list[Question] | None:
    """The last question with one size so many times what it was: twice as wide, half the height."""
    found = _SO_MANY_TIMES.fullmatch(text.strip(" .!?").replace("’", "'"))
    if found is None:
        return None
    words = set((_EXTENT.get(found["as"].lower(), "") if found["as"] else found["of"].lower()).split())
    told = [name for name, given in last.givens.items() if isinstance(given.value, Quantity) and given.source != "assumed"]
    names = [name for name in told if words & set(last.topic.parameter(name).label.split())]
    if len(names) != 1 or isinstance(last.givens[names[0]].value, Pitch):
        return [] if names else None
    before = last.givens[names[0]].value
    value = replace(before, value=before.value * _FACTORS[found["f"].lower()], text="")
    return [Question(last.topic.name, {names[0]: Heard(value, 0, len(text), text)}, 1.0)]


def by_so_much_told(text: str) -> bool:
    """Whether a line tells by how much a size is more or less, and so is no value to keep: the overhang's lost 3 inches."""
    return bool(_PART_CHANGED.fullmatch(text.strip(" .!?").replace("’", "'")))


def _so_many_more(text: str, last: Asked) -> Question | None:
    """The last question with so many more of the things it counted: "add 12 boards", "I need 6 more sheets"."""
    found, taken = _ADDED.fullmatch(text.strip(" .!?")), _TAKEN_AWAY.fullmatch(text.strip(" .!?"))
    counts = [(name, given.value) for name, given in last.givens.items() if isinstance(given.value, Count)]
    adds = found is not None and bool(found["add"] or found["more"])
    if not (adds or taken) or len(counts) != 1 or last.givens[counts[0][0]].source == "assumed":
        return None
    n, noun = _so_many_of(taken if taken is not None else found)
    said, (name, count) = places_of(n), counts[0]
    counted = [tokenize(last.text[place.end :])[:1] for place in places_of(last.text) if place.value.value == count.value]
    named = [token[0].text.removesuffix("s") for token in counted if token] == [noun.removesuffix("s")]
    named = named or noun in last.topic.parameter(name).label.split()
    whole = len(said) == 1 and isinstance(said[0].value, Number) and said[0].value.value.denominator == 1
    if not whole or not (named or (taken and noun in ("", "them", "those"))):
        return None
    value = replace(count, value=count.value + said[0].value.value * (-1 if taken else 1), text="")
    return Question(last.topic.name, {name: Heard(value, 0, len(text), text)}, 1.0) if value.value > 0 else None


def _so_many_of(found: re.Match[str] | None) -> tuple[str, str]:
    """How many a line tells of, and of what: 14 and boards, where 14 of the boards go."""
    told = found.groupdict() if found is not None else {}
    return told.get("n") or told.get("few") or "", (told.get("noun") or told.get("nouns") or "").lower()


def _put_to_a_part(text: str, last: Asked) -> list[Question] | None:
    """The last question with so much put to, or taken off, one size that is named or that another stretch of adds to."""
    line = text.strip(" .!?")
    part = _TO_A_PART.fullmatch(line) or _OF_A_PART.fullmatch(line)
    less = _LESS_STRETCH.fullmatch(line)
    if less is not None:
        return _without_stretch(less["n"] or less["m"], line, last)
    part, more = part or _PART_CHANGED.fullmatch(line.replace("’", "'")), _ANOTHER_SIZE.fullmatch(line)
    found = part or more
    said = places_of(found["n"]) if found else []
    if found is None or len(said) != 1 or said[0].value.unit == "percent":
        return None
    size = _of_what_it_adds_to(said[0].value, last) if more and not part else said[0].value
    if size.unit == "none" or (more and _names_a_given(more["what"] or "", last)):
        return None
    values = {name: given.value for name, given in last.givens.items() if given.source != "assumed"}
    told = {name: value for name, value in values.items()
            if isinstance(value, Quantity) and not isinstance(value, Pitch) and isinstance(size, type(value))}  # fmt: skip
    labels = {name: last.topic.parameter(name).label for name in told}
    if part:
        of = part["of"].lower()
        names = [name for name, label in labels.items() if of in label.split()]
        names = names or [name for name in told if of in HOUSE and last.topic.parameter(name).slot.kept not in OF_NO_WALL]
    else:
        names = [name for name, label in labels.items() if label in _EXTENTS]
    if part and part["less"] and not names and _has_none(last, part["of"].lower()):
        return []  # an overhang that nothing was said of
    if len(names) != 1:
        return [] if names else None
    before = told[names[0]]
    step = size.to(before.unit).value * (-1 if part and part["less"] else 1)
    value = replace(before, value=before.value + step, text="")
    return [Question(last.topic.name, {names[0]: Heard(value, 0, len(text), text)}, 1.0)] if value.value > 0 else []


def _without_stretch(words: str, line: str, last: Asked) -> list[Question] | None:
    """The last question with its one length or area less a stretch of it."""
    said = places_of(words)
    told = {name: given.value for name, given in last.givens.items() if given.source != "assumed"
            and last.topic.parameter(name).label in _EXTENTS and isinstance(given.value, Length | Area)}  # fmt: skip
    if len(said) != 1 or len(told) != 1:
        return None
    (name, before), size = next(iter(told.items())), _of_what_it_adds_to(said[0].value, last)
    if size.unit not in before.units:
        return None
    value = replace(before, value=before.value - size.to(before.unit).value, text="")
    return [Question(last.topic.name, {name: Heard(value, 0, len(line), line)}, 1.0)] if value.value > 0 else None


def _of_what_it_adds_to(size: Quantity, last: Asked) -> Quantity:
    """A bare number in the unit of the one area that it can be more of: plus 240 for the garage."""
    areas = [given.value for given in last.givens.values() if isinstance(given.value, Area) and given.source != "assumed"]
    return Area(size.value, areas[0].unit, size.text) if size.unit == "none" and len(areas) == 1 else size


def _names_a_given(words: str, last: Asked) -> bool:
    """Whether words name what the question takes: plus 10 for the waste."""
    labels = {part for parameter in last.topic.parameters for part in parameter.label.split()} - LIGHT - {"the"}
    return not labels.isdisjoint(words.lower().split())


def _has_none(last: Asked, of: str) -> bool:
    """Whether the question takes what a word names, and nothing was said of it."""
    return any(of in parameter.label.split() for parameter in last.topic.parameters if parameter.kind is Length)


def _meant(wanted: Wanted, last: Asked, word: str, step: Quantity) -> str:
    """The one given that is meant: by its name, by what the word is said of, as the last one changed, or as the only one."""
    fitting = [
        name for name, given in last.givens.items()
        if isinstance(given.value, Quantity) and (step.unit in given.value.units or isinstance(step, Number))
    ]  # fmt: skip
    told = [name for name in fitting if last.givens[name].source != "assumed"]
    named = labelled(wanted, last)
    if named in told:
        return named
    of = set((_MORE | _LESS)[word].split())
    described = [name for name in told if of & set(last.topic.parameter(name).label.split())]
    alone = told if len(told) == 1 and isinstance(last.givens[told[0]].value, Length) else []
    found = described or [name for name in told if name in last.changed] or alone
    return found[0] if len(found) == 1 else ""
