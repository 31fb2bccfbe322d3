"""Numbers heard as other words: spelt as a recogniser may write them, they read as the same value, or are left in doubt."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from intents.matcher import otherwise
from intents.measures import readings
from intents.sound_alikes import settled
from intents.tokens import tokenize
from solvers.quantities import Quantity
from tests.intents.spoken import whole

SOUNDS = {"two": ["to", "too"], "four": ["for", "fore"], "eight": ["ate"], "one": ["won"], "forty": ["for tea"],
          "fourteen": ["for teen"], "eighteen": ["ate teen"], "eighty": ["ate tea"], "sixteen": ["six teen"]}  # fmt: skip
# Sentences a number is said in, as the trade does; {} is the number in words.
FRAMES = [
    "how many squares for {} square feet with ten percent waste",
    "the wall is {} feet long and nine feet high",
    "miter for a {} degree corner",
    "a corner of {} degrees",
    "sticks for {} feet of trim",
    "the gable is {} foot wide",
    "{} inches wide and ten feet long",
    "rise is {} inches over a run of ten feet",
    "roll laps {} inches",
    "twelve foot {} inches high",
    "a frame ten by {}",
    "a frame {} by ten",
    "the {} walls of the shed",
    "{} and a half inch face",
    "{} percent open",
    "minus {} celsius",
    "{} at sixty six and a half out of sixteen foot stock",
    "{} dozen boards",
    "{} pounds each",
]


def said(text: str) -> str:
    return " ".join(token.text for token in settled(tokenize(text)).tokens)


def values(text: str) -> list[tuple[Fraction, str]]:
    """The quantities of a text, the longest at each place, the surest first."""
    rows, found, at = readings(settled(tokenize(text)).tokens), [], 0
    while at < len(rows):
        plain = [row for row in rows[at] if isinstance(row.value, Quantity)]
        if plain:
            best = max(plain, key=lambda row: (row.end, row.sure))
            found.append((best.value.value, best.value.unit))
            at = best.end
        else:
            at += 1
    return found


@settings(max_examples=3000)
@given(st.sampled_from(FRAMES), st.integers(1, 199), st.randoms(use_true_random=False))
def test_a_number_heard_as_other_words_reads_the_same_or_is_doubted(frame: str, number: int, chance: object) -> None:
    plain = whole(number)
    heard = re.sub(r"[a-z]+", lambda m: chance.choice(SOUNDS.get(m.group(), [m.group()])), plain)  # type: ignore[attr-defined]
    sentence = frame.format(heard)
    if values(sentence) != values(frame.format(plain)):
        others = [values(other) for other in otherwise(sentence)]
        assert values(frame.format(plain)) in others, (sentence, values(sentence), others)


@given(st.sampled_from(FRAMES), st.integers(1, 199))
def test_a_number_said_plainly_stays(frame: str, number: int) -> None:
    sentence = frame.format(whole(number))
    assert said(sentence) == " ".join(token.text for token in tokenize(sentence))
    assert otherwise(sentence) == []


@pytest.mark.parametrize(
    "text",
    [
        "screws for the corner",
        "back to the wall",
        "ten to twelve",
        "exposure from six to seven",
        "exposure from sixty to seventy mm",
        "screw for 3 / 4 siding",
        "sticks for 12 foot stock",
        "two to four feet",
        "cut to 45",
        "miter for a corner",
        "convert thirty feet to inches",
        "1219 mm to inches",
        "what is it for",
        "check for square",
        "to square up a floor",
        "how long is it to the ridge",
        "it is too long",
        "ten percent for waste",
        "who ate lunch",
        "we won",
        "stop for tea",
        "four pieces at thirty inches",
        "two windows and a door",
        "from wall to wall",
        "boards for twelve courses",
        "six for every twelve",
        "moisture goes from six to ten percent",
        "ready to cut",
        "i have to go at noon",
        "straps for sixteen inch centres",
        "need to know the run",
        "vent ratio one to three hundred",
        "space for two windows",
        "i am used to degrees",
        "5 feet to kilograms",
        "1200 sq ft to cover",
        "what would 37 lengths come to at 14.20 each",
        "100 sq ft to square metres",
        "same again for twelve twelve",
    ],
)
def test_small_words_stay_what_they_are(text: str) -> None:
    assert said(text) == text
    assert otherwise(text) == []


@pytest.mark.parametrize(
    ("text", "meant"),
    [
        ("take to and five ates off ate foot", "take two and five ates off eight foot"),
        ("the to end ones", "the two end ones"),
        ("ate hundred and sixty to square feet", "eight hundred and sixty two square feet"),
        ("laps for inches eleven hundred square feet", "laps four inches eleven hundred square feet"),
        ("a door three by six ate", "a door three by six eight"),
        ("corner won thirty five degrees", "corner one thirty five degrees"),
        ("through three ate mesh", "through three eighths mesh"),
        ("a hundred and for tea feet", "a hundred and forty feet"),
        ("miter four a corner", "miter for a corner"),
        ("what do i set the saw two", "what do i set the saw to"),
        ("nail four three quarter siding", "nail for three quarter siding"),
        ("exposure from six two seven", "exposure from six to seven"),
        ("fore and aft", "fore and aft"),
        ("is a too by six ok", "is a two by six ok"),
        ("roof is for in twelve", "roof is four in twelve"),
        ("1219 mm too inches", "1219 mm to inches"),
    ],
)
def test_told_by_the_words_beside_it(text: str, meant: str) -> None:
    assert said(text) == meant


@pytest.mark.parametrize(
    "text",
    [
        "can it cut fifty too",
        "forty for twelve foot boards",
        "twelve foot to inches",
        "need forty to twelve inch pickets",
        "the cut is thirty too",
        "paid sixty for boards",
    ],
)
def test_where_both_can_be_meant_both_are_kept(text: str) -> None:
    assert said(text) == text
    assert len(otherwise(text)) == 1


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        ("what do i read corner two corner", "corner to corner"),
        ("the diagonal comes two fourteen foot five", "comes to fourteen foot five"),
        ("what radius do i need two swing it", "need to swing it"),
    ],
)
def test_two_that_is_the_small_word(said: str, meant: str) -> None:
    assert meant in " ".join(token.text for token in settled(tokenize(said)).tokens)


@pytest.mark.parametrize(
    "line", ["it climbs for foot six on an eight twelve", "rises for foot nine, ten twelve", "for foot 3 of run"]
)
def test_for_before_a_foot_and_its_inches_is_a_four(line: str) -> None:
    read = settled(tokenize(line))
    assert "four" in [token.text for token in read.tokens] and not read.doubts
