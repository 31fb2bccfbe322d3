"""The screen: a sheet of dated entries, the working of the chosen one, and the line to type in."""

from __future__ import annotations

from assistant.screen.desk import Desk


def run(desk: Desk) -> None:
    """Shows the screen until the person leaves it."""
    # Textual takes a noticeable part of a second to import, and `lathmark ask` has no use for it.
    from assistant.screen.app import LathmarkApp

    LathmarkApp(desk).run()
