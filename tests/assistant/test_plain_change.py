"""Changes that are told by somebody else, supposed, or no more than a noun and a size; and lines that tell of something else."""

from __future__ import annotations

import pytest

from tests.talking import last

OTHERS_SAY = [
    (["vent area for 1680 square feet", "one over three hundred", "inspector says one over one fifty"], 1612.8),
    (["vent area for 1500 square feet at 1/300", "inspector's making us go 1/150"], 1440),
    (["vent area for 1500 square feet at 1/300", "code here is 1/150"], 1440),
    (["soffit panels for 62 feet of eave 20 inches deep, 16 inch cover", "yard's only got the ones that cover twelve"], 62),
    (["right triangle, rise 850 mm, run 2.9 m, what angle", "architect's changed it, climbs 900 now"], 17.24),
    (["six at 34 inches and four at 27 1/2 from 12 footers", "and if all they carry is 8 footers?"], 4),
    (["six at 34 inches and four at 27 1/2 from 8 footers", "client wants nine of the 34s now, same four short ones"], 5),
    (["squares for 1450 sq ft, 10 percent waste", "gaffer reckons 15 percent"], 16.675),
    (["miter for a corner that reads 91", "tiler says it's nearer 89"], 45.5),
    (["rake length of a 28 foot gable at 6/12", "the wifes after a twelve inch overhang on it"], 201.25),
    (["jack rafters 7/12 at 16", "engineer's put em at 24"], 27.8),
    (["trim sticks 148 feet 16 foot sticks", "all they've got is 12s"], 13),
    (["equal spacing 9 balusters 1 1/2 wide in 72 inches, gaps at both ends", "inspector says 10 of em"], 5.18),
    (["how far is the hip, 7/12 common run 11 feet", "architect's dropped it to 5/12"], 194.6),
]
SUPPOSED = [
    (["what pitch rises 38 inches in 7 ft of run", "whats the pitch if it only climbs 35"], 5),
    (["end gap for 5 m PVC trim, 12 C now, hottest 40, coldest minus 5", "And suppose it was 20 the day we fix it?"], 6.75),
    (["right triangle rise 2.6 m run 3.1 m what angle", "planner says the run's got to be 3.4"], 37.4),
    (["course layout 109 inches, 7 3/8 at most", "just re-measured, wall's realy 8 foot 11 and a half, what exposure now"], 7.17),
    (["dew point at 19 C and 55 percent", "what if its twenty too degrees in there"], 12.5),
    (["square check 4.2 m by 3.1 m", "If I let the long side out to 4.25 m, what diagonal am I after?"], 5260.5),
]
A_NOUN_AND_A_SIZE = [
    (["14 ft PVC trim, 85 F swing, how much does it grow?", "18 ft pc"], 0.68),
    (["how many 460 mm lengths from a 4.8 metre batten, blade takes 3 mm", "and a 5.4?"], 11),
    (["balance boards on a wall 3.74 m wide, 190 mm cover", "with the boards that cover 165?"], 137.5),
    (["how many 31 1/2 pcs from a 12' stick", "from a 16 footer?"], 6),
    (["how many 31 1/2 pcs from a 12' stick", "from a 16 footer?", "24 3/4 pcs out of it"], 7),
    (["how many 31 inch pieces out of a 14 foot stick", "out of a 16?"], 6),
    (["fall of 1.8 m at 1.5 percent", "make it too percent"], 36),
    (["cost of 12 boards at 14.50", "15 boards"], 217.5),
]


@pytest.mark.parametrize(("lines", "value"), [*OTHERS_SAY, *SUPPOSED, *A_NOUN_AND_A_SIZE])
def test_the_plain_change_that_a_line_tells(lines: list[str], value: float) -> None:
    record = last(*lines)
    assert record["outcome"] == "answered", record["ask"] or record["say"]
    assert record["answer"]["value"] == pytest.approx(value, abs=0.05)


def test_what_is_changed_is_said_on_the_page() -> None:
    record = last("soffit panels for 62 feet of eave 20 inches deep, 16 inch cover", "yard's only got the ones that cover twelve")
    assert record["say"].startswith("With panel cover 12 inches.")


NO_CHANGE = [
    ["roof angle 6/12", "he wants 4 of them"],
    ["miter for 92 corner", "inspector comes at 10"],
    ["wall area 30 by 9", "boss has 2 trucks"],
    ["wall area 30 by 9", "client wants three windows"],
    ["boards for 700 sq ft 6 inch exposure 12 foot boards", "supplier has 40 in stock"],
    ["miter for 92 corner", "the lads want 3 coffees"],
    ["ladder footing for 18 feet", "the owner has a 24"],
    ["right triangle rise 6 run 8", "run 9", "slope 12 instead"],
    ["cost of 22 boards at 18.75 each", "yard's put them up to 19.50", "client only wants 20"],
    ["bent flashing legs 1, 3 1/2, 1 1/2", "add 4 legs"],
    ["bent flashing legs 1, 3 1/2, 1 1/2", "with a half inch kick on the bottom, and a hem"],
]


@pytest.mark.parametrize("lines", NO_CHANGE)
def test_what_tells_of_something_else_or_of_either_changes_nothing(lines: list[str]) -> None:
    assert last(*lines)["outcome"] != "answered"


def test_a_supposed_number_that_no_word_places_is_asked_about() -> None:
    record = last("what pitch rises 38 inches in 7 ft of run", "whats the pitch if it's 5/8")
    assert record["outcome"] == "asks"
