"""Whole conversations, through the desk or the real command, with a home of their own."""

from __future__ import annotations

import json
import subprocess
import sys
from collections.abc import Callable, Iterator
from math import atan, cos, degrees, radians, sin
from pathlib import Path
from typing import Any

import pytest

from assistant.conversation import Conversation
from assistant.desk import Desk
from solvers.gap import joint_gap

HOUSE = Path(__file__).parent.parent.parent
Record = dict[str, Any]
Say = Callable[..., Record]


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("LATHMARK_HOME", str(tmp_path))
    return tmp_path


@pytest.fixture
def desk(home: Path) -> Iterator[Desk]:
    with Desk() as opened:
        yield opened


@pytest.fixture
def say(desk: Desk) -> Say:
    """Says lines one after the other and gives back the last record."""

    def last(*lines: str) -> Record:
        records = [desk.answer(line) for line in lines]
        return records[-1]

    return last


def rake_return(rise: float) -> float:
    """The saw setting, degrees: half of 90° and the roof angle (topics.md)."""
    return (90 + degrees(atan(rise / 12))) / 2


def command(*arguments: str, lines: str = "") -> list[Record]:
    done = subprocess.run(
        [sys.executable, "-m", "assistant", "ask", "--json", *arguments],
        input=lines.encode("utf-8"), cwd=HOUSE, capture_output=True, check=True,
    )  # fmt: skip
    assert done.stderr == b""
    return [json.loads(line) for line in done.stdout.decode("utf-8").splitlines()]


# ── through the command ──


def test_a_blank_line_starts_afresh() -> None:
    first, second, third = command("-", lines="the roof is 5/12\nrake return\n\nrake return\n")
    assert first["outcome"] == "noted"
    assert second["answer"]["value"] == pytest.approx(rake_return(5))
    assert [given["from"] for given in second["givens"] if given["name"] == "pitch"] == ["job"]
    assert third["outcome"] == "asks" and third["ask"] == "What is the pitch?"


def test_a_named_job_keeps_its_values_across_processes_and_blank_lines() -> None:
    command("--job", "north wall", "the roof is 5/12")
    kept = command("--job", "north wall", "-", lines="\nrake return\nno, 9/12\n")
    assert kept[0]["answer"]["value"] == pytest.approx(rake_return(5))
    assert kept[1]["answer"]["value"] == pytest.approx(rake_return(9))
    assert command("--job", "north wall", "what's the pitch")[0]["say"] == "For this job: pitch 9 in 12."
    assert command("--job", "lake wall", "rake return")[0]["outcome"] == "asks"


def test_with_no_notebook_marks_are_noted_and_said_not_to_be_written(home: Path) -> None:
    records = command("--no-notebook", "-", lines="rake return 5/12\nflag that\nnote: order flashing\nread me today\n")
    assert [record["id"] for record in records] == [None] * 4
    assert all("notebook is off" in record["say"] for record in records[1:])
    assert "rake return 5/12" in records[3]["say"]
    assert not list(home.rglob("*.db*"))


def test_any_line_gets_one_record_and_no_traceback() -> None:
    long = ["x" * 10_000, "why " * 2_500, "not " * 2_500, "'" * 400, "5/12 " * 2_000]
    odd = ["rake \x00\x07return\x1b[31m 5/12", "🔨🔨🔨", "\u200f\u202e👩\u200d🔧", "½ ⅞ ″", "7/0", "\ufeffwhy"]
    records = command("-", lines="\n\n".join(long + odd) + "\n")
    assert len(records) == len(long + odd)
    for record in records:
        assert record["outcome"] in ("answered", "asks", "declined", "noted")
        assert record["say"] and record["heard"]


def test_control_characters_do_not_hide_a_question() -> None:
    (record,) = command("-", lines="rake \x00\x07return 5/12\n")
    assert record["answer"]["value"] == pytest.approx(rake_return(5))


def test_a_long_note_is_kept_whole(say: Say) -> None:
    words = "bug screen " * 900
    record = say(f"note: {words}")
    assert record["givens"][0]["text"] == words.strip()


# ── what the job knows ──


@pytest.mark.parametrize(
    ("told", "name", "kept"),
    [
        ("the roof is five twelve", "pitch", "5 in 12"),
        ("we've got a 9/12 roof on this one", "pitch", "9 in 12"),
        ("my saw stops at 52", "saw limit", "52°"),
        ("stock is 12 foot", "stock length", "12 ft"),
        ("keep in mind stock comes in 16 footers", "stock length", "16 ft"),
        ("exposure's six inches", "exposure", "6 in"),
        ("studs are on 16s", "stud spacing", "16 in"),
        ("I have a 1/8 kerf", "kerf", "1/8 in"),
        ("screen is 60 percent open, hang on to that", "open share of the screen", "60 %"),
        ("expsure is 7", "exposure", "7 in"),
    ],
)
def test_a_statement_is_kept_and_read_back(say: Say, told: str, name: str, kept: str) -> None:
    assert say(told)["say"] == f"Kept for this job: {name} {kept}."
    assert say(f"what's the {name}")["say"] == f"For this job: {name} {kept}."


def test_what_was_kept_before_is_named(say: Say) -> None:
    assert "it was 12 ft" in say("stock is 12 foot", "make it 16")["say"]
    assert "it was 16 ft" in say("no, 14")["say"]
    assert "stock length 14 ft" in say("what do you know about this job")["say"]


def test_several_things_in_one_breath(say: Say) -> None:
    say("the roof is 5 12 and exposure is 7, and my saw stops at 52")
    said = say("what do you know about this job")["say"]
    assert all(part in said for part in ("pitch 5 in 12", "exposure 7 in", "saw limit 52°"))


def test_a_statement_with_a_question_keeps_nothing_silently(say: Say) -> None:
    assert say("the roof is 5 12, what's the rake return")["answer"]["value"] == pytest.approx(rake_return(5))
    assert say("what do you know about this job")["say"].startswith("Nothing is kept")


def test_asking_for_what_was_never_said_asks_for_it(say: Say) -> None:
    assert say("what's the exposure")["outcome"] == "asks"
    assert say("7")["say"] == "Kept for this job: exposure 7 in."


def test_forgetting_everything_wants_a_yes(say: Say) -> None:
    assert say("the roof is 5/12", "forget everything")["outcome"] == "asks"
    assert say("no")["say"] == "Nothing was forgotten."
    assert "pitch" in say("what do you know about this job")["say"]
    assert say("forget everything", "yes")["outcome"] == "noted"
    assert say("rake return")["ask"] == "What is the pitch?"


@pytest.mark.parametrize("told", ["the roof is 90/12", "exposure is minus 3"])
def test_what_can_not_be_is_not_kept(say: Say, told: str) -> None:
    assert say(told)["outcome"] == "declined"
    assert say("what do you know about this job")["say"].startswith("Nothing is kept")


def test_what_the_job_knows_never_changes_a_whole_question(say: Say) -> None:
    whole = say("gable area 24 ft wide 8 ft high")["answer"]
    record = say("the roof is 5/12", "gable area 24 ft wide 8 ft high")
    assert record["answer"] == whole
    assert not [given for given in record["givens"] if given["from"] == "job"]


# ── changes and corrections ──


def test_a_follow_up_asks_again_with_one_thing_changed(say: Say) -> None:
    record = say("sloped length for a 12 foot run at 6/12", "and at eight twelve?")
    assert record["answer"]["value"] == pytest.approx(144 / cos(atan(8 / 12)))
    assert {given["name"]: given["from"] for given in record["givens"]} == {"pitch": "asked", "run": "earlier"}
    assert record["say"].startswith("With pitch eight twelve.")
    assert say("make it 16 foot")["answer"]["value"] == pytest.approx(192 / cos(atan(8 / 12)))
    assert say("what about 20")["answer"]["value"] == pytest.approx(240 / cos(atan(8 / 12)))


def test_how_to_answer_can_change_alone(say: Say) -> None:
    say("sloped length at 8/12 over 12 feet")
    assert say("to the nearest 32nd")["answer"]["text"].startswith("173 1/16 in")
    assert say("in millimetres")["answer"]["text"] == "4396 mm"
    assert say("in inches")["answer"]["unit"] == "in"


def test_the_pitch_goes_over_to_the_next_topic_and_nothing_else_does(say: Say) -> None:
    record = say("rake return at 5/12 with a square fascia", "and the peak joint?")
    assert record["topic"] == "peak joint" and record["givens"][0]["from"] == "earlier"
    assert say("", "gable height")["outcome"] == "asks"


@pytest.mark.parametrize(
    ("asked", "correction", "rise"),
    [("rake return for 5/12", "no, nine twelve", 9), ("rake return 7/12", "not 7, 9 twelve", 9)],
)
def test_a_correction_answers_again_and_points_at_what_it_corrects(desk: Desk, asked: str, correction: str, rise: float) -> None:
    first, second = desk.answer(asked), desk.answer(correction)
    assert second["answer"]["value"] == pytest.approx(rake_return(rise))
    assert desk.notebook is not None
    assert desk.notebook.get(first["id"]).corrected_by == second["id"]


def test_a_number_that_sounds_alike_is_the_one_corrected(say: Say) -> None:
    assert say("rise over a 30 foot run at 6/12", "I said thirteen")["answer"]["value"] == pytest.approx(78)


def test_units_put_right_on_their_own(say: Say) -> None:
    assert say("square check 9 by 12", "no, inches")["answer"]["value"] == pytest.approx(15)


def test_a_change_that_could_be_meant_for_two_things_is_asked_about(say: Say) -> None:
    assert say("square check 9 by 12 feet", "make it 10 foot")["outcome"] == "asks"


def test_words_of_another_question_are_no_change(say: Say) -> None:
    assert say("rake return 5/12", "miter 45")["outcome"] != "answered"


def test_nothing_to_change(say: Say) -> None:
    assert say("and at eight twelve?")["ask"].startswith("What should I change?")


# ── explaining and comparing ──


def test_the_working_is_read_a_step_at_a_time(say: Say) -> None:
    say("rake return at 5/12")
    assert "22.62" in say("why")["say"]
    assert "67.38" in say("next step")["say"]
    assert "112.62" in say("show me step three")["say"]
    assert "33.69" in say("how did you get the edge angle")["say"]
    assert "it holds" in say("what's the check")["say"]
    assert "past the last" in say("step 40")["say"]
    assert say("how did you get the moon")["outcome"] == "asks"


def test_nothing_to_explain(say: Say) -> None:
    assert say("why")["outcome"] == "asks"


@pytest.mark.parametrize(
    ("asked", "claim", "words"),
    [
        ("rake return for 5/12", "i got 33.7", ("edge angle", "90 − 56.3", "same joint")),
        ("miter for a 135 degree corner", "my buddy says 67.5", ("edge angle",)),
        ("saw setting for a 135 degree corner", "I make it 45", ("turn", "twice")),
        ("rake return at 5/12", "my bevel gauge reads 67.4", ("corner",)),
        ("square check 6 ft by 8 ft", "the tape says 120 and a half", ("1/2 inch more", "too much")),
        ("rise over 10 foot at 7/12", "i make that 70 inches too", ("the same",)),
    ],
)
def test_another_number_is_placed(say: Say, asked: str, claim: str, words: tuple[str, ...]) -> None:
    said = say(asked, claim)["say"]
    assert all(word in said for word in words), said


def test_the_gap_of_a_wrong_setting_is_that_of_two_cut_strips() -> None:
    # 45/45 on a 92 degree corner, 3 1/2 in face: 0.173 in (topics.md).
    assert joint_gap(45, 1) == pytest.approx(0.173, abs=5e-4)
    # By coordinates: along the miter line, each side turned by the error, the far ends lie this far apart.
    saw, off, face = 33.0, 0.7, 3.5
    along = face / cos(radians(saw))
    ends = [(along * cos(radians(a)), along * sin(radians(a))) for a in (-off, off)]
    assert joint_gap(saw, off, face) == pytest.approx(((ends[0][0] - ends[1][0]) ** 2 + (ends[0][1] - ends[1][1]) ** 2) ** 0.5)


# ── the notebook ──


def test_marks_point_at_what_they_are_about_and_are_written_once(desk: Desk) -> None:
    asked = desk.answer("peak joint at 8/12")
    for line in ("flag that", "tag that ramp wall", "add a note to that: check the ladder"):
        assert desk.answer(line)["outcome"] == "noted"
    assert desk.notebook is not None
    entry = desk.notebook.get(asked["id"])
    assert entry.flagged and entry.tags == ("ramp wall",) and entry.notes == ("check the ladder",)
    assert [e.kind for e in desk.notebook.day()] == ["question", "flag", "tag", "note"]
    desk.answer("unflag that")
    assert not desk.notebook.get(asked["id"]).tags  # the tag was the last mark made
    desk.answer("strike that")
    assert desk.notebook.get(asked["id"]).struck is False  # the note was the last entry


def test_striking_a_statement_takes_its_value_back(say: Say) -> None:
    assert "taken back" in say("exposure is 5", "exposure is 7", "strike that")["say"]
    assert say("what's the exposure")["say"] == "For this job: exposure 5 in."


def test_the_day_is_read_back(say: Say) -> None:
    say("rake return 5/12", "note: bug screen ran out on the north wall", "flag that")
    assert "rake return: 56.3°" in say("read me today")["say"]
    assert "bug screen" in say("anything flagged")["say"]
    assert "rake return" not in say("anything flagged")["say"]
    assert "bug screen" in say("any notes about the screen")["say"]
    assert "unicorns" in say("what did I ask about unicorns")["say"]
    assert say("yesterday")["say"] == "Nothing yesterday in the notebook."


# ── what was put back ──


def test_a_bare_piece_settles_the_question(say: Say) -> None:
    assert say("rake return", "five twelve")["answer"]["value"] == pytest.approx(rake_return(5))
    assert say("miter for a corner", "92")["answer"]["value"] == pytest.approx(44)


def test_an_unclear_reply_is_asked_about_once_and_the_question_stays_open(say: Say) -> None:
    again = say("rake return", "banana")
    assert again["outcome"] == "asks" and again["ask"].endswith("What is the pitch?")
    dropped = say("banana")
    assert dropped["outcome"] == "declined" and dropped["say"].endswith("Still open: What is the pitch?")
    assert say("five twelve")["answer"]["value"] == pytest.approx(rake_return(5))


def test_talk_in_between_leaves_the_question_open(say: Say) -> None:
    say("rake return")
    assert "depends on the pitch" in say("I don't know")["ask"]
    assert say("note: tarps are wet 5 12")["outcome"] == "noted"
    assert say("kerf is 1/8")["say"].endswith("Still open: What is the pitch?")
    assert say("five twelve")["answer"]["value"] == pytest.approx(rake_return(5))


def test_never_mind_drops_it_and_a_whole_question_takes_its_place(say: Say) -> None:
    assert say("rake return", "never mind")["outcome"] == "noted"
    assert say("rake return", "miter for a 92 degree corner")["answer"]["value"] == pytest.approx(44)


def test_the_other_way_round(say: Say) -> None:
    asked = say("pitch from a run and a rise, 4 feet and 12 feet")
    assert asked["outcome"] == "asks" and "other way round" in asked["ask"]
    assert say("the other way round")["outcome"] == "answered"


@pytest.mark.parametrize("line", ["rake return for nine twelve", "the roof is nine twelve"])
def test_a_word_heard_with_doubt_is_asked_about_with_both_readings(line: str) -> None:
    conversation = Conversation()
    asked = conversation.answer(line, "spoken", alternatives=[("nine", "five")])
    assert asked["outcome"] == "asks"
    assert any(nine in asked["ask"] for nine in ("nine twelve", "9 in 12"))
    assert any(five in asked["ask"] for five in ("five twelve", "5 in 12"))
    assert not conversation.facts.values
    settled = conversation.answer("five twelve")
    assert settled["outcome"] in ("answered", "noted")
    assert "5" in json.dumps(settled["givens"]) or "5 in 12" in settled["say"]


def test_a_doubtful_piece_and_a_doubtful_change_are_asked_about_too() -> None:
    conversation = Conversation()
    conversation.answer("rake return")
    assert conversation.answer("nine twelve", alternatives=[("nine", "five")])["outcome"] == "asks"
    assert conversation.answer("the second")["answer"]["value"] == pytest.approx(rake_return(5))
    assert conversation.answer("and at seven twelve", alternatives=[("seven", "eleven")])["outcome"] == "asks"
    assert conversation.answer("seven")["answer"]["value"] == pytest.approx(rake_return(7))


# ── what is not worked out here ──


@pytest.mark.parametrize(
    ("line", "whom"),
    [
        ("what size beam for a twelve foot opening", "engineer"),
        ("can I use 2x10 joists to span 12 feet", "engineer"),
        ("what gauge wire for a 20 amp circuit", "electrician"),
        ("how do i move the gas meter", "gas fitter"),
        ("what size drain pipe for a toilet", "plumber"),
        ("where do I anchor my harness on the ridge", "fall protection"),
    ],
)
def test_other_trades_are_declined_with_whom_to_ask(say: Say, line: str, whom: str) -> None:
    record = say("rake return", line)
    assert record["outcome"] == "declined"
    assert "local code" in record["say"] and whom in record["say"]


def test_what_can_be_asked(say: Say) -> None:
    said = say("what can you do")["say"]
    assert "Roof slope" in said and "Corners and the saw".lower() in said.lower()
    assert say("thanks")["outcome"] == "noted"


def test_no_match_names_the_words_and_offers_examples_that_work(say: Say) -> None:
    said = say("soffit zorp")["say"]
    assert "“soffit”" in said and "“zorp”" in said
    example = said.split("Try “")[1].split("” (")[0]
    assert say(example)["outcome"] == "answered"


# ── talk in other words ──
