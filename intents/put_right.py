"""A quantity put right in the same breath: "9 foot, no, 10 foot", "six, I mean eight twelve", "9 foot tall, sorry, 10".

The later one stands in the place of the earlier, whatever they measure: both of one kind, or one said bare, which is
in the other's unit. The words for it must stand between the two, and nothing else that matters.
"""

from __future__ import annotations

from collections.abc import Sequence

from intents.reading import Reading
from intents.tokens import Token
from solvers.quantities import Quantity

Rows = Sequence[Sequence[Reading]]

_CUES = tuple(
    tuple(cue.split())
    for cue in (
        "sorry|no|nope|nah|wait|scratch that|strike that|scrap that|cancel that|forget that|i mean|i meant|make that|make it"
        "|or rather|rather|correction|actually|hang on|hold on|my mistake|my bad|i tell a lie|tell a lie|pardon me|pardon"
        "|excuse me|i should say|should say|oops|whoops|apologies|i meant to say|i mean to say|really"
        "|but really|but actually|but it is really|but it's really|but its really|but it is actually|but it's actually"
    ).split("|")
)
_WEAK = frozenset(("no", "nope", "nah", "really", "actually"))  # a word that alone may say something else: no overhang
_FIRST = frozenset(cue[0] for cue in _CUES)
_BETWEEN = frozenset(", . ; - … oh er uh um well it is its that thats a an the say like".split())
_SIGHS = frozenset("hmm er uh um ah oh well".split())
_PITCHED = frozenset("pitch roof slope".split())
_ENDS = frozenset(
    ", . ; : ? ! ) and with at for by from over under how what where which when so is are on in to per or if but off using "
    "allowing including plus minus less that it come comes make makes times divided take add then wide high tall long deep "
    "thick".split()
)  # what may follow the later quantity without giving it another role
_NO_ROLE = frozenset(
    "and or with if then how what than but not when where while is are was at for from by in".split()
)  # no words of the earlier quantity's own
_WRITTEN = frozenset("written wrote noted said down".split())  # 900 written down, but it's really 830
_TRAIL, _LEAD = 3, 5  # words after the earlier quantity, and from the correction to the later, at most
LONGEST = 9  # tokens of a quantity
KINDS = frozenset("number length pitch angle percent temperature area money weight volume".split())


def put_right(tokens: list[Token], rows: Rows) -> list[Token] | None:
    """The tokens with each quantity that was put right in the place of the one before it; None where none was."""
    words = [token.text for token in tokens]
    if _FIRST.isdisjoint(words):
        return None
    for at in range(1, len(words)):
        end = _correction(words, at) if words[at] in _FIRST else at
        if end > at:
            found = _mended(tokens, words, rows, at, end)
            if found is not None:
                return found
    return None


def _correction(words: list[str], at: int) -> int:
    """The place after the words at `at` that put something right; `at` where there are none."""
    end = at
    while True:
        longest = max((len(cue) for cue in _CUES if tuple(words[end : end + len(cue)]) == cue), default=0)
        if longest:
            end += longest
        elif end > at and words[end : end + 1] and words[end] in ",.;-…":
            end += 1
        else:
            return end


def _mended(tokens: list[Token], words: list[str], rows: Rows, at: int, end: int) -> list[Token] | None:
    """The tokens with the quantity after `end` for the one before `at`, or None where they are no such pair."""
    while at > 1 and (words[at - 1] in ",.;-…" or words[at - 1] in _SIGHS):
        at -= 1
    for trail in range(min(_TRAIL, at - 1) + 1):
        stop = at - trail
        role = words[stop:at]
        if role and (role[0] in _NO_ROLE or not role[0].isalpha()):
            return None
        earlier = _ending(rows, stop)
        if earlier is not None:
            return _replaced(tokens, words, rows, earlier, (stop, at, end))
    return None


def _replaced(
    tokens: list[Token], words: list[str], rows: Rows, earlier: Reading, places: tuple[int, int, int]
) -> list[Token] | None:  # fmt: skip
    stop, at, end = places
    start = next((i for i in range(end, min(end + _LEAD, len(words))) if _longest(rows[i])), None)
    later = _longest(rows[start]) if start is not None else None
    if start is None or later is None:
        return None
    pitched = "pitch" in _kinds(rows, later)
    between = _BETWEEN | {*words[max(0, earlier.start - _LEAD) : earlier.start]} | (_PITCHED if pitched else set())
    if not {*words[end:start]} <= between or not _alike(rows, earlier, later):
        return None
    role, after = words[stop:at], words[later.end : later.end + 1]
    again = bool(role) and after == role[:1]
    named = bool(after) and after[0] not in _ENDS and not pitched
    if role and not again and {*words[at:end]} <= {"really", "actually"}:
        return None  # cut at 30 by a corner that is really 118
    if named and not again and (role or (words[end - 1] in _WEAK and {*words[at:end]} <= _WEAK | {","})):
        return None  # 12 foot long, no 2 foot overhang
    first = _repeated_from(words, rows, earlier, later)
    put = tokens[later.start : later.end]
    if _bare(rows, later) and not _bare(rows, earlier):
        unit = _unit_of(words, rows, earlier)
        if unit is None:
            return None
        put += _at(tokens[unit : earlier.end], put[-1].end)
    kept = [] if again or first < earlier.start or not _WRITTEN.isdisjoint(role) else _at(tokens[stop:at], put[-1].end)
    return [*tokens[:first], *put, *kept, *tokens[later.end :]]


def _at(tokens: Sequence[Token], place: int) -> list[Token]:
    """Words said of the earlier quantity, as if said after the later."""
    return [Token(token.text, place, place) for token in tokens]


def _repeated_from(words: list[str], rows: Rows, earlier: Reading, later: Reading) -> int:
    """Where what is put right begins: with the quantity, or before it where that is said over too: four at 70, no, five at 70."""
    for back in (1, 2):
        link = earlier.start - back
        same = words[later.end : later.end + back] == words[link : earlier.start] and words[link : link + 1] != [","]
        before = _ending(rows, link) if link > 0 and same else None
        if before is not None and later.end + back < len(rows) and _longest(rows[later.end + back]):
            return before.start
    return earlier.start


def ending(rows: Rows, stop: int) -> list[Reading]:
    """The quantities that end before token `stop` and begin first."""
    for start in range(max(0, stop - LONGEST), stop):
        found = [r for r in rows[start] if r.end == stop and r.kind in KINDS and isinstance(r.value, Quantity)]
        if found:
            return found
    return []


def _ending(rows: Rows, stop: int) -> Reading | None:
    """The longest quantity that ends before token `stop`."""
    return next(iter(ending(rows, stop)), None)


def _longest(row: Sequence[Reading]) -> Reading | None:
    found = [reading for reading in row if reading.kind in KINDS and isinstance(reading.value, Quantity)]
    return max(found, key=lambda reading: reading.end, default=None)


def _kinds(rows: Rows, said: Reading) -> set[str]:
    return {reading.kind for reading in rows[said.start] if reading.end == said.end and reading.kind in KINDS}


def _bare(rows: Rows, said: Reading) -> bool:
    return _kinds(rows, said) == {"number"}


def _alike(rows: Rows, earlier: Reading, later: Reading) -> bool:
    """Whether the two could be of one kind."""
    return _bare(rows, earlier) or _bare(rows, later) or not _kinds(rows, earlier).isdisjoint(_kinds(rows, later))


def _unit_of(words: list[str], rows: Rows, earlier: Reading) -> int | None:
    """Where the unit of the earlier quantity begins, for a later number without one; None where it has two."""
    ends = [r.end for r in rows[earlier.start] if r.kind == "number" and r.end < earlier.end]
    if not ends:
        return None
    unit = max(ends)
    pitch = words[earlier.end - 1] in ("12", "twelve")
    return unit if pitch or not any(rows[i] and rows[i][0].kind == "number" for i in range(unit, earlier.end)) else None
