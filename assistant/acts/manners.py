"""Help, greetings, and the ways out of a question that was put back."""

from __future__ import annotations

from assistant.acts import Talk, act
from assistant.pending import Pending
from assistant.record import put_asked, put_noted
from assistant.say_what import examples
from solvers.quantities import Angle, Length, Percent, Pitch

# How a thing that nobody knows by heart is found on site. Common practice.
FINDING: dict[type, str] = {
    Pitch: "Hold a level so that 12 in of it lies level and measure straight up to the roof: that rise is the pitch.",
    Angle: "Set a bevel gauge to it and read the gauge against a protractor or the saw's scale.",
    Length: "A tape will tell; a close figure will do to plan with, a measured one to cut by.",
    Percent: "The maker's sheet usually says; say a figure you are willing to work with.",
}


@act("help")
def help_(talk: Talk) -> None:
    """Say what can be asked."""
    first: dict[str, str] = {}
    for family, example in examples():
        first.setdefault(family, example)
    said = "; ".join(f"{family.lower()}: “{example}”" for family, example in first.items())
    put_noted(talk.record, "help", f"Ask a job question and I answer with the working. {said[:1].upper()}{said[1:]}")


@act("greeting")
def greeting(talk: Talk) -> None:
    """Greet back."""
    put_noted(talk.record, "greeting", "Ready when you are: ask a job question")


@act("never mind")
def never_mind(talk: Talk) -> None:
    """Leave the question that was put back."""
    open_ = talk.conversation.pending
    talk.conversation.pending = None
    put_noted(talk.record, "never mind", "Left it" if open_ else "Nothing was waiting for an answer")


@act("not known")
def not_known(talk: Talk) -> None:
    """Say what the missing piece is needed for, and keep the question open."""
    pending = talk.conversation.pending
    if pending is None:
        put_asked(talk.record, "not known", "Nothing is waiting for an answer. What would you like worked out?")
        return
    put_asked(talk.record, pending.asked.topic.name if pending.asked else "not known", why_needed(pending))


def why_needed(pending: Pending) -> str:
    """What the piece that is waited for is needed for, how it is found, and the question again."""
    if not (pending.asked and pending.wanted):
        return f"Take your time: I can't tell without it. {pending.question}"
    parameter = pending.asked.topic.parameter(pending.wanted)
    how = FINDING.get(parameter.kind, "")
    return f"The answer depends on the {parameter.label}. {how} {pending.question}".replace("  ", " ")
