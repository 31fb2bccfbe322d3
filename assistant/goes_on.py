"""A sum that goes on: "plus 2", "and take another inch off", "split that in three", "what's left of a 16 footer".

What is put to the answer before, or taken off it, is no new number in the place of an old one: 10 feet added to trim for
40 are trim for 50, and where it can't be told what something is added to, that is asked. Said as a correction
("no, less 4"), it is; and "another 3 3/8" after a sum that takes away, or "an inch first", leave two readings: asked.
"""

from __future__ import annotations

import re
from dataclasses import replace
from enum import Enum
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.names import SUM
from assistant.pending import Asked
from assistant.record import Record, listed, names_of, put_asked
from assistant.running import length_of
from assistant.said_over import places_of
from assistant.several import TOGETHER, told_of
from assistant.share_of_last import share_of_last
from assistant.speech import spoken
from assistant.still_to_get import some_over
from intents.expressions import expression
from intents.question import Question
from intents.talk import numbers_in
from solvers.quantities import Count, Length, Number, Quantity
from solvers.rounding import reading
from solvers.slots import Given
from solvers.sums import DIVIDED, MINUS, PLUS, TIMES, Part, Sum, filled_in

if TYPE_CHECKING:
    from assistant.conversation import Conversation

LONGEST = 120  # characters of such a line
_EVENLY, _ROUND = "divide evenly", "circle"
# What can be longer or shorter by so much once it is worked; elsewhere the line must say that it goes on from "that".
_TO_CUT = frozenset(
    ("rake length", "sloped length", "hip or valley length", "gable height", "rise over a run", "divide evenly", "conversion")
)
_LEAD = r"(?:(?:and|then|now|ok|okay|so|but|also|well|with|next|minus that|please|can you|i need to|we|i|if)[ ,]+)*"
_MORE = r"(?:(?P<another>another|a further|an extra|a second)\s+)?"
_THAT = r"(?P<that>\s+(?:to|onto|on to|off|from|off of|out of|on) (?:that|it|there|the (?:answer|result|total|end)))?"
_THINGS = r"(?:tail|lap|allowance|tongue|tenon|birdsmouth|wall|post|plate|curb|knee wall|stem wall|deck|sill|foundation)s?"
_COUNTED = expression(r"\d+ (?:[a-z]+ )?(?:tails|laps|tenons|walls|posts|plates|decks|sills)$", re.IGNORECASE)
_FOR = r"(?:\s+(?:for|as) (?:the |a |my )?[a-z]+(?: [a-z]+)?)?"
_ADD = expression(
    rf"{_LEAD}(?:plus|add(?: on| in)?|tack on|stick on|put on)\s+{_MORE}(?P<n>.+?)"
    rf"(?:\s+(?:more|extra|on|each|apiece))?(?:\s+(?:of\s+)?{_THINGS})?{_THAT}{_FOR}",
    re.IGNORECASE,
)
_TAKE = expression(
    rf"{_LEAD}(?:less|minus|(?:take|knock|shave|trim|cut)(?: off| away)?|lose|drop|deduct|subtract)\s+{_MORE}(?P<n>.+?)"
    rf"(?:\s+(?:off|away|more|again|less|each|apiece))?{_THAT}{_FOR}",
    re.IGNORECASE,
)
_SAW = expression(rf"{_LEAD}(?:the |my )?(?:saw|blade|kerf|cut) (?:takes?|eats?|loses?|will take) (?P<n>.+)", re.IGNORECASE)
_OFF_THAT = expression(rf"{_LEAD}(?:off|from|out of) (?:that|it),? (?:take|cut|lose|knock off)(?: off)? (?P<n>.+)", re.IGNORECASE)
_OFF = expression(rf"{_LEAD}{_MORE}(?P<n>.+?)\s+(?:less|shorter|off|under)(?P<that> (?:that|it))?", re.IGNORECASE)
_OVER = expression(rf"{_LEAD}{_MORE}(?P<n>.+?)\s+(?:more|longer){_THAT}", re.IGNORECASE)
_ANOTHER = expression(rf"{_LEAD}(?P<another>another|plus another)\s+(?P<n>.+)", re.IGNORECASE)
_PARTS = expression(
    rf"{_LEAD}(?:(?:split|cut|break|chop|divide)(?: (?:that|it|them|this))?(?: up)? (?:in|into)|into) (?P<n>[a-z0-9]+)"
    r"(?: (?:equal|even))?(?: (?:parts|pieces|bits|lots|ways))?",
    re.IGNORECASE,
)
_HALF = expression(r"(?:cut|split|divide|chop)(?: (?:that|it|this))? in half|halve (?:it|that)", re.IGNORECASE)
_LEFT = expression(
    rf"{_LEAD}(?:(?:what'?s|what is|how much is)(?: left| remaining| over)?|take (?:it|that)|that) (?:of|from|out of|off) "
    r"(?:a |the |my )?(?P<n>.+)",
    re.IGNORECASE,
)
_LESS_THAT = expression(rf"{_LEAD}(?:a |the |my )?(?P<n>.+?) (?:less|minus|take away) (?:that|it)", re.IGNORECASE)  # 48 less that
_PUTS_RIGHT = expression(
    r"(?:\b(?:no|nope|sorry|i meant|i said|make (?:it|that)|should be|wrong|oops|actually)[ ,]+)+|[ ,]+(?:instead|sorry)$",
    re.IGNORECASE,
)
_NO_KERF = expression(  # which nothing takes off what is divided evenly
    r"[ ,]+(?:(?:and|but) )?(?:ignor(?:e|ing)|forget(?:ting)?(?: about)?|never ?mind|not counting|leav(?:e|ing) out|no|without)"
    r"(?: the| any)? (?:saw )?(?:kerfs?|blades?|cuts)$",
    re.IGNORECASE,
)
_FOR_WHAT = expression(r"\b(?:for|as)\b", re.IGNORECASE)  # add 10 for waste
_FOR_LAP = expression(r"\bfor (?:the |a |my |its )?(?:lap|overlap|seam|tab)$", re.IGNORECASE)  # by which no given is longer
_LAP = expression(
    rf"{_LEAD}(?:allow(?:ing)?\s+)?(?P<n>.+?)(?:\s+(?:more|extra))?\s+for (?:the |a |my |its )?(?:lap|overlap|seam|tab)",
    re.IGNORECASE,
)
_FIRST = expression(r"\s+(?:first|beforehand|before that|to start with)$", re.IGNORECASE)
_TAKES_AWAY = expression(r"\b(?:less|minus|off|from|out of|shy|under|take|lose|left|remain\w*)\b|\s[-−]\s", re.IGNORECASE)
_ARTICLES = ("", "a", "an", "the")
_SHARE = expression(r"(?:half|quarter|third|eighth|sixteenth)\b", re.IGNORECASE)
_UNIT = expression(r"inch|foot|mil|millimet(?:re|er)", re.IGNORECASE)
_DIVIDES = expression(r"\b(?:divid\w*|split|into|in (?:half|thirds|quarters))\b|÷|\s/|/(?!(?:2|4|8|16|32|64)\b)", re.IGNORECASE)
_FROM = expression(rf"{_LEAD}(?:from|off|out of) (?:a |the )?(?P<n>.+)", re.IGNORECASE)
_EACH = expression(r"\b(?:each|apiece)$", re.IGNORECASE)  # of a total, that is so many
_OTHER_END = expression(
    r"\s+(?:(?:at|on|for|to)\s+)?the (?:other|far|opposite|near|top|bottom|left|right)(?: hand)? (?:end|side)$", re.IGNORECASE
)
_WAYS = (
    (_FROM, MINUS), (_TAKE, MINUS), (_OFF_THAT, MINUS), (_SAW, MINUS), (_ADD, PLUS), (_OFF, MINUS), (_OVER, PLUS),
    (_ANOTHER, PLUS), (_LAP, PLUS),
)  # fmt: skip


def goes_on(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line goes on from the length just worked; then that is worked, or the conversation asks."""
    if share_of_last(c, record, text) or some_over(c, record, text):
        return True
    if c.pending is not None:
        return _which_first(c, record, text)
    last = c.last
    if last is None or not last.record.get("answer") or len(text) > LONGEST:
        return False
    said = _NO_KERF.sub("", text.strip(" .!?").replace("’", "'"))
    line = _PUTS_RIGHT.sub("", said)
    first = _FIRST.search(line)
    operation, number, found = _what(line[: first.start()] if first else line)
    same = _other_end(line, last) if found is None or number is None else None
    operation, number, found = same or (operation, number, found)
    if found is None or number is None:
        return False
    if isinstance(number, Number) and number.value.denominator == 1 and _COUNTED.search(line):
        return False  # less 3 plates: so many, and no 3 inches
    explicit = bool(found.groupdict().get("that") or found.groupdict().get("another"))
    explicit = explicit or (last.topic.name == _ROUND and _FOR_LAP.search(said) is not None)
    if found.re == _LAP and last.topic.name not in (*_TO_CUT, _ROUND, SUM):
        return False
    if last.topic.name != SUM and not (last.topic.name in _TO_CUT or explicit):
        return found.re == _ADD and line == said and not _FOR_WHAT.search(line) and _put_to(c, record, last, number)
    before = _so_far(last)
    if before is None or any(isinstance(given.value, tuple) for given in last.givens.values()):
        return False
    if line != said:
        return _instead(c, record, last, found)
    if _EACH.search(said) and isinstance(before, Sum) and before.operation in (PLUS, TIMES) and last.times == 1:
        put_asked(record, SUM, f"{number.text} for each of how many? Say the whole sum in one go.")
        return True
    if first or found.re == _FROM or (found.re == _ANOTHER and same is None and _TAKES_AWAY.search(last.text)):
        put_asked(record, SUM, "Is that put to the answer or taken off, and after it or before? Say the whole sum in one go.")
        return True
    if found.re == _PARTS and (last.topic.name == _EVENLY or _DIVIDES.search(last.text)):
        return False  # in eight instead
    _work_on(c, record, text, last, *_whole(found, operation, before, number, last))
    return True


def _other_end(line: str, last: Asked) -> tuple[str, Length | Number, re.Match[str]] | None:
    """As much again at the other end, where what was done at the first is done to it too: and another eighth the other end."""
    end = _OTHER_END.search(line)
    _, number, found = _what(line[: end.start()]) if end else ("", None, None)
    if number is None or found is None or found.re != _ANOTHER or last.topic.name != SUM:
        return None
    return MINUS if _TAKES_AWAY.search(last.text) else PLUS, number, found


def _which_first(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line goes on from a sum that could be two; which it is is asked again, before anything is put to it."""
    pending = c.pending
    if pending is None or len(pending.ways) < 2 or not pending.question or len(text) > LONGEST:
        return False
    line = re.split(r"\s+(?:for|while|because|since)\b", text.strip(" .!?").replace("’", "'"))[0]
    _, number, found = _what(line)
    if found is None or number is None or not found.groupdict().get("another"):
        return False
    put_asked(record, SUM, pending.question)
    return True


def _whole(
    found: re.Match[str], operation: str, before: Part, number: Length | Number, last: Asked
) -> tuple[str, dict[str, Given]]:
    """The topic that what goes on is of, and its givens: the length in so many parts, or the sum."""
    length = length_of(last) if found.re == _PARTS else None
    if length is not None:
        parts = Count(number.value, "count", number.text)
        return _EVENLY, {"length": Given("length", length, "earlier"), "parts": Given("parts", parts, "asked")}
    number = _in_its_unit(number, last) if operation in (PLUS, MINUS) else number
    whole = Sum(operation, number, before) if found.re in (_LEFT, _LESS_THAT) else Sum(operation, before, number)
    return SUM, {**_bare(last), "sum": Given("sum", whole, "asked")}


def _work_on(c: Conversation, record: Record, text: str, last: Asked, topic: str, givens: dict[str, Given]) -> None:
    """Work what goes on, and keep the words of the whole sum in mind."""
    total = length_of(last)
    metric = True if total is not None and total.unit == "mm" else last.metric  # a tape's fraction off it makes it no inches
    c.finish(record, [c.worked(Asked(c.topics[topic], {}, last.tape_step, metric), givens)], Question(topic))
    if c.last is not None and c.last is not last and last.topic.name == topic:
        c.last.text = f"{last.text}, {text}"


def _put_to(c: Conversation, record: Record, last: Asked, number: Length | Number) -> bool:
    """More of the amount that was asked of ("add 10 feet", to 40 ft of trim); of what else, it is asked to what it is put."""
    name, _ = TOGETHER.get(last.topic.name, ("", ""))
    amount = last.givens[name].value if name in last.givens else None
    if not isinstance(number, Length) or not isinstance(amount, Length):
        called = names_of(last.topic, last.givens.values())
        sizes = [f"the {called[name]}" for name, given in told_of(last).items() if not isinstance(given.value, Enum)]
        ask = f"Put {number.text} to which: {listed(['the answer', *sizes])}?"
        put_asked(record, last.topic.name, f"{ask} Say “add {number.text} to that” for the answer, or say the other anew.")
        return True
    more = replace(amount, value=amount.value + number.to(amount.unit).value, text="")
    givens = {**told_of(last), name: Given(name, more, "asked")}
    c.finish(record, [c.worked(last, givens)], Question(last.topic.name))
    if record["outcome"] == "answered" and c.last is not None:
        c.last.changed = frozenset((name,))
    record["say"] = spoken(f"With {last.topic.parameter(name).label} {reading(more.value, more.unit)}. ") + record["say"]
    return True


def _instead(c: Conversation, record: Record, last: Asked, found: re.Match[str]) -> bool:
    """A number put right in a sum that has one such number, said with what was done to it: "no, less 4"."""
    if last.topic.name != SUM or found.re not in (_TAKE, _ADD):
        return False
    less = bool(_TAKES_AWAY.search(last.text))
    if less == (found.re == _TAKE) and len(places_of(last.text)) == 2:
        c.take(record, f"no, {found['n']}")
    else:
        put_asked(record, SUM, "Which number of the sum should that be? Say the whole sum in one go.")
    return True


def _what(line: str) -> tuple[str, Length | Number | None, re.Match[str] | None]:
    """What is done to the answer before, and with which number."""
    line = _HALF.sub("split that in two", line)
    left = _LEFT.fullmatch(line) or _LESS_THAT.fullmatch(line)
    if left is not None:
        value = _number(left["n"])
        bare = left.re == _LESS_THAT and isinstance(value, Number)
        return MINUS, value if isinstance(value, Length) or bare else None, left
    parts = _PARTS.fullmatch(line)
    if parts is not None:
        value = _number(parts["n"])
        return DIVIDED, value if isinstance(value, Number) and value.value.denominator == 1 else None, parts
    for pattern, operation in _WAYS:
        found = pattern.fullmatch(line)
        value = _number(found["n"]) if found else None
        if value is not None:
            return operation, value, found
    return "", None, None


def _number(words: str) -> Length | Number | None:
    """The one length or number that these words are, and no more."""
    words = f"a {words}" if _SHARE.match(words) else f"an {words}" if _UNIT.fullmatch(words) else words
    places = places_of(words)
    if len(places) != 1 or words[: places[0].start].strip().lower() not in _ARTICLES or words[places[0].end :].strip():
        return None
    said = [row.value for row in numbers_in(words) if isinstance(row.value, Length | Number)]
    return replace(said[0], text=words) if len(said) == 1 else None


def _so_far(last: Asked) -> Part | None:
    """The sum so far, or the exact length that was worked."""
    said = last.givens.get("sum")
    if last.topic.name == SUM and said is not None:
        other = last.givens.get("other")
        whole = filled_in(said.value, other.value if other else None)
        return Sum(TIMES, whole, Number(Fraction(last.times), "none")) if last.times != 1 and whole is not None else whole
    return length_of(last)


def _in_its_unit(number: Length | Number, last: Asked) -> Length | Number:
    """A bare number beside millimetres: whole, it is of those; a fraction is read off a tape."""
    total = length_of(last)
    answer = last.record.get("answer") or {}
    if total is None or "mm" not in (total.unit, answer.get("unit")) or isinstance(number, Length):
        return number
    return Length(number.value, "mm" if number.value.denominator == 1 else "in", number.text)


def _bare(last: Asked) -> dict[str, Given]:
    """What a bare number was said to be, where the sum before said that."""
    given = last.givens.get("bare") if last.topic.name == SUM else None
    return {"bare": given} if given is not None and given.source != "assumed" and not isinstance(given.value, Quantity) else {}
