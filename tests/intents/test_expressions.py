"""Expressions made when first used find what `re` finds, and every one of the program's can be made."""

from __future__ import annotations

import gc
import pkgutil
import re
from importlib import import_module

import pytest
from hypothesis import given
from hypothesis import strategies as st

import assistant
import intents
from intents import expressions
from intents.expressions import expression

COUNTED = (r"(?P<n>\d+) (?:foot|feet)\b", re.IGNORECASE)


@given(st.lists(st.sampled_from(["12", "feet", "Foot", "7", "by", "it's"]), max_size=8).map(" ".join))
def test_finds_what_re_finds(text: str) -> None:
    ours, known = expression(*COUNTED), re.compile(*COUNTED)
    assert [match.span() for match in ours.finditer(text)] == [match.span() for match in known.finditer(text)]
    assert ours.sub("-", text) == known.sub("-", text)
    assert (ours.pattern, ours.flags, ours.groupindex) == (known.pattern, known.flags, known.groupindex)


def test_is_made_when_first_used_and_once(monkeypatch: pytest.MonkeyPatch) -> None:
    made: list[str] = []
    monkeypatch.setattr(expressions.re, "compile", lambda source, flags: made.append(source) or re._compile(source, flags))  # type: ignore[attr-defined]
    used, unused = expression(*COUNTED), expression("unused")
    assert made == []
    assert [bool(used.search(text)) for text in ("a 12 FOOT wall", "twelve foot")] == [True, False]
    assert made == [COUNTED[0]]
    assert unused != used


def test_a_match_knows_the_expression_it_came_by() -> None:
    feet, inches = expression(*COUNTED), expression(r"(?P<n>\d+) inch", re.IGNORECASE)
    found = feet.search("a 12 foot wall")
    assert found is not None
    assert found.re == feet
    assert found.re != inches
    assert found.re != expression(COUNTED[0])  # of other flags


def test_every_expression_of_the_program_can_be_made() -> None:
    for package in (assistant, intents):
        for module in pkgutil.walk_packages(package.__path__, f"{package.__name__}."):
            if not module.name.endswith("__main__"):
                import_module(module.name)
    held = [one for one in gc.get_objects() if type(one) is expressions._Expression]
    faults = []
    for one in held:
        try:
            re.compile(*one._made_of)
        except re.error as fault:
            faults.append(f"{one._made_of[0]}: {fault}")
    assert len(held) > 500
    assert faults == []
