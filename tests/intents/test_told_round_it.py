"""Numbers round a question that are no part of it: years, ages, what was paid, days; and what is put right with a bare no."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "answer"),
    [
        ("uncle frank says hold it up but hes seventy one hip length on a four in twelve with a run of ten foot",
         "174 3/8 in (14 ft 6 3/8 in)"),
        ("the flashing has legs four inch and two inch and half an inch the old was from nineteen oh six the girth", "6 1/2 in"),
        ("how long a screw the cladding is seven eighths and the strapping three quarters and one and a half inches into the wood"
         " my last box was nineteen dollars", "3 1/8 in"),
        ("opening is 80 no 84 inches, eleven balusters at 2 inches wide, gaps at both ends too", "5 3/16 in"),
        ("gable's 30 foot wide and the peak is 10 no 9 foot above the plate, area of the triangle", "135 ft²"),
        ("where does the ladder foot go its leaning on the gutter thats eighteen no twenty foot up", "60 in (5 ft)"),
        ("half of 37 5/8, wants to be in the middle", "18 13/16 in"),
        ("saw only goes to forty seven till monday the eighth i want a forty four degree cut will it do it", "yes"),
    ],
)  # fmt: skip
def test_what_is_told_round_it_is_passed_over(line: str, answer: str) -> None:
    record = last(line)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["text"] == answer


@pytest.mark.parametrize(
    ("line", "answer"),
    [
        ("cut 8 no. 1150 and 4 no. 900 from 4.8s", "3"),  # so many in number of it
        ("cost of 45 boards at nineteen dollars each", "855.00"),
        ("twenty twenty and a half inch pieces end to end", "410 in (34 ft 2 in)"),
    ],
)
def test_what_is_meant_stays(line: str, answer: str) -> None:
    assert last(line)["answer"]["text"] == answer
