"""What a line tells of things that are counted, in the terms of the topic before it: "two at every spot" is how many fixings go
in each place, "got six of them 3.6s, how many nogs all up" so many of the sticks, "need 30 of those, how many 16s do I pull" a
cut list.
"""

from __future__ import annotations

import re
from fractions import Fraction
from typing import TYPE_CHECKING

from assistant.said_over import places_of, stem, times_apart, whole
from assistant.several import told_of
from intents.expressions import expression
from intents.talk import numbers_in
from solvers.quantities import Count, Length, Number

if TYPE_CHECKING:
    from assistant.pending import Asked

LEAD = (
    r"\W*(?:(?:and|so|ok|okay|right|then|but|now|well|oh|ah|no|nah|sorry|wait|hang on|hold on|actually|also|what if|how about"
    r"|what about|say|suppose|if|i meant|i mean|he|she|they|it|we|i|you|the|boss|inspector|engineer|says|said|wants|want|needs"
    r"|need|came back|just|and said|put|make|made|use|do|go|with|should|be|that|that['’]s|there['’]s|it['’]s|them|['’]ll|to"
    r"|have|got|gotta|allow|call|for)\b\W*)*"
)
_FIXING = r"(?:screws?|nails?|clips?|staples?|fixings?|fasteners?|brads?|of (?:them|those|'?em))"
_PLACE = r"(?:one|studs?|joists?|rafters?|spots?|places?|points?|crossings?|positions?|marks?|holes?|fixings?|locations?|time)"
_AT_EACH = expression(  # put two at every spot; two nails every spot, not one
    rf"{LEAD}(?:(?:i['’]?m|we['’]?re|i|we) (?:putting|nailing|using|shooting|put|use) )?"
    rf"(?:(?P<n>two|to(?= (?:an?|each|every|per)\b)|three|four|2|3|4|double)(?: {_FIXING})?(?: (?:go|going|in))?"
    r"|(?P<up>double|pair)(?:ed)?(?: them| those"
    rf"| the (?:screws|nails))?(?: up)?)(?: (?:at|in|per|to|on|into))?(?: (?:the|an?))? ?"
    rf"(?:(?:each|every|per|all the|a)? {_PLACE}|(?<=(?:at|in) )each)"
    r"(?:[, ]+not (?:one|1|just one|the one))?(?:[, ]+(?:instead|now|then|please))*\W*",
    re.IGNORECASE,
)
_ROWS = expression(  # how many screws if there's 22 courses
    r"\W*(?:(?:and|so|ok|then|now|but)\W+)*how many (?:screws|nails|fixings|fasteners|clips|staples)?[a-z' ]*?\b(?:if|with|for"
    r"|on|at) (?:there(?:['’]?s| is| are| were| was) |it(?:['’]?s| is| was) |i (?:do|did|have|had) |we (?:do|did|have|had) )?"
    r"(?P<n>[^,;?]+?) (?P<what>courses|rows|straps|battens|boards|strips)(?: instead| then)?\W*",
    re.IGNORECASE,
)
_BOXES_OF = expression(  # no wait, these ones are boxes of 75
    rf"{LEAD}(?:how many )?(?:(?:these|those|this|the) (?:ones?|lot|screws|nails)? ?)?"
    r"(?:(?:are|is|come|comes|came)(?: in)? )?(?:an? )?"
    r"(?:boxe?s?|packs?|packets?|tubs?|pails?|cartons?) of (?P<n>[^,;?]+?)(?: (?:instead|then|now))?\W*",
    re.IGNORECASE,
)
_SO_MANY_TO_A_BOX = expression(  # they come 150 to a box, so how many boxes is that
    rf"{LEAD}(?:they|these|those|the (?:nails|screws|clips))(?: come|['’]re| are| is)?(?: in)? "
    rf"(?P<n>\d+|[a-z]+(?: [a-z]+){{0,3}}?)"
    r" (?:to (?:a|the)|in (?:a|each|every)|a|per) (?:box|pack|packet|tub|pail|carton)"
    r"[,.;]? (?:and |so |then )*how many (?:boxes|packs|packets|tubs|pails|cartons)"
    r"(?: (?:is (?:that|it)|do i (?:need|get|buy|want)|will i need|are there))?\W*",
    re.IGNORECASE,
)
_NEEDED = expression(  # no wait, 3950 screws I need; I need 4000 of them
    r"\W*(?:(?:and|so|ok|no|nope|sorry|wait|but|now|actually|hang on|make it|it['’]?s)\W+)*(?:(?P<n>[\d,]+"
    r"|[a-z -]+?)(?: (?P<thing>[a-z]+))?"
    r" (?:i|we)(?:['’]ll)? (?:need|want|have)|(?:i|we)(?:['’]ll)? (?:only |really |actually )?(?:need|want)(?: about)?"
    r" (?P<m>[\d,]+|[a-z -]+?)(?: of (?:them|those)| (?P<what>[a-z]+))?)(?: (?:now|instead|in all|all told))*\W*",
    re.IGNORECASE,
)
_MORE_OF_THEM = expression(  # 12 more; and another 12 sheets
    r"\W*(?:(?:and|so|ok|oh|sorry|wait|no|but|also|plus|add|i need|we need|put on|throw on)\W+)*(?:(?P<n>\d{1,4}|[a-z]+) more"
    r"(?: of (?:them|those|these)| (?P<thing>[a-z]+))?|another (?P<m>\d{1,4}|[a-z]+)(?: of (?:them|those|these)"
    r"| (?P<what>[a-z]+))?)"
    r"(?: (?:on top|as well|too|on))*\W*",
    re.IGNORECASE,
)
_ALONE = expression(rf"{LEAD}(?P<n>\d{{1,3}}|[a-z]+(?: [a-z]+)?)(?: instead| then| now)?\W*", re.IGNORECASE)
_NEAR_COUNT = 1.5  # times as many as there were
_SO_LONG = expression(  # make em 14 and a half long; the blocks gotta be 22 1/2; nogs are 350 not 410
    rf"{LEAD}(?:(?:the|these|those|my|all)\W+)?(?P<thing>[a-z]+)(?:['’]?s| are| is| at| to be| gotta be| have to be| need to be"
    r"| has to be| have got to be| be| come out at| should be| should've been| were)? (?P<n>[^,;?]*?\d[^,;?]*?|[a-z -]+?)"
    r"(?P<long> (?:long|each|apiece))?(?:,? (?:and )?not (?P<old>[^,;?]+?))?(?:[, ]+(?:instead|now|then))?\W*",
    re.IGNORECASE,
)
_BOTH = expression(  # make it a 16 and the blocks are 14 1/2 not 22 1/2
    r"\W*(?:(?:no|sorry|wait|ok|and|so|actually|now)\W+)*(?:(?:make|call|say) it|it['’]?s|out of|from|with|use|go with) "
    r"(?:an? )?(?P<stock>[^,;?]+?)(?: footer| foot)?(?:,? and|,) (?P<rest>.+)",
    re.IGNORECASE,
)
_SO_MANY = expression(  # got six of them 3.6s, how many nogs all up; i got 11 of those sticks
    r"\W*(?:(?:and|so|ok|then|now|but|well|say|if)\W+)*(?:(?:i|we)(?:['’]?(?:ve|d)| have| had| only)? ?)?(?:just )?"
    r"(?:(?:got|have|has|with|there(?:['’]s|s| are)|take|grab|buy|bought|use|from|out of|off)|(?<=['’]ve)|(?<=['’]ve )"
    r") ?(?P<n>\d{1,3}|[a-z]+)(?: of (?:those|them|these|the|'?em)(?: (?:longer|shorter|long|short|big|bigger|new|same))?"
    r"|(?= (?!of\b)[a-z\d.' -]+?[, ]+(?:and |so |then )*how many\b))"
    r"(?: (?P<size>[\d.]+(?:['’]?s| foot(?:ers?)?)?|[a-z]+?(?:s|es)|[a-z]+ foot(?:ers?)?))?"
    r"(?: (?:lengths|sticks|bars|battens|boards|ones))?(?: (?:on|in) the (?:truck|van|ute|trailer|shed|yard)| here| left)?"
    r"(?:[, ]+(?:and |so |then )*how many(?: (?!(?:is|are)\b)(?P<what>[a-z]+))?"
    r"(?: (?:is|are|do|does|will|would|can) (?:that|it|i|we|there)(?: (?:get|make|cut|have|give|come to)(?: (?:me|us))?)?)?"
    r"(?: (?:in all|altog[a-z]+|all told|in total|total|all up|then))*)?\W*",
    re.IGNORECASE,
)
_STICKS_NOW = expression(  # and from nine sticks like that; call it eleven sticks
    rf"{LEAD}(?:(?:from|out of|outta|off|across|in|there['’]?s|if i (?:have|had|use)) )?(?P<n>\S+(?: [a-z]+)?) (?:of )?"
    r"(?:sticks|lengths|bars|battens|boards)(?: (?:like|of) (?:that|those|them|it))?(?: of (?:it|them|that))?"
    r"(?: (?:now|then|instead|in all|altogether))*\W*",
    re.IGNORECASE,
)
_OF_THEM = r"(?: of (?:them|'?em|those|these)| blocks| pieces| pcs| (?P<thing>[a-z]+s))"
_SIZE = r"(?:of (?:those|these|them|the) )?(?P<size>[a-z0-9./' -]*?)"
_DO_I = r"(?: (?:do|should|would|will|must|does)(?: (?:i|we|that|it))?"
_DO_I += r"(?: (?:need|take|pull|buy|get|grab|order|want|load|use|pick up|be|is))?"
_DO_I += r"(?: (?:up|in|off))?| is (?:that|it))"
_FOR_SO_MANY = (
    expression(  # need 37 of em
        r"\W*(?:(?:and|so|ok|then|now|but|well)\W+)*(?:(?:i|we)(?:['’]?ll)? )?(?:need|want|gotta have|have to have|must have)"
        r" (?P<n>\d+|[a-z]+)(?: more)? of (?:them|'?em|those|these)(?P<size>)(?P<thing>)(?: (?:all told|in all|altogether))?\W*",
        re.IGNORECASE,
    ),
    expression(  # need 30 of those, how many 16s do I pull
        r"\W*(?:(?:and|so|ok|then|now|but|well|if)\W+)*(?:(?:i|we)(?:['’]?ll)? ?)?(?:need|want|have to have|gotta have|must have"
        r"|got to have|to get|for) (?P<n>[^\s,;]+(?: [a-z]+){0,3}?)(?: more)?"
        rf"{_OF_THEM}?[,;. ]+(?:and |so |then )*how many {_SIZE}{_DO_I}?\W*",
        re.IGNORECASE,
    ),
    expression(  # how many 8 footers for 20 of them
        rf"\W*(?:(?:and|so|ok|then|now|but|well)\W+)*how many {_SIZE}{_DO_I}? (?:for|to get|to make|to cut)(?: me)?"
        rf" (?P<n>[^\s,;]+(?: [a-z]+){{0,3}}?){_OF_THEM}\W*",
        re.IGNORECASE,
    ),
)
_FOOTERS = expression(
    rf"{LEAD}(?:(?:just|only|with|from|out of|use|using|in|on|for|they['’]?re|they are|it['’]?s|got|have|the|an?)\b ?)*"
    r"(?:(?P<many>\d+|[a-z]+) )??(?P<n>\d+|[a-z]+(?:[ -][a-z]+)?)[ -]?foot(?P<er>ers?|s)?(?: (?:instead|then|now|only|ones|sticks"
    r"|boards))*\W*",
    re.IGNORECASE,
)
_LONG_SHEETS = expression(  # 12s, 12 footers, of sheets
    rf"{LEAD}(?:with |using |in |use |the |if (?:it['’]?s|they['’]?re|i use) )*(?P<l>\d+|eight|nine|ten|twelve)"
    r"(?:['’]?s|[ -]?foot(?:er)?s?)(?: (?:sheets|boards))?(?: instead| then)?\W*",
    re.IGNORECASE,
)
_SHEETS_OF = expression(
    rf"{LEAD}(?:(?:use|using|in|from|with|out of|buy|get|(?:they|he|she|the yard|the store)(?:['’]ve"
    rf"|['’]s)?(?: only)? (?:sent|gave"
    r"|brought|delivered|dropped|got|have|had|has|stock|carry)(?: off)?(?: us| me)?) )?(?P<w>\d+|[a-z]+) ?(?:by|x|×"
    r"|-) ?(?P<l>\d+|[a-z]+?)['’]?s"
    r"(?: (?:sheets|boards|instead(?: of (?:the )?\d+ ?(?:by|x|×) ?\d+['’]?s?)?|now|then|only))*(?:[,;.]? (?:and "
    r"|so )?how many(?: (?:then|now|is that|sheets))*)?\W*",
    re.IGNORECASE,
)
_THOSE_FROM = expression(
    rf"{LEAD}how many (?:of (?:those|them|these)|like (?:that|those))(?: (?:do|can|could|would|will) (?:i|we|you) get)?"
    r" (?:out of|outta|from|off|in|per) (?:an? |the |one )?(?P<size>.+?)(?: (?:stick|length|board|piece))?\W*",
    re.IGNORECASE,
)
_COME_SO = expression(
    r"\W*(?:(?:and|so|ok|then|now)\W+)*(?:(?:they|these|those)(?:['’]ll)? )?(?:come|comes|sold|packed|get)(?: in)? (?P<n>\d+"
    r"|[a-z -]+?)"
    r" (?:to|in|per|a)(?: (?:an?|the|each|every))? (?:bundle|pack|packet|box|carton|bag|case|tub|pallet|crate)"
    r"(?:[,;.]? (?:so )?how many(?: (?:bundles|packs|packets|boxes|cartons|bags|cases|tubs|do i need|is that))*)?\W*",
    re.IGNORECASE,
)
_OFF_THE = expression(  # how many off the 11 now
    r"[,;.]? (?:so |and )?how many(?: [a-z]+)? (?:off|from|out of|across|with|in)(?: (?:of|all))? (?:the|those|them|my|all)"
    r" (?P<n>[a-z0-9]+)"
    r"(?: (?:of them|sticks|lengths))?(?: (?:now|then|in all))*\W*$",
    re.IGNORECASE,
)
_THEM = frozenset("them em they it those these piece block pcs".split())
_NO_SIZE = frozenset(("", "sticks", "lengths", "bars", "boards", "battens", "footers"))
_HEARD = {"for": "four", "fore": "four", "to": "two", "too": "two", "ate": "eight", "won": "one"}
_WORDS = {2: "two", 3: "three", 4: "four"}
_LONGEST = 48  # feet of a stick that a bare whole number tells


def at_each_place(text: str, last: Asked) -> str:
    """How many fixings go in at each place."""
    found = _AT_EACH.fullmatch(text)
    if found is None:
        return ""
    count = count_of("two" if (found["n"] or "").lower() in ("", "double", "to") else found["n"])
    return f"{_WORDS[count]} screws at each stud" if count in _WORDS else ""


def so_many_rows(text: str, last: Asked) -> str:
    """How many courses or straps there are, where their fixings are asked for."""
    found = _ROWS.fullmatch(text) if "rows" in last.givens else None
    return f"make it {found['n']} courses" if found is not None and count_of(found["n"]) else ""


def boxes_of(text: str, last: Asked) -> str:
    """Other boxes, after how many it took of some: these ones are boxes of 75."""
    found = _SO_MANY_TO_A_BOX.fullmatch(text)
    found = found or (_BOXES_OF.fullmatch(text) if "box" in last.givens else None)
    if found is None or not count_of(found["n"]):
        return ""
    told = (last.record.get("answer") or {}).get("name") == "boxes"  # which would be packed in boxes again
    return f"make it {count_of(found['n'])} to a box" if told else f"how many boxes of {found['n']}"


def so_many_needed(text: str, last: Asked) -> str:
    """How many go in the boxes: no wait, 3950 screws I need."""
    found = _NEEDED.fullmatch(text) if "box" in last.givens and "count" in last.givens else None
    count = count_of((found["n"] or found["m"]).replace(",", "")) if found is not None else None
    thing = stem((found["thing"] or found["what"] or "").lower()) if found is not None else ""
    return f"make the count {count}" if count and (not thing or thing in last.things) else ""


def more_counted(text: str, last: Asked) -> str:
    """So many more of what is priced or weighed: 12 more."""
    found = _MORE_OF_THEM.fullmatch(text) if "count" in last.givens else None
    count = count_of(found["n"] or found["m"]) if found is not None else None
    thing = stem((found["thing"] or found["what"] or "").lower()) if found is not None else ""
    was = last.givens["count"].value if count else None
    if not count or not isinstance(was, Count) or (thing and thing not in last.things):
        return ""
    return f"make the count {was.value + count}"


def so_many_spaced(text: str, last: Asked) -> str:
    """How many pieces are spaced, told by a number alone that is near to how many there were, and no width of one."""
    found = _ALONE.fullmatch(text)
    count = count_of(found["n"]) if found is not None else None
    lines = [last.record["answer"], *last.record["also"]]
    were = next((line["value"] for line in lines if line["name"] == "pieces" and line["value"]), None)
    width = last.givens["width"].value if "width" in last.givens else None
    if not count or not were or not isinstance(width, Length):
        return ""
    inches = width.to("in").value
    near = times_apart(Fraction(count), Fraction(str(were)))
    return f"make it {count} pieces" if near < _NEAR_COUNT and near < times_apart(Fraction(count), inches) else ""


def so_long(text: str, last: Asked) -> str:
    """How long each of the pieces is that are cut from a stick, alone or with another stick."""
    both = _BOTH.fullmatch(text)
    stock = length_of_given(both["stock"], last, "stock") if both is not None else None
    told = _each_long(both["rest"], last) if both is not None else None
    if stock is not None and told is not None:
        return _pieces_from(told, stock, last)
    off = _OFF_THE.search(text)
    sticks = last.givens.get("sticks")
    if off is not None and count_of(off["n"]) != (sticks.value.value if sticks is not None else last.times):  # type: ignore[union-attr]
        return ""
    alone = _each_long(text[: off.start()] if off is not None else text, last)
    return f"the pieces are {said_length(alone)} long" if alone is not None else ""


def _each_long(text: str, last: Asked) -> Length | None:
    """How long each piece is to be, by what it is called, or as what they are to be: what says “long” too, or what it was."""
    found = _SO_LONG.fullmatch(text) if "piece" in last.givens else None
    if found is None:
        return None
    thing, was = stem(found["thing"].lower()), last.givens["piece"].value
    old = length_of_given(found["old"], last, "piece") if found["old"] else None
    named = thing in last.things - {"stick", "length", "footer", "foot"} or thing in ("piece", "block")
    if not (named or (thing in _THEM and (found["long"] or old is not None))):
        return None
    if old is not None and isinstance(was, Length) and old.to("in").value != was.to("in").value:
        return None
    return length_of_given(found["n"], last, "piece")


def so_many_sticks(text: str, last: Asked) -> str:
    """So many of the sticks, whose pieces are asked for; not where it is sticks that are asked."""
    found = _SO_MANY.fullmatch(text) if "stock" in last.givens else None
    now = _STICKS_NOW.fullmatch(text) if found is None and "stock" in last.givens else None
    if now is not None and (sticks := count_of(now["n"])):
        return f"{sticks} of those sticks"
    if found is None or stem((found["what"] or "").lower()) in ("stick", "length", "bar"):
        return ""
    count, stock = count_of(_HEARD.get(found["n"].lower(), found["n"])), last.givens["stock"].value
    size = (found["size"] or "").lower()
    if not count or not isinstance(stock, Length):
        return ""
    if size not in _NO_SIZE:
        said = length_of_given(size, last, "stock")
        if said is None or said.to("in").value != stock.to("in").value:
            return ""
    return f"{count} of those sticks"


def sticks_for_so_many(text: str, last: Asked) -> str:
    """How many sticks give so many of the pieces just worked: a cut list."""
    if {"piece", "stock"} - last.givens.keys():
        return ""
    found = next((match for shape in _FOR_SO_MANY if (match := shape.fullmatch(text))), None)
    count = count_of(found["n"]) if found is not None else None
    if found is None or not count or (found["thing"] and stem(found["thing"].lower()) not in last.things):
        return ""
    size = re.sub(r"(?:sticks|lengths|boards)$", "", found["size"].strip().lower()).strip()
    stock = length_of_given(size, last, "stock") if size else last.givens["stock"].value
    piece = last.givens["piece"].value
    return list_of(count, piece, stock, last) if isinstance(stock, Length) and isinstance(piece, Length) else ""


def those_from(text: str, last: Asked) -> str:
    """How many pieces as long as the answer come from a stick: how many of those out of a 16 footer."""
    found, answer = _THOSE_FROM.fullmatch(text), last.record.get("answer")
    if found is None or not answer or answer["unit"] not in Length.units or "piece" in last.givens:
        return ""
    size = re.sub(r"['’]?s$| ?footers?$| ?foot$", "", found["size"].strip(), flags=re.IGNORECASE)
    place = whole(size)
    if place is None:
        return ""
    return f"how many pieces that long from a {size}{' foot' if not isinstance(place.value, Length) else ''} stick"


def packed_so(text: str, last: Asked) -> str:
    """How many of a pack hold what was counted: come 25 to a bundle, how many bundles."""
    answer, found = last.record.get("answer"), _COME_SO.fullmatch(text)
    count = count_of(found["n"]) if found is not None and answer is not None and answer["unit"] == "count" else None
    return f"how many boxes of {count}" if count and "box" not in last.givens else ""


def from_footers(text: str, last: Asked) -> str:
    """How long the sticks are that pieces come from, which are no eight of them: 8 footers; and how many, of nine 8 footers."""
    found, piece = _FOOTERS.fullmatch(text), last.givens.get("piece")
    if found is None or "stock" not in last.givens:
        return ""
    many, long = found["many"], found["n"]
    if many is None and count_of(long) is None:
        many, _, long = long.partition(" ")  # nine eight
    if count_of(long) is None:
        return ""
    if many is None:
        return f"make the stick {long} feet" if found["er"] else ""
    if count_of(many) is None or piece is None or not isinstance(piece.value, Length):
        return ""
    return f"how many {said_length(piece.value)} pieces from {count_of(many)} {count_of(long)} footers{_with_kerf(last)}"


def _four_wide(last: Asked) -> bool:
    """Whether the sheets there were are four feet wide, as the longer ones then are too."""
    wide = last.givens.get("sheet_width")
    return wide is None or (isinstance(wide.value, Length) and wide.value.to("ft").value == 4)


def other_sheets(text: str, last: Asked) -> str:
    """The sheets of another size that something is covered in: 4 by 12s."""
    long = _LONG_SHEETS.fullmatch(text)
    if long is not None and count_of(long["l"]) in range(6, _LONGEST + 1):
        return f"with 4 by {count_of(long['l'])} foot sheets" if _four_wide(last) else ""
    found = _SHEETS_OF.fullmatch(text)
    sizes = [count_of(found[side]) for side in ("w", "l")] if found is not None else []
    if found is None or not all(size and 2 <= size <= _LONGEST for size in sizes):
        return ""
    return f"with {sizes[0]} by {sizes[1]} foot sheets"


def _pieces_from(piece: Length, stock: Length, last: Asked) -> str:
    return f"how many {said_length(piece)} pieces from a {said_length(stock)} stick{_with_kerf(last)}"


def list_of(count: int, piece: Length, stock: Length, last: Asked) -> str:
    return f"how many {said_length(stock)} sticks for {count} pieces at {said_length(piece)}{_with_kerf(last)}"


def _with_kerf(last: Asked) -> str:
    kerf = told_of(last).get("kerf")
    return f", kerf {said_length(kerf.value)}" if kerf is not None and isinstance(kerf.value, Length) else ""


def said_length(value: Length) -> str:
    """A length in words that are read as that very length."""
    value = value.to("in") if value.unit == "ft" and value.value.denominator not in (1, 2, 4) else value  # 3 foot 2
    whole, part = divmod(value.value, 1)
    of_tape = value.unit == "in" and part and part.denominator in (2, 4, 8, 16, 32)
    number = f"{whole} {part}" if of_tape and whole else f"{part}" if of_tape else f"{float(value.value):g}"
    return f"{number} {value.unit}"


def count_of(words: str) -> int | None:
    """How many these words say, and nothing else; None where it is no whole number."""
    place, said = whole(words), [row.value for row in numbers_in(words)]
    if place is None or len(said) != 1 or not isinstance(said[0], Number) or said[0].value.denominator != 1:
        return None
    return int(said[0].value)


def length_of_given(words: str, last: Asked, name: str) -> Length | None:
    """The one length that these words are, a bare number in the unit that the given of this name has."""
    given = last.givens.get(name)
    bare = re.sub(r"(?<=\d)['’]?s$|(?: ?footers?| ?foots?)$", "", words.strip())
    feet = bare != words.strip() and re.search(r"foot", words)
    bare = re.sub(r"(?<=[a-z])s$", "", bare) if not places_of(bare) else bare
    place = whole(f"{bare} foot" if feet else bare)
    if place is None or given is None or not isinstance(given.value, Length):
        return None
    if isinstance(place.value, Length):
        return place.value
    unit = given.value.unit
    if unit == "in" and name != "piece" and place.value.value <= _LONGEST:
        unit = "ft"
    return Length(Fraction(place.value.value), unit)
