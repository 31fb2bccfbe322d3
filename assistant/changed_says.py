"""What is said of a change: its words in the place of the old ones, what was changed before the answer, and the job's own value
where that was put right.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.acts.memory import short
from assistant.record import Record, listed, names_of, value_line
from assistant.speech import spoken
from intents.fitting import TAKEN
from intents.question import Question
from solvers.quantities import Quantity

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

NONE = ("", "no", "without", "zero")


def text_changed(last: Asked, more: Question) -> str:
    """The words of the question as changed, where the old value's words stand in them once; else as they were."""
    text = last.text
    for name, heard in more.givens.items():
        before = last.givens.get(name)
        old = getattr(before.value, "text", "").split(TAKEN)[0] if before else ""
        text = text.replace(old, heard.text) if old and text.count(old) == 1 else text
    return text


def with_what(asked: Asked, more: Question) -> str:
    """What was changed, said before the answer, since words so short may have been meant for something else."""
    called = names_of(asked.topic, asked.givens.values())
    labels = {
        name: label for name, label in called.items()
        if name in more.givens and asked.topic.parameter(name).slot.names not in called
    }  # fmt: skip
    texts = {name: value_line(asked.givens[name].value)[2].split(" (")[0] for name in labels}
    said = [f"{label} {'none' if texts[name].lower() in NONE else texts[name]}" for name, label in labels.items()]
    return spoken(f"With {listed(said, 'and')}. ") if said else ""


def correct_facts(c: Conversation, record: Record, last: Asked, more: Question) -> None:
    """A value that came from the job and was corrected is kept as corrected, and that is said."""
    if record["outcome"] != "answered":
        return
    for name, heard in more.givens.items():
        parameter, before = last.topic.parameter(name), last.givens.get(name)
        if before and before.source == "job" and parameter.slot.kept and isinstance(heard.value, Quantity):
            was = c.facts.remember(parameter.slot.kept, replace(heard.value, text=""))
            if was is not None:
                record["say"] += f" The {parameter.slot.kept} kept for this job is now {short(heard.value)}; it was {short(was)}."
