"""What is said while a piece of a question is still asked for: it neither loses what was told nor passes for the piece."""

from __future__ import annotations

import pytest

from tests.talking import records

SCREW = "screw length 3/4 board 3/4 strap 1 inch foam into stud"  # 2 1/2 inches, and what goes into the stud is asked


def test_a_layer_told_anew_leaves_the_others() -> None:
    found = records(SCREW, "2 inch foam", "1 1/4")[-1]
    assert found["answer"]["value"] == pytest.approx(0.75 + 0.75 + 2 + 1.25)


def test_more_pieces_are_added_while_the_stock_is_asked() -> None:
    found = records("pieces 6 at 41 and 2 at 30", "and 4 at 22", "12 foot sticks")[-1]
    pieces = next(given for given in found["givens"] if given["name"] == "pieces")["text"]
    assert pieces == "6 at 41 in, 2 at 30 in, 4 at 22 in"


@pytest.mark.parametrize("line", ["is a 4 inch enough", "would a 4 inch screw be enough?", "and is 4 long enough"])
def test_what_may_be_enough_is_not_the_piece_that_was_asked_for(line: str) -> None:
    first, doubt, last = records(SCREW, line, "1 1/4")
    assert [first["outcome"], doubt["outcome"]] == ["asks", "asks"]
    assert last["answer"]["value"] == pytest.approx(2.5 + 1.25)


def test_an_odd_size_that_was_not_meant_for_sure_is_not_worked_with() -> None:
    doubt, again, meant = records("trim sticks, 10 foot lengths 2 inch lap", "how many", "120 feet")
    assert [doubt["outcome"], again["outcome"]] == ["asks", "asks"]
    assert meant["answer"]["value"] == 12


@pytest.mark.parametrize(
    ("line", "inches"),
    [
        ("no strap", 0.75 + 1),
        ("and 1/2 sheathing", 2.5 + 0.5),
        ("oh and there's 1/2 sheathing too", 2.5 + 0.5),
        ("make the foam an inch and a half", 3),
    ],
)
def test_a_change_of_the_layers_is_taken_before_the_rest_is_told(line: str, inches: float) -> None:
    _, still, last = records(SCREW, line, "1 1/4")
    assert (still["outcome"], still["topic"]) == ("asks", "fastener length")
    assert last["answer"]["value"] == pytest.approx(inches + 1.25)


def test_a_change_that_is_not_understood_leaves_the_question_open() -> None:
    _, doubt, last = records(SCREW, "and the blue one", "1 1/4")
    assert (doubt["outcome"], doubt["topic"]) == ("asks", "fastener length")
    assert last["answer"]["value"] == pytest.approx(2.5 + 1.25)


def test_a_sum_is_no_list_of_layers() -> None:
    first, last = records("an inch and a half in the stud", "3'6 1/2 + 2'9 3/4")
    assert (first["outcome"], first["topic"]) == ("asks", "fastener length")
    assert last["topic"] != "fastener length" or last["outcome"] == "asks"


@pytest.mark.parametrize("line", ["2 inch foam", "the foam's 2", "foam is 2 inches", "2 inch foam, not 1"])
def test_a_number_said_of_a_layer_goes_into_no_stud(line: str) -> None:
    found = records(SCREW, line, "1 1/4")
    assert [record["outcome"] for record in found] == ["asks", "asks", "answered"]
    assert found[-1]["answer"]["value"] == pytest.approx(0.75 + 0.75 + 2 + 1.25)


@pytest.mark.parametrize("line", ["1 1/4 past the foam", "1 1/4 into the stud through the foam", "1 1/4 bite behind the foam"])
def test_what_goes_past_a_layer_is_none_of_it(line: str) -> None:
    assert records(SCREW, line)[-1]["answer"]["value"] == pytest.approx(2.5 + 1.25)


@pytest.mark.parametrize("line", ["9 wide", "9 high", "9 feet across", "and 9 tall"])
def test_the_other_side_of_a_frame_is_the_one_that_is_asked_for(line: str) -> None:
    first, last = records("diagonal of a 12 foot frame", line)
    assert first["ask"] == "How long is the other side?"
    assert last["answer"]["value"] == pytest.approx(180)


@pytest.mark.parametrize("line", ["with 60 insulation in there", "there's 60 insulation in it", "and 60 insulation as well"])
@pytest.mark.parametrize("open_", [("nail for 16 board, 45 batten",), ("nail for 16 board, 45 batten", "30 into the stud")])
def test_one_more_layer_is_no_penetration(open_: tuple[str, ...], line: str) -> None:
    assert records(*open_, line, "40 into the stud")[-1]["answer"]["value"] == pytest.approx(16 + 45 + 60 + 40)


def test_a_layer_named_for_its_place_is_none_of_those_told() -> None:
    last = records("screw through 3/4 strapping and 2 inches of foam", "there's half inch sheathing under the foam", "1 1/2")[-1]
    assert last["answer"]["value"] == pytest.approx(0.75 + 2 + 0.5 + 1.5)


def test_another_wall_has_its_own_layers() -> None:
    last = records("nail, 18 board, 25 batten, 35 into the stud", "another: 12 sheathing and 20 board")[-1]
    assert last["answer"]["value"] == pytest.approx(12 + 20 + 35)


@pytest.mark.parametrize(
    ("open_", "price"),
    [
        (("membrane rolls", "rolls 1.5 m by 50 m"), "47 a roll"),
        (("balanced panels, cover 300",), "6.20 each"),
        (("balanced panels, cover 300",), "8 a panel"),
        (("cladding boards, 6 inch exposure, 12 footers",), "at 14 each"),
    ],
)
def test_a_price_is_no_size(open_: tuple[str, ...], price: str) -> None:
    assert records(*open_, price)[-1]["outcome"] == "asks"


def test_a_size_is_no_count() -> None:
    assert records("cost at 6.20 each", "350 cover")[-1]["outcome"] == "asks"
    assert records("cost at 6.20 each", "350 boards")[-1]["answer"]["value"] == pytest.approx(2170)


@pytest.mark.parametrize("price", ["2.40 a metre", "14 a board", "14.50 each", "at 14 each"])
def test_a_price_is_the_piece_where_one_is_asked_for(price: str) -> None:
    assert records("cost of 36 boards", price)[-1]["topic"] == "cost"


@pytest.mark.parametrize("line", ["it's between a 4 and a 5", "either a 4 or a 5", "I think it's a 4 or a 5"])
def test_between_two_is_neither(line: str) -> None:
    _, doubt, last = records("how high is the roof at the wall if it runs 11 feet", line, "4 and a half")
    assert doubt["outcome"] == "asks"
    assert last["answer"]["value"] == pytest.approx(49.5)


@pytest.mark.parametrize("line", ["what if the gap is only 1/2 inch?", "the gap's just 1/2 inch", "our gap is really 1/2"])
def test_a_given_told_by_its_own_name_is_a_change(line: str) -> None:
    last = records("vent opening of a wall 40 feet long, screen 60 percent open, 3/4 gap", line)[-1]
    assert (last["topic"], last["answer"]["value"]) == ("vent opening", pytest.approx(144))
