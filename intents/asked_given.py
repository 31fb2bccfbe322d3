"""What is asked for, taken for given.

"What's the exposure with 6 3/4 as the most" is no take-off of boards 6 3/4 to the weather.
"""

from __future__ import annotations

from intents.chart import Chart
from intents.question import Question

_ASKED = frozenset(("what", "which", "what's", "whats"))
_BETWEEN = frozenset("is the s should my our best right".split())
# Topics that make it, and so may be given what is allowed of it.
_MAKES = {"exposure": frozenset(("course layout", "courses to openings"))}


def asks_for_given(chart: Chart, question: Question) -> bool:
    """Whether a question asks for the very thing that its topic was given and never makes."""
    words = chart.words
    for name, makers in _MAKES.items():
        if question.topic in makers or name not in words or name not in question.givens:
            continue
        at = words.index(name) - 1
        while at > 0 and words[at] in _BETWEEN:
            at -= 1
        if at >= 0 and words[at] in _ASKED:
            return True
    return False
