"""Changes told round what they change: what is left out, supposed, sold, moved or added; and what changes nothing."""

from __future__ import annotations

import pytest

from tests.talking import last

CHANGED = [
    (["squares for 1240 square feet", "don't add waste on that"], 12.4),
    (["cladding boards for 300 square feet, 6 inch exposure, 12 foot boards", "skip the waste on this one"], 50),
    (["rake length, 22 foot gable, 9/12, 16 inch overhang", "how about without the overhang"], 165),
    (["divide 14 foot 3 into five", "how big are they if i do six"], 28.5),
    (["trim sticks for 140 feet in 12 foot stock", "how many would it be if they were 16 footers"], 9),
    (["trim sticks for 140 feet in 16 foot stock", "go back to the twelves"], 12),
    (["diagonal for a deck 12 by 16", "client changed his mind it's going to be 9 by 12"], 180),
    (["studs at 16 inches", "how many straps on a 40 foot wall 8 high", "they're at 24 on this wall it turns out"], 21),
    (["ladder footing for 16 feet", "nearest 32nd no sorry just give it me in inches"], 48),
    (["gable height, 24 wide, 10/12", "what if the architect drops it to an eight"], 96),
    (["trim sticks for 90 feet, 12 foot stock", "the merchant says they only come in tens"], 9),
    (["ladder for a 19 foot eave", "bottom's on a step 2 foot up so it's really 17"], 51),
    (["cost of 26 boards at 18.50 each", "he'll do them for 17"], 442),
    (["squares for 700 square feet", "plus 240 for the garage"], 10.34),
    (["squares for 700 square feet", "I forgot the garage, another 240 square feet"], 10.34),
    (["straps on a 36 foot wall, 16 inch centres", "less the last 4 foot, that's brick"], 25),
    (["screws for 22 courses 30 feet long at 16 inch spacing", "what if we went every 24"], 352),
    (["sealant for a 10 mm joint 6 deep 48 metres in 300 ml tubes", "same with the 600s"], 5),
    (["sealant joint 3/8 wide 1/4 deep 180 feet, how many tubes", "there's two of those walls"], 23),
    (["hip on a 6/12, 10 foot run", "make it 7/12", "no, 8/12"], 187.63),
]


@pytest.mark.parametrize(("lines", "value"), CHANGED)
def test_a_change_told_round_what_it_changes(lines: list[str], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    assert record["answer"] is not None
    assert record["answer"]["value"] == pytest.approx(value, abs=0.05)


UNCHANGED = [
    ["peak joint 5/12", "how heavy is the beam if it's a 7/12"],
    ["peak joint 5/12", "what's the rake length if it's 7/12"],
    ["diagonal for a deck 12 by 16", "lunch is at 12 and it's 14 degrees"],
    ["squares for 700 square feet", "plus 60 dollars for delivery"],
    ["boards for 520 square feet, 5 inch exposure, 12 foot boards", "leave out the door, that's 3 by 7"],
    ["cost of 30 sheets at 42", "he'll do the job for 900"],
    ["hip on a 6/12, 10 foot run", "try it at 7", "no 8"],
    ["12 gauge along the wall at 48 inches"],
    ["how far should the screw go in with 3/4 boards on the stud and a 2 1/4 screw"],
]


@pytest.mark.parametrize("lines", UNCHANGED)
def test_what_tells_of_something_else_changes_nothing(lines: list[str]) -> None:
    assert last(*lines)["outcome"] in ("asks", "declined")


def test_the_hung_temperature_is_how_warm_it_is_now() -> None:
    asked = "end gap for 12 foot vinyl, 60 F now, hottest 120, coldest minus 10"
    for line, now in (("if we hang it at 80", "80"), ("it's warmed up to 75", "75"), ("what if it only gets to 110", "60")):
        given = {row["name"]: row["text"] for row in last(asked, line)["givens"]}
        assert now in given["temperature now"]


def test_boards_that_go_on_at_so_much_keep_an_exposure() -> None:
    assert "exposure 7 1/4" in last("boards are going on at 7 and a quarter")["say"]
    assert "board length" in last("boards are 12 footers")["say"]


def test_somebody_by_name_got_another_answer() -> None:
    record = last("peak joint for an 8/12", "Mick had it at 33.7, is he right")
    assert (record["outcome"], record["topic"]) == ("noted", "compare")


def test_a_ladder_named_before_its_size() -> None:
    record = last("I'm on the ladder, it's a 24 footer, and the soffit is at 17 feet 4, how far out at the bottom")
    assert record["answer"] is not None
    assert record["answer"]["value"] == pytest.approx(52)


def test_how_far_it_warms_up_in_the_sun() -> None:
    record = last("14 ft of pvc goes up 70 degrees F in the sun, how much longer")
    assert record["outcome"] == "answered"
