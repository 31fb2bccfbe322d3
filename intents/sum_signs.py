"""Words that tell what a length does in a sum, by what they say of it: what the model of whole sums sees beside the words."""

from __future__ import annotations

_SIGNS = {
    "TOTAL": "total totals overall altogether combined together sum whole lot everything told adds joined complete entire make",
    "OUTER": "outside overall outer finished across",
    "LEFT": "left remain remains remaining remainder rest leftover leftovers spare offcut scrap bare waste drop falls fall still"
    " balance over",
    "DIFF": "difference different differ compared compare apart out off short shy gain gained",
    "ER": "longer shorter taller higher lower wider narrower deeper thicker thinner bigger smaller more less fewer larger fatter",
    "CLEAR": "between clear inside gap gaps space daylight clearance air net reveal headroom play slack slop",
    "EACH": "each both either every apiece per twice",
    "SIDES": "sides ends side end edges edge faces round around",
    "MID": "middle centre center halfway half midpoint centred centered centreline centerline mid midway split splits halve dead"
    " even evenly equal equally bisect",
    "TAKE": "minus less take takes took taking subtract lose lost losing knock trim trimmed cut cuts deduct shave shaved remove"
    " removed rip ripped notch notched chop chopped away rob robs eats eat sand plane planed sawn swallows removes lop",
    "ADD": "add adds added plus another more extra additional then next further second third",
    "UP": "up raise raised raises lift lifted lifts above rise rises climb climbs top higher onto",
    "DOWN": "down drop dropped drops lower lowered below beneath under underneath bottom hangs",
    "PAST": "past beyond proud sticks stick projects project overhang overhangs hangs juts longer over further extends runs",
    "BACK": "back in short shy shorter inside held hold holds set recessed",
    "SHORT": "short shy under light scant tight small",
    "LONG": "long over heavy fat strong big proud",
    "SHOULD": "should wanted right correct supposed said meant need needed want wants needs",
    "USED": "already used done covered painted gone installed far had have got",
    "COVER": "covers cover covered covering lap laps lapped overlap overlaps tucked hides hidden",
    "SHOWS": "shows show showing exposed exposure visible weather see bare face",
    "STACK": "stack stacked stacks sits sit sitting thickness layer layers thick build",
    "JOIN": "butted joined beside next laid run",
    "HOW": "how what whats what's",
}
SIGNS_OF: dict[str, tuple[str, ...]] = {}
for _sign, _words in _SIGNS.items():
    for _word in _words.split():
        SIGNS_OF[_word] = (*SIGNS_OF.get(_word, ()), _sign)
SIGNS = frozenset(_SIGNS)
