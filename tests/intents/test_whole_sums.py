"""Which of all the sums that a sentence's lengths can make is meant."""

from __future__ import annotations

import pytest

from intents.chart import chart_of
from intents.learned import NOTHING
from intents.matcher import speller
from intents.phrases import compiled
from intents.second_sums import lengths_of, names_of
from intents.whole_sums import Candidate, Told, candidates, kinds_of, shares, worth


def told(text: str) -> Told:
    chart = chart_of(text, compiled(), speller())
    return Told(chart, lengths_of(chart))


def sums(seen: Told) -> list[Candidate]:
    return candidates(seen, [[*names_of(mention), NOTHING] for mention in seen.found], [])


@pytest.mark.parametrize(
    ("roles", "half", "inches"),
    [
        (("+", "-"), False, 7),
        (("+", "--"), False, 4),
        (("-", "+"), False, -7),
        (("+", "-"), True, 3.5),
        (("xn", "+"), False, 30),
        (("+", "xp"), False, 30),
        (("+", "/"), False, 10 / 3),
        (("+", NOTHING), False, None),  # a length alone is no sum
        (("-", "--"), False, None),
        (("xn", NOTHING), False, None),
        (("xp", "+"), False, None),
    ],
)
def test_what_the_roles_come_to(roles: tuple[str, ...], half: bool, inches: float | None) -> None:
    found = worth((10.0, 3.0), (10.0, 3.0), roles, half) if roles[0] != "xn" else worth((3.0, 10.0), (3.0, 10.0), roles, half)
    assert found == (pytest.approx(inches) if inches is not None else None)


def test_no_sum_below_nothing_is_a_candidate() -> None:
    found = sums(told("a shelf at 12 inches and a ceiling at 90 inches"))
    assert found
    assert all(each.inches > 0 for each in found)


def test_a_bare_number_is_in_the_unit_of_the_others() -> None:
    seen = told("a 3.9 m batten, take 1140 off")
    assert [size * 25.4 for size in seen.sizes] == pytest.approx([3900, 1140])
    assert told("a 4.8 m batten and 1.2 off").sizes[1] * 25.4 == pytest.approx(1200)
    assert told("a 12 foot board and 30 off").sizes == pytest.approx([144, 30])


def test_the_shares_add_up_and_follow_what_was_learned() -> None:
    seen = told("the wall is 90 inches and the door is 30 inches, how much is left")
    found = sums(seen)
    likely = shares(seen, found, {"m": {"e:LEFT": 800}, "I": {"": -900}, "H": {"": -900}, "--": {"": -900}})
    assert sum(likely) == pytest.approx(1)
    best = found[likely.index(max(likely))]
    assert best.roles == ("+", "-")
    assert "m" in kinds_of(best)
