"""Where a conversation meets the notebook: every record is written down before it is shown."""

from __future__ import annotations

import os
import time
from collections.abc import Callable
from types import TracebackType
from typing import TYPE_CHECKING, Any, Self

from assistant.conversation import Conversation
from assistant.facts import Facts
from assistant.notebook import Notebook
from assistant.record import Record, blank, put_declined
from intents.expressions import expression

if TYPE_CHECKING:
    from assistant.ears import Heard

STRICT = "LATHMARK_STRICT"  # set it to see a slip of the program as it is, when mending one
SLIPS = (ArithmeticError, AssertionError, AttributeError, LookupError, RuntimeError, TypeError, ValueError)
_CONTROL = expression(r"[\x00-\x08\x0b-\x1f\x7f-\x9f]+")


class Desk:
    """One conversation at a time over one notebook; `keep` false writes nothing."""

    def __init__(self, job: str | None = None, keep: bool = True) -> None:
        self.job = job
        self.notebook = Notebook.open() if keep or job else None
        self.keep = keep
        self.conversation: Conversation
        self.fresh()

    def __enter__(self) -> Self:
        return self

    def __exit__(self, kind: type[BaseException] | None, error: BaseException | None, at: TracebackType | None) -> None:
        if self.notebook:
            self.notebook.close()

    def fresh(self) -> None:
        """Start a new conversation; a named job keeps its remembered values."""
        kept = self.notebook.facts(self.job) if self.notebook and self.job else {}
        facts = Facts(kept, self._store if self.job and self.keep else None)
        self.conversation = Conversation(self.job, facts, self.notebook, writes=self.keep)

    def answer(self, text: str) -> Record:
        """The record of a typed line, written down."""
        text = readable(text)
        return self._keep(lambda: self.conversation.answer(text), text, "typed", None)

    def answer_heard(self, heard: Heard, file: str) -> Record:
        """The record of a recording, written down."""
        from assistant.doubt import answer_heard

        return self._keep(lambda: answer_heard(self.conversation, heard, file), heard.text, "file", file)

    def entries(self) -> list[Record]:
        """Today's records, oldest first."""
        return [entry.record for entry in self.notebook.day(job=self.job)] if self.notebook else []

    def examples(self) -> list[tuple[str, str]]:
        """Family and example of every topic."""
        from assistant.say_what import examples

        return examples()

    def flag(self, entry: str) -> Record:
        """Flag an entry; the new entry's record."""
        assert self.notebook is not None
        return self.notebook.get(self.notebook.flag(entry)).record

    def _keep(self, work: Callable[[], Record], text: str, via: str, file: str | None) -> Record:
        """The record that `work` makes, written down before anybody sees it."""
        began = time.perf_counter()
        record = self._unless_slipped(work, text, via, file)
        pointer = self.conversation.points
        if self.notebook and self.keep:
            took = (time.perf_counter() - began) * 1000
            record["id"] = self.notebook.write(record, kind=pointer.kind, points_at=pointer.at, took_ms=took)
        return record

    def _unless_slipped(self, work: Callable[[], Record], text: str, via: str, file: str | None) -> Record:
        """A slip of our own declines, since no number beats a number we can't vouch for."""
        try:
            return work()
        except SLIPS as slip:
            if STRICT in os.environ:
                raise
            record = blank(text, via, self.job, file)
            what = type(slip).__name__
            put_declined(record, f"I tripped over that one and give no number for it ({what}): say it another way")
            return record

    def _store(self, name: str, value: Any) -> None:
        assert self.notebook is not None
        if value is None:
            self.notebook.forget(self.job, name)
        else:
            self.notebook.remember(self.job, name, value)


def readable(text: str) -> str:
    """A line without control characters and stray half characters, which no person said."""
    return _CONTROL.sub(" ", text).encode("utf-8", errors="replace").decode("utf-8").strip()
