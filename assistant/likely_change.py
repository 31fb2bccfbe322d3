"""A line that came to nothing, taken as the change of the question before it that lines like it are: "better allow ten percent".

What is learned of talk (`change_learned.py`) tells whether such a line stays with its question, and which given each of its
numbers is of. Where both are all but sure, the question is asked again with those; where they are likely, it is asked whether
that is meant. Where a line was answered as a change of one given, and such lines change another, it is asked which.
"""

from __future__ import annotations

import re
from collections.abc import Mapping
from typing import TYPE_CHECKING

from assistant import changes
from assistant.change_learned import Model, model, numbers_of, of_line, roles_in, strange_words, told_apart, words_of
from assistant.in_its_terms import in_its_terms
from assistant.meant_for import SOLD_IN, Wanted, labelled, of_stock, stock_told
from assistant.pending import Asked, Pending
from assistant.record import Record, become, blank, given_lines, listed, put_asked, value_line
from assistant.said_over import OF_THEM, same_value, stem
from assistant.told_outright import told_outright
from assistant.told_round import State, put_back, state_of
from assistant.units_kept import in_its_unit
from assistant.usual import ODD
from assistant.ways import same_answer, which_way
from assistant.who_says_so import SMALL
from intents.expressions import expression
from intents.learned import NOTHING
from intents.question import Heard, Question
from intents.talk import numbers_in, talk_of
from solvers.quantities import Count, Percent, Temperature

if TYPE_CHECKING:
    from assistant.conversation import Conversation

STAYS, SURE = 0.65, 0.9  # how likely a line must stay with its question, and a number be of a given, to be taken so
REPLIES = 0.4  # how likely it must stay with one that waits for such a number
LIKELY = 0.7  # and to be asked about
EARLIER = 6  # where a state keeps the questions that were answered
STRANGE = 2  # words that no grammar knows, from which on a line may be of other things: eleven feet of snow in the hills
HARDLY, RATHER = 0.5, 0.8  # how likely one must stay, with a word that no grammar knows, and with two
DOUBTED, UNLIKELY = 0.95, 0.1  # how likely another given must be for one to be doubted, or how unlikely that one
SURELY = 0.9  # how likely a line must stay for another question to be doubted that it was answered as
MOST_WORDS, MOST_NUMBERS = 24, 3
ALL = 100  # percent
AGAIN = "I can't make that fit. "
_TO_NOTHING = expression(  # what is said of a line that came to nothing, and of a number that is odd where it went
    r"I understood |I don.t know what to make of |That is not something I work out|What should I change about "
    r"|Do you mean (?!.* or )|.*It is mostly |Yours, "
)
_ASKS = expression(  # another thing may be asked with the number: how many of those, from a 12 footer
    r"\?|\b(?:how|what|whats|which)\b|^\W*(?:(?:and|so|then|ok)\W+)*(?:is|are|can|will|would|does|do|where|when)\b", re.IGNORECASE
)
_ASKED = expression(
    r"\b(?:how (?:much|many|long|far|high|wide|deep|tall|big)|what(?:['’]?s)?|which)\b(?P<what>[^.;?]*)", re.IGNORECASE
)
_SAME = frozenset("that those there then be would come comes read have does will now each need needs if get leave give".split())
_SUPPOSES = expression(r"\b(?:what if|how about|what about|say)\b", re.IGNORECASE)  # which asks for the same again
ALIKE = frozenset((("compound cut", "miter for a corner"),))  # questions that tell one thing alike: it is really 92
_SETS_RIGHT = expression(  # as a change is told, and chat is not
    r"\?|\b(?:actually|sorry|hang on|hold on|oh|mistake|wrong|really|instead|meant|a lie|suppose|what|measured|rather|changed"
    r"|not \d+|says|reckons|wants|put|dropped|take off)\b",
    re.IGNORECASE,
)
_THINGS = expression(r"\s+(?!inches\b|degrees\b|metres\b|meters\b|mils?\b|twelves?\b)[a-z]{2,}s\b", re.IGNORECASE)
_CLAUSE = expression(r"[.;!?]+\s+|,\s+")
_REDO = expression(
    r"\s*[,;.–—-]?\s+(?:so |and )?(?:re-?)?(?:do|run|work|figure) (?:it|that|them)(?: again| over)?\W*$", re.IGNORECASE
)
_NOT = expression(r"[,;]?\s+(?:and )?(?:not|instead of|rather than) (?P<old>\S+(?: \d+/\d+)?)\W*$", re.IGNORECASE)
_BACK = expression(r"\bback\b", re.IGNORECASE)  # to a question before the last


def as_is_likely(c: Conversation, record: Record, text: str, before: State) -> None:
    """Take a line that came to nothing as the change it likely is, or ask whether it is; doubt one that likely is another."""
    known, waited = model(), before[0]
    if known is None or text.count(" ") > MOST_WORDS:
        return
    nothing = (record["outcome"] in ("asks", "declined") or record["topic"] == "compare") and not _BACK.search(text)
    if isinstance(waited, Pending):
        vain = waited.question in (record["ask"], record["ask"].removeprefix(AGAIN)) or _TO_NOTHING.match(record["say"])
        if nothing and vain and waited.asked is not None and waited.wanted and not waited.ways and not _more_told(c, waited):
            _reply(c, record, text, waited, known, before)
    elif isinstance(before[1], Asked) and record["outcome"] == "answered":
        if record["topic"] == before[1].topic.name:
            if not (_strange(c, record, text, before[1], known) or _of_none(c, record, text, before[1], known)):
                _doubt(c, record, text, before[1], known)
        elif (before[1].topic.name, record["topic"]) in ALIKE and not asks_something(text) and not _BACK.search(text):
            _take(c, record, text, before[1], known, before)
        elif record["topic"] != before[1].topic.name and not _BACK.search(text):
            _rather_stays(c, record, text, before[1], known, before)
    elif isinstance(before[1], Asked) and nothing and _TO_NOTHING.match(record["say"]):
        _take(c, record, text, before[1], known, before)


def _more_told(c: Conversation, waited: Pending) -> bool:
    """Whether the line told another piece of the question that waits: how wide the posts are, where their row was wanted."""
    now = c.pending.asked if c.pending is not None else None
    before = waited.asked
    return now is not None and before is not None and now.topic is before.topic and now.givens.keys() > before.givens.keys()


def _told(c: Conversation, text: str, last: Asked, known: Model, wanted: str = "") -> tuple[dict[str, Heard], float]:
    """What such a line tells of the question before it, and how sure that is at the least; nothing where it is not likely."""
    found = numbers_of(text, last)
    stays = known.stay(of_line(text, last, len(found), c.parameters, wanted)) if 0 < len(found) <= MOST_NUMBERS else 0
    if stays < (REPLIES if wanted else STAYS) or of_stock(text, last) or OF_THEM.search(text):
        return {}, 0
    givens: dict[str, Heard] = {}
    least, words = 1.0, words_of(text)
    for number, shares in roles_in(text, last, found, known, wanted):
        name = max(shares, key=shares.__getitem__)
        if name == NOTHING or shares[name] < LIKELY or name in givens:
            return {}, 0
        if _of_else(text, number.heard[name]):
            return {}, 0
        givens[name] = in_its_unit(number.heard[name], last.givens.get(name), last)
        least = min(least, shares[name] if name == wanted or told_apart(number, name, last, words) else LIKELY)
    return givens, least


def _reply(c: Conversation, record: Record, text: str, waited: Pending, known: Model, before: State) -> None:
    """Take a line that was no reply as what it likely tells of the question that waits, where that gets it further."""
    asked = waited.asked
    assert asked is not None
    givens, least = _told(c, text, asked, known, waited.wanted)
    warm = any(isinstance(heard.value, Temperature) for heard in givens.values())
    if not givens or least < SURE or asks_something(text) or warm:
        return  # how warm it is may be at another time than is asked
    after = state_of(c)
    put_back(c, before)
    c.pending = None
    trial = blank(text, record["via"], c.job, record["file"])
    question = Question(asked.topic.name, givens)
    c.finish(trial, c.ways(question, asked), question)
    further = trial["outcome"] == "asks" and trial["ask"] != waited.question and ODD not in trial["ask"]
    if trial["outcome"] != "answered" and not further:
        put_back(c, after)
        return
    become(record, trial)
    if trial["outcome"] == "answered" and c.last is not None:
        c.last.record = record


def _of_else(text: str, heard: Heard) -> bool:
    """Whether a number counts other things (9 rafters are no pitch), or only agrees (100 percent)."""
    value, said = heard.value, text[heard.start : heard.end]
    counts = _THINGS.match(text[heard.end :]) is not None and said.isalnum() and not isinstance(value, Count)
    return counts or (isinstance(value, Percent) and value.value == ALL)


def asks_something(text: str) -> bool:
    """Whether a line asks for something, and does not only suppose."""
    return bool(_ASKS.search(text)) and not _SUPPOSES.search(text)


def _take(c: Conversation, record: Record, text: str, last: Asked, known: Model, before: State) -> None:
    givens, least = _told(c, text, last, known)
    if not givens or (least < SURE and len(givens) > 1):
        return
    sure = least >= SURE and (not asks_something(text) or asks_the_same(text, last))
    sure = sure and strange_words(_told_in(text, givens, last)) < STRANGE
    sure = sure or (len(givens) == 1 and not asks_something(text) and _puts_another_right(text, givens, last))
    if not sure and ODD in record["ask"]:
        return
    after = state_of(c)
    put_back(c, before)
    trial = blank(text, record["via"], c.job, record["file"])
    changes.work_again(c, trial, Wanted(text, corrects=_corrects(c, text), led=True), [Question(last.topic.name, givens)])
    now = c.last
    if trial["outcome"] != "answered" or now is None or now is last:
        put_back(c, after)
        return
    if not sure:
        put_back(c, before)
        _ask_whether(c, record, text, last, now, {name: heard.value for name, heard in givens.items()})
        return
    become(record, trial)
    now.record = record


def _puts_another_right(text: str, givens: Mapping[str, Heard], last: Asked) -> bool:
    """Whether a line says of a given what it was, and that it is not: my wife says the wall is 5.6 long, not 5.4."""
    found = _NOT.search(text)
    said = numbers_in(found["old"]) if found is not None else []
    if found is None or len(said) != 1:
        return False
    (name, heard), number = next(iter(givens.items())), getattr(said[0].value, "value", None)
    was = last.givens[name].value if name in last.givens else None
    return number is not None and getattr(was, "value", None) == number and heard.end <= found.start()


def _told_in(text: str, givens: Mapping[str, Heard], last: Asked) -> str:
    """A line without what goes before the clause of its numbers (that feels steep to me) and a bare “redo it” after it.

    What goes before and ends with no sentence is left out only where the clause names a given: Luke, your battery's on 40.
    """
    line = _REDO.sub("", text)
    first = min(heard.start for heard in givens.values())
    ends = [found for found in _CLAUSE.finditer(line) if found.end() <= first]
    named = any(last.topic.parameter(name).label.split()[0] in line.lower() for name in givens)
    whole = [found.end() for found in ends if named or not found[0].startswith(",")]
    return line[whole[-1] :] if whole else line


def asks_the_same(text: str, last: Asked) -> bool:
    """Whether all that a line asks is what the question before it did, by its words: how long is the slope then."""
    known = SMALL | _SAME | last.things | {stem(word) for p in last.topic.parameters for word in p.label.split()}
    known |= {stem(word) for word in f"{last.topic.name} {(last.record['answer'] or {}).get('name', '')}".lower().split()}
    asked = [found["what"] for found in _ASKED.finditer(text)]
    words = [word for what in asked for word in re.findall(r"[a-z]+", re.sub(r"['’](?:s|re|ve|ll|d)\b", "", what.lower()))]
    return bool(asked) and all(word in known or stem(word) in known for word in words)


def _ask(c: Conversation, record: Record, text: str, last: Asked, waits: Pending, question: str) -> None:
    """Ask a question about a line, with the question before it as it was; `waits` is what a reply settles."""
    c.pending, c.last = waits, last
    asked = blank(text, record["via"], c.job, record["file"])
    put_asked(asked, last.topic.name, question, given_lines(last.topic, last.givens.values()))
    become(record, asked)


def _ask_whether(c: Conversation, record: Record, text: str, last: Asked, now: Asked, values: dict[str, object]) -> None:
    """Ask whether a line changes the question before it to what it is now, which is these values; a yes makes it so."""
    changed = [f"the {last.topic.parameter(name).label} {value_line(value)[2]}" for name, value in values.items()]
    question = f"Do you mean the {last.topic.name} again, with {listed(changed, 'and')}? Say yes, or ask it in full."
    _ask(c, record, text, last, Pending(last, wanted=next(iter(values)), ways=[c.worked(now, now.givens)]), question)


def _corrects(c: Conversation, text: str) -> bool:
    said = talk_of(text, c.places)
    return said is not None and said.topic == "correct"


def _rather_stays(c: Conversation, record: Record, text: str, last: Asked, known: Model, before: State) -> None:
    """Ask whether a line that was answered as another question changes the one before it, as such lines all but always do."""
    found = numbers_of(text, last)
    if not 0 < len(found) <= MOST_NUMBERS or known.stay(of_line(text, last, len(found), c.parameters)) < SURELY:
        return
    if any(asked.topic.name == record["topic"] for asked in before[EARLIER]):  # type: ignore[attr-defined]
        return  # one that was asked before: and 88, of the corner that the saw was asked about
    if any(given["from"] == "earlier" for given in record["givens"]):
        return  # the next thing of the same roof
    if in_its_terms(text, last):
        return  # which says what it asks of it
    givens, _ = _told(c, text, last, known)
    if not givens:
        return
    after = state_of(c)
    put_back(c, before)
    way = c.ways(Question(last.topic.name, givens), last)[0]
    if not way.worked.working:
        put_back(c, after)
        return
    _ask_whether(c, record, text, last, way.asked, {name: heard.value for name, heard in givens.items()})


def _strange(c: Conversation, record: Record, text: str, last: Asked, known: Model) -> bool:
    """Whether a line that was taken as a change is rather chat, for the words in it that no grammar knows; it is asked then."""
    now, strange = c.last, strange_words(text)
    if not strange or now is None or now is last or now.topic is not last.topic or not now.changed or _SETS_RIGHT.search(text):
        return False
    if (now.plus, now.times) != (last.plus, last.times):
        return False  # the whole line put something to the answer, and changes no given
    words = words_of(text)
    if any(word in words for name in now.changed for word in last.topic.parameter(name).label.split()):
        return False  # my neighbour reckons the run is 13 foot 6
    stays = known.stay(of_line(text, last, len(numbers_of(text, last)), c.parameters))
    if stays >= (HARDLY if strange < STRANGE else RATHER) or not now.changed <= now.givens.keys():
        return False
    told = {name: now.givens[name].value for name in sorted(now.changed) if now.givens[name].source == "asked"}
    if not told:
        return False
    _ask_whether(c, record, text, last, now, told)
    return True


def _of_none(c: Conversation, record: Record, text: str, last: Asked, known: Model) -> bool:
    """Whether a line changed a given by a number that in such lines is all but never of any: eleven at 38 1/2; it is asked."""
    now, found = c.last, numbers_of(text, last)
    if now is None or now is last or now.topic is not last.topic or not 1 < len(found) <= MOST_NUMBERS:
        return False
    if told_outright(Wanted(text, led=True), last):
        return False
    for number, shares in roles_in(text, last, found, known):
        for name in now.changed & number.heard.keys() & now.givens.keys():
            value, heard = now.givens[name].value, number.heard[name]
            if shares[NOTHING] >= DOUBTED and any(same_value(value, one) for one in (heard.value, *heard.others)):
                _ask_whether(c, record, text, last, now, {name: value})
                return True
    return False


def _doubt(c: Conversation, record: Record, text: str, last: Asked, known: Model) -> None:
    """Ask which given a number is of, where it went to one and such lines tell another."""
    now = c.last
    if now is None or now is last or now.topic is not last.topic or len(now.changed) != 1:
        return
    found = numbers_of(text, last)
    if len(found) != 1 or found[0].parts:
        return
    ((number, shares),) = roles_in(text, last, found, known)
    (name,) = now.changed
    likely = max(shares, key=shares.__getitem__)
    if likely in (name, NOTHING) or name not in number.heard:
        return
    if shares[likely] < DOUBTED and (shares[name] >= UNLIKELY or shares[likely] < LIKELY):
        return
    named = name == labelled(Wanted(text), last) and shares[name] >= UNLIKELY  # a name may be of what stays: the humidity
    if named or name == stock_told(text, last) or SOLD_IN.fullmatch(text) or number.kind == "plural":
        return  # it is told by its name, or as what sticks are sold in
    if name in number.hinted and likely not in number.hinted:
        return
    if told_outright(Wanted(text, led=True), last) or in_its_terms(text, last):
        return
    heard = in_its_unit(number.heard[likely], last.givens.get(likely), last)
    if likely in last.givens and same_value(last.givens[likely].value, heard.value):
        return
    ways = [c.worked(now, now.givens), *c.ways(Question(last.topic.name, {likely: heard}), last)]
    if ways[1].worked.refused or ways[1].worked.asks or same_answer([way.worked for way in ways]):
        return
    _ask(c, record, text, last, Pending(now, ways=ways), which_way(ways))
