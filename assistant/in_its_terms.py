"""What a line tells of the question before in words of the job, in the terms of its topic: "what if the pickets were 2 inch" is
how wide a piece is, "inspector wants 1/150" the ratio, "I was reading the tape wrong, it's 2208" the diagonal as measured.

Each is of one topic, or of those with one given, and tells one number alone; what tells more is read as it is.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.air_in_its_terms import as_it_freezes, cools_to, each_vent, on_a_surface, open_by_the_foot
from assistant.counts_in_its_terms import (
    at_each_place,
    boxes_of,
    from_footers,
    more_counted,
    other_sheets,
    packed_so,
    so_long,
    so_many_needed,
    so_many_rows,
    so_many_spaced,
    so_many_sticks,
    sticks_for_so_many,
    those_from,
)
from assistant.cuts_in_its_terms import more_forgotten, other_sticks, pieces_so_long, short_or_long_ones, some_made
from assistant.frame_in_its_terms import as_measured, other_frame, the_long_side, true_with
from assistant.given_in_its_terms import (
    bears_at,
    boards_so_long,
    both_faces,
    cut_at,
    door_as_usual,
    each_side,
    falls_so,
    first_mark,
    laid_out_at,
    left_of_the_coil,
    most_exposed,
    openings_out,
    out_so_far,
    past_the_landing,
    taped_at,
    was_right,
)
from assistant.leans_rows import wall_under
from assistant.next_in_its_terms import (
    bite_of,
    common_beside,
    corner_in_pieces,
    end_to_end,
    in_footers,
    layer_back,
    layer_so_thick,
    left_open,
    member_of,
    more_of_it,
    nicer_with,
    no_layer,
    other_laps,
    other_moisture,
    retaped,
    so_far_apart,
    so_many_courses,
    step_again,
    tail_of,
)
from assistant.openings_in_its_terms import counted_after, openings_otherwise
from assistant.rate_in_its_terms import rate_of
from assistant.rather_than import instead_of, only_the_new
from assistant.ratio_told import ratio_in
from assistant.said_over import number_in, places_of, stem, times_apart, whole
from assistant.shape_in_its_terms import SLOPES, area_in_it, by_radius, corner_inside, in_twelve, outside_or_in, radius_over
from assistant.slope_in_its_terms import eave_on_it, end_cut_of_it, going_of_it, ridge_of_it
from assistant.spaced_in_its_terms import (
    between_ends,
    courses_instead,
    eaves_forgotten,
    fascia_is,
    gap_of,
    laid_in_fives,
    long_at,
    on_top_of_it,
)
from assistant.who_says_so import opened
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Area, Length, Number, Temperature, Weight

if TYPE_CHECKING:
    from assistant.pending import Asked

_LEAD = (
    r"\W*(?:(?:and|so|ok|okay|right|then|but|now|well|oh|ah|no|sorry|grand|great|wait|hang on|hold on|actually|also|what if"
    r"|what about|how about|say|suppose|supposing|if)\W+)*"
)
_SO_WIDE = expression(  # of pieces in a row: what if the pickets were 2 inch
    rf"{_LEAD}(?:(?:the|those|these|my|our|all the) )?(?P<thing>[a-z]+?)(?: (?:were|was|are|is|came(?: in)?(?: at)?"
    rf"|come)|['’]s|['’]re)"
    r" (?:only |actually |really )?(?P<n>[^,;?]+?)(?: (?:wide|across|thick))?(?: (?:instead|then|each))?\W*",
    re.IGNORECASE,
)
_PIECES = frozenset("picket slat baluster spindle board piece bar rail batten upright louver louvre".split())
_ASKS_EXPOSURE = expression(  # what would the exposure be with twenty two
    rf"{_LEAD}(?:what|how (?:much|big|large))(?:['’]?s|['’]?d| is| would| will| does| do)?(?: (?:the|my|each|i|we))?"
    r" (?:exposure|reveal|gauge|course)s?(?: (?:be|come to|come out at|work out(?: at)?|get|is|have))*"
    r" (?:with|at|for|on|in|using|if (?:there (?:were|was|are)|it (?:were|was)|i (?:did|do|had|have|went|go)(?: with| to)?))"
    r" (?P<n>[^,;?]+?)(?: of (?:them|those|'?em)| courses| rows)?(?: (?:instead|then))?\W*",
    re.IGNORECASE,
)
_IN_IT = expression(  # theres a patio door in it 6 foot by 6 foot 8, take that out
    rf"{_LEAD}(?:there(?:['’]?s|['’]?ll be| is| are| was| will be)(?: also)?|(?:it|that|the|that wall"
    rf"|the wall)(?:['’]s| has)(?: got)?"
    r"|it['’]?s got|(?:i|we)['’]?(?:ve| have)?(?: got| have)?|(?:i |we )?forgot(?: about)?|got)"
    r" (?P<n>an?|the|one|two|three|four|\d) (?:[a-z]+ ){0,2}?(?P<what>doors?|windows?|openings?|sliders?)"
    r"(?: (?:in|on)(?: (?:it|there|that(?: one| wall)?|the wall|this wall))?)?,?(?: (?:that['’]?s|which is|is|at|of))? "
    r"(?P<size>[^,;]*?(?:by|x|×)[^,;]*?)(?: each)?(?P<each>,? each)?(?: in (?:it|there))?"
    r"[,;.]? (?:(?:and|so) )?(?:(?:can you |please )?(?:take|leave|knock|deduct|drop|subtract|lose)(?: (?:it|that|them|those))?"
    r"(?: (?:out|off|away))?(?: (?:of|from) (?:it|that))?|(?:it|that|they|them)(?:['’]?s| comes?| has| have| needs?)? (?:to )?"
    r"(?:come |comes |coming )?(?:out|off)|less (?:that|it|them))\W*",
    re.IGNORECASE,
)
_STICKS = expression(  # got five of those, so how many bars altogether
    rf"{_LEAD}(?:(?:i|we)(?:['’]?(?:ve|d)| have| had)? )?(?:got|have|with|there(?:['’]?s| are)) (?P<n>\d{{1,2}}|[a-z]+) of"
    r" (?:those|them|these|'?em)(?: (?P<long>[^,;?]{1,24}? (?:foot|ft|met(?:re|er)|m|mil|mm)))?"
    r"(?: (?:lengths|sticks|bars|battens|boards))?[, ]+(?:and |so |then )*"
    r"(?:how many (?P<what>[a-z]+)(?: (?:is|are|do|will|would|can) (?:that|it|i|we|there)(?: (?:get|make|cut|have))?)?"
    r"(?: (?:altog[a-z]+|in all|all told|in total|total|all up|then))*"
    r"|(?P<all>[a-z]+) (?:altog[a-z]+|in all|all told|in total|total|all up))\W*",
    re.IGNORECASE,
)
_EASED = expression(  # ease it to 7 degrees
    rf"{_LEAD}(?:(?:i|we)(?:['’]ll|['’]d)? )?(?:ease|knock|slacken|steepen|flatten|lay|tip|tilt|trim|nudge|bump|wind|back|shift)"
    r" (?:it|that)(?: (?:off|down|up|back|out|over|in))? to (?P<n>[^,;?]+?)\W*",
    re.IGNORECASE,
)
_SAME_COUNT = expression(  # and the same number of 12 mil at 25 and a half kilo
    rf"{_LEAD}(?:the )?same (?:number|amount|count|again|quantity|many)(?: again)? (?:of|in) [^,;?]*? at (?P<n>[^,;?]+?)"
    r"(?: (?:each|apiece|a (?:sheet|board|piece|bag|length)))?\W*",
    re.IGNORECASE,
)
_ONLY_PART = expression(  # we're only counting 900 sq ft of it
    rf"{_LEAD}(?:(?:i|we|they|you)(?:['’](?:re|m|ll))?(?: are| am| will)?) (?:only |just )?(?:be )?(?:counting|doing"
    rf"|covering|venting"
    r"|cladding|siding|boarding|count|do|cover)(?: only| just)? (?P<n>[^,;?]+?) (?:of (?:it|that|them)|in the end|after all)\W*",
    re.IGNORECASE,
)
_ALL_ROUND = expression(  # with a one foot overhang all the way around
    rf"{_LEAD}(?:(?:with|at|allow|add|give it|there(?:['’]?s| is)|it['’]?s got"
    rf"|it has) )?(?:an? )?(?P<n>[^,;?]+?) (?:of )?(?:overhang|eaves?)"
    r"(?: all)?(?: the way)? (?:around|round|both ways)(?: (?:it|the roof|the house))?\W*",
    re.IGNORECASE,
)
_PLACES = {
    word: at
    for at, word in enumerate(
        "first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth fifteenth"
        " sixteenth seventeenth eighteenth nineteenth twentieth".split(),
        1,
    )
}
_NTH = expression(  # and the twenty first course
    rf"{_LEAD}(?:to |for |at )?(?:the )?(?:top of )?(?:the )?(?P<nth>\d{{1,3}}(?:st|nd|rd|th)"
    rf"|(?:[a-z]+[ -])?(?:{'|'.join(_PLACES)}))"
    r"(?: (?:one|course|row))?\W*",
    re.IGNORECASE,
)
_CLIMBS = expression(  # if the humidity climbs to 80
    rf"{_LEAD}(?:when )?the (?P<what>[a-z]+)(?:['’]s)? (?:climb(?:s|ed)?|ris(?:es|en)|rose|drop(?:s|ped)?|f[ae]ll(?:s"
    rf"|en)?|go(?:es|ne)?"
    r"|went|gets?|got|come|comes|came|creeps?|crept)(?: (?:up|down|back|out))? to (?P<n>[^,;?]+?)\W*",
    re.IGNORECASE,
)
_BOX_OF = expression(
    r"\b(?:tub|box|bag|pack|packet|bucket|pail|carton|jar|tin|case|bundle|sack|drum)(?:e?s)? of (?P<n>\d+|[a-z]+(?: [a-z]+)?)\b",
    re.IGNORECASE,
)
_IN_A_BOX = expression(  # and if there's 250 in a box
    rf"{_LEAD}(?:(?:what if|if|when|say|with|and) )*"
    r"(?:(?:there|it|they)(?:['’]?s|['’]?re| is| are| were| was| come)? )?(?:only )?"
    r"(?P<n>\d+|[a-z]+(?: [a-z]+){0,2}?) (?:in|to|per) (?:an?|each|every|the) (?:box|pack|packet|tub|pail|carton|bag)\W*",
    re.IGNORECASE,
)
_ROLL = expression(r"\broll\b", re.IGNORECASE)
_DOWN_THERE = expression(r"[ ,]+(?:down|up) (?:there|here)(?=\W*$)", re.IGNORECASE)
_COMES_TO = expression(  # what's it come to at one to one fifty
    r"^\W*(?:(?:and|so|then|ok|now)\W+)*(?:what(?:['’]?s| is| does| would| will)?|how much(?:['’]?s| is| would)?)(?: (?:it"
    r"|that|they))?"
    r"(?: (?:come|comes|work|works|be|out|up|to|at|then))*(?= )",
    re.IGNORECASE,
)
_WITH_SO_MANY = expression(
    r"\W*(?:(?:and|so|ok|then|now|or|but)\W+)*(?:(?:what|how much)(?:['’]?s| is| would| will)? (?:it|that|they"
    r"|each)(?: be| come to)? )?"
    r"(?:(?:what about|how about|what if (?:it['’]?s|there (?:were|was|are)|i (?:did|do))|with|at|for|if (?:it was"
    r"|i did|i do)|make it)"
    r" )?(?P<n>[^,;?]+?)(?: (?:instead|then))?\W*",
    re.IGNORECASE,
)
_OF_A_FACE = ("ft2", "m2", "square")  # and not what one vent lets through
_TWICE, _MOST_EXPOSED = 2, 16  # times as large as an exposure is; inches that one is at most
_APART = 1.5  # times as many courses, of a count that is near to what there were


def in_its_terms(text: str, last: Asked) -> str:
    """The line in the terms of the topic before it, which was answered; "" where it stands for nothing else."""
    if not last.record.get("answer"):
        return ""
    ways = _BY_TOPIC.get(last.topic.name, ())
    if fuller := next((fuller for way in ways if (fuller := way(text, last))), ""):
        return fuller
    if eased := number_in(_EASED, text):
        return f"make it {eased}"
    climbs = _CLIMBS.fullmatch(text)
    labels = {stem(word) for parameter in last.topic.parameters for word in parameter.label.split()}
    if climbs is not None and whole(climbs["n"]) and stem(climbs["what"].lower()) in labels:
        return f"with the {climbs['what']} at {climbs['n']}"
    has_openings = any(parameter.name == "openings" for parameter in last.topic.parameters)
    opened = _IN_IT.fullmatch(text) if has_openings else None
    if opened is not None and numbers_in(opened["size"]):
        many = "a" if opened["n"].lower() in ("the", "an", "one") else opened["n"]
        return f"less {many} {opened['what']} {opened['size']}{' each' if opened['each'] else ''}"
    if has_openings and (out := openings_out(text, last) or counted_after(text, last)):
        return out
    if "openings" in last.givens and (many := openings_otherwise(text, last)):
        return many
    if fuller := next((fuller for way in _OF_ANY if (fuller := way(text, last))), ""):
        return fuller
    part = _ONLY_PART.fullmatch(text)
    areas = [g for g in last.givens.values() if isinstance(g.value, Area) and g.value.unit in _OF_A_FACE]
    place = whole(part["n"]) if part is not None else None
    if part is not None and place is not None and isinstance(place.value, Area) and len(areas) == 1:
        return f"make it {part['n']}"
    warm = [given for given in last.givens.values() if isinstance(given.value, Temperature)]
    if len(warm) == 1 and len(numbers_in(text)) == 1:
        return _DOWN_THERE.sub("", text) if _DOWN_THERE.search(text) else ""
    return ""


def _so_wide(text: str, last: Asked) -> str:
    """How wide a piece is: a whole number with no unit may be how many there are."""
    found = _SO_WIDE.fullmatch(text)
    place = whole(found["n"]) if found is not None else None
    thing = stem(found["thing"].lower()) if found is not None else ""
    if found is None or place is None or "width" not in last.givens or (thing not in last.things and thing not in _PIECES):
        return ""
    sized = isinstance(place.value, Length) or place.value.value.denominator != 1
    return f"pieces {found['n']} wide" if sized and thing in _PIECES else ""


def _so_many_courses(text: str, last: Asked) -> str:
    """How many courses there are to be, where the exposure is what is asked."""
    found = _ASKS_EXPOSURE.fullmatch(text) or _WITH_SO_MANY.fullmatch(text)
    place = whole(found["n"]) if found is not None else None
    if found is None or place is None or place.value.unit != "none" or place.value.value.denominator != 1:
        return ""
    if found.re.pattern == _WITH_SO_MANY.pattern and not _more_like_courses(place.value.value, last):
        return ""
    return f"what with {found['n']} courses" if place.value.value > 1 else ""


def _more_like_courses(number: Fraction, last: Asked) -> bool:
    """Whether a bare number is near to how many courses there were, and twice as large as any of them is in inches."""
    lines = [last.record["answer"], *last.record["also"]]
    courses = [float(line["value"]) for line in lines if line["name"] == "courses" and line["value"]]
    given = last.givens.get("exposure")
    inches = [float(given.value.to("in").value)] if given is not None and isinstance(given.value, Length) else []
    inches += [float(line["value"]) for line in lines if line["name"] == "exposure" and line["unit"] == "in" and line["value"]]
    return (
        len(courses) == 1
        and bool(inches)
        and times_apart(number, Fraction(courses[0])) <= _APART
        and float(number) > max(_MOST_EXPOSED, _TWICE * max(inches))
    )


def _by_ratio(text: str, last: Asked) -> str:
    """The ratio that a line tells, whoever wants it."""
    told = ratio_in(_COMES_TO.sub("", text))
    return f"make it {told}" if told else ""


def _sticks_in_all(text: str, last: Asked) -> str:
    """So many of the sticks, whose pieces are asked for; not where it is sticks that are asked."""
    found = _STICKS.fullmatch(text)
    said = "four" if found is not None and found["n"].lower() == "for" else found["n"] if found is not None else ""
    if found is None or not whole(said) or stem((found["what"] or found["all"]).lower()) in ("stick", "length", "board"):
        return ""
    place, stock = whole(found["long"]) if found["long"] else None, last.givens.get("stock")
    if found["long"] and not (place and stock and isinstance(stock.value, Length) and _as_long(place.value, stock.value)):
        return ""  # of those, which are others
    return f"{said} of those sticks"


def _as_long(one: object, other: Length) -> bool:
    return isinstance(one, Length) and one.to("in").value == other.to("in").value


def counted_to(nth: str) -> str:
    """How many there are up to the one that a word of its place tells: the seventh, the 7th, the twenty first."""
    tens, _, one = nth.lower().replace("-", " ").rpartition(" ")
    digits = re.match(r"\d+", one)
    counted = int(digits[0]) if digits else _PLACES.get(one, 0)
    more = numbers_in(tens)
    if tens and (len(more) != 1 or not isinstance(more[0].value, Number) or not counted):
        return ""
    return str(int(more[0].value.value) + counted if tens else counted) if counted else ""  # type: ignore[union-attr]


def _up_to_the_nth(text: str, last: Asked) -> str:
    """How many courses there are up to the one told: and the twenty first."""
    found = _NTH.fullmatch(text)
    count = counted_to(found["nth"]) if found is not None else ""
    return f"make it {count} courses" if count else ""


def _overhang_round(text: str, last: Asked) -> str:
    """The overhang of a roof, all round as it is taken."""
    said = number_in(_ALL_ROUND, text)
    return f"with {said} overhang" if said else ""


def _each_otherwise(text: str, last: Asked) -> str:
    """What each weighs or costs of as many others."""
    found = _SAME_COUNT.fullmatch(text) if "count" in last.givens else None
    place = whole(found["n"]) if found is not None else None
    if found is None or place is None:
        return ""
    return f"and at {found['n']}" if last.topic.name != "weight" or isinstance(place.value, Weight) else ""


def _off_a_coil(text: str, last: Asked) -> str:
    """What a bend is cut from, called a roll: how many of those across a 24 inch roll."""
    return _ROLL.sub("coil", text) if len(_ROLL.findall(text)) == 1 and len(places_of(text)) == 1 else ""


def _so_many_a_box(text: str, last: Asked) -> str:
    """How many a box holds, by what it is called: the big tubs of 350."""
    if said := number_in(_IN_A_BOX, text):
        return f"make it {said} to a box" if "box" in last.givens else ""
    found = _BOX_OF.search(text) if len(places_of(text)) == 1 else None
    count = places_of(found["n"]) if found is not None and "box" in last.givens else []
    return f"make it {float(count[0].value.value):.10g} to a box" if count else ""


def _with_its_wall(text: str, last: Asked) -> str:
    """The gable just worked and the wall under it, together: what do both come to."""
    return next((plain.line for plain in wall_under(opened(text.strip(" .!?").replace("’", "'")), last)), "")


_OF_ANY = (only_the_new, instead_of, in_footers, packed_so, laid_out_at, those_from, was_right, more_of_it, retaped, end_to_end)
_BY_TOPIC = {
    "boxes": (_so_many_a_box, so_many_needed), "by the same rate": (rate_of,),
    "bent flashing": (_off_a_coil,),
    "strips from a coil": (left_of_the_coil, _off_a_coil),
    "equal spacing": (gap_of, _so_wide, so_far_apart, so_many_spaced),
    "rake length": (eaves_forgotten, tail_of, member_of, eave_on_it),
    "sloped length": (tail_of, member_of, eave_on_it, ridge_of_it), "step at the rake": (end_cut_of_it,),
    "gable height": (member_of,),
    "gable area": (_with_its_wall, member_of),
    "hip or valley length": (common_beside, member_of), "miter for a corner": (corner_in_pieces, left_open),
    "fastener length": (bite_of, no_layer, layer_so_thick, layer_back), "build-out": (no_layer, layer_back),
    "fastener penetration": (layer_back,), "compound cut": (outside_or_in,), "water in a channel": (as_it_freezes,),
    "arc": (radius_over,), "polygon": (nicer_with, corner_inside), "circle": (area_in_it, by_radius),
    **dict.fromkeys(SLOPES, (in_twelve,)), "right triangle": (in_twelve, going_of_it),
    "fall": (out_so_far, falls_so),
    "end cut along the rake": (step_again,),
    "membrane rolls": (other_laps,), "cladding boards": (boards_so_long,),
    "wood movement": (other_moisture,),
    "course layout": (courses_instead, so_many_courses, _so_many_courses, most_exposed, taped_at),
    "vent area": (open_by_the_foot, each_vent, _by_ratio),
    "marks on centre": (first_mark,),
    "step flashing": (each_side,),
    "ladder footing": (past_the_landing, bears_at),
    "dew point": (cools_to, on_a_surface),
    "how far open": (cut_at,),
    "out of square": (true_with, as_measured, the_long_side),
    "square check": (the_long_side, other_frame),
    "pieces from a stick": (from_footers, _sticks_in_all, so_many_sticks, sticks_for_so_many, so_long),
    "sheets": (other_sheets,), "trim round openings": (door_as_usual, both_faces),
    "cut list": (more_forgotten, short_or_long_ones, some_made, pieces_so_long, other_sticks),
    "fasteners": (long_at, at_each_place, so_many_rows, boxes_of),
    "roof area": (_overhang_round, eaves_forgotten), "divide evenly": (between_ends,),
    "rake return": (fascia_is,), "jack rafters": (laid_in_fives,),
    "height of courses": (_up_to_the_nth, on_top_of_it),
    "weight": (_each_otherwise, more_counted), "cost": (_each_otherwise, more_counted),
}
