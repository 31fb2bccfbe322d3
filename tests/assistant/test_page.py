"""The page of a record: all of it there, nothing that is not, whatever the width."""

from __future__ import annotations

import subprocess
import sys
from typing import Any

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from screen_samples import ASKS, COURSES, DAY, DECLINED, NOTED, RAKE, item, pole

from assistant.page import chain, page, sections

WIDTHS = [20, 46, 80, 140]


def run_together(text: str) -> str:
    """The text with line breaks and indents taken out, so that wrapping does not matter."""
    return "".join(text.split())


@pytest.mark.parametrize("width", WIDTHS)
@pytest.mark.parametrize("record", DAY, ids=lambda record: record["outcome"] + " " + str(record["topic"]))
def test_no_line_is_wider_than_the_page(record: dict[str, Any], width: int) -> None:
    for ascii_only in (False, True):
        assert all(len(line) <= width for line in page(record, width, ascii_only).splitlines())


@pytest.mark.parametrize("width", WIDTHS)
@pytest.mark.parametrize("record", [RAKE, COURSES])
def test_everything_in_the_record_is_on_the_page(record: dict[str, Any], width: int) -> None:
    shown = run_together(page(record, width))
    wanted = [record["heard"], record["job"], record["topic"], record["answer"]["name"], record["answer"]["text"]]
    wanted += [part for one in record["also"] + record["givens"] for part in (one["name"], one["text"])]
    wanted += [part for one in record["steps"] for part in (one["formula"], one["filled"], one["result"], one["why"])]
    wanted += [one["text"] for one in record["marks"]]
    wanted += [one["what"] for one in record["checks"]] + record["cautions"] + record["sources"]
    for words in wanted:
        assert run_together(words) in shown


def test_the_literal_page() -> None:
    record = RAKE | {"figure": None, "doubt": [{"word": "five", "confidence": 0.41, "or": ["nine"]}]}
    assert page(record, 100) == (
        "2026-05-04 09:31 · north wall · rake return\n"
        "miter for a 5-in-12 rake return\n"
        "\n"
        "Heard with doubt\n"
        "  five, or was it nine?\n"
        "\n"
        "Answer\n"
        "  saw setting  =  56.3°\n"
        "  edge angle  33.7°\n"
        "  corner      67.4°\n"
        "\n"
        "Given\n"
        "  pitch   5 in 12\n"
        "  fascia  plumb  (assumed, not said)\n"
        "\n"
        "Working\n"
        "  1  θ = atan(rise / run) = atan(5 / 12) = 22.62°   the pitch, as an angle from level\n"
        "  2  γ = 90° − θ = 90° − 22.62° = 67.38°   a plumb fascia stands square to level\n"
        "  3  τ = 180° − γ = 180° − 67.38° = 112.62°   the trim goes round the outside of that corner\n"
        "  4  s = τ / 2 = 112.62° / 2 = 56.31°   half on each piece\n"
        "\n"
        "Checked\n"
        "  ✓ both cuts and the corner make a half turn\n"
        "\n"
        "Take care\n"
        "  - Let the blade stop before lifting the offcut, and keep hands out of its line.\n"
        "\n"
        "From\n"
        "  - common practice\n"
    )


def test_a_failed_check_is_told_in_words() -> None:
    failed = RAKE | {"checks": [{"what": "the angles add up", "holds": False}]}
    assert "FAILS: the angles add up" in page(failed)
    assert "FAILS the angles add up" in page(failed, ascii_only=True)


def test_the_question_put_back() -> None:
    text = page(ASKS)
    assert "What is the pitch?" in text
    assert text.count("What is the pitch?") == 1


def test_the_reason_for_declining_and_the_words_noted() -> None:
    assert run_together(DECLINED["say"]) in run_together(page(DECLINED, 40))
    assert NOTED["say"] in page(NOTED)


def test_two_hundred_marks_are_numbered_in_order() -> None:
    marks = [item(f"course {n}", n * 6.75, "in", f"{n * 6.75:g} in") for n in range(1, 201)]
    record = COURSES | {"marks": marks, "figure": {"views": [pole(200)]}}
    for width in WIDTHS:
        listed = next(part for part in sections(record, width) if part.kind == "marks")
        shown = run_together("".join(listed.lines))
        for n, mark in enumerate(marks, 1):
            assert f"{n}{run_together(mark['text'])}" in shown


def test_a_mark_with_a_name_keeps_it() -> None:
    record = COURSES | {"marks": [item("head of the window", 82, "in", "82 in"), item("mark 2", 90, "in", "90 in")]}
    text = page(record)
    assert "82 in  head of the window" in text
    assert "mark 2" not in text


def test_a_drawing_that_cannot_be_read_is_told_in_a_sentence() -> None:
    text = page(RAKE | {"figure": {"views": [{"shapes": [{"kind": "line"}]}]}})
    assert "The drawing has a shape that can't be read." in text
    assert "56.3°" in text


def test_a_very_long_question_leaves_room_for_its_answer() -> None:
    text = page(RAKE | {"heard": "rake return " * 1000})
    assert "11,999 characters" in text
    assert text.index("Answer") < 800


def test_ascii_page_is_ascii() -> None:
    for record in DAY:
        assert page(record, 80, ascii_only=True).isascii()


@pytest.mark.parametrize(
    ("one", "sides"),
    [
        (
            {"formula": "θ = atan(r)", "filled": "θ = atan(5)", "result": "θ = 78.7°"},
            ["θ", "atan(r)", "atan(5)", "78.7°"],
        ),
        ({"formula": "γ = 90°", "filled": "90°", "result": "90°"}, ["γ", "90°"]),
        ({"formula": "s = t / 2", "filled": "8 / 2", "result": "4"}, ["s", "t / 2", "8 / 2", "4"]),
        ({"formula": "", "filled": "", "result": "4"}, ["4"]),
    ],
)
def test_no_side_of_an_equation_is_said_twice_or_lost(one: dict[str, str], sides: list[str]) -> None:
    assert chain(one) == sides


def test_a_comparison_is_not_set_as_an_equation() -> None:
    one = {"formula": "reach = s ≤ limit", "filled": "56.31° ≤ 52°", "result": "no", "why": "the scale must get there"}
    text = page(RAKE | {"steps": [one]}, 100)
    assert "  1  reach; s ≤ limit; 56.31° ≤ 52°; no   the scale must get there\n" in text


@settings(max_examples=60, deadline=None)
@given(st.text(max_size=300), st.text(max_size=60), st.integers(1, 160))
def test_any_words_make_a_page(words: str, name: str, width: int) -> None:
    given_ = item(name, 1, "none", words, **{"from": "assumed"})
    record = RAKE | {"heard": words, "say": words, "job": name, "givens": [given_], "cautions": [words]}
    for ascii_only in (False, True):
        lines = page(record, width, ascii_only).split("\n")
        assert all(len(line) <= max(width, 20) and line.isprintable() for line in lines)


def test_the_page_does_not_load_the_screen() -> None:
    code = "import assistant.page, assistant.screen, sys; print('textual' in sys.modules, 'rich' in sys.modules)"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True)
    assert done.stdout.split() == ["False", "False"]
