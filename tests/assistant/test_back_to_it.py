"""Back to a question after something came between, told by its things or its topic, with a change in the same breath."""

from __future__ import annotations

import pytest

from tests.talking import last, records

BACK = [
    (["arch top window 42 wide with 11 inches of rise what radius do i swing", "what's 1240 millimetres in inches",
      "ok back to the arch what radius if it's forty eight wide"], "arc", 31.68),
    (["segment arch 42 in wide, what radius do I swing?", "rises 7 1/2", "11 boards, 14 screws in each, how many screws",
      "back to the arch / radius if it rises 8 1/4"], "arc", 30.85),
    (["marks for a 22 foot plate 16 on center starting at zero, how many", "24 on center", "miter for a 92 corner",
      "anyway that plate how many marks if it's thirty foot"], "marks on centre", 16),
    (["gable's 26 foot across, 7 in 12, level overhang of 12 inches, length of one rake?", "ladder footing for 14 feet",
      "anyway, that rake again, but 9/12"], "rake length", 210),
    (["Setting out a deck frame 4.2 m by 3.1 m, what ought the diagonal be?", "how far round is a 600 mm round table top?",
      "Right, back to the deck. If I let the long side out to 4.25 m, what diagonal am I after?"], "square check", 5260.5),
    (["miter for a 92 corner", "wall area 30 by 9", "anyway the corner's 94 not 92"], "miter for a corner", 43),
    (["wall 8.4 by 2.7 metres, one window 1.2 by 1.0, area", "mitre for 135 degree corner",
      "back to the wall, without the window"], "wall area", 22.68),
    (["spacing 7 balusters 1.5 wide in 60 inches gap at both ends", "what's 3/8 plus 5/16",
      "OK back on the balusters, 8 of them"], "equal spacing", 5.33),
    (["bent flashing legs 1, 3 1/2, 1 1/2", "how many squares in 1800 sq ft with 10 percent",
      "so that flashing, make the 3 1/2 a 4"], "bent flashing", 6.5),
    (["diagonal for the front deck 12 by 16", "what's the diagonal on the back deck, 9 by 12", "roof angle for a 7/12",
      "back to the front deck"], "square check", 240),
]  # fmt: skip


@pytest.mark.parametrize(("lines", "topic", "value"), BACK)
def test_back_to_a_question_and_changed_in_the_same_breath(lines: list[str], topic: str, value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value, abs=0.05)
    assert record["say"].startswith(f"Back to the {topic}")


def test_of_two_decks_the_one_that_is_named() -> None:
    decks = ("diagonal for the front deck 12 by 16", "what's the diagonal on the back deck, 9 by 12", "roof angle for a 7/12")
    front, back = (record["answer"]["value"] for record in records(*decks, "back to the front deck", "back to the back deck")[3:])
    assert (front, back) == (240, 180)


@pytest.mark.parametrize("line", ["back to the deck, 40", "go back to the deck, 40", "back to the barn, 40"])
def test_a_number_for_what_is_gone_back_to_changes_nothing_else(line: str) -> None:
    record = last("diagonal for a deck 12 by 16", "miter for a 92 corner", line)
    assert record["outcome"] == "asks"
    assert record["ask"].startswith("Back to the ")


@pytest.mark.parametrize("line", ["back to 92", "and back to 92 again"])
def test_back_to_a_value_is_no_question(line: str) -> None:
    record = last("roof angle for a 7/12", "miter for a 92 corner", "no, 88", line)
    assert (record["topic"], record["answer"]["value"]) == ("miter for a corner", 44)
