"""Sums that a story tells outright are answered; one that goes against a word of it, or lets parts fall, is asked about."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("trestle top is 30 1/2 across and the cloth should hang 6 inches over each side, the cloth's how wide", 42.5),
        ("8 foot wall to wall less skirting 3/4 on both walls and the pipe boxing at 3 1/4, what's the seat come to", 91.25),
        ("the wall between the two piers is 118 3/4 and this cabinet at 46 1/2 has to sit dead centre, what's left each side",
         36.125),
        ("a 16 footer, took one 62 1/2 and one 41 1/4 off it and a quarter lost to the blade altogether. What's left", 88),
        ("out of a fourteen footer, cut one at 61 3/4 and one at 48 1/8, blade loses a quarter in all, remaining piece is?",
         57.875),
        ("Ok picture: two side panels 19 3/4 each and one middle panel 12 1/2, no gaps since they butt, hanging off wire, so how"
         " wide is it all together?", 52),
        ("floor to lintel was 2350, screed going in is 140 deep, then they'll shave the lintel by 25 which gains us that, what's"
         " the final opening height", 2235),
    ],
)  # fmt: skip
def test_told_outright(said: str, value: float) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    "said",
    [
        # What sank is taken off, whatever such sums mostly do.
        "post is 7 foot 6 1/4 up to the notch, beam on it 3 1/2, sill plate 3/4 over that, sank half an inch in the mud, top of"
        " the sill plate now?",
        # The half inch is all in for the plates, and adds up nothing.
        "Handrail between posts, overall 10 feet outside to outside and each post 4 3/4. Bracket plates use half an inch all in."
        " Rail length?",
    ],
)
def test_never_answered_otherwise(said: str) -> None:
    assert last(said)["outcome"] != "answered"
