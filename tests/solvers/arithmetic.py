"""What is on the page, read back as with a calculator: an own little parser, sharing no code with the engine.

    sum     = product (("+" | "−") product)*
    product = signed (("×" | "/") signed)*
    signed  = "−" signed | power
    power   = atom ("²" | "³" | "^" signed)*
    atom    = number | name "(" sum ("," sum)* ")" | "(" sum ")" | "pi"
Angles are in degrees.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction

import mpmath

MP = mpmath.mp.clone()
MP.dps = 30
NEAR_WHOLE = MP.mpf(10) ** -20  # 5.0000…01 from a float is 5 to ceil and floor
FUNCTIONS: dict[str, Callable[..., mpmath.mpf]] = {
    "sin": lambda x: MP.sin(MP.radians(x)),
    "cos": lambda x: MP.cos(MP.radians(x)),
    "tan": lambda x: MP.tan(MP.radians(x)),
    "asin": lambda x: MP.degrees(MP.asin(x)),
    "acos": lambda x: MP.degrees(MP.acos(x)),
    "atan": lambda x: MP.degrees(MP.atan(x)),
    "exp": MP.exp,
    "ln": MP.log,
    "sqrt": MP.sqrt,
    "min": min,
    "max": max,
    "ceil": lambda x: MP.ceil(x - NEAR_WHOLE),
    "floor": lambda x: MP.floor(x + NEAR_WHOLE),
    "nearest": lambda x, step: MP.sign(x) * MP.floor(abs(x) / step + MP.mpf(0.5) + NEAR_WHOLE) * step,
}
SIGNS = "+−×/^²³(),≤≥="
_TOKEN = re.compile(rf"\s*(?:([{re.escape(SIGNS)}])|([^{re.escape(SIGNS)}]+))")


class Unreadable(ValueError):
    """A line that can't be read as arithmetic."""


def tokens(text: str) -> list[str]:
    """Signs, and whatever stands between them: numbers and names."""
    return [sign or other.strip() for sign, other in _TOKEN.findall(text.strip())]


def is_number(token: str) -> bool:
    return re.fullmatch(r"\d+(\.\d+)?", token) is not None


class _Reader:
    def __init__(self, text: str) -> None:
        self.text, self.left = text, tokens(text)

    def peek(self) -> str:
        return self.left[0] if self.left else ""

    def take(self, *wanted: str) -> str:
        if wanted and self.peek() not in wanted:
            raise Unreadable(f"{self.text!r}: {wanted} is missing before {self.left}")
        return self.left.pop(0)

    def sum(self) -> mpmath.mpf:
        value = self.product()
        while self.peek() in ("+", "−"):
            value = value + self.product() if self.take() == "+" else value - self.product()
        return value

    def product(self) -> mpmath.mpf:
        value = self.signed()
        while self.peek() in ("×", "/"):
            value = value * self.signed() if self.take() == "×" else value / self.signed()
        return value

    def signed(self) -> mpmath.mpf:
        if self.peek() == "−":
            self.take()
            return -self.signed()
        return self.power()

    def power(self) -> mpmath.mpf:
        value = self.atom()
        while self.peek() in ("²", "³", "^"):
            sign = self.take()
            value = MP.power(value, {"²": 2, "³": 3}[sign] if sign != "^" else self.signed())
        return value

    def atom(self) -> mpmath.mpf:
        token = self.take() if self.left else ""
        if token == "(":
            value = self.sum()
            self.take(")")
            return value
        if is_number(token):
            return MP.mpf(token)
        if token == "pi":
            return +MP.pi
        if token not in FUNCTIONS:
            raise Unreadable(f"{self.text!r}: {token!r} is no number")
        self.take("(")
        values = [self.sum()]
        while self.peek() == ",":
            self.take()
            values.append(self.sum())
        self.take(")")
        return FUNCTIONS[token](*values)


def value_of(text: str) -> mpmath.mpf:
    """The value of a line of arithmetic. Raises Unreadable."""
    reader = _Reader(text)
    value = reader.sum()
    if reader.left:
        raise Unreadable(f"{text!r}: {reader.left} is left over")
    return value


def names_filled(formula: str, filled: str) -> list[tuple[str, str]]:
    """Each name of a formula with the number put in for it; both must be the same expression otherwise.

    Raises Unreadable where they are not: a sign lost, a bracket lost, a term gone.
    """
    found: list[tuple[str, str]] = []
    left, names = tokens(filled), tokens(formula)
    for token, after in zip(names, [*names[1:], ""], strict=True):
        if token in SIGNS or (token in FUNCTIONS and after == "(") or token == "pi" or is_number(token):
            if not left or left.pop(0) != token:
                raise Unreadable(f"{formula!r} and {filled!r} part at {token!r}")
            continue
        number, taken = _number(left)
        if not taken:
            raise Unreadable(f"{filled!r} has no number for {token!r} of {formula!r}")
        found.append((token, number))
        del left[:taken]
    if left:
        raise Unreadable(f"{filled!r} goes on after {formula!r}: {left}")
    return found


def _number(left: list[str]) -> tuple[str, int]:
    """The number that stands first, and how many tokens it takes: 5, (−5), (1/3), (−1/3)."""
    if left and is_number(left[0]):
        return left[0], 1
    if "(" not in left[:1] or ")" not in left:
        return "", 0
    inside = left[1 : left.index(")")]
    digits = [token for token in inside if is_number(token)]
    if [token for token in inside if not is_number(token)] not in (["−"], ["/"], ["−", "/"]) or len(digits) > 2:
        return "", 0
    return "".join(inside), len(inside) + 2


# Values as they are shown: results of steps, and readings rounded for a person.

_SIZE = r"(?:\d+ \d+/\d+|\d+/\d+|\d+)"
_TAPE = re.compile(rf"(−?)({_SIZE}) in(?: \((−?)(\d+) ft(?: ({_SIZE}) in)?\))?")


def size(text: str) -> Fraction:
    """13 7/16 as a fraction; whatever a tape has no mark for raises Unreadable."""
    *whole, part = text.split()
    if "/" in part:
        top, bottom = map(int, part.split("/"))
        if bottom not in (2, 4, 8, 16, 32, 64) or top % 2 == 0 or top > bottom:
            raise Unreadable(f"{text!r} is on no tape")
    return sum((Fraction(each) for each in (*whole, part)), Fraction(0))


def tape_value(text: str) -> Fraction | None:
    """The inches of a reading like `161 1/8 in (13 ft 5 1/8 in)`, whose halves must agree; None for any other."""
    match = _TAPE.fullmatch(text)
    if match is None:
        return None
    sign, inches, again, feet, rest = match.groups()
    value = size(inches) * (-1 if sign else 1)
    if feet is not None:
        over = size(rest) if rest else Fraction(0)
        if over >= 12 or (int(feet) * 12 + over) * (-1 if again else 1) != value:
            raise Unreadable(f"{text!r} says two things")
    return value


def shown_value(text: str) -> tuple[Fraction, str]:
    """A number with what stands behind it: `−3.25 %`, `56.3°`, `5 in 12`, or a reading off the tape."""
    tape = tape_value(text)
    if tape is not None:
        return tape, "in"
    match = re.fullmatch(r"(−?)(\d+(?:\.\d+)?)(.*)", text)
    if match is None:
        raise Unreadable(f"{text!r} is no value")
    sign, digits, unit = match.groups()
    return Fraction(digits) * (-1 if sign else 1), unit.strip()
