"""What a bay turns is told by "turns"; how wide it is has no part in the saw's setting."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    "said",
    [
        "okay the bay window's 72 wide and each side turns 30, what's the saw",
        "the bay is 72 inches wide and turns 30 each side, saw setting",
        "bay window, each side turns 30, what's the saw",
        "bay turns 30 each side, saw",
    ],
)
def test_half_of_what_a_bay_turns(said: str) -> None:
    assert Conversation().answer(said)["answer"]["value"] == pytest.approx(15)


def test_a_width_alone_tells_no_bay() -> None:
    assert Conversation().answer("bay 72 wide, saw setting")["outcome"] == "asks"
