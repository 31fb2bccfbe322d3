"""Which material is meant, and which way a piece moves."""

from __future__ import annotations

import pytest

from tests.talking import last


@pytest.mark.parametrize(
    ("said", "material"),
    [
        ("zinc? no, aluminium drip edge, 2.5 m, 30 C hotter, movement in mm", "aluminium"),
        ("It's vinyl not aluminum, 12 ft, 60 F rise, growth", "vinyl"),
        ("steel posts and PVC fascia 16 ft 60 F rise growth of the fascia", "PVC trim"),
        ("PVC trim screwed to aluminium channel, 12 ft, 60 F rise, how much does the channel grow", "aluminium"),
        ("the old one was steel but this one's copper, 10 ft, 70 F up, how much longer", "copper"),
        ("aluminum fascia over pine sub-fascia 12 ft, 60 F up, growth?", "aluminium"),
        ("vinyl siding on a wood frame, 12 ft, 60 F rise", "vinyl"),
        ("flat sawn white oak, no sorry red oak, 5 in wide, 12 to 7 percent, shrink?", "red oak"),
    ],
)
def test_one_material_is_meant(said: str, material: str) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"]
    assert material in [given["text"] for given in record["givens"]]


def test_of_two_that_are_meant_it_is_asked_which() -> None:
    record = last("vinyl or aluminium, 12 ft, 60 F, which grows more")
    assert record["outcome"] == "asks"
    assert "vinyl or aluminium" in record["ask"]


def test_a_slip_of_another_word_is_no_material() -> None:
    assert last("fore pvc siding twelve foot six long its thirty five fahrenheit now hottest one hundred coldest minus twenty"
                " what gap do i leaf at the end")["outcome"] == "answered"  # fmt: skip


@pytest.mark.parametrize(
    ("said", "grows"),
    [
        ("Sixteen foot PVC board goes up warm then it drops sixty degrees fahrenheit by January. What does it lose?", False),
        ("aluminium 3 m, cools forty C overnight, how much", False),
        ("copper 30 ft falls from 90 F by 60 F, how much", False),
        ("Copper apron 4 m long, 5 °C at dawn and 60 °C by mid afternoon, how much does it lengthen?", True),
        ("steel 6 m, 40 C by day and 5 C at night, how much does it shorten overnight", False),
        ("10 ft of aluminum installed at 90 F, how much shorter at 0 F", False),
        ("10 ft of aluminum at 0 F installed, how much longer at 90 F", True),
        ("PVC 16 ft, 40 F warmer than when I cut it, is it shorter or longer and how much", True),
        ("20 foot steel, 100 F swing", True),
        ("how much does 12 ft of pvc shrink between 5 C and 60 C", False),
        ("how much does 12 ft of pvc lengthen between 60 C and 5 C", True),
        ("PVC trim 12 ft black, 150 F in sun, 60 F now", True),
        ("PVC trim 12 ft, warmer by 40 F, move?", True),
    ],
)
def test_which_way_it_goes(said: str, grows: bool) -> None:
    record = last(said)
    assert record["outcome"] == "answered", record["ask"]
    assert (record["answer"]["value"] > 0) == grows


def test_what_it_warms_from_and_to_is_not_called_cooling() -> None:
    record = last("how much shorter is 12 ft pvc after it warms from 20 F to 80 F")
    assert record["answer"]["value"] > 0 and "cooling" not in [given["text"] for given in record["givens"]]


def test_both_temperatures_are_taken() -> None:
    record = last("PVC, 18 ft, put up at 45 F; what does it do by 105 F")
    assert {given["name"] for given in record["givens"]} >= {"temperature before", "temperature after"}
