"""The walls of a building, all four: "shed 10 by 12, all the walls 7 feet tall", "8 foot walls on a 24 by 32 garage"."""

from __future__ import annotations

from collections.abc import Iterator

from intents.listed import Listing
from intents.listed_rounds import pairs, sides
from intents.reading import Dims, Reading
from solvers.quantities import Area, Length, Quantity

_BUILDINGS = frozenset("building house shed garage cabin barn boathouse workshop shop studio hut outbuilding addition".split())
_WALLS = frozenset(("walls", "sides"))
_TALL = frozenset("high tall height".split())
_ENDS = frozenset("gable gables end ends".split())  # whose triangles are no part of the four walls
_NEAR = frozenset("is a an the of my our this that at about footprint walls".split())
_SIZES = 3  # a shed 12 by 10 by 8 high
_WITHIN = 9  # words between the plan and the height
SURE, _FOUR = 0.9, 4


def building(listing: Listing) -> Iterator[Reading]:
    """Readings of kind `areas`: what the walls of a building come to, from its plan and how high they are."""
    if _BUILDINGS.isdisjoint(listing.words) or _WALLS.isdisjoint(listing.words) or not _ENDS.isdisjoint(listing.words):
        return
    for at in range(len(listing.tokens)):
        for whole in listing.chart[at]:
            if isinstance(whole.value, Dims) and len(whole.value.parts) == _SIZES and _of_building(listing, whole):
                *plan_parts, high = whole.value.parts
                yield _walls(listing, Reading("dims", at, plan_parts[-1].end, Dims(tuple(plan_parts))), high)
                return
        for plan in pairs(listing, at):
            if not _of_building(listing, plan):
                continue
            for tall in (_height(listing, plan.end, plan.end + _WITHIN), _height(listing, at - _WITHIN, at)):
                if tall is not None:
                    yield _walls(listing, plan, tall)
                    return


def _of_building(listing: Listing, plan: Reading) -> bool:
    """Whether the sizes are said of a building: a 12 by 16 shed, the shed is 12 by 16."""
    after = listing.words[plan.end : plan.end + 2]
    at = plan.start - (plan.start > 0 and listing.words[plan.start - 1] == ",")  # a shed, 12 by 16
    while at and listing.words[at - 1] in _NEAR:
        at -= 1
    return not _BUILDINGS.isdisjoint(after) or (at > 0 and listing.words[at - 1] in _BUILDINGS)


def _height(listing: Listing, start: int, stop: int) -> Reading | None:
    """The one size between two places, where the words beside it say that walls are so high."""
    rows = listing.chart[max(0, start) : min(stop, len(listing.chart))]
    # A bare number before "walls" counts them.
    sizes = (r for row in rows for r in row if r.kind in ("length", "number") and isinstance(r.value, Quantity))
    found = [r for r in sizes if r.end <= stop + 2 and not (r.kind == "number" and listing.words[r.end] in _WALLS)]
    if not found:
        return None
    first = min(r.start for r in found)
    size = max((r for r in found if r.start == first), key=lambda r: (r.end, r.kind == "length"))
    before, after = listing.words[max(0, first - 3) : first], listing.words[size.end : size.end + 2]
    told = not _WALLS.isdisjoint(before) or (not _WALLS.isdisjoint(after)) or not _TALL.isdisjoint(after[:1])
    return size if told else None


def _walls(listing: Listing, plan: Reading, tall: Reading) -> Reading:
    assert isinstance(plan.value, Dims) and isinstance(tall.value, Quantity)
    plan_sides = sides(plan.value, False)
    metric = plan_sides[0].metric
    unit = "m" if metric else "ft"
    height = tall.value if isinstance(tall.value, Length) else Length(tall.value.value, unit)
    first, second = (side.to(unit).value for side in plan_sides)
    total = 2 * (first + second) * height.to(unit).value
    square = "m²" if metric else "sq ft"
    how = f"all round {listing.said(plan.start, plan.end)}, {listing.said(tall.start, tall.end)} high = {float(total):g} {square}"
    start, end = min(_from_walls(listing, plan.start), tall.start), max(plan.end, tall.end)
    value = Area(total, "m2" if metric else "ft2").said(how)
    return Reading("areas", start, end + (listing.words[end] in _TALL | _WALLS), (value,), SURE)


def _from_walls(listing: Listing, at: int) -> int:
    """Where the walls begin to be told: four sides of a shed | 14 by 20; the plan's own place where they are not."""
    first = at
    while first and listing.words[first - 1] in _NEAR | _BUILDINGS | {","}:
        first -= 1
    if not first or listing.words[first - 1] not in _WALLS:
        return at
    first -= 1
    return next((k for k in (first - 1, first - 2) if k >= 0 and any(n == _FOUR for _, n in listing.counts(k))), first)
