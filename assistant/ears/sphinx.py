"""The ear that is always there: PocketSphinx with the English model of its own wheel.

It listens with a language model learned from the grammars, in one colour after another until the words fit the sound,
and weighs that fit against a free loop of phones: speech from outside the grammars fits phones better than words, and
is refused. Number words are then weighed one by one against those they are taken for.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import NamedTuple

from pocketsphinx import Decoder, Segment, get_model_path

from assistant.ears.colour import SILENCE, Colour, coloured, peak
from assistant.ears.model import language_model
from assistant.ears.pronunciations import OTHER_WAYS, phones
from assistant.ears.twins import twins
from assistant.ears.words import Heard, HeardWord, refusal
from intents.grammars import FOLDER

FRAME_SECONDS = 0.01  # one frame of the acoustic model
SCORE_STEP = 1024  # PocketSphinx keeps path scores shifted right by ten bits
LEAST_LOG = -700.0  # what stands for the log of a probability too small for a float
COLOURS = (Colour(16), Colour(160, 0.9))  # natural voices fit the first, the formant voices of synthesisers the second
USUAL_CHANCE = 0.7  # mean chance of the words that questions and other talk have in common
GOOD_FIT = 0.2  # strangeness past which another colour is tried
WORST_FIT = 0.7  # past this it was no question: of 72 stretches of other talk none was under it, of 93 questions 84
CLOSE = 12.0  # nats: a twin that fits no worse than this is as likely what was said
SURE = 60.0  # nats: a word whose nearest twin is this far off is certain
LEAST_SPEECH = 12  # frames of words: less is a cough or a knock
WORDS, PHONES, TWIN = "words", "phones", "twin"

NOT_HEARD = "I heard no words in that; say it again, closer."
NOT_A_QUESTION = "That did not sound like anything I work out; say it again, or ask what I can do."


class Spoken(NamedTuple):
    """One word of a pass: its frames and the chance of it among the word's rivals in that pass."""

    word: str
    first: int
    last: int
    chance: float


class Pass(NamedTuple):
    """What one colour gave: the words, and how unlike a question they are.

    Strangeness is by how many nats a frame free phones fit better than the words, less what the mean chance of the
    words is over the usual.
    """

    sound: bytes
    words: list[Spoken]
    strangeness: float


class SphinxEar:
    """PocketSphinx behind the one interface of ears."""

    name = "PocketSphinx"

    def __init__(self, folder: Path = FOLDER) -> None:
        self._decoder = Decoder(lm=None, loglevel="FATAL")
        lookup = self._decoder.lookup_word

        @cache
        def sayable(word: str) -> bool:
            return lookup(word) is not None or phones(word, lookup) is not None

        model = language_model(sayable, folder)
        for word in _vocabulary(model):
            self._learn(word)
        self._decoder.add_lm_file(WORDS, str(model))
        self._decoder.add_allphone_file(PHONES, get_model_path("en-us/en-us-phone.lm.bin"))

    def hear(self, samples: bytes, partial: Callable[[str], None] | None = None) -> Heard:
        """The words in 16 kHz mono signed 16-bit samples; silence and out-of-grammar speech come back refused."""
        if peak(samples) < SILENCE:
            return refusal("I heard nothing: there is no sound in that.")
        best: Pass | None = None
        for colour in COLOURS:
            found = self._listen(coloured(samples, colour))
            if found.words and (best is None or found.strangeness < best.strangeness):
                best = found
                if partial:
                    partial(" ".join(spoken.word for spoken in best.words))
            if best and best.strangeness < GOOD_FIT:
                break
        if best is None or sum(spoken.last - spoken.first + 1 for spoken in best.words) < LEAST_SPEECH:
            return refusal(NOT_HEARD)
        if best.strangeness > WORST_FIT:
            return refusal(NOT_A_QUESTION)
        return self._weighed(best)

    def _learn(self, word: str) -> None:
        """Adds the ways to say a word that the dictionary lacks."""
        lookup = self._decoder.lookup_word
        if lookup(word) is None and (said := phones(word, lookup)):
            self._decoder.add_word(word, said, False)
        for number, said in enumerate(OTHER_WAYS.get(word, ())):
            self._decoder.add_word(f"{word}({number + 5})", said, False)

    def _listen(self, sound: bytes) -> Pass:
        """The likeliest words of one colour of the sound, and how they fit."""
        total, words = self._decode(WORDS, sound)
        if not words:
            return Pass(sound, [], math.inf)
        free, _ = self._decode(PHONES, sound)
        frames = sum(spoken.last - spoken.first + 1 for spoken in words)
        chance = sum(spoken.chance for spoken in words) / len(words)
        return Pass(sound, words, (free - total) / frames - (chance - USUAL_CHANCE))

    def _decode(self, search: str, sound: bytes) -> tuple[float, list[Spoken]]:
        """The log likelihood of the best path, and its words."""
        self._decoder.activate_search(search)
        self._decoder.start_utt()
        self._decoder.process_raw(sound, full_utt=True)
        self._decoder.end_utt()
        best = self._decoder.hyp()
        if best is None or not best.hypstr or best.score <= 0:
            return 0.0, []
        return math.log(best.score) * SCORE_STEP, [_spoken(part) for part in self._decoder.seg() if _is_word(part)]

    def _weighed(self, found: Pass) -> Heard:
        """The words with their confidence, and for numbers what else they may have been."""
        said = [spoken.word for spoken in found.words]
        here = self._fit(said, found.sound)
        words = []
        for at, spoken in enumerate(found.words):
            margins = {
                other: here - self._fit([*said[:at], other, *said[at + 1 :]], found.sound) for other in twins(said, at)
            }
            near = sorted((margin, other) for other, margin in margins.items() if margin < CLOSE)
            sure = min(1.0, max(0.0, min(margins.values()) / SURE)) if margins else min(1.0, spoken.chance)
            times = spoken.first * FRAME_SECONDS, (spoken.last + 1) * FRAME_SECONDS
            words.append(HeardWord(spoken.word, sure, *times, [other for _, other in near]))
        return Heard(" ".join(said), words)

    def _fit(self, words: list[str], sound: bytes) -> float:
        """The log likelihood of the sound, given that exactly these words were said."""
        arcs = [(at, at + 1, 1.0, word) for at, word in enumerate(words)]
        self._decoder.add_fsg(TWIN, self._decoder.create_fsg(TWIN, 0, len(words), arcs))
        self._decoder.activate_search(TWIN)
        self._decoder.start_utt()
        self._decoder.process_raw(sound, full_utt=True)
        self._decoder.end_utt()
        if self._decoder.hyp() is None:
            return -math.inf
        return sum(math.log(part.ascore) if part.ascore > 0 else LEAST_LOG for part in self._decoder.seg())


def _vocabulary(model: Path) -> list[str]:
    """The words of an ARPA model: the middle column of its first section."""
    with model.open(encoding="utf-8") as lines:
        for line in lines:
            if line.startswith("\\1-grams"):
                break
        words = []
        for line in lines:
            if line.startswith("\\"):
                break
            columns = line.split()
            if len(columns) == 3 and columns[1][0] != "<":
                words.append(columns[1])
    return words


def _is_word(part: Segment) -> bool:
    return part.word[0] not in "<[("


def _spoken(part: Segment) -> Spoken:
    return Spoken(part.word.split("(")[0], part.start_frame, part.end_frame, part.prob)
