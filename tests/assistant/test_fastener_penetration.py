"""How far a nail or screw of a length goes past the layers: its length less theirs (arithmetic)."""

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "unit", "value"),
    [
        ("how much bite does a 2 1/2 inch nail get through 3/4 siding and 5/8 sheathing", "in", 1.125),
        ("3 inch screw through 1 1/2 foam and 3/4 strap, how much in the stud", "in", 0.75),
        ("how deep will a 65 mm nail go into the joist through 18 mm board and 12 mm ply", "mm", 35),
        ("how far does a 3 inch screw go into the stud through 3/4 strapping and 1/2 inch sheathing", "in", 1.75),
    ],
)
def test_what_holds(line: str, unit: str, value: float) -> None:
    record = last(line)
    assert record["topic"] == "fastener penetration"
    assert (record["answer"]["unit"], record["answer"]["value"]) == (unit, pytest.approx(value))


def test_one_that_ends_within_the_layers_is_refused() -> None:
    record = last("2 inch screw through 1 1/2 foam and 3/4 strap, how far into the stud")
    assert record["outcome"] == "declined"
    assert "holds nothing" in record["say"]


@pytest.mark.parametrize(
    ("line", "value"),
    [
        ("how long a nail for 5/8 siding and 3/4 strapping with 1 1/4 bite", 2.625),
        ("how long a screw to get 1 1/2 into the stud through 3/4 strap and 1/2 ply", 2.75),
    ],
)
def test_its_length_is_asked_where_what_holds_is_told(line: str, value: float) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"]) == ("fastener length", value)
