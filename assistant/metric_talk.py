"""What a line means after an answer in a talk that is told in metric: a pound there is money, as what is weighed is in kilos."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.usual import METRIC_UNITS
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Area, Length, Money, Weight

if TYPE_CHECKING:
    from assistant.pending import Asked

_NUMBER = (
    r"\d+(?:\.\d+)?|(?:a|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|(?:thir|four|fif|six|seven|eigh|nine)teen"
    r"|(?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)(?:[ -](?:one|two|three|four|five|six|seven|eight|nine))?)"
)
_POUNDS = expression(
    rf"\b(?P<pounds>{_NUMBER})[ -](?:pounds?|quid)(?: (?P<pence>{_NUMBER}))?"
    r"(?=(?: (?:each|apiece|(?:a|an|per|the|for each|for every) [a-z]+(?: (?:length|metre))?))\b)",
    re.IGNORECASE,
)
_WEIGHED = expression(r"\b(?:weigh\w*|heavy|heavier|weight)\b", re.IGNORECASE)


def told_in_metric(last: Asked) -> bool:
    """Whether every length and area that was told for the question before is metric, and there is one."""
    told = [given.value for given in last.givens.values() if given.source != "assumed"]
    parts = [part for value in told for part in (value if isinstance(value, tuple) else (value,))]
    sizes = [size for part in parts for size in (part, getattr(part, "length", None), getattr(part, "width", None))]
    units = {size.unit for size in sizes if isinstance(size, (Length, Area))}
    return bool(units) and units <= METRIC_UNITS


def any_metric(last: Asked) -> bool:
    """Whether one length at least of the question before is metric."""
    return any(isinstance(given.value, Length) and given.value.unit in METRIC_UNITS for given in last.givens.values())


def pounds_as_money(text: str, last: Asked) -> str:
    """The line with its pounds for each of something as money, where the talk is metric: at nine pound each is at £9 each."""
    values = [given.value for given in last.givens.values()]
    weighs = any(isinstance(value, Weight) for value in values) or _WEIGHED.search(text)
    priced = any(isinstance(value, Money) for value in values)
    if weighs or not (priced or told_in_metric(last)):
        return text
    return _POUNDS.sub(lambda found: _money(found["pounds"], found["pence"]), text)


def _money(pounds: str, pence: str | None) -> str:
    """Pounds and pence in figures."""
    whole, part = (_worth(words) if words else 0 for words in (pounds, pence))
    return f"£{whole:g}" if not part else f"£{whole:g}.{int(part):02d}"


def _worth(words: str) -> float:
    found = numbers_in(words)
    return float(found[0].value.value) if found else 1.0  # type: ignore[union-attr]
