"""One choice or another is asked about, and neither is taken for granted."""

from __future__ import annotations

import pytest

from tests.talking import records


@pytest.mark.parametrize(
    ("line", "reply", "value"),
    [
        ("hexagon or octagon post wrap, mitre", "octagon", 22.5),
        ("octagon or hexagon post wrap, mitre", "hexagon", 30),
        ("10 foot of copper or aluminum over 80 degrees F, how much movement", "copper", 0.0906),
        ("rake return at 12 in 12, plumb or square fascia", "square", 45),
    ],
)
def test_it_asks_which(line: str, reply: str, value: float) -> None:
    first, last = records(line, reply)
    assert first["outcome"] == "asks"
    assert last["answer"]["value"] == pytest.approx(value, abs=0.01)


@pytest.mark.parametrize(
    "line", ["octagon post wrap, mitre", "rake return 6 in 12 plumb fascia", "hip or valley, 6 in 12, run 12 feet"]
)
def test_one_alone_is_answered(line: str) -> None:
    assert records(line)[-1]["outcome"] == "answered"
