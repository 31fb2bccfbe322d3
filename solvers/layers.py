"""Layers of a wall as Terms, shared by the topics that add them up."""

from __future__ import annotations

from solvers.exact import Term
from solvers.slots import Layer
from solvers.working import Working


def layer_terms(work: Working, layers: tuple[Layer, ...]) -> list[Term]:
    """The thicknesses, in inches. Declines a layer that has none."""
    layers = tuple(layer if isinstance(layer, Layer) else Layer(layer, f"layer {n}") for n, layer in enumerate(layers, 1))
    for layer in layers:
        said = layer.thickness.text or work.text(work.term("", layer.thickness.to("in").value, "in"))
        work.refuse_when(layer.thickness.value <= 0, f"the {layer.what} can't be {said} thick: say its thickness again")
    return [work.term(layer.what, layer.thickness.to("in").value, "in") for layer in layers]
