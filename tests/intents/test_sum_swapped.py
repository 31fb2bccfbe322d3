"""One layer in the place of another, one of so many that come to a length, and counts of what something is between."""

from __future__ import annotations

import pytest

from tests.talking import last

SUMS = (
    ("the old boards were 3/4 and the new ones are an inch and a sixteenth so how much further out does the face come", 0.3125),
    ("old siding 1/2, new siding 3/4, how much further out", 0.25),
    ("1/2 inch osb comes off and 3/4 ply goes on, how much does the face move", 0.25),
    ("the existing strapping's 3/4 and the new is 1 1/2, how much thicker is the wall", 0.75),
    ("we stacked six of them and it came to 4 and a half inches so how thick's one", 0.75),
    ("five boards laid together measure 27 1/2, how wide is each", 5.5),
    ("12 courses come to 81, how high is each", 6.75),
    ("gap between the two studs 14 1/2, block less 1/16", 14.4375),
    ("gap between 2 studs is 14 1/2, less 1/16", 14.4375),
    ("I've got a 10 footer, I need 38 and a half and 38 and a half and whatever's left for a scrap, so what's the scrap", 43),
    ("Take the overall height of 2440, knock off 140 for the skirting and 75 for the cornice, then share what's left between five"
     " panels, how high is each", 445),
    ("five ates of an inch to mill", 0.625),
    ("2400 sheet, rip off 610, what's left, 3 mil blade", 1787 / 25.4),
)  # fmt: skip


@pytest.mark.parametrize(("line", "value"), SUMS)
def test_it_comes_to(line: str, value: float) -> None:
    answer = last(line)["answer"]
    assert answer["value"] / (25.4 if answer["unit"] == "mm" else 1) == pytest.approx(value)


@pytest.mark.parametrize(
    ("line", "asks"),
    [
        ("a 2.4 sheet, rip aff 610, whit's left, 3 mil blade", "Is the 2.4 metres or millimetres?"),
        ("gap twn 2 stds 14 1/2, need blk snug less 1/16", "Do you mean 14 1/2 − 1/16?"),
        ("three walls are 12 foot, how long is each", "Do you mean 12 foot ÷ three?"),
    ],
)
def test_what_may_be_another_is_asked(line: str, asks: str) -> None:
    assert last(line)["ask"] == asks


def test_new_beside_other_layers_is_one_of_them() -> None:
    record = last("1/2 ply, 3/4 strap and new 5/8 siding, how far out")
    assert (record["topic"], record["answer"]["value"]) == ("build-out", pytest.approx(1.875))
