"""Lines of many talks said in any order, a record each: `python -m tests.benchmarks.talks [TALKS] [SEED]`.

The random sentences of `fuzz.py` hardly ever lean on what was said before; these do, after questions that they were not written
for. None may fail; what a line takes is printed as it is there.
"""

from __future__ import annotations

import json
import random
import sys

from assistant.garbage import between_lines
from tests.benchmarks.fuzz import LONGEST, named
from tests.benchmarks.sentences import figures, warmed
from tests.understanding import lines, load

TALKS, LINES = 10_000, 4


def main(talks: int = TALKS, seed: int = 1) -> None:
    chance = random.Random(seed)
    said = [lines(case) for cases in load().values() for case in cases]
    first, later = [talk[0] for talk in said], [talk[-1] for talk in said if len(talk) > 1]
    times: list[float] = []
    slow: list[tuple[float, list[str]]] = []
    with warmed() as desk:
        for number in range(talks):
            desk.fresh()
            talk: list[str] = []
            for at in range(LINES):
                between_lines(number * LINES + at)
                talk.append(chance.choice(later if at else first))
                times.append(named(desk, talk[-1]))
                if times[-1] > LONGEST:
                    slow.append((times[-1], [*talk]))
    print(f"talks: {len(times)} lines, a record each, {figures(times)}; {len(slow)} over 50 ms the first time")
    for spent, told in sorted(slow, reverse=True)[:LINES]:
        print(f"      {1000 * spent:.1f} ms: {json.dumps(told)}")


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
