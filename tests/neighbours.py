"""What each topic's example answers to a line said after it: `python -m tests.neighbours "12s" "at 4.50 each" …`.

A mend for one line is tried on its neighbours here: the same line after all other questions. `tests/test_neighbours.py` holds
those that may change one kind of value only.
"""

from __future__ import annotations

import sys
from typing import Any

from assistant.conversation import Conversation
from intents.phrases import compiled
from solvers.registry import load_topics


def examples() -> dict[str, str]:
    """A whole question by its topic, from the grammars."""
    told = compiled().examples
    return {name: told[name][0] for name in sorted(load_topics()) if told.get(name)}


def after(question: str, line: str) -> tuple[dict[str, Any], dict[str, Any]]:
    """The records of a question, and of the line said after it."""
    conversation = Conversation()
    return dict(conversation.answer(question)), dict(conversation.answer(line))


def main(lines: list[str]) -> None:
    for question in examples().values():
        for line in lines:
            was, now = after(question, line)
            if now["outcome"] == "answered":
                told = "; ".join(f"{given['name']} {given['text']}" for given in now["givens"] if given["from"] == "asked")
                before = was["answer"]["text"] if was["answer"] else "nothing"
                print(f"{question} | {line}\n    {now['topic']}: {now['answer']['text']} (was {before}); {told}")


if __name__ == "__main__":
    main(sys.argv[1:])
