"""How people without the terms say which way a length of a slope goes, and which part of it they ask for.

Each is of a line in which every quantity stands as the letter of its kind: L for a length, A for an angle, P for a pitch.
"""

from __future__ import annotations

from intents.expressions import expression

_SLOPED = r"(?:slope|slant|incline|roof|rafters?|rake|ramp|hill|bank)"
_LINE = r"(?:rafter|slope|sloped|slant|rake)"
_IS = r"(?: (?:of|is|about|at|by|up|down|only|just|a|an|in|all|out|comes|to|the))*"
_LEANS = (
    r"(?:rafters?|struts?|ropes?|guys?|wires?|cables?|planks?|braces?|props?|poles?|sticks|boards?|sheets?|panels?|legs|ladders?"
    r"|rakers?|stays?|kickers?|arms?|ramp)"
)
_POSTS = r"(?:pole|post|mast|flagpole|tree|wall|stake|pier)"
_FROM = r"(?:from|of|off)"
# Which way the length at the @ goes, the surest first.
_CLIMBS = r"(?:rises?|rising|climbs?|climbing|drops?|dropping|falls?|falling|lifts?|gains?|stands|(?:comes|goes) (?:up|down))"
RISE = expression(
    rf"\b{_CLIMBS}(?: the)?(?: wall| post)?{_IS} @(?! (?:out|off|away|back|level|long|from)\b)"
    rf"|@ (?:up|above|higher?|tall)\b(?! (?:the |its )?{_SLOPED})|@ over the (?:wall )?plates?\b"
    rf"|@ (?:down|up|along) the {_POSTS}\b|@ over L\b"
    rf"|@ (?:of )?(?:rise|climb|drop|fall|height)\b|@ (?:tall |high )?{_POSTS}\b"
    rf"|^(?:so |if |and )?(?:the |its |my |a )?(?:rise|drop|climb|fall|height)\b[^,.;?LAP]* (?:is|of|comes to) @"
)
RUN = expression(
    rf"\bover @(?! (?:the|a) )|@ (?:out|off|away|level|flat|back|across|apart|over)\b(?! the (?:wall )?plate)"
    rf"|@ (?:in|back) {_FROM} |@ in(?= (?:,|and|at|on|\.|\?|$))|@ in$"
    rf"|@ (?:of|on|along) (?:the |a )?(?:level|flat|ground|floor|plan|base)\b|@ of (?:run|ground|floor|level)\b"
    rf"|@ from (?:it|its|the|that|my) (?:foot|base|wall|post|pole|bottom|middle|level|plate)\b"
    rf"|\b(?:goes?|comes?|sticks?|reach(?:es)?|stands?|juts?|runs?|lands?|sits?) (?:in|out|across|back|over|off|along) @"
    rf"|\b(?:run|runs|running){_IS} @ (?:level|flat|across|on the (?:level|flat|ground))\b|\bon the level @"
    r"|\b(?:drop|dropp|ris|fall|climb)\w* L (?:in|for|per|every) @"
    rf"|^(?!.*\bpitch\b).*\brun(?: is| of)? @|\b(?:length|{_SLOPED}) (?:for|on) @"
)
SLOPE = expression(
    rf"@ (?:long )?{_LEANS}\b(?! (?:and|up|out|length|line))|\b(?:up|along|down) the {_SLOPED}(?: \w+){{0,1}} @"
    rf"|@ (?:long |measured |taped )?(?:up|along|down) (?:the |its )?{_SLOPED}\b|\b{_LEANS}(?: is)? @ (?:long )?(?=lean|meet)"
    rf"|\b{_LINE} length(?: is| of| at)? @(?! of (?:rise|run))|\b(?:my|the) rafter(?: is)? @(?! of )"
)
# What asks for which part.
_DOES = r"(?:does|do|will|would|did|is|of a)(?: (?:it|they|that|the \w+))?"
HIGH = expression(
    rf"\bhow (?:high|tall|far up|far down)\b(?! (?:the |its |this )?{_SLOPED})"
    rf"|\bhow much (?:higher|taller|lower)\b|\bhow much {_DOES} (?:climb|rise|drop|fall|lift|go up|come up)\b"
    r"|(?:, |what is )(?:the )?(?:rise|climb|drop|height)(?: (?:at|of|to) (?:the )?\w+)?[ ?.]*$"
)
_FAR_UP = rf"\bhow far (?:up|down|along) (?:the |its |this )?{_SLOPED}(?: is (?:it|that))?(?= (?:from|to|,|\?|\.)|$)"
LONG = expression(
    r"\bhow long\b(?!(?: is| does)? (?:the |its )?(?:run|base|rise)\b)(?!.*\b(?:ago|take|takes|will it)\b)|\bwhat length\b"
    rf"|{_FAR_UP}|\blength (?:along|up|on) (?:the |its )?{_SLOPED}\b|\blength of (?:the |that )?{_LEANS}"
    r"|\bhow much (?:rope|wire|cable|line|chain|guy)\b|\bthe slant\b(?! \w)|\bthe slant of\b"
    r"|(?:, |and )(?:the )?(?:rafter|slant|slope|strut|brace) (?:line|length)[ ?.]*$"
    rf"|\b{_LINE} length\b(?!(?: is| of| at)? L)"
)
OUT = expression(
    r"\bhow long (?:is |does )?(?:the |its )?(?:run|base)\b|\bhow far (?:out|in|off|back|away)\b"
    r"|\bhow much (?:run|ground|floor)\b|\bwhat is the run\b|, (?:the )?(?:level )?run[ ?.]*$"
)
STEEP = expression(
    r", (?:the )?angle[ ?.]*$|\bhow steep\b(?!.*percent)|\b(?:what|which|what is the|find the) angle\b"
    r"|\b(?:in|many|how many|what) degrees?\b"
)
GRADE = expression(r"\b(?:percent|percentage|grade)\b")
# What tells that two things alike lean on each other, so that what is told of both is twice the run.
TENT = expression(r"\blean\w* (?:against|on|in on) each other\b|\blean\w* together\b|\beach other\b|\bmeet(?:s|ing)?\b")
APART = expression(r"@ (?:apart|between|across|from foot to foot)\b")
LOW_TO_HIGH = expression(
    r"@ (?:high|tall)\b|@ at (?:the |one |its )?(?:low|high|short|tall|back|front|other)\b"
    r"|\b(?:starts?|ends?|goes|from|to)(?: at)? @"
)
# What runs from the corner of the building up to the ridge is a hip.
HIP = expression(r"\bcorner (?:\w+ ){0,3}(?:up )?to (?:the )?(?:ridge|peak|top)\b")
NOT_OF_IT = expression(
    r"\b(?:gables?|overhangs?|hips?|valleys?|jacks?|courses?|squares?|area|exposure|fascia|miter|mitre|bevel|diagonal"
    r"|corner to corner|boxes|span|spans|wide|width|radius|arch|ladder|total|left|minus|less|plus|tape|middle of|centres?|spacing"
    r"|square feet|miters?|cuts?|waste|price|cost|weigh|weight|panels? cover|soffit|stock|stick)\b"
)
