"""The order list, and the notebook as plain text."""

from __future__ import annotations

import math
from collections.abc import Callable
from typing import Any

import pytest
from hypothesis import given
from hypothesis import strategies as st

from assistant.notebook import Notebook
from assistant.notebook_entry import SHORT
from assistant.notebook_order import ORDER_TOPICS, OrderLine
from assistant.notebook_pages import EMPTY, day_page, entry_line, order_page

Make = Callable[..., dict[str, Any]]


def item(name: str, value: float | None, unit: str, text: str) -> dict[str, Any]:
    return {"name": name, "value": value, "unit": unit, "text": text}


def length(value: float) -> list[dict[str, Any]]:
    return [{"name": "length", "value": value, "unit": "ft", "text": f"{value} ft", "from": "asked"}]


@pytest.fixture
def boards(make_record: Make) -> Callable[..., dict[str, Any]]:
    """A take-off of boards: how many, and for how long a wall."""

    def make(count: int, wall: float, **fields: Any) -> dict[str, Any]:
        return make_record(
            topic="cladding boards",
            heard=f"boards for {wall} feet",
            givens=length(wall),
            answer=item("boards", count, "count", f"{count} boards of 12 ft"),
            also=[item("squares", count / 30, "square", f"{count / 30:.2f} squares")],
            **fields,
        )

    return make


def texts(lines: list[OrderLine]) -> dict[str, str]:
    return {line.name: line.text for line in lines}


def test_like_things_are_added_up(notebook: Notebook, boards: Make) -> None:
    ids = [notebook.write(boards(63, 24.0)), notebook.write(boards(40, 18.0)), notebook.write(boards(1, 2.0))]
    line, squares = notebook.order()
    assert (line.text, line.value, line.entries, line.repeats) == ("104 boards of 12 ft", 104, ids, 0)
    assert squares.value == pytest.approx(104 / 30)
    assert squares.text == "4 squares", "squares are rounded up once, when ordered"


def test_one_and_many_of_a_piece_are_one_line_and_other_pieces_are_not(notebook: Notebook, make_record: Make) -> None:
    for value, text in ((1, "1 stick of 12 ft"), (7, "7 sticks of 12 ft"), (2, "2 sticks of 16 ft"), (3, "3 boxes")):
        notebook.write(make_record(topic="cut list", answer=item("sticks", value, "count", text), also=[]))
    assert [line.text for line in notebook.order()] == ["8 sticks of 12 ft", "2 sticks of 16 ft", "3 boxes"]


def test_a_text_that_does_not_begin_with_the_count_is_not_taken_apart(notebook: Notebook, make_record: Make) -> None:
    for value in (7, 5):
        answer = item("sticks", value, "count", f"12 ft sticks: {value}")
        notebook.write(make_record(topic="trim sticks", answer=answer, also=[], givens=length(value)))
    assert texts(notebook.order()) == {"sticks": "12 sticks"}


def test_lengths_and_areas_join_in_one_unit_and_metric_stays_apart(notebook: Notebook, make_record: Make) -> None:
    channel = [(150.0, "in", "12' 6\""), (7.5, "ft", "7.5 ft"), (2500.0, "mm", "2500 mm")]
    for value, unit, text in channel:
        answer = item("panels", 4, "count", "4 panels")
        notebook.write(
            make_record(topic="soffit panels", answer=answer, also=[item("edge channel", value, unit, text)])
        )
    assert [(line.name, line.text) for line in notebook.order()] == [
        ("panels", "12 panels"),
        ("edge channel", "20 ft"),
        ("edge channel", "2.5 m"),
    ]


def test_only_amounts_to_buy_are_listed(notebook: Notebook, make_record: Make) -> None:
    also = [
        item("length per tube", 24.1, "ft", "24.1 ft"),
        item("offcut", 31.5, "in", '31 1/2"'),
        item("girth", 9, "in", '9"'),
        item("gross area", 400, "ft2", "400 ft²"),
        item("shift", 16, "deg", "16°"),
        item("kind", None, "count", "none"),
    ]
    notebook.write(make_record(topic="sealant", answer=item("tubes", 3, "count", "3 tubes"), also=also))
    notebook.write(make_record(topic="course layout", answer=item("courses", 9, "count", "9 courses"), also=[]))
    notebook.write(make_record(topic="sealant", outcome="asks", answer=None, also=[]))
    assert texts(notebook.order()) == {"tubes": "3 tubes"}


def test_struck_and_corrected_take_offs_are_left_out(notebook: Notebook, boards: Make) -> None:
    struck, wrong = notebook.write(boards(63, 24.0)), notebook.write(boards(400, 180.0))
    notebook.strike(struck)
    notebook.write(boards(40, 18.0), kind="correction", points_at=wrong)
    assert notebook.order()[0].text == "40 boards of 12 ft"


def test_the_same_question_asked_again_is_pointed_out(notebook: Notebook, boards: Make) -> None:
    notebook.write(boards(63, 24.0))
    again = notebook.write(boards(63, 24.0))
    assert notebook.order()[0].repeats == 1
    assert "1 asked again with the same givens" in order_page(notebook.order())
    notebook.strike(again)
    assert notebook.order()[0].repeats == 0
    assert "asked again" not in order_page(notebook.order())


def test_an_order_is_of_one_job_and_one_day_when_asked(notebook: Notebook, boards: Make) -> None:
    notebook.write(boards(1, 1.0))
    notebook.write(boards(20, 2.0, job="lake wall"))
    notebook.write(boards(300, 3.0, at="2026-05-05T08:00:00-07:00"))
    assert notebook.order()[0].value == 321
    assert notebook.order(job="lake wall")[0].value == 20
    assert notebook.order(day="2026-05-05")[0].value == 300
    assert notebook.order(job="north wall", day="2026-05-04")[0].value == 1
    assert notebook.order(job="ramp wall") == []


@given(amounts=st.lists(st.floats(0.01, 5000), min_size=1, max_size=20))
def test_an_order_is_never_short_and_never_a_whole_unit_over(amounts: list[float]) -> None:
    for unit, step in (("ft", 0.1), ("square", 1.0)):
        line = OrderLine("strapping", "", unit, math.fsum(amounts))
        shown = float(line.text.split()[0].replace(",", ""))
        assert math.fsum(amounts) - 1e-6 <= shown < math.fsum(amounts) + step + 1e-6


def test_float_noise_orders_no_extra_piece(notebook: Notebook, make_record: Make) -> None:
    for value in (9.000000000000002, 54 / 6):
        notebook.write(make_record(topic="strapping", answer=item("straps", value, "count", "9 straps"), also=[]))
    assert notebook.order()[0].text == "18 straps"
    assert "strapping" in ORDER_TOPICS


def test_a_day_is_one_line_an_entry_under_its_date(notebook: Notebook, make_record: Make) -> None:
    first = notebook.write(make_record())
    asked = notebook.write(make_record(outcome="asks", answer=None, heard="cut it", ask="Which angle?"))
    no = notebook.write(make_record(outcome="declined", answer=None, topic=None, at="2026-05-05T07:05:00-07:00"))
    page = day_page(notebook.last(9)).split("\n")
    assert page == [
        "2026-05-04",
        f"09:31  {first[-SHORT:]}  rake return           miter for a 5-in-12 rake return  = 56.3°",
        f"09:31  {asked[-SHORT:]}  rake return           cut it  asked back",
        "",
        "2026-05-05",
        f"07:05  {no[-SHORT:]}  -                     miter for a 5-in-12 rake return  declined",
    ]
    assert day_page([]) == EMPTY


def test_what_was_said_later_stands_on_the_line(notebook: Notebook, make_record: Make) -> None:
    id = notebook.write(make_record())
    notebook.flag(id)
    notebook.tag(id, "punch list")
    notebook.note("east end is out", about=id)
    right = notebook.write(make_record(), kind="correction", points_at=id)
    notebook.strike(id)
    line = entry_line(notebook.get(id))
    assert line.endswith(
        f"= 56.3°  [STRUCK]  [corrected by {right[-SHORT:]}]  [flagged]  [tag: punch list]  [note: east end is out]"
    )
    assert len(day_page(notebook.last(99)).split("\n")) > 6, "struck or not, every entry has its line"


@pytest.mark.parametrize("width", [20, 80, 140])
def test_words_are_shortened_to_fit_but_an_answer_never_is(notebook: Notebook, make_record: Make, width: int) -> None:
    long = "63 boards of 12 ft, 2 of them ripped to 5 13/16 in"
    id = notebook.write(make_record(heard="word " * 2000, answer=item("boards", 63, "count", long)))
    line = entry_line(notebook.get(id), width)
    assert line.endswith(f"…  = {long}")
    assert "\n" not in line
    assert len(line) <= max(width, 120)


def test_nothing_in_the_words_steers_the_terminal(notebook: Notebook, make_record: Make) -> None:
    id = notebook.write(make_record(heard="a\x1b[2Jb\r\nc\u202ed\u2028e\x9bf", topic="x\x07y"))
    line = entry_line(notebook.get(id))
    assert line.isprintable()
    assert "a [2Jb c d e f" in line


def test_an_empty_order_says_so() -> None:
    assert order_page([]) == "Nothing to order: no take-off has been asked for."


def test_an_order_names_the_entries_it_comes_from(notebook: Notebook, boards: Make) -> None:
    ids = [notebook.write(boards(63, 24.0)), notebook.write(boards(40, 18.0))]
    first = order_page(notebook.order()).split("\n")[0]
    assert first == f"boards: 103 boards of 12 ft ({ids[0][-SHORT:]}, {ids[1][-SHORT:]})"
