"""Which givens and answers of two topics are the same thing: the run of a hip and of a common rafter, the layers of a screw."""

from __future__ import annotations

import re

from intents.expressions import expression

# What a piece is, and the givens of each topic that are it.
_GIVENS = {
    "run": "sloped length.run, rise over a run.run, hip or valley length.run, pitch from rise and run.run",
    "rise": "sloped length.rise, pitch from rise and run.rise",
    "gable width": "gable area.width, gable courses.width, rake length.width, gable height.width",
    "wall length": "wall area.length, strapping.length, take-off.length, side of a wall.length, squares.wall_length,"
    " cladding boards.wall_length, sheets.wall_length, membrane rolls.wall_length, cost.wall_length, weight.wall_length,"
    " vent opening.length, balanced panels.width",
    "wall height": "wall area.height, strapping.height, take-off.height, side of a wall.height, squares.wall_height,"
    " cladding boards.wall_height, sheets.wall_height, membrane rolls.wall_height, cost.wall_height, weight.wall_height,"
    " course layout.height, gable height.wall",
    "openings": "wall area.openings, strapping.openings, take-off.openings, squares.openings, cladding boards.openings,"
    " sheets.openings, membrane rolls.openings, cost.openings, weight.openings",
    "gable peak": "gable area.height, squares.gable_height, cladding boards.gable_height, sheets.gable_height,"
    " membrane rolls.gable_height",
    "exposure": "course layout.exposure, height of courses.exposure, cladding boards.exposure, gable courses.exposure,"
    " take-off.exposure, step at the rake.exposure, end cut along the rake.exposure",
    "courses": "course layout.count, height of courses.count, cladding boards.courses",
    "flashing exposure": "step flashing.exposure",
    "stock": "cladding boards.board_length, take-off.board_length, staggered joints.board, trim sticks.stock,"
    " trim round openings.stock, strapping.stock, pieces from a stick.stock, gable courses.stock, cut list.stock_length",
    "centres": "gable courses.studs, strapping.spacing, marks on centre.spacing, staggered joints.studs, take-off.strap_spacing",
    "layers": "build-out.layers, fastener length.layers, fastener penetration.layers",
    "corner": "miter for a corner.corner, corner in several pieces.corner, compound cut.corner, how far open.corner",
    "turn": "miter for a corner.turn, corner in several pieces.turn",
    "sides": "polygon.sides, compound cut.sides",
    "face": "how far open.face, angle off.face, rounded pitch.face",
    "setting": "how far open.setting, angle off.setting, can my saw cut it.setting",
    "one side": "square check.side, out of square.side, roof area.length, vent area.length",
    "other side": "square check.other_side, out of square.other_side, roof area.width, vent area.width",
    "panel cover": "balanced panels.cover, soffit panels.cover",
    "gap": "air gap.depth, vent opening.gap",
    "material": "thermal movement.material, end gap.material",
    "moves": "thermal movement.length, end gap.length",
    "ceiling": "vent area.area",
    "area": "squares.area, cladding boards.area, sheets.area, membrane rolls.area, cost.area, weight.area",
    "count": "cost.count, weight.count, boxes.count",
    "cost length": "cost.length, weight.length",
    "rows": "fasteners.rows",
    "row length": "fasteners.length",
    "total": "trim sticks.total",
    "piece": "pieces from a stick.piece",
    "whole": "divide evenly.length",
    "edge": "step flashing.length",
    "marked": "marks on centre.length",
    "girth": "strips from a coil.girth",
    "coil": "bent flashing.coil, strips from a coil.coil",
    "dew": "frost tonight.dew",
    "joint length": "sealant.length",
}  # fmt: skip
ROLES = {
    tuple(place.strip().rsplit(".", 1)): role for role, places in _GIVENS.items() for place in places.split(",")
}  # fmt: skip
# Those of which no two things of a job have the same: where they differ, what is told with them is of another thing.
OF_ONE_THING = frozenset(
    ("pitch", "run", "rise", "corner", "turn", "sides", "layers", "gable width", "wall length", "wall height", "one side",
     "other side", "gable peak")
)  # fmt: skip
_CUT = ("rake length", "sloped length", "hip or valley length")
# What a piece is, and the answers that are it: of a topic, the name of the value ("" for the answer itself).
ANSWERS: dict[str, tuple[tuple[str, str], ...]] = {
    "exposure": (("course layout", "exposure"),),
    "courses": (("course layout", "courses"), ("gable courses", "courses")),
    "corner": (("polygon", "corner"),),
    "gable peak": (("gable height", ""),),
    "rows": (("course layout", "courses"), ("strapping", "straps"), ("height of courses", "")),
    "total": (
        *((topic, "") for topic in (*_CUT, "trim round openings", "right triangle")),
        ("arc", "arc length"), ("strapping", "total length"), ("gable courses", "total length"),
    ),
    "piece": tuple((topic, "") for topic in (*_CUT, "right triangle", "square check", "arc", "tape arithmetic")),
    "whole": tuple((topic, "") for topic in (*_CUT, "right triangle", "tape arithmetic")),
    "edge": tuple((topic, "") for topic in _CUT[:2]),
    "marked": tuple((topic, "") for topic in _CUT),
    "girth": (("bent flashing", ""),),
    "dew": (("dew point", ""),),
    "joint length": (("trim round openings", ""),),
}  # fmt: skip
# Several of what was worked once: an amount of one is not theirs.
SEVERAL = expression(
    r"\b(?:both|the (?:pair|two)|all (?:two|three|four|five|six|\d+))\b(?! (?:ways|legs|ends|together))", re.IGNORECASE
)
# What is taken off, put on or put in another's place of what was told before, which then is no more as it was.
ALTERED = expression(
    r"\b(?:without|except|minus|less|skip\w*|leav\w+ (?:out|off)|drop\w*|tak(?:e|ing) (?:out|off)|lose|instead|extra|on top"
    r"|added?|not counting|ignor\w+)\b",
    re.IGNORECASE,
)
NO_OPENINGS = expression(
    r"\b(?:without|except|minus|less|ignor\w+|forget\w*|not counting|leav\w+ (?:out|off)|no) (?:the |any |those |all )*"
    r"(?:windows?|doors?|openings?)\b",
    re.IGNORECASE,
)
