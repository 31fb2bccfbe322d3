"""Work that is an engineer's or a licensed trade's: declined, with whom to ask."""

from __future__ import annotations

from assistant.acts import Talk, act
from assistant.record import put_declined

TAIL = "what holds is your local code, and {who} is the one to ask. Lay-out, cuts, cladding and flashing I can work out"
WHOM = {
    "structure": ("Sizing what carries load (beams, joists, headers, posts, footings) is not for me to work out",
                  "an engineer or your building department"),
    "electric": ("Electrical work is not for me to work out", "a licensed electrician"),
    "gas": ("Gas work is not for me to work out", "a licensed gas fitter"),
    "plumbing": ("Plumbing is not for me to size", "a licensed plumber"),
    "fall": ("How people are held and kept from falling is not for me to design", "someone trained in fall protection"),
}  # fmt: skip


@act("outside", "outside")
def outside(talk: Talk) -> None:
    """Decline what only a licensed practitioner should work out."""
    refusal, who = WHOM[talk.said.words["who"]]
    put_declined(talk.record, f"{refusal}: {TAIL.format(who=who)}")
