"""What the ear learns from: pronunciations, twins, phrasings of the grammars, colours."""

from __future__ import annotations

from array import array
from pathlib import Path
from random import Random

import pytest
from pocketsphinx import Decoder

from assistant.ears.colour import Colour, coloured, peak
from assistant.ears.model import sentences
from assistant.ears.phrasing import Phrasing, Phrasings
from assistant.ears.pronunciations import OTHER_WAYS, TRADE, phones
from assistant.ears.twins import twins
from intents.jsgf import Ref, Word

# The 39 phones of CMUdict, http://www.speech.cs.cmu.edu/cgi-bin/cmudict.
PHONES = set(
    "AA AE AH AO AW AY B CH D DH EH ER EY F G HH IH IY JH K L M N NG OW OY P R S SH T TH UH UW V W Y Z ZH".split()
)
ENGLISH = {"nail": "N EY L", "board": "B AO R D", "wrap": "R AE P", "house": "HH AW S", "lap": "L AE P"} | {
    "edge": "EH JH"
}


@pytest.mark.parametrize(
    ("word", "said"),
    [
        ("kerf", "K ER F"),
        ("nails", "N EY L Z"),
        ("wraps", "R AE P S"),
        ("edges", "EH JH IH Z"),
        ("wrapped", "R AE P T"),
        ("boarded", "B AO R D IH D"),
        ("lapping", "L AE P IH NG"),
        ("housewrap", "HH AW S R AE P"),
        ("xqzt", None),
        ("12", None),
    ],
)
def test_a_word_the_dictionary_lacks_is_worked_out(word: str, said: str | None) -> None:
    assert phones(word, ENGLISH.get) == said


def test_listed_pronunciations_use_the_phones_there_are_and_are_needed() -> None:
    lookup = Decoder(lm=None, loglevel="FATAL").lookup_word
    listed = [*TRADE.values(), *(way for ways in OTHER_WAYS.values() for way in ways)]
    assert {phone for said in listed for phone in said.split()} <= PHONES
    assert [word for word in TRADE if lookup(word)] == []


def test_twins_go_both_ways() -> None:
    words = "five six nine fifteen fifty sixteen sixty forty fourteen inch foot half quarter".split()
    for word in words:
        assert all(word in twins([other], 0) for other in twins([word], 0)), word
    assert "fifteen" in twins(["fifty"], 0) and "nine" in twins(["five"], 0)
    assert twins(["rake"], 0) == []


def test_a_twin_leaves_a_number() -> None:
    assert "thirteen" not in twins(["thirty", "four"], 0)
    assert "sixty" not in twins(["thirty", "six"], 1)


@pytest.fixture(scope="module")
def phrasings() -> Phrasings:
    return Phrasings()


@pytest.mark.parametrize(
    ("example", "parts"),
    [
        ("miter for a 5-in-12 rake return", ["miter", "for", "a", "<pitch>", "rake", "return"]),
        ("12'6\" run at 7 in 12", ["<length>", "run", "at", "<pitch>"]),
        ("one side 22 1/2 degrees", ["one", "side", "<angle>"]),
        ("what is that in twelve", ["what", "is", "that", "in", "twelve"]),
    ],
)
def test_numbers_leave_their_kind_in_a_phrasing(example: str, parts: list[str], phrasings: Phrasings) -> None:
    found = phrasings.parts(example)
    assert [part.text if isinstance(part, Word) else f"<{part.name}>" for part in found] == parts


def test_every_topic_can_be_said(phrasings: Phrasings) -> None:
    topics = {rule.topic for _, rule in phrasings.book.topics() if rule.examples}
    assert {phrasing.topic for phrasing in phrasings.all} == topics


def test_what_is_drawn_is_said_in_words(phrasings: Phrasings) -> None:
    drawn = sentences(phrasings, lambda word: word.replace("'", "").isalpha(), 400)
    assert len(drawn) > 300
    assert not any(character.isdigit() for sentence in drawn for character in sentence)
    assert not any(" a a " in f" {sentence} " or " a eight" in sentence for sentence in drawn)


def test_drawing_is_the_same_each_time(phrasings: Phrasings) -> None:
    phrasing = Phrasing("rake return", (Word("rake"), Word("return"), Ref("pitch", 0)))
    assert [phrasings.sentence(phrasing, Random(3)) for _ in range(2)].count("") == 0
    assert phrasings.sentence(phrasing, Random(3)) == phrasings.sentence(phrasing, Random(3))


def test_a_colour_levels_and_never_leaves_silence() -> None:
    quiet = array("h", [100 + (400 if n % 50 < 25 else -400) for n in range(4000)]).tobytes()
    assert peak(quiet) == 400
    assert peak(coloured(quiet, Colour(16))) == pytest.approx(16_000, rel=0.01)
    noise = array("h", coloured(bytes(8000), Colour(16)))
    assert 0 < max(map(abs, noise)) <= 16


def test_the_folder_may_be_another(tmp_path: Path) -> None:
    for name in ("quantities", "words"):
        source = Path(__file__).parents[2] / "grammars" / f"{name}.jsgf"
        (tmp_path / source.name).write_text(source.read_text("utf-8"), "utf-8")
    (tmp_path / "boat.jsgf").write_text(
        "#JSGF V1.0 UTF-8 en;\ngrammar boat;\nimport <quantities.*>;\n"
        "/** @topic boat\n * @example boat 12 feet long\n */\npublic <boat> = boat <length> long;\n",
        "utf-8",
    )
    drawn = sentences(Phrasings(tmp_path), str.isalpha, 20)
    assert drawn and all(sentence.startswith("boat ") and sentence.endswith(" long") for sentence in drawn)
