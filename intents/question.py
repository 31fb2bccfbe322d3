"""What was understood: a topic, its givens with their places in the text, what is missing and what is doubtful."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, field
from typing import Any


@dataclass(slots=True, unsafe_hash=True)
class Heard:
    """One given as it was heard: value, where it stands in the text (characters), how sure, what else it could be.

    Never changed; to say so in code would make each take four times as long to make, and a sentence makes dozens.
    """

    value: Any
    start: int
    end: int
    text: str
    sure: float = 1.0
    others: tuple[Any, ...] = ()

    @property
    def bare(self) -> bool:
        """Whether it was said with no unit."""
        return self.text[-1:].isdigit()


@dataclass(frozen=True, slots=True)
class Claim:
    """A quantity to hold the answer against ("will 60 do?"): `way` is enough, more, less, same or wanted; tokens start to end."""

    value: Any
    text: str
    way: str
    start: int
    end: int


@dataclass(slots=True)
class Question:
    """One way to read the words: a topic and its givens by parameter name."""

    topic: str
    givens: dict[str, Heard] = field(default_factory=dict)
    score: float = 0.0
    lacking: int = 0  # plain words of its rule that were not said
    # Other ways to hand the same words to the same parameters, when their roles could be swapped.
    swaps: list[dict[str, Heard]] = field(default_factory=list)
    rival: bool = False  # whether it, or its last swap, is the second reader's alone: it asks, and never saves what can't be
    missing: list[str] = field(default_factory=list)
    unplaced: list[str] = field(default_factory=list)  # quantities said that no parameter took
    unplaced_kinds: set[str] = field(default_factory=set)  # the dimensions those could be, as class names
    manner: dict[str, Any] = field(
        default_factory=dict
    )  # how to answer: nearest (a fraction), system (metric, imperial)
    claim: Claim | None = None  # what the answer is to be held against
    left: list[str] = field(default_factory=list)  # quantities that it leaves out, which is said
    unknown: list[str] = field(default_factory=list)  # words that meant nothing here
    words: list[str] = field(default_factory=list)  # words that told the topic

    def keep_ways(self, may_be: Callable[[dict[str, Heard]], bool]) -> None:
        """Leave only the ways to hand out the quantities that may be, where there is one."""
        ways = [self.givens, *self.swaps]
        kept = [way for way in ways if may_be(way)]
        if kept and len(kept) < len(ways):
            self.givens, self.swaps = kept[0], kept[1:]
            self.rival = self.rival and bool(self.swaps)

    @property
    def complete(self) -> bool:
        """Whether nothing is missing, and nothing that was said is left over."""
        return not (self.missing or self.unplaced)

    @property
    def whole(self) -> bool:
        """Whether it is complete, and no word of its topic lacks."""
        return self.complete and not self.lacking

    @property
    def plain(self) -> bool:
        """Whether it is whole in one way."""
        return self.whole and not self.swaps


@dataclass(slots=True)
class Reading:
    """All ways worth considering, best first; `near` are topics whose words came up when none fits."""

    text: str
    questions: list[Question] = field(default_factory=list)
    near: list[str] = field(default_factory=list)
    unknown: list[str] = field(default_factory=list)
    understood: list[str] = field(default_factory=list)
    too_long: str = ""  # one sentence about a line that is a page
    broken: str = ""  # one sentence about a number that can't be (7/0)
    changed: list[tuple[str, str]] = field(default_factory=list)  # misspellings forgiven: (as typed, as read)
    unaided: list[Question] = field(default_factory=list)  # what the grammar made of it, without the second reader
    elsewhere: bool = False  # by its words it is no question for this program, nor talk about the job
    trace: list[str] = field(default_factory=list)
