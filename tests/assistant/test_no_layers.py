"""Which sizes are layers and which are not: a stud, a width, a screw somebody has, what was taken off; lumber by its name."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("said", "inches"),
    [
        # What it is held in is not gone through.
        ("what screw: 3/4 trim over 1/2 ply, stud is 3 1/2 deep, 1 1/4 in the stud", 2.5),
        ("45 mm studs, 18 mm cladding, 25 mm batten, 35 mm into the stud, what screw", 78 / 25.4),
        ("ply is 1/2, siding 3/4, going into 1 1/2 blocking, bite 1 1/4, screw?", 2.5),
        ("3/4 fascia onto a 1 1/2 rafter end, 1 1/4 bite, screw?", 2.0),
        ("screw for 5/8 siding over 3/4 strapping, penetration into the stud is 1 1/2", 2.875),
        # A width, a spacing and the other size of a stick are no thickness.
        ("4 inch wide 3/4 trim over 7/16 osb, 1 1/4 into stud, what nail", 2.4375),
        ("screw through a 1 1/2 x 3 1/2 trim board laid flat, 1/2 sheathing, 2 in the stud", 4.0),
        ("20mm cladding 50mm wide over 38x50 battens, 40mm penetration, screw?", 98 / 25.4),
        # The fasteners that somebody has.
        ("my 1 1/4 screws fell short. 3/4 trim and 1/2 sheathing and I want 1 1/4 in the stud, what length", 2.5),
        ("No. 8 screws, 3/4 strap, 1/2 ply, 1 1/4 in the stud. How long?", 2.5),
        ("0.5 ply, 0.75 strap, 1.25 pen, screws are 0.2 dia. length?", 2.5),
        ("The 3 in trim screws don't hold. An inch of trim, half inch sheathing, to catch inch and a half what screw", 3.0),
        ("I've 75 mm screws. 20 board 25 batten 11 osb, 35 bite, what length do I need", 91 / 25.4),
        ("predrill 1/8 holes, 3/4 trim over 1/2 ply, inch and a quarter penetration, screw length", 2.5),
        ("screws have 1 inch of thread. 3/4 strap, 1/2 ply, 1 1/4 in the stud. length?", 2.5),
        ("1 1/2 inch of thread in the stud, 3/4 strap, 1/2 ply, screw", 2.75),
        # What is not there any more, or never was.
        (
            "took the old 1/2 inch fibreboard off, so it's only 3/4 straps and 3/4 boards now, 1 1/2 in the stud - what fastener",
            3.0,
        ),
        ("was going to be 1/2 ply but it's 5/8 ply now, plus 3/4 strap, with 1 1/4 bite, screw?", 2.625),
        ("I've taken off the 1/4 mat and the stack is 7/16 osb, 3/4 strapping, 5/8 siding, how far is the face now", 1.8125),
        ("half inch drywall inside doesn't matter, outside is 7/16 osb, 3/4 strap, want 1 1/2 in the stud, screw", 2.6875),
        # A board that is called by more than it is.
        ("5/4 trim, true 1 inch, 1/2 ply, 1 1/4 in the stud, screw length?", 2.75),
        ("5/4 trim (1 inch actual) over 1/2 sheathing, 1 1/4 in the stud, screw", 2.75),
        ("half ply plus three quarter strapping less the membrane, inch and half in, screw", 2.75),
    ],
)
def test_what_is_a_layer(said: str, inches: float) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"]
    assert record["answer"]["value"] / (25.4 if record["answer"]["unit"] == "mm" else 1) == pytest.approx(inches)


@pytest.mark.parametrize(
    ("said", "inches", "assumed"),
    [
        ("furring of 1x4 over 1/2 inch sheathing, 1.5 in into stud, nail length?", 2.75, "1x4 furring 3/4"),
        ("ply 1/2, strapping 1x3, siding 5/16, how far out is the face", 1.5625, "1x3 strapping 3/4"),
        ("2x2 furring over 1/2 ply, 5/8 cladding, how far out is the face", 2.625, "2x2 furring 1 1/2"),
        ("1x4 straps every 2 ft over 1/2 ply, 1 1/4 in the stud, screw length", 2.5, "1x4 straps 3/4"),
        ("hang 5/4x4 trim on 1/2 sheathing with 1 1/2 penetration, screw", 3.0, "5/4x4 trim 1 in"),
        ("1x8 rough cedar boards over 1/2 ply, 1 1/4 in the stud, nail", 2.5, "1x8 boards 3/4"),
        ("1x3 strapping at 1, 1/2 ply, 5/8 siding, how far out is the face", 2.125, ""),
    ],
)
def test_lumber_by_its_name_is_as_thick_as_lumber_and_says_so(said: str, inches: float, assumed: str) -> None:
    record = last(said)
    assert record["answer"]["value"] == pytest.approx(inches), record["ask"]
    assert bool(assumed) == any(caution.startswith("Assumed") for caution in record["cautions"])
    assert any(assumed in caution for caution in record["cautions"])


@pytest.mark.parametrize(
    "said",
    [
        "20mm cladding over 50x38 battens, 40mm penetration, screw?",  # which way do they lie
        "will 3 inch screws do through 3/4 strapping and 1/2 ply",  # what they are held against is no layer, and no bite
        "3/4 trim into 1 1/2 blocking, what screw",
        "the boards run 5/8 at the butt and 1/4 at the top, 7/16 sheathing, 1 1/4 penetration, nail",
        "lap siding doubles up at the lap so 5/16 twice, plus 7/16 osb, inch and a quarter in, nail",
        "5/4 trim over 7/16 osb, inch and a quarter bite, nail",  # an inch, or 1 1/4
    ],
)
def test_what_is_asked_about(said: str) -> None:
    assert last(said)["outcome"] == "asks"
