"""Sums told as a walk along the tape: "start at 38 1/2, drop 1 1/4 for the sill, then add three 5 5/8 courses, where am I",
and what is left of a length: "what's left of a 16 footer after three cuts of 4 foot 2".

Read only where every quantity of the line has its part: the first is where it starts (or the length that is cut), and before, or
right after, each of the others stands a word that adds or takes off. One that has no such word leaves the line to others.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction
from itertools import pairwise

from intents.number_words import SMALL
from intents.reading import Reading
from intents.sum_counts import both_ends, sized
from intents.sum_parts import Found, Parts
from intents.sum_places import gives_back_kerf
from solvers.quantities import Length, Number
from solvers.sums import MINUS, PLUS, TIMES, Part, Sum, in_millimetres, leaves, plain_size, told_as_length, with_units

_PLUS = frozenset("add adds adding added plus up rise climb gain higher extra more".split())
_MINUS = frozenset(
    "drop drops dropped down less minus lose loses lost losing off cut cuts cutting take takes took taking knock knocked "
    "back shave"
    " shaved chop chopped lop lopped trim trimmed rip ripped subtract deduct lower out remove removed used use saw sawed sawn"
    " ripping sawing"
    " gone comes came".split()
)
_DONE = (_PLUS | _MINUS) - frozenset("up down out lower higher more extra back less off".split())  # verbs: none tells a place
_SHARED = frozenset("half halve halved halves split cut divide divided".split())
_SO_FAR = frozenset("what what's whats the it that".split())
_AGAIN = frozenset("another then and also , ; again of a an the with i it".split())
_PLACES = frozenset("at top bottom head sill other end one side left right on each first second last both them those".split())
_AFTER = {"off": MINUS, "out": MINUS, "lower": MINUS, "down": MINUS, "higher": PLUS, "up": PLUS, "more": PLUS, "extra": PLUS}
_STARTS = (("start",), ("starting",), ("begin",), ("beginning",), ("i'm", "at"), ("im", "at"), ("we're", "at"), ("i", "am", "at"),
           ("pole", "is", "at"), ("from", "the"), ("standing", "at"))  # fmt: skip
_STARTING = frozenset(phrase[0] for phrase in _STARTS)
_LEFT = frozenset("left leftover leaves leave remains remaining remain remainder rest".split())
_STILL = frozenset((("still", "got"), ("still", "have"), ("still", "there"), ("got", "over"), ("have", "over")))
_SIDES = frozenset("hand side of the on end wall".split())
_ASKS = frozenset("where what whats how mark left leftover leaves over total".split())
_KERFS = frozenset(("kerf", "kerfs", "blade"))
_EACH_TIME = frozenset("each every per a".split())
_CUT_WORDS = frozenset("cut pass time go kerf slice".split())
_TO_THE_SAW = frozenset("blade saw sawdust dust kerf".split())
_TAKING = frozenset("the to for by in with my".split())
_EATS = frozenset("eats eat takes take wastes loses".split())
_CUTS = frozenset(("cuts", "passes"))
MOST_KERF = Fraction(3, 8)  # in; the thickest blade there is
FAR = 6  # words after a quantity that tell it is the saw's
_IS = frozenset(("is", "of", "a", "an", "the", "at", "=", ":"))
_STICKS = frozenset("footer footers stick board length".split())
_LET_BE = frozenset("ignoring ignore forget forgetting mind no without skip skipping counting leaving discounting".split())
# Words of other questions: the line asks for no sum of its own.
_OTHERS = frozenset(
    "exposure degrees degree angle pitch roof studs stud centre center centres centers "
    "oc waste sticks many stock wall windows"
    " window door doors diagonal square area layers gap panels panel nails screws temperature price cost sheathing opening per"
    " ladder slope gable overhang radius arch rise run spacing lap".split()
)
_BENT = frozenset("flashing girth coil strip drip leg".split())  # how wide a flashing is, leg by leg
_ASKED_COUNT = frozenset(("many", "count"))
MOST_STEPS = 24
NEAR = 3  # words after a quantity in which its own word may stand


@dataclass(slots=True)
class _Step:
    """One quantity: where it stands, what it is, and what is done with it ("" where no word tells)."""

    start: int
    found: Found
    operation: str = ""


def walked(reader: Parts) -> Reading | None:
    """The sum that a whole line tells as steps from a start, or as cuts from a length."""
    words = reader.words
    said = set(words)
    if not said.isdisjoint(_SHARED) and _shares_it(words):
        return None  # and halve the rest
    if "twice" in said and "off" in words[: words.index("twice")]:
        return None  # 2 foot 6 off a ten foot length twice
    start = _start(words) if not said.isdisjoint(_STARTING) else -1
    left = not said.isdisjoint(_LEFT | {"over", "still"}) and _means_left(words)
    told = start < 0 and not left and said.isdisjoint(_OTHERS | _BENT) and len(said & _DONE) > 1
    if (start < 0 and not left and not told) or said.isdisjoint(_ASKS | _LEFT):
        return None
    if not said.isdisjoint(_OTHERS if start >= 0 else _ASKED_COUNT):
        return None
    steps = _steps(reader, start >= 0)
    if not 2 <= len(steps) <= MOST_STEPS:
        return None
    if told and (len(steps) < 3 or not _tell(words, steps[0].found.end, steps[1])):
        return None
    whole = _left_of(reader, steps) if left and start < 0 else _from_start(reader, steps, max(0, start))
    if left and start < 0 and whole is not None and _less_than_nothing(whole):
        return None
    if gives_back_kerf(whole, words):
        return None
    return Reading("sum", 0, len(reader.tokens), whole) if whole is not None else None  # type: ignore[arg-type]


def _shares_it(words: list[str]) -> bool:
    """Whether what comes out is halved, or parted in so many: then cut the rest in three."""
    parted = any(a in ("in", "into") and (b in SMALL or b.isdecimal()) for a, b in pairwise(words))
    half_of = any(trio[:2] == ("half", "of") and trio[2] in _SO_FAR for trio in zip(words, words[1:], words[2:], strict=False))
    return parted or half_of or not {"halve", "halved", "halves"}.isdisjoint(words)


def is_left(words: list[str], summed: list[Reading]) -> bool:
    """Whether a whole line is one sum of what is left."""
    whole = (summed[0].start, summed[0].end) == (0, len(words))
    return whole and not (_LEFT | {"still"}).isdisjoint(words) and _means_left([*words, "", "", ""])


def _start(words: list[str]) -> int:
    """Where the words end that say where the walk begins; -1 where none do."""
    for at, word in enumerate(words):
        for phrase in _STARTS if word in _STARTING else ():
            if tuple(words[at : at + len(phrase)]) == phrase:
                return at + len(phrase)
    return -1


def _means_left(words: list[str]) -> bool:
    """Whether left is what remains, and no side."""
    if words[len(words) - 5 : -4] in (["over"], ["?"]) and "over" in words[-6:]:
        return True  # what's over
    if any(pair in _STILL for pair in pairwise(words)):
        return True  # how much have I still got
    return any(word in _LEFT and not _other_left(word, words[i + 1]) for i, word in enumerate(words))


def _other_left(word: str, after: str) -> bool:
    """Whether left is a side, or what is left is what somebody leaves: leave | half an inch for the foam."""
    if word == "leave":
        return after[:1].isdecimal() or after in SMALL or after in ("a", "an", "half")
    return word == "left" and after in ("hand", "side", "end")


def _steps(reader: Parts, begins: bool) -> list[_Step]:
    """Every quantity of the line, with so many of each as one; none when one is no length."""
    found: list[_Step] = []
    at = 0
    while at < len(reader.tokens):
        part = sized(reader, at) if reader.chart[at] else None
        if part is None:
            if any(r.sure >= 0.8 and r.kind not in ("tempchange", "plural") for r in reader.chart[at]):
                return []
            at += 1
            continue
        if isinstance(part.part, Length | Number) and part.part.value < 0:  # minus 11 foot 5, read below zero
            part, at = Found(replace(part.part, value=-part.part.value), part.end), at + 1
        if reader.words[at] == "one" and part.end == at + 1:
            at += 1
            continue
        twice = both_ends(reader, part) if found or not begins else part
        found.append(_Step(at, twice))
        at = twice.end
    return found


def _tell(words: list[str], before: int, step: _Step) -> str:
    """What is done with a quantity, by the last word before it that tells, or the first right after."""
    cues = [PLUS if w in _PLUS else MINUS for w in words[before : step.start] if w in _PLUS or w in _MINUS]
    if cues:
        return cues[-1]
    after = words[step.found.end : step.found.end + NEAR]
    return next((_AFTER[w] for w in after[:1] if w in _AFTER), "")


def _from_start(reader: Parts, steps: list[_Step], start: int) -> Part | None:
    """The start, and each step in the order told."""
    words = reader.words
    first, rest = steps[0], steps[1:]
    if first.start < start or not words[start : first.start + 1] or isinstance(first.found.part, Sum):
        return None
    if not {*words[start : first.start]}.isdisjoint(_PLUS | _MINUS) and words[: first.start] != ["take"]:
        return None
    total: Part | None = first.found.part
    done = ""
    before = first.found.end
    for step in rest:
        told = _tell(words, before, step)
        if not told:
            joined = set(words[before : step.start]) <= _AGAIN | _PLACES
            joined = joined or "another" in words[before : step.start]
            told = done if joined and done else PLUS if not done and "then" in words[before : step.start] else ""
        if not told:
            return None
        total, done, before = Sum(told, total, step.found.part), told, step.found.end
        before += words[before] in _AFTER
    return total


def _left_of(reader: Parts, steps: list[_Step]) -> Part | None:
    """The length that is cut less all that is cut from it, and the saw's kerf where that is said."""
    words = reader.words
    kerf = next((step for step in steps if _is_kerf(words, step)), None)
    told = next((step for step in steps if _counts_cuts(words, step)), None)  # an eighth in those two cuts
    others = [step for step in steps if step is not kerf and step is not told]
    if len(others) < 2 or (told is not None and kerf is None):
        return None
    if kerf is None and not _KERFS.isdisjoint(words) and not _no_kerf(words):
        return None
    whole = _whole(reader, others)
    if whole is None:
        return None
    cut = [step for step in others if step is not whole]
    if any(not _is_cut(words, step, steps) for step in cut) or not any(told_as_length(s.found.part) for s in others):
        return None
    total: Part | None = whole.found.part
    for step in cut:
        total = Sum(MINUS, total, step.found.part)
    if kerf is not None and kerf.found.part is not None:
        cuts = sum(_count(step.found.part) for step in cut)
        if told is not None and told.found.part.value != cuts:  # type: ignore[union-attr]
            return None
        once = _in_all(words, kerf)
        lost = kerf.found.part if once else Sum(TIMES, Number(Fraction(cuts), "none", str(cuts)), kerf.found.part)
        total = Sum(MINUS, total, lost)
    return total


def _less_than_nothing(whole: Part) -> bool:
    """Whether more is cut than there is, bare numbers of more than any inches being millimetres: it was not meant so."""
    try:
        return in_millimetres(with_units(whole, "mm" if _metric(whole) else "in")) < 0
    except ZeroDivisionError:
        return False


def _metric(whole: Part) -> bool:
    return any(isinstance(leaf, Length) and leaf.unit in ("m", "mm", "cm") for leaf in leaves(whole))


def _whole(reader: Parts, steps: list[_Step]) -> _Step | None:
    """What is cut: the stick of so many feet, else the largest where that comes first."""
    words = reader.words
    sticks = [s for s in steps if not _STICKS.isdisjoint(words[s.start : s.found.end + 1])]
    if len(sticks) == 1:
        return sticks[0]
    plain = [s for s in steps if not isinstance(s.found.part, Sum)]
    if not plain:
        return None
    largest = max(plain, key=lambda s: plain_size(s.found.part))
    return largest if largest is steps[0] or words[largest.start - 1] in ("of", "a", "from", "the") else None


def _is_cut(words: list[str], step: _Step, steps: list[_Step]) -> bool:
    """Whether a word tells that a length is cut off, or it is so many pieces, or it stands in a row with one that is."""
    before = max((s.found.end for s in steps if s.found.end <= step.start), default=0)
    near = words[before : step.start] + words[step.start : step.found.end + 2]
    return not _MINUS.isdisjoint(near) or isinstance(step.found.part, Sum) or set(words[before : step.start]) <= _AGAIN


def _is_kerf(words: list[str], step: _Step) -> bool:
    """Whether a quantity is what the saw takes: kerf is an eighth, a 1/8 kerf, an eighth for the blade."""
    after = words[step.found.end : step.found.end + 3]
    named = after[0] in _KERFS and after[1] not in _IS
    named = named or (after[0] in ("for", "each", "per") and not _KERFS.isdisjoint(after))
    led = [word for word in words[max(0, step.start - 3) : step.start] if word not in _IS]
    eaten = len(led) > 1 and led[-1] in _EATS and led[-2] in _KERFS | _TO_THE_SAW  # the saw eats 1/8
    return named or (bool(led) and led[-1] in _KERFS) or eaten or _each_cut(words, step)


def _counts_cuts(words: list[str], step: _Step) -> bool:
    """Whether a number counts the cuts, and not what is cut."""
    return isinstance(step.found.part, Number) and step.found.part.value.denominator == 1 and words[step.found.end] in _CUTS


def _each_cut(words: list[str], step: _Step) -> bool:
    """Whether what is lost is lost with each cut: an eighth gone to the blade, 1/8 going to sawdust each time, 3 mm a cut."""
    size = step.found.part
    if not isinstance(size, Length | Number) or plain_size(size) > MOST_KERF:
        return False
    at = step.found.end
    for end in range(at, at + FAR):
        if words[end] in _EACH_TIME and words[end + 1] in _CUT_WORDS:
            return True
        if words[end] in _TO_THE_SAW and words[end - 1] in _TAKING and end > at:
            return True
        if words[end] in (",", ".", "?", ""):
            return False
    return False


def _in_all(words: list[str], step: _Step) -> bool:
    """Whether what the saw takes is told of all cuts together: a quarter lost to the blade altogether."""
    after = words[step.found.end : step.found.end + FAR]
    stop = next((at for at, word in enumerate(after) if word in (",", ".", "?", ";", "")), len(after))
    after = after[:stop]
    return not {"altogether", "total", "overall"}.isdisjoint(after) or any(
        pair in (("all", "told"), ("in", "all"), ("all", "in")) for pair in pairwise(after)
    )


def _no_kerf(words: list[str]) -> bool:
    """Whether the saw is not to be counted: forgetting the blade, never mind the kerf, no kerf."""
    return any(word in _KERFS and not _LET_BE.isdisjoint(words[max(0, i - 3) : i]) for i, word in enumerate(words))


def _count(part: Part | None) -> int:
    return int(part.left.value) if isinstance(part, Sum) and isinstance(part.left, Number) else 1


