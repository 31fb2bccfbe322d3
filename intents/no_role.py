"""Quantities that sentences like this one never use: "the wall below it is 9 foot", asked how tall the gable is.

Where the topic is hardly in doubt, and what was learned tells of each quantity whether it has a role, the question is read
again without those that have none. It is taken only where it then is whole in one way, and what was left out is said.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from functools import reduce
from itertools import pairwise
from operator import or_

from intents.chart import Chart, span
from intents.features import Mention, mentions
from intents.learned import NOTHING, Learned
from intents.left_out import without
from intents.not_of_it import not_of_it
from intents.number_words import SMALL, TENS
from intents.phrases import Phrases
from intents.question import Heard, Question
from intents.second_reader import MOST_MENTIONS, places_of, prepared, roles_of, tokens_of
from solvers.quantities import Length, Quantity
from solvers.slots import Parameter

# Topics in which one number more is no factor of the answer: their givens are the sizes of one thing.
TOPICS = frozenset((
    "roof angle", "pitch of an angle", "pitch from rise and run", "sloped length", "rise over a run", "rake length",
    "gable height", "hip or valley length", "miter for a corner", "rake return", "peak joint", "rake to level joint",
    "end cut along the rake", "plumb cut", "polygon", "corner in several pieces", "can my saw cut it", "how far open",
    "square check", "out of square", "right triangle", "arc", "course layout", "height of courses", "step at the rake",
    "balanced panels", "divide evenly", "marks on centre", "staggered joints", "strapping", "equal spacing", "gable courses",
    "compound cut", "angle off", "rounded pitch",
))  # fmt: skip
SUM, MUCH = "tape arithmetic", 8  # times as long as each of the others
LEAST_WORDS = 10  # of a sentence in which a question that is whole may hold a number too many
LIKELY, SETTLED = 0.4, 0.75  # how likely the topic must be, where words alone tell what is none of it, and where they do not
IDLE = 0.85  # how surely a quantity must be without a role, to be left out though it has a unit
USED = 0.5  # the most of that of a quantity which stays
_PART_OF = {("of", "it"), ("of", "that"), ("of", "them"), *(("off", what) for what in ("it", "that", "this", "them", "the"))}
_SOUNDED = frozenset(("two", "four", "eight", "one"))  # which may be other words, heard for numbers: two turn 38 degrees
_JOINS = frozenset("and an a - / point".split())
# With one of these a number may take another's place, be put to it, or multiply it.
_NUMBERED = frozenset((*SMALL, *TENS)) | frozenset("it it's its that make i the".split())
_TURNS = frozenset("no wait sorry scratch correction plus extra another twice double less minus instead rather".split())


def without_role(
    chart: Chart, phrases: Phrases, topics: Mapping[str, tuple[Parameter, ...]], model: Learned, questions: Sequence[Question]
) -> Chart | None:  # fmt: skip
    """The sentence without the quantities that have no role in what it is about; None where one may have or none has not."""
    topic = max(chart.likely, key=chart.likely.__getitem__, default="")
    if topic not in TOPICS or chart.likely[topic] < LIKELY or _turns(chart.words):
        return None
    if mask := not_of_it(chart, topic):
        return without(chart, mask)
    if chart.likely[topic] < SETTLED:
        return None
    first = next((question for question in questions if question.topic == topic), None)
    if first is not None and any(isinstance(heard.value, tuple) for heard in first.givens.values()):
        first = None
    told = _idle(shares_of(chart, phrases, topic, topics[topic], model, first), USED)
    if not (told[0] and told[1]):
        return None
    alone = _idle(shares_of(chart, phrases, topic, topics[topic], model), IDLE) if first is not None else told
    idle = (told, alone)  # with what the rules found, and without: of what both tell there is no doubt
    masks = {mask for mask, _ in idle}
    return without(chart, *masks) if len(masks) == 1 and masks != {0} and all(used for _, used in idle) else None


def _idle(shares: Sequence[tuple[Mention, float]], used: float) -> tuple[int, bool]:
    """The mask of the quantities that have no role, and whether any has one; no mask where of one it is not sure."""
    if any(used < share < IDLE for _, share in shares):
        return 0, False
    idle: dict[tuple[int, int], bool] = {}
    for mention, share in shares:
        place = mention.start, mention.end
        idle[place] = idle.get(place, True) and share >= IDLE
    return reduce(or_, (span(*place) for place, none in idle.items() if none), 0), not all(idle.values())


def shares_of(
    chart: Chart, phrases: Phrases, topic: str, parameters: tuple[Parameter, ...], model: Learned, first: Question | None = None
) -> list[tuple[Mention, float]]:  # fmt: skip
    """How surely each quantity has no role in a topic; none where words alone give one of its quantities, or there are many."""
    question, sentence = prepared(chart, phrases, topic, parameters, first)
    given = any(isinstance(heard.value, Quantity) for heard in question.givens.values())
    if given or len(sentence.found) > MOST_MENTIONS:
        return []
    likely = roles_of(sentence, model)
    if any(shares.keys() == {NOTHING} and _holds_lengths(chart, m) for m, shares in zip(sentence.found, likely, strict=True)):
        return []
    if any(tuple(chart.words[m.end : m.end + 2]) in _PART_OF for m in sentence.found):
        return []  # 2 feet of it is stone
    told = [(mention, shares[NOTHING]) for mention, shares in zip(sentence.found, likely, strict=True)]
    return [] if _pointed_at(told) or _runs_on(chart, told) or _in_choice(chart, phrases, topic, told) else told


def _runs_on(chart: Chart, told: list[tuple[Mention, float]]) -> bool:
    """Whether a quantity without a role may be a part of the next or the one before: fifty one and an | ate."""
    pairs = ((a, b) for (a, one), (b, other) in pairwise(told) if (one >= IDLE) != (other >= IDLE) and a.end <= b.start)
    return any(_JOINS.issuperset(chart.words[a.end : b.start]) for a, b in pairs)


def _pointed_at(told: list[tuple[Mention, float]]) -> bool:
    """Whether a quantity without a role says another again, and so tells something of it: what's the angle opposite the 27."""
    sizes = [(_size(mention), share >= IDLE) for mention, share in told]
    used = {size for size, idle in sizes if not idle}
    return any(idle and size in used for size, idle in sizes)


def _size(mention: Mention) -> object:
    value = mention.reading.value
    return value.value if isinstance(value, Quantity) else mention.start


def _in_choice(chart: Chart, phrases: Phrases, topic: str, told: list[tuple[Mention, float]]) -> bool:
    """Whether a quantity without a role is a word of what tells a choice: posts at the two ends."""
    idle = reduce(or_, (span(mention.start, mention.end) for mention, share in told if share >= IDLE), 0)
    numbers = phrases.numbers.get(topic, set())
    fixed = (hit for hit in chart.hits if hit.mask & idle and hit.pattern in numbers)
    return any(at < 0 for hit in fixed for _, at, _ in hit.captures)


def _holds_lengths(chart: Chart, mention: Mention) -> bool:
    """Whether what a topic has no place for is made of lengths, which it may have: 48 inches along and 22 inches up."""
    inside = (r for at in range(mention.start, mention.end) for r in chart.readings[at] if r.end <= mention.end)
    return mention.reading.kind == "pitch" and any(isinstance(r.value, Length) for r in inside)


def _turns(words: Sequence[str]) -> bool:
    """Whether a number may take another's place, be put to it or multiply it: no overhang does not."""
    if _TURNS.isdisjoint(words) and "not" not in words:
        return False
    said = {b for a, b in pairwise(("", *words)) if b in _TURNS - {"no"} and a != "no"}
    return bool(said) or any(a in ("no", "not") and (not b.isalpha() or b in _NUMBERED) for a, b in pairwise(words))


def most_gone(chart: Chart, less: Chart, question: Question) -> bool:
    """Whether a sum would lose the one length that the others are small beside: the old door was 79 1/2, up 3/4, 3/8 clear."""
    if question.topic != SUM:
        return False
    all_, left = ([m.reading.value for m in mentions(each)] for each in (chart, less))
    sizes = [[abs(float(value.value)) for value in found if isinstance(value, Quantity)] for found in (all_, left)]
    return bool(sizes[1]) and max(sizes[0]) > MUCH * max(sizes[1])


def may_hold_more(chart: Chart, question: Question) -> bool:
    """Whether a question that is whole may have taken a number that is none of its givens."""
    many = sum(isinstance(heard.value, Quantity | tuple) and heard.end > heard.start for heard in question.givens.values()) > 1
    return many and question.topic in TOPICS and len(chart.words) >= LEAST_WORDS


def took(chart: Chart, question: Question, less: Chart) -> bool:
    """Whether a question took one of the quantities that a shorter sentence is without."""
    gone = chart.numbers & ~less.numbers
    taken = (heard for heard in question.givens.values() if tokens_of(chart, heard) & gone)
    return any(heard.text not in _SOUNDED or _counts(chart, heard) for heard in taken)


def _counts(chart: Chart, heard: Heard) -> bool:
    """Whether a number stands before what there are so many of: two purlins."""
    after = chart.words[places_of(chart, heard)[1] :][:1]
    return bool(after) and after[0].isalpha() and after[0].endswith("s")


def left_of(chart: Chart, less: Chart, question: Question) -> list[str]:
    """What one sentence has and the other not, as it was said, and no choice of the question took: one to one fifty."""
    gone = chart.numbers & ~less.numbers & ~reduce(or_, (tokens_of(chart, heard) for heard in question.givens.values()), 0)
    return chart.said_in(gone)
