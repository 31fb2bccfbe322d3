"""A change that its own words speak against: so high, taken for a width; no more than so much, where no bound is taken; a bare
number far from what it would be put in place of; one less, of what is counted.

Such a line is asked about, and changes nothing.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.said_over import places_of, times_apart
from intents.expressions import expression
from solvers.quantities import Area, Count, Length, Pitch, Weight

if TYPE_CHECKING:
    from assistant.pending import Asked

_HIGH = expression(r"\d[\d./ ]*(?:['\"]|feet|foot|ft|inch(?:es)?|in|mm|mil|cm|m|met(?:re|er)s?)? (?:high|tall)\b", re.IGNORECASE)
_AS_HIGH = expression(r"height|high|rise|head|sill|top|opening|eave|bearing|peak|wall|side|piece|leg", re.IGNORECASE)
_MOST = expression(
    r"\b(?:no|not|nothing|never) (?:more|bigger|wider|larger|over|greater)(?: than)?\b"
    r"|\bat (?:the )?most\b|(?<!same )\bmax(?:imum)?\b",
    re.IGNORECASE,
)
_BOUNDED = expression(r"exposure|gap|limit|greatest|most|tilt|swing|reach|spacing|kerf|lap", re.IGNORECASE)  # which have a bound
_LESS = expression(
    r"\W*(?:(?:and|so|ok|but|then|now)\W+)*(?:less|minus|take (?:away|off)) (?P<n>\d+|one|two|three|four)\W*", re.IGNORECASE
)
_WIDE = expression(r"\d[\d./ ]*(?:['\"]|feet|foot|ft|inch(?:es)?|in|mm|mil|cm|m|met(?:re|er)s?)? wide\b", re.IGNORECASE)
_NEVER_WIDE = expression(r"stock|stick|board length|height|rise|^run$|roll length|bearing|depth", re.IGNORECASE)
_AN_OPENING = expression(
    r"\b\d[\d./]*(?: ?(?:feet|foot|ft|in|inch(?:es)?|mm|m|['\"]))? ?(?:by|x|×) ?"
    r"\d[\d./'\"-]*(?: ?(?:feet|foot|ft|in|inch(?:es)?|mm|m))? (?P<what>doors?|windows?|sliders?|openings?)\b",
    re.IGNORECASE,
)
_LED = expression(r"\W*(?:and|plus|less|with|minus) (?:an? |one |two |three |four |\d )?\d", re.IGNORECASE)
_MORE = expression(
    r"\W*(?:(?:and|so|ok|plus|then|now|add|with)\W+)*(?P<n>one|two|three|four|\d+) more(?: (?:please|then|now))*\W*",
    re.IGNORECASE,
)
_OVER_THAT = expression(r"\b(?:over|on top of|outside(?: of)?|on) (?:all )?(?:of )?(?:that|it|those|them)\b", re.IGNORECASE)
_THE_NUMBER = expression(r"\bthe (?P<n>\d+(?:\.\d+)?)(?! ?(?:s\b|inch|foot|feet|ft|mm|['\"]))\b", re.IGNORECASE)
_STILL = expression(r"\bstill (?:at |only |the )?(?P<n>\d[\d./]*|[a-z]+)\b", re.IGNORECASE)
_SHORT = 24  # in
_FLAT = 1  # in 12; under which no pitch is told by a bare fraction
_COUNTED = frozenset(("openings", "courses", "rows", "pieces", "count", "studs", "parts", "sides", "many", "risers"))
_LEAST = 2  # under which a bare number is a part of an inch, as near to as far from what there was
_FAR = 6  # times as much, or as little


def high_and_no_width(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a height that was taken for another size: and 12 foot high, of a gable 24 wide."""
    found = _HIGH.search(text)
    labels = [now.topic.parameter(name).label for name in now.changed if name in now.givens]
    if found is None or not labels or any(_AS_HIGH.search(label) for label in labels) or len(places_of(text)) > 1:
        return ""
    return f"How high is no {labels[0]}: is “{found[0]}” the {labels[0]}? Say “the {labels[0]} is …” with the number."


def wide_and_no_length(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a width that was taken for another size: 14 foot wide, of the stock that pieces are cut from."""
    found = _WIDE.search(text)
    labels = [now.topic.parameter(name).label for name in now.changed if name in now.givens]
    if found is None or not labels or len(places_of(text)) > 1:
        return ""
    has_width = any("width" in parameter.label for parameter in now.topic.parameters)
    other = _NEVER_WIDE.search(labels[0]) or (labels[0] == "length" and has_width)
    if len(labels) > 1 or not other:
        return ""
    return f"How wide is no {labels[0]}: is “{found[0]}” the {labels[0]}? Say “the {labels[0]} is …” with the number."


def opening_as_sizes(now: Asked, last: Asked, text: str) -> str:
    """What is asked about the sizes of an opening, taken for those of what has none: with a 3 by 7 door, of a bent flashing."""
    found = _AN_OPENING.search(text)
    led = _LED.match(text) is not None and now.topic is not last.topic and "openings" not in now.givens
    if found is None or not (led or (now.topic is last.topic and now.changed)):
        return ""
    if not now.changed.isdisjoint(("openings", "opened", "sealed")):
        return ""
    names = {parameter.name for parameter in now.topic.parameters}
    if names & {"opening", "door", "window"}:
        return ""
    what = found["what"].lower()
    return f"What does the {what} change of the {last.topic.name}? Say the number that is another, with its name."


def one_more_of_what(now: Asked, last: Asked, text: str) -> str:
    """What is asked about so many more, where that was put to a size: and one more, of a circle 36 inches across."""
    found = _MORE.fullmatch(text)
    values = [now.givens[name].value for name in now.changed if name in now.givens]
    summed = now.topic is not last.topic and now.topic.name == "tape arithmetic"
    if found is None or not (summed or any(isinstance(value, Length | Area | Weight) for value in values)):
        return ""
    return f"{found['n'].capitalize()} more of what? Say how many of which, or the size with its unit."


def priced_by_the_foot(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a price by the foot of less than a foot: at 2.50 a foot, of a gap of a sixteenth."""
    length = now.givens.get("length")
    if now.topic.name != "cost" or now.topic is last.topic or length is None or length.source != "earlier":
        return ""
    if not isinstance(length.value, Length) or length.value.to("in").value >= _SHORT:
        return ""
    return f"How many feet is that for? The answer before it, {length.value.text}, is hardly bought by the foot."


def most_of_another(now: Asked, last: Asked, text: str) -> str:
    """The most that something may be, where it was taken for a value that has no such bound: no more than 6, of a sealant."""
    found = _MOST.search(text)
    labels = [now.topic.parameter(name).label for name in now.changed if name in now.givens]
    if found is None or not labels or any(_BOUNDED.search(label) for label in labels):
        return ""
    return f"I take no greatest {labels[0]}: is that what the {labels[0]} is? Say “the {labels[0]} is …” with the number."


def far_from_it(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a bare number far from the one value that it was put in place of: the other one's 10, of 264 ft²."""
    places = places_of(text)
    if len(now.changed) != 1 or len(places) != 1 or places[0].value.unit != "none" or places[0].value.value < _LEAST:
        return ""
    name = next(iter(now.changed))
    given, before = now.givens.get(name), last.givens.get(name)
    if given is not None and isinstance(given.value, Pitch) and given.value.unit == "in12" and given.value.value < _FLAT:
        return f"Is the pitch {given.value.text}? Say it in 12, like 3 in 12."
    if given is None or before is None or before.source == "assumed" or not isinstance(given.value, Length | Area | Weight):
        return ""
    if not isinstance(before.value, type(given.value)) or given.value.value <= 0 or before.value.value <= 0:
        return ""
    apart = times_apart(given.value.to(before.value.unit).value, before.value.value)
    label = now.topic.parameter(name).label
    if apart < _FAR or label.lower() in text.lower():
        return ""
    return f"Is the {label} {given.value.text}, after {before.value.text}? Say “the {label} is …” with its unit."


def the_one_told(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a number that points at what was told, where it was taken for something else: up the slope with the 14,
    of a run of 14 feet."""
    found = _THE_NUMBER.search(text)
    if found is None or len(now.changed) != 1:
        return ""
    name = next(iter(now.changed))
    other = [
        given for key, given in last.givens.items()
        if key != name and given.source != "assumed" and decimal_of(given.value) == found["n"]
    ]  # fmt: skip
    given = now.givens.get(name)
    if not other or given is None or decimal_of(given.value) != found["n"]:
        return ""
    label, was = now.topic.parameter(name).label, last.topic.parameter(other[0].name).label
    return f"Is the {found['n']} the {was} of before, or the {label}? Say it with its name."


def decimal_of(value: object) -> str:
    """The number of a quantity as it is typed; "" for what is none."""
    number = getattr(value, "value", None)
    return f"{float(number):.10g}" if number is not None and not isinstance(number, str) else ""


def still_as_told(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a number that is said to stay, where it took the place of another: 32 mil spindles, still thirteen."""
    found = _STILL.search(text)
    if found is None or not now.changed:
        return ""
    texts = [str(getattr(now.givens[name].value, "text", "")) for name in now.changed if name in now.givens]
    taken = any(text.lower().split(",")[0].split(" ")[0] == found["n"].lower() for text in texts)
    return f"What is still {found['n']}? Say its name with it." if taken else ""


def less_of_what(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a bare number that is taken off, of a question that counts things: less 1, of four windows."""
    found = _LESS.fullmatch(text)
    if found is None:
        return ""
    counted = [name for name, given in last.givens.items() if name in _COUNTED and isinstance(given.value, Count | tuple)]
    answer, before = now.record.get("answer") or {}, last.record.get("answer") or {}
    gone = (answer.get("value") or 0) < 0
    weighed = now.topic is last.topic and now.changed and not counted and before.get("unit") != "count"
    if not counted and not gone and not weighed:
        return ""
    what = before.get("name", "answer")
    return f"Less {found['n']} of what: of the {what}, or of a number that you told? Say it with its name."


def layers_under_that(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a layer over those told before, where they were let fall: a 3/8 board over that, what nail."""
    before, given = last.givens.get("layers"), now.givens.get("layers")
    if before is None or given is None or not isinstance(before.value, tuple) or not isinstance(given.value, tuple):
        return ""
    if not _OVER_THAT.search(text) or any(layer in given.value for layer in before.value):
        return ""
    what = " and ".join(layer.what for layer in before.value if layer.what) or "that"
    return f"Over the {what} of before? Say all the layers in one line, from the stud out."


# Whatever topic the line was taken for, and where it stayed that of the question before.
OF_ANY = (layers_under_that, less_of_what, one_more_of_what, priced_by_the_foot, opening_as_sizes)
OF_THE_SAME = (high_and_no_width, wide_and_no_length, most_of_another, far_from_it, the_one_told,
               still_as_told)  # fmt: skip
