"""Numbers that measure nothing of the job: the hour, how many of us there are, the page of a drawing."""

from __future__ import annotations

from collections.abc import Sequence

# After one of these verbs, "at" and a small number is an hour.
_CALLERS = frozenset("due here coming arrives arriving leaving leave lunch supper home meeting shows".split())
_AT = frozenset("at by around before after until till".split())
_WHO = frozenset(["us"])
_COUNTED = frozenset(
    "guys men lads fellas fellows helpers hours hour hrs minutes mins days day weeks week years year months month oclock o'clock "
    "pm kids dogs coffees miles beers".split()
)
_NAMED = frozenset("phase lot page detail drawing crew truck".split())  # a number after one of these is its name
_NOTHING = frozenset("soffit vents vent venting ventilation clue idea chance sense problem room patience".split())
LATEST = 12  # o'clock


def counts_nothing(words: Sequence[str], at: int, value: float) -> bool:
    """Whether the number at a place is none of the job's; `words` has empty words after its last."""
    after, before = words[at + 1], words[at - 1] if at else ""
    if after == "of" and words[at + 2] in _WHO:
        return True
    if after in _COUNTED or (before in _NAMED and after in (",", ".", "")):
        return True
    if value == 0 and after in _NOTHING:
        return True
    hour = 0 < value <= LATEST and value == int(value) and after in ("", ",", ".", ";", "!", "?", "so", "and", "today")
    return hour and before in _AT and at > 1 and words[at - 2] in _CALLERS
