"""Sentences that are story before a question: how the last one went, what the neighbour's measures, what it cost, who waits.

A sentence with a number in it is story where each of its clauses with a number tells of another job, of what was done, of
money, time, age or what lies ready. One that may say something of this job is none: "the overhang is a foot".
"""

from __future__ import annotations

import re
from collections.abc import Sequence
from itertools import pairwise
from typing import NamedTuple

from intents.asks_nothing import DONE, PEOPLE, clauses_of, is_number, somebody_did
from intents.expressions import expression
from intents.remarks import ASKING
from intents.tokens import tokenize

_SENTENCE = expression(r"(?<=[.!?;])\s+(?=\S)")
_SHORT = expression(r"\b(?:ft|in|sq|cu|fl|deg|oz|gal|yds?|approx|mm|cm|m|no|st|o\.c|vs)\.$", re.IGNORECASE)
_OTHER = frozenset("last other previous".split())
_THINGS = frozenset(
    "one ones house job gable wall side deck roof hip porch shed elevation lean barn place yard crew owner bay end load".split()
)
_ELSEWHERE = frozenset("neighbour neighbours neighbor neighbors opposite elsewhere theirs previous bricked".split())
_HERE = frozenset("this these ours mine here our".split())  # where another job's story comes to this one
_MONEY = frozenset(
    "dollar dollars buck bucks cents quid $ £ € price prices priced cost costs paid quote quoted hire charges charged"
    " deposit".split()
)
_BILL = frozenset("cost costs bill price much pay total come money spend".split())
# Money that is somebody's own, or what another asked for the lot; where it is by the foot or for each it is a price.
_THEIRS = frozenset("pocket wallet owe owes owed card quote quotes estimate estimates bid bids tender".split())
_DOUBTED = ("don't", "believe")
_RATE = frozenset("each apiece per a an every foot".split())
_TIME = frozenset(
    "hour hours minute minutes day days week weeks month months year years o'clock oclock summers winters nights"
    " knots miles".split()
)
_READY = expression(
    r"\b(?:on site|in stock|(?:in|on) (?:the|my|a) (?:box|truck|van|rack|bucket|shed|yard|pallet|trailer|lorry)|on \d+ pallets"
    r"|off ?-? ?cuts|helpers?|coffees|phones|boxes of|guys|lads|men|fellas)\b"
)
_TOOLS, _LEADS = frozenset("tape brake hoist lorry scaffold".split()), frozenset(("my", "the", "our"))
# What was done: not "had", "got", "found" or "said", after which a value of the job may stand.
_WAS = frozenset(
    "was were did went took ran fell broke paid bought ruined wasted stacked shimmed walked ended froze ate guessed".split()
)
_SPEC = frozenset("said told asked wanted wants had got gave knew put use used went with call measured".split())
_MATES = PEOPLE - frozenset("i we it who you they he she".split())
_STATES = frozenset("is are has have runs measures covers reads gets come comes takes goes".split())
_SHOWS = frozenset("says say reads read shows show".split())
_WANTED = (("i", "need"), ("i", "want"), ("i", "am"), ("we", "need"), ("we", "want"), ("went", "with"))
_DECIDED = frozenset("settled decided agreed".split())
_ON = "on"  # what was settled on holds
_WAVED_OFF = (("forget", "that"), ("forget", "it"), ("ignore", "those"), ("ignore", "that"), ("leave", "those"), ("not", "that"))
_OURS = frozenset(("ours", "mine", "here"))  # a sentence that begins so leaves another's behind
_HERE_IS = (["here", "is"], ["here", "are"], ["here", "goes"])  # here's the list
_OF_THE_JOB = frozenset(
    "overhang overhangs waste kerf lap laps lapped reveal window windows door doors opening openings starter exposure showing"
    " ratio limit stops moisture humidity".split()
)
_ADDED = frozenset(
    "same again more another rest altogether than instead remaining difference extra still those together combined besides"
    " twice double".split()
)
_AT_MOST = (("more", "no"), ("more", "not"), ("than", "more"), ("than", "less"), ("than", "over"))
_FETCHED = frozenset("order buy short fetch get".split())
_HELD = frozenset("already stock box boxes rack left truck van site bucket pallet pallets offcuts bought got spare shed".split())
_STUFF = frozenset("stuff kind sort boards board siding material thing".split())  # the same stuff is no more of it
_CARRIERS = frozenset("ton truck van boat trailer lorry ute pickup lift hoist canoe barrow men man lads hands cart".split())
_CARRY = frozenset("carry carries takes take holds hold lifts lift had hauls rated".split())
_LEFT_SIDE = frozenset("and hand end side".split())
MOST = 8  # sentences of a line that is looked at


def sentences(text: str) -> list[tuple[int, int]]:
    """Where the sentences of a text begin and end."""
    found: list[tuple[int, int]] = []
    start = 0
    for stop in _SENTENCE.finditer(text):
        if not _SHORT.search(text[start : stop.start()]) or text[stop.end()].isupper():
            found.append((start, stop.start()))
            start = stop.end()
    return [*found, (start, len(text))]


class Story(NamedTuple):
    """A sentence that is story, by its characters; whether it tells of another job."""

    start: int
    end: int
    another: bool


def stories_of(text: str) -> list[Story]:
    """The sentences before the last that are story."""
    spans = sentences(text)
    if not 1 < len(spans) <= MOST:
        return []
    said = [(start, end, _words(text[start:end])) for start, end in spans]
    if not _BILL.isdisjoint(said[-1][2]):
        said = [each for each in said if each is said[-1] or not _priced(each[2])]
    turns = [not _OURS.isdisjoint(words[:1]) and words[:2] not in _HERE_IS for _, _, words in said[1:]]
    pairs = zip(said, turns, strict=False)
    found = ((each, turned) for each, turned in pairs if is_story(each[2], turned))
    return [Story(start, end, turned or _of_another(words) or _surely(words)) for (start, end, words), turned in found]


def without_story(text: str, told: Sequence[Story]) -> str:
    """The text with blanks for its sentences of story; "" where what is left may be about them."""
    rest = text
    for start, end, _ in told:
        rest = f"{rest[:start]}{' ' * (end - start)}{rest[end:]}"
    story = [word for start, end, _ in told for word in _words(text[start:end])]
    return "" if _goes_on(_words(rest), story) else rest


def is_story(words: Sequence[str], turned: bool = False) -> bool:
    """Whether a sentence with a number in it tells nothing of this job; `turned`: the one after it begins with "ours is"."""
    if "?" in words or not any(map(is_number, words)) or not ASKING.isdisjoint(words[:1]) or not _HERE.isdisjoint(words):
        return False
    if any(pair in _WAVED_OFF for pair in pairwise(words)):
        return True
    if not _DECIDED.isdisjoint(words) and _ON in words:
        return False
    another = _of_another(words)
    if (not another and not _OF_THE_JOB.isdisjoint(words)) or any(pair in _WANTED for pair in pairwise(words)):
        return False
    return turned or _all_story(words, another)


def _all_story(words: Sequence[str], another: bool) -> bool:
    """Whether each clause with a number tells of what was done, or goes on from one that does."""
    led = False
    for clause in clauses_of(words):
        cued = another or _cued(clause)
        states = not _STATES.isdisjoint(clause) and not (another or _of_a_tool(clause) or _of_time(clause) or _at_once(clause))
        if any(map(is_number, clause)) and (states or not (cued or led)):
            return False
        led = led or cued
    return True


def _cued(clause: Sequence[str]) -> bool:
    """Whether words of a clause tell what was done, or of money, time, a tool or what lies ready."""
    if not (_MONEY | _WAS).isdisjoint(clause) or _of_time(clause) or _READY.search(" ".join(clause)):
        return True
    if _in_a_pocket(clause) or _at_once(clause):
        return True
    if "left" in clause and not _MATES.isdisjoint(clause[: clause.index("left")]):
        return True
    return _of_a_tool(clause) or (_SPEC.isdisjoint(clause) and (somebody_did(clause) or clause[0] in DONE))


def _surely(words: Sequence[str]) -> bool:
    """Whether a number in a sentence can be no value of the job: what is in a pocket, carried at once, or lies as scraps."""
    return _in_a_pocket(words) or _at_once(words) or "offcuts" in words or ["off", "cuts"] in map(list, pairwise(words))


def _of_time(clause: Sequence[str]) -> bool:
    """Whether what a clause counts is time, or how far the yard is."""
    return any(is_number(a) and b in _TIME for a, b in pairwise(clause))


def _priced(words: Sequence[str]) -> bool:
    """Whether a sentence tells a price as it now is, which where money is asked for is of the job."""
    return not _MONEY.isdisjoint(words) and _WAS.isdisjoint(words) and not _in_a_pocket(words)


def _in_a_pocket(words: Sequence[str]) -> bool:
    """Whether money or a number is of what somebody has or owes, or was quoted for the whole: no price of one."""
    whose = any(word in _THEIRS for word in words)
    if _DOUBTED in map(tuple, pairwise(words)):
        return True
    return whose and not any(is_number(a) and b in _RATE for a, b in pairwise(words)) and "$" not in _after_at(words)


def _after_at(words: Sequence[str]) -> Sequence[str]:
    """What is said after "at", as a price is: 14 squares at $390."""
    return words[words.index("at") + 1 :][:1] if "at" in words else ()


def _at_once(clause: Sequence[str]) -> bool:
    """Whether a clause tells what is carried at once: 400 kilos at a time, the truck takes 900 lb, 2 men can carry 6."""
    if any(clause[at : at + 3] == ["at", "a", "time"] for at in range(len(clause))):
        return True
    return not _CARRIERS.isdisjoint(clause[:4]) and not _CARRY.isdisjoint(clause)


def _of_a_tool(clause: Sequence[str]) -> bool:
    """Whether a clause tells how big a tool is; what a tape says is of the job."""
    if not _SHOWS.isdisjoint(clause):
        return False
    return not _TOOLS.isdisjoint(clause[:1]) or (clause[0] in _LEADS and not _TOOLS.isdisjoint(clause[1:2]))


def _of_another(words: Sequence[str]) -> bool:
    """Whether a sentence is about another job: the last one, the shed next door, his."""
    if not _ELSEWHERE.isdisjoint(words):
        return True
    found = {a for a, b in pairwise(words) if (a in _OTHER and b in _THINGS) or (a, b) == ("next", "door")}
    both = "one" in words or words.count("other") > 1  # one piece was cut at 44 and the other at 46
    return bool(found - {"other"}) or ("other" in found and not both)


def _goes_on(rest: Sequence[str], story: Sequence[str]) -> bool:
    """Whether what is left points back to the story, or asks what is wanted beside what is there."""
    added = (word for before, word, after in zip(("", *rest), rest, (*rest[1:], ""), strict=False)
             if word in _ADDED and (word, before) not in _AT_MOST and not (word == "same" and after in _STUFF))  # fmt: skip
    if any(added):
        return True
    if any(a == "left" and b not in _LEFT_SIDE for a, b in pairwise((*rest, ""))):
        return True
    priced = not _MONEY.isdisjoint(rest) or any("." in a and is_number(a) and b in _RATE for a, b in pairwise(rest))
    if not _BILL.isdisjoint(rest) and not _MONEY.isdisjoint(story) and not priced:
        return True
    return not _FETCHED.isdisjoint(rest) and not _HELD.isdisjoint(story)


def _words(text: str) -> list[str]:
    return [token.text for token in tokenize(text)]
