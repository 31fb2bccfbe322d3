"""How words are said that the recogniser's dictionary lacks, in the phones of CMUdict (ARPABET without stress).

Words of the trade are listed; plurals, past forms and compounds of words that are known are worked out.
"""

from __future__ import annotations

from collections.abc import Callable

Lookup = Callable[[str], str | None]  # a word's phones in the dictionary, or None

TRADE = {
    "battens": "B AE T AH N Z",
    "bevels": "B EH V AH L Z",
    "beveled": "B EH V AH L D",
    "beveling": "B EH V AH L IH NG",
    "bevelling": "B EH V AH L IH NG",
    "centred": "S EH N T ER D",
    "cladding": "K L AE D IH NG",
    "cornice": "K AO R N AH S",
    "decagon": "D EH K AH G AA N",
    "diag": "D AY AE G",
    "dialled": "D AY AH L D",
    "facia": "F EY SH AH",
    "facias": "F EY SH AH Z",
    "fascia": "F EY SH AH",
    "fascias": "F EY SH AH Z",
    "furring": "F ER IH NG",
    "galvanised": "G AE L V AH N AY Z D",
    "heptagon": "HH EH P T AH G AA N",
    "hypotenuse": "HH AY P AA T AH N UW S",
    "jambs": "JH AE M Z",
    "kerf": "K ER F",
    "lathmark": "L AE TH M AA R K",
    "laths": "L AE TH S",
    "lintels": "L IH N T AH L Z",
    "litre": "L IY T ER",
    "litres": "L IY T ER Z",
    "louver": "L UW V ER",
    "louvers": "L UW V ER Z",
    "louvres": "L UW V ER Z",
    "mastic": "M AE S T IH K",
    "mitered": "M AY T ER D",
    "miters": "M AY T ER Z",
    "mitred": "M AY T ER D",
    "mitres": "M AY T ER Z",
    "mitring": "M AY T ER IH NG",
    "nonagon": "N AA N AH G AA N",
    "offcut": "AO F K AH T",
    "offcuts": "AO F K AH T S",
    "overage": "OW V ER IH JH",
    "pentagonal": "P EH N T AE G AH N AH L",
    "polygons": "P AA L IY G AA N Z",
    "protractor": "P R OW T R AE K T ER",
    "purlin": "P ER L IH N",
    "purlins": "P ER L IH N Z",
    "radii": "R EY D IY AY",
    "sagitta": "S AH JH IH T AH",
    "sawn": "S AO N",
    "segmental": "S EH G M EH N T AH L",
    "soffits": "S AO F IH T S",
    "sloped": "S L OW P T",
    "spindles": "S P IH N D AH L Z",
    "splayed": "S P L EY D",
    "underlay": "AH N D ER L EY",
    "underlayment": "AH N D ER L EY M AH N T",
    "wastage": "W EY S T IH JH",
}
# Ways of saying a word that the dictionary has in one way only.
OTHER_WAYS = {
    "eighths": ("EY TH S", "EY T S"),
    "eighth": ("EY TH",),
    "sixteenths": ("S IH K S T IY N T S",),
    "fascia": ("F AE SH AH", "F EY SH IY AH"),
    "facia": ("F AE SH AH", "F EY SH IY AH"),
    "soffit": ("S AA F IH T",),
    "half": ("HH AA F",),
}
VOICELESS = frozenset("P T K F TH".split())
HISSING = frozenset("S Z SH ZH CH JH".split())
SHORTEST_PART = 3  # letters in each half of a compound: shorter ones split words that are no compound


def phones(word: str, lookup: Lookup) -> str | None:
    """A word's phones: listed, worked out from words that `lookup` has, or None when there is no telling."""
    if word in TRADE:
        return TRADE[word]
    if not word.isalpha():
        return None
    return _plural(word, lookup) or _past(word, lookup) or _going_on(word, lookup) or _compound(word, lookup)


def _stem(word: str, ending: str, lookup: Lookup) -> str | None:
    """The phones of a word without its ending, put back to what the dictionary may hold."""
    if not word.endswith(ending) or len(word) < len(ending) + SHORTEST_PART:
        return None
    root = word.removesuffix(ending)
    tries = [root, root + "e"] + ([root[:-1]] if root[-1] == root[-2] else [])
    return next((found for name in tries if (found := TRADE.get(name) or lookup(name))), None)


def _plural(word: str, lookup: Lookup) -> str | None:
    said = None if word.endswith("ss") else _stem(word, "s", lookup)
    if said is None:
        return None
    last = said.split()[-1]
    return said + (" IH Z" if last in HISSING else " S" if last in VOICELESS else " Z")


def _past(word: str, lookup: Lookup) -> str | None:
    said = _stem(word, "ed", lookup)
    if said is None:
        return None
    last = said.split()[-1]
    return said + (" IH D" if last in ("T", "D") else " T" if last in VOICELESS | HISSING - {"Z", "ZH", "JH"} else " D")


def _going_on(word: str, lookup: Lookup) -> str | None:
    said = _stem(word, "ing", lookup)
    return said and said + " IH NG"


def _compound(word: str, lookup: Lookup) -> str | None:
    for cut in range(SHORTEST_PART, len(word) - SHORTEST_PART + 1):
        first, second = lookup(word[:cut]), TRADE.get(word[cut:]) or lookup(word[cut:])
        if first and second:
            return f"{first} {second}"
    return None
