"""Slots and cautions that many topics share, so that one thing is asked for and limited in one way."""

from __future__ import annotations

from typing import Annotated

from solvers.quantities import Angle, Count, Length, Percent, Pitch
from solvers.slots import Choice, Slot


class From(Choice):
    """What an angle was measured from."""

    LEVEL = "from level"
    PLUMB = "from plumb"


MeasuredFrom = Annotated[From, Slot("Is the angle from level or from plumb?", name="angle measured")]
RoofPitch = Annotated[Pitch, Slot("What is the pitch?", above=0, kept="pitch")]
AnyPitch = Annotated[Pitch, Slot("What is the pitch?", kept="pitch")]
CornerAngle = Annotated[Angle, Slot("What is the corner angle, in degrees?", above=0, below=180, name="corner")]
Corner = Annotated[
    Angle, Slot("What is the corner angle, in degrees?", least=5, below=180, name="corner", unless="turn", usual=(15, 180))
]
Turn = Annotated[Angle, Slot("How far does it turn, in degrees?", above=0, below=180, name="turn", cued=True)]
WallLength = Annotated[Length, Slot("How long is the wall?", bare=("ft",), above=0, name="length")]
WallHeight = Annotated[
    Length, Slot("How high is it?", bare=("ft", "in"), plain=30, doubt=(15, 36), above=0, name="height", usual=(36, 360))
]
Exposure = Annotated[Length, Slot("What is the exposure?", bare=("in",), above=0, most=36, kept="exposure", usual=(3, 16))]
StockLength = Annotated[
    Length, Slot("How long is your stock?", bare=("ft", "in"), plain=24, above=0, kept="stock length", usual=(60, 300))
]
Waste = Annotated[Percent, Slot("How much waste, in percent?", least=0, most=100, kept="waste", usual=(0, 35))]
Pieces = Annotated[Count, Slot("How many pieces?", least=1, most=10000)]

SAW_CAUTION = "Cut a test piece in scrap first; guard down, hands well clear of the blade, piece held to the fence."
SMALL_PIECE_CAUTION = "Never hold a short piece by hand at the saw: cut it from a longer one or clamp it."
JIG_CAUTION = "Clamp both the jig and the piece; if it can rock or creep, don't cut."
HEIGHT_CAUTION = "Working at height: firm footing, three points of contact, follow the rules in force where you build."
LADDER_CAUTION = "Firm level footing, tie it off at the top, three points of contact, clear of power lines."
DUST_CAUTION = "Cutting makes dust and chips: eyes, ears and lungs covered."
CODE_CAUTION = "A common minimum; check the one in force where you build."
