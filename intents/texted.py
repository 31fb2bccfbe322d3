"""Words as they are texted, spelled out: wdws, crs, hgt, lg, lf, qty, w/, sq.

They are spelled out before anything is read, so that whatever is known of the whole word holds for the short one too. Where
a short one may be two words, its neighbours tell which: 8-0 hgt is high, hgt 8-0 is a height. A short one that they do not
tell stays as it is.
"""

from __future__ import annotations

from intents.tokens import Token

_WORDS = {
    short: whole
    for whole, shorts in {
        "window": "wdw wndw windo", "windows": "wdws wndws", "courses": "crs crses", "length": "lgth", "lengths": "lgths lengts",
        "overhang": "ovhg ovhng", "openings": "opngs opns", "opening": "opng opn", "panels": "pnls",
        "panel": "pnl", "total": "tot ttl", "exposure": "expo expos", "sheathing": "shtg shthg shtng", "spacing": "spcg spcng",
        "centres": "ctrs cntrs", "including": "incl", "needed": "reqd", "square feet": "sqf", "cladding": "cldg cladg",
        "strapping": "strpg", "gable": "gbl", "weight": "wgt",
    }.items()
    for short in shorts.split()
}  # fmt: skip
# After a size they tell what way it goes, else they name it; one with no name of its own is let be there.
_AFTER_SIZE = {"hgt": "high", "hght": "high", "ht": "high", "lg": "long", "thk": "thick", "dp": "deep", "wd": "wide"}
_ELSEWHERE = {"hgt": "height", "hght": "height", "ht": "height"}
_HOW_MANY = frozenset(("qty", "cnt"))
_LINEAL = frozenset(("lf", "lft", "lnft"))
_SHORT = frozenset((*_WORDS, *_AFTER_SIZE, *_HOW_MANY, *_LINEAL, "w", "n", "sq", "dr", "drs"))
_SIZE_ENDS = frozenset("' \" ft in foot feet inch inches mm cm m metre metres meter meters".split())
_STOPS = frozenset(("", ".", "?", "!", ",", ";"))
_BEFORE_SQUARES = frozenset(("", ".", "?", "!", ";", "many", "total"))


def texted(tokens: list[Token]) -> list[Token]:
    """The tokens with the short words among them spelled out."""
    if _SHORT.isdisjoint(token.text for token in tokens):
        return tokens
    words = ["", *(token.text for token in tokens), "", ""]
    found: list[Token] = []
    passed = 0
    for at, token in enumerate(tokens, start=1):
        if at <= passed:
            continue
        whole = _whole(words, at) if token.text in _SHORT else token.text
        if token.text == "w" and words[at + 1] == "/":
            whole, passed = ("without", at + 2) if words[at + 2] == "o" else ("with", at + 1)
        found += [Token(word, token.start, token.end) for word in whole.split()]
    return found


def _whole(words: list[str], at: int) -> str:
    """What the short word at a place stands for."""
    word, before, after = words[at], words[at - 1], words[at + 1]
    sized = before[:1].isdecimal() or before in _SIZE_ENDS
    if word in _WORDS:
        return _WORDS[word]
    if word in _AFTER_SIZE:
        return _AFTER_SIZE[word] if sized else _ELSEWHERE.get(word, word)
    if word in _HOW_MANY:
        return word if after[:1].isdecimal() or after == ":" else "how many"
    if word in _LINEAL:
        return "ft" if sized else "foot"
    if word in ("dr", "drs"):
        return {"dr": "door", "drs": "doors"}[word] if before.isdecimal() and int(before) < 100 else word
    if word == "n":
        return "and" if sized and after[:1].isdecimal() else word
    if word == "w":
        return "with" if after[:1].isdecimal() and not sized else word
    squares = before in _BEFORE_SQUARES and (after == "of" or after in _STOPS)
    return "squares" if squares or (after == "of" and before.isdecimal()) else word

