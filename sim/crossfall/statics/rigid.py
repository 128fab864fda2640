"""The rigid truck on a tilting table, in closed form.

The truck tips when the line of gravity through its CG leaves the support polygon: the trapezium
through the tip lines of its four tyres. Over an edge with outward unit normal n,

    tan(theta) = a / (h n.d)                                                              (1)

with a the distance in plan from the CG to the edge along n, h the CG height and d the downhill
direction; the tip angle is the least over the edges with n.d > 0. This is moment balance about the
edge, for a heading that need not be square to it.

Edges are in the order of the headings that tip over them: rear, left, front, right.

Shapes that do not broadcast raise numpy's ValueError; nothing else is refused.

Source: R. C. Hibbeler, Engineering Mechanics: Statics, 14th ed., problem 11-43 (seen:
tests/published/test_tipping.py), for (1) square to an edge; all else is derived here from (1):
equilibrium of moments about the line of contacts, plane geometry, and derivatives of both.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Array, Body, Truck

EDGES = ("rear", "left", "front", "right")
QUARTERS = np.radians([0.0, 90.0, 180.0, 270.0])  # climb, left down, descent, right down
CHUNK = 1 << 14  # builds worked on at once: small enough to stay in cache


# Geometry


def downhill(headings: ArrayLike) -> Array:
    """(..., 2) unit vector d = (-cos psi, sin psi) pointing downhill, in truck axes.

    headings: (...) rad.
    """
    psi = np.asarray(headings, dtype=np.float64)
    return np.stack([-np.cos(psi), np.sin(psi)], axis=-1)


def tip_line(track: float, contact_half_width: float) -> float:
    """m, T/2 + w: where a tyre's tip line lies, out from the middle of the truck.

    track, contact_half_width: m.
    """
    return track / 2 + contact_half_width


def tip_points(truck: Truck) -> Array:
    """(4, 2) m, where each tyre's tip line meets its axle line, in plan; front left first.

    (x, +-(T/2 + w)), and by how much a turned wheel stands elsewhere (`Axle.steered`).
    """
    return np.array(
        [
            (axle.x + x, side * tip_line(axle.track, axle.tyre.contact_half_width) + y)
            for axle in truck.axles
            for side, (x, y) in zip((1, -1), axle.steered, strict=True)
        ]
    )


def edge_normals(half_front: float, half_rear: float, wheelbase: float) -> Array:
    """(4, 2) outward unit normals in plan: rear, left, front, right.

    half_front, half_rear: m, from `tip_line`; wheelbase: m. Where they differ the side edges run at
    an angle to x, with n = (half_rear - half_front, +-L) / |.|.
    """
    toe = half_rear - half_front
    slant = np.hypot(toe, wheelbase)
    nx, ny = toe / slant, wheelbase / slant
    return np.array([(-1.0, 0.0), (nx, ny), (1.0, 0.0), (nx, -ny)])


def normals_between(points: Array) -> Array:
    """(4, 2) outward unit normals of the polygon between four points (4, 2) m, front left first, in
    the order of `edge_normals`: n = (-t_y, t_x) of each unit tangent t; nan where two meet.
    """
    along = points[[2, 0, 1, 3]] - points[[3, 2, 0, 1]]  # each edge, the outside on its left
    along = along / np.linalg.norm(along, axis=1, keepdims=True)
    return np.column_stack([-along[:, 1], along[:, 0]])


def normals(truck: Truck) -> Array:
    """(4, 2) outward unit normals of the truck's support polygon: rear, left, front, right.

    The polygon has the four places of `tip_points` for corners; n = (-t_y, t_x) of each unit
    tangent t.
    """
    if truck.turned:
        return normals_between(tip_points(truck))
    front, rear = (tip_line(a.track, a.tyre.contact_half_width) for a in truck.axles)
    return edge_normals(front, rear, truck.wheelbase)


def edge_distances(truck: Truck, places: ArrayLike) -> Array:
    """(..., 4) m, distance in plan from each place inward to each edge; negative outside.

    a = n . (q - c), with n the edge's outward normal, q a corner on it and c the place (plane
    geometry). places: (..., 2) or (..., 3) m, truck axes.
    """
    on_edge = tip_points(truck)[[2, 0, 0, 1]]  # a corner on the rear, left, front, right edge
    offset = on_edge - np.asarray(places, dtype=np.float64)[..., None, :2]
    distances: Array = np.sum(offset * normals(truck), axis=-1)
    return distances


# The tip angle


def edge_angles(truck: Truck, headings: ArrayLike) -> Array:
    """(..., 4) rad, the angle (1) at which the truck would go over each edge; headings (...) rad.

    theta = atan2(a, h n.d): more than pi/2 over an edge that does not face downhill.
    """
    body = whole(truck)
    reach = body.cg[2] * downhill(headings) @ normals(truck).T
    angles: Array = np.arctan2(edge_distances(truck, body.cg), reach)
    return angles


def tip_angle(truck: Truck, headings: ArrayLike) -> Array:
    """(H,) rad, the table angle (1) at which the rigid truck tips; headings (H,) rad.

    Zero where the CG is outside the support polygon, and the truck does not stand at all.
    """
    angles: Array = np.min(edge_angles(truck, headings), axis=-1)
    stands = bool(np.all(edge_distances(truck, whole(truck).cg) > 0))
    return angles if stands else np.zeros_like(angles)


def tip_edge(truck: Truck, headings: ArrayLike) -> NDArray[np.intp]:
    """(H,) which edge it tips over, an index into `EDGES`; headings (H,) rad. The least of (1)."""
    return np.asarray(edge_angles(truck, headings).argmin(axis=-1))


def rigid_tip_angles(
    half_front: ArrayLike,
    half_rear: ArrayLike,
    x_front: ArrayLike,
    x_rear: ArrayLike,
    cg_x: ArrayLike,
    cg_y: ArrayLike,
    cg_z: ArrayLike,
    headings: ArrayLike = QUARTERS,
    turned: tuple[ArrayLike, ArrayLike] = (0.0, 0.0),
) -> Array:
    """(n, H) rad, the tip angle (1) of n builds at once; zero where a build does not stand.

    Each argument is a number or (n,) m: tip lines from the middle (`tip_line`), axle lines, CG.
    headings: (H,) rad. turned: how far the left front tyre stands back, and the right one ahead,
    and how far inwards both, because they are turned. Works through the builds in chunks, so that a
    million need little more memory than their answer.
    """
    numbers = (half_front, half_rear, x_front, x_rear, cg_x, cg_y, cg_z, *turned)
    columns = np.broadcast_arrays(*(np.atleast_1d(np.asarray(v, np.float64)) for v in numbers))
    d = downhill(np.atleast_1d(headings))
    answer = np.empty((len(columns[0]), len(d)))
    with np.errstate(divide="ignore", invalid="ignore"):  # a CG on or outside an edge
        for start in range(0, len(answer), CHUNK):
            some = slice(start, start + CHUNK)
            chunk = [c[some] for c in columns]
            straight = not (chunk[-1].any() or chunk[-2].any())
            answer[some] = (_tip_angles(d, *chunk[:-2]) if straight else _turned(d, *chunk)).T
    return answer


def _tip_angles(
    d: Array, front: Array, rear: Array, xf: Array, xr: Array, x: Array, y: Array, h: Array
) -> Array:
    """(H, n) rad. Side edges are left unnormalised: |n| cancels in a / n.d."""
    base, toe = xf - xr, rear - front
    middle = front * (x - xr) + rear * (xf - x)  # |n| times the distance from y = 0 to a side
    left, right = middle - base * y, middle + base * y
    tangents = np.empty((len(d), len(x)))
    for row, (dx, dy) in zip(tangents, d, strict=True):
        # The least a / n.d is the greatest inverse, and edges that face uphill drop out.
        inverse = np.maximum((toe * dx + base * dy) / left, (toe * dx - base * dy) / right)
        end = xf - x if dx > 0 else x - xr
        np.maximum(inverse, abs(dx) / end, out=inverse)
        np.divide(1.0, h * inverse, out=row)
    stands = (left > 0) & (right > 0) & (x > xr) & (x < xf)
    return np.where(stands, np.arctan(tangents), 0.0)


def _turned(
    d: Array,
    front: Array,
    rear: Array,
    xf: Array,
    xr: Array,
    x: Array,
    y: Array,
    h: Array,
    back: Array,
    inwards: Array,
) -> Array:
    """The same between (xf - back, front - inwards), (xf + back, inwards - front) and the rear: as
    there, normals are left unnormalised."""
    half, ahead_left, ahead_right = front - inwards, xf - back, xf + back
    toe, long, short = rear - half, ahead_right - xr, ahead_left - xr
    levers = (
        half * (x - xr) + rear * (ahead_left - x) - short * y,
        half * (x - xr) + rear * (ahead_right - x) + long * y,
        half * (ahead_left - x) + back * (half - y),
        x - xr,
    )
    tangents = np.empty((len(d), len(x)))
    for row, (dx, dy) in zip(tangents, d, strict=True):
        reaches = (toe * dx + short * dy, toe * dx - long * dy, half * dx + back * dy, -dx)
        inverse = np.max([r / a for r, a in zip(reaches, levers, strict=True)], axis=0)
        np.divide(1.0, h * inverse, out=row)
    stands = np.all([a > 0 for a in levers], axis=0)
    return np.where(stands, np.arctan(tangents), 0.0)


# Loads, as far as statics alone decides them


def pressure_point(cg: ArrayLike, heading: float, theta: float) -> Array:
    """(2,) m, where gravity's line through the CG meets the ground: p = c + h tan(theta) d.

    cg: (3,) m, truck axes; heading, theta: rad. The resultant of the tyre loads acts there,
    whatever the friction.
    """
    x, y, h = np.asarray(cg, dtype=np.float64)
    moved: Array = np.array([x, y]) + h * np.tan(theta) * downhill(heading)
    return moved


def axle_loads(truck: Truck, heading: float, theta: float) -> Array:
    """(2,) N normal load on front and rear axle: N_f = W cos(theta) (p_x - x_r) / L.

    heading, theta: rad; p of `pressure_point`. Below zero where that axle would have to pull.
    """
    body = whole(truck)
    p = pressure_point(body.cg, heading, theta)
    normal = body.mass * GRAVITY * np.cos(theta)
    front = normal * (p[0] - truck.rear.x) / truck.wheelbase
    return np.array([front, normal - front])


# What a change does


def mass_derivative(truck: Truck, heading: float, places: ArrayLike) -> Array:
    """(...,) rad/kg, change of the tip angle per mass added at each place (..., 3) m; heading rad.

    d(theta)/dm = f (a_i h - z_i a) / (M (a^2 + (h f)^2)), f = n.d, for the edge it tips over:
    (1) differentiated with a and h as the means of the masses. a_i, z_i: distance of the place
    to the edge and height.
    """
    body, edge, f, a = _governing(truck, heading)
    at = np.asarray(places, dtype=np.float64)
    h = body.cg[2]
    a_i = edge_distances(truck, at)[..., edge]
    derivative: Array = f * (a_i * h - at[..., 2] * a) / (body.mass * (a**2 + (h * f) ** 2))
    return derivative


def cg_gradient(truck: Truck, heading: float) -> Array:
    """(3,) rad/m, gradient of the tip angle with the CG's place; heading rad.

    d(theta)/dc = -f (h n, a) / (a^2 + (h f)^2), f = n.d, for the edge it tips over.
    """
    body, edge, f, a = _governing(truck, heading)
    h = body.cg[2]
    nx, ny = normals(truck)[edge]
    gradient: Array = -f * np.array([h * nx, h * ny, a]) / (a**2 + (h * f) ** 2)
    return gradient


def move_derivative(truck: Truck, heading: float, mass: float) -> Array:
    """(3,) rad/m, change of the tip angle as a mass (kg) on board moves: m/M d(theta)/dc.

    heading: rad.
    """
    return mass / whole(truck).mass * cg_gradient(truck, heading)


def wedge_lines(truck: Truck) -> Array:
    """(4, 2, 2) m, the line from tip line to CG for rear, left, front, right.

    Two points (s, z) each, s = x in side view for rear and front, s = y in rear view for the
    sides. A mass added below the line helps when the truck tips square over that edge, above it
    hurts: a_i / z_i > a / h. Where the side edges run at an angle, the line is the cut at the
    CG's x.

    The lines count wheels as straight ahead.
    """
    x, y, h = whole(truck).cg
    front, rear = (tip_line(a.track, a.tyre.contact_half_width) for a in truck.axles)
    half = rear + (front - rear) * (x - truck.rear.x) / truck.wheelbase
    feet, tops = (truck.rear.x, half, truck.front.x, -half), (x, y, x, y)
    return np.array([[(foot, 0.0), (top, h)] for foot, top in zip(feet, tops, strict=True)])


# Measures read from a tip


def cg_height(truck: Truck, heading: float, theta: float) -> float:
    """m, CG height at which the truck tips at theta: (1) solved, h = min(a / n.d) / tan(theta).

    heading, theta: rad, theta above 0. The CG's place in plan is taken from the truck; its height
    is not used.
    """
    reach = downhill(heading) @ normals(truck).T
    faces = reach > 0
    lever = np.min(edge_distances(truck, whole(truck).cg)[faces] / reach[faces])
    return float(lever / np.tan(theta))


def _governing(truck: Truck, heading: float) -> tuple[Body, int, float, float]:
    """The whole body, the edge it tips over, n.d there and the distance a to it."""
    body = whole(truck)
    edge = int(tip_edge(truck, heading))
    f = float(downhill(heading) @ normals(truck)[edge])
    return body, edge, f, float(edge_distances(truck, body.cg)[edge])
