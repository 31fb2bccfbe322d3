"""Waste that is in the sum already ("the waste's in there", "waste included"), or that is not wanted in it ("don't add anything",
"before waste", "I'll add the waste myself"). None is to be added."""

from __future__ import annotations

from collections.abc import Iterable
from fractions import Fraction

from intents.chart import Chart
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.quantities import Percent
from solvers.slots import Parameter

_WASTE = frozenset(("waste", "wastage"))
_SMALL = frozenset("is are already all was has been it's".split())
_TOLD = (("included",), ("in", "there"), ("in", "it"), ("in", "that"), ("built", "in"), ("allowed",))
WITHIN = 6  # words after the waste
_WORDS = _WASTE | frozenset("add adding added anything nothing allow allowing offcuts".split())
_WASTED = r"(?:waste|wastage|offcuts|extra|extras)"
_UNWANTED = expression(  # what is said where no waste is to be added; a "not" before it says that it is
    r"(?<!not )(?<!don't )(?<!dont )\b(?:"
    r"(?:do not|don't|dont|without|not|never) (?:add|adding|put|putting|allow|allowing|include|including|count|counting) "
    rf"(?:(?:in|on) )?(?:(?:any|the|for|anything for) )*(?:{_WASTED}|(?:anything|nothing)(?= (?:on|to|for)|[.,?!;]|$))"
    r"|add(?:ing)? (?:on )?nothing"
    rf"|(?:leave|leaving) (?:out (?:the |any )?{_WASTED}|(?:the |any )?{_WASTED} (?:out|off))"
    rf"|(?:i'll|we'll|i will|we will|i can|i) (?:add|put) (?:the |my |our |on )*(?:own )?{_WASTED}"
    rf"|(?:before|excluding|ex|ignoring|ignore|forget) (?:the |any )?{_WASTED}"
    rf"|{_WASTED} (?:aside|excluded|not included)|(?:and|with) nothing (?:over|on top|extra|for {_WASTED}))"
)


def waste_in_it(chart: Chart, question: Question, parameters: Iterable[Parameter]) -> None:
    """Give the waste as none, where the words tell that it is in what was given."""
    if "waste" in question.givens or _WORDS.isdisjoint(chart.words):
        return
    parameter = next((p for p in parameters if p.name == "waste"), None)
    if parameter is not None and (unwanted := _UNWANTED.search(chart.text.lower().replace("’", "'"))) is not None:
        question.givens["waste"] = Heard(Percent(Fraction(0), "percent", f"none: {unwanted.group()}"), 0, 0, "none")
        return
    if parameter is None or _WASTE.isdisjoint(chart.words):
        return
    at = next(i for i, word in enumerate(chart.words) if word in _WASTE)
    after = [word for word in chart.words[at + 1 : at + WITHIN] if word not in _SMALL]
    if any(tuple(after[: len(told)]) == told for told in _TOLD):
        token = chart.tokens[at]
        said = chart.text[token.start : token.end]
        question.givens["waste"] = Heard(Percent(Fraction(0), "percent", "none: it is in there"), token.start, token.end, said)
