"""What is said when nothing fits: which words were understood, which were not, and what could be asked instead."""

from __future__ import annotations

from assistant.record import listed
from intents.phrases import compiled
from intents.question import Reading
from solvers.registry import Topic

SHOWN = 3  # topics offered


def outside_the_job(text: str, reading: Reading, topics: dict[str, Topic]) -> str:
    """One or two sentences: what was understood, what not, and an example that works for the nearest topics."""
    if not any(character.isalnum() for character in text):
        return "I saw no words in that: ask a job question, like “miter for a 5 in 12 rake return”"
    examples = {topic: said[0] for topic, said in compiled().examples.items() if said}
    near = [topic for topic in reading.near if topic in topics and topic in examples][:SHOWN]
    if not near:
        return "That is outside what I work out. Ask me about roof angles, cuts, courses, quantities, water, cold or the tape"
    understood = listed(dict.fromkeys(f"“{word}”" for word in reading.understood[:4]), "and")
    missed = listed(dict.fromkeys(f"“{word}”" for word in reading.unknown[:4]), "and")
    parts = [f"I understood {understood}" if understood else "I did not find a question there"]
    parts[0] += f" but not {missed}." if missed else ", which is not enough to tell what to work out."
    offers = listed(f"“{examples[topic]}” ({topic})" for topic in near)
    return f"{parts[0]} Try {offers}"
