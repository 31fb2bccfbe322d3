"""Lines whose own words tell what they may change, after an example of every topic: nothing of another kind is changed."""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

import pytest

from tests.neighbours import after, examples

Given = dict[str, Any]
ANGLES = ("deg", "in12", "degC", "degF", "dC", "dF")
OF_A_STICK = (
    "length", "stock", "board", "stick", "centre", "center", "spacing", "coil", "cover", "corner", "setting", "panel", "sheet",
)  # fmt: skip


def _is_money(given: Given) -> bool:
    return given["unit"] in ("money", "lb", "kg", "word")


def _is_an_angle(given: Given) -> bool:
    return given["unit"] in ANGLES or given["unit"] == "word"


def _is_a_percentage(given: Given) -> bool:
    return given["unit"] in ("percent", "word")


def _is_an_opening(given: Given) -> bool:
    return "door" in str(given["text"])


def _is_so_long(given: Given) -> bool:
    return any(word in given["name"] for word in OF_A_STICK)


def _is_a_count(given: Given) -> bool:
    return given["unit"] in ("count", "none", "word") or "window" in str(given["text"])


def _is_high(given: Given) -> bool:
    return any(word in given["name"] for word in ("height", "rise", "value", "wall", "side"))


MAY_CHANGE: dict[str, Callable[[Given], bool]] = {
    "at 4.50 each": _is_money,
    "at 22 degrees": _is_an_angle,
    "with 10 percent": _is_a_percentage,
    "with a 3 by 7 door": _is_an_opening,
    "12s": _is_so_long,
    "and one more": _is_a_count,
    "and 12 foot high": _is_high,
}


@pytest.mark.parametrize("line", MAY_CHANGE)
@pytest.mark.parametrize("topic", examples())
def test_a_line_changes_only_what_its_words_may(topic: str, line: str) -> None:
    was, now = after(examples()[topic], line)
    if now["outcome"] != "answered":
        assert now["say"]
        return
    before = [(given["name"], given["value"], given["text"]) for given in was["givens"]]
    told = [
        given for given in now["givens"]
        if given["from"] == "asked" and (given["name"], given["value"], given["text"]) not in before
    ]  # fmt: skip
    assert all(MAY_CHANGE[line](given) for given in told), f"{now['say']} {told}"
