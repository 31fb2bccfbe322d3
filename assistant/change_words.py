"""Words of a change that name a given in the trade's way, put as that given's own name: "24 on centre", "on twenty fours",
"on a nine", "make the wall 10 foot", "start at 15 and a quarter".

What such words name can be one thing only, so the number beside them takes no other's place.
"""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.bite_words import asks_its_bite
from assistant.meant_for import AT_MOST, Wanted
from assistant.said_over import Place, places_of
from intents.expressions import expression
from intents.number_words import PLURALS
from intents.plurals import KEPT
from intents.question import Heard, Question
from intents.run_told import told_again
from intents.talk import numbers_in
from solvers.quantities import Length, Money, Number, Percent, Pitch, Quantity
from solvers.slots import Parameter

if TYPE_CHECKING:
    from assistant.pending import Asked

MOST_RISE = 18  # in 12; a bare number over it is no pitch
_SPACINGS = ("stud spacing", "fastener spacing")
_SIZES = ("height", "length", "width")
_OTHER_SIZE = expression(r"\b(?:high|tall|long|wide|height|length|width|waste|stock|rows?|courses|start|first)\b", re.IGNORECASE)
_LIGHT = (
    r"(?:(?:at|on|in|with|and|is|it|be|to|for|of|the|a|an|now|then|please|make|say|if|they|were|are|we|go|use|try|only|just|do|does|got|have|has|had|'ve|sell|sells|stock|carry|come|hm+|yard|supplier|he|she|really|actually)\b|[\s,.?!'’])*"
)
_ON_CENTRE = expression(r"\b(?:on[- ]cent(?:er|re)s?|o\.?c\b\.?|cent(?:er|re)s)(?!\s*line)", re.IGNORECASE)
_TO_WEATHER = expression(r"\b(?:to the weather|showing|reveal)\b", re.IGNORECASE)
_DOES = expression(r"\b(?:is|will|would|does)\b(?:[^.;?]|\.\d)*\b(?:enough|reach|do it)\b", re.IGNORECASE)
_CHARGES = expression(
    r"\b(?:delivery|freight|shipping|haulage|tax|gst|vat|deposit|labour|labor|rental|tip|fuel)\b", re.IGNORECASE
)
_FOOTERS = expression(r"\bfooters\b", re.IGNORECASE)
_EACH_OF = expression(
    r"\b(?:make|change|cut|turn|swap) (?:the|those|all the) (\d+)'?s (?:to |into |for |at )?"
    r"(\d[\d /.]*(?: ?(?:inch(?:es)?|mm|feet|foot|ft))?)\W*$",
    re.IGNORECASE,
)  # make the 36s 40
_ONE_OF = expression(
    r"\b(?:make|change|turn|swap) (?:the|that) ([\d/]+(?: \d+/\d+)?)(?: into| to)? (?:an? )([\d/]+(?: \d+/\d+)?)\W*$",
    re.IGNORECASE,
)  # make the 3 a 4
_PARTS = expression(r"\b(?:parts|ways|bays|equal)\b", re.IGNORECASE)
_STARTS = expression(
    r"\b(?:start(?:s|ing)?|begin(?:s|ning)?)(?: (?:it|them|the first(?: (?:one|mark))?|first|off))*(?: (?:at|from|in))?\b"
    r"|\b(?:first|first one|the first one|the first)(?: (?:at|is|is at|goes at))\b",
    re.IGNORECASE,
)
_GRADE = expression(r"(?:an? )?\d+(?:\.\d+)? ?(?:%|percent)", re.IGNORECASE)  # of a roof whose pitch was told
_WITH = expression(r"\b(?:with|plus|add|w)\b", re.IGNORECASE)  # which leads to waste, or to more
_DIAGONAL = expression(r"\b(?:the )?(?:diagonal|corner to corner)(?:'s|’s| is| at| of| to)?(?=\s)", re.IGNORECASE)
_WALL = expression(r"\b(?:the |my |our |this |that )?wall(?:'s|’s| is| at)?(?=\s)", re.IGNORECASE)
_ON_A = expression(r"\b(?:on|for|with|at|is|about|what's)\s+an?\s*$", re.IGNORECASE)
_ONE = expression(r"\b(short\w*|long\w*|small\w*|big\w*|wid\w+|narrow\w*|tall\w*) one(?:'s|’s| is)\b", re.IGNORECASE)
_SPARE = expression(r"\b(?:spares?|for luck|in stock|on hand)\b", re.IGNORECASE)
_ADDS = expression(r"\W*(?:add|sum|total)(?: (?:it|them|these|those|this|up|together))+\b", re.IGNORECASE)
_ONE_THATS = expression(r"(?:an?other )?one (?:that['’]?s|that is)\s+(?=\d)", re.IGNORECASE)
_WARMS = expression(
    r"\b(?:ris(?:es?|ing)|rose|(?:go(?:es)?|gone|going|went) up|up by|warm(?:s|ed|er|ing)?|hotter|heat(?:s|ed)?|climbs?)\b",
    re.IGNORECASE,
)
_FOREIGN = expression(r"(?:an? |the )?.{1,30}? (?:of )?(overhang|waste|kerf|exposure|reveal)s?\W*", re.IGNORECASE)
DIGITS = dict(zip("oh zero one two three four five six seven eight nine".split(), "00123456789", strict=True))
_SAID_AGAIN = expression(r"(.+?)[.,;!]+\s*(?:i|we)\s+(?:said|meant|mean)\s+(.+?)[.!]*", re.IGNORECASE)


def in_its_names(wanted: Wanted, last: Asked) -> Wanted:
    """The change with a given's own name in the place of the words that mean it."""
    kinds = {parameter.kind for parameter in last.topic.parameters if parameter.name in last.givens}
    wasted = any(parameter.slot.kept == "waste" for parameter in last.topic.parameters)
    of_a_roof = Pitch in kinds and Percent not in kinds and not wasted and last.topic.family in ("slope", "corners")
    if of_a_roof and _GRADE.fullmatch(wanted.rest.strip(" .?!")) and not _WITH.search(wanted.lead):
        return replace(wanted, rest=f"{wanted.rest.strip(' .?!')} slope")
    one = _ONE_THATS.match(wanted.rest)
    wanted = replace(wanted, rest=wanted.rest[one.end() :], lead=f"{wanted.lead} {one[0]}") if one else wanted
    rest = _ONE.sub(r"\1 is", wanted.rest)
    said = places_of(rest)
    if len(said) != 1 or any(isinstance(given.value, tuple) for given in last.givens.values()):
        return replace(wanted, rest=rest) if rest != wanted.rest else wanted
    named = _by_words(rest, said[0], last) or _by_number(rest, wanted.lead, said[0], last)
    if named is None:
        return replace(wanted, rest=rest) if rest != wanted.rest else wanted
    number, label, left = named
    alone = bool(re.fullmatch(_LIGHT, left, re.IGNORECASE)) or (_is_spacing(label, last) and not _OTHER_SIZE.search(left))
    return replace(wanted, rest=f"{label} {number}", led=True) if alone else wanted


def with_percent(rest: str, text: str) -> str:
    """A change with the % at its end, which the words of talk leave out."""
    return f"{rest}%" if text.rstrip(" .?!").endswith("%") and rest[-1:].isdigit() else rest


def tells_spacing(text: str, last: Asked) -> bool:
    """Whether the one number of a line is a spacing of the question before: the engineer says go to 12 on centre."""
    said = places_of(text)
    named = _by_words(text, said[0], last) if len(said) == 1 else None
    return named is not None and _is_spacing(named[1], last)


def _is_spacing(label: str, last: Asked) -> bool:
    return label == _one_label([p for p in last.topic.parameters if p.slot.kept in _SPACINGS])


def say_what_it_is(more: Question, text: str, last: Asked) -> None:
    """Say what a new length is where the words do: "make the run 14", after a hip worked from the building's width.

    What is told is not what is asked for: the run's got to be 3.4, after the angle of a triangle.
    """
    wanted = more.givens.get("wanted")
    if wanted is not None and isinstance(wanted.value, str) and wanted.value.lower() in more.givens:
        del more.givens["wanted"]
    if "meant" in last.givens and "exposure" in more.givens and "meant" not in more.givens and AT_MOST.search(text):
        more.givens["meant"] = Heard("GREATEST", 0, 0, "")
    if "change" in more.givens and "swing" in last.givens and "swing" not in more.givens and _WARMS.search(text):
        more.givens["swing"] = Heard("UP", 0, 0, "")  # it dropped 25 | goes up 25
    for parameter in last.topic.parameters:
        way = told_again(text.lower().split()) if parameter.slot.names in more.givens else ""
        if parameter.name not in more.givens and way in getattr(parameter.kind, "__members__", ()):
            more.givens[parameter.name] = Heard(way, 0, 0, "")


def one_for_another(text: str) -> re.Match[str] | None:
    """The number that goes and the one in its place: make the 36s 40, make the 3 a 4."""
    return _EACH_OF.search(text) or _ONE_OF.search(text)


_MEMBERS = expression(  # of a roof, which are no part of a question that does not name them
    r"\bcommon rafters?\b(?! (?:run|is|are|runs|has)\b|['’]s)|\bjacks?\b"
    r"|\bbird'?s?[ -]?mouths?\b|\bcollar ties?\b|\bcripples?\b|\bking posts?\b|\bridge (?:beam|board)\b", re.IGNORECASE
)


_CROWN = expression(r"\bcrown\b|\bspring\b|\blying flat\b|\bflat on the saw\b|\bcompound\b", re.IGNORECASE)
_OF_ONE_CORNER = ("miter for a corner", "corner in several pieces", "polygon", "how far open")
_COSTS = expression(  # what they come to is asked of a price
    r"\b(?:dollars?|bucks|quid|pounds a|euros?|cents|costs?|price|run (?:me|us)|set (?:me|us) back|c[ao]mes? too?|how much)\b",
    re.IGNORECASE,
)


def is_no_change(text: str, questions: list[Question], last: Asked) -> bool:
    """Whether a line can't be of the question before: money, where that has no price; lengths to add up, after a wall's."""
    best = next(iter(questions), None)
    if _SPARE.search(text) or (last.topic.name == "ladder footing" and _DOES.search(text)):
        return True  # and one spare is no new size, nor is the ladder that is asked about: is 24 foot long enough
    if (member := _MEMBERS.search(text)) and member[0].lower() not in last.text.lower():
        return True  # and the jacks at 24, after a hip
    if "layers" in last.givens and "fastener" not in last.givens and any(asks_its_bite(text, place) for place in places_of(text)):
        return True  # a 3 inch nail is no layer of 3 inches
    if _CROWN.search(text) and numbers_in(text) and last.topic.name in _OF_ONE_CORNER:
        return True  # 38 degrees of spring are no corner
    if last.topic.name in ("cost", "weight") and _of_another_thing(text, last):
        return True
    if best is None or best.topic == last.topic.name:
        return False
    priced = any(parameter.kind is Money for parameter in last.topic.parameters)
    prices = [heard.value for heard in best.givens.values() if isinstance(heard.value, Money)]
    money = any(price.text[:1] in "$£€" or _COSTS.search(text) for price in prices)
    sums = best.complete and "sum" in best.givens and bool(_ADDS.match(text))
    return sums or (money and not priced)


def _of_another_thing(text: str, last: Asked) -> bool:
    """Whether a price is of something else than was asked about, delivery is 85, or a length that of the sticks of a run."""
    charges = _CHARGES.search(text) and not _CHARGES.search(last.text)
    return bool(charges) or ("length" in last.givens and bool(_FOOTERS.search(text)))


def takes_none_such(wanted: Wanted, last: Asked) -> bool:
    """Whether the line gives what the question before has no place for: an overhang, where only a run is asked for."""
    found = _FOREIGN.fullmatch(wanted.rest.strip(" .?!"))
    if found is None or len(places_of(wanted.rest)) != 1:
        return False
    word = found[1].lower().replace("reveal", "exposure")
    return not any(word in (*parameter.label.split(), parameter.slot.kept) for parameter in last.topic.parameters)


def _by_words(rest: str, said: Place, last: Asked) -> tuple[str, str, str] | None:
    """The number, the name of the one given that other words mean, and what is left of the line."""
    for pattern, fits in (
        (_ON_CENTRE, lambda p: p.slot.kept in _SPACINGS),
        (_TO_WEATHER, lambda p: p.slot.kept == "exposure"),
        (_PARTS, lambda p: p.label == "parts"),
        (_STARTS, lambda p: p.label == "first mark"),
        (_DIAGONAL, lambda p: p.label in ("slope", "measured diagonal") and p.name in last.givens),
        (_WALL, lambda p: p.label in _SIZES and p.name in last.givens),
    ):
        found = pattern.search(rest)
        if found is None or (found.start() < said.end and found.end() > said.start):
            continue
        label = _one_label([p for p in last.topic.parameters if fits(p)])
        if label:
            before, after = sorted(((said.start, said.end), found.span()))
            left = rest[: before[0]] + " " + rest[before[1] : after[0]] + " " + rest[after[1] :]
            return rest[said.start : said.end], label, left
    return None


def _by_number(rest: str, lead: str, said: Place, last: Asked) -> tuple[str, str, str] | None:
    """The same, where how the number is said tells it: a plural is stock or a spacing, "a nine" is a pitch."""
    number, left = rest[said.start : said.end], rest[: said.start] + " " + rest[said.end :]
    if not isinstance(said.value, Number):
        return None
    plural = re.match(r"['’]?s\b", rest[said.end :])
    if plural is not None or number.split()[-1].split("-")[-1].lower() in PLURALS:
        whole = [p for p in last.topic.parameters if (p.slot.kept in KEPT or p.label == "panel cover") and _told(p, last)]
        label = _one_label(whole)
        left = left.replace(plural[0], "", 1) if plural else left
        return (f"{said.value.value}", label, left) if label and said.value.value.denominator == 1 else None
    pitches = [p for p in last.topic.parameters if p.kind is Pitch and _told(p, last)]
    lengths = [g.value for g in last.givens.values() if isinstance(g.value, Length) and g.source != "assumed"]
    if pitches and said.value.value <= MOST_RISE and _ON_A.search(f"{lead} {rest[: said.start]}"):
        small = all(length.to("in").value <= MOST_RISE for length in lengths)
        return (f"{number} twelve", pitches[0].label, left) if small and number.isalnum() else None
    return None


def _told(parameter: Parameter, last: Asked) -> bool:
    given = last.givens.get(parameter.name)
    return given is not None and given.source != "assumed"


def _one_label(parameters: list[Parameter]) -> str:
    return parameters[0].label if len(parameters) == 1 else ""


def without_echo(rest: str) -> str:
    """The words of a change without its number's digits said once more: "a hundred and thirteen, one three"."""
    again = _SAID_AGAIN.fullmatch(rest)
    if again and [r.value for r in numbers_in(again[1])] == [r.value for r in numbers_in(again[2])]:
        return again[1]
    before, comma, echo = rest.rpartition(",")
    words = re.findall(r"[a-z]+|\d", echo.lower())
    digits = "".join(DIGITS.get(word, word) for word in words)
    said = numbers_in(before)
    if not comma or len(words) < 2 or not digits.isdecimal() or len(said) != 1 or not isinstance(said[0].value, Quantity):
        return rest
    return before if str(said[0].value.value).endswith(digits) else rest
