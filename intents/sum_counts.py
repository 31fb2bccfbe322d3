"""So many of a length within a sum: "three five-and-five-eighths courses", "two plates at 1 1/2", "half an inch each end"."""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction

from intents.lengths import UNITS
from intents.number_words import PLURALS
from intents.reading import Reading
from intents.sum_parts import Found, Parts
from intents.sum_words import BY_FIRST, EACH
from solvers.quantities import Length, Number
from solvers.sums import TIMES, Sum

MOST_COUNT = 200
LEAST_SIZE = 20  # a bare number from here on, after "3 of", is how long each is
_AT = frozenset(("at", "of", "o", "@", "×"))
_AT_ALONE = frozenset(("at", "@"))  # three at 44
BOTH = frozenset(("each", "either", "both", "every", "per"))
_TIED = frozenset(("by", "and", "or", "to", "of", "for", "the", "a", "an", "at", "from", "in", "then", "plus", *BOTH))
_NO_THINGS = frozenset(
    "whats hows thats wheres lets whos its this hours always does comes makes takes gives leaves equals less across is was has"
    " inches ins minus plus".split()
)
_PARTS = frozenset((2, 4, 8, 16, 32, 64))  # three eights are 3/8
ENDS = frozenset("end ends side sides edge edges jamb jambs".split())
_LEDS = frozenset(("at", "on", "off", "from", "to", "of", "for", "down"))
_ROUND = (("all", "the", "way", "round"), ("all", "the", "way", "around"), ("all", "way", "round"), ("all", "round"),
          ("all", "around"), ("top", "and", "bottom"), ("left", "and", "right"), ("a", "side"), ("an", "end"), ("twice",),
          ("two", "times"))  # fmt: skip
_ECHOES = frozenset("so that is thats that's which meaning ie just".split())
MOST_NAMES = 2  # words that may stand between: "1/8 clearance | all round"


def counted(reader: Parts, i: int) -> Found | None:
    """The product of a count, what they are and the length of each."""
    if i not in reader.counts:
        reader.counts[i] = _counted(reader, i)
    return reader.counts[i]


def _counted(reader: Parts, i: int) -> Found | None:
    words = reader.words
    if words[max(0, i - 1) : i + 1] in (["between", "2"], ["between", "two"]):
        return None  # 14 1/2 between 2 studs
    for reading in _row(reader, i):
        if reading.kind != "number" or not isinstance(reading.value, Number) or reading.value.value.denominator != 1:
            continue
        if not 2 <= reading.value.value.numerator <= MOST_COUNT or reading.sure < 0.5:
            continue
        each = _at_each(reader, reading.end) or _plural_each(reader, i, reading.end)
        if each is not None and each.part is not None:
            said = " ".join(words[i : reading.end])
            return Found(Sum(TIMES, reading.value.said(said), each.part), each.end)
    return None


def _row(reader: Parts, i: int) -> list[Reading]:
    """What starts at a place; after a minus sign that was read into the number, the number without it."""
    row = reader.chart[i] if i < len(reader.chart) else []
    if row or i == 0 or reader.words[i - 1] not in ("minus", "-"):
        return row
    below = [r for r in reader.chart[i - 1] if r.kind == "number" and isinstance(r.value, Number) and r.value.value < 0]
    return [replace(r, start=i, value=replace(r.value, value=-r.value.value)) for r in below]  # type: ignore[union-attr,type-var]


def _at_each(reader: Parts, i: int) -> Found | None:
    """Courses of six and three eighths; plates at 1 1/2 each."""
    at = i
    while at - i < MOST_NAMES and thing(reader, at):
        at += 1
    if reader.words[at] not in _AT:
        return None
    each = reader.value(at + 1)
    if at == i and reader.words[at] not in _AT_ALONE and not (each and _size_of_each(reader, each)):
        return None
    return Found(each.part, each.end + (reader.words[each.end] in EACH)) if each else None


def _size_of_each(reader: Parts, each: Found) -> bool:
    """Whether what stands after "3 of" is their size: 3 of 1190, 2 of 4 foot; not 3 of 12 boards, nor 3 of 5."""
    length = isinstance(each.part, Length) or (isinstance(each.part, Number) and each.part.value >= LEAST_SIZE)
    return length and not _plural(reader, each.end)


def _plural_each(reader: Parts, start: int, i: int) -> Found | None:
    """Five and five eighths courses; 38 mm studs: a plural after the length tells that the number before it counted."""
    each = reader.value(i)
    if each is None or (isinstance(each.part, Number) and each.part.value == 0):
        return None
    apart = reader.words[i][:1].isdigit() and reader.words[start].isalpha()  # two 3/4 sides
    if not apart and any(r.kind == "number" and r.end == each.end for r in _row(reader, start)):
        return None  # five eighths are no five of them
    at = each.end
    if reader.words[at - 1] == "footers" and isinstance(each.part, Length):
        return each  # two | ten footers
    if PLURALS.get(reader.words[at - 1], 2) not in _PARTS or reader.words[at] == "s":  # two fives, two 5 1/2s
        return Found(each.part, at + (reader.words[at] == "s"))
    at += thing(reader, at) and not _plural(reader, at) and _plural(reader, at + 1)
    return Found(each.part, at + 1) if _plural(reader, at) else None


def times_over(reader: Parts, count: Found | None) -> Found | None:
    """A count with the size that it is times over, which hold together after a running total: less | 2 times 3 1/2."""
    done = reader.operation(count.end) if count is not None else None
    whole = count is not None and isinstance(count.part, Number) and count.part.value.denominator == 1 and count.part.value > 1
    each = reader.part(reader.past(done[1])) if whole and done is not None and done[0] == TIMES else None
    return Found(Sum(TIMES, count.part, each.part), each.end) if count is not None and each is not None else count


def thing(reader: Parts, at: int) -> bool:
    """Whether a word may be the name of what is counted or measured: no quantity, unit or operation."""
    word = reader.words[at]
    named = word.isalpha() and word not in _TIED and word not in UNITS and word not in BY_FIRST
    return named and not (at < len(reader.chart) and reader.chart[at])


def _plural(reader: Parts, at: int) -> bool:
    word = reader.words[at]
    return thing(reader, at) and word.endswith("s") and not word.endswith("ss") and len(word) > 3 and word not in _NO_THINGS


def counts_things(reader: Parts, found: Found | None) -> bool:
    """Whether a whole number counts what is named after it, and tells no size of it: less 2 plates."""
    part = found.part if found is not None else None
    whole = isinstance(part, Number) and part.value.denominator == 1 and 2 <= abs(part.value) <= MOST_COUNT
    return whole and found is not None and _plural(reader, found.end)


def sized(reader: Parts, i: int) -> Found | None:
    """A length, so many of one, or one so many times: "two legs at 49", "19 3/4, twice", "an eighth gap six times"."""
    found = counted(reader, i) or reader.part(i)
    if found is None or isinstance(found.part, Sum) or found.part is None:
        return found
    at = found.end
    at += thing(reader, at) and reader.words[at] not in ("twice", "times")
    at = reader.past_stop(at)
    if reader.words[at] == "twice":
        return Found(Sum(TIMES, Number(Fraction(2), "none", "2"), found.part), at + 1)
    for reading in reader.chart[at] if at < len(reader.chart) else ():
        if not isinstance(reading.value, Number) or reading.kind != "number" or reading.value.value.denominator != 1:
            continue
        if reader.words[reading.end] == "times" and not reader.numbers_after_one(reading.end):
            return Found(Sum(TIMES, reading.value.said(str(reading.value.value)), found.part), reading.end + 1)
    return found


def both_ends(reader: Parts, found: Found) -> Found:
    """A part that is added or taken twice: 3/8 each end, an eighth clearance all round."""
    if isinstance(found.part, Sum):
        return found
    off = found.end + (reader.words[found.end] == "off")  # 19 mm off for each of the two reveals
    if reader.words[off : off + 3] == ["for", "each", "of"]:
        cuts = _count(reader, off + 3)
        if cuts is not None and found.part is not None:
            return Found(Sum(TIMES, cuts.part, found.part), cuts.end)
    end = ends_said(reader, found.end)
    if not end or found.part is None:
        return found
    return Found(Sum(TIMES, Number(Fraction(2), "none", "2"), found.part), _past_echo(reader, found, end))


def _past_echo(reader: Parts, found: Found, end: int) -> int:
    """Past the same said again in other words: ", so a half off each side"."""
    at = reader.past_stop(end)
    led = at
    while reader.words[led] in _ECHOES:
        led += 1
    again = reader.part(led) if led > at else None
    if again is None or isinstance(again.part, Sum) or again.part is None or found.part is None:
        return end
    return (ends_said(reader, again.end) or end) if again.part.value == found.part.value else end  # type: ignore[union-attr]


def _count(reader: Parts, i: int) -> Found | None:
    """The count of things: "(for each of) two cuts"."""
    i += reader.words[i] == "the"
    count = reader.value(i)
    whole = count is not None and isinstance(count.part, Number) and count.part.value.denominator == 1
    return Found(count.part, count.end + 1) if count and whole and thing(reader, count.end) else None


def ends_said(reader: Parts, i: int) -> int:
    """Where "each end" or its like after a length ends; 0 where nothing like it is said."""
    words = reader.words
    for skipped in range(MOST_NAMES + 1):
        at = i + skipped
        led = at + (words[at] in _LEDS)
        led += words[led] == "the"
        if words[led] in BOTH and words[led + 1] in ENDS:
            return led + 2
        past = reader.one_of(_ROUND, at)
        if past:
            return past
        if not thing(reader, at):
            return 0
    return 0
