"""The words sums are said in: what adds, takes off, multiplies and divides, and what may stand between."""

from __future__ import annotations

from fractions import Fraction

from solvers.sums import DIVIDED, MINUS, PLUS, TIMES

# "what do you get adding 4 and 5": the verbs as they are bid.
DOING = {
    "adding": "add", "subtracting": "subtract", "deducting": "deduct", "knocking": "knock", "dividing": "divide",
    "splitting": "split", "multiplying": "multiply", "halving": "halve", "bisect": "halve", "bisecting": "halve",
    "doubling": "double", "tripling": "triple",
}  # fmt: skip
AGAIN = "again"  # what was done before is done once more; plus when nothing was
# Operations as words, the longest first where one begins another; those in SIGNS are typed signs.
OPERATIONS: tuple[tuple[tuple[str, ...], str], ...] = (
    (("plus", "another"), PLUS),
    (("and", "another"), AGAIN),
    (("and", "knock", "off"), MINUS),
    (("knock", "off"), MINUS),
    (("and", "take", "off"), MINUS),
    (("take", "off"), MINUS),
    (("cut", "off"), MINUS),
    (("and", "then", "add"), PLUS),
    (("take", "of"), MINUS),  # off, as it is typed
    (("divide", "by"), DIVIDED),
    (("div", "by"), DIVIDED),
    (("multiply", "by"), TIMES),
    (("added", "to"), PLUS),
    (("together", "with"), PLUS),
    (("plus",), PLUS),
    (("+",), PLUS),
    (("add",), PLUS),
    (("and", "add"), PLUS),
    (("minus", "another"), MINUS),
    (("take", "away"), MINUS),
    (("minus",), MINUS),
    (("less",), MINUS),
    (("-",), MINUS),
    (("subtract",), MINUS),
    (("deduct",), MINUS),
    (("take",), MINUS),
    (("times",), TIMES),
    (("×",), TIMES),
    (("multiplied", "by"), TIMES),
    (("divided", "by"), DIVIDED),
    (("divided", "in"), DIVIDED),
    (("÷",), DIVIDED),
    (("/",), DIVIDED),
    (("split", "by"), DIVIDED),
    (("over",), DIVIDED),
)
SIGNS = frozenset("+-×÷/")
LEADING = {PLUS, TIMES, DIVIDED, AGAIN}  # "minus 4" at the start is a number below zero
TAKE = frozenset(("take", "subtract", "deduct", "knock"))
CUT = frozenset("cut rip trim chop saw lop shave plane slice remove cutting taking ripping trimming".split())
DIVIDE = frozenset(("divide", "divvy", "split"))
OFF = (("away", "from"), ("off", "of"), ("out", "of"), ("off",), ("from",))
LAID = (
    ("laid", "end", "to", "end"), ("end", "to", "end"), ("stacked", "up"), ("stacked",), ("side", "by", "side"),
)  # fmt: skip  # so many of a length, put one after the other
TOGETHER = (
    ("together",), ("added", "together"), ("combined",), ("altogether",), ("in", "total"), ("all", "together"),
    ("put", "together"), ("added", "up"), ("in", "all"), *LAID,
)  # fmt: skip
TOGETHER_BEGINS = frozenset(words[0] for words in TOGETHER)
SEVERAL = frozenset("pieces pcs boards lengths lots sticks strips".split())
FACTORS = {"twice": 2, "double": 2, "triple": 3}
HALVED = (
    ("halved",),
    ("in", "half"),
    ("divided", "in", "half"),
    ("cut", "in", "half"),
    ("split", "in", "half"),
    ("split", "down", "the", "middle"),
    ("down", "the", "middle"),
)
AGAIN_HALF = (("again",), ("as", "much", "again"))
OVER: tuple[tuple[tuple[str, ...], str, int | Fraction], ...] = (  # done to all before it
    *((words, DIVIDED, 2) for words in HALVED), (("doubled",), TIMES, 2), (("tripled",), TIMES, 3),
    *(((*lead, "half", *again), TIMES, Fraction(3, 2)) for lead in (("plus",), ("and",), ()) for again in AGAIN_HALF),
)  # fmt: skip
MULTIPLIED = frozenset("times doubled tripled laid stacked end side sum total add".split())  # said, so × is no size
COME_TO = frozenset("= what what's whats make makes come comes equals".split())  # what sizes do not do
ONLY_ASKED = COME_TO | frozenset("is are that does do to the it ? , . get i you give".split())  # beside a product alone
OWN = DOING.keys() | {word for words in LAID for word in words} | {words[0] for words, _, _ in OVER} | {"average"}  # no slips
BIDS = {"halve": (DIVIDED, 2), "double": (TIMES, 2), "triple": (TIMES, 3)}  # then halve it
WHOLE = frozenset(("it", "that", "them", "this"))
# What was worked so far, in more words than it: halve what's left.
SO_FAR = (
    *((word,) for word in sorted(WHOLE)), ("what's", "left"), ("whats", "left"), ("what", "is", "left"), ("what", "remains"),
    *(("the", word) for word in ("rest", "lot", "result", "answer", "total", "remainder", "remaining", "difference")),
)  # fmt: skip
PIECES = frozenset(("pieces", "parts", "equal", "ways"))
# Said of a sum, it is divided or taken so many times, and no way to read the line lets that fall.
FACTORED = frozenset("double doubled halve halved triple tripled times twice divided split bottom ends".split())
PARTED = frozenset(("split", "cut", "divide", "divided"))  # then split in three
STOPS = frozenset(("", "?", ".", ",", "="))
EACH = frozenset(("each", "apiece"))
TOTALS = frozenset("end total altogether together long all".split())  # so many of a length, and how long they are
# What is taken off, by its name: "11 foot minus a kerf of 1/8".
TAKEN = frozenset("kerf blade cut gap trim reveal casing jamb door window frame for".split())
ASKED = frozenset("what whats what's is be left".split())  # before "7/8 off 15 1/2", which no verb leads
SKIPPED = frozenset("like um uh the another and ok then so now that it to".split())  # before a part, or a running total
PRONOUNS = frozenset("it that this".split())
# Before a length that something is taken off: "take 3/8 off a board that is 14 feet".
NAMED = frozenset("a an the my this that which is board piece stick length measuring measured of".split())
# Between a length and what is done to it: "43 5/8 inches and I need to add 1 1/2".
BETWEEN = frozenset(
    "and then i we you need want have got gotta must to now so , ; . but should gonna also still just i'll we'll i'd".split()
)
MOST_BETWEEN = 7
DONE = frozenset("divide multiply add plus minus take knock subtract deduct".split()) | CUT  # what may follow those
SIDES = frozenset("wide high long tall deep thick".split())
PLACES = frozenset("top bottom left right head sill front back end ends one start".split())
MOST_NAMING = 4  # words of the name of a part: "less | a door set of"
PLAINLY = frozenset(("plus", "minus", "less"))  # no words of anything else after a name: 32 inch opening minus
MOST_NAMED = 2  # words
AFTER_COMMA = frozenset("plus minus less times divided multiplied".split())  # 9 foot, less 5 inches
HOURS = frozenset("hours hrs minutes wages invoices".split())  # sums that are none of the tape's
FOOTERS = frozenset(("footer", "footers"))
COMPARED = {"less": MINUS, "shorter": MINUS, "smaller": MINUS, "narrower": MINUS, "more": PLUS, "longer": PLUS,
            "bigger": PLUS, "wider": PLUS, "taller": PLUS, "shy": MINUS, "short": MINUS, "under": MINUS,
            "over": PLUS, "strong": PLUS, "proud": PLUS, "heavy": PLUS, "light": MINUS, "scant": MINUS}  # fmt: skip
LEFT = frozenset("left leftover remains remaining remainder remain rest".split())
MISSED = frozenset("equals makes gives comes plus minus times less feet inches this does metres meters".split())
LEAST_SURE = 0.3
MOST_OPERATIONS = 60
MOST_DEPTH = 12
CLAUSE = 8  # words
TELLS = (
    {words[0] for words, _ in OPERATIONS} | TAKE | CUT | DIVIDE | {words[0] for words in (*TOGETHER, *HALVED)}
    | set(FACTORS) | set(COMPARED) | {"of", "multiply", "difference", "another", "halve", "half", "off", "from"} | EACH
    | {words[0] for words in LAID} | {words[0] for words, _, _ in OVER} | BIDS.keys() | set(
        "average midway halfway "
        "sum total above below middle centre center lose drop start starting begin beginning left leaves apart overall "
        "stack mark marks either other".split()
    )
)  # fmt: skip  # without one of these nothing is a sum
BY_FIRST: dict[str, list[tuple[tuple[str, ...], str]]] = {}
for _words, _operation in OPERATIONS:
    BY_FIRST.setdefault(_words[0], []).append((_words, _operation))


def sums_told(words: set[str]) -> bool:
    """Whether any word tells of a sum; how many 12 footers go end to end is a count, and how far apart posts stand at 8 foot
    max a spacing."""
    if ("many" in words and not words.isdisjoint(FOOTERS)) or ("apart" in words and not words.isdisjoint(("max", "maximum"))):
        return False
    if {"leave", "how", "much", "end"} <= words and not words.isdisjoint(("vinyl", "pvc", "aluminium", "aluminum")):
        return False  # leave how much at the end of a vinyl piece: what it grows by
    return words.isdisjoint(HOURS) and any(DOING.get(word, word) in TELLS for word in words)
