"""Notes of a thumb, or off the board by the saw: slashes, letters beside a size, tallies, arrows, one unit for all."""

from __future__ import annotations

from math import atan, degrees, radians, sqrt, tan

import pytest

from assistant.conversation import Conversation


@pytest.mark.parametrize(
    ("said", "topic", "value"),
    [
        ("parapet cap mm 20 / 75 / 240 / 75 / 20 flat width", "bent flashing", 20 + 75 + 240 + 75 + 20),
        ("Z over hd: 2 / 1 1/8 / 3/4 / 1/4 hem, stretchout", "bent flashing", 2 + 1.125 + 0.75 + 0.25),
        ("cap 25, 75, 20 flat width", "bent flashing", 25 + 75 + 20),
        ("PVC 16 ft stock / 6 at 62 / 4 at 38 / 1/8 kerf, fewest", "cut list", 3),
        ("cut list 8/1250, 5/1720 frm 5.4m stock - 3mm blade", "cut list", 4),
        ("10' stk: 31 1/4 |||| , 22 ||| -> sticks = ?", "cut list", 2),
        ("800 pcs ex one 5.4m lth, 3mm kerf", "pieces from a stick", 6),
        ("jacks @ 600 c/c, 35° roof — ea shorter by", "jack rafters", 600 / 0.8191520),
        ("dwnpipe 90Ø circumf mm", "circle", 282.743),
        ("2440 - 3 x 586, mm", "tape arithmetic", 2440 - 3 * 586),
        ("7'9 3/4 -> mm = ?", "conversion", 93.75 * 25.4),
        ("4.5/12 = how many °", "roof angle", degrees(atan(4.5 / 12))),
        ("rf pitch 1 in 2.5 = ° ?", "roof angle", degrees(atan(1 / 2.5))),
        ("prop 900 up 1500 out, ang frm lvl", "right triangle", degrees(atan(900 / 1500))),
        ("28' gbl.. 10/12.. plate 2 rdg ht", "gable height", 14 * 12 * 10 / 12),
        ("414 sf wl, 9' H, L = ?", "side of a wall", 46),
        ("24' x 32' fdn, x-tape 40'1\", out how mch", "out of square", 1.0),
        ("lean-to 15°, run 2.4 m → rise mm ?", "rise over a run", 2400 * tan(radians(15))),
        ("12 ply + 45 btn + 18 wbd, face off stud mm", "build-out", 75),
        ("ROOF 44X28 PLAN 5/12 SF, no waste", "roof area", 44 * 28 * sqrt(1 + (5 / 12) ** 2)),
        ("plate 9.3m, studs 600 cts, 1st mark @ 0 — tot marks", "marks on centre", 16),
        ("4 shelves 22thk in 1500, equal gaps incl top+btm", "equal spacing", (1500 - 4 * 22) / 5),
        ("gabel 27 ft wd, 8/12, no ovhg, 1 rake bd lgth", "rake length", 13.5 * 12 * sqrt(1 + (8 / 12) ** 2)),
    ],
)  # fmt: skip
def test_a_note_is_worked(said: str, topic: str, value: float) -> None:
    found = Conversation().answer(said)
    assert (found["outcome"], found["topic"]) == ("answered", topic)
    assert found["answer"]["value"] == pytest.approx(value, rel=1e-3)


@pytest.mark.parametrize(
    ("said", "answer"), [("saw 50L 60R, need 57 1/2 — ok?", "yes"), ("need 52.5, saw stops 50 both sides. poss?", "no")]
)
def test_how_far_a_saw_swings_is_told_by_a_letter(said: str, answer: str) -> None:
    assert Conversation().answer(said)["answer"]["text"] == answer


@pytest.mark.parametrize("said", ["garage ckt 20A, 12 ga, how many recepts ?", "20 amp circuit, how many receptacles"])
def test_a_circuit_is_declined(said: str) -> None:
    found = Conversation().answer(said)
    assert (found["outcome"], found["answer"]) == ("declined", None)


@pytest.mark.parametrize(
    ("said", "value"),
    [("96 / 4 / 2", 12), ("what's 12'6 / 5", 30), ("what is 96 / 4 / 2", 12)],
)
def test_a_slash_between_bare_numbers_divides(said: str, value: float) -> None:
    assert Conversation().answer(said)["answer"]["value"] == pytest.approx(value)


@pytest.mark.parametrize(
    ("said", "run"),
    [
        ("Plumb cut on the hip rafter, not the commons, at 9/12.", 12 * sqrt(2)),
        ("plumb cut for the common, not the hip, 9/12", 12.0),
        ("plumb cut on the jacks that meet the hip, 9/12", 12.0),
    ],
)
def test_what_is_said_not_to_be_cut_is_not(said: str, run: float) -> None:
    assert Conversation().answer(said)["answer"]["value"] == pytest.approx(degrees(atan(9 / run)), abs=0.01)


@pytest.mark.parametrize(
    ("said", "topic", "value"),
    [
        ("24 glazed units going in the van at 38.5 kg each, what weight is that all in?", "weight", 24 * 38.5),
        ("two walls come together at a hundred and thirty five degrees outside what's the cut on both bits of trim",
         "miter for a corner", 22.5),
        ("17 spindles at 41 mm, 2.36 m between the newels, a gap against each newel too. What gap?", "equal spacing",
         (2360 - 17 * 41) / 18),
        ("what's for times fourteen and three eighths inches", "tape arithmetic", 4 * 14.375),
        ("What does fourteen times 3 3/8 inches come to? The rack's tight.", "tape arithmetic", 14 * 3.375),
    ],
)  # fmt: skip
def test_what_stands_beside_tells(said: str, topic: str, value: float) -> None:
    found = Conversation().answer(said)
    assert (found["outcome"], found["topic"]) == ("answered", topic)
    assert found["answer"]["value"] == pytest.approx(value, rel=1e-3)


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("floor falling one and a half percent over one point ate metres how much drop", "make it too percent"), 36),
        (("six equal sides what do i set the mitre saw to", "and if it had ate sides"), 22.5),
        (("nineteen degrees c and sixty ate percent humidity whats the dew point", "what if its twenty too degrees"), 15.8),
    ],
)
def test_a_number_heard_as_a_small_word_changes_what_was_said(lines: tuple[str, ...], value: float) -> None:
    talk = Conversation()
    found = [talk.answer(line) for line in lines][-1]
    assert found["answer"]["value"] == pytest.approx(value, rel=2e-2)


@pytest.mark.parametrize(
    ("said", "topic", "value"),
    [
        ("hse 14 squares, m2?", "conversion", 14 * 100 / 10.7639104),
        ("40 kg bag, lbs", "conversion", 40 * 2.20462262),
        ("34 m2 → sf ?", "conversion", 34 * 10.7639104),
        ("how many kilos is a fifty five pound bag", "conversion", 55 / 2.20462262),
        ("34' x 9' wall less (2) 3040 wdw, (1) 3068 dr: net SF", "wall area", 34 * 9 - 2 * 12 - 20),
        ("wall 9.6x2.4m less 2no wdw 1.2x1.05, sqm nett", "wall area", 9.6 * 2.4 - 2 * 1.2 * 1.05),
        ("46 shts @ 48# ea, ttl lbs", "weight", 46 * 48),
        ("brace: 2100↑ 1650→ hyp?", "right triangle", (2100**2 + 1650**2) ** 0.5),
        ("fold 25/90/150/15 flashing girth", "bent flashing", 280),
        ("red oak 5 1/4 flat grn, 7% → 11% MC. swells by ?", "wood movement", None),
    ],
)
def test_a_unit_a_code_and_an_arrow_are_what_they_stand_for(said: str, topic: str, value: float | None) -> None:
    found = Conversation().answer(said)
    assert (found["outcome"], found["topic"]) == ("answered", topic)
    assert value is None or found["answer"]["value"] == pytest.approx(value, rel=1e-3)


@pytest.mark.parametrize(
    "said", ["a 900 x 2100 door in a 4.2 m by 2.4 m wall, net area", "wall 4.2 m by 2.4, a 2100 by 900 door, net area"]
)
def test_a_door_in_millimetres_is_no_code(said: str) -> None:
    assert Conversation().answer(said)["answer"]["value"] == pytest.approx(4.2 * 2.4 - 0.9 * 2.1, rel=1e-3)


def test_a_hundred_strips_of_a_coil_are_not_marked_one_by_one() -> None:
    talk = Conversation()
    found = [talk.answer(line) for line in ("strips from a 40 inch coil, 1/4 inch girth, how many across", "yes")][-1]
    assert found["answer"]["value"] == 160
    assert any("not listed" in each for each in found["cautions"])


@pytest.mark.parametrize(
    ("said", "value"),
    [
        ("412 linear feet in 14 footers, waste 8", 32),
        ("uPVC guttering, 4 m, 5 C at dawn up to 45 C by noon, how much does it lengthen", 4000 * 40 * 67e-6),
        ("uPVC guttering, 4 m, 5 C at dawn up to 45 C by noon, how much does it shorten", -4000 * 40 * 67e-6),
    ],
)
def test_what_is_told_by_its_place_is_not_let_fall(said: str, value: float) -> None:
    assert Conversation().answer(said)["answer"]["value"] == pytest.approx(value, rel=1e-3)


@pytest.mark.parametrize("said", ["galv 20 lb a bundle, 16 bundles, plus a 45 lb roll, weight", "90 corner 3 pcs miter each"])
def test_what_was_not_taken_is_asked_about(said: str) -> None:
    assert Conversation().answer(said)["outcome"] == "asks"
