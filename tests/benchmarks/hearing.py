"""How well the ear hears: `python -m tests.benchmarks.hearing [--voices slt,rms] [--every 2] [--show]`.

Speaks tests/audio/asked.txt (topic|sentence) and tests/audio/chat.txt (no questions) in each voice and prints, for a
voice: sentences whose numbers came out right, those wrong but with the right number among the doubts, those wrong
with confidence, numbers doubted that were right, refusals both ways, sentences that mean the same, and real time used.
"""

from __future__ import annotations

import argparse
import tempfile
import time
from collections import Counter
from pathlib import Path

from assistant.conversation import Conversation
from assistant.ears import Heard, ear
from assistant.ears.wav import read_wav, seconds
from tests.audio.speech import VOICES, speak

AUDIO = Path(__file__).parent.parent / "audio"
SAME = {"feet": "foot", "inches": "inch", "degrees": "degree", "quarters": "quarter"}
NUMBERS = frozenset(
    "one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen "
    "eighteen nineteen twenty thirty forty fifty sixty seventy eighty ninety hundred half quarter "
    "eighth foot inch degree".split()
)


def numbers(text: str) -> list[str]:
    """The words of a sentence that carry a number or its unit, singular."""
    return [word for said in text.split() if (word := SAME.get(said, said)) in NUMBERS]


def grade(said: str, heard: Heard) -> str:
    """How the numbers of one sentence came out."""
    if heard.refused:
        return "refused"
    if numbers(heard.text) == numbers(said):
        return "right, doubted" if heard.doubtful else "right"
    want, got = said.split(), heard.words
    covered = len(want) == len(got) and all(
        word in (w.word, *w.alternatives) or SAME.get(word, word) not in NUMBERS
        for word, w in zip(want, got, strict=True)
    )
    if covered:
        return "wrong, right one offered"
    return "wrong, doubted" if heard.doubtful else "wrong, sure"


def meaning(text: str) -> object:
    """What the conversation makes of a sentence."""
    record = Conversation().answer(text)
    answer = record["answer"] or {}
    return record["outcome"], record["topic"], answer.get("value"), record["ask"]


def measure(voice: str, every: int, show: bool) -> tuple[Counter[str], float, float]:
    """Grades for one voice, seconds of sound and seconds of listening."""
    asked = [line.split("|") for line in (AUDIO / "asked.txt").read_text("utf-8").splitlines()][::every]
    chat = [("", line) for line in (AUDIO / "chat.txt").read_text("utf-8").splitlines()][::every]
    grades: Counter[str] = Counter()
    long = spent = 0.0
    with tempfile.TemporaryDirectory() as folder:
        for topic, said in [*asked, *chat]:
            sound = read_wav(speak(said, voice, Path(folder) / "said.wav"))
            began = time.perf_counter()
            heard = ear().hear(sound)
            spent += time.perf_counter() - began
            long += seconds(sound)
            result = grade(said, heard) if topic else "chat refused" if heard.refused else "chat taken for a question"
            grades[result] += 1
            grades["means the same"] += bool(topic) and not heard.refused and meaning(said) == meaning(heard.text)
            if show and result not in ("right", "chat refused"):
                doubts = {word.word: word.alternatives for word in heard.doubtful}
                print(f"  {voice} {result}: {said} | {heard.text} | {doubts}", flush=True)
    return grades, long, spent


def main() -> None:
    """Prints one line a voice and one for all."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0] if __doc__ else "")
    parser.add_argument("--voices", default=",".join(VOICES))
    parser.add_argument("--every", type=int, default=1, help="take every so many sentences")
    parser.add_argument("--show", action="store_true", help="print what was not simply right")
    choices = parser.parse_args()
    ear()
    total: Counter[str] = Counter()
    for voice in choices.voices.split(","):
        grades, long, spent = measure(voice, choices.every, choices.show)
        total += grades
        print(f"{voice}: {dict(sorted(grades.items()))}, {spent / long:.2f} of real time", flush=True)
    print(f"all: {dict(sorted(total.items()))}")


if __name__ == "__main__":
    main()
