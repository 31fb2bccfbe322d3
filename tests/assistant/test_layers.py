"""Layers over several lines, asked for where one was left out, and heard in other words; through the desk."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from assistant.conversation import Conversation

Talk = Callable[..., dict[str, Any]]


@pytest.fixture
def talk() -> Talk:
    def last(*lines: str) -> dict[str, Any]:
        conversation = Conversation()
        return [conversation.answer(line) for line in lines][-1]

    return last


@pytest.mark.parametrize(
    ("lines", "inches"),
    [
        (["build-out with 1/2 sheathing and 5/8 clapboards over strapping", "3/4"], 1.875),
        (["build-out with 1/2 sheathing and 5/8 clapboards over strapping", "the strapping is an inch"], 2.125),
        (["build-out with 1/2 sheathing, 1x4 strapping and 5/8 siding", "the strapping is 19 mm"], 0.5 + 0.625 + 19 / 25.4),
        (["build-out with 1/2 sheathing and 5/8 siding over strapping", "1/2 sheathing, 3/8 mesh and 5/8 siding"], 1.5),
        (["sheathing is 1/2 inch and the strapping is 3/4", "with 9/16 cladding on top what's the build-out?"], 1.8125),
        (["sheathing is 7/16", "strapping is 3/4", "siding is 5/8", "what's the build-out?"], 1.8125),
        (["half inch sheathing and 3/4 strapping", "what screw for 5/8 cladding over that, 1 1/2 in the stud"], 3.375),
        (["nail for two layers, 1/2 inch and 3/4 inch, with 1 inch of embedment"], 2.25),
        (["screw four three quarter inch cladding over half inch sheathing two go one and a half into the stud"], 2.75),
        (["he hates surprises, so the build-out for 5/8 sheathing and 3/4 cladding"], 1.375),
        (['detail 4: 5/8" ply, 1/4" drain mesh, 11/16" siding. Stud to face?'], 1.5625),
    ],
)
def test_every_layer_counts_once(talk: Talk, lines: list[str], inches: float) -> None:
    record = talk(*lines)
    assert record["outcome"] == "answered", record["ask"]
    value, unit = record["answer"]["value"], record["answer"]["unit"]
    assert value / (25.4 if unit == "mm" else 1) == pytest.approx(inches, abs=1e-6)


@pytest.mark.parametrize(
    ("line", "layer"),
    [
        ("nail through 3/4 strapping and the sheathing, 1 1/4 bite", "sheathing"),
        ("nail through strapping and 1/2 ply into the stud an inch and a half", "strapping"),
        ("screw for siding over 3/4 strapping, 1 inch bite", "siding"),
    ],
)
def test_a_layer_left_out_is_asked_for(talk: Talk, line: str, layer: str) -> None:
    record = talk(line)
    assert record["outcome"] == "asks"
    assert record["ask"] == f"How thick is the {layer}?"


def test_another_wall_is_not_added_to_the_last(talk: Talk) -> None:
    record = talk("build-out with 1/2 sheathing and 3/4 strapping", "build-out with 7/16 sheathing and 5/8 siding")
    assert record["answer"]["value"] == pytest.approx(1.0625)


WALL = "build-out: 1/2 sheathing, 3/4 strapping, 5/8 cladding"


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("and with 7/16 sheathing?", 1.8125),
        ("what if the cladding is 3/4", 2.0),
        ("swap the strapping for 3/8 mesh", 1.5),
        ("and with 3/8 mesh instead of the strapping?", 1.5),
        ("use 3/8 mesh rather than the strapping", 1.5),
        ("and if I add an inch of foam?", 2.875),
        ("no, the strapping's an inch", 2.125),
        ("and with 1/2 sheathing, 3/8 mesh and 3/4 boards?", 1.625),
    ],
)
def test_a_layer_changed_leaves_the_others(talk: Talk, line: str, inches: float) -> None:
    assert talk(WALL, line)["answer"]["value"] == pytest.approx(inches)


def test_a_layer_of_metric_names_keeps_its_unit(talk: Talk) -> None:
    record = talk("nail length, 22 mm boards over 20 mm battens and 9 mm board, 35 mm into stud", "make the battens 38")
    assert (record["answer"]["value"], record["answer"]["unit"]) == (104, "mm")


def test_one_more_layer_or_another_in_its_place_is_asked_about(talk: Talk) -> None:
    assert talk(WALL, "and with 1 inch foam?")["outcome"] == "asks"


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("build-out: 1/2 sheathing, 3/4 strapping instead of 3/8 mesh, and 5/8 boards", 1.875),
        ("how far out with 3/4 strapping rather than the 3/8 mesh over half inch sheathing", 1.25),
        ("I want to swap the 3/8 mesh for 3/4 strapping. How much further out does the cladding come?", 0.375),
        ("how much further does 3/4 strapping instead of 3/8 mesh push the face out", 0.375),
        ("if I swap 1/2 sheathing for 7/16 what does the build-out change by", -0.0625),
    ],
)
def test_what_another_stands_in_the_place_of_is_no_layer_of_the_wall(talk: Talk, line: str, inches: float) -> None:
    assert talk(line)["answer"]["value"] == pytest.approx(inches)


def test_two_by_fours_laid_flat_are_a_layer(talk: Talk) -> None:
    record = talk("half inch sheathing, two by fours laid flat for strapping, 3/4 shiplap, how far off the stud")
    assert record["answer"]["value"] == pytest.approx(2.75)


@pytest.mark.parametrize(
    ("change", "inches"),
    [
        ("we left the ply off", 1.375),
        ("and with no strapping", 1.125),
        ("take the ply off", 1.375),
        ("now there's an inch of foam under it as well", 2.875),
        ("plus a 3/8 mat", 2.25),
        ("it's two layers of ply", 2.375),  # no ply of 2 inches
        ("the strap's 1 1/2", 2.625),
    ],
)
def test_a_layer_less_or_more_in_the_next_line(talk: Talk, change: str, inches: float) -> None:
    record = talk("build-out for 1/2 ply, 3/4 strap and 5/8 siding", change)
    assert record["outcome"] == "answered", record["ask"]
    assert record["answer"]["value"] == pytest.approx(inches)


@pytest.mark.parametrize("line", ["is the ply left out?", "we can't skip the strapping"])
def test_a_layer_that_stays_is_not_taken_out(talk: Talk, line: str) -> None:
    assert talk("build-out for 1/2 ply, 3/4 strap and 5/8 siding", line)["outcome"] != "answered"
