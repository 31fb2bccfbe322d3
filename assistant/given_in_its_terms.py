"""One given of a question told in words of the job, in the terms of its topic: "start them at 15 1/4" is the first mark, "if it
cools to fifteen with the humidity still the same" the temperature, "could I stretch it to 7 1/2 at the most" the greatest
exposure.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.heard_all import unheard
from assistant.metric_talk import any_metric
from assistant.said_over import number_in, places_of, whole
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Length

if TYPE_CHECKING:
    from assistant.pending import Asked

LEAD = (
    r"\W*(?:(?:and|so|ok|okay|right|then|but|now|well|oh|ah|no|sorry|wait|hang on|hold on|actually|also|what if|what about|say"
    r"|how about|suppose|if|when|we|i|they|you|he|she|could|can|would|should|let['’]?s|please|just|did|do|had"
    r"|have)\b\W*|['’]d\b\W*)*"
)
AGAIN = r"(?:[, ]+(?:instead|then|now|please|after all|again))*\W*"
_FIRST_MARK = expression(  # start em at 15 1/4 instead
    rf"{LEAD}(?:start|starting|begin|beginning|kick off|pull|lay (?:it|them|'?em) out)(?:ing)?"
    r"(?: (?:it|them|'?em|that|those|the (?:layout|marks|row|first (?:one|mark|stud))|off|out))* (?:at|from|on|with)"
    rf" (?P<n>[^,;?]+?){AGAIN}",
    re.IGNORECASE,
)
_PAST = expression(  # how long a ladder gets me 3 ft past the edge there
    r"\W*(?:(?:and|so|ok|then|now|but)\W+)*(?:how long(?:['’]?s| is| of)? (?:an?|the|my) ladder|what (?:size |length )?ladder"
    r"|which ladder)(?: [a-z']+){0,6}? (?P<n>\S+(?: ?(?:foot|feet|ft|['’]|yards?|met(?:re|er)s?|mm?))?)"
    r" (?:past|above|over|beyond|up past|proud of|clear of)(?: [a-z']+){0,4}\W*",
    re.IGNORECASE,
)
_SIDES = ("left", "right")
_AS_WORKED = 36  # inches past the landing, for which the page tells how long the ladder is
_LAID_OUT = expression(
    rf"{LEAD}(?:lay|set|space|put|mark)(?: (?:it|them|'?em|those|the (?:studs|joists|rafters|jacks|straps|battens)))? out"
    rf"(?: (?:at|on|to))?(?: an?)? (?P<n>[^,;?]+?)(?: cent(?:re|er)s?| on cent(?:re|er)| o\.?c\.?)?{AGAIN}",
    re.IGNORECASE,
)
_CUT_AT = expression(  # and if I'd cut the two of them at 44, how far open then
    rf"{LEAD}cut(?: (?:the )?(?:two|both|pair|boards|pieces|lot|them|it|each)(?: (?:of them|boards|pieces"
    rf"|of those))?)? (?:at|to|on)"
    r" (?P<n>[^,;?]+?)(?: degrees)?(?:[,;]? (?:and )?how (?:far|wide|much)(?: (?:open|apart|is it|would it be|gap|off|of a gap))*"
    r"(?: (?:then|now|would that be|is that|be))*)?"
    rf"{AGAIN}",
    re.IGNORECASE,
)
_STRETCH = expression(  # could I stretch it to 7 1/2 at the most on that wall, what would it come to
    rf"{LEAD}(?:stretch|go|run|push|open|let|take)(?: (?:it|them|that|the (?:exposure|reveal|courses)))?(?: (?:out|up|on))?"
    r" (?:to|as (?:far|much|big) as|up to) (?P<n>[^,;?]+?)"
    r"(?: (?:at (?:the )?most|at max|max(?:imum)?|tops|exposure|reveal|on (?:that|this|the) (?:wall|one|side)|there))*"
    rf"{AGAIN}(?:(?:and |so )?what(?:['’]?s| is| would| does| do| will)?(?: (?:it|that|i|they|the (?:exposure|reveal|courses)))?"
    r"(?: (?:be|come|comes|work|works|get|end|out|to|up|at|with|then|even))*)?\W*",
    re.IGNORECASE,
)
_TAPED = expression(  # tape says 9'1" on this side. exposure there
    rf"{LEAD}(?:hm+\W+)?(?:the |my )?(?:tape|wall|that side|this side|other side)(?:['’]s)?(?: (?:says?|reads?|taped?|measures?"
    r"|measured|came|comes|comes out|taped out|is|at|only|really|to|out))* (?P<n>[^,;?.]*?\d[^,;?.]*?)(?: (?:on|over|at"
    r"|for) (?:this|that|the)"
    r"(?: (?:other|far|back|front))? (?:side|wall|end|one))?[,;.]? (?:so |and )?(?:what(?:['’]?s"
    r"| is)? )?(?:the )?(?:exposure|reveal)"
    r"(?: (?:there|here|then|now|on it|for that|on that|is that))*\W*",
    re.IGNORECASE,
)
_IS_THE_MOST = expression(  # what exposure do I end up with if 7 is the max
    r"[^\d]*?\bif (?P<n>[^,;?]+?)(?:['’]s| is| was) (?:the |my |our )?(?:max(?:imum)?|most|greatest|limit"
    r"|biggest)(?: [a-z']+){0,3}\W*",
    re.IGNORECASE,
)
_NONE_OVER = expression(  # no row can be over 305 mind, that's the most; 300's the most a row can be
    rf"(?:{LEAD}(?:no|none|nothing)(?: (?:of (?:them|the [a-z]+)|rows?|courses?|boards?|reveals?|exposures?|one"
    r"|tiles?|(?:can|to|should|must|may|is|be|show|go|goes|come|comes|out|at)))*"
    r" (?:over|more than|above|bigger than|past|higher than|deeper than|wider than|exceeding) (?P<n>[^,;?]+?)"
    r"|(?P<m>[^,;?]+?)(?:['’]?s| is| was) (?:the |my |our )(?:max(?:imum)?|most|biggest|limit)"
    r"(?: (?:a|the|any|one)? ?(?:row|course|board|reveal|exposure|tile|it|that|they) (?:can|may|should|will) (?:be|go|show))?)"
    r"(?: (?:mind|though|now|then|each|tall|high|deep|exposed|to the weather))*(?:[,;. ]+that['’]?s (?:the|my|our) (?:most"
    r"|max(?:imum)?"
    r"|limit)(?: (?:allowed|it can be))?)?\W*",
    re.IGNORECASE,
)
_LONGER = 24  # times as long as what it falls is what falls, at the least
_FALLS_SO = expression(rf"{LEAD}(?:at |with |make it |it['’]s |falls? |drops? )?(?:an? )?(?P<n>[^,;?]+?){AGAIN}", re.IGNORECASE)
_BY_THE_RUN = expression(
    r"\b(?:per|in|a|an|every|each|to the|for every|over)\s+(?:\d+ ?)?(?:feet|foot|ft|met(?:re|er)s?|m|yard)\b.*$", re.IGNORECASE
)
_OUT_SO_FAR = expression(  # what if I only pour it 11 feet out; suppose it stops at 9 foot
    rf"{LEAD}(?:it |the (?:slab|patio|path|drive|deck|concrete) )?(?:only |just )*(?:pour|poured|run|runs|take|bring|lay|pave"
    rf"|build"
    r"|go|goes|come|comes|carry|stretch|stop|stops|stopped|end|ends)(?: (?:it|them|that|the (?:slab|patio|path|drive|deck"
    r"|concrete)))?"
    rf"(?: (?:only|just|out|at|to|back|away|up to|as far as))* (?P<n>[^,;?]+?)(?: (?:out|wide|deep|long|away|back|from the"
    rf" (?:house|wall)))*{AGAIN}",
    re.IGNORECASE,
)
_UP_AT = expression(  # round the back it's 6 m up; the far gable's at 24 foot
    r"\W*(?!(?:how|what|which|is|are|does|will|can|where|why)\b)(?:[a-z]+(?:['’]s)? ){0,6}?"
    r"(?:(?:(?:it|that|gutter|eaves?|gable|edge|top|parapet|fascia|landing|bearing|wall|one|roof|side|back|front)"
    r"(?:['’]?s| is|['’]?ll be| was| (?:rests?|bears?|leans?|sits?|lands?|stands?))|make it|call it|say|it)(?: (?:only|really"
    r"|more like|about))? )"
    r"(?:(?:up )?at )?(?P<n>[^,;?]+?)(?P<up> (?:up|high|off the (?:ground|deck|floor)|tall|above (?:the )?ground))?"
    r"(?: (?:there|now|then|instead|round the back|out front|at the (?:back|front|gable|far end)|on the (?:other|far) side))*\W*",
    re.IGNORECASE,
)
_BOTH_FACES = expression(  # both faces of the wall; inside and outside both, how many feet
    rf"{LEAD}(?:make it|do|with|for|trim(?:med|ming)?|case|it(?:['’]s)?|that(?:['’]s)?|them|on|goes? on| )*\W*"
    r"(?:both (?:faces|sides) (?:of (?:the|that|each|every) walls?|in and out|inside and out(?:side)?)"
    r"|(?:both )?inside and out(?:side)?(?: both)?)(?: (?:then|now|as well|too))*"
    r"(?:[,;]? (?:so )?how (?:many|much)(?: (?:feet|foot|metres|meters|trim|is that|then|now))*)?\W*",
    re.IGNORECASE,
)
_WAS_RIGHT = expression(  # ok 8'11 was right, keep the 7 1/4
    rf"{LEAD}(?:the )?(?P<n>[^,;?]*?\d[^,;?]*?|[a-z -]+?) (?:was|is|were) (?:right|correct|ok|fine"
    rf"|good)(?: (?:all along|after all|the first"
    r" time))?(?:,? (?:and |but )?(?:keep|leave|with|still) (?:the |that |it at |at )?(?P<keep>[^,;?]+?))?\W*",
    re.IGNORECASE,
)
_TAKEN_OUT = expression(  # take out two 3x5 windows n a 6-0 x 6-8 slider
    r"\W*(?:(?:and|so|ok|then|now|but|oh|sorry|well|also)\W+)*(?:(?:i|we)(?:['’]ll| need to| have to| should)? )?(?:forgot to )?"
    r"(?:take|knock|leave|deduct|subtract|lose|drop|cut|pull)(?: me)?(?: (?:out|off|away))? (?P<what>(?:an?|the|one|two"
    r"|three|four|\d) .+?)"
    r"(?: (?:out|off|away))?(?: of (?:that|it))?\W*",
    re.IGNORECASE,
)
_COME_OUT = expression(  # sorry, two windows have to come out of that, each 1.2 by 1.1 metres
    r"\W*(?:(?:and|so|ok|then|now|but|oh|sorry|well|also|wait)\W+)*(?:(?:there(?:['’]s| are| is)|i forgot(?: about)?) )?"
    r"(?P<what>(?:an?|the|one|two|three|four|\d) (?:[a-z]+ ){0,2}?(?P<thing>windows?|doors?|openings?|sliders?))(?: that)?"
    r" (?:(?:has|have|need|needs|ought|got|gotta)(?: got)? (?:to )?(?:come|be taken|be left|go)|comes?|goes?|must come)"
    r" (?:out|off)(?: of (?:that|it|there|the (?:wall|area)))?[,;.]? (?:(?:and |that['’]s |it['’]s |they['’]re "
    r"|which (?:is|are) |at )"
    r"?(?P<each>each )?)(?P<size>.+?)(?P<all> each| apiece)?\W*",
    re.IGNORECASE,
)
_AS_WELL = expression(  # and then the front door as well, that's 900 by 2100 mm
    r"\W*(?:(?:and|so|ok|then|now|but|oh|sorry|also|plus)\W+)*(?P<what>(?:an?|the|one) (?:[a-z]+ )?(?:window|door"
    r"|opening|slider))"
    r" (?:as well|too|also)[,;.]? (?:that['’]s |it['’]s |which is |at |is )?(?P<size>.+?)\W*",
    re.IGNORECASE,
)
_OPENING = expression(r"\b(?:windows?|doors?|sliders?|openings?|vents?)\b", re.IGNORECASE)
_SIZED = expression(r"\d ?['’\"]?\s*(?:x|by|×)\s*\d|\bby\b", re.IGNORECASE)
_ASIDE = expression(r"\bout of\b|\bas well\b|\btoo\b|['’]s\b", re.IGNORECASE)
_AND = expression(r"\s+(?:n|&|\+)\s+", re.IGNORECASE)
_BOARDS_LONG = expression(  # boards are 4.8 long, how many
    rf"{LEAD}(?:the |my |these |those )?(?:boards?|planks?|sticks?|lengths?)(?:['’]?re| are| come| comes| is|['’]s)(?: in| at)?"
    r" (?P<n>[^,;?]+?)(?P<long> long| lengths)?(?:[,;.]? (?:so |and )?how many(?: (?:boards|do i need|is that|then))*)?"
    rf"{AGAIN}",
    re.IGNORECASE,
)
_BOTH_AS_TOLD = expression(  # both sides but only 19 ft each, where both are told already; it's 13'4" each, still the pair
    rf"(?:{LEAD}(?:both(?: sides| cheeks| of them)?|(?:the|that) pair|two sides)[, ]+(?:but |and )?(?:(?:they['’]re"
    rf"|it['’]s|at) )?"
    r"(?:(?:only|just|really) )*(?P<n>[^,;?]+?) (?:each|a side|per side|apiece)"
    r"|(?:[^,;?]*? was wrong,? )?(?:(?:it['’]s|they['’]re|make it|no) )*(?P<m>[^,;?]+?) (?:each|a side|per side"
    r"|apiece)[, ]+(?:but |and )?"
    r"(?:still )?(?:both(?: sides| cheeks| of them)?|(?:the|for the|for both) ?(?:pair|two)?))\W*",
    re.IGNORECASE,
)
_LEFT_OF_IT = expression(
    r"\W*(?:(?:and|so|ok|then|now)\W+)*(?:what(?:['’]?s| is| do i have)?|how much(?:['’]?s| is| of (?:the|that|it))?)"
    r"(?: (?:a|the|coil|is|bit|of))* left(?: over)?(?: (?:of|on|from|off) (?:the |that )?(?:coil|it|roll|width))?"
    r"(?: (?:after|once|when) (?:those|that|them|the strips|i (?:cut|take) (?:those|them)))?(?: then| out)?\W*",
    re.IGNORECASE,
)


def first_mark(text: str, last: Asked) -> str:
    """Where the first mark of a row is to be."""
    said = number_in(_FIRST_MARK, text)
    return f"first mark at {said}" if said else ""


def past_the_landing(text: str, last: Asked) -> str:
    """How long a ladder is that stands three feet over the landing, which the page tells."""
    return "how long a ladder do I need" if _far_past(text) == _AS_WORKED else ""


def past_otherwise(line: str, last: Asked) -> str:
    """What to ask where a ladder is to stand over its landing by what the page does not tell; "" for nothing."""
    far = _far_past(line) if last.topic.name == "ladder footing" else None
    if far in (None, _AS_WORKED):
        return ""
    return "The ladder I work out stands 3 feet past the landing. Say “how long a ladder” for that, or tell me how high it bears."


def _far_past(text: str) -> Fraction | None:
    """How far past its landing a ladder is to stand, in inches: a bare number is of feet."""
    found = _PAST.fullmatch(text)
    places = places_of(found["n"]) if found is not None and whole(found["n"]) else []
    value = places[0].value if places else None
    return value.to("in").value if isinstance(value, Length) else value.value * 12 if value is not None else None


def laid_out_at(text: str, last: Asked) -> str:
    """How far apart what is laid out in a row is: lay em out twenty fours."""
    rows = {"centres", "spacing", "stud spacing"} & {parameter.label for parameter in last.topic.parameters}
    found = _LAID_OUT.fullmatch(text) if rows else None
    size = re.sub(r"(?<=\d)['’]?s$|(?<=[a-z])s$", "", found["n"]) if found is not None else ""
    return f"at {size} centres" if size and whole(size) else ""


def cut_at(text: str, last: Asked) -> str:
    """What the saw was set to for both pieces of a joint: the two of them at 44 are no 2 degrees."""
    said = number_in(_CUT_AT, text)
    return f"cut at {said} degrees" if said else ""


def most_exposed(text: str, last: Asked) -> str:
    """The greatest exposure there may be."""
    found = _STRETCH.fullmatch(text) or _IS_THE_MOST.fullmatch(text)
    over = _NONE_OVER.fullmatch(text)
    said = found["n"] if found is not None else (over["n"] or over["m"]) if over is not None else ""
    return f"no more than {said}" if said and whole(said) else ""


def out_so_far(text: str, last: Asked) -> str:
    """How far out what falls comes."""
    said = number_in(_OUT_SO_FAR, text)
    return f"width {said}" if said else ""


def falls_so(text: str, last: Asked) -> str:
    """How much it falls by the run told before, and no width: 1/2 inch, of a quarter in ten feet."""
    found = _FALLS_SO.fullmatch(text)
    place = whole(found["n"]) if found is not None else None
    width = last.givens["width"].value if "width" in last.givens else None
    told = [getattr(g.value, "text", "") for n, g in last.givens.items() if n != "width" and g.source != "assumed"]
    runs = [run[0] for text_ in told if (run := _BY_THE_RUN.search(text_)) is not None]
    if found is None or place is None or not isinstance(place.value, Length) or not isinstance(width, Length) or len(runs) != 1:
        return ""
    return f"{found['n']} {runs[0]}" if place.value.to("in").value * _LONGER < width.to("in").value else ""


def bears_at(text: str, last: Asked) -> str:
    """How high a ladder bears somewhere else: a length with its unit, or what is said to be up."""
    found = _UP_AT.fullmatch(text)
    place = whole(found["n"]) if found is not None else None
    if found is None or place is None or not (found["up"] or isinstance(place.value, Length)):
        return ""
    return f"make it {found['n']} high"


def both_faces(text: str, last: Asked) -> str:
    """What is trimmed on both faces of the wall."""
    return "inside and out" if _BOTH_FACES.fullmatch(text) else ""


def boards_so_long(text: str, last: Asked) -> str:
    """How long the boards are, of which it is asked how many: no wall is as long as a board."""
    found = _BOARDS_LONG.fullmatch(text) if "board_length" in {p.name for p in last.topic.parameters} else None
    place = whole(found["n"]) if found is not None else None
    if found is None or place is None or not (found["long"] or isinstance(place.value, Length)):
        return ""
    metric = any_metric(last)
    unit = "" if isinstance(place.value, Length) else " m" if metric else " foot"
    return f"how many {found['n']}{unit} boards"


def taped_at(text: str, last: Asked) -> str:
    """How high a wall to be laid in courses was taped."""
    said = number_in(_TAPED, text)
    return f"height {said}" if said else ""


def was_right(text: str, last: Asked) -> str:
    """Back to what a given was, where a number told to be kept is what it is."""
    found = _WAS_RIGHT.fullmatch(text)
    if found is None or not whole(found["n"]) or (found["keep"] and unheard(found["keep"], last.givens.values())):
        return ""
    return f"back to {found['n']}" if isinstance(numbers_in(found["n"])[0].value, Length) else ""


_PUT_A_DOOR = expression(
    r"\W*(?:(?:ok|so|now|then)\W+)*(?:plus|and|also|add|with)\b(?!.*\bwindows?\b).*\bdoors?\b", re.IGNORECASE
)
_DOORS = expression(r"\b(?:(?P<n>an?|one|two|three|four|\d) )?(?:[a-z]+ )?(?P<what>doors?)\b", re.IGNORECASE)
_LEGS_AND_HEAD = expression(
    r"[,;]?\s*(?:with |on )?(?:just |only )?(?:(?:the )?(?:two|2|both) (?:sides|legs) and (?:the |a |one )?(?:head|top)"
    r"|(?:the )?legs and (?:the |a )?head|three sides|no (?:sill|bottom))(?: only| just)?\b",
    re.IGNORECASE,
)


def openings_out(text: str, last: Asked) -> str:
    """What is taken out of a wall told by its sizes, each with its own; of an area that was told it may be out already."""
    if "area" in last.givens:
        return ""
    found = _TAKEN_OUT.fullmatch(text)
    if found is not None:
        sized = _OPENING.search(found["what"]) and _SIZED.search(found["what"]) and not _ASIDE.search(found["what"])
        return f"less {_AND.sub(' and ', found['what'])}" if sized else ""
    come, well = _COME_OUT.fullmatch(text), _AS_WELL.fullmatch(text)
    if come is not None and _SIZED.search(come["size"]):
        each = " each" if come["each"] or come["all"] else ""
        return f"less {re.sub(r'^the ', 'a ', come['what'], flags=re.IGNORECASE)} {come['size']}{each}"
    if well is not None and _SIZED.search(well["size"]):
        what = re.sub(r"^(?:the|one|an?) (?:[a-z]+ )?", "a ", well["what"], flags=re.IGNORECASE)
        return f"and {what} {well['size']}"
    return ""


def door_as_usual(text: str, last: Asked) -> str:
    """A door put to windows that are trimmed on all sides, without the words that say what is trimmed of any door."""
    sides, found = last.givens.get("sides"), _LEGS_AND_HEAD.search(text)
    said = sides is not None and sides.source != "assumed" and getattr(sides.value, "name", "") == "THREE"
    put = _PUT_A_DOOR.match(text) if found is not None and not said else None
    if put is None or found is None:
        return ""
    rest = text[: found.start()] + text[found.end() :]
    places, many = places_of(rest), _DOORS.search(rest)
    sizes = [place for place in places if place.words not in (("one",), ("a",), ("two",)) or place.value.unit != "none"]
    if len(sizes) == 2 and many is not None and sizes[0].start > many.end():
        return f"plus {many['n'] or 'a'} {many['what']} {rest[sizes[0].start : sizes[1].end]}"
    return rest


def each_side(text: str, last: Asked) -> str:
    """How long each of two sides is, where it was told that there are two."""
    found = _BOTH_AS_TOLD.fullmatch(text) if "sides" in last.givens or last.times == len(_SIDES) else None
    said = (found["n"] or found["m"]) if found is not None else ""
    return f"length {said}" if said and whole(said) else ""


def left_of_the_coil(text: str, last: Asked) -> str:
    """What is left of a coil's width once its strips are cut."""
    return "what's left over" if _LEFT_OF_IT.fullmatch(text) else ""
