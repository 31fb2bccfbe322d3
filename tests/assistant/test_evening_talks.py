"""What a roof, a rafter and a saw are asked at the end of a day, and what such lines must not come to."""

from __future__ import annotations

import pytest

from tests.talking import last

ROOF = "roof 44 by 28 at 5/12, squares"  # 44 × 28 × 13/12 = 1334.67 ft², a tenth more: 14.68 squares
RAFTER = "rafter 5.4 m run 22.5 degrees"
SCREWS = (
    "38 deck boards, each crossing 13 joists, two screws at every joist, how many screws?",
    "how long a screw through 19 mil decking with 45 mil in the joist",
)
BLOCKS = ("how many stair treads can i cut out of a sixteen foot board", "thirty six inches each", "out of a twelve foot board")
WALL = "wall is 38 feet long and nine feet high with three windows three feet by five feet how much siding area is that"
NAILS = "I have 14 courses of siding, each 28 feet long, and I'm nailing every 16 inches. How many nails will I need?"
FOAM = ("screw for 3/4 siding, half ply, 1 1/2 inch foam, 1 1/2 in the stud",)  # as thick as the screw goes in
SAW = "the saw swings fifty and tilts forty five, miter is forty bevel is thirty, will it cut"


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        ((ROOF, "bundles at 3 a square"), "by the same rate", 45),  # 44.04
        ((ROOF, "3 bundles to the square", "4"), "by the same rate", 59),  # 58.7
        ((ROOF, "how many bundles", "bundles at 3 a square"), "by the same rate", 45),
        (("how many bundles for 22 and a half squares, three to a square",), "by the same rate", 68),  # 67.5
        (("3 bundles a square, 22 squares, how many bundles",), "by the same rate", 66),
        (("4 cans of stain did 1,000 sq ft of fence last week. How many cans for 3,350 sq ft?",), "by the same rate", 14),
        (("hip roof 40 by 24 with 5 in 12, area", "squares with 10 percent", "bundles at 3 a square"), "by the same rate", 35),
        (("nails for 22 squares at 320 a square",), "by the same rate", 7040),  # no money
        (("how many 2x4s at 16 for a 20 foot wall",), "marks on centre", 16),
        (("how many joists at 400 centres for 6 m deck",), "marks on centre", 16),
        (("how many studs at 16 for a 20 foot wall",), "marks on centre", 16),
        (("header flashing 48 inches with 4 inch and 3 inch legs and a half inch hem, what girth",), "bent flashing", 7.5),
        (("flashing legs 24 inches and 3 and 2, girth",), "bent flashing", 29),
        (("420 blocks at 19.8 kilos each, what do they weigh", "at 20 each"), "weight", 8400),  # kilos, as before
        (("420 blocks at 19.8 kilos each, what do they weigh", "cost at 1.64 each"), "cost", 688.8),
        (("how long is the stair string, total rise is 2600 mil, total going 3340 mil",), "right triangle", 4232.68),
        (("rise 2600 going 3340 how long is the stringer", "what if the going's 3100"), "right triangle", 4045.98),
        (("arch over a 1200 mil opening, rise 150, radius", "radius again with a 1350 opening"), "arc", 1593.75),
        (("how high do 18 courses of brick come at 75 mil", "plus a 140 mil lintel on top of that"), "tape arithmetic", 1490),
        ((*SCREWS, "back to the 38 boards, make it 40"), "fasteners", 1040),
        ((*SCREWS, "back to the 38 boards, how many boxes of 350"), "fasteners", 3),
        ((*SCREWS, "back to the 38 boards, how many boxes of 350", "boxes of 500?"), "fasteners", 2),  # no 3 in boxes of 500
        ((*BLOCKS, "I have got for of those twelve foot boards treads in all"), "pieces from a stick", 12),
        (("two foot three and a half times three", "sorry, times four", "no, times 5"), "tape arithmetic", 137.5),
        (("27 1/2 times 3 plus 2", "no, times 4"), "tape arithmetic", 112),
        ((*FOAM, "two inch foam", "an inch of foam"), "fastener length", 3.75),
        ((*FOAM, "an inch of foam", "1 1/4 in the stud"), "fastener length", 3.5),
        (("step flashing for 22 feet 5 inch exposure", "two sides the same, so how many for both?",
          "what if the exposure is 5 5/8 instead of 5 inches?"), "step flashing", 94),
        (("casing around all four sides of 5 windows 3 foot wide and 4 foot 6 high",
          "I counted wrong, there's 7 windows like that."), "trim round openings", 1260),
        (("31'4 wall strapped at 16 oc, how many straps?", "8'10 high. total feet of strapping?"), "strapping", 2650),
        (("Gable 28' wide at 7/12, area?", "roof area 28 by 44 at 7/12",
          "and back to just the one gable, at 9/12 what's its area"), "gable area", 147),  # 14 × 14 × 9/12
        ((WALL, "there's also a door in that wall three foot wide by six foot eight"), "wall area", 277),  # 342 − 45 − 20
        ((NAILS, "Actually I'm putting two nails at each spot."), "fasteners", 616),  # 14 × 22 × 2
        ((NAILS, "miter for 92", "back to the nails. They come 150 to a box, so how many boxes is that?"), "boxes", 3),
        (("how many boxes of 150 for 616 nails", "and if there's 250 in a box?"), "boxes", 3),
        (("how many 22 inch blocks from a 12 footer", "I need 40 of those blocks all together, so how many 12 footers"),
         "by the same rate", 7),
        (("how long are 3/12 rafters over 11 and a half feet of run", "what if we made it for twelve"), "sloped length", 145.465),
        ((RAFTER, "plus 600 eave"), "sloped length", 6494),  # 6000 / cos 22.5° = 6494.4
        (("rafter 12 foot run 6/12", "plus a foot overhang"), "sloped length", 174.413),  # 13 ft × 1.118
        (("step at the rake 8/12 6 inch exposure", "now the cut angle"), "end cut along the rake", 33.69),  # atan 8/12
        (("a 45 inch rafter tail at 30 degrees, how much does it drop",), "right triangle", 22.5),  # 45 sin 30°
        (("rafter at 18 degrees over 12 foot level, how much does it fall",), "right triangle", 46.788),  # 144 tan 18°
        (("27.9 square metres in 2.4 m by 0.6 m sheets how many with 5% waste",), "sheets", 21),  # 29.3 / 1.44 = 20.3
        (("I've twelve sticks at 16 ft and every piece is 42 in, 1/8 kerf. How many pieces in all?",), "pieces from a stick", 48),
        (("sealant for 80 feet of 3/8 by 1/4 joint", "in litres"), "conversion", 1.4748),  # 90 cubic inches
        (("how many 16 footers for 210 feet of trim with 10% waste", "at 18.40 each", "20 of them"), "cost", 368),
    ],
)  # fmt: skip
def test_what_an_evening_brings(lines: tuple[str, ...], topic: str, value: float) -> None:
    record = last(*lines)
    assert record["topic"] == topic, record["say"]
    assert record["answer"]["value"] == pytest.approx(value, rel=1e-4), record["say"]


@pytest.mark.parametrize("line", [SAW, SAW.replace("is thirty", "of thirty"), "can my saw cut it"])
def test_a_bevel_stands_with_the_number_after_its_name(line: str) -> None:
    record = last(line) if line != "can my saw cut it" else last(line, "it swings 50, tilts 45, miter is 40 bevel is 30")
    told = {given["name"]: given["value"] for given in record["givens"]}
    assert (told["setting"], told["bevel"], told["saw limit"], told["saw tilt"]) == (40, 30, 50, 45)


@pytest.mark.parametrize(
    "lines",
    [
        ("fascia for the same two sides in five metre lengths how many",),  # no two metres
        ("drip edge for a 30 by 24 gable roof at 6/12 with 12 inch overhangs",),  # a length, and no area
        ("ridge cap for a 40 by 28 roof at 8/12",),
        ("how much fascia on a 30 by 24 gable roof at 6/12",),
        ("per foot of a 40 foot eave",),  # no ladder
        ("40 foot eave at 16 inch overhang how much soffit",),  # no 40 feet less 16 inches
        ("how many 16 footers for 210 feet of trim with 10% waste", "at 18.40 each", "and with 12s"),  # no twelve of them
        ("screw for 3/4 siding over 3/4 strap, 1 1/4 in the stud", "add 1 inch foam", "2 inches instead"),
        ("sheathing's half inch, strapping 3/4", "3/8 board over that, an inch and a half bite, what nail"),  # through all three
        ("four of those twelve foot boards treads in all",),  # nothing told of those
    ],
)
def test_asked_and_not_made_up(lines: tuple[str, ...]) -> None:
    record = last(*lines)
    assert record["outcome"] == "asks", record["say"]
    assert record["answer"] is None


GABLE, LIST = "how tall is a 24 foot gable at 6 in 12", "cut list from 12 foot stock: four at 40 inches, three at 32"


@pytest.mark.parametrize(
    "lines",
    [
        ("plumb cut for 5/12", "at 4.50 each"),  # no pitch of 4 1/2 in 12
        (GABLE, "and 12 foot high"),  # no width
        (GABLE, "at 4.50 each"),
        (LIST, "at 22 degrees"),  # no pieces of 22 inches
        ("cost of 45 boards at $12.50 each", "at 22 degrees"),
        ("tubes of sealant for 100 ft of joint 1/4 by 1/4", "no more than 6"),  # no joint of 6 feet
        ("how many boards for 264 sq ft, 6 inch exposure, 12 foot boards", "the other one's 10"),  # no 10 square feet
        ("weight of 300 sq ft of cladding at 2.3 lb per sq ft", "less 1"),  # no pound a square foot
        ("how much trim for 4 windows 3 by 5", "less 1"),  # a window, or an inch
        ("compound miter for 38 degree spring, 90 corner", "two of those"),  # no corner of two degrees
        ("bent flashing legs 1, 3 1/2, 1 1/2 from 24 in coil", "seven of them"),  # no leg of seven inches
        ("how high do 14 courses at 7 inches come", "two of those"),
        ("area of a wall 32 by 9 with two windows 3 by 4", "two of those"),
        ("14 spindles 38 mil over 2.1 metres, gap", "and with 32 mil spindles, still thirteen"),  # no 13 metres
        ("how high does a 7/24 climb over 11 foot", "14 foot back instead of 11", "and up the slope with the 14"),  # no pitch
        ("round head 36 inches wide, 9 inch rise, radius?", "12s"),  # no rise of 12
        ("sill at 36, head at 84, top at 112, exposure between 6 1/2 and 7 1/4, land the courses on the window", "12s"),
    ],
)
def test_a_change_that_its_words_speak_against(lines: tuple[str, ...]) -> None:
    record = last(*lines)
    assert record["outcome"] in ("asks", "declined"), record["say"]
    assert record["answer"] is None


@pytest.mark.parametrize("line", ["plumb cut for 5/12", "miter for a 92 degree corner", "octagon miter"])
def test_degrees_in_place_of_what_was_told_in_another_unit(line: str) -> None:
    assert last(line, "at 22 degrees")["outcome"] in ("answered", "asks")


def test_longer_sheets_are_as_wide() -> None:
    assert last("how many sheets of osb for a wall 32 by 9", "12s")["answer"]["value"] == 6  # 288 over 48 square feet


CIRCLE, STICK = "circumference of a circle 36 inches across", "how many 40 inch pieces from a 12 foot stick"


@pytest.mark.parametrize(
    "lines",
    [
        ("bent flashing legs 1, 3 1/2, 1 1/2 from 24 in coil", "with a 3 by 7 door"),  # no legs of 3 and 7
        ("marks at 16 on centre along 12 feet", "with a 3 by 7 door"),
        (STICK, "with a 3 by 7 door"),
        (STICK, "14 foot wide"),  # no stick
        ("ladder footing for a 16 foot eave", "14 foot wide"),
        (CIRCLE, "and one more"),  # no inch more across
        (GABLE, "and one more"),
        ("3/8 gap behind the siding, is that vented", "and one more"),
        ("fall of a 5 1/2 in sill at 2 percent", "at 2.50 a foot"),  # an eighth of an inch is not bought
    ],
)
def test_an_opening_one_more_and_a_price_of_nothing_are_asked_about(lines: tuple[str, ...]) -> None:
    record = last(*lines)
    assert record["outcome"] in ("asks", "declined"), record["say"]
    assert record["answer"] is None


@pytest.mark.parametrize(
    "lines",
    [
        ("peak joint at ten twelve for the east gable trim", "architect wants 8 degrees on it now"),
        ("I rounded 5.25 in 12 to 5 in 12, how far open is the rake return on a 3 1/2 inch face", "at 22 degrees"),
    ],
)
def test_degrees_beside_a_rise_in_twelve_are_no_error(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] in ("answered", "asks")


@pytest.mark.parametrize(
    "lines",
    [
        ("bay is 61 3/8 and I've a 1 1/2 post each end, clear?", "wats 12/12", "got 9 of those sticks, total pcs?"),
        ("85 square metres of ceiling below the loft, vent it at 1/150", "take off a door two point one by point nine",
         "and only to 12?", "and if I took 80 of them instead, since there's the other wall to come in spring"),
        ("balanced panels wall is twenty eight foot two inches each panel covers nine and a half", "less an inch",
         "first one at 150, 600 apart"),
        ("ninety mil screw through twenty one mil cladding and thirty eight mil batten how much bites the stud",
         "how much bite through 3/4 and 5/8"),
        ("step at the rake for a 9/12", "make it 35"),
        ("How deep is the build-out with half inch sheathing and 5/8 clapboards over strapping?",
         "south wall is the same but no windows, only the door"),
        ("balance panels that cover 0 inches on a 20 foot wall", "16ft?"),
        ("13 slats on 68 inches, flush at the ends, whats between em", "make it 14 foot", "at sixty percent",
         "and at a 95 degree corner?"),
        ("nails have to bite 1 1/8, the layers are 9/16, 3/8 and 1/2; how long a nail", "FLAG THAT!",
         "how long is the hip at that pitch if the common run is 13 foot", "No, 42.5."),
    ],
)  # fmt: skip
def test_talk_that_failed_once_is_a_record(lines: tuple[str, ...]) -> None:
    record = last(*lines)
    assert record["outcome"] in ("answered", "asks", "declined", "noted")
    assert "went wrong" not in record["say"]
