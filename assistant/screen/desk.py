"""What the screen asks of the program behind it."""

from __future__ import annotations

from typing import Any, Protocol

Record = dict[str, Any]


class Desk(Protocol):
    """Answers questions and keeps the day. Calls come one at a time, all from one thread that is not the main one.

    Nothing here raises for what a person typed: what is wrong comes back as a record, in words.
    """

    def answer(self, text: str) -> Record:
        """The record of one line of the conversation."""

    def entries(self) -> list[Record]:
        """Today's records, oldest first."""

    def examples(self) -> list[tuple[str, str]]:
        """What can be asked: the family, and a sentence of it."""

    def flag(self, entry: str) -> Record:
        """Flags the entry with that id, and gives the record of having done so."""
