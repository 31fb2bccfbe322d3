"""A line after a question, in the plain words of a change: "leave the waste out" is "no waste", "it turns out they're at 24" is
"they're at 24", "if we hang it at 80" tells how warm it is now.

Nothing is added to what was said; only words that the change does not need are taken out, or a name put in that the question has.
"""

from __future__ import annotations

import re
from collections.abc import Iterator
from typing import TYPE_CHECKING

from assistant.heard_all import unheard
from assistant.said_over import stem
from assistant.told_round import State, take_shorter
from intents.expressions import expression
from intents.islands import light_words
from intents.talk import numbers_in
from intents.tokens import tokenize
from solvers.quantities import Length, Money
from solvers.slots import Choice

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked
    from assistant.record import Record

LONGEST = 240  # characters of a line that is looked at so
_TURNS_OUT = expression(r"\W*\b(?:as )?(?:it )?turns out\b(?! to\b)(?: that)?\W*", re.IGNORECASE)
_BACK_TO = expression(
    r"\W*(?:(?:no|nah|ok|right|actually|so|and|can we|could we|let'?s|lets|we'?ll|i'?ll|we)\b\W*|(?:what )?if (?:it|they|we|i) )*"
    r"(?:just )?(?:go|going|went|switch|change|stick|stay)(?: it)? (?:back )?(?:to"
    r"|with) (?!the [a-z]+(?: [a-z]+)?\s*[,:;/])(?:the )?"
    r"(?!(?:steps?|marks?|line)\b)(?=\S+(?: \S+){0,3}$)",
    re.IGNORECASE,
)
_SUPPOSED = expression(r"\W*(?:what )?if\b", re.IGNORECASE)
_LEFT_OUT = (
    r"\W*(?:(?:no|ok|oh|actually|so|and|but|with|what about|how about|what if (?:we|i)"
    r"|we|i|just|please|can you|could you|we'?ll|i'?ll|let'?s|you can)\b\W*)*"
    r"(?:(?:do not|don'?t|didn'?t|never) (?:bother |worry )?(?:add|adding|include|want"
    r"|need|count|allow|put|figure|take|use|with|about)(?: in| on| me| for)?"
    r"|leave(?: off| out)?|skip|forget(?: about)?|ditch|drop|ignore|lose"
    r"|scrap|take(?: off| out)?"
    r"|without|never mind|minus|less|no|(?:there'?s|there is|it'?s got|it has|we'?ve) no)"
    r" (?:(?:any|the|that|all|for|my|your|extra)\b ?)*"
)
_LEFT_AFTER = (
    r"(?: (?:out|off|in|on|of|to|it|that|this|them|there|out of it|altogether|please|then|now"
    r"|though))*(?:\W*|\s*[,;.].*)"
)
_HUNG = expression(
    r"\b(?:(?:it'?s|it has|they'?re|we) )?(?:(?:hang|hung|hanging|put|putting|fit|fitted|fitting|install|installed|installing"
    r"|nail|nailed|fix|fixed|fixing)(?: (?:it|them|that|up|in|on))*|(?:warmed|cooled)(?: up| down| off)? to|gone (?:up|down) to"
    r"|(?:wait|leave it|hold off)(?: for (?:it|that)| till| until| it)*(?: to)? (?:gets?|warms?|cools?|hits|reaches|is|it's)"
    r"(?: (?:up|down|off))*(?: to)?)"
    r"(?: (?:at|in|when it'?s))* (?=(?:minus |-)?\d)",
    re.IGNORECASE,
)
_PEAKS = expression(r"\b(?:(?:only|never) gets to|gets? up to|reach(?:es)?|peaks? at|tops? out at|hits) (?=\d)", re.IGNORECASE)
_DROPS = expression(
    r"\b(?:only )?(?:drops?(?: down)? to|gets? down to|falls? to|bottoms? out at) (?=(?:minus |-)?\d)", re.IGNORECASE
)
_MOVES_TO = expression(  # what if the architect drops it to an eight
    r"\W*(?:and |so |ok |what (?:does|would) (?:that|it) do if "
    r"|what happens if |what if |if |suppose |say |maybe )*(?:[a-z']+ ){0,3}?"
    r"(?:(?<=if it )(?:drops|goes|changes|comes)|(?:drop|bump|push|raise|lower|change|bring|cut|take|move|knock"
    r"|put)(?:s|ed|ped|es)? (?:it|that|them|this|(?=the [a-z]+ to)))"
    r"(?P<of>the [a-z]+)?"
    r" (?:down |up |back |out |in )?to (?:an? |the )?(?=\S+(?: \S+){0,3}$)",
    re.IGNORECASE,
)
_SUPPOSES = expression(r"\W*(?:(?:and|so|ok) )*(?:what|if|suppose|say|maybe)\b", re.IGNORECASE)
_SOLD_IN = expression(  # the supplier says they only come in twelves
    r"\b(?:only |just )?(?:comes?|came|sells?|stocks?|carry|carries|does|do|got|had|has|have)(?: (?:them|it|those|that))?"
    r"(?: only| just)?(?: in)? (?:the )?(\d+(?:'?s| ?footers?)"
    r"|(?:tens|twelves|fourteens|sixteens|eighteens|twenties|eights|nines)"
    r"|(?:eight|nine|ten|twelve|fourteen|sixteen|eighteen|twenty)[ -]footers?)(?: left| in stock| there)?[\s.!]*$",
    re.IGNORECASE,
)
_GOT_BY = expression(  # Mick had it at 33.7, is he right
    r"\W*(?:(?:and|but|so|well|hm+|now)\b\W*)*((?:the |my |our )?(?:[a-z]+ )?[a-z]+)"
    r" (?:had|has|got|gets|makes|made|says|said|reckons|reckoned)"
    r"(?: (?:it|that))?(?: (?:at|as|to be|down as|is|was))? (?P<n>[^,;?]+?)[,;.]? (?:is|are|was|would|will) "
    r"(?:he|she|that|it|they|this|his|her)(?: be| one)?"
    r" (?:right|wrong|close|close enough|near enough|near|ok|okay"
    r"|good enough|about right|fine|any good|out|off|correct)\W*",
    re.IGNORECASE,
)
_FOOTERS = {"tens": "ten", "eights": "eight", "nines": "nine", "twelves": "twelve", "fourteens": "fourteen",
            "sixteens": "sixteen", "eighteens": "eighteen", "twenties": "twenty"}  # fmt: skip
_HOW_MANY_LONG = expression(  # how many 12s do I need, how many sixteens is that
    r"\W*(?:(?:and|so|then|ok|but)[ ,]+)*how many "
    r"(\d+'?s|\d+[ -]?footers?|tens|eights|twelves|fourteens|sixteens|eighteens|twenties)"
    r"(?: (?:do|will|would) (?:i|we|you|that|it) (?:need|want|take|be|get|buy)"
    r"| (?:is|are) (?:that|it|those)| for (?:that|it))?\W*",
    re.IGNORECASE,
)
_FROM_SO_LONG = expression(  # from 10s, out of sixteens
    r"\W*(?:(?:and|so|then|ok|but|what about|how about)[ ,]+)*(?:from|out of|using) "
    r"((?:[6-9]|1\d|2[0-4])'?s|tens|eights|twelves|fourteens|sixteens|eighteens|twenties)\W*",
    re.IGNORECASE,
)
_AS_BEFORE = expression(r"^(?:and|or|ok|no)\W+|\W+(?:again|then|instead|this time)$", re.IGNORECASE)
_CHOSEN = ("fascia",)  # what is chosen by a word that may be another question's: square, plumb
_ABOUT = expression(  # about 6, of courses
    r"\W*(?:(?:and|so|ok|then|but|now|say|more like)[ ,]+)*(?:about|around|roughly|near|(?:near|clos)er to|close to)"
    r" (?P<n>\d[\d /]*)\W*",
    re.IGNORECASE,
)
_SIDE = r"[\d'\" /.½¼¾-]+(?: ?(?:foot|feet|ft|inch(?:es)?|m)\b)?"
_HOLE = expression(  # less a 3 by 7
    r"\W*(?:(?:and|then|so|ok|but|also|now)[ ,]+)*(?:less|minus|take(?: out| off| away)?|subtract|deduct|knock out|cut out|with)"
    rf" (?P<n>(?:an? |one |two |three |four |five |six |\d+ ){_SIDE} ?(?:by|x|×) ?{_SIDE})"
    r"(?: (?P<what>vents?|louv(?:re|er)s?|hatch(?:es)?|hole|opening|round one|round vent))?"
    r"(?P<out> (?:out|off|away|from|in)(?: (?:of|from))?(?: (?:it|that|there|the gable|the wall|the area))?)?\W*",
    re.IGNORECASE,
)
_BOUGHT_BY = ("stock", "stock length", "board length", "panel length", "roll length")
_OF_A_PIECE = ("end gap", "thermal movement")
_SO_DEEP = expression(
    r"\b(?:so|meaning|which makes it) (?:it'?s |that'?s |call it |say |really |actually |only |now )*(?=(?:an?\b|\d)[^,;.?]*$)",
    re.IGNORECASE,
)
_THIS_ONE = expression(r"\b(?:this|that|the other|the) (?:one|wall|side|roof|gable|job)\b", re.IGNORECASE)
_NEAREST = expression(r"\b(?:to )?(?:the )?nearest (?:\w+|\d+/\d+)(?: of an inch)?\b", re.IGNORECASE)
_IN_UNIT = expression(r"\bin (?:inches|inch|feet|mm|millimet\w+|metric|met(?:er|re)s)\b", re.IGNORECASE)
_IF = expression(r"\b(?:if|supposing|say)\b(?! (?:you|not)\b)", re.IGNORECASE)
_NOW_ITS = expression(
    r"\b(?:it'?s|it is|they'?re|they are|it'?ll be|it will be|they'?ll be|it has to be|it needs to be)\b(?=[^,;.?]*$)",
    re.IGNORECASE,
)
_OF_ANY = frozenset(
    "how what whats is are was were be will do does big long high wide deep many much far it that they them would get need come"
    " make work out s lose cut piece i we".split()
)
_PUTS_TO = expression(
    r"\b(?:out|off|less|minus|plus|add|another|take|takes|except|forget|without|doors?|windows?|openings?|more|extra)\b",
    re.IGNORECASE,
)
_ASKS_SO = expression(r"\b(?:how|what|what'?s|would|will|does|do|is|are|many|much)\b", re.IGNORECASE)


def plainer(text: str, last: Asked | None) -> str:
    """The line in plainer words, where it follows a question and says that something of it is left out or is so."""
    if last is None or len(text) > LONGEST:
        return text
    low = text.lower()
    if "turn" in low:
        text = _TURNS_OUT.sub(" ", text).strip()
    if "nearest" in low and _IN_UNIT.search(text) and not numbers_in(_NEAREST.sub(" ", text)):
        return _NEAREST.sub(" ", text).strip()  # a mark of the tape is no length to be put in inches
    if not numbers_in(_THIS_ONE.sub(" ", text)):
        return _chosen(text, last) or _without(text, last)
    about = _ABOUT.fullmatch(text)
    if about is not None and any(p.name == "meant" for p in last.topic.parameters):
        return f"about {about['n']} exposure"
    hole = _HOLE.fullmatch(text)
    if hole is not None and _is_a_hole(hole, last):
        many, _, size = hole["n"].partition(" ")
        one = many.lower() in ("a", "an", "one", "1")
        return f"less {'an opening' if one else f'{many} openings'} {size}"
    if last.topic.name == "end gap" and not _SOLD_IN.search(text):
        for told, name in ((_HUNG, "now"), (_PEAKS, "hottest"), (_DROPS, "coldest")):
            text = told.sub(f"{last.topic.parameter(name).label} ", text)
        return text
    by = _GOT_BY.fullmatch(text)
    if by is not None and len(numbers_in(text)) == len(numbers_in(by["n"])) == 1:
        return f"{by[1]} makes it {by['n']}"
    sold = _SOLD_IN.search(text)
    if sold is not None and len(numbers_in(text)) == 1 and _sold_by_length(last):
        return f"what about the {_FOOTERS.get(sold[1].lower()) or re.split('[^a-z0-9]|s$', sold[1].lower())[0]} footers"
    many = _HOW_MANY_LONG.fullmatch(text) or _FROM_SO_LONG.fullmatch(text)
    if many is not None and any(p.slot.kept in ("stock length", "board length") for p in last.topic.parameters):
        return f"from {_FOOTERS.get(many[1].lower()) or re.split('[^0-9]', many[1])[0]} footers"
    if any(isinstance(given.value, Money) for given in last.givens.values()):
        return text  # they've put them up to 31: what is charged is told apart by who says it
    return _BACK_TO.sub(_made_so, _MOVES_TO.sub(_made, text, count=1), count=1)


def _is_a_hole(hole: re.Match[str], last: Asked) -> bool:
    """Whether a size is taken out of an area: "with a 2 by 3" of no name may be anything."""
    told = hole["what"] or hole["out"] or " with " not in f" {hole[0].lower()}"
    return bool(told) and any(parameter.name == "openings" for parameter in last.topic.parameters)


def _chosen(text: str, last: Asked) -> str:
    """The line with the name of what its one word is a choice of: square, of a fascia; "" where it is none."""
    word = _AS_BEFORE.sub("", text.strip(" .!?")).upper()
    kinds = [(p.label, p.kind) for p in last.topic.parameters if p.label in _CHOSEN and issubclass(p.kind, Choice)]
    return next((f"{word.lower()} {label}" for label, kind in kinds if word in kind.__members__), "")


def _made(found: re.Match[str]) -> str:
    """What is moved to so much; "we dropped the exposure to 6" tells what is so from here on, and supposes nothing."""
    if found["of"] and not _SUPPOSES.match(found[0]):
        return found[0]
    return f"make {found['of'] or 'it'} "


def _made_so(found: re.Match[str]) -> str:
    """What is gone back to, as what is made so; "how many straps if I go to 600" is asked as it stands."""
    if found.start() and _SUPPOSED.match(found[0]) and found.string[: found.start() + 1].strip()[-1] not in ".,;!?":
        return found[0]
    return f"{', ' if found.start() else ''}make it "


def _sold_by_length(last: Asked) -> bool:
    """Whether the question before has a length of what is bought, or is about one piece of it."""
    labels = {last.topic.parameter(name).label for name, given in last.givens.items() if given.source != "assumed"}
    return not labels.isdisjoint(_BOUGHT_BY) or last.topic.name in _OF_A_PIECE


def _without(text: str, last: Asked) -> str:
    """The line as "no waste", where it says that what goes by that name is to be left out."""
    low = _THIS_ONE.sub("this", text.lower().replace("’", "'"))
    for parameter in last.topic.parameters:
        kept = parameter.name in last.givens and last.givens[parameter.name].source == "job"
        named = parameter.label in low and not parameter.required and not (kept and "forget" in low)
        if named and re.fullmatch(rf"{_LEFT_OUT}{re.escape(parameter.label)}{_LEFT_AFTER}", low):
            return f"{parameter.label} 0" if parameter.kind is Length else f"no {parameter.label}"
    return text


def look_past_telling(c: Conversation, record: Record, text: str, before: State) -> None:
    """Take a line that came to nothing for a change of the question before, by what it supposes or tells last."""
    last: Asked | None = before[1]  # type: ignore[assignment]
    if last is None or record["outcome"] not in ("declined", "asks") or record["topic"] or len(text) > LONGEST:
        return

    def good(trial: Record, told: str) -> bool:
        mine = trial["outcome"] == "answered" and trial["topic"] == last.topic.name and c.last is not None
        return mine and c.last is not None and not unheard(told, c.last.givens.values())

    take_shorter(c, record, text, before, _told_last(c, text, last), good)


def _told_last(c: Conversation, text: str, last: Asked) -> Iterator[tuple[str, str]]:
    """What a line supposes after what it asks ("how many is it if they're 16 footers"), or tells after why."""
    for found in _IF.finditer(text):
        head, told = text[: found.start()], text[found.start() :]
        asked = _ASKS_SO.search(head) and _only_of(c, head, last) and _all_of_it(head, last)
        if (asked or _its_name(head, last)) and numbers_in(told):
            yield f"and {told}", told
    deep = _SO_DEEP.search(text)
    if deep is not None and not (_ASKS_SO.search(text[: deep.start()]) or _PUTS_TO.search(text[: deep.start()])):
        yield f"make it {text[deep.end() :]}", text[deep.end() :]
    its = list(_NOW_ITS.finditer(text))
    if its and its[-1].start() > 0 and numbers_in(text[its[-1].end() :]):
        head, told = text[: its[-1].start()], text[its[-1].start() :]
        if _only_of(c, head, last) and not _ASKS_SO.search(head) and not _PUTS_TO.search(head):
            yield told, told


def _its_name(head: str, last: Asked) -> bool:
    """Whether words are the name of the last answer: saw setting."""
    answer = last.record.get("answer")
    words = set(re.findall(r"[a-z]+", head.lower())) - {"and", "so", "the", "then", "my"}
    return bool(answer) and bool(words) and words <= set(str(answer["name"]).lower().split())  # type: ignore[index]


def _only_of(c: Conversation, head: str, last: Asked) -> bool:
    """Whether words hold no number and name no other topic than that of the question before."""
    if numbers_in(head):
        return False
    others = (q for q in c.read(head).questions if q.score > 0 and q.words and q.topic != last.topic.name)
    return next(others, None) is None


def _all_of_it(head: str, last: Asked) -> bool:
    """Whether what is asked is what was asked before: a rip, or no thing by name; and no beam."""
    answer = last.record.get("answer")
    named = " ".join([last.text, last.topic.name, answer["name"] if answer else "", *(p.label for p in last.topic.parameters)])
    known = {stem(token.text) for token in tokenize(named)} | _OF_ANY
    light = light_words()
    return all(stem(token.text) in known or token.text in light for token in tokenize(head) if token.text.isalpha())
