"""The last question asked again with something changed: "and at eight twelve?", "no, nine twelve"."""

from __future__ import annotations

import re
from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from assistant import acts, replies
from assistant.acts.memory import keep, short
from assistant.pending import Asked
from assistant.record import Record, listed, put_noted, value_line
from assistant.speech import spoken
from intents.chart import LIGHT, chart_of
from intents.fitting import fit
from intents.matcher import read_as, speller
from intents.phrases import compiled
from intents.placing import ANYTHING
from intents.question import Heard, Question
from intents.reading import Reading
from intents.searching import MANNER
from intents.talk import Said, gists_of, numbers_in, readings_in, talk_of
from solvers.quantities import Length, Pitch, Quantity
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.ways import Way

MISSING = 0.35  # what the matcher charges for a piece that was not said; the last question has it already
NEAR, FAR = 2, 2  # a new number within twice of one given, and twice as far from every other, is for that one
STEEP = 24  # rise in 12; a bare number over it is no pitch
PLAIN = ("roof", "roofs", "pitch", "pitched", "slope")  # words that go with a value and name no question
SIZES = frozenset("high tall long wide deep thick across high height length width depth run rise over up".split())
MARGIN = 0.6  # how much better a line must stand on its own than as a change
TEENS = {13 + n: 30 + 10 * n for n in range(7)}  # thirteen and thirty … nineteen and ninety are heard for each other
UNITS = {"feet": "ft", "foot": "ft", "inches": "in", "inch": "in", "millimetres": "mm", "millimeters": "mm", "mm": "mm",
         "centimetres": "cm", "cm": "cm", "metres": "m", "meters": "m"}  # fmt: skip
_BY_UNIT = r"(?:by|x|×)\s*[\d./ ]+\s*(?:feet|foot|ft|inch|in\b|mm|cm|m\b|['\"′″])"
_END = re.compile(r"\b(?:(short\w*|small\w*|narrow\w*)|(?:long\w*|big\w*|larg\w*|wide\w*)) (?:side|one|leg|way|end)\b", re.I)
_SPLIT = re.compile(r"\s*[,;:]\s*|\s+(?:but|it's|its|it is)\s+")


@dataclass(slots=True)
class Wanted:
    """What a line wants changed: the words of the change, the number it takes the place of, and whether it corrects."""

    rest: str
    old: str = ""
    corrects: bool = False
    led: bool = False  # whether words said that a change follows
    lead: str = ""  # those words


def change(c: Conversation, record: Record, text: str, said: Said | None, questions: list[Question]) -> bool:
    """Whether the line changes the question (or the value kept) before it; if so that is worked again."""
    wanted = _wanted(text, said)
    if wanted is None:
        return False
    if wanted.corrects and _statement(c, record, wanted, text):
        return True
    if wanted.led:  # the words that lead to a change are no words of a question
        questions = [question for question in c.read(wanted.rest).questions if question.score > 0]
    if c.just_kept and wanted.led and not questions and _keep_again(c, record, wanted, text):
        return True
    if c.last is None or not wanted.rest:
        return False
    return _ask_again(c, record, text, wanted, questions) or _by_gist(c, record, text, wanted, questions)


def _by_gist(c: Conversation, record: Record, text: str, wanted: Wanted, questions: list[Question]) -> bool:
    """The change in a line that says more than it: "I read the gauge upside down, it should have been 95"."""
    found = gists_of(text, c.places) if wanted.led else ()
    said = next((gist for gist in found if gist.topic in acts.CHANGES), None)
    if said is None:
        return False
    inner = _wanted(text, said)
    return inner is not None and inner.rest != wanted.rest and _ask_again(c, record, text, inner, questions)


def _ask_again(c: Conversation, record: Record, text: str, wanted: Wanted, questions: list[Question]) -> bool:
    """Whether the line changes the question before it; if so that is asked again."""
    if c.last is None:
        return False
    best = questions[0] if questions else None
    found = _unit_only(wanted, c.last) or _readings(c, wanted, c.last)
    if not found or _stands_alone(best, found[0], c.last, wanted):
        return False
    if replies.doubted(c, record, text):
        return True
    _work_again(c, record, wanted, found)
    return True


def _wanted(text: str, said: Said | None) -> Wanted | None:
    if said is None or said.topic not in acts.CHANGES:
        loose = said is None or said.loose
        return Wanted(text) if loose else None
    words = said.words
    corrects = said.topic == "correct"
    if "swap" in words:
        parts = _SPLIT.split(words["swap"], maxsplit=1)
        old, rest = (parts[0], parts[1]) if len(parts) == 2 else ("", words["swap"])
        return Wanted(rest, old, True, True)
    rest = words.get("rest", "")
    return Wanted(rest, words.get("old", ""), corrects, True, text.partition(rest)[0] if rest else "")


def _unit_only(wanted: Wanted, last: Asked) -> list[Question]:
    """ "I meant feet": the lengths that were said bare, or else those in another unit, in that unit."""
    words = wanted.rest.lower().strip(" .!?").split()
    unit = UNITS.get(words[0], "") if len(words) == 1 and wanted.corrects else ""
    known = {name: given for name, given in last.givens.items() if given.source != "assumed"}
    lengths = {
        name: given for name, given in known.items() if unit and isinstance(given.value, Length) and given.value.unit != unit
    }
    heard = last.record.get("heard", "").lower()
    bare = {n: given for n, given in lengths.items() if _bare(given.value) and not _shared(given.value.text, heard)}
    givens = {
        name: Heard(replace(given.value, unit=unit, text=""), 0, 0, wanted.rest) for name, given in (bare or lengths).items()
    }
    return [Question(last.topic.name, givens, len(givens))] if givens else []


def _statement(c: Conversation, record: Record, wanted: Wanted, text: str) -> bool:
    """A correction that names what it corrects ("no, the pitch is 6/12") is kept, if the line before kept something."""
    said = talk_of(wanted.rest, c.places) if wanted.rest and c.just_kept else None
    if said is None or said.topic != "remember":
        return False
    return acts.perform(c, record, said, text)


def _keep_again(c: Conversation, record: Record, wanted: Wanted, text: str) -> bool:
    """The value that the line before kept, said again."""
    name = list(c.just_kept)[-1]
    values = readings_in(wanted.rest)
    if not values:
        return False
    if replies.doubted(c, record, text):
        return True
    talk = acts.Talk(c, record, Said("remember"), text)
    line = keep(talk, name, values, wanted.rest)
    if line is not None:
        c.kept_by.append((record, {name: c.just_kept[name]}))
        put_noted(record, "remember", f"Kept for this job: {line}")
    return True


def _stands_alone(best: Question | None, more: Question, last: Asked, wanted: Wanted) -> bool:
    """Whether the line is rather a question of its own."""
    if best is None or best.topic == last.topic.name or not best.words:
        return False
    if more.manner and not more.givens and best.missing:
        return False
    if best.missing and wanted.led and not set(best.topic.split()) & set(best.words):
        return False
    change_score = more.score + MISSING * len(more.missing)
    return best.score > change_score + (MARGIN if wanted.led else 0)


# ── what is to change ──


def _readings(c: Conversation, wanted: Wanted, last: Asked) -> list[Question]:
    """The change read against the last topic, once for each place that it could be meant for."""
    found: list[Question] = []
    for target in _targets(wanted, last) or [ANYTHING]:
        more = read_as(wanted.rest, last.topic.name, c.parameters, wanted=target)
        if target != ANYTHING:
            replies.to_the_wanted(more, last, target, bool(wanted.old) or not _named(more, wanted, last))
        if not (more.givens or more.manner) or more.unplaced or _left_over(more, wanted, last) or _steep(more):
            continue
        if target in more.givens:
            more.swaps = []
        more.givens = {name: _in_its_unit(heard, last.givens.get(name)) for name, heard in more.givens.items()}
        if all(more.givens != other.givens or more.manner != other.manner for other in found):
            found.append(more)
    return found


def _named(more: Question, wanted: Wanted, last: Asked) -> bool:
    """Whether the words name what the value went to: "the wall is 32 foot" does not say that it is high."""
    labels = {word for name in more.givens for word in last.topic.parameter(name).label.split()}
    return bool(set(re.findall(r"[a-z]+", wanted.rest.lower())) & (labels | SIZES))


def _targets(wanted: Wanted, last: Asked) -> list[str]:
    """The givens that one new number could be meant for, narrowed by all that tells them apart; all that are left."""
    values = numbers_in(wanted.rest)
    if len(values) != 1 or not isinstance(values[0].value, Quantity):
        return []
    known = {name: given for name, given in last.givens.items() if given.source != "assumed"}
    places = [name for name in known if _takes(last, name, values[0]) and isinstance(known[name].value, Quantity)]
    for test in _tests(wanted, last, values[0].value):
        fitting = [name for name in places if test(known[name])]
        if len(fitting) == 1:
            return fitting
        places = fitting or places
    return _nearest(places, last, values[0].value)


def _tests(wanted: Wanted, last: Asked, new: Quantity) -> list[Callable[[Given], bool]]:
    """What tells which given a new number is for: the number it replaces, its sound, its unit, the word before it."""
    old = [row.value.value for row in numbers_in(wanted.old) if isinstance(row.value, Quantity)]
    heard = last.record.get("heard", "").lower()
    lead = wanted.lead.lower().split()[-1:] if wanted.lead.split()[-1:] != ["it"] else []

    def led_alike(given: Given) -> bool:
        before = heard.partition(given.value.text.lower())[0].split() if given.value.text else []
        return bool(lead) and before[-1:] == lead

    sizes = [g.value.value for n, g in last.givens.items() if isinstance(g.value, type(new)) and g.source != "assumed"]
    end = _END.search(wanted.rest)
    named = {said.words["what"] for said in gists_of(wanted.rest) if "bare" in said.words}
    tests: list[Callable[[Given], bool]] = [
        lambda given: last.topic.parameter(given.name).slot.kept in named,
        lambda given: bool(end and sizes) and given.value.value == (min if end and end[1] else max)(sizes),
        lambda given: given.value.value in old,
        lambda given: wanted.corrects and _twins(given.value.value, new.value),
        lambda given: given.value.unit == new.unit,
        lambda given: new.unit != "none" and not (_bare(given.value) and not _shared(given.value.text, heard)),
        lambda given: given.name in last.changed,
        led_alike,
    ]
    if wanted.corrects:
        tests.append(lambda given: new.unit == "none" and _bare(given.value))
    return tests


def _shared(text: str, heard: str) -> bool:
    """Whether a bare number has the unit said after the next: the 9 of "9 by 12 feet"."""
    return bool(re.search(rf"\b{re.escape(text.lower())}\s*{_BY_UNIT}", heard))


def _bare(value: Quantity) -> bool:
    """Whether a value was said without a unit."""
    return value.text.replace(".", "").isdecimal()


def _nearest(places: list[str], last: Asked, new: Quantity) -> list[str]:
    """The one place whose value the new number is near while it is far from all others; or all."""
    if len(places) < 2 or new.value <= 0:
        return places
    ratios = []
    for name in places:
        was = last.givens[name].value
        value = new.to(was.unit).value if new.unit in was.units else new.value
        if was.value <= 0:
            return places
        ratios.append((max(value / was.value, was.value / value), name))
    ratios.sort()
    return [ratios[0][1]] if ratios[0][0] <= NEAR and ratios[1][0] >= FAR * ratios[0][0] else places


def _takes(last: Asked, name: str, reading: Reading) -> bool:
    return fit(reading, last.topic.parameter(name), "", cued=True) is not None


def _twins(one: object, other: object) -> bool:
    return TEENS.get(one) == other or TEENS.get(other) == one  # type: ignore[call-overload]


def _in_its_unit(heard: Heard, before: Given | None) -> Heard:
    """A bare number takes the unit of the value in whose place it comes: 12 foot, then "if it was twenty"."""
    value = heard.value
    if before is None or not isinstance(value, Length) or not isinstance(before.value, Length):
        return heard
    said = numbers_in(heard.text)
    if len(said) != 1 or said[0].kind != "number":
        return heard
    unit = before.value.unit
    return replace(heard, value=replace(value, unit=unit, text=short(replace(value, unit=unit, text=""))), others=())


def _steep(more: Question) -> bool:
    """Whether a bare number was taken as a pitch that no roof has: it was not meant as one."""
    values = [heard.value for heard in more.givens.values()]
    return any(isinstance(v, Pitch) and v.unit == "in12" and v.value > STEEP and v.text.isdecimal() for v in values)


def _left_over(more: Question, wanted: Wanted, last: Asked) -> list[str]:
    """Words of the change that nothing in the question explains; unless words led to it, those of its topic too."""
    phrases = compiled()
    chart = chart_of(wanted.rest, phrases, speller())
    numbers = {i for row in chart.readings for reading in row for i in range(reading.start, reading.end)}
    known = set(more.words) | set(last.topic.name.split()) if wanted.led else set(PLAIN)
    known |= {word for word in more.words if MANNER in phrases.topics_of.get(word, ())}
    known |= {word for parameter in last.topic.parameters for word in parameter.label.split()}
    light = phrases.fillers | phrases.ordinary | LIGHT
    classes = {word for i, word in enumerate(chart.words) for name, _ in chart.classes[i] if name[1:-1].split("-")[0] in known}
    return [word for i, word in enumerate(chart.words)
            if word[0].isalpha() and word != "s" and i not in numbers and word not in known | light | classes]  # fmt: skip


def _work_again(c: Conversation, record: Record, wanted: Wanted, found: Sequence[Question]) -> None:
    last = c.last
    assert last is not None
    corrected = last.record.get("id")
    ways: list[Way] = [way for more in found for way in c.ways(more, last)]
    answered = [way for way in ways if not way.worked.refused]
    c.finish(record, answered or ways[:1], found[0])
    if c.last is not None:
        c.last.changed = frozenset(found[0].givens)
    if record["outcome"] == "answered" and c.last is not None:
        record["say"] = _with_what(c.last, found[0]) + record["say"]
    if wanted.corrects:
        if corrected:
            c.points.kind, c.points.at = "correction", corrected
        _correct_facts(c, record, last, found[0])


def _with_what(asked: Asked, more: Question) -> str:
    """What was changed, said before the answer, since words so short may have been meant for something else."""
    labels = {name: asked.topic.parameter(name).label for name in more.givens if name in asked.givens}
    said = [f"{label} {value_line(asked.givens[name].value)[2].split(' (')[0]}" for name, label in labels.items()]
    return spoken(f"With {listed(said, 'and')}. ") if said else ""


def _correct_facts(c: Conversation, record: Record, last: Asked, more: Question) -> None:
    """A value that came from the job and was corrected is kept as corrected, and that is said."""
    if record["outcome"] != "answered":
        return
    for name, heard in more.givens.items():
        parameter, before = last.topic.parameter(name), last.givens.get(name)
        if before and before.source == "job" and parameter.slot.kept and isinstance(heard.value, Quantity):
            was = c.facts.remember(parameter.slot.kept, replace(heard.value, text=""))
            if was is not None:
                record["say"] += f" The {parameter.slot.kept} kept for this job is now {short(heard.value)}; it was {short(was)}."
