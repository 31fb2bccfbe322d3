"""What was put back and waits for a reply, and what was asked before it."""

from __future__ import annotations

from dataclasses import dataclass, field
from fractions import Fraction
from typing import Any

from assistant.ways import Way
from intents.question import Question
from solvers.quantities import Quantity
from solvers.registry import Topic
from solvers.rounding import SIXTEENTH
from solvers.slots import Given
from solvers.sums import Sum, leaves


@dataclass(slots=True)
class Asked:
    """A question as it was worked, for follow-ups, corrections and explaining."""

    topic: Topic
    givens: dict[str, Given]
    tape_step: Fraction = SIXTEENTH
    metric: bool | None = None
    times: int | Fraction = 1  # how many of them: "two of those walls"; or what share: "half that"
    plus: Fraction = Fraction(0)  # the answer before it, put to this one, or taken off it
    put: str = ""  # how that is: "apart", how far the two are apart and not which is more; "there", what there is already
    text: str = ""  # its words, as one sentence; "" where no one sentence says all of it
    changed: frozenset[str] = frozenset()  # the givens that the last change was about
    piece: str = ""  # the given that was asked for and told last
    meant: frozenset[str] = frozenset()  # the givens that are unusual and were said to be meant
    record: dict[str, Any] = field(default_factory=dict)
    asked_for: str = ""  # the number beside its answer that was asked for, and made the answer
    joint: Asked | None = None  # what is set on the saw that is asked about
    saw: dict[str, Given] | None = None  # what was told of that saw in the same line
    past: tuple[dict[str, Any], ...] = ()  # what the givens were before they were changed, the oldest first
    things: frozenset[str] = frozenset()  # the words it was told in, and so what it is about
    siblings: tuple[Asked, ...] = ()  # others of its topic that were answered before, and that it does not change


@dataclass(slots=True)
class Pending:
    """A question that was put back, and what would settle it: one of the fields from `wanted` to `told`.

    An unusual quantity is both a way, which a yes settles, and wanted, for what it really is.
    """

    asked: Asked | None = None  # the topic and its givens so far
    wanted: str = ""  # the parameter that is missing
    ways: list[Way] = field(default_factory=list)  # or the ways between which to choose
    alike: list[Way] = field(default_factory=list)  # ways that all lack what is wanted: 20 of either scale, no humidity yet
    topics: list[Question] = field(default_factory=list)  # or the topics between which to choose
    lines: list[str] = field(default_factory=list)  # or the lines that may have been said
    keep: str = ""  # or the name of a value to keep
    forget: bool = False  # or a yes before all is forgotten
    compare: bool = False  # or the number of somebody else
    told: str = ""  # or what was told without its size, which the reply's size is of: with two windows
    under: Pending | None = None  # what was open when the line that was heard with doubt was said
    saw: dict[str, Given] | None = None  # what is known of a saw that is asked about once the joint is whole
    left: list[str] = field(default_factory=list)  # what was said and has no place, unless a reply tells what it is
    price: str = ""  # what each costs, told before it is known how many there are
    question: str = ""  # as it was put
    said: str = ""  # the lines it was asked of, once another question came between
    repeated: bool = False  # put once more already


@dataclass(slots=True)
class Points:
    """How the notebook files the record being made: its kind, and the entry it points at."""

    kind: str = "question"
    at: str | None = None


def told_quantities(asked: Asked) -> list[Quantity]:
    """Every plain quantity that a question was given, and each part of a sum."""
    told = [given.value for given in asked.givens.values() if given.source != "assumed"]
    return [each for one in told for each in (leaves(one) if isinstance(one, Sum) else [one]) if isinstance(each, Quantity)]
