"""The words beside a sound-alike that tell whether it is a number (see sound_alikes.py)."""

from __future__ import annotations

from intents.number_words import PLURALS, SCALES, SMALL, TENS
from intents.tokens import literal


def _words(words: str) -> frozenset[str]:
    return frozenset(words.split())


WORTH = {"for": "four", "to": "two", "too": "two"}  # small words that a number is heard as
OUTRIGHT = {"ate": "eight", "won": "one", "fore": "four", "tree": "three"}  # no words of the trade, so numbers nearly always
SOUNDS = frozenset((*WORTH, *OUTRIGHT, "two", "four", "teen", "teens", "tea", "tee", "an", "n"))
_STEMS = {"thir": "thir", "fif": "fif", "six": "six", "seven": "seven", "ate": "eigh", "eight": "eigh", "nine": "nine"}
_FOURS = ("for", "four", "fore")
TEENS = (  # numbers of ten and more as two words
    {(first, second): stem + "teen" for first, stem in _STEMS.items() for second in ("teen", "teens")}
    | {(first, second): stem + "ty" for first, stem in _STEMS.items() for second in ("tea", "tee")}
    | {(first, second): "fourteen" for first in _FOURS for second in ("teen", "teens")}
    | {(first, second): "forty" for first in _FOURS for second in ("tea", "tee")}
)

FEET = frozenset(("foot", "feet", "ft", "'"))
INCHES = frozenset(("inch", "inches", "ins", '"'))
SINGULAR_UNITS = _words("foot ft inch degree deg metre meter millimetre millimeter centimetre centimeter mil yard")
PLURAL_UNITS = _words(
    "feet inches ins degrees degs metres meters millimetres millimeters centimetres centimeters mm cm mils yards percent pounds"
    " lbs kilos gallons squares dollars bucks litres liters ounces footers square sq cubic sqft"
)
PARTS = _words("eighth eighths quarter quarters sixteenth sixteenths")
UNITS = SINGULAR_UNITS | PLURAL_UNITS | frozenset(("'", '"', "%", "°"))
MEASURES = UNITS | _words("m m2 m3 mm2 cm2 ft2 ft3 in2 in3 sqm sf lb kg l gal oz ounce pound gallon litre yd yds")
JOINTS = frozenset(("by", "×"))
ADJECTIVES = _words("wide high long deep tall thick across apart oc centres centers centre center in on")  # after a size
SIZES = _words("wide high long deep tall thick")
NUMBERS = _words("one two three four five six seven eight nine ten twelve half")
THIN = _words("gap kerf mesh mat clearance reveal")
TAKEN_OFF = _words("off less minus deduct subtract out lose")  # openings of a wall
TOO_WHAT = _words(
    "long short high low wide narrow deep shallow thick thin big small large much many far near steep flat tight loose hot cold"
    " warm late early soon heavy light close fast slow hard"
)
ASKS = _words("ask asks asked asking")  # and for what
WHO = _words("i we you they these those my the")
ASKING = frozenset(("what", "how", "which", "whats"))
# What no "for" or "to" stands before: where one follows a number, it was part of the number.
ENDS = ASKING | _words("? . , ; ! can could will would does do is and so but where with than then plus minus no") | {""}
METERED = _words("a an the my our this")  # no number stands before one
DIMENSIONS = _words("width height length depth rise run span diagonal overall thickness opening")  # told after their size
DETERMINERS = METERED | _words("it its it's me us you him them these those that his their your each every any both all")
NO_OBJECTS = _words("into in of from at with along across out off down up")  # as little as there does before these
SIGNS = _words("minus negative times plus less")
COMING = _words("come comes came go goes went up add adds amount amounts work works run runs sell sells")  # to so much
USED = _words("used down up back close go going switched changed turned read round rounded pitch slope")  # to feet
POINTS_AT = _words("the my our this these those your his")  # and no small word after one
EATERS = _words("i we he she they you who it just already ever never team dog kids guys crew")
DRINKERS = _words("stop stops stopping break breaks home back in what whats is time ready gone off go going here wait knock off")
EATEN = _words("lunch breakfast supper dinner cake pie sandwich pizza out it them")
PREPOSITIONS = _words(
    "of at is are was by from with over under about around plus minus and than every through between exactly for to on in its"
    " it's be another only say"
)
HAVING = _words(
    "with have has had got of are plus minus less and need needs want order buy get takes there's theres another"
)  # fmt: skip
CARRIERS = frozenset(("", ",", ";", ".", "then", "inches", "feet"))  # the list of openings goes on after one
WANT = _words("need want order buy get")  # what do I … for panels
SPLIT = _words("in into with of has have need using makes are divided cut rip get")
MANY = _words("more other equal even full end long short big small separate")
NAMES = _words(
    "windows doors openings vents pieces peaces lengths boards sticks rakes ends legs walls sides panels straps posts"
)  # fmt: skip
LONGEST_SIGN = 3  # letters: "ins" and "lbs" are signs, and what is counted has a longer name
NO_THINGS = _words("this hours always gets goes runs does comes looks seems makes takes whats thats yours ours theirs hers")
PITCHED = _words("pitch pitched roof slope gable rake rafter")
ROOF_IS = _words("is it's its thats that's at on of roof roofs")
MONEY = _words("paid pay cost costs price dollars bucks $ charge charged each apiece per box")
CONVERSION = _words(
    "convert converts converted conversion nearest change turn switch metric decimal decimals fraction fractions translate into"
)
GO_ON = _words("go get hold reach bite make have be give find catch clear finish swing")  # "two" before one is "to"
WHAT_FOR = _words("screw screws nail nails fastener fasteners staple out buildout")  # and "four" after one "for"
CUT_FOR = WHAT_FOR | _words("cut cuts angle miter mitre miters mitres bevel setting settings")
TAKES, FIXED = _words("gets takes needs wants"), _words("screws nails anchors bolts clips staples pins hinges plugs")
IN_A_BOX = _words("ten twelve twenty thirty forty fifty sixty seventy eighty ninety one two a")  # hundred
MEASURED = _words("across wide tall high long deep")  # of a foot of which there are so many
ALOFT = _words("saw set goes swings tilts turns")  # the saw, and what it does: "two" after one is "to"
SWINGS = ALOFT - {"saw", "set"}
LAYERS = _words(
    "mesh siding cladding sheathing sheeting ply plywood osb strapping mat gap crown trim fascia soffit kerf felt batten lath"
    " shiplap"
)


def surely(word: str, before: str, after: str, following: str, then: str) -> bool:
    """Whether a small word is a number by those on either side: five wide for deep, for eighths, for for windows, too wide won
    deep.
    """
    if word == "for" and (after in ("eighths", "sixteenths") or (before in SIZES and after in SIZES)):
        return True
    if word == "for" and before in ("for", "theres", "there's") and after in NAMES:
        return True
    if after == "of" and following in ("them", "em", "those") and word in ("to", "too", "for"):
        return True  # we got too of em
    if word == "for" and before == "many" and after in ("inch", "foot") and following[-1:] == "s":
        return True  # how many for inch strips
    if word == "for" and before in TAKES and after in FIXED and following in IN_A_BOX:
        return True  # each gets for anchors twenty in a box
    if word in ("for", "to") and after == "foot" and following in MEASURED:
        return True  # a circle to foot across
    return word == "too" and after in SIZES and following in NUMBERS and then in SIZES


def number_word(word: str) -> bool:
    return word in SMALL or word in TENS or word in SCALES or word in PLURALS or literal(word)


def worth(word: str) -> float | None:
    """What a word is worth as a number; None where it is none."""
    value = SMALL.get(word, TENS.get(word))
    return float(word) if value is None and literal(word) else value


def thing(word: str) -> bool:
    """Whether a word can be what was counted: sheets, boards, walls."""
    plural = word.isalpha() and word.endswith("s") and not word.endswith("ss")
    return plural and len(word) > LONGEST_SIGN and word not in NO_THINGS
