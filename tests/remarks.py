"""Remarks with numbers in them that people make beside a question, to teach the second reader what is no quantity.

A tenth of what is learned is said again with one of these before or after it.
"""

REMARKS = (
    "the yard closes at four", "the lumber yard shuts at five", "inspector is due at two", "truck leaves at three",
    "it's 7 in the morning", "there are two of us up here", "two of us on site", "three of us today",
    "my two helpers are waiting", "one of the guys asked", "I have 40 in the truck", "I've got a dozen in the van",
    "got about 60 left over", "the box has a few hundred left", "there were 12 in the box",
    "the boss is back in ten minutes", "rain's coming around 2", "it quits raining at noon or one",
    "I'm on the phone till 3", "lunch is at 12", "this is the second time I ask", "third one today",
    "day 4 of this job", "house number 12", "unit 7", "wall 3 on the plan", "sheet 5 of the drawings", "detail 4",
    "page 2 of the plans", "lot 9", "half of them are bent", "half the crew is out", "one of them is cracked",
    "the first two went fine", "we did four already", "already cut three", "I broke two of them",
    "only have one saw here", "one hand on the ladder", "two hands full", "been at it 20 years",
    "after 30 years I still ask", "my kid is 9", "it's minus 10 with the wind", "windy, 40 gusts",
    "the forecast says 2 days of rain", "boss wants it by 5", "needs to be done by Friday the 6th",
    "have to call them by 4:30", "I'll be there in 15 minutes", "give me 5 minutes",
    "two windows on that side don't matter", "there's one door but ignore it", "on the 2nd floor",
    "on the third lift of the scaffold", "both of us measured it", "we measured it twice", "checked it three times",
    "for the tenth time", "the other 6 are done", "that leaves one", "number 8 on the list", "item 3",
    "it's 4 o'clock and getting dark", "half past two now", "quarter to five already", "bay 2", "the two on the left",
    "the one on the right", "one more thing",
)  # fmt: skip
