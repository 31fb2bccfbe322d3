"""Lines that ask for nothing: a story, what somebody said, what hurts, what one would sooner have.

A person at the saw asks with a question word, an order or a bare list of values, or states values as they now are. A line
each of whose clauses tells what was done, or remarks on it, is none of that, though it may hold all the givens of a topic.
One clause with a value of the job in it ("use mine, 6 max") and it may be a question after all.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Sequence
from functools import cache
from itertools import pairwise
from pathlib import Path

from intents.chart import LIGHT
from intents.expressions import expression
from intents.grammars import FOLDER
from intents.number_words import SMALL, TENS
from intents.phrases import compiled
from intents.tokens import tokenize

PEOPLE = frozenset(
    "i we he she they you somebody someone nobody everybody everyone anyone who lad lads fella fellas fellow man men guy guys"
    " boss brother sister dad granddad grandad grandpa father uncle cousin wife husband mother mum neighbour neighbor mate mates"
    " crew inspector painter roofer plumber mason carpenter foreman client owner owners kid kids dog cat apprentice helper driver"
    " builder timer".split()
)
# What people did. Verbs of measuring (got, found, read, made it, came to) are not here: they tell values of the job.
DONE = frozenset(
    "said asked told went ran took gave knew fell drove blew broke wore threw thought forgot did had was were put hung paid"
    " bought sold lost ate drank sang swore hated loved liked laughed used finished started dropped picked called worked quoted"
    " charged walked climbed scribed nailed stood lifted carried loaded never brought sent kept spent hired fought argued shouted"
    " moved slept stayed burned burnt froze borrowed wrote ripped shimmed didn't wasn't weren't hadn't".split()
)
_WAS = frozenset(
    "was were wasn't weren't did didn't hadn't said went ran took gave knew fell drove blew broke wore threw thought forgot came"
    " rained snowed froze never".split()
)
_BEGUN = frozenset("had put hung paid bought lost picked dropped finished started worked spent broke carried ripped".split())
_ASKING = frozenset(
    "? how what what's whats where where's which when why can could will would should shall may does dose do give gimme tell wish"
    " or find work figure calculate compute need needs want wants show please pls let's lets let check convert divide add"
    " subtract say wondering wonder curious looking trying set must order buy make take use go try call split lay mark total"
    " altogether sum cost count weight area".split()
)
_AT_ONCE = frozenset("how what what's whats where give find".split())  # one of these settles it, whatever the clause
_REPORTED, _OF_WHICH = frozenset(("said", "asked")), frozenset("which who why when".split())  # I said which side
_ASKING_FIRST = frozenset("is are am".split())
_DAYS = frozenset(
    "today yesterday monday tuesday wednesday thursday friday saturday sunday morning afternoon tonight once".split()
)
_BODY = frozenset("back knees knee arms arm legs shoulder shoulders wrist wrists neck feet elbow hands".split())
_SOONER, _THAN = frozenset("sooner rather".split()), "than"
_LEADS = (("i", "remember"), ("it", "rained"), ("it", "snowed"))
_OPENS = frozenset("and but so then because cause 'cause well".split())
_REMARKS = frozenset("less never like you it's that's nobody everyone everybody typical mad lovely".split())
_WHOSE = frozenset("his her their somebody's someone's".split())
_HOW_MUCH = frozenset("how what what's whats which where angle".split())
_PASSED_ON = frozenset(
    "is are was were did does do has have had can will comes come came goes go needs need whether if that to he she they we"
    " i".split()
)
_OURS = frozenset(("my", "the", "our"))
_OF_THE_JOB = frozenset("framed pitched measured checked taped marked spaced lapped sloped".split())  # "we framed it at 7/12"
_IT = frozenset("it them me us him".split())
_BETWEEN = 2  # words between who did it and what
_JOINS = frozenset(("and", "but"))
_STOPS = frozenset(".,;!:-()")
_SIGNS = expression(  # without one of these no line is looked at
    rf"\b(?:{'|'.join(sorted(DONE))}|remember|rained|snowed|sooner|rather|tell|ask|my (?:{'|'.join(sorted(_BODY))})"
    rf"|\w+ed (?:{'|'.join(sorted(_IT))}))\b",
    re.IGNORECASE,
)


_TAPE_BURNED = expression(r"\b(?:burned|burnt)\b(?: \w+){0,3} (?:inch|inches|foot|mm|mil|cm|centimetres?)\b", re.IGNORECASE)


def asks_nothing(text: str, folder: Path = FOLDER) -> bool:
    """Whether every clause of the line tells what was, or remarks on it, and one tells what somebody did."""
    if "?" in text or _TAPE_BURNED.search(text) or not _AT_ONCE.isdisjoint(text.lower().split()) or not _SIGNS.search(text):
        return False
    words = [token.text for token in tokenize(text)]
    if _prefers(words) or _to_another(words, folder):
        return True
    strong, before = False, ""
    for clause in clauses_of(words):
        how = _told(clause, before, folder)
        if not how:
            return False
        strong, before = strong or how == "done", how
    return strong


@cache
def _trade(folder: Path) -> frozenset[str]:
    """The words that are of the trade wherever they are said."""
    phrases = compiled(folder)
    return frozenset(phrases.vocabulary - phrases.ordinary - phrases.fillers)


@cache
def _known(folder: Path) -> frozenset[str]:
    """The words that are no name: Danny put 18 on."""
    phrases = compiled(folder)
    return frozenset(phrases.vocabulary | phrases.ordinary | phrases.fillers | phrases.talk | LIGHT)


def _told(clause: Sequence[str], before: str, folder: Path) -> str:
    """How a clause tells: something "done", what it "was", a "remark", or "" where it may be a question's."""
    if tuple(clause[:2]) in _LEADS or clause[:3] == ["used", "to", "be"]:
        return "done"
    reported = _OF_WHICH if not _REPORTED.isdisjoint(clause) and not any(map(is_number, clause)) else frozenset[str]()
    if not (_ASKING - reported).isdisjoint(clause) or clause[0] in _ASKING_FIRST:
        return ""
    whose = of_another(clause)
    if not whose and "there" not in clause and any(a in _ASKING_FIRST and is_number(b) for a, b in pairwise(clause)):
        return ""  # the roof is 8/12 though he said ten
    named = clause[0].isalpha() and clause[1:2] != [] and clause[1] in DONE - _WAS and clause[0] not in _known(folder)
    if named or somebody_did(clause) or (clause[0] == "my" and not _BODY.isdisjoint(clause[1:3])):
        return "done"
    if not _WAS.isdisjoint(clause) or clause[0] in _BEGUN or whose or _in_a_year(clause) or _so_often(clause):
        return "was"
    if before == "done" and (clause[0] == "each" or "there" in clause[:2]):
        return "was"
    if not any(map(is_number, clause)) and (clause[0] in _REMARKS or "like" in clause or _trade(folder).isdisjoint(clause)):
        return "remark"
    return ""


def _in_a_year(clause: Sequence[str]) -> bool:
    """Whether a clause tells of a year that has been: forty below in 1989."""
    return any(a in ("in", "since") and b.isdecimal() and b[:2] in ("19", "20") and len(b) == 4 for a, b in pairwise(clause))


def _so_often(clause: Sequence[str]) -> bool:
    """Whether it was done so many times: he'd measured it | 5 times."""
    return clause[-1] == "times" and len(clause) > 2 and is_number(clause[-2]) and clause[0] in ("he'd", "she'd", "they'd", "he")


def somebody_did(clause: Sequence[str]) -> bool:
    """Whether a clause tells what a person did: "old Frank scribed it", "the dog ate", "put 4 up today"."""
    if clause[0] in _BEGUN and not _DAYS.isdisjoint(clause):
        return True
    for at, word in enumerate(clause):
        if word in DONE and not PEOPLE.isdisjoint(clause[max(0, at - _BETWEEN) : at]):
            return True
        if word in DONE and list(clause[max(0, at - 2) : at]) == ["no", "one"]:
            return True
        it = at and clause[at - 1].isalpha() and not _IT.isdisjoint(clause[at + 1 : at + 2])
        if it and word.endswith("ed") and word not in _OF_THE_JOB:
            return True
    return False


def of_another(clause: Sequence[str]) -> bool:
    """Whether a clause is about what is somebody else's: "my brother's gable is"."""
    whose = clause[0] in _OURS and clause[1:2] != [] and clause[1] in PEOPLE
    return clause[0] in _WHOSE or (whose and len(clause) > 2 and clause[2] not in DONE)


def _prefers(words: Sequence[str]) -> bool:
    """Whether one thing is liked more than another, and that is all: "I'd sooner have mesh than strapping any day"."""
    if words[:1] != ["i'd"] or _SOONER.isdisjoint(words[1:3]) or _THAN not in words:
        return False
    after = words[words.index(",") :] if "," in words else ()
    return _ASKING.isdisjoint(words) and not any(map(is_number, after))


def _to_another(words: Sequence[str], folder: Path) -> bool:
    """Whether it is said to be passed on: tell Marek the scaffold comes down, ask him did it come in."""
    if words[:1] not in (["tell"], ["ask"]) or len(words) < 3 or not _HOW_MUCH.isdisjoint(words):
        return False
    if _PASSED_ON.isdisjoint(words):
        return False  # tell him the miter for a 92 degree corner
    return words[1] in _IT - {"us", "me", "it"} or (words[1].isalpha() and words[1] not in _known(folder))


def is_number(word: str) -> bool:
    return word[:1].isdecimal() or word in SMALL or word in TENS


def clauses_of(words: Sequence[str]) -> Iterator[list[str]]:
    """The stretches between stops, and those that begin anew with "and" and one who does something; openers left off."""
    start = 0
    for end in range(len(words) + 1):
        if end < len(words) and words[end] not in _STOPS and not (words[end] in _JOINS and _anew(words, end + 1)):
            continue
        clause = list(words[start:end])
        while clause and clause[0] in _OPENS:
            clause.pop(0)
        if clause:
            yield clause
        start = end + (end < len(words) and words[end] in _STOPS)


def _anew(words: Sequence[str], at: int) -> bool:
    """Whether a clause of its own begins at a place: and old Frank scribed it, and there was no such thing."""
    return any(word in DONE or word in _WAS or word in ("there's", "is", "are") for word in words[at : at + 4])
