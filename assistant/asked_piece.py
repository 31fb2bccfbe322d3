"""Whether a reply is the piece that was asked for, and what it tells of it: a thickness of the layer that had none."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.layer_changes import LAYERS, layers_changed, named_in, put_in
from assistant.listed_changes import put_into_lists
from assistant.meant_for import stock_told
from assistant.names import ASIDE
from assistant.said_over import places_of
from assistant.usual import impossible, is_usual
from assistant.ways import twins
from intents.expressions import expression
from intents.fitting import fit
from intents.matcher import Topics, read_as
from intents.question import Heard, Question, Reading
from intents.talk import numbers_in
from intents.told_over import legs_in_millimetres
from solvers.quantities import Count, Length, Money, Number, Pitch, Quantity, Temperature, TemperatureChange, Weight
from solvers.slots import Layer, Parameter, Slot

if TYPE_CHECKING:
    from assistant.pending import Asked, Pending
    from assistant.record import Record

# Neither is a reply: is a 4 inch enough, of a length that is not known yet; 6 or 7.
_ENOUGH = expression(r"\W*(?:(?:and|so|but|ok|then)\W+)*(?:is|are|will|would|does|do)\b[^;]*\benough\W*", re.IGNORECASE)
_EITHER = expression(
    r"\W*(?:(?:about|maybe|say|either|so)\W+)*[\w./ ]{1,12} or [\w./ ]{1,12}\W*"
    r"|\W*(?:(?:it['’]?s|its|it is|somewhere|about|maybe|i think|i guess|must be|either)\W+)*"
    r"(?:between an? [\w./ ]{1,12} and an? [\w./ ]{1,12}|(?:either )?an? [\w./ ]{1,12} or an? [\w./ ]{1,12})\W*",
    re.IGNORECASE,
)
# Things that are counted are no measure that is waited for: 60 teeth, of how far a saw swings.
_COUNTED = expression(r"^\W*(?:[a-z]+\W+)?[\d./]+ (?P<what>teeth|people|men|[a-z]{2,}[^su\W]s)\W*$", re.IGNORECASE)
_SIZED = expression(r"\d (?:cover|exposure|wide|long|high|tall|deep|thick|kerf|lap)\W*$|^\W*(?:cover|exposure) \d", re.IGNORECASE)
_NO_THINGS = frozenset("yes thanks cheers as is this was points times".split())
_NAIL = expression(r"\W*(?:[a-z]+\W+)*\d+ ?(?:d|penny)s?(?:\W+[a-z]+)?\W*", re.IGNORECASE)
_INTO = expression(r"\b(?:in|into|bites?|penetrat\w+|past|beyond|embed\w*|stud|framing|hold|grip)\b", re.IGNORECASE)
_WHAT_IS = expression(
    r"\W*(?:(?:and|so|but|sorry|ok|hmm+)\W+)*(?:which \w+ (?:do|is|are|would|of)\b|what(?:['’]?s| is| are) [\w ]+ here\b"
    r"|what (?:do|does) .* mean\b|what(?:['’]?s| is) (?:an? |the )?[\w ]+ mean\b)",
    re.IGNORECASE,
)
_SHORT = 8  # words of such a line
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


def asks_what_it_is(text: str, pending: Pending) -> bool:
    """Whether a short line with no number asks what is meant by the piece that is waited for: which corner do you mean."""
    if pending.asked is None or not pending.wanted or numbers_in(text) or not _WHAT_IS.match(text):
        return False
    label = pending.asked.topic.parameter(pending.wanted).label.lower().split()
    return label[0] in text.lower().split() and len(text.split()) <= _SHORT


def asks_meanwhile(text: str, reading: Reading) -> bool:
    """Whether a line asks a whole sum or conversion outright, which is no reply: remind me, what's 30 feet in inches."""
    best = next(iter(reading.questions), None)
    return best is not None and best.topic in ASIDE and best.whole and _OUTRIGHT.search(text) is not None


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
    return issubclass(pending.asked.topic.parameter(pending.wanted).kind, Money | Count | Weight)


def of_other_things(text: str, more: Question, pending: Pending) -> bool:
    """Whether a reply counts things that nothing in the question is called by, where a measure is waited for; or tells a size
    where a count is: 350 cover."""
    if pending.asked is None or not pending.wanted:
        return False
    if issubclass(pending.asked.topic.parameter(pending.wanted).kind, Count):
        return pending.wanted in more.givens and _SIZED.search(text) is not None and len(more.givens) == 1
    found = _COUNTED.match(text)
    rows = numbers_in(text)
    bare = len(rows) == 1 and isinstance(rows[0].value, Number)
    return found is not None and bare and found["what"].lower() not in {*more.words, *_NO_THINGS}


def names_the_wanted(text: str, kept: str, pending: Pending, parameters: Topics) -> bool:
    """Whether a line that could be kept under another name says none of that name, and words of the piece that is waited for:
    the swing is 80 degrees, of a temperature and of no saw."""
    if pending.asked is None or not pending.wanted or set(kept.split()) & set(re.findall(r"[a-z]+", text.lower())):
        return False
    more = read_as(text, pending.asked.topic.name, parameters, wanted=pending.wanted)
    return bool(more.words) and pending.wanted in more.givens and not (more.unplaced or more.unknown)


def names_a_nail(text: str, pending: Pending) -> bool:
    """Whether a nail is named where what is wanted is how much of it goes into the stud."""
    return pending.wanted == "penetration" and _NAIL.fullmatch(text) is not None


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


def changed_next(asked: Asked | None, record: Record, wanted: str) -> None:
    """Take the piece just told for what changes next, where no other number that was told is of its unit: 4 inches | and 5?"""
    if asked is None or asked.record is not record:
        return
    told = {name: given.value for name, given in asked.givens.items() if given.source != "assumed"}
    piece = told.pop(wanted, None)
    if isinstance(piece, Quantity) and all(getattr(value, "unit", "") != piece.unit for value in told.values()):
        asked.changed = frozenset((wanted,))


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
    kind = asked.topic.parameter(wanted).kind
    either = twins(asked.topic.parameter(name).slot, asked.topic.parameter(wanted).slot) and not anew
    if more.words and not (sure or either):
        return
    if name == wanted or name not in asked.givens or not isinstance(heard.value, kind):
        return
    fitted = [fit(row, asked.topic.parameter(wanted), heard.text, cued=True) for row in numbers_in(heard.text)]
    if len(fitted) == 1 and fitted[0] is not None:
        more.givens = {wanted: replace(heard, value=fitted[0].value, others=fitted[0].others)}
