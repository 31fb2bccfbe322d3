"""What is said beside a question of kit, other joints, a layer that goes: passed over where it tells nothing, else asked."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation


def answered(text: str) -> str:
    """The answer to one question, or nothing where it is asked or declined."""
    record = Conversation().answer(text)
    return record["answer"]["text"] if record["outcome"] == "answered" else ""


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("gable height 9/12, 17-10 wide, scaffold is 14 ft", "80 1/4 in (6 ft 8 1/4 in)"),
        ("weight of 820 sq ft at 2.3 lb a sq ft, trailer rated 3500", "1886 lb"),
        ("valley length 4/12 run 9 ft, tower is 12 ft", "156 15/16 in (13 ft 15/16 in)"),
        ("marks at 16 on centre to 30 ft, chalk box is 100 ft", "23"),
        ("cut list 3 @ 88, 7 @ 24 1/2 from 16 ft, blade is 1/8", "3"),
        ("the brake is 10 ft long and rises 4 ft, angle?", "23.6°"),
        ("ladder foot out, top of the tower is 14 ft", "42 in (3 ft 6 in)"),
        ("stagger for 14' planks on 24 in oc, north wall has 27 studs", "24 in"),
        ("stagger for 3660 planks on 600 studs", "600 mm"),
        ("square check 38 1/2 by 82 3/4, its 1 of 3", "91 1/4 in (7 ft 7 1/4 in)"),
        ("sloped length 13 ft 4 run 5/12, felt is 36 wide", "173 5/16 in (14 ft 5 5/16 in)"),
        ("they're 12 ft apart one way, 8 foot 9 the other way, what is the diagonal", "178 3/16 in (14 ft 10 3/16 in)"),
    ],
)
def test_passed_over(text: str, answer: str) -> None:
    assert answered(text) == answer


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("eave height 4.2 m, ladder top on it, foot out? it's a 28 ft ext", "1050 mm"),
        ("ladder against a 12 ft extension, how far out at the foot", ""),
        ("who's got the 24 ft ladder, next day need 2", ""),
        ("ladder 16 ft up, how far out", "48 in (4 ft)"),
    ],
)
def test_a_ladders_own_length_is_no_height(text: str, answer: str) -> None:
    assert answered(text) == answer


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("1/2 ply, 3/8 mesh and 5/8 siding, depth to face if the mesh comes off", "1 1/8 in"),
        ("7/16 osb 1 in foam 3/4 strap 5/16 plank, foam is gone, depth to face?", "1 1/2 in"),
        ("1/2 ply, 3/8 mesh and 5/8 siding, how much less if the mesh comes off", ""),
        ("7/16 osb, 3/4 strap, 5/16 plank, how far out does the face come", "1 1/2 in"),
        ("how far out am I: 7/16 osb, 3/4 strap, 5/16 plank, the strap stays", "1 1/2 in"),
    ],
)
def test_a_layer_that_goes_is_none(text: str, answer: str) -> None:
    assert answered(text) == answer


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("wrap for 38-6 x 9 rolls 9 ft x 100 ft lap 6", "1"),
        ("squares for 32 x 9 plus 6/12 gable over", "4.58 squares"),
        ("24 long 8 high with a 7 ft gable over, 5 1/4 exposure, 14 ft boards, 0% waste, how many boards", "46"),
        ("wrap for 24 x 8 sheets lap 6", ""),
        ("total trim 122-6, stock 16 ft, how many sticks", "8"),
        ("cut list 6 @ 41 1/2, 2 @ 7-3 stock is 12 ft", "4"),
        ("sticks 10', 12', 16', I need 8 pcs 38 1/4 and 3 pcs 9-6 least waste", "4"),
        ("even gaps, 2150 opening, 9 pieces 90 wide", "168 mm"),
    ],
)
def test_sizes_find_their_places(text: str, answer: str) -> None:
    assert answered(text) == answer


@pytest.mark.parametrize(
    ("text", "answer"),
    [
        ("bevel 38 but tilts to 45 and miter 54 limit 48 will it cut, 12 in blade", "no"),
        ("saw miter 40, limit 48, bevel 30, tilts to 45, will it cut it", "yes"),
        ("saw goes 52 left 60 right, want 58 degrees, can i?", "yes"),
    ],
)
def test_names_before_the_numbers_of_a_saw(text: str, answer: str) -> None:
    assert answered(text) == answer


@pytest.mark.parametrize(
    ("text", "answer"),
    [("what's 7/12 in deg", "30.3°"), ("26 ft wide gable 8/12 sq ft?", "112.7 ft²"), ("85 mm sill, slope 6 deg fall", "8.9 mm")],
)
def test_a_pitch_and_what_it_is_asked_in(text: str, answer: str) -> None:
    assert answered(text) == answer
