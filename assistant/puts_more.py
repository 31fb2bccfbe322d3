"""What a line puts to what there was, or takes off it, is never in its place: "plus an inch and a half", "add one door"."""

from __future__ import annotations

import re

from assistant.pending import Asked
from assistant.said_over import places_of, same_value
from intents.expressions import expression
from solvers.quantities import Angle, Length, Money, Percent, Pitch, Quantity, Ratio, Temperature, TemperatureChange
from solvers.slots import Choice, Given, Opening, Piece

_PUTS = expression(
    r"\W*(?:(?:and|so|then|ok|okay|oh|also|now|but|right|we|i|can you|please|let['’]?s)\W+)*"
    r"(?P<put>plus|add(?: on| in)?|(?:throw|chuck|stick|put|toss) in|put on|minus|(?:take|knock) off)\b",
    re.IGNORECASE,
)

_TOO = expression(  # and the walls too, 8 foot high
    r"\W*(?:and|plus)\W+(?P<put>(?:the|my|a|an|two|another)\b[^,;]*\b(?:too|as well|also)\b)", re.IGNORECASE
)
_GABLE = expression(  # with a gable 24 wide at 8/12, of a wall 40 long
    r"\W*(?:(?:and|so|ok|also|plus|add|with|but)\W+)*(?P<put>(?:the|my|a|an|one|another)\b[^,;]*?\bgables?\b)", re.IGNORECASE
)
_PRICED = expression(r"\bat \$?(?P<n>\d+\.\d\d) (?:each|apiece)\b", re.IGNORECASE)
_OF_AN_OPENING = expression(
    r"\b(?P<what>windows?|doors?|sliders?|openings?)(?:['’]?s| is| are| was| were|['’]re)\b", re.IGNORECASE
)
_OF_THE_WALL = expression(  # the wall's 3 high, same openings
    r"\W*(?:(?:and|so|ok|no|but|now|the|that|sorry|actually)\W+)*(?:walls?|gable|height|length)(?:['’]?s| is| are)?\b",
    re.IGNORECASE,
)
_LEAST = expression(r"\b(?:no|not|nothing|never) (?:less|smaller|narrower|shorter|under)(?: than)?\b|\bat least\b", re.IGNORECASE)
_SAYS_OF_AIR = expression(
    r"%|°|\b(?:per ?cent|percent|humid\w*|degrees?|deg|warm\w*|temp\w*|celsius|fahrenheit|outside|inside)\b", re.IGNORECASE
)
_SO_LONG = expression(  # 12s, of sticks: how long they are
    r"\b(?:\d+s|eights|tens|twelves|fourteens|sixteens|eighteens|twenties|twenty[- ]?fours)\b(?! of\b)", re.IGNORECASE
)
_ALONE = expression(  # 2 inches instead
    r"\W*(?:(?:and|no|ok|so|or|sorry|actually|make it|make that|try|what about|how about|with|at)\W+)*"
    r"(?:an? |the )?(?:\d[\d./ ]*|one|two|three|four|five|six|half|an? half)(?: and an? (?:half|quarter))?[ -]*"
    r"(?:inch(?:es)?|in|mm|mil|cm)?(?: (?:instead|then|now|rather))*\W*",
    re.IGNORECASE,
)
_SAYS_UNIT: tuple[tuple[re.Pattern[str], tuple[type, ...]], ...] = (
    (expression(r"\b\d[\d.]* ?(?:degrees?\b|deg\b|°)", re.IGNORECASE), (Angle, Pitch, Temperature, TemperatureChange, Choice)),
    (expression(r"\b\d[\d.]* ?(?:percent\b|%)", re.IGNORECASE), (Percent, Pitch, Ratio, Choice)),
    (expression(r"[$£€] ?\d[\d.]*|\b\d[\d.]* (?:dollars|bucks|quid|euros?)\b", re.IGNORECASE), (Money, Choice)),
)
_SO_LONG_ALONE = expression(
    r"\W*(?:(?:and|so|ok|or|in|with|using|what if|if|they['’]?re|they|were|i use|use|make (?:it|them)|try|how about"
    r"|what about)\W+)*(?P<n>\d+s|eights|tens|twelves|fourteens|sixteens|eighteens|twenties)(?: (?:instead|then|now))*\W*",
    re.IGNORECASE,
)
_CALLED_BY_LENGTH = frozenset(  # what is named by a number of feet, inches or centres: 12s, 24s
    "stock stocks stock_length board_length board stick spacing centres coil cover sheet_length sheet_width length corner setting"
    " pieces total".split()
)
_OF_A_FACE = frozenset(("openings", "opened", "pitch", "gable_height", "gable"))
_OF_A_COUNT = ("cost", "weight")
_NEAR = 1.5  # times as much, at most, of what a bare number may be another of
_FACES = expression(r"\b(?:one|both|each|1|2|two) (?:sides?|faces?)\b", re.IGNORECASE)
_CHANGES = expression(r"\b(?:make|change|turn|swap|now|instead|should be)\b", re.IGNORECASE)


def replaced_by_more(now: Asked, last: Asked, text: str) -> str:
    """The words of what a line puts to what there was, where it took the place of a value that was told; "" where it did not.

    A percentage is a value of its own: add ten percent waste, after five.
    """
    if now.topic is not last.topic or now.plus:
        return ""
    if _CHANGES.search(text) and any(_some_left(given, last.givens.get(name)) for name, given in now.givens.items()):
        return text.strip(" .!?")
    found = _PUTS.match(text) or _TOO.match(text) or _gable_on_a_wall(last, text)
    if found is None:
        return ""
    said = [place for place in places_of(text) if place.value.unit != "percent"]
    for name, given in now.givens.items():
        before = last.givens.get(name)
        if before is None or before.source == "assumed" or given.source != "asked" or same_value(given.value, before.value):
            continue
        if isinstance(given.value, tuple) and isinstance(before.value, tuple):
            if _all_others(given.value, before.value):
                return text[found.start("put") :].strip(" .!?")
        elif isinstance(given.value, Quantity) and not isinstance(given.value, Percent | Temperature):
            here = next((place for place in said if place.value.value == given.value.value), None)
            if here is not None:
                return text[found.start("put") : here.end]
    return ""


def _gable_on_a_wall(last: Asked, text: str) -> re.Match[str] | None:
    """The words that tell of a gable beside a wall of which none was told: its width is no length of that wall."""
    return _GABLE.match(text) if "wall_length" in last.givens and "gable" not in last.text.lower() else None


def _some_left(given: Given, before: Given | None) -> bool:
    """Whether a list is some of what it was and something new, where one of it was to be changed: make the 5 1/2 leg 6 1/2."""
    if before is None or given.source != "asked" or not (isinstance(given.value, tuple) and isinstance(before.value, tuple)):
        return False
    sizes = [(one.value, one.unit) for one in given.value if isinstance(one, Length)]
    were = [(one.value, one.unit) for one in before.value if isinstance(one, Length)]
    return 1 < len(sizes) < len(were) and len([size for size in sizes if size in were]) == len(sizes) - 1


def _all_others(now: tuple[object, ...], before: tuple[object, ...]) -> bool:
    """Whether no opening or piece of those before is left."""
    sizes = {_size(one) for one in before}
    return bool(sizes) and None not in sizes and sizes.isdisjoint(_size(one) for one in now)


def _size(one: object) -> object:
    if isinstance(one, Opening):
        return (one.width, one.height)
    return one.length if isinstance(one, Piece) else None


def faces_of_some(now: Asked, last: Asked, text: str) -> str:
    """The words that say which faces are trimmed of an opening that a line put to those before: plus a window one side."""
    before, given, faces = last.givens.get("openings"), now.givens.get("openings"), _FACES.search(text)
    if now.topic is not last.topic or "faces" not in {**last.givens, **now.givens} or before is None or given is None:
        return ""
    more = isinstance(given.value, tuple) and isinstance(before.value, tuple) and len(given.value) > len(before.value)
    return faces[0] if more and faces is not None else ""


def temperature_or_humidity(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a bare number that took the place of how warm or how damp the air was, and is near to both: and 60, of
    72 degrees at 50 percent."""
    names = ("temperature", "humidity")
    was = [last.givens[name].value for name in names if name in last.givens]
    places = places_of(text)
    if len(was) != len(names) or not now.changed & {*names} or len(places) != 1:
        return ""
    number, said = places[0].value.value, text[places[0].start : places[0].end]
    near = [number > 0 < one.value and max(number, one.value) <= _NEAR * min(number, one.value) for one in was]
    if not all(near) or _SAYS_OF_AIR.search(text):
        return ""
    return f"Is {said} how warm the air is, or its humidity? Say “{said} degrees”, or “{said} percent”."


def priced_as_a_size(now: Asked, last: Asked, text: str) -> str:
    """The price of each of what was counted, where it was taken for a size or a pitch: at 18.40 each, of joists so far apart."""
    found = _PRICED.search(text)
    sizes = [now.givens[name].value for name in now.changed if name in now.givens]
    if found is None or not any(isinstance(size, Length | Pitch | Angle) for size in sizes):
        return ""
    return f"Is “{found[0].strip()}” what each costs? Say how many there are of what, or say it again with its unit."


def unit_of_another(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a number whose unit what it was taken for never has: at 22 degrees, of the pieces of a cut list."""
    told = {name: given.value for name, given in last.givens.items()}
    values = [now.givens[name].value for name in now.changed if name in now.givens and now.givens[name].value != told.get(name)]
    parts = [one for value in values for one in (value if isinstance(value, tuple) else (value,))]
    if now.times != last.times:
        return ""  # 60 % of that
    for said, kinds in _SAYS_UNIT:
        found = said.search(text)
        if found is not None and parts and not any(isinstance(one, kinds) for one in parts) and len(places_of(text)) == 1:
            return f"What is “{found[0].strip()}” of: I have no place for it in this. Say its name with it."
    return ""


def so_long_as_another(now: Asked, last: Asked, text: str) -> str:
    """What is asked about things so long, of a question that has none: 12s, of the rise of an arch."""
    found = _SO_LONG_ALONE.fullmatch(text)
    names = [name for name in now.changed if name in now.givens]
    if found is None or not names or not _CALLED_BY_LENGTH.isdisjoint(names):
        return ""
    return f"What are the {found['n']}? Say what they are of, or tell me the {now.topic.parameter(names[0]).label} anew."


def size_of_an_opening(now: Asked, last: Asked, text: str) -> str:
    """What is told of a window or a door, where it was taken for a size of the wall: one window's actually 1.5 wide."""
    found, before, given = _OF_AN_OPENING.search(text), last.givens.get("openings"), now.givens.get("openings")
    told = before is not None and isinstance(before.value, tuple) and bool(before.value)
    same = told and given is not None and given.value == before.value  # type: ignore[union-attr]
    sizes = [name for name in now.changed if name in now.givens and isinstance(now.givens[name].value, Length)]
    if found is None or not same or not sizes or _OF_THE_WALL.match(text):
        return ""
    return f"Is that a size of the {found['what'].lower()}? Say how wide and how high it is, or tell me the wall's {sizes[0]}."


def least_of_another(now: Asked, last: Asked, text: str) -> str:
    """The least that something may be, where it was taken for a size that has no such bound: no less than 6, of panels."""
    found = _LEAST.search(text)
    labels = [now.topic.parameter(name).label for name in now.changed]
    bound = any("least" in label or "short" in label for label in labels)
    if found is None or not labels or bound:
        return ""
    return f"I take no least {labels[0]}: is that what the {labels[0]} is? Say “the {labels[0]} is …” with the number."


def openings_of_another(now: Asked, last: Asked, text: str) -> str:
    """Openings that change nothing of what is worked: less 2 openings 4 by 8, of what 38 sheets cost."""
    before, after = last.record.get("answer"), now.record.get("answer")
    if now.topic.name not in _OF_A_COUNT or now.changed.isdisjoint(_OF_A_FACE):
        return ""  # a small window may leave as many sheets
    if not before or not after:
        return ""
    if before["value"] != after["value"]:
        return ""
    what = next(now.topic.parameter(name).label for name in now.changed if name in _OF_A_FACE)
    return f"The {what} changes nothing of the {after['name']}: ask anew for what that is of, then go on from that."


def other_sticks(now: Asked, last: Asked, text: str) -> str:
    """What is asked about sticks of another length, where that was taken for how many there are: and with 12s, at 18.40 each."""
    found = _SO_LONG.search(text)
    if found is None or now.topic.name not in _OF_A_COUNT or "count" not in now.changed:
        return ""
    return f"Is “{found[0]}” how long they are? Then it takes another number of them: say how many, like “12 of them”."


def of_the_layer_put_in(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a size alone, said after a layer was put in, where it was taken for another given: an inch of foam too,
    2 inches instead."""
    name = next(iter(now.changed), "")
    if last.changed != {"layers"} or now.changed != {name} or name == "layers" or not _ALONE.fullmatch(text):
        return ""
    given = now.givens.get(name)
    if given is None or not isinstance(given.value, Length):
        return ""
    return f"Is “{text.strip(' .!?')}” the layer, or the {now.topic.parameter(name).label}? Say its name with it."
