"""Layers of a wall as Terms, shared by the topics that add them up."""

from __future__ import annotations

from solvers.errors import NeedMore
from solvers.exact import Term
from solvers.quantities import Length
from solvers.slots import Layer
from solvers.working import Working

THICKEST = 16  # inches of one layer; more is millimetres heard as inches


def named(layers: tuple[Layer | Length, ...]) -> tuple[Layer, ...]:
    """Layers said as bare thicknesses get a number for a name."""
    return tuple(part if isinstance(part, Layer) else Layer(part, f"layer {n}") for n, part in enumerate(layers, 1))


def layer_terms(work: Working, layers: tuple[Layer | Length, ...]) -> list[Term]:
    """The thicknesses, in inches. Asks for one that was not said, and declines a layer that has none."""
    names, inches = [], []
    for layer in named(layers):
        if layer.thickness is None:
            raise NeedMore("layers", f"How thick is the {layer.what}?")
        size = layer.thickness.to("in").value
        said = layer.thickness.text or work.text(work.term("", size, "in"))
        work.refuse_when(size <= 0, f"the {layer.what} can't be {said} thick: say its thickness again")
        work.refuse_when(
            size > THICKEST,
            f"the {layer.what} can't be {said} thick{'' if said[-1].isalpha() else ' in inches'}: say it again with its unit",
        )
        if layer.assumed:
            work.caution(f"Assumed: {layer.assumed} {layer.what} {said} thick. Say its own thickness where it is another.")
        names.append(layer.what)
        inches.append(size)
    return [
        work.term(f"{name} {names[: n + 1].count(name)}" if names.count(name) > 1 else name, size, "in")
        for n, (name, size) in enumerate(zip(names, inches, strict=True))
    ]
