"""What a tape says that was not held at its end: "burned an inch, tape says 33 and 5/16" is 32 5/16.

Whoever holds the tape on its one inch mark burns an inch: the true length is what the tape says less that inch, and what is
to be marked is the length wanted and that inch. Read only where the line tells those two sizes and no other.
"""

from __future__ import annotations

from fractions import Fraction

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Heard, Question
from intents.sum_bound import parts_of
from intents.sum_outlines import SCORE, SLOT, TOPIC, Line, line_of
from solvers.quantities import Length
from solvers.sums import MINUS, PLUS, Part, Sum, plain_size, told_as_length

BURNS = frozenset("burn burns burned burnt burning".split())
_HOLDS = r"(?:held|hold|holding|hooked|hook|start|started|starting|began|begin|measured|pulled)"
_TELLS = BURNS | frozenset("held hold holding hooked hook start started starting began begin measured pulled inch".split())
_BURN = r"\b(?:burns?|burned|burnt|burning)(?: (?:off|away|up))?"
_BURNT = (  # where it was held, told as a size
    expression(rf"{_BURN}(?: the)?(?: first)? (?P<at>Q)"),
    expression(rf"\b{_HOLDS}(?: \w+){{0,4}}? (?:on|at|from) (?:the )?(?P<at>Q) (?:mark|line)\b"),
    expression(r"\bon the (?P<at>Q) (?:mark|line)\b"),
)
_ITS_INCH = expression(
    rf"{_BURN} (?:one|(?:an|the|that|my)(?: first| one)? inch)\b(?! Q)|\b(?:on|at|from) the inch(?: mark| line)?\b"
)
_INCH = Length(Fraction(1), "in", "1 in")
_WANTED = expression(r"\b(?:needs?|wants?|wanted|after)\b(?: \w+){0,4}? Q(?! on the tape)|\bdo i (?:mark|cut|pull|read)\b")
_SAYS = expression(r"\b(?:tape|reads?|reading|says?|said|sez|shows?|showed|got|get|gives?|gave|burns?|burned|burnt|burning)\b")
_ASKS_FOR_MORE = expression(r"\b(?:how|what) (?:many|far apart|pitch|angle)\b")


def burned(chart: Chart) -> Question | None:
    """The sum of a line that tells what the tape says and where on it it was held."""
    if _TELLS.isdisjoint(chart.words) or _ASKS_FOR_MORE.search(" ".join(chart.words)):
        return None
    line = line_of(parts_of(chart))
    told = _two_sizes(line) if line is not None and _SAYS.search(line.words) else None
    if line is None or told is None:
        return None
    held, read = told
    if plain_size(held) >= plain_size(read) or not (told_as_length(held) or told_as_length(read)):
        return None
    whole = Sum(PLUS if _WANTED.search(line.words) else MINUS, read, held)
    words = [word for word in chart.words if word in _TELLS]
    return Question(TOPIC, {SLOT: Heard(whole, 0, len(chart.text), chart.text)}, SCORE, words=words)


def _two_sizes(line: Line) -> tuple[Part, Part] | None:
    """Where the tape was held and what it says; None where the line tells more, or less."""
    if len(line.parts) == 1 and _ITS_INCH.search(line.words):
        return _INCH, line.parts[0]
    places = (found for pattern in _BURNT if (found := pattern.search(line.words)) is not None)
    found = next(places, None)
    if found is None or len(line.parts) != 2:
        return None
    at = line.words[: found.start("at")].count("Q")
    return line.parts[at], line.parts[1 - at]
