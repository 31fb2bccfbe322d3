"""Every way to read the quantities of a line one after the other, the surest first."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from intents.every_size import every_size
from intents.grammars import FOLDER
from intents.matcher import full_chart


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("fifty by thirty two ten twelve two foot overhang", ["fifty by thirty two", "ten twelve", "two foot"]),
        ("roof area 40x28 5/12", ["40x28", "5/12"]),
        ("a square house 32 feet each side with a 5/12 hip", ["32 feet", "5/12"]),  # no "a square"
    ],
)
def test_no_number_is_let_fall(line: str, said: list[str]) -> None:
    Conversation()  # whose grammars are read
    chart = full_chart(line, FOLDER)
    row = every_size(chart, lambda reading: reading.kind in ("dims", "pitch", "length", "number"))[0]
    assert [chart.said(reading.start, reading.end) for reading in row] == said
