"""Where heave and roll take a solid axle, and how far they press its shocks: one law for all.

Statics, trials in any engine, drawings and replays read the motion of an axle here and nowhere
else. It is held as polynomials in heave and roll: of the place of one point of the axle and of its
yaw and pitch (its roll is the freedom itself), and of the compression of its corners. A truck with
a roll centre and a leaning heave axis needs the first degree only, and has it exactly. Links have
it fitted over their travel, a quarter wider, to their exact poses (`truck.linkage`): good to 0.002
mm and 0.002 deg. Force and stiffness follow from the same polynomials, so that whoever uses them
has a mechanism without friction or gain of energy.

An engine of rigid bodies steps an axle on straight joints, the tangent of its path at ride height;
`engines.axle_forces` says what force makes up for the rest, where an engine has the two joints.

Source: derived here: least squares at Chebyshev's nodes, as in any text on approximation, of the
exact poses of `truck.linkage`; forces follow by virtual work, F_q = -f dc/dq.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, lru_cache
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from crossfall.truck.linkage import LinkageError, linkage_poses, rotations
from crossfall.truck.model import Array, Axle, Links, Shocks, frozen
from crossfall.truck.to_compile import inner

DEGREE = 5
_MARGIN = 1.25  # of the travel: what stops that give a little, and a step too far, still find
LEAST_TRAVEL = 1e-4  # m, about which links are fitted that need not move
_NODES = 7  # of the corner travel each way, at which links are fitted
X, Y, Z, YAW, PITCH, LEFT, RIGHT = range(7)
VALUE, BY_Q, BY_R, BY_QQ, BY_QR, BY_RR = range(6)
POWERS = 16  # numbers of scratch memory for `law_at`


@cache
def powers(degree: int) -> tuple[tuple[int, int], ...]:
    """The powers of heave and roll in each term, by rising degree; no constant: at rest all is
    where it was. (terms, 2) whole numbers.
    """
    return tuple((n - j, j) for n in range(1, degree + 1) for j in range(n + 1))


@cache
def degree_of(terms: int) -> int:
    """The degree that has this number of terms, (d + 1) (d + 2) / 2 - 1. Raises StopIteration where
    none up to 39 has.
    """
    return next(n for n in range(1, 40) if len(powers(n)) == terms)


def basis(heave: Array, roll: Array, terms: int) -> Array:
    """(6, terms, ...) of q^i r^j: value, d/dq, d/dr, d2/dq2, d2/dqdr, d2/dr2.

    heave: m, roll: rad, of one shape (...). Raises StopIteration for a number of terms no degree
    has.
    """
    at, factors, of_q, of_r, size = _recipe(terms)
    power = np.ones((size, 2, *heave.shape))
    power[1, 0], power[1, 1] = heave, roll
    for n in range(2, size):
        np.multiply(power[n - 1], power[1], out=power[n, ...])
    parts = np.stack([power[:, 0].take(at[0], axis=0), power[:, 1].take(at[1], axis=0)])
    parts *= factors.reshape(*factors.shape, *[1] * heave.ndim)
    return np.asarray(parts[0].take(of_q, axis=0) * parts[1].take(of_r, axis=0))


@cache
def _recipe(terms: int) -> tuple[NDArray[np.int64], Array, tuple[int, ...], tuple[int, ...], int]:
    """Which power of q and r (2, 3, terms), and times what, gives each term's value, first and
    second derivative; which of them make the six rows; how many powers there are."""
    degree = degree_of(terms)
    exponents = np.array(powers(degree)).T
    at, factors = np.empty((2, 3, terms), dtype=np.int64), np.ones((2, 3, terms))
    for order in range(3):
        at[:, order] = np.maximum(exponents - order, 0)
    factors[:, 1] = exponents
    factors[:, 2] = exponents * (exponents - 1)
    return at, factors, (0, 1, 0, 2, 1, 0), (0, 0, 1, 0, 1, 2), degree + 1


@dataclass(frozen=True)
class AxleLaw:
    """One axle's motion against the chassis.

    point: (3,) m, of the axle, in truck axes at ride height. coefficients: (7, terms) of q^i r^j
    in m and rad: of the point's x, y, z (m), yaw and pitch (rad), and the compression of left and
    right corner (m).
    """

    point: Array
    coefficients: Array

    def at(self, heave: Array, roll: Array) -> Array:
        """(7, 6, ...) X to RIGHT and their derivatives VALUE to BY_RR, SI.

        heave: m, roll: rad, of one shape (...).
        """
        return axle_law_values(self.coefficients, heave, roll)

    def motion(self, heave: ArrayLike, roll: ArrayLike) -> tuple[Array, Array]:
        """(..., 3, 3) turn and (..., 3) shift: a point X of the axle at ride height is now at
        turn X + shift, both in axes fixed to the chassis.

        Rz(yaw) Ry(pitch) Rx(roll), and point + moved - turn point.
        """
        q, r = np.asarray(heave, dtype=np.float64), np.asarray(roll, dtype=np.float64)
        now = self.at(q, r)[:, VALUE]
        turn = rotations(now[YAW], now[PITCH], r)
        shift = self.point + np.moveaxis(now[:3], 0, -1) - turn @ self.point
        return turn, shift

    def twists(self) -> Array:
        """(6, 2) of heave and roll at ride height: turning and shifting, of the axle at `point`."""
        rates = self.coefficients[:, :2]
        return np.stack([np.array([0.0, 1.0]), rates[PITCH], rates[YAW], *rates[:3]])

    def ratios(self) -> Array:
        """(2, 2) by which left and right corner are pressed by heave and roll at ride height."""
        return self.coefficients[LEFT:, :2]

    def in_units(self, length: float) -> Array:
        """The coefficients with lengths counted in `length` (m): c length^i, over length but for
        angles.
        """
        i = np.array([i for i, _ in powers(degree_of(self.coefficients.shape[1]))])
        unit = np.where(np.isin(np.arange(7), (YAW, PITCH)), 1.0, length)
        return np.asarray(self.coefficients * length**i / unit[:, None])


def axle_law_values(coefficients: Array, heave: Array, roll: Array) -> Array:
    """(7, 6, ...) of axles with (7, terms) in common or (7, terms, ...) each: see AxleLaw.at.

    sum c_ij q^i r^j. heave m, roll rad (...), or in the units the coefficients are in.
    """
    terms = coefficients.shape[1]
    if terms == 2:
        found = np.zeros((7, 6, *np.broadcast_shapes(heave.shape, coefficients.shape[2:])))
        by_q, by_r = (
            c if c.ndim > 1 else c.reshape(7, *[1] * heave.ndim)
            for c in (coefficients[:, 0], coefficients[:, 1])
        )
        found[:, BY_Q], found[:, BY_R] = by_q, by_r
        found[:, VALUE] = by_q * heave + by_r * roll
        return found
    known = basis(heave, roll, terms)
    if coefficients.ndim == 2:
        return np.asarray(np.tensordot(coefficients, known, axes=([1], [1])))
    return np.asarray(np.einsum("fn...,dn...->fd...", coefficients, known))


@inner
def law_at(coefficients: Any, heave: float, roll: float, out: Any, work: Any) -> Any:
    """`axle_law_values` of one axle, (7, terms) coefficients, into `out` (7, 6), or (7, 3) without
    second derivatives; to be compiled.

    work: (16,) scratch memory. sum c_ij q^i r^j, its terms as `powers` has them.
    """
    twice = out.shape[1] > BY_QQ
    for f in range(7):
        for d in range(out.shape[1]):
            out[f, d] = 0.0
    work[0], work[8] = 1.0, 1.0
    term, degree = 0, 1
    while term < coefficients.shape[1]:
        work[degree], work[8 + degree] = work[degree - 1] * heave, work[7 + degree] * roll
        for j in range(degree + 1):
            i = degree - j
            q, r = work[i], work[8 + j]
            q1 = i * work[i - 1] if i > 0 else 0.0
            r1 = j * work[7 + j] if j > 0 else 0.0
            q2 = i * (i - 1) * work[i - 2] if i > 1 else 0.0
            r2 = j * (j - 1) * work[6 + j] if j > 1 else 0.0
            for f in range(7):
                c = coefficients[f, term]
                out[f, VALUE] += c * q * r
                out[f, BY_Q] += c * q1 * r
                out[f, BY_R] += c * q * r1
                if twice:
                    out[f, BY_QQ] += c * q2 * r
                    out[f, BY_QR] += c * q1 * r1
                    out[f, BY_RR] += c * q * r2
            term += 1
        degree += 1
    return out


def law_of(axle: Axle) -> AxleLaw:
    """The motion of an axle, as its links guide it, or else its roll centre and leaning heave.

    Raises LinkageError where its links bind within the travel.
    """
    s = axle.suspension
    middle = frozen([axle.x, 0.0, axle.tyre.radius])
    reach = (s.bump, s.droop, s.spring_spacing)
    if s.links is not None:
        guide, point = _guided(s.links), middle
        reach = (s.links.bump, s.links.droop, s.links.spacing)
    else:
        guide = np.zeros((5, 2))
        guide[X, 0], guide[Z, 0] = np.sin(s.heave_lean), np.cos(s.heave_lean)
        point = frozen([axle.x, 0.0, s.roll_centre_height])
    if s.shocks is not None:
        corners = _pressed(s.shocks, guide.tobytes(), tuple((point - middle).tolist()), reach)
        guide = _wider(guide, *corners.shape[1:])
    else:
        corners = np.zeros((2, guide.shape[1]))
        corners[:, 0] = 1.0
        corners[:, 1] = np.array([0.5, -0.5]) * s.spring_spacing
    return AxleLaw(point, frozen(np.concatenate([guide, corners])))


def travel(bump: float, droop: float, spacing: float, nodes: int) -> tuple[Array, Array]:
    """Heave (m) and roll (rad), (nodes^2,) each, of places over the corners' travel, a quarter
    wider.

    bump, droop, spacing: m. q = (left + right) / 2, r = (left - right) / spacing, both at
    Chebyshev's nodes cos(pi (k + 1/2) / nodes).
    """
    at = np.cos(np.pi * (np.arange(nodes) + 0.5) / nodes)  # Chebyshev's, so that ends fit as well
    middle, half = (bump - droop) / 2, _MARGIN * max((bump + droop) / 2, LEAST_TRAVEL)
    left, right = (middle + half * g.ravel() for g in np.meshgrid(at, at))
    return (left + right) / 2, (left - right) / spacing


def _wider(values: Array, terms: int, rows: int = 0) -> Array:
    """The same with so many rows and terms, the added ones nothing; numpy's own `pad` is slow."""
    out = np.zeros((max(rows, len(values)), terms))
    out[: len(values), : values.shape[1]] = values
    return out


def _fitted(values: Array, heave: Array, roll: Array) -> Array:
    """(f, terms) coefficients of functions known as (K, f) at the places of `travel`."""
    q, r = np.abs(heave).max(), np.abs(roll).max()
    i, j = np.array(powers(DEGREE)).T
    found = (
        _solver(tuple((heave / q).round(12).tolist()), tuple((roll / r).round(12).tolist()))
        @ values
    )
    return np.asarray(found.T / (q**i * r**j))


@lru_cache(maxsize=64)
def _solver(heave: tuple[float, ...], roll: tuple[float, ...]) -> Array:
    """(terms, K) that makes coefficients of values, by least squares: places recur, scaled to 1."""
    terms = basis(np.array(heave), np.array(roll), len(powers(DEGREE)))[VALUE].T
    q, r = np.linalg.qr(terms)
    return np.asarray(np.linalg.solve(r, q.T))


@lru_cache(maxsize=4096)
def _guided(links: Links) -> Array:
    """(5, terms) of the axle's centre on its links. Raises LinkageError."""
    heave, roll = travel(links.bump, links.droop, links.spacing, _NODES)
    many = (len(heave), *links.axle.shape)
    at = linkage_poses(
        np.broadcast_to(links.chassis, many), np.broadcast_to(links.axle, many), heave, roll
    )
    if not at.closed.all():
        raise LinkageError(_binds(heave, roll, at.closed, links))
    guide = np.zeros((5, len(powers(DEGREE))))
    free = np.column_stack([at.place[:, :2], at.yaw, at.pitch])
    guide[[X, Y, YAW, PITCH]] = _fitted(free, heave, roll)
    guide[Z, 0] = 1.0
    return frozen(guide)


def _binds(heave: Array, roll: Array, closed: NDArray[np.bool_], links: Links) -> str:
    """Which corner travel they do not reach, the least of them."""
    half = links.spacing / 2
    most = np.maximum(np.abs(heave + half * roll), np.abs(heave - half * roll))
    first = int(np.argmin(np.where(closed, np.inf, most)))
    left, right = heave[first] + half * roll[first], heave[first] - half * roll[first]
    return (
        f"the links bind within the stops: with the left corner at {left * 1e3:+.0f} mm and the "
        f"right at {right * 1e3:+.0f} mm they do not reach"
    )


@lru_cache(maxsize=4096)
def _pressed(
    shocks: Shocks,
    guide_bytes: bytes,
    point: tuple[float, float, float],
    reach: tuple[float, float, float],
) -> Array:
    """(2, terms) compression of left and right shock. point: m, that the guide (5, terms) moves,
    from the axle's centre. reach: m of bump and droop, and spacing."""
    guide = np.frombuffer(guide_bytes).reshape(5, -1)
    heave, roll = travel(*reach, _NODES)
    now = axle_law_values(_wider(guide, guide.shape[1], 7), heave, roll)[:, VALUE]
    turn = rotations(now[YAW], now[PITCH], roll)
    ends = np.einsum("kij,sj->ksi", turn, shocks.axle - np.array(point))
    ends += now[:3].T[:, None] + np.array(point)
    length = np.linalg.norm(ends - shocks.chassis, axis=-1)
    rest = np.linalg.norm(shocks.axle - shocks.chassis, axis=-1)
    return frozen(_fitted(rest - length, heave, roll))
