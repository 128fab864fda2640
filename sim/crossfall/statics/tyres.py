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

Where a tyre touches, slips and how hard it is pressed is compiled. Shapes that do not fit raise
numpy's ValueError; nothing else is refused.

Source: of the return mapping in (2) J. C. Simo and T. J. R. Hughes, Computational Inelasticity
(1998), chapter 1 (from memory); (1), (2) and their derivatives are derived here from the balance of
a wheel on its three springs.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Any

from crossfall.statics.builds import Index, pick, row
from crossfall.truck.model import Array
from crossfall.truck.to_compile import inner
from crossfall.truck.vectors import crossed, dotted, put, unit_along

AT_LIMIT = 1e-8  # of the truck's weight: a tyre this near its limit slips, one pulling less not
LIKE = 0.5  # cosine between two ways of slipping, below which the earlier one says nothing
_CLOSE = 1e-11  # of the weight, to which (2) is solved
LEAST_GIVE = 0.1  # of k, what (2) is divided by at least: very high grip on a leaning axle jams
_RADIUS, _RATE, _SHAFT = row("radius"), row("tyre_rate"), row("shaft")


@dataclass(frozen=True)
class Patches:
    """Where the tyres hold the table; the last axis is the case.

    friction: (2, p, B), infinite for a tyre against a rail. history: (8 p + 6, B), changes as the
    cases move on; its parts, which are views of it, are in this order
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


@inner
def set_discs(case: Any, builds: Any, b: int, axle: int, centre: int, points: int) -> None:
    """The lowest rim points of an axle's discs, as if no tyre had given. centre: the row where
    `disc_centre` begins.

    With wheel axis e, s = sqrt(1 - e_z^2): P = C - R (z - e_z e) / s. A twist (w, v) of the axle
    moves the rim's material point by v + w x P; the lowest point besides runs ahead along the rim
    by R d arc, d arc = (w . sideways) / s.
    """
    axes, radius = case.body[axle], builds[_RADIUS + axle, b]
    rise = axes[1, 2]
    tilt = math.sqrt(1 - rise * rise)
    sideways = (axes[1, 0] / tilt, axes[1, 1] / tilt)
    case.rolls[axle, 0] = radius / tilt * sideways[0]
    case.rolls[axle, 1] = radius / tilt * sideways[1]
    case.ahead[axle, 0], case.ahead[axle, 1] = sideways[1], -sideways[0]
    turned = builds[_SHAFT + axle, b] * case.x[7 + 2 * axle]
    case.arc[axle] = math.atan2(-axes[0, 2], axes[2, 2]) + turned
    for j in range(points):
        c0, c1, c2 = (
            builds[centre + axle * points + j, b],
            builds[centre + (2 + axle) * points + j, b],
            builds[centre + (4 + axle) * points + j, b],
        )
        for k in range(3):
            at = axes[0, k] * c0 + axes[1, k] * c1 + axes[2, k] * c2 + case.origin[axle, k]
            at += radius * rise * sideways[k] if k < 2 else -radius * tilt
            case.point[axle, j, k] = at


@inner
def set_rates(case: Any, builds: Any, b: int, axle: int) -> None:
    """A K A^T and A K^-1 A^T of an axle's contact points."""
    axes = case.body[axle]
    for i in range(3):
        for j in range(3):
            stiff, soft = 0.0, 0.0
            for k in range(3):
                rate = builds[_RATE + 2 * k + axle, b]
                stiff += axes[k, i] * rate * axes[k, j]
                soft += axes[k, i] / rate * axes[k, j]
            case.stiff[axle, i, j], case.soft[axle, i, j] = stiff, soft


@inner
def set_contact(
    case: Any, axle: int, j: int, tyre: Any, spin: float, past: Any, touch: int, stick: int
) -> None:
    """Equations (1) and (2) for one contact point. tyre: (5,) its mass and load at ride height,
    k_z, radius, friction. spin: rad that its wheel has turned ahead besides since `past`.

    touch, stick: 1 or 0 freeze whether it is on the table and whether it may slip, -1 does not.
    past: (7,) anchor, way, arc and ahead of `Patches`. F = A K A^T u + (F0 - m) A e_z - m g, of
    which no more than mu F_n along the table.
    """
    mass, load, rate, radius, mu = tyre
    up, g, place = case.body[axle, 2], case.gravity, case.x
    stiff, soft, rolls = case.stiff[axle], case.soft[axle], case.rolls[axle]
    point, give, hang = case.point[axle, j], case.give[axle, j], case.hang[axle, j]
    force, spring = case.force[axle, j], case.spring[axle, j]
    d_force, d_point, way = case.d_force[axle, j], case.d_point[axle, j], case.way[axle, j]
    preload = load - mass
    for k in range(3):
        hang[k] = mass * dotted(soft[k], g) - preload / rate * up[k]
    gap = -rate * (place[2] + point[2] + hang[2])
    on = gap >= 0 if touch < 0 else touch == 1
    case.gap[axle, j], case.touch[axle, j] = gap, 1.0 if on else 0.0
    case.spare[axle, j] = 1.0
    way[0] = way[1] = 0.0
    for c in range(7):
        d_point[c, 0] = d_point[c, 1] = 0.0
    for c in range(2):
        for k in range(2):
            d_point[c, k] = past[5 + k] * rolls[c]
    if not on:
        for k in range(3):
            give[k], force[k], spring[k] = hang[k], 0.0, 0.0
            for c in range(7):
                d_force[c, k] = 0.0
        return

    rolled = radius * (case.arc[axle] - past[4] + spin)
    for k in range(2):
        give[k] = past[k] - place[k] - point[k] + rolled * past[5 + k]
    give[2] = -place[2] - point[2]
    for k in range(3):
        spring[k] = dotted(stiff[k], give) + preload * up[k]
        force[k] = spring[k] - mass * g[k]
    # A twist leaves Q, but that it rolls on, and u turns with the axle: d u - w x u.
    for c in range(3):
        unit = unit_along(c)
        m = crossed((point[0] + give[0], point[1] + give[1], point[2] + give[2]), unit)
        if c < 2:
            m = (
                m[0] + (past[5] - case.ahead[axle, 0]) * rolls[c],
                m[1] + (past[6] - case.ahead[axle, 1]) * rolls[c],
                m[2],
            )
        turned = crossed(spring, unit)
        for k in range(3):
            d_force[c, k] = dotted(stiff[k], m) - turned[k]
            d_force[3 + c, k] = -stiff[k, c]
    for k in range(3):
        d_force[6, k] = -mass * case.d_gravity[k]

    if math.isfinite(mu):
        pull = math.hypot(force[0], force[1])
        case.spare[axle, j] = mu * force[2] - pull
        if case.spare[axle, j] < AT_LIMIT and pull > AT_LIMIT and stick != 1:
            _slip(case, axle, j, mu, past)
    for k in range(3):
        spring[k] = force[k] + mass * g[k]


@inner
def _slip(case: Any, axle: int, j: int, mu: float, past: Any) -> None:
    """Bring a tyre back to its limit, equation (2).

    Newton's method on kappa and the angle of t, from t along the force it would need to stick;
    vectors along the table are complex numbers here.
    """
    k, force, give = case.stiff[axle], case.force[axle, j], case.give[axle, j]
    d_force, d_point, way = case.d_force[axle, j], case.d_point[axle, j], case.way[axle, j]
    mean, apart = (k[0, 0] + k[1, 1]) / 2, complex((k[0, 0] - k[1, 1]) / 2, k[0, 1])
    upward, before = complex(k[0, 2], -k[1, 2]), complex(past[2], past[3])
    f, load = complex(force[0], force[1]), force[2]
    size = max(math.hypot(f.real, f.imag), 1e-300)
    t = complex(f.real / size, f.imag / size)
    share = 0.5
    if (before * t.conjugate()).real <= LIKE:
        before, share = complex(0.0, 0.0), 1.0
    pull = mean * t + apart * t.conjugate()
    straight = (t.conjugate() * pull).real
    kappa = (size - mu * load) / max(straight - mu * (upward * t).real, LEAST_GIVE * straight)
    rounds = 0
    while True:
        across, path = 1j * t, share * (before + t)
        pull, lift = mean * path + apart * path.conjugate(), (upward * path).real
        swing = share * (mean * across + apart * across.conjugate())
        rise = share * (upward * across).real
        now, left = f - kappa * pull, load - kappa * lift
        by_kappa = (mu * lift) * t - pull
        jam = (by_kappa * t.conjugate()).real + LEAST_GIVE * (pull * t.conjugate()).real
        by_kappa -= max(jam, 0.0) * t
        by_angle = kappa * ((mu * rise) * t - swing) - (mu * left) * across
        miss = now - mu * left * t
        if rounds == 5 or math.hypot(miss.real, miss.imag) < _CLOSE:
            break
        d_kappa, d_angle = _two_by_two(by_kappa, by_angle, miss)
        kappa -= d_kappa
        d_angle = min(max(d_angle, -0.5), 0.5)
        t *= complex(math.cos(d_angle), -math.sin(d_angle))
        rounds += 1
    shift, slid = (path.real, path.imag, 0.0), kappa * share * across
    for c in range(3):
        unit = unit_along(c)
        turned, moved = crossed((pull.real, pull.imag, lift), unit), crossed(shift, unit)
        for i in range(3):
            d_force[c, i] += kappa * (turned[i] - dotted(k[i], moved))
    for c in range(7):
        right = (mu * d_force[c, 2]) * t - complex(d_force[c, 0], d_force[c, 1])
        d_kappa, d_angle = _two_by_two(by_kappa, by_angle, right)
        d_force[c, 0] -= pull.real * d_kappa + kappa * swing.real * d_angle
        d_force[c, 1] -= pull.imag * d_kappa + kappa * swing.imag * d_angle
        d_force[c, 2] -= lift * d_kappa + kappa * rise * d_angle
        d_point[c, 0] -= path.real * d_kappa + slid.real * d_angle
        d_point[c, 1] -= path.imag * d_kappa + slid.imag * d_angle
    put(force, (now.real, now.imag, left))
    give[0] -= kappa * path.real
    give[1] -= kappa * path.imag
    way[0], way[1] = t.real, t.imag


@inner
def _two_by_two(a: complex, b: complex, right: complex) -> tuple[float, float]:
    """Real x, y with x a + y b = right."""
    size = (a.conjugate() * b).imag
    if abs(size) < 1e-300:
        size = 1e-300
    return (right.conjugate() * b).imag / size, (a.conjugate() * right).imag / size
