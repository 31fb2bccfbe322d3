"""Of each topic, the words that ask for a value beside its answer: "how many courses", "which ladder", "does the glass sweat"."""

from __future__ import annotations

Asks = tuple[tuple[str, tuple[str, ...]], ...]

_MANY = r"how many (?:\w+ )?|number of |count of "
_HOW_MANY = r"^\W*(?:and |so )?how many(?:['’]?s| is| are| was)?(?: (?:that|it|those))?\W*$"
_LONG = r"how (?:long|much longer)|wh(?:at|ich) (?:length|size)"
_COURSES = rf"(?:{_MANY})(?:courses|rows|runs|lines|coursing|boards (?:high|up|tall))\b|\bcourse count|\bcourses\?|{_HOW_MANY}"
_HEIGHT = r"\bheight\b|\bhow (?:high|tall)\b|\bhow much (?:does|will) it (?:rise|climb)\b"
_RAKE = r"\bhow long\b[^.;?]*\brakes?\b|\brake length|\brafters?\b|\bsloped? (?:length|side)"
_RAKE += (
    r"|^\W*(?:(?:and|so|then|what'?s|what is|the|run|up|along)\W+)*(?:rakes?|slope)"
    r"(?: (?:for|of|on) (?:that|it|this|them|the gable))*\W*$"
)
_CLIMBS = r"\bhow (?:much|far|high) (?:does|do|will|would) (?:it|that|they) (?:rise|climb|go up|come up)\b"
_LEFT = r"\bleft ?over\b|\bleft\b|\boff-?cuts?\b|\bscrap\b|\bspare\b|\bremain\w*"
_LINEAL = (
    r"\btotal (?:length|feet|footage|metres|meters)|\bline(?:al|ar) f|\bfeet of\b"
    r"|\bhow (?:many|much) (?:feet|foot|metres|meters)\b"
)
_IN_ALL = r"\btotal\b|\bin all\b|\baltogether\b"
_EDGE = (
    r"\b(?:ga?uge|that|it|angle) on the edge\b|\bedge angle|\bbevel gauge"
    r"|\b(?:what|set)\b[^.;?]*\b(?:ga?uge|bevel square|protractor)\b",
    ("edge angle",),
)
_TURN = (r"\b(?:what|how much|how far)\b[^.;?]*\bturns?\b|^\W*(?:the )?turn\b|, turn\b", ("turn",))
_CORNER = (
    r"\b(?:full|whole|included|what) angle\b[^.;?]*\bbetween\b|\bcorner between\b|\bcorner\b[^.;?]*\b(?:inside|between the)\b"
    r"|\b(?:corner|angle|degrees)\b[^.;?]*\bbetween (?:any |the |each )?(?:sides|pieces|legs|boards|members)\b"
    r"|\bcorner angle\b|\bangle (?:of the corner|between (?:the|them|those|both|these))\b"
    r"|\bwhat corner\b|\bdegrees in (?:the|that|each) corner\b"
    r"|^\W*(?:(?:and|so|then|the|what'?s|what is|what are)\W+)*corners?(?: (?:there|then|of (?:it|that|the \w+)))?\W*$",
    ("corner",),
)
# Of each topic: words that ask for a value beside its answer, and the values they ask for (a name, or the first words of it).
ASKED: dict[str, Asks] = {
    # fastening and reach
    "ladder footing": (
        (
            r"\balong (?:the|my|its) (?:ladder|rails?)\b|\bladder\b.*\bto where it (?:bears|rests|touches|lands)\b",
            ("working length",),
        ),
        (
            rf"^(?!.*\balong the (?:ladder|rails?)\b).*\b(?:{_LONG})\b[^.;?]*\bladder"
            r"|\bwh(?:at|ich) ladder|\bladder length|\blength of (?:the |my )?ladder"
            r"|\blanding,? (?:what )?length|^\W*(?:and )?(?:how long|(?:what |which |the )?length(?: of it)?)\W*$"
            r"|\b(?:is|will|would|does)\b(?:[^.;?]|\.\d)*\b(?:enough|reach|do it)\b",
            ("working length", "length for 3 ft past the landing"),
        ),
        (
            r"\bhow far (?:out|off|away|from)\b|\bfoot (?:of it )?out\b|\bwhere (?:does|do) (?:the |its |it['’]?s )?f(?:oot|eet)",
            ("foot out",),
        ),
        (r"\b(?:what|which) angle\b|\bhow steep\b|\bdegrees\b", ("angle, a quarter of the height",)),
    ),
    "fastener length": ((r"\bbuy\b|\bstock(?:ed|s)?\b|\bnext (?:size|length)\b|\bbox\b|\bshelf\b", ("next stocked length",)),),
    # courses and spacing
    "course layout": (
        (_COURSES, ("courses",)),
        (
            r"\bhow much of each (?:board|one|course)\b|\bleft showing\b|\b(?:board|one|course)s? shows?\b"
            r"|\bhow (?:big|high|deep|tall|wide) (?:is|are|does) (?:each|every|the course)|\b(?:big|high|deep|tall) each\b",
            ("exposure",),
        ),
    ),
    "courses to openings": (
        (_COURSES, ("courses",)),
        (r"\b(?:below|under|beneath) (?:the )?(?:sill|window|opening)", ("exposure bottom to sill", "courses bottom to sill")),
        (r"\b(?:above|over) (?:the )?(?:head|window|opening)", ("exposure head to top", "courses head to top")),
    ),
    "gable courses": (
        (_COURSES, ("courses",)),
        (rf"{_IN_ALL}|{_LINEAL}|\bhow much (?:board|siding|cladding)", ("total length",)),
        (r"\bhow many (?:boards|sticks|lengths|\d+s)", ("boards in all",)),
        (
            r"(?=.*\beach end|.*\bper end|.*\bone end)(?:.*\bhow much shorter|.*\bshortens?\b|.*\bstep\b)",
            ("shorter at each end",),
        ),
        (
            r"^(?!.*\b(?:each|per|one) end)(?:.*\bhow much shorter|.*\bshortens?\b|.*\bstep\b)",
            ("shorter each course",),
        ),
    ),
    "end cut along the rake": (
        (r"\bsaw\b", ("saw setting",)), (r"\bsteps?\b|\bshorter\b|\bper course\b", ("step per course",)),
    ),
    "jack rafters": (
        (r"\bside cut|\bbevel\b|\bcheek cut", ("bevel of the side cut",)),
        (r"\bplumb cut", ("plumb cut",)),
        (r"\bsquare\b", ("side cut on the framing square, 12 and",)),
    ),
    "step at the rake": ((rf"\bboth (?:ends|sides)|\boverall\b|{_IN_ALL}", ("step, both ends of a gable",)),),
    "balanced panels": ((rf"\bhow many\b|\b(?:{_MANY})\b|\bto buy\b|\bfull\b|\bwhole\b", ("full panels", "panels to buy")),),
    "equal spacing": (
        (
            r"\bcent(?:re|er)s? to cent|\bmiddle to middle\b"
            r"|\bon cent(?:re|er)|\bo\.?c\b|\bwhat cent(?:re|er)s?\b",
            ("centre to centre",),
        ),
        (rf"\b(?:{_MANY})(?:gaps|spaces)\b", ("gaps",)),
        (rf"\bhow many (?!gaps|spaces)|\bhow many\W*$|{_HOW_MANY}", ("pieces",)),
    ),
    "marks on centre": (
        (rf"{_LEFT}|\bhow far (?:is it )?(?:from|to) the end\b", ("left after the last mark",)),
        (r"\blast (?:mark|one|line)\b", ("last mark",)),
    ),
    "strapping": (
        (rf"{_LINEAL}|\bin all\b|\btotal\b|\bhow (?:much|long)\b", ("total length",)),
        (
            rf"\b(?:{_MANY})(?:sticks|lengths|pieces|boards|bundles|\d+s|\d+ ?(?:foot|ft|'))|\bfooters\b|\bstock\b|\bsticks\b",
            ("sticks",),
        ),
    ),
    "divide evenly": ((r"\bhow (?:big|long|wide|much) (?:is|are) (?:each|every|one)\b|\b(?:big|long|wide) each\b", ("part",)),),
    "staggered joints": (
        (r"\bhow many rows|\brepeat|\bcomes? round", ("rows until the pattern comes round",)),
        (r"\boffcut|\bcut to|\bwaste|\bscrap", ("board cut to", "offcut of each board")),
    ),
    # quantities
    "wall area": (
        (r"\bhow much (?:came|comes|goes|went|is coming|do (?:i|we) take) (?:out|off)\b", ("openings",)),
        (r"\bgross\b", ("gross area",)),
        (r"\bsquares\b", ("net area in squares",)),
    ),
    "gable area": (
        (_HEIGHT, ("height of the gable",)),
        (_RAKE, ("each rake, no overhang",)),
        (r"\bsquares\b", ("area in squares",)),
        (r"\bwh(?:at|ich) pitch", ("pitch of the gable",)),
    ),
    "roof area": ((r"\bsquares\b", ("squares with the waste",)), (r"\bplan\b[^.;?]*\?|\bwhat['’]?s the plan", ("plan area",))),
    "squares": ((r"\border\b|\bbuy\b|\bwhole\b", ("whole squares bought",)),),
    "cladding boards": (
        (r"\b(?:how many|and|in|into|as) squares|^\W*squares\W*$", ("squares",)),
        (_LINEAL, ("total length",)),
        (r"\b(?:each|one|a|per) board (?:cover|do)", ("area per board",)),
    ),
    "soffit panels": (
        (r"\bchannels?\b|\bj[- ]?(?:channel|trim|bead)\b|\bf[- ]?(?:channel|trim)\b", ("edge channel",)),
        (r"\barea\b|\bsquare (?:feet|foot|met\w+)|\bsq\b|\bsqft", ("soffit area",)),
        (r"\bbuy\b|\border\b|\bhow many (?:lengths|sheets|full|long)|\blengths do\b", ("panel lengths to buy",)),
        (r"\b(?:out of|from|per|in) (?:each|one|a) (?:length|panel)", ("pieces per panel length",)),
        (r"\blast\b", ("last panel covers, per run",)),
    ),
    "trim sticks": ((_LEFT, ("left over",)),),
    "cut list": (
        (_LEFT, ("left over as scrap", "length of each offcut kept", "lengths of the offcuts kept")),
        (r"\bcost\b|\bhow much money\b", ("cost",)),
    ),
    "membrane rolls": (
        (r"\b(?:each|one|a) roll (?:cover|do|go)|\b(?:does|will) (?:each|one|a) roll", ("area each roll covers",)),
    ),
    "fasteners": (
        (r"\bbox(?:es)?\b", ("boxes",)),
        (
            r"\bhow many (?:\w+ )?(?:in|per|to|for) (?:each|a|one)\b"
            r"|\b(?:how many|number)\b.*\b(?:per|each|every) (?:course|strap|row|batten|board)",
            ("fasteners in each",),
        ),
        (r"\bhow far apart|\beven(?:ly)?\b", ("even spacing",)),
    ),
    "sealant": (
        (r"\bhow far\b|\b(?:one|a|each|per) (?:tube|cartridge)\b", ("length per tube",)),
        (r"\bvolume|\bhow much (?:sealant|caulk)", ("volume of sealant",)),
    ),
    "weight": ((r"\b(?:in|how many) (?:pounds|lbs?)\b", ("in lb",)), (r"\b(?:in|how many) (?:kgs?|kilo\w*)\b", ("in kg",))),
    "bent flashing": (
        (r"\bbends\b", ("bends, per piece",)),
        (
            rf"\b(?:{_MANY})(?:pieces|strips|lengths|blanks)\b|\bcoil\b|\bout of\b",
            ("pieces per coil width", "lengths off the coil"),
        ),
        (rf"{_LEFT}|\bwaste\b", ("left over of the coil's width",)),
    ),
    # water, air and cold
    "air gap": (
        (r"\b(?:in|as|to)\b.*\b(?:mm|millimet\w+|mils?|inch(?:es)?)\b|\bhow deep\b", ("depth",)),
        (r"\benough\b|\bgood\b|\b10 mm rule\b|\bokay?\b", ("against 3/8 in", "by the 10 mm rule", "room")),
        (r"\bvent(?:ed|ilated)?\b|\brain ?screen\b", ("kind",)),
    ),
    "vent opening": (
        (r"\b(?:per|a|each|the|every) foot\b", ("free area per foot",)),
        (r"\bwithout (?:the |a |any )?(?:bug )?screen\b|\bbefore the screen\b", ("before the screen, per foot",)),
        (r"\blimit\w*\b|\bbalance\w*\b", ("what limits", "working free area, per foot")),
    ),
    "vent area": (
        (r"\bhow many\b[^.;?]*\b(?:vents|louvers|louvres)\b", ("vents for all of it", "vents for the high half alone")),
        (
            r"\bhow (?:many|much|long)\b[^.;?]*\b(?:feet|foot|ft|metres|meters|length|run|strip|vented|soffit|long)\b"
            r"|\blength of\b|\b(?:feet|foot|metres|meters) of\b",
            ("length of vented soffit",),
        ),
        (
            r"\bhalf\b|\beach (?:side|end)\b|\b(?:low|high|ridge|top|bottom|split|intake|exhaust|eaves?)\b",
            ("low, at the soffit", "high, at the ridge"),
        ),
    ),
    "water in a channel": (
        (r"\bweigh\w*|\bheavy\b|\bpounds\b|\blbs?\b|\bkilos?\b|\bkg\b", ("weight of the water",)),
        (r"\bfreez\w*|\bfroze\w*|\bice\b|\bris(?:e|es)\b|\bswell\w*|\bexpand\w*", ("rise on freezing", "volume as ice")),
    ),
    "dew point": (  # wherever a surface is told, and not the dew point alone asked for
        (
            r"^(?!.*\b(?:temp|temperature)\b)"
            r"(?!\W*(?:(?:and|so|ok|what['’]?s|what is|what was|the)\W+)+dew point(?: then| again)?\W*$)",
            ("the surface",),
        ),
    ),
    "fall": (
        (r"\b(?:what|which) angle\b|\b(?:in|as|how many) degrees\b", ("angle from level",)),
        (r"\b(?:what|as a|in) percent|\bpercent grade\b", ("slope",)),
    ),
    # movement
    "thermal movement": ((r"\bhow long\b|\blength after\b|\b(?:end|ends) up\b", ("length after",)),),
    "wood movement": ((r"\bhow wide\b|\bwidth after\b|\b(?:end|ends) up\b", ("width after",)),),
    "end gap": ((r"\bat (?:the )?coldest\b|\bwidest\b|\bin (?:the )?winter\b|\bopens? (?:up )?to\b", ("gap at the coldest",)),),
    # slope
    "pitch of an angle": ((r"(?<![\d%])(?<!\d )\b(?:percent|percentage|grade)\b", ("percent grade",)),),
    "roof angle": ((r"(?<![\d%])(?<!\d )\b(?:percent|percentage)\b", ("percent grade",)),),
    "sloped length": (
        (rf"\bhow (?:high|tall)\b|\b(?:and|what) (?:the )?rise\b|^\W*(?:the )?rise\W*$|{_CLIMBS}", ("rise",)),
        (r"\bwhat angle\b|\bhow many degrees\b", ("roof angle",)),
    ),
    "rise over a run": (
        (r"\bhow long\b|\brafter length|\bsloped? length|\b(?:along|up) the (?:slope|roof|rafter)\b", ("sloped length",)),
    ),
    "rake length": (
        (_HEIGHT, ("gable height",)),
        (
            r"\b(?:both|two) (?:of the )?(?:rakes|sides|of them)\b|\b(?:rakes|sides) (?:together|in all)\b"
            r"|\btotal\b|\bpair\b|\baltogether\b",
            ("both rakes",),
        ),
    ),
    "gable height": ((_RAKE, ("rake length",)),),
    "hip or valley length": (
        (r"\bhow much (?:longer|more)\b|\blonger than\b|\bdifference\b", ("longer than the common",)),
        (r"\bper foot\b", ("per foot of run",)),
        (r"\bplumb cut|\bbacking", ("plumb cut of the hip", "backing")),
        (r"\b(?:level|seat) cut|\bbird'?s?[- ]?mouth", ("level cut of the hip",)),
    ),
    # corners and the saw
    "miter for a corner": (_EDGE, _TURN),
    "polygon": (_EDGE, _TURN, _CORNER),
    "corner in several pieces": (_EDGE, _TURN, _CORNER),
    "rake return": (
        (r"\bother (?:corner|one|cut|joint|setting)\b|\bboth corners\b", ("the other corner's setting",)), _EDGE, _TURN, _CORNER,
    ),
    "peak joint": (_EDGE, _TURN, _CORNER),
    "rake to level joint": (_EDGE, _TURN, _CORNER),
    "compound cut": ((r"\bbevels?\b(?! ga?u)|\btilt\b|\bblade\b", ("bevel",)),),
    # triangles and square
    "arc": (
        (
            r"\bhow long\b[^.;?]*\b(?:trim|curve|arc|bead|piece|strip|casing|bend\w*|bent|moulding|molding)"
            r"|\b(?:arc|curve|trim) length|^\W*(?:and )?(?:the )?length (?:round|around)(?: (?:it|that))?\W*$"
            r"|^\W*(?:and )?the (?:curve|arc)\b[^\d]*$|\blength of (?:the )?(?:arc|curve|trim)"
            r"|\blength (?:round|around|of|along) (?:it|the (?:top|head|curve|arc))\b"
            r"|\b(?:length|distance|far)\b[^.;?\d]*\b(?:round|around|along|over) (?:the |that )?(?:curve|arc|bend|top)\b",
            ("arc length",),
        ),
    ),
    "pitch from rise and run": (
        (r"\bdegrees?\b|\bangle\b", ("roof angle",)),
        (r"\bpercent(?:age)?\b|\bgrade\b", ("percent grade",)),
        (
            r"\bhow long\b|\b(?:slope|rafter) length\b|\blength (?:on|up|of|along) (?:the |its )?slope\b",
            ("length along the slope",),
        ),
    ),
    "right triangle": (
        (r"\bhow (?:high|tall|far up)\b", ("rise",)),
        (r"\bhow (?:far out|wide)\b", ("run",)),
        (r"\b(?:and|what|both|other|plus) (?:the |its )?angles?\b", ("angle", "other angle")),
    ),
    "square check": ((r"\b3.4.5\b|\bthree four five\b", ("3-4-5",)),),
    "how far open": (
        (r"\bshould (?:he|she|i|we|they|it|you|each|both)"
         r" (?:have\b|be (?:cut|set)\b|(?:cut|set) (?:it|them|em|each|both)\b|cut at\b)"
         r"|\bwhat closes it\b|\bset it (?:at|to)\b",
         ("setting that closes it",)),
    ),
    "out of square": (
        (r"\bwhich (?:corner|way|one)\b", ("which corner opens",)),
        (r"\b(?:meant|supposed) to be\b|\bshould (?:it|that) (?:be|read|have been)\b", ("true diagonal",)),
    ),
}  # fmt: skip
