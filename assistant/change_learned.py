"""What was learned of lines that follow a question: whether one stays with it, and which given each of its numbers is of.

Two log-linear models over what is seen of the line and of the question before it, made from the question sets by
`python -m tests.learning_talk` and kept in grammars/talk.json as whole hundredths. No number is learned by heart: of one it
is seen how near it is to what the given was, and how it is said. Nothing is learned at run time.
"""

from __future__ import annotations

import json
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import replace
from functools import cache, lru_cache
from math import exp, log, log2
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from intents.features import mentions, of_mentions, of_sentence
from intents.grammars import FOLDER
from intents.learned import NOTHING, SCALE, learned, shares_of
from intents.matcher import Topics, full_chart, likely_topics
from intents.phrases import compiled
from intents.question import Heard
from intents.second_reader import heard_any, may_be, told_of
from solvers.quantities import Length, Quantity

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from solvers.slots import Given

FILE = "talk.json"
LEAST_SHARE, LEAST_LOG = 0.003, -8.0  # a topic or a role less likely than this is as unlikely as any
MOST_WORDS, MOST_NUMBERS = 20, 4  # of a line: more are all one
BARE = ("none", "count", "")  # units of what was said without one
FAR = (0.15, 0.35, 0.7, 1.2, 2.0, 3.0, 5.0)  # doublings from what a given was, by which numbers are told apart
FARTHEST = 6.0
LATELY = 8  # lines whose words are kept as they were seen
PLAINLY = 1.0  # doublings by which another given is farther where it is plainly not meant

Seen = dict[str, float]  # what is seen, and how much of it


class Number(NamedTuple):
    """A number of a line, what it would be as each given of a topic, and how likely it is that by the words beside it alone."""

    start: int
    end: int
    text: str
    kind: str
    unit: str
    parts: int  # of a size like 10 by 12; 0 where it is none
    heard: dict[str, Heard]
    shares: dict[str, float]  # logarithms; NOTHING for none of them
    hinted: frozenset[str]  # the givens that the grammar would give it to


class Model(NamedTuple):
    """The weights, as hundredths, by what is seen."""

    stays: Mapping[str, float]
    given: Mapping[str, float]

    def stay(self, seen: Seen) -> float:
        """How likely a line is about the question before it."""
        return 1 / (1 + exp(-_score(self.stays, seen)))

    def roles(self, each: Sequence[Seen]) -> list[float]:
        """How likely each of the roles is that a number could have; adds up to 1."""
        return shares_of([_score(self.given, seen) for seen in each])


def _score(weights: Mapping[str, float], seen: Seen) -> float:
    return max(-500.0, min(500.0, sum(weights.get(name, 0) * much for name, much in seen.items()) / SCALE))


@cache
def model(folder: Path = FOLDER) -> Model | None:
    """The models of a folder; None where it has none."""
    file = folder / FILE
    if not file.exists():
        return None
    kept = json.loads(file.read_text(encoding="utf-8"))
    return Model(kept["stays"], kept["given"])


def question_before(c: Conversation) -> tuple[Asked | None, str]:
    """The question that a line may be of: the one that waits for a piece, and the name of that; else the last one."""
    if c.pending is None:
        return c.last, ""
    waits = c.pending.asked is not None and c.pending.wanted and not c.pending.ways
    return (c.pending.asked, c.pending.wanted) if waits else (None, "")


def numbers_of(text: str, last: Asked) -> list[Number]:
    """The numbers of a line, as what they could be of the question before it."""
    chart, known = full_chart(text), learned(FOLDER)
    if known is None:
        return []
    found, topic = mentions(chart), last.topic.name
    told = told_of(chart, compiled(), topic)
    numbers: list[Number] = []
    for mention, features in zip(found, of_mentions(chart, found), strict=True):
        reading = mention.reading
        takers = [p for p in last.topic.parameters if p.kind is not tuple and may_be(p, reading)]
        heard = {p.name: one for p in takers if (one := heard_any(chart, p, reading)) and isinstance(one.value, Quantity)}
        hinted = frozenset(told.get((reading.start, reading.end), ()))
        names = [*heard, NOTHING]
        scores = known.roles_of(topic, names, features, set(hinted.intersection(heard)))
        place = (chart.tokens[mention.start].start, chart.tokens[mention.end - 1].end)
        unit, logs = getattr(reading.value, "unit", ""), dict(zip(names, map(_log, shares_of(scores)), strict=True))
        numbers.append(Number(*place, text[slice(*place)], reading.kind, unit, mention.parts, heard, logs, hinted))
    return numbers


def _log(share: float) -> float:
    return max(log(share), LEAST_LOG) if share > 0 else LEAST_LOG


@lru_cache(maxsize=LATELY)
def _signs(text: str) -> frozenset[str]:
    """What is seen of the words of a line, found once for the line and each of its numbers."""
    return frozenset(of_sentence(full_chart(text), compiled()))


def of_line(text: str, last: Asked, count: int, topics: Topics, wanted: str = "") -> Seen:
    """What is seen of a line as a whole: its words, the topics that these are likely of, and the topic before it.

    `wanted` is the given that was asked for, where the question before waits for one.
    """
    seen = dict.fromkeys(_signs(text), 1.0)
    likely, before = likely_topics(text, topics), last.topic.name
    best = max(likely, key=likely.__getitem__)
    own, other = likely.get(before, 0.0), max((share for topic, share in likely.items() if topic != before), default=0.0)
    seen["own share"], seen["other share"] = log(own + LEAST_SHARE), log(other + LEAST_SHARE)
    seen["own is likelier"] = float(own > other)
    waits = "waits" if wanted else "waits for nothing"
    for name in (f"best {best}", f"before {before}", f"{before} then {best}", f"numbers {min(count, MOST_NUMBERS)}", waits):
        seen[name] = 1.0
    seen["numbers"], seen["words"] = min(count, MOST_NUMBERS), min(text.count(" ") + 1, MOST_WORDS) / 5
    return seen


def words_of(text: str) -> frozenset[str]:
    """The words of a line, and the classes of words they are of."""
    return frozenset(word for word in _signs(text) if word.isalpha())


def strange_words(text: str) -> int:
    """How many words of a line the grammars know nothing of; those that mean little are none."""
    chart = full_chart(text)
    return (chart.weighs & ~chart.numbers & ~chart.known).bit_count()


def of_role(number: Number, name: str, last: Asked, words: frozenset[str], count: int, wanted: str = "") -> Seen:
    """What is seen of a number of a line as one given of the question before it, or as NOTHING of it."""
    if name == NOTHING:
        seen = {"nothing": 1.0, "nothing share": number.shares[NOTHING], f"nothing {number.kind}": 1.0}
        seen["nothing short"], seen["nothing count"] = max(number.shares.values()) - number.shares[NOTHING], count
        return seen | {f"nothing {word}": 1.0 for word in words} | {"nothing though it waits": float(bool(wanted))}
    parameter, given = last.topic.parameter(name), last.givens.get(name)
    source = "untold" if given is None else "asked" if given.source == "earlier" else given.source
    label = parameter.label
    named = [word for word in label.split() if word in words or word.rstrip("s") in words]
    seen = {
        "share": number.shares[name], "short": max(number.shares.values()) - number.shares[name], f"is {name}": 1.0,
        f"was {source} {parameter.required if given is None else ''}": 1.0, "hinted": float(name in number.hinted),
        "other hinted": float(bool(number.hinted) and name not in number.hinted), "named": len(named) / len(label.split()),
        "any named": float(bool(named)), "changed": float(name in last.changed), "alone": float(_alone(number, name, last)),
        "wanted": float(name == wanted), "other wanted": float(bool(wanted) and name != wanted),
    }  # fmt: skip
    seen |= {f"{word} for {label}": 1.0 for word in words}
    if given is not None and isinstance(given.value, Quantity):
        seen |= _beside_before(number, number.heard[name], given.value, source)
    return seen


def _alone(number: Number, name: str, last: Asked) -> bool:
    """Whether a given is the only one of those told that a number could be."""
    told = [each for each in number.heard if each in last.givens and last.givens[each].source in ("asked", "earlier")]
    return told == [name]


def _beside_before(number: Number, heard: Heard, was: Quantity, source: str) -> Seen:
    """How far a number is from what the given was, and whether it is said as that was."""
    told = number.unit not in BARE
    seen: Seen = {}
    far = _from(number, heard, was)
    if far is not None:
        step = "the same" if far == 0 else next((str(step) for step in FAR if far <= step), "far")
        seen[f"{step} from it"] = seen[f"{step} from it, {'unit' if told else 'bare'}"] = 1.0
        if source == "asked":
            seen["far"] = min(far, FARTHEST)
    else:
        seen["of another kind"] = 1.0
    seen["same unit"], seen["same unit told"] = float(number.unit == was.unit), float(told and number.unit == was.unit)
    seen["both bare"] = float(not told and was.text.replace(".", "").isdigit())
    seen["said alike"] = float(("/" in was.text) == ("/" in number.text))
    return seen


def told_apart(number: Number, name: str, last: Asked, words: frozenset[str]) -> bool:
    """Whether the size of a number, or the words beside it, tell the given that was told from all others of its kind."""
    was, mine = last.givens.get(name), set(last.topic.parameter(name).label.split())
    for other in number.heard:
        given = last.givens.get(other)
        if other == name or given is None or given.source == "assumed" or type(given.value) is not type(number.heard[name].value):
            continue
        farther = was is not None and _far(number, other, given) - _far(number, name, was) >= PLAINLY
        named = not (mine - set(last.topic.parameter(other).label.split())).isdisjoint(words)
        if not (farther or named or (name in number.hinted and other not in number.hinted)):
            return False
    return True


def _far(number: Number, name: str, given: Given) -> float:
    """How many doublings a number is from what a given was; what is of another kind is as far as any."""
    far = _from(number, number.heard[name], given.value)
    return FARTHEST if far is None else far


def _from(number: Number, heard: Heard, was: Quantity) -> float | None:
    """How many doublings a number is from what a given was, by the nearest it could be; None where it is of another kind."""
    values = [one for one in (heard.value, *heard.others) if type(one) is type(was)]
    if number.unit in BARE:
        values += [replace(one, unit=was.unit) for one in values]  # it takes the unit of what it comes in place of
    return min((_doublings(one, was) for one in values), default=None)


def _doublings(one: Quantity, was: Quantity) -> float:
    """How many doublings two quantities are apart; three where one is none or less."""
    new, old = (one.to("in").value, was.to("in").value) if isinstance(one, Length) else (one.value, was.value)
    if new == old:
        return 0.0
    return abs(log2(new / old)) if new > 0 and old > 0 else 3.0


def roles_in(
    text: str, last: Asked, found: Sequence[Number], known: Model, wanted: str = ""
) -> Iterable[tuple[Number, dict[str, float]]]:
    """Each number of a line with the roles it could have in the question before it, and how likely each is."""
    words = words_of(text)
    for number in found:
        names = [*number.heard, NOTHING]
        shares = known.roles([of_role(number, name, last, words, len(found), wanted) for name in names])
        yield number, dict(zip(names, shares, strict=True))
