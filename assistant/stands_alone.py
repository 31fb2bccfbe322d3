"""Whether a line after a question is one of its own, or changes that question."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.also_asked import asking_words
from assistant.at_the_saw import SAW
from assistant.meant_for import END, Wanted, labelled, stock_told
from assistant.names import SUM
from assistant.said_over import places_of, stem
from intents.chart import LIGHT
from intents.expressions import expression
from intents.phrases import compiled
from intents.talk import numbers_in
from intents.tokens import tokenize
from solvers.quantities import Temperature, TemperatureChange
from solvers.sums import Sum

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from intents.question import Question

_DIAGONAL = ("square check", "out of square")
MISSING = 0.35  # what the matcher charges for a piece that was not said; the last question has it already
LEVEL = 0.12  # topics this near in score are equally likely
MARGIN = 0.6  # how much better a line must stand on its own than as a change
_ASKS = expression(r"\?|\b(?:how|what|what['’]?s|whats|which|where|is it|are they)\b", re.IGNORECASE)
_WHAT_IS = expression(
    r"\W*(?:[a-z']+\W+){0,6}?what(?:['’]?s| is| does)\W+(?:(?:come|work out) to)?\W*", re.IGNORECASE
)
_ANOTHER_CORNER = expression(
    r"\b(?:another|next|different|new|second|casing|baseboard|base|skirting|trim|box|frame)\b|\b(?:the|an) other\b"
    r"|\ban? [a-z0-9. °]{1,24}corner\b",
    re.IGNORECASE,
)
_SMALL = frozenset("is at of the s now to only just really actually my our that about say were was be".split())
_STICKS = frozenset("how many sticks stick lengths length boards pieces from stock footers out".split())
_CONVERSION, _FROST = "conversion", "frost tonight"
_OTHERWISE = "asked"  # the choice to have an answer told in another way


def stands_alone(best: Question | None, more: Question, last: Asked, wanted: Wanted) -> bool:
    """Whether the line is rather a question of its own."""
    summed = best is not None and last.topic.name != SUM and _sum_asked(best, wanted)
    if best is None or summed or not best.words:
        return summed
    into = best.topic == _CONVERSION and best.whole and _ASKS.search(wanted.rest)  # what's 5/16 in mm, after a gap of 5/16
    if into or _told_whole(best, more, last, wanted):
        return True
    if best.topic == last.topic.name:  # angle of 8/12, after one told in percent
        return best.whole and _OTHERWISE in last.givens.keys() - best.givens.keys() and not own_words(best).isdisjoint(best.words)
    if _changes_only(best, more, last, wanted) or _of_the_last(best, more, last, wanted) or _label_alone(wanted, more, last):
        return False
    if best.whole and not wanted.corrects and _asks_for(wanted.rest, best):
        return True  # what pitch is 30 degrees, after the angle of one
    said, own = set(best.words), own_words(best)
    if best.whole and len(own) > 1 and not wanted.corrects and own <= said and not set(last.topic.name.split()) <= said:
        return True  # gable area 28 foot wide at 8 twelve, after a wall's
    if best.missing and not numbers_in(wanted.rest) and own <= said:
        return True  # the plumb cut, after a rake return whose fascia is plumb
    open_ = best.missing or best.lacking
    by_end = not best.whole and bool(more.givens) and END.search(wanted.rest) is not None  # if the long side were 5.4
    if by_end or (open_ and _only_names(wanted, last)) or (best.lacking and (wanted.led or _tells_all(more, wanted))):
        return False
    if more.manner and not more.givens and best.missing:
        return False
    name = labelled(wanted, last) if wanted.led else ""
    if name in more.givens and (best.missing or " " in last.topic.parameter(name).label):
        return False
    if (wanted.corrects or (best.missing and wanted.led)) and not own & said:
        return False
    if wanted.sure and not (best.whole and own <= said - set(last.topic.name.split())):
        return False
    change_score = more.score + MISSING * len(more.missing)
    return best.score > change_score + (MARGIN if wanted.led else LEVEL)


def _sum_asked(best: Question, wanted: Wanted) -> bool:
    """Whether a line asks what a sum of all its numbers is, and nothing else: what's 5 foot 7 minus 10 1/4."""
    heard = best.givens.get("sum") if best.topic == SUM and best.whole else None
    if heard is None or not isinstance(heard.value, Sum) or not heard.value.all_said or wanted.led:
        return False
    rest = f"{wanted.lead}{wanted.rest}".replace(heard.text, " ", 1)
    return rest != wanted.rest and not numbers_in(rest) and _WHAT_IS.fullmatch(rest) is not None


def of_another_topic(c: Conversation, best: Question | None) -> bool:
    """Whether the line names another topic by its first word, tells a given of it, and lacks what the question before told:
    the rake with 12 of overhang, after how high a gable is."""
    if best is None or c.last is None or not best.givens or not best.missing or best.unplaced:
        return False
    return best.topic.split()[0] in best.words and c.of_the_same(best)


def _changes_only(best: Question, more: Question, last: Asked, wanted: Wanted) -> bool:
    """Whether what the line could be on its own is plainly a value of the question before."""
    if best.topic == SUM and best.lacking and any(isinstance(heard.value, tuple) for heard in more.givens.values()):
        return True  # less a 3 by 7 door
    if _same_corner(best, last, wanted) or (best.topic == "circle" and "overhang" in wanted.rest.lower()):
        return True  # an eighteen inch overhang all the way round is no circle
    said = set(wanted.rest.lower().split())
    other = own_words(best).isdisjoint(said)  # nothing names another topic
    if more.givens and (_of_heat(best, last) or (other and asking_words(last.topic.name, wanted.rest))):
        return True  # 30 degrees swing only; out of a 24 inch coil how many strips
    if other and not more.unplaced and any(set(last.topic.parameter(name).label.split()) <= said for name in more.givens):
        return True  # rise 4 foot 8
    heats = bool(more.givens) and all(isinstance(heard.value, Temperature) for heard in more.givens.values())
    return best.topic == SUM and heats  # minus 10 now


def _same_corner(best: Question, last: Asked, wanted: Wanted) -> bool:
    """Whether a line that could ask the plain miter of a corner tells that of the crown before it: it's really 92, so what's
    the miter now."""
    crown = last.topic.name == "compound cut" and best.topic == "miter for a corner" and best.givens.keys() == {"corner"}
    return crown and not _ANOTHER_CORNER.search(f"{wanted.lead} {wanted.rest}")


def _of_heat(best: Question, last: Asked) -> bool:
    """Whether what is taken for the swing of a saw, or for frost with no dew point, comes after a temperature."""
    cold = best.topic == _FROST and bool(best.missing)
    heats = any(isinstance(given.value, TemperatureChange | Temperature) for given in last.givens.values())
    return heats and (best.topic == SAW or cold)


def _told_whole(best: Question, more: Question, last: Asked, wanted: Wanted) -> bool:
    """Whether the line is a whole question of the same topic, that gives all that was given and more than the change would:
    5 5/8 in mm, after another in inches; and the garage 24 by 24, diagonal, after how far out of square another is."""
    if best.whole and (best.topic, last.topic.name) == _DIAGONAL and "diagonal" in wanted.rest.lower():
        return True
    if best.topic != last.topic.name:
        return False
    told = {name for name, given in last.givens.items() if given.source == "asked"}
    return best.whole and told <= best.givens.keys() and more.givens.keys() < best.givens.keys()


def _tells_all(more: Question, wanted: Wanted) -> bool:
    """Whether a change takes every number of the line, two or more: 8 m wide and 9 in 12, after another gable."""
    placed = sum(heard.end > heard.start for heard in more.givens.values())
    return not more.unplaced and placed > 1 and placed >= len(places_of(wanted.rest))


def own_words(question: Question) -> set[str]:
    """The words of the name of a question's topic."""
    return set(question.topic.split())


def _label_alone(wanted: Wanted, more: Question, last: Asked) -> bool:
    """Whether the line is the name of one given and its number, and no more: sill 36."""
    name, places = next(iter(more.givens), ""), places_of(wanted.rest)
    if len(more.givens) != 1 or name not in last.givens or len(places) != 1:
        return False
    rest = wanted.rest[: places[0].start] + wanted.rest[places[0].end :]
    words, label = set(re.findall(r"[a-z]+", rest.lower())), set(last.topic.parameter(name).label.lower().split())
    return bool(words & label) and words <= label | _SMALL


def _of_the_last(best: Question, more: Question, last: Asked, wanted: Wanted) -> bool:
    """Whether the few words the other topic was told by are the last question's: a gap of balusters is no air gap, and sticks
    from 12 footers, after straps, are theirs."""
    if best.missing:
        return stock_told(wanted.rest, last) in more.givens and set(best.words) <= _STICKS
    one = len(best.words) == 1 < len(own_words(best))
    return one and set(best.words) <= _labels(last) and not _ASKS.search(wanted.rest)


def _labels(last: Asked) -> set[str]:
    """The words of the names of what the last question was given, or could be."""
    return {word for parameter in last.topic.parameters for word in parameter.label.lower().split()}


def _asks_for(text: str, question: Question) -> bool:
    """Whether the line asks what the topic answers by its first word: what pitch is, what's the rake."""
    first = question.topic.split()[0]
    return re.search(rf"\bwhat(?:['’]?s| is)? (?:the )?{re.escape(first)}\b", text, re.IGNORECASE) is not None


def _only_names(wanted: Wanted, last: Asked) -> bool:
    """Whether the line is a number and words the last question said, and no more: "eight battens"."""
    phrases = compiled()
    said = {stem(token.text) for token in tokenize(last.text)}
    inside = {at for place in places_of(wanted.rest) for at in range(place.first, place.after)}
    words = {stem(token.text) for at, token in enumerate(tokenize(wanted.rest)) if at not in inside and token.text.isalpha()}
    return bool(inside) and bool(words & said) and words <= said | phrases.fillers | LIGHT
