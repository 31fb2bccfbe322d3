"""Regular expressions made ready when first used: a question needs a tenth of those the modules hold.

The others are made ready between the lines of a conversation (`make_ready`), where nobody waits for it.
"""

from __future__ import annotations

import re
from typing import Any, cast

_WAITING: list[_Expression] = []  # those that were not looked at yet, used or not


class _Expression:
    """Stands for a compiled expression and becomes it: its methods are its own attributes after the first use."""

    def __init__(self, source: str, flags: int) -> None:
        self._made_of = (source, flags)
        _WAITING.append(self)

    def __getattr__(self, name: str) -> Any:
        if name.startswith("__"):  # what copies and pickles asks for is not the expression's
            raise AttributeError(name)
        made = re.compile(*self._made_of)
        for known in ("search", "match", "fullmatch", "finditer", "findall", "split", "sub", "subn"):
            self.__dict__[known] = getattr(made, known)
        return getattr(made, name)

    def __eq__(self, other: object) -> bool:
        """The same source and flags: a match knows the compiled one (`found.re == _MARK`)."""
        return getattr(other, "pattern", None) == self._made_of[0] and getattr(other, "flags", None) == self.flags

    def __hash__(self) -> int:
        return hash(self._made_of)


def expression(source: str, flags: int = 0) -> re.Pattern[str]:
    """What `re.compile(source, flags)` gives, compiled when it is first used; a fault in it is raised then."""
    return cast("re.Pattern[str]", _Expression(source, flags))


def make_ready(most: int) -> None:
    """Compile `most` of those that no line has used so far."""
    while _WAITING and most > 0:
        one = _WAITING.pop()
        if "search" not in one.__dict__:
            one.search  # noqa: B018  (which compiles it)
            most -= 1
