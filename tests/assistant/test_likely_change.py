"""A line that no rule takes is the change that lines like it are, is asked about where that is less sure, and chat is neither."""

from __future__ import annotations

import pytest

from assistant.change_learned import model, numbers_of, of_line, roles_in
from assistant.conversation import Conversation
from tests.talking import last

SKIRTING = ("skirting comes to 47 metres, how many 3.6 m lengths",)
WALL = ("squares for 1240 square feet",)
STRAPS = ("strapping on a 31 foot wall at 16 on centre",)
SPACED = ("nine balusters 1 1/2 wide in 5 foot 4",)


@pytest.mark.parametrize(
    ("lines", "name", "text"),
    [
        ((*SKIRTING, "allow five percent for cuts"), "waste", "five percent"),
        ((*STRAPS, "every twenty four inches is plenty"), "stud spacing", "twenty four inches"),
        (("roof area 42 by 36 feet at 7/12", "thats bare walls theres an eighteen inch overhang all the way round"),
         "overhang all round", "eighteen inch"),
        (("roof area 42 by 36 feet at 7/12", "forgot the eaves, chuck an eighteen inch overhang on all the way round"),
         "overhang all round", "eighteen inch"),
        (("how many 12 ft boards for 900 square feet at 6 inch exposure", "boss wants a 7 inch reveal on it, redo that"),
         "exposure", "7 inch"),
        (("dew point at 20 C and 60 percent", "the meter upstairs says seventy percent, what is it up there"),
         "humidity", "seventy percent"),
        (("a ramp rises 21 inches over 14 feet of run, how long is the slope",
          "hmm, that feels steep to me. Bring it out to 16 feet, how long is the slope then"), "run", "16 feet"),
        (("patio 3.6 m out from the house falls 1 in 60", "we might only go 3.2 metres out in the end"), "width", "3.2 metres"),
    ],
)
def test_a_change_in_words_of_nobodys_rule_is_taken(lines: tuple[str, ...], name: str, text: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"]
    assert {given["name"]: given["text"] for given in record["givens"] if given["from"] == "asked"} == {name: text}
    assert record["say"].startswith("With ")


@pytest.mark.parametrize(
    ("lines", "value", "unit"),
    [
        (("soffit panels for 22 metres of eave, 600 mm deep", "they cover 300 each"), 74, "count"),
        (("nine balusters in 5 foot 4, gap between", "they are an inch and a half wide"), 6.3125, "in"),
    ],
)
def test_a_reply_in_words_of_nobodys_rule_is_taken(lines: tuple[str, ...], value: float, unit: str) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["ask"]
    assert (record["answer"]["value"], record["answer"]["unit"]) == (pytest.approx(value, abs=0.02), unit)


def test_what_is_less_sure_is_asked_and_a_yes_settles_it() -> None:
    spaced = (*STRAPS, "my father in law says every twenty four inches is plenty")
    asked = last(*spaced)
    assert asked["ask"].startswith("Do you mean the strapping again, with the stud spacing twenty four inches?")
    asked = last(*SKIRTING, "better allow ten percent for mistakes")  # of other things too, by its words
    assert asked["ask"] == "Do you mean the trim sticks again, with the waste ten percent? Say yes, or ask it in full."
    assert last(*spaced, "yes")["outcome"] == "answered"


@pytest.mark.parametrize(
    "line",
    ["100 percent agree", "leave the 8 footers by the door", "the radio says 31 tomorrow", "eleven feet of snow in the hills"],
)
@pytest.mark.parametrize("question", [SKIRTING, WALL, STRAPS, SPACED])
def test_chat_is_no_change(question: tuple[str, ...], line: str) -> None:
    record = last(*question, line)
    assert record["outcome"] != "answered", record["say"]


def test_of_two_of_a_kind_the_number_is_asked_about() -> None:
    """Neither word nor size tells whether the bottom or the top opening is 65 percent open."""
    record = last("bottom 3/4 at 60%, top 3/8 at 60%, 40 ft of wall, free area", "I said 65 percent")
    assert record["outcome"] == "asks"


def test_where_such_lines_change_another_given_it_is_asked_which() -> None:
    """Of shingles 7 is shown, and no roof is meant: the rule that takes a bare number for the pitch is doubted."""
    rows = "how much do I lose each row running up under the rake, 6 inch exposure"
    record = last(rows, "its an eight twelve", "and if im showing 7")
    assert record["outcome"] == "asks"
    assert "exposure 7 in" in record["ask"]


def test_shares_add_up_and_no_number_is_learned_by_heart() -> None:
    c, known = Conversation(), model()
    assert known is not None
    c.answer(SKIRTING[0])
    assert c.last is not None
    for line in ("allow 12 percent", "47 metres is what he said", "8 foot 6"):
        found = numbers_of(line, c.last)
        assert 0 <= known.stay(of_line(line, c.last, len(found), c.parameters)) <= 1
        for _, shares in roles_in(line, c.last, found, known):
            assert sum(shares.values()) == pytest.approx(1)
    assert not any(word.isdecimal() for weights in known for name in weights for word in name.split() if " for " in name)
