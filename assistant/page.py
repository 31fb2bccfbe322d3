"""Sets one record as a page of text: the question, what was given, each step of the working, the answer and its checks.

The page is made of sections, so that the terminal prints them and the screen draws them from the same words. Nothing is
shown that is not in the record. No colour is needed to read it.
"""

from __future__ import annotations

import textwrap
from dataclasses import dataclass, field
from typing import Any

from assistant.drawing import FigureError
from assistant.drawing_terminal import draw, plain

Record = dict[str, Any]

LEAST_WIDTH = 20
DRAWING_SHARE = 0.45  # of the width, in lines: a drawing taller than this pushes the answer off the page
DRAWING_LINES = 22  # at most
LONGEST_QUESTION = 400  # characters of it shown
WIDEST_TEXT = 100  # a longer line is hard to follow with a thumb on the tape

# A step that compares is no equation: its sides are set apart by semicolons instead of equals signs.
RELATIONS = (" ≤ ", " ≥ ", " < ", " > ", " ≠ ", " <= ", " >= ", " != ")
JOINTS = {False: " = ", True: "; "}

# Where a given came from, as a person would say it; one that was asked for needs no remark.
ORIGINS = {"assumed": "assumed, not said", "job": "kept for this job", "earlier": "from the question before"}


@dataclass(frozen=True, slots=True)
class Section:
    """A part of the page: its name, its lines, and what the screen may tell them apart by.

    `kind` is one of head, doubt, answer, also, say, givens, step, marks, checks, cautions, sources, drawing.
    """

    kind: str
    title: str
    lines: list[str] = field(default_factory=list)

    @property
    def joined(self) -> bool:
        """Whether it follows the section before with no blank line."""
        return self.kind == "also" or (self.kind == "step" and not self.title)


def page(record: Record, width: int = 80, ascii_only: bool = False) -> str:
    """The record as text at most `width` columns wide, ending in a newline; `ascii_only` for a plain terminal."""
    lines: list[str] = []
    for section in sections(record, width, ascii_only):
        lines += [] if section.joined or not lines else [""]
        lines += ([section.title] if section.title else []) + section.lines
    return "\n".join(line.rstrip() for line in lines) + "\n"


def sections(record: Record, width: int = 80, ascii_only: bool = False) -> list[Section]:
    """The parts of the page in the order they are read; parts with nothing in them are left out."""
    width = max(LEAST_WIDTH, width)
    record = spelled(record) if ascii_only else record
    parts = [
        head(record, width, ascii_only),
        doubts(record, width),
        answer(record, width),
        also(record, width),
        givens(record, width),
        *steps(record, width),
        *drawing(record, width, ascii_only),
        marks(record, width),
        checks(record, width, ascii_only),
        bulleted("cautions", "Take care", record.get("cautions"), width),
        bulleted("sources", "From", record.get("sources"), width),
    ]
    return [part for part in parts if part.lines]


def spelled(value: Any) -> Any:
    """A record with every word of it in ASCII, before it is set in lines, since spelling it out makes it longer."""
    if isinstance(value, str):
        return plain(value, ascii_only=True)
    if isinstance(value, dict):
        return {key: spelled(item) for key, item in value.items()}
    return [spelled(item) for item in value] if isinstance(value, list) else value


def head(record: Record, width: int, ascii_only: bool) -> Section:
    """The question as it was heard, with when and for which job."""
    about = [clock(record.get("at")), words(record.get("job")), words(record.get("topic"))]
    dot = " - " if ascii_only else " · "
    heard = wrap(shortened(words(record.get("heard"))), width)
    return Section("head", "", [*wrap(dot.join(part for part in about if part), width), *heard])


def shortened(heard: str) -> str:
    """The question, unless it is so long that it would push its answer off the page; the record keeps the whole."""
    if len(heard) <= LONGEST_QUESTION:
        return heard
    return f"{heard[:LONGEST_QUESTION]} ... ({len(heard):,} characters in all)"


def doubts(record: Record, width: int) -> Section:
    """Words that were not heard for certain, with what else they may have been."""
    lines = []
    for doubt in record.get("doubt") or []:
        others = " or ".join(words(other) for other in doubt.get("or") or [])
        lines += wrap(f"{words(doubt.get('word'))}" + (f", or was it {others}?" if others else ""), width, "  ")
    return Section("doubt", "Heard with doubt", lines)


def answer(record: Record, width: int) -> Section:
    """The answer; else the question put back, why it was declined, or what was noted."""
    found = record.get("answer")
    if found:
        line = f"{words(found.get('name'))}  =  {words(found.get('text'))}"
        return Section("answer", "Answer", wrap(line, width, "  "))
    asked = words(record.get("ask")) if record.get("outcome") == "asks" else ""
    title = {"asks": "One thing first", "declined": "Not worked out"}.get(str(record.get("outcome")), "")
    return Section("say", title, wrap(asked or words(record.get("say")), width, "  "))


def also(record: Record, width: int) -> Section:
    """What a good answer carries beside it."""
    return Section("also", "", in_columns(record.get("also") or [], width))


def in_columns(items: list[dict[str, Any]], width: int) -> list[str]:
    """Names and readings in two columns, each with where it came from if that needs a remark."""
    names = min(width // 2, max((len(words(item.get("name"))) for item in items), default=0))
    lines = []
    for item in items:
        origin = ORIGINS.get(str(item.get("from")), "")
        line = f"{words(item.get('name')).ljust(names)}  {words(item.get('text'))}"
        lines += hanging(line + (f"  ({origin})" if origin else ""), width, "  ", names + 4)
    return lines


def givens(record: Record, width: int) -> Section:
    """What the working starts from; anything assumed or remembered is named as such."""
    return Section("givens", "Given", in_columns(record.get("givens") or [], width))


def steps(record: Record, width: int) -> list[Section]:
    """Each step as its own section: the formula, the numbers put in, the result, and why."""
    found = record.get("steps") or []
    return [Section("step", "Working" if n == 1 else "", step(item, n, width)) for n, item in enumerate(found, 1)]


def step(item: dict[str, Any], number: int, width: int) -> list[str]:
    """One step: on one line with its reason if that fits, else broken at the equals signs, the reason last."""
    lead = f"{number:>3}  "
    parts = chain(item)
    joint = JOINTS[any(sign in part for part in parts for sign in RELATIONS)]
    whole, why = parts[0] + "".join(joint + part for part in parts[1:]), words(item.get("why"))
    if why and len(lead) + len(whole) + 3 + len(why) <= width:
        return [f"{lead}{whole}   {why}"]
    indent = " " * len(lead)
    if len(lead) + len(whole) <= width:
        lines = [lead + whole]
    else:
        first = 2 if len(lead + joint.join(parts[:2])) <= width else 1  # the symbol stays with its formula
        lines = hanging(lead + joint.join(parts[:first]), width, "", len(lead) + 2)
        for part in parts[first:]:
            lines += hanging(joint.lstrip() + part, width, indent, len(lead) + 2)
    return lines + wrap(why, width, indent)


def chain(item: dict[str, Any]) -> list[str]:
    """The sides of a step's equation in order, none said twice: symbol, formula, numbers put in, result."""
    sides: list[str] = []
    for key in ("formula", "filled", "result"):
        for side in words(item.get(key)).split(" = "):
            if side and side not in sides[-1:] and not (sides and side == sides[0]):
                sides.append(side)
    return sides or [""]


def drawing(record: Record, width: int, ascii_only: bool) -> list[Section]:
    """The figure, or one sentence where it can't be drawn."""
    figure = record.get("figure")
    if not figure:
        return []
    wide = min(width, WIDEST_TEXT)
    try:
        lines = draw(figure, wide, min(DRAWING_LINES, max(8, int(wide * DRAWING_SHARE))), ascii_only)
    except FigureError as error:
        lines = wrap(str(error), width)
    return [Section("drawing", "", lines)]


def marks(record: Record, width: int) -> Section:
    """Every mark, numbered, in as many columns as fit, read down."""
    found = record.get("marks") or []
    cells = [f"{n:>{len(str(len(found)))}}  {mark_text(item, n)}" for n, item in enumerate(found, 1)]
    if not cells:
        return Section("marks", "")
    wide = min(width - 2, max(map(len, cells))) + 4
    across = max(1, (width + 2) // wide)
    down = -(-len(cells) // across)
    lines = ["  " + "".join(cell.ljust(wide) for cell in cells[row::down]) for row in range(down)]
    return Section("marks", f"Marks ({len(cells)})", [line for text in lines for line in hanging(text, width, "", 6)])


def mark_text(item: dict[str, Any], number: int) -> str:
    """A mark's reading, with its name where that says more than its number."""
    name, text = words(item.get("name")), words(item.get("text"))
    bare = name.casefold().removeprefix("mark").removeprefix("course").strip(" #") in ("", str(number))
    return text if bare else f"{text}  {name}"


def checks(record: Record, width: int, ascii_only: bool) -> Section:
    """Each check and whether it holds."""
    signs = {True: "ok   ", False: "FAILS"} if ascii_only else {True: "✓", False: "✗ FAILS:"}
    lines = []
    for item in record.get("checks") or []:
        lines += hanging(f"{signs[bool(item.get('holds'))]} {words(item.get('what'))}", width, "  ", 4)
    return Section("checks", "Checked", lines)


def bulleted(kind: str, title: str, items: Any, width: int) -> Section:
    """Sentences one under the other."""
    return Section(kind, title, [line for item in items or [] for line in hanging(f"- {words(item)}", width, "  ", 4)])


def clock(at: Any) -> str:
    """The date and time of day of an ISO 8601 time, as written; an empty string when there is none."""
    text = words(at)
    return f"{text[:10]} {text[11:16]}" if len(text) >= 16 and text[10] in "T " else text


def words(value: Any) -> str:
    """A value of the record as text on one line, without control characters."""
    return "" if value is None else plain(str(value), ascii_only=False).strip()


def wrap(text: str, width: int, indent: str = "") -> list[str]:
    """The text in lines of at most `width`, words too long for a line broken."""
    return textwrap.wrap(text, min(width, WIDEST_TEXT), initial_indent=indent, subsequent_indent=indent)


def hanging(text: str, width: int, indent: str, hang: int) -> list[str]:
    """The text in lines of at most `width`, later lines set in to `hang` columns; spacing inside a line is kept."""
    if len(indent) + len(text) <= width:
        return [indent + text.rstrip()] if text.strip() else []
    hang = min(hang, width // 2)
    return textwrap.wrap(text, width, initial_indent=indent, subsequent_indent=" " * hang, drop_whitespace=True)
