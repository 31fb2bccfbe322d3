"""What was stated before a question: "the pad is 15 by 20 feet", and then "what diagonal makes it square?".

A line that states a measurement and asks nothing is kept in mind for the next few lines. A question that lacks
something alone is read with those lines before it; it is answered only where all that was said then has its place.
"""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import takewhile
from typing import TYPE_CHECKING

from assistant.acts import CHANGES
from assistant.at_the_saw import JOINTS
from assistant.names import SUM
from assistant.record import Record, given_lines, listed
from assistant.said_over import places_of
from assistant.speech import spoken
from assistant.told_round import may_read
from assistant.usual import unusual
from assistant.waits import displaced
from assistant.ways import Way, same_answer
from intents.elsewhere import outside_of
from intents.expressions import expression
from intents.lists import layers_in
from intents.matcher import read
from intents.per_what import LOADS
from intents.question import Question
from intents.talk import numbers_in, talk_of
from intents.tokens import tokenize
from solvers.quantities import Count, Money
from solvers.slots import Layer

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked, Pending

MOST = 3  # lines kept in mind
LONGEST = 200  # characters of such a line
TOGETHER = 280  # characters of what was stated and a question
MOST_READ = 560  # and of all that is read for one line
TOKENS = 48  # and tokens: the longest of the question sets that is answered so has 35
OVER = frozenset("over that those these them top all also".split())  # a line with one of these goes on from what was stated
LAYERED = ("build-out", "fastener length")  # what is asked of layers
_A_SAW = expression(r"\bsaw(?:['’]?s)? (?:only |just )?(?:goes|stops|tops|maxes|swings|reaches|is good)\b", re.IGNORECASE)
_COUNTS = expression(r"(?: of)?(?: the| those)?(?: [a-z]+)? ?[a-z]+s\b", re.IGNORECASE)
INSTEAD = frozenset("instead rather not change make".split())
TAKEN_BACK = ("forget", "strike", "correct")  # after one of these nothing that was stated holds any more
_TAKES_BACK = expression(
    r"\W*(no|nope|nah|not|sorry|wait|actually|correction|i mean|i meant|oops|whoops|scratch|wrong|my mistake|forget"
    r"|make (?:it|that))\b",
    re.IGNORECASE,
)
_SAYS = expression(
    r"\b(is|are|was|measures?|checks?|reads?|got|have|has|there|slopes?|goes up|go up|falls?|rises?|runs?|comes?)\b|'s\b",
    re.IGNORECASE,
)
_ONE_NUMBER = expression(r"\W*(?:(?:and|no|at|so|ok|then|or|make it)\W+)*[\d./ -]+\W*", re.IGNORECASE)
_PUTS_ON = expression(r"\W*(?:(?:and|ok|now|then|so)\W+)*(?:put|add|stick|fold|give (?:it|them)|change|make)\b", re.IGNORECASE)
_OF_A_SIZE = expression(r"\W*(?:cover|exposure|wide|long|high|tall|deep|thick|centres|apart|gap|kerf|lap)\b", re.IGNORECASE)
_NAMED = expression(r"\s*(?P<what>overhang|tail|lap|hem|kerf|gap|rise|run|exposure|reveal|waste|bevel)\b", re.IGNORECASE)
_EITHER = expression(r"Is the .* or the .*\?$")
_PRICED = expression(
    r"\b(?:at|for) \S+ an? (?:bag|box|roll|sheet|board|stick|tube|foot|square|bundle|piece|gallon)\b", re.IGNORECASE
)
_ASKS = expression(
    r"\?|\b(how|what|what's|whats|which|when|where|why|can|could|will|would|does|do|is it|are they)\b", re.IGNORECASE
)


def joined(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line is whole with what was stated before it; if so that is answered."""
    if _whole_alone(c, text) or _still_doubted(c):
        return False
    partly: tuple[Question, list[Way]] | None = None  # it lacks less than it did
    for back in range(1, len(c.told) + 1):
        told = "; ".join(c.told[-back:]) + "; "
        if not may_read(c, told + text, MOST_READ) or len(told) + len(text) > TOGETHER or len(tokenize(told + text)) > TOKENS:
            break
        question = _whole(c, told, text)
        if question and (question.topic != (record["topic"] or question.topic) or _sum_of_another(c, question, text)):
            return False
        if question and c.last and _said_otherwise(question, len(told), c.last):
            return False  # how many boxes, after panels whose depth was changed meanwhile
        if question and _of_another_use(question, told):
            return False
        ways = c.ways(question) if question else []
        if question and same_answer([way.worked for way in ways]) and ways[0].worked.working:
            if unusual(ways[0].asked, False):
                return False  # it was asked whether that is meant
            _answer(c, record, ways, question, len(told))
            return True
        if question and len(ways) == 1 and ways[0].worked.asks and _knows_more(c, record, ways[0], partly):
            partly = (question, ways)
    if partly is not None:
        record["ask"], c.pending = "", None
        c.finish(record, partly[1], partly[0])
    return partly is not None


def _sum_of_another(c: Conversation, question: Question, text: str) -> bool:
    """Whether a sum would be made of a line that was asked about as another question: 14.6 m from 5.4 lengths | add 9.2."""
    asked = c.records[-1]["ask"] if c.records else ""
    return question.topic == SUM and (
        (asked.startswith("Do you mean ") and SUM not in asked)
        or asked.startswith("What should I change?")
        or _PRICED.search(text) is not None
    )


def _still_doubted(c: Conversation) -> bool:
    """Whether it is still asked which of two ways the line before was meant: its number is not yet known to be of anything."""
    before = c.records[-1] if c.records else None
    return before is not None and before["outcome"] == "asks" and _EITHER.match(before["ask"]) is not None


def _of_another_use(question: Question, told: str) -> bool:
    """Whether a number of the lines before is what it can't be: how far a saw goes is no corner, a cover of 300 no count."""
    before = [(name, heard) for name, heard in question.givens.items() if heard.end <= len(told)]
    saw = _A_SAW.search(told) is not None and question.topic in JOINTS
    if saw and any(getattr(heard.value, "unit", "") == "deg" for _, heard in before):
        return True
    named = ((name, _NAMED.match(told[heard.end :])) for name, heard in before)  # 12 inch overhang | how many from 16s
    if any(found is not None and found["what"].lower() not in f"{name} {question.topic}" for name, found in named):
        return True
    counts = [heard for name, heard in before if name == "count" and question.topic in LOADS]
    return any(not _COUNTS.match(told[heard.end :]) for heard in counts)


def _said_otherwise(question: Question, told: int, last: Asked) -> bool:
    """Whether a line asks nothing of its own of a question that was stated before it, and of which a given was changed since."""
    if last.topic.name != question.topic or any(heard.end > told for heard in question.givens.values()):
        return False
    known = {name: getattr(last.givens[name].value, "value", None) for name in question.givens.keys() & last.givens.keys()}
    return any(value != getattr(question.givens[name].value, "value", None) for name, value in known.items())


def _knows_more(c: Conversation, record: Record, way: Way, before: tuple[Question, list[Way]] | None) -> bool:
    """Whether the question lacks less with what was stated than without: the layers, and still no penetration."""
    alone = c.pending.asked.givens if c.pending and c.pending.asked else {}
    least = before[1][0].asked.givens if before else alone
    same = c.pending is not None and record["outcome"] == "asks" and record["topic"] == way.worked.topic.name
    return same and not (c.pending and c.pending.ways) and least.keys() < way.asked.givens.keys()


def rather_joined(c: Conversation, record: Record, text: str, questions: list[Question]) -> bool:
    """Whether a line right after a statement that was answered asks something else of what was stated; then answered.

    "Corner's 95 degrees", and then "do it in three pieces": no other corner, but another question about it.
    """
    last, best = c.last, questions[0] if questions else None
    if best is not None and _more_layers(c, record, text, best):
        return True
    if last is None or best is None or not c.told or last.record.get("heard") != c.told[-1]:
        return False
    other = best.topic != last.topic.name and bool(best.missing) and len(best.words) > 1
    return other and joined(c, record, text)


def _more_layers(c: Conversation, record: Record, text: str, best: Question) -> bool:
    """Whether layers were stated right before, and this line tells more of the wall: "with 9/16 cladding on top"; answered.

    A sum of the layers of one line alone would leave the others out.
    """
    own = best.givens.get("layers")
    words = {token.text for token in tokenize(text)}
    more = (best.topic == "build-out" or words & OVER) and not words & INSTEAD
    if not more or best.missing != ([] if own else ["layers"]) or best.unplaced:
        return False
    lines = [kept["heard"] if kept["outcome"] != "answered" else "" for kept in c.records[-MOST:]]  # 2 inch foam: a change
    stated = [*takewhile(bool, (_layers_stated(c, line) for line in reversed(lines)))]
    told = "; ".join(lines[len(lines) - len(stated) :]) + "; "
    whole = next((q for q in c.read(told + text).questions[:1] if q.topic == best.topic), None)
    if not stated or whole is None or not whole.complete:
        return False
    names = [layer.what.split()[-1] for group in (*stated, own.value if own else ()) for layer in group]
    if len(whole.givens["layers"].value) != len(names) or len(set(names)) < len(names):  # the same again is another wall
        return False
    ways = c.ways(whole)
    if not (same_answer([way.worked for way in ways]) and ways[0].worked.working):
        return False
    _answer(c, record, ways, whole, len(told))
    return True


def _layers_stated(c: Conversation, line: str) -> tuple[Layer, ...]:
    """The layers of a line that asked for nothing."""
    asked = any(q.topic in LAYERED for q in read(line, c.parameters, seconds=False).questions)
    return layers_in(line) if _states(line) and not asked else ()


def keep_in_mind(c: Conversation, record: Record, text: str, waited: Pending | None) -> None:
    """After a line: what it stated stays in mind; a question that needed none of that leaves it behind.

    A question that was changed, or refused, holds all that was said of it: its lines are no statements to read on from.
    """
    displaced(c, record, waited)
    own = c.last is not None and c.last.record is record
    if own and c.last is not None and (c.last.changed or record["outcome"] == "declined"):
        c.told = []
        return
    if record["topic"] in TAKEN_BACK or c.points.kind == "correction" or _TAKES_BACK.match(text):
        c.told = []
    asked = waited.asked if waited else None
    replied = asked is not None and asked.topic.name == record["topic"]
    stated = _states(text) and not replied and record["outcome"] != "noted"
    stated = stated and (record["outcome"] != "answered" or bool(_SAYS.search(text)))
    asks_a_change = _ONE_NUMBER.fullmatch(text) or _PUTS_ON.match(text)  # which was asked about, and is no fact yet
    stated = stated and not (c.last is not None and asks_a_change)
    if stated or (record["topic"] == "remember" and record["outcome"] == "noted"):
        c.told = [*c.told, text][-MOST:]
    elif record["outcome"] == "answered" and not any(given["from"] == "earlier" for given in record["givens"]):
        c.told = []


def may_be_joined(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line came to nothing alone and what was stated before may help; a change of what was answered is none."""
    if _TAKES_BACK.match(text) or (c.told and _changes(c, text)):
        return False
    if record["topic"] == SUM and c.pending is not None and len(c.pending.ways) > 1:
        return False  # which sum it is goes first
    return bool(c.told) and record["outcome"] in ("asks", "declined") and outside_of(text) is None


def _changes(c: Conversation, text: str) -> bool:
    """Whether the line names a new value for what was answered last."""
    said = talk_of(text, c.places) if c.last is not None and numbers_in(text) else None
    return said is not None and said.topic in CHANGES


def _states(text: str) -> bool:
    return len(text) <= LONGEST and not _ASKS.search(text) and bool(numbers_in(text))


def _whole_alone(c: Conversation, text: str) -> bool:
    """Whether the line is whole without what was stated before it; a polygon may be told by its sides or its bay."""
    alone = c.read(text).questions
    whole = bool(alone) and alone[0].score > 0 and alone[0].whole
    return whole and not all(way.worked.asks for way in c.ways(alone[0]))


def _whole(c: Conversation, told: str, text: str) -> Question | None:
    """The question of both together where it is whole, is asked by the last line, and uses what was stated."""
    found = [q for q in c.read(told + text).questions if q.score > 0]
    best = found[0] if found else None
    if best is None or best.unplaced or best.lacking or best.claim or _names_another(c, text, best):
        return None
    _take_all_layers(best, told)
    asks = set(best.words) & {token.text for token in tokenize(text)}
    uses = any(heard.start < len(told) for heard in best.givens.values())
    right = asks and uses and _all_used(best, told, text) and _all_layers(best, told)
    return best if right and not _kept_as_another(c, best, told) and not _counts_a_size(best, told, text) else None


def _counts_a_size(question: Question, told: str, text: str) -> bool:
    """Whether a size is taken for a count: cover 300 is no 300 of anything, and neither is 300 cover."""
    counts = [heard for heard in question.givens.values() if isinstance(heard.value, Count)]
    bare = any(heard.end < len(told) and not re.match(r"\s*[a-z]", told[heard.end :], re.IGNORECASE) for heard in counts)
    return bare or any(_OF_A_SIZE.match((told + text)[heard.end :]) for heard in counts)


def _names_another(c: Conversation, text: str, best: Question) -> bool:
    """Whether the line asks by its whole name for another thing than both together do: gable height, after a rake length."""
    alone = next((q for q in c.read(text).questions if q.score > 0), None)
    if alone is None or alone.topic == best.topic:
        return False
    again = c.last is not None and best.topic == c.last.topic.name and not numbers_in(text)  # rafter length, after the hip's
    return again or set(alone.topic.split()) <= set(alone.words)


def _take_all_layers(question: Question, told: str) -> None:
    """Read the last of the layers that were stated as one of them, and no penetration, where it could be either."""
    for givens in question.swaps if not _all_layers(question, told) else ():
        if "layers" in givens and len(givens["layers"].value) > len(question.givens["layers"].value):
            question.givens = givens
            question.swaps = []
            return


def _all_layers(question: Question, told: str) -> bool:
    """Whether every layer that was stated is one of the question."""
    layers = question.givens.get("layers")
    return layers is None or len(layers.value) >= len(layers_in(told.removesuffix("; ")))


def _all_used(question: Question, told: str, text: str) -> bool:
    """Whether every number of the last line is in the question: one that is left out would be answered as if not said."""
    spans = [(heard.start - len(told), heard.end - len(told)) for heard in question.givens.values()]
    return all(any(start < place.end and place.start < end for start, end in spans) for place in places_of(text))


def _kept_as_another(c: Conversation, question: Question, told: str) -> bool:
    """Whether what was kept under one name would be used for what has another: a stud spacing of 16 is no pitch."""
    at = 0
    for line in told.removesuffix("; ").split("; "):
        said = talk_of(line, c.places)
        name = said.words["what"] if said and said.topic == "remember" and not said.loose else ""
        for parameter in c.topics[question.topic].parameters if name else ():
            heard = question.givens.get(parameter.name)
            here = heard is not None and at <= heard.start < at + len(line) and name in c.places
            other = parameter.slot.kept or set(name.split()).isdisjoint(parameter.label.split())  # a saw limit is no corner
            if here and other and parameter.kind is not Money and name not in (parameter.slot.kept, parameter.label):
                return True
        at += len(line) + 2
    return False


def _answer(c: Conversation, record: Record, ways: list[Way], question: Question, before: int) -> None:
    """Answer it, with what was stated before named as such."""
    way = ways[0]
    early = {name for name, heard in question.givens.items() if heard.start < before}
    said = [replace(g, source="earlier") if g.name in early else g for g in way.worked.givens]
    known = {name: replace(g, source="earlier") if name in early else g for name, g in way.asked.givens.items()}
    way = Way(replace(way.asked, givens=known), replace(way.worked, givens=said))
    record["ask"], c.pending = "", None
    c.finish(record, [way], question)
    early_lines = [line for line in given_lines(way.worked.topic, way.worked.givens) if line["from"] == "earlier"]
    named = [f"{line['name']} {line['text'].split(' (')[0]}" for line in early_lines]
    record["say"] = spoken(f"With {listed(named, 'and')}. ") + record["say"]
