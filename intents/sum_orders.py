"""The order of a chain of operations: × and ÷ first where it is typed in signs, as spoken where it is said."""

from __future__ import annotations

from solvers.quantities import Length, Number
from solvers.sums import DIVIDED, TIMES, Part, Sum

AS_SPOKEN = "as spoken, left to right"
FEW = 12  # of a size, as is said in a sum
SIGNS_FIRST = "× and ÷ before + and −"


def folded(parts: list[Part | None], operations: list[str], signs: bool) -> Part:
    """One tree of a chain, with the other order beside it where the two differ."""
    if not operations:
        assert parts[0] is not None
        return parts[0]
    first, spoken = _products_first(parts, operations), _left_to_right(parts, operations)
    assert isinstance(first, Sum) and isinstance(spoken, Sum)
    if first == spoken:
        return first
    taken, other, rule = (first, spoken, SIGNS_FIRST) if signs or _counted_each(parts, operations) else (spoken, first, AS_SPOKEN)
    return Sum(taken.operation, taken.left, taken.right, "", rule, other)


def _counted_each(parts: list[Part | None], operations: list[str]) -> bool:
    """Whether two sizes or more are each told so many times: 3 1/2 times 4 plus 1 1/2 times 2."""
    times = [at for at, operation in enumerate(operations) if operation == TIMES]
    return len(times) > 1 and DIVIDED not in operations and all(_a_size(parts[at]) and _a_count(parts[at + 1]) for at in times)


def _a_size(part: Part | None) -> bool:
    return isinstance(part, Length) or (isinstance(part, Number) and part.value.denominator > 1)


def _a_count(part: Part | None) -> bool:
    return isinstance(part, Number) and part.value.denominator == 1 and part.value > 1


def _products_first(parts: list[Part | None], operations: list[str]) -> Part | None:
    """× and ÷ before + and −."""
    terms: list[Part | None] = [parts[0]]
    sums_: list[str] = []
    for operation, part in zip(operations, parts[1:], strict=True):
        if operation in (TIMES, DIVIDED):
            terms[-1] = Sum(operation, terms[-1], part)
        else:
            sums_.append(operation)
            terms.append(part)
    return _fold(terms, sums_)


def _left_to_right(parts: list[Part | None], operations: list[str]) -> Part | None:
    """As spoken; a plain number times a length is one thing said together: less three times eleven and a half."""
    terms: list[Part | None] = [parts[0]]
    kept: list[str] = []
    for operation, part in zip(operations, parts[1:], strict=True):
        counts = operation == TIMES and kept and isinstance(terms[-1], Number)
        if counts and (isinstance(part, Length) or _of(terms, part)):
            terms[-1] = Sum(operation, terms[-1], part)
        else:
            kept.append(operation)
            terms.append(part)
    return _fold(terms, kept)


def _of(terms: list[Part | None], part: Part | None) -> bool:
    """Whether so many of a size are said: three times 11 1/2 off the tape, five times 27 after 12 foot.

    Where none has its unit, a few of a size that the first is more than: 2440 take away three times 595.
    """
    first, few = terms[0], terms[-1]
    if not (isinstance(few, Number) and isinstance(part, Number)) or few.value.denominator > 1:
        return False
    if part.value.denominator > 1 or any(isinstance(term, Length) for term in terms):
        return True
    return isinstance(first, Number) and few.value <= FEW < part.value and first.value > part.value


def _fold(terms: list[Part | None], operations: list[str]) -> Part | None:
    total = terms[0]
    for operation, part in zip(operations, terms[1:], strict=True):
        total = Sum(operation, total, part)
    return total
