"""The encoder: how likely each topic is, and each role of a quantity, by a sentence as a whole.

A transformer of two layers (post-norm; Devlin et al., 2019), learned from the question sets by `python -m tests.train_encoder`
with the help of a general model of English (all-MiniLM-L6-v2, Apache-2.0); what it sees is in encoded.py. Its weights are in
grammars/encoder.npz as bytes, with a scale for each row or column. Nothing is learned at run time.
"""

from __future__ import annotations

import json
import os
from collections.abc import Sequence
from functools import cache
from math import log
from pathlib import Path
from typing import Any, NamedTuple

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")  # matrices this small take longer on several cores

import numpy as np

from intents.chart import Chart
from intents.encoded import Sign, encoder_signs
from intents.features import NUMBER_WORDS
from intents.grammars import FOLDER
from intents.learned import Learned, shares_of
from intents.question import Question

FILE = "encoder.npz"
ENCODED, BY_WORDS = "encoded", "likely by words"  # the names it is kept by with a chart, and what the words alone tell
MOST = 64  # pieces of a sentence
MOST_KEPT = 20_000  # words whose pieces are kept
HEAD = 32  # numbers of a state that one head attends by
CLS, SEP, UNKNOWN, ANY_KIND = 0, 1, 2, 3  # rows of the embedding
WORDS, WHOLE = 0.3, 0.7  # how much the words alone count in telling the topic, and the sentence as a whole
WORDS_ROLE, WHOLE_ROLE = 0.3, 1.0  # the same of roles, of topics that the words alone know nothing of
BELIEVED = 0.8  # the share from which on a topic is believed that the words alone know nothing of
SURE, NEW = 0.8, 0.6  # how sure this must be of a topic, and of a new one
TOLD, OUTRIGHT = 0.54, 0.94  # how sure the words alone must be to stand, and beside a new topic
ENOUGH = 5  # words beside the numbers from which on a line is taken as a whole
LEAST = 1e-5  # no topic is less likely than this
Floats = np.ndarray[Any, np.dtype[np.float32]]


class Encoder:
    """The weights, and what they make of a sentence."""

    def __init__(self, arrays: dict[str, Any], about: dict[str, Any]):
        self.arrays, self.topics, self.layers = arrays, about["topics"], about["layers"]
        self._pieces = {piece: n for n, piece in enumerate(about["pieces"])}
        self._kinds: dict[str, int] = about["kinds"]
        self._roles = {name: n for n, name in enumerate(about["roles"])}
        self._words: dict[str, list[int]] = {}

    def encode(self, signs: Sequence[Sign]) -> tuple[Floats, dict[tuple[int, int], int]]:
        """The state of each piece, shape (pieces, width), and which of them is which quantity."""
        rows, feats, places = [CLS], [], dict[tuple[int, int], int]()
        for sign in signs:
            if sign.key[0] >= 0:
                places[sign.key] = len(rows)
                feats.append((len(rows), sign.unit, sign.size, sign.rank, sign.fine))
                rows.append(self._kinds.get(sign.word, ANY_KIND))
            else:
                rows += self._words_of(sign.word)
        rows = [*rows[: MOST - 1], SEP]
        a = self.arrays
        state: Floats = a["embed"][rows] * a["embed_scale"][rows]
        for at, unit, size, rank, fine in feats:
            if at < MOST - 1:
                state[at] += a["unit"][unit] + a["size"][size] + a["rank"][rank] + a["fine"][fine]
        state = _norm(state + a["place"][: len(rows)], a["norm"], a["norm_bias"])
        for n in range(self.layers):
            state = self._layer(state, n)
        return state, {key: at for key, at in places.items() if at < MOST - 1}

    def likely(self, state: Floats) -> dict[str, float]:
        """How likely each topic is; adds up to 1."""
        scores = state.mean(0) @ self.arrays["topic"] + self.arrays["topic_bias"]
        return dict(zip(self.topics, _shares(scores).tolist(), strict=True))

    def role(self, state: Floats, at: int, topic: str, names: Sequence[str]) -> list[float]:
        """What speaks for each role (parameter names, or NOTHING) of the quantity at piece `at`, as logs."""
        found = [self._role(topic, name) for name in names]
        weights = np.stack(found)
        return (weights[:, :-1] @ state[at] + weights[:, -1]).tolist()  # type: ignore[no-any-return]

    def knows(self, topic: str, name: str) -> bool:
        return f"{topic}.{name}" in self._roles

    def _role(self, topic: str, name: str) -> Floats:
        own, shared = self._roles.get(f"{topic}.{name}"), self._roles.get(name)
        every = self.arrays["role"]
        none = np.zeros(every.shape[1], np.float32)
        return (every[own] if own is not None else none) + (every[shared] if shared is not None else none)  # type: ignore[no-any-return]

    def _words_of(self, word: str) -> list[int]:
        if word not in self._words:
            if len(self._words) >= MOST_KEPT:
                self._words.clear()
            self._words[word] = pieces_of(word, self._pieces, UNKNOWN)
        return self._words[word]

    def _layer(self, x: Floats, n: int) -> Floats:
        a, (tall, wide) = self.arrays, x.shape
        q, k, v = (x @ a[f"{n}.qkv"] + a[f"{n}.qkv_bias"]).reshape(tall, 3, wide // HEAD, HEAD).transpose(1, 2, 0, 3)
        near = _shares(q @ k.transpose(0, 2, 1) * np.float32(HEAD**-0.5))
        seen = (near @ v).transpose(1, 0, 2).reshape(tall, wide)
        x = _norm(x + seen @ a[f"{n}.out"] + a[f"{n}.out_bias"], a[f"{n}.norm1"], a[f"{n}.norm1_bias"])
        h = x @ a[f"{n}.up"] + a[f"{n}.up_bias"]
        cubed = h * h
        cubed *= h
        cubed *= np.float32(0.044715)
        cubed += h
        cubed *= np.float32(0.7978845608)
        np.tanh(cubed, out=cubed)
        cubed += 1
        h *= cubed
        h *= np.float32(0.5)
        return _norm(x + h @ a[f"{n}.down"] + a[f"{n}.down_bias"], a[f"{n}.norm2"], a[f"{n}.norm2_bias"])


class Encoded(NamedTuple):
    """A sentence as the encoder has it: the state of each piece, and which of them is which quantity."""

    net: Encoder
    state: Floats
    places: dict[tuple[int, int], int]

    def likely_beside(self, likely: dict[str, float]) -> dict[str, float]:
        """How likely each topic is by this and by the words alone together (a product of experts).

        The words alone stand where they tell a topic, unless this tells one that they know nothing of, or where this is not
        sure: what the rules do with a line was measured with them.
        """
        mine = self.net.likely(self.state)
        best = max(mine, key=mine.__getitem__)
        if mine[best] < (SURE if best in likely else NEW) or max(likely.values()) >= (TOLD if best in likely else OUTRIGHT):
            return likely
        every = {**mine, **likely}  # what the words alone know nothing of counts as here
        scores = [WORDS * log(every[topic] + LEAST) + WHOLE * log(mine.get(topic, 0) + LEAST) for topic in every]
        found = dict(zip(every, shares_of(scores), strict=True))
        return found if found[best] >= NEW else likely


def likely_of(chart: Chart, top: Question | None) -> dict[str, float]:
    """How likely each topic is, beside what a rule makes of a line (`top`).

    What a rule fits whole is held against the words alone, as the limits for it were measured, and what it makes of the topic
    that is likely stands. A topic that the words alone know nothing of is believed where the sentence as a whole tells of it.
    """
    alone = chart.kept.get(BY_WORDS)
    if alone is None or top is None:
        return chart.likely
    best = max(chart.likely, key=chart.likely.__getitem__)
    told = top.topic == best and top.complete
    if not (told or top.plain) or (not told and best not in alone and chart.likely[best] >= BELIEVED):
        return chart.likely
    chart.kept.pop(ENCODED, None)
    return dict(alone)


def roles_told(
    chart: Chart, model: Learned, topic: str, key: tuple[int, int], names: Sequence[str], scores: list[float]
) -> list[float]:  # fmt: skip
    """What speaks for each role of a quantity: by the words beside it (`scores`), and of a topic that they know nothing of by
    the sentence as a whole too. Of others this told no more: of 651 roles that neither had learned each missed 31.
    """
    encoded = chart.kept.get(ENCODED)
    if encoded is None or topic in model.topics or key not in encoded.places or topic not in encoded.net.topics:
        return scores
    mine = encoded.net.role(encoded.state, encoded.places[key], topic, names)
    return [WORDS_ROLE * score + WHOLE_ROLE * more for score, more in zip(scores, mine, strict=True)]


def knows(chart: Chart, model: Learned, topic: str, name: str) -> bool:
    """Whether a role was learned for a topic, by the one or by the other."""
    encoded = chart.kept.get(ENCODED)
    return model.knows(topic, name) or (encoded is not None and encoded.net.knows(topic, name))


def says_enough(chart: Chart) -> bool:
    """Whether a line has enough words to be taken as a whole: what changes or adds to a question before it says little."""
    return sum(word.isalpha() and word not in NUMBER_WORDS for word in chart.words) >= ENOUGH


def encode(chart: Chart, net: Encoder) -> Encoded:
    """What the encoder makes of a sentence; kept with its chart."""
    found = chart.kept[ENCODED] = Encoded(net, *net.encode(encoder_signs(chart)))
    return found


def beside(chart: Chart, net: Encoder, likely: dict[str, float]) -> dict[str, float]:
    """How likely each topic is by the words alone (`likely`) and by the sentence as a whole, where that counts."""
    found = encode(chart, net).likely_beside(likely)
    if found is likely:
        del chart.kept[ENCODED]
    else:
        chart.kept[BY_WORDS] = likely
    return found


def pieces_of(word: str, known: dict[str, int], unknown: int) -> list[int]:
    """A word in known pieces, the longest first, punctuation apart (word pieces; Wu et al., 2016)."""
    found: list[int] = []
    for part in _parts(word):
        at, cut = 0, list[int]()
        while at < len(part):
            lead = "##" if at else ""
            end = next((end for end in range(len(part), at, -1) if lead + part[at:end] in known), at)
            if end == at:
                cut = [unknown]
                break
            cut.append(known[lead + part[at:end]])
            at = end
        found += cut
    return found


def _parts(word: str) -> list[str]:
    parts, held = list[str](), ""
    for letter in word:
        if letter.isalnum():
            held += letter
            continue
        parts += [held, letter]
        held = ""
    return [part for part in (*parts, held) if part.strip()]


def _norm(x: Floats, weight: Floats, bias: Floats) -> Floats:
    x = x - x.mean(-1, keepdims=True)
    x *= 1 / np.sqrt((x * x).mean(-1, keepdims=True) + np.float32(1e-12))
    return x * weight + bias  # type: ignore[no-any-return]


def _shares(scores: Floats) -> Floats:
    powers = np.exp(scores - scores.max(-1, keepdims=True))
    return powers / powers.sum(-1, keepdims=True)  # type: ignore[no-any-return]


@cache
def encoder(folder: Path = FOLDER) -> Encoder | None:
    """The encoder of a folder of grammars, or None where it has none."""
    place = folder / FILE
    if not place.exists():
        return None
    with np.load(place, allow_pickle=False) as kept:
        about = json.loads(kept["about"].tobytes())
        arrays: dict[str, Any] = {}
        for name in kept.files:
            if name.endswith("_scale") or name == "about":
                continue
            scale = kept.get(f"{name}_scale")
            if name == "embed":
                arrays |= {name: kept[name], f"{name}_scale": scale}
            else:
                arrays[name] = kept[name].astype(np.float32) * (scale if scale is not None else np.float32(1))
    return Encoder(arrays, about)
