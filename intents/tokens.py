"""Words in, tokens out: numbers, units, signs and words of a question, each with its place in the text.

What people type is untidy (12’-6½″, 5-in-12, 16"oc, 1,200) and what is pasted is worse; everything after this
module sees one plain spelling. Linear in the length of the text.
"""

from __future__ import annotations

import re
import unicodedata
from dataclasses import dataclass
from functools import lru_cache

from intents.expressions import expression

# Signs that mean the same to a builder, in one spelling. NFKC comes after: on its own it would turn 7½ into 71⁄2.
_SIGNS = str.maketrans(
    {
        **dict.fromkeys("×✕✖⨯∗*", "×"),
        **dict.fromkeys("–—−‐‑‒―﹣－", "-"),
        **dict.fromkeys("′‘’‛ʹʼ`´", "'"),
        **dict.fromkeys("″“”„‟ʺ", '"'),
        **dict.fromkeys("º˚", "°"),
        **dict.fromkeys("⁄∕", "/"),
        "∶": ":",
    }
)
_NUMBER = r"(?:[0-9]{1,3}(?:,[0-9]{3})+(?![0-9]|,[0-9])(?:\.[0-9]+)?|[0-9]+(?:\.[0-9]+)?|\.[0-9]+)"
_COMMA = r"[0-9]{1,3},[0-9]{1,2}(?=\s?(?:m|mm|cm|metres?|meters?|kg|m2|m²)\b)"  # 7,6 m, as half the world writes it
_PIECE = expression(
    r"(?P<ordinal>[0-9]{1,4}(?:ths?|nds?|rds?|sts?)(?![^\W_]))"
    rf"|(?P<comma>{_COMMA})"
    rf"|(?P<number>{_NUMBER})"
    r"|(?P<centres>o\.c\.|o\.c|o/c|c/c)(?![^\W_])"
    r"|(?P<power>(?:mm|cm|m|ft|in)[23])(?![0-9/\"']|\.[0-9])"
    r"|(?P<word>[^\W\d_]+(?:'[^\W\d_]+)?)"
    r"|(?P<inches>'')"
    r"|(?P<sign>[^\s\w])"
)
_SENTENCE = expression(r"\.\s+(?!(?:Ft|In|Inch|Inches|Feet|Foot|Oz)\b)[A-Z]")  # a stop that ends a sentence, "36 in. My wall"
_SHORT = frozenset(
    ["ft", "in", "sq", "cu", "fl", "deg", "lb", "lbs", "oz", "gal", "yd", "yds", "approx", "mm", "cm", "m"]
)
_UNITS = frozenset(["ft", "in", "mm", "cm", "m", "foot", "feet", "inch", "inches", "yd"])
_SIGNS_OF_MANY = {"sq's": "squares", "c's": "oc"}  # texted
_EIGHTHS, _SOME_EIGHTHS = ("ate's", "eight's", "ates"), frozenset("three five seven 3 5 7".split())
_IS = frozenset(["one", "what", "where", "how", "who", "it", "that", "there", "here", "when", "which"])
_HOW = frozenset("high long far wide tall deep much many steep big thick heavy".split())  # how high'd it come out
_ENDINGS = ("'s", "'d", "ll")
LONGEST = 24  # digits in a number: past this it is not a measurement, and int() would refuse thousands of them


@dataclass(slots=True, unsafe_hash=True)
class Token:
    """A number ("12", "3.5"), a word, or one sign, in lower case; `start` and `end` are characters of the text.

    Never changed; to say so in code takes four times as long.
    """

    text: str
    start: int
    end: int


# A comma as the decimal sign, as much of Europe writes it, where a unit of angle or of metres follows: 91,5 degrees; 2,4 m.
_DECIMAL_COMMA = re.compile(r"(?<=\d),(?=\d ?(?:degrees?|deg|°|m|metres?|meters?|kg)\b)")


def tokenize(text: str) -> list[Token]:
    """The tokens of a text. Commas between numbers stay as tokens; a number's thousands commas go."""
    return list(_tokens_of(text))


@lru_cache(maxsize=128)  # a line of a talk is held against a hundred patterns, and most look at its numbers
def _tokens_of(text: str) -> tuple[Token, ...]:
    plain, places = _plain(text)
    if "," in plain:
        plain = _DECIMAL_COMMA.sub(".", plain)
    tokens: list[Token] = []
    ends = {match.start() for match in _SENTENCE.finditer(text)}
    for match in _PIECE.finditer(plain):
        found = match.group()
        if match.lastgroup == "word" and found[-1] != "x" and found[-2:] not in _ENDINGS and found != "o":  # nearly all
            tokens.append(Token(found, *match.span()))
        elif found == "." and (places[match.start()] if places else match.start()) in ends:
            tokens.append(Token(".", match.start(), match.end()))
        else:
            _add(tokens, match, plain)
    if places is None:
        return tuple(tokens)
    return tuple([Token(token.text, places[token.start], places[token.end - 1] + 1) for token in tokens])


def _plain(text: str) -> tuple[str, list[int] | None]:
    """The text in plain lower-case characters, and where each came from (None when they line up)."""
    if text.isascii():
        return text.lower().replace("`", "'").replace("*", "×"), None
    characters: list[str] = []
    places: list[int] = []
    for place, character in enumerate(text):
        spelt = _spelt(character, characters[-1] if characters else " ")
        if spelt:
            characters.append(spelt)
            places.extend([place] * len(spelt))
    return "".join(characters), places


def _spelt(character: str, before: str) -> str:
    """One character in plain ones; `before` is what the character before it became."""
    if character.isascii():
        apart = character.isdecimal() and "/" in before and len(before) > 1  # ½5 is not 1/25
        return " " * apart + character.translate(_SIGNS).lower()
    signed = character.translate(_SIGNS)
    if signed != character:
        return signed
    if character in "²³":
        return unicodedata.normalize("NFKC", character) if before.isalpha() else character
    spelt = unicodedata.normalize("NFKC", character).translate(_SIGNS).lower()
    if "/" in spelt and unicodedata.category(character) == "No":  # ½ and its like
        return (" " if before[-1].isdecimal() else "") + spelt
    if unicodedata.category(character) == "Cf":  # joiners and byte-order marks stand for nothing
        return ""
    return "".join(str(unicodedata.decimal(each, each)) for each in spelt)


def _add(tokens: list[Token], match: re.Match[str], plain: str) -> None:
    """Append what one match stands for."""
    kind, found, start, end = match.lastgroup, match.group(), match.start(), match.end()
    if kind == "number":
        spelt = found.replace(",", "")
        tokens.append(Token("0" + spelt if spelt[0] == "." else spelt, start, end))
    elif kind == "comma":
        tokens.append(Token(found.replace(",", "."), start, end))
    elif kind == "word":
        _add_word(tokens, found, start, plain)
    elif kind == "sign":
        _add_sign(tokens, found, start, plain)
    else:
        spelt = {"centres": "oc", "inches": '"'}.get(kind or "", found)
        tokens.append(Token(spelt, start, end))


def _add_word(tokens: list[Token], word: str, start: int, plain: str) -> None:
    """A word, without its possessive; an x is a times sign; "what's" is two words."""
    end = start + len(word)
    after = plain[end : end + 1]
    if word == "x":
        tokens.append(Token("×", start, end))
    elif word == "o" and after == "'":  # half o' that
        tokens.append(Token("of", start, end))
    elif word[-1] == "x" and after.isdecimal() and word[:-1] in _UNITS:
        tokens += [Token(word[:-1], start, end - 1), Token("×", end - 1, end)]
    elif word in _EIGHTHS and tokens and tokens[-1].text in _SOME_EIGHTHS:
        tokens.append(Token("eighths", start, end))
    elif word.endswith(("'d", "'ll")) and word.partition("'")[0] in _HOW:
        tokens.append(Token(word.partition("'")[0], start, start + word.index("'")))
    elif word in _SIGNS_OF_MANY:
        tokens.append(Token(_SIGNS_OF_MANY[word], start, end))
    elif word.endswith("'s"):
        tokens.append(Token(word[:-2], start, end - 2))
        if word[:-2] in _IS and (word[:-2] != "one" or plain[end : end + 2].strip().isalpha()):  # one's ninety, and no 190
            tokens.append(Token("is", end - 2, end))
    else:
        tokens.append(Token(word, start, end))


def _add_sign(tokens: list[Token], sign: str, start: int, plain: str) -> None:
    """A sign that means something where it stands: hyphens inside words, stray quotes and stops after ft. do not."""
    before, after = plain[start - 1 : start], plain[start + 1 : start + 2]
    last = tokens[-1] if tokens else None
    if sign == "-" and before and not before.isspace() and (before.isalpha() or after.isalpha()):
        return
    if sign in "'\"" and not _marks_number(last, start, after):
        return
    if sign == "." and last and last.end == start and last.text in _SHORT:
        return
    if sign.isprintable():
        tokens.append(Token(sign, start, start + 1))


def _marks_number(last: Token | None, start: int, after: str) -> bool:
    """Whether a quote sign is feet or inches: it touches the number before it, or stands free after one."""
    return bool(last and last.text[-1].isdecimal() and (last.end == start or not after.strip()))


def literal(token: str) -> bool:
    """Whether a token is a number in digits."""
    return token[:1].isdecimal() and token[-1].isdecimal() and len(token) <= LONGEST
