"""One leg more of a bent flashing, or one less: "put a half inch hem on it", "add another leg of 2 inches", "lose the hem",
"drop the 1 1/2"."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.also_asked import asking_words
from assistant.changed_says import with_what
from assistant.record import put_asked
from assistant.said_over import places_of
from intents.expressions import expression
from intents.question import Heard, Question
from intents.tokens import tokenize
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

LONGEST = 120  # characters of such a line
_SO = (
    r"(?:(?:and|then|ok|okay|so|but|also|oh|now|can you|could you|please|we|i|it|with|plus|has|needs?|want|wants"
    r"|there['’]?s)[ ,]+)*"
)
_KIND = r"(?:hem|kick(?: ?out)?|drip(?: edge)?|lip|return|flange|leg|fold|safe edge|stop|break)"
_PUT_ON = expression(
    rf"\W*{_SO}(?:(?:put|add|bend|turn|fold|stick|give it|run|form)(?: in| on| it)* )?(?:an?|another|one more|an extra) "
    rf"(?P<size>\S.*?)(?:-| )?{_KIND}s?(?P<end> .*)?\W*|"
    rf"\W*{_SO}(?:(?:put|add|bend|turn|fold|stick|give it)(?: in| on| it)* )?(?:an?|another|one more|an extra) {_KIND}"
    r"(?: (?:of|at|that's))? (?P<after>[^,;]*?\d[^,;]*?|(?:an?|half|three|five|seven|one|two)\b[^,;]*?)(?P<tail> (?:on|at|to"
    r"|along) .*)?\W*",
    re.IGNORECASE,
)
_KINDS = expression(r"\b(?:hem|kick|drip|lip|return|flange|leg)\b", re.IGNORECASE)
_SO_MANY = expression(
    rf"\W*{_SO}(?:(?:put|add|make it|bend)(?: on)? )?(?:\d+|two|three|four|five) (?:more )?{_KIND}s\W*", re.IGNORECASE
)
_BOTH = expression(r"\b(?:both|each|either) (?:ends?|sides?|edges?)\b", re.IGNORECASE)
_AT_ONE = r"(?:it|that|there|the|one|both|each|either|top|bottom|end|edge|side|front|back|ends|edges|sides|as well|too)"
_END = expression(
    rf"(?: (?:both|each|either) (?:ends?|edges?|sides?)|(?: (?:on|to|at|along|for|in)(?: {_AT_ONE})*"
    r"|(?: (?:as well|too|then|now|on))*)*)",
    re.IGNORECASE,
)
_OFF = expression(
    rf"\W*{_SO}(?:no|without|lose|drop|skip|scrap|leave off|leave out|forget|take off|ditch|minus)(?: the| that)? "
    rf"(?:(?P<kind>{_KIND})|(?P<size>\d[^a-z]*?)(?:['’]?s)?(?: (?:inch|in|mm))?(?: {_KIND})?)"
    r"(?: (?:off|out|then|now|please|after all|altogether))*\W*",
    re.IGNORECASE,
)


def leg_more_or_less(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells of one leg more of the bent flashing just worked, or one less; then that is worked."""
    last = c.last
    if last is None or c.pending is not None or len(text) > LONGEST or not last.record.get("answer") or not _legs(last):
        return False
    found = _put_on(text, last) or _left_off(text, last)
    if not found and (len(_KINDS.findall(text)) > 1 or _SO_MANY.fullmatch(text)) and not asking_words(last.topic.name, text):
        put_asked(record, "follow-up", "How wide is each leg? Say one at a time, as in “add a leg of 2”.")
        return True
    if not found:
        return False
    more = Question(last.topic.name, {"lengths": Heard(found, 0, len(text), text)}, 1.0)
    c.finish(record, c.ways(more, last), more)
    if c.last is not None and c.last is not last:
        c.last.changed, c.last.text = frozenset(more.givens), last.text
    if record["outcome"] == "answered" and c.last is not None:
        record["say"] = with_what(c.last, more) + record["say"]
    return True


def _put_on(text: str, last: Asked) -> tuple[Length, ...]:
    """The legs with one more, or one at each end; in the unit of the others where it is said with none. None for no such line."""
    legs = _legs(last)
    found = _PUT_ON.fullmatch(text)
    if found is None:
        return ()
    end = found["end"] or found["tail"] or ""
    size = f"a {found['size']}" if found["size"] else found["after"]
    said = places_of(size)
    if len(said) != 1 or places_of(end) or not _END.fullmatch(end) or size[said[0].end :].strip(" -"):
        return ()
    unit = legs[0].unit if said[0].value.unit == "none" else said[0].value.unit
    if unit not in Length.units:
        return ()
    leg = Length(said[0].value.value, unit, size.removeprefix("a ").strip(" -"))
    return (*legs, *[leg] * (2 if _BOTH.search(end) else 1))


def _left_off(text: str, last: Asked) -> tuple[Length, ...]:
    """The legs without the one that is named: by its size, or by what it was called beside that. None for no such line."""
    legs = _legs(last)
    found = _OFF.fullmatch(text)
    if found is None:
        return ()
    kind = found["kind"].lower().split()[0] if found["kind"] else ""
    sizes = _called(kind, last) if kind else [place.value.value for place in places_of(found["size"])]
    gone = [leg for leg in legs if len(sizes) == 1 and leg.value == sizes[0]]
    return tuple(leg for leg in legs if leg is not gone[0]) if len(gone) == 1 else ()


def _called(kind: str, last: Asked) -> list[object]:
    """The numbers that are said right before, or after, such a word in the question: a 3/8 hem."""
    tokens = tokenize(last.text)
    beside = [(place, [token.text for token in tokens[place.after : place.after + 2]]) for place in places_of(last.text)]
    return [
        place.value.value for place, words in beside if kind in words[:1] or (words[:1] in (["inch"], ["in"]) and kind in words)
    ]


def _legs(last: Asked) -> tuple[Length, ...]:
    given = last.givens.get("lengths") if last.topic.name == "bent flashing" else None
    return given.value if given is not None and all(isinstance(leg, Length) for leg in given.value) else ()
