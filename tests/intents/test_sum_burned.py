"""What a tape says that was held at a mark of it, and the average of several readings."""

from __future__ import annotations

import pytest

from tests.talking import last

BURNED = (
    ("burned an inch, tape says 33 and 5/16", 32.3125),
    ("burned an inch tape sez 41 3/4 real?", 40.75),
    ("I burned an inch and read 33 5/16", 32.3125),
    ("tape says 33 5/16 but I burned an inch", 32.3125),
    ("33 5/16 burning one", 32.3125),
    ("held the tape on the one inch mark and it reads 33 and 5/16", 32.3125),
    ("started at the 10 in mark and it reads 47 1/4", 37.25),
    ("33 5/16 on the tape and I was on the inch", 32.3125),
    ("I burned the first inch, it says 7 foot 4 and a half", 87.5),
    ("I'm burning a foot, the tape says 9 foot 3, what is it", 99),
    ("burn 100 mm, tape reads 1345", 1245 / 25.4),
    ("burnt ten centimetres, tape says 1245, what's the real length", 1145 / 25.4),
    ("I need 33 5/16 and I'm burning an inch, what do I mark", 34.3125),
)
AVERAGES = (
    ("I measured it three times, 118 and 5/8 the first, 118 and 9/16 the second and 118 and 3/4 the third, what's the average of"
     " those", 118.645833333),
    ("average 118 5/8, 118 9/16 and 118 3/4", 118.645833333),
    ("what's the mean of 34 1/2 and 34 5/8", 34.5625),
    ("got 31 3/8, 31 1/2 and 31 5/16, average?", 31.395833333),
    ("average the two, 40 1/4 and 40 5/8", 40.4375),
    ("average of all three 31 1/4, 31 3/8, 31 1/2", 31.375),
    ("width at the top is 34 1/2, middle 34 5/8 and bottom 34 3/4, what's the average width", 34.625),
    ("average of 1245, 1248 and 1250 mm", 1247.666666667 / 25.4),
)  # fmt: skip


@pytest.mark.parametrize(("line", "value"), (*BURNED, *AVERAGES))
def test_it_comes_to(line: str, value: float) -> None:
    record = last(line)
    assert (record["outcome"], record["topic"]) == ("answered", "tape arithmetic")
    assert record["answer"]["value"] / (25.4 if record["answer"]["unit"] == "mm" else 1) == pytest.approx(value, abs=1e-6)


@pytest.mark.parametrize(
    "line",
    [
        "burned an inch",  # and what did it say?
        "average of 3, 4 and 5",
        "average rainfall is 40 inches, will the gutter 5 inch wide 4 deep and 30 foot hold it",
    ],
)
def test_what_tells_no_sum_is_none(line: str) -> None:
    assert last(line)["outcome"] in ("asks", "declined")


def test_what_is_so_on_average_is_as_it_is_told() -> None:
    record = last("the average opening here is 36 1/2 and the trim's 3 1/2 each side, whats the overall")
    assert record["answer"]["value"] == pytest.approx(43.5)
