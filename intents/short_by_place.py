"""Short words and signs of notes that their neighbours tell: 50L 60R, 8/1250, 600 cts, 31 1/4 ||||, dp @ 64F, plate 2 ridge.

Each is spelled out as a whole word (see texted.py), or stays what it is. A rule sees the words of the line with empty ones round
it, and the place of its own; it gives the words that stand there, and how many of those said they take the place of.
"""

from __future__ import annotations

from functools import reduce

from intents import short_by_line as by_line
from intents import short_signs as by_sign
from intents.short_by_line import LEAST_CUT, Rule, Words
from intents.tokens import Token

_SWINGS = frozenset("saw saws stops stop swings swing mitre miter goes".split())
_PLACES = frozenset(
    "plate ridge rdg peak corner floor flr ceiling clg centre center end wall post eave ground sill edge side face top bottom"
    " roof rf wl outside inside rail stud beam joist door window btm bot hd head legs".split()
)
_TAPED = frozenset("tape taped tapes measure measures measured meas measd corner corners".split())
_SIZES = frozenset("' \" ft in mm cm m".split())
_PIECES = frozenset("pcs pc pieces piece off lengths bits".split())
_MONEY = frozenset("$ £ € cents cost costs price paid".split())
_CURRENCIES = frozenset("$ £ €".split())
_WIRED = frozenset("circuit ckt cct breaker receptacle receptacles recepts outlets outlet feeder".split())  # 20A
_STOPS = frozenset(("", ".", ",", ";", "?", "/", "-", "×"))
_WASTES = frozenset(("waste", "wst", "wast"))
_ENDS, MOST_WASTE = frozenset(("", ".", ",", ";", "?")), 30
_ONE_OF = frozenset("rake end side face edge hip valley slope cheek".split())
_OVERHANGS = frozenset("overhang oh ovhg ohang eaves soffit".split())
_ALL_OF = frozenset("sides corners walls edges ends round".split())
_ASKED, _LONG = frozenset("@ at ? : =".split()), frozenset("lg len length rafter lgth".split())
_DEGREES = frozenset("deg degs degrees dg".split())
_OPENINGS = frozenset("wdw wdws window windows dr drs door doors opg opgs opng opngs opening openings vent vents".split())
_SPACED = frozenset("gap gaps space spaces spacing reveal reveals".split())
_FOOTED = frozenset("gable gbl wall wl run span wide long roof plate deck board boards stock eave eaves rake ridge".split())
_DIAGONAL = frozenset("diag diags diagonal diagonals corners".split())
_FEET, _METRIC = frozenset("' ft foot feet".split()), frozenset("mm m cm metres millimetres".split())
_TWELVE, MOST_RISE = "12", 24
MOST_OFF, RATIOS = 99, (300,)  # 8/1250: so many at so long; 1/300 is of an attic
LEAST_APART = 100  # mm: 600 cts are no cents, and 600 crs no courses
LEAST_CODE, MOST_CODE = 1600, 9099  # 3040: 3-0 wide and 4-0 high


def by_place(tokens: list[Token], said: set[str]) -> list[Token]:
    """The tokens with such words and signs spelled out."""
    if said.isdisjoint(_CUES) and (_WIRED.isdisjoint(said) or "a" not in said):
        return tokens
    words = ["", "", *(token.text for token in tokens), "", "", "", ""]
    found: list[Token] = []
    passed = -1
    for at, token in enumerate(tokens):
        if at <= passed:
            continue
        rule = _rule_of(words, at + 2)
        if token.text == "-" and _tight(tokens, at):
            rule = None  # 6-8
        whole, took = (rule(words, at + 2, said) if rule else None) or (token.text, 1)
        passed = at + took - 1
        if whole == token.text:
            found.append(token)
            continue
        end = tokens[passed].end
        if rule is _opening_code:  # each digit stands where it was written
            found += [Token(word, token.start + (n + 1) // 2, token.start + n // 2 + 1) for n, word in enumerate(whole.split())]
            continue
        found += [Token(word, token.start, end) for word in whole.split()]
    return found


def _rule_of(words: Words, at: int) -> Rule | None:
    """What looks at the word of a place: a number after waste is of that, and else may be an opening's code."""
    word = words[at]
    if word.isdecimal() and words[at - 1] in _WASTES:
        return _waste
    if word.isdecimal() and (words[at + 1] == "max" or words[at + 4] in by_line.KERFS):
        return by_line.number
    return _RULES.get(word, _opening_code if word.isdecimal() else None)


def _tight(tokens: list[Token], at: int) -> bool:
    """Whether a sign stands close to what is before and after it."""
    inside = 0 < at < len(tokens) - 1
    return inside and tokens[at - 1].end == tokens[at].start and tokens[at].end == tokens[at + 1].start


def _sized(words: Words, at: int) -> bool:
    return words[at - 1][-1:].isdecimal() or words[at - 1] in _SIZES


def _swung(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Which way a saw swings so far: 50L 60R; L 47 / R 52."""
    if words[at] == "l" and words[at + 1] == "=":
        return "length", 1
    if words[at] == "l" and words[at + 1] in (".", "f") and _sized(words, at):
        stop = words[at + 1] == "."
        lineal = words[at + 1 + stop] == "f"
        return ("ft", 2 + stop + (stop and words[at + 3] == ".")) if lineal else None
    beside = _sized(words, at) or words[at + 1][:1].isdecimal()
    tells = {"l", "r"} <= said or not _SWINGS.isdisjoint(said)
    return ("left" if words[at] == "l" else "right", 1) if beside and tells and not {"h", "w"} & said else None


def _way(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Which way a size goes: 9' H, 10w x 8d."""
    word, after = words[at], words[at + 1]
    inside = after == "in" and words[at + 2][:1].isdecimal()  # 5-1/2 w in 72
    inside = inside or (after[:1].isdecimal() and "w" in said and not {"d", "h"}.isdisjoint(said))  # 5/8w 3/4d 20ft
    if not _sized(words, at) or not (after in _STOPS or after in ("l", "w", "h", "d") or inside):
        return None
    if word == "d" and not {"w", "wide", "wd"} & said:
        return None  # 8d is a nail
    return {"h": "high", "w": "wide", "d": "deep"}[word], 1


def _amps(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("amp", 1) if words[at - 1].isdecimal() and not _WIRED.isdisjoint(said) else None


def _degrees(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return None if words[at - 1][-1:].isdecimal() else ("degrees", 1)


def _one(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """1 rake board length; but 1 1/2, and 1 end 34 long."""
    before, then = words[at - 1], words[at + 2]
    alone = (before.isalpha() or before in _STOPS) and (then.isalpha() or then in _STOPS)
    return ("one", 1) if words[at + 1] in _ONE_OF and alone else None


def _all(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    if words[at - 1] != "all" or words[at + 1] not in _ALL_OF:
        return None
    return ("round", 2) if not _OVERHANGS.isdisjoint(said) else ("four", 1)


def _first(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("first", 1) if words[at + 1] in ("@", "at", "mark", "one", "stud") else None


def _between(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """From one place to another: plate 2 ridge; top+btm."""
    if words[at - 1] not in _PLACES or words[at + 1] not in _PLACES:
        return None
    return ("and" if words[at] == "+" else "to"), 1


def _apart(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """600 cts, 24 cc, @600 crs: how far apart."""
    before = words[at - 1]
    if not before.isdecimal() or (words[at] != "cc" and int(before) < LEAST_APART) or not _MONEY.isdisjoint(said):
        return None
    return ("oc", 1) if words[at] != "crs" or words[at - 2] in ("@", "at") else None


def _from(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    taken = words[at + 1][:1].isdecimal() or words[at + 1] in ("a", "one", "the")
    return ("from", 1) if words[at - 1] in _PIECES and taken else None


def _dew_point(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("dew point", 1) if not _sized(words, at) and words[at + 1] in _ASKED else None


def _valley(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("valley", 1) if words[at + 1] in _LONG else None


def _channel(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("channel", 1) if words[at - 1] in ("f", "h", "j", "u") else None


def _pitch(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """8 n 12; 17.5 pitch degs."""
    before, after = words[at - 1], words[at + 1]
    if words[at] == "pitch":
        return ("degrees pitch", 2) if before[-1:].isdecimal() and after in _DEGREES else None
    rise = before.isdecimal() and int(before) <= MOST_RISE
    return ("in", 1) if rise and after == _TWELVE else None


def _so_many_in_twelve(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """A question mark in the place of a rise: ?:12, ?/12."""
    return ("what pitch in 12", 3) if words[at + 1] in (":", "/") and words[at + 2] == _TWELVE else None


def _letters(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """O/hang, o/a and f/work: words that a slash shortens; 26f is so many feet."""
    if words[at] == "f" and words[at - 1].isdecimal() and words[at + 1] in _FOOTED:
        return "ft", 1
    if words[at + 1] != "/":
        return None
    whole = {("o", "hang"): "overhang", ("o", "a"): "overall", ("f", "work"): "formwork", ("o", "all"): "overall"}
    found = whole.get((words[at], words[at + 2]))
    return (found, 3) if found else None


def _number_sign(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """48# are pounds; # of sticks is how many; a #8 screw stays one."""
    if words[at - 1][-1:].isdecimal():
        return "lb", 1
    return None if words[at + 1][:1].isdecimal() else ("how many", 1 + (words[at + 1] == "of"))


def _equal(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("equal", 1) if words[at + 1] in _SPACED else None


def _up(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("up" if words[at] == "↑" else "down"), 1


def _dash(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """A dash that is none of a sum: "--", and one before money that follows a word; openings are taken off a wall."""
    if words[at + 1] == "-":
        return ",", 2
    taken = words[at + 1] in _OPENINGS or (words[at + 1].isdecimal() and words[at + 2] in _OPENINGS)
    if taken and {"wall", "gable", "wl"} & said:
        return "less", 1
    if by_line.dash(words, at, said):
        return ",", 1
    return (",", 1) if words[at + 1] in _CURRENCIES and words[at - 1].isalpha() else None


def _crossed(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """A tape pulled corner to corner, written with a cross: x-tape 40'1; and so many at a price: 38 bds x $21.75."""
    if words[at + 1] in _CURRENCIES:
        return "at", 1
    dash = words[at + 1] == "-"
    taped = words[at + 1 + dash] in _TAPED and not words[at - 1][-1:].isdecimal() and words[at - 1] not in _SIZES
    return ("diagonal", 2 + dash) if taped else None


def _tallied(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Strokes of a tally after a size: 31 1/4 |||."""
    if not _sized(words, at):
        return None
    took = 1
    while at + took < len(words) and words[at + took] == "|":
        took += 1
    return f"× {took}", took


def _so_many(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """So many of a length, as a cutting list has them: 8/1250; or the two sides of what is square: 4.8m/3.3m."""
    before, after = words[at - 1], words[at + 1]
    sides = _sized(words, at) and after[:1].isdecimal() and not _DIAGONAL.isdisjoint(said)
    if sides and after not in ("2", "4", "8", "12", "16", "32", "64"):
        return "×", 1
    if not before.isdecimal() or not after.isdecimal() or not 1 < int(before) <= MOST_OFF:
        return None
    again = words[at - 4] == "/" and words[at - 5].isdecimal()  # 4/1200mm 6/950mm
    alone = words[at - 2] not in _SIZES or again
    return ("at", 1) if int(after) >= LEAST_CUT and int(after) not in RATIOS and alone else None


def _numbered(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """2no windows are two windows."""
    stop = words[at + 1] == "."
    return ("", 1 + stop) if words[at - 1].isdecimal() and words[at + 1 + stop] in _OPENINGS else None


def _waste(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Waste that is told by its number alone: 14 footers, waste 8."""
    return (f"{words[at]} percent", 1) if words[at + 1] in _ENDS and int(words[at]) <= MOST_WASTE else None


def _opening_code(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """An opening by its code, where feet are told besides: a 3040 window is 3-0 wide and 4-0 high."""
    code = words[at]
    if words[at + 1] not in _OPENINGS or len(code) != len("3040") or words[at - 1] in ("×", "by") or _FEET.isdisjoint(said):
        return None
    if not LEAST_CODE <= int(code) <= MOST_CODE or code[2] == "0" or not _METRIC.isdisjoint(said):
        return None
    return f"{code[0]} - {code[1]} × {code[2]} - {code[3]}", 1


def _either(first: Rule, then: Rule) -> Rule:
    """What a rule tells, or where it tells nothing another one."""
    return lambda words, at, said: first(words, at, said) or then(words, at, said)


_OWN: dict[str, Rule] = {
    "l": _swung, "r": _swung, "h": _way, "w": _way, "d": _way, "a": _amps, "°": _degrees, "1": _one, "4": _all, "1st": _first,
    "2": _between, "+": _between, ">": _between, "cts": _apart, "cc": _apart, "crs": _apart, "ex": _from,
    "dp": _dew_point, "val": _valley,
    "ch": _channel, "n": _pitch, "pitch": _pitch, "?": _so_many_in_twelve, "o": _letters, "f": _letters,
    "#": _number_sign, "=": _equal, "↑": _up, "↓": _up, "-": _dash, "×": _crossed, "|": _tallied, "/": _so_many,
    "no": _numbered,
}  # fmt: skip
_TABLES = (by_sign.RULES, by_sign.THEN, _OWN, by_line.RULES)
_RULES = {
    word: reduce(_either, [table[word] for table in _TABLES if word in table]) for table in _TABLES for word in table
}
# An article is a cue where a circuit is spoken of alone.
_CUES = frozenset(_OWN.keys() - {"a"} | by_line.CUES | by_sign.RULES.keys() | _OPENINGS | _WASTES)
