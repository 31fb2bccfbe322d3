"""A quantity that the same line puts right: "it's 9 foot, no 10 foot, less 4", "I had 900 written down but it's really 830".

What was said first is taken out, with the words that take it back, before anything else is read. Only where what stands after
those words is a quantity of the same kind, and no name follows that the first did not have ("12 foot, no 2 inch overhang").
"""

from __future__ import annotations

from intents.reading import Reading
from intents.tokens import Token

# Words that take back; each alone is enough, but for those in _WEAK.
_STRONG = (
    ("no", "wait"), ("wait", "no"), ("no", "sorry"), ("sorry", "no"), ("no", "i", "mean"), ("no", "i", "meant"), ("i", "mean"),
    ("i", "meant"), ("sorry", "i", "mean"), ("sorry", "i", "meant"), ("sorry",), ("make", "that"), ("no", "make", "that"),
    ("correction",), ("scratch", "that"), ("strike", "that"), ("or", "rather"), ("no", "hang", "on"), ("hang", "on", "no"),
    ("hang", "on"), ("hold", "on"), ("no", "hold", "on"), ("but", "really"), ("but", "actually"), ("really",), ("actually",),
    ("wait",), ("oops",), ("whoops",),
)  # fmt: skip
_WEAK = (("no",), ("nope",), ("nah",))  # "12 foot wall, no 2 foot overhang" has none
_BY_FIRST: dict[str, list[tuple[tuple[str, ...], bool]]] = {}
for _strong, _phrases in ((True, _STRONG), (False, _WEAK)):
    for _words in sorted(_phrases, key=len, reverse=True):
        _BY_FIRST.setdefault(_words[0], []).append((_words, _strong))
_IT_IS = (("but", "it", "is"), ("but", "its"), ("but", "it's"), ("it", "is"), ("it's",), ("its",), ("that", "is"), ("that's",),
          ("is",), ("a",), ("the",), ("should", "be"), ("it", "should", "be"))  # fmt: skip
_STOPS = frozenset((",", ".", ";", ":", "-", "!", "?"))
_WRITTEN = frozenset(
    "written wrote down said up there here on the paper board pad it is its it's that was had and but no so".split()
)  # 900 | written down
_KINDS = frozenset("number length pitch angle temperature dims area percent money".split())
MOST_BETWEEN = 8  # words between what was said first and what takes it back
SURE = 0.4


def put_right(tokens: list[Token], chart: list[list[Reading]]) -> tuple[int, int] | None:
    """The tokens to take out: from what was said first up to what was said instead of it; None where nothing is."""
    words = [*(token.text for token in tokens), *[""] * 4]
    if _BY_FIRST.keys().isdisjoint(words):
        return None
    for at, word in enumerate(words):
        for phrase, strong in _BY_FIRST.get(word, ()):
            if at and tuple(words[at : at + len(phrase)]) == phrase:
                found = _around(words, chart, at, at + len(phrase), strong)
                if found is not None:
                    return found
                break
    return None


def _around(words: list[str], chart: list[list[Reading]], at: int, end: int, strong: bool) -> tuple[int, int] | None:
    start = end + (words[end] in _STOPS)
    start = next((start + len(said) for said in _IT_IS if tuple(words[start : start + len(said)]) == said), start)
    instead = _longest(chart, start)
    again = instead is None and words[start].isalpha()  # times six, no wait, times seven
    instead = _longest(chart, start + 1) if again else instead
    if instead is None:
        return None
    before = at
    while before > 0 and at - before < MOST_BETWEEN and (words[before - 1] in _STOPS or words[before - 1] in _WRITTEN):
        before -= 1
        if not strong and words[before] not in _STOPS:
            return None
    before, named = _past_name(words, chart, before, words[instead.end])
    if words[instead.end].isalpha() and not strong and not named and not _goes_on(words[instead.end]):
        return None  # no 2 inch overhang
    first = _ends_at(chart, before, instead)
    if first is None:
        return None
    if again:
        return (first.start - 1, start) if words[first.start - 1] == words[start] else None
    return first.start, start


_AFTER = frozenset(
    "less minus plus times divided take add and wide high long tall deep by over so what what's in for with at then".split()
)


def _goes_on(word: str) -> bool:
    """Whether a word after a quantity is no name of what the quantity is for."""
    return word in _AFTER


def _past_name(words: list[str], chart: list[list[Reading]], before: int, name: str) -> tuple[int, bool]:
    """Where what was said first ends, before its name, and whether that name is said again: 12 courses, no, 13 courses."""
    last = words[before - 1]
    named = last.isalpha() and last == name
    return (before - 1, True) if named else (before, False)


def _longest(chart: list[list[Reading]], at: int) -> Reading | None:
    row = [r for r in chart[at] if r.kind in _KINDS and r.sure >= SURE] if at < len(chart) else []
    return max(row, key=lambda r: (r.end, r.kind != "number", r.sure), default=None)


def _ends_at(chart: list[list[Reading]], end: int, instead: Reading) -> Reading | None:
    """The quantity that ends at a place, of the kind of what is said instead; its number alone where that has a unit."""
    for start in range(max(0, end - 12), end):
        for reading in chart[start]:
            alike = reading.kind == instead.kind or (reading.kind == "number" and instead.kind in ("length", "area"))
            if reading.end == end and alike and reading.sure >= SURE:
                return reading
    return None
