"""What is only supposed changes the question and is not kept; a bare number in place of feet and inches is of feet."""

from __future__ import annotations

import pytest

from assistant.conversation import Conversation
from tests.talking import last


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("eave is 11'6, foot of the ladder", "if the eave is 13"), 39),
        (("eave is 11'6, foot of the ladder", "and 16"), 48),
        (("course layout 9 foot exposure 7", "if the exposure is 6"), 6),
        (("rake return 5 12", "what if the roof is 8 12"), 61.845),
        (("course layout 4'6 high exposure 7", "if the wall is 52"), 6.5),
    ],
)
def test_the_question_is_worked_with_it(lines: tuple[str, ...], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["say"] or record["ask"]
    assert record["answer"]["value"] == pytest.approx(value, abs=0.01)


@pytest.mark.parametrize("line", ["if the exposure is 6", "say the exposure is 6", "what if the exposure is 6"])
def test_the_job_still_knows_what_it_knew(line: str) -> None:
    conversation = Conversation()
    for said in ("the exposure is 7", "how many courses in 9 foot", line):
        record = conversation.answer(said)
    assert record["answer"]["value"] == 6
    assert conversation.facts.values["exposure"].value == 7


def test_what_was_no_given_is_kept_though_supposed() -> None:
    assert last("square check 12 by 16", "if the roof is 6 12")["topic"] == "remember"
