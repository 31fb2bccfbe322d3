"""Single signs and letters of notes that stand for a small word: bds 2 buy, 42 m2 2 sf, half o 1867, 50 L + R, 6 x 14-9/16 =.

The rules work as those of `short_by_place.py`, which looks them up.
"""

from __future__ import annotations

import re

from intents.short_by_line import LEAST_CUT, Rule, Words

_TO_DO = frozenset("buy order get leave land cut cover fit fill make hang do reach clear hit mark set use allow go".split())
_SQUARED = frozenset(("it", "up"))
_SIZES = frozenset("' \" ft foot feet in inches mm cm m m2 sqm sf sqft deg squares sq kg lb lbs".split())
_UNITS = _SIZES - {"'", '"'} | frozenset("metres meters".split())
_FEET, _METRIC = frozenset(("'", "ft", "foot", "feet")), frozenset("mm cm m metres meters".split())
_SCALES, _AREAS = frozenset(("f", "c")), frozenset("sf sqft m2 sqm sq".split())
_ENDS = frozenset(("", ".", ",", ";", "?", "=", ":"))
_LADDERS = frozenset(("ladder", "ldr", "laddr"))
_PARTS = frozenset("half third quarter thirds quarters halves 2/3".split())
_LEFT, _RIGHT = frozenset(("l", "left", "lft")), frozenset(("r", "right", "rt"))
_SWINGS = frozenset("saw saws stops stop swings swing mitre miter goes".split())
_PIECES = frozenset("blocks blks block blk bits pcs pieces nogs cleats rips".split())
_FIXED = frozenset("screw scw scrw scr nail nl fixing fxg fastener staple".split())
_TOTALS = frozenset("total tot ttl tl".split())
_MONEY = frozenset("$ £ € cents cost price".split())
_FIR = frozenset(("fir", "firs"))
_ROOFED = frozenset("rf roof rafter rftr raft com common hip valley rise".split())
_SPACED = frozenset(
    "joist joists jst jsts stud studs stds batten battens btn btns post posts psts marks mks hole holes noggins rafters rftrs"
    " straps strps".split()
)
_LINES, _POINTS = frozenset("gas water fuel drain chalk sewer".split()), frozenset("anchor anchr long lng short shrt".split())
_CENTRES = (300, 350, 400, 450, 500, 600, 750, 800, 900, 1000, 1200)  # mm
MOST_TIMES, MOST_CUT = 30, 60  # times a length; degrees


def _to(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Bds 2 buy; 42 m2 2 sf; ladder 2 5.2m eaves; and both pieces of a corner: cut 2 @ 45."""
    before, after, then = words[at - 1], words[at + 1], words[at + 2]
    if before not in ("@", "at", "×", "by", "/", "-", "+") and not before[-1:].isdecimal() and after in _TO_DO | {"sq"}:
        return ("to square" if after == "sq" else "to", 1 + (after == "sq")) if after != "sq" or then in _SQUARED else None
    in_unit = before in _SIZES - _FEET and after in _UNITS and then in _ENDS
    in_unit = in_unit or (before in _FEET and after in _METRIC and then in _ENDS)  # 3 feet 2 inches are one length
    if in_unit or (before in _SCALES and after in _SCALES):
        return "to", 1
    if before in _LADDERS and after[:1].isdecimal():
        return "to", 1
    if (before, after) == ("-", "-") and words[at - 2].isalpha() and then.isalpha():
        return "to", 1  # roof-2-wall
    cut = after in ("@", "at") and then.isdecimal() and int(then) <= MOST_CUT and before in ("cut", "cuts")
    return ("both", 1) if cut and "corner" in said else None


def _for(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Felt 4 1650sf."""
    return ("for", 1) if words[at - 1].isalpha() and words[at + 1].isdecimal() and words[at + 2] in _AREAS else None


def _run(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """13'6 rn; else it may be now."""
    sloped = "/" in said or "pitch" in said or not _ROOFED.isdisjoint(said)
    return ("run", 1) if sloped and (words[at - 1][-1:].isdecimal() or words[at - 1] in _SIZES) else None


def _apart(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Jsts 450 crs, psts 2.4 crs: nobody counts so many courses, nor parts of one."""
    number = words[at - 1]
    centres = number.isdecimal() and int(number) in _CENTRES and not _SPACED.isdisjoint(said)
    return ("oc", 1) if centres or re.fullmatch(r"\d+\.\d+", number) else None


def _of(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("of", 1) if words[at - 1] in _PARTS and words[at + 1][:1].isdecimal() else None


def _and(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    if words[at - 1] in _LEFT and words[at + 1] in _RIGHT:
        return "and", 1
    counted, joint, size = words[at + 1 : at + 4]
    listed = counted.isdecimal() and joint == "/" and size.isdecimal() and int(size) >= LEAST_CUT
    return (",", 1) if listed else None  # 6/1350mm + 5/900mm


def _side(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """How far a saw goes to either side: 52 lft n rt."""
    beside = words[at - 1][-1:].isdecimal() or words[at - 1] in ("n", "and", "&", "+", "/", "°", "degrees")
    if not beside or _SWINGS.isdisjoint(said):
        return None
    return "left" if words[at] == "lft" else "right", 1


def _right(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """The other side of a saw that goes as far left: 50 L + R."""
    return ("right", 1) if words[at - 1] in ("+", "&", "and", "n", "/") and words[at - 2] in _LEFT else None


def _ex(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("from", 1) if words[at - 1] in _PIECES and words[at + 1][:1].isdecimal() else None


def _no(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """A count that is asked for: no. =?; no. of."""
    stop = words[at + 1] == "."
    of = words[at + 1 + stop] == "of"
    asked = words[at + 1 + stop + of] in ("=", "?", "") and (of or words[at + 1 + stop]) and words[at - 1] in _ENDS
    return ("how many", 1 + stop + of) if asked else None


def _centre(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Ctr of 61-3/4: half of it."""
    return ("half", 1) if words[at + 1] == "of" and words[at + 2][:1].isdecimal() and not words[at - 1].isalpha() else None


def _per(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """£13.60 per: for each."""
    return ("each", 1) if words[at - 1][-1:].isdecimal() and words[at + 1] in _ENDS | {"-"} else None


def _overhead(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Zero o/h is an overhang; an o/h door is none."""
    if (words[at + 1], words[at + 2]) != ("/", "h"):
        return None
    return ("door", 4) if words[at + 3] in ("door", "dr") else ("overhang", 3)


def _douglas(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("douglas", 1) if words[at + 1] in _FIR else None


def _times(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """So many times a length, where nothing else is told: 6 x 14-9/16 =; 22 5/8 x 3, tot lg."""
    part = words[at - 2] == "/" and words[at + 1].isdecimal() and int(words[at + 1]) <= MOST_TIMES and words[at + 2] in _ENDS
    if part and not _TOTALS.isdisjoint(said):
        return "times", 1
    bare = "=" in said and not any(word.isalpha() and word not in _SIZES for word in said)
    return ("times", 1) if bare and "/" in said else None


def _every(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Screw @ 400: how far apart they are; screws @ 12 are at a price."""
    apart = words[at - 1] in _FIXED and words[at + 1].isdecimal() and _MONEY.isdisjoint(said)
    return ("every", 1) if apart else None


def _line(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """A gas ln; an anchr pt."""
    if words[at] == "pt":
        return ("point", 1) if words[at - 1] in _POINTS else None
    return ("line", 1) if words[at - 1] in _LINES else None


def _roofing(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("squares", 2) if words[at + 1] == "squares" else None


RULES: dict[str, Rule] = {
    "2": _to, "o": _overhead, "+": _and, "lft": _side, "rt": _side, "ex": _ex, "r": _right, "no": _no, "d": _douglas,
    "×": _times, "@": _every,
    "roofing": _roofing, "4": _for, "rn": _run, "ln": _line, "pt": _line,
    "crs": _apart, "ctrs": _apart, "ctr": _centre, "cntr": _centre, "mid": _centre, "per": _per,
}  # fmt: skip
# Looked at after those, where they tell nothing.
THEN: dict[str, Rule] = {"o": _of}
