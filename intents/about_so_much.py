"""An exposure that is wanted about, and not at most: "six inches or thereabouts", "somewhere round 6", "six-ish".

The words stand right before or right after it: a wall of about nine foot says nothing of its courses.
"""

from __future__ import annotations

import re

from intents.expressions import expression
from intents.question import Heard, Question

_THING = r"(?:inch(?:es)?|in|mm|cm|mil|exposures?|reveals?|to the weather|showing|courses?|rows?|gauge|cover|each|\")"
_BEFORE = expression(
    r"(?:\b(?:some ?where|round about|roundabout|around about|somewheres)(?: (?:round|near|in|close to|about|like))?(?: the)?"
    r"|\bround|\bnear(?:ly)? enough(?: to)?|\bball ?park(?: of)?|\bin the (?:region|neighbou?rhood|area|vicinity) of"
    r"|\b(?:hoping|shooting|aiming|going|looking|gunning|shoot|aim|hope) for(?: about)?|\bideally"
    r"|\bcirca|\bapprox(?:imately|\.)?"
    r"|\bas (?:near|close)(?: as \w+)*(?: to)?|\bsomething like|\bmore like|\bthe ideal(?: is| would be)?)"
    rf"(?:\s+(?:a|an|the|at|of|it|is|be|{_THING}))*\s*$",
    re.IGNORECASE,
)
_AFTER = expression(
    rf"\s*-?\s*(?:{_THING}\s*)*(?:ish\b|[,;]?\s*(?:(?:or )?there ?abouts|give or take|more or less|or so\b"
    r"|or near(?: it| enough)?\b|or close(?: to it| enough)?\b|or as (?:near|close)|near enough"
    r"|approximately|approx\b|ideally|if possible|roughly))",
    re.IGNORECASE,
)
_AT_MOST = expression(
    r"\b(?:max\w*|at most|no more|not (?:over|more|past|beyond|to)|tops|limit\w*|under|exceed\w*|up to|greatest|never|any more"
    r"|or less)\b",
    re.IGNORECASE,
)


def about_so_much(text: str, question: Question) -> None:
    """Take the exposure as what is aimed at, where the words beside it say so and none says that it is the most."""
    heard = question.givens.get("exposure")
    if heard is None or "meant" in question.givens:
        return
    before, after = text[: heard.start], text[heard.end :]
    close = _BEFORE.search(before) or _AFTER.match(after)
    if close is None or _AT_MOST.search(f"{before[-30:]} {after[:30]}".replace("more or less", "")):
        return
    question.givens["meant"] = Heard("TARGET", heard.start, heard.end, heard.text)
