"""The second reader: what was learned, how roles are handed out, and how it is held against the grammar."""

from __future__ import annotations

from itertools import permutations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from assistant import acts
from intents import second_sums
from intents.chart import chart_of
from intents.consulting import OUTSIDE, consult
from intents.features import mentions, of_mentions, of_sentence
from intents.learned import NOTHING, Learned, learned
from intents.matcher import read, speller
from intents.phrases import compiled
from intents.question import Reading
from intents.second_reader import Second, read_again
from solvers.registry import load_topics
from tests.remarks import REMARKS
from tests.understanding import QUESTIONS, lines, load

TOPICS = {name: topic.parameters for name, topic in load_topics().items()}
# A model of two words: what stands left of "joint" is its width, of "deep" the depth, of "run" the length.
SEALANT = {
    "width": {"R:joint": 300},
    "depth": {"R:deep": 300},
    "length": {"R:run": 300},
    NOTHING: {"": -300},
}


def small(topics: dict[str, int], roles: dict[str, dict[str, int]] | None = None) -> Learned:
    """A model whose topics are as likely as their weights say, whatever is said."""
    return Learned(list(topics), list(topics.values()), {}, roles or {})


def again(text: str, topic: str, model: Learned) -> Second:
    found = read_again(chart_of(text, compiled(), speller()), compiled(), model, topic, TOPICS[topic], None)
    assert found is not None
    return found


def consulted(text: str, model: Learned) -> Reading:
    reading = read(text, TOPICS, seconds=False)
    consult(reading, chart_of(text, compiled(), speller()), compiled(), TOPICS, model)
    return reading


@given(st.lists(st.sampled_from(sorted(learned().words) if learned() else []), max_size=12))  # type: ignore[union-attr]
def test_what_is_likely_adds_up_to_one(features: list[str]) -> None:
    model = learned()
    assert model is not None
    shares = model.likely(features)
    assert sum(shares.values()) == pytest.approx(1)
    assert min(shares.values()) >= 0


def test_every_label_is_a_topic_or_talk() -> None:
    model = learned()
    assert model is not None
    assert set(model.topics) <= {*TOPICS, *acts.load(), OUTSIDE}
    in_sums = {*second_sums.SIGNED, *second_sums.COUNTING, second_sums.HALF}  # what a length or number does in a sum
    for name in model.roles:
        topic, _, parameter = name.rpartition(".")
        if parameter in in_sums and topic in ("", second_sums.TOPIC):
            continue
        assert parameter == NOTHING or any(parameter == p.name for p in TOPICS.get(topic, sum(TOPICS.values(), ())))


def test_topics_of_sentences_that_were_never_learned() -> None:
    """The sets kept aside: at least 95 in 100 of their lines are named rightly by the words alone."""
    model = learned()
    assert model is not None
    known = [(lines(c)[0], c["topic"]) for cases in load(QUESTIONS / "aside").values() for c in cases
             if c.get("topic") in TOPICS and len(lines(c)) == 1]  # fmt: skip
    right = 0
    for text, topic in known:
        likely = model.likely(of_sentence(chart_of(text, compiled(), speller()), compiled()))
        right += max(likely, key=lambda name: likely[name]) == topic
    assert right >= 0.95 * len(known) > 500


@pytest.mark.parametrize("order", list(permutations(range(3))))
def test_the_words_beside_a_quantity_tell_its_role(order: tuple[int, ...]) -> None:
    parts = ["1/2 inch joint", "3/8 inch deep", "40 ft run"]
    question = again(", ".join(parts[n] for n in order), "sealant", small({"sealant": 0}, SEALANT)).question
    texts = {name: heard.text for name, heard in question.givens.items()}
    assert texts == {"width": "1/2 inch", "depth": "3/8 inch", "length": "40 ft"}
    assert not (question.missing or question.unplaced or question.swaps)


def test_two_quantities_never_share_a_role() -> None:
    question = again("tubes: 1/2 inch joint, 3/8 inch joint, 40 ft run", "sealant", small({"sealant": 0}, SEALANT)).question
    assert len({id(heard) for heard in question.givens.values()}) == len(question.givens) == 3


def test_roles_that_could_be_changed_are_kept_as_another_way() -> None:
    found = again("slope for 7 feet and 9 feet", "pitch from rise and run", small({"pitch from rise and run": 0}))
    first, *others = [{name: heard.text for name, heard in way.items()} for way in (found.question.givens, *found.question.swaps)]
    assert {*first.values()} == {"7 feet", "9 feet"}
    assert {name: first[other] for name, other in (("rise", "run"), ("run", "rise"))} in others
    assert found.sure < 0.5


def test_sizes_of_layers_are_gathered_wherever_they_stand() -> None:
    model = small(
        {"fastener length": 0},
        {"layers": {"R:<sheathing": 400, "R:foam": 400, "R:cladding": 400}, "penetration": {"R:stud": 500}},
    )
    text = "an inch and a half of foam because he wanted it, then there's 3/4 inch cladding, and 1 1/4 inch into the stud"
    layers = again(text, "fastener length", model).question.givens["layers"].value
    assert [(str(float(layer.thickness.value)), layer.what) for layer in layers] == [("1.5", "foam"), ("0.75", "cladding")]


def test_a_quantity_with_a_unit_is_never_let_fall() -> None:
    model = small({"ladder footing": 0}, {NOTHING: {"": 900}})
    assert again("ladder for 16 feet", "ladder footing", model).question.unplaced == ["16 feet"]


@pytest.mark.parametrize("remark", REMARKS)
def test_a_remark_does_not_change_the_answer(remark: str) -> None:
    """What stands beside a question is let be or asked about; it is never taken for one of its quantities."""
    plain, beside = (
        read(text, TOPICS).questions
        for text in ("gable height, 24 ft wide at 6/12", f"gable height, 24 ft wide at 6/12, {remark}")
    )
    values = {name: heard.value for name, heard in plain[0].givens.items()}
    for question in beside:
        if question.topic == plain[0].topic and not question.unplaced and not question.missing:
            assert {name: heard.value for name, heard in question.givens.items()} == values
    assert beside and beside[0].topic == plain[0].topic


def test_a_rule_that_fits_stays_where_the_second_reader_is_in_doubt() -> None:
    reading = consulted("plumb cut for 5/12", small({"plumb cut": 0, "roof angle": 100}))
    assert [question.topic for question in reading.questions][:1] == ["plumb cut"]


def test_no_rule_and_no_likely_topic_is_no_question() -> None:
    likely = small(dict.fromkeys((*TOPICS, OUTSIDE), 0))
    assert consulted("blue skies over the ramp today", likely).questions == []


def test_what_is_likely_another_trades_is_no_question() -> None:
    reading = consulted("rake return of the beam", small({"rake return": 0, OUTSIDE: 500}))
    assert reading.questions == []


def test_a_topic_the_model_never_saw_is_left_to_its_grammar() -> None:
    reading = consulted("plumb cut for 5/12", small({"roof angle": 900}))
    assert reading.questions[0].topic == "plumb cut"


def test_no_number_is_learned_by_heart() -> None:
    a, b = (chart_of(text, compiled(), speller()) for text in ("rake on a 24 ft gable at 6/12", "rake on a 26 ft gable at 7/12"))
    assert of_sentence(a, compiled()) == of_sentence(b, compiled())
    one, other = (of_mentions(chart, mentions(chart)) for chart in (a, b))
    assert [[f for f in features if not f.startswith("size")] for features in one] == [
        [f for f in features if not f.startswith("size")] for features in other
    ]
