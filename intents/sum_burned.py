"""What a tape says that was not held at its end: "burned an inch, tape says 33 and 5/16" is 32 5/16; and inside a frame, where
the tape's own case is to be put to it: "inside measure 44 1/2, tape case is 3 1/4".

Whoever holds the tape on its one inch mark burns an inch: the true length is what the tape says less that inch, and what is
to be marked is the length wanted and that inch. Read only where the line tells those two sizes and no other.
"""

from __future__ import annotations

from fractions import Fraction

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Question
from intents.sum_outlines import Line, line_of, whole_line
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
    rf"{_BURN} (?:one|(?:an|the|that|my)(?: first| one)? inch)\b(?! Q)|\b(?:on|at|from) the inch(?: mark| line|$| [,.;?])"
)
_INCH = Length(Fraction(1), "in", "1 in")
_WANTED = expression(r"\b(?:needs?|wants?|wanted|after)\b(?: \w+){0,4}? Q(?! on the tape)|\bdo i (?:mark|cut|pull|read)\b")
_CASE = (  # an inside measure, to which the body of the tape is put
    expression(r"\b(?:case|body|housing)(?: \w+){0,2}? (?P<at>Q)\b"),
    expression(r"(?P<at>Q)(?: \w+)? (?:tape )?(?:case|body|housing)\b"),
)
_INSIDE, _BODY = frozenset(("inside", "case", "body", "housing")), expression(r"\b(?:case|body|housing)\b")
_SAYS = expression(r"\b(?:tape|reads?|reading|says?|said|sez|shows?|showed|got|get|gives?|gave|burns?|burned|burnt|burning)\b")
_ASKS_FOR_MORE = expression(r"\b(?:how|what) (?:many|far apart|pitch|angle)\b")


def burned(chart: Chart) -> Question | None:
    """The sum of a line that tells what the tape says and where on it it was held."""
    if (_TELLS.isdisjoint(chart.words) and _INSIDE.isdisjoint(chart.words)) or _ASKS_FOR_MORE.search(" ".join(chart.words)):
        return None
    line = line_of(chart)
    if line is None:
        return None
    with_case = _with_case(line) if "inside" in chart.words and "tape" in chart.words and _BODY.search(line.words) else None
    told = with_case or (_two_sizes(line) if _SAYS.search(line.words) else None)
    if told is None:
        return None
    held, read = told
    if plain_size(held) >= plain_size(read) or not (told_as_length(held) or told_as_length(read)):
        return None
    whole = Sum(PLUS if with_case or _WANTED.search(line.words) else MINUS, read, held)
    words = [word for word in chart.words if word in _TELLS | _INSIDE]
    return whole_line(chart, whole, words)


def _two_sizes(line: Line) -> tuple[Part, Part] | None:
    """Where the tape was held and what it says; None where the line tells more, or less."""
    if len(line.parts) == 1 and _ITS_INCH.search(line.words):
        return _INCH, line.parts[0]
    places = (found for pattern in _BURNT if (found := pattern.search(line.words)) is not None)
    found = next(places, None)
    if found is None or len(line.parts) != 2:
        return None
    at = line.place(found, "at")
    return line.parts[at], line.parts[1 - at]


def _with_case(line: Line) -> tuple[Part, Part] | None:
    """The tape's case and what it says inside of something; None where the line tells more, or less."""
    found = next((told for pattern in _CASE if (told := pattern.search(line.words)) is not None), None)
    if found is None or len(line.parts) != 2:
        return None
    at = line.place(found, "at")
    return line.parts[at], line.parts[1 - at]
