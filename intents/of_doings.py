"""Numbers of what somebody did or lost, of his own things, of what lies in the truck, and of what is looked for.

"We lost 3 pieces to the rain", "6 of his pulled out", "his 2 brackets sagged", "there's 5 pounds of 2 inch left in the truck",
"has anybody seen my 6 ft level", "before you climb down with those 4 brackets", "the owner wants it by 3". Such a number is left
out only where the question has no place for it and is whole without (`left_out.py`).
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from intents.asks_nothing import PEOPLE
from intents.number_words import SMALL
from intents.reading import Reading
from intents.remarks import ASKING, ENDS
from solvers.quantities import Angle, Length, Number, Pitch, Weight

_PARTS = ENDS | frozenset(": - – — so but now because since cause while though where".split())
_WHO = PEOPLE | frozenset("he's she's we've they've i've we'd i'd they'd bloke lass girl boy son doorman gaffer".split())
_DEEDS = frozenset(
    "lapped set spaced started fixed fitted ran"
    " lost dropped broke snapped split cracked ruined cut put nailed pulled burned burnt bent dented forgot drove hung ripped"
    " chucked binned stepped sat trod threw tore smashed kicked knocked spilled spilt borrowed took left wasted scrapped"
    " pinched lent sold returned primed painted stacked carried".split()
)
_MADE = frozenset("cut put hung ripped primed painted stacked carried bent".split())
_OFF = frozenset("off from out more and plus by × each".split())  # what was taken off is a part of a sum
_NAILS = frozenset("nail nails screw screws staple staples".split())
_WENT = frozenset(
    "pulled sagged split broke came fell snapped failed blew cracked rotted leaked warped cupped swelled twisted popped slipped"
    " went rusted bent moved gapped curled coming going falling peeling rotting".split()
)
_HIS = frozenset("his hers her their theirs".split())
_OURS = frozenset("more another extra order buy short enough still remaining besides spare same like match both too".split())
_HOLDS = frozenset("there there's theres we we've i i've he he's they they've got have has".split())
_KEPT = frozenset("truck van shed yard trailer garage barn lorry left leftover pickup ute cab rack".split())
_SEEN = frozenset("seen pinched borrowed nicked moved took taken got".split())
_ANYBODY = frozenset("anybody anyone somebody someone who you".split())
_WHEN = frozenset("before after when once while as".split())
_MOVES = frozenset("climb come go get head clear walk carry hand pass bring send leave".split())
_WANTS = frozenset("wants want needs need wanted needed".split())
_HOUR = 12
SWORE = frozenset("swore swears reckoned reckons guessed guesses insisted insists bet bets".split())
_TAPED = frozenset("measures measure measured measuring taped tape gauge level".split())
_ROLES = frozenset(
    "overhang exposure waste kerf lap reveal gap overlap penetration bite pitch slope angle corner wide long deep high tall thick"
    " apart centres centers spacing".split()
)
CUES = _DEEDS | _WENT | _HIS | _KEPT | _SEEN | _WANTS | SWORE | (_WHEN - {"as"})
_ASKS, _OTHERS = ASKING - {"is", "are", "do", "does", "where", "when"}, _WHO - {"i", "we"}
DID = CUES | _WHEN  # none of what is told here is told without one of these


def of_doings(words: Sequence[str], place: tuple[int, int], reading: Reading, sums: bool = True) -> bool:
    """Whether a quantity is of what somebody did, has, seeks or wants by an hour, in its part of the clause at a place; `sums`:
    the line may be a sum, of which a length that was cut is a part.
    """
    start, end = _part(words, place, reading)
    part, before, after = words[start:end], list(words[start : reading.start]), list(words[reading.end : end])
    if _sought(part) or _by_the_hour(before, after, reading):
        return True
    if not _ASKS.isdisjoint(part) or "?" in words[end : end + 1]:
        return False
    if isinstance(reading.value, Pitch) or not _OURS.isdisjoint([*words[: place[0]], *words[place[1] :], *after]):
        return False
    told = _done(before, after, reading, sums) or of_his(before, after, reading) or _at_hand(before, after, reading)
    return told or _meanwhile(part, reading)


def counted_doings(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    """Whether it is a number of such things, or the hour, with no unit: it may go though a question took it for its own. What
    was cut or put up may be what is asked about; a nail or two is not.
    """
    if not isinstance(reading.value, Number) or not of_doings(words, place, reading):
        return False
    start, _ = _part(words, place, reading)
    made = not _MADE.isdisjoint(words[start : reading.start])
    return not made or not _NAILS.isdisjoint(words[reading.end : reading.end + 1])


def sworn(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    """Whether a length is what somebody swore it was, and others were measured: he swore it was a | 6 foot rise."""
    start, end = _part(words, place, reading)
    before = list(words[start : reading.start])
    swore = next((at for at, word in enumerate(before) if word in SWORE), 0)
    who = not _OTHERS.isdisjoint(before[max(0, swore - 4) : swore])
    return isinstance(reading.value, Length) and who and not _TAPED.isdisjoint([*words[:start], *words[end:]])


def of_his(before: Sequence[str], after: Sequence[str], reading: Reading) -> bool:
    """Whether a number counts what is somebody else's and went wrong or comes off: his | 2 brackets sagged, | 6 of his pulled."""
    if not isinstance(reading.value, Number) or (_WENT.isdisjoint(after) and "gone" not in after):
        return False
    return (not _HIS.isdisjoint(before[-1:]) and bool(after) and after[0].endswith("s")) or (
        list(after[:1]) == ["of"] and not _HIS.isdisjoint(after[1:2])
    )


def left_in_truck(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    """Whether a length is how much there is left of something, where so much per foot is asked: 40 ft of screen left."""
    if ("per", "foot") not in pairwise(words) or not _OURS.isdisjoint(words):
        return False
    start, end = _part(words, place, reading)
    before, after = list(words[start : reading.start]), list(words[reading.end : end])
    return after[:1] == ["of"] and ASKING.isdisjoint({*words[start:end]} - {"is", "are"}) and _at_hand(before, after, reading)


def _part(words: Sequence[str], place: tuple[int, int], reading: Reading) -> tuple[int, int]:
    """The stretch of a clause that a quantity stands in, cut where the sentence goes on: so, but, since, a colon."""
    start = max((at + 1 for at in range(place[0], reading.start) if words[at] in _PARTS), default=place[0])
    ends = (at for at in range(reading.end, place[1]) if words[at] in _PARTS or _goes_on(words, at))
    return start, next(ends, place[1])


def _goes_on(words: Sequence[str], at: int) -> bool:
    """Whether another is told of there: and they gap like a barn door."""
    return words[at] == "and" and not _WHO.isdisjoint(words[at + 1 : at + 2])


def _sought(part: Sequence[str]) -> bool:
    """Has anybody seen my | 6 ft level, who took my 4 foot straightedge."""
    seen = next((at for at, word in enumerate(part) if word in _SEEN), -1)
    return seen > 0 and part[seen - 1] in _ANYBODY and not {"my", "the", "that", "our"}.isdisjoint(part[seen : seen + 2])


def _by_the_hour(before: Sequence[str], after: Sequence[str], reading: Reading) -> bool:
    """The doorman wants it by | 3."""
    hour = isinstance(reading.value, Number) and reading.kind == "number" and 0 < reading.value.value <= _HOUR
    return hour and not after and before[-1:] == ["by"] and any(
        a in _WANTS and b in ("it", "them", "that", "this") for a, b in pairwise(before[-4:])
    )  # fmt: skip


def _done(before: Sequence[str], after: Sequence[str], reading: Reading, sums: bool) -> bool:
    """Whether somebody did something to so many, or at so much: the last crew cut these at | 20 degrees, we lost | 3 pieces."""
    value = reading.value
    whole = isinstance(value, Number) and value.value.denominator == 1 and _OFF.isdisjoint(after[:1])
    if not (whole or isinstance(value, Angle) or (isinstance(value, Length) and not sums)):
        return False
    if sums and whole and after[1:2] in (["at"], ["of"]):
        return False  # I put seven boards at 5 1/2 in it
    deed = next((at for at, word in enumerate(before) if word in _DEEDS), 0)
    if not deed or not _ROLES.isdisjoint([*before, *after[:2]]):
        return False
    if any(word[:1].isdecimal() or word in SMALL for word in before[deed:]):
        return False  # we took 19 1/8 off the 8 foot | one
    return not _WHO.isdisjoint(before[max(0, deed - 3) : deed])


def _at_hand(before: Sequence[str], after: Sequence[str], reading: Reading) -> bool:
    """Whether it is a size or a weight of what somebody has lying by: there's a | 24 footer in the truck."""
    if not isinstance(reading.value, Length | Weight | Number) or not _ROLES.isdisjoint(after[:1]):
        return False
    to_do = list(after[:1]) == ["left"] and list(after[1:2]) not in (["in"], ["on"])  # I've 15 foot 4 left to strap
    to_do = to_do or ("left", "to") in pairwise(after)
    return not (to_do or _HOLDS.isdisjoint(before[:2]) or _KEPT.isdisjoint(after))


def _meanwhile(part: Sequence[str], reading: Reading) -> bool:
    """Before you climb down with those | 4 brackets: what somebody carries when he goes."""
    goes = len(part) > 2 and part[0] in _WHEN and part[1] in PEOPLE and not _MOVES.isdisjoint(part[2:4])
    return goes and isinstance(reading.value, Number)
