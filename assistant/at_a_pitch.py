"""A pitch said by its rise alone after a question about a roof: "and the rake at 9", "ok, at nine", of one at eight in twelve.

The number is put in the fuller words it stands for ("9 in 12", "35 degrees"), as the pitch before it was told.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Number, Pitch

if TYPE_CHECKING:
    from assistant.pending import Asked

_RISE, _DEGREES = (1, 14), (10, 60)  # what is said so of a pitch in 12, and of one in degrees
_LINE = expression(
    r"\W*(?:(?:and|so|ok|okay|now|then|but|what(?:['’]?s| is| about)?|how about|how (?:long|high|tall)(?:['’]?s| is)?|the|that"
    r"|each|both|of|for|on|rakes?|rake length|rafters?|slope|sloped length|gable|height|gable height|peak|ridge|roof|it|its|one)"
    r"[ ,]+)*at (?:an? )?(?P<n>[a-z0-9/ ]+?)(?: then| now| instead)?\W*",
    re.IGNORECASE,
)
_RAKE = expression(r"\brakes?(?! length)\b", re.IGNORECASE)
_HIGH = expression(r"\bhow (?:high|tall)(?:['’]?s| is)?(?: (?:it|that)\b)?", re.IGNORECASE)
_LAID = ("exposure", "spacing", "price")  # what else is said with at


def at_a_pitch(text: str, last: Asked) -> str:
    """The line with its rise told as a pitch; as it is where the number may be of something else."""
    found = _LINE.fullmatch(text)
    said = numbers_in(found["n"]) if found else []
    pitches = [given.value for given in last.givens.values() if isinstance(given.value, Pitch) and given.source != "assumed"]
    laid = any(word in parameter.label for parameter in last.topic.parameters for word in _LAID)
    if found is None or len(said) != 1 or len(pitches) != 1 or laid or not isinstance(said[0].value, Number):
        return text
    unit, value = pitches[0].unit, said[0].value.value
    least, most = _RISE if unit == "in12" else _DEGREES
    if unit not in ("in12", "deg") or not least <= value <= most:
        return text
    head = text[: found.start("n")]
    head = _HIGH.sub("gable height", head) if last.topic.name == "rake length" else _RAKE.sub("rake length", head)
    return f"{head}{found['n']} {'in 12' if unit == 'in12' else 'degrees'}{text[found.end('n') :]}"
