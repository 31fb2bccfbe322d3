"""Of each topic, the words that ask for a value beside its answer: "how many courses", "which ladder", "does the glass sweat"."""

from __future__ import annotations

_MANY = r"how many (?:\w+ )?|number of |count of "
_LONG = r"how (?:long|much longer)|wh(?:at|ich) (?:length|size)"
_COURSES = rf"(?:{_MANY})(?:courses|rows|runs|lines|coursing)\b|^\W*(?:and )?how many\W*$"
_HEIGHT = r"\bheight\b|\bhow (?:high|tall)\b"
_RAKE = r"\brakes?\b|\brafters?\b|\bsloped? (?:length|side)"
_EDGE = r"\bedge angle|\bbevel gauge|\bgauge\b"
_LEFT = r"\bleft ?over\b|\bleft\b|\boff-?cuts?\b|\bscrap\b|\bspare\b|\bremain\w*"
# Of each topic: words that ask for a value beside its answer, and the values they ask for (a name, or the first words of it).
ASKED: dict[str, tuple[tuple[str, tuple[str, ...]], ...]] = {
    "ladder footing": (
        (
            rf"\b(?:{_LONG})\b[^.;?]*\bladder|\bladder length|\blength of (?:the |my )?ladder|\blanding,? (?:what )?length",
            ("working length", "length for 3 ft past the landing"),
        ),
    ),
    "arc": (
        (
            r"\bhow long\b[^.;?]*\b(?:trim|curve|arc|bead|piece|strip|casing|bend\w*|bent|moulding|molding)"
            r"|\b(?:arc|curve) length|\blength of (?:the )?(?:arc|curve|trim)",
            ("arc length",),
        ),
    ),
    "course layout": ((_COURSES, ("courses",)),),
    "courses to openings": (
        (_COURSES, ("courses",)),
        (r"\b(?:below|under|beneath) (?:the )?(?:sill|window|opening)", ("exposure bottom to sill", "courses bottom to sill")),
        (r"\b(?:above|over) (?:the )?(?:head|window|opening)", ("exposure head to top", "courses head to top")),
    ),
    "gable courses": ((_COURSES, ("courses",)), (r"\btotal\b|\bin all\b|\baltogether\b", ("total length", "boards in all"))),
    "balanced panels": (
        (rf"(?:{_MANY})(?:panels|sheets|boards|tiles|pieces|strips)\b|\bto buy\b", ("full panels", "panels to buy")),
    ),
    "equal spacing": (
        (r"\bcent(?:re|er)s?\b|\bon cent(?:re|er)|\bo\.?c\b", ("centre to centre",)),
        (rf"(?:{_MANY})(?:gaps|spaces)\b", ("gaps",)),
    ),
    "marks on centre": ((_LEFT, ("left after the last mark",)), (r"\blast (?:mark|one|line)\b", ("last mark",))),
    "strapping": (
        (r"\btotal (?:length|feet|footage|metres|meters)|\b(?:lineal|linear|running) "
         r"|\bhow (?:many|much) (?:feet|foot|metres|meters)|\bin all\b",
         ("total length",)),
        (rf"(?:{_MANY})(?:sticks|lengths|pieces|boards|bundles)\b|\bfooters?\b|\bstock\b", ("sticks",)),
    ),
    "wall area": ((r"\bgross\b", ("gross area",)),),
    "out of square": ((r"\bwhich (?:corner|way|one)\b", ("which corner opens",)),),
    "gable area": ((_HEIGHT, ("height of the gable",)), (_RAKE, ("each rake, no overhang",))),
    "rake length": ((_HEIGHT, ("gable height",)), (r"\bboth\b|\bpair\b|\btotal\b|\baltogether\b", ("both rakes",))),
    "gable height": ((_RAKE, ("rake length",)),),
    "soffit panels": (
        (r"\bchannels?\b|\bj[- ]?(?:channel|trim|bead)\b|\bf[- ]?channel\b", ("edge channel",)),
        (r"\barea\b|\bsquare (?:feet|foot|metres|meters)\b", ("soffit area",)),
        (rf"(?:{_MANY})(?:lengths|sheets)\b", ("panel lengths to buy",)),
    ),
    "trim sticks": ((_LEFT, ("left over",)),),
    "cut list": ((_LEFT, ("left over as scrap", "lengths of the offcuts kept")), (r"\bcost\b|\bhow much money\b", ("cost",))),
    "sealant": ((r"\b(?:one|a|each|per) (?:tube|cartridge)\b", ("length per tube",)),),
    "fasteners": (
        (r"\bbox(?:es)?\b", ("boxes",)),
        (r"\b(?:per|each|every|a) (?:course|strap|row|board)\b", ("fasteners in each",)),
    ),
    "bent flashing": (
        (r"\bbends\b", ("bends, per piece",)),
        (rf"(?:{_MANY})(?:pieces|strips|lengths|blanks)\b|\bcoil\b", ("pieces per coil width", "lengths off the coil")),
    ),
    "fastener length": ((r"\bbuy\b|\bstock(?:ed|s)?\b|\bnext (?:size|length)\b|\bbox\b|\bshelf\b", ("next stocked length",)),),
    "vent area": (
        (r"\bhow (?:many|much|long)\b[^.;?]*\b(?:feet|foot|ft|metres|meters|length|run|strip|vented|soffit|long)\b|\blength of\b"
         r"|\b(?:feet|foot|metres|meters) of\b",
         ("length of vented soffit",)),
        (r"\bhalf\b|\beach (?:side|end)\b|\b(?:low|high|ridge|top|bottom|split|intake|exhaust|eaves?)\b",
         ("low, at the soffit", "high, at the ridge")),
    ),
    "water in a channel": (
        (r"\bweigh\w*|\bheavy\b|\bpounds\b|\blbs?\b|\bkilos?\b|\bkg\b", ("weight of the water",)),
        (r"\bfreez\w*|\bfroze\w*|\bice\b|\bris(?:e|es)\b|\bswell\w*|\bexpand\w*", ("rise on freezing", "volume as ice")),
    ),
    "dew point": (
        (r"", ("the surface",)),  # where one is told
    ),
    "thermal movement": ((r"\bhow long\b|\blength after\b|\b(?:end|ends) up\b", ("length after",)),),
    "wood movement": ((r"\bhow wide\b|\bwidth after\b|\b(?:end|ends) up\b", ("width after",)),),
    "end gap": ((r"\bat (?:the )?coldest\b|\bwidest\b|\bin (?:the )?winter\b|\bopens? (?:up )?to\b", ("gap at the coldest",)),),
    "air gap": ((r"\bmm\b|\bmillimet\w+|\bhow deep\b", ("depth",)),),
    "fall": (
        (r"\b(?:what|which) angle\b|\b(?:in|as|how many) degrees\b", ("angle from level",)),
        (r"\b(?:what|as a|in) percent|\bpercent grade\b", ("slope",)),
    ),
    "miter for a corner": ((_EDGE, ("edge angle",)), (r"\bturns?\b", ("turn",))),
    "rake return": (
        (r"\bother (?:corner|one|cut|joint|setting)", ("the other corner's setting",)),
        (_EDGE, ("edge angle",)),
        (r"\bcorner angle\b|\bangle of the corner\b|\bwhat corner\b", ("corner",)),
    ),
    "peak joint": ((_EDGE, ("edge angle",)), (r"\bcorner angle\b|\bangle of the corner\b|\bwhat corner\b", ("corner",))),
    "rake to level joint": ((_EDGE, ("edge angle",)), (r"\bcorner angle\b|\bangle of the corner\b|\bwhat corner\b", ("corner",))),
    "compound cut": ((r"\bbevel\b|\btilt\b|\bblade\b", ("bevel",)),),
    "sloped length": ((r"\brise\b|\bhow high\b|\bheight\b", ("rise",)), (r"\bangle\b|\bdegrees\b", ("roof angle",))),
    "square check": ((r"\b3[- ]?4[- ]?5\b|\bthree[, -]+four[, -]+five\b", ("3-4-5",)),),
}  # fmt: skip
