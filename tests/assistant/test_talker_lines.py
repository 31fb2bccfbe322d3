"""What a talker says after an answer: what he adds to a change or to what he asks takes nothing away from it."""

import pytest

from tests.talking import last

RISE = "rise on a three twelve over 14 foot of run"
LADDER = "ladder foot five feet out and the ladder sixteen feet long, how high does it touch"
WALL = "11 by 2.7 m wall with two windows 1.2 by 1 metre, area"
DOOR = "wall 34 foot by 9 with a door 6 foot 8 by 3 foot, area"
SIDES = "square check eight foot four by eleven foot"
ODDS = "i've nine and thirteen sixteenths in one hand and six and a half in the other, what's the odds between them"
THREE = "19 foot 2 1/2 then 3 foot 0 1/2 then 11 foot 9, add them up"
HEAT = "aluminium six metres, minus ten to forty C, how much does it move"
SCREW = "5/16 siding on half inch battens, half inch sheathing, an inch and a quarter into the stud, what nail"
SPACED = "9 battens 40 mm wide across 2 metres, gap at both ends too, what's the gap"
STUD = "build out half inch ply, 3/4 strapping, 5/16 siding"
BENCH = "I've six pieces at seventeen and five eighths each to go along the bench, butted up tight, what's the run of them"
MIDDLE = "half of 91 3/8"


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        ([RISE, "what if we flatten it to a two twelve, what's the rise then"], 28, "in"),
        ([RISE, "and if I could steepen it to a four twelve"], 56, "in"),
        ([LADDER, "and if I bring the foot in to four feet"], (192**2 - 48**2) ** 0.5, "in"),
        ([LADDER, "say we pull the foot back out to 4 foot 6"], (192**2 - 54**2) ** 0.5, "in"),
        ([WALL, "and with just the one window"], 28.5, "m2"),
        ([WALL, "take a door out of that as well nine hundred mil by two point one"], 25.41, "m2"),
        ([DOOR, "and take another window out four foot by three foot six"], 272, "ft2"),
        (["60 by 10 wall with 5 windows 3 by 4, area", "and with only four of the windows"], 552, "ft2"),
        (["gable 28 wide 8/12, height", "what if they drop it to a six twelve, how tall is it then"], 84, "in"),
        (["38 percent grade what angle", "and forty percent what angle"], 21.801, "deg"),
        ([HEAT, "and thirty degrees instead of the whole fifty"], 6000 * 23e-6 * 30, "mm"),
        ([HEAT, "a 20 degree swing"], 6000 * 23e-6 * 20, "mm"),
        ([SCREW, "and with three quarter battens", "and go to an inch and a half in the stud with that"], 3.0625, "in"),
        ([SPACED, "and ten of them", "go to fifty mil battens same ten"], 1500 / 11, "mm"),
        (["caulk quarter inch joint quarter deep 125 foot", "and if it's three eighths wide still a quarter deep"], 8, "count"),
        (["squares for 940 square foot ten percent", "and fifteen", "what if it was eleven hundred square foot at the fifteen"],
         12.65, "square"),
    ],
)  # fmt: skip
def test_a_change_in_more_words(lines: list[str], value: float, unit: str) -> None:
    answer = last(*lines)["answer"]
    assert (answer["value"], answer["unit"]) == (pytest.approx(value, rel=1e-3), unit)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        ([SIDES, "no eleven foot six sorry i had the wrong side"], (100**2 + 138**2) ** 0.5),
        (["square check 14 foot 9 by twenty foot", "and make the twenty a twenty foot six"], (177**2 + 246**2) ** 0.5),
        (["square check 12 by 16 foot", "make the 12 12 foot 6"], (150**2 + 192**2) ** 0.5),
        (["square check 12 by 16 foot", "the second one's 18 foot"], (144**2 + 216**2) ** 0.5),
        (["wall 24 foot by 9, area", "make the 24 a 26 foot 6"], 26.5 * 9),
        ([ODDS, "and what's it if the first one's nine and seven eighths"], 3.375),
        ([ODDS, "make the second one 6 3/4"], 3.0625),
        (["2 1/2 plus 3 3/8", "the second one's 3 5/8", "the last one is 4", "no the first should be 2 5/8"], 6.625),
        (["12 foot 6 less 3 5/8", "what's it if the first one's 12 foot 7"], 147.375),
        ([THREE, "the last one's eleven foot seven not nine"], 406),
        ([THREE, "no the first's nineteen foot three"], 408.5),
    ],
)
def test_a_number_told_by_its_place_or_by_what_it_was(lines: list[str], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        ([BENCH, "and seven of them"], 123.375),
        ([MIDDLE, "and the post's three and a half so take half the post off that"], 43.9375),
        ([MIDDLE, "the lap's an inch and a half so add the lap to that"], 47.1875),
        (["a third of eleven foot four and a half", "and a quarter of it the eleven foot four and a half"], 34.125),
        (["42.375 inches on the tape", "and 19.8125", "add the two"], 62.1875),
        (["2140 mm in inches", "and nine hundred and fifteen mil", "what's the two together in feet and inches"], 3055 / 25.4),
        ([STUD, "3/8 mesh instead of the strapping", "what's the difference between them"],
         0.375),
    ],
)  # fmt: skip
def test_a_sum_goes_on_in_talk(lines: list[str], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        (["rake return five twelve plumb fascia", "and what's the edge angle what i'd read with the gauge"], "33.7 degrees"),
        (["rake to level joint ten twelve", "and the corner on that one"], "140.2 degrees"),
        (["six sided post wrap saw setting", "and what's the corner in that inside like"], "120 degrees"),
        ([RISE, "and how long's the rafter line on that, up the slope like"], "173 3/16 inches"),
        (["arc nine foot radius ten foot across, rise", "and the length round the curve"], "127 1/4 inches"),
        (["rise is 1.2 metres in a run of 3 metres, what's the roof angle", "and what pitch is that in twelve"], "4.8 in 12"),
        (["22 C and 65 percent, glass at 14, does it get wet", "what's the dew point then"], "15.1 degrees"),
        (["18 foot by 24, measured 30 foot 1 1/2, how far out of square", "what's it meant to be"], "360 inches"),
    ],
)
def test_a_value_of_the_page_in_more_words(lines: list[str], said: str) -> None:
    record = last(*lines)
    assert record["outcome"] in ("noted", "answered")  # read back, or worked as the question of its own that it is
    assert said in record["say"]


GAP = "end gap vinyl twelve foot pieces, 30 F now, hottest 110, coldest minus 10"
MOVES = "aluminium 32 foot, 70 degrees hotter fahrenheit, how much has it grown"
SQUARES = ("wall 40 by 9 area", "squares with ten percent")


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        ([GAP, "what if it's sixty out when we do it", "temperature now 30", "sixty outside"], 144 * 50 * 0.0000372),
        ([GAP, "and if I wait till it's fifty"], 144 * 60 * 0.0000372),
        ([MOVES, "and if I'd done it in two sixteens, each one"], 192 * 70 * 23e-6 / 1.8),
        ([MOVES, "and if I break it in half, each half"], 192 * 70 * 23e-6 / 1.8),
        (["vent strip half inch gap, screen seventy percent open, per foot", "and in all on forty foot of it"], 168),
        (["34 squares at 195 dollars a square", "and at two ten"], 7140),
        (["40 boards at 2.50", "and at two ten"], 84),
        (["how long's a brace two foot by two foot six", "and at three foot by two foot six"], (36**2 + 30**2) ** 0.5),
        ([*SQUARES, "if we make it 10 foot high, what's the net"], 400),
        ([*SQUARES, "make the wall 10 foot high"], 4.4),
    ],
)
def test_a_line_in_the_words_of_its_question(lines: list[str], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value, rel=0.02)


@pytest.mark.parametrize(
    ("line", "said"),
    [
        (
            "right the roof on the whole of this boathouse is a seven twelve keep that, so I don't have to keep saying it",
            "7 in 12",
        ),
        ("my saw stops at fifty two on the left, keep that in your head for me, the other one's at the yard", "52°"),
        ("exposure's seven inches, remember that for me", "7 in"),
    ],
)
def test_told_to_be_kept(line: str, said: str) -> None:
    record = last(line)
    assert (record["topic"], said in record["say"]) == ("remember", True)


def test_a_question_that_keeps_it_simple_is_one() -> None:
    assert last("wall 9 foot high 7 inch exposure, keep it simple, how many courses")["outcome"] == "answered"
    assert last("40 boards at 28", "and at two ten")["outcome"] == "asks"  # no count
    assert last("ladder has to reach 20 foot, how far out", "make that twenty two")["answer"]["value"] == 66


@pytest.mark.parametrize(
    "lines",
    [
        [MIDDLE, "add the two"],  # no number that is added
        ["6 at 31 and 4 at 22 from 12 footers", "make the first one 8"],
        ["wall 20 by 9", "no 22 by 9", "add the two together"],
    ],
)
def test_asked_where_the_two_or_the_first_can_not_be_told(lines: list[str]) -> None:
    assert last(*lines)["outcome"] == "asks"


def test_half_is_of_the_answer_and_what_names_no_wall_stays() -> None:
    assert last("a third of 11 foot 4 1/2", "half of that")["answer"]["value"] == pytest.approx(22.75)
    assert last("vent opening, 40 feet of wall, 3/4 gap, 50 percent open", "go down to half an inch on the gap")["answer"][
        "value"
    ] == pytest.approx(120)


def test_can_it_do_another_tells_no_limit_of_the_saw() -> None:
    asked = ("can my saw cut 56", "and can it do 48")
    assert last(*asked)["outcome"] == "asks"
    assert last(*asked, "it stops at 50")["answer"]["text"] == "yes"
    assert last(asked[0], "52")["answer"]["text"] == "no"


def test_the_difference_from_what_somebody_got_is_not_from_the_one_before() -> None:
    depth = ("half inch ply 3/8 strapping 5/8 cladding depth to the face", "go to three quarter strapping")
    assert last(*depth, "what's the difference")["answer"]["value"] == pytest.approx(0.375)
    assert last(*depth, "i got 1 3/4", "what's the difference")["outcome"] != "answered"


@pytest.mark.parametrize("line", ["what's the difference between the two", "and what's the difference between the two of them"])
def test_the_two_of_them_are_the_last_two_answers(line: str) -> None:
    assert last("wall 20 by 9", "and 24 by 9", line)["answer"]["value"] == pytest.approx(36)
