"""What each length of a story does, by rules of the trade: clearance comes off, a tenon goes on, what is stacked adds up.

Whether a length is added or taken off is told by the word beside it ("less", "off", "above that"), else by what it is of (play,
a frame, what is buried in the other piece) against what is asked: the stiles come off the sash for the daylight, and the
casings go on the opening for the outside. Where any length is left open there is no sum. It answers nothing alone: where the
sum that the second reader learned comes to the same, that may be answered, and where it does not, it is asked about
(`second_sums.py`).
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise

from intents.sum_counts import BOTH as EACH
from intents.sum_cues import QUESTIONS, STOPS, Line
from intents.whole_sums import ADDED, DIVIDES, OF_LAST, OF_NEXT, TAKEN

_MORE = frozenset("plus add adds adding tack + & raise raised raises lifted glue glued".split())
_LESS = frozenset(
    "less minus lose loses losing lost knock take takes took eat eats swallow swallows rob robs subtract deduct lop lopped shave"
    " shaved trim trimmed trims rip ripped sawed sawn chop chopped plane planed shy - without buried binned used notch notched"
    " steal steals sand sanded shorten cut cuts burn burned off sank sinks sunk settled shrank shrunk sagged".split()
)
_AFTER = {
    **dict.fromkeys("off shy short lower less outta shallower thinner narrower smaller".split(), -1),
    **dict.fromkeys(
        "strong more extra higher longer farther further again wider taller thicker bigger deeper broader fatter".split(), 1
    ),
}
_SPENT = frozenset(
    "knocked missing trimmed went gone used binned wasted ruined spoiled cracked split rotted buried sold lost cut drove".split()
)
_STOCK = frozenset("had of footer stick roll rope length board stock".split())
_UP = frozenset("above over higher up onto atop past beyond farther further proud".split())
_DOWN = frozenset("below under beneath underneath down hang hangs hung drop drops dropped dropping back buried".split())
_DUG = frozenset("dug dig hole trench pit".split())
_TOTAL = frozenset(
    "total totals altogether combined sum stack stacked tally pile told lot thick thickness together build buildup all overall"
    " girth join joined whole outside".split()
)
_LEFT = frozenset("solid left remaining remains remain remainder leftover leftovers spare rest balance uncovered good still".split())
_INNER = frozenset("daylight clear between inside inner inbetween glass headroom gap air panel opening showing".split())
_OUTER = frozenset("outside outer out overall".split())
_PLAY = frozenset(
    "clearance gap gaps wiggle play slack tolerance breathe expansion margin margins breathing packing foam shim shims shimming"
    " clear clears space joint room fitting caulk reveal reveals".split()
)
_FRAME = frozenset(
    "casing casings architrave architraves trim trims jamb jambs frame frames stile stiles post posts newel newels gable gables"
    " moulding mouldings molding border walls ply lining linings reveal reveals stops uprights legs leg cheeks sides side liner"
    " liners boards board flange flanges returns bar bars muntin rail rails cleat cleats pilaster pilasters margin margins base"
    " crown cap collar collars stud studs".split()
)
_BURIED = frozenset(
    "tenon tenons tongue tongues housing housings bury buries buried rebate rebates dado dadoes groove grooves bearing bears bear"
    " shoulders rabbet rabbets lap laps lapped bite bites tuck tucks nosing scarf overlap overlaps undercloak splash stub stubs"
    " mortise mortice lip lips horn horns".split()
)
_SEEN = frozenset("shows show showing sight daylight shoulder".split())  # what is measured between what is buried
_OPENING = frozenset(
    "opening between clear alcove gap hole recess jambs apart walls space posts tight bay newel newels corners wall floor"
    " ceiling".split()
)
_HOLE = frozenset("opening hole ro rough framed".split())
_PIECE = frozenset(
    "door leaf lead pane panel blind board shelf rail girt sheet block cut length piece width slab stool blocking cutting size"
    " filler handrail tread read post leg stud unit build trim make long wide slat".split()
)
_FLOORS = frozenset("floor floors carpet tile tiles threshold saddle flooring mat screed lino ground rug underlay".split())
_VISIBLE = frozenset(
    "shows show showing covers cover coverage face weather exposed visible net exposure without joined end".split()
)
_SHOULD = frozenset("say should flush supposed wanted meant right".split())
_VERBS = frozenset("be get have go come cut make take do know fit reach".split())
_NAMING = frozenset("the a an of my head corner".split())
_PIECES = frozenset("rip cut trim notch".split())
_SHORT_OF, _LONG_BY = frozenset("short shy under".split()), frozenset("long over proud heavy strong".split())
_EMPTY = frozenset("open space gaps gap clear clearance spare room overhang".split())
_HALF_WORDS = frozenset("half halve halved halves bisect halfway midway mid midpoint".split())
_MIDDLE = frozenset("middle centre center centred centered centreline".split())
_STANDS_ON = frozenset("floor ground grass slab deck corner wall line footing subfloor datum bench finished".split())
_BETWEEN_TWO = frozenset("tall height gap between opening big hole how step high freeboard".split())
_SIDES = frozenset("casings architraves jambs stiles posts newels mouldings legs cheeks returns linings liners reveals".split())
_NEEDED = frozenset("hole ro rough needed".split())
_BOTTOM = frozenset(("bottom", "underside"))
_BLANK = frozenset("sheet stock blank cut overall".split())
_CENTRED = frozenset("centre center centred centered middle same equal evenly even dead equally".split())
_EVEN = frozenset("same equal even evenly equally dead".split())
_PLACES = frozenset("side sides end ends corner rail gap edge reveal margin".split())
_CENTRES = frozenset("centres centers centre center".split())
_CLEAR = frozenset("clear daylight gap between glass".split())
_APART = frozenset("above below between gap room much proud short".split())
_SAME_AGAIN = frozenset("and another then a an the at for other first second third of also again on bottom top one latch hinge"
                        " hinges side".split())  # fmt: skip
_UNDER = frozenset("under beneath between over headroom".split())
_FROM_THERE = frozenset("off high up top".split())
_THAN = frozenset("higher taller longer wider lower shorter deeper thicker bigger more further narrower".split())
_INWARD = frozenset("down back in".split())  # back from the corner
_MOVES = frozenset("come comes came coming bring brought move moved".split())
_SHORTENS = frozenset("shorten shortened reduce reduced cut trim trimmed".split())
_LENGTHENS = frozenset("lengthen lengthened extend extended".split())
_GAPS = frozenset("difference out over short sag taper gap filler extension shim gain gaining shortfall apart".split())
_NEAR_BY = 1.6  # times as long, of two lengths whose difference is asked
_STOOD = frozenset("tall high thick thickness deep".split())
_LOWER = frozenset("too under underside beneath below bottom left clear headroom inside between".split())
_CENTRED_AT = frozenset("centre center centres centers oc".split())
_BETWEEN_POSTS = frozenset("between clear blocking bay gap rail space daylight".split())
_EACH_CUT = (("each", "cut"), ("every", "cut"), ("per", "cut"), ("a", "cut"), ("for", "each"), ("every", "one"), ("each", "time"))
_BETWEEN_EACH = (("between", "each"), ("between", "them"), ("gaps", "between"), ("space", "between"), ("between", "every"))
_BETWEEN_EACH_SET = frozenset(_BETWEEN_EACH)
_DAYLIGHT = frozenset(("daylight",))
_HEADROOM = frozenset("headroom clearance".split())
_STICKS = frozenset("overhang overhangs overhanging stick sticks sticking poke pokes project projects".split())
_OVER = frozenset("past beyond over overhangs overhang".split())
_SIGNED = frozenset(("plus", "less", "minus"))
_JOINED = frozenset("extension joined together added screwed glued butted".split())
_FINISH, _MADE = frozenset("finish finishes finished".split()), frozenset(
    "box boxes base legs leg carcass carcasses cabinet cabinets frame framing post posts stud studs".split()
)
_PLATES, _STUDS = frozenset("plate plates sole header beam".split()), frozenset("stud studs post posts".split())
_PARTS = frozenset("row course piece bit part panel one".split())
_RAISED = frozenset("raise raised raises lifted".split())
_GAINS = frozenset("gains gain gaining".split())
_COMPARED = {word: sign for word, sign in _AFTER.items() if word.endswith("er")}
_LAPPED = frozenset("lap laps lapped lapping overlap overlaps overlapped overlapping".split())
_PAST = frozenset("over past beyond".split())
_LIFTS, _FOOTING = frozenset("height high tall".split()), frozenset("floor ground deck slab".split())
_HIGHEST = frozenset("ceiling plate soffit opening joist joists rafter rafters underside".split())
NEAR = 4  # words before a length that tell what it does
SHORT_CLAUSE = 8
MOST_CENTRED = 3  # lengths

Told = tuple[tuple[str, ...], bool]


def told_by_rules(line: Line) -> Told | None:
    """What each quantity does, and whether all is halved; None where that is not told of each."""
    return next((found for shape in _SHAPES if (found := shape(line)) is not None), None)


def at_centres(line: Line) -> Told | None:
    """The clear between two posts and one post: how far they stand, middle to middle."""
    if len(line.spans) != 2 or line.asks.isdisjoint(_CENTRES) or line.said.isdisjoint(_CLEAR) or not line.asks.isdisjoint(_CLEAR):
        return None
    return (ADDED, ADDED), False


def halved(line: Line) -> Told | None:
    """The middle, or half, of one length."""
    return ((ADDED,), True) if len(line.spans) == 1 and not line.said.isdisjoint(_HALF_WORDS | _MIDDLE) else None


def centred(line: Line) -> Told | None:
    """What stands in the middle of something longer, and what is left each side of it."""
    count = len(line.spans)
    if not 2 <= count <= MOST_CENTRED or any(line.counts()) or line.said.isdisjoint(_CENTRED):
        return None
    each = any(a in ("each", "either") and b not in _PARTS for a, b in pairwise([*line.asked, ""]))
    if not each and not any((a in EACH or a == "the") and b in _PLACES for a, b in pairwise(line.out)):
        return None
    if any(line.twice(n) and _EVEN.isdisjoint(both(line.clause(n))) for n in range(count)):
        return None
    if not line.said.isdisjoint(_JOINED):
        return (ADDED,) * count, True  # the middle of both, end to end
    if not line.said.isdisjoint((_MORE | _AFTER.keys()) - {"off", "short"}):
        return None
    largest = base_of(line, range(count))
    return tuple(ADDED if n == largest else TAKEN for n in range(count)), True


def difference(line: Line) -> Told | None:
    """How far two lengths are apart."""
    if len(line.spans) != 2 or any(line.counts()) or halves_it(line) or line.twice(0) or line.twice(1):
        return None
    near = max(line.sizes) <= _NEAR_BY * min(line.sizes)
    if near and not line.asks.isdisjoint(_GAPS) and {*line.beside(0), *line.beside(1)}.isdisjoint(_MORE | _LESS | _FRAME | _PLAY):
        return ((ADDED, TAKEN) if line.sizes[0] > line.sizes[1] else (TAKEN, ADDED)), False
    if {"far", "near"} <= line.said and {"from", "both"} & line.said:
        return ((ADDED, TAKEN) if line.sizes[0] > line.sizes[1] else (TAKEN, ADDED)), False  # to the far jamb, to the near one
    if "than" in line.asks and not line.asks.isdisjoint(_THAN):
        return ((ADDED, TAKEN) if line.sizes[0] > line.sizes[1] else (TAKEN, ADDED)), False
    told = frozenset((*line.left[0], *line.left[1], *line.right[0][:NEAR], *(line.right[1] if "how" in line.left[0] else ())))
    if not told.isdisjoint((_MORE | _AFTER.keys() | {"another"}) - {"with", "off", "short", "add"}):
        return None
    asks = line.asks
    apart = not asks.isdisjoint(("difference", "apart", "distance")) or ("how" in asks and not asks.isdisjoint(_APART))
    if not apart and not _levels(line):
        return None
    if not _levels(line) and any(not (_UP | _DOWN).isdisjoint(right) for right in line.right[:1]):
        return None
    return ((ADDED, TAKEN) if line.sizes[0] > line.sizes[1] else (TAKEN, ADDED)), False


def _levels(line: Line) -> bool:
    """Whether both lengths are told as places: the sill's at 31 3/4 and the head at 79 1/2, how tall is the opening."""
    at = all(left[-1:] == ["at"] or left[:1] == ["at"] for left in line.left)
    return at and not line.asks.isdisjoint(_BETWEEN_TWO)


def halves_it(line: Line, parted: bool = False) -> bool:
    """Whether the line asks for the middle or half of something, where the sum would have to be halved."""
    if not line.said.isdisjoint(_HALF_WORDS) or any(line.words[a:b] == ["half"] for a, b in line.spans):
        return True
    if not parted and not line.said.isdisjoint(_EVEN) and not line.said.isdisjoint(EACH | {"gaps"}):
        return True
    middles = (at for at, word in enumerate(line.out) if word in _MIDDLE)
    return not line.asks.isdisjoint(_MIDDLE) or any(line.out[at - 1] in ("the", "dead", "in", "its", "find") for at in middles)


def _story(line: Line) -> Told | None:
    """One length, and what is added to it or taken off."""
    roles = line.counts()
    if len(line.spans) < 2 or "twice" in line.said or halves_it(line, DIVIDES in roles):
        return None
    lengths = [n for n, role in enumerate(roles) if not role]
    if OF_NEXT in roles and (not line.said.isdisjoint(_LAPPED) or not _BETWEEN_EACH_SET.isdisjoint(pairwise(line.words))):
        return _two_lapped(line, roles)  # else so many with a gap between each
    if not lengths or any(line.counts_things(n) for n in lengths):
        return None
    if len(lengths) + sum(role in (DIVIDES, OF_LAST, OF_NEXT) for role in roles) < 2:
        return None
    largest = base_of(line, lengths)
    if all(n and roles[n - 1] == OF_NEXT for n in lengths) and line.said.isdisjoint(_LESS):
        return tuple(role or ADDED for role in roles), False  # so many of each
    bases = (largest,) if _from_to(line, largest) else dict.fromkeys((largest, lengths[0]))
    for base in bases:
        signs = _signs(line, base, lengths)
        less = any(sign < 0 for sign in signs.values())
        if 0 in signs.values() or (less and base != largest):
            continue
        for n, sign in signs.items():
            twice = line.twice(n) and not (n == base and less) and not (n and roles[n - 1] == OF_NEXT)
            roles[n] = (ADDED if sign > 0 else TAKEN) * (1 + twice)
        return tuple(roles), False
    return None


def _two_lapped(line: Line, roles: Sequence[str]) -> Told | None:
    """Two of a length that lap each other once."""
    two = line.sizes[0] == 2 and tuple(roles) == (OF_NEXT, "", "")
    return ((OF_NEXT, ADDED, TAKEN), False) if two and not line.beside(2).isdisjoint(_LAPPED) else None


def both(clause: tuple[list[str], list[str]]) -> list[str]:
    """The words to both sides."""
    return [*clause[0], *clause[1]]


def base_of(line: Line, lengths: Sequence[int]) -> int:
    return max(lengths, key=lambda n: line.sizes[n])


def _signs(line: Line, base: int, lengths: Sequence[int]) -> dict[int, int]:
    """For each length 1 where it is added, -1 where it is taken off, 0 where that is open."""
    signs: dict[int, int] = {}
    for n in lengths:
        signs[n] = 1 if n == base else _sign(line, n, base, signs)
    return signs


def _sign(line: Line, n: int, base: int, signs: dict[int, int]) -> int:
    before = signs.get(n - 1, 0) if n - 1 != base else 0
    said = said_of(line, n, before)
    if said or (not _SHOULD.isdisjoint(line.said) and not line.twice(n)):
        return said
    if is_left(line.asked) or (not _SPENT.isdisjoint(line.right[n]) and not _STOCK.isdisjoint(line.beside(base))):
        return -1
    for rule in _RULES:
        sign = rule(line, n, base)
        if sign is not None:
            return sign
    total = _TOTAL - {"build"} if ("i", "build") in pairwise(line.asked) else _TOTAL
    if not line.asks.isdisjoint(total) and line.asks.isdisjoint(_DAYLIGHT):
        return int(line.asks.isdisjoint(_EMPTY) and not (n < base and _from_to(line, base)))
    if not line.asks.isdisjoint(_INNER | _DAYLIGHT):
        return -1
    tall = not line.asks.isdisjoint(_STOOD) or ("top" in line.asks and "up" in line.said)
    tall = tall or ("height" in line.asks and line.asks.isdisjoint(_PIECE | {"opening"}))
    stacked = tall and not line.asks.isdisjoint(QUESTIONS) and line.asks.isdisjoint(_LOWER)
    stacked = stacked and "height" not in line.beside(n) and line.beside(n).isdisjoint(_DOWN | _LESS | _PLAY)
    return int(stacked and not _from_to(line, base))


def said_of(line: Line, n: int, before: int) -> int:
    """What the word beside a length says: less, off it, plus; or the same that was done with the one before."""
    left, right = line.left[n], line.right[n]
    place = right[:1] == ["off"] and not _STANDS_ON.isdisjoint(right[1:4])
    first = _AFTER.get(right[0], 0) if right and not place else 0
    if not _GAINS.isdisjoint(right[:NEAR]):
        return 1  # shaved by 25, which gains us that
    if left[-1:] == ["by"] and left[-2:-1] != [] and left[-2] in _COMPARED:
        return _COMPARED[left[-2]]  # taller by 3/4
    if (not _SHOULD.isdisjoint(line.said) and not line.twice(n)) or left[-1:] == ["by"]:
        return _as_it_should(left, right) or _by_so_much(line.said)
    if first < 0 or right[:2] == ["out", "of"] or (right[1:2] == ["from"] and right[0] in _INWARD) or _comes_down(left):
        return -1
    near = [word for before, word, after in zip(["", *left], left, [*left[1:], ""], strict=False)
            if word not in _PIECES or (after != "of" and before not in _NAMING)][-NEAR:]  # a rip of, the trim  # fmt: skip
    trail = line.between(n)
    joint = trail[-len(left) - 1 : -len(left)] if left else []
    if joint and joint[0] in _SIGNED:
        near = [joint[0], *near]
    cues = [1 if word in _MORE else -1 for word in near if word in _MORE or word in _LESS]
    if near and near[-1] in _RAISED and not line.asks.isdisjoint(_HEADROOM | {"clear", "gap"}):
        return 0  # what stands under it, or hangs over it
    if cues:
        return cues[-1]
    if first:
        return before if before and right[0] in ("more", "again") else first
    if _overhangs(line, n):
        return 1
    if before and line.between(n)[-1:] in (["and"], [","]):
        return before  # ripped 19 off the end and | 140 for the chase
    gap = [word for word in line.between(n) if word not in STOPS]
    again = gap and _SAME_AGAIN.issuperset(gap)
    if before and (again or "another" in left):
        return before
    walks = "then" in line.between(n) and not line.asks.isdisjoint(("far", "where")) and line.beside(n).isdisjoint(_DOWN)
    return int("another" in left or walks or right[:2] in (["on", "top"], ["on", "it"], ["on", "that"]) or ("back", "on") in pairwise(right[:4]))


def _comes_down(left: Sequence[str]) -> bool:
    """Whether a thing is to come down so much: it has to come down | 1 7/16."""
    return any(a in _MOVES and b == "down" for a, b in pairwise(left[-NEAR:]))


def _by_so_much(said: frozenset[str]) -> int:
    """Whether something is shortened by a length, or made longer."""
    less, more = not _SHORTENS.isdisjoint(said), not _LENGTHENS.isdisjoint(said)
    return 0 if less == more else -1 if less else 1


def _overhangs(line: Line, n: int) -> bool:
    """Whether a length hangs over, or stands past, what the first is the size of: 6 over each side."""
    right = line.right[n]
    return line.twice(n) and right[:1] != [] and right[0] in _PAST


def _as_it_should(left: Sequence[str], right: Sequence[str]) -> int:
    """What is made good of a length that came out too short, or too long, for what it should have been."""
    beside = {*left[-NEAR:], *right[:NEAR]}
    short, long = (not beside.isdisjoint(way) for way in (_SHORT_OF, _LONG_BY))
    return 0 if short == long else 1 if short else -1


def is_left(asked: Sequence[str]) -> bool:
    """Whether it is asked what is left, or over."""
    if not _LEFT.isdisjoint(asked) and {"right", "hand"}.isdisjoint(asked):
        return True
    return any(a == "over" and b in ("", "?", "when", "once", ",", "after") for a, b in pairwise([*asked, ""]))


def _play(line: Line, n: int, base: int) -> int | None:
    """Clearance comes off the opening for what hangs in it, and goes on that for the opening."""
    said, asks = line.beside(n), line.asks
    if said.isdisjoint(_PLAY) or "stack" in asks:
        return None
    outer = not asks.isdisjoint(_OUTER) and asks.isdisjoint(_PIECE)
    if asks == {"post", "to"} or (not asks.isdisjoint(_HOLE) and "in" not in asks) or outer:
        return 1
    if not asks.isdisjoint(_TOTAL) and line.beside(base).isdisjoint(_OPENING):
        return 1
    if not asks.isdisjoint(_PIECE) or not line.beside(base).isdisjoint(_OPENING):
        return -1
    return 0


def _rises(line: Line, n: int, base: int) -> int | None:
    """What stands on what, where it is asked how high it comes off the floor."""
    asks = line.asks
    if _LIFTS.isdisjoint(asks) or not any(a in ("off", "above", "from") and {b, c} & _FOOTING
                                          for a, b, c in zip(line.asked, line.asked[1:], [*line.asked[2:], ""], strict=False)):  # fmt: skip
        return None
    if not _BOTTOM.isdisjoint(asks) or not (_HIGHEST | _DOWN).isdisjoint((*line.left[base], *line.right[base])):
        return None
    return 1 if (_DOWN | _LESS).isdisjoint(line.beside(n)) else None


def _on_centre(line: Line, n: int, base: int) -> int | None:
    """A post comes off how far they stand middle to middle, for what is between."""
    centred = not line.beside(base).isdisjoint(_CENTRED_AT) and line.asks.isdisjoint(_CENTRED_AT)
    return -1 if centred and not line.said.isdisjoint(_BETWEEN_POSTS) else None


def _made_to(line: Line, n: int, base: int) -> int | None:
    """What goes on top comes off the finished height for what it stands on, and plates come off it for the stud."""
    if not line.beside(base).isdisjoint(_FINISH) and not line.asks.isdisjoint(_MADE) and line.asks.isdisjoint(_HOLE):
        return -1
    plate = not line.beside(n).isdisjoint(_PLATES) and not line.asks.isdisjoint(_STUDS) and line.sizes[n] < line.sizes[base]
    return -1 if plate and line.beside(base).isdisjoint(_STUDS | _PLATES) else None


def _past(line: Line, n: int, base: int) -> int | None:
    """What sticks out past a thing comes off for that thing."""
    if line.beside(n).isdisjoint(_STICKS):
        return None
    words = both(line.clause(n))
    at = next((at for at, word in enumerate(words) if word in _STICKS), len(words))
    named = {c for a, b, c in zip(words[at:], words[at + 1 :], words[at + 2 :], strict=False) if a in _OVER and b == "the"}
    return -1 if named & line.asks else None


def _floors(line: Line, n: int, base: int) -> int | None:
    """A floor that comes up takes off the door."""
    if not line.beside(n).isdisjoint(_FLOORS) and not line.asks.isdisjoint(_FLOORS) and "off" in line.asks:
        return 0  # off the floor that was, or that will be
    floor = not line.beside(n).isdisjoint(_FLOORS) and line.asks.isdisjoint(_FLOORS | _TOTAL)
    return -1 if floor and not line.asks.isdisjoint(_PIECE | _HEADROOM) else None


def _buried(line: Line, n: int, base: int) -> int | None:
    """A tenon goes on what shows between the shoulders, for the length; what is lapped comes off what shows."""
    asks = line.asks
    if line.beside(n).isdisjoint(_BURIED):
        return None
    if len(line.spans) > 2 and not line.twice(n) and not line.beside(n).isdisjoint(_LAPPED) and not asks.isdisjoint(_TOTAL):
        return -1
    if not line.beside(base).isdisjoint(_SEEN) and asks.isdisjoint(_VISIBLE):
        return 1
    if not asks.isdisjoint(_VISIBLE) or (not asks.isdisjoint(_INNER) and asks.isdisjoint(_PIECE)):
        return -1
    both = line.twice(n) or not line.beside(base).isdisjoint(_OPENING) or not asks.isdisjoint(_BLANK)
    return int(both and not asks.isdisjoint(_PIECE | _OUTER))


def _through(line: Line, n: int, base: int) -> int | None:
    """From the underside of a thing to its top, and down again."""
    own, asks = line.beside(base), line.asks
    if not own.isdisjoint(_BOTTOM) and "top" in asks:
        return 1
    return -1 if "top" in own and not asks.isdisjoint(_BOTTOM) else None


def _upward(line: Line, n: int, base: int) -> int | None:
    """What stands above, and what hangs below, against the way the first is measured and what is asked."""
    own, asks = line.beside(base), line.asks
    if not own.isdisjoint(_DUG):
        return -1 if "how" in asks else 0
    whole = _from_to(line, base)
    if whole and ((not asks.isdisjoint(_UNDER) and "off" not in asks) or not asks.isdisjoint(("cut", "piece"))):
        return -1
    if _over_asked(line, n):
        return -1
    up, down = (not line.beside(n).isdisjoint(way) for way in (_UP, _DOWN))
    if up == down:
        return 0 if up else None
    if down and not asks.isdisjoint(("long", "length")):
        return 0  # what hangs below the sill is of the siding too
    if up and whole and asks.isdisjoint(_FROM_THERE):
        return 0
    downward = not own.isdisjoint(_DOWN) and own.isdisjoint(_UP)
    return 1 if up != downward else -1


def _over_asked(line: Line, n: int) -> bool:
    """Whether a length lies over the thing that is asked of: the cripple over the header, how far up is the header."""
    left = line.left[n]
    over = (left[at + 2] for at in range(len(left) - 2) if left[at] in ("over", "above") and left[at + 1] == "the")
    return any(word in line.asks and word not in _STANDS_ON for word in over)


def _from_to(line: Line, n: int) -> bool:
    """Whether a length is told from one thing to another."""
    clause = both(line.clause(n))
    to = any(a == "to" and b not in _VERBS for a, b in pairwise([*clause, "the"]))
    whole = to and ("from" in clause or len(clause) <= SHORT_CLAUSE)
    return whole or not {"between", "apart"}.isdisjoint(clause)


def _frame(line: Line, n: int, base: int) -> int | None:
    """Casings go on for the outside, stiles come off for the inside."""
    if line.beside(n).isdisjoint(_FRAME) and not line.twice(n):
        return None
    if not line.twice(n) and not _SIDES.isdisjoint(line.left[n][-2:]):
        return 0  # the returns are 2 3/8: one of them, or both
    outer = not line.asks.isdisjoint(_OUTER | _NEEDED)
    return 1 if outer else -1 if not line.asks.isdisjoint(_INNER) else None


_RULES: tuple[Callable[[Line, int, int], int | None], ...] = (_past, _made_to, _on_centre, _rises, _play, _floors, _buried, _through, _upward, _frame)
_SHAPES: tuple[Callable[[Line], Told | None], ...] = (halved, at_centres, centred, difference, _story)
