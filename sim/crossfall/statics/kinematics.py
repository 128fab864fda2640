"""Where everything is: chassis pose, joints, and how points and axes move with them.

The table's plane is z = 0 and its axes are the truck's at the start; tilting the table is the same
as turning gravity the other way. The last axis of every array is the case. A freedom is a twist
(turning rate, velocity at the chassis' origin), a load a wrench (moment about the chassis' origin,
force), so that power is their product. Places are relative to the chassis' origin, which moves with
the truck.

Shapes that do not fit raise numpy's ValueError; nothing else is refused.

Source: R. Featherstone, Rigid Body Dynamics Algorithms (2008), chapter 2, for twists and wrenches;
ISO 8855 for the order of yaw, pitch and roll (both from memory); the axles' own twists are derived
here from their law.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics.builds import Builds
from crossfall.truck.axle_law import (
    BY_Q,
    BY_QQ,
    BY_QR,
    BY_R,
    BY_RR,
    LEFT,
    PITCH,
    VALUE,
    YAW,
    Z,
    axle_law_values,
)
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
    """a . b for arrays (3, ...), (...): x x + y y + z z."""
    return np.asarray(a[0] * b[0] + a[1] * b[1] + a[2] * b[2])


def gravity_direction(heading: Array, theta: Array) -> tuple[Array, Array]:
    """Unit vector of gravity in table axes, (3, B), and its derivative in theta; (B,) rad each.

    g = (sin(theta) d, -cos(theta)) with downhill d = (-cos heading, sin heading) in the truck's
    axes.
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

    place: (3, B), the truck's origin on the chassis. origin: (3, 3, B), from there, the axles'
    points and 0. turn: (3, 3, 3, B), body axes as columns. turning: (3, 3, B) axes about which
    yaw, pitch and roll turn, as columns. joints: (6, 2, 2, B) twists of the axles' heave and roll.
    bends: (6, 2, 2, 2, B) their derivatives by heave and roll. corners: (2, 6, 2, B) compression of
    left and right, and its derivatives as in `truck.axle_law`.
    """

    place: Array
    origin: Array
    turn: Array
    turning: Array
    joints: Array
    bends: Array
    corners: Array


def frames_at(builds: Builds, x: Array) -> Pose:
    """Frames and twists at the unknowns x (10, B) of FREEDOMS: z-y-x angles, then the joints.

    Lengths over the wheelbase, angles rad. R = Rz(yaw) Ry(pitch) Rx(roll); an axle's frame is R
    times what its law says.
    """
    count = x.shape[1]
    cos, sin = np.cos(x[3:6]), np.sin(x[3:6])
    (cy, cp, cr), (sy, sp, sr) = cos, sin
    turning, chassis = np.zeros((3, 3, count)), np.empty((3, 3, count))
    turning[2, 0] = 1.0
    turning[0, 1], turning[1, 1] = -sy, cy
    turning[0, 2], turning[1, 2], turning[2, 2] = cy * cp, sy * cp, -sp
    across, ahead, upright = turning[:, 1], turning[:, 2], np.stack([cy * sp, sy * sp, cp])
    chassis[:, 0] = ahead
    chassis[:, 1] = cr * across + sr * upright
    chassis[:, 2] = cr * upright - sr * across

    law = axle_law_values(builds.law, x[6::2], x[7::2])
    inside = _inside(builds.point, law[:LEFT], x[7::2], builds.law.shape[1] == 2)
    outside = chassis[:, 0, None, None] * inside[0]
    outside += chassis[:, 1, None, None] * inside[1]
    outside += chassis[:, 2, None, None] * inside[2]
    turn, origin = np.empty((3, 3, 3, count)), np.zeros((3, 3, count))
    turn[:, :, :2], turn[:, :, 2] = outside[:, :3], chassis
    origin[:, :2] = outside[:, 3]
    joints = np.concatenate([outside[:, 4:6], outside[:, 6:8]])
    bends = np.concatenate([outside[:, 8:12], outside[:, 12:16]]).reshape(6, 2, 2, 2, count)
    return Pose(x[:3], origin, turn, turning, joints, bends, law[LEFT:])


def _inside(point: Array, law: Array, roll: Array, straight: bool) -> Array:
    """(3, 16, 2, B) in chassis axes, of both axles: their own axes (3), place (1), turning (2) and
    shifting (2) of heave and roll about the chassis' origin, and how those turn (4) and shift (4)
    with heave and roll: heave by heave, by roll, roll by heave, by roll.

    With A = Rz(yaw) Ry(pitch) Rx(roll), w = yaw' e_z + pitch' n + roll' a, n = Rz e_y, a = A e_x;
    the twist of a body at p about the origin shifts by p' - w x p. straight: a law of the first
    degree, under which axles neither yaw nor pitch.
    """
    yaw, pitch = law[YAW], law[PITCH]
    if straight:
        return _inside_straight(point + law[: Z + 1, VALUE], law[: Z + 1, BY_Q], roll)
    shape = (3, *roll.shape)
    cy, sy = np.cos(yaw[VALUE]), np.sin(yaw[VALUE])
    cp, sp, cr, sr = (f(a) for a in (pitch[VALUE], roll) for f in (np.cos, np.sin))
    out = np.zeros((3, 16, *roll.shape))
    n, ahead, up, up_n = np.zeros(shape), np.empty(shape), np.empty(shape), np.zeros(shape)
    n[0], n[1], up_n[0], up_n[1] = -sy, cy, -cy, -sy
    ahead[0], ahead[1], ahead[2] = cy * cp, sy * cp, -sp
    up[0], up[1], up[2] = cy * sp, sy * sp, cp
    out[:, 0] = ahead
    out[:, 1] = cr * n + sr * up
    out[:, 2] = cr * up - sr * n
    at = point + law[: Z + 1, VALUE]
    out[:, 3] = at
    turns = pitch[[BY_Q, BY_R]] * n[:, None]  # without roll's own turn: that carries the x axis
    turns[2] += yaw[[BY_Q, BY_R]]
    spin = turns.copy()
    spin[:, 1] += ahead
    shift = law[: Z + 1, [BY_Q, BY_R]]
    out[:, 4:6], out[:, 6:8] = spin, shift + cross(at[:, None], spin)
    twice = [BY_QQ, BY_QR, BY_QR, BY_RR]
    bend = pitch[twice] * n[:, None]
    bend += (pitch[[BY_Q, BY_Q, BY_R, BY_R]] * yaw[[BY_Q, BY_R, BY_Q, BY_R]]) * up_n[:, None]
    bend[2] += yaw[twice]
    bend[:, 2:] += cross(turns, ahead[:, None])
    out[:, 8:12] = bend
    out[:, 12:16] = law[: Z + 1, twice] + cross(at[:, None], bend)
    out[:, 12:16] += cross(shift[:, [0, 1, 0, 1]], spin[:, [0, 0, 1, 1]])
    return out


def _inside_straight(at: Array, shift: Array, roll: Array) -> Array:
    """The same, quicker: w = 0 for heave and e_x for roll."""
    out = np.zeros((3, 16, *roll.shape))
    cr, sr = np.cos(roll), np.sin(roll)
    out[0, 0] = out[0, 5] = 1.0
    out[1, 1], out[2, 1], out[1, 2], out[2, 2] = cr, sr, -sr, cr
    out[:, 3], out[:, 6] = at, shift
    for row, vector in ((7, at), (14, shift)):
        out[1, row], out[2, row] = vector[2], -vector[1]
    return out


def carry(turn: Array, vector: Array) -> Array:
    """Rotate vectors (3, ...) by (3, 3, ...): R v."""
    return np.asarray(np.einsum("ij...,j...->i...", turn, vector))


def skew(vector: Array) -> Array:
    """(3, 3, ...) the matrices [a] with [a] b = a x b of vectors a (3, ...)."""
    parts = np.zeros((7, *vector.shape[1:]))
    parts[:3] = vector
    np.negative(vector, out=parts[3:6])
    return parts.take(SKEW, axis=0)
