"""Numbers as recognised speech writes them: "ate foot for", "forty too", "ate teen", "three by for".

A recogniser hears the sound and writes the commoner word, so for is 4, to and too are 2, ate is 8, won is 1, and "two" or
"four" may be the small word. Which it is only the words beside it tell; here each is settled, once, before any number is
read. Where both can be meant the small word stays and the number goes to `doubts`: the conversation works the sentence
both ways, and asks where that makes a difference. Linear in the number of words.
"""

from __future__ import annotations

from enum import Enum
from itertools import pairwise
from typing import NamedTuple

from intents import sound_words as beside
from intents.number_words import ORDINALS, POINTS, SCALES, SMALL, TENS
from intents.sound_words import ADJECTIVES, ENDS, FEET, INCHES, JOINTS, PLURAL_UNITS, UNITS, WORTH, number_word, thing
from intents.tokens import Token, literal

_IT = frozenset("it that this".split())
_TIED = frozenset(("hundred", "thousand"))
_SAME = ({"foot", "feet", "ft", "'"}, {"inch", "inches", "in", '"'}, {"degree", "degrees", "deg"})
SHORTEST_NAME = 4  # letters of a thing that goes from one to another: corner to corner
_TEENS_END = frozenset(second for _, second in beside.TEENS)
_BEFORE, _AFTER = 2, 4  # empty words put round a line, so that no rule falls off its ends


class Means(Enum):
    """What a word that sounds like a number is; a rule that has nothing to say gives None."""

    NUMBER = "number"
    WORD = "word"
    EITHER = "either"


class Settled(NamedTuple):
    """The tokens with their numbers told from their small words; doubts are places in them, and what each may be."""

    tokens: list[Token]
    doubts: tuple[tuple[int, str], ...] = ()


def settled(tokens: list[Token]) -> Settled:
    """Every sound-alike of the line as the number or the word it was."""
    if beside.SOUNDS.isdisjoint([token.text for token in tokens]):
        return Settled(tokens)
    joined = _joined(tokens)
    line = _Sounds([token.text for token in joined])
    line.settle()
    heard = zip(joined, line.words[_BEFORE:-_AFTER], strict=True)
    same = [token if token.text == word else Token(word, token.start, token.end) for token, word in heard]
    return Settled(same, tuple(line.doubts))


def _joined(tokens: list[Token]) -> list[Token]:
    """Numbers that were written in two words put together: "ate teen", "for tea five"."""
    found: list[Token] = []
    texts = ["", "", *[token.text for token in tokens], "", ""]
    if _TEENS_END.isdisjoint(texts):
        return tokens
    for at, token in enumerate(tokens, start=2):
        whole = beside.TEENS.get((texts[at - 1], texts[at])) if found else None
        if whole and found[-1].text == texts[at - 1] and (texts[at] not in ("tea", "tee") or _no_drink(texts, at)):
            found[-1] = Token(whole, found[-1].start, token.end)
        else:
            found.append(token)
    return found


def _no_drink(texts: list[str], at: int) -> bool:
    """Whether "tea" at a place is the end of a number: nobody stops for it."""
    return not (texts[at - 2] in beside.DRINKERS and texts[at + 1] in (*ENDS, "at", "now")) and texts[at - 2] not in beside.EATERS


class _Sounds:
    """One line being settled from left to right, with empty words round it."""

    def __init__(self, words: list[str]) -> None:
        self.words = [*[""] * _BEFORE, *words, *[""] * _AFTER]
        self.doubts: list[tuple[int, str]] = []
        self.heard = False  # whether a small word of the line was a number
        self.converts = not beside.CONVERSION.isdisjoint(words)

    def settle(self) -> None:
        places = range(_BEFORE, len(self.words) - _AFTER)
        for at in places:  # these need no others, and others need them
            if self.words[at] in beside.OUTRIGHT:
                self.words[at] = self._outright(at)
        for at in places:
            word = self.words[at]
            if word in WORTH:
                self._settle_small(at, WORTH[word])
            elif word in ("two", "four") and self._unnumbered(at):
                self.words[at] = "to" if word == "two" else "for"
            elif word in ("an", "n") and self._joins(at):
                self.words[at] = "and"

    def _joins(self, at: int) -> bool:
        """Whether "an" or "n" is the and of a mixed number: nine an a half."""
        before, after, then = self.words[at - 1 : at] + self.words[at + 1 : at + 3]
        part = after in ("half", "quarter") or ((after == "a" or after in SMALL) and then in ORDINALS)
        return part and (number_word(before) or before in UNITS)

    def _settle_small(self, at: int, number: str) -> None:
        means = self._means(at)
        if means is Means.NUMBER:
            self.words[at], self.heard = number, True
        elif means is Means.EITHER:
            self.doubts.append((at - _BEFORE, number))
        elif self.words[at] == "too" and self.words[at - 1] in beside.MEASURES and self.words[at + 1] in UNITS:
            self.words[at] = "to"  # 1219 mm too inches

    def _outright(self, at: int) -> str:
        """What "ate", "won", "fore" and "tree" are: numbers, unless somebody eats or wins, or no inches of a tree follow."""
        word, before, after = self.words[at], self.words[at - 1], self.words[at + 1]
        aft = word == "fore" and self.words[at + 2] == "aft"
        if word == "tree" and after not in beside.PARTS | beside.PLURAL_UNITS:
            return word
        pitch = {after, self.words[at + 2]} & {"twelve", "12"} and after in ("in", "twelve", "12")  # she's ate in twelve
        if not pitch and (before in beside.EATERS or after in beside.EATEN or after in beside.DETERMINERS or aft):
            return word
        first = self.words[at - 2]
        odd = word == "ate" and before in ("three", "five", "seven") and first not in TENS and first != "hundred"
        of_inch = (first in ("and", "&") or first in beside.LAYERS) and after in INCHES  # seven and three ate inches
        of_inch = of_inch or first in beside.THIN  # a gap three ate
        return "eighths" if odd and (after in beside.LAYERS or of_inch) else beside.OUTRIGHT[word]  # three ate mesh

    def _means(self, at: int) -> Means:
        """What for, to or too at a place is, by the first rule that has something to say."""
        rules = (
            self._said_so, self._after_point, self._after_tens, self._after_hundreds, self._after_feet, self._before_scale,
            self._before_unit, self._before_pitch, self._before_things,
        )  # fmt: skip
        return next((means for rule in rules if (means := rule(at)) is not None), Means.WORD)

    def _said_so(self, at: int) -> Means | None:
        """What stands beside no number, or beside nothing else: "to the", "three by for", "for and a half", "too at eighty"."""
        words, word = self.words, self.words[at]
        before, after, following = words[at - 1], words[at + 1], words[at + 2]
        if after in beside.DETERMINERS:
            return Means.WORD
        if word != "for" and after in ("plus", "minus") and not {"from", "minus", "below"}.isdisjoint(words[:at]):
            return Means.WORD  # from minus thirty to plus forty five
        if word == "too" and before in ("ends", "sides") and after not in beside.SOUNDS:
            return Means.WORD  # gaps at both ends too
        if beside.surely(word, before, after, following, words[at + 3]):
            return Means.NUMBER
        if word == "too" and after in beside.TOO_WHAT:
            long = after in ADJECTIVES and (before in TENS or before in FEET)
            return Means.EITHER if long else Means.WORD
        counted = after == "times" and number_word(following)
        joined = after in JOINTS and (number_word(following) or following in beside.SOUNDS)
        if before in JOINTS or before in beside.SIGNS or counted or joined:
            return Means.NUMBER
        if word != "for" and (after == "thirds" or (number_word(after) and following in JOINTS)):  # less to 3 x 5 windows
            return Means.NUMBER if word == "too" or after == "thirds" or self._led(at) else Means.EITHER
        if self._fraction_follows(at) or (after == "at" and number_word(following) and before not in beside.COMING):
            return Means.NUMBER
        led = before in beside.POINTS_AT or (before == "a" and after not in ("instance", "example"))
        return Means.NUMBER if led and (after.isalnum() or after in UNITS) else None

    def _after_point(self, at: int) -> Means | None:
        """The point of a decimal beside it: "to point for metres"."""
        words = self.words
        if words[at + 1] == "point" and words[at + 2] in SMALL | WORTH and words[at - 1] != "point":
            return Means.NUMBER
        if words[at - 1] != "point":
            inside = words[at - 2] == "point" and words[at - 1] in SMALL and words[at + 1] in SMALL and words[at + 2] == "of"
            return Means.NUMBER if words[at] == "to" and inside else None  # point six to five of an inch
        return Means.NUMBER if number_word(words[at - 2]) and words[at - 2] not in POINTS else Means.WORD

    def _fraction_follows(self, at: int) -> bool:
        """Whether "and a half", "and five eighths", "and three quarters" comes next."""
        words = self.words
        if words[at + 1] != "and":
            return False
        first, second = words[at + 2], words[at + 3]
        top = first in ("a", "an") or first in SMALL or literal(first)
        return first in ("half", "quarter") or (top and (second in ORDINALS or second == "/"))

    def _after_tens(self, at: int) -> Means | None:
        """Twenty, thirty … before it, as in "forty too"."""
        words, word = self.words, self.words[at]
        if words[at - 1] not in TENS:
            return None
        after = words[at + 1]
        if self._unit_at(at + 1):
            return Means.EITHER if word == "to" and self.converts and after in PLURAL_UNITS else Means.NUMBER
        if after in JOINTS or (after in ADJECTIVES and word != "too"):
            return Means.NUMBER
        if number_word(after):
            return self._between_numbers(at)
        if after in ENDS:
            doubtful = word == "too" or (word == "for" and after in beside.ASKING)
            return Means.EITHER if doubtful else Means.NUMBER
        if thing(after):
            paid = word == "for" and not beside.MONEY.isdisjoint(words)
            return Means.EITHER if paid else Means.NUMBER
        return Means.NUMBER if after in beside.NO_OBJECTS else Means.EITHER

    def _between_numbers(self, at: int) -> Means:
        """Tens before it and a number after it: a range, one number, or a number of things of a size."""
        word, before, after = self.words[at], self.words[at - 1], self.words[at + 1]
        if word == "too":
            return Means.NUMBER
        paid = not beside.MONEY.isdisjoint(self.words)  # at fifty four ninety nine a box
        if word == "for":  # forty four foot boards, or forty for twelve foot boards
            return Means.EITHER if paid or self.words[at + 2] in beside.SINGULAR_UNITS else Means.WORD
        less = beside.worth(after)
        falls = paid or after in SCALES or (less is not None and less < TENS[before])
        return Means.EITHER if falls and not {"from", "between"} & set(self.words[:at]) else Means.WORD

    def _after_hundreds(self, at: int) -> Means | None:
        """A hundred (and) before it, as in "a hundred and for degrees"."""
        words, word, after = self.words, self.words[at], self.words[at + 1]
        joined = words[at - 1] == "and" and words[at - 2] in _TIED
        if not joined and words[at - 1] not in _TIED:
            return None
        if (words[at - 1], after) == ("thousand", "hundred"):
            return Means.NUMBER
        if self._unit_at(at + 1) or (joined and after == "dozen"):
            return Means.EITHER if word == "to" and self.converts else Means.NUMBER
        if after in JOINTS or (after in ADJECTIVES and word != "too"):
            return Means.NUMBER
        if not joined:
            return Means.EITHER if word == "too" else Means.WORD
        if after in ENDS or thing(after):
            return Means.EITHER if word == "too" else Means.NUMBER
        return Means.EITHER if number_word(after) or word == "too" else Means.WORD

    def _after_feet(self, at: int) -> Means | None:
        """Feet before it, as in "ate foot for"; "12 feet to inches" converts."""
        words, word, after = self.words, self.words[at], self.words[at + 1]
        other_unit = self._unit_at(at + 1) and after not in INCHES and after not in JOINTS
        if words[at - 1] not in FEET or words[at - 2] in ("square", "sq", "cubic") or other_unit:
            return None
        if after in INCHES:
            if word == "to" and self.converts:
                return Means.WORD
            alone = len(UNITS.intersection(words[: at - 1])) == 0  # of several lengths none is converted
            doubtful = (word == "to" and words[at + 2] in ENDS and alone) or (word == "for" and after == "inch")
            return Means.EITHER if doubtful else Means.NUMBER
        if after in JOINTS:
            return Means.NUMBER
        if (word, after) == ("to", "do") and words[at + 2] not in beside.WHO:
            return Means.WORD  # 186 feet to do; but "12 foot to do I need"
        if after in ADJECTIVES or after in ENDS:
            if (word, after) == ("to", "where") and words[at + 2] in beside.WHO | _IT:
                return Means.WORD  # sixteen foot to where it bears
            asked = after in beside.ASKING or (word == "to" and after in ("where", "and"))
            return Means.EITHER if asked or word == "too" else Means.NUMBER
        if after in beside.NO_OBJECTS:
            return Means.NUMBER
        part = after in SMALL and words[at + 2] in ORDINALS and word != "to"
        noun = after.isalpha() and not number_word(after) and not literal(words[at - 2])  # nine foot for wall; 9 ft is typed
        if noun and word == "too" and UNITS.isdisjoint(words[: at - 1]) and not part:
            return Means.NUMBER  # wall is nine foot too siding: nothing before it that is nine foot
        return Means.EITHER if part or noun else Means.WORD

    def _before_scale(self, at: int) -> Means | None:
        """A hundred or a dozen after it: "to dozen boards"."""
        word, before, after = self.words[at], self.words[at - 1], self.words[at + 1]
        if after not in SCALES and after != "dozen":
            return None
        if word == "to" and before == "up":
            return Means.WORD  # up to hundred and twenty
        measured = number_word(before) or before in UNITS
        doubtful = word != "too" and (measured or (word == "for" and not self._led(at)))
        return Means.EITHER if doubtful else Means.NUMBER

    def _led(self, at: int) -> bool:
        """Whether what stands before a place stands before numbers: nothing, a preposition, a verb of having."""
        before = self.words[at - 1]
        return not before.isalnum() or before in beside.PREPOSITIONS or before in beside.HAVING

    def _before_unit(self, at: int) -> Means | None:
        """A unit after it: "for inches", "too foot on centre"."""
        word, before, after = self.words[at], self.words[at - 1], self.words[at + 1]
        if not self._unit_at(at + 1):
            return None
        if not after.isalpha():
            return Means.NUMBER
        inches = before == "in" and word == "to" and after not in INCHES and self.words[at - 2][-1:].isdecimal()  # 9 in to mm
        if inches or (before in beside.MEASURES and word != "for"):  # "1219 mm to inches" converts; nothing is turned into itself
            anew = after in FEET and self.words[at + 2] in ("and", "&") and self.words[at + 3] in INCHES  # to feet and inches
            same = not anew and any(before in names and after in names for names in _SAME)
            return Means.NUMBER if same else Means.WORD
        return self._before_units(at) if after in PLURAL_UNITS else self._before_one_unit(at)

    def _unit_at(self, at: int) -> bool:
        """Whether a unit stands at a place; a square or a cube is one only of a length ("for square" is none)."""
        word = self.words[at]
        return word in UNITS and (word not in ("square", "sq", "cubic") or self.words[at + 1] in UNITS)

    def _before_units(self, at: int) -> Means:
        word, before = self.words[at], self.words[at - 1]
        if before in ("", "and", "now", "ok") and self.words[at + 2] in ("", "?", "."):
            return Means.EITHER  # "and for feet?"
        if word == "for":
            return Means.WORD if {*self.words[max(0, at - 2) : at]} & beside.ASKS else Means.NUMBER  # he's asking me for degrees
        if self.converts:
            return Means.WORD
        if self._led(at):
            return Means.NUMBER
        if before == "it":  # make it too percent; lap it two inches, turn it to inches
            return Means.NUMBER if word == "too" else Means.EITHER
        turned = word == "to" and (before in beside.USED or before in ORDINALS)
        turned = turned or (word == "to" and self.words[at + 1] in ("degrees", "degs", "percent"))
        return Means.WORD if turned or number_word(before) else Means.NUMBER

    def _before_one_unit(self, at: int) -> Means:
        word, before, after = self.words[at], self.words[at - 1], self.words[at + 1]
        by, other = self.words[at + 2], self.words[at + 3]
        if by in JOINTS and (number_word(other) or other in beside.SOUNDS) and not number_word(before):
            return Means.NUMBER  # a sheet for foot by ate foot
        if word == "too" or after in ("degree", "degrees", "deg"):
            return Means.WORD if self.converts else Means.NUMBER
        if word == "for" and after in FEET and number_word(self.words[at + 2]):  # for foot six
            return Means.NUMBER
        if number_word(before):
            return Means.NUMBER if word == "for" else Means.EITHER
        again = before == self.words[at + 2] != ""  # two inch leg for inch leg
        again = again or (word == "for" and before in beside.NO_OBJECTS and after in FEET)  # up seven foot and out for foot
        if again or (self._led(at) and before not in ("", "and", "for")):
            return Means.NUMBER
        return Means.WORD if self.converts else Means.EITHER

    def _before_pitch(self, at: int) -> Means | None:
        """A twelve after it: "its for twelve", "for in twelve", "meet for twelve pitch"."""
        words, word, before = self.words, self.words[at], self.words[at - 1]
        joint = words[at + 1] in ("in", "over", "on", "and", "an", "n")
        twelve, then = words[at + 1 + joint], words[at + 2 + joint]
        if twelve not in ("twelve", "12") or then in UNITS or number_word(before):
            return None
        if joint:
            led = not before.isalpha() or before in beside.PREPOSITIONS
            told = word != "to" or led if words[at + 1] == "in" else led and then in beside.PITCHED
            return Means.NUMBER if told else None
        if then in beside.PITCHED or words[at + 3] == "roof":  # for twelve porch roof
            return Means.NUMBER if twelve == "twelve" else Means.EITHER
        if (before in ("pitch", ",") and then in ENDS) or (word == "for" and twelve == "twelve" != then and number_word(then)):
            return Means.EITHER
        told = (before in beside.ROOF_IS and then in ENDS) or (word == "too" and not before.isalpha())
        return Means.NUMBER if told else None

    def _before_things(self, at: int) -> Means | None:
        """What is counted after it: "with to windows", "in for pieces"."""
        words, word = self.words, self.words[at]
        before, place = words[at - 1], at + 1 + (words[at + 1] in beside.MANY)
        after, then = words[place], words[place + 1]
        if not (thing(after) or after == "sided"):
            return None
        if word == "for":
            if before in beside.WANT and "what" in words[max(0, at - 5) : at]:
                return Means.WORD  # what do I need for panels
            sized = not before.isalnum() and after in beside.NAMES and (then in ("at", "of", "by") or number_word(then))
            if before in beside.SPLIT or sized or after in ("quarters", "eighths", "sixteenths"):
                return Means.NUMBER
            if then == "at" and number_word(words[place + 2]) and any(w == "at" and thing(b) for b, w in pairwise(words[:at])):
                return Means.NUMBER  # seven legs at 28 and for rails at 41
            if before in beside.TAKEN_OFF and after in beside.NAMES and then in SMALL:
                return Means.NUMBER if self.heard else Means.EITHER  # take off for windows three foot by four
            told = then in ("at", "of", "too") or (not before.isalnum() and after in beside.NAMES and then in ENDS)
            return Means.EITHER if told and not beside.DETERMINERS & {words[place + 2]} else None
        if not before and word != "for" and then == "of":
            return Means.NUMBER  # to pails of mud did eleven sheets
        counted = before in beside.HAVING or (before in beside.CARRIERS and after in beside.NAMES)
        if counted or word == "too":
            return Means.NUMBER
        return Means.EITHER if after in beside.NAMES and number_word(then) else None

    def _unnumbered(self, at: int) -> bool:
        """Whether a number was the small word: "miter four a corner", "screw four half inch siding", "set the saw two"."""
        words, word = self.words, self.words[at]
        before, after, then = words[at - 1], words[at + 1], words[at + 2]
        if after in beside.METERED:
            if before == "into":
                return False  # split into four the same
            return before not in FEET or not number_word(words[at - 2]) or then not in beside.DIMENSIONS  # 5 foot 4 | the width
        if word == "four":
            part = after in ("half", "quarter") or (after in SMALL and then in ORDINALS)
            return (before in beside.WHAT_FOR and part) or (before in beside.CUT_FOR and after in beside.LAYERS)
        named = len(before) >= SHORTEST_NAME and before.isalpha() and not number_word(before) and before not in beside.SIGNS
        if before == after and named:
            return True  # corner two corner
        if before in ("comes", "come") and (after in SMALL or after in TENS):
            return True  # it comes two fourteen foot five
        if after in beside.GO_ON and before not in beside.POINTS_AT and before not in ("a", "an"):
            return True  # "two go an inch into the stud"; those two go
        if before in beside.ALOFT and (after in ("", "?", ".", "for", "four") or (before in beside.SWINGS and after in TENS)):
            return "saw" in words
        ranged = (before in UNITS or SMALL.get(before, 0)) and (after in SMALL or after in TENS)
        same = before in ("percent", "degrees") and before in words[at + 1 : at + 4]
        return bool(ranged) and (same or "from" in words[max(0, at - 4) : at])
