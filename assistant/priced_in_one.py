"""What all of it costs, asked in the one line that tells what is needed and the price of each: 22 by 9 wall, 7 exposure, 16 ft
boards, 24.50 a board, cost?

What is needed is counted first, without the price; then that count is priced, as it is when the price comes a line later.
"""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from assistant.price_kept import COUNTED, price_the_count
from assistant.record import Record, become, blank
from assistant.said_over import places_of
from assistant.told_round import put_back, state_of
from intents.expressions import expression
from solvers.quantities import Length, Money, Number

if TYPE_CHECKING:
    from assistant.conversation import Conversation

_ASKED = expression(
    r"[,.;]?\s*(?:\b(?:and|so|then)\s+)?(?:\bwhat(?:['’]?s| is| are| does| do| will|['’]ll)?\b\s*)?"
    r"(?:\b(?:the|my|our|total|all|it|that|they|them|i|we|this|me|us|would|be|looking at)\b\s*)*"
    r"\b(?:costs?|pay|paying|(?:total |whole |what's the )price|"
    r"spend|spending|damage|bill|owe|run me|run us|come to|comes to|set me back|how much money)\b"
    r"(?:\s+(?:it|that|they|them|all|me|us|in|for|of|the|total|to|altogether|lot)\b)*",
    2,
)
_HOW_MUCH = expression(
    r"[,.;]?\s*\bhow much(?:\s+(?:is|are|for|will|would|do|does|it|that|they|i|we|all|the lot|be)\b)*\W*$"
    r"|^\W*(?:and |so )*how much (?:is|are|for|will|would|do|does)\b(?:\s+(?:it|that|they|be|for)\b)*",
    2,
)
_EACH = expression(
    r"\s*(?:dollars|bucks|quid|euros?|pounds)?\s*"
    r"(?:each|apiece|a piece"
    r"|(?:an?|per|for (?:each|an?)|every)\s+(?P<noun>board|stick|length|piece|panel|roll|tube|sheet|plank|one)s?)\b",
    2,
)
_LEAD = expression(
    r"(?:[,;]?\s*(?:and|with)?\s*(?:\b(?:boards?|sticks?|lengths?|panels?|rolls?|tubes?|pieces|planks?|they|those|it|the|each|one)\b\s*)*"
    r"(?:['’](?:re|s)\s+|\b(?:at|for|are|is|cost|costs|costing|run|runs|go for|priced at|theyre|its)\s+)?|@\s*)[$£€]?\s*$",
    2,
)
_FITS = {
    "board": ("board", "stick"), "plank": ("board", "stick"), "stick": ("stick", "board"), "length": ("stick", "board", "length"),
    "piece": ("piece", "stick", "panel", "board"), "panel": ("panel",), "roll": ("roll",), "tube": ("tube",), "sheet": ("sheet",),
}  # fmt: skip
_COUNTS = expression(r"\bhow many\b|\bnumber of\b", 2)
_LEAST = 2  # numbers besides the price: so many at so much each is a cost by itself


def priced_in_one(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells how much is needed and what each costs, and asks what all of it does; then that is worked."""
    if c.pending is not None or not (_ASKED.search(text) or _HOW_MUCH.search(text)):
        return False
    found = _price_of(text)
    if found is None or _a_cost_already(c, text):
        return False
    rest, price, noun = found
    before = state_of(c)
    counted = "it" if noun in ("", "one") else f"{noun}s"
    for line in (rest, f"{rest}, how many {counted}") if noun not in ("", "one") else (rest,):
        trial = blank(record["heard"], record["via"], c.job, record["file"])
        c.last = None
        c.take(trial, line)
        count = _count_of(trial, noun)
        if count is not None and c.last is not None:
            become(record, trial)
            c.last.record = record
            if _COUNTS.search(text):
                _cost_beside(c, record, price, count)
            else:
                price_the_count(c, record, price, count)
            return True
        if trial["outcome"] == "asks" and trial["topic"] in COUNTED and c.pending is not None and c.pending.wanted:
            become(record, trial)
            c.pending = replace(c.pending, price=price, question=c.pending.question or trial["ask"] or "")
            return True
        put_back(c, before)
    return False


def _cost_beside(c: Conversation, record: Record, price: str, count: Record) -> None:
    """Put what all of them cost beside how many there are, where both are asked: the number is the answer."""
    counted, state, found = {**record}, state_of(c), c.last
    price_the_count(c, record, price, count)
    cost = record["answer"] if record["topic"] == "cost" else None
    put_back(c, state)
    record.update(counted)
    if found is not None:
        found.record = record
    if cost is not None:
        record["also"] = [{**cost, "name": "cost"}, *record["also"]]
        record["say"] += f" They cost {cost['text']}."


def _price_of(text: str) -> tuple[str, str, str] | None:
    """The line without its price and what asks for the cost, the price, and what it is of; None where there is not one price."""
    places = places_of(text)
    priced = [
        (place, found) for place in places
        if isinstance(place.value, Money | Number) and (found := _EACH.match(text, place.end)) is not None
    ]  # fmt: skip
    if len(priced) != 1 or len(places) <= _LEAST or not any(isinstance(p.value, Length | Number) for p in places):
        return None
    ((place, found),) = priced
    lead = _LEAD.search(text[: place.start])
    start = lead.start() if lead is not None else place.start
    rest = f"{text[:start]}, {text[found.end() :].strip(' ,.?')}"
    rest = _HOW_MUCH.sub("", _ASKED.sub(" ", rest)).strip(" ,.?;")
    return rest, f"{text[place.start : place.end]} each", (found["noun"] or "").lower()


def _a_cost_already(c: Conversation, text: str) -> bool:
    """Whether the line is a whole question of a cost as it stands: so many at so much each."""
    best = c.read(text).questions[:1]
    return any(q.topic == "cost" and "count" in q.givens and q.whole and not q.unplaced for q in best)


def _count_of(trial: Record, noun: str) -> Record | None:
    """How many of what is priced a line came to, as its answer or beside it: the sticks of the straps."""
    answer = trial["answer"]
    if trial["outcome"] != "answered" or trial["topic"] not in COUNTED or answer is None:
        return None
    lines = [answer] if noun in ("", "one") else [answer, *trial["also"]]
    fits = _FITS.get(noun, ("",))
    counts = (line for line in lines if line["unit"] == "count" and line["value"] is not None)
    return next((line for line in counts if any(one in line["name"] for one in fits)), None)
