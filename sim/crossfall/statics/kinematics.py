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

UNIFORM = ("z", "pitch", "roll", "front heave", "front roll", "rear heave", "rear roll")
STICKING = ("x", "y", "z", "yaw", *UNIFORM[1:])


def cross(a: Array, b: Array) -> Array:
    """a x b for arrays (3, ...)."""
    out = np.empty(np.broadcast_shapes(a.shape, b.shape))
    out[0] = a[1] * b[2] - a[2] * b[1]
    out[1] = a[2] * b[0] - a[0] * b[2]
    out[2] = a[0] * b[1] - a[1] * b[0]
    return out


def dot(a: Array, b: Array) -> Array:
    """a . b for arrays (3, ...)."""
    return np.asarray(a[0] * b[0] + a[1] * b[1] + a[2] * b[2])


def gravity_direction(heading: Array, theta: Array) -> tuple[Array, Array]:
    """Unit vector of gravity in table axes, (3, B), and its derivative in theta.

    Downhill is (-cos heading, sin heading, 0) in the truck's axes.
    """
    downhill = np.stack([-np.cos(heading), np.sin(heading), np.zeros_like(heading)])
    down = np.stack([np.zeros_like(theta), np.zeros_like(theta), -np.ones_like(theta)])
    sin, cos = np.sin(theta), np.cos(theta)
    return sin * downhill + cos * down, cos * downhill - sin * down


@dataclass(frozen=True)
class Pose:
    """Chassis and axle frames in table axes.

    origin: (3, B), the truck's origin on the chassis. turn: (3, 3, B) chassis to table.
    roll_centre: (3, 2, B). axle_turn: (3, 3, 2, B), columns are the axle's x, y, z axes.
    base: (6, n, B) twists of the chassis freedoms. joint: (6, 2, 2, B) of (heave, roll) per axle.
    """

    origin: Array
    turn: Array
    roll_centre: Array
    axle_turn: Array
    base: Array
    joint: Array


def chassis_freedoms(x: Array) -> tuple[Array, Array]:
    """(3, B) origin and (3, B) yaw, pitch, roll from the unknowns (7 or 10, B)."""
    zero = np.zeros_like(x[0])
    if len(x) == len(STICKING):
        return x[:3], x[3:6]
    return np.stack([zero, zero, x[0]]), np.stack([zero, x[1], x[2]])


def place(builds: Builds, x: Array) -> Pose:
    """Frames and twists at the unknowns x (7 or 10, B): z-y-x angles, then heave, then roll."""
    origin, (yaw, pitch, roll) = chassis_freedoms(x)
    cy, sy, cp, sp, cr, sr = (f(a) for a in (yaw, pitch, roll) for f in (np.cos, np.sin))
    zero, one = np.zeros_like(yaw), np.ones_like(yaw)
    turn = np.array(
        [
            [cy * cp, cy * sp * sr - sy * cr, cy * sp * cr + sy * sr],
            [sy * cp, sy * sp * sr + cy * cr, sy * sp * cr - cy * sr],
            [-sp, cp * sr, cp * cr],
        ]
    )
    heave, axle_roll = x[-4::2], x[-3::2]
    centre = builds.roll_centre + heave * builds.heave_axis
    centre = origin[:, None] + np.einsum("ijb,jab->iab", turn, centre)
    c, s = np.cos(axle_roll), np.sin(axle_roll)
    ex, ey, ez = (turn[:, i, None] for i in range(3))
    axle_turn = np.stack([ex + 0 * c, c * ey + s * ez, c * ez - s * ey], axis=1)

    pitch_axis, roll_axis = np.stack([-sy, cy, zero]), turn[:, 0]
    turning = [pitch_axis, roll_axis]
    sliding = [np.stack([zero, zero, one])]
    if len(x) == len(STICKING):
        turning = [sliding[0], *turning]
        sliding = [np.stack([one, zero, zero]), np.stack([zero, one, zero]), *sliding]
    slides = [np.concatenate([np.zeros_like(a), a]) for a in sliding]
    turns = [np.concatenate([a, cross(origin, a)]) for a in turning]
    heave_axis = np.einsum("ijb,jab->iab", turn, builds.heave_axis)
    heaves = np.concatenate([np.zeros_like(heave_axis), heave_axis])
    rolls = np.concatenate([ex + 0 * c, cross(centre, ex + 0 * c)])
    joint = np.stack([heaves, rolls], axis=1)
    return Pose(origin, turn, centre, axle_turn, np.stack(slides + turns, axis=1), joint)
