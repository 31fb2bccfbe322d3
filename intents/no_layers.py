"""Sizes that are no layer's: the studs are 5 1/2, into 1 1/2 blocking, a 4 inch wide trim, the 3 inch screws, it was 1/2 ply.

What a fastener is held in is not gone through, a width is no thickness, the fasteners somebody has are not what is asked, and
what was taken off the wall, or was going to be on it, is not there. Each is told by the words right beside the size alone.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from itertools import pairwise

from intents.remarks import STOPS

FRAMES = frozenset(
    "stud studs framing frame frames joist joists rafter rafters plate plates block blocks blocking post posts beam beams"
    " header purlin purlins truss trusses rail rails".split()
)
_OF_FRAMES = frozenset("rafter ladder jack wall sub top bottom sole pine spruce solid timber wood treated fascia deep".split())
_INTO = frozenset("into onto to against".split())
_SMALL = frozenset("the a an my our those these about just only - nice".split())
_IS = frozenset("is are were was being measure measures".split())
_HOLDS = frozenset(
    "penetration pen bite biting embedment embed embedded into hold holds grip bury in thread penetrate penetrates".split()
)
_STUD, _STUD_WALLS = frozenset(("stud", "studs")), frozenset("wall walls work frame framing partition".split())
_LED_TO = frozenset("in into to past of through from off outside".split())
_IN_OR_FROM = frozenset("in from off outside".split())
_ACROSS = frozenset("wide across long tall".split())
_CENTRES = frozenset("centres centers centre center oc apart".split())
_FASTENERS = frozenset("screws nails staples spikes bolts lags".split())
_ONE_OF = frozenset("a my this".split())
_KINDS = frozenset("trim deck siding wood roofing finish ring shank galvanised galvanized stainless timber".split())
_SOMEBODY = frozenset("i we you they".split())
_DRILLS = frozenset("drill predrill drilled predrilled sink sunk countersink countersunk recess recessed".split())
_HOLES = frozenset("hole holes bit drill".split())
_THIN_ENDS = frozenset("top tip point tail".split())
_NOT, _COUNTS = frozenset("doesn't don't doesnt dont not won't never".split()), frozenset("matter count counts counted".split())
_GAUGES = frozenset("gauge ga dia diameter".split())
_CLAIMS = frozenset("will does enough ok okay work reach fine suit good".split())
_REACH_OR_HOLD = frozenset("reach hold go get bite catch".split())
_TOOK = frozenset("took taken pulled ripped stripped tore torn pried lifted peeled".split())
_AWAY = frozenset("off out down away".split())
_REMOVED = frozenset("removed scrapped ditched binned dropped skipped".split())
OLD, _ON = frozenset("old existing original".split()), 7  # and so many words after a size tell that it goes
_NOW_THERE, _THAT, _OLD_BACK = frozenset(("there", "now")), frozenset(("that", "which", "all")), 4
_IS_THAT = _IS | _THAT
_GOES = {(goes, way) for goes in "coming comes come going goes gets ripped stripped".split() for way in ("off", "out", "away")}
_WAS = frozenset("going supposed meant used gonna planned".split())
_CLEARS = frozenset(("clear", "clears"))
_NOW = frozenset("but now instead".split())
_SETS, _GUNS = frozenset(("set", "setting", "dialled")), frozenset(("gun", "nailer"))
_WANTS = frozenset("need want have be get use".split())
_STOPS = STOPS | frozenset("but so and over with".split())
_BACK = 7  # words before a size in which the verb of its clause stands
_MORE = _DRILLS | _CLEARS | _HOLES | _THIN_ENDS | _COUNTS | {"thread", "threads"}
_CUES = (
    OLD | _MORE | FRAMES | _ACROSS | _FASTENERS | _GAUGES | _TOOK | _REMOVED | _WAS | _CENTRES | {"coming", "comes", "come"}
    | _GUNS | {"every", "screw", "nail", "nailer"}
)


def speaks_of_some(words: Sequence[str]) -> bool:
    """Whether any size in these words may be no layer's."""
    return not _CUES.isdisjoint(words)


def is_no_layer(words: Sequence[str], start: int, end: int) -> bool:
    """Whether the words beside a size from start to end tell that it is no layer's; eight empty words follow the last."""
    return any(tells(words, start, end) for tells in _TELLS)


def _of_a_frame(words: Sequence[str], start: int, end: int) -> bool:
    """Into 1 1/2 blocking, onto a 38 mm ladder rail; 45 mm studs, where something else is said to hold."""
    at = end
    while words[at] in _OF_FRAMES and words[at] not in ("rafter", "plate") and at - end < 2:
        at += 1
    at += words[at] == "rafter" and words[at + 1] in ("end", "ends", "tail", "tails")
    if words[at] not in FRAMES and not (words[at] in ("end", "ends", "tail", "tails") and at > end):
        return False
    if words[at] in _STUD and words[at + 1] in _STUD_WALLS and words[end - 1] != "in":
        return True  # a 90 mm stud wall
    if _before(words, start) in _INTO:
        return True
    return words[end - 1] not in ("in", "of") and words[at].endswith("s") and _held_elsewhere(words, start, at + 1)


def _frame_is(words: Sequence[str], start: int, end: int) -> bool:
    """The studs are 5 1/2 deep; never "in the stud is 1 1/4"."""
    at = start - 1
    while at > 0 and words[at] in _SMALL:
        at -= 1
    is_ = at > 0 and words[at] in _IS
    at -= is_
    deep = words[end] in ("deep", "wide")
    if at < 0 or words[at] not in FRAMES or _before(words, at) in _LED_TO:
        return False
    return deep or (is_ and words[end] not in _HOLDS and _held_elsewhere(words, start, end))


def _held_elsewhere(words: Sequence[str], start: int, end: int) -> bool:
    """Whether the words before or after tell of something that holds, or that it is measured from the frame."""
    if not (_HOLDS - {"in"}).isdisjoint([*words[:start], *words[end:]]):
        return True
    others = (*range(start), *range(end, len(words) - 2))
    return any(words[at] in _IN_OR_FROM and not FRAMES.isdisjoint(words[at + 1 : at + 3]) for at in others)


def held_in_frame(words: Sequence[str], end: int) -> bool:
    """What is to hold, told between two layers: 1x4 straps, want 1 1/2 in the stud, sheathing is 7/16."""
    at = end + (words[end] in ("in", "into"))
    article = words[at] in _SMALL
    told = article or words[at - 1] == "into" or words[at] in ("stud", "framing")  # 5 1/2 in studs are so deep
    return words[at - 1] in ("in", "into") and told and words[at + article] in FRAMES


def _spacing(words: Sequence[str], start: int, end: int) -> bool:
    """Straps at 16 inch centres, every 2 feet."""
    return words[end] in _CENTRES or words[max(0, start - 1) : start] == ["every"]


def _width(words: Sequence[str], start: int, end: int) -> bool:
    """A 4 inch wide trim, boards 50 mm across."""
    return words[end] in _ACROSS and not (words[end] == "long" and words[start - 1 : start] == ["how"])


def _fastener(words: Sequence[str], start: int, end: int) -> bool:
    """The 3 inch screws we had, forty screws, number 8 screws, 16 gauge nails; never "will 3 inch screws do"."""
    at = end + (words[end] == "of")
    if words[at] in ("thread", "threads") and words[at + 1] not in ("in", "into") and _held_elsewhere(words, start, at + 1):
        return True  # the screws have an inch of thread
    numbered = words[max(0, start - 1) : start] == ["#"] or list(words[max(0, start - 2) : start]) == ["no", "."]
    if words[end] in _GAUGES or (numbered and not {"screw", "screws", "nail", "nails"}.isdisjoint(words[end : end + 2])):
        return True
    at = end + (words[end] in _KINDS)
    at += words[at] in _KINDS
    if words[at] in ("screw", "nail") and words[start - 1] in _ONE_OF and words[at + 1] in _REACH_OR_HOLD:
        return True  # will a 2 inch nail hold through 3/4
    if words[at] in ("screw", "nail") and words[start - 1] in _ONE_OF and words[at + 1] not in _HOLDS and not _claimed(words):
        return True  # how far in, with 3/4 boards and a 2 1/4 screw
    if words[at] not in _FASTENERS or words[at + 1] in _HOLDS or _claimed(words):
        return False
    return not any(word == "do" and words[n + 1] not in _SOMEBODY for n, word in enumerate(words[:-1]))  # would 3 inch screws do


def _set_for(words: Sequence[str], start: int, end: int) -> bool:
    """What the gun is set for: 1 1/2."""
    before = words[max(0, start - _BACK) : start]
    return list(before[-1:]) in (["for"], ["to"], ["at"]) and not _SETS.isdisjoint(before) and not _GUNS.isdisjoint(before)


def _claimed(words: Sequence[str]) -> bool:
    """Whether it is asked if the fasteners do: will they; never "will need to know"."""
    return any(word in _CLAIMS and not (word == "will" and after in _WANTS) for word, after in pairwise([*words, ""]))


def _hole(words: Sequence[str], start: int, end: int) -> bool:
    """Drilled first, 1/8 holes; the head sunk 1/8."""
    drilled = not _DRILLS.isdisjoint(words[max(0, start - 3) : start])
    return words[end] in _HOLES or (words[end] == "pilot" and words[end + 1] in _HOLES) or drilled


def _thin_end(words: Sequence[str], start: int, end: int) -> bool:
    """The boards run 5/8 at the butt and | 1/4 | at the top."""
    at = end + (words[end] == "at")
    at += words[at] == "the"
    return at > end and (words[at] in _THIN_ENDS or list(words[at : at + 2]) == ["thin", "edge"])


def _no_matter(words: Sequence[str], start: int, end: int) -> bool:
    """The half inch drywall inside | doesn't matter; the paper, 1 mm, doesn't count."""
    after = list(words[end : end + 6])
    after = after[: next((n for n, word in enumerate(after) if word in _STOPS), len(after))]
    at = next((n for n, word in enumerate(after) if word in _NOT), -1)
    return at >= 0 and not _COUNTS.isdisjoint(after[at + 1 : at + 2])


def _gone(words: Sequence[str], start: int, end: int) -> bool:
    """Took the old 1/2 inch board off, pulled off the 3/8 mesh; was going to be 1/2 ply but it's 5/8 now."""
    back: list[str] = []
    for at in range(start - 1, max(-1, start - 1 - _BACK), -1):
        if words[at] in _STOPS:
            break
        back.append(words[at])
    if not _REMOVED.isdisjoint(back):
        return True
    if not _TOOK.isdisjoint(back):
        return not _AWAY.isdisjoint([*back, *words[end : end + 5]])
    thick = end + (words[end] == "thick")
    apart = words[thick] == "," and words[thick + 1] in _IS_THAT  # the old siding, half inch thick, is coming off
    after = list(words[thick + apart : end + _ON])
    after = after[: next((n for n, word in enumerate(after) if word in _STOPS), len(after))]
    told = [*words[max(0, start - _OLD_BACK) : start], *after] if apart else [*back[:3], *after]
    if not (OLD.isdisjoint(told) and _NOW_THERE.isdisjoint(told)) and any(pair in _GOES for pair in pairwise(after)):
        return True  # the old 1/2 ply is coming off
    if {"used", "to", "be"} <= {*back}:
        return True  # used to be just an inch
    planned = not _WAS.isdisjoint(back) and "be" in back and not {"was", "were", "used"}.isdisjoint(back)
    return planned and not _NOW.isdisjoint(words[end:])


def _before(words: Sequence[str], at: int) -> str:
    at -= 1
    while at > 0 and words[at] in _SMALL:
        at -= 1
    return words[at] if at >= 0 else ""


def _cleared(words: Sequence[str], start: int, end: int) -> bool:
    """What the layers are held against: does it clear a 1 1/2 inch jamb."""
    return _before(words, start) in _CLEARS


_TELLS: tuple[Callable[[Sequence[str], int, int], bool], ...] = (
    _of_a_frame,
    _frame_is,
    _spacing,
    _width,
    _set_for,
    _fastener,
    _hole,
    _thin_end,
    _no_matter,
    _gone,
    _cleared,
)
