"""How much wood moves across the grain with moisture: USDA Wood Handbook, tables 13-5 and 4-3.

A row holds the dimensional change coefficients per percent of moisture, radial (vertical grain) and tangential (flat
grain), and the shrinkage from green to oven-dry they were derived from, in percent. Rows marked from memory were
reproduced from table 4-3 by the handbook's own relation (see `derived`).
"""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction

from solvers.slots import Choice

TABLE = "USDA Wood Handbook, table 13-5"
FROM_MEMORY = f"{TABLE} (from memory, reproduced from the shrinkage of table 4-3)"


class Species(Choice):
    """The wood."""

    WESTERN_RED_CEDAR = "western red cedar"
    YELLOW_CEDAR = "yellow cedar"
    INCENSE_CEDAR = "incense cedar"
    DOUGLAS_FIR = "Douglas-fir"
    REDWOOD = "redwood"
    BALSAM_FIR = "balsam fir"
    WHITE_FIR = "white fir"
    WHITE_PINE = "eastern white pine"
    SITKA_SPRUCE = "Sitka spruce"
    HEMLOCK = "western hemlock"
    LARCH = "western larch"
    CYPRESS = "baldcypress"
    RED_ALDER = "red alder"
    BEECH = "American beech"
    CHERRY = "black cherry"
    MAPLE = "sugar maple"
    WHITE_OAK = "white oak"
    RED_OAK = "red oak"
    WALNUT = "black walnut"
    POPLAR = "yellow-poplar"
    PONDEROSA_PINE = "ponderosa pine"
    LODGEPOLE_PINE = "lodgepole pine"
    LOBLOLLY_PINE = "loblolly pine"
    ASPEN = "quaking aspen"
    YELLOW_BIRCH = "yellow birch"
    PAPER_BIRCH = "paper birch"
    WHITE_ASH = "white ash"
    BASSWOOD = "American basswood"
    ELM = "American elm"


@dataclass(frozen=True, slots=True)
class Movement:
    """One species: change per inch of width and percent of moisture; shrinkage None where the row is of a group."""

    radial: Fraction
    tangential: Fraction
    shrinkage: tuple[Fraction, Fraction] | None = None
    saturation: int = 30  # percent of moisture over which wood no longer moves; 22 for some cedars and redwood
    source: str = TABLE


def _row(radial: str, tangential: str, shrinkage: str = "", saturation: int = 30, source: str = TABLE) -> Movement:
    pair = tuple(Fraction(value) for value in shrinkage.split())
    return Movement(Fraction(radial), Fraction(tangential), (pair[0], pair[1]) if pair else None, saturation, source)


MOVEMENT: dict[Species, Movement] = {
    Species.WESTERN_RED_CEDAR: _row(".00111", ".00234", "2.4 5.0", 22, FROM_MEMORY),
    Species.YELLOW_CEDAR: _row(".00095", ".00208", "2.8 6.0", source=FROM_MEMORY),
    Species.INCENSE_CEDAR: _row(".00112", ".00180", "3.3 5.2", source=FROM_MEMORY),
    Species.DOUGLAS_FIR: _row(".00165", ".00267", "4.8 7.6", source=FROM_MEMORY),
    Species.REDWOOD: _row(".00120", ".00205", "2.6 4.4", 22, FROM_MEMORY),
    Species.BALSAM_FIR: _row(".00099", ".00241", "2.9 6.9", source=FROM_MEMORY),
    Species.WHITE_FIR: _row(".00112", ".00245", "3.3 7.0", source=FROM_MEMORY),
    Species.WHITE_PINE: _row(".00071", ".00212", "2.1 6.1", source=FROM_MEMORY),
    Species.SITKA_SPRUCE: _row(".00148", ".00263", "4.3 7.5", source=FROM_MEMORY),
    Species.HEMLOCK: _row(".00144", ".00274", "4.2 7.8", source=FROM_MEMORY),
    Species.LARCH: _row(".00155", ".00323", "4.5 9.1", source=FROM_MEMORY),
    Species.CYPRESS: _row(".00130", ".00216", "3.8 6.2", source=FROM_MEMORY),
    Species.RED_ALDER: _row(".00151", ".00256", "4.4 7.3"),
    Species.BEECH: _row(".00190", ".00431", "5.5 11.9"),
    Species.CHERRY: _row(".00126", ".00248", "3.7 7.1"),
    Species.MAPLE: _row(".00165", ".00353"),
    Species.WHITE_OAK: _row(".00180", ".00365"),
    Species.RED_OAK: _row(".00158", ".00369"),
    Species.WALNUT: _row(".00190", ".00274"),
    Species.POPLAR: _row(".00158", ".00289", "4.6 8.2", source=FROM_MEMORY),
    Species.PONDEROSA_PINE: _row(".00133", ".00216", "3.9 6.2", source=FROM_MEMORY),
    Species.LODGEPOLE_PINE: _row(".00148", ".00234", "4.3 6.7", source=FROM_MEMORY),
    Species.LOBLOLLY_PINE: _row(".00165", ".00259", "4.8 7.4", source=FROM_MEMORY),
    Species.ASPEN: _row(".00119", ".00234", "3.5 6.7", source=FROM_MEMORY),
    Species.YELLOW_BIRCH: _row(".00256", ".00338", "7.3 9.5", source=FROM_MEMORY),
    Species.PAPER_BIRCH: _row(".00219", ".00304", "6.3 8.6", source=FROM_MEMORY),
    Species.WHITE_ASH: _row(".00169", ".00274", "4.9 7.8", source=FROM_MEMORY),
    Species.BASSWOOD: _row(".00230", ".00330", "6.6 9.3", source=FROM_MEMORY),
    Species.ELM: _row(".00144", ".00338", "4.2 9.5", source=FROM_MEMORY),
}


def derived(shrinkage: Fraction, saturation: int) -> Fraction:
    """The coefficient that table 13-5 draws from a shrinkage of table 4-3 (percent, green to oven-dry)."""
    share = shrinkage / 100
    return (share / saturation) / (1 - share * (saturation - 10) / saturation)
