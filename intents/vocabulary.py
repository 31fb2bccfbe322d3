"""The words numbers and units are said in, so that a slip in them is forgiven and none is taken for a slip."""

from __future__ import annotations

from intents.listed_layers import LAYER_WORDS
from intents.numbers import GROUPS, ORDINALS, SCALES, SMALL, TENS

UNIT_WORDS = frozenset(
    "foot feet inch inches yard yards metre metres meter meters millimetre millimetres millimeter millimeters "
    "centimetre centimetres centimeter centimeters degree degrees percent fahrenheit celsius centigrade minus plus times divided "
    "multiplied divide multiply divvy split subtract deduct twice double triple halved "
    "millilitre millilitres milliliter milliliters kilo kilos kilogram kilograms pound "
    "cent pounds ounce ounces gallon gallons litre litres liter liters square squares dollars cents temperature".split()
)
OPENING_WORDS = frozenset("slider sliders hatch doorway doorways louvre louver louvers wdw wdws".split())
COUNTING = frozenset(word for word in (*SMALL, *TENS, *SCALES, *GROUPS, *ORDINALS) if word.isalpha())
NUMBER_WORDS = COUNTING | UNIT_WORDS | LAYER_WORDS | OPENING_WORDS
