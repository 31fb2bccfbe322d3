"""What can be asked, read from the grammars and the registry: topics, what each needs, and examples that work."""

from __future__ import annotations

from assistant import acts
from intents.grammars import load
from solvers.registry import Topic, load_topics

TITLES = {
    "slope": "Roof slope", "corners": "Corners and the saw", "triangles": "Triangles and square",
    "courses": "Courses and spacing", "takeoff": "Quantities", "water": "Water, air and cold", "movement": "Movement",
    "fastening": "Fastening and reach", "tape": "The tape", "job": "The job",
}  # fmt: skip


def examples() -> list[tuple[str, str]]:
    """(family title, example) for every topic, in the order of the families."""
    topics = {**load_topics(), **acts.load()}
    rules = [rule for _, rule in load().topics() if rule.topic in topics and rule.examples]
    found = [(topics[rule.topic].family, rule.examples[0]) for rule in rules if topics[rule.topic].family in TITLES]
    found.sort(key=lambda pair: list(TITLES).index(pair[0]))
    return [(TITLES[family], example) for family, example in found]


def say_what(wanted: str = "") -> str | None:
    """The listing, or the one topic whose name holds `wanted`; None when there is none."""
    topics = {**load_topics(), **acts.load()}
    rules = {rule.topic: rule for _, rule in load().topics()}
    if not wanted:
        return "\n".join(_listing(topics, rules))  # type: ignore[arg-type]
    found = [name for name in topics if wanted.lower() in name and name in rules]
    if not found:
        return None
    return "\n\n".join(_one(topics[name], rules[name].examples) for name in found)


def _listing(topics: dict[str, Topic], rules: dict[str, object]) -> list[str]:
    lines: list[str] = []
    for family, title in TITLES.items():
        inside = [topic for topic in topics.values() if topic.family == family and topic.name in rules]
        if inside:
            lines += ["", title] if lines else [title]
            for topic in inside:
                example = next(iter(rules[topic.name].examples), "")  # type: ignore[attr-defined]
                lines.append(f"  {topic.name:<26} {example}")
    return lines


def _one(topic: Topic, said: tuple[str, ...]) -> str:
    lines = [topic.name, f"  {topic.summary}"]
    needs = [p.label for p in topic.parameters if p.required]
    assumes = [p.label for p in topic.parameters if not p.required and p.default is not None]
    if needs:
        lines.append(f"  needs: {', '.join(needs)}")
    if assumes:
        lines.append(f"  assumes unless said: {', '.join(assumes)}")
    return "\n".join([*lines, *(f"  say: {example}" for example in said)])
