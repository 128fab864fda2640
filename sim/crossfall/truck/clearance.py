"""Approach, breakover and departure angles: side-view geometry of two tyres and a point.

A plane that just touches the tyre's circle from below and the point from below too. With v the
point from the wheel's centre, outward positive, and D = |v|, the plane's slope a obeys
D sin(phi - a) = -r with phi = atan2(v_z, v_x), so a = phi + asin(r / D). Nothing here raises.

Source: of the definitions 49 CFR 523.2 (read 2026, as quoted: a line tangent to the static loaded
radius arc), ISO 612 and SAE J1100 (both from memory); the slope is derived here from the tangent of
a circle.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import asin, atan2, hypot, pi

from crossfall.truck.model import Truck


@dataclass(frozen=True)
class ClearanceAngles:
    """rad; pi/2 where the tyre meets a wall before the body does, pi in all for breakover."""

    approach: float
    breakover: float
    departure: float


def touching_slope(out: float, up: float, radius: float) -> float:
    """rad, slope of the plane under a tyre and a point: a = phi + asin(r / D), 0 to pi/2.

    out, up: m, the point from the wheel's centre, `out` positive away from the truck's other axle
    (or towards it, for breakover); radius: m. A point inside the tyre or behind its centre never
    touches before the tyre does: pi/2.
    """
    distance = hypot(out, up)
    if distance <= radius or out <= 0:
        return pi / 2
    return min(pi / 2, max(0.0, atan2(up, out) + asin(radius / distance)))


def clearance_angles(truck: Truck) -> ClearanceAngles | None:
    """The three angles, or None for a truck without clearance points.

    Breakover is the sum of two slopes, under the front and the rear tyre and the belly.
    """
    points = truck.clearance
    if points is None:
        return None
    front, rear = truck.axles

    def slope(point: tuple[float, float], end: int, way: int) -> float:
        axle = (front, rear)[end]
        out = (point[0] - axle.x) * way
        return touching_slope(out, point[1] - axle.tyre.radius, axle.tyre.radius)

    return ClearanceAngles(
        approach=slope(points.nose, 0, 1),
        breakover=slope(points.belly, 0, -1) + slope(points.belly, 1, 1),
        departure=slope(points.tail, 1, -1),
    )
