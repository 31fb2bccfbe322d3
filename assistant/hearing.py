"""Whether a line is talk about the job, and which: as a whole, in parts, or by what a long line comes to."""

from __future__ import annotations

import re
from typing import TYPE_CHECKING

from assistant import acts
from assistant.acts.comparing import concluded, in_unit
from assistant.acts.explaining import line_named
from assistant.also_asked import beside
from assistant.at_the_saw import asks_the_saw
from assistant.change_words import tells_spacing
from assistant.choices import remember_choice, states_choice
from assistant.layer_changes import names_layer, tells_layer
from assistant.line_apart import asks_anew, asks_why, read_off_tape
from assistant.marks_told import told_mark
from assistant.pending import told_quantities
from assistant.relative import by_so_much_told
from assistant.said_over import places_of
from assistant.story import tells_a_change
from assistant.told_values import of_its_wall
from intents.chart import LIGHT
from intents.expressions import expression
from intents.phrases import compiled
from intents.question import Question, Reading
from intents.talk import Said, gists_of, numbers_in, readings_in, talk_of
from intents.tokens import tokenize
from solvers.quantities import LENGTH, Angle, Pitch, Quantity

if TYPE_CHECKING:
    from assistant.conversation import Conversation
    from assistant.pending import Asked

PLAIN = 3  # words of a topic in a whole question, from which on a scaffold in the same line makes it nobody else's
_ASKS = expression(r"\?|\b(how|what'?s?|which|need|want|where|(?:number|total|amount) to)\b|, total\W*$|, is (?:that|it)\b", re.I)
_SUPPOSES = expression(r"\W*(?:and |but |so |or |ok )*(?:what if|if|suppose|supposing|say)\b", re.IGNORECASE)
_STATES = expression(r"\b(is|are|stops?|maxes|comes)\b|'s\b", re.IGNORECASE)
_WERE_IT = expression(r"(?<=\w) if (?:it|that|they|we|i|there)(?:['’]?(?:s|re|m|ve|d))?\b", re.IGNORECASE)  # and is not
_COUNTS_FROM = expression(r"\bhow many\b.*\b(?:from|out of|outta|off|in) (?:an?|one|the) ", re.IGNORECASE)
_FAR_OUT = expression(r"\bhow (?:far|much|bad)(?: (?:is|am|are|['’]s) (?:it|i|we|that))? (?:out|off)\b", re.IGNORECASE)
_KEEPS = expression(r"\b(remember|keep|note|record|save|mind)\b", re.IGNORECASE)
_SAME = expression(
    r"\b(?:same|that|this) (?:roof|pitch|slope|exposure|gable|stock|overhang|spacing|reveal|saw|wall|one)\b"
    r"|\b(?:that|the) same\b",
    re.IGNORECASE,
)
_OTHERWISE = expression(
    r"^\W*(?:and|now|ok|so|then)?\W*(?:make|change|set|switch|try|bump)\b|\b(?:actually|really|sorry|wrong|mistake|should|instead)\b",
    re.IGNORECASE,
)
_NONE = expression(r"\W*(?:no|without|zero)\s+\w", re.IGNORECASE)  # "with no waste" says how much
_SETS = expression(r"\b(?:do|should|would|must|to|i'd)\s+(?:i\s+|we\s+|you\s+)?set\b.*\bsaw\b", re.IGNORECASE)
_TOLD = expression(r"\b(?:said|say|told|tell|gave|give|remind|remember|recall|again|forgot|kept|keep|mentioned)\b", re.IGNORECASE)
_SIZE = expression(r"\bhow (?:long|high|tall|far|wide)\b|\b(?:length|height)\b", re.IGNORECASE)
_ANGLE, _NOTE = expression(r"\b(?:angle|degrees?)\b", re.IGNORECASE), expression(r"[:.;–—]\s*(note\b.*)$", re.IGNORECASE)
_STEP_AGAIN = expression(r"(?<=\w)\W+the \w+ step\W*$", re.IGNORECASE)
_IS = expression(r"(?:\b(?:is|was|be|at|got|as|to)|'s)\s+(?:(?:an?|only|about|actually|really)\s+)*$", re.IGNORECASE)
_IS_IT = expression(r"\W*(?:is|are|was|will|would|can|could|does|do|did|should|has|have)\b", re.IGNORECASE)
_OTHERS_SAY = expression(r"\b(?:swears?|reckons?|says?|said|thinks?|claims?|guess(?:es)?|bets?|maybe|might|could)\b", re.I)
# It is eighty and the roof's at forty, would it sweat.
_INVERTED = expression(r"(?<=\w)\W+(?:would|will|could|does|do|can)\s+(?:there|it|they|that|the|this|my|we|i)\b", re.IGNORECASE)
_BEGINS = expression(
    r"\W*(?:so |ok |and )?(?:what'?s the|what is the|how (?:long|high|tall|much|many|far|wide|deep))\b", re.IGNORECASE
)
_MAY_I = expression(
    r"\W*(?:so |ok |and )?(?:can|could|should|will|would|may|do|does|did) (?:i|we|it|they|he|she|the|my|a)\b", re.IGNORECASE
)
# Somebody's word for it is no fact of the job; what one thinks oneself is said as one.
_HEARSAY = expression(
    r"\b(?:swears?|swore|sworn|reckons|thinks|claims|claimed|guesses|bets|believes|supposedly|apparently|allegedly|maybe|might|thought)\b"
    r"|\b(?:he|she|they|lads|guys|lot|crew|mates?) (?:reckon|think|claim|guess|say|says|said)\b",
    re.IGNORECASE,
)
MOST_TOLD = 18  # in 12, or degrees: a bare number over it told of a roof is no pitch, but how warm it is or how long
SURE = 0.9  # how sure a pitch is that a story is told about
MUCH_NEARER = 3  # times nearer to what was given than to the answer
_FIRST_PERSON = expression(r"\b(?:i|we|mine|ours|my (?:sums|maths?|count|tape|calculator|phone)|i've|i'd)\b", re.IGNORECASE)
NOWHERE_NEAR = 4  # times more or less
WEAK = 1.0  # under this a question is hardly one
_AND = expression(r"\s*[,;]\s*(?:and\s+)?|\s+and\s+")
GISTS_OVER = frozenset(("correct", "follow-up", "explain"))  # loose talk of these may be something else


def same_as_before(text: str) -> bool:
    """Whether the line says that something is as it was: "the plumb cut for that same roof"."""
    return bool(_SAME.search(text))


def asks_too(text: str) -> bool:
    """Whether a line that states something asks something besides."""
    return bool(_ASKS.search(text) or re.search(r"\b(?:can|could|may|should) (?:i|we)\b", text, re.IGNORECASE))


def talk_in(c: Conversation, text: str, reading: Reading, questions: list[Question]) -> Said | None:
    """The line as talk, or None where it is rather a question."""
    whole = bool(questions) and not questions[0].missing and not questions[0].lacking
    said = _plainly(c, text) or (None if whole else _told_pitch(c, text, questions))
    plain = said is not None
    if not whole and (said is None or _may_be_more(said)):
        gist = _gist(c, text, reading, questions)
        if gist and not (said and c.last and gist.topic == "remember"):  # "centres are 24, not 16" corrects
            said = gist
    elif whole and c.last is not None:  # "I cut a scrap at 62 1/2 …, so how does 62 1/2 stand against yours"
        weak = said is None and (questions[0].score < WEAK or questions[0].words == ["tape"])
        said = next((g for g in gists_of(text, c.places) if "asked" in g.words or (weak and _compared(c.last, g, text))), said)
    if said and said.topic == "remember":
        asks = _is_question(text, questions, plain and not said.loose) or (not plain and _names(questions))
        asks = asks or (c.last is not None and _WERE_IT.search(text) is not None)
        said = None if asks or by_so_much_told(text) else _for_a_fact(c, said, text)
    if said and said.topic == "remember" and "hearsay" not in said.words and _changes_last(c, said, text):
        return Said("correct", words={"rest": text})
    if said and c.last is not None and _changes_rather(c.last, said, text):
        said = None
    setting = _setting_of(c, text)
    if said and said.topic == "recall" and _asks_another(c, said, text) and (questions or setting or c.told):
        return setting
    if said and said.topic == "compare" and c.last and "value" in said.words and _of_a_given(c.last, text):
        said = next((gist for gist in gists_of(text, c.places) if gist.topic == "correct"), None)
    if said and said.topic == "compare" and c.last is None and c.pending is None and questions:
        said = None  # "I've got a run of 12 foot 6" sets nothing beside an answer where none was given
    if said and said.topic in (*acts.CHANGES, "tag", "review") and whole and questions[0].words and not _something_before(c):
        said = None  # "all the same and not a skinny one at the top" changes nothing where nothing was asked, a label tags none
    if said and said.topic == "recall" and (_SETS.search(text) or (c.last is not None and asks_the_saw(text))):
        return None  # what the saw is set to is worked out; how far it swings is kept
    if said and ((reading.elsewhere and c.last is None and said.topic in acts.BEFORE) or asks_anew(c, said, text)):
        return None  # "why does the drain gurgle" asks nothing about an answer that was never given
    return asks_why(c, text, said) or said or read_off_tape(c, text)


def _changes_rather(last: Asked, said: Said, text: str) -> bool:
    """Whether what sounds like other talk tells a change of the question before."""
    compared = said.topic == "compare"
    far_out = last.topic.name == "square check" and _FAR_OUT.search(text)  # of square, by its diagonal
    if compared and (far_out or _COUNTS_FROM.search(text)):
        return True
    spaced = compared and (tells_spacing(text, last) or tells_layer(text, last))  # the engineer says 12 on centre
    return spaced or tells_a_change(said.topic, text) or of_its_wall(last, said, text)


def _for_a_fact(c: Conversation, said: Said, text: str) -> Said | None:
    """What is told as a value to keep: none where it can't be one, and marked as hearsay where it is somebody's word."""
    if _too_much(said) or _no_pitch(c, said):
        return None
    if not _HEARSAY.search(re.split(r"\bbut\b", text, flags=re.IGNORECASE)[-1]):
        return said
    c.statements = []
    return Said(said.topic, said.values, {**said.words, "hearsay": text}, said.free)


def _no_pitch(c: Conversation, said: Said) -> bool:
    """Whether what is told of a pitch is a length with its unit: the rake on a gable that's twenty foot."""
    readings = said.values.get("value", ())
    longest = max((row.end for row in readings), default=0)
    place = c.places.get(said.words.get("what", ""))
    kinds = {row.kind for row in readings if row.end == longest}
    return place is not None and place.kind is Pitch and kinds == {"length"}


def _too_much(said: Said) -> bool:
    """Whether a bare number that is told of the roof is past any pitch: the roof's at forty."""
    readings = said.values.get("value", ())
    longest = max((row.end for row in readings), default=0)
    whole = [row for row in readings if row.end == longest and row.kind in ("pitch", "angle", "number")]
    bare = bool(whole) and all(row.kind == "number" for row in whole)
    return bare and said.words.get("what") == "pitch" and max(row.value.value for row in whole) > MOST_TOLD  # type: ignore[union-attr]


def _compared(last: Asked, said: Said, text: str) -> bool:
    """Whether somebody's number is set beside the last answer: "I came up with 11 3/4, but my tape is worn"."""
    return said.topic == "compare" and "weak" not in said.words and _compares(last, said, text)


def _stands_beside(c: Conversation, text: str) -> bool:
    """Whether what sounds like reading back a value asks for one that stands beside the last answer."""
    last = c.last.record if c.last is not None and c.pending is None else None
    return last is not None and bool(last.get("answer")) and bool(beside(last, last["topic"] or "", text))


def _asks_another(c: Conversation, said: Said, text: str) -> bool:
    """Whether what sounds like reading back a value asks for one of another kind: a pitch is not how long the slope is."""
    if _TOLD.search(text):
        return False
    if _stands_beside(c, text):
        return True  # and the rake, after the height of a gable
    kept = c.places.get(said.words["what"])
    if kept is None or said.words["what"] == "everything":
        return False
    if kept.kind is Angle:
        return bool(_SETS.search(text))
    return kept.kind is Pitch and bool(_SIZE.search(text) or _ANGLE.search(text))


def _setting_of(c: Conversation, text: str) -> Said | None:
    """What the saw is set to is read off the last answer, where that has it and nothing was stated since; or a question."""
    name = "saw setting"
    known = _SETS.search(text) and c.last is not None and line_named(c.last.record, name) and not c.told
    return Said("recall", words={"what": name}) if known else None


def _changes_last(c: Conversation, said: Said, text: str) -> bool:
    """Whether a value is stated as other than the last question had it: "actually the pitch is 6/12"."""
    last, name = c.last, said.words.get("what")
    if last is None or not _OTHERWISE.search(text) or c.just_kept:
        return False
    told = [last.topic.parameter(given.name) for given in last.givens.values() if given.source in ("asked", "earlier")]
    return any(name in (parameter.slot.kept, parameter.label) for parameter in told)


def _may_be_more(said: Said) -> bool:
    """Whether talk that took the whole line may be something surer that is said at length."""
    rest = said.words.get("rest", "")
    if said.topic == "correct" and numbers_in(rest) and numbers_in(said.words.get("old", "")):
        return False  # "sixteen I said, sixteen feet" says all there is to it
    loosely = "loose" in said.words and said.topic in GISTS_OVER
    return loosely or (said.topic in acts.CHANGES and bool(rest) and not numbers_in(rest) and not _NONE.match(rest))


def _something_before(c: Conversation) -> bool:
    return bool(c.last or c.pending or c.just_kept)


def _plainly(c: Conversation, text: str) -> Said | None:
    """The line as talk from its first word to its last; several statements in one line are one talk."""
    c.statements = []
    conclusion = concluded(c.last.record, text) if c.last is not None and c.pending is None else None
    said = conclusion or told_mark(c, text) or talk_of(text, c.places) or _less_said(c, text)
    words = _AND.split(text)[:6] if said is None or said.topic in acts.CHANGES else []
    if len(words) > 1:
        parts = [talk_of(part, c.places) for part in words]
        told = [part for part in parts if part and part.topic == "remember" and not part.loose]
        rest = [word for word, part in zip(words, parts, strict=True) if part not in told]
        if told and all(states_choice(c, word) for word in rest):
            for word in rest:
                remember_choice(c, word)
            c.statements = told
            return told[0]
    return said


def _less_said(c: Conversation, text: str) -> Said | None:
    """A note after what leads to it ("remind me later: note the bug screen ran out"), or a step named twice."""
    note = _NOTE.search(text)
    said = talk_of(text[note.start(1) :], c.places) if note else None
    if said is not None and said.topic == "note":
        return said
    step = _STEP_AGAIN.search(text)
    return talk_of(text[: step.start()], c.places) if step else None


def _told_pitch(c: Conversation, text: str, questions: list[Question]) -> Said | None:
    """The pitch that a story comes to: "the tarp is off and the whole thing is a five and a half twelve"."""
    text = re.split(r"\bbut\b", text, flags=re.IGNORECASE)[-1]  # he swears it's a six twelve, but it's a five
    if c.last is not None or c.pending is not None or _ASKS.search(text) or _IS_IT.match(text):
        return None
    if _OTHERS_SAY.search(text):
        return None
    places = places_of(text)
    pitched = len({place.value.value for place in places}) == 1 and isinstance(places[0].value, Pitch)
    if not pitched or not _IS.search(text[: places[0].start]):
        return None
    said = text[places[0].start : places[0].end]
    sure = any(reading.kind == "pitch" and reading.sure >= SURE for reading in readings_in(said))
    named = {word for question in questions[:1] for word in question.words} - {"gable", "roof", "pitch"}
    return Said("remember", {"value": readings_in(said)}, {"what": "pitch", "value": said}) if sure and not named else None


def _gist(c: Conversation, text: str, reading: Reading, questions: list[Question]) -> Said | None:
    """What a long line comes to; the first that there is ground for."""
    grounds = (said for said in gists_of(text, c.places) if _grounded(c, said, text, reading, questions))
    return next(grounds, None)


def _grounded(c: Conversation, said: Said, text: str, reading: Reading, questions: list[Question]) -> bool:
    """Whether there is something for the act to go by: a question before it, a value of that name."""
    if said.topic in acts.BEFORE and not _something_before(c):
        return False
    if said.topic in ("flag", "tag", "strike") and c.target is None:
        return False
    if said.topic == "compare":
        return c.last is None or _compares(c.last, said, text)
    if said.topic != "recall" or said.words["what"] == "everything":
        return True
    name = said.words["what"]
    known = name in c.facts.values or (c.last is not None and line_named(c.last.record, name) is not None)
    return known and ("bare" not in said.words or _names_only(text, said.words["bare"], reading, questions))


def _compares(last: Asked, said: Said, text: str) -> bool:
    """Whether one number is said that can stand beside the last answer; "I need 16 foot stock" is rather a change."""
    answer = last.record.get("answer")
    values = {row.value.value for row in numbers_in(text) if isinstance(row.value, Quantity)}
    if _of_a_given(last, text) or not answer or len(values) > 1:
        return False
    if in_unit(said.values.get("value", ()), answer["unit"]) is None:
        return False
    return "weak" not in said.words or not _names_a_place(last, text)


def _of_a_given(last: Asked, text: str) -> bool:
    """Whether the one number said is near something that was given and nowhere near the answer: it is that, measured again."""
    answer = last.record.get("answer")
    said = [row.value for row in numbers_in(text) if isinstance(row.value, Quantity)]
    if len(said) != 1 or not answer or not answer["value"] or said[0].value <= 0:
        return False
    mine = in_unit(numbers_in(text), answer["unit"])
    if mine is None or max(mine / answer["value"], answer["value"] / mine) < NOWHERE_NEAR:
        return False
    given = told_quantities(last)
    return any(abs(value.value - said[0].value) * 4 < value.value for value in given)


def rather_a_change(last: Asked | None, said: Said, text: str) -> bool:
    """Whether a line that tells a value is rather a change: it only supposes another value of what was given ("if the eave
    is 13"), or gives a number that can't stand beside the answer."""
    if said.topic != "remember":
        return not comparable(last, said, text) or (said.topic == "compare" and names_layer(text, last))
    return last is not None and _SUPPOSES.match(text) is not None and _was_given(last, said.words.get("what", ""), text)


def _was_given(last: Asked, name: str, text: str) -> bool:
    """Whether what a line would keep was given to the last question, or is called as something was there."""
    places = [last.topic.parameter(given.name) for given in last.givens.values() if given.source != "assumed"]
    phrases = compiled()
    own = {token.text for token in tokenize(text) if token.text.isalpha()} - phrases.ordinary - phrases.fillers - LIGHT
    return any(name in (place.slot.kept, place.label) for place in places) or bool(own & {t.text for t in tokenize(last.text)})


def comparable(last: Asked | None, said: Said, text: str) -> bool:
    """Whether a number said of somebody's can stand beside the answer; "engineer says an inch and a half in", near what was
    given and far from what was worked, is rather a given as it is now."""
    answer = last.record.get("answer") if last else None
    if said.topic != "compare" or last is None or not answer or _FIRST_PERSON.search(text):
        return True
    values = [row.value for row in said.values.get("value", ()) if isinstance(row.value, Quantity)]
    mine = in_unit(said.values.get("value", ()), answer["unit"])
    if not values or mine is None or answer["unit"] in ("yesno", "word"):
        return not values
    given = told_quantities(last)
    pairs = [(value, one) for one in given for value in values[:1] if isinstance(value, type(one)) or value.unit == "none"]
    pairs = [(value, one) for value, one in pairs if not isinstance(value, Pitch) or value.unit == one.unit]
    apart = [abs((value.to(one.unit) if isinstance(value, type(one)) else value).value - one.value) * LENGTH.get(one.unit, 1)
             for value, one in pairs]  # fmt: skip
    off = abs(mine - answer["value"]) * float(LENGTH.get(answer["unit"], 1))
    return all(one * MUCH_NEARER >= off for one in apart)


def _names_a_place(last: Asked, text: str) -> bool:
    """Whether the words name what the last question was given, or could be."""
    phrases = compiled()
    words = {token.text for token in tokenize(text)} - phrases.ordinary - phrases.fillers
    labels = {word for parameter in last.topic.parameters for word in parameter.label.split()}
    topics = {word for word in words - phrases.talk if last.topic.name in phrases.topics_of.get(word, ())}
    return bool((words & labels) | topics)


def _names_only(text: str, name: str, reading: Reading, questions: list[Question]) -> bool:
    """Whether the line has no word of the trade but the name, and no number: "pitch?", "stock, how long"."""
    phrases = compiled()
    ours = {token.text for token in tokenize(name)} | phrases.ordinary | phrases.fillers
    told = set(questions[0].words) if questions else set(reading.understood)
    return not numbers_in(text) and told <= ours and not _NONE.match(text)


def _names(questions: list[Question]) -> bool:
    """Whether the best reading has its topic's own words: "end cut along the rake please, exposure is 6"."""
    best = questions[0] if questions else None
    if best is None or best.lacking:
        return False
    return len(best.words) > PLAIN or set(best.topic.split()) <= set(best.words)


def asks_with_a_number(best: Question | None) -> bool:
    """Whether a question names its whole topic and gives it a value: the step at the rake with a six inch exposure."""
    return best is not None and bool(best.givens) and not best.lacking and set(best.topic.split()) - LIGHT <= set(best.words)


def _is_question(text: str, questions: list[Question], stated: bool) -> bool:
    """Whether what could be a statement asks: "gable is 24 feet wide, how tall is it", "air gap 3/4"."""
    if _KEEPS.search(text):
        return False
    best = questions[0] if questions else None
    whole = best is not None and best.whole
    named = best is not None and set(best.topic.split()) <= set(best.words)
    asks = bool("?" in text or _INVERTED.search(text) or _BEGINS.match(text)) if stated else bool(_ASKS.search(text))
    asks = asks or _MAY_I.match(text) is not None
    return asks or (whole and named and not _STATES.search(text))


def nothing_to_change(last: Asked | None, said: Said) -> bool:
    """Talk that is answered although it does nothing: a change of no question, or of nothing that was named."""
    if said.topic == "follow-up":
        return last is not None or bool(numbers_in(said.words.get("rest", "")))
    return said.topic == "correct" or said.loose
