"""Which size of a soffit is which: a 16 inch panel and a 20 inch overhang, an eave 18 inches deep, a panel of 12 ft."""

from __future__ import annotations

from intents.chart import Chart
from intents.question import Heard, Question
from intents.second_reader import places_of

LONGEST_PANEL = 20  # ft; no panel is sold longer
_COVERS = frozenset("cover covers covered covering coverage weather lays lay shows".split())
_NOT_OF_PANEL = frozenset(", . ; ? deep and for of".split())
_DEEP = frozenset(("deep", "depth", "overhang"))
_WIDE, _PANELS = frozenset(("wide", "width")), frozenset("panel panels piece pieces board boards ones".split())


def soffit_told(chart: Chart, question: Question) -> None:
    """Leave only the ways in which a panel could be bought; what each costs is no length.

    With no depth said, a width that no word tells to be what a panel covers may be the depth.
    """
    run, depth, cover = (question.givens.get(name) for name in ("run", "depth", "cover"))
    if depth is not None and cover is not None and _is_panels(chart, depth) and not _is_panels(chart, cover):
        question.givens |= {"depth": cover, "cover": depth}  # a 16 inch panel, 20 inch overhang
        question.swaps = []
    deep = run is not None and run.end > run.start and not _DEEP.isdisjoint(chart.words[places_of(chart, run)[1] :][:1])
    if deep and "depth" not in question.givens:
        question.givens["depth"] = question.givens.pop("run")
        question.missing, question.swaps = ["run"], []
    if cover is not None and "depth" not in question.givens and cover.end > cover.start:
        start, end = places_of(chart, cover)
        before, after = chart.words[max(0, start - 4) : start], chart.words[end : end + 3]
        of_panel = not _PANELS.isdisjoint(after[:2]) and _NOT_OF_PANEL.isdisjoint(after[:1])
        wide = of_panel or not (_WIDE.isdisjoint(after[:1]) or _PANELS.isdisjoint([*before[-1:], *after[1:2]]))
        if not wide and _COVERS.isdisjoint(before + after):
            question.lacking = question.lacking or 1
    length = question.givens.get("panel_length")
    if length is not None and _at_each(chart, length):
        del question.givens["panel_length"]
        question.unplaced = [*question.unplaced, length.text]
    ways = [question.givens, *question.swaps]
    sold = [way for way in ways if "panel_length" in way and way["panel_length"].value.to("ft").value <= LONGEST_PANEL]
    if sold and len(sold) < len(ways):
        question.givens, question.swaps = sold[0], sold[1:]


def _is_panels(chart: Chart, heard: Heard) -> bool:
    """Whether a panel is said right after a size that nothing before it names: a 16 inch panel; not depth 18, panel cover 12."""
    start, end = places_of(chart, heard) if heard.end > heard.start else (0, 0)
    after = chart.words[end : end + 2]
    named = not {"depth", "deep", "overhang", "cover", "covers"}.isdisjoint([*chart.words[max(0, start - 2) : start], *after])
    return end > 0 and after[:1] in (["panel"], ["panels"]) and not named


def _at_each(chart: Chart, heard: Heard) -> bool:
    """Whether a number is a price: at 3.66 each."""
    said = [token.text for token in chart.tokens if token.end <= heard.start][-1:]
    after = [token.text for token in chart.tokens if token.start >= heard.end][:1]
    return said == ["at"] and after in (["each"], ["apiece"], ["ea"])
