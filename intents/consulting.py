"""Where the grammar's reading and the second reader's are held against each other, and which one goes on.

A sentence that a rule fits whole goes on as the rule reads it, unless the second reader is all but sure that it is about
something else; where it would hand out the quantities another way, both ways go on, and the conversation asks where they
differ. Where no rule fits whole, the likeliest topic is read again with each quantity in its likeliest role.
"""

from __future__ import annotations

from collections.abc import Callable, Mapping
from functools import reduce
from itertools import pairwise
from operator import or_
from typing import Any

from intents import second_sums
from intents.chart import Chart
from intents.encoder import likely_of
from intents.features import of_sentence
from intents.learned import Learned
from intents.not_asked import halves_unsaid, into_itself
from intents.not_outside import ours_all_the_same
from intents.phrases import Phrases
from intents.question import Heard, Question, Reading
from intents.reading import Dims
from intents.searching import manner_of
from intents.second_reader import Second, read_again, spans_of, tokens_of, told_of
from intents.second_sums import AGREED, AGREED_AND_SURE
from intents.told_twice import other_way_round
from solvers.quantities import Length, Percent, Quantity, Ratio, Temperature, TemperatureChange
from solvers.slots import Layer, Parameter

CERTAIN = 0.9  # the share from which on the second reader's topic goes before a rule that fits
LIKELY = 0.2  # the share from which on a sentence that no rule fits is about something else
READ = 0.3  # the share from which on a topic that can be read whole is answered
POSSIBLE = 0.15  # and from which on it is asked about
DOUBTED = 0.2  # a topic less likely than this is doubted though a rule fits
NO_QUESTION = 0.4  # the share from which on a sentence may be no question for this program
ELSEWHERE = 0.6  # the share from which on a sentence is no question for this program, where a rule hardly fits
PLAINLY = 5.5  # score from which on a rule goes on though the sentence is no question for this program, unless that is certain
WHOLLY = 9.0  # score from which on a rule that fits is not doubted
ALL_BUT_WHOLLY = 7.0  # score from which on it stands though its lengths make a likelier sum
SUMMED = 0.9  # how sure a sum that no rule fits must be, to be answered: of those so sure, one in a hundred is another sum
ROLES = 0.8  # how sure other roles must be, to be set beside those of a rule that fits
SETTLED, NEVER = 0.5, 0.2  # the share from which on the topic is settled, and of one that then is not asked about
NONE_KNOWN = 99  # more pieces than any topic lacks
MOSTLY, HARDLY = 0.6, 0.05  # the share from which on another topic goes first where the rule's own is next to none
ALL_BUT_CERTAIN = 0.7  # the share from which on a topic is believed that no word names: 50 F 90 percent
SELDOM = 0.1  # and of one that such a topic goes before, where it tells no less of the line
CONVERSION = "conversion"
_NO_PART = (Percent, Ratio, Temperature, TemperatureChange)  # of a sum of the tape
OUTSIDE = "outside"  # what is no question for this program
BEYOND_DOUBT = 0.999  # how sure the roles must be where the grammar finds that they could be swapped
CUT_LIST, _REMAINS = "cut list", frozenset("remaining remains remainder leftover drop offcut".split())
_ABOUT = {"trim round openings": frozenset("window windows door doors opening openings".split())}
_COUNTED_ALIKE = {"cladding boards", "take-off"}  # the boards of a wall come to the same in both
NAMED = 2.0  # score from which on what a rule lacks is asked for, unlikely as it is
HARDLY_FITS = 1.0  # score below which a rule hardly fits
CENTS = 3  # letters of what may be cents: .25
MAYBE = 0.4  # the share from which on a sum is asked about
SAID = 2  # words beside the numbers, from which on they can name a topic that no rule names
UNNAMED = frozenset(("layer", "stud"))  # layers that may be a penetration
AHEAD = 3.0  # score of a reading by the second reader over the grammar's
_WARMTH = frozenset("temperature temperatures temp temps".split())  # which no sum is of

Topics = Mapping[str, tuple[Parameter, ...]]


def consult(reading: Reading, chart: Chart, phrases: Phrases, topics: Topics, model: Learned) -> None:
    """Put the reading's questions right by what sentences like this one meant."""
    # What nobody has learned of, and half of whose words tell nothing, is no question: nails are spoken of for much else.
    learned = [q for q in reading.questions if q.topic in model.topics]
    near = min((len(q.missing) for q in learned if q.score > 0), default=NONE_KNOWN)
    fits = [q for q in reading.questions if not (q.lacking or (q.missing and len(q.missing) >= near))]
    stock = _from_stock(chart)
    fits = [q for q in (*learned, *fits) if not (stock and q.topic == second_sums.TOPIC)]
    reading.questions = [q for q in reading.questions if not (q.missing and _unnamed(chart, q.topic))]
    several = any(_takes_several(q) for q in reading.questions)
    reading.questions = [q for q in reading.questions if q in fits and not (several and q.topic == second_sums.TOPIC)]
    top = next((question for question in reading.questions if question.score > 0), None)
    if top is not None and ((top.topic not in model.topics and not top.unplaced) or top.claim):
        return
    likely = likely_of(chart, top) or model.likely(of_sentence(chart, phrases))
    reading.elsewhere = likely.get(OUTSIDE, 0) >= ELSEWHERE
    best, *others = sorted(likely, key=likely.__getitem__, reverse=True)[:3]
    reading.trace = [f"second reader: {', '.join(f'{topic} {likely[topic]:.2f}' for topic in (best, *others))}"]

    def again(topic: str) -> Second | None:
        first = next((q for q in reading.questions if q.topic == topic), None)
        if topic == second_sums.TOPIC and first is not None and first.whole:
            return Second(first, 1.0)
        if topic == second_sums.TOPIC:
            none = not _WARMTH.isdisjoint(chart.words) or _from_stock(chart)
            return None if none else second_sums.sum_again(chart, phrases, model)
        return read_again(chart, phrases, model, topic, topics[topic], first) if topic in topics else None

    def other_roles(topic: str) -> Second | None:
        """Again, where that is as sure as it must be to be set beside a rule that fits."""
        if topic == second_sums.TOPIC:
            return again(topic)
        first = next((q for q in reading.questions if q.topic == topic), None)
        return read_again(chart, phrases, model, topic, topics[topic], first, ROLES) if topic in topics else None

    if top is not None and top.plain:
        if top.topic == second_sums.TOPIC:
            top.swaps += second_sums.otherwise(chart, phrases, model, top)
        known = not top.swaps and _all_learned(top, model)
        _other_roles(chart, phrases, top, topics, other_roles if known else lambda topic: None)
        most = CERTAIN if top.score >= PLAINLY else ELSEWHERE
        alike = {best, top.topic} == _COUNTED_ALIKE and not top.unplaced
        if best == OUTSIDE and likely[best] >= most and not ours_all_the_same(chart, top):
            reading.questions = []
        elif best == OUTSIDE and likely[best] >= NO_QUESTION and likely[top.topic] < DOUBTED and top.score < WHOLLY:
            top.lacking = int(not ours_all_the_same(chart, top))
        elif best != top.topic and (best in topics or best == OUTSIDE):  # talk is told by its own rules
            _other_topic(chart, reading, top, again(best), likely[top.topic], likely[best], alike)
    elif best in topics:
        other = top is not None and best != top.topic and likely.get(top.topic, 0) >= READ and likely[best] < CERTAIN
        if not (other and _lacks_only(top)):
            _read_again(chart, reading, top, again(best), likely)
        _stands(top, best, likely)
    elif best == OUTSIDE and likely[best] >= LIKELY and not (chart.numbers and _asks_for_more(top, likely)):
        reading.questions = []
    if likely[best] >= SETTLED:
        _without_others(reading, best, likely)
    for question in reading.questions:
        if not question.manner and all(question is not other for other in reading.unaided):
            question.manner = manner_of(chart, phrases, reduce(or_, (tokens_of(chart, h) for h in question.givens.values()), 0))


def _stands(top: Question | None, best: str, likely: dict[str, float]) -> None:
    """A rule of the topic that is settled, which takes all that was said, stands though a word of it was not said."""
    if top is not None and top.topic == best and likely[best] >= SETTLED and top.complete and not top.swaps:
        top.lacking = 0


def _asks_for_more(top: Question | None, likely: dict[str, float]) -> bool:
    """Whether a rule lacks a value, which is asked for, and its topic is not much less likely than none here."""
    if top is None or not top.missing or top.swaps or top.lacking:
        return False
    share, named = likely.get(top.topic, 0), top.score >= NAMED and likely[OUTSIDE] < SETTLED
    return (share > HARDLY and named) or (not top.unplaced and share >= DOUBTED and likely[OUTSIDE] < ALL_BUT_CERTAIN)


def _from_stock(chart: Chart) -> bool:
    """Whether stock is told by its length in metres, which no sum takes: from 4.8s."""
    return any(r.kind == "length" and chart.words[r.end - 1] == "s" for row in chart.readings for r in row)


def _other_roles(
    chart: Chart, phrases: Phrases, top: Question, topics: Topics, again: Callable[[str], Second | None]
) -> None:  # fmt: skip
    """A rule fits: another way to hand out its quantities goes on beside it, where it is likely, or as likely by the words.

    Where words beside every quantity tell its one role, the second reader is not asked: of 2,000 such questions it put
    another reading beside ten, none of them better.
    """
    turned = other_way_round(chart, phrases, top, {p.name: p for p in topics[top.topic]})
    if turned is None and _read_one_way(chart, top) and _told_outright(chart, phrases, top):
        return
    second = again(top.topic)
    if turned is not None and (second is None or second.sure < BEYOND_DOUBT or _differ(top, second.question)):
        top.swaps.append(turned)
    if (
        second is not None and second.sure >= ROLES and second.question.whole
        and _differ(top, second.question) and not _drops(chart, top, second.question)
    ):  # fmt: skip
        if all(_values(swap) != _values(second.question.givens) for swap in top.swaps):
            top.swaps.append(second.question.givens)
        top.rival = _told_outright(chart, phrases, top)


def _without_others(reading: Reading, best: str, likely: dict[str, float]) -> None:
    """Where sentences like this one are about the topic that the rules put first, topics they are never about go."""
    first = next(iter(reading.questions), None)
    if first is not None and first.topic == best and not first.rival:
        reading.questions = [q for q in reading.questions if q is first or q.rival or likely.get(q.topic, 0) >= NEVER]


def _other_topic(
    chart: Chart, reading: Reading, top: Question, second: Second | None, mine: float, other: float, alike: bool = False
) -> None:  # fmt: skip
    """A rule fits, but sentences like this one are about something else; `alike`: which comes to the same."""
    if alike and (second is None or not second.question.whole):
        return
    if top.topic == CONVERSION and "to" in top.givens and (second is None or second_sums.of_one(second.question)):
        return  # one number, and what it is to be put in
    if second is not None and _is_left_of_one(chart, top, second):
        second.question.score, reading.questions = top.score, [second.question]
        return
    hardly = other >= MOSTLY and mine < HARDLY  # then the rule's reading is never given as it is
    if second is not None and second.question.topic == second_sums.TOPIC and second.sure < SUMMED:
        _unsure_sum(chart, reading, top, second, mine, other)
        return
    if second is None or not second.question.whole:
        asks = next((q for q in reading.questions if second is not None and q.topic == second.question.topic), None)
        asks = asks or (second.question if second is not None else None)
        if other >= CERTAIN and mine < HARDLY and _lacks_only(asks):
            reading.questions = [asks]  # type: ignore[list-item]
            asks.score = max(asks.score, top.score)  # type: ignore[union-attr]
        else:
            _doubt(reading, top, mine, other)
        return
    drops = _drops(chart, top, second.question, counts=False)
    if second.question.topic == CONVERSION and top.topic == second_sums.TOPIC and _drops(chart, top, second.question):
        return  # how many mm is 12 feet less 3: no part of a sum is let fall
    likelier = other >= MOSTLY and mine < SELDOM and second.sure >= ROLES and {*top.words} <= {*second.question.words}
    if (other >= CERTAIN or likelier or (hardly and second.sure >= ROLES)) and not drops:
        second.question.score = top.score
        reading.questions = [second.question]
    elif other >= CERTAIN or (mine < DOUBTED and _told(top) < (WHOLLY if other >= NO_QUESTION else PLAINLY)):
        second.question.score, second.question.rival = top.score, True
        top.lacking = top.lacking or int(mine < HARDLY and top.score < HARDLY_FITS)
        reading.questions = [top, second.question]
    elif second.question.topic == second_sums.TOPIC and second.sure == AGREED and _may_be_a_sum(chart, top, mine, other):
        _ask_which(reading, top, second.question)
    elif not alike:
        _doubt(reading, top, mine, other)


def _unsure_sum(chart: Chart, reading: Reading, top: Question, second: Second, mine: float, other: float) -> None:
    """A sum that is not sure enough to be answered: asked about, alone or beside the rule's reading."""
    if other >= MOSTLY and mine < HARDLY and second.sure >= SETTLED:
        second.question.lacking, second.question.score = 1, top.score
        reading.questions = [second.question]
    elif other >= MOSTLY and mine < HARDLY:
        top.lacking = 1
    elif second.sure >= SETTLED and _may_be_a_sum(chart, top, mine, other):
        _ask_which(reading, top, second.question)


def _is_left_of_one(chart: Chart, top: Question, second: Second) -> bool:
    """Whether what is left of a board is asked, and not how many of them the pieces take."""
    if top.topic != CUT_LIST or second.question.topic != second_sums.TOPIC or second.sure < AGREED:
        return False
    return not _REMAINS.isdisjoint(chart.words) and ("how", "many") not in pairwise(chart.words)


def _may_be_a_sum(chart: Chart, top: Question, mine: float, other: float) -> bool:
    """Whether a cut list may be what is left of one board; a size by another is in no sum."""
    return (
        mine < NO_QUESTION <= other and top.score < ALL_BUT_WHOLLY
        and not any(isinstance(r.value, Dims) for row in chart.readings for r in row)
        and not any(isinstance(heard.value, _NO_PART) for heard in top.givens.values())
    )  # fmt: skip


def _unnamed(chart: Chart, topic: str) -> bool:
    """Whether a line says nothing of what a topic is about, and so asks for none of it: how many teeth for a cut in trim."""
    return topic in _ABOUT and _ABOUT[topic].isdisjoint(chart.words)


def _takes_several(top: Question) -> bool:
    """Whether the pieces of a cut list are longer in all than one stick, of which then nothing can be left."""
    pieces, stock = (top.givens.get(name) for name in ("pieces", "stock_length"))
    if top.topic != CUT_LIST or pieces is None or stock is None or not isinstance(stock.value, Length):
        return False
    return bool(sum(piece.count * piece.length.to("in").value for piece in pieces.value) > stock.value.to("in").value)


def _ask_which(reading: Reading, top: Question, other: Question) -> None:
    top.lacking = other.lacking = 1
    other.score = top.score
    reading.questions = [top, other]


def _told(top: Question) -> float:
    """The score of a rule's reading; a sum takes in every word of its sentence, so that its score tells nothing."""
    return 0.0 if top.topic == second_sums.TOPIC else top.score


def _doubt(reading: Reading, top: Question, mine: float, other: float) -> None:
    """Ask whether the rule's topic is meant where sentences like this one are hardly ever about it, nor read whole otherwise."""
    hardly = mine < HARDLY and top.score < HARDLY_FITS
    if hardly or (other >= MOSTLY and (mine < HARDLY or (mine < DOUBTED and _told(top) < PLAINLY))):
        for question in reading.questions:
            question.lacking = question.lacking or 1


def _read_again(
    chart: Chart, reading: Reading, top: Question | None, second: Second | None, shares: dict[str, float]
) -> None:  # fmt: skip
    """No rule fits whole."""
    if second is None:
        return
    question = second.question
    if into_itself(question) or halves_unsaid(chart, top, question):
        return
    likely, mine = shares[question.topic], shares.get(top.topic, 0) if top else 0
    same = top is not None and top.topic == question.topic
    if same and top.swaps and second.sure < BEYOND_DOUBT:  # type: ignore[union-attr]
        return
    if same and _out_of_list(top, question):
        return
    said = (chart.weighs & ~chart.numbers).bit_count()
    unnamed = top is None and said < SAID
    turned = question.topic == CONVERSION and "value" in question.givens  # into what, the words tell, or nothing does
    if question.topic == second_sums.TOPIC:
        least = MAYBE if said >= SAID else MOSTLY if said and second.sure >= AGREED_AND_SURE else CERTAIN
        if likely < least or second.sure < SETTLED:
            return
        priced = any(len(word) > CENTS and word[-CENTS] == "." for word in chart.words)  # 64 clips at 7.25 each
        open_ = likely < MOSTLY and (second.sure < AGREED_AND_SURE or priced)
        question.lacking = int(second.sure < SUMMED or open_ or not said)
    elif unnamed and (likely < ALL_BUT_CERTAIN or turned):
        return
    elif question.whole:
        if not same and (likely < POSSIBLE or (2 * mine >= likely and top and top.complete and _drops(chart, top, question))):
            return  # the diagonal that was measured is none of a square check's, but it was said
        question.lacking = int(not same and (likely < READ or second.sure < ROLES or (unnamed and likely < CERTAIN)))
    elif not _may_lack(top if same else None, question, likely, CERTAIN if turned or (top and top.score > 0) else MOSTLY):
        return
    question.score = AHEAD + max(0.0, top.score if top else 0.0)
    reading.questions = [question]


def _may_lack(top: Question | None, question: Question, likely: float, least: float) -> bool:
    """Whether what a question lacks is asked for: less than `top`, the grammar's reading, lacks, or the topic is likely."""
    if top is None:
        return likely >= least
    return _less(question, top) or (top.score <= 0 and likely >= MOSTLY)


def _out_of_list(top: Question | None, question: Question) -> bool:
    """Whether what is missing is taken out of a list of named layers: "18 mm cladding and 25 mm battens" into the stud."""
    layers = top.givens.get("layers") if top is not None and _lacks_only(top) else None
    mine = question.givens.get("layers")
    if layers is None or mine is None or len(mine.value) >= len(layers.value):
        return False
    return all(isinstance(layer, Layer) and layer.what not in UNNAMED for layer in layers.value)


def _lacks_only(question: Question | None) -> bool:
    """Whether a rule takes all that was said, and only a value is missing: that is asked for."""
    return question is not None and bool(question.missing) and not (question.unplaced or question.swaps or question.lacking)


def _read_one_way(chart: Chart, question: Question) -> bool:
    """Whether no quantity is in a list, nor could be another, longer or shorter: forty foot one | to one fifty."""
    if any(isinstance(heard.value, tuple) for heard in question.givens.values()):
        return False
    numbers = numbers_in(chart, question)
    alone = {(r.start, r.end) for row in chart.readings for r in row
             if numbers >> r.start & 1 and isinstance(r.value, Quantity)}  # fmt: skip
    return spans_of(chart, question.givens.values()) >= alone


def _told_outright(chart: Chart, phrases: Phrases, question: Question) -> bool:
    """Whether the words beside every quantity tell the one role that it has."""
    told = told_of(chart, phrases, question.topic)
    said = ((n, heard) for n, heard in question.givens.items() if isinstance(heard.value, Quantity))
    return all(told.get(span) == {name} for name, heard in said for span in spans_of(chart, [heard]))


def _all_learned(question: Question, model: Learned) -> bool:
    """Whether the second reader knows the role of every quantity that a rule placed."""
    return all(model.knows(question.topic, n) for n, heard in question.givens.items() if isinstance(heard.value, Quantity))


def _less(question: Question, top: Question) -> bool:
    """Whether less is open than in the grammar's reading of the same topic."""
    mine, other = (len(q.missing) + len(q.unplaced) for q in (question, top))
    return mine < other


def _differ(top: Question, other: Question) -> bool:
    """Whether the same quantities go to other parameters; a reading that drops one is none."""
    mine, theirs = (_values(q.givens) for q in (top, other))
    return mine != theirs and len(theirs) >= len(mine)


def _drops(chart: Chart, top: Question, other: Question, counts: bool = True) -> bool:
    """Whether a number that has its place in the rule's reading is none in the other: the 0.6 of "0.6 of a foot".

    Without `counts` a lone whole number may go: "already cut three" is a remark.
    """
    mine, theirs = (numbers_in(chart, question) for question in (top, other))
    left = mine & ~theirs
    alone = left & ~(left << 1) & ~(left >> 1)
    for i, word in enumerate(chart.words):
        if not counts and alone >> i & 1 and "." not in word:
            left &= ~(1 << i)
    return bool(left)


def numbers_in(chart: Chart, question: Question) -> int:
    """Mask of the numbers of a question's givens."""
    return reduce(or_, (tokens_of(chart, heard) for heard in question.givens.values()), 0) & chart.numbers


def _values(givens: Mapping[str, Heard]) -> dict[str, Any]:
    return {name: _value(heard) for name, heard in givens.items()}


def _value(heard: Heard) -> Any:
    value = heard.value
    return (value.value, value.unit) if isinstance(value, Quantity) else str(value)
