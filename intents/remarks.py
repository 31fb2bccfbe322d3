"""Remarks with a number in them that is none of the job's, whatever is asked: a budget, the hour, how many walls there are."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from itertools import pairwise

from intents.number_words import SMALL

ENDS = frozenset(".?!;,()")
STOPS = frozenset(",.;?!")
ASKING = frozenset("how what which can could will would is are does do where when who".split())
HELD = frozenset("under over within exceed past enough inside fit afford".split())  # held against it, which is asked

_BUDGETED = frozenset(("budget", "deposit"))
_NUMBERED = frozenset(
    "wall walls job gable house unit plot order block section elevation shed cabin site lot bay door window question".split()
)
_OF_THEM = frozenset("on here left alike we i'm i've we've gables walls houses units".split())
_THESE = frozenset("the my these those our".split())
_MEASURED = frozenset("foot feet ft in inch inches mm cm m metre metres meter meters by footers half and or point".split())
_RANG = frozenset(
    "ring rung rang called phoned asked told texted been checked tried came rings did done measured went said taped".split()
)
_TILL, _PART = frozenset("till until til past at after before by".split()), frozenset(("half", "quarter"))
_BEGAN = frozenset(("started", "began", "begun"))
_REMAIN = frozenset("left now only remaining".split())
_SINCE, _YEARS = frozenset("since in".split()), range(1850, 2100)
_NO, _NEAR = frozenset("nowhere not far isn't".split()), frozenset("near from close".split())
_PIECES = frozenset("piece pieces bit part parts go one".split())
_SPENT = 4  # words from a sum to where it is said to be there to spend
_NOT_IT = 6  # words from a quantity to the one it is not
_GOES_ON = _MEASURED | {"/", "'", '"', "-", "%", "percent", "degrees"} - {"and", "or", "by"}
_OTHERS = frozenset("wall gable one elevation run roof".split())  # the other side may be of a square check
_OF_THIS = (("not", "this"), *(("this", word) for word in _OTHERS))
_TWO = frozenset("both together total all altogether combined between than same plus and add each sum difference".split())
_PLOTS, _LOCATED = frozenset(("plot", "lot", "block")), frozenset("on at for of from".split())
_CUES = _BUDGETED | _RANG | _BEGAN | _PLOTS | frozenset("number one since built spend nowhere far half quarter not other".split())


def idle_places(words: Sequence[str]) -> set[int]:
    """The places of words that begin no quantity of the job."""
    if _CUES.isdisjoint(words):
        return set()
    found: set[int] = set()
    for start, end in clauses(words):
        clause = words[start:end]
        if not _BUDGETED.isdisjoint(clause) and clause[0] not in ASKING and HELD.isdisjoint(clause):
            found.update(range(start, end))
        if not _BEGAN.isdisjoint(clause) and not _REMAIN.isdisjoint(words):
            at = next(i for i in range(start, end) if words[i] in _BEGAN)
            found.update(range(at + 1, min(at + 3, end)) if words[at + 1 : at + 2] == ["with"] else ())
    if "other" in words:
        found.update(_of_another(words))
    spent = HELD.isdisjoint(words) and "spend" in words
    for at, word in enumerate(words):
        if word[:1].isdecimal() or word in SMALL:
            if spent and any(tuple(words[k : k + 2]) == ("to", "spend") for k in range(at + 1, at + _SPENT)):
                found.add(at)  # we've 3000 to spend
            found.update(_named_or_counted(words, at))
            if word == "one" and [*words[at - 2 : at]] == ["more", "than"] and set(words[at + 1 : at + 2]) <= _PIECES:
                found.add(at)  # in more than one piece
            if words[at - 1 : at] == ["not"]:
                found.update(_is_not(words, at))
            if at > 1 and words[at - 1] in _NEAR and words[at - 2] in _NO and words[at + 1 : at + 2] != ["inch"]:
                found.add(at)  # nowhere near 90
    return found


def _named_or_counted(words: Sequence[str], at: int) -> Iterator[int]:
    """A number that is a name (wall number 3), an hour (till half 5), a year, of calls (rung 3 times), or of more of the same."""
    before, second = words[at - 1] if at else "", words[at - 2] if at > 1 else ""
    after = words[at + 1] if at + 1 < len(words) else ""
    stops = not after or after in ENDS
    if before in _PART and second in _TILL and (stops or after in ("and", "so", "today")):
        yield from (at - 1, at)
    elif before == "number" and second in _NUMBERED:
        yield at
    elif before in _PLOTS and second in _LOCATED and after not in _MEASURED:
        yield at  # the gable on plot nine is 9.2 m wide
    elif before in _SINCE and words[at].isdecimal() and int(words[at]) in _YEARS and stops:
        yield from (at,) if before == "since" or "built" in words[max(0, at - 3) : at] else ()
    elif after == "times" and not _RANG.isdisjoint(words[max(0, at - 3) : at]):
        yield at
    elif before == "of" and second == "one":
        yield from (at,) if after in _OF_THEM else ()
    elif before in _THESE and second == "of" and words[max(0, at - 3)] == "one":
        yield from (at,) if after.isalpha() and after not in _MEASURED else ()  # one of the two gables


def _of_another(words: Sequence[str]) -> Iterator[int]:
    """A clause about the other one, where what is asked is of this one: twelve metres is the other wall, this one's 7.5."""
    if not any(pair in _OF_THIS for pair in pairwise(words)):
        return
    for start, end in clauses(words):
        clause = words[start:end]
        other = any(a == "other" and b in _OTHERS for a, b in pairwise(clause))
        if other and "this" not in clause and _TWO.isdisjoint(clause) and ASKING.isdisjoint(clause[:1]):
            yield from range(start, end)


def _is_not(words: Sequence[str], at: int) -> Iterator[int]:
    """What a quantity is not, right after it: 14 ft, not 12 ft."""
    end = at
    while end < len(words) and (words[end][:1].isdecimal() or words[end] in SMALL or words[end] in _GOES_ON):
        end += 1
    said = (word[:1].isdecimal() or word in SMALL for word in words[max(0, at - _NOT_IT) : at - 1])
    if any(said) and (end == len(words) or words[end] in ENDS | ASKING or words[end] == "and"):
        yield from range(at, end)


def clauses(words: Sequence[str]) -> Iterator[tuple[int, int]]:
    """Where the stretches between stops and commas begin and end."""
    start = 0
    for end in (*(i for i, word in enumerate(words) if word in ENDS), len(words)):
        if end > start:
            yield start, end
        start = end + 1


def up_to_stop(words: list[str]) -> list[str]:
    """The words up to the first stop or comma."""
    return words[: next((at for at, word in enumerate(words) if word in STOPS), len(words))]
