"""Sizes with no unit that can only be millimetres or metres."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "answer"),
    [
        ("Soffit lining's 9 thick and I want 30 up into the batten, screw length?", "39 mm"),
        ("Bargeboard's 20, packer behind is 12, penetration 40 please, what do I buy at the least?", "72 mm"),
        ("With 18 weatherboard, 7 mat and 12.5 sheathing I want 40 in the stud, so fastener's at least?", "78 mm"),
        ("What's the long side of a triangle with 900 and 1200 at the right angle?", "1500 mm"),
        ("A gutter bracket strut 600 long sits at 60 degrees off level, how far does it stand out from the wall?", "300 mm"),
        ("Box channel 50 wide inside, 20 deep, 4.8 long and full, how many litres?", "4.8 L"),
        ("steel roof sheets, 11 m, night to day is 45 C, movement?", "5.9 mm"),
        ("aluminium 3.6 lengths, warms by 40 C, movement", "3.3 mm"),
        ("Only a 6 drainage mat behind the cladding, what kind of cavity's that?", "drainage only"),
        ("12 mesh behind the cladding, what kind of cavity's that?", "ventilated"),
        ("half of 1835 in mm", "918 mm"),
        ("Down to minus 2 tonight with the dew point at nil, frost on the deck?", "yes"),
    ],
)
def test_it_is_metric(line: str, answer: str) -> None:
    record = last(line)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["text"] == answer


@pytest.mark.parametrize(
    ("line", "answer"),
    [
        ("fastener for 2 in foam and 3 in the stud", "5 in"),
        ("right triangle sides 30 and 40, long side?", "50 in (4 ft 2 in)"),
        ("gutter 5 wide 4 deep 20 long how many gallons", "20.78 gal"),
        ("roofing screw through 1/8 inch of rubber and 5/8 inch of deck, a quarter inch out the far side", "1 in"),
    ],
)
def test_what_is_no_metric_size_is_left_as_it_was(line: str, answer: str) -> None:
    assert last(line)["answer"]["text"] == answer
