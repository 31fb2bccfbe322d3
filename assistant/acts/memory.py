"""Remember and recall: values said once for the job."""

from __future__ import annotations

from typing import Any

from assistant.acts import Talk, act
from assistant.record import listed, put_asked, put_noted, value_line
from solvers.quantities import Angle, Length, Percent, Pitch

UNKNOWN = "Nothing is remembered for this job yet"


@act("remember")
def remember(
    talk: Talk,
    pitch: Pitch | None = None,
    saw_limit: Angle | None = None,
    stock_length: Length | None = None,
    exposure: Length | None = None,
    stud_spacing: Length | None = None,
    kerf: Length | None = None,
    overhang: Length | None = None,
    waste: Percent | None = None,
) -> None:
    """Keep a value for this job: pitch, saw limit, stock length, exposure, stud spacing, kerf, overhang, waste."""
    said: dict[str, Any] = {
        "pitch": pitch, "saw limit": saw_limit, "stock length": stock_length, "exposure": exposure,
        "stud spacing": stud_spacing, "kerf": kerf, "overhang": overhang, "waste": waste,
    }  # fmt: skip
    known = {name: value for name, value in said.items() if value is not None}
    if not known:
        put_asked(talk.record, "remember", "What is it? Say it with its value, like “the roof is 5 in 12”.")
        return
    for name, value in known.items():
        talk.conversation.facts.remember(name, value)
    put_noted(talk.record, "remember", f"Kept for this job: {listed(lines(known), 'and')}")


@act("recall")
def recall(talk: Talk, what: str = "") -> None:
    """Read back what the job knows, all of it or one value."""
    values = talk.conversation.facts.values
    wanted = [name for name in values if name in talk.text.lower() or name.split()[0] in talk.text.lower()]
    chosen = {name: values[name] for name in (wanted or values)}
    put_noted(talk.record, "recall", f"For this job: {listed(lines(chosen), 'and')}" if chosen else UNKNOWN)


def lines(known: dict[str, Any]) -> list[str]:
    """Remembered values as people read them."""
    return [f"{name} {value_line(value)[2]}" for name, value in known.items()]
