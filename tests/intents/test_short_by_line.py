"""Short words of notes that the rest of the line tells: cor, c/l, lvl ct, 4 wall 48x9, 3-9 in 9-0, four inch three eighths."""

from __future__ import annotations

from math import atan, degrees, radians, tan

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    ("said", "topic", "value"),  # no value: how it is worked is checked where its topic is
    [
        ("cor 87.5 - ea pc at?", "miter for a corner", 46.25),
        ("90 cor done in 4 pcs incl both legs, ea jt?", "corner in several pieces", 15),
        ("lvl cut, com rftr, 4/12, saw deg", "plumb cut", 90 - degrees(atan(4 / 12))),
        ("up 4-6 in 9-0, ptch?", "pitch from rise and run", 6),
        ("6 pkts 5-1/2 w in 72, gaps b/w only", "equal spacing", 7.8),
        ("osb 4x8 shts 4 wall 48x9, no wst", "sheets", 14),
        ("c/l from 16 footers - 6 @ 70\", 6 @ 44\", kerf 1/8", "cut list", 4),
        ("drip edge bent 75/60/15 mm, girth?", "bent flashing", 150),
        ("1830mm -> in", "conversion", 1830 / 25.4),
        ("12.5deg pitch, 1800 run, rise = ", "rise over a run", 1800 * tan(radians(12.5))),
        ("ten foot two and a half less four inch three eighths", "tape arithmetic", 118.125),
        ("pk over plt - 28 w - 5/12", "gable height", 70),
        ("shed rf 4/12, runs 9ft, goes up ?", "rise over a run", 36),
        ("42 shts 1/2 rock @ 54 lb ea, tot lbs", "weight", 2268),
        ("31 sheets of 7/16 osb at 17.50 each, cost", "cost", 542.5),
        ("14 sq steel @ 320/sq = $", "cost", 4480),
        ("16 crs x 40', 2 nails @ 16 oc, tot nails", "fasteners", 992),
        ("sheetrock 4x12s / 960sf / +10% / qty", "sheets", 22),
        ("19mm ply = in?", "conversion", 19 / 25.4),
        ("60 m2 > sf", "conversion", 645.835),
        ("22-1/2 blks per 8' stick, 1/8 kerf", "pieces from a stick", 4),
        ("19 3/8 dec?", "conversion", 19.375),
        ("7 blstrs 1-1/2, 38.5 clr, gaps at ends too", "equal spacing", 3.5),
        ("13 crs x 40' ea, 6 exp, 16ft bds, no wst - bds 2 buy", "cladding boards", 33),
        ("30 m2 2 sf", "conversion", 322.917),
        ("ladder 2 4.8m eaves, foot out hw far", "ladder footing", 1200),
        ("half o 1866mm", "tape arithmetic", 933),
        ("frm 3 x 4 m, diag 2 sq it (mm)", "square check", 5000),
        ("6 x 14-1/2 =", "tape arithmetic", 87),
        ("22 5/8 x 3, tot lg", "tape arithmetic", 67.875),
        ("4.2m lgths - 6/1350mm + 5/900mm, how many", "cut list", 4),
        ("48 bds - $13.50 per - tot", "cost", 648),
        ("rf-2-wl 22' up slp, 5 1/2 xpsr, stp flsh pcs?", "step flashing", 48),
        ("brace 3m across 4 up, lgth", "right triangle", 5000),
        ("Screw thru 22 deck + 18 ply, 40 bite, lgth", "fastener length", 80),
        ("felt 4 1650sf, rl 36\"x144', 4\"lp, rls?", "membrane rolls", 5),
        ("14F 2 C", "conversion", -10),
        ("Jsts 450 crs, 7.2m, no. off", "marks on centre", 17),
        ("RFTR 12 RN 5/12 LGTH, no tail", "sloped length", 156),
        ("ctr of 61-1/2 = ?", "tape arithmetic", 30.75),
        ("saw stops 50 L + R, need 57.5, will it?", "can my saw cut it", 0),
        ("D fir flat grain 9-1/4 w, MC 18 to 11, width chg", "wood movement", None),
        ("9 battens 4.8 m ea, screw @ 400 incl both ends, screws =", "fasteners", 117),
        ("9'6 in mtrs", "conversion", 2.8956),
        ("10'ers: 8 at 22-1/2, 3 at 47. how many", "cut list", 3),
        ("pb 2400x1200, 28.8 sqm, no waste, how many", "sheets", 10),
    ],
)  # fmt: skip
def test_a_short_word_is_told_by_its_line(said: str, topic: str, value: float) -> None:
    found = Conversation().answer(said)
    assert (found["outcome"], found["topic"]) == ("answered", topic)
    assert value is None or found["answer"]["value"] == pytest.approx(value, rel=1e-3)
