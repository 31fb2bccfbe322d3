"""Note, flag, tag and strike: entries of the notebook that point at another."""

from __future__ import annotations

from typing import Any

from assistant.acts import Talk, act
from assistant.record import put_asked, put_noted

OFF = " The notebook is off, so this was not written down"


@act("note")
def note(talk: Talk) -> None:
    """Write a note, on its own or about the last answer."""
    words = " ".join(talk.said.words.get("note", "").split())
    if not words:
        put_asked(talk.record, "note", "What should the note say? Say it in one go, like “note: order flashing”.")
        return
    target = talk.conversation.target if "this" in talk.said.words else None
    flagged, tag = "flag" in talk.said.words, talk.said.words.get("tag", "")
    own = [_word("flag", "flagged")] * flagged + [_word("tag", tag)] * bool(tag)
    talk.record["givens"] = [_word("note", words), *own]
    _point(talk, "note", target)
    lead = "Noted and flagged" if flagged else f"Noted and tagged {tag}" if tag else "Noted"
    put_noted(talk.record, "note", f"{lead}: {words}" + _written(talk))


@act("flag")
def flag(talk: Talk) -> None:
    """Flag the last answer or note, to be found again."""
    target = _target(talk)
    if target is None:
        put_asked(talk.record, "flag", "Flag what? Nothing was asked or noted yet in this conversation.")
        return
    _point(talk, "flag", target)
    put_noted(talk.record, "flag", f"Flagged: {what(target)}" + _written(talk))


@act("tag")
def tag(talk: Talk) -> None:
    """Put a word of one's own on the last answer or note."""
    target, word = _target(talk), " ".join(talk.said.words.get("tag", "").split()).rstrip(".!")
    if target is None:
        put_asked(talk.record, "tag", "Tag what? Nothing was asked or noted yet in this conversation.")
        return
    if not word:
        put_asked(talk.record, "tag", "With which word should I tag it? Say it in one go, like “tag that ramp wall”.")
        return
    talk.record["givens"] = [_word("tag", word)]
    _point(talk, "tag", target)
    put_noted(talk.record, "tag", f"Tagged {word}: {what(target)}" + _written(talk))


@act("strike")
def strike(talk: Talk) -> None:
    """Strike out the last entry: it stays in the notebook, shown as struck; a value kept by it is taken back."""
    conversation = talk.conversation
    if "missing" in talk.said.words:
        put_noted(talk.record, "strike", f"I have no entry about {talk.said.words['missing']} in this conversation")
        return
    target = conversation.marked if "un" in talk.said.words else _target(talk)
    if target is None:
        put_asked(talk.record, "strike", "Strike what? Nothing was asked or noted yet in this conversation.")
        return
    taken = _taken_back(talk, target) if target["topic"] == "remember" else ""
    _point(talk, "strike", target)
    put_noted(talk.record, "strike", f"Struck out: {what(target)}{taken}" + _written(talk))
    conversation.strike(target)


def _target(talk: Talk) -> Any:
    """The entry that was named, or the last."""
    which = talk.said.words.get("which")
    return talk.conversation.records[int(which)] if which else talk.conversation.target


def _taken_back(talk: Talk, target: Any) -> str:
    facts = talk.conversation.facts
    kept = next((names for record, names in talk.conversation.kept_by if record is target), {})
    for name, before in kept.items():
        if before is None:
            facts.forget(name)
        else:
            facts.remember(name, before)
    return f". What it kept ({', '.join(kept)}) is taken back" if kept else ""


def what(record: dict[str, Any]) -> str:
    """An entry in few words: as it was asked, and its answer."""
    answer = record["answer"]
    heard = " ".join(record["heard"].split())
    heard = heard if len(heard) <= 80 else heard[:77] + "…"
    return f"“{heard}”" + (f", {answer['name']} {answer['text']}" if answer else "")


def _word(name: str, text: str) -> dict[str, Any]:
    return {"name": name, "value": None, "unit": "word", "text": text, "from": "asked"}


def _point(talk: Talk, kind: str, target: dict[str, Any] | None) -> None:
    points = talk.conversation.points
    if target is not None:
        talk.conversation.pointed.append((kind, target, talk.record))
    if target is None or target["id"]:
        points.kind, points.at = kind, target["id"] if target else None


def _written(talk: Talk) -> str:
    return "" if talk.conversation.writes else f".{OFF}"
