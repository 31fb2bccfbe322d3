"""So many of what was just worked: "two of those walls", "both gables", "there's three like it", "double that".

The question is worked again and its exact answer taken so many times, before it is rounded. What is cut from sticks
is rounded up for all of them together, so there the length is taken so many times instead.
"""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache
from typing import TYPE_CHECKING, Any

from rapidfuzz import fuzz

from assistant.record import Record, put_asked
from assistant.said_over import stem
from assistant.speech import spoken
from intents.expressions import expression
from intents.question import Question
from intents.talk import numbers_in
from intents.tokens import tokenize
from solvers.errors import Refusal
from solvers.exact import ceil
from solvers.printing import decimal
from solvers.quantities import Count, Number, Quantity
from solvers.registry import Topic, Worked, work_out
from solvers.slots import Given
from solvers.sums import TIMES, Sum
from solvers.working import Working

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

# What is twice as much for two of them, and the words that name one of them; and what is rounded up once for all.
_TIMES: dict[str, str] = {
    "wall area": "wall side", "gable area": "gable end", "strapping": "wall side", "marks on centre": "wall plate side slope",
    "rake length": "rake side", "sloped length": "rafter slope side", "hip or valley length": "hip valley",
    "height of courses": "", "step flashing": "rake side wall", "weight": "", "cost": "",
    "fasteners": "wall", "vent opening": "wall", "squares": "wall roof gable",
    "water in a channel": "channel gutter trough", "tape arithmetic": "", "divide evenly": "",
    "right triangle": "brace", "jack rafters": "difference",
    "circle": "circle window ring porthole vent hole post pole column pier tank pipe",
}  # fmt: skip
TOGETHER = {
    "trim sticks": ("total", "wall run corner side gable"), "sealant": ("length", "joint window bead wall side"),
    "cladding boards": ("area", "wall"),
    "membrane rolls": ("area", "wall"), "sheets": ("area", "wall"), "soffit panels": ("run", "eave soffit side"),
}  # fmt: skip
_STICK = "pieces from a stick"  # of which so many give so many pieces
_STICKS = ("stick", "batten", "length", "board", "footer", "plank", "bar")
_ALIKE = {"them", "those", "these", "that", "it", "this", "em", "one", "ones", "same"}
_N = r"(?P<n>\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a dozen|a pair|a couple)"
_LEAD = (
    r"(?:(?:and|so|ok|well|but|now|then|also|oh|yes|yeah|no|sorry|(?:what|how) about|what if"
    r"|make (?:it|that)|say|if|for|that'?s|with|got|have"
    r"|(?:actually )?(?:there(?:'?s| are| is| will be| were)|(?:we|i)(?:'?ve| have| need))(?: got)?)[ ,]+)*"
)
_ENDS = (
    "to (?:do|make|bend|cut|cover|fit|build)|added together|added up|together|altogether|in all|all told|in total|total|please"
    "|then|now|though|all up|combined|so|the lot|(?:laid )?end to end|in a row|for (?:the )?both"
)
_SAME_AS = "exactly|just|all|both|the|that|which|alike|identical|how|what"
_OF_THEM = (
    rf"(?:the )?{_N} (?:of )?(?:(?:all )?(?:of )?(?:them|those|these|that|it|em)"
    rf"(?: (?!(?:{_ENDS}|{_SAME_AS})\b)(?P<thing>[a-z]+))?"
    r"(?:,? (?:that are |which are |they['’]?re )?(?:all |both )?(?:exactly |just )?(?:the same|alike|identical)(?: size)?)?"
    r"|the same|(?:such|identical) (?P<such>[a-z]+)"
    r"|(?P<alone>[a-z]+s)(?: of (?:it|them|that|those|these))?"
    r"|(?P<like>[a-z]+)? ?(?:(?:exactly |just )?(?:like|the same as) (?:that|it|this|those|them)(?: one)?"
    r"|the same|alike|(?:(?:of )?(?:that|this|the same)|as) (?:size|big|length|long|height)(?: as that)?))"
)
_TIMES_SAID = (
    rf"(?:it |that |all )?(?:times|multipl(?:y|ied)(?: it| that)? by) {_N.replace('?P<n>', '?P<times>')}"
    rf"|{_N.replace('?P<n>', '?P<over>')} times (?:it|that|over|as (?:much|many))"
)
_PAIR = (
    rf"all (?:the |those |these )?{_N.replace('?P<n>', '?P<all>')} (?P<every>[a-z]+)"
    rf"|(?P<both>both)(?: of)?(?: the| those| them| these)?(?: (?!(?:{_ENDS})\b)(?P<pair>[a-z]+))?"
    r"|(?P<ends>one (?:at |on |for )?(?:each|either) (?P<end>end|side))"
    r"|(?P<twice>double|twice|triple)(?: (?:it|that|them))?"
)
_ASKED = r"(?:how much|what)(?:['’]?s| is| are| do| does)?(?: (?:that|it|they|them))?(?: (?:come|comes) to)?"
_PIECES = r"how many(?: pieces| pcs)?(?: (?:is|are) (?:that|there))?|total (?:pieces|pcs)"
_TAIL = rf"(?:[ ,]+(?:{_ENDS}|both together|the two together|{_ASKED}|{_PIECES}))*"
_SOUNDED = expression(r"\b(?P<n>too|to|for|fore)(?= of (?:them|em|those|these)\b)", re.IGNORECASE)  # two, as it was heard
_LINE = expression(rf"{_LEAD}(?:{_OF_THEM}|{_PAIR}|{_TIMES_SAID}){_TAIL}", re.IGNORECASE)
_COUNTS = {"a dozen": 12, "a pair": 2, "a couple": 2}
_NAMED = ("thing", "such", "alone", "like", "pair", "end", "every")  # groups of _LINE for what is counted
MOST = 60
_BOXES = expression(r"\bbox(?:es|s)?\b", re.IGNORECASE)
_ONCE = ("deg", "in12", "percent")  # of which two are no twice as many
_COUNTED = expression(
    r"\b(?:times|x|multiplied by)\s*(?:\d+|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)\b|[×*]", re.IGNORECASE
)
_LESS = ("more than before", "less the one before")
_PUT = {"less": _LESS, "apart": _LESS,
        "there": ("still to get", "less what there is already"), "over": ("with those", "so many more")}  # fmt: skip
MOST_ADDED = 2  # times as much, from which on nobody says it in percent
_PLAIN_SHARE = 10  # parts of a share that is said as one: a tenth; 0.87 of it is less 13 percent
_LONG, _ALL_BUT = 6, 85  # letters of a word that may have a slip, and how near it is to the other in a hundred
LONGEST = 120  # characters of such a line
_OF_A_WALL = frozenset(map(stem, ("window", "door", "opening")))
_OTHER_ONE = expression(  # the line before told of another one than that before it: the eave at the back is 58
    r"\b(?:that one|other|another|second|next|rear|at the (?:back|front)|north|south|east|west)\b", re.IGNORECASE
)
_TOGETHER = expression(r"\b(?:together|altogether|in all|in total|all told|combined|added up)\b", re.IGNORECASE)
_OPENED = expression(
    r"(?:(?:and|but|ok|now|then|so)[ ,]+)*(?:less|minus|with|take|plus|there'?s|it'?s got|got|has|an?|one|two|three|forgot)\b"
    r"(?!.*\b(?:walls?|area|squares?)\b).*\b(?:windows?|doors?|openings?)\b.*",
    re.IGNORECASE,
)


def so_many(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for so many of what was just worked; then those are worked, or the conversation asks."""
    last = c.last
    answer = last.record.get("answer") if last is not None and not c.pending and len(text) <= LONGEST else None
    if last is None or not answer or answer["value"] is None:
        return False
    if last.times > 1 and _OPENED.fullmatch(text.strip(" .!?")) and numbers_in(text):
        put_asked(record, last.topic.name, f"Is that in each of the {last.times}, or one in all? Ask it of one alone.")
        return True
    found = _LINE.fullmatch(_SOUNDED.sub(_as_number, text.strip(" .!?").replace("’", "'")))
    count = _count(found) if found else 0
    if found is None or not 2 <= count <= MOST or not _of_these(found, last):
        return False
    if found["both"] and last.changed and last.past and _OTHER_ONE.search(str(last.record.get("heard", ""))):
        if _TOGETHER.search(text):  # the eave at the back is 58, how many for that one | so for both together
            c.take(record, "add the two together")
            return True
        whose = "Two of this one, or this one and the one before it? Say “two of them”, or “add the two together”."
        put_asked(record, last.topic.name, whose)
        return True
    name = TOGETHER.get(last.topic.name, ("", ""))[0]
    if name and name in last.givens:
        before = last.givens[name].value
        more = replace(before, value=before.value * count, text="")
        c.finish(record, [c.worked(last, {**told_of(last), name: Given(name, more, "asked")})], Question(last.topic.name))
    elif (counts := _counts(last)) and (counts not in last.givens or found["n"]):
        many = Given(counts, Count(Fraction(count), "count", str(count)), "asked")
        c.finish(record, [c.worked(last, {**told_of(last), counts: many})], Question(last.topic.name))
    elif last.topic.name in _TIMES and answer["unit"] not in _ONCE:
        stays = not (found["times"] or found["over"] or found["twice"])  # two walls are two, whatever is changed of them
        times = count if stays else Fraction(count)
        c.finish(record, [c.worked(replace(last, times=times), told_of(last))], Question(last.topic.name))
    else:
        return False
    if record["outcome"] == "answered" and "box" in last.givens and _BOXES.search(record["heard"]):
        _boxes_of_all(c, record, last)
    if record["outcome"] == "answered":
        record["say"] = spoken(f"For {count} of them. ") + record["say"]
    return True


def _boxes_of_all(c: Conversation, record: Record, last: Asked) -> None:
    """The boxes that hold all of so many alike, where the line asks for boxes."""
    every = Count(Fraction(str(record["answer"]["value"])), "count", record["answer"]["text"])
    known = {"count": Given("count", every, "earlier"), "box": Given("box", last.givens["box"].value, "earlier")}
    boxes = replace(last, topic=c.topics["boxes"], givens={}, times=1, plus=Fraction(0), text="", record={})
    c.finish(record, [c.worked(boxes, known)], Question("boxes"))


def _counts(last: Asked) -> str:
    """The given that tells of how many alike the question is: sticks, or faces; "" where it has none."""
    name = "sticks" if last.topic.name == _STICK else "alike"
    return name if any(parameter.name == name for parameter in last.topic.parameters) else ""


def worked_out(asked: Asked, givens: dict[str, Given]) -> Worked:
    """The question worked, as many times over as was said."""
    sides = givens.get("sides")
    twice = sides is not None and sides.source == "asked" and getattr(sides.value, "value", 0) == asked.times
    times = 1 if twice else asked.times  # two of those, and then both sides are 23 foot: no four of them
    topic = _with_another(_of_several(asked.topic, Fraction(times)), asked.plus, asked.put)
    return work_out(topic, givens, asked.tape_step, asked.metric)


@lru_cache(maxsize=64)
def _with_another(topic: Topic, plus: Fraction, put: str) -> Topic:
    """The topic, whose answer has another's put to it, or taken off; `apart`: from whichever is more."""

    def work(working: Working, **givens: Any) -> None:
        topic.work(working, **givens)
        if working.answered is None:
            raise Refusal(f"{topic.name} gives nothing that can be added")
        name, one = working.answered
        working.also("this one", one)
        working.said = ""
        part, why = _PUT.get(put or ("less" if plus < 0 else ""), ("both together", "with the one before"))
        if put == "apart" and one.value + plus < 0:
            less = working.answer(f"{name}, less than before", -plus - one, "the one before, less this one", one.unit)
            working.check("this one again", -plus - less, "=", one)
            return
        every = working.answer(f"{name}, {part}", one + plus, why, one.unit)
        working.check("this one again", every - plus, "=", one)

    return replace(topic, work=work) if plus else topic


@lru_cache(maxsize=64)
def _of_several(topic: Topic, times: Fraction) -> Topic:
    """The topic, whose answer is of so many, or of a share of it."""

    def work(working: Working, **givens: Any) -> None:
        topic.work(working, **givens)
        if working.answered is None:
            raise Refusal(f"{topic.name} gives nothing that can be taken {times} times")
        name, one = working.answered
        many, part = times.denominator == 1, _part(times)
        working.also("one of them" if many else "before that" if times > 1 or part.endswith("percent") else "all of it", one)
        working.said = ""
        if one.unit == "count" and not many:
            every = working.answer(f"{name}, {part}", ceil(one * times), f"{part}, rounded up", "count")
            working.check("no less than that share", every / times, ">=", one)
            return
        every = working.answer(f"{name}, {part}", one * times, part, one.unit)
        working.check("one of them again" if many else "all of it again", every / times, "=", one)

    return topic if times == 1 else replace(topic, work=work)


def _part(times: Fraction) -> str:
    """What is taken of the answer, as it is said: 3 of them, 2/3 of it, plus 10 percent."""
    if times.denominator == 1:
        return f"{times} of them"
    if times < 1 and times.denominator <= _PLAIN_SHARE:
        return f"{times} of it"
    if times > MOST_ADDED:
        return f"{decimal(times, 4)} times it"
    return f"{'plus' if times > 1 else 'less'} {decimal(abs(times - 1) * 100, 2)} percent"


def told_of(last: Asked) -> dict[str, Given]:
    """What was said, and no default."""
    return {name: given for name, given in last.givens.items() if given.source != "assumed"}


def _sum_of_several(last: Asked) -> bool:
    """Whether the sum before is of so many of one length: six pieces at 17 5/8."""
    given = last.givens.get("sum")
    whole = given.value if given is not None else None
    count = whole.left if isinstance(whole, Sum) and whole.operation == TIMES else None
    return isinstance(count, Number) and count.value.denominator == 1 and count.value > 1


def _count(found: re.Match[str]) -> int:
    if found["both"] or found["ends"] or found["twice"]:
        return 3 if (found["twice"] or "").lower() == "triple" else 2
    said = (found["n"] or found["times"] or found["over"] or found["all"] or "").lower()
    if said in _COUNTS:
        return _COUNTS[said]
    read = [row.value for row in numbers_in(said) if isinstance(row.value, Number)]
    return int(read[0].value) if read and read[0].value.denominator == 1 else 0


def _as_number(heard: re.Match[str]) -> str:
    return "two" if heard["n"].lower() in ("to", "too") else "four"


def _of_these(found: re.Match[str], last: Asked) -> bool:
    """Whether what is counted is what was just worked: no word at all, or one of the question before."""
    if any(isinstance(g.value, Count) and g.value.value > 1 for n, g in last.givens.items() if n in ("count", "sides")):
        return False  # so many of them were counted already
    if last.topic.name == "tape arithmetic" and found["n"] and (_COUNTED.search(last.text) or _sum_of_several(last)):
        return False  # 12 of them, of a sum that had 11
    counted = any(" × " in given.value.text for given in last.givens.values() if isinstance(given.value, Quantity))
    if counted and not (found["twice"] or found["times"] or found["over"]):
        return False  # and added up: two of three walls 20 by 9
    named = next((found[name] for name in _NAMED if found[name]), "")
    if not named:
        return True
    holds = any(isinstance(given.value, tuple) and given.value for given in last.givens.values())
    if holds and stem(named.lower()) in _OF_A_WALL:
        return False  # two of those windows, of a wall with one: no two walls
    if last.topic.name == _STICK:
        return named.lower() in _ALIKE or stem(named.lower()) in _STICKS
    words = {*(_TIMES.get(last.topic.name) or TOGETHER.get(last.topic.name, ("", ""))[1]).split()}
    said = {stem(token.text) for token in tokenize(last.text)}
    if found["alone"]:  # four rakes; two gables are none of a wall's
        return stem(named.lower()) in words & said
    said |= words
    return named.lower() in _ALIKE or any(_same_word(stem(named.lower()), word) for word in said)


def _same_word(one: str, other: str) -> bool:
    """Whether two words are one, though one of them has a slip in it: ceilng."""
    return one == other or (min(len(one), len(other)) >= _LONG and fuzz.ratio(one, other) >= _ALL_BUT)
