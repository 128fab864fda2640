"""Vehicles of textbook exercises: one rigid mass on four wheels, dimensions as the book gives."""

from __future__ import annotations

import numpy as np

from crossfall.truck.model import GRAVITY, Axle, Body, Suspension, Truck, Tyre, frozen

INCH, FOOT, POUND_FORCE = 0.0254, 0.3048, 4.4482216152605


def vehicle(
    *,
    height: float,
    wheelbase: float = 2.0,
    behind_front: float | None = None,
    track: float = 1.0,
    tracks: tuple[float, float] | None = None,
    left_of_middle: float = 0.0,
    mass: float = 1.0,
) -> Truck:
    """A rigid vehicle, SI. `behind_front`: m from front axle back to the CG (default: halfway)."""
    back = wheelbase / 2 if behind_front is None else behind_front
    cg = frozen([wheelbase / 2 - back, left_of_middle, height])
    nothing = Body(0.0, frozen(np.zeros(3)), frozen(np.zeros((3, 3))))
    tyre = Tyre(
        radius=0.3, width=0.2, contact_half_width=0.0, stiffness=2e5, lateral=2e5, longitudinal=2e5
    )
    locked = Suspension(1.0, 1.0, 0.0, 0.3, 0.0, 0.0, locked=True)
    front, rear = (
        Axle(x, t, tyre, locked, nothing, (nothing, nothing))
        for x, t in zip((wheelbase / 2, -wheelbase / 2), tracks or (track, track), strict=True)
    )
    return Truck("exercise", Body(mass, cg, frozen(np.eye(3))), front, rear)


def mass_of(weight: float, gravity: float = GRAVITY) -> float:
    """kg, of a weight in N; forces come back as the book's when multiplied by gravity/GRAVITY."""
    return weight / gravity
