"""Layers of a wall as Terms, shared by the topics that add them up."""

from __future__ import annotations

from solvers.exact import Term
from solvers.quantities import Length
from solvers.slots import Layer
from solvers.working import Working


def named(layers: tuple[Layer | Length, ...]) -> tuple[Layer, ...]:
    """Layers said as bare thicknesses get a number for a name."""
    return tuple(part if isinstance(part, Layer) else Layer(part, f"layer {n}") for n, part in enumerate(layers, 1))


def layer_terms(work: Working, layers: tuple[Layer | Length, ...]) -> list[Term]:
    """The thicknesses, in inches. Declines a layer that has none."""
    found = named(layers)
    for layer in found:
        said = layer.thickness.text or work.text(work.term("", layer.thickness.to("in").value, "in"))
        work.refuse_when(layer.thickness.value <= 0, f"the {layer.what} can't be {said} thick: say its thickness again")
    names = [layer.what for layer in found]
    return [
        work.term(
            f"{name} {names[: n + 1].count(name)}" if names.count(name) > 1 else name,
            layer.thickness.to("in").value,
            "in",
        )
        for n, (name, layer) in enumerate(zip(names, found, strict=True))
    ]
