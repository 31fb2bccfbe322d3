"""Short words of notes that the rest of the line tells: cor, c/l, lvl ct, 4 wall 48x9, 4 max, 3-9 in 9-0, @ 22 1/8 krf.

The rules work as those of `short_by_place.py`, which looks them up: each sees the words of the line with empty ones round it, and
the place of its own; it gives the words that stand there, and how many of those said they take the place of.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence

from intents.number_words import SMALL, TENS
from intents.tokens import Token

Words = Sequence[str]
Rule = Callable[[Words, int, set[str]], "tuple[str, int] | None"]
_ENDS = frozenset(("", ".", ",", ";", "?", "="))
_CUTS = frozenset("cut ct cuts".split())
_CUT_OF = frozenset("lvl level plumb plmb plm seat heel".split())
_RAFTERS = frozenset("rafter rafters raft rftr rftrs rft raftr run".split())
_INSIDE = frozenset("s is os i/s inside outside insd otsd o/s".split())
_RISES = frozenset("run rise rises up climbs pitch ptch pch goes".split())
_RUNS = frozenset(("run", "runs"))
_TWELVES, MOST_INCHES, LEAST_CUT = "12", 11, 200
_LISTED = frozenset("kerf krf blade sticks stx stix stk stks stock lengths lths lgths footers ftrs".split())
_FROM = frozenset("from frm out outta ex : pls please for - @".split())
_LEFT = frozenset("left leaves leftover remains remaining remainder".split())  # then a dash takes off
_EACH = frozenset("@ × at no off pcs pc pieces pce pces".split())
_NEEDED = frozenset(("need", "needs"))
_GAPS = frozenset("gap gaps space spaces spacing".split())
KERFS = frozenset("kerf krf".split())
_WANTED = frozenset("off reqd required needed".split())
_AREAS = frozenset("m2 m² sqm sf sqft".split())
_TOTALS = frozenset("tot total ttl = cost".split())
_COUNTED = frozenset("ctrs cntrs ctr centres centers oc cc cts marks mks holes".split())
_SHEETS = frozenset("sht shts sheet sheets osb ply drywall plywood boards bds brds lths lengths need enough stuff".split())
_FOR_WHAT = frozenset("wall wl walls roof rf gable gbl hse house deck soffit sof shed a the my this that".split())
_ASKED_OF = frozenset("deg degs degrees angle ang saw mtr miter".split())
_OF_PLATES = frozenset("plate plt plates".split())
_OVER = frozenset("over above abv ovr abve".split())
_EACH_AT = frozenset(("@", "at", "ea", "each"))
_SIZES = frozenset("' \" ft in mm cm m".split())
_WALLS = frozenset("both ends end legs leg wst waste corners kerf top bottom".split())
_SUMS = frozenset("less minus plus".split())
_PARTS = frozenset("half halves quarter quarters eighth eighths sixteenth sixteenths".split())
_SHAPES = frozenset(("mtr", "mitre", "miter", "saw", "cut", "joint", "jt", "jnt", "sides"))


def _corner(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Cor 87.5, and cor-cor: from one to the other; a crn is a corner inside or outside, and else may be crown."""
    word, after = words[at], words[at + 1]
    if word == "crn" and words[at - 1] not in _INSIDE:
        return None
    if word == "cor" and not words[at - 1] and after in (",", "blimey", "that", "what", "!"):
        return None
    return ("corner to" if after in ("cor", "corner", "cnr") else "corner"), 1


def _level(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("level", 1) if words[at + 1] in _CUTS else None


def _cut(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("cut", 1) if words[at - 1] in _CUT_OF else None


def _common(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("common", 1) if words[at + 1] in _RAFTERS or not _CUTS.isdisjoint(said) else None


def _common_rafter(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Cr lg: the common rafter, where a run is told."""
    return ("common rafter", 1) if "run" in said and words[at + 1] in ("lg", "lgth", "length", "len") else None


def _list_of_cuts(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """C/l, where there is something to cut it from; else it may be a centre line."""
    if (words[at + 1], words[at + 2]) != ("/", "l"):
        return None
    return ("cut list", 3) if words[at + 3] in _FROM or not _LISTED.isdisjoint(said) else None


def _between(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("between", 3) if words[at + 1] == "/" and words[at + 2] in ("w", "t", "n", "tw") else None


def _in(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """So many feet and inches up in so many along: 3-9 in 9-0 run, where nine are no inches."""
    if _RISES.isdisjoint(said) or at < len(("", "", "3", "-", "9")):
        return None
    before, after = words[at - 3 : at], words[at + 1 : at + 4]
    return ("over", 1) if _feet_and_inches(before) and _feet_and_inches(after) else None


def _feet_and_inches(words: Words) -> bool:
    feet, dash, inches = words
    return feet.isdecimal() and dash == "-" and inches.isdecimal() and int(inches) <= MOST_INCHES


def _inn(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("in", 1) if _number(words[at - 1]) and _number(words[at + 1]) else None


def _number(word: str) -> bool:
    return word[:1].isdecimal() or word in SMALL or word in TENS


def dash(words: Words, at: int, said: set[str]) -> bool:
    """Whether a dash that stands apart leads to what is to be cut, or to what is needed: 12 footers - 4 @ 40."""
    after, then = words[at + 1], words[at + 2]
    if after in _NEEDED:
        return True
    if words[at - 1] in _ENDS or "°" in said:
        return False  # 60 at the hottest, -20 at the coldest
    listed = not _LISTED.isdisjoint(said) or ("c" in said and "l" in said)
    size = words[at + 3]
    of_each = (then in _EACH and size != "/") or (then == "/" and size.isdecimal() and int(size) >= LEAST_CUT)  # - 6/1350mm
    return listed and after.isdecimal() and of_each and _LEFT.isdisjoint(said) and "cost" not in said


def number(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """A number that is told by what stands after it: 4 max beside a gap; and 22 | 1/8 kerf, which is 22 and a kerf."""
    if words[at + 1] == "max":
        alone = words[at - 1] in _ENDS or words[at - 1] == "/"
        return (f"max gap {words[at]}", 2) if alone and not _GAPS.isdisjoint(said) else None
    part = words[at + 2] == "/" and words[at + 1].isdecimal() and words[at + 3].isdecimal()
    if part and words[at + 4] in KERFS and not words[at + 5][:1].isdecimal():
        return f"{words[at]} ,", 1
    return None


def _for(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Shts 4 wall 48x9, osb 4 40x9 wall, deg 4 9/12 roof."""
    before, after, then = words[at - 1], words[at + 1], words[at + 2]
    if before in _ASKED_OF:
        return ("for", 1) if after.isdecimal() and then == "/" and words[at + 3] == _TWELVES else None
    if before not in _SHEETS:
        return None
    sized = after.isdecimal() and then in ("×", "by") and words[at + 3][:1].isdecimal()
    return ("for", 1) if after in _FOR_WHAT or sized else None


def _no_off(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """No. off? is how many; 7 no. is so many."""
    stop = words[at + 1] == "."
    after = words[at + 1 + stop]
    return ("how many", 2 + stop) if after in _WANTED and not words[at - 1][-1:].isdecimal() else None


def _squares(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """22 sq in m2: no square inches, which would have to be in something as well."""
    return ("squares", 1) if words[at + 1] == "in" and words[at + 2] in _AREAS and words[at - 1].isdecimal() else None


def _money(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Tot $: what it costs."""
    return ("cost", 1) if words[at - 1] in _TOTALS and words[at + 1] in _ENDS and words[at + 1] != "," else None


def _count(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """A count that is asked for, of marks so far apart."""
    asked = words[at - 1] in _ENDS and words[at - 1] and words[at + 1] in _ENDS
    return ("how many", 1) if asked and not _COUNTED.isdisjoint(said) else None


def _over_the_plate(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Peak over plate: how high it stands."""
    return ("peak height", 1) if words[at + 1] in _OVER and words[at + 2] in _OF_PLATES else None


def _rise_asked(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Pitch 12.5 deg, 1800 run, rise =: how much it rises."""
    asked = (words[at - 1] in (",", ";", "/", "-", "→") or not words[at - 1]) and words[at + 1] in ("=", "?", "")
    return ("how much rise", 1) if asked and not _RUNS.isdisjoint(said) else None


def _goes_up(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """Runs 9ft 4, goes up?: how much it rises."""
    asked = words[at + 1] == "up" and words[at + 2] in ("=", "?")
    return ("how much rise", 2) if asked and not _RUNS.isdisjoint(said) else None


def _height_asked(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    """20 crs @ 75mm hgt?: how high they come, where after a size it would be high."""
    unit = words[at - 1] in _SIZES
    size = at - 1 - unit
    asked = words[at + 1] in ("=", "?", "") and words[size][:1].isdecimal() and size > 1
    return ("height", 1) if asked and words[size - 1] in _EACH_AT else None


def _including(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("including", 1) if words[at + 1] in _WALLS else None


def _octagon(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return None if _SHAPES.isdisjoint(said) else ("octagon", 1)


def _inches(words: Words, at: int, said: set[str]) -> tuple[str, int] | None:
    return ("inches", 1) if words[at - 1] in ("in", "to") and words[at + 1] in _ENDS else None


def with_parts(tokens: list[Token], said: set[str]) -> list[Token]:
    """The tokens with inches and the part after them said as one in a sum: less four inch three eighths.

    Beyond a sum they may be two layers, and with more said after the part it may be of that.
    """
    if "inch" not in said or _SUMS.isdisjoint(said) or _PARTS.isdisjoint(said):
        return tokens
    words = ["", *(token.text for token in tokens), "", "", "", ""]
    found: list[Token] = []
    for at, token in enumerate(tokens, start=1):
        found.append(token)
        if token.text != "inch" or not (words[at - 1] in SMALL or words[at - 1] in TENS):
            continue
        end = at + 1 + (words[at + 1] in SMALL or words[at + 1] == "a")
        after = words[end + 1]
        if words[end] in _PARTS and (after in _ENDS or after in _SUMS):
            found.append(Token("and", token.end, token.end))
    return found


RULES: dict[str, Rule] = {
    "cor": _corner, "crn": _corner, "lvl": _level, "ct": _cut, "com": _common, "cr": _common_rafter, "c": _list_of_cuts,
    "b": _between, "in": _in, "inn": _inn, "4": _for, "no": _no_off, "sq": _squares, "$": _money, "count": _count,
    "peak": _over_the_plate, "pk": _over_the_plate, "rise": _rise_asked, "rse": _rise_asked, "hgt": _height_asked,
    "ht": _height_asked, "hght": _height_asked, "inc": _including, "oct": _octagon, "ins": _inches,
    "goes": _goes_up, "comes": _goes_up, "climbs": _goes_up,
}  # fmt: skip
# What is in every other line is looked at where the line holds a dash or another cue besides.
CUES = frozenset((*RULES.keys() - {"in", "rise", "peak", "c"}, "max", *KERFS))
