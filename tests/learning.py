"""Learn the second reader's models from the question sets: `python -m tests.learning [--further] [FOLDER …]`.

Writes grammars/learned.json. Every case of tests/questions (and of the folders named) counts; those kept aside never do.
With `--further` only topics that are not in it yet are learned, and their roles; all other weights, and the models of sums,
stay as they are, so that what was read before is hardly read otherwise.
The topic comes from the case. The roles come from what the grammar gives each quantity where its answer is right; and where it
is not, from what gives the right answer (by_answer.py), found with a model learned from the others.
"""

from __future__ import annotations

import json
import sys
from collections import Counter
from collections.abc import Collection, Iterator
from dataclasses import replace
from pathlib import Path
from typing import Any, NamedTuple

import numpy as np
from scipy.optimize import minimize
from scipy.sparse import csr_matrix

from assistant.facts import places
from intents.chart import Chart, chart_of
from intents.consulting import OUTSIDE
from intents.features import mentions, of_mentions, of_sentence
from intents.grammars import FOLDER
from intents.learned import FILE, NOTHING, SCALE, Learned, signs_of
from intents.matcher import read, speller
from intents.phrases import compiled
from intents.question import Question
from intents.second_reader import Sentence, each_of, heard_any, sizes_in, spans_of, told_by
from intents.second_sums import TOPIC as SUM
from intents.talk import talk_of
from solvers.registry import load_topics
from tests import marked, marked_sums
from tests.by_answer import roles_by_answer
from tests.marked_sums import Summed
from tests.remarks import REMARKS
from tests.understanding import QUESTIONS, ask_all, judge, lines, load
from tests.whole_sums import all_known, learn_sums

PARAMETERS = marked.PARAMETERS
PLACES = places(load_topics().values())
LEAST_TOLD = 100  # sentences from which on a topic is known well enough not to be looked for where it is unlikely
LEAST_SEEN = 2  # times a feature must have been seen to be learned
TOPIC_PRIOR, ROLE_PRIOR = 0.005, 0.5  # how strongly weights are held near nothing (L2)
# Held so loosely, topics are told better (5.3 of a hundred missed that were not learned from, 5.6 at 0.05; of the likeliest
# four fifths 35 in 3,959 and not 42), but too surely: what is kept is this share of the weights, which makes as many
# sentences as before as sure as each of the reader's limits asks.
TEMPERED = 0.75
ROUNDS = 150
LEAST_WORD, LEAST_ROLE = 30, 5  # weights smaller than this many hundredths are left out of the file
TENTH = 4  # every so many sentences one is said again beside a remark


class Mentioned(NamedTuple):
    """One quantity: its topic, features, the roles it could have, the right one, and what the grammar told."""

    topic: str
    features: list[str]
    names: list[str]
    role: str
    told: set[str]
    key: tuple[int, int] = (-1, 0)  # the token it starts at, and which part of a size of several it is


def sentences(folders: list[Path]) -> Iterator[tuple[str, str, dict[str, Any]]]:
    """Every line that tells its topic by itself, with the topic and its case."""
    for folder in folders:
        for family, cases in load(folder).items():
            for case in cases:
                *before, last = lines(case)
                told = [(line, talk_in(line)) for line in before]
                told.append((last, label(case, family) if not before and family != "job" else talk_in(last)))
                yield from ((line, topic, case if line is last else {}) for line, topic in told if topic)


def label(case: dict[str, Any], family: str) -> str:
    return OUTSIDE if family == OUTSIDE else str(case.get("topic", ""))


def talk_in(line: str) -> str:
    """The act of talk a line is, or the topic that a rule fits whole."""
    said = talk_of(line, PLACES)
    if said is not None and not said.loose:
        return str(said.topic)
    best = next(iter(read(line, PARAMETERS, seconds=False).questions), None)
    return best.topic if best and best.score > 0 and said is None and best.plain else ""


def read_plainly(line: str, topic: str) -> Question | None:
    """What the grammar alone makes of a sentence of a topic, where it reads it plainly as that."""
    best = next(iter(read(line, PARAMETERS, seconds=False).questions), None)
    return best if best and best.topic == topic and best.plain and not best.claim else None


def beside_a_remark(line: str, question: Question, turn: int) -> tuple[Chart, list[Mentioned]]:
    """The same question with a remark before or after it: no number of the remark has a role."""
    remark = REMARKS[turn % len(REMARKS)]
    before = f"{remark}{', ' if turn % 3 else ' so '}" if turn % 2 else ""
    chart = chart_of(before + line if before else f"{line.rstrip('?. ')}, {remark}", compiled(), speller())
    moved = {
        name: replace(heard, start=heard.start + len(before), end=heard.end + len(before))
        for name, heard in question.givens.items()
    }
    return chart, list(roles_in(chart, replace(question, givens=moved)))


def roles_in(chart: Chart, question: Question) -> Iterator[Mentioned]:
    """The roles of the quantities of a sentence that the grammar read right."""
    parameters = PARAMETERS[question.topic]
    hits = [hit for hit in chart.hits if compiled().patterns[hit.pattern].topic == question.topic]
    told, found = told_by(hits), mentions(chart, 0, spans_of(chart, question.givens.values()))
    given = {(h.start, h.end): name for name, h in question.givens.items() if not isinstance(h.value, str | tuple)}
    taken = [(h.start, h.end) for h in question.givens.values()]
    for mention, features in zip(found, of_mentions(chart, found), strict=True):
        reading = mention.reading
        place = chart.tokens[reading.start].start, chart.tokens[reading.end - 1].end
        names = [p.name for p in parameters if each_of(p).kind is not tuple and heard_any(chart, each_of(p), reading)]
        role = given.get(place, NOTHING)
        for name, heard in question.givens.items():
            inside = isinstance(heard.value, tuple) and name in names and heard.start <= place[0] and place[1] <= heard.end
            if inside and any(size.value == reading.value.value for size in sizes_in(heard.value)):
                role = name
        cut = role == NOTHING and any(a < place[1] and place[0] < b and (a, b) in given for a, b in taken)
        chosen = (h for h in question.givens.values() if isinstance(h.value, str))
        cut = cut or (role == NOTHING and any(h.start <= place[0] and place[1] <= h.end for h in chosen))
        if names and not cut and (role == NOTHING or role in names):
            hinted = told.get((reading.start, reading.end), set()) & set(names)
            yield Mentioned(question.topic, features, names, role, hinted, (mention.start, mention.part))


def gather(folders: list[Path], known_before: Collection[str] = ()) -> tuple[list[tuple[set[str], str]], list[Mentioned]]:
    """What there is to learn from: sentences with their topics, quantities with their roles, those of topics known before not."""
    topics: list[tuple[set[str], str]] = []
    roles: list[Mentioned] = []
    known = list(sentences(folders))
    alone = [(line, case) for line, topic, case in known if case and len(lines(case)) == 1 and topic not in known_before]
    records = {line: (case, record) for (line, case), record in zip(alone, ask_all([case for _, case in alone]), strict=True)}
    for line, topic, _ in known:
        chart = chart_of(line, compiled(), speller())
        topics.append((of_sentence(chart, compiled()), topic))
        case, record = records.get(line, ({}, None))
        if "marked" in case and topic not in known_before:
            roles += as_marked(case)
            continue
        if record is None or topic not in PARAMETERS or "declined" in case or judge(case, record).grade != "right":
            continue
        best = read_plainly(line, topic)
        if best is not None:
            roles += roles_in(chart, best)
            if len(roles) % TENTH == 0:
                beside, roles_too = beside_a_remark(line, best, len(roles))
                topics.append((of_sentence(beside, compiled()), best.topic))
                roles += roles_too
    return topics, roles


def as_marked(case: dict[str, Any]) -> list[Mentioned]:
    """The roles of the quantities of a sentence whose writer marked them; none where they are no longer read so."""
    try:
        return [*_as_marked(case)]
    except ValueError:
        return []


def _as_marked(case: dict[str, Any]) -> Iterator[Mentioned]:
    if case["topic"] == SUM:
        yield from of_sum(marked.summed(case["marked"], case.get("half", False)))
        return
    each = marked.told(case["topic"], case["marked"])[0]
    yield from mentioned_in(each.sentence, each.roles)


def of_sum(summed: Summed) -> Iterator[Mentioned]:
    for features, names, role in marked_sums.mentioned(summed):
        yield Mentioned(SUM, features, names, role, set())


def role_model(found: list[Summed]) -> Learned:
    """The roles of the lengths of sums alone."""
    return Learned([], [], {}, learn_roles([m for summed in found for m in of_sum(summed)]))


def sums_by_answer(folders: list[Path]) -> list[Summed]:
    """The sums whose writer marked nothing, as the answer tells them: first tried, then learned."""
    cases = [case for case in _sums(folders) if "marked" not in case]
    model = role_model([summed for case in cases if (summed := marked_sums.by_answer(case, None))])
    return [summed for case in cases if (summed := marked_sums.by_answer(case, model) or marked_sums.by_answer(case, None))]


def sums_marked(folders: list[Path]) -> list[Summed]:
    return [summed for case in _sums(folders) if "marked" in case and (summed := _summed(case))]


def _sums(folders: list[Path]) -> list[dict[str, Any]]:
    return [case for _, topic, case in sentences(folders) if topic == SUM == case.get("topic")]


def _summed(case: dict[str, Any]) -> Summed | None:
    try:
        return marked.summed(case["marked"], case.get("half", False))
    except ValueError:
        return None


def roles_of_misread(folders: list[Path], model: Learned, known_before: Collection[str] = ()) -> list[Mentioned]:
    """The roles in the sentences that the grammar does not read plainly, told by their answers."""
    roles: list[Mentioned] = []
    for line, topic, case in sentences(folders):
        known = "marked" in case or topic not in PARAMETERS or topic in known_before
        if known or "value" not in case or case.get("topic") != topic or len(lines(case)) > 1:
            continue
        if read_plainly(line, topic) is not None:
            continue
        found = roles_by_answer(case, PARAMETERS, model)
        for mentioned in mentioned_in(*found) if found else ():
            roles.append(mentioned)
    return roles


def mentioned_in(sentence: Sentence, roles: tuple[str, ...]) -> Iterator[Mentioned]:
    """The quantities of a sentence whose roles are known."""
    chart, topic, by_name, found, told, _ = sentence
    for mention, features, role in zip(found, of_mentions(chart, found), roles, strict=True):
        reading = mention.reading
        names = [n for n, p in by_name.items() if p.kind is not tuple and heard_any(chart, p, reading)]
        if names:
            hinted = told.get((reading.start, reading.end), set()) & set(names)
            yield Mentioned(topic, features, names, role, hinted, (mention.start, mention.part))


def vocabulary(found: Iterator[set[str] | list[str]]) -> dict[str, int]:
    counts = Counter(feature for features in found for feature in features)
    return {feature: n for n, feature in enumerate(sorted(f for f, seen in counts.items() if seen >= LEAST_SEEN))}


def learn_topics(known: list[tuple[set[str], str]], before: dict[str, Any] | None = None) -> dict[str, Any]:
    """Multinomial logistic regression of the topic on the features of the sentence; what was learned `before` stays."""
    was = before or {"topics": [], "words": {}, "bias": []}
    tempered = 1.0 if before else TEMPERED
    labels = sorted({*(topic for _, topic in known), *was["topics"]})
    index = {f: n for n, f in enumerate(sorted({*vocabulary(features for features, _ in known), *was["words"]}))}
    rows = [[index[f] for f in sorted(features) if f in index] for features, _ in known]
    at = np.repeat(np.arange(len(rows)), [len(row) for row in rows])
    columns = np.concatenate([np.array(row, dtype=int) for row in rows])
    weights = np.concatenate([np.full(len(row), len(row) ** -0.5) for row in rows if row])
    seen = csr_matrix((weights, (at, columns)), shape=(len(rows), len(index)))
    right = np.zeros((len(rows), len(labels)))
    right[np.arange(len(rows)), [labels.index(topic) for _, topic in known]] = 1
    size = len(index) * len(labels)
    start, places = np.zeros(size + len(labels)), [labels.index(topic) for topic in was["topics"]]
    start[[size + place for place in places]] = was["bias"]
    for feature, pairs in was["words"].items():
        start[[index[feature] * len(labels) + places[topic] for topic in pairs[::2]]] = pairs[1::2]
    start /= SCALE
    free = np.array([topic not in was["topics"] for topic in labels])

    def loss(flat: np.ndarray) -> tuple[float, np.ndarray]:
        matrix, bias = flat[:size].reshape(len(index), -1), flat[size:]
        scores = seen @ matrix + bias
        scores -= scores.max(1, keepdims=True)
        shares = np.exp(scores)
        shares /= shares.sum(1, keepdims=True)
        slope = (seen.T @ (shares - right) + TOPIC_PRIOR * matrix) * free
        cost = -np.log(shares[right == 1] + 1e-12).sum() + TOPIC_PRIOR / 2 * (matrix[:, free] ** 2).sum()
        return float(cost), np.concatenate([slope.ravel(), (shares - right).sum(0) * free])

    best = _least(loss, start)
    best *= tempered
    matrix = np.rint(best[:size].reshape(len(index), -1) * SCALE).astype(int)
    kept = {feature: np.flatnonzero(abs(matrix[i]) >= LEAST_WORD) for feature, i in index.items()}
    words = {feature: [int(n) for t in kept[feature] for n in (t, matrix[i, t])] for feature, i in index.items()}
    bias = [int(n) for n in np.rint(best[size:] * SCALE)]
    return {"topics": labels, "bias": bias, "words": {f: pairs for f, pairs in words.items() if pairs}}


def learn_roles(known: list[Mentioned], before: dict[str, dict[str, int]] | None = None) -> dict[str, dict[str, int]]:
    """Logistic regression of the role on the features of a quantity, over the roles it could have; what was there `before` stays.

    Each counts twice, with what the grammar tells and without, so that the words are learned as well.
    """
    pairs = [(m, m.told) for m in known] + [(m, None) for m in known]
    index = vocabulary([*_signs(m, m.role, told)] for m, told in pairs[: len(known)])
    if before:  # roles that other topics have by the same name stay as they are too
        index = {sign: n for n, sign in enumerate(sign for sign in index if "." in sign.split("|", 1)[0])}
    was = {f"{name}|{feature}": weight for name, of in (before or {}).items() for feature, weight in of.items()}
    index |= {sign: n for n, sign in enumerate(sorted(was.keys() - index.keys()), len(index))}
    start = np.array([was.get(sign, 0) / SCALE for sign in index])
    free = np.array([sign not in was for sign in index])
    at, columns, group, right, row = [], [], [], [], 0
    for n, (mention, told) in enumerate(pairs):
        for name in [*mention.names, NOTHING]:
            found = [index[sign] for sign in _signs(mention, name, told) if sign in index]
            at += [row] * len(found)
            columns += found
            group.append(n)
            right.append(name == mention.role)
            row += 1
    seen = csr_matrix((np.ones(len(at)), (at, columns)), shape=(row, len(index)))
    groups, is_right = np.array(group), np.array(right)
    starts = np.searchsorted(groups, np.arange(len(pairs)))

    def loss(weights: np.ndarray) -> tuple[float, np.ndarray]:
        scores = seen @ weights
        shares = np.exp(scores - np.maximum.reduceat(scores, starts)[groups])
        shares /= np.add.reduceat(shares, starts)[groups]
        cost = -np.log(shares[is_right] + 1e-12).sum() + ROLE_PRIOR / 2 * (weights[free] ** 2).sum()
        return float(cost), (seen.T @ (shares - is_right) + ROLE_PRIOR * weights) * free

    weights = np.rint(_least(loss, start) * SCALE).astype(int)
    models: dict[str, dict[str, int]] = {}
    for sign, n in index.items():
        if abs(weights[n]) >= LEAST_ROLE:
            name, feature = sign.split("|", 1)
            models.setdefault(name, {})[feature] = int(weights[n])
    return models


def _signs(mention: Mentioned, name: str, told: set[str] | None) -> Iterator[str]:
    for feature in [*mention.features, *(signs_of(name, told) if told is not None else [])]:
        yield f"{name}|{feature}"
        yield f"{mention.topic}.{name}|{feature}"


def _least(loss: Any, start: np.ndarray) -> np.ndarray:
    found = minimize(loss, start, jac=True, method="L-BFGS-B", options={"maxiter": ROUNDS})
    return np.asarray(found.x)


def main() -> None:
    folders = [QUESTIONS, *(Path(folder) for folder in sys.argv[1:] if folder != "--further")]
    was = json.loads((FOLDER / FILE).read_text(encoding="utf-8")) if "--further" in sys.argv else {}
    before, roles_before = was.get("topics", []), was.get("roles")
    topics, roles = gather(folders, before)
    sums = [] if was else sums_by_answer(folders)
    roles += [m for summed in sums for m in of_sum(summed)]
    seen = Counter(topic for _, topic in topics)
    made = {
        **learn_topics(topics, was), "roles": learn_roles(roles, roles_before),
        "seldom": sorted(t for t in PARAMETERS if seen[t] < LEAST_TOLD),
    }  # fmt: skip
    more = roles_of_misread(folders, Learned(**made), before)
    roles += more
    made["roles"] = learn_roles(roles, roles_before)
    made["sums"] = was.get("sums") or learn_sums(all_known(sums + sums_marked(folders), role_model))
    text = json.dumps(made, ensure_ascii=False, separators=(",", ":"), sort_keys=True)
    (FOLDER / FILE).write_text(text.replace('],"', '],\n"').replace('},"', '},\n"') + "\n", encoding="utf-8")
    print(f"{len(topics)} sentences, {len(roles)} quantities, {len(more)} of them told by the answer, {len(text) // 1024} kB")


if __name__ == "__main__":
    main()
