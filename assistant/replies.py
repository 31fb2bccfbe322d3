"""Replies to a question that was put back: the missing piece, a choice, yes or no; or something else altogether."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import replace
from typing import TYPE_CHECKING

from assistant import acts
from assistant.asked_piece import (
    as_a_reply,
    as_each_thing,
    asks_it_back,
    asks_meanwhile,
    below_zero,
    beside_the_told,
    counted_load,
    in_its_words,
    may_be_each,
    may_put_right,
    names_a_nail,
    names_the_wanted,
    of_each,
    of_other_things,
    only_names,
    read_piece,
    states_it,
    that_lacks,
    thickness_told,
    to_the_wanted,
    told_as_price,
    told_of_lists,
)
from assistant.at_the_saw import another_setting, asks_of_a_saw
from assistant.face_told import face_told
from assistant.heard_all import unheard
from assistant.listed_changes import put_into_lists
from assistant.meant_for import of_stock
from assistant.names import SUM
from assistant.no_place import lets_go, still_no_place
from assistant.open_ways import ways_with
from assistant.openings_told import sized, still_asked, with_their_openings
from assistant.pending import Pending
from assistant.price_kept import keep_price
from assistant.price_told import price_told
from assistant.rather_than import put_rather
from assistant.record import Record, put_asked, put_declined, put_noted
from assistant.said_over import places_of
from assistant.this_not_that import this_not_that, unit_told, without_old
from assistant.units_kept import units_as_before
from assistant.ways import Way, chosen_way, differences
from assistant.while_open import another_number, kept_right, measured, put_right, puts_right, to_the_meant
from intents.expressions import expression
from intents.matcher import otherwise, read_as
from intents.question import Question, Reading
from intents.talk import Said, numbers_in, readings_in, talk_of
from intents.tokens import tokenize
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.conversation import Conversation

ENOUGH = 0.9  # how much better a sentence must stand on its own than as the piece that was asked for
YES = frozenset(("yes", "yep", "yeah", "yup", "ya", "sure", "ok", "okay", "right", "correct", "please", "do"))
_NO_MORE = frozenset("that thats that's it is the one a i mean meant go ahead on with then so well all fine good mate".split())
OUTRIGHT = frozenset(("yes", "yep", "yeah", "yup", "ya"))  # the others of YES are words of questions as well: what beam do I need
_UNITS = {  # a bare one, said for a unit that was left out
    **dict.fromkeys(("mm", "mil", "mils", "millimeters"), "millimetres"), **dict.fromkeys(("in", "inch", '"'), "inches"),
    **dict.fromkeys(("ft", "foot", "'"), "feet"), **dict.fromkeys(("m", "meters", "metre"), "metres"),
}  # fmt: skip
_OPENING = expression(r"\b(?:by|x|×) ?\S+ (?:doors?|windows?)\b", re.IGNORECASE)
_EACH = expression(r"\b(?:each|apiece)\b", re.IGNORECASE)
_PUTS = expression(r"\W*(?:(?:and|then)\W+)*(?:minus|less|plus|add|take|times|divided? by|halve)\b", re.I)  # to a sum still open
_TWO_VALUES = expression(r"\W*[−-]?[\d./]+ and [−-]?[\d./]+\W*", re.IGNORECASE)
_CENTRES = expression(r"\d\s*(?:mm |inch(?:es)? |in )?(?:cent(?:re|er)s?|o\.?c\.?|on cent(?:re|er)s?)\W*$", re.IGNORECASE)
_I_GOT = expression(
    r"\W*(?:but |well |and |so )?(?:(?:i|we|he) (?:got|get|make it|made it|measured)|(?:it |that )?(?:measures|reads))\b",
    re.IGNORECASE,
)
NO = frozenset(("no", "nope", "nah", "not", "dont", "don't", "never", "neither", "none"))
_SIZES = {"high": "height", "tall": "height", "long": "length", "square": "area", "sqft": "area", "big": "area",
          "crown": "compound", "sprung": "compound", "flat": "miter", "nested": "miter", "mitre": "miter",
          "steep": "angle", "degrees": "angle", "board": "boards", "strap": "strapping"}  # fmt: skip
_SMALL = frozenset("it my can of or a an in on to the".split())  # words of topics' names that choose none: can my saw cut it
FIRST = frozenset(("first", "former", "1st"))
MOST_NAMING = 6  # words of a line that names one of two topics, and asks nothing of its own
_ASKS_ANEW = expression(r"\b(?:how (?:much|many|far|long|big|wide|high)|what(?:['’]?s)?)\b", re.I)
MOST_CALLED = 2  # ways that are told apart by a number: the first one
SECOND = frozenset(("second", "other", "latter", "2nd", "last", "round"))


def settle(c: Conversation, record: Record, text: str, reading: Reading, pending: Pending) -> bool:
    """Whether the line answers what was put back; if so that is worked. An unclear reply is asked about once."""
    words = {token.text for token in tokenize(text)}
    if not pending.lines and doubted(c, record, text, pending):
        return True
    if _settled(c, record, text, words, as_a_reply(text, reading, pending), pending):
        return True
    if _something_else(c, text, reading):
        return False
    if pending.repeated or not pending.question:
        return False
    pending.repeated = True
    c.pending = pending
    topic = pending.asked.topic.name if pending.asked and not pending.topics else None
    put_asked(record, topic, f"I can't make that fit. {_bare(pending.question)}")
    return True


def tells_another(c: Conversation, said: Said, text: str, pending: Pending) -> bool:
    """Whether the line states a value of another name than what is waited for ("kerf is 1/8", asked for the gap)."""
    if said.topic != "remember" or said.loose or not (pending.wanted or pending.keep):
        return False
    if pending.wanted and ((_EACH.search(text) and may_be_each(pending)) or in_its_words(text, pending)):
        return False  # the boards are 13.50 each: no length of theirs; 12 foot lengths, of the length
    name = said.words["what"]
    if pending.keep:
        return name != pending.keep
    assert pending.asked is not None
    if names_the_wanted(text, name, pending, c.parameters):
        return False
    parameter = pending.asked.topic.parameter(pending.wanted)
    return name not in (parameter.slot.kept, parameter.label, parameter.name)


def _bare(question: str) -> str:
    return question.removeprefix("I can't make that fit. ")


def _something_else(c: Conversation, text: str, reading: Reading) -> bool:
    """Whether the line is a question, a statement or talk of its own."""
    said = talk_of(text, c.places)
    questions = [q for q in reading.questions if q.score > 0]
    if questions and questions[0].topic == SUM and _TWO_VALUES.fullmatch(text):
        return False  # 120 and 0, of the hottest and the coldest: nobody adds them while a length is waited for
    how = bool(questions) and questions[0].topic == "conversion" and "value" not in questions[0].givens  # "in metric"
    nods = said is not None and said.topic == "greeting" and said.loose  # "ok" tells no two ways apart
    changes = said is not None and said.topic in acts.CHANGES and c.last is None  # nothing but what is still open
    return (bool(questions) and not how) or (said is not None and not nods and not changes)


def _settled(
    c: Conversation, record: Record, text: str, words: set[str], reading: Reading, pending: Pending
) -> bool:  # fmt: skip
    if pending.forget:
        return _forget(c, record, words)
    if pending.told:
        return sized(c, record, text, pending)
    if pending.compare:
        return _compare(c, record, text)
    if pending.lines:
        return _line(c, record, text, words, pending)
    if pending.keep:
        return _keep(c, record, text, pending.keep)
    if pending.topics:
        return _topic(c, record, text, words, pending)
    if any(works(c, record, text, pending) for works in (lets_go, put_rather, this_not_that, put_right, unit_told)):
        return True
    told = pending.ways and (measured(c, record, text, pending) or another_number(c, record, text, pending))
    if told or (pending.ways and _way(c, record, text, words, pending)):
        return True
    puts = pending.asked is not None and pending.asked.topic.name == SUM and _PUTS.match(text)
    if pending.asked is not None and (puts or names_a_nail(text, pending)):
        put_asked(record, pending.asked.topic.name, f"I can't make that fit. {_bare(pending.question)}")
        c.pending = pending
        return True
    if asks_it_back(text, pending) or asks_of_a_saw(text) or asks_meanwhile(text, reading):
        return False
    if (shorter := without_old(c, text, pending)) != text:
        text, reading = shorter, replace(c.read(shorter), questions=c.read(shorter).unaided)
    if any(work(c, record, text, pending) for work in (another_setting, price_told, keep_price)):
        return True
    return _piece(c, record, text, reading, pending)


def _forget(c: Conversation, record: Record, words: set[str]) -> bool:
    if words & YES and not words & NO:
        names = list(c.facts.values)
        for name in names:
            c.facts.forget(name)
        put_noted(record, "forget", f"Forgotten: {', '.join(names)}")
        return True
    if words & NO:
        put_noted(record, "forget", "Nothing was forgotten")
        return True
    return False


def _line(c: Conversation, record: Record, text: str, words: set[str], pending: Pending) -> bool:
    """Which of two lines was said: the first, the second, or the one that holds the words of the reply."""
    chosen = [line for line in pending.lines if words and words <= {token.text for token in tokenize(line)}]
    if words & FIRST or (words & YES and len(words) < 3):
        chosen = pending.lines[:1]
    elif words & SECOND:
        chosen = pending.lines[1:2]
    if len(chosen) != 1:
        return False
    c.pending, c.alternatives = pending.under, ()
    c.take(record, chosen[0])
    return True


def _keep(c: Conversation, record: Record, text: str, name: str) -> bool:
    """A value to keep under the name that was asked for."""
    found = readings_in(text)
    if not found:
        return False
    said = Said("remember", {"value": found}, {"what": name, "value": text})
    c.just_kept = {}
    return acts.perform(c, record, said, text)


def _compare(c: Conversation, record: Record, text: str) -> bool:
    """The number that was asked for, to set beside the answer."""
    found = readings_in(text)
    return bool(found) and acts.perform(c, record, Said("compare", {"value": found}, {"value": text}), text)


def _topic(c: Conversation, record: Record, text: str, words: set[str], pending: Pending) -> bool:
    named = [q for q in pending.topics if q.topic in text.lower()]
    if not named:
        said = words | {_SIZES[word] for word in words & _SIZES.keys()}
        asks = len(words) > MOST_NAMING and _ASKS_ANEW.search(text)  # cut 45s on 4 1/2 stock: how much gap names no cut list
        inside = [] if asks else [q for q in pending.topics if said & set(q.topic.split()) - _shared(pending.topics) - _SMALL]
        named = inside if len(inside) == 1 else that_lacks(c, words, pending.topics)
    agrees = not words & NO and (words & OUTRIGHT or (words & YES and _says_yes(c, text, words, pending)))
    called = words & (FIRST | SECOND) if not _tells_numbers(text) else set()
    if called & FIRST or (len(pending.topics) == 1 and agrees):
        named = pending.topics[:1]
    elif called & SECOND:
        named = pending.topics[1:2]
    if not named:
        return False
    chosen, ways = named[0], c.ways(named[0])
    more = read_as(text, chosen.topic, c.parameters) if readings_in(text) else None
    if more and more.givens:  # the reply names the topic and tells more of it
        if not put_into_lists(more, ways[0].asked, text):
            return False
        chosen, ways = more, c.ways(more, ways[0].asked)
    c.finish(record, ways, chosen)
    return True


def _says_yes(c: Conversation, text: str, words: set[str], pending: Pending) -> bool:
    """Whether a line with a nod in it says no more than that, and numbers of what was asked about: four parts please."""
    topic = c.topics[pending.topics[0].topic]
    labels = {word for parameter in topic.parameters for word in parameter.label.split()}
    said = {word for place in places_of(text) for word in place.words}
    return {word for word in words if word.isalnum()} <= YES | _NO_MORE | labels | said


def _tells_numbers(text: str) -> bool:  # besides the word that chooses: the first one's 9 7/8
    return any(not {"first", "1st", "one", "second", "2nd"} >= {*place.words} for place in places_of(text))


def _shared(questions: Sequence[Question]) -> set[str]:
    """Words that tell none of the topics from the others."""
    sets = [set(question.topic.split()) for question in questions]
    return set.intersection(*sets)


def _way(c: Conversation, record: Record, text: str, words: set[str], pending: Pending) -> bool:
    if words & {"neither", "none"}:
        put_declined(record, "Then I read it wrong: ask it again with a unit or a name beside each number")
        return True
    if pending.wanted and words & NO and not numbers_in(text):
        c.finish(record, [_without(c, pending)], Question(pending.ways[0].worked.topic.name))
        return True
    way = chosen_way(text, pending.ways)
    most = 0 if words & NO else 1  # "no, 8" is neither way to take the 7
    said = numbers_in(text)
    called = words & (FIRST | SECOND) and not any(getattr(row.value, "value", 1) > MOST_CALLED for row in said)
    sized = any(row.kind in ("length", "pitch") for row in said)  # 6 m is no 5.2 m
    sized = sized or bool(words & (FIRST | SECOND) and said and not called)
    other = (len(said) > most or sized) and unheard(text, [given for one in pending.ways for given in one.asked.givens.values()])
    if other and words & NO and len(said) == 1 and c.last is not None and pending.question:
        c.pending = None
        c.take(record, f"make it {text[tokenize(text)[said[0].start].start :]}")
        return True
    if way is None or other:
        return False  # "I mean 24 foot by 32" is none of the ways to take 24 by 30
    apart = differences(pending.ways)
    sure = {name: replace(given, sure=1.0) for name, given in way.asked.givens.items() if name in apart}
    settled = replace(way.asked, givens=way.asked.givens | sure, meant=way.asked.meant.union(apart))
    c.finish(record, [replace(way, asked=settled)], Question(way.worked.topic.name))
    return True


def _without(c: Conversation, pending: Pending) -> Way:
    """The question without the unusual quantity that was not meant."""
    assert pending.asked is not None
    return c.worked(pending.asked, {name: given for name, given in pending.asked.givens.items() if name != pending.wanted})


def _piece(c: Conversation, record: Record, text: str, reading: Reading, pending: Pending) -> bool:
    """The missing piece, alone or in a sentence."""
    if pending.asked is None:
        return False
    best = reading.questions[0] if reading.questions else None
    topic = pending.asked.topic
    if _OPENING.search(text) and not any(p.name.startswith("opening") for p in topic.parameters):
        return False  # a 3 by 7 door is no piece to cut
    if (of_stock(text, pending.asked) and not counted_load(pending.asked)) or _of_centres(text, pending):
        return False
    if (face := face_told(text, pending)) is not None:
        c.finish(record, c.ways(face, pending.asked), face)
        return True
    text = with_their_openings(c, text, pending)
    text = _UNITS.get(text.strip(" .!").lower(), text) if pending.wanted == "bare" else text
    more, wanted = read_piece(text, pending, c.parameters)
    if pending.ways and not wanted:
        to_the_meant(more, text, pending)
    if pending.wanted:
        to_the_wanted(more, pending.asked, pending.wanted, anew=puts_right(text))
        thickness_told(more, pending.asked, pending.wanted, text)
    found = told_of_lists(more, pending.asked, pending.wanted, text)
    more = found or more
    nothing = not (more.givens or (more.manner and not pending.ways))  # "in metric" tells no two ways apart
    if nothing or found is None or told_as_price(text, pending) or of_other_things(text, more, pending):
        return False
    if pending.ways and _I_GOT.match(text):  # what was measured is no part of what is asked
        return False
    told = more.givens.get(pending.wanted)
    stated = in_its_words(text, pending) or states_it(text) or only_names(best, pending)
    alone = told is not None and (stated or below_zero(told, text))
    if best and best.topic != topic.name and best.score > more.score + ENOUGH and not alone:
        return False
    other = bool(pending.wanted) and pending.wanted not in more.givens
    if more.unplaced or (other and (len(more.unknown) > 1 or pending.ways)):  # is 0.00003 ft meant | steel
        return False
    if wanted in more.givens and not may_put_right(more.givens[wanted], pending.asked):
        beside_the_told(more, pending.asked, wanted)
        more.swaps = []  # what was asked for is the likeliest, and other places for it no doubt
    more = as_each_thing(of_each(more, pending.asked), text, still_asked(c, topic.name))
    return _worked_so(c, record, more, pending, text, best)


def _of_centres(text: str, pending: Pending) -> bool:
    """Whether a line tells centres where another length is waited for: 450 centres are no length to mark."""
    asked = pending.asked
    if asked is None or not pending.wanted or not _CENTRES.search(text):
        return False
    label = asked.topic.parameter(pending.wanted).label
    return asked.topic.parameter(pending.wanted).kind is Length and not re.search(r"cent(?:re|er)|spac|stud", label)


def _worked_so(
    c: Conversation, record: Record, more: Question, pending: Pending, text: str, best: Question | None
) -> bool:  # fmt: skip
    """Work what is open with what the reply tells; False where that can't be, and the line is a whole question of its own."""
    assert pending.asked is not None
    ways, more = ways_with(c, more, pending, text)
    left = [said for said in pending.left if said not in text]
    other = best is not None and best.topic != pending.asked.topic.name and best.whole and len(best.words) > 1
    if other and all(way.worked.refused for way in ways):
        return False  # a miter on a 135 corner, where that is no pitch
    listed_ = pending.ways or pending.asked.topic.name == "cut list"  # of whose pieces none is let fall
    if not (listed_ and still_no_place(c, record, pending, ways, left)):
        more.left = [*more.left, *left]
        c.finish(record, units_as_before(ways, c.earlier), more)
        kept_right(c, record, more, pending.asked)
    return True


# ── words heard with doubt ──


def other_lines(text: str, alternatives: Sequence[tuple[str, str]]) -> list[str]:
    """The line with each doubtful word as what it may have been: a word the ear doubted, or one that sounds like a number."""
    lines = [other.join(re.split(rf"\b{re.escape(word)}\b", text)) for word, other in alternatives] + otherwise(text)
    return [line for line in dict.fromkeys(lines) if line != text]


def doubted(c: Conversation, record: Record, text: str, under: Pending | None = None) -> bool:
    """Whether a number of the line was heard with doubt; if so the record asks which was said."""
    for line in other_lines(text, c.alternatives):
        said, other = numbers_in(text), numbers_in(line)
        if [row.value for row in said] != [row.value for row in other]:
            c.pending = Pending(lines=[text, line], under=under)
            put_asked(record, None, f"Did you say “{text.strip()}” or “{line.strip()}”?")
            return True
    return False
