"""The screen put together: who hears what, and the one thread in which the desk works."""

from __future__ import annotations

import asyncio
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor
from typing import Any, TypeVar

from textual import on, work
from textual.app import App, ComposeResult
from textual.binding import Binding
from textual.containers import Container
from textual.events import DescendantFocus, Resize
from textual.worker import Worker, WorkerState

from assistant.garbage import between_lines
from assistant.page import page
from assistant.screen.desk import Desk
from assistant.screen.foot import Foot
from assistant.screen.help import Help
from assistant.screen.line import Line
from assistant.screen.look import CSS, SITE, TWO_COLUMNS
from assistant.screen.messages import Asked, Chosen, Moved, Paged
from assistant.screen.sheet import Sheet
from assistant.screen.working import Working

COPY_WIDTH = 80
R = TypeVar("R")


class LathmarkApp(App[None]):
    """The sheet, the working and the line. Everything shown comes from the desk's records."""

    CSS = CSS
    TITLE = "Lathmark"
    ENABLE_COMMAND_PALETTE = False
    BINDINGS = [
        Binding("f1", "help", show=False),
        Binding("f2", "step", show=False, priority=True),
        Binding("f3", "flag", show=False, priority=True),
        Binding("f4", "copy", show=False, priority=True),
        Binding("f10,ctrl+q", "quit", show=False, priority=True),
        Binding("escape", "to_line", show=False),
    ]

    def __init__(self, desk: Desk) -> None:
        super().__init__()
        self.desk = desk
        # One thread, so that answers come in the order asked and the screen never waits for them.
        self.hands = ThreadPoolExecutor(max_workers=1, thread_name_prefix="desk")
        self.waiting = 0

    def compose(self) -> ComposeResult:
        """Sheet and working above, the line and the foot below."""
        with Container(id="desk"):
            yield Sheet()
            yield Working()
        yield Line()
        yield Foot()

    def on_mount(self) -> None:
        """Puts the look on, and fetches the day."""
        self.register_theme(SITE)
        self.theme = SITE.name
        self.query_one(Line).focus()
        self.open_day()

    def on_unmount(self) -> None:
        """Lets the desk's thread end."""
        self.hands.shutdown(wait=False, cancel_futures=True)

    def on_resize(self, event: Resize) -> None:
        """One column or two."""
        wide = event.size.width >= TWO_COLUMNS
        self.screen_stack[0].set_class(wide, "wide").set_class(not wide, "narrow")

    def on_descendant_focus(self, event: DescendantFocus) -> None:
        """On a narrow screen the sheet takes the room while it is used."""
        self.screen_stack[0].set_class(isinstance(event.widget, Sheet), "on-sheet")

    @work(exit_on_error=False)
    async def open_day(self) -> None:
        """Shows today's entries, or what can be asked when there are none."""
        records = await self.at_desk(self.desk.entries)
        examples = await self.at_desk(self.desk.examples)
        self.query_one(Working).invite(examples)
        self.query_one(Sheet).fill(records)
        await self.at_desk(between_lines, 1)  # nobody waits yet

    async def at_desk(self, call: Callable[..., R], *args: Any) -> R:
        """A call of the desk, made in its own thread."""
        return await asyncio.get_running_loop().run_in_executor(self.hands, call, *args)

    @on(Asked)
    def send(self, message: Asked) -> None:
        """Sends a line to the desk; a question mark alone opens the help."""
        if message.text == "?":
            self.action_help()
            return
        self.waiting += 1
        self.query_one(Foot).busy("Working it out …")
        self.work_out(message.text)

    @work(exit_on_error=False)
    async def work_out(self, text: str) -> None:
        """Has a line answered and puts the record on the sheet."""
        try:
            record = await self.at_desk(self.desk.answer, text)
        finally:
            self.waiting -= 1
        self.query_one(Sheet).add(record)
        self.query_one(Line).prompt(record)
        if not self.waiting:
            self.query_one(Foot).rest()

    @on(Worker.StateChanged)
    def report(self, event: Worker.StateChanged) -> None:
        """A fault inside the desk is told in a sentence, and the screen stays up."""
        if event.state is WorkerState.ERROR:
            self.query_one(Foot).tell("That went wrong inside the program, so there is no answer.")
            self.log.error(event.worker.error)

    @on(Chosen)
    def show(self, message: Chosen) -> None:
        """Shows the working of the entry moved to."""
        self.query_one(Working).show(message.record)

    @on(Moved)
    def move(self, message: Moved) -> None:
        """Moves along the sheet from the line."""
        self.query_one(Sheet).move(message.by)

    @on(Paged)
    def turn_page(self, message: Paged) -> None:
        """Scrolls the working from the line."""
        working = self.query_one(Working)
        working.scroll_relative(y=message.by * max(1, working.size.height - 1), animate=False)

    @work
    async def action_help(self) -> None:
        """Opens the help."""
        self.push_screen(Help(await self.at_desk(self.desk.examples)))

    def action_to_line(self) -> None:
        """Back to the line, from wherever."""
        self.query_one(Line).focus()

    def action_step(self) -> None:
        """The next step of the working."""
        self.query_one(Working).action_step(1)

    @work(exit_on_error=False)
    async def action_flag(self) -> None:
        """Flags the entry chosen; the sheet shows the flag."""
        entry = self.query_one(Sheet).chosen().get("id")
        if not entry:
            self.query_one(Foot).tell("There is no kept entry to flag.")
            return
        record = await self.at_desk(self.desk.flag, entry)
        self.query_one(Sheet).mark_flagged(entry)
        self.query_one(Foot).tell(str(record.get("say") or "Flagged."))

    def action_copy(self) -> None:
        """Copies the working as text, through the terminal, so that it works from afar too."""
        record = self.query_one(Sheet).chosen()
        if record:
            self.copy_to_clipboard(page(record, COPY_WIDTH))
        self.query_one(Foot).tell("Copied the working." if record else "There is nothing to copy yet.")
