"""A value told plainly after an answer changes the question; what is told of other things, or compared, does not."""

from __future__ import annotations

import pytest

from tests.talking import last

PLAINLY = [
    (["what's the plumb cut on a 4/12", "the lean-to's only three twelve, so what there"], "pitch", "three twelve"),
    (["ladder footing for 16 foot", "the peak's more like 18"], "height of the bearing point", "18 ft"),
    (["divide 150 inches into seven parts", "eight parts would look better"], "parts", "eight"),
    (["38 boards at 18.75 each, what's that cost", "46 boards"], "count", "46"),
    (["boards for 250 square feet, 16 foot boards, 6 inch exposure", "allow fifteen percent"], "waste", "fifteen percent"),
    (["courses on a 9 foot wall, 6 and a half max", "boss wants no more than five and three quarters"], "exposure", "5 3/4 in"),
    (["wall 20 foot by 8, what's the area", "ceiling's higher than I thought, 8 foot 3"], "height", "8 foot 3"),
    (["what do 52 sheets cost at 29.50", "they've put them up to 31"], "price", "31"),
    (["fascia total 96 foot, 12 foot sticks, how many?", "put ten percent on for waste"], "waste", "ten percent"),
    (["fascia total 96 foot, 12 foot sticks, how many?", "they only do tens"], "stock", "10 ft"),
    (["soffit run 44 foot, 24 deep, 16 inch panels, how many", "total run's 50"], "run", "50 ft"),
    (["gable area, 24 foot wide, nine twelve", "that's the small one, the big one's 26"], "width", "26 ft"),
    (["rise on 7/12 over 11 foot", "11's wrong, 13"], "run", "13 ft"),
    (["miter for a 95 degree corner", "measured again, it's 96"], "corner", "96°"),
]


@pytest.mark.parametrize(("lines", "name", "text"), PLAINLY)
def test_a_value_told_of_the_job_takes_the_place_of_the_one_before(lines: list[str], name: str, text: str) -> None:
    record = last(*lines)
    given = {row["name"]: row["text"] for row in record["givens"]}
    assert record["outcome"] == "answered"
    assert given[name] == text


@pytest.mark.parametrize(
    "line",
    ["the van's only 12 foot", "my dog's 14", "it's 20 below out here", "the ladder's 20 foot",
     "it's half past three", "we were 3 hours at that", "12 boards were split", "we've 8 of those to do"],
)  # fmt: skip
def test_what_is_told_of_anything_else_changes_nothing(line: str) -> None:
    assert last("trim sticks for 100 feet, 16 foot stock", line)["outcome"] != "answered"


def test_two_numbers_take_the_places_of_two_in_the_order_said() -> None:
    record = last("dew point at 20 degrees C and 60 percent humidity", "it's dropped to 18 and 70")
    assert record["topic"] == "dew point"
    assert abs(record["answer"]["value"] - 12.4) < 0.3
    assert last("dew point at 20 C and 60 percent humidity", "I've 3 and 4 left")["topic"] != "dew point"


def test_a_reply_with_other_numbers_than_the_ways_put_back_chooses_none_of_them() -> None:
    assert last("what should the diagonal be on 24 by 30?", "I mean 24 foot by 32 foot")["answer"]["value"] == 480


def test_another_wall_has_another_size_and_no_other_spacing() -> None:
    record = last("how many straps on a 30 foot wall at 16 centres", "the other wall's 34")
    assert record["answer"]["value"] == 27


def test_a_value_kept_after_it_was_given_another_way_is_worked_with_at_once() -> None:
    record = last("step at the rake for a 7 inch exposure on a 9/12", "we dropped the exposure to 6")
    assert (record["outcome"], record["answer"]["value"]) == ("answered", 8)
    assert record["say"].startswith("Kept for this job: exposure 6 in.")
    again = last("step at the rake for a 6 inch exposure on a 9/12", "exposure is 6")
    assert again["outcome"] == "noted"
    assert last("gable height 24 foot 8/12", "roof's got 12 sheets on it")["outcome"] == "noted"


@pytest.mark.parametrize(
    ("lines", "topic"),
    [
        (["miter for a 95 degree corner", "the foreman says 96"], "miter for a corner"),
        (["cost of 38 boards at 18.75 each", "the yard says 19.50"], "cost"),
        (["miter for a 95 degree corner", "the lad says 43"], "compare"),
        (["cost of 38 boards at 18.75 each", "he says 700"], "compare"),
        (["gable height 24 foot 8/12", "the boss says 9 foot"], "compare"),
        (["what's the miter on a 93 degree corner?", "I got 44"], "compare"),
    ],
)
def test_a_number_near_what_was_given_changes_it_and_one_near_the_answer_is_compared(lines: list[str], topic: str) -> None:
    assert last(*lines)["topic"] == topic


def test_exposures_told_of_the_boards_and_a_note_taken_back_are_understood() -> None:
    assert "exposure 7" in last("the siding's going on at seven inches to the weather")["say"]
    assert last("note: east gable boards are cupped", "no, get rid of that note")["topic"] == "strike"
    assert last("rake return at 8/12", "stick that under east gable")["topic"] == "tag"


@pytest.mark.parametrize(
    ("line", "cost"),
    [("add 12 boards", 600), ("I need 2 more boards", 480), ("plus another six boards", 528), ("12 boards", 144)],
)
def test_so_many_more_of_what_was_counted_are_put_to_them(line: str, cost: float) -> None:
    assert last("38 boards at 12 dollars each, what's that cost", line)["answer"]["value"] == cost


@pytest.mark.parametrize("line", ["12 more windows", "add 12 dollars", "another 12 for the shed"])
def test_more_of_something_else_is_not(line: str) -> None:
    assert (last("38 boards at 12 dollars each, what's that cost", line)["answer"] or {"value": 0})["value"] != 600


@pytest.mark.parametrize(
    ("lines", "name", "text"),
    [
        (["sticks for 180 foot of trim, 16 footers", "plus another 40 foot for the porch"], "total length", "220 ft"),
        (["area of a wall 32 by 9 foot", "take 2 foot off the height"], "height", "7 ft"),
        (["course layout 9 foot wall 7 inch max", "take half an inch off the exposure"], "exposure", "6 1/2 in"),
    ],
)
def test_so_much_put_to_or_taken_off_a_size_changes_that_size(lines: list[str], name: str, text: str) -> None:
    assert {row["name"]: row["text"] for row in last(*lines)["givens"]}[name] == text


def test_so_much_off_a_wall_that_has_two_sizes_is_asked_about() -> None:
    assert last("area of a wall 32 by 9 foot", "knock a foot off the wall")["outcome"] == "asks"


def test_what_each_of_the_things_just_counted_costs() -> None:
    sticks = "fascia total 96 foot, 12 foot sticks, how many?"
    assert last(sticks, "what's that at 9.50 a stick")["answer"]["value"] == 76
    assert last(sticks, "at 14 a foot?")["outcome"] == "asks"
    assert last("area of a wall 40 by 10 foot", "what's that at 4.50 a square foot")["answer"]["value"] == 1800


def test_a_spacing_off_the_tape_is_read_back_as_it_was_said() -> None:
    assert "19.2" in last("studs are on 19.2", "what'd I say the stud spacing was")["say"]


def test_how_many_bays_there_are_is_no_width_of_a_piece() -> None:
    said = "I need to put two posts in 8 foot 3 1/2 so all three bays are the same. How wide's a bay?"
    assert last(said)["outcome"] == "asks" or last(said)["topic"] == "divide evenly"
