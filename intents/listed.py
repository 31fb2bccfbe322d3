"""What the list readers share: amounts with and without a unit, separators, chains, units carried along."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass, field
from fractions import Fraction

from intents.lengths import FEET, UNITS
from intents.number_words import TAPE
from intents.plurals import is_plural
from intents.reading import Reading
from intents.stated_units import square_metres, stated_metric
from intents.tokens import Token
from solvers.quantities import Length, Quantity

MOST_ITEMS = 80  # in one list; a longer one is pasted, not said
MOST_COUNT = 100_000
PREFIXES = 6  # shorter beginnings of a list that are readings too, as its end may belong to what follows
CONTRASTED = {("instead", "of"), ("rather", "than"), ("place", "of")}  # what stands after these is what it is not
SEPARATORS = frozenset((",", "!", ".", "and", "&", "plus", "then", ";", "+", "also", "another"))
# After an amount these make it the size of something else: 12 foot stock, 24 inch coil, 1/8 kerf.
STOCK = frozenset(
    "stock stick sticks board boards footer footers coil coils roll rolls kerf blade exposure reveal overhang saw wall".split()
)
SURE_UNIT = 0.9  # a length this sure was said with its unit
METRIC = ("mm", "cm", "m")
PAIRS = frozenset(("pair", "couple"))
REACH = 16  # words before the first number of a list's item: "two of the big sliding patio doors that are about 6 by 7"
TIGHT = ("'", '"', "/", "-", "°")  # signs that stand close to what is before and after them
TIGHT_SIGNS = frozenset(TIGHT)
LARGE_MM, MOST_METRES = 400, 10  # beside so many millimetres a decimal below so much is metres


@dataclass(slots=True)
class Amount:
    """A size in a list: its end, its value, and its unit when one was said ("" when not)."""

    end: int
    value: Fraction
    unit: str
    carries: str  # the unit a bare number after it takes
    text: str = ""


Pair = tuple[int, tuple[Amount, ...]]  # where two sizes end, and the two


@dataclass(slots=True)
class Item:
    """One thing of a list; `sizes` are its amounts, the rest is for its own reader."""

    start: int
    end: int
    sizes: tuple[Amount, ...]
    count: int = 1
    what: str = ""
    sure: float = 1.0
    led: bool = True  # it began with a count or an article, so it can't be the size of something else
    assumed: str = ""


@dataclass(slots=True)
class Listing:
    """The sentence, with what the list readers look up in it."""

    tokens: list[Token]
    chart: list[list[Reading]]
    words: list[str] = field(default_factory=list)
    metric: str = ""  # the first metric unit said anywhere, for lists with no unit of their own
    near: set[int] = field(default_factory=set)  # where an item may begin: a number is no further than REACH
    first: int = -1  # the first token that is a size or an opening, as `listed_openings` found it
    pairs: dict[int, Pair | None] = field(default_factory=dict)  # sizes by place, each asked for several times
    _amounts: dict[int, tuple[Amount, ...]] = field(default_factory=dict)
    _counts: dict[int, tuple[tuple[int, int], ...]] = field(default_factory=dict)

    def __post_init__(self) -> None:
        self.words = [token.text for token in self.tokens] + [""] * 8
        lengths = [r for row in self.chart for r in row if r.kind == "length" and isinstance(r.value, Quantity)]
        metric = (r.value.unit for r in lengths if r.value.unit in METRIC)  # type: ignore[union-attr]
        self.metric = next(metric, "") or stated_metric(self.words)
        if not self.metric and square_metres(self.words) and all(r.sure < SURE_UNIT for r in lengths):
            self.metric = "m"
        numbers = [i for i, row in enumerate(self.chart) if row]
        self.near = set[int]().union(*[range(max(0, number - REACH), number + 1) for number in numbers])

    def amounts(self, i: int) -> tuple[Amount, ...]:
        """The sizes that can start at token i: the longest with a unit, then the longest number."""
        row = self.chart[i] if i < len(self.chart) else ()
        if not row:
            return ()
        if i not in self._amounts:
            said = [amount for r in row if r.kind == "length" and (amount := self._length(r))]
            said = [amount for amount in said if not self._counts_next(amount)] or said
            bare = [r for r in row if r.kind == "number" and r.sure >= 0.4 and isinstance(r.value, Quantity)]
            bare = [r for r in bare if not is_plural(self.words, r.start, r.end)]
            found = said[:1]
            if bare and (not found or bare[0].end > found[0].end):
                number = bare[0]
                assert isinstance(number.value, Quantity)
                found.append(Amount(number.end, number.value.value, "", "", self.said(i, number.end)))
            self._amounts[i] = tuple(found)
        return self._amounts[i]

    def _length(self, reading: Reading) -> Amount | None:
        """A length with its unit said, or a dashed pair of feet and inches."""
        words = self.words[reading.start : reading.end]
        dashed = "-" in words[1:]
        if reading.sure < 0.3 or not isinstance(reading.value, Quantity) or (not dashed and UNITS.isdisjoint(words)):
            return None
        value = reading.value
        carries = "ft" if dashed or not FEET.isdisjoint(words) else value.unit
        return Amount(reading.end, value.value, value.unit, carries, self.said(reading.start, reading.end))

    def _counts_next(self, amount: Amount) -> bool:
        """Whether the number that a size ends with is the count of what comes next: 4 foot | 3 at 6 foot."""
        joint = self.words[amount.end] in ("at", "@") and self.number_at(amount.end + 1)
        return joint and self.words[amount.end - 1] not in UNITS and amount.carries == "ft" and "-" not in amount.text

    def counts(self, i: int) -> tuple[tuple[int, int], ...]:
        """Whole numbers at i: where each ends, and its value; longest first. (6) is six."""
        if self.words[i] != "(" and self.words[i] not in PAIRS and (i >= len(self.chart) or not self.chart[i]):
            return ()
        if i not in self._counts:
            self._counts[i] = tuple(self._counted(i))
        return self._counts[i]

    def _counted(self, i: int) -> Iterator[tuple[int, int]]:
        if self.words[i] in PAIRS and self.words[i + 1] == "of":
            yield i + 2, 2  # a pair of windows
        if self.words[i] == "(" and self.words[i + 2] == ")":
            yield from ((end + 1, count) for end, count in self.counts(i + 1) if end == i + 2)
        for reading in self.chart[i] if i < len(self.chart) else ():
            if reading.kind != "number" or reading.sure < 0.4 or not isinstance(reading.value, Quantity):
                continue
            count = reading.value.value
            if count.denominator == 1 and abs(count.numerator) < MOST_COUNT:
                yield reading.end, count.numerator

    def number_at(self, i: int) -> bool:
        row = self.chart[i] if i < len(self.chart) else ()
        return bool(row) and any(r.kind in ("number", "length", "dims") for r in row)

    def said(self, start: int, end: int) -> str:
        """The words of tokens start to end, as they are read."""
        words = self.words[start:end]
        text = " ".join(words)
        for sign in () if TIGHT_SIGNS.isdisjoint(words) else TIGHT:
            if sign in words:
                text = text.replace(f" {sign} ", sign).replace(f" {sign}", sign)
        return text.replace("'", "' ").strip() if "'" in text else text

    def past(self, i: int, words: frozenset[str], most: int = 3) -> int:
        """The place after up to `most` of these words."""
        while most and self.words[i] in words:
            i, most = i + 1, most - 1
        return i


def chains(
    listing: Listing,
    item: Callable[[int], Item | None],
    joined: Callable[[Item, Item, bool], bool],
) -> Iterator[list[Item]]:
    """For each place where an item starts, the list from there on; `joined` tells whether two are one list."""
    items = [item(i) if i in listing.near else None for i in range(len(listing.tokens))]
    for first in items:
        if first is None:
            continue
        chain = [first]
        while len(chain) < MOST_ITEMS:
            at = listing.past(chain[-1].end, SEPARATORS)
            following = items[at] if at < len(items) else None
            if following is None or not joined(chain[-1], following, at > chain[-1].end):
                break
            chain.append(following)
        yield chain


def beginnings(chain: list[Item], least: int = 1) -> Iterator[list[Item]]:
    """The whole list, then its shorter beginnings."""
    yield chain
    for size in range(min(len(chain) - 1, PREFIXES), least - 1, -1):
        yield chain[:size]


def with_units(amounts: list[Amount], default: str, inches_from: int = 12) -> tuple[list[Length], bool]:
    """Every amount with its own unit, the one before's, the next one's, or the default; and whether that is plain.

    It is not plain when a bare number stands by feet: "four foot six, then five" may be feet or inches. From
    `inches_from` on it is taken for inches.
    """
    plain = True
    large = max((amount.value for amount in amounts), default=0) >= LARGE_MM
    following = default
    after: list[str] = []
    for amount in reversed(amounts):
        after.append(following)
        following = amount.carries or following
    lengths: list[Length] = []
    before = ""
    for amount, next_unit in zip(amounts, reversed(after), strict=True):
        unit = amount.unit or before or next_unit
        if not amount.unit and unit == "ft":
            plain = False
            unit = "in" if abs(amount.value) >= inches_from else "ft"
        pointed = "." in amount.text or "point" in amount.text.split()
        if not amount.unit and unit in ("mm", "cm") and amount.value.denominator in TAPE and not pointed:
            unit = "in"  # 15/32 ply and 10 mm mesh
        if not amount.unit and unit == "mm" and amount.value < MOST_METRES and pointed and large:
            unit = "m"  # 6 at 1.2 and 4 at 900
        before = amount.carries or before
        lengths.append(Length(amount.value, unit, amount.text))
    return lengths, plain
