"""A quantity that is said twice, or that counts what is still to do: it asks for no place of its own."""

from __future__ import annotations

from collections.abc import Mapping

from intents.chart import Chart
from intents.lengths import FOOTERS
from intents.question import Heard
from intents.reading import Reading
from solvers.quantities import Length, Pitch, Quantity, Ratio

SURE = 0.9  # of a length whose unit was said
STEM = 4  # letters in which the forms of a word are alike: sides and sided


def said_again(chart: Chart, reading: Reading, givens: Mapping[str, Heard]) -> bool:
    """Whether a quantity without a place is one that has its place, said again in the same words ("seven sides … a seven
    sided box"), or counts what is still to do ("twelve more rafters")."""
    if reading.kind == "number" and chart.words[reading.end : reading.end + 1] == ["more"]:
        return True
    if isinstance(reading.value, Length) and not FOOTERS.isdisjoint(chart.words[reading.start : reading.end + 1]):
        told = (heard.value for heard in givens.values() if isinstance(heard.value, Length))
        return any(length.to("ft").value == reading.value.to("ft").value for length in told)  # 12 footers: stock is 12 ft
    if isinstance(reading.value, Pitch):  # on a 5 pitch, five in twelve that is
        pitches = [heard.value for heard in givens.values() if isinstance(heard.value, Pitch)]
        if any((pitch.value, pitch.unit) == (reading.value.value, reading.value.unit) for pitch in pitches):
            return True
    said = chart.said(reading.start, reading.end).lower()
    same = [heard for heard in givens.values() if heard.text.lower() == said and isinstance(heard.value, Quantity)]
    stated = reading.kind == "length" and reading.sure >= SURE
    if same and _parts_of_one(chart, reading):
        return False  # front 44 ft and back 44 ft are two
    if reading.kind not in ("number", "length") or (stated and same):
        return bool(same) or _same_ratio(chart, reading, givens)
    word = _next_word(chart, chart.tokens[reading.end - 1].end)
    return word.isalpha() and any(_next_word(chart, heard.end) == word for heard in same)


def _parts_of_one(chart: Chart, reading: Reading) -> bool:
    """Whether a length is one of the parts that an amount was told in."""
    before = (r for row in chart.readings[: reading.start + 1] for r in row if r.kind in ("runs", "areas"))
    return any(whole.end >= reading.end for whole in before)


def _same_ratio(chart: Chart, reading: Reading, givens: Mapping[str, Heard]) -> bool:
    """Whether a ratio that has its place is said again in other words: 1 in 300, ratio 1/300."""
    said = {r.value.value for r in chart.readings[reading.start] if r.end == reading.end and isinstance(r.value, Ratio)}
    return any(isinstance(heard.value, Ratio) and heard.value.value in said for heard in givens.values())


def _next_word(chart: Chart, after: int) -> str:
    """The beginning of the word after a place in the text; "side" of both sides and sided."""
    return next((token.text[:STEM] for token in chart.tokens if token.start >= after), "")
