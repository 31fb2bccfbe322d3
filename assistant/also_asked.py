"""What is asked beside an answer, and stands on its page: how long a ladder is, how many courses there are.

The answer of a topic is one value, by whatever is asked; what else was asked by name is said with it.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from assistant.record import Record

# Of each topic, what words ask for a value beside its answer, and the names of such values.
_ASKED: dict[str, tuple[tuple[str, tuple[str, ...]], ...]] = {
    "ladder footing": ((
        r"\b(?:how long|wh(?:at|ich) (?:length|size))\b[^.;?]*\bladder|\bladder length|\blength of (?:the |my )?ladder",
        ("working length", "length for 3 ft past the landing"),
    ),),
    "arc": ((
        r"\bhow long\b[^.;?]*\b(?:trim|curve|arc|bead|piece|strip|casing|bend\w*|bent|moulding|molding)"
        r"|\b(?:arc|curve) length|\blength of (?:the )?(?:arc|curve|trim)",
        ("arc length",),
    ),),
    "course layout": ((r"how many|number of courses|course count|\bcourses\?", ("courses",)),),
    "gable courses": (
        (r"how many (?:courses|rows)|number of courses", ("courses",)),
        (r"\btotal|in all\b|altogether|line(?:al|ar) f|how much (?:board|siding|cladding)", ("total length",)),
        (r"how many (?:boards|sticks|lengths|\d+s)", ("boards in all",)),
        (r"how much shorter|shortens?\b|\bstep\b", ("shorter each course",)),
    ),
    "step at the rake": ((r"both (?:ends|sides)|\bin all\b|\btotal|overall", ("step, both ends of a gable",)),),
    "soffit panels": (
        (r"channel|\bj[ -]?trim|\bf[ -]?trim", ("edge channel, two runs",)),
        (r"\barea|square (?:feet|foot|met)|\bsq\b|sqft", ("soffit area",)),
        (r"\bbuy|\border|how many (?:lengths|full|long)|lengths do", ("panel lengths to buy",)),
        (r"(?:out of|from|per|in) (?:each|one|a) (?:length|panel)", ("pieces per panel length",)),
        (r"\blast\b", ("last panel covers, per run",)),
    ),
    "trim sticks": ((r"\bleft\b|leftover|offcut|scrap", ("left over",)),),
    "cut list": ((r"left ?over|leftover|offcut|scrap|what's left", ("lengths of the offcuts kept", "left over as scrap")),),
    "membrane rolls": ((r"(?:each|one|a) roll (?:cover|do|go)|(?:does|will) (?:each|one|a) roll", ("area each roll covers",)),),
    "fasteners": (
        (
            r"how many (?:\w+ )?(?:in|per|to|for) (?:each|a|one)\b"
            r"|(?:how many|number) .*\b(?:per|each|every) (?:course|strap|row|batten|board)",
            ("fasteners in each",),
        ),
        (r"\bbox(?:es)?\b", ("boxes",)),
        (r"how far apart|even(?:ly)?\b", ("even spacing",)),
    ),
    "sealant": (
        (r"how far|per tube|(?:each|one|a) tube (?:go|do)", ("length per tube",)),
        (r"\bvolume|how much (?:sealant|caulk)", ("volume of sealant",)),
    ),
    "weight": ((r"\b(?:in|how many) (?:pounds|lbs?)\b", ("in lb",)), (r"\b(?:in|how many) (?:kgs?|kilo\w*)\b", ("in kg",))),
    "strapping": (
        (r"sticks|how many (?:\d+s|lengths|\d+ foot|\d+ ?ft|\d+')", ("sticks",)),
        (r"total length|line(?:al|ar) f|how (?:much|long)|feet of", ("total length",)),
    ),
    "balanced panels": ((r"how many|\bfull\b|\bwhole\b", ("full panels", "panels to buy")),),
    "equal spacing": ((r"how many", ("pieces",)), (r"cent(?:re|er)s? to cent|on cent|\bo\.?c\b", ("centre to centre",))),
    "marks on centre": (
        (r"last mark|last one", ("last mark",)), (r"left ?over|what's left|remain", ("left after the last mark",)),
    ),
    "staggered joints": (
        (r"how many rows|repeat|comes? round", ("rows until the pattern comes round",)),
        (r"offcut|cut to|waste|scrap", ("board cut to", "offcut of each board")),
    ),
    "wall area": ((r"\bsquares\b", ("net area in squares",)), (r"\bgross\b", ("gross area",))),
    "gable area": (
        (r"\bsquares\b", ("area in squares",)), (r"how (?:high|tall)|what height", ("height of the gable",)),
        (r"(?:how long|length)\b.*\brakes?\b", ("each rake, no overhang",)), (r"what pitch|which pitch", ("pitch of the gable",)),
    ),
    "squares": ((r"\border\b|\bbuy\b|\bwhole\b", ("whole squares bought",)),),
    "cladding boards": (
        (r"(?:how many|and) squares", ("squares",)), (r"line(?:al|ar) f|total length|how many feet", ("total length",)),
        (r"(?:each|one|a|per) board (?:cover|do)", ("area per board",)),
    ),
    "bent flashing": (
        (r"how many|pieces|\bfrom\b|out of", ("pieces per coil width",)),
        (r"\bleft\b|waste|scrap", ("left over of the coil's width",)),
    ),
}  # fmt: skip


_SHORT = 6  # words of a line that asks nothing else


def also_asked(record: Record) -> list[str]:
    """What else a line asks for by name, to be said with its answer; none where it asks for nothing else."""
    heard = record["heard"]
    names = {n for asks, told in _ASKED.get(record["topic"] or "", ()) if re.search(asks, heard, re.IGNORECASE) for n in told}
    return [f"{line['name']}: {line['text']}" for line in record["also"] if line["name"] in names]


def asked_of_last(text: str, before: Record) -> str:
    """What a short line asks by name of the answer before it ("how many courses"), as it stands on that page; "" for none."""
    words = set(re.findall(r"[a-z]+", text.lower()))
    if len(text.split()) > _SHORT or re.search(r"\d", text):
        return ""
    table = _ASKED.get(before.get("topic") or "", ())
    asked = {n for asks, told in table if re.search(asks, text, re.IGNORECASE) for n in told}
    named = (line for line in before.get("also") or () if line["name"] in asked and "squares" not in words)  # waste is in those
    return " ".join(f"{x['name'].capitalize()}: {x['text']}." for x in named if words & set(re.findall(r"[a-z]{4,}", x["name"])))
