"""What somebody did, lost, swore to or has lying by is no part of a question that is whole without it."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("line", "answer"),
    [
        ("We dropped 4 pieces in the lake, so tell me the saw setting per joint for a 90 corner done in 3 pieces.", "22.5°"),
        ("There's a 20 footer in the van; the eave is 12 ft up where it'll bear, so how far out's the foot?", "36 in (3 ft)"),
        ("We've 3 pounds of 3 inch left in the shed, but with 1 inch of foam, 3/4 strap and 1 1/4 bite, what's the least nail?",
         "3 in"),
        ("I nailed 2 tight yesterday; now a vinyl length of 12 ft 6 cools by 60 F, how much does it shrink?", "−5/16 in"),
        ("There's 2 sheets of lead left but I'm asking about steel: 24 ft of it, 100 F warmer, how much does it move?",
         "3/16 in"),
        ("Sugar maple threshold, flat sawn, 6 inches, 6 to 10 percent, the owner wants it by 5: how much does it swell?",
         "1/16 in"),
        ("At 3.20 a foot, what do 145 feet of trim cost, and has anyone seen my 4 ft level?", "464.00"),
        ("The last crew cut these at 30 degrees and they gap like a barn door, so what is a 5 in 12 really in degrees?", "22.6°"),
        ("Before we climb down with those 6 brackets, the roof's 22 ft wide at 6/12 and I need the gable height.",
         "66 in (5 ft 6 in)"),
        ("Gutter's holding an inch and a half of water, 4 wide, 16 ft long, since his 3 hangers sagged; how much is that?",
         "1152 in³"),
        ("Shakes run 10 inch exposure at most; the wall's 13 ft 1 in and his 5 rows are coming off, so what's the exposure?",
         "9 13/16 in"),
        ("There's 60 ft of screen left in the truck; with a 3/8 gap at 65 percent open, what free area per foot?", "2.93 in²/ft"),
        ("The slope measures 13 ft and the run 12 ft, and the fellow before us swore it was a 7 foot rise; what's the rise?",
         "60 in (5 ft)"),
        ("The old crew spaced their screws at 2 ft and half are gone, so what's the miter for a 135 corner?", "22.5°"),
        ("The plumber cut a 4 inch hole in the wall; wall's 36 by 9, what area?", "324 ft²"),
        ("He quoted 4,200 for the wall; it's 36 by 9, what's the area?", "324 ft²"),
    ],
)  # fmt: skip
def test_it_is_passed_over(line: str, answer: str) -> None:
    record = last(line)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["text"] == answer


@pytest.mark.parametrize(
    ("line", "name", "text"),
    [
        ("We put 12 inch overhang on, 24 ft gable at 6/12, rake length?", "overhang", "12 inch"),
        ("We cut 30 boards at 6 ft each, how many 12 ft sticks is that?", "pieces", "30 at 6 ft"),
        ("I've 15 foot 4 left to strap at 16 on centre, how many straps is that", "length", "15 foot 4"),
        ("his 6 rows are 9 inches each, how high are they?", "courses", "6"),
        ("The rise was measured at 5 ft and the run at 12 ft, what's the slope?", "rise", "5 ft"),
    ],
)
def test_what_is_of_the_question_stays(line: str, name: str, text: str) -> None:
    given = {line["name"]: line["text"] for line in last(line)["givens"]}
    assert given.get(name) == text


@pytest.mark.parametrize(
    "line",
    [
        "we took 19 1/8 off the 8 foot 2 one, what's left",
        "you know that piece I had, the eight foot two one, well I took nineteen and an eighth off it, so what is there now",
    ],
)
def test_what_is_taken_off_is_a_part_of_a_sum(line: str) -> None:
    assert last(line)["outcome"] == "asks"


def test_a_quote_is_held_against_what_is_asked() -> None:
    assert last("the yard quoted 49 boards, 264 sq ft at 6 inch exposure in 12 footers")["also"][-1]["text"] == "yes, that is it"


def test_boxes_are_no_courses() -> None:
    record = last("I've 6 boxes of 100 here, screws at 16 in along 40 ft, how many screws?")
    assert (record["outcome"], record["ask"]) == ("asks", "How many courses or straps?")


def test_what_is_left_may_count_where_more_is_asked() -> None:
    record = last("There's 40 ft of trim left in the truck and I want 148 feet in 16 foot sticks, how many more do I need?")
    assert record["outcome"] == "asks"
