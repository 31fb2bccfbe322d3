"""Numbers that measure nothing of the job: the hour, how many of us there are, the page of a drawing."""

from __future__ import annotations

from collections.abc import Sequence

from intents.number_words import ORDINALS, SMALL, TENS
from intents.times_and_people import LATEST, of_time_or_people

# After one of these verbs, "at" and a small number is an hour.
_CALLERS = frozenset(
    "there you due here coming arrives arriving leaving leave leaves lunch supper home meeting shows close closes quit quits "
    "quitting opens back rain shuts dark done finished ready delivering delivers".split()
)
_AT = frozenset("at by around before after until till".split())
_COMERS = frozenset(
    "rain rains snow truck lorry boss tide sun crew inspector kids wife owner he she they it's delivery bus".split()
)
_COMES = frozenset("comes come starts start begins gets".split())  # the rain comes at three and
_CALLS, _BY = frozenset("ring call phone".split()), frozenset("by before after until till".split())  # if I ring before ten
_WHO = frozenset("us them those these it".split())
_COLD_THINGS = frozenset("hands fingers toes i'm im we're face nose".split())  # freezing, and no temperature of the job
_COUNTED = frozenset(
    "guys men lads fellas fellows helpers hours hour hrs minutes mins days day weeks week years year months month oclock o'clock "
    "pm kids dogs coffees mile miles km kilometres kilometers helper helpers beers psi mph watt watts volts"
    " ladders trips flights sons brothers blokes".split()
)
_NAMED = frozenset("phase lot plot page detail drawing crew truck item colour color shade".split())  # a number after one names it
_NOTHING = frozenset("soffit vents vent venting ventilation clue idea chance sense problem room patience".split())
_HAPPENS = frozenset("get gets got are were was is end ends".split())  # half of them get bent
# After "three times" a number that is multiplied, or what is.
_MULTIPLIED = frozenset(
    "a an the that this it as of by plus minus less my half quarter point minus one two three four five six seven eight "
    "nine ten eleven twelve "
    "thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety "
    "hundred".split()
)
_HALF = frozenset("empty gone done finished rotten dead asleep frozen decent built painted".split())
_POINTING = frozenset("quick easy simple daft silly that this which other another same last next each every".split())
_KINDS = frozenset("long short longer shorter longest shortest sloping upright flat level vertical horizontal".split())
_NTH = ("st", "nd", "rd", "th")
_MARKS = frozenset("mark strap batten baluster picket spindle joint fastener screw nail".split())  # which of them
_THIRDS = frozenset(("side", "leg", "edge", "one", "length", "?", ".", ",", ""))
_GOES_ON = frozenset("and or is was are s needs wants rises takes on for at with then does so to but if up too please".split())
_HOW = frozenset("how what whats what's".split())  # the small one how far out is it
_GAUGE, _THICKEST, _THINNEST = frozenset(("gauge", "ga")), 16, 32  # of sheet metal
_ASKED, _ANSWERS = frozenset(("what", "which", "the")), frozenset("angles settings figures numbers readings cuts answers".split())
_YOUNG = frozenset("kids children anyone nobody everyone".split())
_OF_BOTH = frozenset((",", ".", "", ";", "?", "and", "not", "is", "in", "on", "at"))
_ALONE = frozenset((",", ".", "", ";", "?", "and"))
_TURNS = frozenset("load time trip floor storey story day batch delivery lift".split())  # the 3rd load
_QUARTERED = frozenset(("round", "sawn"))
_DAYS = frozenset("on since by until before after".split())
_MEASURES = frozenset(
    "inch inches in foot feet ft mm cm m metre meter metres meters degree degrees deg percent square and point hundred thousand "
    "dozen half quarter / - ' \" ° %".split()
)


def only_cold(words: Sequence[str], at: int) -> bool:
    """Whether "freezing" at a place is said of a person: my hands are freezing."""
    return words[at] == "freezing" and not _COLD_THINGS.isdisjoint(words[max(0, at - 3) : at])


def _points_back(words: Sequence[str], at: int) -> bool:
    """Whether "one" at a place is no number but a thing that was named: that one, the back one is."""
    after, before = words[at + 1], words[at - 1] if at else ""
    ends = not after or not after[0].isalnum() or after in _GOES_ON or after in _HOW
    if before in _POINTING and after in ("by", "in"):  # the other one by the door
        return words[at + 2].isalpha() and words[at + 2] not in SMALL and words[at + 2] not in TENS
    if before in _POINTING:
        return after not in _MEASURES and after not in ORDINALS  # that one's 815, that one's done
    if at > 1 and words[at - 2] in ("a", "an") and before.isalpha() and before not in _MEASURES:
        return after not in _MEASURES and before not in SMALL and before not in TENS  # what about a vinyl one
    named = at > 1 and words[at - 2] in ("the", "my", "your", "our") and before.isalpha() and before not in _GOES_ON
    return named and ends and before not in SMALL and before not in TENS


def counts_nothing(words: Sequence[str], at: int, value: float) -> bool:
    """Whether the number at a place is none of the job's; `words` has empty words after its last."""
    after, before = words[at + 1], words[at - 1] if at else ""
    if after == "of" and words[at + 2] in _WHO and (words[at + 2] == "us" or (0 < value < 1 and words[at + 3] in _HAPPENS)):
        return True
    if words[at] == "one" and _points_back(words, at):
        return True  # can my saw do that one
    if _stands_for_a_thing(words[at], before, after):
        return True
    if _names(words, at, value) or of_time_or_people(words, at, value):
        return True
    if 2 <= value <= 4 and (before in _ASKED or before == "all") and (after in _ANSWERS if before in _ASKED else after in _ALONE):
        return True  # what two angles do I set, hit all 3
    if (after == "to" and words[at + 2] == "go") or _of_kids_or_both(words, at, value):
        return True  # only 2 to go
    if "of" in (after, before) and _one_of(words, at):
        return True
    if value == 0.5 and after in _HALF:
        return True  # the box is half empty
    if value == 0.25 and (after in _QUARTERED or (after == "-" and words[at + 2] in _QUARTERED)):
        return True  # quarter round, a moulding; quarter-sawn oak
    if after in _COUNTED or (before in _NAMED and (after in (",", ".", "", "btw") or before == "page")):
        return True
    if after == "times" and words[at + 2].isalpha() and words[at + 2] not in _MULTIPLIED:
        return True  # measured it three times because
    if value == 0 and after in _NOTHING:
        return True
    hour = 0 < value <= LATEST and value == int(value) and after in ("", ",", ".", ";", "!", "?", "so", "and", "today")
    return hour and before in _AT and at > 1 and _expected(words, at)


def _of_kids_or_both(words: Sequence[str], at: int, value: float) -> bool:
    """Whether a number is an age, or two things that were told: kids under ten only, how much rope between the two."""
    before, second = (words[at - 1], words[at - 2]) if at > 1 else ("", "")
    young = before in ("under", "over") and second in _YOUNG
    both = value == 2 and before == "the" and second == "between"
    return young or (both and (words[at + 1] in _OF_BOTH or (words[at + 1].isalpha() and words[at + 1][-1] == "s")))  # two boards


def _expected(words: Sequence[str], at: int) -> bool:
    """Whether what is said before "at three" comes, opens or closes at an hour."""
    verb, subject = words[at - 2], words[at - 3] if at > 2 else ""
    if verb in _CALLERS or (verb in _CALLS and words[at - 1] in _BY):
        return True
    return verb in _COMES and subject in _COMERS


def _stands_for_a_thing(word: str, before: str, after: str) -> bool:
    """Whether "one" or "third" is no number: the short one 10, the third side, the board below (not a degree of frost)."""
    if after in _MARKS and ((word in ORDINALS and word[-2:] in (*_NTH, "d")) or (word[:1].isdecimal() and word[-2:] in _NTH)):
        return True  # where's the fifth mark
    if word == "third":
        return after in _THIRDS and before not in SMALL and before not in ("a", "an")
    beside = before == "the" and after in ("below", "above", "under", "beneath")
    return word == "one" and (beside or (before in _KINDS and after not in _MEASURES))


def _one_of(words: Sequence[str], at: int) -> bool:
    """Whether a number says which of several it is, or how many those are: it's | 1 of 3."""
    first = at if words[at + 1] == "of" else at - 2
    led = first > 0 and words[first - 1] in ("its", "it's", "is", "this", "number", "job", "wall")
    return led and words[first].isdecimal() and words[first + 2].isdecimal() and words[first + 3] in _ALONE


def _names(words: Sequence[str], at: int, value: float) -> bool:
    """Whether a number is a name or a day: 26 gauge metal, gable no. 2, on the 3rd."""
    if words[at + 1] in _GAUGE and _THICKEST <= value <= _THINNEST:
        return True
    if at and words[at - 1] == "number" and words[at + 1] in ("on", "of") and words[at + 2] in ("the", "my", "our"):
        return True  # number 7 on the list
    if at > 2 and list(words[at - 2 : at]) == ["no", "."] and words[at - 3].isalpha():
        return True
    day = words[at][:1].isdecimal() and words[at][-2:] in _NTH
    return day and (words[at + 1] in _TURNS or (at > 1 and words[at - 1] == "the" and words[at - 2] in _DAYS))
