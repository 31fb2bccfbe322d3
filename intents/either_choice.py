"""A choice told as one or the other: "hexagon or octagon post wrap". Neither is meant for sure, so it is asked which."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import replace
from enum import Enum

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Question
from solvers.slots import Parameter

_OR_AFTER = expression(r"\W{0,2}or (?:an? |the )?(?P<word>[a-z]+)", re.IGNORECASE)
_OR_BEFORE = expression(r"\b(?P<word>[a-z]+) or (?:an? |the )?$", re.IGNORECASE)


def either_choice(chart: Chart, questions: list[Question], topics: Mapping[str, tuple[Parameter, ...]]) -> None:
    """Put the other of two choices beside the one that was heard, as another way to mean the first question."""
    question = next(iter(questions), None)
    for parameter in topics.get(question.topic, ()) if question is not None else ():
        heard = question.givens.get(parameter.name) if question is not None else None
        if question is None or heard is None or not issubclass(parameter.kind, Enum) or not isinstance(heard.value, str):
            continue
        found = _OR_AFTER.match(chart.text[heard.end :]) or _OR_BEFORE.search(chart.text[: heard.start])
        other = _called(found["word"], parameter.kind) if found is not None else ""
        if other and other != heard.value and not question.swaps:
            question.swaps = [question.givens | {parameter.name: replace(heard, value=other, text=found["word"])}]  # type: ignore[index]


def _called(word: str, kind: type[Enum]) -> str:
    """The member of a choice that goes by a word."""
    names = (name for name, member in kind.__members__.items() if word.lower() in (name.lower(), str(member.value).lower()))
    return next(names, "")
