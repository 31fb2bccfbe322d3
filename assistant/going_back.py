"""Back to a question asked before: "back to the rake length", "go back to the first one", "back to the wall, but 40 long",
"ok back to the arch what radius if it's forty eight wide", "anyway, that rake again, but 9/12".

It is told by its topic, or by the things it was about in the words it was asked in, and becomes the last question again. It is
said again with its answer; what else the line says changes it, or asks something of it. A name that is of two questions goes
to the one whose own words the rest of the line has, or else to the later; one that is of none goes back to nothing.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from itertools import takewhile
from typing import TYPE_CHECKING

from rapidfuzz import fuzz

from assistant import changes
from assistant.heard_all import unheard
from assistant.likely_change import ALIKE, asks_something, asks_the_same
from assistant.line_apart import without_opening
from assistant.look_for_change import READ_WITH
from assistant.record import become, blank, put_asked
from assistant.said_over import places_of, stem, whole
from assistant.several import told_of
from assistant.speech import spoken
from assistant.spelled_out import spelled_out
from assistant.tail_clauses import GONE_BACK, look_past_remarks
from assistant.told_round import TAKES, put_back, state_of
from assistant.two_changes import in_two
from assistant.who_says_so import as_said, told_in
from intents.chart import LIGHT
from intents.expressions import expression
from intents.phrases import compiled
from intents.question import Question
from intents.tokens import tokenize

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

MOST = 12  # questions that can be gone back to, the last of each topic
LONGEST = 180  # characters of such a line
LONGEST_NAME = 4  # words of what is gone back to
_SO = r"(?:ok|okay|right|so|now|and|then|well|but|alright|all right|anyway|anyways|anyhow|sorry|thanks|cheers|good|great"
_SO += r"|grand|lovely|perfect|brilliant|fine)"
_GO = (
    r"(?:let['’]?s|can we|could we|please|we|i|take me|jump|go|going|get|getting|want to|need to|if we|if i|"
    r"where was i|where were we)"
)
_THAT = r"(?:just the one|just the|just that|that|the one(?= [a-z]+,)|the|this|those|these|them|my|our)"
_LEAD = rf"\W*(?:(?:{_SO}|{_GO})[ ,.:;/–—-]+)*"
_LINE = expression(
    rf"{_LEAD}(?:back|returning|return) (?:on ?to|on|to|at|with) (?:(?P<that>{_THAT}) )?(?P<line>.+)", re.IGNORECASE
)
_ANYWAY = expression(
    rf"\W*(?:{_SO}[ ,.:;/–—-]+)*(?:anyway|anyways|anyhow|right then|as i was saying|where (?:was|were) (?:i|we))[ ,.:;/–—-]+"
    rf"(?:so |and |now )?(?:about |for |on |with )?(?P<that>{_THAT}) (?P<line>.+)",
    re.IGNORECASE,
)
_AGAIN = expression(
    rf"{_LEAD}(?:about |for |on )?(?P<that>{_THAT}) (?P<line>[a-z]+(?: [a-z]+)? "
    r"(?:again|agin|from (?:before|earlier)|earlier|before|a minute ago|(?:we|i) (?:did|asked|had)(?: about)?(?: before"
    r"| earlier)?)"
    r"(?:\W.*)?)",
    re.IGNORECASE,
)
_AGAIN_BARE = expression(  # crown again. corner checked out at 92
    rf"{_LEAD}(?P<line>(?!(?:measured?|check|try|do|did|say|read|cut|run|count|go|work|figure|come|ask|tell|try|once"
    rf"|here|now|it)\b)"
    r"(?P<that>[a-z]+) (?:again|agin)(?:[.,:;]|\s[–—-])\s.*)",
    re.IGNORECASE,
)
_SAID_AGAIN = expression(r"\b(?:again|agin)\b", re.IGNORECASE)
_NAMED = expression(  # so that flashing, make the 3 1/2 a 4
    rf"{_LEAD}(?P<that>that|those|this|these) (?P<line>[a-z]+(?: [a-z]+)?(?:[,:;/]|\s[–—-]) ?\S.*)", re.IGNORECASE
)
_REST = expression(
    r"\W*(?:(?:again|agin|from (?:before|earlier)|earlier|before|a minute ago|(?:we|i) (?:did|asked|had)(?: about)?|now"
    r"|please|then"
    r"|but|only|question|one|job|bit|sum|problem|thing)\b[ ,.:;/–—-]*)*",
    re.IGNORECASE,
)
_ENDS = frozenset(
    "what whats how if at with for but only make and is was are it its use using on in to where which again".split()
)
_ASKED_HOW = expression(
    r"(?P<how>how (?:much|far|long|high|many|wide|deep|big))(?: [a-z'’]+){0,6}?"
    r"(?:[ ,]+(?P<rest>(?:on|with|at|for|if|but) .+))?",
    re.IGNORECASE,
)
_ALL_BUT = 78  # in a hundred, that a word with a slip in it is like the word
_WHOLE_WORD = 4  # letters of a word that may begin another
_FIRST = frozenset(("first", "beginning", "start", "original"))
_SMALL = frozenset("the a an of for in one question answer thing job bit problem sum again agin then before earlier from".split())
_AS_A_WORD = expression(r"[A-Za-z][A-Za-z'’-]*[,.:;/–—-]*")
_AS_NAME = expression(r"[A-Za-z]+(?: [A-Za-z]+){0,2}")
_OF_IT = expression(r"['’]s$", re.IGNORECASE)  # the corner's 94
_EACH = expression(r"\b(?:an?|per|each|every|to the) (?:square |lineal )?(?:foot|metre|meter|yard|square|inch)\b", re.IGNORECASE)
_STOPS = expression(r"[,.:;/–—-]+$")


def remember(c: Conversation, asked: Asked) -> None:
    """Keep a question that was answered, the last of its topic; its words in full, as lines after it are told by them.

    One of the same topic that it does not change (the other deck) is kept beside it, and so are the things it was about.
    """
    asked.text = spelled_out(asked.text)
    same = [old for old in c.earlier if old.topic is asked.topic and old is not asked]
    known = [each for old in same for each in (old, *old.siblings)]
    was = [{name: given.value for name, given in asked.givens.items()}, *asked.past[-1:]]  # said again, or changed
    base = next((old for old in known if {name: given.value for name, given in old.givens.items()} in was), None)
    base = base or next((old for old in known if _stands_on(asked, old)), None)
    said = takewhile(lambda line: line["outcome"] == "asks" and line["topic"] == asked.topic.name, reversed(c.records))
    lines = [asked.text, str(asked.record.get("heard", "")), *(str(line["heard"]) for line in said)]
    lines = [line for line in lines if not any(pattern.match(line.strip()) for pattern in (_LINE, _ANYWAY))]
    asked.things |= {stem(token.text) for line in lines for token in tokenize(line) if token.text.isalpha()}
    asked.things |= base.things if base is not None else frozenset()
    gone = base if base is not None else same[-1] if asked.past and same else None
    asked.siblings = tuple(old for old in known if old is not gone)[:MOST]
    c.earlier = [*(old for old in c.earlier if old.topic is not asked.topic), asked][-MOST:]


def _stands_on(asked: Asked, old: Asked) -> bool:
    """Whether a question was told one thing otherwise and has all else from one of its topic: how many now, with 12 inch laps."""
    told = [name for name, given in asked.givens.items() if given.source == "asked"]
    taken = {name: given.value for name, given in asked.givens.items() if given.source == "earlier"}
    same = all(name in old.givens and old.givens[name].value == value for name, value in taken.items())
    return len(told) == 1 < len(taken) and same and told[0] in old.givens


def goes_back(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line goes back to a question before; then that is answered again, changed by what else is said."""
    said = text.strip(" .!?") if len(text) <= LONGEST and c.pending is None else ""
    heard = record["heard"].strip(" .!?")  # as it was, with “again” in it, of which this line is no part
    heard = heard if said and _SAID_AGAIN.search(heard) and _began(heard) == _began(said) else said
    for pattern in (_LINE, _ANYWAY, _AGAIN, _AGAIN_BARE, _NAMED) if said and c.earlier else ():
        found = pattern.fullmatch(said) or (pattern.fullmatch(heard) if pattern in (_AGAIN, _AGAIN_BARE) else None)
        line = _without_its_number(c, found["line"]) if found is not None else ""
        if found is None or [place.start for place in places_of(line)][:1] == [0]:
            continue  # back to a value
        for what, rest in _parted(line):
            named = _meant(c, what, rest, bool(found["that"]))
            if pattern in (_ANYWAY, _NAMED) and c.last in named:
                return False
            if named:
                sure = pattern in (_LINE, _ANYWAY) or (pattern in (_AGAIN, _AGAIN_BARE) and bool(places_of(rest)))
                return _back_to(c, record, named, rest, sure)
        by_ask = _by_what_it_asked(c, found["line"]) if pattern is _LINE else None
        if by_ask is not None:
            return _back_to(c, record, [by_ask[0]], by_ask[1], sure=True)
        if pattern is _LINE and found["that"]:
            return _to_none(c, record, found["line"])
    return False


def _without_its_number(c: Conversation, line: str) -> str:
    """What is gone back to without the number it was told with: the 42 boards, of a question that had so many."""
    words, _, rest = line.partition(" ")
    first, thing = whole(words), re.match(r"[a-z]+", rest.lower())
    if first is None or thing is None:
        return line
    had = [
        asked for asked in c.earlier
        if asked is not c.last and stem(thing[0]) in asked.things
        and any(getattr(given.value, "value", None) == first.value.value for given in told_of(asked).values())
    ]  # fmt: skip
    return rest if had else line


def _began(line: str) -> list[str]:
    return re.findall(r"[a-z]+", line.lower())[:2]


def _by_what_it_asked(c: Conversation, line: str) -> tuple[Asked, str] | None:
    """The one earlier question that asked how much, or how far, as the line does, and what else that says: back to how much each
    one loses on that ten in twelve."""
    found = _ASKED_HOW.fullmatch(line.strip(" .!?"))
    asked = [each for each in c.earlier if found is not None and f"{found['how']} ".lower() in f"{each.text} ".lower()]
    return (asked[0], found["rest"] or "") if found is not None and len(asked) == 1 else None


def _to_none(c: Conversation, record: Record, line: str) -> bool:
    """Whether a line goes back to a thing that nothing was asked about, and tells a number of it: that changes nothing else."""
    words, stop, rest = line.partition(",")
    if not stop:
        words, stop, rest = line.partition(":")
    known = {stem(p.label) for p in c.last.topic.parameters} if c.last is not None else set()
    if not places_of(rest) or places_of(words) or not _AS_NAME.fullmatch(words) or known & {stem(w) for w in words.split()}:
        return False
    put_asked(record, "follow-up", f"{GONE_BACK}{words}: nothing was asked of it before. Say the whole question.")
    return True


def _parted(line: str) -> Iterator[tuple[str, str]]:
    """The words of a line that may name what is gone back to, the most first, and what is left."""
    words = line.split()
    most = 0
    for at, word in enumerate(words[:LONGEST_NAME]):
        if not _AS_A_WORD.fullmatch(word) or (at and _STOPS.sub("", word).lower().replace("'", "") in _ENDS):
            break
        most = at + 1
        if _STOPS.search(word):
            break
    for count in range(most, 0, -1):
        name, rest = " ".join(_STOPS.sub("", word) for word in words[:count]), _without_joints(" ".join(words[count:]))
        yield _OF_IT.sub("", name), f"it's {rest}" if _OF_IT.search(name) and places_of(rest) else rest


def _without_joints(rest: str) -> str:
    found = _REST.match(rest)
    return rest[found.end() :].strip(" ,.:;/–—") if found is not None else rest


def _back_to(c: Conversation, record: Record, named: list[Asked], rest: str, sure: bool) -> bool:
    """Whether one of the questions that a line may go back to is answered by it; where the line is sure to go back, what is
    left of it changes no other question: it is asked about."""
    before = state_of(c)
    if not rest:
        _again(c, record, named[0])
        return True
    for way in (_change_of, _line_of, _change_told_in, _two_of):
        for asked in named:
            c.last, trial = asked, blank(record["heard"], record["via"], c.job, record["file"])
            if way(c, trial, asked, rest):
                return _take(c, record, trial)
            put_back(c, before)
    if not sure or named[0] is c.last:
        return False
    c.last = named[0]
    given = [f"the {named[0].topic.parameter(name).label}" for name in told_of(named[0])]
    put_asked(record, "follow-up", f"{GONE_BACK}{named[0].topic.name}. What is “{rest}”: {' or '.join(given)}?")
    return True


def _change_of(c: Conversation, trial: Record, asked: Asked, rest: str) -> bool:
    return changes.change(c, trial, rest, None, []) and _heard_whole(c, trial, asked, rest)


def _line_of(c: Conversation, trial: Record, asked: Asked, rest: str) -> bool:
    """Whether what is left is a line of its own after the question gone back to, and lets nothing of that fall."""
    state = state_of(c)
    c.take(trial, without_opening(rest, asked))
    look_past_remarks(c, trial, rest, state)
    return _heard_whole(c, trial, asked, rest) and not _let_go(c, trial, asked)


def _change_told_in(c: Conversation, trial: Record, asked: Asked, rest: str) -> bool:
    """Whether what is left is a change with words that say what stays, or ask for the same again: still 100 long."""
    plain = next(told_in(as_said(rest), asked), rest)
    if plain == rest or (asks_something(rest) and not asks_the_same(rest, asked)):
        return False
    return changes.change(c, trial, plain, None, []) and _heard_whole(c, trial, asked, rest)


def _two_of(c: Conversation, trial: Record, asked: Asked, rest: str) -> bool:
    return in_two(c, trial, rest, asked, TAKES + len(rest))


def _let_go(c: Conversation, trial: Record, asked: Asked) -> bool:
    """Whether a line that was read as a question of its own has not what was told of the one gone back to."""
    if (asked.topic.name, trial["topic"]) in ALIKE:
        return True  # a plain corner, of one with a crown
    now = c.last
    if now is None or now is asked or now.topic is not asked.topic or trial["outcome"] != "answered" or now.changed:
        return False
    instead = {name for told in told_of(now) for name in now.topic.parameter(told).slot.instead}
    return bool(told_of(asked).keys() - told_of(now).keys() - instead)


def _heard_whole(c: Conversation, trial: Record, asked: Asked, rest: str) -> bool:
    """Whether what was left of a line was answered, no number of it let fall; or read off the page that is gone back to."""
    if trial["outcome"] == "noted":
        read = trial["say"].startswith(READ_WITH)  # with each vent at 50: so many
        return trial["topic"] == "explain" and bool(trial["also"]) and (read or not places_of(rest))
    if trial["outcome"] != "answered" or c.last is None:
        return False
    known = [*c.last.givens.values(), *asked.givens.values()]  # 94, not 92: what it was is of the question as it was
    told = [getattr(c.last.givens[name].value, "text", "") for name in c.last.changed if name in c.last.givens]
    for words in told:  # one in sixty, which is no one and no sixty
        rest = rest.replace(words, " ") if words else rest
    rest = _EACH.sub(" ", rest)
    return not unheard(rest, known) or (trial["topic"] != asked.topic.name and not places_of(rest))


def _take(c: Conversation, record: Record, trial: Record) -> bool:
    become(record, trial)
    if trial["outcome"] == "answered" and c.last is not None:
        c.last.record = record
        record["say"] = spoken(f"{GONE_BACK}{record['topic']}. ") + record["say"]
    return True


def _again(c: Conversation, record: Record, asked: Asked) -> None:
    """The answer of a question gone back to, once more."""
    c.last = asked
    c.finish(record, [c.worked(asked, told_of(asked))], Question(asked.topic.name))
    if c.last is not None:
        c.last.text = asked.text
    record["say"] = spoken(f"{GONE_BACK}{asked.topic.name}. ") + record["say"]


def _meant(c: Conversation, words: str, rest: str, article: bool) -> list[Asked]:
    """The questions answered before that these words may name, the likeliest first: by the name of the topic, or by their
    things where an article says that it is one ("back to plumb" is a choice)."""
    said = {stem(word) for word in words.lower().split()} - _SMALL
    if said <= _FIRST:
        return c.earlier[:1] if said and (not rest or not places_of(rest)) else []
    if places_of(words):
        return []
    if " ".join(words.lower().split()) in c.topics:
        return [asked for asked in c.earlier if asked.topic.name == " ".join(words.lower().split())]
    named = [asked for asked in c.earlier if said <= _topic_words(asked)]
    phrases = compiled()
    plain = {stem(word) for word in phrases.fillers | LIGHT}
    every = [each for asked in c.earlier for each in (*reversed(asked.siblings), asked)] if article and said - plain else []
    about = [asked for asked in every if all(_is_about(asked, word) for word in said)]
    whole = [*(asked for asked in about if asked not in named), *named] or _by_a_part(c, said - plain, article)
    told = {stem(token.text) for token in tokenize(rest)}
    order = {id(asked): at for at, asked in enumerate([*every, *named])}
    return sorted(whole, key=lambda asked: (len(told & _asks_words(asked)), order[id(asked)]), reverse=True)


def _by_a_part(c: Conversation, said: set[str], article: bool) -> list[Asked]:
    """The one question that a part of a name, or one with a slip in it, may be of: the siding boards, the nials; the count."""
    long = [word for word in said if len(word) >= _WHOLE_WORD]
    near = [asked for asked in c.earlier if any(_all_but(word, thing) for word in long for thing in asked.things)]
    counts = [asked for asked in c.earlier if (asked.record.get("answer") or {}).get("unit") == "count"]
    found = near or (counts if said == {"count"} else [])
    return found if article and len(found) == 1 else []


def _all_but(word: str, thing: str) -> bool:
    return fuzz.ratio(word, thing) >= _ALL_BUT or (len(word) == len(thing) and sorted(word) == sorted(thing))


def _is_about(asked: Asked, word: str) -> bool:
    """Whether a question was about a thing of that name: the wrap, where the house is being wrapped."""
    known = asked.things | _topic_words(asked) | _kept_words(asked)
    return word in known or (len(word) >= _WHOLE_WORD and any(thing.startswith(word) for thing in known))


def _topic_words(asked: Asked) -> set[str]:
    return {stem(word) for word in asked.topic.name.split()}


def _asks_words(asked: Asked) -> set[str]:
    """The words of what a question answers."""
    answer = asked.record.get("answer") or {}
    return _topic_words(asked) | {stem(word) for word in str(answer.get("name", "")).lower().split()}


def _kept_words(asked: Asked) -> set[str]:
    """What a question was about, by the names of what it was given."""
    kept = (asked.topic.parameter(name).slot.kept or "" for name, given in asked.givens.items() if given.source != "assumed")
    return {stem(word) for name in kept for word in name.split()}
