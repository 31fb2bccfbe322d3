"""A line after an answer, in the fuller words that it stands for: "mm?" is "in mm", "back to 16" is "make it 16".

Nothing is added to what was said: only a word that every such line leaves out is put in, and "one" that stands for a thing
("the one beside it", "a four foot wide one") is taken for no number.
"""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant.also_asked import asking_words
from assistant.at_a_pitch import at_a_pitch
from assistant.choice_told import choice_alone
from assistant.from_a_length import from_a_length
from assistant.in_figures import in_figures
from assistant.in_its_terms import in_its_terms
from assistant.meant_for import said_bare
from assistant.metric_talk import pounds_as_money
from assistant.names import SUM
from assistant.of_its_question import kept_in_words, of_its_question
from assistant.rate_in_its_terms import costs_each
from assistant.said_at_length import said_at_length
from assistant.said_over import places_of
from assistant.spelled_out import spelled_out
from assistant.sum_in_talk import sum_in_talk
from assistant.told_by_its_name import in_its_names
from intents.expressions import expression
from intents.matcher import speller
from intents.talk import numbers_in
from solvers.quantities import Length, Temperature
from solvers.slots import Choice

if TYPE_CHECKING:
    from assistant.pending import Asked

LONGEST = 120  # characters of such a line
_UNIT = expression(
    r"\W*(?:(?:and|so|ok|now|back in|back to|give me|in|what(?:'?s| is) (?:that|it) in|thats|that'?s how many|how many)\W+)*"
    r"(?P<unit>mm|mills?|mils?|millimet(?:re|er)s?|cms?|centimet(?:re|er)s?|met(?:re|er)s?|metric|inches|inch|feet"
    r"|foot|feet and inches)(?: please| is (?:that|it)| then)?\W*",
    re.IGNORECASE,
)
_BACK = expression(r"\W*(?:(?:no|ok|and|then|so|now|right|actually)\W+)*back to (?:the |an? )?(?P<rest>.+)", re.IGNORECASE)
_MORE = expression(r"[,;:]\s")  # back to the 42 boards, how many boxes
_BESIDE = expression(
    r"\bthe one (?=(?:beside|next|on|at|by|over|opposite|across|behind|above|below|round|around)\b)", re.IGNORECASE
)
_SUCH = expression(r"\b(wide|high|deep|tall|thick) one\b", re.IGNORECASE)  # the long one is the long side
_HOUSE = expression(
    r"\b(both|all) (?:the )?(sides|ends) of (?:the|this|that|my) (?:house|roof|building|place|boathouse|shed|garage|barn)\b",
    re.IGNORECASE,
)
_PARTS = expression(
    r"\W*(?:(?:and|or|so|ok|then|what about|how about)\W+)*(?:in(?:to)? )?"
    r"(?P<parts>halves|thirds|quarters|fifths|sixths|eighths)(?: of (?:that|it))?\W*",
    re.IGNORECASE,
)
_NEAREST = expression(
    r"\W*(?:(?:and|or|so|ok|now|just)\W+)*(?:in |to )?(?:the )?(?:nearest )?"
    r"(?P<mark>eighth|sixteenth|thirty[- ]?second|32nd|16th|8th)s?\W*",
    re.IGNORECASE,
)
_TO_THE_HALF = expression(
    r"\W*(?:(?:and|or|so|ok|now|just)\W+)*to the (?:nearest )?(?P<mark>half|quarter)(?: inch)?\W*", re.IGNORECASE
)
_PUT_ON = expression(
    r"\W*(?:(?:and|now|then|ok|so)\W+)*put (?P<size>an? \S+(?: \S+){0,3}?) "
    r"(?P<what>overhang|lap|kerf) on(?: (?:to )?(?:it|that|this|there)(?: one)?)?\W*",
    re.IGNORECASE,
)
_CALLED = {"mill": "mm", "mills": "mm", "mil": "mm", "mils": "mm"}
_INTO = {"halves": 2, "thirds": 3, "quarters": 4, "fifths": 5, "sixths": 6, "eighths": 8}
_OTHER_TIMES = expression(  # of a sum that was multiplied: sorry, times four
    r"\W*(?:(?:and|no|nope|sorry|wait|oops|actually|i meant|i mean|make it|make that|that should be|should be)\W+)+"
    r"(?:times|by|x|×) (?P<n>\d+|[a-z]+)(?: (?:not|instead of) .*)?\W*",
    re.IGNORECASE,
)
_TIMES = expression(r"(?:\btimes|[x×]) (?:\d+|[a-z]+)\b", re.IGNORECASE)
_DIVIDED = expression(
    r"\b(?:(?:split|divided?|cut|break|broken)(?: up)? )?(?:in|into|by) (?:half|halves|thirds|quarters|fifths|sixths|eighths"
    r"|two|three|four|five|six|seven|eight|nine|ten|\d+)(?: (?:equal |even )?(?:parts|pieces|bits))?(?=\W*$)",
    re.IGNORECASE,
)
_AT_ALL = expression(r"(\b(?:no|without|any) [a-z]+) at all\b", re.IGNORECASE)  # no overhang at all
_TAKEN = expression(
    r"\W*(?:(?:and|ok|so|now|then|please)\W+)*take (?:that|the|this) (?P<what>.*\b(?:window|door|opening)s?) (?:out|off|away)"
    r"(?: of (?:it|that|there))?\W*",
    re.IGNORECASE,
)  # fmt: skip
_HOW_ABOUT = expression(r"\b(how|what) ?bout\b", re.IGNORECASE)
_WORD = expression(r"[A-Za-z]{4,}")
_MENDED = frozenset(
    "degrees inches millimetres millimeters centimetres centimeters metres meters percent celsius fahrenheit metric nearest"
    " high wide long deep thick length width height area many much without instead about waste overhang exposure centres centers"
    " square times hundred third fourth fifth sixth seventh eighth window windows opening openings corner corners".split()
)
_THEN_ASKS = expression(
    r"[,;.]?\s+(?:and |so |then )*(?:how (?:much|many|long|far|high|tall|heavy)|what(?:['’]?s| is)?(?: the)?) .*$", re.IGNORECASE
)
_NONE_OF = expression(
    r"\W*(?:(?:and|so|ok|then)\W+)*(?:with )?(?:no|without)(?: any)? (?:waste|kerf|overhang|spare)", re.IGNORECASE
)
_HOW_MANY = expression(r"\W*(?:so )?how (?:many|long|much)(?: (?:is|are) (?:it|that|there))?(?: then| now)?\W*", re.IGNORECASE)
_IN_THE_STUD = expression(
    r"(?<=[\w½¼¾]) in (?=(?:the |a |my )?(?:studs?|framing|frame|joists?|rafters?|wall|timber|post|beam)\b)", re.IGNORECASE
)  # which are no inches: 30 in the stud
_ROOFS = expression(r"^(\W*(?:(?:the|my|our|this) )?)roofs ([\w .-]+? (?:degrees?|deg)\W*)$", re.IGNORECASE)  # dictated, of one
_FOR_TWELVE = expression(  # if we made it for twelve, as four is heard
    r"\b(?P<lead>at|to|it|was|be|were|with|made) for (?:twelve|12)\b(?! (?:foot|feet|ft|inch|mm|m\b|of))", re.IGNORECASE
)
_SO_LONG = expression(
    r"\W*(?:(?:and|so|ok|then|now)\W+)*(?:how many|from|out of|in|using|with) (?P<n>[1-7]\.\d)(?:['’]?s| lengths)"
    r"(?: (?:do|will|would) (?:i|we|that|it) (?:need|take|be)| is that|then)?\W*",
    re.IGNORECASE,
)
_FULL = expression(
    r"\W*(?:(?:and|so|ok|but|if|when|only|just|about|it['’]?s|say)\W+)*"
    r"(?P<share>half|a third|a quarter|two thirds|three quarters) full\W*",
    re.IGNORECASE,
)
_FROM = expression(r"\W*(?:(?:and|so|ok|but|or|then)\W+)*from (?P<n>[^,;?]+?)(?: (?:instead|then|now))?\W*", re.IGNORECASE)
_CUT = ("pieces from a stick", "cut list", "trim sticks", "strapping")
_OUT_OF_A = expression(  # which is from one
    r"^(\W*(?:(?:and|or|so|ok|then|what about|how about|if it['’]?s)\W+)*)out of an? "
    r"(?=\S+(?: (?:foot(?:er)?|ft|met(?:re|er)|m|inch))?\W*$)",
    re.IGNORECASE,
)
_AFTER_ALL = expression(r",? after all\W*$", re.IGNORECASE)
_FROM_TO = expression(  # of exposures, which take nothing off one another
    r"\W*(?:(?:and|so|ok|no|sorry|make it|anything|exposure)\W+)*between (?P<least>[^,;?]+?) and (?P<most>[^,;?]+?)\W*",
    re.IGNORECASE,
)
_ITS_AREA = expression(
    r"\W*(?:(?:and|so|ok|then|what['’]?s|what is|how much is|the|total)\W+)*area"
    r"(?: (?:of|on|in) (?:it|that|this|the (?:gable|triangle|end)))?\W*",
    re.IGNORECASE,
)
_REVEAL = expression(r"\breveal['’]s\b", re.IGNORECASE)
_I_MEASURE = expression(
    r"\W*(?:(?:and|but|so|ok)\W+)*(?:(?:i|we|he)(?:['’](?:m|re|s|ve))? (?:measured?|get|got|read|make it|made it"
    r"|pulling|pulled|reading|getting|measuring)|it (?:measures|reads))"
    r" (?P<n>[^,;?]+?)(?: on (?:one|one of (?:them|those|'?em)|the (?:diagonal|long one|other)))?,?"
    r" (?:and |so |then )*how (?:far|much) (?:is it |is that |am i |are we )?(?:out|off)(?: of square)?(?: is (?:it|that))?\W*",
    re.IGNORECASE,
)
_IF_NEEDED = expression(  # how many would I need if they were 16 foot boards
    r"\W*(?:(?:and|so|ok|then)\W+)*how many (?:of them |boards |lengths |sticks )?(?:would|will|do) (?:i|we) need"
    r" (?:if|when|with|in) (?P<what>[^?]*\d[^?]*?)\W*",
    re.IGNORECASE,
)
_TURNS = expression(  # of a bay, whose angle is how far it turns
    r"\W*(?:[a-z']+[\s,]+){0,10}?(?:turn(?:s|ed|ing)?|is|was|were)(?: only| really| actually)? (?P<n>\d[\d.]*)"
    r"(?: ?(?:degrees?|deg|°))?(?: at each corner| each| there)?\W*",
    re.IGNORECASE,
)
_ENOUGH = expression(
    r"\W*(?:(?:and|so|ok|is|are|would|will|would|be|an?|the|do|does|can i use|if i use)\W+)*(?P<n>[^,;?]*?\d[^,;?]*?|[^,;?]+?)"
    r"(?:\s+(?:inch(?:es)?|in|mm))?(?:\s+(?:screws?|nails?|ones?))?\s+(?:be |is |are )?(?:long |going to be )?enough\W*",
    re.IGNORECASE,
)
_GAP_FOR = expression(
    r"\W*(?:(?:and|so|ok|then)\W+)*(?:what(?:['’]?s| is)? )?(?:the )?(?:gap|space|spacing)(?: do i get| is it| would it be)?"
    r" (?:for|with) (?P<n>\d+|[a-z]+)(?: of (?:them|those)| pieces)?\W*",
    re.IGNORECASE,
)
_IF_CUT = expression(  # of a corner: if I cut it at 45, how much gap on a 4 1/2 face
    r"\W*(?:(?:and|so|ok|but|then|what)\W+)*(?:(?:how (?:much|big|far)|what)\b[^\d]*\b(?:gap|open)\b[^\d]*)?"
    r"\b(?:if|when)\b[^\d]*?\b(?:cut|set)\b[^\d]*?(?P<at>\d[\d./ ]*?(?: and a half)?)(?: degrees| deg|°)?(?: each| both)?"
    r"(?:,? (?:and |so )?(?:how (?:much|big|far)|what)\b[^\d]*\b(?:gap|open)\b[^\d]*?|,? ?)"
    r"(?:(?:on|over|across|in) (?:an? )?(?P<face>\d[\d./ ]*?)(?: ?(?:inch|in|\"))?(?: (?:face|wide|trim|board))?)?\W*",
    re.IGNORECASE,
)
_BARGE = expression(  # whose name the topics have: and the barge boards with 350 of overhang
    r"^(\W*(?:(?:and|so|then|ok|now)\W+)*(?:the )?)barge ?boards?(?= (?:with|at|for|on)\b)", re.IGNORECASE
)
_PLUS = expression(r"(?<=\b(?:low|air|out) )plus (?=\d|[a-z]+\W*$)", re.IGNORECASE)  # five, and no minus five: nothing is added
_PER_CENT = expression(r"\bper cent\b", re.IGNORECASE)
_THE_TWO = expression(r"\bbetween (?:the|those|these) two (?!of\b)(?=[a-z])", re.IGNORECASE)  # which are no number
_LEVELLY = expression(r",? (?:measured )?(?:on|along) the (?:level|flat)(?=\W*$)", re.IGNORECASE)  # as overhangs are
_ALL_FOUR = expression(  # of the rakes of a building with two gables
    r"\W*(?:(?:and|so|ok|then|now)\W+)*(?:how (?:long|much)(?:['’]?s| is| are)? |what(?:['’]?s| is) |for )?"
    r"(?:all (?:the )?four|all 4|both (?:ends|gables)(?: of (?:the|this) (?:building|house|roof))?)"
    r"(?: (?:of them|rakes|barges|barge boards|bargeboards|verges|boards|sides))?"
    r"(?:,? (?:how (?:much|long)(?: is (?:it|that))?|altogether|in all|in total|together))*\W*",
    re.IGNORECASE,
)
_AREAS = ("wall area", "gable area")  # which have no waste of their own
_WITH_WASTE = expression(
    r"\W*(?:(?:and|so|ok|then|now)\W+)*with (?:an? )?(?:extra )?(?P<n>\d+) ?(?:%|percent)"
    r"(?: (?:for )?(?:waste|extra|more|over))?\W*",
    re.IGNORECASE,
)
_GAPS = expression(r"\b(?:gap|open)\b", re.IGNORECASE)


def told_shortly(text: str, last: Asked | None, waits: bool) -> str:
    """The line in fuller words; as it is where it is no such line. `waits`: something was asked, and this may be the reply."""
    text = kept_in_words(_ROOFS.sub(r"\g<1>roof is \g<2>", text))
    if last is None or not last.record.get("answer") or len(text) > LONGEST:
        return text
    text = _without_what_stays(text, last)
    if last.topic.name == "weight" and not waits and (priced := costs_each(text, last)):
        return priced  # a bare number there weighs
    text = in_figures(pounds_as_money(_respelt(spelled_out(_in_one_spelling(text, last))), last), last)
    text = _AFTER_ALL.sub("", _SUCH.sub(r"\1", _BESIDE.sub("the other ", text))) if numbers_in(text) else text
    text = _AT_ALL.sub(r"\1", _HOUSE.sub(r"\1 \2", _OUT_OF_A.sub(r"\1from a ", text) if last.topic.name in _CUT else text))
    if "pitch" in last.givens:
        text = _FOR_TWELVE.sub(r"\g<lead> 4/12", text)
    if "penetration" in last.givens:
        text = _IN_THE_STUD.sub(" into ", text)
    return text if waits else in_its_terms(text, last) or _in_fuller_words(text, last)


def _without_what_stays(text: str, last: Asked) -> str:
    """The line without the given that it says is as before: 18 now, humidity the same."""
    for name in (name for name, given in last.givens.items() if given.source != "assumed"):
        label = re.escape(last.topic.parameter(name).label)
        same = rf"[,;]\s*(?:and )?(?:the )?(?:{label} (?:is |stays? )?(?:the )?same|same {label})\W*$"
        found = re.search(same, text, re.IGNORECASE)
        if found is not None and numbers_in(text[: found.start()]):
            return text[: found.start()]
    return text


def _in_fuller_words(text: str, last: Asked) -> str:
    """The line after an answer in fuller words, where nothing waits for a reply."""
    if "overhang" in {parameter.label for parameter in last.topic.parameters} and "overhang" in text.lower():
        text = _LEVELLY.sub("", text)
    text = sum_in_talk(said_at_length(_without_the_ask(text, last), last), last)
    text = from_a_length(at_a_pitch(in_its_names(text, last), last), last)
    if stands_for := _of_its_topic(text, last) or of_its_question(text, last):
        return stands_for
    unit, back, parts, taken = (pattern.fullmatch(text) for pattern in (_UNIT, _BACK, _PARTS, _TAKEN))
    if unit and not _unit_open(last):
        return f"in {_CALLED.get(unit['unit'].lower(), unit['unit'])}"
    value = back and len(numbers_in(text)) == 1 and not _MORE.search(back["rest"])
    if back and value and [place.start for place in places_of(back["rest"])][:1] == [0]:
        return f"make it {back['rest']}"
    if back and any(issubclass(p.kind, Choice) and back["rest"].upper() in p.kind.__members__ for p in last.topic.parameters):
        return str(back["rest"])
    times = _OTHER_TIMES.fullmatch(text) if last.topic.name == SUM and last.times == 1 else None
    if times is not None and len(_TIMES.findall(last.text)) == 1:
        return _TIMES.sub(f"times {times['n']}", last.text)
    if parts and last.topic.name == SUM:
        into = _INTO[parts["parts"].lower()]
        return _DIVIDED.sub(f"divided by {into}", last.text) if _DIVIDED.search(last.text) else f"split that in {into}"
    nearest = _NEAREST.fullmatch(text) or _TO_THE_HALF.fullmatch(text)
    put = _PUT_ON.fullmatch(text)
    if put and any(parameter.label.endswith(put["what"].lower()) for parameter in last.topic.parameters):
        return f"with {put['size']} {put['what']}"
    if nearest:
        return f"to the nearest {nearest['mark']}"
    if taken and numbers_in(taken["what"]):
        return f"less a {taken['what']}"
    return text


def _in_one_spelling(text: str, last: Asked) -> str:
    """The line with what is said in two words, or by another name, as it is known: per cent, barge boards, plus five degrees."""
    text = _REVEAL.sub("reveal is", text)
    text = _BARGE.sub(r"\g<1>rake", _PER_CENT.sub("percent", _THE_TWO.sub("between the ", text)))
    warm = any(isinstance(given.value, Temperature) for given in last.givens.values())
    return _PLUS.sub("", text) if warm else text


def _of_its_topic(text: str, last: Asked) -> str:
    """What a line stands for after a question of one topic, or of one thing; "" where it stands for nothing else."""
    mine = _I_MEASURE.fullmatch(text) if last.topic.name in ("square check", "out of square") else None
    if mine and len(numbers_in(mine["n"])) == 1:
        return f"how far out of square if it measures {mine['n']}"
    if last.topic.name in ("gable height", "rake length") and _ITS_AREA.fullmatch(text):
        return "gable area"
    if needed := _IF_NEEDED.fullmatch(text):
        return f"what if {needed['what']}"
    if last.topic.name == "rake length" and last.times == 1 and _ALL_FOUR.fullmatch(text):
        return "four of them"
    turned = _TURNS.fullmatch(text) if "bay" in last.givens else None
    if turned:
        return f"make it a {turned['n'].strip()} degree bay"
    enough = _ENOUGH.fullmatch(text) if last.topic.name == "fastener length" else None
    if enough and len(numbers_in(enough["n"])) == 1:
        return f"will a {enough['n']} do"
    wasted = _WITH_WASTE.fullmatch(text) if last.topic.name in _AREAS else None
    if wasted:
        return f"plus {wasted['n']} percent"
    cut, corner = _IF_CUT.fullmatch(text), last.givens.get("corner")
    if cut and _GAPS.search(text) and last.topic.name == "miter for a corner" and corner is not None:
        face = f", {cut['face'].strip()} inch face" if cut["face"] else ""
        return f"how far open if both are cut at {cut['at'].strip()} and the corner is {float(corner.value.value):g}°{face}"
    apart = _GAP_FOR.fullmatch(text) if last.topic.name == "equal spacing" else None
    if apart and len(numbers_in(apart["n"])) == 1:
        return f"make it {apart['n']} pieces"
    start = _FROM.fullmatch(text) if last.topic.name == "marks on centre" else None
    if start and len(numbers_in(start["n"])) == 1:
        return f"start at {start['n']}"
    full = _FULL.fullmatch(text) if last.topic.name == "water in a channel" else None
    if full:
        return f"{full['share']} of that"
    labels = {parameter.label for parameter in last.topic.parameters}
    between = _FROM_TO.fullmatch(text) if {"least exposure", "greatest exposure"} <= labels else None
    if between and len(numbers_in(text)) == 2:
        return f"from {between['least']} to {between['most']}"
    choice = choice_alone(text, last)
    return _metric_stock(text, last) or (f"make it {choice}" if choice else "")


def _metric_stock(text: str, last: Asked) -> str:
    """The line with what the sticks are cut from by its name: how many 4.8s, of straps whose stock was not told."""
    found = _SO_LONG.fullmatch(text)
    stock = [p.name for p in last.topic.parameters if p.slot.kept in ("stock length", "board length")]
    told = any(name in last.givens and last.givens[name].source != "assumed" for name in stock)
    return f"from {found['n']} m lengths" if found is not None and stock and not told else ""


def _respelt(text: str) -> str:
    """The line without slips in the words that a change goes by: sixty degress, how bout eleven, 2.4 m hihg."""
    read = speller().read
    text = _HOW_ABOUT.sub(r"\1 about", text)
    return _WORD.sub(lambda word: read(word[0].lower()) if read(word[0].lower()) in _MENDED else word[0], text)


def _without_the_ask(text: str, last: Asked) -> str:
    """The change of a line that asks as well for a value beside the answer, which is said with it: 2.25 high, how much in all."""
    found = _THEN_ASKS.search(text)
    if found is not None and _NONE_OF.fullmatch(text[: found.start()]) and _HOW_MANY.fullmatch(found[0]):
        return text[: found.start()]
    if last.topic.name == "right triangle":
        return text  # whose part that is asked for is a given
    if found is None or numbers_in(found[0]) or not numbers_in(text[: found.start()]) or found.start() == 0:
        return text
    return text[: found.start()] if asking_words(last.topic.name, found[0]) else text


def _unit_open(last: Asked) -> bool:
    """Whether a length of the question was said without its unit, which the word may then be."""
    lengths = [given.value for given in last.givens.values() if isinstance(given.value, Length) and given.source == "asked"]
    return any(said_bare(value) for value in lengths)
