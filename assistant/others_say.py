"""A given that somebody says: "the paving man says 1 in 80 is enough", "my wife says the wall is 5.6 long, not 5.4".

What names a given of the question before, or is of another kind than its answer, changes that; what is of the answer's own kind
and names nothing is set beside the answer, as it always was.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.acts.comparing import in_unit
from assistant.plain_lines import Plain, told_otherwise
from assistant.said_over import places_of, stem
from assistant.several import told_of
from intents.expressions import expression
from intents.talk import numbers_in

if TYPE_CHECKING:
    from assistant.pending import Asked

_WHO = expression(
    r"(?:(?:the|my|our|your|his|her|that|some|an?|this) )?(?:[a-z'-]+ ){0,4}?(?:says?|said|reckons?"
    r"|reckoned|thinks?|thought|tells me"
    r"|told me|tells us|told us|claims?|swears?|insists?|makes it|wants)(?: that)? (?P<rest>.+)",
    re.IGNORECASE,
)
_ASKS_AFTER = expression(
    r"[.,;?–—-]+\s*(?:so |and |then )*(?:how (?:far|much|many|long|high|tall|wide|deep|big)|what)\b[^\d,;]*$", re.IGNORECASE
)
_IS = expression(
    r"(?:the |my |our |that )?(?P<what>[a-z]+(?: [a-z]+){0,2}?)(?:'s| is| are| was| should be"
    r"| ought to be| needs to be| wants to be"
    r"| must be) (?:only |really |actually |more like |nearer |about |an? )*(?P<n>.+)",
    re.IGNORECASE,
)
_IT_IS = expression(
    r"(?:(?:it|that|they)(?:'s| is| should be| ought to be|'re| are|'d be) |go |use |make it )?(?:only "
    r"|really |actually |more like |nearer"
    r" |about |an? |at |to |with )*(?P<n>.+?)(?: (?:is|'s|will be|would be|ought to be"
    r"|should be)(?: (?:enough|plenty|fine|ok|okay|right"
    r"|better|all (?:i|you|we) need|good enough|do|what (?:i|we|you) (?:need|want)))*| will do| does it)?",
    re.IGNORECASE,
)
_NOT = expression(r",? (?:and )?not (?P<old>.+)$", re.IGNORECASE)
_SIZES = {"long": "length", "high": "height", "tall": "height", "wide": "width", "deep": "depth", "across": "width"}
_NO = expression(r"\b(?:not|no|never|least|most|over|under|than|maybe|might|could|or)\b", re.IGNORECASE)


def others_say(line: str, last: Asked) -> Iterator[Plain]:
    """The plain change of a given that somebody is said to say; none where it may be the answer that they say."""
    found = _WHO.fullmatch(_ASKS_AFTER.sub("", line))
    if found is None:
        return
    rest = found["rest"].strip(" .!?")
    old = _NOT.search(rest)
    told = rest[: old.start()] if old is not None else rest
    places = places_of(told)
    answer = last.record["answer"]
    if len(places) != 1 or _NO.search(told) or {*re.findall(r"[a-z]+", told.lower())} & _own_words(last):
        return
    number = told[places[0].start : places[0].end]
    kind = type(places[0].value)
    like = in_unit(numbers_in(number), str(answer["unit"])) is not None
    if places[0].value.unit in ("in12", "ratio") and answer["unit"] not in ("in12", "ratio", "none"):
        like = False  # 1 in 80 is no drop
    names = {stem(word) for word in re.findall(r"[a-z]+", told.lower())}
    names |= {_SIZES[word] for word in names & _SIZES.keys()}
    was = [row.value for row in numbers_in(old["old"])] if old is not None else []

    def holds(now: Asked, before: Asked) -> bool:
        before_all = told_of(before)
        other = told_otherwise(now, before)
        label = {stem(word) for key in other for word in before.topic.parameter(key).label.split()}
        took = [getattr(before_all[key].value, "value", None) for key in other if key in before_all]
        if was:
            return len(was) == 1 and getattr(was[0], "value", None) in took
        slope = any(getattr(now.givens[key].value, "unit", "") == "in12" for key in other)
        return bool(label & names) or (not like and (slope or any(type(now.givens[key].value) is kind for key in other)))

    if was:
        size = re.search(r"\b(?:long|high|wide|tall|deep|thick|across)\b", told)
        yield Plain(f"{number}{' ' + size[0] if size else ''}, not {old['old'] if old is not None else ''}", told="", holds=holds)
        return
    named = _IS.fullmatch(told)
    if named is not None and named["what"].lower() not in ("it", "that", "they"):
        yield Plain(f"make the {named['what']} {named['n']}", holds=holds)
        return
    alone = _IT_IS.fullmatch(told)
    if alone is not None and not like and alone["n"].strip() == number:
        yield Plain(f"make it {number}", holds=holds)


def _own_words(last: Asked) -> set[str]:
    """The words that name the answer, which are of no given."""
    words = {word for word in str(last.record["answer"]["name"]).lower().split() if len(word) > 2}
    return words - {word for key in told_of(last) for word in last.topic.parameter(key).label.split()}
