"""A change told with a story round it: "the yard just rang and it's gone up to 21.50, robbery, so at that?".

Words before the number say that it is what holds now, or the line ends by asking again. The number then takes the place
of the one given that it can be for. What stands beside it must be of the question before, so that two sugars are no sides.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from enum import Enum
from itertools import pairwise
from typing import TYPE_CHECKING

from assistant.heard_all import unheard
from assistant.meant_for import Wanted, targets_of
from assistant.said_over import Place, places_of, stem
from assistant.told_values import as_near, elsewhere, holds_now, in_its_place, labelled_so, likely, size_named, told_anew
from intents.expressions import expression
from intents.matcher import read_as
from intents.question import Question
from intents.talk import numbers_in
from intents.tokens import tokenize

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

_PEOPLE = (
    r"(?:s?he|they|we|i|you|wife|husband|owners?|client|customer|boss|inspector|foreman|fella|fellow|guy|lad|lady|architect"
    r"|designer|engineer|neighbou?r|brother|dad|mum|mom|missus|yard|plans?|drawings?)"
)
_NOW = expression(
    r"(?:\bso (?:we'?ll |let'?s |i'?ll |we |just )?(?:go|use|take|try|say|call it|make it"
    r"|(?:do|run|work) (?:it|that)(?: out)? (?:again|over))(?: with| for| to| at)?"
    rf"|\b{_PEOPLE}(?: \w+)?(?: now)? (?:only |really |just )*"
    r"(?:wants?|needs?|would like|asks? for|prefers?|says? (?:i|we|it) (?:only |just )?needs?)"
    r"|\b(?:gone|went|goes|going|come|came|dropped|moved|bumped|it'?s|is|are) (?:up|down|back) to"
    r"|\b(?:put|pushed|bumped|brought|knocked|moved|took|taken|changed|cut) (?:it|them|that|those|the \w+)"
    r"(?: up| down| out| back| in)? to"
    r"|\b(?:made|makes|make|cut) (?:it|that|them)"
    r"|\b(?:let|give|do|sell)\w* (?:(?:me|us) (?:have )?(?:(?:it|them|those) )?|(?:it|them|those) )(?:for|at)"
    r"|\bit'?s now|\bis now|\bnow it'?s"
    r"|\bforgot (?:about |that |to say )?(?:there'?s|there is|there was|the|it has|it'?s got)"
    r"|\b(?:turns|turned) out (?:it'?s|to be|it is|it was)"
    r"|\b(?:other|that|this|next|second) (?:one|side|wall|end|window|door|roof|gable|corner|board|piece|run)(?:'?s| is| was)?"
    r")(?: only| just| about| a full| really)?"
    r"(?: (?:no|not) (?:more|less|longer|over) than| at (?:most|least)| (?:under|over))?\W*$",
    re.IGNORECASE,
)
_AGAIN = expression(
    r"\b(?:so |and |now |then )*(?:at that|what (?:then|now|there|here)|how about (?:that|then|now)"
    r"|where does that (?:leave|put) (?:me|us)"
    r"|what (?:does|would|will) (?:that|it) (?:make(?: it)?|be|come to|do(?: to it)?)(?: now| then)?"
    r"|what'?s (?:that|it)(?: come to| make)?(?: now| then)?)\W*$",
    re.IGNORECASE,
)
_WANTS = expression(
    rf"\b{_PEOPLE}(?:'d| would| really| now| only| (?:does|do) ?n[o'’]t)* (?:wants?|wanted|likes?|prefers?|asked for|is after)"
    r"\b(?! to)",
    re.IGNORECASE,
)
_BY = expression(r"\W*(?:by|x|×)\W*", re.IGNORECASE)
_SO_MANY_MORE = expression(r"\b(?:more (?!than\b)[a-z]+|extra [a-z]+|left|spare)\W*$", re.IGNORECASE)  # I need 2 more boards
_GONE_TO = expression(r"\b(?:gone|went|come|dropped|moved) (?:up|down|back) to\b", re.IGNORECASE)
_FORGOT = expression(r"\bforgot (?:about |that |to say )?(?:there'?s|there is|there was|the|it has|it'?s got)\b", re.IGNORECASE)
_TAIL_ENDS = frozenset(
    "so and now then would is was but because since apparently instead if with like by please though altogether total overall "
    "s better nicer safer closer actually today here my look looks might could max tops".split()
)
_SIZES = frozenset("high tall long wide deep thick apart across off each".split())
_LED = frozenset("if what with for in were was we would had i they gone went go used using use it of made than".split())
MOST_BESIDE = 6  # words that may stand with a choice: steel like I wanted to


def tells_a_change(topic: str, text: str) -> bool:
    """Whether what sounds like other talk tells a change: "the fella says a quarter deep, so what then" compares nothing,
    and "I forgot there's a foot of overhang" asks for nothing back."""
    if topic == "compare" and (_WANTS.search(text) or _SO_MANY_MORE.search(text) or _GONE_TO.search(text)):
        return True  # what is wanted is no measure of what is
    how = {"compare": _AGAIN, "explain": _FORGOT, "recall": _FORGOT}.get(topic)
    return how is not None and bool(how.search(text)) and bool(numbers_in(text))


def told_changes(c: Conversation, text: str, wanted: Wanted | None, last: Asked) -> Iterator[Wanted | Question]:
    """What the line changes, in as few of its words as say it."""
    choice = _choice_in(c, wanted, last) if wanted is not None and wanted.led else None
    if choice is not None:
        yield Wanted(choice, led=True, sure=True)
        return
    anew = told_anew(text, last)
    if anew is not None:
        yield anew
        return
    place = _new_number(text, last)
    label = labelled_so(text, place, last) if place is not None else ""
    if place is not None and label:
        yield Wanted(f"{label} {text[place.start : place.end]}", led=True, sure=True)
    tail = _tail(text, place, last) if place is not None else None
    if place is None or tail is None:
        return
    before = text[: place.start].split()
    lead = [word for word in before[-1:] if not tail and _named(word, last)]
    number = text[place.start : place.end]
    told = Wanted(" ".join([*lead, number, *tail]), lead=text[: place.start], led=True, sure=True)
    targets = targets_of(told, last)
    if not (_NOW.search(text[: place.start]) or _AGAIN.search(text)):
        yield from _plainly(text, place, last)
        if targets:
            return
    if len(targets) == 1 and as_near(place, targets[0], last):
        yield Wanted(text, led=True, untold=True)  # the client only wants 20, of 22 boards at 19.50: it is asked which
        return
    if len(targets) == 1 or (not targets and place.value.unit != "none"):  # 15 percent can only be the waste
        yield told


def _plainly(text: str, place: Place, last: Asked) -> Iterator[Wanted | Question]:
    """The one given that a value told plainly can take the place of, with that value."""
    number, size = text[place.start : place.end], size_named(text, last)
    if size:
        yield Wanted(f"{size} {number}", led=True, sure=True)
        return
    targets = targets_of(Wanted(re.sub(r"\b[Oo]ne\b", "", text), lead=text[: place.start], led=True), last)
    if len(targets) == 1 and likely(text, place, targets[0], last) and last.givens[targets[0]].source != "assumed":
        heard = in_its_place(text, place, targets[0], last)
        if heard is not None:
            yield Question(last.topic.name, {targets[0]: heard}, 1.0)


def _new_number(text: str, last: Asked) -> Place | None:
    """The one number that the line says holds now; every other in it is the same, or one that was given."""
    places = places_of(text)
    places = [place for place in places if place.words != ("one",)] or places  # the big one's 26
    led = [place for place in places if _NOW.search(text[: place.start])]
    led = led or [place for place in places if holds_now(text, place, last)]
    asked = bool(_AGAIN.search(text))
    fresh = [place for place in places if unheard(text[place.start : place.end], last.givens.values())]
    if any(_BY.fullmatch(text[one.end : other.start]) for one, other in pairwise(places)):
        return None  # 9 foot by 12: two sizes, though one was given before
    if not fresh or not (led or asked) or len({place.value.value for place in fresh}) != 1:
        return None
    whole = [place for place in fresh if place.value.unit != "none"]
    if whole:
        return whole[-1]  # fifteen percent would be safer, so go fifteen
    told = [place for place in fresh if place in led]
    return told[-1] if told else fresh[-1] if asked else None


def _tail(text: str, place: Place, last: Asked) -> list[str] | None:
    """The words after the number that go with it, each of the question before; None where another follows."""
    tail: list[str] = []
    for token in tokenize(text[place.end :]):
        if not token.text[0].isalpha() or token.text in _TAIL_ENDS:
            break
        if token.text == "of" and not tail:  # a foot of overhang
            tail.append(token.text)
            continue
        if token.text == "in" and not text[place.end + token.end :].strip(" .!"):
            break  # an inch and a half in
        if not tail and elsewhere(text[place.end :]):
            break  # 33 feet on the other side
        if not _named(token.text, last):
            return None
        tail.append(token.text)
    return tail if tail != ["of"] else None


def _named(word: str, last: Asked) -> bool:
    """Whether a word is one of the question before, a size, or a name of what it was given."""
    labels = {stem(part) for parameter in last.topic.parameters for part in parameter.label.split()}
    said = {stem(token.text) for token in tokenize(last.text)}
    return word in _SIZES or stem(word.lower()) in labels | said


def _choice_in(c: Conversation, wanted: Wanted, last: Asked) -> str | None:
    """The one other choice that a line names: and if we'd gone with steel."""
    if numbers_in(wanted.rest):
        return None
    heard = read_as(wanted.rest, last.topic.name, c.parameters).givens
    named = [(name, one) for name, one in heard.items() if isinstance(one.value, Enum | str)]
    if len(named) != 1 or len(heard) != 1:
        return None
    name, one = named[0]
    words = {token.text for token in tokenize(wanted.rest)} - {token.text for token in tokenize(one.text)} - _LED
    before = last.givens.get(name)
    other = before is not None and getattr(before.value, "name", before.value) != getattr(one.value, "name", one.value)
    return one.text if other and len(words) <= MOST_BESIDE else None
