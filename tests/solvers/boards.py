"""Boards as vectors: cut flat on a saw, stood up at their spring, brought to the corner. Degrees and inches.

On the saw x runs along the fence to the right, y toward the fence, z up. A board lies face up: u along it to the right
as one looks at its face, v up the face from the wall edge, n out of the face.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.spatial.transform import Rotation

Vector = NDArray[np.float64]
WIDE, THICK = 4.0, 0.75


def turned(axis: str, angle: float) -> Any:
    return Rotation.from_euler(axis, angle, degrees=True)


def blade(miter: float, bevel: float) -> Vector:
    """Normal, pointing right, of a blade's plane: swung by `miter` (handle right), tilted by `bevel` (top left)."""
    plumb = np.array([1.0, 0.0, 0.0])
    tilted = turned("y", -bevel).apply(plumb)
    return np.asarray(turned("z", miter).apply(tilted))


def cut_face(normal: Vector, wide: float = WIDE, thick: float = THICK) -> Vector:
    """Where the plane through the origin crosses the four long edges of a board lying along x, its face up."""
    edges = np.array([[0, 0], [wide, 0], [wide, -thick], [0, -thick]])
    return np.array([[-(normal[1] * y + normal[2] * z) / normal[0], y, z] for y, z in edges])


def stood_up(points: Vector, spring: float) -> Vector:
    """From flat (face up) to its place on a wall along x, the room toward −y: the face leans out by the spring."""
    return np.asarray(turned("x", 90 + spring).apply(points))


def angle_between(a: Vector, b: Vector) -> float:
    cosine = a @ b / (np.linalg.norm(a) * np.linalg.norm(b))
    return float(np.degrees(np.arccos(np.clip(cosine, -1, 1))))
