"""Words as they are texted without their vowels: shts, rftr, trm, bhnd, mrk.

Each is one word's and no other's: those that two of these words come to stay as they are. Words as common that come to the
same letters keep one off the list (steel and still; drop and drip), and numbers are never guessed so.
"""

from __future__ import annotations

import re

WORDS = (
    "rafter rafters ridge pitch fascia soffit siding trim casing window door sheet sheets osb batten battens joist joists "
    "bracket brackets piece pieces girth miter mitre bevel angle square squares rounded return many much from with what long "
    "wide high deep area circle circumference diameter radius sealant tubes rolls width length height spacing equal layout "
    "depth thick plywood foam insulation drywall slope metal screws boxes nails waste courses shingles wrap membrane roof "
    "gables valley peak joint gaps level wall walls board boards panels face stud studs between around total need "
    # what is told of them
    "behind along through down below beside left right back flat vertical middle outer tight short longer bigger small best "
    "worst next second third fourth both double single either that them and sawn sloped pitched curved lapped rated turned "
    "taped spaced pulled measured included vented ventilated rigid common wrong "
    # what is done with them
    "mark start starts stand going comes coming gets putting setting settings cutting counting turning bending lapping leaving "
    "pulling framing reading change check match reach turn turns touch touches shift shrink shrinks grow balance convert notch "
    "meets sits told show lap laps "
    # things, stuff and amounts
    "diagonal triangle hypotenuse degree degrees metres litres centimetres pounds cents dollars minus point count price times "
    "ladder ladders deck decking attic porch frieze mesh furring strapping cedar copper cement glass brick lumber moulding "
    "drain drainage water moisture ground building column ledge cheek reveal eaves slopes legs bays spans section coverage "
    "bundle bundles block blocks bag bags stick sticks clip clips shim shims slider header headers riser risers tread treads "
    "blank embedment grade finish scale spread faces parts part place spaces space screen breaker heater winter summer "
    "tomorrow caulk sausages truck nothing crown crowns sides jacks span skirting fence splashback pillar lanyard "
    "furnace anchor"
).split()
_UNSAID = frozenset(  # with, worth; waste, west; metres, miters; steep, step: told by others, or by none
    "wth wst lvl lng and sts gts stnd chk shft pnt brk chs cms frz cnt cnts stck stcks mtrs lft lgs mts".split()
)
# Of two letters there is one that is texted so.
_OF_TWO = {"rk": "rake", "rks": "rakes", "bm": "beam", "sz": "size", "fm": "foam", "hs": "house", "nl": "nail", "mk": "make"}
_ALIKE = {"miter": "mitre"}
_CK = re.compile("ck(?=s?$)")


def without_vowels(taken: frozenset[str]) -> dict[str, str]:
    """Whole words by what is left of them without the vowels after their first letter, where that is one word's and none of
    those `taken`; a double letter may be one, and ck a k."""
    found: dict[str, set[str]] = {}
    for word in WORDS:
        short = word[0] + "".join(letter for letter in word[1:] if letter not in "aeiou")
        single = re.sub(r"(.)\1", r"\1", short)
        for each in {short, single, _CK.sub("k", short)} - {word}:
            found.setdefault(each, set()).add(_ALIKE.get(word, word))
    one = {short: next(iter(words)) for short, words in found.items() if len(words) == 1 and len(short) > 2}
    spelled = {short: "miter" if word == "mitre" else word for short, word in one.items()}
    return {short: word for short, word in (_OF_TWO | spelled).items() if short not in _UNSAID | taken}
