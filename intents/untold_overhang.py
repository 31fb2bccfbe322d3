"""A length far too long to be taken for an overhang with no word that says so: "the old ones were rotten for eight feet up"."""

from __future__ import annotations

from intents.chart import Chart
from intents.question import Question
from intents.remarks import STOPS
from intents.second_reader import places_of
from solvers.quantities import Length

LONGEST = 30  # in; so much a roof may overhang with no word told of it
# Of what sticks out past a wall.
_TOLD = frozenset(
    "overhang overhangs overhanging oh hang hangs past over beyond out outside outboard eave eaves tail tails sail sails sailing"
    " stick sticks sticking oversail oversails project projects projecting projection soffit lookout lookouts run runs flying"
    " fly verge longer".split()
)


def untold_overhang(chart: Chart, question: Question) -> list[str]:
    """The overhang of a question that no word of its clause tells, as it was said."""
    heard = question.givens.get("overhang")
    if heard is None or heard.end <= heard.start or not isinstance(heard.value, Length) or heard.value.to("in").value <= LONGEST:
        return []
    start, end = places_of(chart, heard)
    words = chart.words
    first = max((at + 1 for at in range(start) if words[at] in STOPS), default=0)
    last = next((at for at in range(end, len(words)) if words[at] in STOPS), len(words))
    return [heard.text] if _TOLD.isdisjoint(words[first:last]) else []
