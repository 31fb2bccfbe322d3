"""A change that was not understood as one, in the plain words it stands for: "inspector's making us go 1/150" is "make it 1/150",
"yard's only got the ones that cover twelve" is "panel cover twelve", "18 ft pc" a length of 18 ft.

Tried (`look_for_change.py`) where a line after an answer came to nothing, or only read a value off the page though it tells a
new number. What is left of it (`who_says_so.py`) must be one number and words that name a given or were said before: the number
is for that given, and all else stays.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import dataclass
from typing import TYPE_CHECKING

from assistant.said_over import Place, places_of, stem, times_apart
from assistant.several import told_of
from assistant.who_says_so import SMALL
from intents.expressions import expression
from intents.matcher import speller
from intents.tokens import tokenize
from solvers.quantities import Count, Length, Money, Quantity

if TYPE_CHECKING:
    from assistant.pending import Asked

LONGEST = 140  # characters of such a line
MOST_WORDS = 8  # beside its number, once who says it is left out
EITHER = "either"  # the name of no given: the words are of several
ALIKE = 1.3  # times as large, to be as near to one as to another
LIKE = 2  # times as large as the one size in metres, which a bare number with decimals is for
_ENDS = expression(
    r"(?:[\s,]+(?:now|then|instead|please|today|this time|after all|though|again|actually|mate|for me|if that helps|per piece"
    r"|out of (?:it|that|them|one)|from (?:it|that)|there|in there|here|ones?))+\W*$",
    re.IGNORECASE,
)
# What a word or two beside the number names, in the order in which a topic's givens are looked through.
_ROLES: tuple[tuple[re.Pattern[str], tuple[str, ...]], ...] = tuple(
    (expression(rf"\b(?:{words})\b", re.IGNORECASE), labels)
    for words, labels in (
        (r"(?:the day|when|by the time|time) (?:we|i|they) (?:fix|fit|hang|put|install|nail|go)\w*(?: (?:it|them|that))?(?:"
         r" up| on)?"
         r"|on the day|at (?:fixing|fitting)(?: time)?", ("temperature now", "temperature")),
        (r"hottest|warmest|top temperature|in (?:the )?summer", ("hottest",)),
        (r"coldest|in (?:the )?winter", ("coldest",)),
        (r"climbs?|climbing|rises?|rising|comes up|goes up|springs?", ("rise", "height")),
        (r"runs? (?:out|over)|goes out|comes out|out from", ("run",)),
        (r"cover(?:s|ing|age)?", ("panel cover", "exposure")),
        (r"footers?|lengths|sticks?|stock", ("stick", "stock", "stock length", "board length", "panel length")),
        (r"pcs?|pieces?", ("piece", "width of a piece")),
        (r"legs?", ("leg",)),
        (r"tails?|overhangs?|eaves?|soffit", ("overhang", "overhang all round")),
        (r"reveal|exposure|gauge|weather|showing|exposed", ("exposure", "greatest exposure")),
        (r"laps?|overlaps?", ("lap", "membrane lap")),
        (r"waste", ("waste",)),
        (r"corners?", ("corner",)),
        (r"oc|o\.c\.?|on cent(?:re|er)s?|cent(?:re|er)s", ("spacing", "stud spacing", "centres")),
        (r"courses|rows", ("courses", "courses or straps")),
        (r"humidity|rh", ("humidity",)),
        (r"faces?|boards? width", ("face width",)),
        (r"deep|depth", ("depth", "joint depth")),
        (r"wide|width|across", ("width", "gable width", "joint width", "across", "panel cover")),
        (r"high|tall|height", ("height", "rise", "height of the bearing point", "wall height")),
        (r"long|length", ("length", "slope", "board length", "run", "total length")),
    )
)  # fmt: skip
# What is told by a plural: all they have is 12s.
STOCK = ("stick", "stock", "stock length", "board length", "panel length", "tube")
_COUNTS_PIECES = expression(r"\b(?:pcs?|pieces?|sticks?|lengths)\b", re.IGNORECASE)
FAR_OFF = 4  # times as large as what it takes the place of, where no word names that


@dataclass(frozen=True, slots=True)
class Core:
    """A plain change: its words, what it must hold, the given that its words name, and the value that its noun had.

    `listed`: it is of a list or a choice. `gone`: what must be nowhere in the question any more.
    """

    line: str
    told: str
    label: str = ""
    was: Quantity | None = None
    listed: bool = False
    gone: str = ""
    names: str = ""  # the name of a given, or a word of one, that the line has


def cores(rests: list[str], last: Asked) -> Iterator[Core]:
    """The plain changes that a line may stand for, the likeliest first; `rests`: what it tells."""
    for rest in rests:
        yield from _core(rest, last)


def _core(rest: str, last: Asked) -> Iterator[Core]:
    """The plain change that a number and the words beside it stand for; none where they name what the question does not have."""
    rest = _ENDS.sub("", rest)
    places = places_of(rest)
    if len(places) != 1:
        return
    place = places[0]
    number = rest[place.start : place.end]
    plural = re.match(r"['’]?s\b", rest[place.end :])
    left = f"{rest[: place.start]} {rest[place.end + (plural.end() if plural else 0) :]}"
    if len(left.split()) > MOST_WORDS:
        return
    labels, named = _named(left, last)
    if named is not None:
        left = named
    words = [re.sub(r"'s$", "", word) for word in re.findall(r"[a-z']+", left.lower())]
    known = {stem(word) for parameter in last.topic.parameters for word in parameter.label.split()} | last.things
    known |= {"wall"} if known & {"height", "course"} else set()  # what courses are laid on, named or not
    if any(word not in SMALL and stem(word) not in known and speller().read(word) not in SMALL for word in words):
        return
    if labels is not None:
        counted = place.value.unit == "none" and place.value.value.denominator == 1 and _COUNTS_PIECES.search(rest)
        if labels and not (counted and labels[0] == "piece"):
            yield Core(f"{labels[0]} {_with_unit(number, place, labels[0], last)}", number, labels[0])
        return
    stock = [label for label in STOCK if plural and label in {last.topic.parameter(name).label for name in told_of(last)}]
    if stock:
        yield Core(f"{stock[0]} {_with_unit(number, place, stock[0], last)}", number, stock[0])
    was = _noun_of(left, last)
    if was is not None and was.value.denominator == 1:
        yield Core(f"no, {number}, not {was.value}", number, was=was, names=_name_in(left, last))
    if was is None and place.value.unit == "none" and _either(place, last):
        return
    yield from _in_metres(number, place, last)
    yield Core(f"make it {number}", number, was=was, names=_name_in(left, last))


def _name_in(left: str, last: Asked) -> str:
    """The longest name of a given that the words beside a number have, or else the one word of such names; "" for none."""
    labels = sorted((parameter.label for parameter in last.topic.parameters), key=len, reverse=True)
    said = f" {' '.join(re.findall(r'[a-z]+', left.lower()))} "
    whole = next((label for label in labels if f" {label} " in said), "")
    words = [word for word in said.split() if word not in SMALL and any(word in label.split() for label in labels)]
    told = [last.topic.parameter(name).label.split() for name in told_of(last)]
    if not whole and any(sum(word in label for label in told) > 1 for word in words):
        return EITHER  # what went over, and what is to go over
    return f" {whole or words[0]} " if whole or len(words) == 1 else ""


def _either(place: Place, last: Asked) -> bool:
    """Whether a bare number is as near to one given of the question as to another: 20, of 22 boards at 19.50."""
    given = [one.value for one in told_of(last).values() if isinstance(one.value, Money | Count) and one.value.value > 0]
    near = sorted(times_apart(place.value.value, value.value) for value in given) if place.value.value > 0 else []
    return len(near) > 1 and near[1] <= ALIKE and near[1] <= ALIKE * near[0]


def _in_metres(number: str, place: Place, last: Asked) -> Iterator[Core]:
    """A bare number with decimals for the one size in metres that it is like, where the others are millimetres: and a 5.4."""
    if place.value.unit != "none" or place.value.value.denominator == 1 or "." not in number:
        return
    told = [(name, given.value) for name, given in told_of(last).items() if isinstance(given.value, Length)]
    metres = [name for name, value in told if value.unit == "m" and times_apart(value.value, place.value.value) <= LIKE]
    if len(metres) == 1 and all(value.unit in ("m", "mm") for _, value in told) and sum(v.unit == "m" for _, v in told) == 1:
        label = last.topic.parameter(metres[0]).label
        yield Core(f"{label} {number} m", number, label)


def _with_unit(number: str, place: Place, label: str, last: Asked) -> str:
    """The number with the unit of the given that it is for, where it was said without one and that one was metric."""
    given = next((g for name, g in last.givens.items() if last.topic.parameter(name).label == label), None)
    value = given.value if given is not None else None
    bare = place.value.unit == "none" and isinstance(value, Length) and value.unit in ("m", "mm", "cm")
    far = bare and isinstance(value, Length) and times_apart(place.value.value, value.value) > FAR_OFF
    return f"{number} {value.unit}" if bare and not far and isinstance(value, Length) else number


def _named(left: str, last: Asked) -> tuple[list[str] | None, str | None]:
    """The labels of the question's givens that a word beside the number names, and the words without it.

    None for no such word; no labels where it names what the question does not have.
    """
    own = {parameter.label for parameter in last.topic.parameters}
    told = {last.topic.parameter(name).label for name in told_of(last)}
    for pattern, labels in _ROLES:
        found = pattern.search(left)
        if found is None:
            continue
        mine = [label for label in labels if label in told] or [label for label in labels if label in own]
        rest = f"{left[: found.start()]} {left[found.end() :]}"
        if not mine and pattern.search("pc") and "piece" not in own and last.topic.name in ("thermal movement", "end gap"):
            mine = ["length"]  # of the one piece that moves
        if not mine and pattern.search("stick") and last.topic.name in ("thermal movement", "end gap"):
            mine = ["length"]
        return mine, rest
    return None, None


def _noun_of(left: str, last: Asked) -> Quantity | None:
    """The value of the one number that a word of the change stood beside, in the words of the question before."""
    words = {stem(word) for word in re.findall(r"[a-z]+", left.lower()) if word not in SMALL}
    found = []
    tokens = tokenize(last.text)
    for place in places_of(last.text) if words else ():
        around = {
            stem(token.text) for token in tokens[max(0, place.first - 1) : place.first] + tokens[place.after : place.after + 2]
        }
        if words & around:
            found.append(place.value)
    return found[0] if len(found) == 1 else None
