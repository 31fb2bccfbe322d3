"""Words as they are texted, spelled out: wdws, crs, hgt, lg, lf, qty, w/, sq.

They are spelled out before anything is read, so that whatever is known of the whole word holds for the short one too. Where
a short one may be two words, its neighbours tell which: 8-0 hgt is high, hgt 8-0 is a height. A short one that they do not
tell stays as it is.
"""

from __future__ import annotations

import re
from itertools import pairwise

from intents.expressions import expression
from intents.number_words import SMALL, TENS
from intents.penny import SIGNS, nail_of
from intents.short_by_line import with_parts
from intents.short_by_place import by_place
from intents.short_words import WORDS as SHORT_WORDS
from intents.short_words import signs_spelled
from intents.slashes import set_apart
from intents.tokens import Token
from intents.vowelless import without_vowels

SCOTS = {
    "whit": "what", "hoo": "how", "fae": "from", "frae": "from", "oot": "out", "doon": "down", "noo": "now", "mak": "make",
    "hauf": "half", "twa": "two", "weel": "well", "lang": "long", "aboot": "about", "roond": "round", "tae": "to", "aff": "off",
    "ower": "over", "tak": "take", "taks": "takes", "thegither": "together", "baith": "both",
}  # fmt: skip
_SCOTS = expression(rf"\b(?:{'|'.join(SCOTS)})\b", re.IGNORECASE)
_WORDS = SCOTS | {
    short: whole
    for whole, shorts in {
        "window": "wdw wndw windo winda", "windows": "wdws wndws windas", "courses": "crs crses", "length": "lgth",
        "lengths": "lgths lengts",
        "overhang": "ovhg ovhng ovrhng ovrhang", "openings": "opngs opns", "opening": "opng opn", "panels": "pnls",
        "panel": "pnl", "total": "tot ttl", "exposure": "expo expos", "sheathing": "shtg shthg shtng", "spacing": "spcg spcng",
        "centres": "ctrs cntrs", "including": "incl", "needed": "reqd", "square feet": "sqf", "cladding": "cldg cladg",
        "strapping": "strpg", "gable": "gbl", "weight": "wgt", "doors": "drs", "squares": "sqs", "joint": "jnt", "joints": "jnts",
        "corner": "crnr cornr", "corners": "crnrs cornrs", "board": "bd brd", "boards": "bds brds", "clapboard": "clapbd",
        "channel": "chnl", "flashing": "flashng flshng", "shingle": "shngl", "plumb": "plmb plm", "building": "bldg",
        "ceiling": "ceil", "weather": "wthr", "stock": "stk", "sticks": "stks", "bottom": "btm", "what": "wht",
        "how": "hw hwo", "each": "ea", "from": "frm", "under": "undr", "against": "agnst", "over": "ovr", "above": "abv",
        "about": "abt", "layers": "lyrs", "layer": "lyr", "plates": "plts", "studs": "stds", "posts": "psts", "less": "lss",
        "across": "acrs acrss", "between": "betw btwn twn tween", "through": "thru", "round": "rnd", "another": "anothr",
        "other": "othr", "overall": "oal ovrl ovrall", "ladder": "ldr laddr", "header": "hdr", "every": "evry",
        "screw": "scr", "screws": "scrs", "together": "tgthr", "nearest": "nrst",
    }.items()
    for short in shorts.split()
}  # fmt: skip
# After a size they tell what way it goes, else they name it; one with no name of its own is let be there.
_AFTER_SIZE = dict.fromkeys("hgt hght ht hi".split(), "high") | {"lg": "long", "thk": "thick", "dp": "deep", "wd": "wide"}
_ELSEWHERE = {"hgt": "height", "hght": "height", "ht": "height"}
_LONG = frozenset("rake hip valley slope barge rafter wall eave fascia common gable".split())  # rake lg: how long it is
_GIVEN = frozenset("is = :".split())  # wd is 19-6
_DOORS = frozenset("opening opng opn head trim n and jamb sill".split())
_BEAMS = frozenset("beam beams header headers joist joists ridge girder size span post plate".split())  # an lvl is one
_NORTH = frozenset("wall side gable end elevation".split())
_NAMED_N = frozenset("= : is sides sided pieces parts wall".split())  # n is a number yet to be told, or the north
_IN_TWO = {  # frost 2nite, cut b4 noon, 10'ers
    ("2", "nite"): "tonight", ("2", "night"): "tonight", ("2", "day"): "today", ("2", "moro"): "tomorrow",
    ("2", "morrow"): "tomorrow", ("b", "4"): "before", ("'", "ers"): "footers", ("'", "er"): "footer",
}  # fmt: skip
_HOW_MANY = frozenset(("qty", "cnt"))
_LINEAL = frozenset(("lf", "lft", "lnft"))
_RARE = "wst w n sq dr lvl nth oh b × deg no mtrs bx".split()
_WORDS |= {
    "rf": "roof", "vly": "valley", "mny": "many", "rndd": "rounded", "whts": "whats", "wots": "whats", "cnr": "corner",
} | SHORT_WORDS  # fmt: skip
_WORDS |= without_vowels(frozenset(_WORDS))
_SHORT = frozenset((*_WORDS, *_AFTER_SIZE, *_HOW_MANY, *_LINEAL, "lm", *_RARE, *SIGNS, "buy", *(first for first, _ in _IN_TWO)))
_ROOFED = frozenset("roof rake pitch slope gable rafter".split())
_PARTS_OF = frozenset((2, 4, 8, 12, 16, 32, 64, 150, 300))  # of an inch, of a roof's run, of an attic
_HALVES = frozenset("half quarter third".split())
_AMOUNTS = SMALL.keys() | TENS.keys() | frozenset("dollars dollar bucks buck cents pounds pound quid lb lbs kg kilos".split())
_SIZE_ENDS = frozenset("' \" ft in foot feet inch inches mm cm m metre metres meter meters".split())
_STOPS = frozenset(("", ".", "?", "!", ",", ";"))
_SQUARED_SIZES = frozenset("m mm cm ft in yd foot feet metre metres meter meters inch inches".split())
_SQUARED, _PRICED = frozenset("foot metre metres meter meters".split()), frozenset(("@", "at"))
_TURNED, _LEAST_TURN = frozenset(("corner", "corners")), 20  # degrees
_METRIC = frozenset("mm cm m meters metre metres millimetres millimeters square".split())
MOST_DOORS = 99
_LEAST_SIZE = 100  # mm, of what is counted with no stop after "no"
_BEFORE_SQUARES = frozenset(("", ".", "?", "!", ";", "many", "total"))


def respelled(text: str) -> str:
    """A line with its Scots words as they are spelled elsewhere."""
    return _SCOTS.sub(lambda found: SCOTS[found[0].lower()], text)


def texted(tokens: list[Token]) -> list[Token]:
    """The tokens with the short words among them spelled out."""
    said = {token.text for token in tokens}
    tokens = by_place(set_apart(signs_spelled(_mitered(with_parts(tokens, said), said), said), said), said)
    if _SHORT.isdisjoint(said) and "/" not in said and not ("a" in said and ("an" in said or "piece" in said)):
        return tokens
    words = ["", *(token.text for token in tokens), "", ""]
    found: list[Token] = []
    passed = 0
    for at, token in enumerate(tokens, start=1):
        if at <= passed:
            continue
        whole = _whole(words, at) if token.text in _SHORT or token.text == "an" else token.text
        if token.text == "no" and words[at - 1].isdecimal() and _numbered(words[at + 1 :], int(words[at - 1])):
            whole, passed = "at", at + (words[at + 1] == ".")  # 8 no. 1150 long
        elif token.text == "w" and words[at + 1] == "/":
            whole, passed = ("without", at + 2) if words[at + 2] == "o" else ("with", at + 1)
        elif (token.text, words[at + 1]) in _IN_TWO and tokens[at].start == token.end:
            whole, passed = _IN_TWO[token.text, words[at + 1]], at + 1
        elif token.text == "piece" and words[at + 1] != "of" and _each(words[at - 2], words[at - 1]) and len(found) > 1:
            whole = "apiece"  # 17.85 a piece
            found.pop()
        elif found and token.text in SIGNS and (nail := _nail(words, at, token.start - found[-1].end)):
            found[-1:] = [Token(word, found[-1].start, token.end) for word in nail]
            continue
        elif token.text == "/" and _divides(tokens, at):
            whole = "÷"  # 11'3 / 7, 8 1/8 / 2
        elif token.text == "buy" and words[at - 1] in ("divide", "divided", "multiply", "multiplied"):
            whole = "by"
        elif token.text == "×" and words[at + 1 : at + 3] in (["/", "12"], ["in", "12"]) and not _sized(words[at - 1]):
            whole, passed = "pitch", at + 2
        if whole == token.text:
            found.append(token)
            continue
        found += [Token(word, token.start, token.end) for word in whole.split()]
    return found


def _whole(words: list[str], at: int) -> str:
    """What the short word at a place stands for."""
    word, before, after = words[at], words[at - 1], words[at + 1]
    sized, led = _sized(before), after[:1].isdecimal()
    if word in _WORDS:
        return _WORDS[word]
    if word in _AFTER_SIZE:
        return _AFTER_SIZE[word] if sized or (before in ("how", "hw") and word in ("hi", "lg")) else _named(word, before, after)
    if word in _HOW_MANY:
        return word if led or after == ":" else "how many"
    if word in _LINEAL:
        return "ft" if sized else "foot"
    if word == "lm":
        return "m" if sized else "metre"
    if word == "dr":
        few = before.isdecimal() and int(before) <= MOST_DOORS
        return "door" if few or after in _DOORS or led else word
    if word == "n":
        return "and" if (sized and (led or after in ("a", "an"))) or _joins(before, after) else word
    if word == "w":
        return "with" if led and not sized else word
    if word == "sq" and after in _SQUARED:
        return "square"
    if word == "sq":
        few = before.isdecimal() and 0 < int(before) <= MOST_DOORS and (after in _PRICED or _by_the_square(words[at + 1 :]))
        if few:
            return "squares"  # 17 sq @ 412.50
        squares = before in _BEFORE_SQUARES and (after == "of" or after in _STOPS)
        return "squares" if squares or (after == "of" and before.isdecimal()) else word
    if word == "an":
        return "and" if after == "a" and words[at + 2] in _HALVES else word  # four an a half
    return _rare(word, before, after)


def _mitered(tokens: list[Token], said: set[str]) -> list[Token]:
    """With a meter that is a miter as it was heard: outside corner eighty six meter each side."""
    if "meter" not in said or _TURNED.isdisjoint(said) or not _METRIC.isdisjoint(said):
        return tokens
    words = ["", "", *(token.text for token in tokens)]
    turned = [token.text == "meter" and _of_a_corner(words[at : at + 2]) for at, token in enumerate(tokens)]
    return [Token("miter", t.start, t.end) if is_ else t for t, is_ in zip(tokens, turned, strict=True)]


def _of_a_corner(before: list[str]) -> bool:
    """Whether a corner can have so many degrees, and no board so many metres: eighty six meter."""
    return not TENS.keys().isdisjoint(before) or (before[-1].isdecimal() and int(before[-1]) >= _LEAST_TURN)


def _by_the_square(after: list[str]) -> bool:
    """Whether something costs or weighs so much a square: 27 sq | laminate @ 132.50/sq."""
    row = [*after, "", ""]
    metric = any(word == "sq" and then in _SQUARED_SIZES for word, then in pairwise(row)) or after[0] in _SQUARED_SIZES
    return not metric and any(word in ("/", "a", "per") and of in ("sq", "square") for word, of in pairwise(row))


def _nail(words: list[str], at: int, apart: int) -> list[str]:
    """A nail by its pennies; a d stands close to its number: 8d, and no 3-D."""
    return nail_of(words[at - 1], words[at], words[at + 1]) if apart < len(words[at]) else []


def _divides(tokens: list[Token], at: int) -> bool:
    """Whether a slash that stands apart on both sides divides: what is before it is a fraction or feet and inches already, or
    no tape and no roof has such parts."""
    before, sign, after = tokens[at - 2 : at - 1], tokens[at - 1], tokens[at : at + 1]
    if after and after[0].text == "12" and {token.text for token in tokens[at + 1 : at + 2]} & _ROOFED:
        return False  # 4 1/2 / 12 roof
    if not before or not after or not after[0].text.isdecimal() or not before[0].text[0].isdecimal():
        return False
    if before[0].end == sign.start or sign.end == after[0].start:
        return False
    part = [token.text for token in tokens[max(0, at - 3) : at - 2]] == ["/"]
    return part or int(after[0].text) not in _PARTS_OF


def _each(amount: str, article: str) -> bool:
    """Whether "a" after an amount is for each: 12 dollars a | piece."""
    return article == "a" and (_sized(amount) or amount in _AMOUNTS)


def _numbered(after: list[str], count: int) -> bool:
    """Whether a size follows, so many in number of it: 8 no. 1150, 4 no 900; 10 no 9 is put right."""
    at = after[:1] == ["."]
    size = after[at : at + 1]
    if not size or not size[0][:1].isdecimal():
        return False
    return at or (size[0].isdecimal() and int(size[0]) >= _LEAST_SIZE and int(size[0]) > _LEAST_SIZE // 10 * count)


def _sized(before: str) -> bool:
    """Whether a word is the end of a size."""
    return before[:1].isdecimal() or before in _SIZE_ENDS


def _joins(before: str, after: str) -> bool:
    """Whether an n between two words joins them: saw n tilt."""
    return len(before) > 1 and before.isalpha() and len(after) > 1 and (after.isalpha() and after not in _NAMED_N)


def _named(word: str, before: str, after: str) -> str:
    """What a short word for a way a thing goes is where no size stands before it: rake lg, if wd is 19-6."""
    if word == "lg" and before in _LONG:
        return "length"
    if word == "wd" and after in _GIVEN:
        return "width"
    return _ELSEWHERE.get(word, word)


def _rare(word: str, before: str, after: str) -> str:
    """What one that is as often another word stands for: level and the beam, overhang and a zero said aloud."""
    if word == "lvl" and before not in ("a", "an", "", "the") and after not in _BEAMS:
        return "level"
    if word == "mtrs":
        return "metres" if before in ("in", "to") else word  # else they may be miters
    if word == "bx":
        return "boxes" if before in ("many", "of") or before.isdecimal() else "box"
    if word == "wst":
        return "west" if after in _NORTH else "waste"
    if word == "deg":
        return "degrees" if before in ("in", "to") else word
    if word == "oh" and before in _SIZE_ENDS and not after[:1].isdecimal():
        return "overhang"
    return "north" if word == "nth" and after in _NORTH else word
