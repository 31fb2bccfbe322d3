"""Talk with a question open in it: the saw asked about in between, openings with no number, what was assumed told after all."""

from __future__ import annotations

import pytest

from tests.talking import last, records


@pytest.mark.parametrize(
    ("lines", "limit"),
    [
        (("trim turns 30 degrees at a corner, whats the saw", "will my saw cut 58", "50"), "50"),
        (("crown 38 spring on an 88 corner", "will my saw do 58 degrees", "52 is where it stops"), "52"),
    ],
)
def test_a_saw_asked_about_is_no_corner(lines: tuple[str, ...], limit: str) -> None:
    *_, lacks, found = records(*lines)
    assert (lacks["topic"], lacks["ask"]) == ("can my saw cut it", "How far does your saw swing, in degrees?")
    assert {given["name"]: given["text"].removesuffix(" degrees") for given in found["givens"]} == {
        "setting": "58",
        "saw limit": limit,
    }
    assert found["answer"]["value"] == 0


def test_another_pitch_is_asked_of_the_same_saw() -> None:
    *_, no, yes = records("my saw stops at 52", "can it cut the rake return", "5/12", "and 2 twelve")
    assert [(one["topic"], one["answer"]["value"]) for one in (no, yes)] == [("can my saw cut it", 0), ("can my saw cut it", 1)]


def test_another_stud_spacing_after_one() -> None:
    found = last("straps for 26 foot of wall 8 foot high", "16 on center", "24")
    assert found["answer"]["value"] == 14


def test_a_reply_that_was_asked_about_is_counted_nowhere() -> None:
    asked, cost = records("straps for 26 foot of wall 8 foot high 16 on center", "24", "theyre 3.50 a strap whats that cost me")[
        1:
    ]
    assert asked["outcome"] == "asks"
    assert cost["answer"] is None


def test_what_was_assumed_is_worked_again_as_it_is_told() -> None:
    _, told, cost = records("how many boards 420 square feet 5 inch exposure 16 footers", "waste is 15", "22 dollars each")
    assert told["say"].startswith("Kept for this job: waste 15 %")
    assert told["answer"]["value"] == 73  # 420 x 1.15 / (16 x 5/12), up
    assert cost["answer"]["value"] == 73 * 22


@pytest.mark.parametrize(
    ("lines", "asks", "value"),
    [
        (("wall 32 by 9 with some windows", "three of em 3 by 4"), "How many windows", 252),
        (("wall 32 by 9 less the windows", "two", "3 by 4"), "How many windows", 264),
        (("area of a wall 32 by 9 with a couple of windows", "3 by 4"), "each of the two windows", 264),
        (("wall area 32 long with a door", "9", "3 by 7"), "height", 267),
        (("wall area with a door in it", "32 by 9", "3 by 7"), "length", 267),
    ],
)
def test_openings_that_were_told_of_are_taken_off(lines: tuple[str, ...], asks: str, value: float) -> None:
    first, *_, found = records(*lines)
    assert asks in first["ask"]
    assert found["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize("windows", ["with two windows", "with windows"])
def test_openings_are_not_forgotten_while_other_pieces_are_asked_for(windows: str) -> None:
    *_, sizes, found = records(f"how many boards for a 32 by 9 wall {windows}", "7 inch", "12 footers", "two windows 3 by 4")
    assert sizes["outcome"] == "asks" and "how wide by how high" in sizes["ask"]
    assert found["answer"]["value"] == 42  # 264 x 1.1 / 7, up


def test_a_size_alone_is_of_the_openings_told_of() -> None:
    found = last("siding for a 32 by 9 wall with two windows", "they're 3 by 4", "7 inch", "12 footers")
    assert found["answer"]["value"] == 42


@pytest.mark.parametrize(("more", "value"), [("four of them", 240), ("four of those walls", 1008)])
def test_four_of_them_after_windows_are_windows(more: str, value: float) -> None:
    assert last("wall 32 by 9 with three windows 3 by 4", more)["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    "asks",
    ["siding area on a 40 foot wall", "need the siding area of a 40 foot wall", "how much cladding area on a 40 foot wall"],
)
def test_siding_area_is_of_the_wall(asks: str) -> None:
    lacks, found = records(asks, "9 foot")
    assert (lacks["topic"], lacks["ask"]) == ("wall area", "What is the height of the wall?")
    assert found["answer"]["value"] == 360


@pytest.mark.parametrize(("vent", "area"), [("3 by 4", 60), ("12 by 18", 70.5), ("2 by 2", 68)])
def test_a_small_oblong_vent_is_of_feet(vent: str, area: float) -> None:
    assert last(f"gable area 24 wide 6/12 with a {vent} vent")["answer"]["value"] == pytest.approx(area)


def test_what_is_told_by_the_name_of_the_piece_is_the_piece() -> None:
    found = last("how far off is my joint i set 45 both sides with a five and a half inch face", "corner reads 91")
    assert (found["topic"], found["answer"]["text"]) == ("how far open", "1/8 in")


def test_a_step_with_a_name_is_no_step_of_the_working() -> None:
    found = last(
        "siding exposure 6 and a half max on a nine foot wall", "whats the step at the rake with a six inch exposure", "9 12"
    )
    assert (found["topic"], found["answer"]["value"]) == ("step at the rake", 8)


def test_degrees_past_any_heat_tell_the_scale_of_the_others() -> None:
    found = last("how much gap at the end of a 14 foot vinyl piece its 60 out", "hottest 115 coldest minus 10")
    assert found["outcome"] == "answered"


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("weight of 30 boards", "12 footers at 2.2 pounds a foot"), 792),
        (("weight of 30 boards", "2.2 pounds a foot", "12 footers"), 792),
        (("cost of 30 boards", "12 footers at 2.20 a foot"), 792),
        (("cost of 30 boards at 2.20 a foot", "12"), 792),
        (("cost of 40 boards", "500 feet at 2.20 a foot"), 1100),
        (("what do 30 boards weigh, 12 foot long, 2.2 pounds a foot",), 792),
        (("what do 30 boards weigh, 12 foot long, at 22 pounds each",), 660),
    ],
)
def test_a_foot_of_so_many_boards_is_of_all_their_length(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("lines", "given", "text"),
    [
        (("how many tubes of caulk", "60 feet", "3/8 by 3/8"), "length", "60 feet"),
        (("water in a channel", "8 foot", "1 inch wide", "half inch deep"), "length", "8 foot"),
    ],
)
def test_a_size_out_of_all_use_for_what_is_asked_goes_where_it_can(lines: tuple[str, ...], given: str, text: str) -> None:
    found = last(*lines)
    assert found["outcome"] == "answered"
    assert {one["name"]: one["text"] for one in found["givens"]}[given] == text


@pytest.mark.parametrize(
    ("asks", "topic"),
    [
        ("do a take-off", "take-off"),
        ("take-off for the north wall", "take-off"),
        ("quantities for the lake wall", "take-off"),
        ("is my deck square", "square check"),
        ("check this for square", "square check"),
    ],
)
def test_a_question_may_be_called_by_its_name(asks: str, topic: str) -> None:
    found = last(asks)
    assert (found["outcome"], found["topic"]) == ("asks", topic)


@pytest.mark.parametrize("asks", ["how far out", "how far out's the foot", "how far from the wall"])
def test_how_far_out_a_ladder_stands(asks: str) -> None:
    found = last("ladder for a 20 foot eave", asks)
    assert [(line["name"], line["value"]) for line in found["also"]] == [("foot out", 60)]


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("add 3 1/4, 5 5/8", "and 2 1/2"), 11.375),
        (("12 foot 6 and 3 foot 2", "and 4 foot", "and 6 inches too"), 242),
        (("3 plus 4", "and then 5"), 12),
        (("3 foot 4 plus 2 foot 7", "and 14 inches, 3 inches and 2 feet"), 112),
        (("take 1/8 off 12 foot 3", "and another 1/8"), 146.75),
    ],
)
def test_and_so_much_more_of_what_was_added(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize("lines", [("3 times 4", "and 5"), ("take 1/8 off 12 foot 3", "and another 1/4")])
def test_and_is_asked_about_where_more_was_done_than_adding(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] == "asks"


def test_so_many_equal_courses() -> None:
    lacks, found = records("i want 5 equal courses", "104 inches")
    assert lacks["ask"] == "What is the height to fill?"
    assert found["answer"]["value"] == pytest.approx(20.8)


@pytest.mark.parametrize("asks", ["membrane for 1500 square feet", "felt for 1500 square feet"])
def test_so_much_of_a_membrane_is_no_conversion(asks: str) -> None:
    lacks, found = records(asks, "9 by 100")
    assert (lacks["topic"], lacks["ask"]) == ("membrane rolls", "What is the width of the roll?")
    assert found["answer"]["value"] == 2


def test_how_warm_it_is_now_is_not_how_cold_it_gets() -> None:
    _, again, _, found = records("frost tonight", "it's 38 now", "low of 30", "dew point 28")
    assert again["ask"].endswith("What is tonight's low?")
    assert {given["name"]: given["text"] for given in found["givens"]} == {"low": "30", "dew point": "28"}


def test_whether_a_gap_is_vented_is_read_off() -> None:
    assert last("air gap 3/8", "is it vented")["say"] == "Kind: ventilated."


def test_sticks_for_both_rakes() -> None:
    found = last("rake length 24 foot gable 6/12 with a foot of overhang", "how many 16 footers for both sides")
    assert (found["topic"], found["answer"]["value"]) == ("trim sticks", 2)


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        (("trim around 4 windows", "3 by 5"), "trim round openings", 768),
        (("trim round the door", "3 by 7"), "trim round openings", 204),
        (("spacing for 8 posts", "4 inch posts", "40 feet"), "equal spacing", 64),
        (("gap between 7 slats", "3 1/2 slats", "48"), "equal spacing", 3.9167),
        (("lake wall: 36' x 8'6\", three windows 4' x 3', wall area less openings",), "wall area", 270),
    ],
)
def test_a_size_alone_is_of_the_things_told_of(lines: tuple[str, ...], topic: str, value: float) -> None:
    found = last(*lines)
    assert (found["topic"], found["answer"]["value"]) == (topic, pytest.approx(value, abs=1e-3))


@pytest.mark.parametrize(
    ("lines", "outcome", "topic"),
    [
        (("split 2750 mm",), "asks", "divide evenly"),
        (("split 200 mm in half",), "answered", "divide evenly"),
        (("how high is the gable", "6.4"), "asks", "gable height"),
        (("screw through 18 board",), "asks", "fastener length"),
    ],
)
def test_what_was_not_said_is_asked(lines: tuple[str, ...], outcome: str, topic: str) -> None:
    found = last(*lines)
    assert (found["outcome"], found["topic"]) == (outcome, topic)


def test_a_run_is_no_angle() -> None:
    assert last("roof pitch 35 degrees", "4.2 run")["answer"] is None


def test_what_is_called_by_its_name_stays_there() -> None:
    found = records("water in gutter", "100 wide", "50 deep")
    assert [record["ask"] for record in found[1:]] == [
        "How deep is the channel? What depth?",
        "How long is the channel? What length?",
    ]


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        (("end gap, upvc boards 5 m", "what's 5 m in feet", "12 degrees now, 35 hottest, minus 10 coldest"), "end gap", 7.705),
        (
            ("crown, 38 degree spring, what do I set the saw to", "it's an outside corner and I measured it at 92"),
            "compound cut",
            30.733,
        ),
        (("how much trim for a roof edge on a 20 foot wide gable", "12 in 12"), "rake length", 169.706),
        (
            (
                "i need the length of the sloped board, and the overhang is a foot and a half",
                "the gable's 24 feet wide",
                "6 in 12",
            ),
            "rake length",
            181.1215,
        ),
    ],
)
def test_what_was_told_first_is_what_it_is_of(lines: tuple[str, ...], topic: str, value: float) -> None:
    found = last(*lines)
    assert (found["topic"], found["answer"]["value"]) == (topic, pytest.approx(value, abs=1e-2))


def test_how_far_a_saw_goes_is_no_corner() -> None:
    assert (
        last("my saw goes to 47 degrees", "can it cut the trim at the bottom of the roof edge where it turns under")["answer"]
        is None
    )


def test_what_a_panel_covers_counts_nothing() -> None:
    assert last("cover 300", "6.20 each")["answer"] is None


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("penetration", "3 inch nail", "through 3/4 and 1/2"), 1.75),
        (("how long a nail through 5/8 siding", "3 inch nail", "1 1/4"), 1.875),
        (("rake length 9/12 24 wide", "overhang's 14", "and the other side has 10"), 192.5),
    ],
)
def test_a_nail_is_no_penetration_and_the_other_side_has_another_of_the_same(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value)


def test_what_boards_cost_each_is_no_length_of_theirs() -> None:
    told, cost = records("boards are 14.60 each", "what do 118 boards cost")
    assert told["topic"] != "remember"
    assert cost["answer"]["value"] == pytest.approx(118 * 14.6)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("step flashing for a 15 foot rake at five inch exposure", "no seven inch", "and the other side's eighteen"), 31),
        (("four foot rise in nine foot run what degrees", "ten foot run"), 21.8014),
        (("three metre rail divided in eight",), 375),
        (("gutter board 10 ft 9, come in 3/8 for the end cap, cut at?",), 128.625),
    ],
)
def test_what_was_right_stays_right(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value, abs=1e-3)


@pytest.mark.parametrize(
    "asks", ["pickets in 96 inches, 3 1/2 wide, 7 gaps", "how far apart are the studs if i have 9 in 12 feet"]
)
def test_what_may_be_another_thing_is_asked(asks: str) -> None:
    assert last(asks)["outcome"] == "asks"


def test_a_side_of_nothing_is_refused_and_trips_nothing() -> None:
    assert last("far how diagonal 0 foot, 16 of by out 20 foot square 12 3/8, measures")["answer"] is None
