"""Learn what lines that follow a question do to it: `python -m tests.learning_talk [--but NOTE] [FOLDER …]` (two minutes).

Writes grammars/talk.json. Every conversation of tests/questions (and of the folders named) counts whose line is answered right;
those kept aside never do. With `--but`, cases whose note begins so are left out: what is learned of the others can be tried
on them. A line stays with its question where it is answered, of the same topic, and a number is of the given that it became.
Of a line that is not answered right as much is learned where only one way to give its numbers comes to what is right, and the
conversation goes on from that.
"""

from __future__ import annotations

import argparse
import json
import sys
from collections import Counter
from collections.abc import Iterator
from itertools import product
from pathlib import Path
from typing import Any, NamedTuple

import numpy as np
from scipy.optimize import minimize
from scipy.sparse import csr_matrix

from assistant.change_learned import (
    BARE,
    FILE,
    MOST_NUMBERS,
    Number,
    Seen,
    numbers_of,
    of_line,
    of_role,
    question_before,
    words_of,
)
from assistant.conversation import Conversation
from assistant.garbage import between_lines
from assistant.pending import Asked
from assistant.record import Record
from assistant.said_over import same_value
from assistant.told_round import State, put_back, state_of
from assistant.units_kept import in_its_unit
from assistant.ways import Way
from intents.grammars import FOLDER
from intents.learned import NOTHING, SCALE
from intents.question import Question
from tests.chat import CHAT
from tests.understanding import QUESTIONS, close, judge, load

LEAST_SEEN = 3  # times a feature must have been seen to be learned
LINE_PRIOR = 3.3  # how strongly weights are held near nothing (L2), of lines
WORD_PRIOR, NAME_PRIOR, ROLE_PRIOR = 4.0, 1.0, 0.1  # and of roles: of words, of what a given is called, of all else
LEAST_WEIGHT = 5  # hundredths; smaller ones are left out of the file
ROUNDS = 300
SELDOM = 25  # every so many lines one is chat


class Lines(NamedTuple):
    """What is seen of each line, and whether it stays; what is seen of each role of a number, and which is right."""

    seen: list[Seen]
    stays: list[bool]
    roles: list[list[Seen]]
    right: list[int]


def talks(folders: list[Path], but: str) -> Iterator[tuple[tuple[str, ...], dict[tuple[str, ...], dict[str, Any]]]]:
    """Each conversation that is no start of another, and the case of every start of it."""
    cases = [case for folder in folders for sets in load(folder).values() for case in sets if isinstance(case["ask"], list)]
    known = {tuple(case["ask"]): case for case in cases if not but or not case.get("note", "").startswith(but)}
    order = sorted(known)
    for at, said in enumerate(order):
        if at + 1 == len(order) or order[at + 1][: len(said)] != said:
            yield said, {said[:n]: known[said[:n]] for n in range(2, len(said) + 1) if said[:n] in known}


def gather(folders: list[Path], but: str = "") -> Lines:
    """What is seen in all lines that are answered right, of those that follow a question that is answered or lacks a piece."""
    lines = Lines([], [], [], [])
    seen: set[tuple[str, ...]] = set()
    for count, (said, cases) in enumerate(talks(folders, but)):
        between_lines(count)
        c = Conversation()
        for n, text in enumerate(said, 1):
            last, wanted = question_before(c)
            case = cases.get(said[:n]) if said[:n] not in seen else None
            numbers = numbers_of(text, last) if case and last else []
            line = of_line(text, last, len(numbers), c.parameters, wanted) if case and last else None
            if line is not None and last is not None and len(lines.seen) % SELDOM == 0:
                _chat(lines, last, wanted, c)
            state = state_of(c)
            record = c.answer(text)
            if case is None or line is None or last is None:
                continue
            seen.add(said[:n])
            if (now := _put_right(c, case, record, last, numbers, state)) is not None:
                lines.seen.append(line)
                lines.stays.append(True)
                _roles(lines, text, last, now, numbers, wanted)
                continue
            if judge(case, record).grade == "right":
                now = c.pending.asked if record["outcome"] == "asks" and c.pending is not None and wanted else c.last
                told = record["outcome"] == "answered" or (record["outcome"] == "asks" and _more(now, last))
                stays = told and record["topic"] == last.topic.name
                lines.seen.append(line)
                lines.stays.append(stays)
                if stays and now is not None and now.topic is last.topic:
                    _roles(lines, text, last, now, numbers, wanted)
    return lines


def _put_right(
    c: Conversation, case: dict[str, Any], record: Record, last: Asked, numbers: list[Number], before: State
) -> Asked | None:  # fmt: skip
    """The question that a line which was not answered right changes the one before it to, where only one way to give its
    numbers comes to what is right; the conversation goes on from it then."""
    if "value" not in case or not 0 < len(numbers) <= MOST_NUMBERS or judge(case, record).grade == "right":
        return None
    after = state_of(c)
    put_back(c, before)
    c.pending = None
    found: list[Way] = []
    for names in product(*[(*number.heard, NOTHING) for number in numbers]):
        told = [name for name in names if name != NOTHING]
        if not told or len(set(told)) < len(told):
            continue
        given = {name: number.heard[name] for name, number in zip(names, numbers, strict=True) if name != NOTHING}
        question = Question(last.topic.name, {n: in_its_unit(heard, last.givens.get(n), last) for n, heard in given.items()})
        way = c.ways(question, last)[0]
        result = way.worked.working.result if way.worked.working else None
        if result is not None and close(result.data(), case["value"], case["unit"], case.get("within")):
            found.append(way)
    if len(found) != 1:
        put_back(c, after)
        return None
    c.finish(record, found, Question(last.topic.name))
    return found[0].asked


def _chat(lines: Lines, last: Asked, wanted: str, c: Conversation) -> None:
    """What is seen of chat in the place of a line: it stays with no question, and its numbers are of nothing."""
    text = CHAT[len(lines.seen) // SELDOM % len(CHAT)]
    numbers = numbers_of(text, last)
    lines.seen.append(of_line(text, last, len(numbers), c.parameters, wanted))
    lines.stays.append(False)
    words = words_of(text)
    for number in numbers:
        if number.heard:
            lines.roles.append([of_role(number, name, last, words, len(numbers), wanted) for name in (*number.heard, NOTHING)])
            lines.right.append(len(number.heard))


def _more(now: Asked | None, last: Asked) -> bool:
    """Whether more is known of a question that still lacks a piece."""
    return now is not None and now.topic is last.topic and now.givens.keys() > last.givens.keys()


def _roles(lines: Lines, text: str, last: Asked, now: Asked, numbers: list[Number], wanted: str) -> None:
    """What is seen of each number of a line that could be a given, where it is plain which it became."""
    words = words_of(text)
    for number in numbers:
        if not number.heard:
            continue
        became = [name for name in number.heard if _is(number, name, now)]
        right = [name for name in became if _new(name, last, now)] or became or [NOTHING]
        if len(right) == 1:
            names = [*number.heard, NOTHING]
            lines.roles.append([of_role(number, name, last, words, len(numbers), wanted) for name in names])
            lines.right.append(names.index(right[0]))


def _new(name: str, last: Asked, now: Asked) -> bool:
    return name not in last.givens or not same_value(last.givens[name].value, now.givens[name].value)


def _is(number: Number, name: str, now: Asked) -> bool:
    heard, given = number.heard[name], now.givens.get(name)
    values = (heard.value, *heard.others)
    if given is None or any(same_value(given.value, value) for value in values):
        return given is not None
    return number.unit in BARE and any(given.value.value == value.value for value in values)  # 9, which is 9 ft there


def matrix(seen: list[Seen]) -> tuple[csr_matrix, list[str]]:
    """One row each, and the names of the columns: what was seen often enough."""
    counts = Counter(name for each in seen for name, much in each.items() if much)
    names = sorted(name for name, count in counts.items() if count >= LEAST_SEEN)
    at = {name: n for n, name in enumerate(names)}
    rows = [(row, at[name], much) for row, each in enumerate(seen) for name, much in each.items() if name in at]
    row, column, much = zip(*rows, strict=True)
    return csr_matrix((much, (row, column)), shape=(len(seen), len(names))), names


def learn_stays(lines: Lines) -> dict[str, int]:
    """The weights that tell a line which stays with its question."""
    seen, names = matrix(lines.seen)
    sign = np.where(lines.stays, 1.0, -1.0)

    def loss(weights: np.ndarray) -> tuple[float, np.ndarray]:
        margin = sign * (seen @ weights)
        wrong = 1 / (1 + np.exp(np.clip(margin, -500, 500)))
        cost = np.logaddexp(0, -margin).sum() + LINE_PRIOR / 2 * weights @ weights
        return float(cost), seen.T @ (-sign * wrong) + LINE_PRIOR * weights

    return _kept(names, minimize(loss, np.zeros(len(names)), jac=True, method="L-BFGS-B", options={"maxiter": ROUNDS}).x)


def learn_roles(lines: Lines) -> dict[str, int]:
    """The weights that tell which given a number is of: a choice among those it could be (conditional logit)."""
    seen, names = matrix([each for roles in lines.roles for each in roles])
    sizes = [len(roles) for roles in lines.roles]
    starts, whose = np.cumsum([0, *sizes])[:-1], np.repeat(np.arange(len(sizes)), sizes)
    right = starts + np.array(lines.right)
    prior = np.array([_prior(name) for name in names])

    def loss(weights: np.ndarray) -> tuple[float, np.ndarray]:
        scores = seen @ weights
        scores = scores - np.maximum.reduceat(scores, starts)[whose]
        whole = np.add.reduceat(np.exp(scores), starts)
        shares = np.exp(scores) / whole[whose]
        slope = seen.T @ shares - np.asarray(seen[right].sum(axis=0)).ravel() + prior * weights
        return float((np.log(whole) - scores[right]).sum() + (prior * weights * weights).sum() / 2), slope

    return _kept(names, minimize(loss, np.zeros(len(names)), jac=True, method="L-BFGS-B", options={"maxiter": ROUNDS}).x)


def _prior(name: str) -> float:
    if " for " in name or name.startswith("nothing "):
        return WORD_PRIOR
    return NAME_PRIOR if name.startswith("is ") else ROLE_PRIOR


def _kept(names: list[str], weights: np.ndarray) -> dict[str, int]:
    whole = {name: round(SCALE * weight) for name, weight in zip(names, weights, strict=True)}
    return {name: weight for name, weight in whole.items() if abs(weight) >= LEAST_WEIGHT}


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("--but", default="", help="leave out cases whose note begins so")
    parser.add_argument("folders", nargs="*", type=Path)
    chosen = parser.parse_args()
    lines = gather([QUESTIONS, *chosen.folders], chosen.but)
    kept = {"stays": learn_stays(lines), "given": learn_roles(lines)}
    (FOLDER / FILE).write_text(json.dumps(kept, ensure_ascii=False, indent=0, sort_keys=True) + "\n", encoding="utf-8")
    counts = {name: len(weights) for name, weights in kept.items()}
    print(f"{len(lines.seen)} lines, {len(lines.roles)} numbers; weights: {counts}", file=sys.stderr)


if __name__ == "__main__":
    main()
