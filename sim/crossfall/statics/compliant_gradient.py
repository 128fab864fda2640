"""How the compliant tip angle moves with a small mass: exact derivatives at the loss of stability.

Implicit function theorem. With loads Q(x, theta, p) = 0 on the path and K = -dQ/dx:

at a fold, psi K = 0:    d(theta)/dp = -(psi . dQ/dp) / (psi . dQ/dtheta)
at a corner, gap g = 0:  K dx - Q_theta d(theta) = Q_p dp together with dg = 0

(e.g. W. Govaerts, Numerical Methods for Bifurcations of Dynamical Equilibria (2000), chapter 3).
The springs and tyres are adjusted again so that the truck with the added mass sits level, as for
the truck itself. Where two gaps open at once (a symmetric truck) the mean of both is taken, which
is what a central difference gives.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import get_args

import numpy as np

from crossfall.statics import continuation
from crossfall.statics.balance import Uniform, gap_slopes
from crossfall.statics.builds import Builds, Flags, Ints, pack
from crossfall.statics.compliant import lose
from crossfall.statics.continuation import FOLD, Track
from crossfall.statics.newton import Cases, solve
from crossfall.truck.model import Array, Axle, Body, Carrier, Truck, frozen

CARRIERS: tuple[Carrier, ...] = get_args(Carrier)
SMALL = 1e-4  # of the truck's mass: the step of the central difference of the loads, not of theta


@dataclass(frozen=True)
class TipGradient:
    """Derivatives of the tip angle on H headings, uniform closure.

    heading, tip: (H,) rad. reason: (H,) as in `compliant.CompliantTips`. coefficients: (H, 7, 4),
    for each of CARRIERS: a gram at (x, y, z) counts c0 + cx x + cy y + cz z, in rad/kg and
    rad/(kg m).
    """

    heading: Array
    tip: Array
    reason: Ints
    coefficients: Array

    def per_mass(self, carrier: Carrier, places: Array) -> Array:
        """(H, n) rad/kg for a small mass carried by `carrier` at places (n, 3) m, truck axes."""
        c = self.coefficients[:, CARRIERS.index(carrier)]
        return np.asarray(c[:, :1] + c[:, 1:] @ np.atleast_2d(places).T)

    def per_move(self, carrier: Carrier, mass: float) -> Array:
        """(H, 3) rad/m for moving a mass (kg) that `carrier` carries, along x, y, z."""
        return np.asarray(mass * self.coefficients[:, CARRIERS.index(carrier), 1:])


def tip_gradient(truck: Truck, headings: Array) -> TipGradient:
    """Derivatives of the tip on every heading (H,) rad by mass anywhere on the truck."""
    heading = np.atleast_1d(np.asarray(headings, dtype=np.float64))
    count = len(heading)
    cases = Cases(pack([truck]).take(np.zeros(count, dtype=np.int64)), heading, Uniform())
    track = continuation.start(cases)
    lose(cases, track)

    places = np.vstack([np.zeros(3), truck.wheelbase * np.eye(3)])
    step = SMALL * sum(_body(truck, c).mass for c in CARRIERS)
    steps = (step, -step)
    changed = [added(truck, c, p, m) for c in CARRIERS for p in places for m in steps]
    which = np.arange(len(changed))
    loads, gaps = _moved(cases, track, pack(changed), which)
    rates = _theta_rates(cases, track, loads / (2 * step), gaps / (2 * step))
    rates = rates.reshape(count, len(CARRIERS), 4)
    rates[..., 1:] = (rates[..., 1:] - rates[..., :1]) / truck.wheelbase
    return TipGradient(heading, track.state[-1], track.outcome, rates)


def added(truck: Truck, carrier: Carrier, place: Array | Sequence[float], mass: float) -> Truck:
    """The truck with a point mass (kg, may be negative) on `carrier` at place (3,) m."""
    old, at = _body(truck, carrier), np.asarray(place, dtype=np.float64)
    total = old.mass + mass
    cg = (old.mass * old.cg + mass * at) / total
    body = Body(total, frozen(cg), old.inertia)
    if carrier == "chassis":
        return replace(truck, chassis=body)
    end = "front" if carrier.startswith("front") else "rear"
    axle: Axle = getattr(truck, end)
    if carrier.endswith("axle"):
        axle = replace(axle, body=body)
    else:
        left, right = axle.wheels
        axle = replace(axle, wheels=(body, right) if carrier.endswith("left") else (left, body))
    return replace(truck, front=axle) if end == "front" else replace(truck, rear=axle)


def _body(truck: Truck, carrier: Carrier) -> Body:
    if carrier == "chassis":
        return truck.chassis
    axle = truck.front if carrier.startswith("front") else truck.rear
    if carrier.endswith("axle"):
        return axle.body
    return axle.wheels[0 if carrier.endswith("left") else 1]


def _moved(cases: Cases, track: Track, changed: Builds, which: Ints) -> tuple[Array, Array]:
    """Differences of loads (n, H, k) and gaps (g, H, k) at the tips between pairs of builds."""
    count = len(cases)
    all_cases = Cases(
        changed.take(np.tile(which, count)), np.repeat(cases.heading, len(which)), Uniform()
    )
    at = all_cases.balance(
        np.repeat(track.state, len(which), axis=1), np.repeat(track.on, len(which), axis=1)
    )
    pairs = [values.reshape(len(values), count, -1, 2) for values in (at.load, at.gaps)]
    loads, gaps = (values[..., 0] - values[..., 1] for values in pairs)
    return loads, gaps


def _theta_rates(cases: Cases, track: Track, loads: Array, gaps: Array) -> Array:
    """(H, k) d(theta)/dp from d(load)/dp (n, H, k) and d(gap)/dp (g, H, k)."""
    at = cases.balance(track.state, track.on)
    stiffness = at.stiffness.transpose(2, 0, 1)
    psi = np.linalg.svd(stiffness)[0][:, :, -1]
    along = np.einsum("bn,nb->b", psi, at.slope)
    at_fold = -np.einsum("bn,nbk->bk", psi, loads) / along[:, None]

    n, count = at.load.shape
    row, met = np.zeros((n + 1, count)), track.switched
    gap_rate = np.zeros(loads.shape[1:])
    for gap in np.flatnonzero(met.any(axis=1)):
        row += met[gap] * gap_slopes(cases.builds, at, np.full(count, gap))
        gap_rate += met[gap][:, None] * gaps[gap]
    corner: Flags = (track.outcome != FOLD) & met.any(axis=0)
    row[-1, ~corner] = 1.0
    matrix = np.zeros((n + 1, n + 1, count))
    matrix[:-1, :-1], matrix[:-1, -1], matrix[-1] = at.stiffness, -at.slope, row
    columns = np.concatenate([loads, -gap_rate[None]])
    answers = solve(matrix, *(columns[..., k] for k in range(columns.shape[-1])))
    at_corner = np.stack([answer[-1] for answer in answers], axis=-1)
    return np.asarray(np.where(corner[:, None], at_corner, at_fold))
