"""The help: the keys, and everything that can be asked."""

from __future__ import annotations

from itertools import groupby
from typing import Any

from textual.app import ComposeResult
from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.content import Content
from textual.screen import ModalScreen
from textual.widgets import Static

KEYS = (
    ("Enter", "ask what is in the line"),
    ("↑ ↓", "along the entries; in the working, its steps"),
    ("PgUp PgDn", "scroll the working"),
    ("Tab", "on to the sheet, the working, the line"),
    ("Escape", "back to the line; in the line, clear it"),
    ("F1 or ?", "this page"),
    ("F2", "step through the working"),
    ("F3", "flag the entry, to look at again"),
    ("F4", "copy the working"),
    ("F10 or Ctrl+Q", "leave; the day is kept"),
)


class Help(ModalScreen[None]):
    """A page over the screen; Escape, F1 or Enter closes it."""

    BINDINGS = [
        Binding("escape,f1,enter", "app.pop_screen", show=False),
    ]

    def __init__(self, examples: list[tuple[str, str]]) -> None:
        super().__init__()
        self.examples = examples

    def compose(self) -> ComposeResult:
        """One scrolling page."""
        with VerticalScroll():
            yield Static(help_text(self.examples))


def help_text(examples: list[tuple[str, str]]) -> Content:
    """The keys, then the examples under their families."""
    lines: list[Any] = [Content.styled("Keys", "bold $primary")]
    lines += [Content.assemble((f"  {key:<15}", "bold $accent"), what) for key, what in KEYS]
    for family, group in groupby(examples, key=lambda pair: pair[0]):
        lines += [Content(""), Content.styled(family, "bold $primary"), *(Content(f"  {said}") for _, said in group)]
    lines += [Content(""), Content("Escape closes this page.")]
    return Content("\n").join(lines)
