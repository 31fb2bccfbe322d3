"""What is put to the answer just worked, or taken off it, in one line with what it comes to: "there's 12 bags in the trailer
already, how many more do I pick up", "two of those plus 12 inches spare, how much stock".
"""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.leans_sticks import OF_STICKS, PIECES, number_of, same_stick, whole_of
from assistant.names import SUM
from assistant.pending import Asked
from assistant.record import Record, put_asked
from assistant.running import length_of
from assistant.said_over import places_of, stem, whole
from assistant.several import told_of
from assistant.speech import spoken
from intents.expressions import expression
from intents.question import Question
from intents.talk import numbers_in
from solvers.quantities import LENGTH, Count, Length, Number
from solvers.slots import Given
from solvers.sums import PLUS, TIMES, Sum

if TYPE_CHECKING:
    from assistant.conversation import Conversation

_LEAD = r"\W*(?:(?:and|so|ok|okay|then|now|right|but|well|oh)\W+)*"
_WHERE = (
    r"(?: (?:of (?:them|those|these|'?em)|already|here|there|left(?: over)?|to hand|on hand|in stock|spare"
    r"|(?:(?:sitting|lying|stacked) )?(?:in|on|at|out|under) (?:the |my |our )?(?:back(?: of (?:the )?\w+)?|\w+)))*"
)
_THERE = expression(  # there's 12 bags in the trailer already, how many more do I pick up
    rf"{_LEAD}(?:if )?(?:there(?:['’]?s| is| are|['’]?re)|(?:i|we)(?:['’]?ve)?(?: have)?(?: got| already have| already got)?|got"
    rf"|with)(?: already)?(?: got)? (?P<n>\d{{1,4}}|[a-z]+(?:[ -][a-z]+)??)(?: (?P<what>[a-z]+))??{_WHERE}[,;.]?"
    r" (?:and |so |then )*(?:how many (?:more |extra |others? )(?P<more>[a-z]+ )??"
    r"(?:(?:of (?:them|those|these) )?(?:do|will|would|should|must) (?:i|we) (?:still )?(?:have to |need to |got to |want to )?"
    r"(?:need|buy|get|pick up|grab|order|fetch|want)|to (?:buy|get|order|pick up|fetch)|is that|does that leave)"
    r"|how many (?:short|shy) am i|how many am i (?:short|shy)"
    r"|how many (?:does that leave|is that left)(?: (?:me|to (?:buy|get)))?)"
    r"(?: (?:to (?:buy|get|finish)|then|now|still))*\W*",
    re.IGNORECASE,
)
_SPARE = expression(  # two of those plus 12 inches spare, how much stock
    rf"{_LEAD}(?:(?P<n>\d{{1,2}}|one|two|three|four|five|six|seven|eight|nine|ten|twelve|both) of (?:those|them|these|'?em)"
    r"(?: [a-z]+)?|that|it),? (?:plus|and|with|allowing) (?P<more>[^,;?]+?)"
    r" (?:spare|extra|over|on top|to spare|for waste|for cuts|for trimming|for luck)[,;]?(?: in all)?"
    r" (?:and |so |then )*(?:how (?:much|long)|what(?:['’]?s| is)?|how many (?:feet|inches|met(?:re|er)s))(?: [a-z]+)?"
    r"(?: (?:is|does|do|will|would) (?:that|it|i|we)(?: (?:come to|need|make|take|be|want|all))?)?(?: (?:in all|altogether))?\W*",
    re.IGNORECASE,
)
_AFTER = expression(  # I'm after 100 blocks, how many more 16 footers do I have to get
    rf"{_LEAD}(?:(?:i|we)(?:['’]m|['’]re|['’]ll|['’]ve)?(?: am| are| will| have)?|they)?"
    r" ?(?:after|need|needs|want|wants|got to have|to have|have to have|gotta have|looking for)"
    r" (?P<n>[a-z]+(?: [a-z]+){0,3}?|\d{1,4})"
    r"(?: (?:of (?:them|those|these|'?em)(?: [a-z]+)?|(?P<what>[a-z]+)))?"
    r"(?: (?:all up|in all|altogether|all together|in total|total|all told))?[,;]? (?:and |so |then )*"
    r"how many(?P<more> more| extra)?(?: of (?:those|these|them|'?em|the))?(?P<which>[^,;?]*?)"
    r"(?: (?:do|will|would|should|must) (?:i|we)(?: (?:have to|need to|want to|got to|'?ll))?"
    r"(?: (?:get|buy|grab|need|order|pick up|cut|fetch))?)?\W*",
    re.IGNORECASE,
)
_OVERS = r"(?:spares?|extras?|over)(?: ones?)?"
_OVERS += r"(?: (?:to be safe|for luck|in case|just in case|for (?:waste|breakages?|mistakes)))?"
_REASON = r"(?:for (?:the|each|a) (?:corner|end|start|far end|last one|waste|wall|other end)s?|at (?:the|each) ends?|to be safe"
_REASON += r"|for (?:waste|luck|spares?)|just in case|in case)"
_OVER = expression(  # add one for the corner; and two spare; throw in an extra two; add 2 to that
    r"\W*(?:(?:and|so|ok|then|now|plus|add|with|throw in|chuck in|i want|i['’]ll (?:take|want)|we['’]ll want|get)\W+)*"
    rf"(?:(?:an? extra |another |a further )?(?P<n>\d{{1,3}}|[a-z]+)(?: (?:more|others?))? (?:{_OVERS}|{_REASON})"
    r"|(?:an )?extra (?P<m>\d{1,3}|one|two|three|four|five|six|ten))\W*",
    re.IGNORECASE,
)
_TO_THAT = expression(
    r"\W*(?:(?:and|so|ok|then|now)\W+)*(?:add|plus|put)(?: another)? (?P<n>\d{1,3}|[a-z]+)(?: more)? (?:to|on) (?:that|it)\W*",
    re.IGNORECASE,
)
_FULL = frozenset(("weight", "cost", "can my saw cut it"))


def still_to_get(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line tells how many there are already of what was just counted, and asks how many more: the rest of them."""
    last = c.last if c.pending is None else None
    answer = last.record.get("answer") if last is not None else None
    found = _THERE.fullmatch(text) if answer and answer["unit"] == "count" and answer["value"] else None
    if last is None or not answer or found is None or last.plus or last.topic.name in _FULL:
        return False
    there = whole_of(found["n"])
    words = {stem(word) for word in str(answer["name"]).lower().split()} | last.things
    named = [stem(word.strip().lower()) for word in (found["what"], found["more"]) if word and word.strip() not in ("of", "in")]
    if there < 1 or not words.issuperset(named):
        return False
    if there >= Fraction(str(answer["value"])):
        put_asked(record, last.topic.name, f"It takes {answer['text']}, and there are {there}: what do you want to know of them?")
        return True
    c.finish(record, [c.worked(replace(last, plus=Fraction(-there), put="there"), told_of(last))], Question(last.topic.name))
    if record["outcome"] == "answered":
        record["say"] = spoken(f"With {there} there already, of {answer['text']}. ") + record["say"]
    return True


def some_over(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line puts so many more to what was just counted: add one for the corner; those are counted with it."""
    last = c.last if c.pending is None else None
    answer = last.record.get("answer") if last is not None else None
    found = (_OVER.fullmatch(text) or _TO_THAT.fullmatch(text)) if answer and answer["unit"] == "count" else None
    groups = found.groupdict() if found is not None else {}
    said = groups.get("n") or groups.get("m") or ""
    more = whole_of(said) if said and whole(said) else 0
    if last is None or not answer or more < 1 or last.topic.name in _FULL or last.put not in ("", "over"):
        return False
    c.finish(record, [c.worked(replace(last, plus=last.plus + more, put="over"), told_of(last))], Question(last.topic.name))
    if record["outcome"] == "answered":
        record["say"] = spoken(f"With {more} more than {answer['text']}. ") + record["say"]
    return True


def sticks_for_so_many(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks how many sticks, or how many more than there are, give so many of the pieces just worked."""
    last = c.last if c.pending is None else None
    found = _AFTER.fullmatch(text) if last is not None and last.topic.name == PIECES and last.record.get("answer") else None
    wanted = whole_of(found["n"]) if found is not None else 0
    if last is None or found is None or wanted < 1 or not same_stick(found["which"], last):
        return False
    if found["what"] and stem(found["what"].lower()) in OF_STICKS:
        return False
    sticks = number_of(last, "sticks")
    each, there = Fraction(str(last.record["answer"]["value"])) / max(sticks, 1), sticks if found["more"] else 0
    if not each or bool(there) != bool(found["more"]) or wanted <= there * each:
        return False
    rest = wanted - there * each
    known = {
        "many": Number(Fraction(1), "none", "1"), "number_done": Count(each, "count", f"{each} of each stick"),
        "number": Count(rest, "count", f"{rest} still to cut" if there else str(rest)),
    }  # fmt: skip
    asked = Asked(c.topics["by the same rate"], {}, metric=last.metric)
    way = c.worked(asked, {name: Given(name, value, "asked") for name, value in known.items()})
    c.finish(record, [way], Question(asked.topic.name))
    return True


def with_spare(c: Conversation, record: Record, text: str) -> bool:
    """Whether the line asks for so many of the length just worked and so much over; then that sum is worked."""
    last = c.last if c.pending is None else None
    answer = last.record.get("answer") if last is not None else None
    found = _SPARE.fullmatch(text) if answer and answer["unit"] in LENGTH else None
    if last is None or found is None or last.topic.name == SUM:
        return False
    places = places_of(found["more"])
    many = 2 if (found["n"] or "").lower() == "both" else int(numbers_in(found["n"])[0].value.value) if found["n"] else 1  # type: ignore[union-attr]
    each = length_of(last)
    if whole(found["more"]) is None or each is None or not isinstance(places[0].value, Length):
        return False
    over = replace(places[0].value, text=found["more"])
    one = Sum(TIMES, Number(Fraction(many), "none", str(many)), each) if many > 1 else each
    asked = Asked(c.topics[SUM], {}, metric=last.metric)
    c.finish(record, [c.worked(asked, {"sum": Given("sum", Sum(PLUS, one, over), "asked")})], Question(SUM))
    return True
