"""Where everything is: chassis pose, joints, and how points and axes move with them.

The table's plane is z = 0 and its axes are the truck's at the start; tilting the table is the same
as turning gravity the other way. The last axis of every array is the case. A freedom is a twist
(turning rate, velocity of the point at the table's origin), a load a wrench (moment about the
table's origin, force), so that power is their product: R. Featherstone, Rigid Body Dynamics
Algorithms (2008), chapter 2.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics.builds import Builds
from crossfall.truck.model import Array

SHIFTS = np.array([1, 2, 0, 1])
FREEDOMS = (
    *("x", "y", "z", "yaw", "pitch", "roll"),
    *("front heave", "front roll", "rear heave", "rear roll"),
)


def cross(a: Array, b: Array) -> Array:
    """a x b for arrays (3, ...), by cyclic shifts: (y, z, x) (z, x, y) - (z, x, y) (y, z, x)."""
    a, b = a.take(SHIFTS, axis=0), b.take(SHIFTS, axis=0)
    out: Array = a[:3] * b[1:]
    out -= a[1:] * b[:3]
    return out


def dot(a: Array, b: Array) -> Array:
    """a . b for arrays (3, ...)."""
    return np.asarray(a[0] * b[0] + a[1] * b[1] + a[2] * b[2])


def gravity_direction(heading: Array, theta: Array) -> tuple[Array, Array]:
    """Unit vector of gravity in table axes, (3, B), and its derivative in theta.

    Downhill is (-cos heading, sin heading, 0) in the truck's axes.
    """
    sin, cos = np.sin(theta), np.cos(theta)
    downhill = np.zeros((3, len(theta)))
    downhill[0], downhill[1] = -np.cos(heading), np.sin(heading)
    gravity, slope = sin * downhill, cos * downhill
    gravity[2], slope[2] = -cos, sin
    return gravity, slope


@dataclass(frozen=True)
class Pose:
    """Frames of front axle, rear axle and chassis in table axes.

    origin: (3, 3, B), the axles' roll centres and the truck's origin on the chassis. turn:
    (3, 3, 3, B), body axes as columns. twists: (6, 8, 3, B), the freedoms that carry each
    body: the chassis', then its own heave and roll (zero for the chassis).
    """

    origin: Array
    turn: Array
    twists: Array


def place(builds: Builds, x: Array) -> Pose:
    """Frames and twists at the unknowns x (10, B) of FREEDOMS: z-y-x angles, then the joints."""
    angles = np.empty((5, x.shape[1]))
    angles[:3], angles[3:] = x[3:6], x[7::2]
    (cy, cp, cr), (sy, sp, sr) = np.cos(angles[:3]), np.sin(angles[:3])
    c, s = np.cos(angles[3:]), np.sin(angles[3:])

    turn = np.empty((3, 3, 3, x.shape[1]))
    body = turn[:, :, 2]
    body[0, 0], body[1, 0], body[2, 0] = cy * cp, sy * cp, -sp
    body[0, 1], body[1, 1], body[2, 1] = cy * sp * sr - sy * cr, sy * sp * sr + cy * cr, cp * sr
    body[0, 2], body[1, 2], body[2, 2] = cy * sp * cr + sy * sr, sy * sp * cr - cy * sr, cp * cr
    turn[:, 0, :2] = body[:, 0, None]
    turn[:, 1, :2] = c * body[:, 1, None] + s * body[:, 2, None]
    turn[:, 2, :2] = c * body[:, 2, None] - s * body[:, 1, None]

    origin = np.empty((3, 3, x.shape[1]))
    origin[:, 2] = x[:3]
    centre = builds.roll_centre + x[6::2] * builds.heave_axis
    origin[:, :2] = origin[:, 2, None] + carry(body[:, :, None], centre)

    twists = np.zeros((6, 8, 3, x.shape[1]))
    for axis in range(3):
        twists[3 + axis, axis, :] = 1.0
    twists[2, 3] = 1.0  # yaw
    twists[0, 4], twists[1, 4] = -sy, cy  # pitch
    twists[:3, 5] = body[:, 0, None]  # roll
    twists[3:, 3:6] = cross(origin[:, 2, None, None], twists[:3, 3:6])
    twists[3:, 6, :2] = carry(body[:, :, None], builds.heave_axis)
    twists[:3, 7, :2] = body[:, 0, None]
    twists[3:, 7, :2] = cross(origin[:, :2], body[:, 0, None])
    return Pose(origin, turn, twists)


def carry(turn: Array, vector: Array) -> Array:
    """Rotate vectors (3, ...) by (3, 3, ...)."""
    return np.asarray(turn[:, 0] * vector[0] + turn[:, 1] * vector[1] + turn[:, 2] * vector[2])
