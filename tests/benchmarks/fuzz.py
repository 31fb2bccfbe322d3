"""Random and mutated sentences, a record each: `python -m tests.benchmarks.fuzz [N] [SEED]`.

None may fail, or take over 50 ms.

Times are of the processor, so that a busy machine counts for nothing. Not quite: a core shared with other machines now and then
makes "4" take 49 ms. So a line that took too long is asked again, after the lines before it, in processes of its own, where
nothing is kept from the first time; what it takes there at the least tells the sentence from the machine.
"""

from __future__ import annotations

import json
import random
import subprocess
import sys
import time
from collections.abc import Callable

from assistant.desk import Desk
from assistant.garbage import between_lines
from intents.phrases import compiled
from intents.vocabulary import NUMBER_WORDS
from tests.benchmarks.sentences import figures, questions, warmed

COUNT, LONGEST = 200_000, 0.050
AGAIN, TRIES = "again", 3
SIGNS = [*"0123456789/.,-'\"°×%$?!:;()+=@#&*~^<>[]{}|\\`½⅜″′–−²", *" \t\u200b\u0000é木🔨٣", "１２"]
NUMBERS = [
    "5/12", "7/0", "12'6\"", "3-1/2", "1e9", "9999999999999999999", "-4", "0", "½", "2.4 m", "9 mm", "400 in 12",
    "22.5 degrees", "16 oc", "10x12", "1/300", "40%", "$3.50", "20 below", "twelve twelve", "five and a half", "a dozen",
    ".", "/", "1,200",
]  # fmt: skip
Make = Callable[[random.Random, list[str], list[str]], str]


def any_text(chance: random.Random, lines: list[str], words: list[str]) -> str:
    return "".join(chance.choice(SIGNS + list("abcdefghijklmnop qrstuvwxyz ")) for _ in range(chance.randint(0, 60)))


def any_words(chance: random.Random, lines: list[str], words: list[str]) -> str:
    return " ".join(chance.choice(NUMBERS if chance.random() < 0.3 else words) for _ in range(chance.randint(1, 25)))


def mutated(chance: random.Random, lines: list[str], words: list[str]) -> str:
    text = list(chance.choice(lines))
    for _ in range(chance.randint(1, 6)):
        at = chance.randint(0, len(text))
        text[at : at + chance.randint(0, 3)] = [chance.choice([*SIGNS, chance.choice(words), chance.choice(NUMBERS)])]
    return "".join(text)


def spliced(chance: random.Random, lines: list[str], words: list[str]) -> str:
    one, two = chance.choice(lines).split(), chance.choice(lines).split()
    return " ".join(one[: chance.randint(0, len(one))] + two[chance.randint(0, len(two)) :])


def shuffled(chance: random.Random, lines: list[str], words: list[str]) -> str:
    pieces = chance.choice(lines).split()
    chance.shuffle(pieces)
    return " ".join(pieces * chance.choice((1, 1, 1, 2, 5)))


MAKERS: tuple[Make, ...] = (any_text, any_words, mutated, mutated, spliced, shuffled)


def took(desk: Desk, text: str) -> float:
    """The time of one line. What comes back must be a record with something to say, and plain JSON."""
    began = time.thread_time()
    record = desk.answer(text)
    spent = time.thread_time() - began
    json.dumps(record, allow_nan=False)
    if not record["say"] or record["outcome"] not in ("answered", "asks", "declined", "noted"):
        raise AssertionError(f"no proper record for {text!r}: {record}")
    return spent


def main(count: int = COUNT, seed: int = 1) -> None:
    chance, lines = random.Random(seed), questions()
    words = sorted(compiled().vocabulary | compiled().ordinary | NUMBER_WORDS)
    times: list[float] = []
    slow: list[tuple[float, list[str]]] = []
    said: list[str] = []
    with warmed() as desk:
        for number in range(count):
            between_lines(number)
            if number % 5 == 0:
                desk.fresh()
                said = []
            said.append(chance.choice(MAKERS)(chance, lines, words))
            spent = named(desk, said[-1])
            times.append(spent)
            if spent > LONGEST:
                slow.append((spent, [*said]))
    print(f"fuzz: {count} sentences, a record each, {figures(times)} (none over 50 ms)")
    worst = 0.0
    for spent, told in sorted(slow, reverse=True):
        least = min(alone(told) for _ in range(TRIES))
        worst = max(worst, least)
        print(f"      {1000 * spent:.1f} ms, in a process of its own {1000 * least:.1f}: {told[-1]!r}")
    print(f"      {len(slow)} over 50 ms the first time; the longest of them alone {1000 * worst:.1f} ms")
    sys.exit(worst > LONGEST)


def alone(told: list[str]) -> float:
    """What the last of some lines takes in a process of its own, seconds."""
    command = [sys.executable, "-m", "tests.benchmarks.fuzz", AGAIN]
    done = subprocess.run(command, input=json.dumps(told), capture_output=True, text=True, check=True)
    return float(done.stdout)


def again() -> None:
    """Print what the last of the lines on standard input takes, seconds."""
    *before, last = json.loads(sys.stdin.read())
    with warmed() as desk:
        desk.fresh()
        for line in before:
            desk.answer(line)
        print(took(desk, last))


def named(desk: Desk, text: str) -> float:
    """The time of one line; a line that fails is printed before its traceback."""
    spent = None
    try:
        spent = took(desk, text)
    finally:
        if spent is None:
            print(f"fuzz: failed on {text!r}")
    return spent


if __name__ == "__main__":
    again() if sys.argv[1:] == [AGAIN] else main(*map(int, sys.argv[1:]))
