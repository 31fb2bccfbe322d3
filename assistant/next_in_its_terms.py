"""What is told or asked next of a roof, a screw or a row, in the terms of its topic: "stick an eighteen inch tail on it measured
level" is how long the tail is, "what's the rake on it" the rake of that gable, "guy only has 3 inch ones, what's my bite" how
deep that screw goes, "that's only the front, there's another 13.5 m at the back" so much more of it.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.meant_for import CALLED
from assistant.metric_talk import any_metric
from assistant.said_over import number_in, places_of, whole
from assistant.several import TOGETHER
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Length, Number
from solvers.slots import Layer

if TYPE_CHECKING:
    from assistant.pending import Asked

LEAD = (
    r"\W*(?:(?:and|so|ok|okay|right|then|but|now|well|oh|ah|no|nah|sorry|wait|hang on|actually|also|what if|what about"
    r"|say|how about"
    r"|suppose|if|when|with)\b\W*)*"
)
_TAILS = r"(?:tails?|overhangs?|oversails?|eaves?)"
_LEVEL = r"(?:,? (?:measured |taken |told )?(?:on the )?(?:level|flat|horizontal(?:ly)?))?"
_TAIL = (
    expression(  # stick an eighteen inch tail on it measured level
        rf"{LEAD}(?:(?:i|we)(?:['’]ll)? )?(?:put|stick|add|give (?:it|them)|throw|chuck|leave|have|there['’]?s"
        rf"|it['’]?s got|it has|got)?"
        rf" ?(?:an? |one )?(?P<n>[^,;?]+?) (?:of )?{_TAILS}(?: on(?: (?:it|that|there|them))?| (?:to|at) (?:it"
        rf"|that))?{_LEVEL}\W*",
        re.IGNORECASE,
    ),
    expression(  # nah make that tail a foot
        rf"{LEAD}(?:make|call|put) (?:that|the|those|my) {_TAILS}(?: to| at)? (?P<n>[^,;?]+?){_LEVEL}(?: instead| then)?\W*",
        re.IGNORECASE,
    ),
    expression(  # and if it runs past the wall by 300 measured level
        rf"{LEAD}(?:it|they|that|the (?:board|rafter|rake|barge)s?)(?:['’]s)? (?:runs?|goes|go|sticks?|hangs?|sails?"
        rf"|comes?|oversails?)"
        r"(?: (?:out|on))?(?: (?:past|over|beyond|by|the|wall|wall line|plate|it))* (?P<n>[^,;?]+?)"
        rf"(?: (?:past|over|beyond)(?: the)? (?:wall|plate|it))?{_LEVEL}\W*",
        re.IGNORECASE,
    ),
)
_NO_TAIL = expression(
    rf"{LEAD}(?:there(?:['’]?s| is| was| were| are)|it(?:['’]?s| has| had)|they(?:['’]ve)?)?(?: got)? ?(?:no"
    rf"|without(?: an?| the)?) {_TAILS}"
    r"(?: (?:at all|on it|then|there))*\W*",
    re.IGNORECASE,
)
_ALONG = expression(r"\b(?:along|up|down) the (?:slope|rafter|rake)\b", re.IGNORECASE)
_MEMBER = expression(  # whats the rake on it; so what's a common on that same run
    r"\W*(?:(?:and|so|ok|then|now|well)\W+)*(?:what(?:['’]?s| is| about)?|how long(?:['’]?s| is| are"
    r"| would)?)(?: (?:the|teh|a|an|each|one))?"
    r" (?P<what>rakes?(?: length| board)?|commons?(?: rafters?)?)(?: be)?(?: (?:on|for|of|over|at|to) (?:it|that|there"
    r"|them|the same"
    r"|that same|this)(?: (?:one|same|run|roof|gable|pitch))*)?(?: then| no tail| no overhang|,)*\W*",
    re.IGNORECASE,
)
_OF_A_ROOF = ("gable height", "gable area", "hip or valley length", "rake length", "sloped length")
_BOTH = expression(
    r"\W*(?:(?:and|so|ok|then|now|well)\W+)*(?:(?:what(?:['’]?s| is| about)?|how long(?:['’]?s| is| are)?) )?(?:both"
    r"|the pair|the two)"
    r"(?: of (?:them|those)| sides| rakes)?(?: (?:together|altogether|in total|total|combined|at that pitch|then|now))+\W*",
    re.IGNORECASE,
)
_BITE = expression(r"\b(?:bite|penetration|(?:goes?|gets?|going) in(?:to)?(?: the stud)?|in(?:to)? the studs?)\b", re.IGNORECASE)
_HAS = expression(r"\b(?:got|have|has|only|is|are|use|used|using|with|ones?)\b", re.IGNORECASE)
_ASKS = expression(r"\b(?:how much|what|whats|what['’]?s|how far|how deep)\b", re.IGNORECASE)
_NO_LAYER = expression(
    rf"{LEAD}(?:there['’]?s )?no (?P<what>[a-z]+) (?:on|in|at) (?:this|that|the) (?:wall|one|side|job|house|end)\W*",
    re.IGNORECASE,
)
_NICER = expression(  # my daughter says eight would look nicer
    r"[^\d]*?\b(?P<n>\d{1,2}|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?: sides)?(?: of them)?(?: would"
    r"|['’]d| might| will"
    r"| is| looks)?(?: (?:look|be|suit|do))? (?:nicer|better|prettier|easier|fancier|best|fine|grand)(?: [a-z]+){0,2}\W*",
    re.IGNORECASE,
)
_ONE_SIDE = expression(  # that's one side, do both sides of the dormer
    r"\W*(?:(?:and|so|ok|well|sorry|no)\W+)*(?:that|this|it)(?:['’]?s| is| was)(?: only| just)* (?:the )?one (?:side"
    r"|cheek|end|half|slope)"
    r"(?: only)?[,;.]? (?:(?:and|so|now|but) )?(?:do|i need|we need|what about|how about|make it|give me|need"
    r"|what['’]?s|how many for)?"
    r" ?(?:it for )?(?:both|the two|the pair)(?: of them| sides| cheeks| ends)?(?: (?:of|on) (?:the|that) [a-z]+)?\W*",
    re.IGNORECASE,
)
_ANOTHER = expression(  # that's only the front, there's another 13.5 m at the back, so both
    r"\W*(?:(?:and|so|ok|well|sorry|no|oh)\W+)*(?:(?:that|this|it)(?:['’]?s| is| was)(?: only"
    r"| just)* (?:for )?(?:the )?[a-z]+(?: side)?[,;.]? )?"
    r"(?:and |but )?there(?:['’]?s| is) another (?P<n>[^,;?]+?) (?:at|on|round|around|along|down) (?:the )?"
    r"(?:back|front|rear|other (?:side|end)|far (?:side|end)|side|end)(?:[,;.]? (?:so )?(?:both|the two|all of it|the lot)"
    r"(?: of them| together| sides)?)?\W*",
    re.IGNORECASE,
)
_FROM_FOOTERS = expression(
    r"\W*(?:(?:and|so|ok|then|now)\W+)*(?:(?:from|out of|using|with|in|off|cut from) )?(?P<n>8|10|12|14|16|18|20|24|eight|ten"
    r"|twelve|fourteen"
    r"|sixteen|eighteen|twenty)[ -]?(?:foot|ft|')?ers\W*",
    re.IGNORECASE,
)
_SAME_AGAIN = expression(  # wall two is the same; the back one's exactly the same
    r"\W*(?:(?:and|so|ok|then|now)\W+)*(?:(?:the|my) )?(?:(?:other|second|back|far|front|opposite|north|south|east|west)"
    r" (?:wall|side|gable|one|end|eave|slope)|(?:wall|side|gable|slope) (?:two|2|b))(?:['’]?s| is)?"
    r" (?:(?:the|exactly|just|about) )*(?:same|identical)(?: (?:again|size|thing))?(?:,? (?:too|as well))?\W*",
    re.IGNORECASE,
)
_SO_THICK = expression(  # actually one inch foam
    r"\W*(?:(?:and|so|ok|no|but|with|actually|sorry|wait|use|make it|make that|it['’]?s|it was|there['’]?s"
    r"|say|only|what if|if)\W+)*(?P<n>[^,;?]+?) (?:of )?(?:the )?(?P<what>[a-z]+)(?: (?:instead|then|now|after all))*\W*",
    re.IGNORECASE,
)
_LAYER_IS = expression(  # what if the foam's 1 inch; with 25 of foam
    rf"{LEAD}(?:(?:the |that )?(?P<what>foam|insulation|sheathing|plywood|ply|osb|siding|cladding|strapping|battens?|drywall"
    rf"|furring)"
    r"(?:['’]?s| is| was| were|['’]d be| at| goes to)(?: (?:only|really|actually|just))* (?P<n>[^,;?]+?))(?: (?:then|now|thick"
    r"|after all))*\W*",
    re.IGNORECASE,
)
_APART = expression(
    rf"{LEAD}(?:the )?(?:posts|newels|walls|jambs|columns)(?:['’]re| are| were| is| come)?(?: (?:really|only|actually"
    rf"|just|more like))*"
    r" (?P<n>[^,;?]+?) apart(?: (?:instead|then|now))?\W*",
    re.IGNORECASE,
)
_RETAPED = expression(  # I put the tape on it again and it's 10 5/8 across
    r"[^\d,;]*?\b(?:tape|taped|measured?|re-?measured|checked|gauge)\b[^\d,;]*?\b(?:again|over|twice|properly"
    r"|right)\b[^\d]*?\b(?:it['’]?s|it is"
    r"|it was|reads?|says?|got|get) (?:really |actually |only )*(?P<n>[^,;?]+?) (?P<how>across|wide|high|tall|long|deep"
    r"|apart)\W*",
    re.IGNORECASE,
)
_END_TO_END = expression(  # four of those differences end to end
    r"\W*(?:(?:and|so|ok|then|now)\W+)*(?:what(?:['’]?s| is| are)? )?(?P<n>\d{1,2}|[a-z]+) of (?:those|them|these"
    r"|'?em)(?: [a-z]+)?"
    r" (?:end to end|laid end to end|in a row|butted up|one after (?:another|the other))(?P<unit> in (?:inches|mm|feet"
    r"|met(?:re|er)s))?\W*",
    re.IGNORECASE,
)
_STRETCH_SO = expression(  # I can stretch to 6 5/8, so make it 17 courses
    rf"{LEAD}(?:i|we)? ?(?:can|could|['’]ll)? ?(?:stretch|go|push|open)(?: (?:it|them))?(?: up"
    rf"| out)? to (?P<n>[^,;?]+?)[,;.]? (?:so )?"
    r"(?:make it|call it|go(?: for| with)?|do|use|that['’]?s|say) (?P<count>\d{1,2}|[a-z]+) (?:courses|rows)\W*",
    re.IGNORECASE,
)
_STEPS = expression(r"(?=.*\bexposure\b).*\b(?:how much|what)\b.*\bsteps?\b", re.IGNORECASE)
_LAPS = expression(  # boss wants foot laps
    rf"{LEAD}(?:(?:the )?[a-z]+ )?(?:wants?|needs?|says?|said|use|do|make it|make the|go(?:es)? with|reckons?|specs?) "
    r"(?P<n>foot|[^,;?]+?) (?:end |side )?laps?(?: (?:instead|now|then|please))?\W*",
    re.IGNORECASE,
)
_DRIES = expression(  # and if that one dries from 15 down to 8
    rf"{LEAD}(?:it|that|that one|they|the (?:board|panel|wood|piece))(?:['’]s)? (?:dries|dried|goes|went|drops?|comes"
    rf"|came|gets|got|swells"
    r"|shrinks|moves|climbs)(?: (?:out|up|down|back))? from (?P<n>[^,;?]+?)(?: (?:percent|%))? (?:down |up "
    r"|back )?to (?P<m>[^,;?]+?)"
    r"(?: (?:percent|%))?(?: moisture)?\W*",
    re.IGNORECASE,
)
_MOST_METRES = 10  # that a bare number beside metres tells of a tail; more are millimetres


def tail_of(text: str, last: Asked) -> str:
    """How long the tail of a rafter or a rake is, measured level; or that there is none."""
    called = "overhang" if last.topic.name == "rake length" else "tail"
    if _NO_TAIL.fullmatch(text):
        return f"no {called}"
    found = next((match for shape in _TAIL if (match := shape.fullmatch(text))), None)
    if found is None or not whole(found["n"]) or _ALONG.search(text):
        return ""
    place = places_of(found["n"])[0]
    metric = any_metric(last)
    unit = " mm" if metric and place.value.unit == "none" and place.value.value > _MOST_METRES else ""
    return f"with {found['n']}{unit} {called}{'' if called == 'overhang' else ' measured level'}"


def member_of(text: str, last: Asked) -> str:
    """How long the rake or the common rafter of the roof just worked is: its pitch is no answer to that."""
    found = _MEMBER.fullmatch(text) if last.topic.name in _OF_A_ROOF else None
    if found is not None:
        return "how long is the rake" if found["what"].lower().startswith("rake") else "how long is the common rafter"
    return "two of those" if last.topic.name == "rake length" and last.times == 1 and _BOTH.fullmatch(text) else ""


def bite_of(text: str, last: Asked) -> str:
    """How deep a screw goes that there is, through the layers just told."""
    line = re.sub(r"(?<=\d)['’]?s\b", "", text)
    places = [place for place in places_of(line) if place.words != ("one",)]
    if len(places) != 1 or not (_BITE.search(line) and _HAS.search(line) and _ASKS.search(line)):
        return ""
    place = places[0]
    layers = last.givens["layers"].value if "layers" in last.givens else ()
    if not layers or re.search(r"\bif (?:it|the \w+) (?:was|were|is)\b", line, re.IGNORECASE):
        return ""
    metric = all(getattr(one, "thickness", None) is not None and one.thickness.unit == "mm" for one in layers)
    unit = "" if isinstance(place.value, Length) else " mm" if metric else " inch"
    return f"how much bite does a {line[place.start : place.end]}{unit} screw get"


def no_layer(text: str, last: Asked) -> str:
    """That a layer is not there: no strapping on this wall."""
    found = _NO_LAYER.fullmatch(text) if "layers" in last.givens else None
    if found is None:
        return ""
    named = [one for one in last.givens["layers"].value if found["what"].lower() in getattr(one, "what", "").lower()]
    return f"no {found['what']}" if len(named) == 1 else ""


def layer_so_thick(text: str, last: Asked) -> str:
    """A layer by its name, of another thickness, though what a screw bites was as much: an inch of foam, no inch in the stud."""
    found = _SO_THICK.fullmatch(text) if "layers" in last.givens else None
    if found is None or not whole(found["n"]):
        return ""
    what = found["what"].lower()
    layers = [one for one in last.givens["layers"].value if isinstance(one, Layer) and one.thickness is not None]
    named = [one for one in layers if what in one.what.lower().split()]
    return f"make the {what} {found['n']}" if len(named) == 1 else ""


def layer_back(text: str, last: Asked) -> str:
    """A layer that was left out before, there after all: no foam | what if the foam's 1 inch."""
    found = _LAYER_IS.fullmatch(text) if "layers" in last.givens else None
    if found is None or not whole(found["n"]):
        return ""
    what = found["what"].lower()
    now, was = (
        [getattr(one, "what", "").lower() for one in layers] for layers in (last.givens["layers"].value, _layers_before(last))
    )
    gone = any(what in one for one in was) and not any(what in one for one in now)
    return f"with {found['n']} {what} as well" if gone else ""


def _layers_before(last: Asked) -> list[Layer]:
    """The layers of the question as it was before each of its changes."""
    return [layer for known in last.past for layer in known.get("layers") or ()]


def nicer_with(text: str, last: Asked) -> str:
    """How many sides somebody would rather have."""
    found = _NICER.fullmatch(text)
    return f"{found['n']} sides" if found is not None else ""


_COMMON_BESIDE = expression(
    r"\W*(?:(?:and|so|ok|now|then)\W+)*(?:what(?:['’]?s| is)|how long(?:['’]?s| is)|what about|give me)? ?(?:the|a) commons?"
    r"(?: rafters?)?"
    r"(?: (?:next to (?:it|that)|beside (?:it|that)|then|off (?:it|that)|to match))*(?:,? how long)?\W*",
    re.IGNORECASE,
)
_LEFT_AT = expression(
    r"\W*(?:(?:and|so|ok|but|say|suppose|what if|if)\W+)*(?:i|we|you|he)(?:['’]?d| had| just)?(?: just| have)?"
    r" (?:left|leave|cut|set|had|kept|keep)(?: it| them| both| mine)?(?: (?:at|on|to))? (?P<at>\d{2}(?:\.\d)?)s?(?: degrees)?"
    r"(?: (?:for|on|with) that(?: one)?)?,? (?:on |with )?(?:an? |the )?(?P<face>\d[\d/ .]*?) ?(?:inch|in|\")? ?"
    r"(?:base|face|trim|wide|stock|casing|boards?|skirting)\b,?[^\d]*\b(?:gap|open)\b[^\d]*",
    re.IGNORECASE,
)
_IN_PIECES = expression(
    r"[^.;?]*\b(?:that|this|the same|it)(?: (?:one|corner))?\b[^.;?]*\bin (?P<n>\d|two|three|four|five|six)"
    r" (?:pieces|peices|pcs|bits|parts)\b[^.;]*\W*",
    re.IGNORECASE,
)


def more_of_it(text: str, last: Asked) -> str:
    """Both sides, where one was worked; or so much more of what was asked for, at the back."""
    if _ONE_SIDE.fullmatch(text) or _SAME_AGAIN.fullmatch(text):
        return "two of those" if last.times == 1 and "sides" not in last.givens else ""
    said = number_in(_ANOTHER, text) if last.topic.name in TOGETHER else ""
    return f"add {said}" if said else ""


def in_footers(text: str, last: Asked) -> str:
    """How many sticks the length just worked takes: from 16 footers, of a rake."""
    found, answer = _FROM_FOOTERS.fullmatch(text), last.record.get("answer")
    sold = any(p.slot.kept in ("stock length", "board length") for p in last.topic.parameters)
    if found is None or sold or answer is None or answer["unit"] not in Length.units:
        return ""
    return f"how many {found['n']} footers is that"


def so_far_apart(text: str, last: Asked) -> str:
    """How far apart the posts are between which pieces stand."""
    said = number_in(_APART, text)
    return f"length {said}" if said else ""


def retaped(text: str, last: Asked) -> str:
    """A size that was taped again."""
    found = _RETAPED.fullmatch(text)
    labels = {word for name in last.givens for word in last.topic.parameter(name).label.split()}
    if found is None or not whole(found["n"]):
        return ""
    how = found["how"].lower()
    return f"make it {found['n']} {how}" if {how, CALLED.get(how, how)} & labels else ""


def end_to_end(text: str, last: Asked) -> str:
    """So many of the length just worked in a row."""
    found = _END_TO_END.fullmatch(text)
    answer = last.record.get("answer") or {}
    said = numbers_in(found["n"]) if found is not None else []
    if found is None or len(said) != 1 or not isinstance(said[0].value, Number) or answer.get("unit") not in Length.units:
        return ""
    return f"{said[0].value.value} times {answer['value']:g} {answer['unit']}{found['unit'] or ''}"


def step_again(text: str, last: Asked) -> str:
    """How much each course steps in at another exposure, after the angle its end is cut at."""
    places = places_of(text) if _STEPS.search(text) else []
    said = text[places[0].start : places[0].end] if len(places) == 1 else ""
    return f"step at the rake with {said} exposure" if said else ""


def other_laps(text: str, last: Asked) -> str:
    """Another lap, whoever wants it: foot laps."""
    found = _LAPS.fullmatch(text)
    said = "one foot" if found is not None and found["n"].lower() == "foot" else found["n"] if found is not None else ""
    return f"lap {said}" if said and whole(said) else ""


def other_moisture(text: str, last: Asked) -> str:
    """From what moisture to what the same board goes."""
    found = _DRIES.fullmatch(text)
    return f"from {found['n']} to {found['m']}" if found is not None and whole(found["n"]) and whole(found["m"]) else ""


def so_many_courses(text: str, last: Asked) -> str:
    """How many courses there are to be, the exposure being allowed to be more for it."""
    found = _STRETCH_SO.fullmatch(text)
    return f"what with {found['count']} courses" if found is not None and whole(found["n"]) and whole(found["count"]) else ""


def common_beside(text: str, last: Asked) -> str:
    """The common rafter of the same run, after a hip: what's the common next to it."""
    return "how long is the common on that run" if _COMMON_BESIDE.fullmatch(text) else ""


def corner_in_pieces(text: str, last: Asked) -> str:
    """The corner that was just worked, turned in so many pieces: if I go round that one in three pieces, saw at what."""
    found = _IN_PIECES.fullmatch(text)
    return f"that corner in {found['n']} pieces" if found is not None and whole(found["n"]) and len(numbers_in(text)) == 1 else ""


def left_open(text: str, last: Asked) -> str:
    """How far the corner just worked stands open where both pieces are cut at another setting: left it at 45 on 5 1/2 base."""
    found = _LEFT_AT.fullmatch(text)
    return f"how far open on a {found['face']} face if both pieces are cut at {found['at']}" if found is not None else ""
