"""Ids that sort by time: UUID version 7 (RFC 9562, section 5.7), as strings.

48 bits of Unix milliseconds, the version, 12 random bits, the variant, 62 random bits. Text order is time order,
so that two notebooks merge by comparing ids alone.
"""

from __future__ import annotations

import os
import threading
import time

from intents.expressions import expression

RANDOM_BITS = 74
# Two ids in one millisecond differ by a random step (RFC 9562, section 6.2, method 2); 32 bits keep the last eight
# digits, the part a person reads, as good as random.
STEP_BITS = 32

_SHAPE = expression(r"[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}")

_lock = threading.Lock()
_last = 0


def new_id(after: str | None = None) -> str:
    """A fresh id, greater than every id made before in this process and than `after`, even when the clock went back."""
    global _last  # noqa: PLW0603  (one clock a process)
    with _lock:
        floor = max(_last, _pack(after)) if after else _last
        fresh = (time.time_ns() // 1_000_000 << RANDOM_BITS) | _random(RANDOM_BITS)
        _last = fresh if fresh > floor else floor + 1 + _random(STEP_BITS)
        return _unpack(_last)


def is_id(text: object) -> bool:
    """Whether `text` is a version 7 UUID written the usual way, in lower case."""
    return isinstance(text, str) and _SHAPE.fullmatch(text) is not None


def _random(bits: int) -> int:
    return int.from_bytes(os.urandom(16)) >> 128 - bits


def _pack(text: str) -> int:
    """The time and random bits of an id, without the version and the variant, as one number."""
    whole = int(text.replace("-", ""), 16)
    return (whole >> 80 << RANDOM_BITS) | ((whole >> 64 & 0xFFF) << 62) | (whole & (1 << 62) - 1)


def _unpack(bits: int) -> str:
    """The id of a packed number."""
    milliseconds, high, low = bits >> RANDOM_BITS, bits >> 62 & 0xFFF, bits & (1 << 62) - 1
    digits = f"{milliseconds << 80 | 7 << 76 | high << 64 | 2 << 62 | low:032x}"
    return "-".join((digits[:8], digits[8:12], digits[12:16], digits[16:20], digits[20:]))
