"""A changed or carried-on answer held to what the line itself asks for: an angle is no length, and no length a count or money.

"What angle if it only goes up 1050", of a brace whose length was asked, changes its rise and asks for another part of it. Where
what was worked is of another kind than the words ask for, the one number of the page that is of it becomes the answer; where
none is, it is asked about, and nothing is changed.
"""

from __future__ import annotations

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, cast

from assistant.also_asked import beside, said_so
from assistant.doubted_changes import OF_ANY, OF_THE_SAME
from assistant.look_for_change import READ_WITH
from assistant.puts_more import (
    faces_of_some,
    least_of_another,
    of_the_layer_put_in,
    openings_of_another,
    other_sticks,
    priced_as_a_size,
    replaced_by_more,
    size_of_an_opening,
    so_long_as_another,
    temperature_or_humidity,
    unit_of_another,
)
from assistant.record import KEPT, blank, listed, put_asked, say_first
from assistant.said_over import whole
from assistant.several import told_of
from assistant.told_round import State, put_back, state_of
from intents.expressions import expression
from intents.question import Question
from solvers.quantities import Angle, Count, Length, Number, Pitch, Quantity
from solvers.slots import Choice, Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

_LENGTHS = frozenset(("in", "ft", "mm", "cm", "m", "yd"))
_AREAS = frozenset(("ft2", "m2", "in2", "square"))
_WHAT = r"\b(?:what(?:['’]?s| is| are| was| would| will)?|which)(?: be)?(?: (?:the|its|my|that|their|a|an))?"
_MEASURED = (  # how many of these are no count
    r"(?:degrees?|inch\w*|in|feet|foot|ft|mm|mil|mils|millimet\w+|cm|met(?:re|er)s?|m|yards?|squares?|square \w+|sq\w*|percent"
    r"|pounds?|lbs?|kilos?|kgs?|kilograms?|lit(?:re|er)s?|gallons?|cubic \w+|dollars|times|more|of|twelfths?|hours?|days?"
    r"|line(?:al|ar) \w+|bucks|quid|for|to|in|if|is|are|at|per|each)"
)


@dataclass(frozen=True, slots=True)
class Kind:
    """A kind of number that a line may ask for: as it is said, the words, the units, and what it must be called."""

    said: str
    asks: re.Pattern[str]
    units: frozenset[str]
    called: str = ""  # words of which its name has one, where other numbers have its units
    first: tuple[str, ...] = ()  # of several on a page, the one that is meant

    def fits(self, line: dict[str, Any]) -> bool:
        """Whether a number of the page is of this kind."""
        named = not self.called or re.search(rf"\b(?:{self.called})", line["name"], re.IGNORECASE)
        return line["value"] is not None and line["unit"] in self.units and bool(named)


def _kind(said: str, asks: str, units: frozenset[str], called: str = "", first: tuple[str, ...] = ()) -> Kind:
    return Kind(said, expression(asks, re.IGNORECASE), units, called, first)


KINDS = (
    _kind(
        "an angle",
        rf"{_WHAT} (?:\w+ )?angle\b(?! (?:gauge|iron|cut))|\bhow many degrees\b"
        r"|^\W*(?:and|so|then) the angle (?:if|at|with|for)\b|\bwhat degrees?\b|\bin degrees\b",
        frozenset(("deg",)), first=("angle", "roof angle", "saw setting"),
    ),
    _kind("how much longer it is", r"\bhow much longer\b", _LENGTHS, "longer"),
    _kind("how far one goes", r"\bhow far (?:would|does|will|do) (?:one|each|a|the) ", _LENGTHS, "length per"),
    _kind("the radius", rf"{_WHAT} (?:\w+ )?(?:radius|raduis|radious)\b", _LENGTHS, "radius"),
    _kind(
        "the length of the curve",
        r"\bhow long(?:['’]?s| is| are| would| will|)(?: the)? (?:curve|arc|bend)\b"
        r"|\b(?:length of|along|round|around) the (?:curve|arc)\b|\bwhat(?:['’]?s| would| is| will) the (?:curve|arc)\b"
        r"|^(?!.*\b(?:what|which|whats|how|radius|raduis|if)\b).*\bthe (?:curve|arc)(?: itself)?(?: (?:with|for|at|on)\b.*)?\?",
        _LENGTHS, "arc|curve|length",
    ),
    _kind("the pitch", rf"{_WHAT} (?:\w+ )?pitch\b|\b(?:how|so) many in (?:12|twelve)\b", frozenset(("in12",))),
    _kind(
        "what it costs",
        r"\b(?:what(?:['’]?s)?|how much)\b[^.;?]*\b(?:costs?|damage|owe|to pay|set (?:me|us) back)\b|\bhow much money\b"
        r"|\b(?:the|whats the|total) (?:cost|bill|damage)\s*\?",
        frozenset(("money",)),
    ),
    _kind(
        "an area",
        rf"{_WHAT} (?:\w+ )?area\b|\bhow much (?:\w+ )?area\b|\bhow many (?:squares?|sq\.?)(?: \w+)?\b|\bsquare footage\b",
        _AREAS, first=("net area", "area", "roof area"),
    ),
    _kind(
        "squares",
        r"^\W*(?:(?:and|so|ok|now|then|but|what['’]?s|give me|put|call|make|turn) )*"
        r"(?:(?:that|it|this|the lot|all that)(?: (?:out|as))?)? ?(?:in|into|as|to) (?:roofing )?squares\b",
        frozenset(("square",)),
    ),
    _kind(
        "how many",
        rf"\bhow many (?!{_MEASURED}\b)[a-z]|\bhow many at \d"
        r"|^\W*(?:and |so )?(?:strips|pieces|flashings) (?:that (?:wide|long)|of that|of those|across|out of|from)\b",
        frozenset(("count",)),
    ),
    _kind("how high", r"\bhow (?:high|tall)\b(?! (?:can|should) )", _LENGTHS),
    _kind(
        "a length",
        r"\bhow long(?! (?:does|do|did|will|would|ago|before|until|till) )|\b(?:what|which) length\b"
        r"|\bhow many (?:feet|foot|met(?:re|er)s|line(?:al|ar) (?:feet|foot|met(?:re|er)s))\b"
        r"|^\W*(?:(?:and|so|then|ok|now|what['’]?s|whats|what is)\W+)*(?:the|its) length\b"
        r"|\btotal (?:length|feet|footage|met(?:re|er)s|line(?:al|ar) (?:feet|foot|met(?:re|er)s))\b",
        _LENGTHS, first=("slope", "sloped length"),
    ),
    _kind("the gap", rf"{_WHAT} (?:\w+ )?gap\b|\bhow (?:big|wide) (?:a|is the|are the|is each) gaps?\b", _LENGTHS),
)
_WHOLE = {("gable height", "wall"): "peak above the foot of the wall"}  # of a given, the number that has it in it
_PUTS_UNDER = expression(r"\W*(?:(?:and|so|ok|then|now)\W+)*(?:plus|add|with|including|on top of|over)\b", re.IGNORECASE)
_PUTS_RIGHT = expression(r"\W*(?:sorry|no|nope|nah|oops|whoops|wait|hang on|hold on|scratch that|i meant)\b", re.IGNORECASE)
_HOW_MANY_IF = expression(r"\bhow many (?:if|at|with|for|on)\b", re.IGNORECASE)
_ACROSS = expression(r"\bhow many\b", re.IGNORECASE)
_MANY = ("height of courses", "corner in several pieces", "equal spacing")  # of which a few are no other number of them
_OF_THOSE = expression(r"\b(?P<n>[a-z]+|\d+) of (?:those|these|them|em)\b", re.IGNORECASE)
_MAKES_IT = expression(r"\W*(?:(?:and|so|ok|okay|then|no|actually|now|well)\W+)*make (?:it|that)\b", re.IGNORECASE)
_ALSO = expression(r"\b(?:too|also|as well)\b", re.IGNORECASE)  # angle too: which takes no answer's place
_WHAT_IS = r"\bwhat(?:['’]?s| is| would| does| will)?(?: be)? the {}\b"
_NAMED_FIRST = r"\W*(?:(?:and|so|then|now|ok|n|the)\W+)*{} (?:w/|with|at|for|if)(?=\W)"  # bevel with an 88 corner
_ASKS = expression(r"\b(?:how|what|whats|which|where)\b", re.IGNORECASE)


def hold_to_what_is_asked(c: Conversation, record: Record, text: str, before: State) -> None:
    """Make the answer to a line that changed the question before, or went on from it, be of the kind that the line asks for."""
    last: Asked | None = before[1]  # type: ignore[assignment]
    now = c.last
    if record["outcome"] != "answered" or last is None or now is None or before[0] is not None or not last.record.get("answer"):
        return
    if now.record is not record:
        return
    if other := next((said for doubt in OF_ANY if (said := doubt(now, last, text))), ""):
        _ask(c, record, before, other)
        return
    if not _goes_on(now, last):
        if now.topic is not last.topic and _MAKES_IT.match(text):  # it is what was worked before
            _ask(c, record, before, f"I take that for a change of the {last.topic.name}: of what, {_givens_of(last)}?")
        return
    _across_the_coil(c, record, now, last, text)
    if c.last is None or c.last.record is not record:
        return
    now = c.last
    if doubt := _doubt(now, last, text):
        _ask(c, record, before, doubt)
        return
    with_it_all = _with_it_all(now, text)
    if (line := next((one for one in record["also"] if one["name"] == with_it_all), None)) is not None:
        _answer_with(c, record, now, line)
        return
    asked = [kind for kind in KINDS if kind.asks.search(text)]
    if asked:
        _hold_to_kinds(c, record, before, [kind for kind in asked if kind.called] or asked, text)  # a curve's is no other length
        return
    line = _called_so(record, text) or _named_choice(record, now, text) or _the_one_count(record, text)
    if line is not None:
        _answer_with(c, record, now, line)
    else:
        _as_it_was_asked(record, now, last, _just_read(c, record, now), text)


def _hold_to_kinds(c: Conversation, record: Record, before: State, asked: list[Kind], text: str) -> None:
    """Make the answer of one of the kinds asked for, where the page has such a number; ask, with nothing changed, where not."""
    now, last = cast("Asked", c.last), cast("Asked", before[1])
    fits = any(kind.fits(record["answer"]) for kind in asked)
    line = _by_its_words(record, asked, text) if fits else _of_the_page(record, asked[0], text)
    if line is not None:
        _answer_with(c, record, now, line)
    elif not fits and now.topic is last.topic:  # another topic's was read from its own words
        _ask(c, record, before, f"You ask for {asked[0].said}, and what I have gives the {record['answer']['name']}: what is the "
             f"number, {_givens_of(last)}, or of another question?")  # fmt: skip


def _givens_of(last: Asked) -> str:
    return listed(dict.fromkeys(f"the {last.topic.parameter(name).label}" for name in told_of(last)))


def _doubt(now: Asked, last: Asked, text: str) -> str:
    """What is asked about a line that one question can't hold as it was read; "" where it can."""
    if counted := _so_many_as_a_size(now, last, text):
        return f"What is “{counted}”: how many of that, or a size of it?"
    doubts = (temperature_or_humidity, priced_as_a_size, size_of_an_opening, least_of_another, openings_of_another,
              other_sticks, of_the_layer_put_in, so_long_as_another, unit_of_another, *OF_THE_SAME)  # fmt: skip
    if now.topic is last.topic and (asked := next((said for doubt in doubts if (said := doubt(now, last, text))), "")):
        return asked
    if put := replaced_by_more(now, last, text):
        return f"Is “{put}” put to what there was, or in its place? Say that line again with the whole size."
    faces = faces_of_some(now, last, text)
    return f"Is “{faces}” of every one of them? I trim them all alike: ask the others by themselves." if faces else ""


def _across_the_coil(c: Conversation, record: Record, now: Asked, last: Asked, text: str) -> None:
    """A flashing that is changed after it was counted across a coil, counted across that again: make the last leg 4, how many
    across now."""
    coil = last.givens.get("coil")
    if last.topic.name != "strips from a coil" or now.topic.name != "bent flashing" or coil is None or "coil" in now.givens:
        return
    if not _ACROSS.search(text):
        return
    changed, said = now.changed, record["say"]
    c.finish(record, [c.worked(now, {**told_of(now), "coil": Given("coil", coil.value, "earlier")})], Question(now.topic.name))
    if c.last is not None and record["outcome"] == "answered":
        c.last.changed = changed
        record["say"] = said.partition(". ")[0] + ". " + record["say"]


def _ask(c: Conversation, record: Record, before: State, question: str) -> None:
    """Ask rather than answer, with the question before as it was."""
    put_back(c, before)
    kept = {name: record[name] for name in KEPT}
    record.update(blank(record["heard"], record["via"], record["job"], record["file"]), **kept)
    put_asked(record, "follow-up", question)


def _so_many_as_a_size(now: Asked, last: Asked, text: str) -> str:
    """The words that count what was worked, where their number was taken for a size of it, or changed nothing: two of those, no
    two metres. A few of many courses are no other number of them."""
    found = _OF_THOSE.search(text)
    told = {name: given.value for name, given in now.givens.items() if given.source == "asked"}
    in_a_list = [one for value in told.values() if isinstance(value, tuple) for one in value if isinstance(one, Length)]
    sizes: list[Quantity] = [value for value in told.values() if isinstance(value, Length | Number | Angle | Pitch)]
    was = {name: given.value for name, given in last.givens.items()}
    sizes += [
        value for name, value in told.items()
        if isinstance(value, Count) and isinstance(before := was.get(name), Count) and 2 * value.value <= before.value
        and now.topic.name in _MANY
    ]  # fmt: skip
    place = whole(found["n"]) if found is not None else None
    if found is None or place is None:
        return ""
    answer, before_it = now.record.get("answer"), last.record.get("answer")
    same = now.topic is last.topic and now.times == last.times and bool(answer) and answer == before_it
    one = any(size.text.lower().split(",")[0] == found["n"].lower() for size in sizes)
    return found[0] if same or one or any(size.value == place.value.value for size in in_a_list) else ""


def _goes_on(now: Asked, last: Asked) -> bool:
    """Whether a question was made of the one before."""
    return bool(now.changed) or now.past != () or any(given.source == "earlier" for given in now.givens.values())


def _of_the_page(record: Record, kind: Kind, text: str) -> dict[str, Any] | None:
    """The one number beside the answer that is of the kind asked for: by its own words, or the only one; None where there is
    none, or more than one."""
    found = [line for line in record["also"] if kind.fits(line)]
    found = found if "bend" in text.lower() else [line for line in found if not line["name"].startswith("bends")]
    named = beside(record, record["topic"] or "", text)
    by_name = [line for line in found if said_so(line) in named]
    meant = by_name if len(by_name) == 1 else found
    if len(meant) > 1:
        meant = next(([line] for name in kind.first for line in meant if line["name"] == name), [])
    return meant[0] if len(meant) == 1 else None


def _by_its_words(record: Record, asked: list[Kind], text: str) -> dict[str, Any] | None:
    """The one number beside the answer that the words ask for, where they ask for one thing: how high does it rise at 8 in 12."""
    if len(asked) != 1 or len(_ASKS.findall(text)) != 1 or record["answer"]["name"].lower() in text.lower():
        return None
    named = beside(record, record["topic"] or "", text)
    found = [line for line in record["also"] if said_so(line) in named]
    return found[0] if len(found) == len(named) == 1 and all(kind.fits(found[0]) for kind in asked) else None


def _called_so(record: Record, text: str) -> dict[str, Any] | None:
    """The one number beside the answer that the line asks for by its name: what's the bevel if that corner is 89 1/2."""
    lines = [line for line in record["also"] if line["unit"] != "word"]
    names = [
        line for line in lines
        if re.search(_WHAT_IS.format(re.escape(line["name"])), text, re.IGNORECASE)
        or (line["unit"] == record["answer"]["unit"]
            and re.match(_NAMED_FIRST.format(re.escape(line["name"])), text, re.IGNORECASE))
    ]  # fmt: skip
    return names[0] if len(names) == 1 and record["answer"]["name"].lower() not in text.lower() else None


def _the_one_count(record: Record, text: str) -> dict[str, Any] | None:
    """The one count beside an answer that is none, where the line asks how many: and how many if the wall was ten foot three."""
    counts = [line for line in record["also"] if line["unit"] == "count"] if _HOW_MANY_IF.search(text) else []
    return counts[0] if len(counts) == 1 and record["answer"]["unit"] != "count" else None


def _named_choice(record: Record, now: Asked, text: str) -> dict[str, Any] | None:
    """The number beside the answer that the line names whole, where only a choice told before made another the answer: the
    lean-to's 4/12, plumb cut for that one (after a level cut)."""
    carried = [given.value for given in now.givens.values() if given.source == "earlier" and isinstance(given.value, Choice)]
    if not carried or record["answer"]["name"].lower() in text.lower():
        return None
    kinds = {member.value for choice in carried for member in type(choice)}
    named = [
        line for line in record["also"]
        if " " in line["name"] and line["name"].partition(" ")[0] in kinds and line["name"].lower() in text.lower()
    ]  # fmt: skip
    return named[0] if len(named) == 1 else None


def _answer_with(c: Conversation, record: Record, now: Asked, line: dict[str, Any]) -> None:
    """Make a number of the page the answer: by the topic's own choice of what is asked, where it has one."""
    choice = next(
        (Given(p.name, member, "asked") for p in now.topic.parameters if issubclass(p.kind, Choice)
         for member in p.kind if member.value in (line["name"], str(line["name"]).partition(" ")[0])),
        None,
    )  # fmt: skip
    if choice is None:
        say_first(record, line)
        now.asked_for = line["name"] if not str(line["name"]).startswith("longer") else ""  # a difference is asked for once
        return
    said, state = record["say"].partition(f"{record['answer']['name'].capitalize()}: ")[0], state_of(c)
    trial = blank(record["heard"], record["via"], record["job"], record["file"])
    way = c.worked(now, {**told_of(now), choice.name: choice})
    c.finish(trial, [way], Question(now.topic.name))
    if trial["outcome"] != "answered" or c.last is None or trial["answer"]["name"] != line["name"]:
        put_back(c, state)
        say_first(record, line)
        return
    record.update({name: value for name, value in trial.items() if name not in KEPT})
    record["say"] = said + record["say"]
    c.last.record, c.last.changed, c.last.text = record, now.changed, now.text


def _just_read(c: Conversation, record: Record, now: Asked) -> str:
    """The one number beside the answer that was read off its page by the line before, where this line puts that right: what area
    does that cover? | sorry, I meant 1.5 across."""
    before = next((kept for kept in reversed(c.records) if kept is not record), None)
    if before is None or (before["outcome"], before["topic"]) != ("noted", "explain") or len(before["also"]) != 1:
        return ""
    read_with = before["say"].partition(". ")[0] if before["say"].startswith(READ_WITH) else ""
    labels = [now.topic.parameter(name).label for name in now.changed]
    same = any(f"{READ_WITH}{label} " in f"{read_with} " for label in labels)  # each has 50 free, how many | 65
    if not same and (not _PUTS_RIGHT.match(str(record["heard"])) or _ALSO.search(str(before["heard"]))):
        return ""
    return str(before["also"][0]["name"])


def _with_it_all(now: Asked, text: str) -> str:
    """The number that has in it what the line puts to the answer: plus the eight foot wall under it, of a gable."""
    found = next((_WHOLE[now.topic.name, name] for name in now.changed if (now.topic.name, name) in _WHOLE), "")
    return found if found and _PUTS_UNDER.match(text) else ""


def _what_it_changes(record: Record, now: Asked, last: Asked) -> str:
    """The one number beside the answer that was asked for in the question before and that a change changes, where the answer
    itself stays: strips of 12 square inches a foot make no other free area, but another length of them."""
    was = {line["name"]: line["value"] for line in (last.record["answer"], *last.record["also"])}
    answer = record["answer"]
    if now.topic is not last.topic or answer["unit"] == "count" or was.get(answer["name"]) != answer["value"]:
        return ""
    other = [line for line in record["also"] if line["name"] in was and was[line["name"]] != line["value"]]
    wanted = beside(record, record["topic"] or "", last.text)
    return str(other[0]["name"]) if len(other) == 1 and said_so(other[0]) in wanted and other[0]["unit"] != "word" else ""


def _as_it_was_asked(record: Record, now: Asked, last: Asked, read_off: str, text: str) -> None:
    """Answer a plain change with the number that was asked for before it, where the topic's own answer could be taken for it:
    the curve with a 280 rise | and 300 (the radius is a length too); or with the one just read off the page."""
    asked_for = last.asked_for or read_off or _what_it_changes(record, now, last)
    if not asked_for or last.topic is not now.topic or _ASKS.search(text):
        return
    if record["answer"]["name"].lower() in text.lower():
        return  # now the miter if the spring is 45
    lines = [line for line in record["also"] if line["name"] == asked_for]
    own = [line for line in (last.record["answer"], *last.record["also"]) if line["name"] == record["answer"]["name"]]
    stays = any(line["value"] == record["answer"]["value"] for line in own)  # another coil makes no other girth
    if len(lines) == 1 and (read_off or stays or lines[0]["unit"] == record["answer"]["unit"]):
        say_first(record, lines[0])
        now.asked_for = asked_for
