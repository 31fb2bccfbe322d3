"""Sentences of a building site that were misread once: what is asked, what is chat, what is told twice."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        ("two mouldings meet at 139 degrees, what do I cut each at", "20.5°"),  # two of them are no sides of a ring
        ("the corner is nowhere near 90, the gauge says 94. mitre?", "43°"),
        ("Gable 6,4 m wide, 45 degrees, no overhang. Rake length?", "4525 mm"),
        ("3000 take away four times 480, what's left", "1080"),
        ("12 plus 3 times 2", "30"),  # as spoken
        ("five pieces at seven and five ate inches, end to end, how long", "38 1/8 in (3 ft 2 1/8 in)"),
        ("frame 3600 by 4800, measured diagonal 6006. Error?", "6 mm"),
        ("cladding is 24.50 the square metre and I need 30 square metres, total?", "735.00"),
        ("battens are 12 mm so the boards stand 12 mm off the wrap, ventilated or drained?", "Ventilated"),
        ("porch ceiling 19 foot 4, foot wide panels, even up the ends, end rip?", "8 in"),
        ("window edge is a foot and a half in from the corner, 8/12, how much higher is the rake there", "12 in"),
        ("the cladding is five ate's thick, the strapping is 3/4, an inch and a half into the stud, screw?", "2 7/8 in"),
        ("what screw for 18 mm board on a 25 mm batten, thirty mil into the stud", "73 mm"),
        ("24 ft across and 6/12, height to the point?", "72 in (6 ft)"),
        ("can a saw that stops at 50 cut the peak joint on a 6/12", "yes"),
    ],
)
def test_is_answered(said: str, answer: str) -> None:
    record = last(said)
    text = record["answer"] and record["answer"]["text"]
    assert record["outcome"] == "answered", record["say"]
    assert text.lower().startswith(answer.lower()), text


@pytest.mark.parametrize(
    "said",
    [
        "Gary you're about half an inch low on your end, bring her up",
        "knock off for tea at ten, there's rain coming",
    ],
)
def test_chat_keeps_and_works_nothing(said: str) -> None:
    assert last(said)["outcome"] == "declined"


@pytest.mark.parametrize(
    "said",
    [
        "97 1/8 less two 5 1/2s",  # or 2 ft 5 1/2
        "4 sticks of 16 ft, how many feet",
        "siding 38 the square, 12 squares, total",  # pounds or money
        "off an 8 footer I cut two at 27 5/8, how much stick have I got",
        "if the ladder's feet are 5 foot out how high can I lean it",
        "trim is 5/4, a true inch thick, over 1/2 sheathing, 1 1/4 into framing, least nail",
    ],
)
def test_is_never_answered_as_it_is(said: str) -> None:
    record = last(said)
    wrong = ("5 ft 7 5/8", "16 ft", "456 lb", "15 in", "3 in")
    assert record["outcome"] == "asks" or not record["answer"]["text"].startswith(wrong), record["say"]


@pytest.mark.parametrize(
    ("lines", "answer"),
    [
        (("dew point at 21 C and 60 percent", "in Fahrenheit"), "55.3 °F"),
        (("weight of 20 boards at 14 lb", "and in kilos?"), "127 kg"),
        (("ladder footing for 14 ft", "No, sixteen. I said sixteen."), "48 in (4 ft)"),
        (("five slats 3 1/2 wide in a 40 inch opening, gaps at both ends too", "and with six of em"), "2 11/16 in"),
        (("dew point at 20 C and 60 percent", "at 40 C"), "30.8 °C"),
        (("rake return 6/12", "no, I meant 8, I said 8"), "61.8°"),
    ],
)
def test_what_is_said_after_an_answer(lines: tuple[str, ...], answer: str) -> None:
    record = last(*lines)
    assert (record["outcome"], record["answer"] and record["answer"]["text"]) == ("answered", answer), record["say"]


def test_what_is_told_of_the_job() -> None:
    record = last("remember we're overhanging fifteen inches on the rakes", "what's the overhang")
    assert "15 in" in record["say"]
    record = last("note: delivery came with the wrong trim", "Read me what I've got for today.")
    assert (record["outcome"], "wrong trim" in record["say"]) == ("noted", True)


@pytest.mark.parametrize(
    ("said", "answer"),
    [
        ("Will my saw swing to 61? The stop's at 50.", "no"),
        ("squares for 1340 sq ft, the waste's in there already", "13.4 squares"),
        ("20 mm boards on 45 mm battens, 35 mm into the battens, screw?", "55 mm"),
        ("a 25 percent grade in degrees", "14°"),
        ("crown springs 45 from the wall and the corner is a true ninety, cutting it flat. Miter and bevel?", "35.3°"),
        ("aluminium cap, 4 m lengths, 15°C now, 60 at worst, down to -15 in winter, what joint gap today", "4.1 mm"),
        ("19 courses, each runs the full 28 feet, boards come 16 foot long, no waste", "34"),
        ("strapping 3/4 over a inch of foam and half inch ply, inch an a half in to the stud, shortest screw", "3 3/4 in"),
        ("window cill 150 wide at 10 degrees, how much lower is the front edge", "26 mm"),
    ],
)
def test_more_is_answered(said: str, answer: str) -> None:
    record = last(said)
    assert (record["outcome"], record["answer"] and record["answer"]["text"]) == ("answered", answer), record["say"]


@pytest.mark.parametrize(
    "said",
    [
        "3 of 12 boards are bad",
        "post 90 mm thick either end, 3 m overall, clear between them?",
        "screw through 3/4 board, 3/4 strap and an 8 inch ply, 1 1/2 into the stud",
        "ladder at 2",
        "trim a 16 foot to fit 15 7 5/8",
        "does 3/4 strap and 5/8 siding clear a 1 1/2 inch jamb",
    ],
)
def test_more_is_asked(said: str) -> None:
    assert last(said)["outcome"] == "asks"


def test_the_saw_is_asked_about_what_was_stated() -> None:
    lines = ("My saw stops at 52.", "Roof's five twelve, fascia plumb.", "so with that saw can I get the rake return cut")
    record = last(*lines)
    assert (record["topic"], record["answer"]["text"]) == ("can my saw cut it", "no")


def test_a_width_told_after_the_pitch_is_no_pitch() -> None:
    record = last("gable roof is nine twelve", "and it's 22 foot across, how high to the point")
    assert (record["topic"], record["answer"]["text"]) == ("gable height", "99 in (8 ft 3 in)")
