"""The encoder's arithmetic: a transformer of a few layers, worked in numpy; see encoder.py for what it is for.

Post-norm layers (Devlin et al., 2019). Its weights are in grammars/encoder.npz as bytes, with a scale for each row or column.
"""

from __future__ import annotations

import json
import os
from collections.abc import Sequence
from functools import cache
from pathlib import Path
from typing import Any

os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")  # matrices this small take longer on several cores

import numpy as np

from intents.encoded import Sign
from intents.grammars import FOLDER

FILE = "encoder.npz"
MOST = 64  # pieces of a sentence
MOST_KEPT = 20_000  # words whose pieces are kept
HEAD = 32  # numbers of a state that one head attends by
SCALE, CUBE, ROOT = np.float32(HEAD**-0.5), np.float32(0.044715), np.float32(0.7978845608)  # of attention; of GELU (tanh)
ONE, HALF, LEAST = np.float32(1), np.float32(0.5), np.float32(1e-12)
CLS, SEP, UNKNOWN, ANY_KIND = 0, 1, 2, 3  # rows of the embedding
Floats = np.ndarray[Any, np.dtype[np.float32]]


class Encoder:
    """The weights, and what they make of a sentence."""

    def __init__(self, arrays: dict[str, Any], about: dict[str, Any]):
        self.arrays, self.topics, self.layers = arrays, about["topics"], about["layers"]
        self.known = frozenset(self.topics)
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
        state: Floats = a["embed"].take(rows, 0) * a["embed_scale"].take(rows, 0)
        if feats := [each for each in feats if each[0] < MOST - 1]:
            ats, units, sizes, ranks, fines = map(list, zip(*feats, strict=True))
            more = a["unit"].take(units, 0)
            more += a["size"].take(sizes, 0)
            more += a["rank"].take(ranks, 0)
            more += a["fine"].take(fines, 0)
            state[ats] += more
        state += a["place"][: len(rows)]
        state = _norm(state, a["norm"], a["norm_bias"])
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
        seen = x @ a[f"{n}.qkv"]
        seen += a[f"{n}.qkv_bias"]
        q, k, v = seen.reshape(tall, 3, wide // HEAD, HEAD).transpose(1, 2, 0, 3)
        near = q @ k.transpose(0, 2, 1)
        near *= SCALE
        out = (_shares(near) @ v).transpose(1, 0, 2).reshape(tall, wide) @ a[f"{n}.out"]
        out += x
        out += a[f"{n}.out_bias"]
        x = _norm(out, a[f"{n}.norm1"], a[f"{n}.norm1_bias"])
        h = x @ a[f"{n}.up"]
        h += a[f"{n}.up_bias"]
        cubed = h * h
        cubed *= h
        cubed *= CUBE
        cubed += h
        cubed *= ROOT
        np.tanh(cubed, out=cubed)
        cubed += ONE
        h *= cubed
        h *= HALF
        out = h @ a[f"{n}.down"]
        out += x
        out += a[f"{n}.down_bias"]
        return _norm(out, a[f"{n}.norm2"], a[f"{n}.norm2_bias"])


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
    """In place: each row less its mean, by its spread."""
    wide = x.shape[-1]
    x -= np.add.reduce(x, -1, keepdims=True) / wide
    spread = np.add.reduce(x * x, -1, keepdims=True)
    spread /= wide
    spread += LEAST
    np.sqrt(spread, out=spread)
    x *= np.divide(ONE, spread, out=spread)
    x *= weight
    x += bias
    return x


def _shares(scores: Floats) -> Floats:
    """In place: scores as shares that add up to 1 in each row."""
    scores -= np.maximum.reduce(scores, -1, keepdims=True)
    np.exp(scores, out=scores)
    scores /= np.add.reduce(scores, -1, keepdims=True)
    return scores


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
                arrays[name] = kept[name].astype(np.float32) * (scale if scale is not None else ONE)
    return Encoder(arrays, about)
