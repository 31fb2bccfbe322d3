"""Learn which of all sums that a sentence's lengths can make is the one meant: the weights of intents/whole_sums.py.

Multinomial logistic regression (L2) over the candidates of each sentence; those that come to the right value are right.
`python -m tests.whole_sums [FOLDER …]` tells how well it does on sentences it has not learned from, by how sure it is.
"""

from __future__ import annotations

import sys
from collections import Counter
from collections.abc import Callable, Iterator, Sequence
from itertools import islice
from pathlib import Path
from typing import NamedTuple

import numpy as np
from scipy.optimize import minimize
from scipy.sparse import csr_matrix

from intents.learned import NOTHING, SCALE, Learned
from intents.second_sums import names_of, ways_of
from intents.sum_signs import SIGNS
from intents.whole_sums import Candidate, Told, candidates, parts, shares, worth
from tests.marked_sums import Summed
from tests.understanding import QUESTIONS

LEAST_SEEN = 3  # sentences in which a feature must have been seen
PRIOR = 2.0  # how strongly weights are held near nothing (L2)
SIGN = 2.0  # a class of words counts this much beside the words in it: a class is seen more often than any of them
LEAST = 8  # weights smaller than this many hundredths are left out of the file
ROUNDS = 60
NEAR = 1e-4  # relative: two sums that come to the same
Feature = tuple[str, str]  # a part of a sum, and one thing seen there
Weights = dict[str, dict[str, int]]
Roles = Callable[[list[Summed]], Learned]  # learns the roles of the lengths of some sentences


class Known(NamedTuple):
    """A sentence: its sums by their parts, the features of each part, and which of the sums are right."""

    told: Told
    sums: list[Candidate]
    rows: list[list[int]]
    features: list[list[Feature]]
    right: list[bool]


def known(summed: Summed, model: Learned) -> Known | None:
    """The sums a sentence could mean, the one meant among them; None where nothing is to be told apart."""
    told = Told(summed.chart, summed.found)
    meant = worth(told.sizes, told.counts, summed.roles, summed.half)
    if meant is None or meant <= 0:
        return None
    likely = {roles for _, roles in ways_of(summed.chart, summed.found, model)} | {summed.roles}
    sums = candidates(told, [[*names_of(mention), NOTHING] for mention in summed.found], sorted(likely))
    at: dict[tuple[object, ...], int] = {}
    features: list[list[Feature]] = []
    rows: list[list[int]] = []
    for each in sums:
        rows.append([])
        for key, seen in parts(told, each):
            if key not in at:
                at[key] = len(features)
                features.append([(part, one) for part, some in seen for one in some])
            rows[-1].append(at[key])
    return Known(told, sums, rows, features, [abs(each.inches - meant) <= NEAR * meant for each in sums])


def all_known(found: Sequence[Summed], learn: Roles, folds: int = 2) -> list[Known]:
    """The same of many, each with a model of roles that has not seen it, as it will be with what is asked."""
    made: list[Known] = []
    for n in range(folds):
        model = learn([summed for i, summed in enumerate(found) if i % folds != n])
        made += [each for summed in islice(found, n, None, folds) if (each := known(summed, model))]
    return made


def learn_sums(all_of: Sequence[Known]) -> Weights:
    """The weights, as whole hundredths, by the part of a sum and what is seen there."""
    all_of = [each for each in all_of if any(each.right) and not all(each.right)]
    counts = Counter(feature for each in all_of for feature in {one for some in each.features for one in some})
    index = {feature: n for n, feature in enumerate(sorted(f for f, seen in counts.items() if seen >= LEAST_SEEN))}
    scale = np.array([_scale(seen) for _, seen in index])
    found, chosen = _matrix(all_of, index, scale)
    groups = np.repeat(np.arange(len(all_of)), [len(each.sums) for each in all_of])
    right = np.array([one for each in all_of for one in each.right])
    starts = np.searchsorted(groups, np.arange(len(all_of)))
    found_, chosen_ = found.T.tocsr(), chosen.T.tocsr()

    def loss(weights: np.ndarray) -> tuple[float, np.ndarray]:
        scores = chosen @ (found @ weights)
        likely = np.exp(scores - np.maximum.reduceat(scores, starts)[groups])
        likely /= np.add.reduceat(likely, starts)[groups]
        good = np.add.reduceat(likely * right, starts)
        cost = -np.log(good + 1e-12).sum() + PRIOR / 2 * (weights @ weights)
        return float(cost), found_ @ (chosen_ @ (likely - likely * right / (good + 1e-12)[groups])) + PRIOR * weights

    best = minimize(loss, np.zeros(len(index)), jac=True, method="L-BFGS-B", options={"maxiter": ROUNDS}).x
    weights: Weights = {}
    for (part, seen), weight in zip(index, np.rint(best * scale * SCALE).astype(int), strict=True):
        if abs(weight) >= LEAST:
            weights.setdefault(part, {})[seen] = int(weight)
    return weights


def _scale(seen: str) -> float:
    last = seen.rsplit(":", maxsplit=1)[-1]
    return SIGN if last in SIGNS or not last else 1.0


def _matrix(all_of: Sequence[Known], index: dict[Feature, int], scale: np.ndarray) -> tuple[csr_matrix, csr_matrix]:
    """Which features each part has, and which parts each sum."""
    at, columns, sums, chosen = [], [], [], []
    count = row = 0
    for each in all_of:
        for features in each.features:
            here = [index[one] for one in features if one in index]
            at += [row] * len(here)
            columns += here
            row += 1
        for parts_of in each.rows:
            sums += [count] * len(parts_of)
            chosen += [row - len(each.features) + n for n in parts_of]
            count += 1
    found = csr_matrix((scale[columns], (at, columns)), shape=(row, len(index)))
    return found, csr_matrix((np.ones(len(sums)), (sums, chosen)), shape=(count, row))


def judged(each: Known, weights: Weights) -> tuple[float, bool]:
    """How sure the likeliest value is, and whether it is right."""
    by_value: dict[float, tuple[float, bool]] = {}
    for one, share, right in zip(each.sums, shares(each.told, each.sums, weights), each.right, strict=True):
        value = round(one.inches, 4)
        by_value[value] = by_value.get(value, (0.0, right))[0] + share, right
    return max(by_value.values())


def measured(all_of: Sequence[Known], folds: int = 4) -> Iterator[tuple[float, bool]]:
    """How each does that was not learned from."""
    for n in range(folds):
        weights = learn_sums([each for i, each in enumerate(all_of) if i % folds != n])
        yield from (judged(each, weights) for each in islice(all_of, n, None, folds))


def main() -> None:
    from tests.learning import role_model, sums_by_answer, sums_marked

    folders = [QUESTIONS, *map(Path, sys.argv[1:])]
    found = sums_by_answer(folders) + sums_marked(folders)
    judged_ = sorted(measured(all_known(found, role_model)), reverse=True)
    print(f"{len(judged_)} sums, {sum(right for _, right in judged_)} right")
    for sure in (0.99, 0.97, 0.95, 0.9, 0.8, 0.6):
        some = [right for share, right in judged_ if share >= sure]
        print(f"  {sure} and more: {len(some)}, wrong {len(some) - sum(some)}")


if __name__ == "__main__":
    main()
