"""Sums as people say and type them, against trees written out and against arithmetic done apart."""

from __future__ import annotations

import random
from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from intents.grammars import FOLDER
from intents.jsgf import read_grammar
from intents.measures import readings
from intents.sum_orders import AS_SPOKEN, SIGNS_FIRST
from intents.sums import sums
from intents.tokens import tokenize
from solvers.quantities import Length
from solvers.sums import Part, Sum, in_millimetres, with_units
from tests.intents.spoken import sample

GRAMMAR = read_grammar(FOLDER / "quantities.jsgf")


def read(text: str) -> list[Sum]:
    tokens = tokenize(text)
    return [reading.value for reading in sums(tokens, readings(tokens))]  # type: ignore[misc]


def tree(part: Part | None) -> str:
    if part is None:
        return "?"
    if isinstance(part, Sum):
        return f"({tree(part.left)} {part.operation} {tree(part.right)})"
    value = part.to("in").value if isinstance(part, Length) else part.value
    return f"{value}{'in' if isinstance(part, Length) else ''}"


@pytest.mark.parametrize(
    ("said", "expected"),
    [
        ("12'6 3/8\" + 3'4 1/2\"", "(1203/8in + 81/2in)"),
        ("seven foot three and five eighths plus two foot nine", "(701/8in + 33in)"),
        ("half of 10 5/8 inches", "(85/8in ÷ 2)"),
        ("a third of eight foot one", "(97in ÷ 3)"),
        ("two thirds of 9 feet", "(2/3 × 108in)"),
        ("take three sixteenths off 4 foot 2 and an eighth", "(401/8in − 3/16)"),
        ("add 5.75 inches to 3 ft 2 1/4 in", "(153/4in + 23/4in)"),
        ('9 3/16" and 11 7/8" together', "(147/16in + 95/8in)"),
        ("divvy 13'-4 1/2\" by 3", "(321/2in ÷ 3)"),
        ("whats left of a 16 footer after i cut 61 and three ates off it", "(192in − 491/8)"),
        ("if I cut 3 foot 4 off a 12 footer how much is left", "(144in − 40in)"),
        ("I measured 43.625 inches and need to add 1.5 inches", "(349/8in + 3/2in)"),
        ("12 foot 6 and I have to take 3 foot 4 off that", "(150in − 40in)"),
        ("from 13 foot 5 deduct 2 foot 11 and a half", "(161in − 71/2in)"),
        ("the board was cut at 94 1/4 inches, take 2 inches off it", "(377/4in − 2in)"),
        ("the opening is 36 1/4 inches and I need half of it", "(145/4in ÷ 2)"),
        ("3/8 less than 4 foot 2", "(50in − 3/8)"),
        ("half of it", "(? ÷ 2)"),
        ("double that", "(? × 2)"),
        ("one side is 96 1/4 inches and the other 96 5/8, what's the difference", "(773/8 − 385/4in)"),
        ("14 1/2 inches, 22 3/8 and 9 1/16, add them up", "((29/2in + 179/8) + 145/16)"),
        ("opening 36 3/8, a quarter inch each side, half inch in all, so 36 3/8 minus 1/2", "(291/8 − 1/2)"),
        ('(12\'6" − 7") ÷ 4', "((150in − 7in) ÷ 4)"),
        ("the difference between 7 foot and 8 foot", "(96in − 84in)"),
        ("twice 7 3/8 inches", "(2 × 59/8in)"),
        ("12 foot 6 plus", "(150in + ?)"),
        ("take three eighths off", "(? − 3/8)"),
        ("plus another 4 and 3 eighths", "(? + 35/8)"),
        ("add 3 1/2 in, 4 1/4 in and 6 inches", "((7/2in + 17/4in) + 6in)"),
        ("12'6\" divided in half", "(150in ÷ 2)"),
    ],
)
def test_a_sum_is_read_as_said(said: str, expected: str) -> None:
    assert [tree(found) for found in read(said)] == [expected]


@pytest.mark.parametrize(
    "said",
    [
        "half an inch of foam",
        "3/8 of an inch",
        "12-6",
        "wall 32 by 9 with two windows 3 by 4",
        "5 in 12",
        "2 x 4 wall",
        "7/0",
        "7 1/2",
    ],
)
def test_what_is_no_sum_is_not_read_as_one(said: str) -> None:
    assert read(said) == []


def test_the_order_taken_is_said_and_the_other_kept() -> None:
    (typed,) = read("96 in + 12 in × 3")
    assert (tree(typed), typed.rule) == ("(96in + (12in × 3))", SIGNS_FIRST)
    assert typed.other is not None and tree(typed.other) == "((96in + 12in) × 3)"
    (spoken,) = read("eight feet plus one foot times three")
    assert (tree(spoken), spoken.rule) == ("((96in + 12in) × 3)", AS_SPOKEN)
    (together,) = read("ninety six inches minus two times three and a half inches")
    assert (tree(together), together.rule) == ("(96in − (2 × 7/2in))", "")


def test_feet_dash_inches_with_spaces_keeps_both_meanings() -> None:
    tokens = tokenize("12' - 3\"")
    (reading,) = sums(tokens, readings(tokens))
    meant = {tree(value) for value in (reading.value, *reading.also)}  # type: ignore[arg-type]
    assert meant == {"(144in − 3in)", "(144in + 3in)"}


SIGN = {"+": Fraction.__add__, "-": Fraction.__sub__}
EIGHTHS = st.integers(1, 800).map(lambda n: Fraction(n, 8))


def written(value: Fraction) -> str:
    whole, rest = divmod(value, 1)
    return f'{whole} {rest}"' if rest and whole else f'{value}"'


@given(st.lists(st.tuples(st.sampled_from("+-"), EIGHTHS), min_size=1, max_size=6), EIGHTHS)
def test_typed_sums_come_to_what_arithmetic_says(more: list[tuple[str, Fraction]], first: Fraction) -> None:
    expected, text = first, written(first)
    for sign, value in more:
        expected, text = SIGN[sign](expected, value), f"{text} {sign} {written(value)}"
    (found,) = read(text)
    assert in_millimetres(with_units(found, "in")) == expected * Fraction("25.4")


def test_every_sentence_of_the_grammar_is_read_as_a_sum() -> None:
    rng = random.Random(4)
    for _ in range(300):
        text = sample(GRAMMAR, GRAMMAR.rules["sum"].body, rng)
        tokens = tokenize(text)
        length = any(r.kind == "length" and r.end == len(tokens) for r in readings(tokens)[0])  # half of a foot is one
        assert read(text) or length, text
