"""Numbers that may be left out where a question has no place for them and is whole without: what is in the shed, what it
used to be, what the truck takes.

Each may be wanted after all ("40 in the shed, how many more do I need"), so none goes from a sentence that asks for more.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from functools import reduce
from itertools import pairwise
from operator import or_
from typing import Any

from intents import by_the_way
from intents.chart import Chart, once, quantities, span
from intents.its_answer import CUES as GIVEN
from intents.its_answer import its_answer
from intents.of_doings import CUES as DOINGS
from intents.of_doings import DID, counted_doings, left_in_truck, of_doings, sworn
from intents.of_other_things import CUES as OTHERS
from intents.of_other_things import of_his_place, of_other_things, two_named
from intents.of_somebody import CUES as SOMEBODY
from intents.of_somebody import of_somebody, priced_each
from intents.question import Question
from intents.reading import Reading
from intents.remarks import ASKING, ENDS, HELD, clauses, up_to_stop
from intents.superseded import may_be_superseded, of_others, superseded
from intents.told_aside import CUES as ASIDE
from intents.told_aside import USELESS, of_no_use, told_aside
from solvers.quantities import Angle, Length, Money, Percent, Temperature, Weight
from solvers.sums import Sum

HAVE = frozenset("have has had got i've we've i'd there theres they've yard".split())
KEPT = frozenset(
    "truck van shed yard garage barn trailer stacked leftover leftovers"
    " stock hand pile start cab lorry rack ready bucket basement loft".split()
)
_HELPERS = frozenset(("helper", "helpers", "apprentice", "apprentices"))
_GOODS = _HELPERS | frozenset(
    "boards board sticks stick lengths panels panel rolls roll boxes box tubes tube sheets battens straps pieces clips bundles"
    " screws nails squares steps tins soakers shingles tiles".split()
)
_OLD = frozenset("old existing previous original".split())
_WAS = frozenset(
    "was were had used paid only got bought went did tried ended we'd i'd they'd showed came stood ran took cost ordered".split()
)
_PAST = frozenset(
    "contractor roofer carpenter week month year time job house load box order night fellow lot crew bloke guy owner builder"
    " man pad slab deck frame fence porch barn pergola gate".split()
)
_IS = frozenset(("is", "are"))
_IT_IS = frozenset((verb, this) for this in ("that", "it", "those") for verb in _IS)
_SINCE = frozenset(("but", "now", "so"))  # where a clause leaves what was
_ENDS_TOO = frozenset("ends sides edges end side edge".split())  # both of these are of the job, and no more of what was
_SAME = frozenset("same like as again match matching than twice half double still both too also".split())
_TRUCKS = frozenset("truck van trailer lift hoist lorry pickup rope ropes scaffold crane".split())
_TAKES = frozenset("takes carries holds rated good".split())
_WEIGHED = frozenset("pound pounds lb lbs kg kilo kilos".split())
_WEIGHS = frozenset("weigh weighs weight heavy heaviest load lift lifts carry".split())  # what it weighs may be asked
FIXED = frozenset("screws nails staples clips fasteners".split())
_MORE = frozenset("more another extra order buy short enough left still remaining besides spare over fetch".split())
_OPENED = frozenset("windows doors openings corners runs".split())
_ALL = frozenset("altogether total all".split())
_COMES = (["comes", "to"], ["come", "to"], ["total", "of"], ["up", "to"], ["total", "is"], ["runs", "making"], ["coming", "to"])
_SUMS_UP = frozenset("come comes coming".split())
_PACKS = frozenset("box boxes bag bags bundle bundles tub tubs pack packs".split())
_PACKED = {(pack, "of") for pack in ("box", "bag", "tub", "pack", "bundle")}
_TIMES = frozenset("each every apiece both wall walls per cut sides out net less minus".split())  # what may be taken so often
_SOLD_BY = frozenset("kilo kg pound lb box tube stick sheet bag roll bundle length board pack tin".split())
_POCKETS, _OWES, _OWED = frozenset("pocket pockets wallet bank kitty".split()), frozenset("owe owes owed owing".split()), 5
SUMS, POSSIBLE = ("tape arithmetic", "conversion"), 0.1  # and the share from which on a line may be one
LIKELY = 0.5  # share from which on a cost is asked, though no word says so: what does the cedar come to
_MONEY = frozenset("dollar dollars buck bucks cents quid $ £ €".split())
_COSTS = frozenset(
    "cost costs price prices priced bill pay spend money much worth charge budget afford cheap cheaper cheapest invoice total"
    " save saving owe quote".split()
)
# Of each pair one will do: a question that was given both has one too many.
_EITHER = {
    "sloped length": ("run", "rise"), "cladding boards": ("exposure", "courses"),
    "arc": ("rise", "radius"), "cost": ("area", "count"),
    "course layout": ("exposure", "count"),
    "weight": ("area", "count"), "equal spacing": ("count", "gap"), "vent area": ("area", "length"),
    "thermal movement": ("start", "change", "swing"), "wood movement": ("change", "way", "wet", "dry"),
    "vent opening": ("length", "gap"), "right triangle": ("rise", "run", "slope"),
}  # fmt: skip
_BILLED = frozenset("cost costs bill pay spend money charge budget afford total save owe".split())
_SIZED = frozenset(
    "swell swells shrink shrinks grow grows move moves movement drop drops fall falls lower longer shorter wider narrower higher"
    " hold holds vent free air".split()
)
_CUES = (
    _MONEY | _WEIGHED | _ALL | KEPT | _OLD | _TAKES | FIXED | _OPENED | _HELPERS | _PACKS | by_the_way.CUES
    | _POCKETS | _OWES | SOMEBODY | DOINGS | OTHERS | ASIDE | USELESS | GIVEN | _SOLD_BY | frozenset(("last", "yesterday"))
)  # fmt: skip


def sums_all(chart: Chart, questions: list[Question]) -> bool:
    """Whether the line is a sum told with "times" that takes every number of it, of which none may go."""
    first = next(iter(questions), None)
    if first is None or first.topic != "tape arithmetic" or not first.complete or "times" not in chart.words:
        return False
    heard = first.givens.get("sum")
    inside = (heard.start <= token.start < heard.end for token in chart.tokens if token.text.isdecimal()) if heard else ()
    return heard is not None and all(inside)


def left_out(chart: Chart, taken: Question | None = None) -> Chart | None:
    """The sentence without the quantities that may be left out; None where there are none.

    From a question that has `taken` them all, only those may go that were told by the way, or of what was, and that it took.
    """
    words = chart.words
    if _CUES.isdisjoint(words) and not may_be_superseded(words) and not two_named(words):
        return None
    found = [
        reading for start, end in clauses(words) if chart.numbers & span(start, end)
        for reading in quantities(chart, start, end)
        if (_may_go(chart, (start, end), reading) if taken is None else _took(chart, (start, end), reading, taken))
    ]  # fmt: skip
    besides = of_others(chart) | told_aside(chart) | of_no_use(chart) | its_answer(chart) if taken is None else 0
    mask = reduce(or_, (span(r.start, r.end) for r in found), superseded(chart) | besides)
    return without(chart, mask) if mask else None


def does_as_well(first: Question, less: Question) -> bool:
    """Whether a question is another with nothing more, and what it does without is told by another given."""
    if first.topic == "cost" != less.topic and "price" in first.givens:
        return True  # what it was paid for is asked of nothing: cost me 180, what's the pitch
    if less.topic != first.topic or not less.givens.keys() <= first.givens.keys() or isinstance(_sum_of(first), Sum):
        return False  # a sum without one of its lengths is another
    gone, pair = first.givens.keys() - less.givens.keys(), {*_EITHER.get(first.topic, ())}
    return gone <= pair and (not gone or not pair.isdisjoint(less.givens))


def takes_less(chart: Chart, first: Question, less: list[Question]) -> bool:
    """Whether a question that took a number in whose place another stands is whole without: it was 11.50, now it's 13."""
    best = next(iter(less), None)
    if best is None or not superseded(chart) or best.topic != first.topic or not best.complete or best.swaps or best.rival:
        return False
    best.lacking = first.lacking
    gone = [first.givens[name].value for name in first.givens.keys() - best.givens.keys()]
    return best.givens.keys() <= first.givens.keys() and not any(isinstance(value, Percent | Temperature) for value in gone)


def _sum_of(question: Question) -> Any:
    given = question.givens.get("sum")
    return given.value if given is not None else None


def price_gone(less: Chart, question: Question) -> bool:
    """Whether a cost was worked from a number that is no money, the money that was said being left out; or one lot of
    several was, which all cost or weigh something: 3 rolls at 149 and 12 tubes at 8.50."""
    if question.topic in ("cost", "weight") and _lots(less) > 1:
        return True
    price = question.givens.get("price")
    said = not _MONEY.isdisjoint(less.words)
    return said and price is not None and not any(r.kind == "money" for row in less.readings for r in row)


def _lots(chart: Chart) -> int:
    """How many times so many things at so much each are told."""
    said = [at for at, word in enumerate(chart.words) if word[:1].isdigit() or chart.numbers >> at & 1]
    ats = [at for at, word in enumerate(chart.words) if word in ("at", "@") and at + 1 in said]
    return sum(not {at - 2, at - 3}.isdisjoint(said) and at - 1 not in said for at in ats)


def without(chart: Chart, mask: int) -> Chart:
    """The sentence as if the quantities of these tokens had not been said; what their words name is still named."""
    rows = [[r for r in row if not mask & span(r.start, r.end)] for row in chart.readings]
    hits = [hit for hit in chart.hits if not (hit.mask & mask and (hit.found or hit.mask & ~mask))]
    weighs, known, numbers = chart.weighs & ~mask, chart.known & ~mask, chart.numbers & ~mask
    gone = {"gone": chart.kept.get("gone", 0) | mask, "whole": chart.kept.get("whole", chart)}
    fresh: dict[str, Any] = {"heard": {}, "sure": {}, "kept": gone, "rows": []}
    return replace(chart, readings=rows, hits=hits, weighs=weighs, known=known, numbers=numbers, **fresh)


def _took(chart: Chart, place: tuple[int, int], reading: Reading, taken: Question) -> bool:
    """Whether a question took for one of its own what was told by the way."""
    start, end = chart.tokens[reading.start].start, chart.tokens[reading.end - 1].end
    mine = any(given.start <= start and end <= given.end for given in taken.givens.values() if given.end > given.start)
    return mine and _told_besides(chart, place, reading)


def _told_besides(chart: Chart, place: tuple[int, int], reading: Reading) -> bool:
    words, clause = chart.words, chart.words[place[0] : place[1]]
    if by_the_way.set_aside(words, reading) or (_COSTS.isdisjoint(words) and _price_of_one(words, reading)):
        return True
    if clause[0] in ASKING:
        return False
    was = reading.kind in ("number", "plural") and _used_to_be(words, place, reading)
    told = was or of_his_place(words, place, reading) or _somebodys(words, reading)
    if not told and not DID.isdisjoint(words):
        told = counted_doings(words, place, reading) or left_in_truck(words, place, reading) or sworn(words, place, reading)
    if told or not _may_be_by_the_way(chart):
        return told
    return by_the_way.by_the_way(words, place, reading, frozenset(words[: place[0]] + words[place[1] :]))


@once
def _may_be_by_the_way(chart: Chart) -> bool:
    return by_the_way.may_be(chart.words)


def _price_of_one(words: Sequence[str], reading: Reading) -> bool:
    """Whether a number is what a kilo or a box costs: stainless at | 14 a kilo."""
    led = words[reading.start - 1 : reading.start] in (["at"], ["for"]) and reading.kind == "number"
    after = words[reading.end : reading.end + 2]
    return led and after[:1] in (["a"], ["per"], ["the"]) and not _SOLD_BY.isdisjoint(after[1:])


def _somebodys(words: Sequence[str], reading: Reading) -> bool:
    """Whether it is money that somebody has on him or owes: $300 in my pocket, I owe the yard 40."""
    if reading.kind not in ("money", "number") or (_POCKETS.isdisjoint(words) and _OWES.isdisjoint(words)):
        return False
    before, after = words[max(0, reading.start - _OWED) : reading.start], words[reading.end : reading.end + _OWED]
    return not _POCKETS.isdisjoint(up_to_stop(list(after))) or not _OWES.isdisjoint(up_to_stop(list(before)[::-1]))


def _may_go(chart: Chart, place: tuple[int, int], reading: Reading) -> bool:
    words = chart.words
    clause = words[place[0] : place[1]]
    sums = any(chart.likely.get(topic, 0) >= POSSIBLE for topic in SUMS)
    if _told_besides(chart, place, reading) or of_doings(words, place, reading, sums):
        return True
    numbered = reading.kind in ("number", "plural")
    if numbered and _opened(words, reading) and _told_in_all(chart) and _TIMES.isdisjoint(words):
        return True
    if clause[0] in ASKING:
        return False
    if _said_again(chart, reading) or of_somebody(words, place, reading) or of_other_things(words, place, reading):
        return True
    taken = not _TRUCKS.isdisjoint(clause[:2]) and not _TAKES.isdisjoint(clause)
    if numbered:
        if taken and HELD.isdisjoint(words) and words[reading.start - 1 : reading.start] in (["for"], ["to"], ["at"]):
            return True  # the rope's good for 200
        return _at_hand(words, place, reading) or priced_each(words, place, reading)
    if _used_to_be(words, place, reading):
        return True
    if isinstance(reading.value, Weight):
        after = words[reading.end : reading.end + 1]
        beside = after != [] and _WEIGHS.isdisjoint(words)  # a 90 pound window
        if after == ["per"] and not _SUMS_UP.isdisjoint(words):
            return False  # at 13 lb a square foot, what does it come to
        return (taken or beside) and HELD.isdisjoint(words)
    if isinstance(reading.value, Money):
        asked = _COSTS if _SIZED.isdisjoint(words) else _BILLED  # how much does it swell, at four bucks a foot
        return asked.isdisjoint(words) and chart.likely.get("cost", 0) < LIKELY  # they're $9 each, how many
    nails = isinstance(reading.value, Length) and not FIXED.isdisjoint(clause[:2])
    return nails and clause[1:3].count("are") == 1 and reading.end == place[1]  # the screws are 3 inch


def _opened(words: Sequence[str], reading: Reading) -> bool:
    """Whether a number counts windows or runs; 9 windows, but only | 4 get trimmed."""
    only = words[reading.start - 1 : reading.start] == ["only"] and not _OPENED.isdisjoint(words[: reading.start])
    return only or not _OPENED.isdisjoint(words[reading.end : reading.end + 1])


def _said_again(chart: Chart, reading: Reading) -> bool:
    """Whether a bare number is one that was said with its unit before: 15 degrees, he bends everything at | fifteen."""
    if reading.kind != "number" or chart.words[reading.start - 1 : reading.start] not in (["at"], ["to"], ["by"], ["on"]):
        return False
    before = (r for row in chart.readings[: reading.start] for r in row if isinstance(r.value, Angle | Percent | Temperature))
    return any(r.value.value == reading.value.value and r.end <= reading.start for r in before)  # type: ignore[union-attr]


def _told_in_all(chart: Chart) -> bool:
    """Whether a length is told of all of them together: 108 ft altogether, it comes to 54 m."""
    for row in chart.readings:
        for reading in (r for r in row if isinstance(r.value, Length) and r.kind == "length"):
            after, start = up_to_stop(chart.words[reading.end : reading.end + 4]), reading.start
            before = chart.words[max(0, start - 3) : start]
            if not _ALL.isdisjoint(after) or before[-2:] in _COMES or "altogether" in before:
                return True  # altogether that's 104 feet
    return False


def _at_hand(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    """Whether a number is of what somebody has lying by, and nothing asks what is wanted besides."""
    nearby, clause = frozenset(words[reading.end : reading.end + 2]), words[place[0] : place[1]]
    if _used_to_be(words, place, reading):
        return True
    packed = tuple(words[max(0, reading.start - 2) : reading.start]) in _PACKED  # I've a box of 50
    last = max((at for at, word in enumerate(words) if word in ("how", "what")), default=0)
    if packed and not HAVE.isdisjoint(clause) and (_MORE | _PACKS).isdisjoint(words[last:]):
        return True
    several = reading.kind == "plural" or words[reading.end : reading.end + 1] == ["s"]  # 75s in the van
    if (_GOODS.isdisjoint(nearby) and not several) or HAVE.isdisjoint(clause):
        return False
    kept = not KEPT.isdisjoint(clause) or ("left", "over") in pairwise(clause)
    kept = kept or not _HELPERS.isdisjoint(nearby) or {"left", "last"} <= set(clause)
    asks = not (ASKING - _IS).isdisjoint(clause) or not _IT_IS.isdisjoint(pairwise(clause))
    others = words if asks else [*words[: place[0]], ",", *words[place[1] :]]
    return kept and _MORE.isdisjoint(_asked(others))


def _used_to_be(words: Sequence[str], place: tuple[int, int], reading: Reading) -> bool:
    """Whether a clause tells what was, and nothing says that it is still so."""
    if _WAS.isdisjoint(words):
        return False
    start = max((at + 1 for at in range(place[0], reading.start) if words[at] in _SINCE), default=place[0])
    end = next((at for at in range(reading.end, place[1]) if words[at] in _SINCE), place[1])
    clause = words[start:end]
    past = "last" in clause and not _PAST.isdisjoint(clause)
    old = not _OLD.isdisjoint(clause[:2]) or "yesterday" in clause
    if not (past or old) or _WAS.isdisjoint(clause):
        return False
    still = {
        word for before, word, after in zip(("", *words), words, (*words[1:], ""), strict=False)
        if not ((word == "both" and after in _ENDS_TOO) or (word == "too" and before in _ENDS_TOO))
    }  # fmt: skip
    return (_SAME - {"than"}).isdisjoint(still) and "than" not in clause


def _asked(words: Sequence[str]) -> set[str]:
    """The words of the sentences that ask something."""
    asked: set[str] = set()
    start = 0
    for end in (*(i for i, word in enumerate(words) if word in ENDS - {","}), len(words)):
        if not ASKING.isdisjoint(words[start:end]):
            asked.update(words[start:end])
        start = end + 1
    return asked
