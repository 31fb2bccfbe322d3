"""One of the choices of the question before, said alone: "flat grain", "from the wall, I should say"."""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.choices import BUILT
from intents.expressions import expression
from intents.question import Heard, Question
from solvers.slots import Choice

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked

_SAID = expression(
    r"\W*(?:(?:and|so|ok|but|no|sorry|it['’]?s|they['’]?re|if it['’]?s|with|all|back to"
    r"|(?:say|suppose|if|what if) (?:it|that) (?:was|were|is)|make (?:it|that)|call it|the|a)\b\W*)*(?P<choice>[a-z][a-z' ]+?)"
    r"(?:,? (?:then|again|instead|i should (?:say|have said)|i meant|i mean|now|actually|rather))*\W*",
    re.IGNORECASE,
)
_HERE = expression(  # of this one, and not from here on: the fascia's square to the rake on this one
    r"^(?:and |but |so )*(?:the )?[a-z]+(?:['’]s| is) (?P<choice>[a-z ]+?) (?:on (?:this|that) one|this time|here)\W*$",
    re.IGNORECASE,
)


def choice_alone(text: str, last: Asked) -> str:
    """The choice that a line names and nothing else, where another was taken before; "" for any other line."""
    said = _SAID.fullmatch(_HERE.sub(r"\g<choice>", text))
    words = said["choice"].lower() if said else ""
    return words if any(words == str(choice.value) for _, choice in _others(last)) else ""


def choice_told(wanted: Wanted, last: Asked) -> list[Question]:
    """The last question with the choice that a change names and nothing else."""
    rest = wanted.rest
    words = rest.lower().strip(" .!?")
    found = [(name, choice) for name, choice in _others(last) if words == str(choice.value)]
    return [Question(last.topic.name, {name: Heard(choice.name, 0, len(rest), rest)}, 1.0) for name, choice in found[:1]]


def _others(last: Asked) -> Iterator[tuple[str, Choice]]:
    """The choices of the question before that were not taken, each with its parameter."""
    for parameter in last.topic.parameters:
        given = last.givens.get(parameter.name)
        taken = given.value if given is not None else parameter.default
        if issubclass(parameter.kind, Choice) and parameter.name in BUILT:  # and not what is asked, or in which unit
            yield from ((parameter.name, one) for one in parameter.kind if one is not taken)
