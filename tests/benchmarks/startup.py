"""One question as a whole process over `python -c "import sympy"`: `python -m tests.benchmarks.startup [RUNS]`.

Both run in turn, so that a busy machine slows both; bytecode is kept, as it is for an installed program.
"""

from __future__ import annotations

import subprocess
import sys
import tempfile
import time
from os import environ
from statistics import median

ASK = [sys.executable, "-m", "assistant", "ask", "miter for a 5-in-12 rake return"]
SYMPY = [sys.executable, "-c", "import sympy"]
MOST = 1.6


def took(command: list[str], home: str) -> float:
    kept = {name: value for name, value in environ.items() if name != "PYTHONDONTWRITEBYTECODE"}
    began = time.perf_counter()
    subprocess.run(command, check=True, stdout=subprocess.DEVNULL, env={**kept, "LATHMARK_HOME": home})
    return time.perf_counter() - began


def main(runs: int = 21) -> None:
    with tempfile.TemporaryDirectory() as home:
        for command in (ASK, SYMPY):
            took(command, home)
        pairs = [(took(ASK, home), took(SYMPY, home)) for _ in range(runs)]
    ask, sympy = (median(times) for times in zip(*pairs, strict=True))
    print(
        f"startup: ask {1000 * ask:.0f} ms, import sympy {1000 * sympy:.0f} ms, "
        f"ratio {ask / sympy:.2f} (at most {MOST})"
    )
    sys.exit(ask / sympy > MOST)


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
