"""What sticks are sold in, told beside another number of a change: "2.4 high, in 4.8s", "9 high in 12s"."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from intents.expressions import expression
from intents.fitting import fit
from intents.question import Heard
from intents.talk import numbers_in

if TYPE_CHECKING:
    from assistant.pending import Asked
    from intents.question import Question

_STOCK = ("stock length", "board length")
_SOLD = r"\b(?:in|from|out of|using|with) (?P<n>{0}(?:['’]?s)?)(?:\b|$)"
_PLURAL = expression(r"\d['’]?s$|footers?$|(?:ten|eight|twelve|fourteen|sixteen|eighteen|twent(?:y|ie))e?s$", re.IGNORECASE)


def to_the_stock(more: Question, rest: str, last: Asked) -> None:
    """Give what is told as the length sticks come in to the stock, where it went to another given."""
    stock = next((p for p in last.topic.parameters if p.slot.kept in _STOCK), None)
    if stock is None or stock.name in more.givens or len(more.givens) < 2:
        return
    for name, heard in list(more.givens.items()):
        said = re.search(_SOLD.format(re.escape(heard.text)), rest, re.IGNORECASE)
        rows = numbers_in(said["n"]) if said is not None and _PLURAL.search(said["n"]) else []
        fitted = fit(rows[0], stock, said["n"], cued=True) if said is not None and len(rows) == 1 else None
        if said is None or fitted is None:
            continue
        del more.givens[name]
        more.givens[stock.name] = Heard(fitted.value, heard.start, heard.end, said["n"], 1.0)
        more.swaps = []
        return
