"""Tyre contact: discs on springs along their axle's axes, held by the table's friction where they
touched.

A wheel sits on its axle by three springs K = diag(k_x, k_y, k_z) along the axle's axes A, and gives
by d = A^T u; as held (braked) disc it touches the table with its lowest point. With rim point P
(the disc's lowest if it had not given), contact point Q, wheel mass m, ground load F0 at ride
height and gravity g, all over the truck's weight and wheelbase:

    u = Q - P,   S = (F0 - m) A e_z + A K A^T u,   ground force F = S - m g             (1)

While it sticks Q stays where it touched, but that a disc turning with its axle rolls along. The
friction limit |F_t| <= mu F_n is kept by return mapping (e.g. Simo and Hughes, Computational
Inelasticity (1998), chapter 1): the patch slips against the friction, whose direction t turns
between two looks from t_0, if it slipped there already, so that Q moves by -kappa m with

    F_t - kappa G m = mu (F_n - kappa g.m) t,   G = A K A^T,   m = (t_0 + t) / 2 or t   (2)

which is the trapezium rule, good to the square of the step.

A wheel in the air hangs on its springs, u = m A K^-1 A^T g - (F0 - m) A e_z / k_z; it is off when
its lowest point then is above the table, and is anchored anew, pulling nowhere, where it comes
down.

Derivatives are by the six components of a small twist of the axle in table axes and by the table
angle: arrays with 7 in front, (w_x, w_y, w_z, v_x, v_y, v_z, theta).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, fields

import numpy as np

from crossfall.statics.builds import Builds, Flags, Index
from crossfall.statics.kinematics import Pose, carry, dot
from crossfall.truck.model import Array

AT_LIMIT = 1e-8  # of the truck's weight: a tyre that has slipped is at its limit, and counted so
LIKE = 0.5  # cosine between two ways of slipping, below which the earlier one says nothing
LEAST_GIVE = 0.1  # of k, what (2) is divided by at least: very high grip on a leaning axle jams


@dataclass(frozen=True)
class Discs:
    """The contact discs of both axles, as if no tyre had given.

    point: (3, 2, p, B) lowest rim point. axes: (3, 3, 2, 1, B) axle axes as columns. ahead,
    sideways: (3, 2, 1, B), the horizontal directions of rolling and of the wheel axis. tilt:
    (2, 1, B) horizontal part of the wheel axis. arc: (2, 1, B) rad the held wheels have rolled,
    d arc = (w . sideways) / tilt. d_point: (3, 7, 2, p, B).
    """

    point: Array
    axes: Array
    ahead: Array
    sideways: Array
    tilt: Array
    arc: Array
    d_point: Array


def discs(builds: Builds, pose: Pose) -> Discs:
    """Lowest rim points: with wheel axis e, s = sqrt(1 - e_z^2), P = C - R (z - e_z e) / s.

    A twist (w, v) of the axle moves the rim's material point by v + w x P; the lowest point besides
    runs along the rim by R (w . b) / s.
    """
    axes = pose.turn[:, :, :2, None]
    axis = axes[:, 1]
    tilt = np.sqrt(1 - axis[2] ** 2)
    sideways, ahead = np.zeros_like(axis), np.zeros_like(axis)
    np.divide(axis[:2], tilt, out=sideways[:2])
    ahead[0], ahead[1] = sideways[1], -sideways[0]
    point = pose.origin[:, :2, None] + carry(axes, builds.disc_centre)
    point += (builds.radius * axis[2]) * sideways
    point[2] -= builds.radius * tilt
    arc = np.arctan2(-axes[2, 0], axes[2, 2])

    d_point = np.zeros((3, 7, *point.shape[1:]))
    roll = builds.radius / tilt * ahead
    for k in range(2):
        d_point[:, k] += roll * sideways[k]
    add_turning(d_point, point)
    for k in range(3):
        d_point[k, 3 + k] += 1
    return Discs(point, axes, ahead, sideways, tilt, arc, d_point)


def add_turning(columns: Array, point: Array) -> None:
    """Add e_k x point to the first three of columns (3, 7, ...)."""
    columns[1, 0] -= point[2]
    columns[2, 0] += point[1]
    columns[0, 1] += point[2]
    columns[2, 1] -= point[0]
    columns[0, 2] -= point[1]
    columns[1, 2] += point[0]


@dataclass(frozen=True)
class Patches:
    """Where the tyres hold the table; the last axis is the case, arrays change as it moves on.

    friction: (2, p, B), infinite for a tyre against a rail. anchor: (2, 2, p, B) x and y of the
    contact when last seen (of a wheel in the air, where it would come down). arc: (2, 1, B), ahead:
    (2, 2, 1, B) rolling direction, way: (2, 2, p, B) friction's if it slipped, else 0, all then.
    """

    friction: Array
    anchor: Array
    arc: Array
    ahead: Array
    way: Array

    @property
    def history(self) -> tuple[Array, Array, Array, Array]:
        """What changes on the way: anchor, arc, ahead, way."""
        return self.anchor, self.arc, self.ahead, self.way

    def take(self, index: Index) -> Patches:
        return Patches(**{f.name: getattr(self, f.name)[..., index] for f in fields(self)})

    def put(self, who: Index, other: Patches) -> None:
        """Take over the history of the cases `who` from others, in order."""
        for f in fields(self):
            getattr(self, f.name)[..., who] = getattr(other, f.name)

    def remember(self, who: Index, seen: Sequence[Array], chosen: Index) -> None:
        """Note where the cases `who` hold: seen[..., chosen], in the order of `history`."""
        for history, now in zip(self.history, seen, strict=False):
            history[..., who] = now[..., chosen]


@dataclass(frozen=True)
class Contact:
    """What the table does to the tyres.

    gap: (2, p, B), positive where the tyre touches: how far it is pressed from where it would hang,
    times k_z; d_gap (7, ...). give: (3, 2, p, B) u of (1), d_give (3, 7, ...). point: (3, 2, p, B)
    Q, d_point. force: (3, 2, p, B) of the table on the tyre, d_force. way: (2, 2, p, B) direction
    of the friction where it slips, else 0.
    """

    gap: Array
    d_gap: Array
    give: Array
    d_give: Array
    point: Array
    d_point: Array
    force: Array
    d_force: Array
    way: Array


def contact(
    builds: Builds,
    disc: Discs,
    patches: Patches,
    gravity: Array,
    d_gravity: Array,
    touch: Flags | None,
) -> Contact:
    """Equations (1) and (2); `touch` (2, p, B) freezes which tyres are on the table."""
    g, dg = gravity[:, None, None], d_gravity[:, None, None]
    rate, along = builds.tyre_rate, disc.axes[:, 2]
    preload = builds.tyre_load - builds.disc_mass

    pull = builds.disc_mass * _spring(1.0 / rate, disc.axes, g)
    give = pull - preload / rate[2] * along
    d_give = np.zeros_like(disc.d_point)
    add_turning(d_give, give)
    bare = np.zeros((3, 7, *g.shape[1:]))
    add_turning(bare, -g)
    bare[:, 6] = dg
    d_give += builds.disc_mass * _spring(1.0 / rate, disc.axes[:, :, None], bare)
    gap = -rate[2] * (disc.point[2] + give[2])
    d_gap = -rate[2] * (disc.d_point[2] + d_give[2])
    touch = gap >= 0 if touch is None else touch

    rolled = builds.radius * (disc.arc - patches.arc)
    held = -disc.point
    held[:2] += patches.anchor + rolled * patches.ahead
    d_held = -disc.d_point
    turning = builds.radius / disc.tilt * disc.sideways
    for k in range(2):
        d_held[:2, k] += turning[k] * patches.ahead
    stiff = _matrix(rate, disc.axes)
    spring = preload * along + carry(stiff, held)
    force = spring - builds.disc_mass * g
    moved = d_held.copy()
    add_turning(moved, -held)
    d_force = carry(stiff[:, :, None], moved)
    add_turning(d_force, spring)
    d_force[:, 6] -= builds.disc_mass * dg

    slips = touch & np.isfinite(patches.friction)
    slips &= np.hypot(force[0], force[1]) > patches.friction * force[2] - AT_LIMIT
    way = np.zeros_like(patches.way)
    if slips.any():
        way[:, slips] = _slip(stiff, patches, slips, held, d_held, force, d_force)
    give, d_give = np.where(touch, held, give), np.where(touch, d_held, d_give)
    return Contact(
        gap,
        d_gap,
        give,
        d_give,
        disc.point + give,
        disc.d_point + d_give,
        force * touch,
        d_force * touch,
        way,
    )


def _matrix(rate: Array, axes: Array) -> Array:
    """(3, 3, 2, 1, B) A K A^T."""
    weighted = rate * axes  # columns times their rates
    out = np.empty_like(axes)
    for i in range(3):
        for j in range(i, 3):
            out[i, j] = out[j, i] = dot(weighted[i], axes[j])
    return out


def _spring(rate: Array, axes: Array, vector: Array) -> Array:
    """A K A^T v for vectors (3, ...), K = diag of rate (3, 2, 1, B)."""
    total = None
    for k in range(3):
        part = axes[:, k] * (rate[k] * dot(axes[:, k], vector))
        total = part if total is None else total + part
    return np.asarray(total)


def _slip(
    stiff: Array,
    patches: Patches,
    slips: Flags,
    held: Array,
    d_held: Array,
    force: Array,
    d_force: Array,
) -> Array:
    """Bring the n tyres of `slips` back to their limit, equation (2); returns t, (2, n).

    Changes the last four arguments in place. Newton's method on kappa and the angle of t, from t
    along the force they would need to stick.
    """
    mu, f, df = patches.friction[slips], force[:, slips], d_force[:, :, slips]
    matrix = np.broadcast_to(stiff, (3, 3, *slips.shape))[:, :, slips]
    size = np.maximum(np.hypot(f[0], f[1]), 1e-300)
    t = f[:2] / size
    before = patches.way[:, slips]
    before = np.where((before * t).sum(axis=0) > LIKE, before, 0.0)
    share = 1.0 / (1.0 + before.any(axis=0))
    pull = matrix[:, 0] * t[0] + matrix[:, 1] * t[1]
    along = t[0] * pull[0] + t[1] * pull[1]
    kappa = (size - mu * f[2]) / np.maximum(along - mu * pull[2], LEAST_GIVE * along)
    for last in (False,) * 5 + (True,):
        across = np.stack([-t[1], t[0]])
        path = share * (before + t)
        pull = matrix[:, 0] * path[0] + matrix[:, 1] * path[1]
        swing = share * (matrix[:, 0] * across[0] + matrix[:, 1] * across[1])
        now = f - kappa * pull
        by_kappa = mu * pull[2] * t - pull[:2]
        give = t[0] * pull[0] + t[1] * pull[1]
        jam = t[0] * by_kappa[0] + t[1] * by_kappa[1] + LEAST_GIVE * give
        by_kappa -= np.maximum(jam, 0.0) * t
        by_angle = kappa * (mu * swing[2] * t - swing[:2]) - mu * now[2] * across
        if last:
            break
        miss = now[:2] - mu * now[2] * t
        far = np.abs(miss).max(axis=0) >= 1e-11  # each on its own, whatever runs beside it
        if not far.any():
            break
        d_kappa, d_angle = _two_by_two(by_kappa, by_angle, miss)
        kappa = np.where(far, kappa - d_kappa, kappa)
        angle = np.arctan2(t[1], t[0]) - np.clip(d_angle, -0.5, 0.5)
        t = np.where(far, [np.cos(angle), np.sin(angle)], t)
    # The axle's turning turns the springs' axes, also for the way slipped.
    swung, carried = np.zeros_like(df), np.zeros_like(df)
    add_turning(swung, pull)
    add_turning(carried, np.stack([*path, np.zeros_like(kappa)]))
    df = df - kappa * (swung - carry(matrix[:, :, None], carried))
    miss = mu * df[2] * t[:, None] - df[:2]
    d_kappa, d_angle = _two_by_two(by_kappa, by_angle, miss)
    force[:, slips] = now
    d_force[:, :, slips] = df - pull[:, None] * d_kappa - (kappa * swing)[:, None] * d_angle
    held[:2, slips] -= kappa * path
    d_held[:2, :, slips] -= path[:, None] * d_kappa + (kappa * share * across)[:, None] * d_angle
    return np.asarray(t)


def _two_by_two(a: Array, b: Array, right: Array) -> tuple[Array, Array]:
    """x, y with x a + y b = right; a, b (2, n), right (2, ..., n)."""
    size = a[0] * b[1] - a[1] * b[0]
    size = np.where(np.abs(size) < 1e-300, 1e-300, size)
    x = (right[0] * b[1] - right[1] * b[0]) / size
    y = (a[0] * right[1] - a[1] * right[0]) / size
    return x, y


def standing(builds: Builds, pose: Pose, friction: Array) -> Patches:
    """Tyres set down on the level table at their ride-height pose, pulling nowhere."""
    level = discs(builds, pose)
    shape = level.point.shape[1:]
    return Patches(
        np.broadcast_to(friction, shape).copy(),
        level.point[:2].copy(),
        level.arc.copy(),
        level.ahead[:2].copy(),
        np.zeros((2, *shape)),
    )
