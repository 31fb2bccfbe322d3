"""What was learned from the question sets: how much each feature speaks for a topic, and for the role of a quantity.

Two log-linear models (multinomial logistic regression), made by `python -m tests.learning` and kept in
grammars/learned.json as whole hundredths. Nothing is learned at run time.
"""

from __future__ import annotations

import json
import marshal
import sys
from array import array
from collections.abc import Iterable, Mapping, Sequence
from functools import cache
from math import exp
from pathlib import Path

from intents import kept
from intents.grammars import FOLDER

FILE = "learned.json"
KEPT = "learned"  # the name of its copy, read in a third of the time
SCALE = 100  # of the whole numbers in the file
KNOWN = 60  # weights from which on a role is learned well enough to doubt a rule
PACKED = "h"  # array code of packed weights: two bytes each
NOTHING = "*"  # the role of a quantity that has none: "the 2 of us"
GRAMMAR, ONLY, OTHER, NONE = "grammar", "grammar only", "grammar elsewhere", "grammar nowhere"


class Learned:
    """The two models. Weights by feature, as whole hundredths; those of most are packed until a sentence asks for them."""

    def __init__(
        self,
        topics: list[str],
        bias: list[int],
        words: Mapping[str, bytes | Sequence[int]],
        roles: Mapping[str, bytes | dict[str, int]],
        seldom: Iterable[str] = (),
    ):
        self.topics, self.bias, self.words, self.roles = topics, bias, words, roles
        self.seldom = frozenset(seldom)  # topics learned from few sentences: how likely they are is not well known
        self._merged: dict[str, dict[str, int]] = {}

    def likely(self, features: Iterable[str]) -> dict[str, float]:
        """How likely each topic is, and each act of talk, and a question of another trade; adds up to 1."""
        scores = [0] * len(self.topics)
        known = 0
        for feature in features:
            weights = self.words.get(feature)
            if weights is not None:
                known += 1
                if isinstance(weights, bytes):
                    weights = array(PACKED, weights)
                for at, weight in zip(weights[::2], weights[1::2], strict=True):
                    scores[at] += weight
        share = 1 / (SCALE * max(1, known) ** 0.5)
        return dict(zip(self.topics, _shares([s * share + b / SCALE for s, b in zip(scores, self.bias, strict=True)]),
                        strict=True))  # fmt: skip

    def knows(self, topic: str, name: str) -> bool:
        """Whether a parameter's role was learned from more than a few sentences: one that is new to a topic was not."""
        return len(self._of(topic, name)) >= KNOWN

    def role(self, topic: str, names: list[str], features: list[str], told: set[str]) -> list[float]:
        """How likely a quantity has each of the roles (parameter names, or NOTHING); `told` by the grammar's islands."""
        scores = []
        for name in names:
            weights = self._of(topic, name).get
            scores.append(sum([weights(sign, 0) for sign in (*features, *signs_of(name, told))]) / SCALE)
        return _shares(scores)

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


def _shares(scores: list[float]) -> list[float]:
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
        kept.store(folder, KEPT, stamp, found)
    return Learned(**found)
