"""What somebody says who takes a number back: the words that do it, and whether what follows tells of the same thing.

"33, no I'd the case on, 33.7 degrees", "300, no they trimmed it to 250" put the number before them right. "16 foot, no I
forgot, overhang 1 foot" does not.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from fractions import Fraction

from intents.reading import Reading
from solvers.quantities import Length, Quantity

TOOK_BACK = tuple((verb, "that") for verb in "scratch strike scrap cancel forget".split())
CUES = TOOK_BACK + tuple(
    tuple(cue.split())
    for cue in (
        "sorry|or no|or wait|or hang on|or actually|or sorry|no|nope|nah|wait|i mean|i meant|make that|make it"
        "|or rather|rather|correction|actually|hang on|hold on|my mistake|my bad|i tell a lie|tell a lie|pardon me|pardon"
        "|excuse me|i should say|should say|oops|whoops|apologies|i meant to say|i mean to say|really"
        "|but really|but actually|but it is really|but it's really|but its really|but it is actually|but it's actually"
        "|i lie|i'm a liar|im a liar|i am a liar|hang about|as you were|beg pardon|more like|better make it|better make that"
        "|call it|let's call it|that is wrong|that's wrong|thats wrong|not right|well|let's say|lets say|or say"
    ).split("|")
)
LOOSE = (("call", "it"), ("let's", "say"), ("lets", "say"), ("or", "say"), ("well",))  # which put right only what is near
WEAK = frozenset(("no", "nope", "nah", "really", "actually"))  # a word that alone may say something else: no overhang
SIDES = frozenset("wide high tall long deep thick across".split())
_STARTS = frozenset(
    "i i'd i'm i've im it its it's that that's thats this these those they they're theyre they'd they've we we're we've we'd he"
    " he's she she's you the with without them hang hold wait sorry".split()
)  # a clause after "no": no noun, of which there is none
_THEY = frozenset("it its it's that that's thats this they they're theyre them she she's he he's these those".split())
SAID = frozenset(
    "is are was were be being been to at only just about really actually now more like nearer a an the but measures reads says"
    " say said make makes comes come up out gone went got call called".split()
)  # between who or what is spoken of and the number
_STOPS = frozenset(",.;-…")
_UNASKED = frozenset("how what which when where why if ? also too another as and plus".split())
_STUFF = frozenset("stuff one ones sort kind thing instead main proper".split())
# Each has a size of its own: a number said of one is not put right by one that is said of another.
OF_ITS_OWN = SIDES | frozenset(
    "overhang overhangs waste kerf exposure reveal gap gaps height width length depth run rise pitch spacing centres centers sill"
    " head lap laps door doors window windows gable wall walls post posts stud studs joists stock sticks stick lengths boards"
    " board battens batten strap straps siding cladding sheathing footers footer roof ply plywood osb mesh foam cedar panel"
    " panels face limit corner spring bevel diagonal setting penetration nails screws price delivery budget high low hottest"
    " coldest dew humidity".split()
)
_MANIFOLD = 3  # of each other, at most, are a number and what it is put right to


def begins_anew(between: Sequence[str]) -> bool:
    """Whether words after "no" begin to tell how it is: no they trimmed it, no flipped the gauge."""
    first = next((word for word in between if word not in _STOPS), "")
    return first in _STARTS or (first.endswith("ed") and first.isalpha())


def still_of_it(
    between: Sequence[str], beside: tuple[Sequence[str], Sequence[str], Sequence[str]], pair: tuple[Reading, Reading],
    ends: Collection[str],
) -> bool:  # fmt: skip
    """Whether the later of a pair of quantities is said of what the earlier was.

    By the words between, and those `beside`: before the earlier, after it, after the later, where `ends` give no other role.
    """
    before, trail, after = beside
    context = [*before, *trail]
    if not _UNASKED.isdisjoint(between) or not near(*pair):
        return False
    own = OF_ITS_OWN - {*context}
    if after and after[0] in own:
        return False  # no I forgot, 2 foot overhang
    follows = not after or after[0] in ends or after[0] in context or after[0] in _STUFF
    last = len(between)
    while last and between[last - 1] in SAID:
        last -= 1
    if last and between[last - 1] in _THEY:
        return follows or not trail  # no with the fascia off it's 425
    since = max((n + 1 for n, word in enumerate(between) if word in _STOPS), default=0)
    return own.isdisjoint(between[since:]) and (follows or since < len(between))


def near(earlier: Reading, later: Reading) -> bool:
    """Whether two quantities could be one measured well and badly, the first in any unit where it has none."""
    assert isinstance(earlier.value, Quantity)
    assert isinstance(later.value, Quantity)
    pairs = ((a, b) for a in _sizes(earlier.value) for b in _sizes(later.value) if a and b)
    return any(Fraction(1, _MANIFOLD) <= a / b <= _MANIFOLD for a, b in pairs)


def _sizes(value: Quantity) -> set[Fraction]:
    found = {Fraction(value.value)}
    return found | {Fraction(value.to(unit).value) for unit in ("in", "ft")} if isinstance(value, Length) else found
