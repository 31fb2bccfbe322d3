"""Words that stand beside the numbers of lengths, and tell what those are."""

from __future__ import annotations

OTHER_USES = frozenset(("in", "on", "over", "-", "/", ":"))  # after a number, these start a pitch or a sum
ONE_WAY = (["one", "way"], ["one", "side"], ["one", "end"])  # 13 foot 5 | one way
AFTER_ONE = frozenset("and by wide high long tall deep wall at with on for from to of plus minus".split())
# What a size of its own is for: "20 feet, 7 inch exposure", "17 ft 6 in exposure".
ROLES = frozenset(
    "exposure exp expo exposed reveal reveals lap laps overlap gap gaps cavity slot mesh screen cover covers coverage"
    " deep depth overhang penetration bite centres centers centre center oc apart spacing spaced thick kerf blade"
    " first coil joint showing weather legs strapping boards sticks footers stock".split()
)
SMALL = frozenset(
    "exposure exp expo exposed reveal reveals lap laps kerf blade penetration bite showing weather gauge shakes shingles".split()
)
OTHER_UNITS = frozenset(  # what is so many of these is no part of a length
    "ml millilitre millilitres milliliter milliliters litre litres liter liters oz kg kgs kilo kilos lb lbs pound pounds".split()
)
COVERS = frozenset("cover covers coverage centres centers centre center oc apart spacing panels boards".split())
# after "6 in", these make it a place or a conversion
NOUNS = frozenset(
    [
        "a",
        "an",
        "the",
        "my",
        "our",
        "each",
        "every",
        "this",
        "that",
        "those",
        "these",
        "both",
        "total",
        "all",
        "degrees",
        "feet",
        "inches",
        "metres",
        "meters",
        "millimetres",
        "millimeters",
        "mm",
        "cm",
        "m",
        "metric",
        "decimal",
        "percent",
        "it",
        "there",
        "here",
        *("plan", "elevation", "section"),  # 24 by 30 in plan
        *"winter summer spring fall autumn january february march june july august december sun shade winters summers".split(),
        *"september october november midsummer midwinter dog monsoon springtime summertime wintertime service".split(),
    ]
)
