"""One end of what goes from so much to so much, told anew: "only drying to 9 percent", "it starts at 14", "gets down to -20".

Where it goes to is the end, where it starts the beginning, whichever number it is nearer; down is less and up is more.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.changed_says import with_what
from assistant.record import put_asked
from assistant.said_over import places_of
from assistant.told_values import in_its_place
from intents.expressions import expression
from intents.question import Heard, Question

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

LONGEST = 90  # characters of such a line
PAIRS = (("moisture before", "moisture after"), ("temperature before", "temperature after"), ("coldest", "hottest"))
BY_SIZE = "coldest"  # of a pair that is told by which is less, and starts nowhere
_LEAD = r"\W*(?:(?:and|so|but|no|nah|sorry|oh|ah|actually|well|ok|okay|wait|hm+|right|now|what if|if|say|except)\b[\s,.]*)*"
_IT = (
    r"(?:(?:it|they|that|this|(?:the|my|our) [a-z]+(?: [a-z]+)?)(?:['’](?:s|re|ll|d)|\b)\s*)?"
    r"(?:(?:is|are|was|were|will|would|has|have|be|been|only|just|really|actually|probably|never|did|does|do)\b\s*)*"
)
_END = (
    r"(?:\W+(?:mind(?: you)?|though|then|now|instead|actually|here|indoors|inside|in there|in the house|at most|sorry|again))*"
    r"\W*"
)
_DRIES = r"dry|dries|drying|dried|drops?|dropping|dropped|falls?|falling|shrinks?"
_WETS = r"wets?|wetting|rises?|rising|climbs?|climbing|gains?"
_MOVES = r"(?:ends?|ending|finish\w*) up|goes|go|going|gone|gets?|getting|got|comes?|coming|came|ends?|ending|settles?"
_MOVES += r"|settling|finish\w*"
_TO = expression(
    rf"{_LEAD}{_IT}(?:(?P<less>{_DRIES})|(?P<more>{_WETS})|{_MOVES})?\s*(?:(?P<down>down)|(?P<up>up)|back|out)?"
    rf"\s*(?:to|at)\s+(?P<n>N)(?:\s+(?:percent|%|degrees?))?{_END}",
    re.IGNORECASE,
)
_FROM = expression(
    rf"{_LEAD}{_IT}(?:(?:starts?|starting|started|begins?|began|arrives?|arrived|arriving|(?:comes?|came) in|delivered)"
    r"(?: (?:off|out))?(?: (?:at|from|with))?|from)"
    rf"\s+(?P<n>N)(?:\s+(?:percent|%|degrees?))?{_END}"
    rf"|{_LEAD}{_IT}(?:at )?(?P<was>N)(?:\s+(?:percent|%|degrees?))?"
    rf" (?:before|to start(?: with)?|to begin with|at the start){_END}",
    re.IGNORECASE,
)
_MOVED = expression(rf"\b(?:{_DRIES}|{_WETS}|{_MOVES}|down|up)\b", re.IGNORECASE)


def end_told(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells one end of what the question before moves between; then that is worked, or asked about."""
    last = c.last
    pair = _pair(last) if last is not None and c.pending is None and len(text) <= LONGEST else None
    places = places_of(text) if pair is not None else []
    if last is None or pair is None or len(places) != 1 or not last.record.get("answer"):
        return False
    place = places[0]
    line = f"{text[: place.start]}N{text[place.end :]}"
    to, start = _TO.fullmatch(line), _FROM.fullmatch(line)
    if not start and not (to and _MOVED.search(line)):
        return False
    before, after = pair
    name = before if start else after
    down, up = bool(to and (to["less"] or to["down"])), bool(to and (to["more"] or to["up"]))
    if last.topic.parameter(before).label == BY_SIZE:
        if not (to and (down or up)):
            return False
        name = before if down else after
    heard = in_its_place(text, place, name, last)
    fits = heard is not None and isinstance(heard.value, type(last.givens[name].value))
    if heard is None or not fits or _the_wrong_way(heard, name, pair, last, down, up):
        labels = " or ".join(f"the {last.topic.parameter(one).label}" for one in pair)
        put_asked(record, "follow-up", f"What is “{text[place.start : place.end]}”: {labels}?")
        return True
    more = Question(last.topic.name, {name: heard}, 1.0)
    c.finish(record, c.ways(more, last), more)
    if c.last is not None and c.last is not last:
        c.last.changed, c.last.text = frozenset(more.givens), last.text
        if record["outcome"] == "answered":
            record["say"] = with_what(c.last, more) + record["say"]
    return True


def _pair(last: Asked) -> tuple[str, str] | None:
    """The two givens between which it goes, both told."""
    names = {last.topic.parameter(name).label: name for name, given in last.givens.items() if given.source != "assumed"}
    return next(((names[one], names[two]) for one, two in PAIRS if one in names and two in names), None)


def _the_wrong_way(heard: Heard, name: str, pair: tuple[str, str], last: Asked, down: bool, up: bool) -> bool:
    """Whether it would go up where the line says down, or the other way round than it did: drying to 14, of 12 to 7."""
    one, two = (last.givens[end].value for end in pair)
    new = heard.value
    if any(value.unit != new.unit for value in (one, two)):
        return False  # of another scale, which the working puts on one
    first, then = (new, two) if name == pair[0] else (one, new)
    if first.value == then.value:
        return True
    if last.topic.parameter(pair[0]).label == BY_SIZE:
        return bool(first.value > then.value)
    rises, rose = bool(then.value > first.value), bool(two.value > one.value)
    return rises != rose or (down and rises) or (up and not rises)
