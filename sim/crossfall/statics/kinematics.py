"""Where everything is: chassis pose, joints, and how points and axes move with them.

The table's plane is z = 0 and its axes are the truck's at the start; tilting the table is the same
as turning gravity the other way. The last axis of every array is the case. A freedom is a twist
(turning rate, velocity at the chassis' origin), a load a wrench (moment about the chassis' origin,
force), so that power is their product: R. Featherstone, Rigid Body Dynamics Algorithms (2008),
chapter 2. Places are relative to the chassis' origin, which moves with the truck.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics.builds import Builds
from crossfall.truck.model import Array

SHIFTS = np.array([1, 2, 0, 1])
SKEW = np.array([[6, 5, 1], [2, 6, 3], [4, 0, 6]])  # of x, y, z, -x, -y, -z, 0
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

    place: (3, B), the truck's origin on the chassis. origin: (3, 3, B), from there, the axles' roll
    centres and 0. turn: (3, 3, 3, B), body axes as columns. turning: (3, 3, B) axes about which
    yaw, pitch and roll turn, as columns. joints: (6, 2, 2, B) twists of the axles' heave and roll.
    """

    place: Array
    origin: Array
    turn: Array
    turning: Array
    joints: Array


def place(builds: Builds, x: Array) -> Pose:
    """Frames and twists at the unknowns x (10, B) of FREEDOMS: z-y-x angles, then the joints."""
    count = x.shape[1]
    angles = np.empty((5, count))
    angles[:2], angles[2:4], angles[4] = x[3:5], x[5] + x[7::2], x[5]
    cos, sin = np.cos(angles), np.sin(angles)
    (cy, cp), (sy, sp) = cos[:2], sin[:2]
    # All three bodies share their x axis, and turn about it from the level across to the upright.
    turning, upright = np.zeros((3, 3, count)), np.empty((3, 1, count))
    turning[2, 0] = 1.0
    turning[0, 1], turning[1, 1] = -sy, cy
    turning[0, 2], turning[1, 2], turning[2, 2] = cy * cp, sy * cp, -sp
    upright[0, 0], upright[1, 0], upright[2, 0] = cy * sp, sy * sp, cp
    across, ahead = turning[:, 1, None], turning[:, 2, None]
    turn = np.empty((3, 3, 3, count))
    turn[:, 0] = ahead
    turn[:, 1] = cos[2:] * across + sin[2:] * upright
    turn[:, 2] = cos[2:] * upright - sin[2:] * across

    inside = np.empty((3, 2, 2, count))
    inside[:, 0] = builds.heave_axis
    inside[:, 1] = builds.roll_centre + x[6::2] * builds.heave_axis
    outside = carry(turn[:, :, 2, None, None], inside)
    origin = np.zeros((3, 3, count))
    origin[:, :2] = outside[:, 1]
    joints = np.zeros((6, 2, 2, count))
    joints[3:, 0] = outside[:, 0]
    joints[:3, 1] = ahead
    joints[3:, 1] = cross(outside[:, 1], ahead)
    return Pose(x[:3], origin, turn, turning, joints)


def carry(turn: Array, vector: Array) -> Array:
    """Rotate vectors (3, ...) by (3, 3, ...)."""
    return np.asarray(np.einsum("ij...,j...->i...", turn, vector))


def skew(vector: Array) -> Array:
    """(3, 3, ...) the matrices [a] with [a] b = a x b of vectors a (3, ...)."""
    parts = np.zeros((7, *vector.shape[1:]))
    parts[:3] = vector
    np.negative(vector, out=parts[3:6])
    return parts.take(SKEW, axis=0)
