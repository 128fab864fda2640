"""Open differentials between the wheels of an axle that the motor holds by its shaft.

The two wheels turn against each other, by s and -s, until the shaft's torque is shared evenly: with
way = R ahead and F the ground force on a wheel's contact points

    sum over the left F . way = sum over the right F . way                              (1)

which hangs on s alone, since both wheels sit on one axle. So s is solved for here, at every look,
and is no unknown of the truck's; the derivatives below have it follow. It counts from where the
tyres' history stood. Wheels against a rail are held there, and so their axle counts as locked.

Source: derived here from virtual work: an open differential turns its two wheels by s and -s at no
work of the shaft, so both have the same torque.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from crossfall.statics.builds import Builds
from crossfall.statics.kinematics import Pose
from crossfall.statics.tyres import Contact, Discs, Patches, contact
from crossfall.truck.model import Array, Flags

_CLOSE = 1e-11  # of the weight and wheelbase, to which (1) is solved
_ROUNDS = 40
_LEAST = 0.02  # of what tyres that stick give, that a step on slipping ones reckons with at least
_TURN = 0.1  # rad in one step


def shared(
    builds: Builds,
    pose: Pose,
    disc: Discs,
    patches: Patches,
    gravity: Array,
    d_gravity: Array,
    touch: Flags | None,
    stick: Flags | None,
) -> Contact:
    """`contact`, with (1) on every open axle, by Newton's method on s, between bounds: tyres that
    slip both ways pull alike however far they turn.

    Arguments and shapes as of `contact`. Raises nothing: s is good to 1e-11, or the last of 40
    rounds.
    """
    loose = builds.open & np.isfinite(patches.friction).all(axis=1)  # (2, B)
    points = builds.disc_mass.shape[1]
    side = np.repeat([1.0, -1.0], points // 2)[:, None]
    way = np.broadcast_to(builds.radius * patches.ahead, (2, *builds.disc_mass.shape))
    firm = (builds.radius**2 * builds.tyre_rate[0]).sum(axis=1) * points
    s = np.zeros(loose.shape)
    low, high = np.full_like(s, -np.inf), np.full_like(s, np.inf)
    for _ in range(_ROUNDS):
        spin = side * s[:, None]
        tyres = contact(builds, pose, disc, patches, gravity, d_gravity, touch, stick, spin)
        apart = (side * (way * tyres.force[:2]).sum(axis=0)).sum(axis=1)
        gain = _gain(tyres, way)
        live = loose & (np.abs(apart) > _CLOSE) & tyres.touch.any(axis=1)
        if not live.any():
            break
        high, low = np.where(apart > 0, s, high), np.where(apart > 0, low, s)
        tried = s - np.clip(apart / np.maximum(gain, _LEAST * firm), -_TURN, _TURN)
        beside = ~((low < tried) & (tried < high))  # only where both are known
        s = np.where(live, np.where(beside, (low + high) / 2, tried), s)
    return _following(tyres, way, side, gain, loose & (gain > 0))


def _turned(tyres: Contact, way: Array) -> tuple[Array, Array]:
    """(3, 2, p, B) by how much a wheel's force grows, and (2, 2, p, B) its point moves, by a turn
    ahead: as if the axle went back under it."""
    force = -np.einsum("ikapb,kapb->iapb", tyres.d_force[:, 3:5], way)
    point = (way - np.einsum("ikapb,kapb->iapb", tyres.d_point[:, 3:5], way)) * tyres.touch
    return force, point


def _gain(tyres: Contact, way: Array) -> Array:
    """(2, B) by how much what the two sides of (1) are apart grows with s."""
    force, _ = _turned(tyres, way)
    return np.asarray((way * force[:2]).sum(axis=(0, 2)))


def _following(tyres: Contact, way: Array, side: Array, gain: Array, loose: Flags) -> Contact:
    """The same contact, its derivatives with s as it follows from (1)."""
    force, point = _turned(tyres, way)
    by = (side * (way[:, None] * tyres.d_force[:2]).sum(axis=0)).sum(axis=2)  # (7, 2, B)
    follows = -by * loose / np.where(loose, gain, 1.0)
    turn = side * follows[:, :, None]
    return replace(
        tyres,
        d_force=tyres.d_force + force[:, None] * turn,
        d_point=tyres.d_point + point[:, None] * turn,
    )
