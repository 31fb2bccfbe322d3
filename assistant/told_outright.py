"""What reads the words of a change whole, one reader after another: the first that knows the line tells what it changes.

A reader takes the change and the question before it, and gives that question with the givens it tells; none where it is no
such line. Lines that no reader knows are read against the topic word by word (`changes`).
"""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from assistant import two_sizes
from assistant.choice_told import choice_told
from assistant.lap_told import lap_told
from assistant.layer_changes import for_old, in_there
from assistant.nth_one import nth_of_list, nth_of_sum
from assistant.of_its_noun import of_its_noun
from assistant.of_them import of_them
from assistant.opening_sized import side_told
from assistant.pieces_added import leg_changed
from assistant.pieces_changed import openings_counted, piece_changed
from assistant.rather_than import rather_than
from assistant.ratio_told import ratio_told
from assistant.sheets_changed import sheets_changed
from assistant.should_be import in_a_row
from assistant.sweats_at import air_told, sweats_at
from assistant.units_kept import unit_only
from assistant.words_after import by_words_after

if TYPE_CHECKING:
    from assistant.meant_for import Wanted
    from assistant.pending import Asked
    from intents.question import Question

READERS: tuple[Callable[[Wanted, Asked], list[Question]], ...] = (
    nth_of_sum,  # the second one's 9 7/8
    nth_of_list,  # make the last leg an inch and three eighths
    unit_only,  # in metres, of numbers that had no unit
    air_told,  # it's only 12 degrees in there
    sweats_at,  # would it sweat at 9
    lap_told,  # lap of an inch and a half
    two_sizes.again,  # the other wall is 24 by 9
    leg_changed,  # make the 150 180, of a bent flashing
    piece_changed,  # the 41s are 43
    choice_told,  # flat grain
    ratio_told,  # inspector wants 1/150
    rather_than,  # the strap is 1 1/2, not 3/4
    in_there,  # with 60 insulation in there
    for_old,  # 25 foam, not 50
    in_a_row,  # 30, 35 and 40, of as many that were told
    side_told,  # the door is two metres high
    of_them,  # make it six of them
    of_its_noun,  # seventy skirting
    by_words_after,  # it's 1795 between newels
    openings_counted,  # three windows
    sheets_changed,  # 4 by 9 sheets
)


def told_outright(wanted: Wanted, last: Asked) -> list[Question]:
    """What the first reader that knows the line makes of it; none where none does."""
    return next(filter(None, (reader(wanted, last) for reader in READERS)), [])
