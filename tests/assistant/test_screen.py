"""The screen, as keys pressed, at 80 × 24 and at 140 × 40."""

from __future__ import annotations

import asyncio
import threading
from collections.abc import Awaitable, Callable
from typing import Any

import pytest
from screen_samples import ASKS, COURSES, DAY, EMPTY, EXAMPLES, NOTED, RAKE, FakeDesk, item, pole
from textual.pilot import Pilot

from assistant.page import page
from assistant.screen.app import LathmarkApp
from assistant.screen.foot import Foot
from assistant.screen.help import Help
from assistant.screen.line import INVITATION, Line
from assistant.screen.messages import Asked
from assistant.screen.sheet import Sheet
from assistant.screen.working import Working

NARROW, WIDE = (80, 24), (140, 40)
BOTH = pytest.mark.parametrize("size", [NARROW, WIDE])
Story = Callable[[LathmarkApp, Pilot[None]], Awaitable[None]]


def play(desk: FakeDesk, size: tuple[int, int], story: Story) -> None:
    """Opens the screen over a desk, and follows a story of keys."""

    async def run() -> None:
        app = LathmarkApp(desk)
        async with app.run_test(size=size) as pilot:
            await settle(pilot)
            await story(app, pilot)

    asyncio.run(run())


async def settle(pilot: Pilot[None]) -> None:
    """Waits for the desk's thread and for what it sent to be shown."""
    await pilot.app.workers.wait_for_complete()
    await pilot.pause()
    await pilot.pause()


async def until(pilot: Pilot[None], true: Callable[[], bool]) -> None:
    """Waits for something to come true, ten seconds at most."""
    for _ in range(500):
        if true():
            return
        await pilot.pause(0.02)
    raise AssertionError("it never came true")


def shown(app: LathmarkApp) -> str:
    """What can be read on the screen now, line by line."""
    width, height = app.size
    lines = app.screen._compositor.render_strips(app.size)
    return "\n".join("".join(segment.text for segment in line).ljust(width) for line in lines[:height])


def chosen(app: LathmarkApp) -> dict[str, Any]:
    """The entry the sheet stands on."""
    return app.query_one(Sheet).chosen()


@BOTH
def test_a_question_typed_is_answered_with_its_working(size: tuple[int, int]) -> None:
    desk = FakeDesk()

    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        app.query_one(Line).value = RAKE["heard"]
        await pilot.press("enter")
        await settle(pilot)
        text = shown(app)
        assert "saw setting  =  56.3°" in text
        assert "atan(rise / run) = atan(5 / 12) = 22.62°" in text
        assert "fascia  plumb  (assumed, not said)" in text
        assert app.query_one(Line).value == ""
        assert app.query_one(Line).has_focus

    play(desk, size, story)
    assert desk.asked == [RAKE["heard"]]
    assert desk.threads and threading.get_ident() not in desk.threads


@BOTH
def test_an_empty_sheet_says_what_can_be_asked(size: tuple[int, int]) -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        assert EXAMPLES[0][1] in shown(app)
        assert "F1" in shown(app)
        await pilot.press("up", "down", "pagedown", "f2", "enter")
        await settle(pilot)
        assert app.query_one(Sheet).records == []

    play(FakeDesk(), size, story)


@BOTH
def test_the_day_is_a_sheet_of_dated_entries(size: tuple[int, int]) -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        await pilot.press("shift+tab", "shift+tab")
        await settle(pilot)
        wide = app.query_one(Sheet).region.width
        text = "\n".join(line[:wide] for line in shown(app).splitlines())
        assert "Monday 4 May 2026" in text and "Tuesday 5 May 2026" in text
        assert text.index("09:31") < text.index("10:02") < text.index("Tuesday") < text.index("08:00")
        assert "exposure 6 3/4 in" in text and "not worked out" in text and "asks back" in text

    play(FakeDesk(DAY), size, story)


@BOTH
def test_the_arrows_choose_an_entry_without_leaving_the_line(size: tuple[int, int]) -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        assert chosen(app) == NOTED
        await pilot.press("up", "up", "up")
        await settle(pilot)
        assert chosen(app) == COURSES
        assert "course layout" in shown(app) and "exposure  =  6 3/4 in" in shown(app)
        await pilot.press(*["up"] * 9)
        await settle(pilot)
        assert chosen(app) == RAKE
        await pilot.press(*["down"] * 9)
        await settle(pilot)
        assert chosen(app) == NOTED
        assert app.query_one(Line).has_focus

    play(FakeDesk(DAY), size, story)


@BOTH
def test_the_question_put_back_stands_in_the_line(size: tuple[int, int]) -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        app.query_one(Line).value = ASKS["heard"]
        await pilot.press("enter")
        await settle(pilot)
        assert app.query_one(Line).placeholder == "What is the pitch?"
        app.query_one(Line).value = RAKE["heard"]
        await pilot.press("enter")
        await settle(pilot)
        assert app.query_one(Line).placeholder == INVITATION

    play(FakeDesk(), size, story)


@BOTH
def test_stepping_through_keeps_each_step_in_sight(size: tuple[int, int]) -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        working = app.query_one(Working)
        for n, step in enumerate(RAKE["steps"]):
            await pilot.press("f2")
            await settle(pilot)
            assert working.at == n
            assert step["filled"] in shown(app) and step["why"] in shown(app)
        await pilot.press("tab", "tab")  # from the line to the sheet, then the working
        assert working.has_focus
        await pilot.press("up")
        await settle(pilot)
        assert working.at == len(RAKE["steps"]) - 2

    play(FakeDesk([RAKE]), size, story)


@BOTH
def test_the_whole_working_can_be_paged_through(size: tuple[int, int]) -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        seen = shown(app)
        for _ in range(8):
            await pilot.press("pagedown")
            await settle(pilot)
            seen += shown(app)
        for words in ("the corner, from the side", "rake trim", "67.4°", "✓ both cuts", "Take care", "common practice"):
            assert words in seen

    play(FakeDesk([RAKE]), size, story)


@BOTH
def test_copying_takes_the_whole_working(size: tuple[int, int]) -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        await pilot.press("f4")
        assert app.clipboard == page(RAKE, 80)
        assert "Copied" in shown(app)

    play(FakeDesk([RAKE]), size, story)


@BOTH
def test_flagging_marks_the_entry_chosen(size: tuple[int, int]) -> None:
    desk = FakeDesk(DAY)

    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        await pilot.press("up")
        await pilot.press("f3")
        await settle(pilot)
        assert "⚑" in shown(app)
        assert chosen(app) == DAY[-2]

    play(desk, size, story)
    assert desk.flags == [DAY[-2]["id"]]


def test_an_entry_not_kept_cannot_be_flagged() -> None:
    desk = FakeDesk([RAKE | {"id": None}])

    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        await pilot.press("f3")
        await settle(pilot)
        assert "no kept entry" in shown(app)

    play(desk, NARROW, story)
    assert desk.flags == []


@BOTH
@pytest.mark.parametrize("opener", [("f1",), ("?", "enter")])
def test_help_lists_keys_and_questions_and_closes(size: tuple[int, int], opener: tuple[str, ...]) -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        await pilot.press(*opener)
        await settle(pilot)
        assert isinstance(app.screen, Help)
        seen = shown(app)
        await pilot.press("end")
        await settle(pilot)
        seen += shown(app)
        for words in ("Escape", "F4", "copy the working", *(example for _, example in EXAMPLES)):
            assert words in seen
        await pilot.press("escape")
        assert not isinstance(app.screen, Help)
        assert app.query_one(Line).has_focus

    play(FakeDesk(DAY), size, story)


@BOTH
def test_the_other_keys_and_a_late_answer_do_no_harm_under_the_help(size: tuple[int, int]) -> None:
    desk = FakeDesk([RAKE])
    desk.gate.clear()

    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        await pilot.press("f1")
        await until(pilot, lambda: isinstance(app.screen, Help))
        app.post_message(Asked(COURSES["heard"]))
        await pilot.press("f1", "f1", "f2", "f3", "f4", "up", "down", "tab", "pagedown")
        await pilot.resize_terminal(60, 20)
        desk.gate.set()
        await settle(pilot)
        while isinstance(app.screen, Help):
            await pilot.press("escape")
        await settle(pilot)
        assert "exposure  =  6 3/4 in" in shown(app)

    play(desk, size, story)


def test_typing_goes_on_while_an_answer_is_worked_out_and_order_is_kept() -> None:
    desk = FakeDesk()
    desk.gate.clear()

    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        for words in ("first", "second", "third"):
            app.query_one(Line).value = words
            await pilot.press("enter")
        assert "Working it out" in shown(app)
        await pilot.press("h", "i")
        assert app.query_one(Line).value == "hi"
        desk.gate.set()
        await settle(pilot)
        assert [record["heard"] for record in app.query_one(Sheet).records] == ["first", "second", "third"]
        assert "Working it out" not in shown(app)
        assert app.query_one(Line).value == "hi"

    play(desk, NARROW, story)
    assert desk.asked == ["first", "second", "third"]
    assert len(desk.threads) == 1


def test_a_fault_inside_the_desk_is_a_sentence_and_the_screen_stays() -> None:
    desk = FakeDesk([RAKE])
    desk.broken = True

    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        app.query_one(Line).value = "anything"
        await pilot.press("enter")
        await until(pilot, lambda: "went wrong" in str(app.query_one(Foot).render()))
        desk.broken = False
        app.query_one(Line).value = COURSES["heard"]
        await pilot.press("enter")
        await settle(pilot)
        assert "exposure  =  6 3/4 in" in shown(app)

    play(desk, NARROW, story)


@BOTH
def test_ten_thousand_characters_are_taken_whole(size: tuple[int, int]) -> None:
    desk = FakeDesk()
    long = ("rake return " * 900)[:10_000].strip()

    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        app.query_one(Line).value = long
        await pilot.press("enter")
        await settle(pilot)
        assert "Not worked out" in shown(app)

    play(desk, size, story)
    assert desk.asked == [long]


@BOTH
def test_two_hundred_marks_and_their_pole_can_be_read_to_the_end(size: tuple[int, int]) -> None:
    marks = [item(f"course {n}", n * 6.75, "in", f"{n * 6.75:g} in") for n in range(1, 201)]

    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        seen = shown(app)
        for _ in range(20):
            await pilot.press("pagedown")
            await settle(pilot)
            seen += shown(app)
        assert "Marks (200)" in seen
        assert all(mark["text"] in seen for mark in marks)

    play(FakeDesk([COURSES | {"marks": marks, "figure": {"views": [pole(200)]}}]), size, story)


def test_resizing_changes_columns_and_keeps_the_place() -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        sheet, working = app.query_one(Sheet), app.query_one(Working)
        await pilot.press("up", "up", "up", "up")
        await pilot.press("f2", "f2")
        await settle(pilot)
        assert sheet.region.y < working.region.y
        await pilot.resize_terminal(*WIDE)
        await settle(pilot)
        assert sheet.region.y == working.region.y
        assert chosen(app) == RAKE and working.at == 1
        for size in ((30, 10), (20, 6), NARROW):
            await pilot.resize_terminal(*size)
            await settle(pilot)
        assert sheet.region.y < working.region.y
        assert chosen(app) == RAKE and working.at == 1
        assert app.query_one(Line).has_focus

    play(FakeDesk(DAY), NARROW, story)


def test_words_that_look_like_markup_are_shown_as_they_are() -> None:
    words = "[bold red]rake[/] [@click=app.quit]x[/] \x1b[31m"

    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        assert shown(app).count("[bold red]rake[/]") >= 2
        assert "\x1b" not in shown(app)

    play(FakeDesk([EMPTY | {"heard": words, "outcome": "noted", "say": words}]), WIDE, story)


@BOTH
def test_every_key_is_named_at_the_foot(size: tuple[int, int]) -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        foot = shown(app).splitlines()[-1]
        for key in ("F1 help", "F2 step", "F3 flag", "F4 copy", "F10 leave"):
            assert key in foot

    play(FakeDesk(DAY), size, story)


def test_escape_clears_the_line_and_comes_back_to_it() -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        await pilot.press("r", "a", "k", "e", "escape")
        assert app.query_one(Line).value == ""
        await pilot.press("tab")
        assert app.query_one(Sheet).has_focus
        await pilot.press("escape")
        assert app.query_one(Line).has_focus

    play(FakeDesk(DAY), NARROW, story)


def test_leaving() -> None:
    async def story(app: LathmarkApp, pilot: Pilot[None]) -> None:
        await pilot.press("f10")
        await until(pilot, lambda: not app.is_running)

    play(FakeDesk(DAY), NARROW, story)
