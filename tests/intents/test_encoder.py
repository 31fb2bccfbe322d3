"""The encoder: what it sees, its arithmetic against the same written out by number, and what it makes of lines nobody learned."""

from __future__ import annotations

from math import exp, pi, sqrt, tanh

import numpy as np
import pytest

from intents.chart import chart_of
from intents.encoded import encoder_signs
from intents.encoder import encode
from intents.matcher import speller
from intents.phrases import compiled
from intents.transformer import HEAD, Encoder, encoder, pieces_of
from tests.learning import PARAMETERS

NET = encoder()


def states(text: str) -> np.ndarray:
    assert NET is not None
    return encode(chart_of(text, compiled(), speller()), NET).state


def test_no_number_is_seen_only_what_it_is_like() -> None:
    one = states("how many 12 inch boards for a wall 9 feet high")
    assert np.array_equal(one, states("how many 13 inch boards for a wall 8 feet high"))
    assert not np.array_equal(one, states("how many 12 mm boards for a wall 9 feet high"))  # another unit
    assert not np.array_equal(one, states("how many 48 inch boards for a wall 9 feet high"))  # two doublings more


def test_sizes_of_two_are_two_quantities() -> None:
    signs = encoder_signs(chart_of("sheets for a wall 32 by 9", compiled(), speller()))
    assert [sign.key[1] for sign in signs if sign.key[0] >= 0] == [1, 2]
    assert [sign.rank for sign in signs if sign.key[0] >= 0] == [2, 1]


def test_a_word_is_cut_into_the_longest_known_pieces() -> None:
    known = {"un": 5, "##aff": 6, "##able": 7, "##a": 8, "u": 9, "'": 10, "s": 11}  # the example of Devlin et al.
    assert pieces_of("unaffable", known, 2) == [5, 6, 7]
    assert pieces_of("un's", known, 2) == [5, 10, 11]
    assert pieces_of("xun", known, 2) == [2]


def test_a_layer_is_what_it_is_written_out() -> None:
    chance = np.random.default_rng(7)
    wide, tall, many = 2 * HEAD, 3, 4
    shapes = {"qkv": (wide, 3 * wide), "out": (wide, wide), "up": (wide, tall * wide), "down": (tall * wide, wide)}
    arrays = {f"0.{name}": chance.normal(0, 0.2, shape).astype(np.float32) for name, shape in shapes.items()}
    arrays |= {f"0.{name}_bias": chance.normal(0, 0.2, shape[1]).astype(np.float32) for name, shape in shapes.items()}
    for name in ("norm1", "norm2"):
        arrays |= {f"0.{name}": chance.normal(1, 0.1, wide).astype(np.float32), f"0.{name}_bias": np.zeros(wide, np.float32)}
    net = Encoder(arrays, {"topics": [], "layers": 1, "pieces": [], "kinds": {}, "roles": []})
    x = chance.normal(0, 1, (many, wide)).astype(np.float32)
    assert net._layer(x, 0) == pytest.approx(np.array(written_out(x.tolist(), arrays)), abs=2e-5)


def written_out(x: list[list[float]], arrays: dict[str, np.ndarray]) -> list[list[float]]:
    """One layer, number by number."""

    def times(row: list[float], name: str) -> list[float]:
        matrix, bias = arrays[f"0.{name}"], arrays[f"0.{name}_bias"]
        return [float(bias[j]) + sum(a * float(matrix[i, j]) for i, a in enumerate(row)) for j in range(len(bias))]

    def norm(row: list[float], name: str) -> list[float]:
        mean = sum(row) / len(row)
        spread = sqrt(sum((a - mean) ** 2 for a in row) / len(row) + 1e-12)
        each = zip(row, arrays[f"0.{name}"], arrays[f"0.{name}_bias"], strict=True)
        return [(a - mean) / spread * float(w) + float(b) for a, w, b in each]

    wide = len(x[0])
    told = [times(row, "qkv") for row in x]
    seen = [[0.0] * wide for _ in x]
    for head in range(0, wide, HEAD):
        for i, mine in enumerate(told):
            query = mine[head : head + HEAD]
            keys = [other[wide + head : wide + head + HEAD] for other in told]
            near = [exp(sum(a * b for a, b in zip(query, key, strict=True)) / sqrt(HEAD)) for key in keys]
            for share, other in zip(near, told, strict=True):
                for n in range(HEAD):
                    seen[i][head + n] += share / sum(near) * other[2 * wide + head + n]
    added = [[a + b for a, b in zip(row, times(each, "out"), strict=True)] for row, each in zip(x, seen, strict=True)]
    mixed = [norm(row, "norm1") for row in added]
    inner = [[0.5 * a * (1 + tanh(sqrt(2 / pi) * (a + 0.044715 * a**3))) for a in times(row, "up")] for row in mixed]
    return [
        norm([a + b for a, b in zip(row, times(each, "down"), strict=True)], "norm2")
        for row, each in zip(mixed, inner, strict=True)
    ]


def test_shares_add_up_and_every_topic_is_known() -> None:
    assert NET is not None
    likely = NET.likely(states("rake angle for a 5 in 12"))
    assert sum(likely.values()) == pytest.approx(1, abs=1e-5)
    assert set(PARAMETERS) <= set(NET.topics)


@pytest.mark.parametrize(
    ("line", "topic"),
    [  # of no set, by words that no rule has
        ("gotta paper the north side, 38 by 9, rolls are 9 by 150, how many do I lug up", "membrane rolls"),
        ("room's at 70 and sticky at 55 percent, when does the pane start to sweat", "dew point"),
        ("how far out do my ladder feet go if I want to climb to 18 feet", "ladder footing"),
        ("both corner-to-corners on this slab came 40-3 and 40-5, am I true", "square check"),
        ("goo for 220 feet of 3/8 by 3/8 crack, how many tubes", "sealant"),
        ("4 shelves eating up a 60 inch alcove, 3/4 thick each, what are the gaps between", "equal spacing"),
        ("what do I set the bevel at when the walls meet at 128", "miter for a corner"),
    ],
)
def test_what_nobody_learned_is_likely_what_it_is(line: str, topic: str) -> None:
    assert NET is not None
    likely = NET.likely(states(line))
    assert topic in sorted(likely, key=likely.__getitem__, reverse=True)[:2]
