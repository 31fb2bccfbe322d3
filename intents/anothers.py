"""What is told of somebody else's work: "my brother put 9 on his", "the neighbour's is 8/12", "the last one was 92".

It is no given of what is asked, unless this is to be the same, so where a question took it the question lacks that given.
"""

from __future__ import annotations

from itertools import pairwise

from intents.chart import Chart
from intents.question import Question
from intents.remarks import ASKING
from intents.second_reader import places_of
from solvers.quantities import Count, Length, Quantity

_THEIRS = frozenset("his hers theirs".split())
_OTHERS = frozenset("neighbour neighbours neighbour's neighbor neighbors neighbor's".split())
_PAIRS = frozenset((("next", "door"), ("last", "one"), ("last", "job"), ("last", "house"), ("other", "house"), ("other", "job")))
_SAME = frozenset("same like match matches matching as copy too also alike mine ours this both and that's it's".split())
_LEADS = frozenset("the my our on and but so at".split())
_SAYS, _OURS = frozenset("says said reckons thinks told tells".split()), frozenset("my our me us".split())
_BOXES = frozenset("boxes packs tubs bags".split())
_TRUCKS = frozenset("truck van lorry trailer ute pickup".split())
_STOPS = frozenset(".?!;")
_BEGINS = 3  # words of a sentence in which it says whose it is
CUES = _THEIRS | _OTHERS | frozenset(("next", "last", "other"))


def of_another(chart: Chart, question: Question) -> None:
    """Take away the givens that are told in a sentence of somebody else's."""
    words = chart.words
    if not (_TRUCKS.isdisjoint(words) and _BOXES.isdisjoint(words)):
        _in_the_truck(chart, question)
    if CUES.isdisjoint(words):
        return
    for name, heard in list(question.givens.items()):
        if isinstance(heard.value, Quantity) and heard.end > heard.start and _of_another(words, *places_of(chart, heard)):
            del question.givens[name]
            question.missing, question.swaps = [*question.missing, name], []


def _in_the_truck(chart: Chart, question: Question) -> None:
    """Take away what is how many there are of a thing: the 12 footers came in, | 30 on the truck; | 6 boxes of 100."""
    for name, heard in list(question.givens.items()):
        if not isinstance(heard.value, Length | Count) or not heard.text.isdecimal():
            continue
        _, end = places_of(chart, heard)
        after = chart.words[end : end + 3]
        if isinstance(heard.value, Count):
            there = question.topic == "fasteners" and name == "rows" and not _BOXES.isdisjoint(after[:1])
        else:
            there = after[:1] in (["on"], ["in"]) and after[1:2] == ["the"] and not _TRUCKS.isdisjoint(after[2:])
        if there:
            del question.givens[name]
            question.missing, question.swaps = [*question.missing, name], []


def _of_another(words: list[str], start: int, end: int) -> bool:
    """Whether the sentence that a quantity stands in tells of somebody else's, and asks nothing; the question is in another."""
    first = max((at + 1 for at in range(start) if words[at] in _STOPS), default=0)
    last = next((at for at in range(end, len(words)) if words[at] in _STOPS), len(words))
    told = words[first:last]
    if last - first >= len(words) - 1 or not ASKING.isdisjoint({*told} - {"is", "are"}) or not _SAME.isdisjoint(words):
        return False
    if not _SAYS.isdisjoint(told) and not _OURS.isdisjoint(told):
        return False  # the man next door says my roof is a 4 in 12
    if words[last - 1] in _THEIRS and end >= last - _BEGINS:
        return True
    lead = [word for word in told if word not in _LEADS][:_BEGINS]
    return lead[:1] != ["is"] and (not _OTHERS.isdisjoint(lead[:1]) or not _PAIRS.isdisjoint(pairwise(lead)))
