"""What a line may do with the answer before it, tried in this order before it is read as a change."""

from __future__ import annotations

from assistant.added_to_it import added_to_it
from assistant.asked_next import pitch_of_degrees
from assistant.back_and_change import back_and_change
from assistant.both_together import both_together
from assistant.by_own_name import by_own_name
from assistant.disputed import disputed
from assistant.end_told import end_told
from assistant.goes_on import goes_on
from assistant.going_back import goes_back
from assistant.gone_from_it import gone_from_it
from assistant.legs_told import leg_more_or_less
from assistant.other_leg import what_stays
from assistant.priced_in_one import priced_in_one
from assistant.said_to_be import said_to_be
from assistant.several import so_many
from assistant.share_of_last import share_told
from assistant.shown import of_the_shown
from assistant.still_to_get import sticks_for_so_many, still_to_get, with_spare

TAKEN_FIRST = (
    goes_back, said_to_be, leg_more_or_less, end_told, by_own_name, share_told, what_stays, priced_in_one, of_the_shown,
    both_together, still_to_get, sticks_for_so_many, with_spare,
    disputed, added_to_it, so_many, back_and_change, gone_from_it, pitch_of_degrees, goes_on,
)  # fmt: skip
