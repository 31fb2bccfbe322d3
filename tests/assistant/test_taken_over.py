"""Another question of the same job: what it lacks is taken from the last that was given it or came to it, and said."""

from __future__ import annotations

import pytest

from tests.talking import last, records

HIP = "hip on a 6/12, common run 12 ft, length"
WALL = "wall 30 by 9, area"
NAILS = "18 courses 36 foot long, one nail every 16 inches, how many nails"
LAYERS = "5/8 siding 3/4 strap 7/16 osb how far out is the face"
LEAN_TO = "lean-to climbs 850 mm over a level run of 2.9 m, what angle is that"


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        ((HIP, "and the common rafter, no tail"), "sloped length", 160.997),
        ((HIP, "rafter at 9/12"), "sloped length", 180),
        ((LEAN_TO, "how long's the rafter up the slope, nothing for the eaves"), "right triangle", 3022.003),
        (("gable 24 wide 8/12 1 ft overhang, rake length", "gable area"), "gable area", 96),
        ((WALL, "boards? 7 in exposure, 16 ft stock, no waste"), "cladding boards", 29),
        (("straps on 40 ft wall at 16, 8 ft high", "how many squares no waste"), "squares", 3.2),
        (("sheets for a 24 by 8 wall", "how many boards at 7 inch, 12 ft, no waste"), "cladding boards", 28),
        ((WALL, "what does it weigh at 2.3 lb a square foot", "squares? no waste"), "squares", 2.7),
        (("roof area 40 by 30 at 6/12", "rolls of felt 3 ft by 72, 3 inch lap"), "membrane rolls", 7),
        (("boards 16 ft, 264 sq ft, 5 inch exposure", "studs at 16, stagger of the joints"), "staggered joints", 16),
        ((LAYERS, "if I run 3 inch screws what bite do I get"), "fastener penetration", 1.1875),
        ((LAYERS, "how long a nail to get 1 1/2 in the stud"), "fastener length", 3.3125),
        (("corner 135 miter", "say i go round that one in three pieces what's each joint"), "corner in several pieces", 11.25),
        (("octagon miter", "5 inch face cut at 22, how far open"), "how far open", 0.0941),
        (("planter with six sides, miter", "those sides lean out 10 degrees, cut flat, miter"), "compound cut", 5.725),
        (("frame is 12 by 16, diagonal", "i get 20 foot 1/2 how much out", "whats the right diagonal then"), "square check", 240),
        (("straps on 36 ft wall at 16, 9 high", "a screw every foot up each one of those how many"), "fasteners", 280),
        (("how many 4x8 sheets for a 24 by 8 wall", "52 dollars a sheet so how much for the lot"), "cost", 312),
        (("12 sheets at 31 kilos each, weight", "what will they set me back", "£24.50 each"), "cost", 294),
        (("dew point at 20 C and 60 %", "frost tonight with a low of -2?"), "frost tonight", 1),
        (("trim round 4 windows 3 by 5 all four sides", "tubes to seal round them, 1/4 by 1/4"), "sealant", 3),
        (("rake return 5.5/12 plumb", "my saw quits at fifty, what do i dial with it stood against a square jig"), None, 32.7),
    ],
)
def test_what_a_question_lacks_is_taken_over(lines: tuple[str, ...], topic: str | None, value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    assert record["topic"] == (topic or "can my saw cut it")
    assert record["answer"]["value"] == pytest.approx(value, rel=0.01)
    assert "as before" in record["say"] or "sets the saw to" in record["say"] or record["say"].startswith("With ")


@pytest.mark.parametrize(
    "lines",
    [
        (WALL, "squares for the north wall"),
        (WALL, "how many squares on the other wall"),
        (WALL, "squares for both of them"),
        ("hip on 9/12 run 14", "how many 16s for both"),
        (HIP, "now the shed roof, common rafter at 4/12"),
        (LAYERS, "on the other wall what does a 3 inch screw bite"),
        (LAYERS, "without the osb what does a 3 inch nail bite"),
        ("roof angle, rise 1.5 run 2.4", "hip length at that pitch"),  # a slope, and no run
        ("trim on an eight sided post box", "now the crown on the porch ceiling", "38 spring"),
        ("deck 12 by 16 diagonal", "boards 5 1/2 exposure 16 ft long how many no waste"),
        ("step flashing up a 17 foot rake at 7 inch", "cost of trim", "4 bucks each"),
        ("wall 30 by 9 with a 3 by 7 door, area", "how many squares not counting the door"),
    ],
)
def test_what_is_of_another_thing_or_altered_is_asked(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] in ("asks", "declined")


def test_a_change_that_came_to_nothing_lets_nothing_be_taken() -> None:
    fell, then = records("bend legs 2 5/8 and 3 1/2, girth", "put a half inch hem on 3 of the lot", "strips off a 24 in coil")[1:]
    assert fell["outcome"] != "answered" and then["outcome"] == "asks"
    lines = ("screw through 3/4 ply and 1 inch foam, 1 1/4 bite", "foam: what 2 or so", "5 inch screws what bite do I get")
    told, asked = records(*lines)[1:]
    assert told["outcome"] == "answered" or asked["outcome"] == "asks"


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        (("rake length, gable 24 wide, 8/12, no overhang", "what about the angle of it"), "roof angle", 33.69),
        (("rake length, gable 24 wide, 8/12, 1 ft overhang", "how many 16 footers for both"), "trim sticks", 2),
        (("brace rises 900 mm over 2.9 m, how long", "which is what pitch in 12"), "pitch from rise and run", 3.724),
        ((NAILS, "boxes of 200, how many boxes"), "boxes", 3),
        ((NAILS, "boxes of 200, how many boxes", "12 courses"), "fasteners", 336),
        (("tubes for 120 ft of 3/8 by 1/4 joint", "box of 12 tubes how many boxes"), "boxes", 1),
        ((LAYERS, "what does a 3 inch screw leave in the stud"), "fastener penetration", 1.1875),
        (("course layout 9 ft wall 7 in max", "how high do the bottom six of those come up"), "height of courses", 40.5),
        (("course layout 9 ft wall 7 in max", "boards for that wall its 30 ft long 12 foot stock"), "cladding boards", 44),
        (("mitre for 94 degree corner", "same corner but a 38 degree crown lying flat"), "compound cut", 29.9),
        (("brace goes up 42 and out 30, how long", "how many of those from a 16 footer"), "pieces from a stick", 3),
        (("brace goes up 42 and out 30, how long", "need ten of em, how many 16s do i load"), "cut list", 4),
        (("how many 31 1/2 pcs from a 12' stick", "got 9 of those sticks, total pcs?"), "pieces from a stick", 36),
        (("7 ft 3 plus 2 ft 9 1/2", "split it in three ignoring the kerf"), "divide evenly", 40.167),
        (("gable area 20 wide 9/12", "theres too of them the same how much altogether"), "gable area", 150),
        (("gable area 20 wide 9/12", "there's two of em exactly the same so both together"), "gable area", 150),
        (("tubes of 28 oz for 210 ft of 1/4 by 1/4 joint", "seven forty nine a tube what's that run me"), "cost", 29.96),
        (("corner 143, saw setting", "he cut the pair at 20. how far open on a 120 mm face"), "how far open", 6.686),
    ],
)
def test_what_is_asked_next_of_the_thing_just_worked(lines: tuple[str, ...], topic: str, value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["say"]
    assert record["answer"]["value"] == pytest.approx(value, rel=0.01)


@pytest.mark.parametrize(
    ("lines", "said"),
    [
        (("octagon miter", "and the corner between two sides on that is how many degrees"), "Corner: 135"),
        (("tubes of 20 oz for 140 ft of 3/8 by 1/4 joint", "and how far does one of them go"), "Length per tube"),
        (("ladder bears at 5.6 m how far out", "along the ladder how long is it from the ground to that"), "Working length"),
        (("course layout 9 ft wall 7 in max", "so how big is each one then"), "Exposure: 6 3/4"),
    ],
)
def test_other_numbers_of_the_answer_are_read_off(lines: tuple[str, ...], said: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "noted" and said in record["say"], record["say"]


@pytest.mark.parametrize("before", ["rake length 24 wide 9/12 no overhang", "9 foot wall 7 exposure courses"])
@pytest.mark.parametrize("asked", ["what's 5 foot 7 minus 10 1/4", "hang on, lads asking what's 5 foot 7 minus 10 1/4"])
def test_a_sum_that_is_asked_changes_nothing_of_the_question_before(before: str, asked: str) -> None:
    record = last(before, asked)
    assert (record["topic"], record["answer"]["value"]) == ("tape arithmetic", 67 - 10.25)


def test_a_crown_round_a_square_corner_is_of_no_corner_before() -> None:
    record = last("miter for 94", "crown with a 45 degree spring round a square corner, what's the miter laid flat?")
    assert record["answer"]["value"] == pytest.approx(35.2644, abs=0.01)
