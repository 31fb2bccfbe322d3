"""A length told by the words that stood by it before: "I've measured it again and it's 1795 between newels", of 1845 clear
between the newels."""

from __future__ import annotations

import re
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.said_over import Place, as_length, places_of, stem, times_apart
from assistant.several import told_of
from assistant.units_kept import in_its_unit
from assistant.who_says_so import SMALL
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_LED = frozenset(  # what such a line may begin with
    "i i've ive we we've weve he she they just have has had measured taped checked remeasured it and it's its it'll that's that"
    " is was are were now only really actually again hang hold on wait no nope sorry oh ah the make so but what if say call be"
    " to get got reads read says should comes out at about more like a an".split()
)
AFTER = 4  # words after a number that tell what it is of
_SCORE, _NEAR = 3.0, 2.0  # of a change that only these words make; and how many times as large a length is put right to
_OF_THEM = expression(r"\bof (?:those|these|them|'?em|the)\b", re.IGNORECASE)  # which counts them
_WORD = expression(r"[a-z]+|[,.;:?]", re.IGNORECASE)
_OF_ANY = SMALL | frozenset(  # words that many lengths have after them
    "mm mil mils cm metre metres meter meters foot feet ft inch inches wide high long tall deep thick across clear each square"
    " apart centres centers centre center apiece between measured level over more less extra off than instead"
    " max maximum min minimum most least greatest piece pieces side sides siding end ends".split()
)


def by_words_after(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with one length anew, whose words after it stood after just one of those told before."""
    text = wanted.line or f"{wanted.lead}{wanted.rest}"
    places = places_of(text) if not wanted.old else []
    said = _after(text, places[0], None) if len(places) == 1 and not _OF_THEM.search(text) else set()
    if not said or not _LED.issuperset(re.findall(r"[a-z]+(?:['’][a-z]+)?", text[: places[0].start].lower().replace("’", "'"))):
        return []  # no foam, 38 into the stud
    before = places_of(last.text)
    if not before:
        return []
    ends = [place.start for place in before[1:]]
    alike = [place for place, end in zip(before, [*ends, None], strict=True) if said & _after(last.text, place, end)]
    if len(alike) == 1 and sum(place.value.value == alike[0].value.value for place in before) > 1:
        return []  # 1 1/2 inch foam, 1 1/2 in the stud: which of them that is, its value does not tell
    told = {key: given.value for key, given in told_of(last).items() if isinstance(given.value, Length)}
    mine = [key for key in told if len(alike) == 1 and getattr(told[key], "value", None) == alike[0].value.value]
    if len(mine) != 1 or _names_another(said, mine[0], last):
        return []
    was, value = told[mine[0]], places[0].value
    if not isinstance(was, Length) or not (isinstance(value, Length) or value.unit == "none"):
        return []
    if value.value <= 0 or was.value <= 0:
        return []
    now = as_length(value, was.unit)
    if times_apart(now.to("in").value, was.to("in").value) > _NEAR:
        return []
    words = text[places[0].start : places[0].end]
    heard = in_its_unit(Heard(replace(now, text=words), 0, len(wanted.rest), words), last.givens[mine[0]], last)
    return [Question(last.topic.name, {mine[0]: heard}, _SCORE)]


def _names_another(said: set[str], name: str, last: Asked) -> bool:
    """Whether the words name another length that was told: a gap, which in "3 1/2 gap 2 1/2" stood after a width."""
    labels = {key: {stem(word) for word in last.topic.parameter(key).label.split()} - _OF_ANY for key in told_of(last)}
    return not said & labels[name] and any(said & words for key, words in labels.items() if key != name)


def _after(text: str, place: Place, end: int | None) -> set[str]:
    """The words that tell what a number is of, up to the end of its clause."""
    words: list[str] = []
    for found in _WORD.finditer(text[place.end : end]):
        if not found[0].isalpha() or len(words) == AFTER:
            break
        words.append(found[0].lower())
    return {stem(word) for word in words if word not in _OF_ANY}
