"""What a short line asks of the last answer: a value that stands beside it, or one of its marks; read off its page."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING, Any

from assistant.also_asked import beside, mark_asked
from assistant.change_words import is_no_change
from assistant.names import by_its_name
from assistant.pending import Asked
from assistant.record import put_noted
from assistant.several import told_of
from assistant.speech import spoken
from intents.expressions import expression
from intents.matcher import speller
from intents.question import Question
from intents.talk import numbers_in
from solvers.slots import Given

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.record import Record

A_QUESTION = 4  # words of a line that asks more than the name of one
A_NAME = 2  # words that only name a value on the page: height?
_WORD = expression(r"[A-Za-z]{4,}")
LONGEST = 13  # words of such a line
# Another thing than the last answer is of, or a change of it.
_ANOTHER = expression(
    r"\b(?:other(?! (?:corner|cut|joint|setting))|another|next(?! (?:size|length))|different|new|north|south|east|west|lake|ramp"
    r"|front|back|if|instead|(?<!does it )(?<!does that )(?<!do they )make|change"
    r"|(?:left|right)[ -](?:side|wall|hand|end|one))\b",
    re.IGNORECASE,
)
_SETTING = expression(
    r"\W*(?:(?:and|so|what['’]?s|what is|whats|the|my)\W+)*(?:miter|mitre|saw setting|setting)\W*", re.IGNORECASE
)
_ANY_ONE = (  # which are no numbers of anything
    (expression(r"\b(?:each|every) one\b|\bone of (?:them|em|those|these)\b", re.IGNORECASE), "each"),
    (
        expression(r"\bbetween (?:any )?(?:two|2) (?=(?:of the )?(?:sides|pieces|legs|boards|members)\b)", re.IGNORECASE),
        "between the ",
    ),
)
_HALF_THERE = expression(r"\bhalf (?=(?:at|in|on|low|high|up|down|goes)\b)", re.IGNORECASE)  # no half of the answer
_TRIANGLE = expression(r"\b3.4.5\b|\bthree four five\b|\bper foot\b|\ba per ?cent(?:age)?\b", re.IGNORECASE)  # which is a name
_NAMED = expression(
    r"\W*(?:(?:and|so|ok|okay|then|but|now|what['’]?s|what is|what was|what are|give me|tell me|how much is|the|my|it['’]?s)"
    r"\W+)*(?P<name>(?!in )[a-z][a-z ,'’-]*?)(?:\W+(?:then|again|of (?:it|that)|now|on (?:it|that)|there|there then|please))*\W*",
    re.IGNORECASE,
)
_TOPICS = {"rise": "rise over a run"}  # whose answer has another name
_SIZES = {"long": "length", "high": "height", "tall": "height", "wide": "width", "steep": "angle"}
_HOW = expression(rf"\W*(?:(?:and|so|ok|then)\W+)*how (?P<size>{'|'.join(_SIZES)})(?: (?:is|was) (?:it|that))?\W*", re.IGNORECASE)
_HOW_MANY = expression(
    r"\W*(?:(?:and|so|ok|then|but|now)\W+)*how many(?: (?P<things>[a-z]+))?(?: (?:is|are|was|were) (?:that|there|it|those))?"
    r"(?: (?:do|will|would|did) (?:i|we|you) (?:need|want|get|say|buy))?"
    r"(?: (?:in all|altogether|in total|total|then|again|now))*\W*",
    re.IGNORECASE,
)
_SQUARES = expression(r"\bsquares\b", re.IGNORECASE)  # which have a waste in them


def asked_after(c: Conversation, record: Record, text: str) -> bool:
    """Whether a short line asks for a value, or a mark, that stands beside the last answer; then that is read."""
    if c.last is None or c.pending is not None:
        return False
    last = c.last.record
    if not last.get("answer") or len(text.split()) > LONGEST:
        return False
    text = said_of_any(_WORD.sub(lambda word: speller().read(word[0].lower()), text))  # the lenght
    if _ANOTHER.search(text):
        return False
    squares = _SQUARES.search(text) and last["answer"]["unit"] in ("ft2", "m2")
    if squares or _asked_anew(c, last, text) or _of_another(c, last, text):
        return False
    again = by_its_name(text, c.topics)
    if again is not None and again.topic == last["topic"] and not beside(last, last["topic"], text):
        put_noted(record, "explain", said_of([f"{last['answer']['name']}: {last['answer']['text']}"]))
        record["also"] = [last["answer"]]
        return True
    lines = _asked_lines(c, last, text)
    joint = c.last.joint.record if not lines and c.last.joint is not None else {}
    if joint.get("answer"):  # the edge angle of what the saw was asked to cut
        last, lines = joint, beside(joint, joint["topic"] or "", text)
    if len(text.split()) > A_NAME and _of_its_own(c, record, last, lines):
        return True
    if lines:
        put_noted(record, "explain", said_of(lines))
        record["also"] = [
            line for line in lines_of(last) if {f"{line['name']}: {line['text']}", f"{line['name']} {line['text']}"} & {*lines}
        ]
    return bool(lines)


def _asked_lines(c: Conversation, last: Record, text: str) -> list[str]:
    """The mark, or the values of the page, that a line asks for."""
    lines = mark_asked(last, text, c.step_shown < 0)
    numbers = numbers_in(_TRIANGLE.sub("", _HALF_THERE.sub("", text)))
    if not lines and c.last is not None and (is_no_change(text, [], c.last) or not numbers):
        lines = beside({**last, "also": [last["answer"], *last["also"]]}, last["topic"] or "", text)
    if not lines and _SETTING.fullmatch(text) and last["answer"]["name"] in ("saw setting", "miter"):
        lines = [f"{last['answer']['name']}: {last['answer']['text']}"]
    return lines if lines or numbers else _named(last, text) or _counted(last, text)


def _of_its_own(c: Conversation, record: Record, last: Record, lines: list[str]) -> bool:
    """Whether the one value asked for is what another topic answers, from the same givens; then that is worked: the rake."""
    shown = [line for line in last["also"] if lines == [f"{line['name']}: {line['text']}"]]
    name = str(shown[0]["name"]) if len(shown) == 1 else ""
    name = _TOPICS.get(name, name) if len(record["heard"].split()) > A_QUESTION else name
    topic = c.topics.get(name) if name and c.last and c.last.times == 1 else None
    if topic is None or topic is c.last.topic:  # type: ignore[union-attr]
        return False
    question = Question(topic.name)
    ways = c.ways(question, c.last)
    if ways[0].worked.working is None and c.last is not None:  # with the very givens of the last: the run of that rise
        mine = {parameter.name: parameter.kind for parameter in topic.parameters}
        same = {
            name: Given(name, given.value, "earlier", given.sure)
            for name, given in told_of(c.last).items()
            if name in mine and isinstance(given.value, mine[name])
        }
        ways = [c.worked(Asked(topic, {}, metric=c.last.metric), same)] if len(same) == len(told_of(c.last)) else ways
    result = ways[0].worked.working.result if len(ways) == 1 and ways[0].worked.working else None
    if result is None or result.text != shown[0]["text"]:
        return False
    c.finish(record, ways, question)
    return True


def said_of_any(text: str) -> str:
    """The line without numbers that tell none: how far does one of them go, the corner between two sides."""
    for pattern, words in _ANY_ONE:
        text = pattern.sub(words, text)
    return text


def lines_of(last: Record) -> list[dict[str, Any]]:
    """All the values of an answer that can be read back: itself, those beside it, its marks."""
    return [last["answer"], *last["also"], *last["marks"]]


def _asked_anew(c: Conversation, last: Record, text: str) -> bool:
    """Whether the line is the name of a topic, which is worked as a question of its own; not so the cut of the hip itself."""
    question = by_its_name(text, c.topics)
    if question is None or question.topic == last["topic"] or question.topic != text.lower().strip(" .!?"):
        return False  # by no name, by that of the last, or by a short one: how many sticks
    beside_it = {line["name"].lower() for line in last["also"]}
    if any(name.startswith(f"{question.topic} of the ") for name in beside_it):
        return False
    return c.of_the_same(question) or question.topic not in beside_it


def _of_another(c: Conversation, last: Record, text: str) -> bool:
    """Whether the line names another topic whole, that no value on the page goes by: vent area, after the area of a soffit."""
    first = next(iter(c.read(text).questions), None)
    name = set(first.topic.split()) if first is not None and first.topic != last["topic"] else set()
    named = len(name) > 1 and name <= set(re.findall(r"[a-z]+", text.lower()))
    return named and not any(name <= set(line["name"].lower().split()) for line in (last["answer"], *last["also"]))


def _named(last: Record, text: str) -> list[str]:
    """The one value on the page that the line is the name of, or the end of its name: the rise, the area."""
    found, how = _NAMED.fullmatch(text), _HOW.fullmatch(text)
    name = _SIZES[how["size"].lower()] if how else found["name"].lower().strip() if found else ""
    lines = [last["answer"], *last["also"]]
    same = [line for line in lines if line["name"].lower().partition(",")[0] == name]
    if not same:
        same = [line for line in lines if line["name"].lower().endswith(f" {name}")]
        same = same[:1] if same[:1] == lines[:1] else same  # the answer first: the area of a wall is the net one
    if name == "angle" and lines[0]["unit"] == "deg":
        same = lines[:1]  # what the saw is set to, and no edge angle
    return [f"{same[0]['name']}: {same[0]['text']}"] if len(same) == 1 and same[0]["unit"] != "word" else []


def _counted(last: Record, text: str) -> list[str]:
    """The count that was worked, asked for by what it counts, or by no name."""
    found, answer = _HOW_MANY.fullmatch(text), last["answer"]
    if found is None or answer["unit"] != "count":
        return []
    name = answer["name"].lower()
    things = (found["things"] or "").lower()
    return [f"{answer['name']}: {answer['text']}"] if not things or things in (name, name.split()[0]) else []


def said_of(lines: list[str]) -> str:
    """Such values as they are spoken."""
    return spoken(". ".join(line[:1].upper() + line[1:] for line in lines))
