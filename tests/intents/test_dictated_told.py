"""Small words that were numbers, told by where they stand: wide for deep, out for foot, take off for windows."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "answer"),
    [
        ("wall is forty too foot by ate foot take off for windows three foot by for foot net area", "288 ft²"),
        ("bend it two and a half plus two plus a half whats the girth", "5 in"),
        ("wall is nine foot too siding seven inch exposure most what do i lay it at", "6 7/8 in"),
        ("point ate seven five of an inch as a fraction", "7/8 in"),
        ("point six to five of an inch as a fraction", "5/8 in"),
        ("brace goes up three foot and out for foot how long is it cut point to point", "60 in (5 ft)"),
        ("screw through for eighths ply and three quarter strap inch and a quarter in the stud", "2 1/2 in"),
        ("vent gap three ate screen sixty five percent open free area a foot", "2.93 in²/ft"),
        ("how much trim for for windows three foot by too foot", "480 in (40 ft)"),
        ("channel too wide won deep ten foot long how many gallons", "1.04 gal"),
        ("trough is six inches wide for deep ten foot long how many gallons", "12.47 gal"),
    ],
)
def test_it_was_a_number(line: str, answer: str) -> None:
    record = last(line)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["text"] == answer


@pytest.mark.parametrize(
    "line",
    [
        "the lake wall is nine foot, the ramp wall is nine foot too siding six inch exposure most what do i lay it at",
        "channel three wide, too deep",
    ],
)
def test_where_it_may_be_either_or_a_word_it_asks(line: str) -> None:
    assert last(line)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("line", "answer"),
    [
        ("wall thirty foot by eight foot take off four windows three foot by four foot", "192 ft²"),
        ("cut corner to corner, four foot by three foot", "60 in (5 ft)"),
    ],
)
def test_what_was_none_stays(line: str, answer: str) -> None:
    assert last(line)["answer"]["text"] == answer
