"""A line after an answer as a thumb types it, spelled out: "@ 28 ea" is "at 28 each", "m2?" is "in square metres".

What a first question is typed in is spelled out word by word as it is read (`intents.texted`); what a line after it stands for
is told by patterns over its text, which know whole words alone.
"""

from __future__ import annotations

import re

from intents.expressions import expression
from intents.matcher import speller
from intents.sound_alikes import settled
from intents.sound_words import SOUNDS
from intents.texted import texted
from intents.tokens import Token, tokenize
from intents.vocabulary import NUMBER_WORDS

_LEADING_N = expression(
    r"^(\W*(?:(?:ok|so|aye)\W+)?)"
    r"(?:n\b(?!\s*(?:wall|side|gable|end|elevation)\b)"
    r"|an\b(?='? (?:if|what|how|then|at|the|for|with|wi|less|plus|minus|add|make)\b))",
    re.IGNORECASE,
)
_TO_NEAREST = expression(r"\bt(?:wo|oo) the nearest\b", re.IGNORECASE)  # as it was heard
_FOUR_OF = expression(r"\b(?:for|fore|too|to)(?= of (?:those|them|these|'?em)\b)", re.IGNORECASE)  # as it was heard
_ONES = {"for": "four", "fore": "four", "to": "two", "too": "two", "ate": "eight", "won": "one"}
_NOT_SO_MANY = expression(  # make it sixty, not fifty too
    r"(\b(?:not|instead of|rather than) (?:twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety))[ -](for|fore|too?|ate"
    r"|won)\b(?=\W*$)",
    re.IGNORECASE,
)
_SOUNDS_OF = {"for": "four", "fore": "four", "to": "two", "too": "two"}
_FOR_THAT = expression(r"(?<=[a-z] )four(?= (?:that|the|this) lot\b)", re.IGNORECASE)
_N_OF = expression(r"(?<=\d) of (?=(?:overhang|tail|reveal|waste|lap|run|rise|fall|bite)\b)", re.IGNORECASE)  # 300 of overhang
_I_MEAN = expression(r"^(?!\W*(?:no|sorry|wait)\b)(?P<what>.+?),?\s+i (?:meant?|should say|should have said)\W*$", re.IGNORECASE)
_FORECAST = expression(
    r"^\W*(?:(?:and|but|well|now)\W+)*(?:the |my |his |her )?(?:[a-z]+(?:['’]s)? )?"
    r"(?:app|radio|forecast|phone|weatherman|telly|tv|paper) (?:says?|said|has|reckons?|gives?)(?: that| it['’]?s)?\s+"
    r"(?=.*\d)(?=.*\b(?:dew|low|lows|humidity|percent)\b)",
    re.IGNORECASE,
)
_THOUGH = expression(r"(?<=\w),?\s+(?:though|tho|mind you)\W*$", re.IGNORECASE)
_OVERHANG = expression(r"(?<=[\d'\"])\s*o\s?[/.]?\s?h\b|(?<=\bmm )o/?h\b|(?<=\bin )o/?h\b|(?<=\bno )oh\b|\bo/h\b", re.IGNORECASE)
_AT = expression(r"@\s*(?=[\d.$£€])")
_A_UNIT = expression(  # 5.40/sf, 62/m2, 3.25/ft
    r"(?<=\d)\s?/\s?(?P<unit>sf|sqft|sq ft|m2|lf|ft|foot|m|metre|meter|stick|stk|board|bd|brd|box|tube|roll)\b", re.IGNORECASE
)
_CALLED = {
    **dict.fromkeys(("sf", "sqft", "sq ft"), "square foot"), **dict.fromkeys(("lf", "ft", "foot"), "foot"),
    **dict.fromkeys(("m", "metre", "meter"), "metre"), "m2": "square metre", "stk": "stick", "bd": "board", "brd": "board",
}  # fmt: skip
_COST_FIRST = expression(r"^\W*(?:(?:and|ok|so)\W+)*(?:cost|cst|price|total|tot)\W+(?=at [\d.$£€])", re.IGNORECASE)
_COST_LAST = expression(r"(at [\d.$£€]+ (?:each|apiece|a [a-z]+(?: [a-z]+)?))\W+(?:cost|cst|price|total|tot)\W*", re.IGNORECASE)
_PER_FOOT, _HIGH_AND_LOW = expression(r"\bper ft\b", re.IGNORECASE), expression(r"\bhi(?:gh)? (?:n|and|&) lo\b", re.IGNORECASE)
_SQUARES = expression(r"\bsq(?= (?:w/|with\b|fascia\b|to\b|cut\b|end))", re.IGNORECASE)
_SHARES = expression(r"^\W*(?:w/|with)\s*(?=\d+ ?(?:%|percent)\W*$)", re.IGNORECASE)
_ALONE = expression(
    r"\W*(?P<lead>(?:(?:and|n|ok|so|pls|please|in|now|as)\W+)*)"
    r"(?P<unit>mm|cm|m|ft|in|ft in|ft n in|ft and in|inches|inch|feet|metres?|meters?|sf|sq ft|sqft|m2|sq m|kg|kgs|kilos|lbs?"
    r"|pounds|f|c|gal|litres?|liters?)\W*?(?P<please>\s+(?:pls|please))?(?P<asks>\s*\?+)?\W*",
    re.IGNORECASE,
)
_UNITS = {
    "mm": "mm", "cm": "cm", "m": "metres", "ft": "feet", "in": "inches", "inch": "inches", "ft in": "feet and inches",
    "ft n in": "feet and inches", "ft and in": "feet and inches", "sf": "square feet", "sq ft": "square feet",
    "sqft": "square feet", "m2": "square metres", "sq m": "square metres", "kg": "kilos", "kgs": "kilos", "lb": "pounds",
    "lbs": "pounds", "gal": "gallons", "f": "Fahrenheit", "c": "Celsius",
}  # fmt: skip
_SHORT = {
    "exp": "exposure", "len": "length", "wid": "wide", "rad": "radius", "meas": "measured", "sprng": "spring", "pcs": "pieces",
    "deg": "degrees", "tot": "total", "nrst": "nearest", "w/out": "without",
}  # fmt: skip
_SHORTS = expression(rf"\b(?:{'|'.join(_SHORT)})\b", re.IGNORECASE)
LEAST = 4  # letters of a word whose slips are forgiven
_LENGTHS = frozenset(("mm", "cm", "inches", "inch", "feet", "metre", "metres", "meter", "meters"))  # whole words of length


def spelled_out(text: str) -> str:
    """The line in whole words; as it is where it has none but whole ones."""
    alone = _ALONE.fullmatch(text)
    if alone is not None and _asks_for(alone):
        unit = " ".join(alone["unit"].lower().split())
        return f"in {_UNITS.get(unit, unit)}"
    text = _N_OF.sub(" ", _FOUR_OF.sub(lambda found: _SOUNDS_OF[found[0].lower()], _FOR_THAT.sub("for", text)))
    text = _PER_FOOT.sub("per foot", _HIGH_AND_LOW.sub("high and low", _SQUARES.sub(_squares, text)))
    text = _I_MEAN.sub(r"no, \g<what>", _THOUGH.sub("", _FORECAST.sub("", text)))
    text = _TO_NEAREST.sub("to the nearest", _LEADING_N.sub(r"\1and", text))
    text = _OVERHANG.sub(lambda found: "overhang" if text[found.start() - 1 : found.start()] == " " else " overhang", text)
    text = _AT.sub("at ", _A_UNIT.sub(lambda found: f" a {_called(found['unit'])}", text))
    text = _SHORTS.sub(lambda found: _SHORT[found[0].lower()], _whole_words(text))
    priced = _COST_FIRST.sub("", text)
    alone = _COST_LAST.fullmatch(priced)
    return _SHARES.sub("with ", alone[1] if alone is not None else priced)


def _squares(found: re.Match[str]) -> str:
    """Squares, where their waste comes next, and else square: sq w/ 10 %, sq fascia."""
    return "squares" if found.string[found.end() :].lstrip().lower().startswith("w") else "square"


def _asks_for(alone: re.Match[str]) -> bool:
    """Whether a unit said alone asks for the answer in it; a whole word of length may tell of a number that had none."""
    return bool(alone["asks"] or alone["please"] or alone["lead"].strip()) or alone["unit"].lower() not in _LENGTHS


def _called(unit: str) -> str:
    return _CALLED.get(unit.lower(), unit.lower())


def sounds_told(text: str) -> str:
    """The line with each number that was heard as a small word in its place: "make it too percent" is "make it two percent".

    What is said after a question is told by patterns over its text, which know no such words; a doubt stays as it was heard.
    """
    typed = tokenize(text)
    if SOUNDS.isdisjoint(token.text for token in typed):
        return text
    return _retold(_NOT_SO_MANY.sub(lambda found: f"{found[1]} {_ONES[found[2].lower()]}", text), typed, settled(typed).tokens)


def _whole_words(text: str) -> str:
    """The text with its short words as `texted` spells them out, each where it stood, and its numbers without their slips."""
    typed = tokenize(text)
    return _retold(text, typed, [_number_mended(token) for token in texted(typed)])


def _number_mended(token: Token) -> Token:
    """A word that is no word, and all but a number, as that number: twleve."""
    if len(token.text) < LEAST or not token.text.isalpha():
        return token
    read = speller().read(token.text)
    return Token(read, token.start, token.end) if read != token.text and read in NUMBER_WORDS else token


def _retold(text: str, typed: list[Token], spelled: list[Token]) -> str:
    """The text with other words in the place of some of those typed."""
    if len(typed) == len(spelled) and all(one.text == two.text for one, two in zip(typed, spelled, strict=True)):
        return text
    words, was = _by_start(spelled), _by_start(typed)
    found, at = "", 0
    for start, mine in was.items():  # ½ is three tokens of one sign
        said, end = [token.text for token in words.get(start, [])], mine[-1].end
        found += text[at:start] if said else text[at:start].rstrip()
        found += text[start:end] if said == [token.text for token in mine] else " ".join(said)
        at = end
    return found + text[at:]


def _by_start(tokens: list[Token]) -> dict[int, list[Token]]:
    """The tokens that begin at each place of a text."""
    found: dict[int, list[Token]] = {}
    for token in tokens:
        found.setdefault(token.start, []).append(token)
    return found
