"""What a carpenter says who measures in metres and pays in pounds: units left out, numbers run together, prices."""

from __future__ import annotations

import pytest

from tests.talking import last


def value(*lines: str) -> tuple[float, str]:
    """The value of the last line's answer, rounded, and its unit."""
    answer = last(*lines)["answer"]
    return round(answer["value"], 1), answer["unit"]


@pytest.mark.parametrize(
    ("line", "right"),
    [
        ("rafter along the slope, 40 degrees, 2.7 run", 3524.6),
        ("hip length, thirty degree roof, two point four run", 3666.1),
        ("flat roof falls 1 in 40 over 3.6, how much", 90.0),
        ("gable six three, roof thirty two degrees, overhang two hundred, barge board length", 3950.2),
    ],
)
def test_a_decimal_beside_a_roof_in_degrees_is_in_metres(line: str, right: float) -> None:
    assert value(line) == (right, "mm")


@pytest.mark.parametrize("line", ["6/12 roof, 2.7 run, rise", "3.6 by 2.7 diagonal", "how high does it climb over 3.6 at 15 deg"])
def test_a_decimal_beside_no_degrees_is_asked_about(line: str) -> None:
    assert last(line)["outcome"] == "asks"


def test_feet_and_inches_said_short_stay_so() -> None:
    assert value("gable six three, overhang twelve, 7 12, barge board length")[1] == "in"
    assert value("30 degree roof, 12.5 run, rise")[1] == "in"


def test_two_digits_in_words_are_a_decimal_of_metres() -> None:
    assert value("deck twenty four hundred by twelve hundred whats the diagonal", "three six by two four") == (4326.7, "mm")


BOARDS = "how many 3.6 boards for 28 square metres at 140 cover"


@pytest.mark.parametrize("line", ["at 9 pound each", "nine pound a length", "what do they come to at nine pound each"])
def test_pounds_for_each_are_money_where_the_talk_is_metric(line: str) -> None:
    boards = value(BOARDS)[0]
    assert value(BOARDS, line) == (boards * 9, "money")


def test_pounds_and_pence() -> None:
    assert value("trim sticks 47 metres, 3.6 m lengths", "what do they come to at six pound eighty each") == (95.2, "money")


def test_pounds_weigh_elsewhere() -> None:
    assert value("wall 20 ft by 8 ft area", "weight at two pounds a square foot")[1] == "lb"
    assert value("12 boards, 5 pound each, what weight", "six pound each") == (72, "lb")


def test_what_a_length_costs_after_a_cut_list() -> None:
    cuts = "cut list: 4.8 stock, four at 1150, three at 900"
    assert value(cuts, "they're sixteen pound a length") == (32, "money")
    assert value(cuts, "they're sixteen pound a length", "eighteen pound a length") == (36, "money")


@pytest.mark.parametrize("line", ["one thirty two", "one thirty two actually", "no, one thirty two", "make it one thirty two"])
def test_a_number_said_without_its_hundred_is_taken_whole(line: str) -> None:
    assert value("miter for a 92 degree corner", line) == (24.0, "deg")


def test_a_board_of_so_many_can_only_be_millimetres() -> None:
    cedar = "western red cedar one forty five wide flat sawn twelve to sixteen percent"
    assert value(cedar) == (1.4, "mm")
    assert value(cedar, "ninety five wide", "back to one forty five") == (1.4, "mm")
    assert last("western red cedar twenty wide flat sawn twelve to sixteen percent")["answer"]["unit"] == "in"


def test_a_diagonal_read_off_digit_by_digit() -> None:
    deck = "deck twenty four hundred by twelve hundred whats the diagonal"
    assert value(deck, "i measured two six nine three how far out") == (9.7, "mm")


CUTS = "cut list: 4.8 stock, four at 1150, three at 900"


def pieces(*lines: str) -> str:
    """The pieces that the last line's cut list is of."""
    return next(given["text"] for given in last(*lines)["givens"] if given["name"] == "pieces")


@pytest.mark.parametrize(
    ("line", "now"),
    [
        ("five at 1150 not four", "5 at 1150 mm, 3 at 900 mm"),
        ("add another 900", "4 at 1150 mm, 4 at 900 mm"),
        ("another two at 600", "4 at 1150 mm, 3 at 900 mm, 2 at 600 mm"),
        ("and two more 900s", "4 at 1150 mm, 3 at 900 mm, 2 at 900 mm"),
        ("and another two at 900", "4 at 1150 mm, 3 at 900 mm, 2 at 900 mm"),
        ("and one more 1.2", "4 at 1150 mm, 3 at 900 mm, 1 at 1.2 m"),
    ],
)
def test_more_of_a_cut_list(line: str, now: str) -> None:
    assert pieces(CUTS, line) == now


def test_a_leg_of_a_flashing_changed() -> None:
    assert value("flashing legs 100, 150 and 15, girth?", "make the 150 180") == (295, "mm")
    assert value("flashing legs 4, 6, 1 girth?", "change the 6 to 5", "the 4's 3") == (9, "in")


def test_a_decimal_in_words_beside_millimetres_is_metres() -> None:
    line = "one piece {} and two at twelve hundred from four point eight stock"
    assert last(line.format("five point four"))["outcome"] == "declined"  # longer than the stock
    assert value(line.format("four point two")) == (2, "count")


def test_feather_edge_is_a_layer() -> None:
    line = "nail length nineteen feather edge and a thirty eight batten"
    assert value(line, "thirty five into the stud") == (92, "mm")
    assert value(line, "thirty five into the stud", "batten's twenty five") == (79, "mm")


@pytest.mark.parametrize("line", ["its only twelve degrees in there", "it's 12 inside", "so it's about twelve in the shop"])
def test_how_warm_it_is_in_there_is_of_the_dew_point(line: str) -> None:
    assert value("dew point twenty celsius seventy percent", line) == (6.7, "degC")


def test_a_number_with_its_own_word_takes_the_old_ones_place() -> None:
    gap = "internal corner ninety six degrees cut forty five each one twenty skirting how far open"
    assert value(gap, "ninety three", "seventy skirting") == (5.2, "mm")


@pytest.mark.parametrize("line", ["no its two doors whats the area", "two doors", "it's two doors, how much is that"])
def test_doors_counted_and_the_area_asked_again(line: str) -> None:
    wall = ("area of a wall 9.6 m by 2.4 m", "take off a door 2100 by 900")
    assert value(*wall, line) == (19.3, "m2")


RAKE = "rake length 5.4 m gable thirty degrees"


@pytest.mark.parametrize("line", ["how long's all four", "all four rakes altogether", "both ends of the building in all"])
def test_the_rakes_of_both_gables(line: str) -> None:
    assert value(RAKE, line) == (12470.8, "mm")


def test_an_overhang_on_the_level() -> None:
    assert value(RAKE, "two fifty overhang on the level") == (3406.4, "mm")
    assert value(RAKE, "250 overhang along the slope") == (3367.7, "mm")


def test_asked_beside_an_answer() -> None:
    assert "1330" in last("arched head four foot wide nine inch rise radius", "in mil", "and the length round it")["say"]
    assert "53.1" in last("brace goes 900 along and 1200 up how long", "what angle does it make with the floor")["say"]
    assert "145" in last("feather-edge at 150 cover most, 3050 high", "first mark up from the bottom?")["say"]


@pytest.mark.parametrize("height", ["two four six five", "2465"])
def test_a_height_said_digit_by_digit(height: str) -> None:
    line = f"plinth to soffit is {height} want about one forty cover"
    assert value(line) == (136.9, "mm")
    assert "18" in last(line, "how many boards high")["say"]


def test_a_decimal_ends_where_the_next_number_begins() -> None:
    line = "cladding twelve metres by two point four one fifty cover five point one lengths how many boards"
    assert value(line) == (42, "count")
    assert value("two point four five metres in millimetres") == (2450, "mm")


def test_what_cover_names_is_no_height() -> None:
    line = "three metre cover on a two point four wall"
    assert last(line)["outcome"] == "declined"
    assert value(line, "i mean three hundred cover") == (300, "mm")
    assert value(line, "i mean three hundred cover", "two fifty") == (240, "mm")


def test_cover_is_kept_and_read_back() -> None:
    assert "150" in last("board cover is 150 and the roof is 40 degrees", "what's the board cover")["say"]


def test_a_length_and_an_angle_is_the_length() -> None:
    assert value("brace across a twenty four hundred by nine hundred panel length and angle") == (2563.2, "mm")
    assert value("rise 3 ft run 8 ft, angle and length")[1] == "deg"


def test_so_much_in_so_far_is_a_rise_and_a_run() -> None:
    assert value("pitch if it drops six hundred and fifty in eighteen hundred") == (4.3, "in12")
    assert last("pitch 650 in 1800")["outcome"] == "asks"
    assert "41.7" in last("pitch if it drops 750 in 1800", "how much is that per cent")["say"]


def test_the_angle_between_the_two_boards_is_no_two() -> None:
    line = "whats the angle between the two boards"
    assert "115" in last("barge boards meet at the top plumb cut 32.5 degree roof", line)["say"]


@pytest.mark.parametrize("line", ["30 degrees", "thirty degrees", "30"])
def test_degrees_that_were_asked_for_are_no_swing_of_a_saw(line: str) -> None:
    assert value("how much will 4.8 m of aluminium move?", line) == (3.3, "mm")  # Celsius beside metres
    assert "30 °F or 30 °C" in last("how much will 16 ft of vinyl move?", line)["ask"]


def test_a_door_in_metres_tells_the_wall() -> None:
    answer = last("Wall 6.2 by 2.7 with one door 2.1 by 0.9, net?")["answer"]
    assert (answer["value"], answer["unit"]) == (pytest.approx(14.85), "m2")
    assert value("wall 20.5 by 8.5 with a door 6.8 by 3, area")[1] == "ft2"


def test_hundreds_beside_a_decimal_are_millimetres() -> None:
    ramp = "Ramp rises 450 over 5.4, slope length?"
    assert value(ramp) == (5418.7, "mm")
    assert value(ramp, "and if it rises 300 what angle") == (3.2, "deg")


def test_what_the_exposure_is_is_no_count_of_boards() -> None:
    line = "weatherboard one forty five cover wall two point seven metres whats the exposure"
    assert value(line) == (142.1, "mm")
    assert value(line, "make it two four") == (141.2, "mm")


@pytest.mark.parametrize(
    ("lines", "right"),
    [
        (("6 m wide building 40 degree roof how high is the gable", "and the barge board with 350 overhang"), 4373.1),
        (("wall 30 m2 145 cover 3.6 boards how many", "no waste how many then"), 58),
    ],
)
def test_what_was_asked_said_in_other_words(lines: tuple[str, ...], right: float) -> None:
    assert value(*lines)[0] == right


def test_plus_five_is_a_temperature() -> None:
    assert last("will it frost, low minus 1, dew point 0", "low plus 5")["answer"]["value"] == 0


def test_as_a_percent() -> None:
    assert "57.7" in last("what pitch is a thirty degree roof", "as a percent")["say"]


def test_how_many_of_a_piece_come_from_a_length() -> None:
    rafter = "rafter 30 degree roof 2.4 m run sloped length"
    assert value(rafter, "how many do I get from a five point four length") == (1, "count")
    assert value(rafter, "how many out of a 6 m length") == (2, "count")
    assert value("rafter 6/12 8 ft run sloped length", "how many from a 20 foot length") == (2, "count")


def test_metres_in_inches_is_a_question_of_its_own() -> None:
    assert value("architrave, 27.6 m total, 5.1 lengths", "in inches what's 4.2") == (165.4, "in")


def test_battens_in_lengths_are_bought() -> None:
    battens = "battens forty seven metres in three point six lengths how many"
    assert value(battens) == (14, "count")
    assert value(battens, "four point eight lengths", "ten per cent waste") == (11, "count")


def test_battens_of_a_wall_want_their_spacing() -> None:
    assert "spacing" in last("straps for a 32 by 9 wall out of 12 foot lengths, how many")["ask"]
