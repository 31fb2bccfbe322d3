"""A question told in several lines is changed after it as one told in one line; and what is said in the words of its topic."""

from __future__ import annotations

import pytest

from tests.talking import last, records

PICKETS = "gap for 5 pickets in 48 inches gaps at both ends"
WIDE = "theyre three and a half wide"
TRIM = ("88 foot of frieze in 12 foot sticks how many", "whats that cost", "thirteen twenty a stick")


@pytest.mark.parametrize("line", ["do 6 of them", "6 of them", "make it 6 pickets"])
def test_so_many_of_them_are_of_what_was_told_a_line_before(line: str) -> None:
    assert last(PICKETS, WIDE, line)["answer"]["value"] == pytest.approx(27 / 7)


def test_a_number_of_the_first_line_is_put_right_by_what_it_was() -> None:
    assert last("rake on a 24 foot gable", "6/12", "make the 24 a 26")["answer"]["value"] == pytest.approx(174.413302)


@pytest.mark.parametrize("line", ["just between em", "no only between the pickets", "gaps just between them then"])
def test_just_between_them_leaves_none_at_the_ends(line: str) -> None:
    assert last(PICKETS, WIDE, line)["answer"]["value"] == pytest.approx(7.625)


@pytest.mark.parametrize("line", ["sixteen foot pieces", "its in 16 foot pieces"])
def test_a_reply_in_the_words_of_what_was_asked_is_the_piece(line: str) -> None:
    found = last("gap to leave in vinyl its 50 out now, 120 hottest and 0 coldest", line, "its 70 out now")
    assert found["topic"] == "end gap"
    assert [given["value"] for given in found["givens"]][1:3] == [16, 70]


@pytest.mark.parametrize(("line", "count"), [("waste is 15", 73), ("the waste is 20 percent", 76)])
def test_what_was_assumed_is_kept_and_worked_again_when_it_is_told(line: str, count: int) -> None:
    found = last("cladding boards 420 square feet, five inch exposure, 16 footers", line)
    assert found["answer"]["value"] == count and "Kept for this job: waste" in found["say"]


def test_what_was_assumed_long_before_is_only_kept() -> None:
    assert last("rake on a 24 foot gable 6/12", "why", "overhang is 14 inches")["outcome"] == "noted"
    assert last("rake on a 24 foot gable 6/12", "remember overhang is 14 inches")["outcome"] == "noted"


@pytest.mark.parametrize(("line", "money"), [("if theyre 14 even", 112), ("what if they're twelve fifty", 100)])
def test_they_are_so_much_is_another_price(line: str, money: float) -> None:
    assert last(*TRIM, line)["answer"]["value"] == money


def test_they_are_fourteen_may_count_them() -> None:
    assert last(*TRIM, "if they're 14")["outcome"] == "asks"


def test_so_many_in_so_many_divides_another_length() -> None:
    assert last("divide 108 inches in 16", "and 84 in 12")["answer"]["value"] == 7


@pytest.mark.parametrize("line", ["divide that in 3", "divide that by 3", "split that in 3"])
def test_what_was_read_back_is_divided_and_not_the_answer(line: str) -> None:
    found = last("radius for a 36 wide arch 6 tall", "how long is the curve on it", line)
    assert found["answer"]["value"] == pytest.approx(12.8700222)


def test_a_question_asked_again_after_a_sum_has_what_it_was_given() -> None:
    found = last(
        "sloped length at 9/12 over a 12 foot run", "take 3 and 5/8 off that", "no its five twelve whats the sloped length"
    )
    assert found["answer"]["value"] == 156


def test_a_topic_named_with_a_value_is_asked_and_not_explained() -> None:
    layout = "course layout nine foot wall 6 1/2"
    asked, told = records(layout, "whats the step at the rake with a six inch exposure", "9 12")[1:]
    assert (asked["outcome"], asked["topic"]) == ("asks", "step at the rake")
    assert told["answer"]["value"] == pytest.approx(8)
    assert last(layout, "whats the exposure")["outcome"] == "noted"


@pytest.mark.parametrize("line", ["hang on its 13 foot 6", "hold on, 13 foot 6", "oops 13 foot 6"])
def test_hang_on_puts_right_what_was_told(line: str) -> None:
    found = last("how far up the slope is it over a 13 foot run", line, "4 12")
    assert found["answer"]["value"] == pytest.approx(170.762994)


STRAPS = "i need straps for 26 foot of wall 8 foot high"


@pytest.mark.parametrize("line", ["24", "and 24", "what about 24"])
def test_a_number_alone_after_a_reply_is_another_try_of_the_piece(line: str) -> None:
    assert last(STRAPS, "sixteen on center", line)["answer"]["value"] == 14


def test_a_number_with_its_noun_goes_to_what_is_called_so() -> None:
    assert last("cost of 46 boards", "13.50 each", "make it 50 boards")["answer"]["value"] == 675


@pytest.mark.parametrize("line", ["they're 3.50 a strap", "theyre 3.50 a strap whats that cost me"])
def test_so_much_a_strap_is_a_price_and_no_height(line: str) -> None:
    assert last(f"{STRAPS} at 16", line)["answer"] == last(f"{STRAPS} at 16", "they're 3.50 each")["answer"]


@pytest.mark.parametrize("line", ["whats a spring angle", "the spring angle", "38 spring"])
def test_a_piece_that_is_named_tells_the_topic_that_lacks_it(line: str) -> None:
    found = last("cutting crown for a 90 corner whats the miter", line)
    assert found["topic"] == "compound cut"
    assert ("corner", 90) in [(given["name"], given["value"]) for given in found["givens"]]


def test_a_corner_in_pieces_after_a_corner() -> None:
    found = last("saw setting on a 100 degree corner", "120 with 3 pieces")
    assert (found["topic"], found["answer"]["value"]) == ("corner in several pieces", 15)


@pytest.mark.parametrize(
    "line", ["sill at 35 head at 83 top at 111 exposure", "sill is 35, head is 83, top is 111, what exposure"]
)
def test_heights_are_of_the_names_that_lead_them(line: str) -> None:
    found = last(line, "6 and a half to 7 max")
    assert found["answer"]["value"] == pytest.approx(48 / 7)


@pytest.mark.parametrize("line", ["no overhang on the lake side so just give it without", "theres no overhang on that end"])
def test_no_overhang_in_more_words_is_none(line: str) -> None:
    found = last("gable is 26 wide 7/12 overhang a foot how long is each rake", line)
    assert found["answer"]["value"] == pytest.approx(180.601772)


def test_no_overhang_on_one_side_tells_no_pitch() -> None:
    assert last("gable is 26 wide 7/12 overhang a foot how long is each rake", "no overhang on one side")["outcome"] == "asks"


@pytest.mark.parametrize(("line", "value"), [("whats 72 in celsius", 22.2222222), ("68 in c", 20), ("what's 20 in f", 68)])
def test_so_many_degrees_in_the_other_scale(line: str, value: float) -> None:
    assert last("dew point at 68 and 48 percent", line)["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize("line", ["and the common run up the slope", "how long is the common rafter"])
def test_a_common_rafter_has_the_run_of_the_hip(line: str) -> None:
    found = last("valley length on a 9 foot run at six twelve", line)
    assert (found["topic"], found["answer"]["value"]) == ("sloped length", pytest.approx(120.747671))


@pytest.mark.parametrize(("line", "inches"), [("and 9", 108), ("and 26", 104)])
def test_beside_a_pitch_a_number_alone_goes_where_it_is_near(line: str, inches: float) -> None:
    assert last("gable height at 8/12", "24 foot", line)["answer"]["value"] == inches
