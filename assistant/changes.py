"""The last question asked again with something changed: "and at eight twelve?", "no, nine twelve"."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant import acts, meant_for, no_change, replies, two_sizes
from assistant.acts.memory import asked_again, keep
from assistant.as_before import without_same
from assistant.asked_piece import to_the_wanted
from assistant.at_the_saw import pass_on
from assistant.by_size import doubt_the_odd, to_the_near
from assistant.change_words import in_its_names, is_no_change, one_for_another, say_what_it_is, with_percent, without_echo
from assistant.changed_says import correct_facts, text_changed, with_what
from assistant.claimed_anew import claimed_anew
from assistant.heard_all import unheard
from assistant.layer_changes import layers_changed
from assistant.listed_changes import put_into_lists, so_many_of, so_many_pieces
from assistant.meant_for import END, Wanted, labelled, names_no_new_given, put_in_place, targets_of, told_besides, turned_round
from assistant.named_none import apart, without_things
from assistant.names import SUM
from assistant.no_change import (
    in_a_list,
    left_over,
    names_it,
    no_area,
    of_each,
    only_in_words,
    talks_of_else,
    told_nothing,
)
from assistant.no_place import in_another_place
from assistant.other_leg import other_leg
from assistant.pending import Asked
from assistant.record import Record, put_asked, put_noted
from assistant.relative import by_so_much
from assistant.role_words import OF_A_SAW, holds_all, nearer_the_saw, only_as_counted
from assistant.said_over import OF_THEM, places_of, said_over, same_value
from assistant.share_of_last import share_anew
from assistant.should_be import told_by_place
from assistant.sold_told import to_the_stock
from assistant.stands_alone import of_another_topic, own_words, stands_alone
from assistant.story import told_changes
from assistant.through_last import through_last
from assistant.told_outright import told_outright
from assistant.told_values import tells_only
from assistant.units_kept import UNITS, in_its_unit, openings, units_as_before
from intents.expressions import expression
from intents.matcher import read_as
from intents.placing import ANYTHING
from intents.question import Heard, Question
from intents.talk import Said, gists_of, numbers_in, readings_in, talk_of
from solvers.quantities import Pitch, Quantity

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.ways import Way

LEVEL = 0.12  # topics this near in score are equally likely
MOST_WORDS, MOST_SAME = 60, 24  # of a change, of which the sets have 35; and of one that says what is as before
_NONE_OF = expression(
    r"\W*(?:no|zero|without)\s+[a-z]+(?:\s[a-z]+){0,2}(?: (?:at|on) (?:the |either |both |each )?(?:ends?|sides?))?\W*", re.I
)
_NO_GAPS = expression(r"\W*(?:and |with )?no (?:end )?(?:gaps?|spaces?)\b", re.IGNORECASE)  # which puts nothing right
_SOUNDS = {"for": "four", "fore": "four", "to": "two", "too": "two", "ate": "eight"}
_FOR_TWELVE = expression(r"\W*(for|fore|to|too|ate) (?:in )?(?:twelve|12)\b", re.IGNORECASE)
_ASKS = expression(r"\bhow (?:long|high|tall|many|much|far|wide|deep)\b|\bwhat(?:'s| is)\b", re.IGNORECASE)
_SPLIT = expression(r"\s*[,;:]\s*|\s+(?:but|it's|its|it is)\s+")

def change(c: Conversation, record: Record, text: str, said: Said | None, questions: list[Question]) -> bool:
    """Whether the line changes the question (or the value kept) before it; if so that is worked again."""
    if text.count(" ") > MOST_WORDS or (c.last is not None and is_no_change(text, questions, c.last)):
        return False
    if of_another_topic(c, next(iter(questions), None)):
        return False
    if c.last is not None and (share := share_anew(c, text)) is not None:
        c.work(record, share)
        return True
    if c.last is not None and through_last(c, record, text, said, questions, change):
        return True
    if _of_the_joint(c, record, text, said, questions):
        return True
    if _without_what_stays(c, record, text) or _none_apart(c, record, text) or _change(c, record, text, said, questions):
        return True
    if c.last is None or (questions and questions[0].whole and not tells_only(c, text, questions[0])):
        return False
    if meant_for.named_else(text, c.last):
        return False
    for told in told_changes(c, text, _wanted(text, said), c.last):
        if isinstance(told, Question):
            say_what_it_is(told, text, c.last)
            work_again(c, record, Wanted(text, led=True), [told])
        if isinstance(told, Question) or _ask_again(c, record, text, told, questions):
            return True
    return False


def _of_the_joint(c: Conversation, record: Record, text: str, said: Said | None, questions: list[Question]) -> bool:
    """Whether the line changes the joint that the saw was asked about, and not the saw: can it do that | and 88 (of a corner)."""
    saw = c.last
    if saw is None or saw.joint is None or c.pending is not None or OF_A_SAW.search(text) or nearer_the_saw(saw, text):
        return False
    c.last, trial = saw.joint, dict(record)
    if _change(c, trial, text, said, questions) and trial["outcome"] == "answered" and trial["topic"] == saw.joint.topic.name:
        record.update(trial)
        if saw.saw is not None and c.last is not None:
            pass_on(c, record, c.worked(c.last, c.last.givens), saw.saw)
            c.last.saw = saw.saw if c.last.joint is not None else None
        return True
    c.last, c.pending = saw, None
    return False


def _without_what_stays(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line changes the question once the words that name what is as before are left out."""
    less = without_same(text, c.last) if c.last is not None and text.count(" ") <= MOST_SAME else text
    gone = frozenset(re.findall(r"[a-z]+", text.lower())) - frozenset(re.findall(r"[a-z]+", less.lower()))
    stays = gone if gone.isdisjoint(("no", "without", "not")) else frozenset()  # with no kerf, zero
    return less != text and _change_less(c, record, less, sure=True, stays=stays)


def _none_apart(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line changes one thing of the question, and says that there is none of another: no overhang and 5.4 wide."""
    less, none = apart(text, c.last) if c.last is not None else (text, {})
    return bool(none) and _change_less(c, record, less, none=none)


def _change_less(
    c: Conversation, record: Record, less: str, sure: bool = False, stays: frozenset[str] = frozenset(),
    none: dict[str, Heard] | None = None,
) -> bool:  # fmt: skip
    """Whether a line without some of its words changes the question."""
    said = talk_of(less, c.places)
    questions = [question for question in c.read(less).questions if question.score > 0]
    if said is not None and said.topic not in acts.CHANGES:
        said = None
    return _change(c, record, less, said, questions, sure, stays, none)


def _change(
    c: Conversation, record: Record, text: str, said: Said | None, questions: list[Question],
    sure: bool = False, stays: frozenset[str] = frozenset(), none: dict[str, Heard] | None = None,
) -> bool:  # fmt: skip
    wanted = told_by_place(text, c.last) or _wanted(text, said)
    if wanted is None or no_change.running_total(questions):
        return False
    wanted.none = none or {}
    if c.last is not None and wanted.corrects:
        wanted.rest = _as_pitch(wanted.rest, c.last)
    wanted.line = record["heard"] if len(places_of(record["heard"])) == 1 else text
    wanted.stays = stays
    wanted.sure = sure or text.rstrip(" .!?").lower().endswith(" instead")
    if wanted.corrects and _statement(c, record, wanted, text):
        return True
    if wanted.led:  # the words that lead to a change are no words of a question
        questions = [question for question in c.read(wanted.rest).questions if question.score > 0]
    if c.just_kept and wanted.led and not questions and not _for_another(c, wanted) and _keep_again(c, record, wanted, text):
        return True
    if c.last is None or not wanted.rest:
        return False
    wanted = in_its_names(turned_round(wanted, c.last), c.last)
    return _ask_again(c, record, text, wanted, questions) or _by_gist(c, record, text, wanted, questions)


def _for_another(c: Conversation, wanted: Wanted) -> bool:
    """Whether a number that puts nothing right is for a given that the line before did not keep: the saw stops at 50 | and 44."""
    targets = targets_of(wanted, c.last) if c.last is not None and not wanted.corrects else []
    kept = {c.last.topic.parameter(name).slot.kept for name in targets} if c.last is not None else set()
    return bool(targets) and kept.isdisjoint(c.just_kept)


def _as_pitch(rest: str, last: Asked) -> str:
    """What puts a pitch right, where its rise was heard as a small word: "no, I said for twelve"."""
    sounds = _FOR_TWELVE.match(rest)
    pitched = any(isinstance(given.value, Pitch) and given.source != "assumed" for given in last.givens.values())
    return f"{_SOUNDS[sounds[1].lower()]} {rest[sounds.end(1) :].lstrip()}" if sounds and pitched else rest


def _by_gist(c: Conversation, record: Record, text: str, wanted: Wanted, questions: list[Question]) -> bool:
    """The change in a line that says more than it: "I read the gauge upside down, it should have been 95"."""
    found = gists_of(text, c.places) if wanted.led else ()
    said = next((gist for gist in found if gist.topic in acts.CHANGES), None)
    if said is None:
        return False
    inner = _wanted(text, said)
    return bool(inner and inner.rest != wanted.rest and _ask_again(c, record, text, inner, questions))


def _ask_again(c: Conversation, record: Record, text: str, wanted: Wanted, questions: list[Question]) -> bool:
    """Whether the line changes the question before it; if so that is asked again."""
    if c.last is None:
        return False
    if claimed_anew(c, record, wanted.rest):
        return True
    if pieces := so_many_of(wanted.rest, c.last) or so_many_pieces(wanted.rest, c.last):
        work_again(c, record, wanted, [pieces])
        return True
    bare = c.last.topic.name == "cut list" and wanted.rest.strip(" .!?").isdecimal() and not wanted.old
    more = [] if bare else by_so_much(wanted, c.last)  # so many pieces, or the stock
    if more is not None:
        work_again(c, record, wanted, more) if more else _ask_where(c, record, wanted, c.last)
        return True
    outright = told_outright(wanted, c.last)
    strange = two_sizes.of_no_wall(wanted, c.last) or of_each(wanted, c.last) or no_change.share_of_a_thing(wanted, c.last)
    if strange or no_change.spare_told(wanted, c.last) or (wanted.untold and not outright):
        _ask_where(c, record, wanted, c.last)
        return True
    found, text_now = outright or _readings(c, wanted, c.last, questions), ""
    elsewhere = bool(found) or meant_for.named_else(wanted.rest, c.last)
    over = None if elsewhere else said_over(c, c.last, wanted.rest, wanted.old, wanted.corrects, wanted.lead)
    other = over is not None and (meant_for.sold_so(over[0], c.last) or meant_for.called_else(wanted.rest, over[0], c.last))
    if over is not None and not (other or talks_of_else(over[0], wanted, c.last)):
        found, text_now = [over[0]], over[1]
    if not found or stands_alone(next(iter(questions), None), found[0], c.last, wanted):
        return False
    if replies.doubted(c, record, text):
        return True
    for each in found:
        each.givens = wanted.none | each.givens
    work_again(c, record, wanted, found, text_now)
    return True


def _wanted(text: str, said: Said | None) -> Wanted | None:
    if said is None or said.topic not in acts.CHANGES:
        return Wanted(text, led=bool(meant_for.SOLD_IN.fullmatch(text))) if said is None or said.loose else None
    words = said.words
    corrects = said.topic == "correct"
    each = one_for_another(text)
    if each is not None:
        return Wanted(each[2], each[1], corrects, True)
    if "swap" in words:
        parts = _SPLIT.split(words["swap"], maxsplit=1)
        old, rest = (parts[0], parts[1]) if len(parts) == 2 else ("", words["swap"])
        return Wanted(rest, old, True, True)
    rest = with_percent(without_echo(words.get("rest", "")), text)
    none = _NONE_OF.fullmatch(text) and not numbers_in(rest) and rest.lower() not in UNITS
    if corrects and rest and (none or _NO_GAPS.match(text)):
        return Wanted(text, "", corrects, True)  # "no waste" says how much
    return Wanted(rest, words.get("old", ""), corrects, True, text.partition(rest)[0] if rest else "")


def _statement(c: Conversation, record: Record, wanted: Wanted, text: str) -> bool:
    """A correction that names what it corrects ("no, the pitch is 6/12") is kept, if the line before kept something."""
    said = talk_of(wanted.rest, c.places) if wanted.rest and c.just_kept else None
    if said is None or said.topic != "remember":
        return False
    return acts.perform(c, record, said, text)


def _keep_again(c: Conversation, record: Record, wanted: Wanted, text: str) -> bool:
    """The value that the line before kept, said again."""
    name = list(c.just_kept)[-1]
    values = readings_in(wanted.rest)
    if not values or (_ASKS.search(wanted.rest) and not any(value.kind in ("pitch", "angle") for value in values)):
        return False  # the roof is 9/12 | and it's 22 foot 6 across, how high to the point
    if replies.doubted(c, record, text):
        return True
    talk = acts.Talk(c, record, Said("remember"), text)
    line = keep(talk, name, values, wanted.rest)
    if line is not None:
        c.kept_by.append((record, {name: c.just_kept[name]}))
        put_noted(record, "remember", f"Kept for this job: {line}")
        asked_again(talk)
    return True


def _readings(c: Conversation, wanted: Wanted, last: Asked, questions: list[Question]) -> list[Question]:
    """The change read against the last topic, once for each place that it could be meant for.

    `questions` is what its words come to alone: nothing, or as likely the last topic as any, and they can be read on.
    """
    in_words = numbers_in(wanted.old) and only_in_words(wanted, last)
    if in_words or OF_THEM.search(wanted.rest) or meant_for.named_else(wanted.rest, last):
        return []
    likely = [q.topic for q in questions if q.score >= questions[0].score - LEVEL]
    loosely = last.topic.name in likely if likely else wanted.led
    loosely = loosely or bool(meant_for.stock_told(wanted.rest, last))
    found: list[Question] = []
    loose = read_as(wanted.rest, last.topic.name, c.parameters, wanted=ANYTHING)
    layered = layers_changed(wanted.line or wanted.lead + wanted.rest, wanted.old, last, loose)
    if layered is not None:
        return layered
    named = labelled(wanted, last)
    targets = [] if in_a_list(loose) or told_besides(loose, last, wanted.rest) else targets_of(wanted, last)
    by_end = len(targets) == 1 and END.search(wanted.rest) is not None  # the long side, whichever that is
    by_end = by_end or meant_for.called_alike(wanted.rest, targets, last)
    for target in targets or [ANYTHING]:
        more = loose if target == ANYTHING else read_as(wanted.rest, last.topic.name, c.parameters, wanted=target)
        if target != ANYTHING and (wanted.old or target == named or by_end or not names_it(more, wanted, last)):
            put_in_place(more, last, target, wanted.rest)
        elif target != ANYTHING:
            to_the_wanted(more, last, target)
            meant_for.of_that_size(more, last, target)
        more.givens = {name: in_its_unit(heard, last.givens.get(name), last) for name, heard in more.givens.items()}
        without_things(more, wanted, last)
        only_as_counted(more, wanted.rest, last.topic)
        to_the_stock(more, wanted.rest, last)
        to_the_near(more, last, wanted.rest)
        doubt_the_odd(more, last)
        if told_nothing(more, wanted.rest, last):
            continue
        say_what_it_is(more, f"{wanted.lead} {wanted.rest}", last)
        if not more.manner and names_no_new_given(wanted.rest, more.givens, last):
            continue
        if not put_into_lists(more, last, wanted.line or f"{wanted.lead} {wanted.rest}", wanted.old):
            continue
        if talks_of_else(more, wanted, last) or no_area(more, last) or meant_for.sold_so(more, last):
            continue
        mine = set(more.words) if _tells_more(questions, last, more, wanted.rest) else set()
        if not mine.issuperset(left_over(more, wanted, last, loosely=loosely and len(targets) == 1)):
            continue
        if target in more.givens:
            more.swaps = []
        if all(more.givens != other.givens or more.manner != other.manner for other in found):
            found.append(more)
    return [more for more in found if holds_all(more, wanted.rest)] or found


def _tells_more(questions: list[Question], last: Asked, more: Question, text: str) -> bool:
    """Whether the line is the last question told in part and without its name, or no other and tells two givens of it:
    it sees -20 to 110."""
    best = questions[0] if questions else more
    if best.topic != last.topic.name and best.missing and own_words(best).isdisjoint(best.words):
        best, questions = more, []  # gains 4, of a board: half of another question, whose name is not said
    cued = all(last.topic.parameter(n).slot.cued for n, heard in more.givens.items() if isinstance(heard.value, Quantity))
    alone = bool(questions) or (cued and len(more.givens) > 1) or told_besides(more, last, text)
    return best.topic == last.topic.name and alone and bool(best.missing) and own_words(best).isdisjoint(best.words)


def work_again(c: Conversation, record: Record, wanted: Wanted, found: list[Question], text: str = "") -> None:
    """Work the last question again with what each of these changes of it; the record is of what comes of them."""
    last = c.last
    assert last is not None
    if other_leg(c, record, found, last):
        return
    corrected = last.record.get("id")
    ways: list[tuple[Way, Question]] = [(way, more) for more in found for way in c.ways(more, last)]
    answered = [(way, more) for way, more in ways if not way.worked.refused] or in_another_place(c, found[0], last) or ways[:1]
    answered = _one_as_it_was(answered, last)
    more = answered[0][1]
    if no_change.amiss(more, wanted.rest, last) or (not more.manner and _unchanged(wanted, last, answered[0][0].asked)):
        _ask_where(c, record, wanted, last)
        return
    if not text and _lets_fall(wanted, more, last, answered[0][0].asked):
        _ask_where(c, record, wanted, last)
        return
    c.finish(record, units_as_before([way for way, _ in answered], c.earlier), more)
    if c.last is not None and c.last is not last:
        c.last.changed, c.last.text = frozenset(more.givens), text or text_changed(last, more)
    if record["outcome"] == "answered" and c.last is not None:
        record["say"] = with_what(c.last, more) + record["say"]
    if wanted.corrects:
        if corrected:
            c.points.kind, c.points.at = "correction", corrected
        correct_facts(c, record, last, more)


def _unchanged(wanted: Wanted, last: Asked, now: Asked) -> bool:
    """Whether a number was said and nothing is other than it was, that number nowhere in it."""
    same = all(name in last.givens and same_value(given.value, last.givens[name].value) for name, given in now.givens.items())
    return same and bool(unheard(wanted.rest, now.givens.values()))


def _one_as_it_was(ways: list[tuple[Way, Question]], last: Asked) -> list[tuple[Way, Question]]:
    """Of two ways to take both numbers of a change, the one in which one of them is what it was: 54 in 90, after 50 in 90."""

    def keeps(way: Way, more: Question) -> bool:
        both = (name for name in more.givens if name in last.givens)
        return any(same_value(way.asked.givens[name].value, last.givens[name].value) for name in both)

    several = len(ways) > 1 and all(len(more.givens) > 1 for _, more in ways)
    kept = [pair for pair in ways if keeps(*pair)] if several else []
    return kept if len(kept) == 1 else ways


def _lets_fall(wanted: Wanted, more: Question, last: Asked, now: Asked) -> bool:
    """Whether a change of several numbers leaves one out that is no given, neither of the question as it was nor as it is."""
    places = [place for place in places_of(wanted.rest) if place.words != ("one",)]
    placed = [heard for heard in more.givens.values() if not isinstance(heard.value, tuple) or openings(heard.value)]
    spans = [(heard.start, heard.end) for heard in placed]
    left = [place for place in places if not any(start <= place.start < end for start, end in spans)]
    known = [*last.givens.values(), *now.givens.values()]
    return len(places) > 1 and any(unheard(wanted.rest[place.start : place.end], known) for place in left)


def of_numbers_alone(c: Conversation, record: Record, text: str, questions: list[Question]) -> bool:
    """Whether a line after an answer is a question of another topic by its numbers alone; then what they are is asked."""
    best = questions[0] if questions else None
    if c.last is None or best is None or {*best.words} - {"only"} or best.topic in (c.last.topic.name, SUM) or not c.last.givens:
        return False
    _ask_where(c, record, Wanted(text), c.last)
    return True


def _ask_where(c: Conversation, record: Record, wanted: Wanted, last: Asked) -> None:
    """Ask what a number is for, rather than answer as if it had not been said."""
    names = " or ".join(dict.fromkeys(f"the {last.topic.parameter(name).label}" for name in last.givens))
    put_asked(record, "correct" if wanted.corrects else "follow-up", f"What is “{wanted.rest.strip()}”: {names}?")
