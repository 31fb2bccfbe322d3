"""How far apart jack rafters are, said as studs are; and how long one of them is, which has no part in it."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("jacks on sixteens on an eight twelve hip how much shorter does each one get", 19.2296),
        ("constant difference in jacks 24s 12/12", 33.9411),
        ("common diff, jacks, 16s, 9:12", 20),
        ("jacks, five pitch, sixteens", 17.3333),
        ("difference per jack, the creepers are on 24s, 6/12", 26.8328),
    ],
)
def test_a_plural_spaces_them(line: str, value: float) -> None:
    record = last(line)
    assert (record["outcome"], record["topic"]) == ("answered", "jack rafters")
    assert record["answer"]["value"] == pytest.approx(value, abs=0.001)


def test_how_long_the_first_is_is_left_out_and_said() -> None:
    record = last("first jack is 22 inches, sixteen on centre, 8/12, how much longer's the next")
    assert record["answer"]["value"] == pytest.approx(19.2296, abs=0.001)
    assert "Left out: 22 inches" in record["say"]


def test_two_spacings_are_asked_about() -> None:
    assert last("jacks at 16 on centre and 24 on centre, 6/12, common difference")["outcome"] == "asks"
