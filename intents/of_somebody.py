"""What somebody else uses or goes by, and what a piece costs, where neither is asked.

"The fella across the road used inch and a half", "my uncle goes by three feet", "I was told six inches by a man", "12 foot
lengths at 22 each", "they've gone up to 3.40 apiece". Such a number is left out only where the question has no place for it
and is whole without (`left_out.py`).
"""

from __future__ import annotations

from collections.abc import Sequence

from intents.reading import Reading
from solvers.quantities import Length

_PEOPLE = frozenset(
    "grandfather grandmother uncle cousin brother neighbour neighbor fella fellow guy man lad grandad granddad grandpa dad father"
    " nephew mate mates"
    " bloke gaffer roofer he she they somebody someone".split()
)
_GOES_BY = (["goes", "by"], ["went", "by"], ["swears", "by"], ["swore", "by"], ["used"], ["always", "used"], ["always", "uses"])
_NEVER = (["never", "more", "than"], ["never", "over"], ["never", "less", "than"], ["no", "more", "than"])
_GETS = (["can", "get", "it", "for"], ["can", "get", "them", "for"], ["gets", "it", "for"], ["gets", "them", "for"])
_TOLD = ("told", "by")
_SAID = frozenset("said says reckoned swore".split())
_EACH = frozenset(("each", "apiece"))
_GOODS = frozenset("lengths boards sticks panels sheets rolls tubes boxes bundles pieces planks battens ones".split())
_SELLS = frozenset("sell sells sold selling cost costs charge charges charged want wants gone price prices".split())
_RISEN = (["up", "to"], ["down", "to"])
_BILL = frozenset("cost costs bill pay spend money total damage".split())
_LONG = 8  # words of who it is and what is said of him, before the number
CUES = frozenset("never told goes went swears swore used uses get gets each apiece price prices".split())


def of_somebody(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    """Whether it is what somebody else uses, goes by or pays, or was told: no word of the job."""
    before = list(words[max(place[0], reading.start - _LONG) : reading.start])
    after = words[reading.end : place[1]]
    if before[-1:] == [_TOLD[0]] and _TOLD[1] in after[:1]:
        return "was" in before[-3:]
    people = not _PEOPLE.isdisjoint(before)
    limit = isinstance(reading.value, Length) and reading.value.unit in ("ft", "m")  # 7 1/2 may be the most that shows
    said = people and limit and not _SAID.isdisjoint(before)
    if said and any(before[-len(cue) :] == cue for cue in _NEVER):
        return True  # my grandfather said never more than seven feet
    return people and any(before[-len(cue) :] == cue for cue in (*_GOES_BY, *_GETS))


def priced_each(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    """Whether a number is what one of the pieces costs, and no cost is asked."""
    clause, before = words[place[0] : place[1]], list(words[max(place[0], reading.start - 2) : reading.start])
    others = [*words[: place[0]], *words[place[1] :]]
    if not _BILL.isdisjoint(others):
        return False
    sold = not _SELLS.isdisjoint(clause)
    if words[reading.end : reading.end + 1] and words[reading.end] in _EACH and before[-1:] in (["at"], ["to"]):
        return sold or before[0] in _GOODS
    return before in _RISEN and not {"price", "prices"}.isdisjoint(clause)
