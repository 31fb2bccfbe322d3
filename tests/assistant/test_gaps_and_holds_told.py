"""Gaps, layers and what holds as they are said on the wall: by what lumber is called, a nail's own length, half a screen shut."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("said", "inches"),
    [
        ("one by threes behind the cladding, does that count as a ventilated cavity?", 0.75),
        ("is a 2 by 4 laid flat behind the siding a vented gap", 1.5),
        ("2x2s behind the cladding, what kind of gap is that", 1.5),
        ("is a 1 by 4 furring strip enough to ventilate behind the siding", 0.75),
        ("one by two laid flat so 19 mm behind the boards, is that vented", 19 / 25.4),
        ("1x3 strapping dressed to 11/16, is the gap vented", 0.6875),
    ],
)
def test_lumber_is_as_deep_as_it_is_thick(said: str, inches: float) -> None:
    record = last(said)
    assert record["topic"] == "air gap" and record["outcome"] == "answered", record["ask"] or record["say"]
    assert not record["say"].startswith("1:")
    depth = record["givens"][0]
    assert depth["value"] * {"in": 1, "mm": 1 / 25.4}[depth["unit"]] == pytest.approx(inches)


def test_a_stud_that_is_not_said_to_lie_flat_is_asked_about() -> None:
    assert last("is a 2x4 behind the siding a vented gap")["outcome"] == "asks"


@pytest.mark.parametrize(
    ("said", "square_inches"),
    [
        ("free area at the base, 1x4 strapping, 24 ft wall and a 50% screen", 108),
        ("3/4 vent gap 12 foot of it with no screen. how many square inches is open", 108),
        ("half inch slot along 30 ft without a screen, free area?", 180),
        ("3/4 gap, 20 ft, half of the screen is shut, free area", 90),
        ("half inch gap bottom of the wall, 24 foot long, screen lets through two thirds, free area", 96),
        ("one inch intake along a forty foot wall, screen cuts it by half. sq inches", 240),
        ("attic floor is 2100 square feet, wants a three hundredth of it open, how much vent", 1008),
        ("How much vent for a loft 18' x 36'? use one fifty", 622.08),
        ("25' x 48' attic / 1:300 / sq in?", 576),
        ("they want 1 sq ft of vent for every 300 of attic, I have 1530 sq ft. how many square inches", 734.4),
    ],
)
def test_shares_of_vents_and_screens_in_other_words(said: str, square_inches: float) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(square_inches)


@pytest.mark.parametrize("said", ["half inch slot along 30 ft, free area?", "soffit vents for a 26 by 50 attic"])
def test_a_share_that_nobody_told_is_asked_for(said: str) -> None:
    assert last(said)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("said", "inches"),
    [
        # Lumber of no name among the layers, and so many of one.
        ("need 2 inches in solid wood, going through 2 inches of polyiso and a 1x4. What length", 4.75),
        ("screw for a 1x4 over 7/16 sheathing, inch and a quarter bite", 2.4375),
        ("screw through a 1x4 and 1/2 inch ply with 1 1/2 in the stud", 2.75),
        ("screw through two half inch plies and 3/4 siding, 1 1/4 in the stud", 3.0),
        ("nail through three quarter boards and half inch ply, 1 1/4 in the stud", 2.5),
        # What holds, told between two layers.
        ("screws: 3/4 strap, 1 1/4 in the stud, 1/2 sheathing", 2.5),
        ("strapping over three inches of foam, 1x4 straps, want 1 1/2 in the stud, sheathing is 7/16, how long a screw", 5.6875),
        # The true thickness after the name.
        ("trim board 5/4 real 1 inch, sheathing half inch, bite of 1 1/4: nail?", 2.75),
        ("5/4 trim, the inch thick stuff, over half inch sheathing with inch and a half in the framing. how long a nail", 3.0),
    ],
)
def test_every_layer_counts_and_what_holds_once(said: str, inches: float) -> None:
    record = last(said)
    assert record["topic"] == "fastener length" and record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(inches)


@pytest.mark.parametrize(
    ("said", "inches", "says"),
    [
        ("does a 2 1/2 inch screw make it through 3/4 cedar and 1/2 ply with 1 1/4 in the stud", 2.5, "enough"),
        ("do 2 inch nails reach an inch into the stud through 1/2 siding and 7/16 sheathing", 1.9375, "enough"),
        ("2 1/2 in ring shank enough for 3/4 siding, 7/16 osb, 1 1/4 penetration?", 2.4375, "enough"),
        ("3 inch screws do for 3/4 board, 3/4 strap, 1/2 ply with 1 1/4 in the stud?", 3.25, "not enough"),
    ],
)
def test_a_nails_own_length_is_held_against_the_answer(said: str, inches: float, says: str) -> None:
    record = last(said)
    assert record["answer"] and record["answer"]["value"] == pytest.approx(inches)
    assert says in record["say"] and ("not enough" in record["say"]) == (says == "not enough")


@pytest.mark.parametrize(
    "said",
    [
        "cladding 21, cavity batten 20, rigid air barrier 7, and 40 embedment. nail length?",  # the 7 found no place
        "nail through 3/4 siding into a 1x4, 1 1/4 penetration",  # what it goes into is no layer
        "build out, 5 1/2 in studs, 1/2 ply, 3/4 strap and 5/8 siding",
        "straps over three inches of foam, 1x4 straps, want 1 1/2 in the stud, sheathing is 7/16",  # a screw, or how deep
    ],
)
def test_a_size_that_may_be_no_layer_is_asked_about(said: str) -> None:
    assert last(said)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("said", "litres"),
    [
        ("How many litres in a box gutter 150 x 90 x 4.2 m", 56.7),
        ("how many litres in a gutter 150 x 90 x 4.2 m", 56.7),
        ("the track catches rain, 9 mm slot, 14 mm down, wall's 8.25 m, how many litres", 1.0395),
    ],
)
def test_what_a_gutter_holds_is_no_paint(said: str, litres: float) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(litres)


@pytest.mark.parametrize(
    "said",
    [
        "how many gallons of paint for a gutter 5 by 4 inches 32 ft",
        "how many pints a day for 70 F and 65 percent",
        "will 3/4 cedar cup if the gap's only 1/4 inch",
        "what do I tie the ladder off to at 20 ft",
        "does the ladder have to be tied at 16 feet",
        "do I need house wrap behind a 3/8 gap",
    ],
)
def test_what_sounds_like_water_or_a_ladder_is_anothers_to_tell(said: str) -> None:
    assert last(said)["outcome"] == "declined"


@pytest.mark.parametrize(
    "said",
    [
        "so it doesn't rot, how much fall on a 6 inch sill at 10 degrees",
        "will it fade? anyway 12 ft vinyl grows how much over 70 F",
        "do I need paper, 3/8 gap behind the siding, is that vented",
        "I'll tie the ladder off, how far out does it stand at 16 feet",
        "twelve litres in US gallons",
    ],
)
def test_the_same_worries_beside_a_question_of_ours(said: str) -> None:
    assert last(said)["outcome"] == "answered"
