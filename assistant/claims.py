"""What a person has or hopes for, held against the answer: "60 boards? That is enough"."""

from __future__ import annotations

import re
from fractions import Fraction
from typing import Any

from assistant.record import Record
from intents.expressions import expression
from intents.question import Claim
from solvers.quantities import Pitch, Quantity

SAME = Fraction(1, 20)  # of the answer's unit: as near as it is read off a tool
_LADDER, _FOOT = expression(r"\bladder\b|\blong\b|\breach"), expression(r"\bout\b|\baway\b|\boff\b")
_FAR_OUT = 2  # times as far as a ladder's foot has to stand out, from which on a length is the ladder's own
_BARE = ("count", "money", "in", "ft2", "in2", "square", "lb", "deg", "degF", "degC")  # what a number may be, unsaid


def hold_against(record: Record, claim: Claim | None) -> None:
    """Put into an answered record whether the quantity claimed will do, or is passed."""
    if claim is None:
        return
    words, text = _verdict(claim, _held(record, claim)), _named(record, claim.text)
    record["also"].append({"name": text, "value": None, "unit": "word", "text": words})
    record["say"] = f"{text[:1].upper()}{text[1:]}: {words}. {record['say']}"


def _named(record: Record, text: str) -> str:
    """What is claimed, with the name of what the answer counts where that was said after it: 11 sticks."""
    noun = record["answer"]["name"].split()[0]
    said = re.search(rf"\b{re.escape(text)} {re.escape(noun)}\b", record["heard"], re.IGNORECASE)
    return said[0] if said else text


def _held(record: Record, claim: Claim) -> dict[str, Any]:
    """The value that a claim is held against: the answer, but a ladder's own length against how long it has to be."""
    answer = record["answer"]
    if record["topic"] != "ladder footing" or claim.way != "enough":
        return answer  # type: ignore[no-any-return]
    clause = next((part for part in re.split(r"[,;.]", record["heard"].lower()) if claim.text.lower() in part), "")
    size = _in(claim.value, "in") if claim.value.unit != "none" else claim.value.value * 12
    of_ladder = _LADDER.search(clause) is not None and not _FOOT.search(clause)
    if not of_ladder and size is not None and size <= Fraction(str(answer["value"])) * _FAR_OUT:
        return answer  # type: ignore[no-any-return]
    return next(line for line in record["also"] if line["name"].startswith("length for 3 ft past"))


def _verdict(claim: Claim, answer: dict[str, Any]) -> str:
    value = _in(claim.value, answer["unit"])
    if value is None or answer["value"] is None:
        return "not compared, being of another kind"
    needed = Fraction(str(answer["value"]))
    if claim.way == "enough":
        return "enough" if value >= needed else "not enough"
    if claim.way == "wanted":
        return "yes, it is as much" if needed >= value else "no, it is not as much"
    if claim.way == "same":
        return "yes, that is it" if abs(value - needed) <= SAME else "no, it is not that"
    passed = needed > value if claim.way == "more" else needed < value
    return f"yes, it is {claim.way}" if passed else f"no, it is not {claim.way}"


def _in(value: Quantity, unit: str) -> Fraction | None:
    """The claimed quantity in the answer's unit; None where it is of another kind."""
    if unit in value.units and not (isinstance(value, Pitch) and value.unit != unit):  # a 6/12 is held against no degrees
        return Fraction(value.to(unit).value)
    return value.value if value.unit == "none" and unit in _BARE else None
