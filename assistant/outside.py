"""What is said when nothing fits: which words were understood, which were not, and what could be asked instead."""

from __future__ import annotations

from assistant.record import listed
from intents.chart import LIGHT
from intents.phrases import compiled
from intents.question import Reading
from intents.tokens import tokenize
from intents.vocabulary import NUMBER_WORDS
from solvers.registry import Topic

SHOWN = 2  # topics offered
STRANGE = 3  # unknown words that make a line with no word of the trade as it is spelt somebody else's
NAMED = 4  # words named of each kind
NOT_MINE = (
    "That is not something I work out. I do roof angles, saw settings, courses, quantities, air gaps, cold and the tape"
)
EXAMPLE = "miter for a 5 in 12 rake return"


def outside_the_job(text: str, reading: Reading, topics: dict[str, Topic]) -> str:
    """One or two sentences: what was understood, what not, and an example that works for the nearest topics."""
    if not any(character.isalnum() for character in text):
        return f"I saw no words in that: ask a job question, like “{EXAMPLE}”"
    phrases = compiled()
    examples = {topic: said[0] for topic, said in phrases.examples.items() if said}
    near = [topic for topic in reading.near if topic in topics and topic in examples][:SHOWN]
    trade = [
        word for word in reading.understood if word not in phrases.ordinary
    ]  # "weather" alone makes no job question
    understood, missed = _quoted(trade), _quoted(reading.unknown)
    if not near or len(set(trade)) < max(1, len(set(reading.unknown)) / 2):
        lead = f"I don't know what to make of {missed}. " if missed and near else ""
        return f"{lead}{NOT_MINE}: try “{EXAMPLE}”"
    tail = f", but not {missed}" if missed else ", and not what to work out from it"
    offers = listed(f"“{examples[topic]}” ({topic})" for topic in near)
    return f"I understood {understood}{tail}. Try {offers}"


def in_other_words(text: str, reading: Reading) -> bool:
    """Whether a topic is named only by words that are slips of others, among words nobody here knows: another language."""
    best = reading.questions[0]
    corrected = {new for _, new in reading.changed}
    if not best.words or not set(best.words) <= corrected:
        return False
    phrases = compiled()
    known = phrases.vocabulary | phrases.ordinary | phrases.fillers | phrases.talk | LIGHT | NUMBER_WORDS
    slips = {old for old, _ in reading.changed}
    words = {token.text for token in tokenize(text) if token.text.isalpha()}
    return len(words - known - slips) >= STRANGE


def _quoted(words: list[str]) -> str:
    """“soffit” and “gap”: words once each, no more than a few."""
    return listed((f"“{word}”" for word in list(dict.fromkeys(words))[:NAMED]), "and")
