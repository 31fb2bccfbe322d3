"""The encoder: how likely each topic is, and each role of a quantity, by a sentence as a whole.

A transformer of two layers (transformer.py), learned from the question sets by `python -m tests.train_encoder` with the help of
a general model of English (all-MiniLM-L6-v2, Apache-2.0); what it sees is in encoded.py. Nothing is learned at run time, and it
is read from disk only when a line first needs it.
"""

from __future__ import annotations

from collections.abc import Sequence
from math import log
from pathlib import Path
from typing import TYPE_CHECKING, NamedTuple

from intents.chart import Chart
from intents.encoded import encoder_signs
from intents.features import NUMBER_WORDS
from intents.learned import Learned, shares_of
from intents.question import Question

if TYPE_CHECKING:
    from intents.transformer import Encoder, Floats

ENCODED, BY_WORDS = "encoded", "likely by words"  # the names it is kept by with a chart, and what the words alone tell
WORDS, WHOLE = 0.3, 0.7  # how much the words alone count in telling the topic, and the sentence as a whole
WORDS_ROLE, WHOLE_ROLE = 0.3, 1.0  # the same of roles, of topics that the words alone know nothing of
BELIEVED = 0.8  # the share from which on a topic is believed that the words alone know nothing of,
WHOLLY = 10.0  # and the score of a rule from which on it is not
SURE, NEW = 0.8, 0.6  # how sure this must be of a topic, and of a new one
TOLD, OUTRIGHT = 0.54, 0.94  # how sure the words alone must be to stand, and beside a new topic
ENOUGH = 5  # words beside the numbers from which on a line is taken as a whole
LEAST = 1e-5  # no topic is less likely than this


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
        if mine[best] < (SURE if best in likely else NEW) or (best in likely and max(likely.values()) >= TOLD):
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
    alone: dict[str, float] | None = chart.kept.get(BY_WORDS)
    if alone is None or top is None:
        return chart.likely
    best = max(chart.likely, key=chart.likely.__getitem__)
    told = top.topic == best and top.complete
    if not (told or top.plain) or (not told and best not in alone and chart.likely[best] >= BELIEVED and top.score < WHOLLY):
        return chart.likely
    chart.kept.pop(ENCODED, None)
    return alone


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
    return len([word for word in chart.words if word.isalpha() and word not in NUMBER_WORDS]) >= ENOUGH


def encode(chart: Chart, net: Encoder) -> Encoded:
    """What the encoder makes of a sentence."""
    return Encoded(net, *net.encode(encoder_signs(chart)))


def beside(chart: Chart, folder: Path, likely: dict[str, float]) -> dict[str, float]:
    """How likely each topic is by the words alone (`likely`) and by the sentence as a whole; where that counts, both are kept."""
    told = max(likely.values())
    if told >= OUTRIGHT or not says_enough(chart):
        return likely
    from intents.transformer import encoder

    net = encoder(folder)
    if net is None or (told >= TOLD and likely.keys() >= net.known):  # the words alone stand: no topic is news to them
        return likely
    encoded = encode(chart, net)
    found = encoded.likely_beside(likely)
    if found is not likely:
        chart.kept[ENCODED], chart.kept[BY_WORDS] = encoded, likely
    return found
