"""A question to its record, warm, over the question sets: `python -m tests.benchmarks.warm`. Nothing is written down.

Times are of the processor, so that a busy machine counts for nothing.
"""

from __future__ import annotations

import sys
import time
from statistics import median

from assistant.garbage import between_lines
from tests.benchmarks.sentences import figures, questions, share, warmed

MEDIAN, P99 = 0.020, 0.060  # seconds


def main() -> None:
    times: list[float] = []
    slow: list[tuple[float, str]] = []
    with warmed() as desk:
        for count, line in enumerate(questions()):
            between_lines(count)
            desk.fresh()
            began = time.thread_time()
            desk.answer(line)
            times.append(time.thread_time() - began)
            slow.append((times[-1], line))
    print(f"warm: {len(times)} questions, {figures(times)} (at most 20 and 60 ms)")
    for took, line in sorted(slow, reverse=True)[:3]:
        print(f"      {1000 * took:.1f} ms: {line}")
    sys.exit(median(times) > MEDIAN or share(times, 0.99) > P99)


if __name__ == "__main__":
    main()
