"""Whether a reply is the piece that was asked for, and what it tells of it: a thickness of the layer that had none."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.layer_changes import LAYERS, layers_changed, named_in, put_in
from assistant.listed_changes import put_into_lists
from assistant.meant_for import CALLED, stock_told
from assistant.names import NO_NAMES
from assistant.said_over import places_of
from assistant.usual import impossible, is_usual
from assistant.ways import twins
from intents.expressions import expression
from intents.fitting import fit
from intents.matcher import Topics, read_as
from intents.per_what import LOADS
from intents.question import Heard, Question, Reading
from intents.talk import numbers_in
from intents.told_over import legs_in_millimetres
from solvers.quantities import Count, Length, Money, Number, Pitch, Quantity, Temperature, TemperatureChange, Weight
from solvers.slots import Layer, Parameter, Slot

if TYPE_CHECKING:
    from collections.abc import Sequence

    from assistant.conversation import Conversation
    from assistant.pending import Asked, Pending

# Neither is a reply: is a 4 inch enough, of a length that is not known yet; 6 or 7.
_ENOUGH = expression(r"\W*(?:(?:and|so|but|ok|then)\W+)*(?:is|are|will|would|does|do)\b[^;]*\benough\W*", re.IGNORECASE)
_EITHER = expression(
    r"\W*(?:(?:about|maybe|say|either|so)\W+)*[\w./ ]{1,12} or [\w./ ]{1,12}\W*"
    r"|\W*(?:(?:it['’]?s|its|it is|somewhere|about|maybe|i think|i guess|must be|either)\W+)*"
    r"(?:between an? [\w./ ]{1,12} and an? [\w./ ]{1,12}|(?:either )?an? [\w./ ]{1,12} or an? [\w./ ]{1,12})\W*",
    re.IGNORECASE,
)
# Things that are counted are no measure that is waited for: 60 teeth, of how far a saw swings.
_COUNTED = expression(r"\s+(?P<what>teeth|people|men|[a-z]{2,}[^su\W]s)\W*", re.IGNORECASE)
_BETWEEN = expression(r"\b(?:gaps|spaces)\W*$", re.IGNORECASE)
_PARTS = frozenset(("parts", "pieces", "ways"))
_USED = expression(r"\b(?:used|bought|sold|lost|had|ordered|wasted) (?:about |only )?[\d./]+ (?P<what>[a-z]{2,}[^su\W]s)\b", re.I)
_OF_A_SIZE = expression(r"\d (?:cover|exposure|wide|long|high|tall|deep|thick|kerf|lap)\W*$|^\W*(?:cover|exposure) \d", re.I)
_NO_THINGS = frozenset("yes thanks cheers as is this was points times".split())
_STATES = ("outside", "inside", "is", "was", "reads", "read", "measures", "measured", "comes", "came", "to", "got")
_EXTREMES, _NOW = ("low", "hottest", "coldest"), expression(r"\b(?:now|right now|at the moment|currently)\b", re.IGNORECASE)
_STATED = expression(
    r"\W*(?:(?:and|so|ok|okay|well|um|uh|oh|yeah)\W+)*(?:it['’]?s|it is|that['’]?s|they['’]?re"
    r"|(?:i|we) (?:measured|got|have|read)|(?:it|that) (?:measures|reads|comes))\b",
    re.IGNORECASE,
)
_ASKED = expression(r"\?|\b(?:how|what|what['’]?s|whats|which|need|want|where|when|can|could|will|would|should|give me)\b", re.I)
_OWN = 3  # words that tell a topic, from which on a whole question is no reply
_SMALL = frozenset(
    "it's its they're theyre in of the a at on with is are ok so and all um uh well even exactly flat about reads measures"
    " measured says comes to".split()
)
_OF_MANY = frozenset("angle length width height depth size of the a in at to pitch".split())  # in the names of many pieces
_ASKING = frozenset("what how long high wide many much far deep tall".split())
_NAIL = expression(r"\W*(?:[a-z]+\W+)*\d+ ?(?:d|penny)s?(?:\W+[a-z]+)?\W*", re.IGNORECASE)
_SO_LONG_A_NAIL = expression(
    r"\W*(?:[a-z']+\W+){0,4}\d[\d./ -]*(?:inch(?:es)?|in|\"|mm|mil)? ?(?:deck |trim )?(?:nail|screw)s?\W*", re.IGNORECASE
)
_SIZED = expression(
    r"\W*(?:[a-z']+\W+){0,3}[\d./ -]+(?:inch(?:es)?|in|\"|mm|mil)? ?(?:wide )?(?P<what>[a-z]{3,}s)\W*", re.IGNORECASE
)
_INTO = expression(r"\b(?:in|into|bites?|penetrat\w+|past|beyond|embed\w*|stud|framing|hold|grip)\b", re.IGNORECASE)
_A_THING = "roll|board|sheet|stick|box|tube|panel|length|piece|bundle|square|bag|coil|strip|strap|screw|nail|batten|post"
_SO_MUCH_EACH = expression(
    r"\bat [^,;?]+ (?:each|apiece)\b|\b\d+\.\d\d (?:each|apiece|a pop)\b"
    rf"|\b\d+(?:\.\d+)? (?:a|per|for a|for each) (?:{_A_THING})\b",
    re.IGNORECASE,
)
_OUTRIGHT = expression(r"\b(?:what(?:['’]?s| is| are|s)|how (?:much|many) (?:is|are)|convert|work out|add up)\b", re.IGNORECASE)
_NEAR = Fraction(5, 4)  # so many times as much, either way, of what may be put right
_AND, _NO = expression(r"^\W*(?:and|plus)\b\s*", re.IGNORECASE), expression(r"^\W*no (?=[a-z]+\W*$)", re.IGNORECASE)


def asks_it_back(text: str, pending: Pending) -> bool:
    """Whether the line asks for the very value that it was asked for: "it rises 9 foot 4, what's my pitch"; or of another."""
    if pending.asked is None or not pending.wanted:
        return False
    label = pending.asked.topic.parameter(pending.wanted).label
    asks = re.search(rf"\bwhat(?:'?s| is| are)? (?:my |the |its )?{re.escape(label)}\W*$", text, re.IGNORECASE) is not None
    return asks or _ENOUGH.fullmatch(text) is not None or (_EITHER.fullmatch(text) is not None and len(places_of(text)) > 1)


def asks_meanwhile(text: str, reading: Reading) -> bool:
    """Whether a line asks a whole sum or conversion outright, which is no reply: remind me, what's 30 feet in inches."""
    best = next(iter(reading.questions), None)
    return best is not None and best.topic in NO_NAMES and best.whole and _OUTRIGHT.search(text) is not None


def read_piece(text: str, pending: Pending, parameters: Topics) -> tuple[Question, str]:
    """The line as more of what is open, and the given that it was read for: the stock that it tells, or what is waited for."""
    assert pending.asked is not None
    stock, topic = stock_told(text, pending.asked), pending.asked.topic.name
    if stock and pending.wanted not in ("", stock):
        both = read_as(text, topic, parameters, wanted=pending.wanted)
        if {stock, pending.wanted} <= both.givens.keys():  # 6 inch, 12 footers
            return both, pending.wanted
    wanted = stock or pending.wanted
    more = read_as(text, topic, parameters, wanted=wanted)
    to_the_usual(more, pending.asked, wanted)
    legs_in_millimetres(more)
    return more, wanted


def told_as_price(text: str, pending: Pending) -> bool:
    """Whether a reply is so much for each, where no price or count is waited for: 47 a roll, 6.20 each."""
    return bool(pending.wanted) and not may_be_each(pending) and _SO_MUCH_EACH.search(text) is not None


def may_be_each(pending: Pending) -> bool:
    """Whether what is waited for may be told of each: a price, a count, a weight; no roll's length is "at 85 each"."""
    assert pending.asked is not None
    return not pending.wanted or issubclass(pending.asked.topic.parameter(pending.wanted).kind, Money | Count | Weight)


def only_names(best: Question | None, pending: Pending) -> bool:
    """Whether all that another question is known by is the name of what is waited for: the corner reads 91."""
    if best is None or pending.asked is None or not pending.wanted:
        return False
    return set(best.words) <= {*pending.asked.topic.parameter(pending.wanted).label.split(), *_STATES}


_NAMED_SO = expression(r"\b(?:overhang|kerf|lap|waste|exposure|reveal|humidity)\b", re.IGNORECASE)
_SO_LONG_ONES = expression(r"\W*(?:(?:with|using|use|the|in|got|have) )*\d+['’]?s\W*", re.IGNORECASE)  # 90s, of screws
_PACKS_OF = expression(
    r"\W*(?:and |so |ok )*how many (?:box|boxes|packs?|packets?|cartons?|cases?|bags?|bundles?) (?:of|at|in) ", re.IGNORECASE
)


def of_other_things(text: str, more: Question, pending: Pending) -> bool:
    """Whether a reply counts things that nothing in the question is called by, where a measure is waited for; or tells a size
    where a count is: 350 cover."""
    if pending.asked is None or not pending.wanted:
        return False
    if pending.wanted in _EXTREMES and _NOW.search(text):
        return True  # it's 38 now, of tonight's low
    named = _NAMED_SO.search(text)
    if named is not None and numbers_in(text) and named[0].lower() not in _called(pending):
        return True  # 16 inch overhang, of how long the run is
    if _rather_a_width(more.givens.get(pending.wanted), pending.asked):
        return True
    if _USED.search(text) or (pending.wanted != "box" and _PACKS_OF.match(text)) or (
        pending.wanted == "penetration" and _SO_LONG_ONES.fullmatch(text)
    ):
        return True  # we used 40 boards yesterday; how many boxes of 12
    if pending.wanted == "count" and _BETWEEN.search(text):
        return True  # seven gaps, of how many pieces
    if issubclass(pending.asked.topic.parameter(pending.wanted).kind, Count):
        return pending.wanted in more.givens and _OF_A_SIZE.search(text) is not None and len(more.givens) == 1
    places = places_of(text)
    bare = len(places) == 1 and isinstance(places[0].value, Number)
    found = _COUNTED.fullmatch(text[places[0].end :]) if bare and len(text[: places[0].start].split()) <= 1 else None
    return found is not None and (found["what"].lower() in _PARTS or found["what"].lower() not in {*more.words, *_NO_THINGS})


def named(more: Question, pending: Pending) -> bool:
    """Whether the reply calls its number by what is waited for: 100 wide, of a width."""
    assert pending.asked is not None
    label = pending.asked.topic.parameter(pending.wanted).label if pending.wanted else ""
    return bool({*label.split()} & {CALLED.get(word, word) for word in more.words})


def _rather_a_width(heard: Heard | None, asked: Asked) -> bool:
    """Whether a bare decimal is hardly so many in 12, and a gable may be so many metres wide: 6.4."""
    if heard is None or not isinstance(heard.value, Pitch) or heard.value.unit != "in12":
        return False
    bare = heard.text.strip().replace(".", "", 1).isdigit() and 4 % heard.value.value.denominator != 0
    return bare and "width" not in asked.givens and any(p.name == "width" for p in asked.topic.parameters)


def beside_the_told(more: Question, asked: Asked, wanted: str) -> None:
    """Of the ways to take a reply, the first that tells the piece and leaves what was told: 6 at least and 7 at the most."""
    told = {name for name, given in asked.givens.items() if given.source == "asked"} - {wanted}
    ways = [way for way in (more.givens, *more.swaps) if wanted in way and told.isdisjoint(way)]
    if ways:
        more.givens = ways[0]


def that_lacks(c: Conversation, words: set[str], topics: Sequence[Question]) -> list[Question]:
    """The one of the topics that lacks a piece which is named: what's a spring angle; 38 spring."""
    labels = [{w for name in q.missing for w in c.topics[q.topic].parameter(name).label.split()} for q in topics]
    found = [q for q, own in zip(topics, labels, strict=True) if words & own - _OF_MANY or (own and own <= words)]
    return found if len(found) == 1 else []


def as_a_reply(text: str, reading: Reading, pending: Pending) -> Reading:
    """The line's reading without what is only likely a question, which is first of all a reply; unless it asks a whole one of
    another topic of several numbers, in words of its own: my roof climbs 4 foot over 10, what angle is that."""
    best = reading.questions[0] if reading.questions else None
    asks = best is not None and best.whole and len(best.words) >= _OWN and _ASKED.search(text) is not None
    other = best is not None and pending.asked is not None and best.topic != pending.asked.topic.name
    if asks and other and len(places_of(text)) > 1:
        return reading
    return replace(reading, questions=reading.unaided)


def states_it(text: str) -> bool:
    """Whether a line tells one number and asks nothing: it's an outside corner and I measured it at 92 degrees."""
    return _STATED.match(text) is not None and _ASKED.search(text) is None and len(places_of(text)) == 1


def in_its_words(text: str, pending: Pending) -> bool:
    """Whether a line is one number and words of the question that was put: how long is the piece | sixteen foot pieces."""
    places = places_of(text)
    if len(places) != 1 or not pending.wanted or pending.ways:
        return False
    rest = f"{text[: places[0].start]} {text[places[0].end :]}".lower()
    asked = {word.removesuffix("s") for word in re.findall(r"[a-z]+", pending.question.lower())}
    words = {word for word in re.findall(r"[a-z']+", rest) if word not in _SMALL}
    return {word.removesuffix("s") for word in words} <= asked - _ASKING


def names_the_wanted(text: str, kept: str, pending: Pending, parameters: Topics) -> bool:
    """Whether a line that could be kept under another name says none of that name, and words of the piece that is waited for:
    the swing is 80 degrees, of a temperature and of no saw."""
    if pending.asked is None or not pending.wanted or set(kept.split()) & set(re.findall(r"[a-z]+", text.lower())):
        return False
    more = read_as(text, pending.asked.topic.name, parameters, wanted=pending.wanted)
    return bool(more.words) and pending.wanted in more.givens and not (more.unplaced or more.unknown)


def names_a_nail(text: str, pending: Pending) -> bool:
    """Whether a nail is named where what is asked is how long it must be: 8d, a 3 inch nail."""
    asked = pending.asked is not None and pending.asked.topic.name == "fastener length" and bool(pending.wanted)
    return asked and (_NAIL.fullmatch(text) is not None or _SO_LONG_A_NAIL.fullmatch(text) is not None)


def as_each_thing(more: Question, text: str, lines: list[str]) -> Question:
    """The reply with a size that is of each of the things counted before as their width: 8 posts | 4 inch posts."""
    things = _SIZED.fullmatch(text) if more.topic == "equal spacing" and len(more.givens) == 1 else None
    if things is None or not any(re.search(rf"\b{things['what']}\b", line, re.IGNORECASE) for line in lines):
        return more
    ((name, heard),) = more.givens.items()
    if name == "count" and heard.value.value.denominator > 1:  # 3 1/2 slats
        heard = replace(heard, value=Length(heard.value.value, "in", heard.text), others=())
    elif name != "length":
        return more
    return replace(more, givens={"width": heard}, missing=[], swaps=[])


def counted_load(asked: Asked) -> bool:
    """Whether it is asked what so many things cost or weigh, which may each be so long."""
    return asked.topic.name in LOADS and "count" in asked.givens


def of_each(more: Question, asked: Asked) -> Question:
    """The reply with its length as that of each, where it was told how many there are: 30 boards | 12 footers at 2.20 a foot."""
    if (area := asked.givens.get("area")) is not None and asked.topic.name in LOADS and area.value.unit == "square":
        each = more.givens.get("price") or more.givens.get("weight")
        if each is not None and "per" not in more.givens and "per" not in asked.givens:  # 12 squares | 310
            return replace(more, givens=more.givens | {"per": Heard("SQUARE", each.start, each.end, each.text)})
    if not counted_load(asked) or "count" in more.givens:
        return more
    length, parameter = more.givens.get("length"), asked.topic.parameter("piece")
    if length is None or "piece" in more.givens or not is_usual(parameter.slot, length.value, 1):
        return more
    return replace(more, givens={"piece" if name == "length" else name: heard for name, heard in more.givens.items()})


def may_put_right(heard: Heard, asked: Asked) -> bool:
    """Whether a bare number that is a pitch only in degrees is as near a length that was told: 24 foot gable | it's 26."""
    value = heard.value
    if not isinstance(value, Pitch) or value.unit != "deg" or heard.text.strip() != str(float(value.value)).removesuffix(".0"):
        return False
    told = [given.value for given in asked.givens.values() if given.source == "asked" and isinstance(given.value, Length)]
    return any(one.value and 1 / _NEAR <= value.value / one.value <= _NEAR for one in told)


def below_zero(heard: Heard, text: str) -> bool:
    """Whether a line is one number under nothing, as a temperature may be: "-10" takes nothing off; or is so many degrees."""
    whole = isinstance(heard.value, Quantity) and heard.text == text.strip(" .!°")
    return whole and (heard.value.value < 0 or isinstance(heard.value, Temperature | TemperatureChange))


def to_the_usual(more: Question, asked: Asked, wanted: str) -> None:
    """What was put where none is so large, or so small, is the piece that was asked for, where it may be that: boards 12 feet
    long and 4 1/2 inches of each one shows."""
    if not wanted or wanted in more.givens:
        return
    waited = asked.topic.parameter(wanted)
    for name, heard in more.givens.items():
        values = [value for value in (heard.value, *heard.others) if isinstance(value, Quantity)]
        slot = asked.topic.parameter(name).slot
        far = not any(is_usual(slot, value, 1) for value in values) or impossible({name: heard}, {name: slot})
        if values and far and isinstance(heard.value, waited.kind) and is_usual(waited.slot, values[0], 1):
            more.givens = {wanted if one == name else one: each for one, each in more.givens.items()}
            more.swaps = []
            return


def told_of_lists(more: Question, asked: Asked, wanted: str, text: str) -> Question | None:
    """What a line tells of a list that was told, while another piece is asked for: and 1/2 sheathing, no strap, 4 more at 22.

    None where it can't be told how.
    """
    if wanted == "penetration" and (more_of_it := put_in(text, asked)):
        return more_of_it[0]
    if not wanted or (wanted in more.givens and not of_a_layer(text, asked, wanted)):
        return more
    plain = _AND.sub("add ", _NO.sub("without the ", text))
    layered = layers_changed(plain, "", asked, more)
    if layered:
        return layered[0]
    return more if put_into_lists(more, asked, text) else None


def of_a_layer(text: str, asked: Asked, wanted: str) -> bool:
    """Whether the one number of a line is said of a layer that was told, and not of how far anything goes into the stud."""
    layers = asked.givens.get(LAYERS)
    if layers is None or wanted != "penetration" or _INTO.search(text) or len(places_of(text)) != 1:
        return False
    if not all(isinstance(layer, Layer) for layer in layers.value):
        return False  # told by their thickness alone
    return len(named_in(text, layers.value)) == 1


def thickness_told(more: Question, asked: Asked, wanted: str, text: str) -> None:
    """Put the thickness that was asked for into the list of layers, unless the reply says the whole list again."""
    before = asked.givens[wanted].value if wanted in asked.givens else ()
    open_ = [n for n, layer in enumerate(before if isinstance(before, tuple) else ()) if getattr(layer, "thickness", 1) is None]
    again = more.givens.get(wanted)
    if not open_ or (again and len(again.value) >= len(before)):
        return
    said = numbers_in(text)
    found = fit(said[0], Parameter(wanted, Length, Slot("", bare=("in",)), True), text, cued=True) if len(said) == 1 else None
    if found is None or not isinstance(found.value, Length):
        return
    layers = list(before)
    layers[open_[0]] = replace(layers[open_[0]], thickness=found.value)
    more.givens = {wanted: Heard(tuple(layers), 0, len(text), text, found.sure)}
    more.unplaced, more.missing, more.swaps = [], [], []


def to_the_wanted(more: Question, asked: Asked, wanted: str, sure: bool = False, anew: bool = False) -> None:
    """A bare value that went to what is known already is what was asked for, where it can be.

    `sure`: the number it takes the place of was said, so that no words beside it tell more. `anew`: the line puts right.
    """
    if len(more.givens) != 1:
        return
    ((name, heard),) = more.givens.items()
    labels = [set(asked.topic.parameter(one).label.split()) for one in (wanted, name)]
    named = bool(labels[0] & {*more.words}) and (labels[1] - labels[0]).isdisjoint(more.words)  # the corner's 92, of no spring
    kind = asked.topic.parameter(wanted).kind
    either = twins(asked.topic.parameter(name).slot, asked.topic.parameter(wanted).slot) and not anew
    own = {*more.words} <= {*asked.topic.parameter(wanted).label.split(), *_STATES}  # an outside corner, measured at 92
    if more.words and not (sure or named or either or own):
        return
    if name == wanted or name not in asked.givens or not isinstance(heard.value, kind):
        return
    fitted = [fit(row, asked.topic.parameter(wanted), heard.text, cued=True) for row in numbers_in(heard.text)]
    if len(fitted) == 1 and fitted[0] is not None:
        more.givens = {wanted: replace(heard, value=fitted[0].value, others=fitted[0].others)}


def _called(pending: Pending) -> str:
    """All that the pieces of what waits are called by."""
    assert pending.asked is not None
    names = (f"{p.label} {p.name} {p.slot.kept}" for p in pending.asked.topic.parameters)
    called = f"{' '.join(names)} {pending.question}".lower()
    return f"{called} reveal" if "exposure" in called else called
