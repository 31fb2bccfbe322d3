"""The working of the chosen entry, step by step, with its drawing."""

from __future__ import annotations

from typing import Any

from textual.binding import Binding
from textual.containers import VerticalScroll
from textual.content import Content
from textual.events import Resize
from textual.geometry import Region
from textual.widgets import Static

from assistant.page import Section, sections

Record = dict[str, Any]

# How each kind of section stands out; a screen with no colours still has bold and reverse.
STYLES = {
    "head": "bold",
    "answer": "bold reverse $accent",
    "say": "bold $accent",
    "doubt": "bold $warning",
    "cautions": "$warning",
}
TITLE = "bold $primary"
FAILS = "bold reverse $error"
STEP_AT = "bold reverse"


class Working(VerticalScroll, can_focus=True):
    """Shows one record; the arrows step through its working when it is focused."""

    BINDINGS = [
        Binding("down", "step(1)", show=False),
        Binding("up", "step(-1)", show=False),
    ]

    def __init__(self) -> None:
        super().__init__(id="working")
        self.record: Record = {}
        self.welcome: list[tuple[str, str]] = []
        self.at = -1  # the step stood on, none yet
        self.spots: list[tuple[int, int]] = []  # first line and number of lines of each step
        self._paper = Static()

    def compose(self) -> Any:
        """One sheet of text, which scrolls."""
        yield self._paper

    def show(self, record: Record) -> None:
        """Shows a record from its top."""
        self.record, self.at = record, -1
        self._redraw()
        self.scroll_home(animate=False)

    def invite(self, examples: list[tuple[str, str]]) -> None:
        """Shows what can be asked, while there is nothing else to show."""
        self.welcome = examples
        self._redraw()

    def on_resize(self, event: Resize) -> None:
        """Sets the working anew for the width there is."""
        self._redraw()

    def action_step(self, by: int) -> None:
        """To the next step of the working or the one before; past either end nothing is stood on."""
        if not self.spots:
            self.scroll_relative(y=by, animate=False)
            return
        self.at = max(-1, min(len(self.spots), self.at + by)) if self.at < len(self.spots) else len(self.spots) - 1
        self._redraw()
        if 0 <= self.at < len(self.spots):
            first, count = self.spots[self.at]
            self.call_after_refresh(self.scroll_to_region, Region(0, first, 1, count), animate=False, force=True)
        elif self.at < 0:
            self.scroll_home(animate=False)
        else:
            self.scroll_end(animate=False)

    def _redraw(self) -> None:
        """Writes the record, or the invitation, in the width there is."""
        width = max(20, self.scrollable_content_region.width - 1)
        self._paper.update(self._worked(width) if self.record else invitation(self.welcome))

    def _worked(self, width: int) -> Content:
        """The record's sections as one styled text; notes where each step stands."""
        lines: list[Content] = []
        self.spots = []
        for section in sections(self.record, width):
            step = section.kind == "step"
            if lines and not section.joined:
                lines.append(Content(""))
            if section.title:
                lines.append(Content.styled(section.title, TITLE))
            if step:
                self.spots.append((len(lines), len(section.lines)))
            lines += [Content.styled(line.ljust(width), self._style(section, line)) for line in section.lines]
        return Content("\n").join(lines)

    def _style(self, section: Section, line: str) -> str:
        """How a line stands out."""
        if section.kind == "step":
            return STEP_AT if len(self.spots) - 1 == self.at else ""
        if section.kind == "checks":
            return FAILS if line.lstrip().startswith("✗") else ""
        return STYLES.get(section.kind, "")


def invitation(examples: list[tuple[str, str]]) -> Content:
    """One example of each family, for a sheet with nothing on it."""
    first: dict[str, str] = {}
    for family, example in examples:
        first.setdefault(family, example)
    lines = [Content.styled("Nothing on the sheet yet today.", "bold"), Content("")]
    if first:
        lines += [
            Content.styled("You could ask", TITLE),
            *(Content(f"  {said}") for said in first.values()),
            Content(""),
        ]
    return Content("\n").join([*lines, Content("F1 lists everything, with the keys.")])
