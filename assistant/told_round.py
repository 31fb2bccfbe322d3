"""A question with a story round it: "the ramp wall came out at 6 in four hours. Now the lake wall, 103 1/2, 7 at most?".

Where a line came to no answer, and without its sentences of story it is a question by itself with a place for all that it
says, that is answered, and what was left out is said. Where it came to another answer with them than without, it asks.
"""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from itertools import islice
from typing import TYPE_CHECKING, TypeVar

from assistant.change_learned import strange_words
from assistant.pending import Asked, Pending
from assistant.record import KEPT, Record, become, blank, given_lines, leave_out, put_asked
from assistant.said_over import Place, places_of
from assistant.told_by_clauses import look_past_clauses
from assistant.ways import Way, same_answer, which_way
from intents.elsewhere import outside_of
from intents.stories import Story, stories_of, without_story
from solvers.quantities import Length
from solvers.registry import work_out

if TYPE_CHECKING:
    from assistant.conversation import Conversation

State = tuple[object, ...]
Left = TypeVar("Left")
MOST_TRIALS = 2  # shorter ways in which a line is taken again
MOST_READ = 240  # signs that are read for a line at the most, its shorter ways included: each takes as long as a question does
MOST_HEARD = 1000  # and with each doubtful word heard the other way
MOST_TAKEN = 340  # and that are taken as a line: of 9,132 lines of talk two were good by what was tried past that
STRANGE, SHORTER = 2, 260  # words that no grammar knows, from which on fewer are: of hardly any such line a shorter way is good
TAKES = 60  # signs that each taking comes to, besides its own: most of it is the same for a short line
COSTLY = {"take-off": 20}  # and each working of such a topic: most of a line's time goes there
SUMS = frozenset(("tape arithmetic", "conversion"))  # in which what was done may be what is asked


def state_of(c: Conversation) -> State:
    """What a line may change of a conversation, besides the values of the job."""
    return c.pending, c.last, c.points, c.just_kept, c.statements, c.waiting, c.earlier


def put_back(c: Conversation, state: State) -> None:
    """Make a conversation what it was."""
    c.pending, c.last, c.points, c.just_kept, c.statements, c.waiting, c.earlier = state  # type: ignore[assignment]


def may_read(c: Conversation, line: str, most: int) -> bool:
    """Whether one more text may be read for a line, of which `most` signs are read in all."""
    return line in c.reads or sum(map(len, c.reads)) + len(line) <= most


def may_take(c: Conversation, line: str, before: int = 0) -> bool:
    """Whether a line may be taken in one way more: all its ways, but those before this was tried, take as long as a long line."""
    taken = c.taken - before + TAKES + len(line)
    return taken <= SHORTER or (taken <= MOST_TAKEN and strange_words(line) < STRANGE)


def take_shorter(
    c: Conversation, record: Record, text: str, before: State, ways: Iterable[tuple[str, Left]],
    good: Callable[[Record, Left], bool],
) -> bool:  # fmt: skip
    """Whether a line, taken again from a state by each of its shorter ways, was good by one of them; then it is that.

    A way is the words, and what they leave out, the likeliest first: of 9,366 lines none was good by a second. Where none is
    good the conversation is what it was.
    """
    after = state_of(c)
    for less, left in islice(ways, MOST_TRIALS):
        if not may_read(c, less, MOST_READ) or not may_take(c, less):
            break
        put_back(c, before)
        trial = blank(text, record["via"], c.job, record["file"])
        c.take(trial, less)
        if good(trial, left):
            become(record, trial)
            if trial["outcome"] == "answered" and c.last is not None:
                c.last.record = record
            return True
    put_back(c, after)
    return False


def look_past_story(c: Conversation, record: Record, text: str) -> None:
    """Answer a line that came to nothing without its story; ask where that would change the answer it came to."""
    told = stories_of(text) if record["outcome"] in ("asks", "declined", "answered") else []
    rest = without_story(text, told) if told and outside_of(text) is None else ""
    if not rest:
        look_past_clauses(c, record, text)
        return
    before = state_of(c)
    trial = blank(text, record["via"], c.job, record["file"])
    c.pending = c.last = None
    c.take(trial, rest)
    question = next((q for q in c.read(rest).questions if q.topic == trial["topic"]), None)
    good = trial["outcome"] == "answered" and question is not None and question.claim is None
    without, taken = c.last, good and c.last is not None and not _wanted(c, text, told)
    if record["outcome"] != "answered" and taken and without is not None:
        _take(record, trial, _numbers(text, told))
        without.record = record
        return
    put_back(c, before)
    look_past_clauses(c, record, text)
    if record["outcome"] == "answered" and good:
        _ask_which(c, record, without)


def _take(record: Record, trial: Record, left: list[str]) -> None:
    """Make the record that of the question without its story, with what was left out."""
    become(record, trial)
    leave_out(record, left)


def _ask_which(c: Conversation, record: Record, without: Asked | None) -> None:
    """Ask where a number of the story went into the answer, and the question is whole without it: 14 courses short."""
    asked = (c.last, without)
    ways = [Way(each, work_out(each.topic, each.givens, each.tape_step, each.metric)) for each in asked if each]
    if len(ways) < len(asked) or ways[0].worked.topic is not ways[1].worked.topic or same_answer(w.worked for w in ways):
        return
    topic = ways[0].worked.topic
    givens = given_lines(topic, ways[0].worked.givens)
    kept = {name: record[name] for name in KEPT}
    record.update(blank(record["heard"], record["via"], record["job"], record["file"]), **kept)
    put_asked(record, topic.name, which_way(ways), givens)
    c.pending, c.last = Pending(ways[0].asked, ways=ways), None


def _wanted(c: Conversation, text: str, told: Sequence[Story]) -> bool:
    """Whether the story may hold what the answer took from elsewhere: a default, or what the job knows."""
    assert c.last is not None
    topic, givens = c.last.topic, c.last.givens
    if any(given.source == "job" for given in givens.values()):
        return True
    here = [story for story in told if not story.another]
    if here and topic.name in SUMS:
        return True
    said = [place for place in places_of(text) if any(s.start <= place.start < s.end for s in here)]
    assumed = [topic.parameter(name) for name, given in givens.items() if given.source == "assumed"]
    if any(type(place.value) is parameter.kind for place in said for parameter in assumed):
        return True
    listed = any(isinstance(given.value, tuple) for given in givens.values())
    if listed and any(isinstance(place.value, Length) and not _in_the(text, place) for place in said):
        return True  # it may be one more of the list
    whole = next((q for q in c.read(text).questions if q.topic == topic.name), None)
    placed = whole.givens.items() if whole else ()
    took = {name for name, heard in placed if any(s.start <= heard.start < s.end for s in here)}
    return any(name not in givens or givens[name].source == "assumed" for name in took)


def _numbers(text: str, told: Sequence[Story]) -> list[str]:
    """The quantities of the story in the person's own words; "500 in the box" is 500."""
    places = [place for place in places_of(text) if any(s.start <= place.start < s.end for s in told)]
    places = [place for place in places if place.words != ("one",)]  # the one before
    ends = [place.end - 3 if _in_the(text, place) else place.end for place in places]
    return [text[place.start : end] for place, end in zip(places, ends, strict=True)]


def _in_the(text: str, place: Place) -> bool:
    """Whether what reads as inches is none: 500 in the box, 40 in stock."""
    return text[place.end - 3 : place.end] == " in" and text[place.end : place.end + 5] in (" the ", " stoc")
