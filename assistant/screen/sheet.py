"""The sheet: the day's entries under their dates, one chosen."""

from __future__ import annotations

from datetime import datetime
from typing import Any

from rich.cells import cell_len, set_cell_size
from textual.content import Content
from textual.events import Resize
from textual.widgets import OptionList
from textual.widgets.option_list import Option

from assistant.page import words
from assistant.screen.messages import Chosen

Record = dict[str, Any]

TWO_LINES = 60  # a sheet narrower than this sets each entry on two lines
OUTCOMES = {"asks": "asks back", "declined": "not worked out", "noted": "noted"}


class Sheet(OptionList):
    """Entries, oldest first; an entry is shown by its words and what came of it."""

    def __init__(self) -> None:
        super().__init__(id="sheet", markup=False)
        self.records: list[Record] = []
        self.flagged: set[str] = set()
        self._at: list[int] = []  # which option each record became, dates standing between
        self._told: Record = {}  # the record last said to be chosen, so that setting the sheet anew says nothing

    def fill(self, records: list[Record]) -> None:
        """Shows these records and chooses the last."""
        self.records = list(records)
        self._lay_out(len(self.records) - 1)

    def add(self, record: Record) -> None:
        """Adds a record at the end and chooses it."""
        self.fill([*self.records, record])

    def move(self, by: int) -> None:
        """Chooses the entry so many below (above when negative), as far as there are any."""
        if self.records:
            self.highlighted = self._at[max(0, min(len(self.records) - 1, self.place() + by))]

    def place(self) -> int:
        """Which record is chosen, counted from 0; the last when none is."""
        return self._at.index(self.highlighted) if self.highlighted in self._at else len(self.records) - 1

    def chosen(self) -> Record:
        """The record chosen; empty when there is none."""
        return self.records[self.place()] if self.records else {}

    def mark_flagged(self, entry: str) -> None:
        """Shows that an entry was flagged."""
        self.flagged.add(entry)
        self._lay_out(self.place())

    def on_resize(self, event: Resize) -> None:
        """Sets the entries anew for the width there is."""
        self._lay_out(self.place())

    def on_option_list_option_highlighted(self, event: OptionList.OptionHighlighted) -> None:
        """Says which entry was moved to."""
        event.stop()
        if self.chosen() is not self._told:
            self._told = self.chosen()
            self.post_message(Chosen(self._told))

    def _lay_out(self, choose: int) -> None:
        """Writes every entry, with a date where the day changes."""
        width = max(20, self.size.width - 3)  # less the padding and the scrollbar
        day, options, self._at = "", [], []
        for record in self.records:
            if date_of(record) != day:
                day = date_of(record)
                options.append(Option(Content(day), disabled=True))
            self._at.append(len(options))
            options.append(Option(Content(entry(record, width, record.get("id") in self.flagged))))
        self.clear_options()
        self.add_options(options)
        if 0 <= choose < len(self._at):
            self.highlighted = self._at[choose]


def date_of(record: Record) -> str:
    """The day of a record as a heading."""
    try:
        at = datetime.fromisoformat(words(record.get("at")))
    except ValueError:
        return "No date"
    return f"{at:%A} {at.day} {at:%B %Y}"


def entry(record: Record, width: int, flagged: bool) -> str:
    """An entry in `width` columns: time, what was asked, what came of it; on two lines where there is little room."""
    time, outcome = words(record.get("at"))[11:16], came_of(record)
    flag = "⚑ " if flagged else ""
    heard = flag + words(record.get("heard"))
    if width < TWO_LINES:
        return f"{fitted(f'{time}  {heard}', width)}\n{fitted(f'       {outcome}', width)}"
    outcome = fitted(outcome, width // 2).rstrip()
    return f"{fitted(f'{time}  {heard}', width - cell_len(outcome) - 2)}  {outcome}"


def came_of(record: Record) -> str:
    """What came of a question, in a few words."""
    answer = record.get("answer")
    return (
        f"{words(answer.get('name'))} {words(answer.get('text'))}"
        if answer
        else OUTCOMES.get(words(record.get("outcome")), "")
    )


def fitted(text: str, width: int) -> str:
    """The text in exactly `width` columns, cut with an ellipsis where it is longer."""
    return set_cell_size(text, width) if cell_len(text) <= width else set_cell_size(text, width - 1) + "…"
