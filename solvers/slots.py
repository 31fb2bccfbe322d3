"""What a topic's parameter asks for: the question put back, the unit a bare number means, and what can't be right."""

from __future__ import annotations

from collections.abc import Collection, Container, Iterable
from dataclasses import dataclass, field
from enum import Enum
from fractions import Fraction
from typing import Any

from solvers.quantities import Quantity

Limit = int | Fraction


@dataclass(frozen=True, slots=True)
class Slot:
    """The declaration beside a parameter's type, as `Annotated[Length, Slot(...)]`."""

    ask: str  # the one short question put back when it is missing
    unit: str = ""  # the unit on the page; "" keeps the dimension's own (in, ft2, deg, …)
    bare: tuple[str, ...] = ()  # units a number said with none may mean, the likeliest first; () keeps the page unit
    above: Limit | None = None  # must be more than this, in the page unit
    least: Limit | None = None  # must be at least this
    below: Limit | None = None  # must be less than this
    most: Limit | None = None  # must be at most this
    plain: Limit | None = None  # bare numbers over this many take the second of `bare`
    usual: tuple[Limit, Limit] | None = None  # in the page unit; what was said and lies outside is asked about
    doubt: tuple[Limit, Limit] | None = None  # bare numbers in this range could be either unit: ask
    name: str = ""  # what it is called on the page; "" takes the parameter's own name
    alike: bool = False  # a number said with no unit takes that of the one length said with feet beside it
    cued: bool = False  # taken only where the words beside it tell its role, never as what is left over
    over: str = ""  # the parameter it is more than, which tells the two apart where no words do
    beside: str = ""  # the parameter it says something of: no default is assumed where that is not known
    unless: str = ""  # the parameters, any of which does as well: needed only where none of them is given
    instead: tuple[str, ...] = ()  # the parameters that tell the same another way: said after them, it takes their place
    names: str = ""  # the parameter whose value this choice says what it is: on the page that goes by the choice's name
    quiet: bool = False  # said, it may change nothing that is shown: a least exposure that is kept anyway
    kept: str = ""  # the name it is remembered under for the job; "" never takes it from the job


@dataclass(frozen=True, slots=True)
class Parameter:
    """One parameter of a topic, as read from its signature."""

    name: str
    kind: type  # a Quantity class, an Enum class, or a structured type
    slot: Slot
    required: bool
    default: Any = None

    def lacks(self, given: Container[str]) -> bool:
        """Whether it must be known and is not, among the parameters that were given."""
        return self.required and self.name not in given and not any(name in given for name in self.slot.unless.split())

    @property
    def label(self) -> str:
        return self.slot.name or self.name.replace("_", " ")


def displaced(parameters: Iterable[Parameter], told: Collection[str]) -> set[str]:
    """The parameters that no longer hold where those of `told` are said: the slope in percent, once it is told in degrees."""
    return {name for parameter in parameters if parameter.name in told for name in parameter.slot.instead}.difference(told)


@dataclass(frozen=True, slots=True)
class Given:
    """A value for a parameter and where it came from (asked, job, earlier, assumed)."""

    name: str
    value: Any  # Quantity, Enum member or structured value
    source: str = "asked"
    sure: float = 1.0
    others: tuple[Any, ...] = field(default=())  # what else the same words could mean


def said_anew(parameters: Iterable[Parameter], before: dict[str, Given], told: dict[str, Given]) -> dict[str, Given]:
    """What was given before and is given now; what now is told another way goes."""
    gone = displaced(parameters, told)
    return {name: given for name, given in before.items() if name not in gone} | told


# The openings, pieces and layers of one-breath questions.


@dataclass(frozen=True, slots=True)
class Opening:
    """`count` openings of one size (lengths in inches inside), with what they are called."""

    count: int
    width: Quantity
    height: Quantity
    what: str = "opening"
    assumed: str = ""  # what was filled in for it, to be named in the answer


@dataclass(frozen=True, slots=True)
class Piece:
    """`count` pieces of one length."""

    count: int
    length: Quantity


@dataclass(frozen=True, slots=True)
class Layer:
    """A thickness, with what it is; None where it was named and its thickness not said.

    `assumed` is the size that the lumber was called by, where its thickness was taken from that alone ("1x4").
    """

    thickness: Quantity | None
    what: str = "layer"
    assumed: str = ""


@dataclass(frozen=True, slots=True)
class Stock:
    """A length that is sold, and what one costs where that is said."""

    length: Quantity
    price: Quantity | None = None

    def __str__(self) -> str:
        at = f" at {self.price.text or self.price.value}" if self.price else ""
        return f"{self.length.text or f'{self.length.value} {self.length.unit}'}{at}"


class Choice(Enum):
    """Base of the enumerated parameters; a member's value is how it is said on the page."""
