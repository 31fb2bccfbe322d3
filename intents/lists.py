"""Quantities said in a row: pieces ("six at 48 and 3 at 30 1/2"), openings ("two windows 3 by 4"), layers, lengths."""

from __future__ import annotations

from collections.abc import Iterable, Iterator

from intents.listed import Listing
from intents.listed_buildings import building
from intents.listed_faces import faces_told
from intents.listed_layers import layers
from intents.listed_lengths import lengths
from intents.listed_money import prices
from intents.listed_openings import openings
from intents.listed_pieces import pieces
from intents.listed_rounds import faces, rounds
from intents.listed_stocks import nothings, stocks
from intents.listed_totals import totals
from intents.measures import readings
from intents.of_other_things import asked_wall
from intents.reading import Reading
from intents.sound_alikes import settled
from intents.tokens import tokenize
from solvers.slots import Layer

READERS = {"pieces": pieces, "openings": openings, "layers": layers, "lengths": lengths, "stocks": stocks}  # by what they read
KINDS = frozenset(READERS)


def lists(listing: Listing, kinds: Iterable[str] = KINDS) -> Iterator[Reading]:
    """Readings of these kinds."""
    for kind, read in READERS.items():
        if kind in kinds:
            yield from read(listing)


def totals_and_prices(listing: Listing) -> Iterator[Reading]:
    """Readings of kind runs and areas, added up or said of each; noughts said as "no"; prices.

    Nothing is added up where one wall of several is asked about by name.
    """
    added = () if asked_wall(listing.words) else (totals, rounds, faces, faces_told, building)
    for read in (nothings, prices, *added):
        yield from read(listing)


def layers_in(text: str) -> tuple[Layer, ...]:
    """The layers a line tells, where it tells no other quantity; else none."""
    tokens = settled(tokenize(text)).tokens
    chart = readings(tokens)
    said = max(layers(Listing(tokens, chart)), key=lambda reading: reading.end - reading.start, default=None)
    outside = said is None or any(row and not said.start <= i < said.end for i, row in enumerate(chart))
    return () if outside or said is None else said.value  # type: ignore[return-value]
