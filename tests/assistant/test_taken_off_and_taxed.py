"""What is taken off a cost and what tax is put to it: in one line, or told after, and it stays when something else changes."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "cost"),
    [
        ("it's 96 bucks a box, 7 boxes, and they take 10 percent off for us", 604.80),
        ("cost of 7 boxes at 96 with 10 percent off", 604.80),
        ("42 boards at 18.50 each, 5 percent off, plus 13 percent tax, what does it come to", 834.1095),
        ("250 lf at $6.35 plus hst 13%", 1793.875),
        ("85 metres at 4.20", 357),
    ],
)
def test_in_one_line(line: str, cost: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(cost, abs=0.01)


@pytest.mark.parametrize(
    ("lines", "cost"),
    [
        (("6 tubes at 8.49", "plus 13 percent tax", "what about 8 tubes"), 76.75),
        (("6 tubes at 8.49", "less 10 percent", "make it 8 tubes"), 61.13),
        (("6 tubes at 8.49", "10 percent off", "plus 13% hst"), 51.81),
        (("6 tubes at 8.49", "knock off 10 percent", "and another 5 percent off"), 43.55),
        (("6 tubes at 8.49", "plus 10 percent"), 56.03),
        (("30 boards at 12.50", "tax is 13"), 423.75),
        (("cost of 30 boards at 14", "at 15.50", "and 13% tax"), 525.45),
        (("6 tubes at 8.49", "with 5% gst on top"), 53.49),
    ],
)
def test_told_after(lines: tuple[str, ...], cost: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(cost, abs=0.011)
