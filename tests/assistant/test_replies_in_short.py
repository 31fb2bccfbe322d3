"""Questions asked by a name and answered in single numbers: what is in doubt stays so, and no reply is a sum."""

import pytest

from solvers.registry import load_topics
from tests.talking import last


@pytest.mark.parametrize("name", ["wood movement", "sealant", "fasteners", "arc", "squares"])
def test_a_topic_is_asked_by_its_name(name: str) -> None:
    record = last(name)
    assert name in load_topics()
    assert (record["outcome"], record["topic"]) == ("asks", name)


def test_degrees_of_no_scale_are_asked_about_once_all_is_told() -> None:
    assert "20 °F or 20 °C" in last("dew point", "20", "50")["ask"]
    assert "2 °F and the dew point 1 °F" in last("frost tonight", "2", "1")["ask"]
    record = last("dew point", "20", "50", "C")
    assert record["answer"]["unit"] == "degC"
    assert record["answer"]["value"] == pytest.approx(9.27, abs=0.05)  # Magnus, as in tests/published


@pytest.mark.parametrize("coldest", ["-10", "minus 10", "10 below"])
def test_a_number_under_nothing_is_a_temperature(coldest: str) -> None:
    record = last("end gap for 12 ft vinyl at 40 F", "120", coldest)
    assert record["topic"] == "end gap"
    assert record["outcome"] == "answered"


def test_the_rule_of_a_vent_is_what_it_is_one_of() -> None:
    assert last("attic vent 1500 sq ft", "300")["answer"]["value"] == 720
    assert last("attic vent 1500 sq ft", "150")["answer"]["value"] == 1440
    assert last("vent area", "1200")["outcome"] == "asks"  # no 1/1200


@pytest.mark.parametrize("nod", ["in metric", "ok"])
def test_what_tells_no_two_ways_apart_is_asked_again(nod: str) -> None:
    assert last("24 by 30 diagonal", nod)["outcome"] == "asks"
    assert last("24 by 30 diagonal", nod, "feet")["answer"]["value"] == pytest.approx(461.0, abs=0.1)  # √(24² + 30²) ft


def test_another_piece_leaves_the_doubt() -> None:
    assert last("fasteners 14 courses 36 foot at 16", "24", "boxes of 250")["outcome"] == "asks"


@pytest.mark.parametrize(
    ("lines", "value"),
    [
        (("trim for 46 feet of 12 footers", "10 percent waste", "16 footers"), 4),  # 50.6 / 16
        (("strapping on a 36 foot wall 9 high at 16", "from 12 footers"), 28),
        (("wall 40 by 9 area", "less a 3 by 7 door"), 339),
        (("wall 40 by 9 area", "less a 3 by 7 door", "less two windows 2'6 by 4"), 319),
        (("exposure is 6", "actually 6 1/2", "courses in 108"), 108 / 17),
        (("5/12 angle", "as a percent", "angle of 8/12"), 33.69),
        (("5/12 angle", "what pitch is 30 degrees"), 6.928),
        (("stud spacing 600", "marks along 4.8 m"), 9),
    ],
)
def test_what_is_said_next(lines: tuple[str, ...], value: float) -> None:
    assert last(*lines)["answer"]["value"] == pytest.approx(value, abs=0.005)


def test_a_size_across_is_no_number_of_sides() -> None:
    assert last("octagon", "24 across")["outcome"] != "answered"


def test_a_kept_kerf_is_read_as_it_was_said() -> None:
    assert "kerf is 3/32 inch" in last("kerf's 3/32", "cut list 12 foot stock, 3 at 4 foot")["say"]


@pytest.mark.parametrize("word", ["ok", "okay then", "gotcha"])
def test_a_nod_is_no_question(word: str) -> None:
    assert last(word)["topic"] == "greeting"
