"""A number that is said in words run together, in figures: "one thirty two actually" is 132, and no 130 with a two after it."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.metric_talk import told_in_metric
from assistant.said_over import Place, places_of
from intents.expressions import expression
from intents.number_words import SMALL, TENS

if TYPE_CHECKING:
    from assistant.pending import Asked

_OF_EACH = expression(r"\s+(?:each|apiece|(?:an?|per) [a-z]+)\b", re.IGNORECASE)
_PARTS = frozenset("halves thirds quarters eighths eights sixteenths sixteens thirty-seconds".split())


def in_figures(text: str, last: Asked) -> str:
    """The line with its one number in figures, where that was said as its hundreds and the rest, or digit by digit in metric."""
    places = places_of(text)
    if len(places) != 1:
        return text
    place = places[0]
    after = text[place.end :].lower().split()[:1]
    if _OF_EACH.match(text[place.end :]):
        return text  # seven forty nine a tube is a price
    if place.value.unit != "none" or _PARTS & set(after) or not (_hundreds(place) or (_digits(place) and told_in_metric(last))):
        return text
    return f"{text[: place.start]}{place.value.value}{text[place.end :]}"


def _hundreds(place: Place) -> bool:
    """Whether a number is said without its hundred: one forty five."""
    first, *rest = place.words
    few = len(rest) == 2 and 0 < SMALL.get(first, 0) < 10
    return few and rest[0] in TENS and 0 < SMALL.get(rest[1], 0) < 10


def _digits(place: Place) -> bool:
    """Whether a number is said digit by digit: four three three five, six five oh two."""
    return len(place.words) > 2 and all(word == "oh" or SMALL.get(word, 10) < 10 for word in place.words)
