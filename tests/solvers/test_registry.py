"""Topics read from signatures: what they need, assume and ask, and what comes of working them."""

from __future__ import annotations

import inspect
import re
import sys
from fractions import Fraction
from typing import Annotated

import pytest

from solvers.common import RoofPitch
from solvers.errors import NeedMore
from solvers.exact import Term
from solvers.quantities import Area, Count, Length, Percent, Pitch
from solvers.registry import Registry, Topic, load_topics, work_out
from solvers.slots import Choice, Given, Slot
from solvers.working import Working


class Side(Choice):
    LEFT = "left"
    RIGHT = "right"


TWICE = Count(Fraction(2), "count")


def topics() -> dict[str, Topic]:
    registry = Registry()

    @registry.topic("doubling", "sums")
    def doubling(
        work: Working,
        length: Annotated[Length, Slot("How long is it?", bare=("ft", "in"), above=0, most=1200, name="the length")],
        times: Count = TWICE,
        side: Side = Side.LEFT,
        spare: Length | None = None,
    ) -> None:
        """So many times a length."""
        if times.value == 13:  # type: ignore[attr-defined]
            raise NeedMore("spare")
        result = work.answer("whole", length * times, "as often", "in", "w")  # type: ignore[operator]
        work.check("taken apart", result / times, "=", 0 if times.value == 7 else length)  # type: ignore[operator]

    @registry.topic("steepness", "sums")
    def steepness(work: Working, pitch: RoofPitch) -> None:
        """Rise per run."""
        assert isinstance(pitch.rise, Term)  # type: ignore[attr-defined]
        work.answer("rise", pitch.rise, "", "in")  # type: ignore[attr-defined]
        work.check("it is", pitch.rise, "=", pitch.rise)  # type: ignore[attr-defined]

    return registry.topics


TOPICS = topics()


def ask(name: str = "doubling", **values: object) -> dict[str, Given]:
    return {key: Given(key, value) for key, value in values.items()}


def inches(value: str, unit: str = "in") -> Length:
    return Length(Fraction(value), unit)


def test_the_signature_is_the_declaration() -> None:
    length, times, side, spare = TOPICS["doubling"].parameters
    assert (length.kind, length.required) == (Length, True)
    assert (length.label, length.slot.ask) == ("the length", "How long is it?")
    assert (times.required, times.default.value, side.kind, side.default) == (False, 2, Side, Side.LEFT)
    assert (spare.required, spare.default, spare.slot.ask) == (False, None, "What is the spare?")
    assert TOPICS["doubling"].summary == "So many times a length."


def test_what_is_missing_is_asked_for() -> None:
    worked = work_out(TOPICS["doubling"], {})
    assert (worked.asks, worked.wanted, worked.working, worked.refused) == ("How long is it?", "length", None, "")


def test_defaults_are_named_as_assumptions() -> None:
    worked = work_out(TOPICS["doubling"], ask(length=inches("30")))
    assert worked.working is not None and worked.working.result is not None
    assert worked.working.result.value == 60
    assert {given.name: given.source for given in worked.givens} == {
        "length": "asked", "times": "assumed", "side": "assumed"
    }  # fmt: skip


def test_a_solver_may_ask_for_more() -> None:
    worked = work_out(TOPICS["doubling"], ask(length=inches("30"), times=Count(Fraction(13), "count")))
    assert (worked.wanted, worked.asks) == ("spare", "What is the spare?")


def test_a_failed_check_gives_no_number() -> None:
    worked = work_out(TOPICS["doubling"], ask(length=inches("30"), times=Count(Fraction(7), "count")))
    assert worked.working is None
    assert "give no number" in worked.refused


@pytest.mark.parametrize(
    ("length", "says"),
    [("0", "more than 0 in"), ("-4", "more than 0 in"), ("1200 1/16", "at most 1200 in")],
)
def test_limits_are_kept_and_named(length: str, says: str) -> None:
    value = sum((Fraction(part) for part in length.split()), Fraction(0))
    worked = work_out(TOPICS["doubling"], ask(length=Length(value, "in")))
    assert says in worked.refused and "the length can't be" in worked.refused


def test_a_count_is_whole() -> None:
    worked = work_out(TOPICS["doubling"], ask(length=inches("30"), times=Count(Fraction(5, 2), "count")))
    assert "whole number, not 2.5" in worked.refused


@pytest.mark.parametrize(
    ("pitch", "says"),
    [
        (("-5", "in12"), "negative"),
        (("0", "in12"), "flat"),
        (("400", "in12"), "steepest"),
        (("80", "deg"), "76"),
        (("0", "deg"), "flat"),
    ],
)
def test_pitches_that_can_not_be(pitch: tuple[str, str], says: str) -> None:
    value, unit = pitch
    assert says in work_out(TOPICS["steepness"], ask(pitch=Pitch(Fraction(value), unit))).refused


def test_an_angle_for_a_pitch_is_turned_into_rise_where_it_shows() -> None:
    worked = work_out(TOPICS["steepness"], ask(pitch=Pitch(Fraction(45), "deg")))
    assert worked.working is not None
    assert worked.working.steps[0]["result"] == "12 in 12"


@pytest.mark.parametrize(
    ("values", "unit"),
    [({"length": inches("30")}, "in"), ({"length": inches("3", "m")}, "mm"), ({"length": inches("3", "ft")}, "in"),
     ({"length": inches("3", "m"), "spare": inches("3", "ft")}, "in")],
)  # fmt: skip
def test_all_metric_in_is_metric_out(values: dict[str, Length], unit: str) -> None:
    worked = work_out(TOPICS["doubling"], ask(**values))
    assert worked.working is not None and worked.working.result is not None
    assert worked.working.result.unit == unit


def test_two_topics_of_one_name_are_refused() -> None:
    registry = Registry()
    registry.topic("a", "b")(lambda work: None)
    with pytest.raises(ValueError, match="two topics are called a"):
        registry.topic("a", "c")(lambda work: None)


@pytest.mark.parametrize("topic", load_topics().values(), ids=load_topics())
def test_every_topic_says_what_it_gives_refuses_and_rests_on(topic: Topic) -> None:
    assert len(topic.summary) > 20
    said = inspect.getsource(sys.modules[topic.work.__module__])
    assert re.search(r"[Ss]ource|common practice", said), "where it comes from"
    for parameter in topic.parameters:
        assert "?" in parameter.slot.ask, parameter.name
        assert parameter.kind is not Percent or parameter.slot.unit in ("", "percent")
        assert parameter.kind is not Area or parameter.slot.unit in ("", "ft2", "in2", "m2", "square")


def test_no_length_on_a_job_is_hundreds_of_miles() -> None:
    topic = load_topics()["sloped length"]
    known = {"pitch": Given("pitch", Pitch(Fraction(5), "in12")), "run": Given("run", Length(Fraction(10**9), "ft"))}
    assert "no length on a job" in work_out(topic, known).refused
