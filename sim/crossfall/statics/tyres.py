"""Tyre contact: rigid discs on springs along the axle's z axis, touching at their lowest point.

Derivatives are by the six components of a small twist of the axle in table axes and by the table
angle: arrays with 7 in front, (w_x, w_y, w_z, v_x, v_y, v_z, theta).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics.builds import Builds, Flags
from crossfall.statics.kinematics import Pose, carry, cross, dot
from crossfall.truck.model import Array


@dataclass(frozen=True)
class Discs:
    """The contact discs of both axles, where they would touch the table.

    squash: (2, p, B) movement of the wheel along axle z that brings its lowest rim point to the
    table. point: (3, 2, p, B) that rim point. along, ahead, sideways: (3, 2, 1, B) axle z, and the
    horizontal directions of rolling and of the wheel axis. tilt: (2, 1, B) horizontal part of the
    wheel axis. arc: (2, 1, B) rad the held wheels have rolled, d arc = (w . sideways) / tilt.
    d_squash: (7, 2, p, B), d_point: (3, 7, 2, p, B).
    """

    squash: Array
    point: Array
    along: Array
    ahead: Array
    sideways: Array
    tilt: Array
    arc: Array
    d_squash: Array
    d_point: Array


def discs(builds: Builds, pose: Pose) -> Discs:
    """Lowest point of each disc in its own plane, brought to z = 0 along the axle's z axis.

    With wheel axis e (unit), tilt s = sqrt(1 - e_z^2) and the wheel centre C: the rim point below
    it is C - R (z - e_z e) / s, and the squash is (R s - C_z) / a_z along the axle's z axis a.
    A twist (w, v) of the axle moves the rim's material point by v + w x P, so the squash changes
    by -(v + w x P)_z / a_z; the touching point besides runs along the rim by R (w . b) / s.
    """
    turn = pose.turn[:, :, :2, None]
    centre = pose.origin[:, :2, None] + carry(turn, builds.disc_centre)
    axis, along = turn[:, 1], turn[:, 2]
    tilt = np.sqrt(1 - axis[2] ** 2)
    squash = (builds.radius * tilt - centre[2]) / along[2]
    sideways, ahead = np.zeros_like(axis), np.zeros_like(axis)
    np.divide(axis[:2], tilt, out=sideways[:2])
    ahead[0], ahead[1] = sideways[1], -sideways[0]
    point = centre + squash * along + (builds.radius * axis[2]) * sideways
    point[2] = 0.0

    arc = np.arctan2(-turn[2, 0], turn[2, 2])
    shape = squash.shape
    d_squash = np.zeros((7, *shape))
    d_squash[0], d_squash[1] = -point[1] / along[2], point[0] / along[2]
    d_squash[5] = -1 / along[2]
    d_point = along[:, None] * d_squash
    roll = builds.radius / tilt * ahead
    for k in range(2):
        d_point[:, k] += roll * sideways[k]
    add_turning(d_point, point)
    for k in range(3):
        d_point[k, 3 + k] += 1
    return Discs(squash, point, along, ahead, sideways, tilt, arc, d_squash, d_point)


def add_turning(columns: Array, point: Array) -> None:
    """Add e_k x point to the first three of columns (3, 7, ...)."""
    columns[1, 0] -= point[2]
    columns[2, 0] += point[1]
    columns[0, 1] += point[2]
    columns[2, 1] -= point[0]
    columns[0, 2] -= point[1]
    columns[1, 2] += point[0]


@dataclass(frozen=True)
class Contact:
    """What the table does to the tyres.

    load: (2, p, B), the contact's load if it touched (negative: it does not); d_load (7, ...).
    travel: (2, p, B) of the wheel along axle z, d_travel
    (7, ...). The force on the tyre: held (2, p, B), the part straight up against gravity, d_held
    (7, ...); force (3, 2, p, B), any other, d_force (3, 7, 2, p, B), or None.
    """

    load: Array
    d_load: Array
    travel: Array
    d_travel: Array
    held: Array
    d_held: Array
    force: Array | None = None
    d_force: Array | None = None


def uprightness(discs: Discs, gravity: Array, d_gravity: Array) -> tuple[Array, Array]:
    """Cosine between axle z and straight up, (2, 1, B), and its derivatives (7, 2, 1, B)."""
    g, dg = gravity[:, None, None], d_gravity[:, None, None]
    upright = -dot(discs.along, g)
    slope = np.zeros((7, *upright.shape))
    slope[:3] = -cross(discs.along, g)
    slope[6] = -dot(discs.along, dg)
    return upright, slope


def hanging(
    builds: Builds, discs: Discs, touch: Flags, upright: Array, d_upright: Array
) -> tuple[Array, Array]:
    """Travel of every wheel: the squash where it touches, else where its tyre spring holds it."""
    free = (builds.disc_mass * (1 - upright) - builds.tyre_load) / builds.tyre_rate
    d_free = -(builds.disc_mass / builds.tyre_rate) * d_upright
    travel = np.where(touch, discs.squash, free)
    return travel, np.where(touch, discs.d_squash, d_free)


def uniform(
    builds: Builds, discs: Discs, gravity: Array, d_gravity: Array, touch: Flags | None
) -> Contact:
    """Every contact force straight up against gravity: least friction, all slip together.

    Balance of the wheel along axle z: (P - m) u = F0 - m + k d, with contact force P, wheel mass
    m, u the cosine between axle z and the vertical, F0 the load at ride height, d the squash.
    """
    upright, d_upright = uprightness(discs, gravity, d_gravity)
    spring = (builds.tyre_load - builds.disc_mass + builds.tyre_rate * discs.squash) / upright
    load = builds.disc_mass + spring
    d_load = (builds.tyre_rate * discs.d_squash - spring * d_upright) / upright
    touch = load >= 0 if touch is None else touch
    travel, d_travel = hanging(builds, discs, touch, upright, d_upright)
    return Contact(load, d_load, travel, d_travel, load * touch, d_load * touch)
