"""The line to type in."""

from __future__ import annotations

from typing import Any

from textual.binding import Binding
from textual.widgets import Input

from assistant.screen.messages import Asked, Moved, Paged

INVITATION = "Ask, or say what to remember, then Enter"


class Line(Input):
    """One line of words. The arrows and page keys move the sheet and the working, so hands need not leave it."""

    BINDINGS = [
        Binding("up", "move(-1)", show=False),
        Binding("down", "move(1)", show=False),
        Binding("pageup", "page(-1)", show=False),
        Binding("pagedown", "page(1)", show=False),
        Binding("escape", "wipe", show=False),
    ]

    def __init__(self) -> None:
        super().__init__(placeholder=INVITATION, id="line")

    def on_input_submitted(self, event: Input.Submitted) -> None:
        """Sends the line, unless there is nothing in it."""
        event.stop()
        if event.value.strip():
            self.post_message(Asked(event.value.strip()))
            self.value = ""

    def prompt(self, record: dict[str, Any]) -> None:
        """Puts the question put back where the reply will be typed."""
        asked = record.get("ask") if record.get("outcome") == "asks" else None
        self.placeholder = str(asked) if asked else INVITATION

    def action_move(self, by: int) -> None:
        """To the entry above or below."""
        self.post_message(Moved(by))

    def action_page(self, by: int) -> None:
        """The working a page up or down."""
        self.post_message(Paged(by))

    def action_wipe(self) -> None:
        """Clears what was typed."""
        self.value = ""
