"""Volume and inertia of the plain shapes a part can have. SI; own axes about the own centre.

Round solids lie along their own z. Lengths are in m and not checked here.

Source: J. L. Meriam and L. G. Kraige, Engineering Mechanics: Dynamics, appendix D, table of
homogeneous solids (from memory), where nothing else stands below.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from math import pi, sqrt

import numpy as np

from crossfall.truck import shapes
from crossfall.truck.model import Array, Shape, frozen

MM = 1e-3

# Proper rotations that carry a shape's own z axis onto x, y or z; whole numbers, so exact.
ALONG: dict[str, Array] = {
    "x": frozen([[0, 0, 1], [1, 0, 0], [0, 1, 0]]),
    "y": frozen([[0, 1, 0], [0, 0, 1], [1, 0, 0]]),
    "z": frozen(np.eye(3)),
}

# A part without a shape counts as a compact lump of this density, kg/m^3: between plastics and
# light metal, so that a bare mass still has a believable inertia.
LUMP_DENSITY = 2000.0


@dataclass(frozen=True, eq=False)  # compared by identity, so that one can be a cache key
class Solid:
    """A homogeneous solid.

    volume: m^3. centre: (3,) m, mass centre from the place it is put by. gyration: (3, 3) m^2,
    inertia over mass about the mass centre. shape, axis: for drawing; axis (3, 3) turns the
    shape's own axes into the solid's.
    """

    volume: float
    centre: Array
    gyration: Array
    shape: Shape
    axis: Array


def box_gyration(x: float, y: float, z: float) -> Array:
    """(3, 3) m^2, inertia over mass of a block of these edges: (y^2 + z^2) / 12 and so on."""
    return np.diag([y * y + z * z, x * x + z * z, x * x + y * y]) / 12


def tube_gyration(outer: float, inner: float, length: float) -> Array:
    """(3, 3) m^2, inertia over mass of a round tube of these radii along z; inner 0 is a solid rod.

    (R^2 + r^2) / 2 about z, (3 (R^2 + r^2) + l^2) / 12 across.
    """
    square = outer * outer + inner * inner
    side = (3 * square + length * length) / 12
    return np.diag([side, side, square / 2])


def sphere_gyration(radius: float) -> Array:
    """(3, 3) m^2, inertia over mass of a ball: 2/5 R^2."""
    return 0.4 * radius * radius * np.eye(3)


def block(x: float, y: float, z: float, wall: float | None = None) -> Solid:
    """A block of edges x, y, z, or a closed shell of that wall thickness, m.

    V = x y z; of a shell less the hole's, V and V times gyration both. A wall of 0 leaves nothing,
    and nan.
    """
    volume, gyration = x * y * z, box_gyration(x, y, z)
    if wall is not None:
        inner = (x - 2 * wall, y - 2 * wall, z - 2 * wall)
        hollow = inner[0] * inner[1] * inner[2]
        moment = volume * gyration - hollow * box_gyration(*inner)
        volume -= hollow
        gyration = moment / volume
    return _plain(volume, gyration, Shape("box", (x, y, z)), "z")


def tube(outer: float, inner: float, length: float, along: str) -> Solid:
    """A round tube by its radii, or with inner 0 a solid cylinder: V = pi (R^2 - r^2) l.

    along: the axis it lies on, x, y or z; any other raises KeyError.
    """
    volume = pi * (outer * outer - inner * inner) * length
    size = (outer, inner, length) if inner else (outer, length)
    shape = Shape("tube" if inner else "cylinder", size)
    return _plain(volume, tube_gyration(outer, inner, length), shape, along)


def ball(radius: float) -> Solid:
    """A ball: V = 4/3 pi R^3."""
    volume = 4 / 3 * pi * radius**3
    return _plain(volume, sphere_gyration(radius), Shape("sphere", (radius,)), "z")


def wound(drum: float, width: float, thickness: float, length: float, along: str) -> Solid:
    """A strip wound onto a drum of radius `drum`, spread evenly round it.

    Its section is the ring of the strip's own volume: length x thickness = pi (R^2 - drum^2).

    width, thickness, length: m of the strip. Raises as `tube` does.

    Source: derived here: a strip keeps its volume when it is wound.
    """
    outer = sqrt(drum * drum + length * thickness / pi)
    return tube(outer, drum, width, along)


def lump(mass: float) -> Solid:
    """What a part without a shape counts as: a ball of LUMP_DENSITY; mass: kg.

    R = (3 m / (4 pi density))^(1/3).

    Source: common practice, no source, for a lump as a ball; its density is an assumption.
    """
    return ball((mass / LUMP_DENSITY * 3 / (4 * pi)) ** (1 / 3))


@lru_cache(maxsize=4096)
def solid(shape: shapes.AnyShape, length: float | None = None) -> Solid:
    """The solid of any shape of the file but a mesh; `length` (m) where a link's rod has none.

    Lengths of a shape are mm. Raises TypeError for a mesh, and for a rod without any length.
    """
    match shape:
        case shapes.Box():
            wall = None if shape.wall_mm is None else shape.wall_mm * MM
            x, y, z = (v * MM for v in shape.size_mm)
            return block(x, y, z, wall)
        case shapes.Plate():
            return block(shape.length_mm * MM, shape.width_mm * MM, shape.thickness_mm * MM)
        case shapes.Rod() | shapes.Cylinder():
            own = _length(shape.length_mm, length)
            return tube(shape.diameter_mm * MM / 2, 0.0, own, shape.along)
        case shapes.Tube():
            own = _length(shape.length_mm, length)
            return tube(shape.outer_mm * MM / 2, shape.inner_mm * MM / 2, own, shape.along)
        case shapes.Ring():
            outer, inner = shape.outer_mm * MM / 2, shape.inner_mm * MM / 2
            return tube(outer, inner, shape.width_mm * MM, shape.along)
        case shapes.Sphere():
            return ball(shape.diameter_mm * MM / 2)
        case shapes.Strip():
            return wound(
                shape.around_mm * MM / 2,
                shape.width_mm * MM,
                shape.thickness_mm * MM,
                shape.length_mm * MM,
                shape.along,
            )
    raise TypeError(f"{shape.kind} is not a plain shape")


def _length(own_mm: float | None, length: float | None) -> float:
    if own_mm is not None:
        return own_mm * MM
    if length is None:
        raise TypeError("a rod without a length is for links only")
    return length


def _plain(volume: float, gyration: Array, shape: Shape, along: str) -> Solid:
    axis = ALONG[along]
    return Solid(volume, frozen(np.zeros(3)), frozen(axis @ gyration @ axis.T), shape, axis)
