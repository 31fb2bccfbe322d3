"""A change of one thing in a list: the battens of four layers, one more door, the count of one kind of piece.

A list that is said in a change is the whole list only where it says as much as the one before; else it tells of one
thing in it, which takes the place of the one of its name, or is put to them where words say so. Where neither is
plain nothing is changed, and the conversation asks.
"""

from __future__ import annotations

import re
from collections.abc import Iterable
from dataclasses import replace
from typing import TYPE_CHECKING, Any

from intents.expressions import expression
from intents.question import Heard, Question
from intents.talk import numbers_in
from intents.untold_layers import kind_of
from solvers.quantities import Length, Number
from solvers.slots import Layer, Opening, Piece

if TYPE_CHECKING:
    from assistant.pending import Asked

_MORE = expression(
    r"\b(?:add|adds|added|adding|also|too|another|plus|as well|extra|more|put (?:in|on)|throw in|on top|over (?:that|it|them))\b",
    re.IGNORECASE,
)
_AND = expression(r"^\W*(?:and|less|minus|subtract|deduct|take (?:off|out|away))\b", re.IGNORECASE)
_PIECES = expression(
    r"\W*(?:(?:and|for|only|just|it['’]?s|we need|i need|there (?:are|were)|make (?:it|that)|no|sorry) )*"
    r"(?P<n>\S+) (?:pieces|cuts|bits|lengths|of (?:them|those|these|the same))\W*",
    re.IGNORECASE,
)
_OF_THE = expression(
    r"\W*(?:(?:and|but|only|just|need|we need|i need|make it|for) )*(?P<n>\S+) of (?:the|those) "
    r"(?P<size>.+?)(?:'?s)?(?: ones| pieces)?\W*",
    re.IGNORECASE,
)
# Less two 3 by 4 windows: taken out besides, and none in the place of what was; "less the window" is that one.
_OUT_TOO = expression(
    r"^\W*(?:(?:and|then|ok|also)\W+)*(?:less|minus|subtract|deduct|take (?:off|out|away)|and)\s+(?!the\b|that\b)", re.IGNORECASE
)
_PUTS_RIGHT = expression(
    r"^\W*(?:no|nope|sorry|i meant|i said|actually)\b|\b(?:instead|rather|swap|replace|change|make|in place|meant|sorry)\b",
    re.IGNORECASE,
)
_INSTEAD = expression(r"\b(?:instead|rather|swap|replace|change|make|in place)\b", re.IGNORECASE)


def put_into_lists(more: Question, last: Asked, text: str, old: str = "") -> bool:
    """Put what is told of one thing in a list into the list before; whether it could be told how."""
    for name, heard in list(more.givens.items()):
        before = last.givens.get(name)
        if before is None or not isinstance(before.value, tuple) or not before.value or not isinstance(heard.value, tuple):
            continue
        whole = merged(before.value, heard.value, text, old)
        if whole is None:
            return False
        more.givens[name] = replace(heard, value=whole, others=())
    return True


def so_many_of(rest: str, last: Asked) -> Question | None:
    """The last cut list with another count of the pieces of one length: four of the 40s, four of the five foot."""
    told, pieces = _OF_THE.fullmatch(rest), last.givens.get("pieces")
    count, size = (numbers_in(told[name]) if told else [] for name in ("n", "size"))
    if pieces is None or len(count) != 1 or len(size) != 1 or not isinstance(count[0].value, Number):
        return None
    length = size[0].value
    alike = [one for one in pieces.value if isinstance(one, Piece) and _so_long(one, length)]
    if not alike or count[0].value.value.denominator != 1 or len({one.length.to("in").value for one in alike}) > 1:
        return None
    now = replace(alike[0], count=int(count[0].value.value))
    rest_of = [now if one is alike[0] else one for one in pieces.value if one is alike[0] or one not in alike]
    return Question(last.topic.name, {"pieces": Heard(tuple(rest_of), 0, len(rest), rest)}, 1.0)


def _so_long(piece: Piece, length: object) -> bool:
    """Whether a piece is of this length; said bare, in the piece's unit."""
    if isinstance(length, Number):
        return bool(piece.length.value == length.value)
    return isinstance(length, Length) and bool(piece.length.to("in").value == length.to("in").value)


def so_many_pieces(rest: str, last: Asked) -> Question | None:
    """The last cut list with another count of its one kind of piece: "six pieces", which are no sticks of six feet."""
    told = _PIECES.fullmatch(rest)
    number = numbers_in(told["n"]) if told else []
    pieces = last.givens.get("pieces")
    if told is None or pieces is None or len(number) != 1 or not isinstance(number[0].value, Number):
        return None
    count, kinds = number[0].value.value, pieces.value
    if count.denominator != 1 or len(kinds) != 1 or not isinstance(kinds[0], Piece):
        return None
    return Question(last.topic.name, {"pieces": Heard((replace(kinds[0], count=int(count)),), 0, len(rest), rest)}, 1.0)


def merged(before: tuple[Any, ...], new: tuple[Any, ...], text: str, old: str) -> tuple[Any, ...] | None:
    """The list before with what is new in it, or None where it can't be told how; `old` is what gives way, as said."""
    if not new:
        return _without(before, text)
    if type(before[0]) not in (Layer, Opening, Piece) or type(before[0]) is not type(new[0]):
        return new
    told = type(before[0]) is Opening and bool(_OUT_TOO.match(text))
    more = (bool(_MORE.search(text)) or told) and not _INSTEAD.search(text)
    found, placed = list(before), set[int]()
    for item in new:
        at = _replaced(found, item, old)
        if at in placed:  # ten windows of one size, and eight of another
            found.append(item)
        elif at is None or (more and not isinstance(item, Layer)):
            continues = isinstance(item, Opening | Piece) and bool(_AND.search(text))
            continues |= isinstance(item, Opening) and not _PUTS_RIGHT.search(text)  # no window is a door
            if old or not (more or continues):
                return _anew(before, new)
            found.append(item)
        else:
            placed.add(at)
            found[at] = _in_place(found[at], item, text)
    return tuple(found)


def _without(before: tuple[Any, ...], text: str) -> tuple[Any, ...] | None:
    """The list without what the words say there is none of: no door; all of it, where they name the whole list."""
    words = {word.removesuffix("s") for word in re.findall(r"[a-z]+", text.lower())}
    kept = tuple(one for one in before if _name(one) not in words)
    return kept if len(kept) < len(before) else () if "opening" in words else None


def _anew(before: tuple[Any, ...], new: tuple[Any, ...]) -> tuple[Any, ...] | None:
    """The list said anew, where it says as many things as before and so can be no part of it."""
    one = len(before) == 1 and not isinstance(before[0], Layer)
    return new if one or (len(new) > 1 and len(new) >= len(before)) else None


def _replaced(found: list[Any], item: Any, old: str) -> int | None:
    """Which one of the list the new one takes the place of: the one named as old, or else the one of its name."""
    names = [_name(one) for one in found]
    if old and not isinstance(item, Piece):
        words = [kind_of(word) for word in re.findall(r"[a-z]+", old.lower())]
        return _only(at for at, name in enumerate(names) if kind_of(name) in words)
    same = _only(at for at, name in enumerate(names) if name == _name(item))
    if same is None and isinstance(item, Layer):  # called by its own name before it is by another
        return _only(at for at, name in enumerate(names) if kind_of(name) == kind_of(_name(item)))
    return same


def _only(places: Iterable[int]) -> int | None:
    found = list(places)
    return found[0] if len(found) == 1 else None


def _name(item: Any) -> Any:
    """What tells one thing of a list from the others: the word for a layer or opening, a piece's length."""
    return item.length.to("in").value if isinstance(item, Piece) else str(item.what).split()[-1].removesuffix("s")


def _in_place(before: Any, item: Any, text: str) -> Any:
    one = isinstance(item, Opening) and re.search(rf"\b(?:an?|one|1) (?:[a-z]+ )?{_name(item)}\b", text, re.IGNORECASE)
    if isinstance(item, Opening) and item.count == 1 and before.count > 1 and not one:
        return replace(item, count=before.count)  # "the windows are 3 by 5": as many as there were
    return item
