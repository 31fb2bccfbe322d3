"""Short words and signs of notes that their neighbours tell: 50L 60R, 8/1250, 600 cts, 31 1/4 ||||, dp @ 64F, plate 2 ridge.

Each is spelled out as a whole word (see texted.py), or stays what it is.
"""

from __future__ import annotations

from collections.abc import Sequence

from intents.tokens import Token

SPELLED = frozenset("a + l r h ° × cts cc ex dp val 2 | no @ 8 1".split())  # what is looked at, "8" standing for any count
_SWINGS = frozenset("saw saws stops stop swings swing mitre miter goes".split())
_PLACES = frozenset(
    "plate ridge rdg peak corner floor flr ceiling clg centre center end wall post eave ground sill edge side face top bottom"
    " outside inside rail stud beam joist door window btm".split()
)
_TAPED = frozenset("tape taped tapes measure measures measured".split())
_SIZES = frozenset("' \" ft in mm cm m".split())
_PIECES = frozenset("pcs pc pieces piece off lengths bits".split())
_WIRED = frozenset("circuit ckt cct breaker receptacle receptacles recepts outlets outlet feeder".split())  # 20A
_MONEY = frozenset("$ £ € cents cost costs price paid".split())
_STOPS = frozenset(("", ".", ",", ";", "?", "/", "-", "×"))
_SIDES, _BETWEEN = {"l": "left", "r": "right"}, {"2": "to", "+": "and"}
_ONE_OF = frozenset("rake end side face edge hip valley slope cheek".split())
_ASKED, _LONG = frozenset("@ at ? : =".split()), frozenset("lg len length rafter lgth".split())
MOST_OFF, LEAST_CUT, RATIOS = 99, 200, (300,)  # 8/1250: so many at so long; 1/300 is of an attic
LEAST_APART = 100  # mm: 600 cts are no cents


def by_place(tokens: list[Token], said: set[str]) -> list[Token]:
    """The tokens with such words and signs spelled out."""
    if SPELLED.isdisjoint(said) and "/" not in said:
        return tokens
    words = ["", "", *(token.text for token in tokens), "", "", ""]
    found: list[Token] = []
    passed = -1
    for at, token in enumerate(tokens):
        if at <= passed:
            continue
        whole, took = _spelled(words, at + 2, said) or (token.text, 1)
        if took > 1:
            passed = at + took - 1
        if whole == token.text:
            found.append(token)
            continue
        end = tokens[at + took - 1].end
        found += [Token(word, token.start, end) for word in whole.split()]
    return found


def _spelled(words: Sequence[str], at: int, said: set[str]) -> tuple[str, int] | None:
    """What the token at a place stands for, and of how many tokens; None where it is what it is."""
    word = words[at]
    if word == "×":
        return _crossed(words, at)
    if word == "|":
        return _tallied(words, at)
    if word == "/":
        return _so_many(words, at)
    whole = _sided(words, at, said) or _named(words, at, said)
    return (whole, 1) if whole else None


def _sided(words: Sequence[str], at: int, said: set[str]) -> str:
    """What a letter beside a size stands for: 50L 60R, 9' H, 20A."""
    word, before, after = words[at], words[at - 1], words[at + 1]
    if not (before[-1:].isdecimal() or before in _SIZES):
        return "length" if word == "l" and after == "=" else ""
    if word in _SIDES and (_SIDES.keys() <= said or not _SWINGS.isdisjoint(said)):
        return _SIDES[word]
    if word == "a":
        return "amp" if before.isdecimal() and not _WIRED.isdisjoint(said) else ""
    return "high" if word == "h" and (after in _STOPS or after in ("l", "w")) else ""


def _named(words: Sequence[str], at: int, said: set[str]) -> str:
    """What a short word or a sign is by what it stands between: plate 2 ridge, 600 cts, dp @ 64F."""
    word, before, after = words[at], words[at - 1], words[at + 1]
    if word == "°":
        return "" if before[-1:].isdecimal() else "degrees"
    if word == "1":
        alone = (before.isalpha() or before in _STOPS) and (words[at + 2].isalpha() or words[at + 2] in _STOPS)
        return "one" if after in _ONE_OF and alone else ""  # 1 rake board length
    if word in _BETWEEN:
        return _BETWEEN[word] if before in _PLACES and after in _PLACES else ""
    if word in ("cts", "cc"):
        apart = before.isdecimal() and (word == "cc" or int(before) >= LEAST_APART)
        return "oc" if apart and _MONEY.isdisjoint(said) else ""
    if word == "ex":
        return "from" if before in _PIECES and (after[:1].isdecimal() or after in ("a", "one", "the")) else ""
    if word == "dp":
        return "dew point" if before not in _SIZES and not before[-1:].isdecimal() and after in _ASKED else ""
    return "valley" if word == "val" and after in _LONG else ""


def _crossed(words: Sequence[str], at: int) -> tuple[str, int] | None:
    """A tape pulled corner to corner, written with a cross: x-tape 40'1."""
    dash = words[at + 1] == "-"
    return ("diagonal", 2 + dash) if words[at + 1 + dash] in _TAPED and not words[at - 1][-1:].isdecimal() else None


def _tallied(words: Sequence[str], at: int) -> tuple[str, int] | None:
    """Strokes of a tally after a size, four or fewer: 31 1/4 |||."""
    if not words[at - 1][-1:].isdecimal() and words[at - 1] not in _SIZES:
        return None
    took = 1
    while at + took < len(words) and words[at + took] == "|":
        took += 1
    return f"× {took}", took


def _so_many(words: Sequence[str], at: int) -> tuple[str, int] | None:
    """So many of a length, as a cutting list has them: 8/1250."""
    before, after = words[at - 1], words[at + 1]
    if not before.isdecimal() or not after.isdecimal() or not 1 < int(before) <= MOST_OFF:
        return None
    return ("at", 1) if int(after) >= LEAST_CUT and int(after) not in RATIOS and words[at - 2] not in _SIZES else None
