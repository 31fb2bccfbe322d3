"""A line after an answer that leaves out the name of what it is of: "three of them" (windows), "out of 12" (footers), "fifty
percent" (of grade), "five times" (what was taken four times), "off a 96 inch piece, what's left" (of it).
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.names import SUM
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Count, Length, Pitch, Temperature
from solvers.slots import Opening

if TYPE_CHECKING:
    from assistant.pending import Asked

_OF_THEM = expression(
    r"\W*(?:(?:and|no|make it|make that|actually|so|ok)\W+)*(?P<n>\d+|two|three|four|five|six|seven|eight) of (?:them|those)\W*",
    re.IGNORECASE,
)
_SQUARE_ONE = expression(r"\W*(?:(?:and|now|what about|how about|then|so)\W+)*a square (?:one|corner)\W*", re.IGNORECASE)
_WITHOUT = expression(r"\W*(?:(?:and|or|so|ok|now|but|what about|how about)\W+)*with(?:out(?: any| it)?| none)\W*", re.IGNORECASE)
_EACH_IS = expression(
    r"\W*(?:(?:and|so|ok|if)\W+)*(?:they(?:['’]?re| are)|each(?: one)?(?:['’]?s| is)?|at(?=.* each\W*$)) "
    r"(?P<n>(?!at\b|on\b|every\b|only at\b)[^,;?]+?)(?: (?:long|high|tall|each))?\W*",
    re.IGNORECASE,
)
_OF_EACH = expression(r"\ban? [a-z]+|\bcost\b", re.IGNORECASE)  # 3.50 a strap
_ALL_AT = expression(
    r"\W*(?:(?:and|so|ok|then)\W+)*how (?:long|much) (?:is|are) (?:all (?:of )?)?(?:that|it|them|those)(?: in all| altogether)? "
    r"(?:at|if (?:it|they)['’]?(?:s|re)) (?P<n>[^,;?]+?)(?: (?:high|tall|each|long))?\W*",
    re.IGNORECASE,
)
_LEAVES = expression(  # off a 96 inch piece, what's left; what does a sixteen footer leave me
    r"\W*(?:(?:and|so|ok|then|now|if i cut (?:it|that))[ ,]+)*(?:(?:off|out of|from) (?:an?|the|one) (?P<n>[^,;]+?)"
    r"(?: (?:piece|board|stick|length))?,? (?:what['’]?s|what is|how much(?:['’]?s| is)?) left(?: over)?"
    r"|(?:what|how much) (?:does|will|would|do) (?:an? |the )?(?P<m>[^,;]+?) leave(?: me| us)?)\W*",
    re.IGNORECASE,
)
_THAT_WAS = expression(  # that's the lake end, | the ramp end is 24
    r"^\W*(?:that['’]?s|thats|this is|that was|that is) (?:for )?the (?:[a-z]+ ){0,2}"
    r"(?:end|wall|side|gable|one|corner)\s*[,;.]\s+"
    r"(?=\S+(?: \S+){2,})",
    re.IGNORECASE,
)
_HALF_LOW = expression(
    r"\W*(?:(?:and|so|ok|then|the|what['’]?s)\W+)*(?:(?:low|lower|bottom|soffit|eaves?) half|"
    r"half (?:of )?(?:that|it) (?:goes |is |being |to be )?(?:at|in|on|for|down at|low)"
    r"(?: (?:the )?(?:soffits?|eaves?|bottom))?"
    r"(?:[, ]+(?:and |so )*(?:how much|what)(?:['’]?s| is) (?:the half|half|that|it))?)\W*",
    re.IGNORECASE,
)
_HALF_HIGH = expression(
    r"\W*(?:(?:and|so|ok|then|the|what['’]?s)\W+)*(?:(?:high|upper|top|ridge) half"
    r"|half (?:of )?(?:that|it) (?:goes |is |being |to be )?(?:at|in|on|for|up at|high)(?: (?:the )?(?:ridge|top))?"
    r"(?:[, ]+(?:and |so )*(?:how much|what)(?:['’]?s| is) (?:the half|half|that|it))?)\W*",
    re.IGNORECASE,
)
_AGAIN_BUT = expression(r"(?<=\w) again,? but (?=\S)", re.IGNORECASE)  # sixteen again but fourteen foot eight
_PERCENT = expression(
    r"\W*(?:(?:and|or|so|ok|now|what about|how about|at|no|make it)\W+)*[a-z0-9. ]+?(?: ?%| per ?cent)\W*", re.IGNORECASE
)
_SOLD = ("stock length", "board length")
_OUT_OF = expression(
    r"\W*(?:(?:and|or|so|ok|now|no|what about|how about|what if i use)\W+)*(?:out of|from) "
    r"(?P<n>8|10|12|14|16|18|20|eight|ten|twelve|fourteen|sixteen|eighteen|twenty)\W*",
    re.IGNORECASE,
)
_N_TIMES = r"(?:\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)"
_TIMES = expression(rf"\W*(?:(?:and|no|so|ok|now|what about|how about|make it)\W+)*(?P<n>{_N_TIMES}) times\W*", re.IGNORECASE)
_TIMES_IN = expression(rf"\b{_N_TIMES} times\b", re.IGNORECASE)
_ON_THE_SAW = expression(
    r"\W*(?:(?:and|so|ok|then)\W+)*what(?:['’]?s| is)? (?:the )?"
    r"(?:angle|setting|number) (?:on|for|do i set on|goes on) (?:the|my) saw\W*",
    re.IGNORECASE,
)
_N_IN = expression(r"\W*(?:(?:and|or|what about|how about|make it)\W+)*(?P<n>\d{1,2}) in (?P<m>\d[\d /.'-]*)\W*", re.IGNORECASE)


_IN_PIECES = expression(
    r"\W*(?:(?:and|or|so|ok|now|what about|how about|what if it['’]?s|do)\W+)*(?:an? )?(?P<n>\d{2,3})(?: degrees?| deg|°)?"
    r" (?:in|with|over|from|out of) (?P<m>three|four|five|six|[3-6]) (?:pieces|bits|sections)\W*",
    re.IGNORECASE,
)
_IN_SCALE = expression(  # what's 72 in celsius, of no inches
    r"\W*(?:(?:and|so|ok|now|what['’]?s|what is|what would|be|how much is)\W+)*"
    r"(?P<n>(?:minus |-)?\d+(?:\.\d+)?)(?: degrees| deg)? (?:in|to) (?:degrees )?(?P<to>c|celsius|centigrade|f|fahrenheit)\W*",
    re.IGNORECASE,
)
_NO_THING = expression(  # on the lake side, so just give it without
    r"\W*(?:(?:and|but|so|ok|oh|well|there['’]?s|there is|it['’]?s got|it has|got)\W+)*"
    r"(?P<none>no (?:overhangs?|waste|kerf|laps?))\b(?P<rest>[^?\d]*)",
    re.IGNORECASE,
)
_ASKS = expression(r"\b(?:how|what|what['’]?s|whats|which|why|where|when|can|will|would|does|or|but|and)\b", re.IGNORECASE)
_EVENLY, _OPEN = "divide evenly", "how far open"
_RIGHT_SETTING = expression(  # of the saw, for a corner that opens
    r"\W*(?:(?:and|so|ok|then|but)\W+)*(?:what['’]?s|what is|what would be) the (?:right|correct|proper) (?:saw )?setting"
    r" (?:for|on|at) (?:an? )?(?P<n>[a-z0-9.]+(?:[ -][a-z0-9.]+)?)(?: degrees?| deg)?(?: corner| one)?\W*"
    r"|\W*(?:(?:and|so|ok|then|but)\W+)*(?:what|where) should (?:the|my) saw be(?: set)?(?: at)?"
    r" for (?:an? )?(?P<m>[a-z0-9.]+)\W*",
    re.IGNORECASE,
)
_BETWEEN = expression(  # and none at the ends, of gaps
    r"\W*(?:(?:and|no|nah|so|ok|sorry|actually|make it|the gaps|gaps)\W+)*(?:just|only) (?:in )?between"
    r"(?: (?:them|em|'em|the [a-z]+|each(?: one)?|pieces))?(?: this time| then| instead)?\W*",
    re.IGNORECASE,
)
_AND_THE = r"\W*(?:(?:and|so|ok|now|then|what about|how about|what['’]?s|give me)\W+)*"
_COMMON = expression(rf"{_AND_THE}(?:the )?commons?(?: then| too)?\W*", re.IGNORECASE)
_TO_LEVEL = expression(
    rf"{_AND_THE}(?:(?:at|for|the (?:joint|cut|one)) )?(?:where|when)(?: (?:it|that|they|the \w+))?"
    r" (?:meets?|hits?|runs into|joins?) (?:up )?(?:with )?(?:the )?(?:level|flat|eaves?)"
    r"(?: (?:trim|board|piece|frieze|fascia|one))?\W*"
    rf"|{_AND_THE}(?:the )?(?:joint|cut) (?:with|to|at) the (?:level|flat)(?: (?:trim|board|piece|frieze|fascia|one))?\W*",
    re.IGNORECASE,
)
_TAIL = expression(r"\b(?:tails?|overhangs?)\b", re.IGNORECASE)
_ALONG = expression(r"\b(?:along|up|down|on) the (?:rafter|rake|roof)\b", re.IGNORECASE)
_HANGS = expression(
    r"\b(?:(?:i|it|we|they|the rakes?|that) )?(?:stick|hang|poke|run|stuck|hung)(?:s|ing)?"
    r"(?: (?:it|them))? (?:out|over|past)\b(?: by)?",
    re.IGNORECASE,
)


def in_its_names(text: str, last: Asked) -> str:
    """The line with the name that it leaves out; as it is where it leaves out none."""
    text = _AGAIN_BUT.sub(", ", _THAT_WAS.sub("", text))
    ways = (_things, _corner, _none_of_it, _each, _low, _in_percent, _stock, _so_often, _left_of_it, _setting, _so_many_in)
    more = (_between, _right_setting, _in_pieces, _no_thing, _in_scale, _next_part, _hangs_out)
    return next((fuller for way in (*ways, *more) if (fuller := way(text, last))), text)


def _next_part(text: str, last: Asked) -> str:
    """The common, of a roof whose hip was told; where it meets the level trim, of one whose rake was cut."""
    if last.topic.name == "hip or valley length" and _COMMON.fullmatch(text):
        return "and the common rafter"
    pitched = "pitch" in last.givens and last.topic.family == "corners"
    return "rake to level joint" if pitched and _TO_LEVEL.fullmatch(text) else ""


def _hangs_out(text: str, last: Asked) -> str:
    """What sticks out is the overhang, of a topic that takes one: what if I stick out 8 inches."""
    takes = any(parameter.name in ("overhang", "tail") for parameter in last.topic.parameters)
    if takes and _TAIL.search(text) and _ALONG.search(text):
        return _ALONG.sub("along the slope", text)
    return _HANGS.sub("overhang", text) if takes and len(numbers_in(text)) == 1 and _HANGS.search(text) else ""


def _things(text: str, last: Asked) -> str:
    """Three of them, of the windows that were told last."""
    many = _OF_THEM.fullmatch(text)
    told = [given.value for name, given in last.givens.items() if name in last.changed and isinstance(given.value, tuple)]
    windows = many is not None and len(last.changed) == 1 and bool(told) and isinstance(told[0][-1], Opening)
    return f"{many['n']} {told[0][-1].what}s" if windows and many else ""


def _corner(text: str, last: Asked) -> str:
    """A square one, of a corner."""
    square = _SQUARE_ONE.fullmatch(text) and any(parameter.label == "corner" for parameter in last.topic.parameters)
    return "a 90 degree corner" if square else ""


def _none_of_it(text: str, last: Asked) -> str:
    """Without any, of what was changed last."""
    none = _WITHOUT.fullmatch(text) and len(last.changed) == 1
    return f"no {last.topic.parameter(next(iter(last.changed))).label}" if none else ""


def _each(text: str, last: Asked) -> str:
    """They're 8 foot, of straps."""
    straps = last.topic.name == "strapping"
    each = (_EACH_IS.fullmatch(text) or _ALL_AT.fullmatch(text)) if straps else None
    said = numbers_in(each["n"]) if each else []
    long = len(said) == 1 and (isinstance(said[0].value, Length) or (said[0].kind == "number" and " each" not in text.lower()))
    return f"{each['n']} high" if each and long and not _OF_EACH.search(each["n"]) else ""


def _low(text: str, last: Asked) -> str:
    """Half of that at the soffit, of a vent area."""
    if last.topic.name != "vent area":
        return ""
    return "how much low" if _HALF_LOW.fullmatch(text) else "how much high" if _HALF_HIGH.fullmatch(text) else ""


def _in_percent(text: str, last: Asked) -> str:
    """A percent and no more, after a pitch that was told in percent."""
    given = [one.value for one in last.givens.values() if isinstance(one.value, Pitch)]
    said = given[0].text.lower().replace("per cent", "percent") if len(given) == 1 else ""
    return f"{text.rstrip(' .!?')} grade" if "percent" in said and _PERCENT.fullmatch(text) else ""


def _stock(text: str, last: Asked) -> str:
    """Out of 12, of what is cut from sticks sold by the foot."""
    sold = _OUT_OF.fullmatch(text)
    lengths = [last.givens[p.name].value for p in last.topic.parameters if p.slot.kept in _SOLD and p.name in last.givens]
    in_feet = any(isinstance(value, Length) and value.unit == "ft" for value in lengths)
    return f"from {sold['n']} footers" if sold and in_feet else ""


def _so_often(text: str, last: Asked) -> str:
    """Five times, of what was taken four times."""
    times = _TIMES.fullmatch(text) if last.topic.name == SUM else None
    return _TIMES_IN.sub(f"{times['n']} times", last.text) if times and len(_TIMES_IN.findall(last.text)) == 1 else ""


def _left_of_it(text: str, last: Asked) -> str:
    """Off a 96 inch piece, what's left; what does a sixteen footer leave me."""
    stick = _LEAVES.fullmatch(text)
    said = (stick["n"] or stick["m"]) if stick else ""
    return f"what's left of a {said}" if said and last.record["answer"]["unit"] in Length.units and numbers_in(said) else ""


def _setting(text: str, last: Asked) -> str:
    """What angle on the saw, after one that was worked."""
    return "saw setting" if _ON_THE_SAW.fullmatch(text) and last.record["answer"]["name"] in ("saw setting", "miter") else ""


def _so_many_in(text: str, last: Asked) -> str:
    """7 in 60, of 5 pickets in 48: so many of them, and in how much."""
    found = _N_IN.fullmatch(text)
    if found is not None and last.topic.name == _EVENLY and found["m"].isdecimal():
        length = last.givens["length"].value if "length" in last.givens else None
        return f"{found['n']} {length.unit} in {found['m']} parts" if isinstance(length, Length) else ""
    counts = [given.value for given in last.givens.values() if isinstance(given.value, Count) and given.source != "assumed"]
    if found is None or len(counts) != 1 or any(isinstance(given.value, Pitch) for given in last.givens.values()):
        return ""
    said = re.escape(counts[0].text)
    things = re.search(rf"\b{said} ([a-z]+s)\b.* in \d", last.text, re.IGNORECASE) if said else None
    return f"{found['n']} {things[1]} in {found['m']}" if things else ""


def _between(text: str, last: Asked) -> str:
    """Just between them, of gaps that were at the ends too."""
    gaps = any(parameter.label == "gaps" for parameter in last.topic.parameters)
    return "between only" if gaps and _BETWEEN.fullmatch(text) else ""


def _right_setting(text: str, last: Asked) -> str:
    """The right setting for 93, of a corner that opens: what the saw is set to, and not how far that opens."""
    found = _RIGHT_SETTING.fullmatch(text) if last.topic.name == _OPEN else None
    corner = (found["n"] or found["m"]) if found is not None else ""
    return f"saw setting for a {corner} degree corner" if corner and len(numbers_in(corner)) == 1 else ""


def _in_pieces(text: str, last: Asked) -> str:
    """120 with 3 pieces, after a corner: that corner gone round in so many."""
    found = _IN_PIECES.fullmatch(text) if "corner" in last.givens else None
    return f"{found['n']} degree corner in {found['m']} pieces" if found is not None else ""


def _no_thing(text: str, last: Asked) -> str:
    """No overhang on that side, so just give it without: none of what the question before was given."""
    found = _NO_THING.fullmatch(text)
    if found is None or numbers_in(found["rest"]) or _ASKS.search(found["rest"]):
        return ""
    label = found["none"].lower().split()[1].removesuffix("s")
    return found["none"] if any(last.topic.parameter(name).label.endswith(label) for name in last.givens) else ""


def _in_scale(text: str, last: Asked) -> str:
    """What's 72 in Celsius, of temperatures: degrees of the other scale."""
    found = _IN_SCALE.fullmatch(text) if any(isinstance(one.value, Temperature) for one in last.givens.values()) else None
    if found is None:
        return ""
    scales = ("Fahrenheit", "Celsius") if found["to"].lower().startswith("c") else ("Celsius", "Fahrenheit")
    return f"{found['n']} degrees {scales[0]} in {scales[1]}"
