"""The running total: a sum that goes on from the answer before it ("plus another 4 and 3 eighths")."""

from __future__ import annotations

from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.several import worked_out
from solvers.exact import fraction
from solvers.quantities import LENGTH, Length, Number
from solvers.registry import Topic
from solvers.slots import Given
from solvers.sums import DIVIDED, TIMES, Part, Sum, leaves

if TYPE_CHECKING:
    from assistant.conversation import Asked


_FACTORS = {TIMES: ("x", "×", "*"), DIVIDED: ("/", "÷")}  # as they are typed


def running(topic: Topic, givens: dict[str, Given], last: Asked | None) -> dict[str, Given]:
    """The givens, with the answer before this line for the part that a sum goes on from."""
    said = givens.get("sum")
    other = givens.get("other")
    if last is None or said is None or said.source != "asked" or (other and other.source == "asked"):
        return givens
    if topic.name != "tape arithmetic" or not _goes_on(said.value):
        return givens
    if (anew := _factor_anew(said.value, last)) is not None:
        return {**givens, "sum": Given("sum", anew, "asked")}
    total = length_of(last)
    if total is None:
        return givens
    gone_on = {**givens, "other": Given("other", total, "earlier")}
    if total.unit == "mm" and _whole_numbers(said.value) and "bare" not in givens:  # 12 less than 2049 mm is 12 mm less
        gone_on["bare"] = Given("bare", topic.parameter("bare").kind["MILLIMETRES"], "earlier")  # type: ignore[index]
    return gone_on


def _factor_anew(part: Part, last: Asked) -> Sum | None:
    """The product or division before with another factor, where only that is typed, sign and all: 11'3 / 7 | / 6."""
    before = last.givens["sum"].value if "sum" in last.givens else None
    if not isinstance(part, Sum) or not isinstance(before, Sum) or part.left is not None or before.left is None:
        return None
    alike = part.operation == before.operation in _FACTORS and part.text[:1] in _FACTORS[part.operation]
    return Sum(part.operation, before.left, part.right) if alike and isinstance(before.right, Number) else None


def _goes_on(part: Part | None) -> bool:
    """Whether the first part of a sum was not said."""
    return _goes_on(part.left) if isinstance(part, Sum) else part is None


def _whole_numbers(part: Part) -> bool:
    """Whether every number a sum tells without a unit is whole: 12 goes on in millimetres, 3/8 is read off a tape."""
    bare = [leaf for leaf in leaves(part) if isinstance(leaf, Number)]
    return bool(bare) and all(leaf.value.denominator == 1 for leaf in bare)


def length_of(last: Asked) -> Length | None:
    """The exact answer of the question before, when it is a length."""
    worked = worked_out(last, last.givens)
    result = worked.working.result if worked.working else None
    if result is None or result.value is None or result.unit not in LENGTH:
        return None
    return Length(Fraction(fraction(result.value)), result.unit, result.text.split(" (")[0])
