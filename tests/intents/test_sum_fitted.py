"""What goes in an opening, what stands on a sill, what is shared out, and what was so before: told with no plus or less."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("opening's 61 1/2 and I'm leaving 3/16 each side, how wide is the door", 61.125),
        ("30 7/8 between the jambs, blind to clear a quarter each side", 30.375),
        ("hole in the counter is 22 7/8, sink wants an eighth each side, what size sink", 22.625),
        ("alcove 1204 wide, want 3 mm either end for the shelf, shelf length?", 1198),
        ("first run of gutter is 18 foot 4 and the other one is 11 foot 9 and a half, I lose 4 inches in the overlap, what's the"
         " total", 357.5),  # that is not added
        ("window's 34 1/2 and I leave half inch each side, what's the rough opening", 35.5),
        ("sill at 36 1/4 and the sash is 41 tall, where's the top", 77.25),
        ("From the slab it's 44 and an eighth to the sill and the window's 38 1/2 tall so where's the head", 82.625),
        ("12 foot 3 less 6 for the post, centre of what's left", 70.5),
        ("add 18 3/8, 22 1/2 and 11 1/8 and divide by 4", 13),
        ("deck is 9 foot 6 off the ground and I'm going with 15 risers, what's each one", 7.6),
        ("14 foot 3 and the same again and another 6 inches, total", 348),
        ("hole is 2 1/2 in from each end of an 18 inch plate, how far between the holes", 13),
        ("room is 11 foot 7 one way, find the middle", 69.5),
        ("overall if the base is 4, the box 31 and a quarter and the top 1 1/4", 36.5),
        ("drawer is 18 1/4 inside and the sides are half inch, how wide outside", 19.25),
        ("box is 24 outside with the sides 3/4, what's it inside", 22.5),
        ("measured it twice at 71 5/8, deduct 3/8, what's the glass", 71.25),
        ("mark at 40 1/2, go 3/8 back, where am I", 40.125),
        ("how much is 17 3/16 and 22 7/8", 40.0625),
        ("base is 36 wide, top overhangs 2 1/2 on either side, top width", 41),
        ("wall's 12 foot 9 and telly's 57 in the middle, how much each side, the game's on at eight", 48),
        ("6 rises of 187 mm", 1122),
        ("3.6 m less 40 each end", 3520),
        ("three posts at 3 1/2 and two panels of 71 1/4, no gaps between them, overall", 153),
    ],
)
def test_told_by_what_it_goes_in(said: str, value: float) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("had it at 88 then the floor went up, now it's 87 1/4, less half inch each end", 86.25),
        ("last one was 62 3/8 and too tight, this opening's 62 1/2, take an eighth off each end", 62.25),
        # How far they are apart is asked, and so many in a row are added: nothing was so before.
        ("the old sash was 31 1/4 and the new opening is 30 1/2, how much do I trim off the sash", 0.75),
        ("the first piece was 41, next one's 40 3/4, and a 2 inch block, how long altogether", 83.75),
    ],
)
def test_what_was_so_before(said: str, value: float) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("said", "topic", "value"),
    [
        ("my ladder touches at 16 foot with the foot 4 foot out, what length ladder is that", "right triangle", 197.9091),
        ("ladder bears at 16 foot, how far out", "ladder footing", 48),
    ],
)
def test_ladder_told_by_both_legs(said: str, topic: str, value: float) -> None:
    record = last(said)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["value"] == pytest.approx(value, abs=0.001)


@pytest.mark.parametrize(
    "said",
    [
        "two foot six and a half off a ten foot length twice, what's left of it",  # two such
        "four shelves evenly in a 60 inch bookcase, how far apart",  # no 56
        "the opening is 36 and the casing is 3 1/2 each side, how long is the head casing",  # asked about
        "the frame's 31 1/2 outside and the side on the left is 3/4, inside?",  # one side, or both
    ],
)
def test_not_answered_as_told(said: str) -> None:
    assert last(said)["outcome"] != "answered"
