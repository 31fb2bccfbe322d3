"""What was learned from the question sets: how much each feature speaks for a topic, for the role of a quantity, for a sum.

Three log-linear models (multinomial logistic regression), made by `python -m tests.learning` and kept in
grammars/learned.json as whole hundredths. Nothing is learned at run time.
"""

from __future__ import annotations

import json
import marshal
import sys
from array import array
from collections.abc import Iterable, Mapping, Sequence
from functools import cache, cached_property
from math import exp
from pathlib import Path
from typing import NamedTuple

from intents import kept
from intents.grammars import FOLDER

FILE = "learned.json"
KEPT = "learned"  # the name of its copy, read in a third of the time
SCALE = 100  # of the whole numbers in the file
KNOWN = 60  # weights from which on a role is learned well enough to doubt a rule
LANE = 32  # bits, enough for the weights of a page
HALF = 1 << LANE - 1
MOST_KEPT = 20_000  # features of a topic's roles
PACKED = "h"  # array code of packed weights: two bytes each
NOTHING = "*"  # the role of a quantity that has none: "the 2 of us"
GRAMMAR, ONLY, OTHER, NONE = "grammar", "grammar only", "grammar elsewhere", "grammar nowhere"


class _Roles(NamedTuple):
    """The roles of a topic that were asked for so far: the place and the weights of each, and the features met so far."""

    places: dict[str, int]
    every: list[dict[str, int]]
    lanes: dict[str, int]


class Learned:
    """The models. Weights by feature, as whole hundredths; those of most are packed until a sentence asks for them."""

    def __init__(
        self,
        topics: list[str],
        bias: list[int],
        words: Mapping[str, bytes | Sequence[int]],
        roles: Mapping[str, bytes | dict[str, int]],
        seldom: Iterable[str] = (),
        sums: bytes | dict[str, dict[str, int]] | None = None,
    ):
        self.topics, self.bias, self.words, self.roles, self._sums = topics, bias, words, roles, sums or {}
        self.seldom = frozenset(seldom)  # topics learned from few sentences: how likely they are is not well known
        self._merged: dict[str, dict[str, int]] = {}
        self._lanes: dict[str, int] = {}  # of the features met so far
        self._role_lanes: dict[str, _Roles] = {}  # the same of roles, by topic

    def likely(self, features: Iterable[str]) -> dict[str, float]:
        """How likely each topic is, and each act of talk, and a question of another trade; adds up to 1."""
        total = known = 0
        lanes = self._lanes
        for feature in features:
            lane = lanes.get(feature)
            if lane is None:
                weights = self.words.get(feature)
                if weights is None:
                    continue
                each = iter(array(PACKED, weights) if isinstance(weights, bytes) else weights)
                lane = lanes[feature] = _in_lanes(zip(each, each, strict=True))
            total += lane
            known += 1
        share = 1 / (SCALE * max(1, known) ** 0.5)
        scores = [s * share + b for s, b in zip(_out_of_lanes(total, len(self.bias)), self._bias, strict=True)]
        return dict(zip(self.topics, shares_of(scores), strict=True))

    def knows(self, topic: str, name: str) -> bool:
        """Whether a parameter's role was learned from more than a few sentences: one that is new to a topic was not.

        Of a topic that is not known at all every role is as good as another.
        """
        return topic not in self.topics or len(self._of(topic, name)) >= KNOWN

    def roles_of(self, topic: str, names: Sequence[str], features: Iterable[str], told: set[str]) -> list[float]:
        """What speaks for each role (parameter names, or NOTHING) of a quantity; `told` by the grammar's islands."""
        known = self._role_lanes.get(topic)
        if known is None:
            known = self._role_lanes[topic] = _Roles({}, [], {})
        places, every, lanes = known
        for name in names:
            if name not in places:
                places[name] = len(every)
                every.append(self._of(topic, name))
                lanes.clear()
        total = 0
        for feature in features:
            lane = lanes.get(feature)
            if lane:
                total += lane
            elif lane is None:
                weights = [(at, weight) for at, of in enumerate(every) if (weight := of.get(feature))]
                if len(lanes) >= MOST_KEPT:  # what people say has no end
                    lanes.clear()
                lanes[feature] = lane = _in_lanes(weights) if weights else 0
                total += lane
        found = _out_of_lanes(total, len(every))
        scores = [found[places[name]] for name in names]
        for at, name in enumerate(names):
            if (told or name == NOTHING) and (signs := signs_of(name, told)):
                weights_of = every[places[name]]
                scores[at] += sum([weights_of.get(sign, 0) for sign in signs])
        return [score / SCALE for score in scores]

    def role(self, topic: str, names: Sequence[str], features: Iterable[str], told: set[str]) -> list[float]:
        """How likely a quantity has each of the roles."""
        return shares_of(self.roles_of(topic, names, features, told))

    @cached_property
    def _bias(self) -> list[float]:
        return [weight / SCALE for weight in self.bias]

    @cached_property
    def sums(self) -> dict[str, dict[str, int]]:
        """The weights of whole sums, by the part of a sum and what is seen there."""
        return dict(marshal.loads(self._sums) if isinstance(self._sums, bytes) else self._sums)

    def _of(self, topic: str, name: str) -> dict[str, int]:
        """The weights for a role: those it has in any topic, and those of this one, added up when first asked for."""
        key = f"{topic}.{name}"
        if key not in self._merged:
            whole = self._role(name)
            for sign, weight in self._role(key).items():
                whole[sign] = whole.get(sign, 0) + weight
            self._merged[key] = whole
        return self._merged[key]

    def _role(self, key: str) -> dict[str, int]:
        weights = self.roles.get(key, {})
        return dict(marshal.loads(weights) if isinstance(weights, bytes) else weights)


def signs_of(name: str, told: set[str]) -> list[str]:
    """The features of what the islands of the grammar say of one role."""
    if name in told:
        return [GRAMMAR, ONLY] if len(told) == 1 else [GRAMMAR]
    return [OTHER] if told else [NONE] if name == NOTHING else []


def _in_lanes(weights: Iterable[tuple[int, int]]) -> int:
    """Weights by place as one whole number, each in bits of its own: a feature's weights are added up in one step."""
    return sum([weight << LANE * at for at, weight in weights])


def _out_of_lanes(total: int, size: int) -> list[int]:
    """The sums of each place. Half a lane is added to each before, and taken off after, so that none is below nothing."""
    whole = total + _halves(size)
    return [lane - HALF for lane in memoryview(whole.to_bytes(LANE // 8 * size, sys.byteorder)).cast("I")]


@cache
def _halves(size: int) -> int:
    return sum([HALF << LANE * at for at in range(size)])


def shares_of(scores: list[float]) -> list[float]:
    """Scores (logs of how likely, up to a number added to all) as shares that add up to 1."""
    top = max(scores)
    powers = [exp(score - top) for score in scores]
    whole = sum(powers)
    return [power / whole for power in powers]


@cache
def learned(folder: Path = FOLDER) -> Learned | None:
    """The models of a folder of grammars, or None where it has none."""
    place = folder / FILE
    if not place.exists():
        return None
    stamp = kept.stamp([place], [sys.modules[__name__]])
    found = kept.fetch(folder, KEPT, stamp)
    if found is None:
        found = json.loads(place.read_text(encoding="utf-8"))
        found["words"] = {feature: array(PACKED, weights).tobytes() for feature, weights in found["words"].items()}
        found["roles"] = {role: marshal.dumps(weights) for role, weights in found["roles"].items()}
        found["sums"] = marshal.dumps(found.get("sums", {}))
        kept.store(folder, KEPT, stamp, found)
    return Learned(**found)
