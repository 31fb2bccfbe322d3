"""What comes in so many to a square, of a roof or a wall told in squares: "bundles at 3 a square"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.plain_lines import Plain
from assistant.said_over import whole
from intents.expressions import expression
from solvers.quantities import Number

if TYPE_CHECKING:
    from assistant.pending import Asked

_PACKS = r"(?:bundles?|packs?|boxes|cartons?|bags?)"
_ASKED = r"(?: (?:is that|are those|do i need|do we need|will i need|of shingles))?"
_A_SQUARE = r"(?:a|per|to a|to the|to every|in a|for each|for a|each) (?:square|sq)"
_SO_MANY = expression(  # how many bundles at 3 a square; 3 bundles to the square
    rf"(?:(?:how many|give me|what['’]?s that in|in) )?(?P<what>{_PACKS}){_ASKED},?"
    r"(?: (?:at|with|if (?:it|there|they)['’]?(?:s|re)(?: got)?|@))? (?P<n>[^ ,;?]+)"
    rf"(?: (?:of them|{_PACKS}))?(?: (?:come|go|make))? {_A_SQUARE}\W*"
    r"|(?:(?:at|with|it['’]?s|its|there['’]?s|they['’]re|i get|i need|they come|if it['’]?s) )?"
    rf"(?P<m>[^ ,;?]+) (?P<them>{_PACKS}) {_A_SQUARE}"
    r"(?:[, ]+(?:how many|bundles|packs|boxes)(?: (?:is|are) (?:that|those|it))?)?\W*",
    re.IGNORECASE,
)
_BUNDLES = expression(rf"(?:how many )?(?P<what>{_PACKS}){_ASKED}\W*", re.IGNORECASE)


def to_a_square(line: str, last: Asked) -> Iterator[Plain]:
    """How many of what comes in so many to a square, for the squares just worked."""
    answer, found = last.record["answer"], _SO_MANY.fullmatch(line)
    place = whole(found["n"] or found["m"]) if found is not None else None
    if found is None or place is None or answer["unit"] != "square":
        return
    if not isinstance(place.value, Number) or place.value.value <= 0:
        return
    what = (found["what"] or found["them"]).lower()
    what = what if what.endswith("s") else f"{what}s"
    rate = f"{float(place.value.value):.10g} {what} did 1 square"
    yield Plain(f"{rate}, how many {what} for {answer['value']:.10g} squares", ("by the same rate",))


def packs_of_squares(line: str, last: Asked) -> str:
    """What to ask where bundles are asked for, and not told is how many of them make a square."""
    found = _BUNDLES.fullmatch(line) if last.record["answer"]["unit"] == "square" else None
    return f"How many {found['what']} to a square? Say it like “{found['what']} at 3 a square”." if found is not None else ""
