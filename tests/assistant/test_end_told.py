"""A number goes to the given that the words tell: one end of a change, one leg by its place, the amount asked about now."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


def _last(lines: list[str]) -> dict:  # type: ignore[type-arg]
    conversation = Conversation()
    return [conversation.answer(line) for line in lines][-1]


OAK = "white oak panel 30 inches wide flat sawn from 12 percent to 7"
VINYL = "vinyl siding 12 foot from 10 to 90 f how much does it move"
TUBES = "last job seven tubes did 62 metres of joint, this one's 140 metres, how many tubes"
LEGS = "bending drip cap, legs of 3/4, 2 1/4 and 1 1/2, what's the girth"


@pytest.mark.parametrize(
    ("lines", "name", "value"),
    [
        ([OAK, "only drying to 9 percent, mind"], "moisture after", 9),
        ([OAK, "it only gets down to 8"], "moisture after", 8),
        ([OAK, "it ends up at 6"], "moisture after", 6),
        ([OAK, "it starts at 14"], "moisture before", 14),
        ([VINYL, "it only gets up to 80"], "temperature after", 80),
        ([VINYL, "starts at 20"], "temperature before", 20),
        ([TUBES, "call it 155"], "work to do", 155),
        (["dew point at 18 c and 70 percent", "it's dropped to 15 down there"], "temperature", 15),
    ],
)
def test_it_is_that_given(lines: list[str], name: str, value: float) -> None:
    record = _last(lines)
    assert record["outcome"] == "answered", record["say"]
    told = {given["name"]: given["value"] for given in record["givens"]}
    assert told[name] == value


@pytest.mark.parametrize("lines", [[OAK, "drying to 14 percent"], [VINYL, "drops to 5"], [LEGS, "the fourth leg is 1"]])
def test_what_does_not_go_with_the_words_is_asked_about(lines: list[str]) -> None:
    assert _last(lines)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        ([LEGS, "make the last leg an inch and three eighths"], 4.375),
        ([LEGS, "make the last leg an inch and three eighths", "the first leg is 7/8"], 4.5),
        (["z flashing legs 40, 90 and 25 mm, girth", "make the second leg 100"], 165),
        (["what length screw for 3/4 siding over 1 inch strapping, 1 1/2 into the stud", "the first layer is 7/8"], 3.375),
    ],
)
def test_one_of_a_list_is_told_by_its_place(lines: list[str], value: float) -> None:
    record = _last(lines)
    assert record["outcome"] == "answered", record["say"]
    assert record["answer"]["value"] == pytest.approx(value)
