"""The rows of `leans_on_it.py`: each takes a line without its opening and the question before, and tells the plain lines that it
may stand for, with what must be so of their answers."""

from __future__ import annotations

import re
from collections.abc import Callable, Iterator
from typing import TYPE_CHECKING

from assistant.given_in_its_terms import past_otherwise
from assistant.heard_all import unheard
from assistant.leans_given import at_centres, by_radius, eave_long, in_fact, layer_not, on_its_scale, other_grain, tail_on_it
from assistant.leans_openings import same_without
from assistant.leans_squares import packs_of_squares, to_a_square
from assistant.leans_sticks import out_of_another
from assistant.plain_lines import Plain
from assistant.said_over import places_of, stem
from assistant.several import told_of
from intents.expressions import expression
from intents.talk import numbers_in
from intents.tokens import tokenize
from solvers.quantities import Count, Length, Quantity

if TYPE_CHECKING:
    from assistant.pending import Asked


_STRIPS = expression(  # how many strips of that will I get across a 24 inch coil
    r"how many (?:strips|pieces|lengths|blanks|flashings|of (?:those|them|these|'em))(?: (?:of (?:that|those|it|this|them)"
    r"|that (?:wide|size)|like that))?(?: (?:will|can|could|do|would|should|am) (?:i|we|you|it))?"
    r"(?: (?:get|getting|cut|rip|slit|have|make))?(?: (?:out of|off of|off|across|from|of|in|out))+ (?:an?|one|the|my)"
    r" (?P<n>.+?) (?:coil|roll)(?: stock| of .+)?",
    re.IGNORECASE,
)
_ACROSS = expression(  # and across a fourteen inch one
    r"(?:(?:what about|how about|and|or|how many) )*(?:out of|across|from|off|with) an? (?P<n>.+?)"
    r" (?:one|coil|roll)(?: then| instead)?",
    re.IGNORECASE,
)
_NONE_OF = expression(  # what if there's no overhang; leave the tail off
    r"(?:(?:what if|if|with|say|suppose|how about|what about|make it) )*"
    r"(?:(?:there(?:'?s| is| are| was| were)|it(?:'?s| has| had)|(?:we|i|they)(?:'ve| have| had| do| did)) (?:got )?)?"
    r"(?:no|zero|without(?: any| the| an?)?) (?P<what>[a-z]+(?: [a-z]+)?)"
    r"(?: (?:at all|on (?:it|that|them)|there|this time|then|now|instead|please|whatsoever))*"
    r"|(?:leave|take|knock|keep) (?:the |that |any |all the )?(?P<off>[a-z]+) (?:off|out)"
    r"(?: (?:of it|it|that|of that|then|now|please))*"
    r"|(?:skip|forget|lose|ditch|ignore|drop|leave off|leave out|never mind|forget about) (?:the |that |any )?(?P<lose>[a-z]+)"
    r"(?: (?:then|now|please|altogether))*",
    re.IGNORECASE,
)
_CALLED = {"oversail": "overhang", "eave": "overhang",
           "tail": "overhang", "tails": "overhang", "eaves": "overhang", "overhangs": "overhang", "laps": "lap", "gaps": "gap",
           "saw cut": "kerf", "blade": "kerf", "blade width": "kerf", "wastage": "waste"}  # fmt: skip
_NTH = expression(  # second one is 9 foot 4
    r"(?:the |that )?(?P<nth>first|second|third|fourth|last) (?:one|length|piece|number|bit|measurement|board)"
    r"(?:'s|s)?(?: (?:is|was|should be|ought to be|reads|came out at|comes to|really|actually|only|just))* (?P<n>.+)",
    re.IGNORECASE,
)
_SMALL = r"(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|another|\d{1,2})"
_MORE_OF = expression(  # I'd like two more of the 31 inch ones
    r"(?:(?:i|we)(?:'d|'ll)? ?(?:like|need|want|have|take|add)?|give me|gimme|make (?:it|that)|add"
    r"|there's|also|plus|(?:can|could)"
    rf" (?:i|we|you) (?:get|have|add|do)|put (?:in|on)|chuck in"
    rf"|throw in)? ?(?:another )?(?P<n>{_SMALL}) (?:more|extra|additional)"
    r" ?(?:of )?(?:the|those|them|at|of)? ?(?P<x>.+?)(?: (?:ones?|pieces?|lengths?|shelves|long|please|too|as well))*",
    re.IGNORECASE,
)
_OPENING = expression(  # throw a door in with those
    r"(?:throw|chuck|stick|put|add|include|count|toss|pop|bung|whack|do)(?: in| on)? (?:an?"
    r"|one) (?P<size>.+?) (?P<what>door|window)"
    r"(?: (?:in|on|with|to|there|as well|too|those|that|them|these|on top|the lot|it|into))*",
    re.IGNORECASE,
)
_OPENING_OF = expression(  # chuck a door in as well, 900 by 2100
    r"(?:throw|chuck|stick|put|add|include|count|toss|pop|bung|whack|do)(?: in| on)? (?:an?|one) (?P<what>door|window)"
    r"(?: (?:in|on|with|to|there|as well|too|those|that|them|these|on top|the lot|it|into))*,? (?:that's "
    r"|it's |of )?(?P<size>.+)",
    re.IGNORECASE,
)
_ONE_LESS = expression(
    r"(?:(?:what (?:if|about)|how about|if|with|say|do|use|try|make (?:it|that)|we|i|i'd|we'd|go|put|have|had|did|went|used"
    r"|lose|add|for|there's|there're|there was|there were|in|just|(?:all )?(?:the )?same(?: again| thing| as before)?,?|but|now"
    rf"|only|that again,?|again,?) )*(?P<n>{_SMALL}) (?:(?P<how>less|fewer|more|extra|additional) (?P<what>[a-z]+)|fewer)"
    r"(?: (?:in(?: it| there)?|then|instead|now|please))*",
    re.IGNORECASE,
)
_PIECES = frozenset("picket slat baluster spindle board piece bar rail batten upright louver louvre".split())
_THROUGH = expression(
    r"\bthrough (?:(?P<all>all|both)(?: (?:of )?(?:the |those |these |them |that )?(?P<n>two|three|four|five|\d)?"
    r"(?: ?(?:layers|of them))?)?|(?:all )?(?:the|that) (?:whole )?lot|all that|it all|everything"
    r"|the whole (?:thing|lot|build-?up))"
    r"(?=[ ,]|$)",
    re.IGNORECASE,
)
_ALL_OF = expression(  # there are two gables like that, so what's the area of both together
    r"(?:there(?:'s| are| is)|that'?s|it'?s|(?:we|i)(?:'ve| have)?(?: got)?) (?P<n>two|2|three|3|four"
    r"|4) (?P<what>[a-z]+)s?(?: "
    r"(?:like (?:that|it|this)|(?:the )?same(?: (?:length|size|pitch|again|thing))?|alike|identical"
    r"|exactly|just|all|both|that size"
    r"|of them))+[,;.]? (?P<ask>.+)",
    re.IGNORECASE,
)
_TOGETHER = frozenset(
    "so and what what's whats is are the area length total how many much pieces pcs piece for of both all together togehter"
    " altogether altogehter in them two three four lot do does they it come comes to that need i we sides gables walls add up"
    " combined whole please would be number flashing trim steps roof wall gable rake rakes then".split()
)
_STICKS_FOR = expression(  # how many of those sixteens do I need for sixty blocks
    r"how many (?:of )?(?:those|these|the|them)(?: [a-z0-9' ]+?)?(?: (?:do|would|will|should) (?:i"
    r"|we))(?: (?:need|want|grab|buy|get"
    r"|order))? (?:for|four|to get|to make|to cut)(?: me)? (?P<n>.+?)(?: (?:blocks?|pieces?|pcs"
    r"|of (?:them|those|'?em)|spacers|slats"
    r"|rails|noggins|blanks))+"
    r"|(?:i|we)(?:'ll)? (?:need|want|have to have|gotta have) (?P<m>\S+(?: \S+)?) (?:of (?:them|'?em"
    r"|those|these)|blocks|pieces|pcs)[,;]?"
    r" (?:so )?how many (?:of )?(?:those|these|the|them)(?: [a-z0-9' ]+?)?(?: (?:do|would|will|should) (?:i|we)"
    r"(?: (?:need|want|grab|buy|get|order))?)?",
    re.IGNORECASE,
)
_LEFT = expression(  # how many tins if there's only 90 square metres left
    r"(?:how (?:many|much)[^\d,;]*? )?(?:if |for |with |when )?(?:there'?s|there is|there are|i'?ve"
    r"|we'?ve|i have|we have|it'?s)?"
    r"(?: got)? ?(?:only |just |actually |really )*(?P<n>[^,;]+?)(?: of (?:it|them|fence|joint|wall))?"
    r" (?:left|remaining|to go|to do|still to do)(?: (?:to do|to go|now|then))*",
    re.IGNORECASE,
)
_WALL_UNDER = expression(
    r"(?:the |that )?wall (?:under|underneath|below|beneath)(?: (?:it|that|there))?(?:'s| is)? (?P<n>.+?) (?:high|tall)[,;.]?"
    r"(?: (?:so |and )*(?P<ask>.+))?",
    re.IGNORECASE,
)
_BOTH = expression(r"\b(?:two|both|together|altogether|total|all|whole|combined|add)\b", re.IGNORECASE)
_WORTH = {"a": 1, "an": 1, "another": 1}


def _count(words: str) -> int | None:
    """How many a small word says; None where it is no whole number."""
    if words.lower() in _WORTH:
        return 1
    said = numbers_in(words)
    value = getattr(said[0].value, "value", None) if len(said) == 1 else None
    return int(value) if value is not None and value.denominator == 1 else None


def strips(line: str, last: Asked) -> Iterator[Plain]:
    """How many strips of the girth just worked a coil gives: a question, and nothing to hold against it; or of another coil."""
    found = _STRIPS.fullmatch(line) if last.topic.name == "bent flashing" else None
    found = _ACROSS.fullmatch(line) if last.topic.name == "strips from a coil" else found
    if found is not None and len(places_of(found["n"])) == 1:
        girth = last.record["answer"] if last.topic.name == "bent flashing" else {}
        wide = f"{girth['value']:g} {girth['unit']} " if girth.get("unit") in Length.units else ""
        yield Plain(f"how many {wide}strips from a {found['n']} coil", ("strips from a coil",))


def none_of_it(line: str, last: Asked) -> Iterator[Plain]:
    """None of what the question before was given: no overhang, leave the tail off."""
    found = _NONE_OF.fullmatch(line)
    said = (found["what"] or found["off"] or found["lose"]).lower() if found is not None else ""
    name = _CALLED.get(said, said)
    mine = [key for key in last.givens if name and last.topic.parameter(key).label in (name, f"{name} all round")]
    if len(mine) == 1:
        key = mine[0]

        def none(now: Asked, before: Asked) -> bool:
            given = now.givens.get(key)
            return given is None or getattr(given.value, "value", None) == 0

        unit = getattr(last.givens[key].value, "unit", "")
        yield Plain(f"no {name}", holds=none)
        yield Plain(f"make the {name} 0 {unit}", holds=none)


def nth_one(line: str, last: Asked) -> Iterator[Plain]:
    """One length of a sum put right by its place, after a no."""
    found = _NTH.fullmatch(line) if last.topic.name == "tape arithmetic" else None
    if found is not None and len(places_of(found["n"])) == 1:
        yield Plain(f"the {found['nth']} one is {found['n']}", told=found["n"])


def more_of_them(line: str, last: Asked) -> Iterator[Plain]:
    """More of a piece of a cut list, where there are such pieces."""
    found = _MORE_OF.fullmatch(line) if last.topic.name == "cut list" else None
    size = re.sub(r"(?<=\d)'?s\b|\bones?\b", "", found["x"]).strip(" ,") if found is not None else ""
    count = _count(found["n"]) if found is not None else None
    places = places_of(size)
    if (
        not count
        or len(places) != 1
        or "pieces" not in last.givens
        or numbers_in(size[: places[0].start] + size[places[0].end :])
    ):
        return
    number, lengths = places[0].value, [getattr(piece, "length", None) for piece in last.givens["pieces"].value]
    if number.unit == "none":
        units = {length.unit for length in lengths if length is not None and length.value == number.value}
        size = f"{size} {units.pop()}" if len(units) == 1 else ""
    if size and not unheard(size, [last.givens["pieces"]]):
        yield Plain(f"add {count} at {size}", told=size)


def opening_with_them(line: str, last: Asked) -> Iterator[Plain]:
    """One more opening to be trimmed: throw a 3-0 x 6-8 door in with those."""
    found = (_OPENING.fullmatch(line) or _OPENING_OF.fullmatch(line)) if "openings" in last.givens else None
    sides = last.givens.get("sides")
    four = sides is not None and "four" in str(getattr(sides.value, "value", sides.value))
    if found is not None and numbers_in(found["size"]) and not (four and found["what"].lower() == "door"):  # has a door a sill?
        yield Plain(
            f"and a {found['size']} {found['what']}",
            holds=lambda now, before: len(now.givens["openings"].value) == len(before.givens["openings"].value) + 1,
        )


def one_less(line: str, last: Asked) -> Iterator[Plain]:
    """So many more or fewer of what the question counts: one less spindle."""
    found = _ONE_LESS.fullmatch(line)
    counts = [(key, given.value) for key, given in told_of(last).items() if isinstance(given.value, Count)] if found else []
    if found is None or len(counts) != 1 or not isinstance(counts[0][1], Count):
        return
    key, old = counts[0]
    label, by = last.topic.parameter(key).label, _count(found["n"])
    said = found["what"].lower() if found["what"] else ""
    if not by or (said and stem(said) not in _counted(label, old, last)):
        return
    new = old.value + by if (found["how"] or "fewer").lower() not in ("less", "fewer") else old.value - by
    if new > 0 and new.denominator == 1:
        for plain in (f"{new} {stem(said)}s" if said else f"{new} {label}", f"make it {new} {label}"):
            yield Plain(plain, holds=lambda now, before: getattr(now.givens[key].value, "value", None) == new)


def _counted(label: str, old: Quantity, last: Asked) -> set[str]:
    """The words for what a question counts: those of its name, what stood after the number, and what is spaced in a row."""
    tokens = tokenize(last.text)
    after = [
        tokens[place.after].text for place in places_of(last.text) if place.value.value == old.value and place.after < len(tokens)
    ]
    words = {stem(word) for word in (*label.split(), *after)}
    return words | (_PIECES if label == "pieces" else set())


def through_all(line: str, last: Asked) -> Iterator[Plain]:
    """A screw through all the layers that were listed before."""
    found = _THROUGH.search(line) if "layers" in last.givens else None
    if found is None:
        return
    layers = last.givens["layers"].value
    said = 2 if (found["all"] or "").lower() == "both" else _count(found["n"]) if found["n"] else len(layers)
    if said == len(layers):
        rest = re.sub(r" +", " ", f"{line[: found.start()]} {line[found.end() :]}").strip()
        rest = re.sub(r"(?<=screw|crews|nails) (?:with|and|to get|to leave|that gives)(?= )", " for", rest, flags=re.IGNORECASE)
        yield Plain(
            rest,
            ("fastener length", "fastener penetration"),
            holds=lambda now, before: now.givens["layers"].value == layers and not unheard(rest, now.givens.values()),
        )


def all_of_them(line: str, last: Asked) -> Iterator[Plain]:
    """So many like the one just worked, and what they come to."""
    found = _ALL_OF.fullmatch(line)
    if found is None or len(places_of(found["ask"])) > (1 if re.search(r"\btwo|three|four\b", found["ask"]) else 0):
        return
    count = _count(found["n"])
    known = _TOGETHER | last.things | {found["what"].lower()}
    if count and all(word in known or stem(word) in known for word in re.findall(r"[a-z']+", found["ask"].lower())):
        boxed = "box" in last.givens and re.search(r"\bbox", found["ask"], re.IGNORECASE) is not None
        topics = ("boxes",) if boxed else ()
        yield Plain(f"{count} of those", topics, changes=0, holds=lambda now, before: boxed or now.times == count)


def sticks_for(line: str, last: Asked) -> Iterator[Plain]:
    """How many sticks give so many of the pieces just worked."""
    found = _STICKS_FOR.fullmatch(line) if last.topic.name == "pieces from a stick" and "sticks" not in last.givens else None
    count = _count(found["n"] or found["m"]) if found is not None else None
    each = last.record["answer"]["value"] if found is not None else 0
    if count and each:
        yield Plain(f"one stick did {each:g} pieces, how many sticks for {count} pieces at that rate", ("by the same rate",))


def still_to_do(line: str, last: Asked) -> Iterator[Plain]:
    """How far is left to do by the same rate."""
    found = _LEFT.fullmatch(line) if last.topic.name == "by the same rate" else None
    done = next((key for key in last.givens if key.endswith("_done")), "")
    now = last.givens.get(done.removesuffix("_done")) if done else None
    many, before = last.givens.get("many"), last.givens.get(done)
    if "waste" in told_of(last):
        return
    if found is None or now is None or many is None or before is None or len(places_of(found["n"])) != 1:
        return
    kind = places_of(found["n"])[0].value
    if type(kind) is type(before.value) and isinstance(before.value, Quantity):
        took = f"{float(many.value.value):g} of them did {float(before.value.value):g} {_unit(before.value)}"  # type: ignore[union-attr]
        yield Plain(
            f"{took}, how many for {found['n']} at that rate",
            ("by the same rate",),
            holds=lambda after, was: (
                not unheard(found["n"], [after.givens[done.removesuffix("_done")]])
                and after.givens[done].value.value == was.givens[done].value.value
            ),  # type: ignore[union-attr]
        )


def _unit(value: Quantity) -> str:
    return {"m2": "square metres", "ft2": "square feet", "m": "metres", "ft": "feet", "in": "inches"}.get(value.unit, value.unit)


def wall_under(line: str, last: Asked) -> Iterator[Plain]:
    """The gable just worked and the wall under it, together."""
    found = _WALL_UNDER.fullmatch(line) if last.topic.name == "gable area" and last.times == 1 else None
    pitch, width = last.givens.get("pitch"), last.givens.get("width")
    if (
        found is None
        or not found["ask"]
        or pitch is None
        or width is None
        or not _BOTH.search(found["ask"])
        or numbers_in(re.sub(r"\b(?:two|both)\b", "", found["ask"]))
    ):
        return
    wide, steep = (getattr(given.value, "text", "") for given in (width, pitch))
    yield Plain(
        f"gable {wide} wide at {steep} over a wall {found['n']} high, total area",
        ("wall area",),
        holds=lambda now, before: not unheard(f"{wide}; {steep}; {found['n']}", now.givens.values()),
    )


def asked_instead(line: str, last: Asked) -> str:
    """What to ask where a line names what there is too much of, or leaves open what is wanted of it; "" for nothing."""
    through, under = _THROUGH.search(line), _WALL_UNDER.fullmatch(line)
    if through is not None and "layers" in last.givens and not any(through_all(line, last)):
        return f"Which of the {len(last.givens['layers'].value)} layers does it go through? Say them, or all of them."
    if any(more_of_them(line, last)):
        return "How many of which piece more is that? Say the number and the length, with its unit."
    if under is not None and last.topic.name == "gable area" and not under["ask"]:
        return "Do you want the wall alone, or the gable and the wall together? Ask it with how wide and how high the wall is."
    return packs_of_squares(line, last) or past_otherwise(line, last)


# which hold though the line was answered: as another number, or a sum
FIRST = (one_less, more_of_them, wall_under, out_of_another)
ROWS: tuple[Callable[[str, Asked], Iterator[Plain]], ...] = (
    strips, none_of_it, nth_one, more_of_them, opening_with_them, one_less, through_all, all_of_them, sticks_for, still_to_do,
    on_its_scale, in_fact, layer_not, at_centres, by_radius, wall_under, eave_long, out_of_another, same_without, tail_on_it,
    other_grain, to_a_square,
)  # fmt: skip
