"""Talks of a working day, each line of which has one meaning: what it came to once, and must not come to again."""

from __future__ import annotations

import pytest

from tests.talking import last


def test_the_eave_a_ladder_stands_at_is_no_overhang() -> None:
    record = last("ladder to a 17 foot eave, how far out", "eave's really 19")
    assert (record["topic"], record["answer"]["value"]) == ("ladder footing", 57)  # a quarter of 19 feet
    assert last("gable 24 wide at 8/12 how tall", "eave's 16 inches")["topic"] == "remember"


BLOCKS = "how many 30 inch blocks from a 16 footer"
NAILS = "19 courses siding 7.2 metre wall studs at 400 how many nails"
HOOKS = "space 11 hooks on a 48 inch board 3 inches in from each end"


@pytest.mark.parametrize(("line", "count"), [("both sides", 42), ("both sides of the roof", 42)])
def test_both_sides_are_no_polygon(line: str, count: int) -> None:
    record = last("rafters at 24 on centre, building 40 feet, how many", line)
    assert (record["topic"], record["answer"]["value"]) == ("marks on centre", count)  # 40 / 2 + 1, twice
    assert last(line)["topic"] != "polygon"


def test_boards_of_a_wall_are_no_courses() -> None:
    lines = ("courses: 96 inches from starter to soffit, 5 inch max exposure", "and how many boards for a 30 foot wall at that")
    assert last(*lines)["outcome"] == "asks"
    record = last(*lines, "12 footers")
    assert (record["topic"], record["answer"]["value"]) == ("cladding boards", 55)  # 20 courses, 30 over 12, ten percent


@pytest.mark.parametrize(
    "lines",
    [
        ("got a corner at 87 on the finder what do i cut each at", "and with a 3 piece return on that one",
         "back to the first one, if i just cut 45s on 4 1/2 stock how much gap"),
        ("back to the first one, if i just cut 45s on 4 1/2 stock how much gap",),
    ],
)  # fmt: skip
def test_a_gap_is_no_cut_list_and_no_sum(lines: tuple[str, ...]) -> None:
    record = last(*lines)
    assert record["outcome"] == "asks" or record["topic"] == "how far open"


@pytest.mark.parametrize(("line", "count"), [("4 by 12s", 6), ("what if we use 4x10s", 7), ("four by twelves", 6)])
def test_sheets_of_another_size_are_no_gable(line: str, count: int) -> None:
    record = last("ceiling 13 by 21, how many sheets of drywall", line)
    assert (record["topic"], record["answer"]["value"]) == ("sheets", count)  # 273 square feet
    assert "pitch" not in record["say"]


@pytest.mark.parametrize(
    "lines",
    [
        ("ceiling 13 by 21, how many sheets of drywall", "and the walls too, 8 foot high"),
        ("trim both sides of three doors, 32 by 80", "plus a window 36 by 48 one side"),
        ("roof 28 wide, 8/12, overhang 14, rafter length", "ridge is inch and a half, take half off"),
        ("3 tubes did 85 feet, 420 to go", "how many boxes of 12"),
    ],
)
def test_what_one_question_can_not_hold_is_asked_about(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] == "asks"


def test_what_was_done_is_not_what_is_to_do() -> None:
    assert last("3 tubes did 85 feet", "and there's 420 left to do")["answer"]["value"] == 15  # 420 over 85/3


FLASHING = "bending flashing, legs half inch, inch and three quarters, three and a half, how wide do I cut it flat"
WINDOWS = "trimming out 6 windows, 3 foot by 5 foot, all four sides, total length?"
CUTS = "need 5 pieces at 38 and 4 at 29, 10 footers, how many sticks"
COURSES = "9'4\" of wall to side, 6 3/4 max exposure, courses all even"


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        ((FLASHING, "how many across a 24 coil", "make the last leg 4, how many across now"), "bent flashing", 3),  # 24 / 6.25
        ((WINDOWS, "plus a patio door 6 foot wide by 6'8 high, two sides and the head"), "trim round openings", 1384),
        ((WINDOWS, "plus a patio door 6 foot wide by 6'8 high"), "trim round openings", 1384),  # no trim at its floor
        (("round porch post measures 11 1/2 across, how far around", "four posts, all told"), "circle", 144.5133),
        (("14 courses, 30 foot long, a nail every 16 inches", "they're 300 to a coil, how many coils do I grab"), "boxes", 2),
        ((CUTS, "ok tens again for those pieces but make the 29s 41"), "cut list", 4),
        (("divide 60 in five", "how many of those out of a 16 footer"), "pieces from a stick", 15),
        (("corner 135, saw setting", "if I go round that one in three pieces, saw at what"), "corner in several pieces", 11.25),
        ((COURSES, "and top of the fifth one sits how high off the bottom"), "height of courses", 5 * 112 / 17),
        (("hip rafter, common run fourteen foot, five in twelve, length", "what's the common next to it"), "sloped length", 182),
    ],
)
def test_what_comes_next_of_it(lines: tuple[str, ...], topic: str, value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-4)


@pytest.mark.parametrize(
    ("lines", "pieces"),
    [
        (("cut list: 12 at 14 foot, 9 at 10 foot from 20 footers", "add 8 at 16"), "12 at 14 ft, 9 at 10 ft, 8 at 16 ft"),
        (("cut 6 at 40 inches from 12 footers", "add 3 at 8"), "6 at 40 in, 3 at 8 in"),
        (("cut 6 at 1.2 m from 4.8 m lengths", "and 3 at 2.1"), "6 at 1.2 m, 3 at 2.1 m"),
    ],
)
def test_pieces_put_to_others_are_in_their_unit(lines: tuple[str, ...], pieces: str) -> None:
    assert [given["text"] for given in last(*lines)["givens"] if given["name"] == "pieces"] == [pieces]


@pytest.mark.parametrize(
    "lines",
    [
        ("skirting 14.6 m from 5.4 lengths", "add the hall 9.2"),
        ("wall 7.2 by 2.7 m, cladding cover 180, 4.2 m boards, how many", "minus a 1.8 by 2.1 slider", "waste 12"),
        ("weatherboards 150 cover on a 2640 wall, how many",),
        ("nail for batten 45, ply 18", "90s"),
    ],
)
def test_what_is_still_open_is_asked_about(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] != "answered"


def test_a_screw_told_by_its_name_first() -> None:
    record = last("screws 75 long, batten 45, ply 18, what bite in the stud")
    assert (record["topic"], record["answer"]["value"]) == ("fastener penetration", 12)


def test_a_pitch_in_words_is_no_rise_and_run() -> None:
    record = last("a seven twelve roof with a run of thirteen foot six how much does it rise", "nine twelve", "and the rafter")
    assert (record["topic"], record["answer"]["value"]) == ("sloped length", 162 * 15 / 12)  # 3-4-5


def test_what_could_not_be_is_not_changed_in_part() -> None:
    asked = "how much caulk do i need for eleven windows three by four quarter inch bead quarter deep"
    assert last(asked, "call it three eighths")["outcome"] != "answered"


def test_boxes_of_twice_as_many() -> None:
    record = last("screws at 16 centres on 22 straps 10 feet long", "double them", "boxes of 350")
    assert (record["topic"], record["answer"]["value"]) == ("boxes", 2)  # 22 straps of 9, twice, are 396


@pytest.mark.parametrize("line", ["what should it be cut at", "what should I cut them at", "what shoulda I cut em at"])
def test_what_closes_the_gap(line: str) -> None:
    assert "43.5" in last("corner 93, base is 5 1/4, cut at 45 each, gap", line)["say"]


def test_how_much_longer_one_is_than_the_other() -> None:
    hip = "hip rafter common run is fourteen foot both sides five in twelve what length hip"
    record = last(hip, "what's the common next to it", "so how much longer is the hip than the common")
    assert record["answer"]["value"] == pytest.approx((168**2 + 168**2 + 70**2) ** 0.5 - 182)


@pytest.mark.parametrize(
    "text",
    [
        "porch posts 8 of them 4x4 wrapped with 1x6s, feet of 1x6 at 9 ft",
        "six 2x4s at 9 foot, total feet",
        "rise 7 1/4, 14 risers",
    ],
)
def test_what_lumber_is_called_by_is_no_count(text: str) -> None:
    record = last(text)
    assert record["outcome"] != "answered" or record["answer"]["value"] == 6 * 9 * 12


@pytest.mark.parametrize(
    "text",
    ["shed roof 10 wide, back 7 ft front 9 ft, pitch", "shed roof 10 feet wide, 9 ft at the back, 7 at the front, what pitch"],
)
def test_a_shed_roof_falls_one_way(text: str) -> None:
    assert last(text)["answer"]["value"] == pytest.approx(2.4)  # 2 in 10


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("It's 12°C and 85 percent in here, what's the dew point?", "heaters on, 18 now, humidity the same"), 15.4386),
        (("Flashing with legs of 5/8, 4 and 1 1/2, how wide is it flat?", "strips that wide across a 24 in coil?"), 3),
        (("88 foot of frieze in 12 foot sticks how many", "whats that cost", "thirteen twenty a stick"), 105.6),
    ],
)
def test_what_is_told_is_of_what_it_names(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value, rel=1e-4)


RAILS = ("top rail for a hundred and thirty four metres of fence rails come in four point eights how many do i buy",
         "and if i run three rails the whole way", "eleven dollars fifty each whats that lot cost")  # fmt: skip


def test_what_is_in_doubt_is_not_counted() -> None:
    assert last(*RAILS)["outcome"] == "asks"


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        (("Inside corner checks 88 on the gauge. Where do I set the saw?",
          "Say I'd left it at 45 for that one, 5 1/2 base, how big a gap?"), "how far open", 0.2715),
        (("How many joists will I need laid out at 16 on centre?", "deck is 16 ft long", "24s instead"), "marks on centre", 9),
        (("forty at 32 1/4 from sixteens, how many sticks", "what if theyre thirty one and a half"), "cut list", 7),
    ],
)  # fmt: skip
def test_lines_that_lean_on_what_was_asked(lines: tuple[str, ...], topic: str, value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-3)


@pytest.mark.parametrize(
    "lines",
    [
        ("hip on a 6/12 roof, how long", "16 inch overhang"),
    ],
)
def test_what_names_another_thing_is_no_reply(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] != "answered"


SLAB = "forming up a slab 24 feet by 36, what do I want corner to corner"
POSTS = "5 bags did 14 post holes, how many for 52"
STUDS = "450 mm centres on a 7.2 m wall, how many studs"
LAYERS = "7/16 osb, 1 inch foam, 3/4 furring, 5/16 siding, how far off the stud is the face"
TRIANGLE = "gable end's 28 foot wide at 7/12, what's the area of the triangle"
WRAP = "we're wrapping the house, 1650 square feet of wall, rolls 9 feet by 100, how many with 6 inch laps"
WINDOWS = "18 windows 36 by 60 trimmed all four sides, how many feet"


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        ((SLAB, "38 long now"), "square check", 539.3),  # √(24² + 38²) feet
        ((SLAB, "22 wide"), "square check", 506.3),
        ((SLAB, "it's 40 the long way"), "square check", 559.8),
        (("how many 19 inch blocks from a 12 foot stick", "and from nine sticks"), "pieces from a stick", 63),
        (("how many 19 inch blocks from a 12 foot stick", "call it eleven sticks"), "pieces from a stick", 77),
        (("4 by 8 sheets for a ceiling 26 by 18 with ten percent waste", "and there's two ceilings that size"), "sheets", 33),
        (("4 by 8 sheets for a ceiling 26 by 18", "two of those", "three of them"), "sheets", 44),
        ((POSTS, "and for thirty"), "by the same rate", 11),  # 5 × 30 / 14
        ((POSTS, "what about 12 holes"), "by the same rate", 5),
        ((POSTS, "they did 16 with them"), "by the same rate", 17),
        ((POSTS, "make it 7 bags"), "by the same rate", 26),
        ((POSTS, "it was six bags did the fourteen not five"), "by the same rate", 23),
        ((POSTS, "make it sixty holes not fifty too"), "by the same rate", 22),
        (("2350 screws, 500 to a box, how many boxes", "or the tubs of a thousand?"), "boxes", 3),
        (("2350 screws, 1000 to a box, how many boxes", "no wait, 3950 screws I need"), "boxes", 4),
        ((STUDS, "add one for the corner"), "marks on centre", 18),
        ((STUDS, "add 2 to that"), "marks on centre", 19),
        ((STUDS, "add one for the corner", "at 4.75 each"), "cost", 85.5),
        ((STUDS, "at 4.75 each", "now 600 centres"), "marks on centre", 13),
        ((WINDOWS, "8 of them are 30 by 48"), "trim round openings", 3168),  # 10 × 192 + 8 × 156
        ((WINDOWS, "10 windows 40 by 60 and 8 windows 30 by 48"), "trim round openings", 3248),
        ((WINDOWS, "both faces of the wall"), "trim round openings", 6912),
        (("wall 32 by 9 with two windows 3 by 4, net area", "another window same size"), "wall area", 252),
        (("casing round a door 3 foot by 7 foot and a window 4 by 5, all four sides", "2 of each"), "trim round openings", 840),
        (("fall over 14 ft at 2 percent", "what if I only pour it 11 feet out"), "fall", 2.64),
        (("ladder at 18 foot, how far out does the foot go", "round the back it's 22 up"), "ladder footing", 66),
        (("rows on a wall 2550 high, no more than 305 each", "no row can be over 280, that's the most"), "course layout", 255),
        (("joists at 400 mm centres along 6 metres, how many marks", "if the first mark is at 300"), "marks on centre", 15),
        (("gable area 24 wide 8/12", "what's the angle", "back to the gable, if it went to 9/12"), "gable area", 108),
        (("hip for a 13 foot run at 8/12", "the common at 10/12", "and the hip at that pitch"), "hip or valley length", 256.06),
        (("4 at 31 1/2 and 6 at 22 from 8 footers, how many sticks", "forgot two at 60"), "cut list", 5),
        (("weight of 40 sheets at 51 pounds", "12 more"), "weight", 2652),
        (("68 and 55 humidity, dew point", "will it sweat on a 40 degree pipe", "at 50 degrees?"), "dew point", 51.2),
        (("15 foot 3 wide gable, 10/12, rake length", "both rakes", "from 16 footers"), "trim sticks", 2),
        (("circle 1.2 m across, how far round", "what area does that cover", "sorry, I meant 1.5 m across"), "circle", 1.767),
        (("attic 1400 square feet, 1 to 300, vent area", "each vent has 50 square inches, how many", "65"), "vent area", 11),
        ((LAYERS, "2 inch foam", "how long a screw to go thru all that and get inch and a half of bite"), "fastener length", 5),
        (("16 foot gable 5/12, how tall at the peak", "plus the eight foot wall under it"), "gable height", 136),
        (("vent area for 1240 square feet at 1/300", "whats it come to at one to one fifty"), "vent area", 1190.4),
        (("deck 4.8 by 3.6 m, the diagonal", "I'm pulling 6015 on one of em, how far out is it"), "out of square", 15),
        ((TRIANGLE, "and the wall under it is nine foot high what do the two come to together"), "wall area", 366.3),
        ((TRIANGLE, "and the wall under it is nine foot high, what do both come to together"), "wall area", 366.3),
        (("9 foot 2 wall, no more than 7 1/2, exposure", "and how many if the wall was ten foot three"), "course layout", 17),
        (("14 rafters at 12 foot 6 each, how much lumber", "what if they're 13 foot", "and 18 of them"), "tape arithmetic", 2808),
        ((WRAP, "he wants 12 inch laps, so how many now", "8 foot 6 plus 4", "back to the wrap, what if rolls are 5 feet wide"),
         "membrane rolls", 5),
        (("pieces of 690 mm from a 3.66 m board", "I have six of those longer boards, so how many pieces does that give me"),
         "pieces from a stick", 30),
        (("sloped ceiling rises 3 foot 2 over 11 foot 4, angle",), "roof angle", 15.61),
        (("brace 3 foot up and 4 foot 2 over, length", "in 12"), "pitch from rise and run", 8.64),
        (("gable height, 30 foot house at 6 in 12", "with an 8 foot wall how high in all", "house is 32"), "gable height", 192),
        (("wall 11.6 metres by 2.7, less three windows 1.2 by 1.05 each, area", "one window's 1.5 wide"), "wall area", 27.225),
        (("3/4 gap between pickets 5 1/2 wide over 96 inches", "gap for 16"), "equal spacing", 0.533),
        (("gutter 38 feet, fall 1/4 inch per 10 feet", "1/2 inch"), "fall", 1.9),
        (("circle 11 foot across, how far round", "radius is 6 foot"), "circle", 452.39),
        (("outside temp minus 12 C, inside 21 at 40 percent, where's the dew point",), "dew point", 6.877),
        (("six at 31 and four at 22 from 8 footers", "make the short ones 27 inches"), "cut list", 4),
        (("step flashing up 16 ft at 5 inch", "come 25 to a bundle, how many bundles"), "boxes", 2),
        (("frame 1200 by 2000, pulled 2340, how far out of square", "and the true diagonal if that opening was 1300 wide"),
         "square check", 2385.4),
        (("fall of a wet room floor 3.6 m wide at 1 in 80", "3/8 of an inch in mm", "back to the floor, drop at one in sixty"),
         "fall", 60),
        (("ladder at 15 foot, how far out", "3/8 of an inch in mm", "ok, ladder again: round the back it rests at 17'6\""),
         "ladder footing", 52.5),
        (("840 mm in a run of 2.1 metres, what pitch is that in degrees",), "pitch from rise and run", 21.8),
        (("frame 10 by 14, I measured 17 2 and a quarter, how far out", "now i'm reading 17 2 3/8"), "out of square", -0.081),
        ((HOOKS, "make it 9"), "divide evenly", 42 / 8),
        ((NAILS, "make it 8.1 metres on 450 centres"), "fasteners", 361),
        ((NAILS, "same again but 8.1 metres at 450 centres"), "fasteners", 361),
        ((NAILS, "and the other side, 8.1 metres, at 450 centres"), "fasteners", 361),
        ((BLOCKS, "8 footers"), "pieces from a stick", 3),
        ((BLOCKS, "got nine 8 footers"), "pieces from a stick", 27),
        ((BLOCKS, "nine 12 foot boards"), "pieces from a stick", 36),
        ((NAILS, "the wall is 8.2 metres and studs at 450"), "fasteners", 380),
        (("jacks at 16 on a 6/12", "8/12", "if they're 19.2"), "jack rafters", 19.2 * (1 + (8 / 12) ** 2) ** 0.5),
        (("rise 40 inches over 8 foot pitch", "angle too", "sorry 9 foot of run"), "pitch from rise and run", 4.444),
        ((HOOKS, "twelve"), "divide evenly", 42 / 11),
        ((HOOKS, "60"), "divide evenly", 5.4),
        ((HOOKS, "5 inches in"), "divide evenly", 3.8),
        ((HOOKS, "60", "9"), "divide evenly", 54 / 8),
        (("rake return ten twelve plumb fascia", "wait, that fascia's square to the rake, not plumb"), "rake return", 45),
        (("9'2 wall max 7 exposure", "and if I run 18 of em instead, what's the exposure"), "course layout", 110 / 18),
        (("roof area 44 by 28 house no overhang 6/12", "forgot, eaves hang out a foot all round"), "roof area", 1542.89),
        (("roof area 44 by 28 house no overhang 6/12", "forgot, a foot overhang"), "roof area", 1542.89),
        (("sheets of osb for a forty foot wall ten foot tall", "they sent us 4 by 9s instead of 4x8s"), "sheets", 12),
        (("roof comes up 1.1 metres in 2.4 metres of run, what's she pitched at",), "pitch from rise and run", 5.5),
        (("pickets 3 1/2 wide about 2 1/2 apart over 16 foot 4",), "equal spacing", (196 - 33 * 3.5) / 32),
        (("picket 3 1/2 gap 2 1/2 over 16 foot 4, how many", "3 inch gap"), "equal spacing", (196 - 31 * 3.5) / 30),
    ],
)  # fmt: skip
def test_what_a_day_brings(lines: tuple[str, ...], topic: str, value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", topic)
    assert record["answer"]["value"] == pytest.approx(value, rel=2e-3, abs=0.01)


@pytest.mark.parametrize(
    "lines",
    [
        ("how much siding for a wall 40 by 9, in squares", "with a gable 24 wide at 8/12"),  # no length of that wall
        ("kitchen backsplash 11 foot 4 long, 4 inch tile, how many",),  # laid, and not cut with a kerf
        ("octagon miter", "how long's each side if it's 10 foot across"),
        ("furring up a wall 31 feet long at 16 inches, how many", "my wife says every 24 inches is plenty",
         "the wall is only 27 foot four"),
        ("4 by 8 sheets for a wall 14 6 by 9", "ceiling is 14 6 by 12", "both", "15 percent waste"),
        ("dew point 72 at 50 percent", "and 60"),
        ("circle 8 feet across, what area", "make it an octagon"),
        ("sheets for 1200 square feet", "at 38 each", "less 2 openings 4 by 8"),
        ("balance 12 inch panels on 23 foot 5", "no less than 6"),
        ("how many 600 centre battens on an 8.1 m wall", "first one at 300", "450 centres"),
        ("16 on centre joists on a 22 foot deck how many", "add a double at each end", "at 18.40 each"),
        ("I've 37 feet of ridge vent at 18 square inches a foot, how much is that",),
    ],
)
def test_asked_rather_than_a_wrong_number(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] == "asks"


def test_two_rooms_are_no_pitch() -> None:
    assert last("two rooms")["topic"] != "remember"
