"""Numbers that tell the time, a year, an age or a weight of somebody, and so measure nothing of the job."""

from __future__ import annotations

from collections.abc import Sequence

from intents.number_words import SMALL

LATEST = 12  # o'clock
FIRST_YEAR, LAST_YEAR = 1850, 2035  # in which a house was built
YOUNGEST, OLDEST = 14, 95  # of people on a wall
_ENDS = frozenset(("", ",", ".", ";", "!", "?", ")"))
_ON = _ENDS | frozenset("and so but when if because".split())
_AT = frozenset("at by around about before after until till".split())
_WAS = frozenset("was is be it's it it'll".split())  # about 9 this morning: how cold it was
_AT_OR_WAS = _AT | _WAS | {"a"}
_MERIDIEM, _I = frozenset(("am", "pm")), frozenset("i we".split())  # dew point 10, am I getting frost
_OF_DAY = frozenset("morning afternoon evening".split())
_BUILT = frozenset(
    "house window windows door doors place barn building cottage home roof one is was it's it dates dated back built made done up"
    " original porch shed church school".split()
)
_OF_YEARS = frozenset(
    "house barn cottage place building home window windows roof porch church school bungalow thing truck van model job"
    " build".split()
)
_BUILDINGS = frozenset("house barn cottage building home bungalow church school".split())
CENTURIES = frozenset(("nineteen", "twenty"))
AGED = frozenset(("i'm", "im", "he's", "she's", "hes", "shes"))
_UNITS = frozenset(
    "inch inches in foot feet ft mm mil cm m metre metres meter meters degree degrees deg percent square squares dollars pounds"
    " pound point hundred thousand and by × / ' \" ° % -".split()
)
_SINCE, _IS_A = frozenset("since circa from in".split()), frozenset("is was it's its".split())
_IS_NOW = frozenset("and now years this".split())
_PEOPLE = frozenset("lad kid boy apprentice son nephew grandson".split())
_KILOS = frozenset("kilos kilo kg kgs pounds lb lbs stone".split())
_YEARS, _GONE = frozenset(("year", "years")), frozenset(("old", "ago"))
_AGED = _ENDS - {"."} | frozenset("now years".split())
_LASTS = frozenset("going on here up running out working it".split())
_EACH, _SPANS = frozenset(("a", "an", "per")), frozenset("day week hour shift month minute".split())
_WEEKDAYS = frozenset("monday tuesday wednesday thursday friday saturday sunday".split())
_STOP = frozenset("knock knocking knocked clock clocking clocked".split())


def of_time_or_people(words: Sequence[str], at: int, value: float) -> bool:
    """Whether the number at a place is one of these; `words` has empty words after its last."""
    if words[at + 1] in _EACH and words[at + 2] in _SPANS:
        return True  # 14 a day
    if at > 1 and words[at - 1] == "the" and words[at - 2] in _WEEKDAYS:
        return True  # till Monday the eighth
    if value != int(value):
        return value == 0.25 and _quarter(words, at)
    before = words[at - 1] if at else ""
    if FIRST_YEAR <= value <= LAST_YEAR and words[at].isdecimal():
        return _year(words, at)
    if words[at + 1] in _YEARS and words[at + 2] in _GONE:
        return True  # thirty years old
    if before in AGED and (words[at + 1] in _KILOS or (YOUNGEST <= value <= OLDEST and words[at + 1] in _AGED)):
        return True
    if before in _PEOPLE and YOUNGEST <= value <= OLDEST and words[at].isdecimal() and words[at + 1] in _IS_NOW:
        return True  # the lad's 19 and he says
    if before == "weigh" and words[at + 1] in _KILOS:
        return True
    return 0 < value <= LATEST and _hour(words, at)


def said_aside(words: Sequence[str], at: int, end: int, value: float) -> bool:
    """Whether a number of several words is a year or an age: from nineteen oh six, a nineteen ninety eight, he's seventy one."""
    before, earlier, after = words[at - 1] if at else "", words[at - 2] if at > 1 else "", words[end]
    if after in _UNITS:
        return False
    if words[at] in CENTURIES and FIRST_YEAR <= value <= LAST_YEAR:
        return before in _SINCE or (before in ("a", "an") and earlier in _IS_A)
    return before in AGED and YOUNGEST <= value <= OLDEST and value == int(value)


def _hour(words: Sequence[str], at: int) -> bool:
    before, earlier = (words[at - 1] if at else ""), (words[at - 2] if at > 1 else "")
    after, then = words[at + 1], words[at + 2]
    day = (after == "this" and then in _OF_DAY) or (after == "in" and then == "the" and words[at + 3] in _OF_DAY)
    if after in _MERIDIEM and then not in _I:
        return True  # 6 am
    if day and before == "since":
        return True  # we've been at it since seven this morning
    if day and before in _AT and not (before in ("about", "around") and earlier in _WAS):
        return True
    if before == "at" and earlier == "off" and at > 2 and words[at - 3] in _STOP:
        return after in _ON
    if before == "since" and earlier in _LASTS:
        return after in _ON  # the heater's been going since six
    if before == "past":
        return after in _ON and (earlier in ("half", "quarter") or earlier in SMALL)
    return before == "to" and earlier == "quarter" and after in _ON and at > 2 and words[at - 3] in _AT_OR_WAS


def _quarter(words: Sequence[str], at: int) -> bool:
    """Whether a quarter is of an hour: quarter to 5, a quarter past nine."""
    number = words[at + 2]
    small = number in SMALL or (number.isdecimal() and 0 < int(number) <= LATEST)
    if not small or words[at + 3] not in _ON:
        return False
    led = at > 0 and words[at - 1] in _AT | _WAS | {"a"}
    return words[at + 1] == "past" or (words[at + 1] == "to" and led)


def _year(words: Sequence[str], at: int) -> bool:
    before, earlier = (words[at - 1] if at else ""), (words[at - 2] if at > 1 else "")
    after = words[at + 1]
    if after in _OF_YEARS and before in ("a", "the", "this", "an", "old", "my", "our"):
        return True
    if after in _BUILDINGS and not before.isalnum():
        return True  # my sister's place, 1978 house
    if before in ("since", "circa"):
        return after in _ON
    return before in ("from", "in") and earlier in _BUILT and (after in _ON or after == "'s")
