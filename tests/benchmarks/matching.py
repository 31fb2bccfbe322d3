"""Matching alone, no-match sentences included, then beside hassil: `python -m tests.benchmarks.matching [N]`.

hassil gets the same rules as sentence templates: our word classes as its expansion rules, quantities as a number with a
unit, filler as its skip words, and the pieces only in the order they are written, where we take them in any order: it has the
lighter work, and recognises fewer of the sentences.
"""

from __future__ import annotations

import random
import sys
import time
from collections.abc import Callable

from hassil import Intents, recognize

from assistant.conversation import Conversation
from assistant.garbage import between_lines
from intents.grammars import BUILT_IN, QUANTITIES, WORDS, Book, load
from intents.jsgf import Either, Grammar, Maybe, Node, Ref, Repeat, Series, Tagged, Word
from intents.matcher import read
from tests.benchmarks.sentences import NO_MATCH, figures, loaded, questions, share

P99 = 0.003  # seconds
SAMPLE = 300  # sentences that hassil is given too
QUANTITY = {
    "number": "{n}", "whole": "{n}", "fraction": "{n}", "percent": "{n}[ ](%|percent)", "money": "[$]{n} [dollars]",
    "expansion": "{n} millionths per (kelvin|degree (c|f))",
    "angle": "{n}[ ](degrees|degree|°)", "pitch": "{n}( in |/|-| )12", "ratio": "1/{n}", "count": "{n}",
    "temperature": "[minus |-]{n}[ ](degrees|degree|°|f|c) [f|c|celsius]", "tempchange": "{n} (degree|degrees) [swing]",
    "area": "{n} (square feet|square foot|squares|sq ft)", "volume": "{n} (gallons|litres|oz)",
    "weight": "{n} (lb|pounds|kg)",
    "dims": "({n}|<length>) (by|x) ({m}|<length>)",
    "length": "({n}[ ](ft|foot|feet|') {m}[ ][in|inches|inch|\\\"]|{n}[ ](in|inches|inch|\\\"|ft|foot|feet|'|mm|cm|m))",
}  # fmt: skip


def template(book: Book, grammar: Grammar, node: Node) -> str:
    """A rule's body as one of hassil's templates."""
    if isinstance(node, Word):
        return "".join(c if c.isalnum() or c in " '-" else " " for c in node.text)
    if isinstance(node, Ref):
        return _reference(book, grammar, node)
    if isinstance(node, Tagged):
        return template(book, grammar, node.part)
    if isinstance(node, Maybe):
        inner = template(book, grammar, node.part).strip()
        return f"[{inner}]" if inner else ""
    if isinstance(node, Repeat):
        return template(book, grammar, node.part)
    parts = [part for each in node.parts if (part := template(book, grammar, each).strip())]
    return f"({'|'.join(parts)})" if isinstance(node, Either) else " ".join(parts) if isinstance(node, Series) else ""


def _reference(book: Book, grammar: Grammar, ref: Ref) -> str:
    if ref.name in BUILT_IN:
        return ""
    source, rule = book.find(grammar, ref)
    if source.name == QUANTITIES:
        return f"<{rule.name}>" if rule.name in QUANTITY else "{n}"
    return f"<{rule.name}>" if source.name == WORDS else template(book, source, rule.body)


def hassil_intents(book: Book) -> Intents:
    """All topics as hassil intents."""
    words = book.grammars[WORDS]
    rules = {name: template(book, words, rule.body) for name, rule in words.rules.items()}
    found: dict[str, list[str]] = {}
    for grammar, rule in book.topics():
        parts = rule.body.parts if isinstance(rule.body, Either) else (rule.body,)
        found.setdefault(rule.topic, []).extend(template(book, grammar, part) for part in parts)
    fillers = rules.pop("filler").strip("()").split("|")
    return Intents.from_dict({
        "language": "en",
        "intents": {topic: {"data": [{"sentences": sentences}]} for topic, sentences in found.items()},
        "lists": {name: {"range": {"from": 0, "to": 1000}} for name in "nm"},
        "expansion_rules": rules | QUANTITY,
        "skip_words": fillers,
    })  # fmt: skip


def timed(sentences: list[str], work: Callable[[str], object]) -> list[float]:
    times = []
    for count, sentence in enumerate(sentences):
        between_lines(count)
        began = time.thread_time()
        work(sentence)
        times.append(time.thread_time() - began)
    return times


def main(sample: int = SAMPLE) -> None:
    parameters = Conversation().parameters
    sentences = [*questions(), *NO_MATCH]
    read("warm up", parameters)
    loaded()
    times = timed(sentences, lambda sentence: read(sentence, parameters))
    print(f"matching: {len(times)} sentences, {figures(times)} (p99 at most 3 ms)")
    slow = sorted(zip(times, sentences, strict=True), reverse=True)
    for took, sentence in slow[:3]:
        print(f"      {1000 * took:.2f} ms: {sentence[:100]}")
    chosen = [*random.Random(1).sample(sentences, min(sample, len(sentences))), *NO_MATCH]
    intents = hassil_intents(load())
    recognize("warm up", intents)
    theirs = timed(chosen, lambda sentence: recognize(sentence, intents))
    ours = timed(chosen, lambda sentence: read(sentence, parameters))
    ratio = sum(ours) / sum(theirs)
    print(
        f"hassil, equal grammar: {len(chosen)} sentences, {figures(theirs)}; "
        f"ours {figures(ours)}; ratio {ratio:.3f} (under 1)"
    )
    sys.exit(share(times, 0.99) > P99 or ratio >= 1)


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
