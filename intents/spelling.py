"""Small misspellings forgiven: a word that means nothing here is read as the nearest one that does."""

from __future__ import annotations

from collections.abc import Collection
from functools import lru_cache

from rapidfuzz import process
from rapidfuzz.distance import OSA

from intents.number_words import ORDINALS, PLURALS, SMALL, TENS

SHORTEST = 4  # letters; shorter words are too near to each other
LEAST_PART = 3  # letters in each of two words that were run together
NEAREST = 6  # words as near that are looked at
AS_WRITTEN = {  # slips of words too short to be told by their letters, and words of the trade written as they sound
    "haf": "half", "hlf": "half", "qtr": "quarter", "fiv": "five", "nin": "nine", "tow": "two", "inchs": "inches",
    "milimeters": "millimeters", "milimetres": "millimetres", "hite": "height", "hites": "heights", "wether": "weather",
    "tale": "tail", "tales": "tails", "coarses": "courses", "meats": "meets", "rap": "wrap", "raps": "wraps", "lode": "load",
    "pich": "pitch", "piches": "pitches", "dose": "does", "tux": "tucks", "mill": "mils", "wot": "what",
    "diagnal": "diagonal", "diagnals": "diagonals",
    "centring": "centering", "valy": "valley", "valey": "valley", "rtrn": "return", "retrn": "return", "remmber": "remember",
    "boxs": "boxes", "boxe": "boxes", "bxs": "boxes", "firring": "furring", "firrings": "furring", "sqare": "square",
    "squre": "square", "squres": "squares", "divded": "divided", "devided": "divided",
    "sqares": "squares", "wast": "waste",
}  # fmt: skip
NAMES = frozenset(  # of people, that are no slips of trade words: Dave is no eave
    "dave gary mick steve joe bob tom jim sean liam kev kevin tony paul john johnny pete dan ben sam nick matt "
    "chris ron don terry barry colin derek phil greg jeff ray stan ken wayne darren shane fellas grandad".split()
)
_WORTH = {**ORDINALS, **PLURALS, **TENS, **SMALL}
_SIGNS = frozenset(("plus", "less", "over", "mils"))  # so short that another letter makes another word
LONG = 7  # from this length on two slips are forgiven, below only one


def _nearest(word: str, found: list[tuple[str, float]]) -> str:
    """Of words as near, the one with the same letters: makrs is marks before it is makes, elevn eleven before elev."""
    letters = sorted(word)

    def unlike(near: tuple[str, float]) -> tuple[float, bool, bool]:
        return near[1], sorted(near[0]) != letters, near[0] not in _WORTH or set(near[0]) != set(letters)

    best, slips = min(found, key=unlike)
    if best in _SIGNS and len(word) == len(best) and sorted(best) != letters:
        return word  # 2 plts: no plus
    return word if best in _WORTH and sorted(best) != letters and _doubtful(word, best, int(slips)) else best


def _doubtful(word: str, best: str, slips: int) -> bool:
    """Whether a word is no sure slip of a number: a wrong number is worse than one that is asked about.

    No number begins with another letter ("sight"), is as near to another ("fift"), or is one letter off four ("nite").
    """
    near = process.extract(word, list(_WORTH), scorer=OSA.distance, score_cutoff=slips, limit=None)
    values = {_WORTH[other] for other, _, _ in near if slips == 1 or other[0] == word[0]}
    return best[0] != word[0] or len(values) > 1 or len(best) == len(word) == SHORTEST


class Speller:
    """Reads words against a vocabulary; `leave` are words that are right as they are, `ordinary` in any form."""

    def __init__(self, vocabulary: Collection[str], leave: Collection[str], ordinary: Collection[str] = ()) -> None:
        self.ordinary = frozenset(ordinary)
        self.known = frozenset(vocabulary)
        self.leave = frozenset(leave) | self.known | NAMES
        self.by_letter: dict[str, list[str]] = {}
        for word in sorted(vocabulary):  # of two words as near, always the same one
            if len(word) >= SHORTEST and word.isalpha():
                self.by_letter.setdefault(word[0], []).append(word)
        self.all = [word for words in self.by_letter.values() for word in words]
        self.read = lru_cache(maxsize=4096)(self._read)

    def _read(self, word: str) -> str:
        """The word it stands for, or the word itself."""
        if word in AS_WRITTEN:
            return AS_WRITTEN[word]
        if word in self.leave or len(word) < SHORTEST or not word.isalpha() or self._form_of_known(word):
            return word
        slips = 2 if len(word) >= LONG else 1
        # Few people slip on the first letter; where they do, one slip is all that is forgiven.
        for words, most in ((self.by_letter.get(word[0], []), slips), (self.all, 1)):
            found = process.extract(word, words, scorer=OSA.distance, score_cutoff=most, limit=NEAREST)
            if found:
                return _nearest(word, [(near, slips) for near, slips, _ in found])
        return self._parted(word)

    def _form_of_known(self, word: str) -> bool:
        """Whether it is a common word with a regular ending: hates, wanted, hoping."""
        for ending in ("s", "ed", "ing"):
            stem = word.removesuffix(ending)
            if stem == word or len(stem) < LEAST_PART or (ending == "s" and stem[-1] == "s"):  # pluss is no plural
                continue
            bare = stem in self.ordinary and (ending == "s" or stem[-1] != "e")
            if bare or (ending != "s" and stem + "e" in self.ordinary):
                return True
        return False

    def _parted(self, word: str) -> str:
        """Two known words run together, with the space put back ("stepflashing"); else the word itself."""
        for at in range(len(word) - LEAST_PART, LEAST_PART - 1, -1):
            verb = word[at:] == "ten" and word[:at] not in _WORTH  # flatten, tighten: no ten in them
            if word[:at] in self.known and word[at:] in self.known and not verb:
                return f"{word[:at]} {word[at:]}"
        return word
