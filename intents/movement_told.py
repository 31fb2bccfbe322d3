"""What is told of movement as one tells it: "11 percent today, the heating brings it down to 6", "+7 % moisture", "6 % shop to a
porch at 12 %", "he said a quarter inch whatever the weather".

Two moistures are in the order in which they were told where words beside them tell which was first; a size that somebody reckons
the gap to be is held against the answer, and is no length of the piece.
"""

from __future__ import annotations

from collections.abc import Mapping
from itertools import takewhile

from intents.chart import Chart, quantities
from intents.heat_told import heat_told
from intents.placing import heard_as
from intents.question import Claim, Heard, Question
from intents.reading import Reading
from intents.remarks import up_to_stop
from intents.second_reader import places_of
from intents.unsaid_units import no_inches
from solvers.quantities import Length, Percent
from solvers.slots import Parameter

Topics = Mapping[str, tuple[Parameter, ...]]

WOOD = "wood movement"
HEAT = "thermal movement"
LONGS = frozenset(("end gap", HEAT))
LEAST_PIECE, MOST_GAP = 12, 3  # in; a piece is longer, a gap shorter
WIDEST_BOARD = 60  # in; a bare number that is more was said in millimetres
_TO = frozenset(("to", "near", "at"))
_SMALL = frozenset("about around roughly a an the only just well maybe say it's its be".split())
_BY = frozenset("+ plus by gains gain gaining picks up takes puts adds rises swings swing".split())
_CHANGED = frozenset("change swing difference points point".split())
_RISES = frozenset("+ plus gains gain gaining picks takes puts adds rises swells swell wider grow grows up".split())
_FALLS = frozenset("loses lose losing drops drop dries drying falls shrink shrinks narrower down".split())
_LATER = frozenset(
    "to will could can would should going settle settles settling end ends keeps kept sits sit inside indoors winter summer"
    " heating service eventually later next dry dries drop drops down porch brings bring get gets by next once".split()
)
_WIDENS = frozenset("wider swell swells swelling grow grows expand expands widen widens".split())
_NARROWS = frozenset("narrower shrink shrinks shrinkage shrinking smaller".split())
_SOONER = frozenset(
    "now today from was were at came come comes meter says reads bought delivered currently painted started starts wet moment"
    " stacked yard arrived laid went".split()
)
_SAYS = frozenset("said says say saying reckons reckon reckoned swears swore told thinks bets guesses leave leaves".split())
_TURNS = frozenset(
    "change swing drop drops fall falls rise rises difference by of colder warmer hotter cooler range up down over gains loses"
    " goes + plus".split()
)
_IN_USE = frozenset(
    "settle settles settling service once finished dry dries inside indoors winter summer fall spring"
    " eventually later end".split()
)
_BOUGHT = frozenset("got bought delivery delivered yard arrived came now today stacked truck green installed".split())
_MOIST, _WET = frozenset("percent pct % moisture mc meter".split()), range(4, 41)
_REACH = 3
_BACK, _SAID = 5, 4  # words before a quantity in which such a word stands


def movement_told(chart: Chart, questions: list[Question], topics: Topics) -> None:
    """Put the first question right, where it is about movement."""
    question = next(iter(questions), None)
    if question is None:
        return
    if question.topic == WOOD:
        _moistures(chart, question)
        bare_moistures(chart, question, topics)
    elif question.topic in LONGS:
        _reckoned(chart, question, topics)
        if question.topic == HEAT:
            _both_ends(chart, question, topics)
        else:
            _ends_of_the_year(question)
    if question.topic == WOOD or question.topic in LONGS:
        heat_told(chart, question, topics)


# ── moisture ──


def _moistures(chart: Chart, question: Question) -> None:
    no_inches(question.givens, "width", WIDEST_BOARD + 1)
    percents = (h for h in question.givens.values() if isinstance(h.value, Percent) and h.end > h.start)
    told = sorted(percents, key=lambda h: h.start)
    if len(told) == 2 and (turned := _was_and_now(chart, told)) is not None:
        _in_order(question, *turned)
        return
    if len(told) == 1 and (question.swaps or question.missing or told[0].value.value < 0):
        _change(chart, question, told[0])
    elif len(told) == 2 and question.swaps and not question.unplaced:
        first, second = told
        forward, back = (_tells(chart, second, cues) - _tells(chart, first, cues) for cues in (_LATER, _SOONER))
        to = _after(chart, second, _TO)
        if to or forward > 0 >= back or forward >= 0 > back:
            _in_order(question, first, second)
    elif len(told) == 2 and question.plain and _goes_against(chart.words, *told):
        first, second = told
        question.swaps = [question.givens | {"wet": second, "dry": first}]  # 8 percent, 12 percent, how much narrower


def _goes_against(words: list[str], first: Heard, second: Heard) -> bool:
    """Whether what is asked comes about only the other way round."""
    wider, narrower = not _WIDENS.isdisjoint(words), not _NARROWS.isdisjoint(words)
    return wider != narrower and wider != bool(second.value.value > first.value.value)


def _was_and_now(chart: Chart, told: list[Heard]) -> tuple[Heard, Heard] | None:
    """What it was and what it is now, in that order: was 9 percent in March, it's 13 percent now."""
    words = chart.words
    was: list[Heard] = []
    now: list[Heard] = []
    for heard in told:
        start, end = places_of(chart, heard)
        before = up_to_stop(words[max(0, start - _REACH) : start][::-1])
        if "was" in before:
            was.append(heard)
        elif "now" in (*before, *words[end : end + 1]):
            now.append(heard)
    return (was[0], now[0]) if len(was) == len(now) == 1 else None


def bare_moistures(chart: Chart, question: Question, topics: Topics) -> None:
    """Two moistures of which one or both were said with no percent, where words tell which was first: 9 now, 14 in fall."""
    if _MOIST.isdisjoint([word.strip("%") or "%" for word in chart.words]):
        return
    sizes = list(quantities(chart, 0, len(chart.words)))
    wet = [r for r in sizes if r.kind in ("percent", "number") and not isinstance(r.value, Length) and _moist(chart, r)]
    texts = {chart.said(r.start, r.end) for r in wet}
    if len(wet) != 2 or not texts.issuperset(question.unplaced) or set(question.missing) - {"wet", "dry", "change"}:
        return
    parameters = {p.name: p for p in topics[WOOD]}
    first, second = (heard_as(chart, parameters[n], r, True) for n, r in zip(("wet", "dry"), wet, strict=True))
    if first is None or second is None or any(h.start == first.start for n, h in question.givens.items() if n == "width"):
        return
    forward, back = (_says_when(chart, second, cues) - _says_when(chart, first, cues) for cues in (_IN_USE, _BOUGHT))
    if (forward > 0 >= back or forward >= 0 > back) and not question.plain:
        _in_order(question, first, second)
        question.unplaced = []
    elif back > 0 > forward or (back - forward > 0 and not question.plain):  # 12 once dry, 18 when we got it
        _in_order(question, second, first)
        question.unplaced = []
    elif not question.whole and _goes_so(chart.words, first, second):
        _in_order(question, first, second)
        question.unplaced = []


def _goes_so(words: list[str], first: Heard, second: Heard) -> bool:
    """Whether what is asked comes about in the order told: 6 percent in the shop, 12 on the porch, how much wider."""
    wider, narrower = not _WIDENS.isdisjoint(words), not _NARROWS.isdisjoint(words)
    rises = bool(second.value.value > first.value.value)
    return wider != narrower and wider == rises and first.start < second.start


def _says_when(chart: Chart, heard: Heard, cues: frozenset[str]) -> bool:
    """Whether one of the words stands after a moisture, before the next: twenty | when we got it and fourteen."""
    _, end = places_of(chart, heard)
    after = up_to_stop(chart.words[end : end + _SAID + 1])
    last = next((n for n in range(len(after)) if chart.numbers >> (end + n) & 1 or after[n] == "and"), len(after))
    return not cues.isdisjoint(after[:last])


def _moist(chart: Chart, reading: Reading) -> bool:
    """Whether wood may be so wet: a whole number with no size after it."""
    value = reading.value.value  # type: ignore[union-attr]
    return (
        value.denominator == 1
        and value in _WET
        and chart.words[reading.end : reading.end + 1] not in (["wide"], ["×"], ["points"])
    )


def _in_order(question: Question, first: Heard, second: Heard) -> None:
    kept = {n: h for n, h in question.givens.items() if h not in (first, second) and n != "way"}
    question.givens, question.swaps, question.missing = kept | {"wet": first, "dry": second}, [], []


def _change(chart: Chart, question: Question, heard: Heard) -> None:
    """One percent alone is a change where a sign or a word says so: +7 %, a 6 % change, picks up 7 points."""
    start, end = places_of(chart, heard)
    words = chart.words
    before = [word for word in words[max(0, start - 3) : start] if word not in _SMALL]
    after = [word for word in words[end : end + 3] if word not in ("in", "of", "moisture", "mc")]
    lost = heard.value.value < 0  # minus 5 %
    if not (before and before[-1] in _BY) and _CHANGED.isdisjoint(after[:1]) and not lost:
        return
    kept = {n: h for n, h in question.givens.items() if n not in ("wet", "dry", "change", "way")}
    question.givens = kept | {"change": heard}
    way = "" if lost else _way(words, before)
    if way:
        question.givens["way"] = Heard(way, heard.start, heard.start, "")
    question.swaps, question.missing = [], []


def _way(words: list[str], before: list[str]) -> str:
    near = set(before[-2:])
    if near & _RISES:
        return "GAINS"
    falls, rises = near & _FALLS or not _FALLS.isdisjoint(words), not _RISES.isdisjoint(words)
    return "LOSES" if falls and not rises else ""


def _tells(chart: Chart, heard: Heard, cues: frozenset[str]) -> bool:
    """Whether one of the words stands in the same clause, around a quantity."""
    start, end = places_of(chart, heard)
    back = up_to_stop(chart.words[max(0, start - _BACK) : start][::-1])
    before = takewhile(lambda word: not word[:1].isdecimal(), back)
    return not cues.isdisjoint([*before, *up_to_stop(chart.words[end : end + 2])])


def _after(chart: Chart, heard: Heard, cues: frozenset[str]) -> bool:
    """Whether one of the words stands right before a quantity, but for small ones: down to about 6."""
    start, _ = places_of(chart, heard)
    before = next((word for word in reversed(chart.words[max(0, start - _BACK) : start]) if word not in _SMALL), "")
    return before in cues


# ── temperatures ──


def _both_ends(chart: Chart, question: Question, topics: Topics) -> None:
    """A temperature taken for a change, beside one end, is the other end: it was 34 F, it'll be cooking at 130."""
    givens = question.givens
    change, ends = givens.get("change"), [name for name in ("start", "end") if name in givens]
    if change is None or len(ends) != 1 or change.end <= change.start:
        return
    start, end = places_of(chart, change)
    near = {*chart.words[max(0, start - 2) : start], *chart.words[start : end + 2]}
    warm = max((r for r in chart.readings[start] if r.kind == "temperature" and r.end == end), key=lambda r: r.sure, default=None)
    if warm is None or not near.isdisjoint(_TURNS):
        return
    name = "end" if ends == ["start"] else "start"
    heard = heard_as(chart, next(p for p in topics[HEAT] if p.name == name), warm, True)
    other = givens[ends[0]].text
    if heard is not None and {other}.issuperset(question.unplaced):
        kept = {n: h for n, h in givens.items() if n != "change"}
        question.givens, question.swaps, question.unplaced = kept | {name: heard}, [], []


# ── what somebody reckons ──


def _reckoned(chart: Chart, question: Question, topics: Topics) -> None:
    """A few millimetres that somebody said, beside the length of the piece."""
    said = [r for r in quantities(chart, 0, len(chart.words)) if isinstance(r.value, Length) and r.kind == "length"]
    short = [r for r in said if _inches(r) <= MOST_GAP]
    long = [r for r in said if _inches(r) >= LEAST_PIECE]
    if len(long) != 1 or len(short) != 1 or len(said) != 2 or not _told(chart, short[0]):
        return
    length = heard_as(chart, next(p for p in topics[question.topic] if p.name == "length"), long[0], True)
    text = chart.said(short[0].start, short[0].end)
    if length is None or question.claim or not {text, length.text}.issuperset(question.unplaced):
        return
    question.givens["length"] = length
    question.unplaced = []
    question.missing = [name for name in question.missing if name != "length"]
    question.swaps = [swap for swap in question.swaps if swap.get("length") == length]
    question.claim = Claim(short[0].value, text, "same", short[0].start, short[0].end)


def _ends_of_the_year(question: Question) -> None:
    """Of two ends of the year the one beside a hottest is the coldest, whichever way it was read; no other way goes on then."""
    for other, name in (("hottest", "coldest"), ("coldest", "hottest")):
        for way in (question.givens, *question.swaps):
            loose = [end for end in ("extreme", "opposite") if end in way]
            if other in way and name not in way and len(loose) == 1:
                way[name] = way.pop(loose[0])
    question.swaps = [swap for swap in question.swaps if swap != question.givens]


def _told(chart: Chart, reading: Reading) -> bool:
    return not _SAYS.isdisjoint(chart.words[max(0, reading.start - _SAID) : reading.start])


def _inches(reading: Reading) -> float:
    assert isinstance(reading.value, Length)
    return float(reading.value.to("in").value)
