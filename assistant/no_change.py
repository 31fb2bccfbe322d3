"""What keeps a line from being a change of the question before: it says too much else, or its number can't be meant so."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant import meant_for
from assistant.also_asked import asking_words
from assistant.heard_all import denied, unheard
from assistant.meant_for import Wanted
from assistant.named_none import half_told
from assistant.role_words import TIMES
from assistant.said_over import OF_THEM, places_of, stem
from assistant.units_kept import openings
from intents.chart import LIGHT
from intents.expressions import expression
from intents.fitting import STEEPEST_RISE, TAKEN
from intents.islands import light_words
from intents.matcher import full_chart
from intents.phrases import compiled
from intents.question import Heard, Question
from intents.searching import MANNER
from intents.tokens import tokenize
from solvers.quantities import Area, Count, Expansion, Length, Money, Pitch, Quantity
from solvers.sums import Sum

if TYPE_CHECKING:
    from assistant.pending import Asked

PLAIN = ("roof", "roofs", "pitch", "pitched", "slope")  # words that go with a value and name no question
SIZES = frozenset("high tall long wide deep thick across high height length width depth run rise over up".split())
TAKEN_OUT = frozenset("less minus take takes out off deduct subtract knock there got has have both them those cut".split())
_ON_A_WALL = ("marks on centre", "course layout", "balanced panels")
_OF_EACH = expression(r"\b(?:feet|foot|ft|inch(?:es)?|m|metres?|mm|long|high|tall) each\b|['\"] each\b", re.IGNORECASE)
_FORM = 4  # letters by which forms of a word are known: sides, sided
MOST_STRANGE = 2  # words of a change that mean nothing here, at most
_FAR = 8  # times the area before, or less
_PUTS_RIGHT = expression(
    r"\b(?:wrong|meant|mean|actually|really|sorry|instead|should|said|told|now|rather|try|make)\b", re.IGNORECASE
)
_SLOPES = expression(r"\b(?:slope|grade|fall|pitch|steep\w*)\b", re.IGNORECASE)
_AT = expression(r"\W*(?:(?:and|or|so|what about|how about|make it)\W+)*at\b[^,;?]*", re.IGNORECASE)
_SHARE_OF_A_THING = expression(  # half the rail is no half an inch
    r"\b(?:half|a (?:third|quarter)(?: of)?) (?:of )?(?:the|my|his|our) "
    r"(?!(?:sum|answer|total|lot|difference|rest|one|other|first|second|last|width|length)\b)[a-z]+",
    re.IGNORECASE,
)
_OPENINGS_AFTER = expression(r"\s+(?:windows|doors|openings|vents)\b", re.IGNORECASE)
_SIZE_AFTER = expression(r"\s*(?:wide|across|high|tall|deep|thick|long)\b", re.IGNORECASE)
_EACH = expression(r"\s*(?:an?|per|each|for each)\s+([a-z]+)", re.IGNORECASE)


def only_in_words(wanted: Wanted, last: Asked) -> bool:
    """Whether the number to give way is none of the givens that are one number, and stands in a list or sum: six at 31."""
    single = [given for given in last.givens.values() if isinstance(given.value, Quantity)]
    return bool(unheard(wanted.old, single)) and not unheard(wanted.old, last.givens.values())


def in_a_list(more: Question) -> bool:
    """Whether the words make the number one of a list, three quarter strapping, or a coefficient: 30 millionths per F."""
    told = [heard.value for heard in more.givens.values()]
    return not more.unplaced and any(isinstance(v, Expansion) or (isinstance(v, tuple) and bool(v)) for v in told)


def names_it(more: Question, wanted: Wanted, last: Asked) -> bool:
    """Whether the words name what the value went to: "the wall is 32 foot" does not say that it is high."""
    labels = {word for name in more.givens for word in last.topic.parameter(name).label.split()}
    if any(isinstance(heard.value, Count) and _said_after(heard, wanted.rest, last.topic.parameter(n).label)
           for n, heard in more.givens.items()):  # fmt: skip
        return True
    own = {word for parameter in last.topic.parameters for word in parameter.label.split()}
    sizes = {word for word in SIZES if meant_for.CALLED.get(word, "width") in own or not own & meant_for.UNNAMED}
    return bool(set(re.findall(r"[a-z]+", wanted.rest.lower())) & (labels | sizes))


def _said_after(heard: Heard, rest: str, label: str) -> bool:
    """Whether a count is followed by a form of its own name: an eight sided box."""
    after = re.match(r"[\s-]*([a-z]+)", rest[heard.end :].lower())
    return after is not None and any(len(word) >= _FORM and after[1].startswith(word[:_FORM]) for word in label.split())


def of_each(wanted: Wanted, last: Asked) -> bool:
    """Whether a length is told of each of the things that stand on a wall, and so is no length of that: and 9 foot each."""
    return last.topic.name in _ON_A_WALL and _OF_EACH.search(wanted.rest) is not None and bool(places_of(wanted.rest))


def share_of_a_thing(wanted: Wanted, last: Asked) -> bool:
    """Whether a share of a thing is told, which a sum takes for a share of an inch: half the rail."""
    return last.topic.name == "tape arithmetic" and _SHARE_OF_A_THING.search(wanted.rest) is not None


def running_total(questions: list[Question]) -> bool:
    """Whether a line is a sum whose first part is the answer before it, and more than one size is put to that: add 3 at 7."""
    heard = questions[0].givens.get("sum") if questions else None
    value = heard.value if heard is not None else None
    return isinstance(value, Sum) and value.left is None and isinstance(value.right, Sum)


def told_nothing(more: Question, rest: str, last: Asked) -> bool:
    """Whether a line tells nothing that could be a change: no given, or one that it can't be, or says that it is not."""
    empty = not (more.givens or more.manner) or bool(more.unplaced)
    return empty or steep(more) or half_told(more) or amiss(more, rest, last) or denied(rest, more.givens.values())


def amiss(more: Question, rest: str, last: Asked) -> bool:
    """Whether a number was taken as what its words say it is not: a size as a count, a share of waste as a roof's pitch."""
    return _size_as_count(more, rest) or _count_as_size(more, rest) or _share_as_pitch(more, rest, last)


def _share_as_pitch(more: Question, rest: str, last: Asked) -> bool:
    """Whether a bare percent was taken as the pitch of a roof that was told in 12: with 10 percent is of waste, or of more."""
    for name, heard in more.givens.items():
        was = last.givens[name].value if name in last.givens else None
        shared = isinstance(heard.value, Pitch) and "percent" in f"{heard.text} {heard.value.text}".lower()
        if shared and isinstance(was, Pitch):
            return "percent" not in was.text.lower() and "%" not in was.text and not _SLOPES.search(rest)
    return False


def _count_as_size(more: Question, rest: str) -> bool:
    """Whether how many openings there are was taken as a size: three windows are no height of 3."""
    sizes = [heard for heard in more.givens.values() if isinstance(heard.value, Length)]
    return any(_OPENINGS_AFTER.match(rest.partition(heard.text)[2]) for heard in sizes if heard.text)


def _size_as_count(more: Question, rest: str) -> bool:
    """Whether a number told as a size was taken as how many there are: a post that is 7 across has no seven sides."""
    counts = [heard for heard in more.givens.values() if isinstance(heard.value, Count)]
    return any(_SIZE_AFTER.match(rest.partition(heard.text)[2]) for heard in counts if heard.text)


def steep(more: Question) -> bool:
    """Whether a bare number was taken as a pitch that no roof has: it was not meant as one."""
    said = [(heard.value, heard.text) for heard in more.givens.values()]
    return any(isinstance(v, Pitch) and v.unit == "in12" and v.value > STEEPEST_RISE and text.isdecimal() for v, text in said)


def no_area(more: Question, last: Asked) -> bool:
    """Whether a length was taken as an area nowhere near the one before: 12 foot are no 12 square feet in place of 1500."""
    for name, heard in more.givens.items():
        was = last.givens[name].value if name in last.givens else None
        if isinstance(heard.value, Area) and isinstance(was, Area) and TAKEN in heard.value.text and was.value > 0:
            now = heard.value.to(was.unit).value
            if now * _FAR < was.value or now > was.value * _FAR:
                return True
    return False


_SPARE = expression(
    r"\W*(?:(?:and|plus|with|ok|so|then)\W+)*(?:an? |\d+ |two |three |four |five |six )(?:extra|spares?)\W*", re.IGNORECASE
)


def spare_told(wanted: Wanted, last: Asked) -> bool:
    """Whether a change tells how many are to be spare of what was counted: and 2 extra."""
    counted = (last.record.get("answer") or {}).get("unit") == "count"
    return counted and _SPARE.fullmatch(f"{wanted.lead} {wanted.rest}".strip()) is not None


_OF_COURSES, _FAR_HIGHER = ("course layout", "courses to openings"), 2
_FOOT_WALL = expression(r"\b(?:foot|ft|feet|metre|meter|m) (?:long )?wall\b|\blong\b|['’] wall\b", re.IGNORECASE)


def talks_of_else(more: Question, wanted: Wanted, last: Asked) -> bool:
    """Whether a line that no word leads to a change says more than numbers and names none of what it would change:
    "hand us up two of the fourteen footers"."""
    if _counted_at(more, wanted, last) or _long_for_high(more, wanted, last):
        return True
    if wanted.led or _PUTS_RIGHT.search(wanted.rest):
        return False
    phrases, rest = compiled(), OF_THEM.sub("", wanted.rest)
    places = places_of(rest)
    inside = {at for place in places for at in range(place.first, place.after)}
    said = {stem(token.text) for token in tokenize(last.text)} - {"that", "one", "it"}
    others = [token.text for at, token in enumerate(tokenize(rest)) if at not in inside and token.text.isalpha()]
    known = phrases.fillers | LIGHT | set(more.words) | set(PLAIN) | asking_words(last.topic.name, wanted.rest)
    own = [word for word in others if word not in known and stem(word) not in said]
    most = 1 if len(places) == 1 and places[0].value.unit not in ("none", "percent") else 0
    named = names_it(more, wanted, last) and not {*others} & SIZES <= {"up", "over"}
    priced = places and _EACH.match(rest[places[-1].end :])  # 17.25 a stick
    return len(own) > most and not named and not (priced and stem(priced[1].lower()) in said)


def _long_for_high(more: Question, wanted: Wanted, last: Asked) -> bool:
    """Whether how long a wall is was taken for how high its courses go: how many boards for a 30 foot wall."""
    heard, was = more.givens.get("height"), last.givens.get("height")
    if last.topic.name not in _OF_COURSES or heard is None or was is None or not isinstance(heard.value, Length):
        return False
    far = heard.value.to("in").value > _FAR_HIGHER * was.value.to("in").value
    return far and _FOOT_WALL.search(wanted.rest) is not None


def _counted_at(more: Question, wanted: Wanted, last: Asked) -> bool:
    """Whether what is said after "at" was taken as how many there are, where a price was told: at two ten is no count."""
    priced = any(isinstance(given.value, Money) and given.source != "assumed" for given in last.givens.values())
    counted = all(isinstance(heard.value, Count) for heard in more.givens.values())
    return priced and counted and bool(more.givens) and _AT.fullmatch(f"{wanted.lead}{wanted.rest}") is not None


def left_over(more: Question, wanted: Wanted, last: Asked, loosely: bool = False) -> list[str]:
    """Words of the change that nothing in the question explains; unless words led to it, those of its topic too.

    `loosely`: where one given alone can be meant, and nothing else, a word or two take nothing away.
    """
    phrases = compiled()
    chart = full_chart(wanted.rest)
    numbers = {i for row in chart.readings for reading in row for i in range(reading.start, reading.end)}
    chosen = bool(more.givens) and not numbers and more.missing  # "gap at both ends too": no number, and no question alone
    known = set(more.words) | set(last.topic.name.split()) if wanted.led or chosen or loosely else set(PLAIN)
    known |= meant_for.sold_by(last.topic) | (TIMES if any(p.label.endswith(" now") for p in last.topic.parameters) else set())
    known |= SIZES if len(places_of(wanted.rest)) <= sum(heard.end > heard.start for heard in more.givens.values()) > 1 else set()
    known |= {word for heard in more.givens.values() for word in heard.text.lower().split()}
    known |= {word for word in more.words if MANNER in phrases.topics_of.get(word, ())}
    asked = asking_words(last.topic.name, wanted.rest)
    known |= meant_for.names_in(last.topic, wanted.rest) | asked | ({"pieces", "strips"} if asked else set())
    known |= TAKEN_OUT if any(openings(heard.value) for heard in more.givens.values()) else set()
    classes = {word for i, word in enumerate(chart.words) for name, _ in chart.classes[i] if name[1:-1].split("-")[0] in known}
    explained, light = known | classes, light_words()
    left = [word for i, word in enumerate(chart.words)
            if word[0].isalpha() and word != "s" and not (i in numbers or word in explained or word in light)]  # fmt: skip
    named = {stem(token.text) for token in tokenize(last.text)} & {stem(word) for word in left}  # of another number there
    return [] if loosely and len(left) <= MOST_STRANGE and not named else left
