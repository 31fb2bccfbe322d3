"""How far a joint stands open when both of its pieces are cut at a wrong setting."""

from __future__ import annotations

from math import cos, radians, sin

FACE = 3.5  # inches: the face of a common trim board


def joint_gap(saw: float, off: float, face: float = FACE) -> float:
    """Gap at the far edge of the face, inches, when each piece is `off` degrees from the right setting `saw` (degrees).

    Both pieces are off, so the joint is off by twice that. Source: geometry; that angle's chord along the miter line.
    """
    return face / cos(radians(saw)) * 2 * sin(radians(abs(2 * off)) / 2)
