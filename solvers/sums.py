"""A sum as said or typed: a small tree of lengths, numbers and the operations between them."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from fractions import Fraction

from solvers.printing import SIGNS, decimal
from solvers.quantities import Length, Number, Quantity

PLUS, MINUS, TIMES, DIVIDED = "+", "−", "×", "÷"
WORDS = {PLUS: "plus", MINUS: "minus", TIMES: "times", DIVIDED: "divided by"}
GOES_ON = (PLUS, MINUS)  # needs no brackets after one of these


@dataclass(frozen=True, slots=True)
class Sum:
    """One operation on two parts; a part that is None was not said.

    `rule` says in words which order was taken where another was possible; `other` is the sum in that other order.
    """

    operation: str
    left: Part | None
    right: Part | None
    text: str = ""
    rule: str = ""
    other: Sum | None = field(default=None, compare=False)

    def said(self, text: str) -> Sum:
        """The same sum, remembering the words it was said in, unless it already says which of two it is."""
        return self if self.text else replace(self, text=text)

    def __str__(self) -> str:
        return self.text or self.formula

    @property
    def formula(self) -> str:
        """What is done with what, in signs, whatever words it was told in; no brackets where sums only go on."""
        left, right = (part.formula if isinstance(part, Sum) else shown(part) for part in (self.left, self.right))
        left = left if self._left_goes_on else f"({left})"
        return f"{left} {self.operation} " + (f"({right})" if isinstance(self.right, Sum) else right)

    @property
    def all_said(self) -> bool:
        """Whether every part of it was said."""
        parts = (self.left, self.right)
        return None not in parts and all(part.all_said for part in parts if isinstance(part, Sum))

    @property
    def in_words(self) -> str:
        """The same for the ear; "" where no words tell it without brackets."""
        left, right = (part.in_words if isinstance(part, Sum) else shown(part) for part in (self.left, self.right))
        plain = not isinstance(self.right, Sum) or (self.operation in GOES_ON and self.right.operation not in GOES_ON)
        return f"{left}{'' if self._left_goes_on else ','} {WORDS[self.operation]} {right}" if left and right and plain else ""

    @property
    def _left_goes_on(self) -> bool:
        return not isinstance(self.left, Sum) or (self.operation in GOES_ON and self.left.operation in GOES_ON)


Part = Sum | Length | Number


@dataclass(frozen=True, slots=True)
class Measure:
    """Any quantity with a unit, to be turned into another."""

    quantity: Quantity

    def __str__(self) -> str:
        return shown(self.quantity)


def shown(part: Sum | Quantity | None) -> str:
    """A part as a person reads it."""
    if part is None:
        return "?"
    if isinstance(part, Sum):
        return f"({part})"
    return part.text or decimal(part.value, 6) + SIGNS.get(part.unit, "")


def leaves(part: Part | None) -> list[Length | Number]:
    """The lengths and numbers of a sum, in the order said."""
    if part is None:
        return []
    return [*leaves(part.left), *leaves(part.right)] if isinstance(part, Sum) else [part]


def filled_in(part: Part | None, missing: Length | None) -> Part | None:
    """The sum with the part that was not said put in."""
    if part is None:
        return missing
    if not isinstance(part, Sum):
        return part
    return replace(part, left=filled_in(part.left, missing), right=filled_in(part.right, missing))


def with_units(part: Part, unit: str | None) -> Part:
    """Bare numbers that are added, or divided, made lengths; `unit` is what a number with none is taken as.

    A number that multiplies, or divides, stays a number.
    """
    if isinstance(part, Sum):
        assert part.left is not None and part.right is not None
        left, right = with_units(part.left, unit), with_units(part.right, unit)
        if part.operation in (PLUS, MINUS) and is_length(left) != is_length(right):
            left, right = _length(left, unit), _length(right, unit)
        return replace(part, left=left, right=right)
    return part


def _length(part: Part, unit: str | None) -> Part:
    if isinstance(part, Number) and unit:
        return Length(part.value, unit, part.text)
    if isinstance(part, Sum) and not is_length(part):
        assert part.left is not None and part.right is not None
        keep = part.right if part.operation in (TIMES, DIVIDED) else _length(part.right, unit)
        return replace(part, left=_length(part.left, unit), right=keep)
    return part


def is_length(part: Part) -> bool:
    """Whether a part comes to a length."""
    if isinstance(part, Sum):
        assert part.left is not None and part.right is not None
        left, right = is_length(part.left), is_length(part.right)
        return left and not right if part.operation == DIVIDED else left or right
    return isinstance(part, Length)


def plain_size(part: Part | None) -> Fraction:
    """A plain part in inches, a bare number as it is, to tell the larger of two; sums count as nothing."""
    return part.to("in").value if isinstance(part, Length) else part.value if isinstance(part, Number) else Fraction(0)


def told_as_length(part: Part | None) -> bool:
    """Whether a plain part is surely a length: its unit is said, or it is read off a tape."""
    return isinstance(part, Length) or (isinstance(part, Number) and part.value.denominator > 1)


def in_millimetres(part: Part) -> Fraction:
    """The value reckoned apart, lengths in millimetres. Raises ZeroDivisionError."""
    if isinstance(part, Length):
        return part.to("mm").value
    if isinstance(part, Number):
        return part.value
    assert part.left is not None and part.right is not None
    left, right = in_millimetres(part.left), in_millimetres(part.right)
    if part.operation == PLUS:
        return left + right
    if part.operation == MINUS:
        return left - right
    return left * right if part.operation == TIMES else left / right


def metres_and_millimetres(whole: Sum) -> Part | None:
    """A sum with no unit that comes to less than nothing unless its decimals are metres and the rest millimetres: 1.8 less 45."""
    numbers = [leaf for leaf in leaves(whole) if isinstance(leaf, Number)]
    decimals = [leaf for leaf in numbers if "." in leaf.text]
    alike = all(leaf.value.denominator == 1 for leaf in numbers if leaf not in decimals)
    halves = all(leaf.value.denominator == 2 for leaf in decimals)  # of an inch, as like as not
    if not decimals or halves or not alike or len(numbers) < len(leaves(whole)):
        return None
    if not (whole.all_said and does_only(whole, PLUS, MINUS)) or in_millimetres(whole) >= 0:
        return None

    def measured(part: Part) -> Part:
        if isinstance(part, Sum):
            assert part.left is not None and part.right is not None
            return Sum(part.operation, measured(part.left), measured(part.right), part.text, part.rule, part.other)
        return Length(part.value, "m" if part in decimals else "mm", part.text)

    made = measured(whole)
    return made if in_millimetres(made) > 0 else None


def does_only(part: Part | None, *operations: str) -> bool:
    """Whether nothing else is done in a sum; a part that was not said does nothing."""
    return not isinstance(part, Sum) or (
        part.operation in operations and does_only(part.left, *operations) and does_only(part.right, *operations)
    )
