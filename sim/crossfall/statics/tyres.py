"""Tyre contact: discs on springs along their axle's axes, held by the table's friction where they
touched.

A wheel sits on its axle by three springs K = diag(k_x, k_y, k_z) along the axle's axes A, and gives
by d = A^T u; as held (braked) disc it touches the table with its lowest point. With rim point P
(the disc's lowest if it had not given), contact point Q, wheel mass m, ground load F0 at ride
height and gravity g, all over the truck's weight and wheelbase:

    u = Q - P,   S = (F0 - m) A e_z + A K A^T u,   ground force F = S - m g             (1)

While it sticks Q stays where it touched, but that a disc turning with its axle rolls along. The
friction limit |F_t| <= mu F_n is kept by return mapping: the patch slips against the friction,
whose direction t turns between two looks from t_0, if it slipped there already, so that Q moves by
-kappa m with

    F_t - kappa G m = mu (F_n - kappa g.m) t,   G = A K A^T,   m = (t_0 + t) / 2 or t   (2)

which is the trapezium rule, good to the square of the step.

A wheel in the air hangs on its springs, u = m A K^-1 A^T g - (F0 - m) A e_z / k_z; it is off when
its lowest point then is above the table, and is anchored anew, pulling nowhere, where it comes
down.

Derivatives are by the six components of a small twist of the axle about the chassis' origin, which
stays, and by the table angle: arrays with 7 in front, (w_x, w_y, w_z, v_x, v_y, v_z, theta). Places
are relative to the chassis' origin.

Shapes that do not fit raise numpy's ValueError; nothing else is refused.

Source: of the return mapping in (2) J. C. Simo and T. J. R. Hughes, Computational Inelasticity
(1998), chapter 1 (from memory); (1), (2) and their derivatives are derived here from the balance of
a wheel on its three springs.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

import numpy as np
from numpy.typing import NDArray

from crossfall.statics.builds import Builds, Index, Ints, pick
from crossfall.statics.kinematics import Pose, carry, skew
from crossfall.truck.model import Array, Flags

AT_LIMIT = 1e-8  # of the truck's weight: a tyre this near its limit slips, one pulling less not
LIKE = 0.5  # cosine between two ways of slipping, below which the earlier one says nothing
_CLOSE = 1e-11  # of the weight, to which (2) is solved
LEAST_GIVE = 0.1  # of k, what (2) is divided by at least: very high grip on a leaning axle jams


@dataclass(frozen=True)
class Discs:
    """The contact discs of both axles, as if no tyre had given.

    point: (3, 2, p, B) lowest rim point. axes: (3, 3, 2, 1, B) axle axes as columns. ahead,
    sideways: (2, 2, 1, B), the horizontal directions of rolling and of the wheel axis. tilt:
    (2, 1, B) horizontal part of the wheel axis. arc: (2, 1, B) rad the held wheels have rolled,
    d arc = (w . sideways) / tilt.
    """

    point: Array
    axes: Array
    ahead: Array
    sideways: Array
    tilt: Array
    arc: Array


def discs(builds: Builds, pose: Pose) -> Discs:
    """Lowest rim points: with wheel axis e, s = sqrt(1 - e_z^2), P = C - R (z - e_z e) / s, over
    the wheelbase.

    A twist (w, v) of the axle moves the rim's material point by v + w x P; the lowest point besides
    runs ahead along the rim by R d arc.
    """
    axes = pose.turn[:, :, :2, None]
    rise = axes[2, 1]
    tilt = np.sqrt(1 - rise**2)
    sideways = axes[:2, 1] / tilt
    ahead = np.empty_like(sideways)
    ahead[0] = sideways[1]
    np.negative(sideways[0], out=ahead[1])
    point = carry(axes, builds.disc_centre)
    point += pose.origin[:, :2, None]
    point[:2] += (builds.radius * rise) * sideways
    point[2] -= builds.radius * tilt
    arc = np.arctan2(-axes[2, 0], axes[2, 2])
    return Discs(point, axes, ahead, sideways, tilt, arc)


@dataclass(frozen=True)
class Patches:
    """Where the tyres hold the table; the last axis is the case.

    friction: (2, p, B), infinite for a tyre against a rail. history: (8 p + 6, B), changes as the
    cases move on; its parts, which are views of it, are
    anchor: (2, 2, p, B) x and y of the contact when last seen (of a wheel in the air, where it
    would come down). way: (2, 2, p, B) direction of friction if it slipped, else 0. arc: (2, 1, B),
    ahead: (2, 2, 1, B) rolling direction, both then.
    """

    friction: Array
    history: Array

    @property
    def anchor(self) -> Array:
        return self._part(0)

    @property
    def way(self) -> Array:
        return self._part(1)

    def _part(self, which: int) -> Array:
        size = 2 * self.friction.shape[0] * self.friction.shape[1]
        return self.history[which * size : (which + 1) * size].reshape(2, *self.friction.shape)

    @property
    def arc(self) -> Array:
        return self.history[-6:-4].reshape(2, 1, -1)

    @property
    def ahead(self) -> Array:
        return self.history[-4:].reshape(2, 2, 1, -1)

    def take(self, index: Index) -> Patches:
        return Patches(pick(self.friction, index), pick(self.history, index))


def history(anchor: Array, way: Array, disc: Discs) -> Array:
    """(8 p + 6, B) of `Patches`, from anchor and way (2, 2, p, B) and the discs' arc and ahead."""
    parts = (anchor, way, disc.arc, disc.ahead)
    return np.concatenate([a.reshape(-1, a.shape[-1]) for a in parts])


@dataclass(frozen=True)
class Contact:
    """What the table does to the tyres.

    gap: (2, p, B), positive where the tyre touches: how far it is pressed from where it would hang,
    times k_z. spare: (2, p, B) mu F_n - |F_t| if it sticks; 1 where it cannot slip. touch:
    (2, p, B). give: (3, 2, p, B) u of (1). arm, point: (3, 2, p, B) Q, from the chassis' origin
    and from the table's. force: (3, 2, p, B) of the table on the tyre, d_force (3, 7, ...).
    spring: (3, 2, p, B) that and the wheel's weight, where it touches. way: (2, 2, p, B) direction
    of the friction where it slips, else 0. d_point: (2, 7, 2, p, B), how the point that holds
    moves. turning: (2, 2, 1, B) how far a wheel rolls on by a turn of its axle. hang: (3, 2, p, B)
    u in the air. soft: (3, 3, 2, 1, B) A K^-1 A^T.
    """

    gap: Array
    spare: Array
    touch: Flags
    give: Array
    arm: Array
    point: Array
    force: Array
    d_force: Array
    spring: Array
    way: Array
    d_point: Array
    turning: Array
    hang: Array
    soft: Array


def contact(
    builds: Builds,
    pose: Pose,
    disc: Discs,
    patches: Patches,
    gravity: Array,
    d_gravity: Array,
    touch: Flags | None,
    stick: Flags | None,
    spin: Array | None = None,
) -> Contact:
    """Equations (1) and (2); `touch` (2, p, B) freezes which tyres are on the table, `stick` which
    of them do not slip. spin: (2, p, B) rad that wheels have turned ahead besides since `patches`.

    gravity, d_gravity: (3, B). F = A K A^T u + (F0 - m) A e_z - m g, of which no more than mu F_n
    along the table.
    """
    rate, axes, mass = builds.tyre_rate, disc.axes, builds.disc_mass
    preload = builds.tyre_load - mass
    weight = mass * gravity[:, None, None]
    soft = np.einsum("ik...,jk...->ij...", axes / rate, axes)
    hang = carry(soft, weight)
    hang -= preload / rate[2] * axes[:, 2]
    gap = -rate[2] * (pose.place[2] + disc.point[2] + hang[2])
    touch = gap >= 0 if touch is None else touch

    ahead = patches.ahead
    give = np.negative(disc.point, order="C")  # `_slip` writes into it by flat places
    give[2] -= pose.place[2]
    give[:2] += patches.anchor - pose.place[:2, None, None]
    rolled = disc.arc - patches.arc
    give[:2] += builds.radius * (rolled if spin is None else rolled + spin) * ahead
    stiff = np.einsum("ik...,jk...->ij...", axes * rate, axes)
    spring = carry(stiff, give)
    spring += preload * axes[:, 2]
    force = np.subtract(spring, weight, order="C")

    # A twist leaves Q, but that it rolls on, and u turns with the axle: d u - w x u.
    turning = builds.radius / disc.tilt * disc.sideways
    d_point = np.zeros((2, 7, *touch.shape))
    d_point[:, :2] = ahead[:, None] * turning
    moved = skew(disc.point + give)
    moved[:2, :2] += (ahead - disc.ahead)[:, None] * turning
    d_force = np.empty((3, 7, *touch.shape))
    np.subtract(np.einsum("ij...,jk...->ik...", stiff, moved), skew(spring), out=d_force[:, :3])
    np.negative(stiff, out=d_force[:, 3:6])
    np.multiply(-mass, d_gravity[:, None, None], out=d_force[:, 6])

    way, pull = np.zeros((2, *touch.shape)), np.hypot(force[0], force[1])
    free = touch & np.isfinite(patches.friction)
    spare = np.where(free, np.where(free, patches.friction, 0.0) * force[2] - pull, 1.0)
    slips = (spare < AT_LIMIT) & (pull > AT_LIMIT)
    if stick is not None:
        slips &= ~stick
    if slips.any():
        _slip(stiff, patches, slips, give, d_point, force, d_force, way)
    force *= touch
    d_force *= touch
    give = np.where(touch, give, hang)
    arm = disc.point + give
    point = arm + pose.place[:, None, None]
    spring = force + weight * touch
    return Contact(
        gap,
        spare,
        touch,
        give,
        arm,
        point,
        force,
        d_force,
        spring,
        way,
        d_point,
        turning,
        hang,
        soft,
    )


def _slip(
    stiff: Array,
    patches: Patches,
    slips: Flags,
    give: Array,
    d_point: Array,
    force: Array,
    d_force: Array,
    way: Array,
) -> None:
    """Bring the n tyres of `slips` back to their limit, equation (2).

    Changes the last five arguments in place. Newton's method on kappa and the angle of t, from t
    along the force they would need to stick; vectors along the table are complex numbers here.
    """
    at = slips.ravel().nonzero()[0]  # flat places: `take` is much faster than an index a dimension
    points, cases = slips.shape[1:]
    axle = at // (points * cases) * cases + at % cases
    force, give, way = (v.reshape(len(v), -1) for v in (force, give, way))
    d_force, d_point = (v.reshape(len(v), 7, -1) for v in (d_force, d_point))
    mu, f3, df = patches.friction.take(at), force.take(at, axis=1), d_force.take(at, axis=2)
    k = stiff.reshape(3, 3, -1).take(axle, axis=2)
    mean, apart = (k[0, 0] + k[1, 1]) / 2, (k[0, 0] - k[1, 1]) / 2 + 1j * k[0, 1]
    upward = k[0, 2] - 1j * k[1, 2]
    before = patches.way.reshape(2, -1).take(at, axis=1)
    before = before[0] + 1j * before[1]
    f, load = f3[0] + 1j * f3[1], f3[2]
    size = np.maximum(np.abs(f), 1e-300)
    t = f / size
    before[(before * t.conj()).real <= LIKE] = 0.0
    share = np.where(before == 0, 1.0, 0.5)
    pull = mean * t + apart * t.conj()
    along = (t.conj() * pull).real
    kappa = (size - mu * load) / np.maximum(along - mu * (upward * t).real, LEAST_GIVE * along)
    for last in (False,) * 5 + (True,):
        across, path = 1j * t, share * (before + t)
        pull, lift = mean * path + apart * path.conj(), (upward * path).real
        swing, rise = mean * across + apart * across.conj(), share * (upward * across).real
        swing *= share
        now, left = f - kappa * pull, load - kappa * lift
        by_kappa = (mu * lift) * t - pull
        jam = (by_kappa * t.conj()).real + LEAST_GIVE * (pull * t.conj()).real
        by_kappa -= np.maximum(jam, 0.0) * t
        by_angle = kappa * ((mu * rise) * t - swing) - (mu * left) * across
        if last:
            break
        miss = now - mu * left * t
        live = np.abs(miss) >= _CLOSE  # each on its own, whatever slips beside it
        if not live.any():
            break
        d_kappa, d_angle = _two_by_two(by_kappa, by_angle, miss)
        kappa = np.where(live, kappa - d_kappa, kappa)
        t = np.where(live, t * np.exp(-1j * np.clip(d_angle, -0.5, 0.5)), t)
    vector, shift = _three(pull, lift), _three(path)
    df[:, :3] += kappa * (skew(vector) - np.einsum("ijn,jkn->ikn", k, skew(shift)))
    d_kappa, d_angle = _two_by_two(by_kappa, by_angle, mu * df[2] * t - (df[0] + 1j * df[1]))
    turned, moved = _three(kappa * swing, kappa * rise), _three(kappa * share * across)[:2]
    df -= vector[:, None] * d_kappa
    df -= turned[:, None] * d_angle
    shift = shift[:2]
    dp = d_point.take(at, axis=2) - (shift[:, None] * d_kappa + moved[:, None] * d_angle)
    _put(force, at, _three(now, left))
    _put(d_force, at, df)
    _put(give, at, give[:2].take(at, axis=1) - kappa * shift)
    _put(d_point, at, dp)
    _put(way, at, (t.real, t.imag))


def _put(rows: Array, at: Ints, values: Any) -> None:
    """rows[..., at] = values, the first of them (..., n); row by row it takes half as long."""
    values = np.reshape(values, (-1, len(at)))
    for row, value in zip(rows.reshape(-1, rows.shape[-1]), values, strict=False):
        row[at] = value


def _three(flat: NDArray[np.complex128], up: Array | float = 0.0) -> Array:
    """(3, n) from components along the table, x + i y, and away from it."""
    out = np.empty((3, len(flat)))
    out[0], out[1], out[2] = flat.real, flat.imag, up
    return out


def _two_by_two(
    a: NDArray[np.complex128], b: NDArray[np.complex128], right: NDArray[np.complex128]
) -> tuple[Array, Array]:
    """Real x, y (..., n) with x a + y b = right (..., n)."""
    size = (a.conj() * b).imag
    size = np.where(np.abs(size) < 1e-300, 1e-300, size)
    return (right.conj() * b).imag / size, (a.conj() * right).imag / size


def standing_patches(builds: Builds, pose: Pose, friction: Array) -> Patches:
    """Tyres set down on the level table at their ride-height pose, pulling nowhere.

    friction: whatever broadcasts to (2, p, B). Q = P, u = 0.
    """
    level = discs(builds, pose)
    anchor = level.point[:2] + pose.place[:2, None, None]
    friction = np.broadcast_to(friction, level.point.shape[1:]).copy()
    return Patches(friction, history(anchor, np.zeros_like(anchor), level))
