"""Where heave and roll take a solid axle, and how far they press its shocks: one law for all.

Statics, trials in any engine, drawings and replays read the motion of an axle here and nowhere
else. It is held as polynomials in heave and roll: of the place of one point of the axle and of its
yaw and pitch (its roll is the freedom itself), and of the compression of its corners. A truck with
a roll centre and a leaning heave axis needs the first degree only, and has it exactly. Links have
it fitted over their travel, MARGIN wider, to their exact poses (`truck.linkage`): good to 0.001 mm
and 0.001 deg. Force and stiffness follow from the same polynomials, so that whoever uses them has
a mechanism without friction or gain of energy.

A rigid-body engine whose joints are straight (`tangent`) follows the curve by `difference`: the
force that the same wrench would put on the freedoms of the curved path, less what its own joints
take from it. At rest that is exact.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache, lru_cache

import numpy as np
from numpy.typing import NDArray

from crossfall.truck.linkage import LinkageError, place, rotations
from crossfall.truck.model import Array, Axle, Links, Shocks, frozen

DEGREE = 6
MARGIN = 1.25  # of the travel: what stops that give a little, and a step too far, still find
NODES = 9  # of the corner travel each way, at which links are fitted
X, Y, Z, YAW, PITCH, LEFT, RIGHT = range(7)
VALUE, BY_Q, BY_R, BY_QQ, BY_QR, BY_RR = range(6)


@cache
def powers(degree: int) -> tuple[tuple[int, int], ...]:
    """The powers of heave and roll in each term, by rising degree; no constant: at rest all is
    where it was."""
    return tuple((n - j, j) for n in range(1, degree + 1) for j in range(n + 1))


@cache
def degree_of(terms: int) -> int:
    """The degree that has this number of terms."""
    return next(n for n in range(1, 40) if len(powers(n)) == terms)


def basis(heave: Array, roll: Array, terms: int) -> Array:
    """(6, terms, ...) of q^i r^j: value, d/dq, d/dr, d2/dq2, d2/dqdr, d2/dr2; q, r as scaled."""
    degree = degree_of(terms)
    out = np.zeros((6, terms, *heave.shape))
    if degree == 1:
        out[VALUE, 0], out[VALUE, 1], out[BY_Q, 0], out[BY_R, 1] = heave, roll, 1.0, 1.0
        return out
    i, j = np.array(powers(degree)).T
    (q, dq, ddq), (r, dr, ddr) = (_powers(v, degree) for v in (heave, roll))
    q, dq, ddq, r, dr, ddr = q[i], dq[i], ddq[i], r[j], dr[j], ddr[j]
    for row, (a, b) in enumerate(((q, r), (dq, r), (q, dr), (ddq, r), (dq, dr), (q, ddr))):
        np.multiply(a, b, out=out[row])
    return out


def _powers(value: Array, degree: int) -> tuple[Array, Array, Array]:
    """(degree + 1, ...) powers of a value, and their first and second derivatives."""
    p = np.ones((degree + 1, *value.shape))
    d, dd = np.zeros_like(p), np.zeros_like(p)
    for n in range(1, degree + 1):
        np.multiply(p[n - 1], value, out=p[n])
        np.multiply(p[n - 1], n, out=d[n])
        np.multiply(d[n - 1], n, out=dd[n])
    return p, d, dd


@dataclass(frozen=True)
class AxleLaw:
    """One axle's motion against the chassis.

    point: (3,) m, of the axle, in truck axes at ride height. scale: m of heave and rad of roll that
    are 1 in the polynomials. coefficients: (7, terms), of the point's x, y, z (m), yaw and pitch
    (rad), and the compression of left and right corner (m).
    """

    point: Array
    scale: tuple[float, float]
    coefficients: Array

    def at(self, heave: Array, roll: Array) -> Array:
        """(7, 6, ...) X to RIGHT and their derivatives VALUE to BY_RR, SI."""
        return evaluate(self.coefficients, self.scale, heave, roll)

    def motion(self, heave: Array, roll: Array) -> tuple[Array, Array]:
        """(..., 3, 3) turn and (..., 3) shift: a point X of the axle at ride height is now at
        turn X + shift, both in axes fixed to the chassis."""
        heave, roll = np.asarray(heave, float), np.asarray(roll, float)
        now = self.at(heave, roll)[:, VALUE]
        turn = rotations(now[YAW], now[PITCH], roll)
        shift = self.point + np.moveaxis(now[:3], 0, -1) - turn @ self.point
        return turn, shift


def evaluate(coefficients: Array, scale: Sequence[float], heave: Array, roll: Array) -> Array:
    """(7, 6, ...) of one axle: see AxleLaw.at."""
    q, r = scale
    found = np.tensordot(
        coefficients, basis(heave / q, roll / r, coefficients.shape[1]), axes=([1], [1])
    )
    for row, by in ((BY_Q, q), (BY_R, r), (BY_QQ, q * q), (BY_QR, q * r), (BY_RR, r * r)):
        found[:, row] /= by
    return np.asarray(found)


def law_of(axle: Axle) -> AxleLaw:
    """The motion of an axle, as its links guide it, or else its roll centre and leaning heave."""
    s = axle.suspension
    middle = frozen([axle.x, 0.0, axle.tyre.radius])
    if s.links is not None:
        guide, scale = _guided(s.links)
        point = middle
    else:
        guide = np.zeros((5, 2))
        guide[X, 0], guide[Z, 0] = np.sin(s.heave_lean), np.cos(s.heave_lean)
        scale, point = (1.0, 1.0), frozen([axle.x, 0.0, s.roll_centre_height])
    if s.shocks is not None:
        reach = (s.bump, s.droop, s.spring_spacing)
        if s.links is not None:
            reach = (s.links.bump, s.links.droop, s.links.spacing)
        guide, scale, corners = _pressed(
            s.shocks, guide.tobytes(), scale, tuple(point - middle), reach
        )
    else:
        corners = np.zeros((2, guide.shape[1]))
        corners[:, 0] = scale[0]
        corners[:, 1] = np.array([0.5, -0.5]) * s.spring_spacing * scale[1]
    return AxleLaw(point, scale, np.concatenate([guide, corners]))


def travel(bump: float, droop: float, spacing: float, nodes: int) -> tuple[Array, Array]:
    """Heave (m) and roll (rad) of nodes^2 places over the corners' travel, MARGIN wider."""
    at = np.cos(np.pi * (np.arange(nodes) + 0.5) / nodes)  # Chebyshev's, so that ends fit as well
    middle, half = (bump - droop) / 2, MARGIN * max((bump + droop) / 2, 1e-4)
    left, right = (middle + half * g.ravel() for g in np.meshgrid(at, at))
    return (left + right) / 2, (left - right) / spacing


def _scale(bump: float, droop: float, spacing: float) -> tuple[float, float]:
    half = MARGIN * max((bump + droop) / 2, 1e-4)
    return half + abs(bump - droop) / 2, 2 * half / spacing


def _fitted(values: Array, heave: Array, roll: Array, scale: tuple[float, float]) -> Array:
    """(f, terms) coefficients of functions known as (K, f)."""
    terms = basis(heave / scale[0], roll / scale[1], len(powers(DEGREE)))[VALUE].T
    return np.asarray(np.linalg.lstsq(terms, values, rcond=None)[0].T)


@lru_cache(maxsize=4096)
def _guided(links: Links) -> tuple[Array, tuple[float, float]]:
    """(5, terms) of the axle's centre on its links, and the scale. Raises LinkageError."""
    reach = (links.bump, links.droop, links.spacing)
    heave, roll = travel(*reach, NODES)
    many = (len(heave), *links.axle.shape)
    at = place(np.broadcast_to(links.chassis, many), np.broadcast_to(links.axle, many), heave, roll)
    if not at.closed.all():
        raise LinkageError(_binds(heave, roll, at.closed, links))
    scale = _scale(*reach)
    free = np.column_stack([at.place[:, :2], at.yaw, at.pitch])
    guide = np.zeros((5, len(powers(DEGREE))))
    guide[[X, Y, YAW, PITCH]] = _fitted(free, heave, roll, scale)
    guide[Z, 0] = scale[0]
    return frozen(guide), scale


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
    scale: tuple[float, float],
    point: tuple[float, float, float],
    reach: tuple[float, float, float],
) -> tuple[Array, tuple[float, float], Array]:
    """The guide with as many terms as shocks need, its scale, and (2, terms) of the shocks'
    compression. point: m, of the guide, from the axle's centre."""
    guide = np.frombuffer(guide_bytes).reshape(5, -1)
    terms = len(powers(DEGREE))
    if guide.shape[1] < terms:  # first degree: only its scale has to change
        wide = np.zeros((5, terms))
        new = _scale(*reach)
        wide[:, :2] = guide * (np.array(new) / scale)
        guide, scale = wide, new
    heave, roll = travel(*reach, NODES)
    now = evaluate(np.pad(guide, ((0, 2), (0, 0))), scale, heave, roll)[:, VALUE]
    turn = rotations(now[YAW], now[PITCH], roll)
    from_point = shocks.axle - np.array(point)
    ends = np.einsum("kij,sj->ksi", turn, from_point) + now[:3].T[:, None] + np.array(point)
    length = np.linalg.norm(ends - shocks.chassis, axis=-1)
    rest = np.linalg.norm(shocks.axle - shocks.chassis, axis=-1)
    return frozen(guide), scale, frozen(_fitted(rest - length, heave, roll, scale))
