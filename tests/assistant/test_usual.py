"""What is usual on a job: a quantity outside of it is put in the unit that was left out, or asked about."""

from __future__ import annotations

import pytest

from solvers.binding import PAGE_UNIT
from solvers.quantities import Area, Count, Length, Temperature, Volume
from solvers.registry import load_topics
from tests.talking import last


def test_every_length_and_count_says_what_is_usual() -> None:
    lacking = [
        f"{topic.name}: {parameter.name}"
        for topic in load_topics().values()
        if topic.name != "tape arithmetic"
        for parameter in topic.parameters
        if parameter.kind in (Length, Count, Area, Volume, Temperature) and parameter.slot.usual is None
    ]
    assert lacking == []


def test_what_is_usual_is_allowed() -> None:
    for topic in load_topics().values():
        for parameter in topic.parameters:
            slot = parameter.slot
            if slot.usual is None:
                continue
            least, most = slot.usual
            assert least < most, parameter
            assert slot.most is None or most <= slot.most, parameter
            assert slot.least is None or least >= slot.least, parameter
            default = parameter.default
            if isinstance(default, (Length, Count, Area, Volume)):
                size = default.to(slot.unit or PAGE_UNIT.get(type(default), default.unit)).value
                assert least <= size <= most, parameter


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        ("j trim 20 wide 10 deep 3500 long, how much water", "0.7 L"),
        ("how many boards each 4.2 for 40 square metres at 150 cover, no waste", "64"),  # 40e6 / (150 × 4200) is 63.5
        ("gable is 6.4 wide and 1.8 up to the point, how many square metres", "5.76 m²"),
        ("wall 8.2 long and 2.4 high, how many square metres", "19.68 m²"),
        ("rake return on a pitch of 30", "60°"),  # no roof rises 30 in 12: a plumb fascia's return is 90 less the pitch
        ("in a 24 ft gable at 8/12 and 7 inches showing, how long is the 5th one up", "288 in (24 ft)"),
        ("4 by 150 foot rolls, 1800 square feet, no lap, how many rolls of membrane", "3"),
        ("200 by 5 foot rolls, 1800 square feet, no lap, how many rolls of membrane", "2"),
    ],
)
def test_the_unit_left_out(said: str, answer: str) -> None:
    record = last(said)
    assert (record["outcome"], record["answer"] and record["answer"]["text"]) == ("answered", answer), record["say"]


@pytest.mark.parametrize(
    ("said", "asked"),
    [
        ("squares for a wall 2.6 by 9", "2.6 ft and the wall height 9 ft, or the wall length 2.6 m"),
        ("gusset 350 by 420, what's the long side", "350 in and the run 420 in, or the rise 350 mm"),
        ("plumb cut for a pitch of 18", "18 in 12 or 18°"),
        ("course layout 9 foot wall, exposure 30", "Is the exposure 30 in?"),
        ("fasteners for 900 courses 20 ft long at 16", "Is the courses or straps 900?"),
        ("dew point at 70 C and 60 percent", "Is the temperature 70 °C?"),
        ("marks every 60 feet along 200 feet", "Is the spacing 60 ft?"),
    ],
)
def test_it_is_asked_whether_it_was_meant(said: str, asked: str) -> None:
    record = last(said)
    assert (record["outcome"], asked in record["ask"]) == ("asks", True), record["ask"]


@pytest.mark.parametrize(
    ("lines", "answer"),
    [
        (("fasteners for 900 courses 20 ft long at 16", "yes"), "14400"),
        (("fasteners for 900 courses 20 ft long at 16", "no, 90"), "1440"),
        (("squares for a wall 2.6 by 9, no waste", "metres"), "2.52 squares"),  # 23.4 m², 251.9 square feet
        (("squares for a wall 2.6 by 9, no waste", "feet"), "0.23 squares"),
        (("plumb cut for a pitch of 18", "degrees"), "18°"),
        (("plumb cut for a pitch of 18", "in 12"), "56.3°"),
    ],
)
def test_the_reply_settles_it(lines: tuple[str, ...], answer: str) -> None:
    record = last(*lines)
    assert (record["outcome"], record["answer"] and record["answer"]["text"]) == ("answered", answer), record["say"]


def test_it_says_which_unit_it_took() -> None:
    record = last("j trim 20 wide 10 deep 3500 long, how much water")
    assert "I took 20 as millimetres." in record["say"]
    assert {given["text"] for given in record["givens"]} >= {"20, taken as millimetres", "10, taken as millimetres"}
    assert last("j trim 20 wide 10 deep 3500 long, how much water", "I meant inches")["givens"][0]["unit"] == "in"


@pytest.mark.parametrize(
    ("lines", "asked"),
    [
        (("dew point at 20 C and 60 percent", "at 70 C"), "Is the temperature 70 °C?"),  # hotter than any wall, and no crash
        (("course layout 9 foot wall, exposure 30", "no"), "What is the exposure?"),
        (("course layout 9 foot wall, exposure 30", "what"), "Is the exposure 30 in?"),
    ],
)
def test_what_was_not_meant_is_asked_for(lines: tuple[str, ...], asked: str) -> None:
    record = last(*lines)
    assert (record["outcome"], asked in record["ask"]) == ("asks", True), record["say"]


@pytest.mark.parametrize(
    "said",
    [
        "course layout on a 9 foot wall at 10 1/2 inches",
        "course layout on a wall 30 foot high at 7 inches",
        "end gap for a 20 foot vinyl panel at 40 F, hottest 110 F, coldest 0 F",
        "fall over 45 feet of gutter at 1/16 per foot",
        "diagonal of 4 inches by 5 inches",
        "ladder against a wall at 36 feet",
        "marks every 6 feet along 60 feet",
        "an air gap of 3 inches",
        "overhang of 60 inches, gable 24 feet, 6/12, how long is the rake",
    ],
)
def test_rare_sizes_with_their_units_are_taken(said: str) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
