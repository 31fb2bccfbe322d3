"""What is another's to say: declined, with whom to ask where that is an engineer or a licensed trade."""

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
NOT_MINE = {
    "time": "How long things take is not for me to work out",
    "law": "What is allowed is not for me to say, but for your local code and its inspector",
    "product": "Which product to use is not for me to say: its maker's sheet is the place to look",
    "method": "How that is best done is not for me to say: the maker's instructions are the place to look",
    "paint": "Paint is not for me to work out: the tin says how far it goes",
    "other": "That is not for me to work out",
    "fee": "What the trade charges and what money is worth are not for me to say",
    "heat": "Heating, fans and insulation are not for me to size",
    "opinion": "What to think of that is not for me to say",
    "mate": "That is not for me: it wants hands",
}  # fmt: skip


@act("outside", "outside")
def outside(talk: Talk) -> None:
    """Decline what only a licensed practitioner should work out, and what no topic gives."""
    kind = talk.said.words["who"]
    if kind in NOT_MINE:
        put_declined(talk.record, f"{NOT_MINE[kind]}. Lay-out, cuts, cladding and flashing I can work out")
        return
    refusal, who = WHOM[kind]
    put_declined(talk.record, f"{refusal}: {TAIL.format(who=who)}")
