"""Lines that tell what was and ask for nothing, and lines like them that ask or state."""

from __future__ import annotations

import pytest

from intents.asks_nothing import asks_nothing


@pytest.mark.parametrize(
    "text",
    [
        "He quoted 4.20 a foot for 310 feet and I laughed at him",
        "we hung 14 courses at 6 inches on Tuesday and then it rained",
        "That corner was 88 degrees and young Rory nailed it square, gaped like a fish",
        "My knees are gone after 9 squares at 240 pounds",
        "I remember when a 12 foot ladder was 40 dollars and nobody owned one",
        "I'd rather have 6 inch exposure than 7 any day",
        "I'd sooner have 1/2 inch battens than 3/8 mesh",
        "it rained 2 inches and the channel was full by noon",
        "Dave dropped 30 boards at 14 pounds each on his foot",
        "put 6 straps up on the ramp wall today, each is about 9 lb, my arms are gone",
        "my cousin gable is 28 feet at 9/12 and he did it with a 20 foot ladder",
        "used to be they put 1 inch on a 6 inch board and no one asked about it",
        "tell Marek the lift goes back on the 15th",
        "ask him did the 16 foot boards come",
    ],
)
def test_a_story_asks_for_nothing(text: str) -> None:
    assert asks_nothing(text)


@pytest.mark.parametrize(
    "text",
    [
        "the corner was 93 degrees, what do I set the saw to",
        "it was 93 degrees when I checked, miter",
        "the roof was framed at 6/12, plumb cut",
        "He told me 15 percent waste, 1200 square feet, squares",
        "I bought 40 boards at 12 dollars each, total",
        "I put the ladder at 16 feet, foot out",
        "top of the skirt to the soffit I got 107 and he got 108, use mine, 6 max",
        "planks are 13 ft, frame's 16 on centre, I was told to stagger",
        "inspector held up a ruler and read 5/16 behind the boards, drainage or ventilated",
        "my wall is 32 by 9 and I had two windows 3 by 4, net area",
        "I wish I knew the miter for 92 degrees",
        "we did 14 courses at 6 inches, how high is that",
        "I'd sooner not guess the angle on these ends, 6/12",
        "tell me the miter for a 92 degree corner",
        "ask away: miter for a 92 degree corner",
        "roof was 5/12 on the drawing",
        "rake 7/12",
        "tell him the miter for a 92 degree corner",
        "we framed it at 11 in 12",
        "so you know the roof is eight in twelve the drawings said ten but I checked it with the level",
    ],
)
def test_what_asks_or_states_is_none(text: str) -> None:
    assert not asks_nothing(text)
