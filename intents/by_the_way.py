"""Clauses that tell a number by the way: what somebody reckons, what is bent or cut already, "it's 4 inch stuff if you care".

Such a number is left out only where the question has no place for it and is whole without (`left_out.py`).
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

from intents.reading import Reading
from intents.remarks import ENDS, up_to_stop
from intents.taken_back import OF_ITS_OWN

_TAGS = tuple(
    tuple(tag.split())
    for tag in (
        # "matters" is read as "matter".
        "if you care|if it matter|if that matter|if it helps|if that helps|if you're wondering|if anyone cares"
        "|for what it is worth|fwiw|mind|mind you|by the way|btw|never mind|not that it matter|if it is any use"
        "|no matter|neither here nor there|if you want to know|if it makes any odds"
    ).split("|")
)
_TAG_ENDS = frozenset(tag[-1] for tag in _TAGS)
_SAYS = frozenset(
    "say says said reckon reckons reckoned think thinks thought guess guesses guessed swears bets bet figured figures".split()
)
_DOUBTS = frozenset("swears reckons reckoned thinks thought guessed guesses bets bet".split())
_MEASURED = frozenset("level gauge measured measure tape string protractor inclinometer reads gives give got".split())
_MINE = frozenset("i i'd id we we'd".split())
_I_SAY = (["i", "say"], ["we", "say"])
_LEADS = frozenset("and but so oh well though".split())
_PAPERS = frozenset("drawing drawings plan plans box sheet paper label spec tag ticket print prints book maker makers".split())
_LIGHTLY = frozenset("it its it's is be about at to the a that they're them maybe more like".split())
_AFTER_GUESS = ENDS | frozenset("or but and written though if i he she we they so which".split())
_GOODS = frozenset("boards sticks panels rolls tubes squares sheets bundles pieces lengths planks nails screws".split())
_WROTE = (["written", "down"], ["wrote", "down"], ["marked", "down"], ["scribbled", "down"])
_HAVE = frozenset("i've we've he's they've ive weve".split())
_HAS = frozenset("i we you they he there there's theres got have has had".split())
_READY = frozenset(
    "here already bent made cut done primed painted ready handy spare folded left nailed fitted hung ripped stacked".split()
)
_DID = frozenset("cut bent made done hung nailed fitted folded ripped chucked primed painted".split())
_ALREADY = frozenset("already and so then".split())
_BUYING = frozenset("buy order get bring grab fetch".split())
_WILL = (["gonna"], ["going", "to"], ["meaning", "to"], ["about", "to"], ["thinking", "to"])
_WONDERS = (["i'm", "wondering"], ["im", "wondering"], ["just", "wondering"], ["i", "wonder"], ["wondering"])
_PLATFORMS = frozenset("scaffold scaffolding tower staging hoist forks telehandler".split())
_LEFTOVER, _SHORTER = frozenset("anything everything owt".split()), frozenset("under below shorter less over longer".split())
_SLIVERS, _NOT_WANTED = frozenset("sliver slivers".split()), frozenset("don't dont not no never hate without".split())
_HIS_OWN = frozenset("nail nails pencil string stick chisel hammer square level".split())
_BIT = ("bit", "of")
_ASIDE = tuple(
    tuple(lead.split())
    for lead in (
        "not counting|never mind|never mind about|forget|forget about|forgetting|ignore|ignoring|not including|leave out"
        "|leaving out|let alone|excluding|discounting|don't count|not bothering with|don't bother with|don't worry about"
        "|not allowing for"
    ).split("|")
)
_ASIDE_ENDS = frozenset(lead[-1] for lead in _ASIDE)
_LATER = frozenset("after later afterwards separately".split())  # overhang which I'll deal with after
_REACH = 9
_ARTICLES = frozenset("the that my a an our any this your its".split())
_PAID = frozenset("paid paying cost costs costing charged charges charging deposit quoted quotes".split())
_WHOM = frozenset("me us him her them only all about nearly over".split())
_DEAR = frozenset("dear robbery expensive pricey pricy cheap bargain fortune".split())  # was 2.10 a foot which I thought was dear
_PRICED = frozenset("cost costs price prices priced pay spend worth budget afford bill total save quote invoice money".split())
_FEW = 12  # hours of a day, and what somebody counts of what was cut already
_DAY = frozenset("before by till until".split())
_SOMEBODY = frozenset("i i'm i'll i've im ive we we're we'll we've he's he'll she's she'll they're they'll he she they".split())
_MORE = frozenset("more another extra order buy short enough left still remaining besides spare over fetch".split())
CUES = (
    _SAYS | _PAID | _DEAR | _HAVE | _PLATFORMS | _LEFTOVER | _SLIVERS | _HIS_OWN | _DAY
    | frozenset("counting forget forgetting ignore ignoring including leave leaving alone excluding discounting".split())
    | frozenset("count bothering bother worry allowing".split()) | _LATER
    | frozenset("care matters helps mind matter worth gonna going wondering wonder written wrote".split())
)  # fmt: skip


_ANY = frozenset((
    *_TAG_ENDS, *(lead[-1] for lead in _WONDERS), *(wrote[0] for wrote in _WROTE), *_SAYS, *_BUYING, *_HAVE, *_DAY, *_PLATFORMS,
    *_LEFTOVER, *_SLIVERS, *_HIS_OWN, *_PAID, *_DEAR, "deposit",
))  # fmt: skip


def may_be(words: Sequence[str]) -> bool:
    """Whether a line could tell any quantity by the way: by one of its words, or two of who has something."""
    return not _ANY.isdisjoint(words) or sum(word in _HAS for word in words) > 1


def by_the_way(words: Sequence[str], place: tuple[int, int], reading: Reading, others: frozenset[str]) -> bool:
    """Whether the quantity is told by the way in the clause at a place; `others` are the words of the other clauses."""
    start, end = place
    role = start > 1 and words[start - 1] == "," and words[start - 2] in OF_ITS_OWN  # overhang, I'd say 12
    while start < reading.start and words[start] in _LEADS:
        start += 1
    clause = list(words[start:end])
    before, after = clause[: reading.start - start], clause[reading.end - start :]
    if _tagged(after) or any(clause[: len(lead)] == lead for lead in _WONDERS):
        return True
    if reading.kind == "pitch":  # dad swears it's a 6/12, but the level gives us another
        doubted = not (_DOUBTS.isdisjoint(before) or _MEASURED.isdisjoint(others) or _MEASURED.intersection(clause))
        return doubted and _guessed(before, after, reading)
    role = role or ("says" in others and before[:2] in _I_SAY)  # he says 25, I say 23
    return (
        (not role and _guessed(before, [*after, *words[end : end + 1]], reading)) or _at_hand(before, after, reading, others)
        or _of_the_day(before, after, reading) or _aside(before, after) or _paid(before, after, reading, others)
    )  # fmt: skip


def set_aside(words: Sequence[str], reading: Reading) -> bool:
    """Whether it is told to leave it out of the account: not counting the 6 inch fascia, never mind the 18 inch tail."""
    at = reading.start
    while at and words[at - 1] in _ARTICLES:
        at -= 1
    if at and words[at - 1] in _ASIDE_ENDS and any(tuple(words[max(0, at - len(lead)) : at]) == lead for lead in _ASIDE):
        return True
    after = words[reading.end : reading.end + _REACH]
    return "which" in after and not _LATER.isdisjoint(after[after.index("which") :]) and not _SOMEBODY.isdisjoint(after)


def _tagged(after: list[str]) -> bool:
    """Whether the clause ends in words that say it hardly matters."""
    last = after[-1] if after else ""
    tagged = last in _TAG_ENDS and any(tuple(after[-len(tag) :]) == tag for tag in _TAGS)
    return tagged and OF_ITS_OWN.isdisjoint(up_to_stop(after))


def _guessed(before: list[str], after: list[str], reading: Reading) -> bool:
    """Whether it is what somebody says it is: the lads say 3.4; mine with a unit too: I'd say 3 foot."""
    verb = next((n for n, word in enumerate(before) if word in _SAYS), -1)
    wrote = after[:2] in _WROTE
    if verb < 0 and not wrote:
        return False
    lead, rest = (before[:verb], before[verb + 1 :]) if verb >= 0 else (before, [])
    own = bool(lead) and lead[-1] in _MINE
    if not (own or reading.kind == "number") or not OF_ITS_OWN.isdisjoint(lead) or not _PAPERS.isdisjoint(lead):
        return False
    lightly = all(word in _LIGHTLY or word == "or" or word[0].isdecimal() for word in rest)
    after = after[1:] if after[:1] and after[0] in _GOODS else after  # he figured 70 boards
    return (lightly and (not after or after[0] in _AFTER_GUESS)) or wrote


def _at_hand(before: list[str], after: list[str], reading: Reading, others: frozenset[str]) -> bool:
    """Whether it counts what is there already, and nothing asks what is wanted besides."""
    if reading.kind not in ("number", "plural") or not _MORE.isdisjoint(others):
        return False
    verbs = [n for n, word in enumerate(before) if word in _BUYING]
    if verbs and any(before[max(0, verbs[0] - len(will)) : verbs[0]] == will for will in _WILL):
        return True  # I was gonna buy 2 tens
    have = not _HAVE.isdisjoint(before[:2]) or (len(before) > 1 and before[0] in _HAS and before[1] in _HAS)
    if not have or not OF_ITS_OWN.isdisjoint(before):
        return False
    nearby = [word for word in after[:2] if word != "of"]
    few = reading.kind == "plural" or reading.value.value <= _FEW  # type: ignore[union-attr]
    did = bool(before) and before[-1] in _DID and few and (not after or after[0] in _ALREADY)
    return did or not _READY.isdisjoint(nearby[:1]) or after[-3:] == ["on", "the", "rack"] or after[-1:] == ["here"]


def _of_the_day(before: list[str], after: list[str], reading: Reading) -> bool:
    """Whether it is the hour by which somebody has something to do: I've to tell her before four."""
    led = len(before) > 2 and before[-1] in _DAY and before[0] in _SOMEBODY
    if not led or after or not OF_ITS_OWN.isdisjoint(before):
        return False
    return bool(reading.kind == "number" and 1 <= reading.value.value <= _FEW)  # type: ignore[union-attr]


def _paid(before: list[str], after: list[str], reading: Reading, others: frozenset[str]) -> bool:
    """Whether it is what was paid, and nothing asks of money: the owner paid 2,200 for it."""
    if reading.kind not in ("number", "plural", "money", "decimal") or not _PRICED.isdisjoint(others):
        return False
    verb = ["deposit"] if before[-2:] == ["deposit", "of"] else [word for word in before if word not in _WHOM][-1:]
    return (verb != [] and verb[0] in _PAID) or (after[-1:] != [] and after[-1] in _DEAR)


def _aside(before: list[str], after: list[str]) -> bool:
    """Whether it is of a scaffold, of what goes on the fire, of a strip nobody wants, of a nail."""
    if not _PLATFORMS.isdisjoint(before[:3]) or (before[:1] and before[0] in _LEFTOVER and before[-1] in _SHORTER):
        return True
    if not _SLIVERS.isdisjoint(after[:2]) and not _NOT_WANTED.isdisjoint(before):
        return True
    return bool(after) and after[0] in _HIS_OWN and _BIT in pairwise(before)
