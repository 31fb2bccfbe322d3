"""Sums on the tape: feet, inches, fractions, decimals and metric in any mix, exactly."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Annotated

from solvers.constants import MM_PER_INCH
from solvers.errors import NeedMore
from solvers.exact import Term, floor, fraction
from solvers.printing import decimal
from solvers.quantities import Length, Number
from solvers.registry import topic
from solvers.slots import Choice, Slot
from solvers.sums import (
    DIVIDED,
    MINUS,
    PLUS,
    TIMES,
    WORDS,
    Part,
    Sum,
    does_only,
    filled_in,
    in_millimetres,
    is_length,
    leaves,
    shown,
    with_units,
)
from solvers.tape import millimetres, tape
from solvers.working import Working

MOST_PARTS = 60
SURELY_MM = 50  # a bare number beside metres from here on: no wall is so many metres
MOST_SAID = 6  # parts of a sum that are said over
FAR_MORE = 3  # times what is said in metres: a whole number beside it is millimetres
LARGE_MM, FEW_METRES = 100, 4  # beside so many millimetres a decimal below so much may be metres
NO_INCHES = 300  # nor is one of so many inches, where the answer is asked in metric
NEVER_INCHES = 1000  # beside feet or inches: no board is of so many
_METRIC = {"mm": "millimetres", "cm": "centimetres", "m": "metres"}
_FEET = frozenset("f'’′")  # of its letters one says that a length has feet
_TAPE = (2, 4, 8, 16, 32, 64)
WHY = {PLUS: "added on", MINUS: "taken off", TIMES: "that many times", DIVIDED: "divided"}
BELOW_ZERO = "That is less than nothing: more is taken off than there is, by as much as the answer says."
STRIP_CAUTION = "Cut the long one first, and measure again before the last cut."


class BareUnit(Choice):
    """What a number said without a unit is."""

    INCHES = "inches"
    FEET = "feet"
    MILLIMETRES = "millimetres"
    METRES = "metres"
    MONEY = "money"


UNITS = {BareUnit.INCHES: "in", BareUnit.FEET: "ft", BareUnit.MILLIMETRES: "mm", BareUnit.METRES: "m"}


@topic("tape arithmetic", "tape")
def tape_arithmetic(
    work: Working,
    sum: Annotated[Sum, Slot("What sum? Like 12 foot 6 plus 3 foot 4 and a half.")],
    other: Annotated[
        Length | None, Slot("What is the other length?", bare=("in",), cued=True, name="other part")
    ] = None,
    bare: Annotated[BareUnit | None, Slot("Feet or inches?", name="numbers without a unit")] = None,
) -> None:
    """Exact length of a sum of feet, inches, fractions, decimals and metric, read on the tape and in millimetres.

    Signs typed: × and ÷ before + and −; spoken: as spoken, left to right. Refuses dividing by zero and a length times a
    length. Dividing gives the remainder too. Source: arithmetic, exact.
    """
    whole = _whole(work, sum, other, bare)
    steps = _Steps(work)
    total = steps.work_out(whole)
    if sum.rule:
        work.also_word("order", sum.rule)
        _other_order(work, sum, other, bare)
    if bare is BareUnit.MONEY:
        work.answer("money", total * 1, "in money", "money")
        check = work.term("worked in hundredths", in_millimetres(whole) * 100, "none") / 100
    elif total.unit == "in":
        work.answer("length", total)
        _readings(work, total)
        check = work.term("in millimetres", in_millimetres(whole), "mm") / MM_PER_INCH
    else:
        work.answer("result", total)
        check = work.term("worked in millimetres", in_millimetres(whole), "none")
    work.check("worked again in millimetres", check, "=", total)
    if sum.operation == DIVIDED:
        _remainder(work, steps)
    work.said = _spoken(work, total, sum)
    _strip(work, whole, total)
    if total.unit == "in" and total.value < 0:
        work.caution(BELOW_ZERO)


def _whole(work: Working, sum: Sum, other: Term | None, bare: BareUnit | None) -> Part:
    """The sum with nothing left out: the other part put in, bare numbers given their unit."""
    missing = None if other is None else Length(fraction(other.value), other.unit)
    if missing is None and not sum.all_said:
        raise NeedMore("other", _ask_other(sum))
    whole = filled_in(sum, missing)
    assert isinstance(whole, Sum)
    work.refuse_when(len(leaves(whole)) > MOST_PARTS, f"that sum has over {MOST_PARTS} parts: ask it in pieces")
    said = [leaf for leaf in leaves(whole) if isinstance(leaf, Length)]
    if bare is BareUnit.MONEY:
        work.refuse_when(bool(said), "money and lengths don't go in one sum: say it again without the units of length")
        return whole
    numbers = [leaf for leaf in leaves(whole) if isinstance(leaf, Number) and leaf.unit == "none"]
    parts = [leaf for leaf in numbers if _in_parts(leaf)]
    if bare is BareUnit.MILLIMETRES and _large(numbers) and all(length.unit == "in" for length in said) and (said or parts):
        return with_units(_large_in_mm(whole), "in")  # 1220 less 3/16
    if bare is BareUnit.METRES and not _unlike(said, numbers):
        bare = None  # said of the answer
    if not said:
        if bare and (work.metric or not _no_millimetres(bare, said, numbers)):
            work.metric = work.metric or bare is BareUnit.MILLIMETRES
            return with_units(_in_unit(whole, UNITS[bare]), UNITS[bare])
        if work.metric and whole.operation in (PLUS, MINUS) and all(leaf.value.denominator == 1 for leaf in numbers):
            if max(leaf.value for leaf in numbers) < NO_INCHES:
                raise NeedMore("bare", f"Is the {shown(_first(whole))} inches or millimetres?")
            return with_units(_in_unit(whole, "mm"), "mm")
        if parts and (large := _large(numbers)):
            raise NeedMore("bare", f"Is the {shown(large)} inches or millimetres?")
        return _fractions_are_inches(whole)
    if bare in (BareUnit.INCHES, BareUnit.FEET) and with_units(whole, "in") == whole:  # of the answer
        work.metric = False
    unit = UNITS[bare] if bare and not _no_millimetres(bare, said, numbers) else _bare_unit(said, numbers)
    turned = with_units(whole, unit or "in")
    if unit is None and turned != whole and numbers:
        counts = _counts(whole)
        raise NeedMore("bare", _which_unit(said, [leaf for leaf in numbers if all(leaf is not n for n in counts)] or numbers))
    return turned


def _ask_other(sum: Sum) -> str:
    if sum.right is None:
        return f"{shown(sum.left)} {WORDS[sum.operation]} what?"
    if isinstance(sum.right, Sum) and sum.right.operation == TIMES and sum.right.right is None:
        return f"What size is each of the {shown(sum.right.left)}?"
    what = shown(sum.right)
    asks = {PLUS: f"Add {what} to what?", MINUS: f"Take {what} off what?", TIMES: f"What times {what}?"}
    return asks.get(sum.operation, f"Divide what by {what}?")


def _no_millimetres(bare: BareUnit, said: list[Length], numbers: list[Number]) -> bool:
    """Whether "in millimetres" was said of the answer: numbers in eighths, or small ones beside feet, are no millimetres."""
    feet = all(length.unit in ("in", "ft") and length.text for length in said)
    in_parts = any(leaf.value.denominator in (2, 4, 8, 16, 32, 64) and leaf.value.denominator > 2 for leaf in numbers)
    return bare is BareUnit.MILLIMETRES and feet and (in_parts or all(leaf.value < SURELY_MM for leaf in numbers))


def _bare_unit(said: list[Length], numbers: list[Number]) -> str | None:
    """The unit that numbers beside these lengths are in: theirs in metric; inches, but doubtful after whole feet."""
    units = {length.unit for length in said}
    parts = [leaf for leaf in numbers if _in_parts(leaf)]
    if units <= {"in", "ft"} and numbers and all(leaf.value >= NEVER_INCHES and leaf.value.denominator == 1 for leaf in numbers):
        return "mm"  # 2440 minus 3 1/2 inches
    if parts and units <= _METRIC.keys():  # 4 5/8 plus 5 mm is of the tape; 36 1/2 may be; 450 and a half is past it
        tape = any(leaf.value.denominator > 2 for leaf in parts)
        if units == {"cm"} and not tape:
            return "cm"
        return "in" if tape else None if max(leaf.value for leaf in parts) < NO_INCHES else "mm"
    if _unlike(said, numbers) or (units == {"in"} and _large(numbers)):
        return None
    if units == {"m"} and any(leaf.value >= SURELY_MM for leaf in numbers):
        return "mm"  # 5.4 m less 2100
    most = max((length.value for length in said), default=0)
    if units == {"m"} and any(leaf.value.denominator == 1 and leaf.value >= FAR_MORE * most for leaf in numbers):
        return "mm"  # 3.2 m less 15
    if units == {"m", "mm"} and all(leaf.value.denominator == 1 for leaf in numbers):
        return "mm"  # 3.6 m less 47 mm and 92
    if units == {"cm"} and any(leaf.value >= NEVER_INCHES and leaf.value.denominator == 1 for leaf in numbers):
        return "mm"  # 1245 less 10 cm
    if units <= {"mm", "cm", "m"}:
        return said[0].unit if len(units) == 1 else None
    whole = all(leaf.value.denominator == 1 for leaf in (*said, *numbers))
    if units == {"ft"} and whole:  # 14 ft less 39 1/4 is inches: nobody says a quarter of a foot so
        return None
    return "in"


def _unlike(said: list[Length], numbers: list[Number]) -> list[Number]:
    """Decimals in doubt beside lengths: 12.6 less 4 ft, which no tape shows in inches; 1.2 and 300 mm, which may be metres."""
    decimals = [leaf for leaf in numbers if "." in leaf.text and leaf.value.denominator > 1]
    units = {length.unit for length in said}
    whole = [leaf.value for leaf in numbers if leaf.value.denominator == 1]
    if units == {"mm"} and max([*whole, *(length.value for length in said)]) >= LARGE_MM:
        return [leaf for leaf in decimals if leaf.value < FEW_METRES]
    feet = any(length.unit == "ft" or not _FEET.isdisjoint(length.text.lower()) for length in said)
    return [leaf for leaf in decimals if leaf.value.denominator not in _TAPE] if feet and not units & _METRIC.keys() else []


def _counts(part: Part | None) -> list[Number]:
    """The numbers that say how many of a size there are, neither of them with a unit: the 3 of 3 at 24."""
    if not isinstance(part, Sum):
        return []
    two = [leaf for leaf in (part.left, part.right) if isinstance(leaf, Number)] if part.operation == TIMES else []
    fewer = [min(two, key=lambda leaf: leaf.value)] if len(two) > 1 else []
    return [*fewer, *_counts(part.left), *_counts(part.right)]


def _which_unit(said: list[Length], numbers: list[Number]) -> str:
    """The question back about the first number whose unit is in doubt."""
    metric = all(length.unit in _METRIC for length in said)
    if metric and (parts := [leaf for leaf in numbers if _in_parts(leaf)]):
        return f"Is the {shown(parts[0])} inches or {_METRIC[said[0].unit]}?"
    if not metric and (large := _large(numbers)):
        return f"Is the {shown(large)} inches or millimetres?"
    doubted = shown((_unlike(said, numbers) or numbers)[0])
    return f"Is the {doubted} {'metres or millimetres' if metric else 'feet or inches'}?"


def _large(numbers: list[Number]) -> Number | None:
    """A whole number past what is measured in inches, where others are in parts of an inch: 1220 less 3/16."""
    return next((leaf for leaf in numbers if leaf.value.denominator == 1 and leaf.value >= NO_INCHES), None)


def _large_in_mm(part: Part) -> Part:
    """The sum with its numbers past inches in millimetres."""
    if isinstance(part, Sum):
        assert part.left is not None and part.right is not None
        return Sum(part.operation, _large_in_mm(part.left), _large_in_mm(part.right), part.text, part.rule, part.other)
    return Length(part.value, "mm", part.text) if isinstance(part, Number) and _large([part]) else part


def _in_parts(number: Number) -> bool:
    """Whether a number was said in halves, quarters, eighths of the tape, and no decimal."""
    return number.value.denominator in _TAPE and "." not in (number.text or ".")


def _fractions_are_inches(part: Part) -> Part:
    """Nobody said a unit: tape fractions are inches, whole numbers alone stay numbers."""
    if not any(leaf.value.denominator > 1 and leaf.unit == "none" for leaf in leaves(part)):
        return part
    return with_units(_inches(part), "in")


def _in_unit(part: Part, unit: str) -> Part:
    """The first number of what is added or taken off, which gives the rest their unit."""
    if isinstance(part, Sum) and part.left is not None:
        return Sum(part.operation, _in_unit(part.left, unit), part.right, part.text, part.rule, part.other)
    return Length(part.value, unit, part.text) if isinstance(part, Number) and part.unit == "none" else part


def _first(part: Part) -> Part:
    """The first number that is a length: no count of one."""
    if not isinstance(part, Sum):
        return part
    assert part.left is not None and part.right is not None
    return _first(part.right if part.operation == TIMES else part.left)


def _inches(part: Part) -> Part:
    if isinstance(part, Sum):
        assert part.left is not None and part.right is not None
        return Sum(part.operation, _inches(part.left), _inches(part.right), part.text, part.rule, part.other)
    if part.unit == "none" and part.value.denominator > 1:
        return Length(part.value, "in", part.text)
    return part


@dataclass(slots=True)
class _Steps:
    """Works a sum, one operation a step."""

    work: Working
    count: int = 0
    last: tuple[Term, Term] | None = None  # the two sides of the last operation

    def work_out(self, part: Part) -> Term:
        if not isinstance(part, Sum):
            return self._leaf(part)
        assert part.left is not None and part.right is not None
        left, right = self.work_out(part.left), self.work_out(part.right)
        unit = self._unit(part, left, right)
        self.last = left, right
        self.count += 1
        expression = {
            PLUS: lambda: left + right,
            MINUS: lambda: left - right,
            TIMES: lambda: left * right,
            DIVIDED: lambda: left / right,
        }[part.operation]()
        by = right.name if isinstance(part.right, Sum) else shown(part.right)
        why = f"{WHY[part.operation]}: {WORDS[part.operation]} {by}"
        return self.work.step(f"total {self.count}", expression, why, unit)

    def _leaf(self, leaf: Length | Number) -> Term:
        if isinstance(leaf, Length):
            inches = leaf.to("in").value
            name = (
                leaf.text or tape(inches, 64, feet=True)
                if (inches * 64).denominator == 1
                else f"{decimal(inches, 6)} in"
            )
            return self.work.term(
                name.replace("/", "⁄").replace("-", " "), inches, "in"
            )  # a slash would read as divided by
        return self.work.term(decimal(leaf.value, 6), leaf.value, "none")

    def _unit(self, part: Sum, left: Term, right: Term) -> str:
        """The unit of a result; declines what has no meaning on a tape."""
        work, units = self.work, (left.unit, right.unit)
        if part.operation == TIMES:
            work.refuse_when(
                units == ("in", "in"),
                f"{left.name} times {right.name} is an area, not a length: "
                "ask for the area of a wall, or say one of them as a plain number",
            )
            return "in" if "in" in units else "none"
        if part.operation == DIVIDED:
            work.refuse_when(right.value == 0, f"{left.name} can't be divided by zero")
            work.refuse_when(
                units == ("none", "in"),
                f"the number {left.name} can't be divided by a length, {right.name}: say its unit",
            )
            return "in" if units == ("in", "none") else "none"
        return left.unit


def _readings(work: Working, total: Term) -> None:
    """The same length in decimal inches, in feet and inches, and in millimetres."""
    value = fraction(total.value)
    work.also("in millimetres", total * MM_PER_INCH, "mm")
    work.also_word("on the tape", tape(value, work.tape_step.denominator))
    work.also_word("in feet and inches", tape(value, work.tape_step.denominator, feet=True))
    work.also_word("in decimal inches", f"{decimal(value, 4)} in")
    work.also_word("in whole millimetres", millimetres(value))


def _remainder(work: Working, steps: _Steps) -> None:
    """What is left over after dividing: to the tape mark, or whole times."""
    assert steps.last
    left, right = steps.last
    if (left.unit, right.unit) == ("in", "in"):
        times = work.step("whole times", floor(left / right), "how many whole ones it holds", unit="count")
        rest = work.step("left over", left - times * right, "what remains", unit="in")
        work.also("whole times", times)
        work.also("left over", rest)
        work.check("whole ones and the rest make it up again", times * right + rest, "=", left)
    elif left.unit == "in" and right.value > 0 and right.value.denominator == 1:
        step = work.term("a tape mark", work.tape_step, "in")
        each = work.step(
            "each to the mark below", floor(left / right / step) * step, "so that none comes out long", unit="in"
        )
        rest = work.step("left over", left - right * each, "what remains after that many", unit="in")
        work.also("each, down to the tape mark", each)
        work.also("left over at that mark", rest)
        work.check("that many and the rest make it up again", right * each + rest, "=", left)


def _other_order(work: Working, sum: Sum, other: Term | None, bare: BareUnit | None) -> None:
    """What the same words come to in the other order, so that nobody is misled by the one taken."""
    if sum.other is None:
        return
    whole = _whole(work, sum.other, other, bare)
    value = in_millimetres(whole)
    if is_length(whole):
        work.also("in the other order", work.term("other order", value / MM_PER_INCH.value, "in"))
    else:
        work.also("in the other order", work.term("other order", value, "none"))


def _spoken(work: Working, total: Term, sum: Sum) -> str:
    """What it comes to, after what was done: a sum that was misheard, or misunderstood, is heard so."""
    text = work.text(total) if total.unit == "in" else decimal(total.value, 4)
    done = sum.in_words if sum.all_said and not sum.rule and len(leaves(sum)) <= MOST_SAID else ""
    if done:
        return f"{done} is {text}"
    return f"{text}, {sum.rule}" if sum.rule else text


def _strip(work: Working, whole: Part, total: Term) -> None:
    """The lengths end to end, where all of them are added."""
    parts = leaves(whole)
    if total.unit != "in" or len(parts) > 12 or not does_only(whole, PLUS) or any(part.value <= 0 for part in parts):
        return
    view = work.view("end to end", stretch=True)
    at, full = 0.0, float(fraction(total.value))
    for part in parts:
        size = float(part.to("in").value)
        view.polygon([(at, 0), (at + size, 0), (at + size, full / 20), (at, full / 20)])
        view.label((at + size / 2, full / 40), shown(part))
        at += size
    view.dimension((0, 0), (at, 0), work.text(total), side=-1)
    work.caution(STRIP_CAUTION)
