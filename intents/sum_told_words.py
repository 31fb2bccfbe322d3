"""The words that tell what a length of a story does: what is more and what is less, what is a gap, a frame, a thing buried in
another, and what may be asked of them all (`sum_told.py`).
"""

from __future__ import annotations

MORE = frozenset("plus add adds adding tack + & raise raised raises lifted glue glued".split())
LESS = frozenset(
    "less minus lose loses losing lost knock take takes took eat eats swallow swallows rob robs subtract deduct lop lopped shave"
    " shaved trim trimmed trims rip ripped sawed sawn chop chopped plane planed shy - without buried binned used notch notched"
    " steal steals sand sanded shorten cut cuts burn burned burnt off sank sinks sunk settled shrank shrunk sagged".split()
)
BID = frozenset(("add", "adding"))  # what follows is all added
AFTER = {
    **dict.fromkeys("off shy short lower less outta shallower thinner narrower smaller".split(), -1),
    **dict.fromkeys(
        "strong more extra higher longer farther further again wider taller thicker bigger deeper broader fatter".split(), 1
    ),
}
SPENT = frozenset(
    "knocked missing trimmed went gone used binned wasted ruined spoiled cracked split rotted buried sold lost cut drove".split()
)
STOCK = frozenset("had of footer stick roll rope length board stock".split())
UP = frozenset("above over higher up onto atop past beyond farther further proud".split())
DOWN = frozenset("below under beneath underneath down hang hangs hung drop drops dropped dropping back buried".split())
DUG = frozenset("dug dig hole trench pit".split())
TOTAL = frozenset(
    "total totals altogether combined sum stack stacked tally pile told lot thick thickness together build buildup all overall"
    " girth join joined whole outside".split()
)
LEFT = frozenset(
    "solid left remaining remains remain remainder leftover leftovers spare rest balance uncovered good still".split()
)
INNER = frozenset("daylight clear between inside inner inbetween glass headroom gap air panel opening showing".split())
OUTER = frozenset("outside outer out overall".split())
PLAY = frozenset(
    "clearance gap gaps wiggle play slack tolerance breathe expansion margin margins breathing packing foam shim shims shimming"
    " clear clears space joint room fitting caulk reveal reveals".split()
)
FRAME = frozenset(
    "casing casings architrave architraves trim trims jamb jambs frame frames stile stiles post posts newel newels gable gables"
    " moulding mouldings molding border walls ply lining linings reveal reveals stops uprights legs leg cheeks sides side liner"
    " liners boards board flange flanges returns bar bars muntin rail rails cleat cleats pilaster pilasters margin margins base"
    " crown cap collar collars stud studs".split()
)
BURIED = frozenset(
    "tenon tenons tongue tongues housing housings bury buries buried rebate rebates dado dadoes groove grooves bearing bears bear"
    " shoulders rabbet rabbets lap laps lapped bite bites tuck tucks nosing scarf overlap overlaps undercloak splash stub stubs"
    " mortise mortice lip lips horn horns".split()
)
SEEN = frozenset("shows show showing sight daylight shoulder".split())  # what is measured between what is buried
OPENING = frozenset(
    "opening between clear alcove gap hole recess jambs apart walls space posts tight bay newel newels corners wall floor"
    " ceiling".split()
)
HOLE = frozenset("opening hole ro rough framed".split())
PIECE = frozenset(
    "door leaf lead pane panel blind board shelf rail girt sheet block cut length piece width slab stool blocking cutting size"
    " filler handrail tread read post leg stud unit build trim make long wide slat".split()
)
FLOORS = frozenset("floor floors carpet tile tiles threshold saddle flooring mat screed lino vinyl ground rug underlay".split())
VISIBLE = frozenset(
    "shows show showing covers cover coverage face weather exposed visible net exposure without joined end".split()
)
SHOULD = frozenset("say should flush supposed wanted meant right".split())
VERBS = frozenset("be get have go come cut make take do know fit reach".split())
NAMING = frozenset("the a an of my head corner".split())
PIECES = frozenset("rip cut trim notch".split())
SHORT_OF, LONG_BY = frozenset("short shy under".split()), frozenset("long over proud heavy strong".split())
EMPTY = frozenset("open space gaps gap clear clearance spare room overhang".split())
HALF_WORDS = frozenset("half halve halved halves bisect halfway midway mid midpoint".split())
MIDDLE = frozenset("middle centre center centred centered centreline".split())
STANDS_ON = frozenset("floor ground grass slab deck corner wall line footing subfloor datum bench finished".split())
BETWEEN_TWO = frozenset("tall height gap between opening big hole how step high freeboard".split())
SIDES = frozenset("casings architraves jambs stiles posts newels mouldings legs cheeks returns linings liners reveals".split())
NEEDED = frozenset("hole ro rough needed".split())
BOTTOM = frozenset(("bottom", "underside"))
BLANK = frozenset("sheet stock blank cut overall".split())
CENTRED = frozenset("centre center centred centered middle same equal evenly even dead equally".split())
EVEN = frozenset("same equal even evenly equally dead".split())
PLACES = frozenset("side sides end ends corner rail gap edge reveal margin".split())
CENTRES = frozenset("centres centers centre center".split())
CLEAR = frozenset("clear daylight gap between glass".split())
APART = frozenset("above below between gap room much proud short".split())
SAME_AGAIN = frozenset("and another then a an the at for other first second third of also again on bottom top one latch hinge"
                        " hinges side".split())  # fmt: skip
UNDER = frozenset("under beneath between over headroom".split())
FROM_THERE = frozenset("off high up top".split())
THAN = frozenset("higher taller longer wider lower shorter deeper thicker bigger more further narrower".split())
INWARD = frozenset("down back in".split())  # back from the corner
MOVES = frozenset("come comes came coming bring brought move moved".split())
SHORTENS = frozenset("shorten shortened reduce reduced cut trim trimmed".split())
LENGTHENS = frozenset("lengthen lengthened extend extended".split())
GAPS = frozenset("difference slack out over short sag taper filler extension shim gain gaining shortfall".split())
NEAR_BY = 1.6  # times as long, of two lengths whose difference is asked
STOOD = frozenset("tall high thick thickness deep".split())
LOWER = frozenset("too under underside beneath below bottom left clear headroom inside between".split())
CENTRED_AT = frozenset("centre center centres centers oc".split())
BETWEEN_POSTS = frozenset("between clear blocking bay gap rail space daylight".split())
BETWEEN_EACH_SET = frozenset(
    (("between", "each"), ("between", "them"), ("gaps", "between"), ("space", "between"), ("between", "every"))
)
DAYLIGHT = frozenset(("daylight",))
HEADROOM = frozenset("headroom clearance".split())
STICKS = frozenset("overhang overhangs overhanging stick sticks sticking poke pokes project projects".split())
OVER = frozenset("past beyond over overhangs overhang".split())
SIGNED = frozenset(("plus", "less", "minus"))
JOINED = frozenset("extension joined together added screwed glued butted".split())
FINISH, MADE = frozenset("finish finishes finished".split()), frozenset(
    "box boxes base legs leg carcass carcasses cabinet cabinets frame framing post posts stud studs".split()
)
PLATES = frozenset("plate plates sole header beam".split())
STUDS = frozenset("stud studs post posts leg legs cripple cripples trimmer".split())
PARTS = frozenset("row course piece bit part panel one".split())
RAISED = frozenset("raise raised raises lifted".split())
GAINS = frozenset("gains gain gaining".split())
COMPARED = {word: sign for word, sign in AFTER.items() if word.endswith("er")}
LAPPED = frozenset("lap laps lapped lapping overlap overlaps overlapped overlapping".split())
PAST = frozenset("over past beyond".split())
LIFTS, FOOTING = frozenset("height high tall".split()), frozenset("floor ground deck slab".split())
HIGHEST = frozenset("ceiling plate soffit opening joist joists rafter rafters underside".split())
NEAR = 4  # words before a length that tell what it does
SHORT_CLAUSE = 8
MOST_CENTRED = 3  # lengths
