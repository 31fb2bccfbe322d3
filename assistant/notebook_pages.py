"""The notebook as plain text for the command line: a page of entries, and the order list."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable

from assistant.notebook_entry import SHORT, Entry
from assistant.notebook_order import OrderLine

WIDTH = 100
TOPIC_WIDTH = 20
LEAST_HEARD = 16
EMPTY = "Nothing is written here yet."


def day_page(entries: Iterable[Entry], width: int = WIDTH) -> str:
    """One line an entry (time, id, topic, words, answer, what was said of it later), under a heading for each day."""
    lines: list[str] = []
    day = ""
    for entry in entries:
        if entry.day != day:
            lines += [""] * bool(lines) + [entry.day]
            day = entry.day
        lines.append(entry_line(entry, width))
    return "\n".join(lines) or EMPTY


def entry_line(entry: Entry, width: int = WIDTH) -> str:
    """One entry on one line. Only the words are shortened to fit `width`: an answer cut short would be a wrong one."""
    start = f"{entry.at[11:16]}  {entry.short}  {_fit(_plain(entry.topic or '-'), TOPIC_WIDTH):{TOPIC_WIDTH}}  "
    end = "".join(f"  {part}" for part in (_came_of_it(entry), *_said_since(entry)) if part)
    room = max(width - len(start) - len(end), LEAST_HEARD)
    return start + _fit(_plain(entry.heard), room) + end


def order_page(lines: Iterable[OrderLine]) -> str:
    """The order list: one line a thing, with the entries it came from."""
    shown = [f"{line.name}: {line.text}{_from(line)}" for line in lines]
    return "\n".join(map(_plain, shown)) or "Nothing to order: no take-off has been asked for."


def _from(line: OrderLine) -> str:
    """Where the amount comes from, and a warning when a question may have been asked twice for one wall."""
    entries = list(dict.fromkeys(line.entries))
    short = ", ".join(id[-SHORT:] for id in entries)
    again = (
        f"; {line.repeats} asked again with the same givens, strike it if it is the same wall" if line.repeats else ""
    )
    return f" ({short}{again})"


def _came_of_it(entry: Entry) -> str:
    """The answer's text, or what happened instead of an answer; a note shows its words already."""
    answer = entry.record["answer"]
    if answer is not None:
        return f"= {_plain(answer['text'])}"
    return {"asks": "asked back", "declined": "declined"}.get(entry.outcome, "")


def _said_since(entry: Entry) -> list[str]:
    """What later entries say about this one, in words."""
    words = ["STRUCK"] * entry.struck
    words += [f"corrected by {entry.corrected_by[-SHORT:]}"] if entry.corrected_by else []
    words += ["flagged"] * entry.flagged
    words += [f"tag: {_plain(tag)}" for tag in entry.tags]
    words += [f"note: {_plain(note)}" for note in entry.notes]
    return [f"[{word}]" for word in words]


def _plain(text: str) -> str:
    """The text on one line, without characters that would steer the terminal."""
    return " ".join("".join(" " if unicodedata.category(c) in ("Cc", "Cf", "Zl", "Zp") else c for c in text).split())


def _fit(text: str, width: int) -> str:
    return text if len(text) <= width else text[: width - 1] + "…"
