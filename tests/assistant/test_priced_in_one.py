"""What is needed and the price of each told in one line, and the tax with it."""

from __future__ import annotations

import pytest

from tests.talking import last, records


@pytest.mark.parametrize(
    ("line", "money"),
    [
        ("22 by 9 wall, 7 exposure, 16 ft boards, 10 percent, 24.50 a board, cost?", 588),
        ("I need 130 feet of trim from 12 foot sticks at 9.75 each, what will I pay?", 107.25),
        ("what would the boards cost for a 32 by 9 wall, 6 inch reveal, 12 footers at fourteen dollars a board", 742),
        ("how much for soffit panels, 44 foot run, 16 deep, 12 inch cover, 18.75 a panel", 825),
        ("45 boards at 12.50 each, what's that cost", 562.5),
        ("30 foot wall 9 high strapping every 16, 12 foot stock, what does it cost at 4.20 a stick", 100.8),
    ],
)
def test_what_is_needed_is_counted_and_then_priced(line: str, money: float) -> None:
    record = last(line)
    assert (record["topic"], record["answer"]["value"], record["heard"]) == ("cost", money, line)


def test_the_count_stands_beside_what_it_costs() -> None:
    counts = [
        also
        for also in last("60 foot of joint 1/4 by 3/8, tubes are 8.50 each, what's it cost")["also"]
        if also["name"] == "tubes"
    ]
    assert [count["value"] for count in counts] == [4]


def test_what_is_lacking_is_asked_and_the_price_is_kept() -> None:
    asked, told = records("boards for a 32 by 9 wall at 14 each in 12 footers, how much", "6 inch reveal")
    assert (asked["outcome"], asked["topic"], told["answer"]["value"]) == ("asks", "cladding boards", 742)


@pytest.mark.parametrize(
    ("line", "money", "tax"),
    [
        ("42 boards at 18.50 each plus 13 percent tax, what does it come to", 878.01, 101.01),
        ("310 feet of batten at 1.85 a foot and 20 percent vat, total", 688.2, 114.7),
        ("45 boards at 12.50, tax is 8.25 percent, total", 608.90625, 46.40625),
    ],
)
def test_tax_that_is_told_is_put_on(line: str, money: float, tax: float) -> None:
    record = last(line)
    beside = {also["name"]: also["value"] for also in record["also"]}
    assert record["answer"]["value"] == pytest.approx(money)
    assert beside["tax"] == pytest.approx(tax)


def test_without_tax_it_says_so() -> None:
    record = last("cost of 45 boards at $12.50 each before tax")
    assert record["answer"]["value"] == 562.5
    assert any("No tax" in caution for caution in record["cautions"])


@pytest.mark.parametrize(
    ("line", "money"),
    [
        ("1200 square feet at 3.15 plus 10 percent waste, what do I pay", 4158),
        ("42 boards plus 10 percent waste at 18.50 each, cost", 869.5),  # 46.2 boards are 47
        ("310 feet of batten at 1.85 a foot with 5 percent waste and 20 percent vat, total", 722.61),
        ("20 squares, 34.50 a bundle, 3 to a square, cost", 2070),
    ],
)
def test_waste_and_bundles_that_are_told_are_paid_for(line: str, money: float) -> None:
    assert last(line)["answer"]["value"] == pytest.approx(money)


def test_a_tax_is_no_waste() -> None:
    assert last("what do 12 boxes at 39.95 cost with the tax, 13 percent")["answer"]["value"] == pytest.approx(541.722)
