"""Changes of the question before: for every topic's example, for lists and sums, and what is never answered again unchanged."""

from __future__ import annotations

from fractions import Fraction
from typing import Any

import pytest

from assistant.conversation import Conversation
from assistant.say_what import examples
from solvers.quantities import Quantity
from tests.talking import last

UNITS = {"in": "inches", "ft": "feet", "mm": "mm", "deg": "degrees", "percent": "percent", "ft2": "square feet",
         "degF": "F", "money": "dollars", "lb": "pounds"}  # fmt: skip
FORMS = ["no, {value}", "I said {value}", "make the {name} {value}", "and at {value}?", "{value} instead", "{value} I said"]
# "and at 48?" after "45 boards at $12.50" is the price, as it was said after the same word; after a saw, another cut; of what
# is so far apart, how far.
LED_ALIKE = {("can my saw cut it", "limit"), ("cost", "count"), ("height of courses", "count"), ("strapping", "length"),
             ("strapping", "height"), ("fasteners", "rows")}  # fmt: skip


def givens(record: dict[str, Any]) -> dict[str, str]:
    return {row["name"]: row["text"] for row in record["givens"] if row["from"] != "assumed"}


def another(value: Quantity) -> tuple[str, Fraction] | None:
    """A value near another, as it would be said."""
    if value.value.denominator != 1 or value.value <= 0:
        return None
    if value.unit == "in12":
        return f"{value.value + 1} in 12", value.value + 1
    new = value.value + max(1, value.value // 12)
    bare = value.text.isdecimal() or value.unit == "count"
    return (f"{new}" if bare else f"{new} {UNITS[value.unit]}", new) if bare or value.unit in UNITS else None


@pytest.mark.parametrize("form", FORMS)
@pytest.mark.parametrize("example", [example for _, example in examples()])
def test_any_given_of_any_topic_changed_is_changed_alone_or_asked_about(example: str, form: str) -> None:
    for name in list(asked(example)[1]):
        conversation, before = asked(example)
        assert conversation.last is not None
        topic, new = conversation.last.topic, another(before[name])
        if new is None or (form.startswith("and at") and (topic.name, name) in LED_ALIKE):
            continue
        line = form.format(value=new[0], name=topic.parameter(name).label)
        record = conversation.answer(line)
        if record["outcome"] != "answered":
            continue
        assert record["topic"] == topic.name, line
        now = {key: given.value for key, given in conversation.last.givens.items()}
        changed = {key for key in before if now[key].value != before[key].value}
        assert changed == {name} and now[name].value == new[1], line


def asked(example: str) -> tuple[Conversation, dict[str, Quantity]]:
    """A conversation with this question answered, and the quantities it was given."""
    conversation = Conversation()
    answered = conversation.answer(example)["outcome"] == "answered" and conversation.last is not None
    known = conversation.last.givens if answered and conversation.last else {}
    return conversation, {n: g.value for n, g in known.items() if g.source != "assumed" and isinstance(g.value, Quantity)}


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (["nail length, 20 mm siding over 25 mm straps and 11 mm ply, 40 mm into the stud", "make the straps 38"], 109),
        (["build-out with 7/16 sheathing, 3/4 strapping, 5/8 siding", "the strapping's 3/8 now"], 1.4375),
        (["build-out with 7/16 sheathing, 3/4 strapping, 5/8 siding", "make the battens 1 1/2"], 2.5625),
        (["build-out with 7/16 sheathing, 3/4 strapping, 5/8 siding", "swap the strapping for 3/8 mesh"], 1.4375),
        (["build-out with 7/16 sheathing, 3/4 strapping, 5/8 siding", "and add 2 inches of foam"], 3.8125),
        (["screw length, 5/8 cladding, 1/2 ply, 1 1/4 into the stud", "what if I add 3/4 battens?"], 3.125),
        (["wall area 40 by 10, three windows 4 by 3", "and a door 3 by 7"], 343),
        (["wall area 40 by 10, three windows 4 by 3 and a door 3 by 7", "the windows are 4 by 4"], 331),
        (["wall area 40 by 10, three windows 4 by 3 and a door 3 by 7", "no door"], 364),
        (["cut list 12 foot stock, four at 50 and six at 31", "I said 13 not 31"], 2),
        (["cut list 12 foot stock, ten at 50", "make it five of them"], 3),
        (["3 foot 7 1/4 plus 5 foot 2 3/8", "no, 5 foot 3 3/8"], 106.625),
        (["a third of 9 foot 4", "no, 9 foot 9"], 39),
        (["convert 38 mm to inches", "and 89?"], 89 / 25.4),
        (["how much is 12 feet in metres", "and 16 feet?"], 4.8768),
        (["add 900 and 645 mm", "less 45"], 1500 / 25.4),
        (["how much does a 6 inch sill fall at 8 degrees", "and at 12?"], 1.27534),
        (["polygon of 6 sides", "eight I said"], 22.5),
        (["diagonal of 14 by 50 foot", "I said fifteen not fifty"], 246.2194),
        (["ladder bearing at 14 feet how far out", "sixteen I said, sixteen feet"], 48),
        (["mitre for a hundred and twenty degree corner", "no, a hundred and fourteen, one four"], 33),
        (["squares for 900 square feet", "no waste"], 9),
        (["sticks for 80 feet of trim in 12 foot stock", "whoops, 18 feet not 80"], 2),
        (["sheathing is 1/2 inch and the strapping is 3/4", "with 3/4 cladding on top what's the build-out"], 2),
        (["cost of 30 sticks at 18.50 each", "other place wants 17.25 a stick"], 517.5),
        (["end gap for 12 ft PVC at 60 F, hottest 110, coldest 0", "and if I hang it at 110?"], 0),
        (["how far up does a 6/12 go in 5 foot 4", "seven foot 4 I mean the other one's 7 foot 4"], 44),
    ],
)
def test_what_was_said_in_a_list_or_a_sum_or_with_its_unit_is_changed(lines: list[str], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    got = record["answer"]["value"] / (25.4 if record["answer"]["unit"] == "mm" and value < 100 else 1)
    assert got == pytest.approx(value, abs=1 / 16) or record["answer"]["text"].startswith(f"{value}")


@pytest.mark.parametrize(
    "lines",
    [
        ["3 foot 7 1/4 plus 5 foot 2 3/8", "I meant 6 foot"],
        ["build-out with 7/16 sheathing, 3/4 strapping, 5/8 siding", "no, half inch"],
        ["build-out with 7/16 sheathing, 3/4 strapping, 5/8 siding", "and with 2 inch foam"],
        ["add 5 3/8 and 5 7/16", "no, 5 5/8"],
        ["end gap for 12 ft vinyl, it's 40F now, hottest 110F, coldest -10F", "no, 43 F"],
        ["frost tonight? low 28F dew point 30F", "no, 32 F"],
    ],
)
def test_a_number_whose_place_cannot_be_told_is_asked_about(lines: list[str]) -> None:
    assert last(*lines)["outcome"] == "asks"


def test_a_change_is_made_to_what_was_changed_before() -> None:
    record = last("build-out with 7/16 sheathing, 3/4 strapping, 5/8 siding", "make the strapping 3/8", "and the siding 3/4")
    assert record["answer"]["value"] == pytest.approx(0.4375 + 0.375 + 0.75)
    record = last("convert 38 mm to inches", "and 64?", "and 89?")
    assert record["answer"]["value"] == pytest.approx(89 / 25.4)
