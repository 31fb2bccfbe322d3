"""A quantity put right in the same breath: "9 foot, no, 10 foot", "six, I mean eight twelve", "9 foot tall, sorry, 10".

The later one stands in the place of the earlier, whatever they measure: both of one kind, or one said bare, which is
in the other's unit. The words for it must stand between the two; what else stands there must tell of the same thing
(`taken_back.py`: "33, no I'd the case on, 33.7 degrees").
"""

from __future__ import annotations

from collections.abc import Sequence
from fractions import Fraction

from intents.reading import Reading
from intents.taken_back import CUES, LOOSE, SAID, SIDES, WEAK, begins_anew, still_of_it
from intents.tokens import Token
from solvers.quantities import Length, Quantity

Rows = Sequence[Sequence[Reading]]

_FIRST = frozenset(cue[0] for cue in CUES)
_BY_FIRST = {first: tuple(cue for cue in CUES if cue[0] == first) for first in _FIRST}
_BETWEEN = frozenset(", . ; - … oh er uh um well it is its that thats a an the say like maybe perhaps probably about".split())
_SIGHS = frozenset("hmm hm er uh um ah oh well".split())
_HEDGES = frozenset("think thought reckon guess believe maybe probably suppose".split())
_ABOUT = (["and", "a", "bit"], ["and", "change"], ["or", "so"], ["odd"], ["ish"], ["or", "thereabouts"])
_HEDGED = _HEDGES | frozenset("i was is it or so".split())
_AFTERTHOUGHTS = (("sorry",), ("rather",), ("i", "mean"), ("i", "meant"))  # 31, 31 1/4 sorry
_NEAR = Fraction(5, 4)  # how much of each other two such are at most
_PITCHED = frozenset("pitch roof slope".split())
_ENDS = frozenset(
    ", . ; : ? ! ) and with at for by from over under how what where which when so is are on in to per or if but off using "
    "allowing including plus minus less that it come comes make makes times divided take add then really wide high tall long "
    "deep thick across level up above below apart along now today outside exactly definitely please mate lads".split()
)  # what may follow the later quantity without giving it another role
_NO_ROLE = frozenset(
    "and or with if then how what than but not when where while is are was at for from by in".split()
)  # no words of the earlier quantity's own
_A_WELL = frozenset("the a window stair egress light as very pretty fairly how".split())  # no word of somebody's who thinks aloud
_WRITTEN = frozenset("written wrote noted said down".split())  # 900 written down, but it's really 830
_FOOT = 12  # inches
_TRAIL, _LEAD = 3, 5  # words after the earlier quantity, and before it, at most
_FAR = 11  # and from the correction to the later
LEAST_PITCHED = 0.5  # how sure a pitch must be that is put right
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
            found = _mended(tokens, words, rows, at, end) or _afterthought(tokens, words, rows, at)
            if found is not None:
                return found
    return None


def _afterthought(tokens: list[Token], words: list[str], rows: Rows, at: int) -> list[Token] | None:
    """The tokens where the second of two quantities side by side is said to be the one meant: 31, 31 1/4 sorry."""
    said = next((len(cue) for cue in _AFTERTHOUGHTS if tuple(words[at : at + len(cue)]) == cue), 0)
    if not said or words[at + said : at + said + 1] not in ([], [","], ["."], ["and"]):
        return None
    later = _ending(rows, at)
    earlier = _ending(rows, later.start - 1) if later is not None and later.start > 1 and words[later.start - 1] == "," else None
    if later is None or earlier is None or _kinds(rows, later) != _kinds(rows, earlier):
        return None
    sizes = sorted(r.value.value for r in (earlier, later))  # type: ignore[union-attr]
    return [*tokens[: earlier.start], *tokens[later.start : at], *tokens[at + said :]] if sizes[1] <= sizes[0] * _NEAR else None


def _correction(words: list[str], at: int) -> int:
    """The place after the words at `at` that put something right; `at` where there are none."""
    end = at
    while True:
        cues = _BY_FIRST.get(words[end], ()) if end < len(words) else ()
        longest = max((len(cue) for cue in cues if tuple(words[end : end + len(cue)]) == cue), default=0)
        noun = words[end : end + 1] == ["well"] and words[end - 1] in _A_WELL
        if longest and not noun and words[end + longest - 1 : end + longest + 1] != ["rather", "than"]:  # 137 rather than 135
            end += longest
        elif end > at and words[end : end + 1] and words[end] in ",.;-…":
            end += 1
        else:
            return end


def _mended(tokens: list[Token], words: list[str], rows: Rows, at: int, end: int) -> list[Token] | None:
    """The tokens with the quantity after `end` for the one before `at`, or None where they are no such pair."""
    while at > 1 and (words[at - 1] in ",.;-…" or words[at - 1] in _SIGHS):
        at -= 1
    at -= next((len(about) for about in _ABOUT if at > len(about) and words[at - len(about) : at] == about), 0)
    hedge = at
    while hedge > 1 and words[hedge - 1] in _HEDGED:
        hedge -= 1
    at = at if _HEDGES.isdisjoint(words[hedge:at]) else hedge  # 450 centres I think it was, no, 400
    for trail in range(min(_TRAIL, at - 1) + 1):
        stop = at - trail
        role = words[stop:at]
        if role and (role[0] in _NO_ROLE or not role[0].isalpha()):
            return None
        earlier = _ending(rows, stop)
        if earlier is not None:
            return _replaced(tokens, words, rows, earlier, (stop, at, end))
    return None


def _near(earlier: Reading, later: Reading) -> bool:
    """Whether two sizes are near enough to be one: 7 foot, call it 7 foot 2; a number with no unit may be in the other's."""
    one, other = earlier.value, later.value
    if not (isinstance(one, Quantity) and isinstance(other, Quantity)) or one.value <= 0 or other.value <= 0:
        return False
    if isinstance(one, Length) and isinstance(other, Length):
        pairs = [(one.to("in").value, other.to("in").value)]
    elif isinstance(one, Length) or isinstance(other, Length):
        sized, bare = (one, other) if isinstance(one, Length) else (other, one)
        pairs = [(bare.value, sized.to(unit).value) for unit in ("in", "ft", "mm", "m")]
    else:
        pairs = [(one.value, other.value)] if type(one) is type(other) else []
    return any(max(pair) <= min(pair) * _NEAR for pair in pairs)


def _replaced(
    tokens: list[Token], words: list[str], rows: Rows, earlier: Reading, places: tuple[int, int, int]
) -> list[Token] | None:  # fmt: skip
    stop, at, end = places
    later = next((found for i in range(end, min(end + _FAR, len(words))) if (found := _said_at(words, rows, i, end))), None)
    if later is None:
        return None
    earlier = next((r for r in rows[earlier.start] if (r.end, r.kind) == (earlier.end, later.kind)), earlier)
    loose = any(tuple(words[max(at, end - len(cue)) : end]) == cue for cue in LOOSE)
    if loose and not _near(earlier, later):
        return None
    if not _alike(rows, earlier, later) or not _goes_for(words, rows, earlier, later, places):
        return None
    role, after = words[stop:at], words[later.end : later.end + 1]
    again = bool(role) and after == role[:1]
    if (same := _of_the_same(words, later, role)) >= 0:
        at = max(stop, stop + same - 1)  # what is counted stays: nails | a stud
    first = _repeated_from(words, rows, earlier, later)
    put = tokens[later.start : later.end]
    if _bare(rows, later) and not _bare(rows, earlier):
        unit = _unit_of(words, rows, earlier)
        past = unit is None and _past_inches(earlier, later)
        unit = _unit_of(words, rows, earlier, past)
        if unit is None:
            return None
        put += _at(tokens[unit : unit + 1 if past else earlier.end], put[-1].end)
    kept = [] if again or first < earlier.start or not _WRITTEN.isdisjoint(role) else _at(tokens[stop:at], put[-1].end)
    return [*tokens[:first], *put, *kept, *tokens[later.end :]]


def _goes_for(words: list[str], rows: Rows, earlier: Reading, later: Reading, places: tuple[int, int, int]) -> bool:
    """Whether the later is said of what the earlier was."""
    stop, at, end = places
    pitched = "pitch" in _kinds(rows, later)
    role, after, between = words[stop:at], words[later.end : later.end + 1], words[end : later.start]
    context = words[max(0, earlier.start - _LEAD) : earlier.start]
    if words[later.start : later.end] == ["one"] and "pitch" in _kinds(rows, earlier):
        return False  # two gables at 6/12, sorry, only one
    if pitched and not SIDES.isdisjoint(role):
        return False  # it's 28 wide, no hang on, the pitch is 6/12
    again = bool(role) and (after == role[:1] or _of_the_same(words, later, role) >= 0)
    named = bool(after) and after[0] not in _ENDS and not pitched and "temperature" not in _kinds(rows, later)
    if role and not again and {*words[at:end]} <= {"really", "actually"}:
        return False  # cut at 30 by a corner that is really 118
    weak = words[end - 1] in WEAK and {*words[at:end]} <= WEAK | {","}
    again_said = {word for word in between if f"{word}ing" in context or f"{word}s" in context}  # starting at 9, no start at 12
    if {*between} <= _BETWEEN | {*context} | again_said | (_PITCHED if pitched else set()) and (
        not named or again or not (role or weak)
    ):  # 12 foot long, no 2 foot overhang
        return True
    no = {*words[at:end]} <= WEAK | {*",.;-…"}
    return (not no or begins_anew(between)) and still_of_it(between, (context, role, after), (earlier, later), _ENDS)


def _of_the_same(words: list[str], later: Reading, role: list[str]) -> int:
    """Where the place stands that both are told by, among the words after the earlier: 4 nails per stud, no, 2 a stud."""
    link, place = [*words[later.end : later.end + 2], "", ""][:2]
    return role.index(place) if link in ("a", "an", "per", "each", "every") and place in role else -1


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
    """The longest quantity that ends before token `stop`; split 96 in seven is no pitch."""
    found = ending(rows, stop)
    if found and found[0].kind == "pitch" and found[0].sure < LEAST_PITCHED:
        found = [r for r in rows[stop - 1] if r.end == stop and r.kind == "number"]
    return next(iter(found), None)


def _said_at(words: list[str], rows: Rows, at: int, end: int) -> Reading | None:
    """The longest quantity at a place after a correction that ends at `end`; "the main one's 10 in 12" says no one."""
    pointing = at > end and words[at] == "one" and words[at - 1].isalpha() and words[at - 1] not in SAID
    return None if pointing else _longest(rows[at])


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


def _past_inches(earlier: Reading, later: Reading) -> bool:
    """Whether a number is of feet beside feet and inches, and no inches: 31 foot 8, make it | 32."""
    if not isinstance(earlier.value, Length) or not isinstance(later.value, Quantity):
        return False
    feet, new = earlier.value.to("ft").value, later.value.value
    return new >= _FOOT and new <= _NEAR * feet


def _unit_of(words: list[str], rows: Rows, earlier: Reading, first: bool = False) -> int | None:
    """Where the unit of the earlier quantity begins, for a later number without one; None where it has two, unless the `first`
    is wanted."""
    ends = [r.end for r in rows[earlier.start] if r.kind == "number" and r.end < earlier.end]
    if not ends:
        return None
    unit = max(ends)
    pitch = words[earlier.end - 1] in ("12", "twelve")
    return unit if pitch or first or not any(rows[i] and rows[i][0].kind == "number" for i in range(unit, earlier.end)) else None
