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
