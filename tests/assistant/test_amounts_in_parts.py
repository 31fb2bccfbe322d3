"""Amounts told in parts, in sets, in packs, and with what somebody has in his pocket: worked where they are plain, else asked."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


def answer(said: str) -> float | None:
    """What a line comes to; None where it is asked about."""
    record = Conversation().answer(said)
    return round(record["answer"]["value"], 4) if record["outcome"] == "answered" else None


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("front porch soffit run 14 foot, back 22 foot, all 18 deep, 12 inch cover panels", 36),
        ("front eave 40, back eave 40, 16 inch soffit, 12 inch cover, panels", 80),
        ("trim 44 foot front and 44 foot back, 12 foot stock, sticks?", 8),
        ("frieze front 32 ft, back 32 ft, sides 24 ft each. 12 ft stock. sticks?", 10),
        ("caulk 1/4 by 1/4, 45 foot on the north and 70 foot on the south, tubes", 5),
        ("two walls at 16 foot, two at 24, all nine high, less 85 sq ft of doors and windows: siding area", 635),
        ("wall area for 3 sides, 20, 30 and 20 foot long, all of them 9 foot high", 630),
        ("squares wanted: 640 sq ft south, 590 north, and 15 % lost", 14.145),
        ("step flashing, left side 9 ft and right side 9 ft, 5 inch exposure", 44),
        ("step flashing, two sides, 6 ft and 6 ft, 5 inch exposure", 30),
        ("step flashing, three sides, 6 ft and 6 ft, 5 inch exposure", None),
        ("22 windows, 15 ft around each. Bead 1/2 wide, 1/4 deep. How many tubes?", 28),
        ("Rakes are 17'8\" each, four of them, 12' trim, 10% over. Sticks?", 7),
        ("trim sticks for 120 ft and 16 foot sticks", 8),
        ("trim sticks: front and back 40 feet each, 12 foot sticks", 7),
        ("trim sticks: front and back 40 feet, 12 foot sticks", None),
        ("soffit panels, eaves 40 ft, front overhang 16 inches and back 24 inches, 12 cover", None),
        ("soffit panels front and back 14 ft and 22 ft, 12 deep, 12 cover", 36),
        ("soffit 40 ft run, overhang 2 ft front and back, 12 inch cover, panels?", 40),
        ("north wall 40 ft long, east wall 9 ft high, area", 360),
        ("I measured seventeen hundred square feet of wall all round, what's that in squares with the usual waste", 18.7),
        ("96 sq m walls, roll 1.5 m x 50 m lap 150, 5% waste", 2),
    ],
)
def test_parts_are_added_up(said: str, value: float | None) -> None:
    assert answer(said) == value


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("three walls to do: 20x9, 14x9 and 20x8. one door 36 by 80 inches. net area?", 446),
        ("wall area: north 30x9, south 30x9, east 20x9", 720),
        ("front 20x9 wall and back 20x9 wall, less 3x7 door, area", 339),
        ("walls 20x9 and 14x9, door 9x7, net", 243),
        ("each wall is 20x9, three walls, area", 540),
        ("wall area north and south 30 by 9 each", 540),
        ("wall 20 by 9, windows 4x5 and 3x4, area left", 148),
        ("north wall 40 by 9 and a garage door 16 by 8, net", 232),
        ("four walls, 30x9 and 20x9, total area", None),
        ("a shed, 12 by 16, walls 8 foot all round. Total wall area please", 448),
        ("wall 42 by 9, and there's a pair of 3x5 windows and one 6x7 patio door in it, area left", 306),
        ("wall area 28 long, 9 foot high, a door 3 by 6-8", 232),
        ("wall 22 by 9, a 2 by 2 vent, net", 194),
        ("wall 22 by 9, vent 12 by 18, net", 196.5),
    ],
)
def test_faces_and_openings(said: str, value: float | None) -> None:
    assert answer(said) == value


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("window trim for 3 windows, each takes two at 60 and two at 38 inches, stock 16 foot, sticks?", 4),
        ("per window: two at 54, one at 40, one at 44. five windows. 16 foot stock. how many lengths", 6),
        ("three windows, 6 at 60 and 6 at 38, stock 16 foot, how many sticks", 4),
        ("every window gets two at 60 and one at 40, there are six windows, 12 ft stock, cut list", 8),
        ("6 at 60 each, stock 16 foot, sticks", 2),
        ("for 2 windows, two at 60 and two at 38, 16 foot stock, how many sticks", None),
        ("cut list 16 foot stock: two at 9 foot and three at 14", None),
        ("out of twelve foot boards I want six pieces exactly 4 feet long, how many boards should I buy?", 3),
        ("thirty blocks, each seven and a quarter, out of 8 footers with an eighth for the blade", 3),
        ("flashing with three legs 50, 75 and 20 mm, what's the girth, and how many from a 1200 wide sheet", 145),
        ("least number of 10 foot boards for two each of 96, 72, 48 and 24", 5),
        ("4 dormers, each cheek 7 foot, two cheeks a dormer, 5 inch shingles, step flashing in all", None),
        ("drip cap 25 up, 40 over, 12 down in mm, strip", 77),
        ("bent flashing 4 legs 2 3 1 1/2 inches girth", None),  # four are said and three told, or 1 and 1/2 apart
        ("count the 8x8 steps: rake 8 ft 9, exposure 4 in", 27),
    ],
)
def test_sets_and_legs(said: str, value: float | None) -> None:
    assert answer(said) == value


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("I've 500 dollars in my pocket. 17 sticks at 22.40 a stick, what's the bill?", 380.8),
        (
            "The quote of the 9th was 1,980 and of the 12th 2,140. 410 sq ft at $4.85 a square foot, what should it come to?",
            1988.5,
        ),
        ("The lift takes 12 sheets at a time. 48 sheets at 42 lb each. Weight of the lot?", 2016),
        ("Roof's 6 in 12. Gable's 30 feet wide. I've a 24 foot ladder for it. How many square feet of gable?", 112.5),
        ("Lads carry 6 boards at 17 lb each. What does that weigh?", 102),
        ("Quote says 5.10 a square foot. 1,060 sq ft. Cost?", 5406),
        ("The estimate was 14 squares. What does that cost at 390 a square?", 5460),
        ("22 boards at $19 and 8 sticks of trim at $31, all together?", 666),
        ("38 boards at 17.85 a piece", 678.3),
        ("40 boards of 12 foot at $1.65 a foot, what's the damage", 792),
        ("17 sq @ 412.50/sq, total $", 7012.5),
        ("nine hundred and forty square foot up there and he says allow fifteen, how many squares", 10.81),
        ("boards for 520 square, 12 foot boards, 6 exposure", None),
        ("cladding boards for 600 square feet, exposure 6, 12 foot boards, 240 square feet of it on the north", None),
        ("squares for 900 sq ft, 200 sq ft of that brick, 10 percent", 7.7),
    ],
)
def test_money_loads_and_what_is_by_the_way(said: str, value: float | None) -> None:
    assert answer(said) == value
