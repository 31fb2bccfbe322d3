"""A long line after a question, taken apart: the words that say what changes, without what is told round them.

"Hang on, those boards turned out to be sixteen foot when the truck came in", "it has warmed up since, it's 60 now, so what do
I leave on the next one", "the door's gone, leave it out", "why's that thirteen courses and not twelve". A part without a
number that asks for nothing else and turns nothing round is left out; every number stays.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.acts import CHANGES
from assistant.heard_all import unheard
from assistant.lists_in_talk import forgotten
from assistant.openings_told import counted_again, counted_in_words
from assistant.plainer import plainer
from assistant.record import Record
from assistant.said_over import places_of
from assistant.spelled_out import sounds_told
from assistant.told_round import State, take_shorter
from assistant.told_shortly import told_shortly
from assistant.units_kept import openings
from intents.elsewhere import outside_of
from intents.expressions import expression
from intents.matcher import read_as
from intents.number_words import SMALL, TENS
from intents.talk import Said, numbers_in, readings_in
from intents.texted import respelled
from solvers.quantities import LENGTH, Length, Quantity

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

LONGEST = 400  # characters of a line that is looked at so
FEWEST = 3  # words of a line that can have anything round its change
_SPLIT = expression(
    r"\s*[,;.!?–—]+\s+(?:and\s+|but\s+)?"
    r"|\s+(?=(?:because|'?cause|cos|since|when|while|where|now that|so that|seeing|as soon as)\b)"
    r"|\s+(?=(?:so|and) (?:what|how|where)\b|now (?:he|she|they|we|i|it)\b)",
    re.IGNORECASE,
)
_MERE = expression(
    r"\W*(?:(?:no|nope|nah|hang on|hold on|wait|sorry|oh|ah|right|ok|okay|well|actually|so|and|but|mate|look|listen|hey|then"
    r"|a (?:sec|second|minute|bit|tick)|oops|whoops|scratch that|my mistake|my bad|my fault|damn|shoot|yeah|yes|uh|um|now)\W*)+",
    re.IGNORECASE,
)
_SOFTLY = expression(
    r"^\W*(?:(?:i'd |we'd |you'd |i |we )?(?:had )?better|might as well|may as well|let's|probably|(?:it )?turns out"
    r"|apparently|(?:the |my |our )?\w+(?:'s| is|'re| are) (?:happy|fine|ok|okay|good|content) with)\s+",
    re.IGNORECASE,
)
_OF_PIECES = frozenset(("end gap", "thermal movement"))
_PIECES = expression(
    r"^\W*(?:the|these|those|my|our) (?:panels|boards|pieces|lengths|sticks|sheets|strips|sections|gutters) (?:are|were)\b",
    re.IGNORECASE,
)
_EXCUSE = expression(r"\s*[,;.–—]\s*(?:i|we|he|she|they|my \w+)\b[^,;.?]*\W*$", re.IGNORECASE)
_MEASURED_ONE = expression(  # I just went up and measured one: which is no number of the reply
    r"\s*[,;.–—]\s*(?:and )?(?:i|we|he|she)\b[^,;.?\d]*\b(?:measured|checked|pulled|tried|looked at|found|saw|taped)"
    r" (?:one|it|them)(?: of them| up there| myself| just now| again)*\W*$",
    re.IGNORECASE,
)
_SO_AT = expression(
    r"[,;.]\s+(?:and |then )?(so (?:how (?:many|much|long|far|high|wide)|what)\b[^,;.]*\b(?:at|with|on|for)\s+[^,;]+?)\W*$",
    re.IGNORECASE,
)
_ON_TAPE = expression(
    r"\b(?:i|we|he|she|they)(?:'ve)? (?:read|reads|get|got|have|had|make|makes|made|measure|measured) [^,;?]*"
    r"\b(?:on|with|off|by) (?:the|my|his|our) tape\b",
    re.IGNORECASE,
)
_BUT = expression(r"\b(?:i|we|you) (?:said|told you|gave you|thought|had|put|wrote)\b.*\bbut\b", re.IGNORECASE | re.DOTALL)
_ONE = expression(r"\b(?:the|that|this|other|next|long|short) ones?\b|\bone (?:side|of|that|day)\b", re.IGNORECASE)
_DECIDED = expression(
    r"^\W*(?:ok |okay |so |well |right |and )*(?:we|i|they|he|she)(?:'ve|'re|'m| have| are| am|'s| is)? (?:just )?"
    r"(?:decided(?: now)? to|going to|gonna|had to|got to|agreed to|have to)\s+(?=(?:go|change|switch|use|make|drop)\b)",
    re.IGNORECASE,
)
_REASON = expression(r"\W*(?:because|'?cause|cos|since|as|seeing)\b", re.IGNORECASE)
_DENIED = expression(r"\b(?:don't|dont|doesn't|no use|no good|nothing|never)\b", re.IGNORECASE)
_IN_UNIT = expression(
    r"\bin (?:gallons|litres|liters|metric|millimet(?:re|er)s|mm|cm|met(?:re|er)s|feet|inches|square (?:met(?:re|er)s|feet)"
    r"|decimals?|imperial|celsius|fahrenheit)\b",
    re.IGNORECASE,
)
_CORRECTS = expression(
    r"\b(?:no|nope|nah|sorry|oops|whoops|wait|hang on|hold on|scratch that|my mistake|my bad)\b", re.IGNORECASE
)
_ERRED = expression(
    r"\b(?:wrong|misread|miscounted|mixed up|mistake|backwards|upside down|blind|glasses|fault|daft|old drawing)\b",
    re.IGNORECASE,
)
_TURNS = expression(
    r"\b(?:not|never|forget|instead|except|unless|without|meant|both|double|twice|half|other|add|less|more"
    r"|(?:leave|take|took|taken) (?:it |that |the \w+ )?(?:out|off|away))\b",
    re.IGNORECASE,
)
_ASKS = expression(
    r"\b(?:how|what|what's|whats|which|where|can|could|should|give|tell|work|figure|read|note|flag)\b", re.IGNORECASE
)
_AGAIN = expression(r"\W*(?:so |and |then |now |ok |well )*(?:what|how|where|which)\b", re.IGNORECASE)
_WHY = expression(
    r"\W*(?:ok |okay |so |but |and |wait |hang on |hey |sorry )*(?:why|how come|what makes (?:it|that)|how is it|how's it)\b"
    r"(?:'?s)?(?!\W+(?:not|don't we|not just) (?:make|try|use|go|do|take|have|put|say)\b)",
    re.IGNORECASE,
)
_HAVE_GOT = expression(
    r"[,;.]\s*(?:so |now )?what(?:'ve| have| do) (?:i|we) (?:got|have)(?: left| now| then)?\W*$", re.IGNORECASE
)
_OF_THE_PAGE = expression(
    r"\b(?:steps?|lines?|marks?|entry|note|decimals?|places|check|proof|last|first|why|how come)\b", re.IGNORECASE
)
_PART = r"(doors?|windows?|openings?|sliders?|vents?|garage door|patio door)"
_OUT = (
    expression(
        rf"\b(?:leave|take|keep) out (?:the |that |those |both )?{_PART}\b(?!\W*(?:is|are|was|'s|by|\d))", re.IGNORECASE
    ),
    expression(
        rf"\b(?:leave|take|drop|lose|forget|scrap|ditch|skip|bin|without) (?:the |that |those )?{_PART}(?: out)?\W*(?:$|[,.;])",
        re.IGNORECASE,
    ),
    expression(
        rf"\bthe {_PART}(?:'s|'re| is| are| has| have)? (?:all )?(?:been )?(?:gone|out|cut|dropped|scrapped|cancell?ed|off"
        r"|not going in|getting blocked up|blocked up|boarded up|not happening)\b",
        re.IGNORECASE,
    ),
    expression(
        rf"\b(?:board|block|brick|fill|clos)(?:ed|ing)? (?:up |in |over )?(?:the |that |those ){_PART}\b", re.IGNORECASE
    ),
)


def asks_why(c: Conversation, text: str, said: Said | None) -> Said | None:
    """The line as one that asks why the answer is what it is, where it begins so and every number in it is one of that."""
    record = c.last.record if c.last is not None else None
    if not record or not record.get("answer") or (said is not None and said.topic not in CHANGES):
        return None
    found, values = _WHY.match(text), numbers_in(text)
    if found is None or not values:
        return None
    shown = [record["answer"], *record["also"], *record["givens"]]
    known = {round(float(line["value"]), 3) for line in shown if isinstance(line.get("value"), int | float)}
    first = values[0].value
    return Said("explain") if round(float(getattr(first, "value", -1)), 3) in known else None


def asks_anew(c: Conversation, said_so: Said, text: str) -> bool:
    """Whether what sounds like reading back tells a number that is nowhere on the page: what's the rake length at 10 in 12.

    What somebody has left of two lengths stands in no notebook either: 81 1/2 less 1 3/16, what have I got.
    """
    if said_so.topic == "review" and _HAVE_GOT.search(text) and len(places_of(text)) > 1:
        return True
    if said_so.topic not in ("explain", "recall"):
        return False
    record = c.last.record if c.last is not None else {}
    if c.last is None or not record.get("answer") or _OF_THE_PAGE.search(text):
        return False
    said = [place.value for place in places_of(text) if place.words[0] not in ("a", "an")]
    shown = [line.get("value") for line in (record["answer"], *record["also"], *record["givens"], *record["marks"])]
    known = {round(float(value), 2) for value in shown if isinstance(value, int | float)}
    known |= {round(float(g.value.value), 2) for g in c.last.givens.values() if isinstance(g.value, Quantity)}
    return bool(said) and any(value.unit != "none" and round(float(value.value), 2) not in known for value in said)


def read_off_tape(c: Conversation, text: str) -> Said | None:
    """What somebody reads on the tape, beside the length just worked: I read 25 foot 8 on the tape."""
    answer = c.last.record.get("answer") if c.last is not None else None
    places = places_of(text)
    if not answer or answer["unit"] not in LENGTH or len(places) != 1 or not _ON_TAPE.search(text):
        return None
    words = text[places[0].start : places[0].end]
    found = _ON_TAPE.search(text)
    told = found is not None and found.start() < places[0].start < found.end()
    return Said("compare", {"value": tuple(readings_in(words))}, {"value": words}) if told else None


_REMEMBERS = expression(  # the boards are 14 feet long, could you remember that
    r"(?P<what>[^?]*\d[^?]*?)[,;.]?\s+(?:(?:could|can|will|would) you |please |and )*remember (?:that|it|this)"
    r"(?: for me| for this job)?(?:,? please)?\W*",
    re.IGNORECASE,
)


def _remembered(text: str) -> str:
    """The line that asks at its end to be remembered, with that said first."""
    found = _REMEMBERS.fullmatch(text)
    return f"remember {found['what'].strip(' ,')}" if found is not None else text


def without_opening(text: str, last: Asked | None, waits: bool = False) -> str:
    """The line as "no door", where it says that an opening of the question before is not there after all."""
    text = _NEW_ONE.sub(r"\g<0>,", _not_where(text)) if last is not None else text
    text = sounds_told(text) if last is not None or waits else text
    text = forgotten(text, last) if last is not None and not waits else _MEASURED_ONE.sub("", text) if waits else text
    text = told_shortly(_remembered(counted_again(counted_in_words(respelled(text)), last)), last, waits)
    text = plainer(as_decided(_without_excuse(text, last), last), last)
    text = as_it_is_now(_asked_last(text), last) if last is not None and len(text) < LONGEST else text
    if last is None or len(text) > LONGEST or numbers_in(text) or not any(openings(g.value) for g in last.givens.values()):
        return text
    found = next((match for pattern in _OUT if (match := pattern.search(text)) is not None), None)
    if found is not None:
        return f"no {found[1]}"
    return text


_SPOKEN = "|".join([*SMALL, *TENS])
_NEW_ONE = expression(  # new one | fourteen by eighteen: no hundred and fourteen
    rf"^\W*(?:(?:ok|okay|now|right|and|so)\W+)*(?:a |the )?(?:new|next|another|different|other) one(?= (?:{_SPOKEN})\b)",
    re.IGNORECASE,
)
_WHERE = expression(r"(?<=[\w%°]) (?:down|up|out|over|back) (?:there|here)(?: (?:now|today|though|mind))?[\s.!]*$", re.IGNORECASE)
_BY = expression(r"\bby\b|[x×]", re.IGNORECASE)
_SIZE = expression(r"\b(?:wide|high|tall|long|deep|across|up|out)\b")


def _not_where(text: str) -> str:
    """A line that tells a value, without where that is: it's dropped to 15 down there."""
    where = _WHERE.search(text)
    return text[: where.start()] if where and len(places_of(text)) == 1 and not _ASKS.search(text) else text


def as_it_is_now(text: str, last: Asked) -> str:
    """The line as what holds now, where that is what was given less, or more, by what it tells: down 2 inches, 9 foot 4 now."""
    places = places_of(text)
    if len(places) != 2 or _ASKS.search(text) or len({*_SIZE.findall(text.lower())}) > 1:  # six foot wide and a foot high
        return text
    if _BY.search(text[places[0].end : places[1].start]):
        return text  # three foot by six foot are both sides
    sizes = [_inches(place.value) for place in places]
    given = [_inches(one.value) for one in last.givens.values() if one.source != "assumed"]
    told = [size for size in sizes if size is not None]
    if len(told) != 2:
        return text
    now = int(told[1] > told[0])
    held = any(was is not None and abs(was - told[now]) == told[1 - now] for was in given)
    return f"it's {text[places[now].start : places[now].end]} now" if held else text


def _asked_last(text: str) -> str:
    """Of a line that tells a number and asks with it again, what it asks: he says sixteens, so how many is it at sixteen."""
    found = _SO_AT.search(text)
    if found is None or found.start() == 0:
        return text
    before, again = ([row.value for row in numbers_in(part)] for part in (text[: found.start()], found[1]))
    same = {getattr(value, "value", value) for value in before} == {getattr(value, "value", value) for value in again}
    return found[1] if same and len(again) == 1 else text


def _inches(value: object) -> Fraction | None:
    return value.to("in").value if isinstance(value, Length) else None


def _without_excuse(text: str, last: Asked | None) -> str:
    """A correction without what its first words were wrong for: no, 53 7/16 | , I had the tape on the wrong side of the nail."""
    found = _EXCUSE.search(text) if last is not None and _CORRECTS.match(text.lstrip()) else None
    if found is None or numbers_in(found[0]) or not _ERRED.search(found[0]) or not numbers_in(text[: found.start()]):
        return text
    return text[: found.start()]


def as_decided(text: str, last: Asked | None) -> str:
    """The line without the words that say who decided what it changes: we decided to | go down to half an inch on the gap."""
    found = _DECIDED.match(text) if last is not None else None
    return text[found.end() :] if found is not None else text


def look_between(c: Conversation, record: Record, text: str, before: State) -> None:
    """Answer a line that came to nothing, or to no change, by what it says of the question before."""
    last: Asked | None = before[1]  # type: ignore[assignment]
    if last is None or record["outcome"] not in ("asks", "declined") or len(text) > LONGEST or text.count(" ") < FEWEST:
        return
    take_shorter(c, record, text, before, _shorter(text, last), lambda trial, left: _good(c, trial, left, last))


def _good(c: Conversation, trial: Record, left: list[str], last: Asked) -> bool:
    """Whether the parts that are left change the question before, and what was left out is no given of it."""
    if trial["outcome"] != "answered" or trial["topic"] not in (last.topic.name, "conversion"):
        return False
    for part in left:
        more = read_as(part, last.topic.name, c.parameters)
        others = (q.topic for q in c.read(part).questions if q.score > 0 and q.topic != last.topic.name)
        tells = bool(more.givens or more.manner) and not _DENIED.search(part)
        if tells or outside_of(part) is not None or (_AGAIN.match(part) and any(others)):
            return False
    return True


def _shorter(text: str, last: Asked) -> Iterator[tuple[str, list[str]]]:
    """The line without its parts that are only told, and those; with and without its first words of surprise."""
    yield from _said_other(text, last)
    parts = [part for part in _SPLIT.split(text) if part.strip()]
    told = [part for part in parts if numbers_in(_ONE.sub("", part)) or _IN_UNIT.search(part)]
    known = [part for part in told if _REASON.match(part) and not unheard(part, last.givens.values())]
    told = [part for part in told if part not in known]  # since the yard ran out of three quarter
    if not told:
        return
    mere = [part for part in parts if part not in told and _MERE.fullmatch(part)]
    rest = [part for part in parts if part not in told and part not in mere and part not in known]
    if not all(_idle(part, bool(mere)) for part in rest):
        return
    lead = "no, " if any(_CORRECTS.search(part) for part in mere) or any(_ERRED.search(part) for part in rest) else ""
    core = _SOFTLY.sub("", ", ".join(told))
    unit = _IN_UNIT.search(core) if not numbers_in(core) else None  # the lad wants it in litres
    pieces = _PIECES.sub("they're", core) if last.topic.name in _OF_PIECES else core
    alike = told[:1] if len({row.value for part in told for row in numbers_in(part)}) == 1 else []  # only ten, so do it with ten
    for line in dict.fromkeys((", ".join([*mere, *told]), lead + core, core, *([unit[0]] if unit else []), pieces, *alike)):
        if line != text:
            yield line, rest


def _said_other(text: str, last: Asked) -> Iterator[tuple[str, list[str]]]:
    """I said fourteen but they cut them to thirteen and a half: the one for the other."""
    places = [place for place in places_of(text) if place.words != ("one",)]
    if len(places) != 2 or not _BUT.search(text[: places[1].start]):
        return
    first, second = (text[place.start : place.end] for place in places)
    givens = last.givens.values()
    if not unheard(first, givens) and unheard(second, givens):
        yield f"no, {second} not {first}", []


def _idle(part: str, corrects: bool) -> bool:
    """Whether a part tells nothing of the question, or only asks it again."""
    if _AGAIN.match(part):
        return True
    if _ERRED.search(part):
        return True
    return not (_ASKS.search(part) or _TURNS.search(part))
