"""Every row of the tables has its topic, and is asked in at least six ways that must be answered."""

from __future__ import annotations

from collections import Counter

import pytest

from solvers.registry import load_topics
from tests.understanding import load

LEAST_WAYS = 6
ROWS = """
roof angle; pitch of an angle; pitch from rise and run; sloped length; rise over a run; rake length; gable height;
hip or valley length;
miter for a corner; rake return; peak joint; rake to level joint; end cut along the rake; plumb cut; compound cut; polygon;
corner in several pieces; can my saw cut it; how far open;
square check; out of square; right triangle; arc; circle;
course layout; courses to openings; step at the rake; gable courses; balanced panels; equal spacing; marks on centre;
strapping; staggered joints; divide evenly;
wall area; gable area; roof area; side of a wall; cladding boards; squares; soffit panels; trim sticks; cut list;
membrane rolls; sheets; fasteners; sealant; weight; pieces from a stick; cost;
step flashing; bent flashing; take-off;
air gap; build-out; vent opening; vent area; fall; water in a channel; dew point; frost tonight;
thermal movement; end gap; wood movement; fastener length; fastener penetration; ladder footing; tape arithmetic; conversion
"""
NAMES = [name.strip() for name in ROWS.replace("\n", " ").split(";") if name.strip()]


@pytest.fixture(scope="module")
def ways() -> Counter[str]:
    """How often each topic is asked and must be answered."""
    return Counter(
        case["topic"]
        for cases in load().values()
        for case in cases
        if "topic" in case and ({"value", "word", "also"} & case.keys())
    )


@pytest.mark.parametrize("name", NAMES)
def test_a_row_has_its_topic_and_six_ways_to_ask(name: str, ways: Counter[str]) -> None:
    assert name in load_topics()
    assert ways[name] >= LEAST_WAYS, f"{name} is asked in {ways[name]} ways"
