"""What is told of things that are counted: how many at each place, so many of the sticks, how many sticks for so many pieces."""

from __future__ import annotations

import pytest

from tests.talking import last

STICK = ("how many 16 inch blocks from a 12 footer",)  # 144 1/8 over 16 1/8: 8
METRES = ("how many 410 mm nogs from a 3.6 m length, 3 mm blade",)  # 3603 over 413: 8
NAILS = ("10 courses 20 ft long, a nail every 16 inches, how many nails",)  # 16 a course


@pytest.mark.parametrize(
    ("lines", "topic", "value"),
    [
        ((*STICK, "I got 5 of those sticks"), "pieces from a stick", 40),
        ((*STICK, "got five of them 12s, how many blocks all told"), "pieces from a stick", 40),
        ((*METRES, "we have six of those 3.6s, how many nogs is that"), "pieces from a stick", 48),
        ((*STICK, "make them 20 long"), "pieces from a stick", 7),
        ((*STICK, "the blocks gotta be 20"), "pieces from a stick", 7),
        ((*STICK, "no, the blocks are 20 not 16"), "pieces from a stick", 7),
        ((*STICK, "i have 3 of those", "blocks are 20 not 16, how many off the 3 now"), "pieces from a stick", 21),
        ((*STICK, "make it an 8 and the blocks are 20 not 16"), "pieces from a stick", 4),
        ((*METRES, "the nogs are 350 not 410"), "pieces from a stick", 10),
        ((*STICK, "need 30 of those, how many 12s do I pull"), "cut list", 4),
        ((*STICK, "I need 30 blocks so how many sticks"), "cut list", 4),
        ((*STICK, "how many 8 footers for 20 of them"), "cut list", 4),
        ((*STICK, "need 20 of them, how many sticks", "yard's out of those, what if it's all 8s for the 20"), "cut list", 4),
        ((*NAILS, "put two at every spot"), "fasteners", 320),
        ((*NAILS, "two nails every spot, not one"), "fasteners", 320),
        ((*NAILS, "the engineer wants two at each place"), "fasteners", 320),
        ((*NAILS, "two nails every spot", "how many nails if there's 12 courses"), "fasteners", 384),
        ((*NAILS, "how many boxes of 100", "no wait, these ones are boxes of 75"), "boxes", 3),
        ((*NAILS, "how many boxes of 100", "if they were only 12 ft long how many nails"), "fasteners", 100),
    ],
)
def test_counted_things_are_told_in_any_words(lines: tuple[str, ...], topic: str, value: float) -> None:
    record = last(*lines)
    assert (record["outcome"], record["topic"]) == ("answered", topic), record["say"]
    assert record["answer"]["value"] == value


@pytest.mark.parametrize(
    "lines",
    [
        (*STICK, "need 30 of those biscuits, how many packs do I get"),
        (*STICK, "got five of those 10s, how many blocks"),  # of 12s
        (*NAILS, "two at every table"),
    ],
)
def test_what_counts_another_thing_is_no_answer(lines: tuple[str, ...]) -> None:
    assert last(*lines)["outcome"] != "answered"


CUTS = "forty at 27 1/2 out of 16 footers, how many"


@pytest.mark.parametrize(
    ("line", "length"),
    [
        ("make them 27 1/4 long", "27 1/4 in"),
        ("they're 27 1/4 now", "27 1/4 in"),
        ("what if they're 26 inches", "26 in"),
        ("cut them at 27 and a quarter, how many sixteens then", "27 1/4 in"),
        ("no, 26 inches", "26 in"),
    ],
)
def test_the_one_piece_of_a_cut_list_is_cut_to_another_length(line: str, length: str) -> None:
    record = last(CUTS, line)
    assert (record["outcome"], record["topic"], record["answer"]["value"]) == ("answered", "cut list", 6)
    assert [given["text"] for given in record["givens"] if given["name"] == "pieces"] == [f"40 at {length}"]


@pytest.mark.parametrize("line", ["make them 12 footers", "what if it's all 12s", "yard's out of 16s, what if it's all 12s"])
def test_the_sticks_of_a_cut_list_are_others(line: str) -> None:
    record = last(CUTS, line)
    assert [given["value"] for given in record["givens"] if given["name"] == "stock length"] == [12]


def test_a_stick_that_none_is_so_long_is_asked_about() -> None:
    assert last(CUTS, "no, forty two")["outcome"] == "asks"


@pytest.mark.parametrize(
    ("lines", "pieces"),
    [
        (("twelve foot six and a quarter less three foot nine and a half", "split it three ways",
          "how many pieces that long out of a sixteen footer"), 5),
        (("divide 12 foot 4 into seven", "in mm", "how many of those do I get from a 4.8 m length"), 8),
    ],
)  # fmt: skip
def test_pieces_as_long_as_the_answer(lines: tuple[str, ...], pieces: int) -> None:
    record = last(*lines)
    assert (record["topic"], record["answer"]["value"]) == ("pieces from a stick", pieces)
