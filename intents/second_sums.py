"""The second reader of sums: what each length of a story does in it, where no shape of a sum was said.

"Floor to plate is 97 1/8, floor to head 82 1/2, how much above the head" has no plus and no less. What a length does (is added,
taken off, taken off at both ends) and what a number counts are learned from the words around it and the rest of the sentence, as
the roles of other quantities are; which of the sums that these make is meant, by `whole_sums.py`. Only where both come to the
same is a sum sure; one that is not all but sure is asked about.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise
from math import exp, log

from intents.chart import LIGHT, Chart
from intents.features import Mention, of_mentions
from intents.learned import NOTHING, Learned
from intents.phrases import Phrases
from intents.question import Heard, Question
from intents.reading import Reading
from intents.second_reader import Second
from intents.sum_bound import SHARED, adds_a_count, bound, drops_count, each_untold
from intents.sum_cues import QUESTIONS, Line
from intents.sum_fitted import fitted, left_of
from intents.sum_idle import counts_things, idle_tokens, of_a_corner, of_the_sum, spaced
from intents.sum_outright import contradicted, in_the_middle, lets_parts_fall, outright
from intents.sum_places import divides, done_after, gives_back_kerf, loses_the_middle, scaled
from intents.sum_steps import MOST_KERF
from intents.sum_told import at_centres, middle_of_rest, told_by_rules
from intents.sum_words import FACTORED, SO_FAR
from intents.whole_sums import (
    ADDED,
    ADDED_TWICE,
    DIVIDES,
    OF_LAST,
    OF_NEXT,
    SMALL,
    TAKEN,
    TAKEN_TWICE,
    Candidate,
    Told,
    candidates,
    shares,
    worth,
)  # fmt: skip
from solvers.quantities import Length, Money, Number
from solvers.sums import DIVIDED, MINUS, PLUS, TIMES, Part, Sum, in_millimetres, leaves, plain_size, with_units

TOPIC, SLOT = "tape arithmetic", "sum"
_TOGETHER = frozenset(("together", "altogether", "combined"))
SIGNED = {ADDED: (PLUS, 1), ADDED_TWICE: (PLUS, 2), TAKEN: (MINUS, 1), TAKEN_TWICE: (MINUS, 2)}
COUNTING = (OF_NEXT, OF_LAST, DIVIDES)
LEANS, POSTS = frozenset("rope ropes cable wire stay brace strut".split()), frozenset("post pole mast wall top tree".split())
PEGS = frozenset("out away peg pegs pegged stake staked anchor anchored down up".split())
_WALLS = (frozenset(("wall", "long", "gap")), frozenset(("wall", "long", "high")))
_BEVELED = frozenset(("cut", "square", "long", "point"))
LAST = frozenset("one board piece row course panel strip slat".split())
HALVES = frozenset("half middle centre center".split())  # of what's left
_OF_AIR = frozenset("dew dewpoint humidity fahrenheit celsius".split())
HALF = "half"  # all of it halved, by no number: the middle of
LEAST_SURE = 0.35  # of a quantity: a spoken pair ("twelve six") is likely feet and inches in a sum
MOST = 9  # quantities
LARGEST = 1000  # count
CERTAIN = 0.9  # how sure another sum must be, to be asked about beside the one that was parsed
WIDTH = 12  # ways followed at once
LEAST, TINY = 1e-3, 1e-9  # a role less likely is not tried, and what one that is told counts at least
# Before "one" these tell which: "the other one eighty and three quarters" is 80 3/4, and "the new one's five even" 5.
WHICH_ONE = frozenset("other each this that first second third fourth next last new old left right long short big small".split())
HARDLY_HALF = 0.005  # a sum less likely halved than this is not tried so
NOT_BOTH = 0.8  # how sure a sum is at most, that the roles alone do not make
AGREED = 0.95  # how sure a sum is at the least that the rules of the trade make too
AGREED_AND_SURE = 0.98  # and that was sure for itself
LEAST_AGREED = 0.5  # from this share on
BARELY = 0.03  # the share from which on a sum is answered that the story tells outright, though another is likelier
LIKELIER = 0.1  # the share from which on the sum of the rules is asked about, and not the likeliest
ALIKE = 0.6  # the share of what the roles alone make, from which on they make the same
TWO = Number(Fraction(2), "none")

Way = tuple[float, tuple[str, ...]]


def sum_again(chart: Chart, phrases: Phrases, model: Learned) -> Second | None:
    """The sentence as the likeliest sum of its lengths; None where it has none, or too many."""
    every = lengths_of(chart)
    found = of_the_sum(chart, every)
    if not 0 < len(found) <= MOST or _leans(chart.words) or spaced(chart.words, found) or _swings(chart.words, found):
        return None
    if of_a_corner(chart.words, found) or counts_things(chart.words, found):
        return None
    all_said = frozenset(chart.words)
    if (any(all_said >= each for each in _WALLS) and QUESTIONS.isdisjoint(all_said)) or all_said >= _BEVELED:
        return None  # wall is 32 long, 9 high, 3/4 gap: sizes, and nothing asked; or how far an end cut at an angle goes
    told = Told(chart, found, idle_tokens(chart, every, found))
    names = bound(chart, found, [[*names_of(mention), NOTHING] for mention in found])
    ways = ways_of(chart, found, model, names)
    halved = _halved(chart, phrases, model)
    halves = (False, True) if halved >= HARDLY_HALF and not _half_of_one(chart) else (False,)
    sums = candidates(told, names, [roles for _, roles in ways], halves)
    if not sums:
        return None
    likely = shares(told, sums, model.sums)
    best, sure = _likeliest(sums, likely)
    same = _same(told, best, ways, halved)
    best, sure = _held_against_rules(told, sums, likely, (best, sure if same else min(sure, NOT_BOTH)), sure)
    whole = sum_of(chart, found, best.roles, best.half)
    if whole is None or (len(found) == 1 and best.half and SHARED.isdisjoint(chart.words)):
        return None  # 12' of board: nothing says that it is halved
    if len(found) == 1 and "off" in all_said and best.roles != (DIVIDES,):
        whole = Sum(MINUS, None, whole)  # 1/4 ripped off each side: of what?
    if adds_a_count(chart, found, best.roles) and (untold := each_untold(whole)) is not None:
        whole, sure = untold, 1.0  # which is asked for, whatever is sure of the rest
    if _lets_fall(chart, found, whole) or drops_count(chart, found, best.roles):
        sure = min(sure, NOT_BOTH)
    start, end = chart.tokens[found[0].start].start, chart.tokens[found[-1].end - 1].end
    givens = {SLOT: Heard(whole, start, end, chart.text[start:end])}
    words = [w for i, w in enumerate(chart.words) if chart.known >> i & 1 and not chart.numbers >> i & 1]
    return Second(Question(TOPIC, givens, words=words), sure)


def of_one(question: Question) -> bool:
    """Whether a question is a sum of no more than one length, with nothing done to it."""
    heard = question.givens.get(SLOT) if question.topic == TOPIC else None
    return heard is not None and isinstance(heard.value, Sum) and len([*leaves(heard.value)]) == 1


def _half_of_one(chart: Chart) -> bool:
    """Whether half of a length is asked for in so many words, which then is not halved again: half of 37 5/8, for the middle."""
    halves = (at for at, pair in enumerate(pairwise(chart.words)) if pair == ("half", "of"))
    return any(r.end > at + 2 for at in halves for r in chart.readings[at])


def _swings(words: Sequence[str], found: Sequence[Mention]) -> bool:
    """Whether a line goes from under nothing to something, as only a temperature does, or tells of the air's water: it sees
    -20 to 110; minus 2, dew point minus 4."""
    if not _OF_AIR.isdisjoint(words):
        return True
    below = {"-", "minus"}.intersection(words[max(found[0].start - 1, 0) : found[0].end])
    return bool(below) and len(found) > 1 and [*words[found[0].end : found[1].start]] == ["to"]


def _held_against_rules(
    told: Told, sums: Sequence[Candidate], likely: Sequence[float], best: tuple[Candidate, float], sure: float
) -> tuple[Candidate, float]:
    """The likeliest sum, and how sure it is where the rules of the trade make the same of the quantities, or another.

    `sure` is how sure it was for itself. Of 1,600 sums that were not learned from, the two came to the same in 920, 20 of them
    wrong; where they did not, the learned one was right in 45 of 150, however sure it was.
    """
    line = Line(told.chart.words, told.spans, told.sizes, [_may_count(mention) for mention in told.found], told.idle)
    found = told_by_rules(line)
    inches = worth(told.sizes, told.counts, *found) if found else None
    if found is None or inches is None or inches <= SMALL:
        return (best[0], min(best[1], NOT_BOTH)) if contradicted(line, best[0].roles) else best
    ruled = Candidate(*found, inches)
    if lets_parts_fall(line, found):
        return best[0], best[1] if sure >= CERTAIN else min(best[1], NOT_BOTH)
    if abs(inches - best[0].inches) < SMALL:
        agreed = sure >= LEAST_AGREED or outright(line, found)
        return best[0], max(best[1], AGREED if sure < CERTAIN else AGREED_AND_SURE) if agreed else best[1]
    if found in (at_centres(line), in_the_middle(line), fitted(line), left_of(line), middle_of_rest(line)):
        return ruled, AGREED
    share = sum(one for each, one in zip(sums, likely, strict=True) if abs(each.inches - inches) < SMALL)
    if share >= BARELY and outright(line, found):
        return ruled, AGREED
    against = contradicted(line, best[0].roles) and outright(line, found)
    return (ruled if share >= LIKELIER or against else best[0]), min(best[1], NOT_BOTH)


def _leans(words: Sequence[str]) -> bool:
    """Whether the lengths are of what leans from one to the other: a rope from the top of a post to a peg so far out."""
    return not (LEANS.isdisjoint(words) or POSTS.isdisjoint(words) or PEGS.isdisjoint(words))


def _lets_fall(chart: Chart, found: Sequence[Mention], whole: Sum) -> bool:
    """Whether the middle, or half of what is left, is asked for in so many words, and the sum has no such thing."""
    middle = loses_the_middle(whole, chart.words[: found[0].start]) or done_after(chart.words, found[-1].end)
    if any(a == "last" and b in LAST for a, b in pairwise(chart.words[found[-1].end :])):
        return True  # boards 5 1/2 with a quarter between, how wide is the last one
    if "twice" in chart.words and not (scaled(whole) or {"measured", "measure", "checked"} & {*chart.words}):
        return True  # 2 foot 6 off a ten foot length twice
    return middle or _half_falls(chart.words, whole) or gives_back_kerf(whole, chart.words)


def _half_falls(words: Sequence[str], whole: Sum) -> bool:
    """Whether half, or the middle, of what the sum came to is asked for, and the sum does not divide."""
    halves = (at + 2 for at, pair in enumerate(pairwise(words)) if pair[0] in HALVES and pair[1] == "of")
    return any(tuple(words[at : at + len(so)]) == so for at in halves for so in SO_FAR) and not divides(whole)


def _likeliest(sums: Sequence[Candidate], likely: Sequence[float]) -> tuple[Candidate, float]:
    """The sum that is likeliest meant, and how sure what it comes to is: sums that come to the same are one."""
    by_value: dict[float, list[tuple[float, Candidate]]] = {}
    for each, share in zip(sums, likely, strict=True):
        by_value.setdefault(round(each.inches, 4), []).append((share, each))
    best = max(by_value.values(), key=lambda same: sum(share for share, _ in same))
    return max(best, key=lambda way: way[0])[1], sum(share for share, _ in best)


def _same(told: Told, best: Candidate, ways: Sequence[Way], halved: float) -> bool:
    """Whether the likeliest sum of the roles alone, each told by its own words, comes to the same, and likely so."""
    alike = every = 0.0
    for sure, roles in ways:
        for share, half in ((1 - halved, False), (halved, True)):
            inches = worth(told.sizes, told.counts, roles, half)
            if inches is None or inches > 0:
                every += exp(sure) * share
                alike += exp(sure) * share * (inches is not None and abs(inches - best.inches) < SMALL)
    return alike >= ALIKE * every


def otherwise(chart: Chart, phrases: Phrases, model: Learned, question: Question) -> list[dict[str, Heard]]:
    """The sum as sentences like this one meant it, where that is sure and comes to something else than the parsed sum."""
    parsed = question.givens.get(SLOT)
    if parsed is None or not isinstance(parsed.value, Sum) or not parsed.value.all_said:
        return []
    told = sum_again(chart, phrases, model)
    if told is None or told.sure < CERTAIN or _worth(told.question.givens[SLOT].value) in (None, _worth(parsed.value)):
        return []
    if _half_falls(chart.words, parsed.value) and divides(told.question.givens[SLOT].value):
        question.givens.update(told.question.givens)
        return []
    if not _TOGETHER.isdisjoint(chart.words) and _adds_only(parsed.value):
        return []
    explicit = not FACTORED.isdisjoint(chart.words) and scaled(parsed.value)
    if explicit and len(leaves(told.question.givens[SLOT].value)) < len(leaves(parsed.value)):
        return []  # it lets something fall that was said: then double it
    if _cut_for_cut(parsed.value, told.question.givens[SLOT].value):
        return []
    if told.sure == AGREED_AND_SURE and scaled(told.question.givens[SLOT].value) and not scaled(parsed.value):
        # two pieces at 11 1/4: what was learned and the rules of the trade are two to one
        question.givens.update(told.question.givens)
        return []
    return [{**question.givens, **told.question.givens}]


def _adds_only(part: object) -> bool:
    return not isinstance(part, Sum) or (part.operation == PLUS and _adds_only(part.left) and _adds_only(part.right))


def _cut_for_cut(parsed: Sum, told: Sum) -> bool:
    """Whether one takes the saw's kerf with each cut where the other, which knows no cuts, takes it once."""
    each, once = parsed.right, told.right
    if parsed.operation != MINUS or not isinstance(each, Sum) or each.operation != TIMES or not isinstance(once, Length | Number):
        return False
    whole = isinstance(each.left, Number) and each.left.value > 1 and plain_size(once) <= MOST_KERF
    rest = [replace(way, right=Number(Fraction(0), "none")) for way in (parsed, told)]
    return whole and plain_size(each.right) == plain_size(once) and _worth(rest[0]) == _worth(rest[1])


def _worth(whole: Sum) -> Fraction | None:
    try:
        return in_millimetres(with_units(whole, "in")) if whole.all_said else None
    except ZeroDivisionError:
        return None


def lengths_of(chart: Chart, spans: Sequence[tuple[int, int]] = ()) -> list[Mention]:
    """The lengths and numbers from left to right, the longest at each place; where `spans` name one's tokens, those. Where all
    that is told is money or counts, so much money is a number too."""
    found: list[Mention] = []
    at = 0
    money = _of_money_alone(chart)
    while at < len(chart.words):
        named = chart.words[at] == "one" and chart.words[at - 1 : at] and chart.words[at - 1] in WHICH_ONE
        reading = _longest(chart, at, spans, money) if chart.readings[at] and not named else None
        if reading is None or chart.words[at - 1 : at] == ["nearest"]:
            at += 1
            continue
        if reading.value.value < 0:  # type: ignore[union-attr]  # a minus is what is done with a length, and no part of it
            reading = replace(reading, start=at + 1, value=replace(reading.value, value=-reading.value.value))  # type: ignore
        found.append(Mention(reading, 0, 0, reading.start, reading.end))
        at = reading.end
    return found


def _of_money_alone(chart: Chart) -> bool:
    """Whether the line asks what is paid, and money is told in it and no length."""
    said = [r for row in chart.readings for r in row]
    return any(isinstance(r.value, Money) for r in said) and not any(isinstance(r.value, Length) for r in said)


def _longest(chart: Chart, at: int, spans: Sequence[tuple[int, int]], money: bool) -> Reading | None:
    rows = [replace(r, value=Number(r.value.value, "none", r.value.text)) if money and isinstance(r.value, Money) else r
            for r in chart.readings[at]]  # fmt: skip
    here = [r for r in rows if isinstance(r.value, Length | Number) and r.value.value and r.kind != "ratio"]
    marked = [r for r in here if (r.start + (r.value.value < 0), r.end) in spans]  # type: ignore[union-attr]
    here = marked or [r for r in here if r.sure >= LEAST_SURE and (chart.words[at] != "one" or r.end > at + 1)]
    here = marked or [r for r in here if not any(a < r.end and r.start < b for a, b in spans)]
    return max(here, key=lambda r: (r.end, r.sure, r.kind != "number"), default=None)


def features_of(chart: Chart, found: list[Mention]) -> list[list[str]]:
    """For each quantity the features that tell what it does: the words around it, and all others by side."""
    words = [(i, w) for i, w in enumerate(chart.words) if w not in LIGHT and w[0].isalpha() and not chart.numbers >> i & 1]
    rows: list[list[str]] = []
    last = found[-1].end if found else 0
    sizes = [plain_size(mention.reading.value) for mention in found]  # type: ignore[arg-type]
    largest = max(sizes, default=None)
    every = {w for _, w in words}
    shared: dict[str, set[str]] = {}  # of all words, the same for each of an order and a rank
    for n, (mention, near) in enumerate(zip(found, of_mentions(chart, found), strict=True)):
        order = "first" if n == 0 else "later"
        rank = "largest" if sizes[n] == largest else "smaller"
        both, start = f"{order}&{rank}", mention.start
        if both not in shared:
            shared[both] = {f"{side}&{w}" for side in (order, rank) for w in every}
            shared[both].update([f"{both}&end:{w}" for i, w in words if i >= last])
        sides = {f"before:{w}" if i < start else f"after:{w}" for i, w in words} | shared[both]
        rows.append([*near, f"counts:{_may_count(mention)}", rank, both, *sorted(sides)])
    return rows


def _may_count(mention: Mention) -> bool:
    value = mention.reading.value
    return isinstance(value, Number) and value.value.denominator == 1 and 1 < value.value < LARGEST


def names_of(mention: Mention) -> list[str]:
    """What a quantity can do in a sum."""
    return [*SIGNED, *(COUNTING if _may_count(mention) else ())]


def half_features(chart: Chart, phrases: Phrases) -> list[str]:
    """The features that tell whether all is halved: its words, and pairs of neighbours."""
    words = [w for i, w in enumerate(chart.words) if w[0].isalpha() and not chart.numbers >> i & 1]
    return sorted({*words, *(f"{a} {b}" for a, b in pairwise(words))} - phrases.fillers)


def _halved(chart: Chart, phrases: Phrases, model: Learned) -> float:
    return model.role(TOPIC, [HALF, NOTHING], half_features(chart, phrases), set())[0]


def ways_of(
    chart: Chart, found: list[Mention], model: Learned, may: Sequence[Sequence[str]] | None = None
) -> list[Way]:  # fmt: skip
    """The likeliest ways to give each its part (of those it `may` do), with the log of how likely; the likeliest first."""
    ways: list[Way] = [(0.0, ())]
    for n, (mention, features) in enumerate(zip(found, features_of(chart, found), strict=True)):
        names = [*names_of(mention), NOTHING]
        shares = model.role(TOPIC, names, features, set())
        mine = may[n] if may is not None else names
        least = LEAST if len(mine) == len(names) else 0  # what is told goes on, however seldom it was so
        shared = [(name, share) for name, share in zip(names, shares, strict=True) if name in mine and share >= least]
        tried = [(name, log(max(share, TINY))) for name, share in shared]
        ways = [(sure + more, (*taken, name)) for sure, taken in ways for name, more in tried]
        ways = sorted(ways, key=lambda way: -way[0])[:WIDTH]
    return ways


def sum_of(chart: Chart, found: list[Mention], roles: Sequence[str], half: bool) -> Sum | None:
    """The sum that these roles make; None where they make none."""
    terms = list(_terms(chart, found, roles))
    if not terms or any(part is None for _, part in terms):
        return None
    if terms[0][0] == MINUS:  # "an eighth short of 62" starts from the 62
        terms.sort(key=lambda term: term[0] == MINUS)
    (sign, total), *others = terms
    if sign == MINUS:
        return None
    whole: Part = total  # type: ignore[assignment]
    for operation, part in others:
        whole = Sum(operation, whole, part)
    for mention, role in zip(found, roles, strict=True):
        if role == DIVIDES:
            whole = Sum(DIVIDED, whole, _said(chart, mention))
    whole = Sum(DIVIDED, whole, TWO) if half else whole
    return whole if isinstance(whole, Sum) else None


def _terms(chart: Chart, found: list[Mention], roles: Sequence[str]) -> Iterator[tuple[str, Part | None]]:
    """Each length with its sign and how often; None for a count of nothing."""
    times: Part | None = None
    for n, (mention, role) in enumerate(zip(found, roles, strict=True)):
        if role == OF_NEXT:
            if times is not None:
                yield PLUS, None
            times = _said(chart, mention)
        elif role in SIGNED:
            operation, count = SIGNED[role]
            part: Part = _said(chart, mention)
            later = roles[n + 1 :]
            if later and later[0] == OF_LAST:
                part = Sum(TIMES, _said(chart, found[n + 1]), part)
            if times is not None:
                part, times = Sum(TIMES, times, part), None
            yield operation, Sum(TIMES, TWO, part) if count == 2 else part
        elif role == OF_LAST and (n == 0 or roles[n - 1] not in SIGNED):
            yield PLUS, None
    if times is not None:
        yield PLUS, None


def _said(chart: Chart, mention: Mention) -> Length | Number:
    value = mention.reading.value
    assert isinstance(value, Length | Number)
    return value.said(chart.said(mention.start, mention.end))
