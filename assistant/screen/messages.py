"""All that the parts of the screen say to each other."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from textual.message import Message


@dataclass
class Asked(Message):
    """A line was typed and sent."""

    text: str


@dataclass
class Chosen(Message):
    """An entry of the sheet was moved to; its working is to be shown."""

    record: dict[str, Any]


@dataclass
class Moved(Message):
    """An arrow was pressed in the line: the sheet moves by so many entries."""

    by: int


@dataclass
class Paged(Message):
    """A page key was pressed in the line: the working scrolls by so many pages."""

    by: int
