"""Which given of the last question a new number is meant for, by all that tells them apart."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field, replace
from typing import TYPE_CHECKING

from assistant.by_size import another_try, far_from, fits_in, much_nearer, nearer_to_another, nearest, plainly_nearer
from assistant.heard_all import unheard
from assistant.role_words import counts_pieces, role_tests, was_before
from assistant.said_over import ALIKE, places_of, shared_words, twins, word_before
from assistant.told_values import of_the_house
from intents.chart import LIGHT
from intents.expressions import expression
from intents.fitting import TAKEN, fit
from intents.phrases import compiled
from intents.question import Heard, Question
from intents.talk import gists_of, numbers_in
from intents.tokens import tokenize
from solvers.quantities import Length, Money, Number, Quantity, TemperatureChange
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.pending import Asked
    from solvers.registry import Topic

# What is the same on every wall, and so is no other wall's own size.
OF_NO_WALL = ("stud spacing", "fastener spacing", "exposure", "stock length", "board length", "waste", "kerf", "lap", "saw limit",
              "overhang")  # fmt: skip
_CHARGE = expression(  # they've put them up to 31
    r"\b(?:they|yard|supplier|merchant|shop|he|she)(?:['’]ve|['’]s|['’]re|['’]ll| will| have| has| are| is)? (?:now |just )?"
    r"(?:put|mark|charg|ask|quot|want|jack|bump|let|do|sell|give)\w*\b",
    re.IGNORECASE,
)
_THEY = expression(r"\bthey(?:['’]re| are|['’]ll| will| were)\b", re.IGNORECASE)  # on 24s on this wall: no size of the wall
_SO_LONG = expression(r"\b\d+'?s\b|\b(?:tens|eights|twelves|fourteens|sixteens|eighteens|twenties)\b", re.IGNORECASE)
_FROM_STOCK = expression(r"\b(?:from|out of) (?:an? )?\d", re.IGNORECASE)
AT_MOST = expression(
    r"\b(?:no|not)\s+(?:more|bigger|larger|greater|wider) than\b|\bat most\b|\bmax(?:imum)?\b|\bgreatest\b", re.IGNORECASE
)
_SIZED = expression(r"(?:\s+(?:foot|feet|ft|inch(?:es)?))?\s+([a-z]+)", re.IGNORECASE)
_CENTRED = expression(r"\b(?:at|on)\s+\d+'?s?\b(?! ?(?:foot|feet|ft|footers?)\b)", re.IGNORECASE)  # at 24, on 24s
_SO_MANY_LONG = expression(r"\bhow many (?:\d+'?s|tens|eights|twelves|fourteens|sixteens|eighteens|twenties)\b", re.IGNORECASE)
_SOLD = ("tube", "stick", "stock", "stock length", "board length", "panel length", "stud spacing", "fastener spacing", "spacing",
         "roll length")  # fmt: skip
_FOOTERS = expression(
    r"\bfooters\b|\b\d[\d.]* ?(?:foot|feet|ft|met(?:re|er)s?|m) (?:lengths|sticks|stock)\b"
    r"|\b(?:from|in|out of|using) an? \S+ footer\b",
    re.IGNORECASE,
)
_THING = expression(
    r"\b(?P<a>overhang|kerf|lap|humidity|exposure|waste|pitch) (?:of|is|at) (?=\S*\d|\w+)"
    r"|(?:inch(?:es)?|foot|feet|ft|mm|metres?|cm|m|percent|%|\d) (?P<b>overhang|kerf|lap|humidity|exposure|waste|run|rise)\b"
    r"|\b(?P<c>corner)(?:['’]s| of| is| at) (?=\d)|\d(?: degrees?|°)? (?P<d>corner)\b",
    re.IGNORECASE,
)
_FOOTER, _LEG = expression(r"\bfooters?\b", re.IGNORECASE), expression(r"\blegs?\b", re.IGNORECASE)
_ONE_SIZE = expression(r"^(?:wall )?(?:length|height|width|area)$|gable")  # which a wall has one of
_BY_UNIT = r"(?:by|x|×)\s*[\d./ ]+\s*(?:feet|foot|ft|inch|in\b|mm|cm|m\b|['\"′″])"
FEET = expression(r"\b(?:feet|foot|ft)\b|['′’]", re.IGNORECASE)
_LESS, _MORE = r"(short\w*|small\w*|narrow\w*)", r"(?:long\w*|big\w*|larg\w*|wide\w*)"
SOLD_IN = expression(  # from 16s, out of 14 footers
    r"(?:and |then |ok )*(?:from|out of|in|using|with) "
    r"(?:\d+'?s|\d+ ?-?foot(?:er)?s?|tens|eights|twelves|fourteens|sixteens|eighteens)\W*",
    re.IGNORECASE,
)
_SWING = expression(r"\b(?:swing|change|difference|range|spread|rise|drop)\b", re.IGNORECASE)
UNNAMED = frozenset(("side",))  # of a frame: either side may be called wide
CALLED = {"wide": "width", "deep": "depth", "long": "length", "high": "height", "tall": "height", "thick": "thickness"}
END = expression(  # the long side is 17, 17 the long; 3/8 wide is no end
    rf"\b(?:{_LESS}|{_MORE}) (?:side|one|leg|way|end|is)\b|\bthe (?:{_LESS}|{_MORE})$", re.IGNORECASE
)

_NOT_THAT = expression(r"\s*,?\s+(?:and )?not\s+((?:an? |the )?[^,;?]+?)\W*$", re.IGNORECASE)


@dataclass(slots=True)
class Wanted:
    """What a line wants changed: the words of the change, the number it takes the place of, and whether it corrects."""

    rest: str
    old: str = ""
    corrects: bool = False
    led: bool = False  # whether words said that a change follows
    lead: str = ""  # those words
    sure: bool = False  # whether other words say that all else is as before
    stays: frozenset[str] = frozenset()  # words that say what is as before
    line: str = ""  # the whole of the line, where its end is no part of the change
    untold: bool = False  # whether it is for a number told by its place, and for no other
    none: dict[str, Heard] = field(default_factory=dict)  # what the line says besides that there is none of


def denial_apart(wanted: Wanted, last: Asked) -> Wanted:
    """A change without what it takes the place of: 6 inches | 5 (6 inches, not 5). Layers and lists are put right elsewhere."""
    found = None if wanted.old or not wanted.led else _NOT_THAT.search(wanted.rest)
    if found is None or any(isinstance(given.value, tuple) for given in last.givens.values()):
        return wanted
    if not numbers_in(wanted.rest[: found.start()]) or len(numbers_in(found[1])) != 1:
        return wanted
    return replace(wanted, rest=wanted.rest[: found.start()], old=found[1])


def turned_round(wanted: Wanted, last: Asked) -> Wanted:
    """The change with its two numbers the other way round, where the question before has the one that was to be the new:
    "I said sixteen not sixty" of a diagonal that has a sixty in it, and no sixteen."""
    wanted = denial_apart(wanted, last)
    if not wanted.old or not numbers_in(wanted.old) or len(numbers_in(wanted.rest)) != 1:
        return wanted
    givens = [given for given in last.givens.values() if given.source != "assumed"]
    other_way = unheard(wanted.old, givens) and not unheard(wanted.rest, givens)
    return replace(wanted, rest=wanted.old, old=wanted.rest) if other_way else wanted


def targets_of(wanted: Wanted, last: Asked) -> list[str]:
    """The givens that one new number could be meant for, narrowed by all that tells them apart; all that are left."""
    values = numbers_in(wanted.rest)
    if len(values) != 1 or not isinstance(values[0].value, Quantity):
        return []
    named = stock_told(wanted.rest, last) or labelled(wanted, last)
    if named and fits_in(last, named, values[0]):
        return [named]
    known = {name: given for name, given in last.givens.items() if given.source != "assumed"}
    places = [name for name in known if fits_in(last, name, values[0]) and isinstance(known[name].value, Quantity)]
    places = [name for name in places if last.topic.parameter(name).label not in wanted.stays] or places
    for test in _tests(wanted, last, values[0].value):
        fitting = [name for name in places if test(known[name])]
        if len(fitting) == 1:
            return fitting
        places = fitting or places
    near = nearest(places, last, values[0].value)
    near = near if len(near) == 1 else _bare_for_bare(near, last, values[0].value)
    return another_try(near, wanted.rest, last)


def stock_told(text: str, asked: Asked) -> str:
    """The parameter of what the sticks are cut from, where so many footers are told: from 12 footers; else ""."""
    if not _FOOTERS.search(text):
        return ""
    return next((p.name for p in asked.topic.parameters if p.slot.kept in ("stock length", "board length")), "")


def of_stock(text: str, asked: Asked) -> bool:
    """Whether the words tell what sticks or boards are cut from, and the topic takes none: no height is "from 12 footers"."""
    return bool(_FOOTERS.search(text)) and not stock_told(text, asked)


def names_no_new_given(rest: str, names: Iterable[str], last: Asked) -> bool:
    """Whether a change is a number alone, and it went to what was not given before: the price again is no count."""
    places = places_of(rest)
    alone = len(places) == 1 and not re.search(r"[a-z0-9]", rest[: places[0].start] + rest[places[0].end :], re.IGNORECASE)
    given = {name for name, one in last.givens.items() if one.source != "assumed"}
    return alone and places[0].value.unit == "none" and not set(names) & given and bool(given)


def labelled(wanted: Wanted, last: Asked) -> str:
    """The parameter whose whole name is said in the change, the longest name first; "" where none or two are."""
    said, labels = wanted.rest.lower(), {p.name: p.label.lower() for p in last.topic.parameters}
    found = {name: label for name, label in labels.items() if re.search(rf"\b{re.escape(label)}(?:e?s)?\b", said)}
    if not found:
        return _sized_alike(wanted, last)
    most = max(len(label.split()) for label in found.values())
    longest = [name for name, label in found.items() if len(label.split()) == most]
    if any(set(label.split()) > set(found[name].split()) for name in longest for label in labels.values()):
        return ""  # "the second side" is the other side, and no side alone
    longest = longest if len(longest) == 1 else [name for name in longest if name in last.givens]  # feet to do, or holes
    return longest[0] if len(longest) == 1 else ""


def _sized_alike(wanted: Wanted, last: Asked) -> str:
    """The given that was said with the same word of size after it: 10 high, where the wall was 9 high."""
    places, heard = places_of(wanted.rest), (last.text or last.record.get("heard", "")).lower()
    after = re.match(r"\s+(high|tall|long|wide|deep|thick)\b", wanted.rest[places[0].end :].lower()) if len(places) == 1 else None
    texts = {name: getattr(given.value, "text", "").lower() for name, given in last.givens.items() if given.source != "assumed"}
    found = [name for name, text in texts.items() if after and text and re.search(rf"\b{re.escape(text)} {after[1]}\b", heard)]
    called = [name for name in found if after and CALLED[after[1]] in last.topic.parameter(name).label]
    return (called or found)[0] if len(called or found) == 1 else ""


def names_in(topic: Topic, rest: str) -> set[str]:
    """The words of the names of what a topic takes, and those said for them of one number: width and wide."""
    labels = {word for parameter in topic.parameters for word in parameter.label.split()}
    sizes = [place for place in places_of(rest) if isinstance(place.value, Length | Number)]
    if len(sizes) > 1:
        return labels
    return labels | {word for word, called in CALLED.items() if called in labels or labels & UNNAMED}


def named_else(rest: str, last: Asked) -> bool:
    """Whether the line names beside its number what the topic does not take: an overhang, after a gable's height."""
    found = _THING.search(rest)
    labels = {word for parameter in last.topic.parameters for word in parameter.label.split()}
    labels |= {"run"} if any(parameter.name == "across" for parameter in last.topic.parameters) else set()  # half of the width
    name = next(name for name in found.groups() if name).lower() if found is not None else ""
    named = found is not None and name not in labels and re.search(rf"\b{name}\b", last.text, re.IGNORECASE) is None
    return named or counts_pieces(rest, last) or (_LEG.search(rest) is not None and labels.isdisjoint(("leg", "legs", "side")))


def called_alike(rest: str, targets: list[str], last: Asked) -> bool:
    """Whether a word of size is of the names of all that a number may be meant for: 7.2 long, of courses or of boards."""
    said = re.findall(r"[a-z]+", rest.lower())
    words, sizes = {CALLED.get(word, word) for word in said}, {CALLED[word] for word in said if word in CALLED}
    labels = [set(last.topic.parameter(name).label.split()) for name in targets]
    own = [label.difference(*labels[:n], *labels[n + 1 :]) for n, label in enumerate(labels)]  # the gable is 1.8 high
    return len(labels) > 1 and all(sizes & label for label in labels) and not any(words & label for label in own)


def called_else(rest: str, more: Question, last: Asked) -> bool:
    """Whether the one number of a change is told by a word of size that another given goes by: 2.25 high is no length."""
    places = places_of(rest)
    after = re.match(r"\s+(high|tall|wide|deep|thick)\b", rest[places[0].end :].lower()) if len(places) == 1 else None
    called = CALLED[after[1]] if after else ""
    labels = {p.name: p.label.split() for p in last.topic.parameters}
    named = {name for name, words in labels.items() if called in words}
    return bool(called and named) and named.isdisjoint(more.givens)


def sold_so(more: Question, last: Asked) -> bool:
    """Whether a length that is told as what sticks are sold in went to another given, of which nothing is sold: a 16 footer."""
    told = [name for name, heard in more.givens.items() if _FOOTER.search(heard.text)]
    return any(last.topic.parameter(name).label not in (*_SOLD, "length") for name in told) and not _FOOTER.search(last.text)


def sold_by(topic: Topic) -> set[str]:
    """What sticks are called, where a topic takes what they are cut from."""
    return {"sticks", "stick", "lengths", "boards", "stock"} if any(p.label in _SOLD for p in topic.parameters) else set()


def told_besides(more: Question, last: Asked, text: str) -> bool:
    """Whether the words beside the one number tell its place, which no number has without them: the wall is at 5.

    Not where they name the size of a given: 10 high, where a wall's height was told, is no gable's.
    """
    phrases, inside = compiled(), {at for place in places_of(text) for at in range(place.first, place.after)}
    words = {token.text for at, token in enumerate(tokenize(text)) if at not in inside and token.text.isalpha()}
    telling = words - phrases.fillers - phrases.ordinary - LIGHT
    known = " ".join(last.topic.parameter(name).label for name in last.givens.keys() - more.givens.keys()).split()
    named = any(CALLED.get(word, word) in known for word in words)
    cued = all(last.topic.parameter(name).slot.cued for name in more.givens)
    tests = role_tests(text, last)  # down to 10 C this morning, which is no coldest
    fits = all(test(Given(name, heard.value, "asked")) for name, heard in more.givens.items() for test in tests)
    return len(more.givens) == 1 and bool(telling) and cued and not named and fits


def of_that_size(more: Question, last: Asked, target: str) -> None:
    """A height is of what was given one: 8 high, of a wall 9 high, tells of no gable that was never told of."""
    ((name, heard),) = more.givens.items() if len(more.givens) == 1 else ((target, None),)
    if heard is None or name == target or name in last.givens:
        return
    size, other = (last.topic.parameter(one).label.split()[-1] for one in (target, name))
    if size == other and size in CALLED.values() and isinstance(heard.value, last.topic.parameter(target).kind):
        more.givens = {target: heard}


def put_in_place(more: Question, last: Asked, target: str, rest: str) -> None:
    """A number that no word placed goes to the given it is meant for, wherever else it could go."""
    values, places = numbers_in(rest), places_of(rest)
    if target in more.givens or more.manner or len(more.givens) > 1 or len(values) != 1 or not places:
        return
    if any(not isinstance(heard.value, Quantity) for heard in more.givens.values()):
        return  # it is part of a list, a sum or a choice
    if any(isinstance(heard.value, TemperatureChange) and _SWING.search(heard.text) for heard in more.givens.values()):
        return  # a swing of 30 degrees is no temperature
    text = rest[places[0].start : places[0].end]
    fitted = fit(values[0], last.topic.parameter(target), text, cued=True)
    if fitted is not None:
        more.givens = {target: Heard(fitted.value, 0, len(text), text, fitted.sure, fitted.others)}
        more.unplaced, more.swaps = [], []


def _tests(wanted: Wanted, last: Asked, new: Quantity) -> list[Callable[[Given], bool]]:
    """What tells which given a new number is for: the number it replaces, its sound, its unit, the word before it."""
    old = [row.value.value for row in numbers_in(wanted.old) if isinstance(row.value, Quantity)]
    heard = (last.text or last.record.get("heard", "")).lower()
    places = places_of(wanted.rest)
    lead = word_before(places[0], wanted.rest, wanted.lead) if places else []

    def led_alike(given: Given) -> bool:
        before = heard.partition(given.value.text.lower())[0].split() if given.value.text else []
        return bool(lead) and before[-1:] == lead

    roles = role_tests(wanted.line or f"{wanted.lead} {wanted.rest}", last, new)
    alike = Length if isinstance(new, Number) else type(new)
    known = [given for given in last.givens.values() if isinstance(given.value, alike) and given.source != "assumed"]
    sizes = [given.value.value for given in known if all(told(given) for told in roles)]
    in_feet = new.unit == "in" and bool(places) and bool(FEET.search(wanted.rest[places[0].start : places[0].end]))

    after = re.match(r"\s+([a-z]+s)\b", wanted.rest[places[0].end :], re.IGNORECASE) if places else None

    def followed_alike(given: Given) -> bool:
        """Whether the things it counts are named after it again: 50 boards, of 45 boards at 12.50."""
        then = heard.partition(given.value.text.lower())[2].split() if given.value.text and after else []
        return after is not None and then[:1] == [after[1].lower()]

    def said_alike(given: Given) -> bool:
        """Whether it was said in the same unit: 9 foot 3 is said in feet, and so is 9 foot."""
        value = given.value
        return value.unit == "ft" or bool(FEET.search(value.text)) if in_feet else value.unit == new.unit

    by_size, nearer = much_nearer(last, new), plainly_nearer(last, new)
    end = END.search(wanted.rest)
    named = {said.words["what"] for said in gists_of(wanted.rest) if "bare" in said.words}
    priced = bool(_CHARGE.search(f"{wanted.lead} {wanted.rest}"))
    they = bool(_THEY.search(f"{wanted.lead} {wanted.rest}"))
    every = re.search(r"\bevery (?=\S*\d|[a-z]+\b)", f"{wanted.lead} {wanted.rest}", re.IGNORECASE)  # every 24
    sold = bool(_SO_LONG.search(wanted.rest) or _FROM_STOCK.search(f"{wanted.lead} {wanted.rest}"))
    house = not they and of_the_house(f"{wanted.lead} {wanted.rest}")
    return [
        was_before(wanted.line, new, last),
        *roles,
        *_by_its_words(wanted, last, new),
        lambda given: last.topic.parameter(given.name).slot.kept in named,
        lambda given: priced and isinstance(given.value, Money),
        lambda given: not every or "spacing" in last.topic.parameter(given.name).label,
        lambda given: not sold or last.topic.parameter(given.name).label in _SOLD,
        lambda given: not they or not _ONE_SIZE.search(last.topic.parameter(given.name).label),
        lambda given: not house or last.topic.parameter(given.name).slot.kept not in OF_NO_WALL,
        lambda given: bool(end and sizes) and given.value.value == (min if end and (end[1] or end[2]) else max)(sizes),
        followed_alike,
        lambda given: given.value.value in old,
        lambda given: wanted.corrects and twins(given.value.value, new.value),
        lambda given: wanted.corrects and bool(places) and given.name == _begun_alike(places[0].words, last),
        lambda given: given.name == by_size,
        lambda given: not far_from(given, last, new),  # 155 metres, after 140 for 7 tubes
        said_alike,
        lambda given: new.unit != "none" and not (said_bare(given.value) and not shared_unit(given.value.text, heard)),
        led_alike,
        lambda given: given.name == nearer,
        lambda given: given.name in last.changed and not far_from(given, last, new),
    ]


def _begun_alike(words: tuple[str, ...], last: Asked) -> str:
    """The one given whose number was said in the words of the one that puts it right: eleven foot, and eleven foot six."""
    alike = {name: shared_words(tuple(token.text for token in tokenize(given.value.text)), words)
             for name, given in last.givens.items() if given.source != "assumed" and isinstance(given.value, Length)}  # fmt: skip
    most = sorted(alike.values())[-2:]
    clear = len(most) > 1 and most[1] - most[0] >= ALIKE
    return next(name for name, shared in alike.items() if shared == most[1]) if clear else ""


def _by_its_words(wanted: Wanted, last: Asked, new: Quantity) -> list[Callable[[Given], bool]]:
    """What the words of a change tell of the given's name: 44 long, at 24 (a spacing), how many 12s (none), 7 at most."""
    text, places = f"{wanted.lead} {wanted.rest}", places_of(wanted.rest)
    sized = _SIZED.match(wanted.rest[places[0].end :]) if places else None
    called = CALLED.get(sized[1].lower(), "") if sized else ""
    say_again, at_most = _to_say_again(last), bool(AT_MOST.search(text))
    centred, counted = new.unit == "none" and bool(_CENTRED.search(text)), bool(_SO_MANY_LONG.search(text))

    def label(given: Given) -> str:
        return last.topic.parameter(given.name).label.lower()

    return [
        lambda given: not say_again or label(given) in say_again,
        lambda given: not called or called in label(given).split(),
        lambda given: not at_most or "least" not in label(given),
        lambda given: not centred or "spacing" in label(given),
        lambda given: not counted or "spacing" not in label(given),
    ]


_CANNOT_BE = expression(r"the ([a-z ]+?) can't be\b")  # as `solvers.binding` says it


def _to_say_again(last: Asked) -> str:
    """What a refusal asked to be said again, after its colon: "say more pieces"; or what it says can't be; "" after an answer."""
    if last.record.get("outcome") != "declined":
        return ""
    said = str(last.record["say"]).lower()
    cannot = _CANNOT_BE.match(said)
    return cannot[1] if cannot is not None else said.rpartition(": ")[2]


def _bare_for_bare(places: list[str], last: Asked, new: Quantity) -> list[str]:
    """The one place that was said without a unit, for a number that is too; the 12 of "12 by 16 foot" has one."""
    heard = last.record.get("heard", "").lower()
    values = {name: last.givens[name].value for name in places if new.unit == "none"}
    parts = new.value.denominator != 1  # 5 3/4 is for the 6 1/2 as it is for a 6
    bare = [name for name, value in values.items()
            if (said_bare(value) or (parts and said_in_parts(value))) and not shared_unit(value.text, heard)]  # fmt: skip
    return bare if len(bare) == 1 and not nearer_to_another(bare[0], places, last, new) else places


def shared_unit(text: str, heard: str) -> bool:
    """Whether a bare number has its unit outside it: the 9 of "9 by 12 feet", the twelve of "twelve footers"."""
    return bool(re.search(rf"\b{re.escape(text.lower())}(?:\s*{_BY_UNIT}|[\s-]*foot(?:er)?s?\b)", heard))


def said_bare(value: Quantity) -> bool:
    """Whether a value was said without a unit: as a number in figures or in words, and no more."""
    text = value.text.split(TAKEN)[0]
    said = numbers_in(text)
    whole = len(said) == 1 and said[0].kind == "number" and said[0].value.value.denominator == 1  # type: ignore[union-attr]
    return whole or text.replace(".", "").isdecimal()


def said_in_parts(value: Quantity) -> bool:
    """Whether a length was said as a number and a part with no unit: "6 and a half"."""
    return [row.end - row.start for row in numbers_in(value.text)[:1] if row.kind == "number"] == [len(tokenize(value.text))]
