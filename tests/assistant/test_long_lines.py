"""Long lines with other things told in them: other walls, the weather, neighbours, what was replaced, whose idea a change was."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from intents.of_other_things import asked_wall

ANSWERED = [
    # One wall asked about by name, where others are told.
    ("the front wall is 30 feet by 9 high, the back wall is 24 by 9, area of the back wall", "216 ft²"),
    ("front wall's 30 by 9, back wall's 24 by 9, what's the area", "486 ft²"),
    ("north wall 32 by 9, lake wall 40 by 9, squares for the lake wall with 10 percent waste", "3.96"),
    ("north wall is 32 foot, the ramp wall 18, gap 3/4 all round, the screen half open, vent area on the ramp wall", "81"),
    # The weather, a neighbour's, what something takes up, what has been replaced, what comes after the question.
    ("it's 30 C out here, how long is the rake on a 28 foot wide gable at 6/12", "187 13/16 in"),
    ("so cold it's freezing, what's the diagonal of 9 by 12 feet", "180 in"),
    ("it's 85 degrees out here and I need the miter for a 100 degree corner", "40°"),
    ("vent area at 1/150 for a 1,450 sq ft attic, my uncle's place is 2,000, half of it low and half up top", "1392 in²"),
    ("the stove takes up 3 foot so that leaves 11 foot 6, how many marks at 16 on centre", "9"),
    ("the gap started out at 3/8 but it's 3/4 now, 44 ft of wall, mesh 50% open, what's the vent area", "198 in²"),
    ("we had 90 percent at six this morning and now it's 58 percent with the air at 71 F, what's the dew point", "55.5 °F"),
    ("white oak, 11 1/2 inches, from 7% to 11%, what's it moved by? The 8 inch ones were fine.", "3/16 in"),
    ("vent area for 52 feet by 26 feet, a 5/12 roof and 12 inches of wool, at 1/300", "649 in²"),
    ("slate sill 7 inches deep, sixty pounds of it, 1/4 inch per foot, how much does it fall", "1/8 in"),
    # Slopes and layers.
    ("a drip cap 1 1/2 inch wide falls an inch and a half per foot, how much drop", "3/16 in"),
    ("8 inch cap, a half per foot, drop?", "5/16 in"),
    ("out from the studs: 11 mm OSB, 38 mm foam, 19 mm battens, 8 mm board, and it's a 90 mm stud wall, build-out?", "76 mm"),
    ("stud out 7/16 OSB, 1 1/2 of foam, 3/4 battens, 1/2 bevel, used to be just an inch, build-out?", "3 3/16 in"),
    ("white oak, plain sawn, 26 inches, was 9 percent in March, it's 13 percent now, how much has it grown", "3/8 in"),
    ("22 F for a low and 18 F for dew point, frost tonight", "no"),
    ("The electrician's in my way so I can't get by, but what's the diagonal of a frame 9 foot by 12 foot", "180 in"),
]  # fmt: skip
CHANGED = [
    (["straps at 16 centres along a 34 foot wall", "engineer says go to 12 on centre on that side because of the wind"], "35"),
    (["straps at 16 centres along a 34 foot wall", "go to 12 on centre because of the wind off the lake"], "35"),
    (["wall 40 foot long and 9 high with two windows 3 by 4 and a door 3 by 7, area", "leave out the door"], "336 ft²"),
    (["wall 36 by 10, one door 3 by 7, area", "they've boarded up the door for good so leave that out of it"], "360 ft²"),
    (["end gap for 12 foot vinyl, 40 F now, 110 F hottest, -10 F coldest",
      "it has warmed up since this morning, it's 60 now, so what do I leave on the next one"], "1/4 in"),
    (["diagonal of a deck 14 by 18", "no hang on, I read my own writing wrong, it was 16 by 18 not 14"], "289 in"),
    (["take 3 1/8 off 52 7/16", "no, 53 7/16, I had the tape on the wrong side of the nail"], "50 5/16 in"),
    (["sheathing 1/2, strapping 3/4 and siding 5/8, build-out",
      "we've had to go to 1 inch on the strapping since the yard ran out of three quarter"], "2 1/8 in"),
    (["water in a channel 3/4 by 1/2, 20 foot long", "the lad wants it in litres, his bucket's marked that way"], "1.47 L"),
    (["straps for a 28 foot wall at 24 on centre", "my foreman says sixteens, so how many is it at sixteen"], "22"),
    (["vent opening, 30 foot wall, 3/4 gap, 55 percent open",
      "that wall's really thirty two and a half, I forgot the bit behind the chimney"], "160.9 in²"),
    (["what exposure for 9 foot 6 with 7 inches the most",
      "the top's been dropped two inches for the vent strip, so it's 9 foot 4 now, do that"], "7 in"),
    (["screw for 3/4 boards over 3/4 strapping into the stud by an inch and a quarter",
      "what if there's half inch of sheathing behind, I forgot the sheathing"], "3 1/4 in"),
    (["vent opening, 40 feet of wall, 3/4 gap, 50 percent open", "we decided to go down to half an inch on the gap"], "120 in²"),
    (["net free vent for a 1200 square foot attic at 1/150", "the inspector's happy with 1/300 now he's seen it"], "576 in²"),
]  # fmt: skip
NO_ANSWER = [
    (["straps at 16 centres along a 34 foot wall", "my mate counted 25"], "noted"),
    (["diagonal for 16 by 20 foot", "I read 25 foot 8 on the tape, that's near enough isn't it"], "noted"),
    (["lay out 104 inches with an exposure no bigger than 8", "why's that thirteen courses and not twelve"], "noted"),
    (["end gap for 12 foot vinyl, 40 F now, 110 F hottest, -10 F coldest", "it's 60 now, so what's the dew point"], "asks"),
    (["go 12 on centre because of the wind"], "declined"),
    (["how much does my vinyl grow from minus 10 F to 100 F, I bought six boxes"], "asks"),
    (["can I cut fibre cement with my ordinary saw blade, there's about forty boards to do"], "declined"),
    (["I've a 20 amp breaker for the saw, but what size wire for a 40 amp circuit"], "declined"),
]  # fmt: skip


@pytest.mark.parametrize(("line", "answer"), ANSWERED)
def test_other_things_in_a_line_are_no_givens(line: str, answer: str) -> None:
    record = Conversation().answer(line)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["text"].startswith(answer)


@pytest.mark.parametrize(("lines", "answer"), CHANGED)
def test_a_long_line_changes_the_question_before(lines: list[str], answer: str) -> None:
    conversation = Conversation()
    record = [conversation.answer(line) for line in lines][-1]
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["text"].startswith(answer)


@pytest.mark.parametrize(("lines", "outcome"), NO_ANSWER)
def test_what_is_no_change_gives_no_number(lines: list[str], outcome: str) -> None:
    conversation = Conversation()
    assert [conversation.answer(line)["outcome"] for line in lines][-1] == outcome


def test_a_wall_is_asked_about_by_name() -> None:
    assert asked_wall("the north wall is 32 , the ramp wall 18 , area of the ramp wall".split()) == "ramp"
    assert not asked_wall("the north wall is 32 , the ramp wall 18 , area of both".split())
    assert not asked_wall("the ramp wall is 18 , what is the area".split())
