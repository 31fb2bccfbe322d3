"""The foot of the screen: the keys, or what was just done."""

from __future__ import annotations

from textual.content import Content
from textual.widgets import Static

KEYS = (
    ("↑↓", "entries"),
    ("PgUp/Dn", "scroll"),
    ("F1", "help"),
    ("F2", "step"),
    ("F3", "flag"),
    ("F4", "copy"),
    ("F10", "leave"),
)
SHOWN_FOR = 4.0  # seconds


class Foot(Static):
    """One line; `tell` shows a sentence for a few seconds, `busy` shows one until the next."""

    def on_mount(self) -> None:
        """Starts with the keys."""
        self.rest()

    def rest(self) -> None:
        """Shows the keys."""
        pieces = [piece for key, what in KEYS for piece in ((key, "bold $accent"), f" {what}  ")]
        self.update(Content.assemble(*pieces))

    def busy(self, words: str) -> None:
        """Shows a sentence until something else is shown."""
        self.update(Content(words))

    def tell(self, words: str) -> None:
        """Shows a sentence, then the keys again."""
        self.update(Content.styled(words, "bold"))
        self.set_timer(SHOWN_FOR, self.rest)
