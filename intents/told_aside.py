"""Quantities that a clause of a story sets aside in so many words: "ignore the bolt at 54", "the dishwasher's 24 but that's going
elsewhere", "there's been no power since ten", "the client is six foot four", "my brother-in-law keeps saying eight foot, but …".

None of them is a part of a sum (`second_sums.py`), and a question that has no place for one is whole without it (`left_out.py`).
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from intents.chart import Chart, once, quantities, span
from intents.number_words import SMALL
from intents.reading import Reading
from intents.remarks import ENDS, clauses
from solvers.quantities import Length, Money, Number, Pitch, Weight

_IGNORE = frozenset("ignore ignoring ignored forget forgetting disregard disregarding discount discounting".split())
_MIND = (("never", "mind"), ("not", "counting"), ("don't", "count"), ("dont", "count"), ("let", "alone"), ("nothing", "to"))
_LED = 5  # words from there to the quantity
_THEN = frozenset("but which though that's thats that it's its and so that'll they're".split())
_DISMISSED = tuple(
    tuple(words.split())
    for words in (
        "elsewhere|nobody asked|no one asked|don't matter|doesn't matter|does not matter|isn't it|not part of|isn't part of"
        "|irrelevant|another story|another job|another day|for another|ignore that|ignore it|forget that|forget it"
        "|never mind that"
        "|forget those|forget them|ignore those|ignore them"
        "|no matter|not in this|isn't in this|not in it|not for this|not that one|somewhere else|someone else's|somebody else's"
        "|not my problem|not our problem|not asking|isn't the question|not the question|not what i'm asking|separate job"
        "|don't come into it|doesn't come into it|not come into it|nothing to do with|so it'll go|so it'll fit|so it fits"
        "|so it will fit|so plenty|which is plenty|so there's room|so there's plenty|so no bother|so no problem|so we're fine"
        "|don't bother with that|dont bother with that|don't bother with it|don't worry about that|don't worry about it"
        "|whatever|once and regretted|cups of|pints of|mugs of|cans of|beers"
    ).split("|")
)  # fmt: skip
_REST = frozenset("left remains over rest spare".split())
_DISMISSING = frozenset(words[0] for words in _DISMISSED)
_IS = frozenset("is was are has had door a an".split())
_FAR = 10  # words from a quantity to where it is dismissed
_HOURS, _HOUR = frozenset("since till until by at before after around".split()), 12
_DAY = frozenset(
    "power rain rains raining closes close closing shut shuts shutting lunch dinner tea dark tide ferry bus train meeting school"
    " game match telly kickoff"
    " deadline open opens knocking daylight sunset dusk".split()
)
_GOING = frozenset("off home back leaving leave leaves here coming due gone arrives arriving away started starting began".split())
_VISITORS = frozenset(
    "inspector control boss client owner customer delivery truck lorry van electrician plumber sparky glazier surveyor".split()
)
_COMES = frozenset("comes coming come here arrives due calls back".split())
_SOMEBODY = frozenset("he he's she she's they they're i'm i've we we're we've i they've he'll she'll they'll we'll".split())
_PERSON = frozenset(
    "client customer owner wife husband son daughter kid lad boy girl mate missus brother sister father mother dad mum uncle"
    " neighbour neighbor boss foreman apprentice nephew cousin law builder fella bloke fellow".split()
)
_SAYS = frozenset("says say saying said reckons reckoned swears swore insists insisted thinks thought guesses guessed".split())
_SHORTEST, _TALLEST = 36, 84  # inches, of a person
_LIMIT = (
    ("rated", "for"), ("rated", "to"), ("rated", "at"), ("limit", "is"), ("limit", "of"), ("max", "is"), ("max", "of"),
    ("maximum", "is"), ("maximum", "of"),
)  # fmt: skip
_BOUNDS = frozenset("under over below above past to".split())
_PERMITS = frozenset("permit permits permission allowed allows legal regs".split())
_FREIGHT = frozenset("freight delivery shipping haulage carriage".split())
_COSTS = frozenset("cost costs price total pay bill spend damage".split())
_METAL = frozenset("ounce ounces oz gauge d penny pennies".split())
_OUNCES, _SHEET = frozenset("ounce ounces oz".split()), frozenset("copper lead zinc tin".split())  # and no 28 oz tube
_HEADS = frozenset("guy man girl lad woman kid fella bloke clerk apprentice helper".split())
_YOUNGEST, _OLDEST, _BEHIND = 14, 95, 7
_ITS_OWN = frozenset("it they price cost this that these those".split())
_BUILDINGS = frozenset("house building barn shed garage place".split())
_NAILS = frozenset("screw screws nail nails fastener fasteners fixing fixings".split())
_WANTS = (("only", "want"), ("just", "want"), ("only", "need"), ("just", "need"), ("only", "care"), ("only", "after"))
_MEANT, _WHERE = frozenset("ought supposed meant".split()), frozenset(("where", "when", "though", "but"))
USELESS = _MEANT | frozenset("slope rake it them rule ton tonne was were worth".split()).union(
    _METAL, _BUILDINGS, _FREIGHT, _HEADS, _PERSON
)
CUES = (
    _IGNORE | _DISMISSING | _DAY | _PERSON | _GOING | _VISITORS
    | frozenset("never counting count alone rated number no below above but next had".split())
    | frozenset("limit max maximum i'm im he's she's".split()) | _PERMITS
)  # fmt: skip


_STOPS = ENDS - {","}


@once
def told_aside(chart: Chart) -> int:
    """Mask of the quantities that the words beside them set aside."""
    words = chart.words
    if CUES.isdisjoint(words):
        return 0
    mask = 0
    for place in clauses(words):
        if chart.numbers & span(*place):
            for reading in quantities(chart, *place):
                if _set_aside(words, place, reading):
                    mask |= span(reading.start, reading.end)
    return mask


@once
def of_no_use(chart: Chart) -> int:
    """Mask of what a question that has no place for it can do without: a roof's pitch where its length is along the slope, how
    much there is of the trim that is nailed, the rule that ladders go by.
    """
    words, mask = chart.words, 0
    if USELESS.isdisjoint(words):
        return 0
    slope = any(a in ("along", "up", "down") and c in ("slope", "rake") for a, c in zip(words, words[2:], strict=False))
    priced = any(isinstance(r.value, Money) for row in chart.readings for r in row)
    for reading in quantities(chart, 0, len(words)):
        lying = isinstance(reading.value, Pitch) and slope
        other = priced and _other_price(words, reading)
        if lying or other or _should_have_been(words, reading) or _says_or_is(words, reading) or _of_stuff(words, reading):
            mask |= span(reading.start, reading.end)
    return mask


def _of_stuff(words: Sequence[str], reading: Reading) -> bool:
    """Whether it is of what is bought or hauled: 60 feet of it (to be nailed), in a half ton, 20 ounce copper, freight is 200."""
    before, after = words[max(0, reading.start - 3) : reading.start], words[reading.end : reading.end + 2]
    if isinstance(reading.value, Weight) and before[-2:-1] == ["in"]:
        return True
    if isinstance(reading.value, Length) and reading.value.unit in ("ft", "m") and after in (["of", "it"], ["of", "them"]):
        return not _NAILS.isdisjoint(words)
    named = words[reading.end - 1] in _METAL and (words[reading.end - 1] not in _OUNCES or not _SHEET.isdisjoint(after))
    if named or (after[:1] and (after[0] in _METAL or after[0] in ("worth", "rule"))):
        return True
    if before[-1:] == ["is"] and not _BUILDINGS.isdisjoint(before) and after[:1] in (["wide"], ["long"], ["deep"], ["across"]):
        return True
    return not _FREIGHT.isdisjoint(before) and _COSTS.isdisjoint(words)


def _says_or_is(words: Sequence[str], reading: Reading) -> bool:
    """Whether it is what somebody reckons, or how old he is: the apprentice reckons | 4 foot, the guy at the desk is | 20."""
    before = words[max(0, reading.start - _BEHIND) : reading.start]
    stop = max((at + 1 for at, word in enumerate(before) if word in ENDS), default=0)
    before = [word for word in before[stop:] if word != "about"]
    if not before or (_HEADS.isdisjoint(before) and _PERSON.isdisjoint(before)):
        return False
    if isinstance(reading.value, Length) and before[-1] in _SAYS:
        return True
    after = words[reading.end : reading.end + 1]
    aged = isinstance(reading.value, Number) and _YOUNGEST <= reading.value.value <= _OLDEST and before[-1] == "is"
    return aged and (not after or after[0] in ENDS or after[0] == "and")


def _should_have_been(words: Sequence[str], reading: Reading) -> bool:
    """Whether it is what a thing was meant to be, and is not: reads 87 where it ought to be | 90."""
    before = words[max(0, reading.start - _LED) : reading.start]
    return before[-2:] == ["to", "be"] and not _MEANT.isdisjoint(before) and not _WHERE.isdisjoint(before)


def _other_price(words: Sequence[str], reading: Reading) -> bool:
    """Whether it is what something else was: spruce was | 1.40, what's the cedar come to."""
    after, before = words[reading.end : reading.end + 1], words[max(0, reading.start - _BEHIND) : reading.start]
    stop = not after or after[0] in ENDS
    start = max((at + 1 for at, word in enumerate(before) if word in ENDS), default=0)
    return stop and before[-1:] in (["was"], ["were"]) and _ITS_OWN.isdisjoint(before[start:]) and start > 0


def _set_aside(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    before, clause = words[max(place[0], reading.start - _LED) : reading.start], words[place[0] : place[1]]
    if _is_label(words, place, reading) or _told_to_ignore(before) or _dismissed(words, reading):
        return True
    if _most(clause, before) or _elsewhere(words, clause, before, reading):
        return True
    return _hour(words, place, clause, reading) or _tall(clause, before, reading) or _said(words, place, before, reading)


def _elsewhere(words: Sequence[str], clause: Sequence[str], before: Sequence[str], reading: Reading) -> bool:
    """Whether it is next door's, or what the shop had: the dormer next door is a | 10/12, they had | 40 on the shelf."""
    if "next" in clause and ("next", "door") in pairwise(clause) and not _IS.isdisjoint(before):
        return True
    after = words[reading.end : reading.end + 3]
    return "had" in before and (after in (["on", "the", "shelf"], ["on", "the", "rack"]) or after[:2] == ["in", "stock"])


def _most(clause: Sequence[str], before: Sequence[str]) -> bool:
    """Whether it is the most of something: rated for | 250, the limit is | 900 kilos, no permit needed under | 6 foot."""
    if any(tuple(before[-len(so) :]) == so for so in _LIMIT):
        return True
    return not _PERMITS.isdisjoint(clause) and not _BOUNDS.isdisjoint(before[-1:])


def _is_label(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    """Whether a number only names something, or is how cold it is: number | 11, no. | 10, it's | 7 below."""
    if not isinstance(reading.value, Number) or reading.end != reading.start + 1 or reading.value.value.denominator > 1:
        return False
    before, after = words[max(0, reading.start - 2) : reading.start], words[reading.end : reading.end + 2]
    if before[-1:] == ["number"] or before == ["no", "."]:
        return True
    cold = before[-1:] in (["it's"], ["its"]) and after[:1] in (["below"], ["above"])
    return cold and reading.start - 1 == place[0] and after[1:] in ([], ["and"], [","], ["outside"], ["out"])


def _told_to_ignore(before: Sequence[str]) -> bool:
    """Whether it is told to leave it be: ignore the bolt at | 54."""
    if any(word[:1].isdecimal() or word in SMALL for word in before):
        return False
    return not _IGNORE.isdisjoint(before) or any(pair in _MIND for pair in pairwise(before))


def _dismissed(words: Sequence[str], reading: Reading) -> bool:
    """Whether what comes after tells that it does not matter: | 24 but that's going elsewhere."""
    after = words[reading.end : reading.end + _FAR]
    said = next((n for n, word in enumerate(after) if word[:1].isdecimal() or word in SMALL or word in _STOPS), len(after))
    if "but" in after[:said] and any(pair in _WANTS for pair in pairwise(after)):
        return True  # the front has five openings but I only want the back's
    for n, word in enumerate(after[:said]):
        if word == "whatever" and not _REST.isdisjoint(after[n + 1 : n + 3]):
            continue  # and whatever's left
        if word in _DISMISSING and any(tuple(after[n : n + len(so)]) == so for so in _DISMISSED):
            led = [w for w in after[:n] if w in _THEN or w == ","]
            last = max((at for at in range(n) if after[at] == ","), default=n)
            of_another = n - last > 1 and after[last + 1] not in _THEN  # 2700, kerf's tiny so | ignore it
            return (bool(led) and not of_another) or n <= 1
    return False


def _hour(words: Sequence[str], place: tuple[int, int], clause: Sequence[str], reading: Reading) -> bool:
    """Whether it is an hour: no power since | ten, off to the yard at | four."""
    value = reading.value
    if not isinstance(value, Number) or reading.end != reading.start + 1 or not 0 < value.value <= _HOUR:
        return False
    if words[reading.start - 1 : reading.start] == [] or words[reading.start - 1] not in _HOURS:
        return False
    after = words[reading.end : reading.end + 1]
    if after and after[0] not in ENDS and after[0] not in ("so", "and", "today", "tonight", "tomorrow", "but"):
        return False
    if words[reading.start - 2 : reading.start - 1] == ["on"]:  # on at | six
        return not _DAY.isdisjoint(clause)
    if not _DAY.isdisjoint(clause) or not (_VISITORS.isdisjoint(clause) or _COMES.isdisjoint(clause)):
        return True
    return not (_GOING.isdisjoint(clause) or _SOMEBODY.isdisjoint(words[place[0] : place[0] + 3]))


def _tall(clause: Sequence[str], before: Sequence[str], reading: Reading) -> bool:
    """Whether it is how tall somebody is: the client is | six foot four."""
    value = reading.value
    who = [word for word in before[-2:] if word not in ("is", "was")][-1:]  # "the client's six foot four" has no 's here
    if not isinstance(value, Length) or value.unit not in ("ft", "in") or not who:
        return False
    return who[0] in _PERSON | {"he", "she", "he's", "she's", "i'm", "im"} and _SHORTEST < value.to("in").value < _TALLEST


def _said(words: Sequence[str], place: tuple[int, int], before: Sequence[str], reading: Reading) -> bool:
    """Whether it is what somebody says, against which something else is told: keeps saying | eight foot, but …"""
    if _SAYS.isdisjoint(before[-2:]) or _PERSON.isdisjoint(words[place[0] : reading.start]):
        return False
    after = [word for word in words[reading.end : reading.end + 4] if word not in (",", "is", "plenty", "enough")]
    return after[:1] == ["but"]
