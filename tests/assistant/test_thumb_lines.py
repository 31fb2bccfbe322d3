"""Lines after an answer as a thumb types them: units alone, prices at so much each, short words, and for n."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from assistant.spelled_out import spelled_out
from tests.talking import last

RAKE = "rake length 8/12, 24' gable, 12 oh"
BOARDS = "500 sf 5 exp 12ft boards how many"
WALL = "wall 32x9 less 2 wndw 3x4 net sf"
NAILS = "nails 15 rows 9.6m 400 oc"
STRAPS = "fasteners for 14 straps 9 feet long at 12 inch spacing"
STUCK = "wall 28x9 + 12/12 gable 28 wide area"


@pytest.mark.parametrize(
    ("typed", "whole"),
    [
        ("@ 28 ea", "at 28 each"),
        ("cost @ 14.50 ea", "at 14.50 each"),
        ("@ 5.40/sf cost", "at 5.40 a square foot"),
        ("m2?", "in square metres"),
        ("n kg", "in kilos"),
        ("in ft in", "in feet and inches"),
        ("w/ 450 oh", "with 450 overhang"),
        ("n a 3x7 door", "and a 3x7 door"),
        ("hi n lo each", "high and low each"),
        ("sq w/ 10%", "squares with 10%"),
        ("sq fascia", "square fascia"),
        ("wdw ¾ in", "window ¾ in"),
        ("5½\" cvr ea", "5½\" cover each"),
    ],
)
def test_short_words_are_spelled_out(typed: str, whole: str) -> None:
    assert spelled_out(typed) == whole


@pytest.mark.parametrize("line", ["mm", "north side", "make it 16", "what's that at 4 dollars each", "no, nine"])
def test_whole_words_stay(line: str) -> None:
    assert spelled_out(line) == line


@pytest.mark.parametrize(
    ("lines", "answer"),
    [
        ((RAKE, "16 oh"), "192 5/16 in (16 ft 5/16 in)"),
        ((RAKE, "no oh"), "173 1/16 in (14 ft 5 1/16 in)"),
        ((RAKE, "pls mm"), "4762 mm"),
        ((BOARDS, "16ft?"), "83"),
        ((BOARDS, "@ 28 ea"), "3080.00"),
        ((WALL, "n a 3x7 door"), "243 ft²"),
        ((WALL, "3 wndws"), "252 ft²"),
        ((WALL, "m2?"), "24.53 m²"),
        ((NAILS, "@ .08 ea"), "30.00"),
        ((STRAPS, "boxes of 50", "at 30 bucks a box"), "90.00"),
        (("how much does 320 sq ft weigh at 2.1 lb a sq ft", "@ 5.40/sf"), "1728.00"),
        (("gable height 6/12 26 foot", "rake with 12 overhang"), "187 13/16 in (15 ft 7 13/16 in)"),
        (("rake return 5/12", "sq fascia"), "45°"),
        (("rake 6/12, 20 foot gable", "16' 1x6 for that"), "1"),
        (("48 bds 11.5 lb ea wt", "52 bds"), "598 lb"),
        (("pvc board 16 foot now 20f hot 110 cold -20 gap", "12 foot board"), "1/2 in"),
    ],
)
def test_a_thumbs_line_is_taken(lines: tuple[str, ...], answer: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    assert record["answer"]["text"] == answer


def test_a_box_nobody_counted_is_no_price_of_a_nail() -> None:
    assert last(STRAPS, "at 30 bucks a box")["outcome"] == "asks"


def test_what_has_no_place_is_asked_once_more_before_it_is_let_fall() -> None:
    talk = Conversation()
    assert "28x9" in talk.answer(STUCK)["ask"]
    again = talk.answer("8/12")
    assert again["outcome"] == "asks" and "leave it out" in again["ask"]
    left = talk.answer("leave it out")
    assert left["answer"]["text"] == "130.7 ft²"
    assert any(line["name"] == "left out" and line["text"] == "28x9" for line in left["also"])


def test_a_size_is_no_count_of_sides() -> None:
    assert last("miter for 8 sides", "the post is 7 across")["outcome"] == "asks"
    assert last("miter for 8 sides", "7 sides")["answer"]["text"] == "25.7°"


def test_ok_and_more_is_no_yes() -> None:
    talk = Conversation()
    asked = talk.answer("36' wall 8 hi 6 exp 12' lap qty")
    assert asked["outcome"] == "asks"
    assert talk.answer("ok n nails")["topic"] != "take-off"


@pytest.mark.parametrize(
    ("typed", "whole"), [("nah its a nine twleve", "nah its a nine twelve"), ("make it fourten foot", "make it fourteen foot")]
)
def test_a_slip_in_a_number_is_mended(typed: str, whole: str) -> None:
    assert spelled_out(typed) == whole
