"""What panels are told to be is what they cover, or how long they are where that is said."""

from __future__ import annotations

import pytest

from tests.talking import last

SOFFIT = "soffit 40 foot, two foot deep, 16 inch panels"


@pytest.mark.parametrize(
    ("after", "panels"),
    [("and if the panels are a foot", 40), ("what if panels cover a foot", 40), ("panels are 12 foot long", 30)],
)
def test_panels_are(after: str, panels: int) -> None:
    assert last(SOFFIT, after)["answer"]["value"] == panels


@pytest.mark.parametrize(
    ("line", "after", "value"),
    [
        ("36 foot wall 16 oc straps, 9 foot tall", "from 10s", 28),
        ("36 foot wall 16 oc straps", "on 24s", 19),
        ("trim 64 foot from 12s", "out of 16s", 4),
    ],
)
def test_what_they_come_from_is_stock(line: str, after: str, value: int) -> None:
    assert last(line, after)["answer"]["value"] == value
