"""How the compliant tip angle moves with a small mass anywhere on the truck.

Central differences of the answer itself: slipping tyres remember the way, so that there is no
derivative at the tip alone. The answer is a smooth function of the truck, and springs and tyres
are adjusted again so that the truck with the added mass sits level, as for the truck itself. Where
two things happen at once (a symmetric truck) this is the mean of both.

Source: derived here: central differences, (theta(+m) - theta(-m)) / 2m, at four places a carrier;
the tip is affine in the place of a small mass, as first moments are.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace
from typing import get_args

import numpy as np

from crossfall.statics.compliant import NO_SLIDE, tips_at
from crossfall.truck.model import Array, Axle, Body, Carrier, Flags, Truck, frozen

CARRIERS: tuple[Carrier, ...] = get_args(Carrier)
_STEP = 0.003  # of the truck's mass, and
REACH = 0.3  # of its wheelbase: large to the answer's accuracy, small to the truck


@dataclass(frozen=True)
class TipGradient:
    """Derivatives of the tip angle on H headings.

    heading, tip: (H,) rad. coefficients: (H, 7, 4), for each of CARRIERS: a gram at (x, y, z)
    counts c0 + cx x + cy y + cz z, in rad/kg and rad/(kg m).
    """

    heading: Array
    tip: Array
    coefficients: Array

    def per_mass(self, carrier: Carrier, places: Array) -> Array:
        """(H, n) rad/kg for a small mass carried by `carrier` at places (n, 3) m, truck axes."""
        c = self.coefficients[:, CARRIERS.index(carrier)]
        return np.asarray(c[:, :1] + c[:, 1:] @ np.atleast_2d(places).T)

    def per_move(self, carrier: Carrier, mass: float) -> Array:
        """(H, 3) rad/m for moving a mass (kg) that `carrier` carries, along x, y, z."""
        return np.asarray(mass * self.coefficients[:, CARRIERS.index(carrier), 1:])


def tip_gradient(
    truck: Truck, headings: Array, grip: float = NO_SLIDE, *, rail: bool | Flags = False
) -> TipGradient:
    """Derivatives of the tip on every heading (H,) rad by mass anywhere on the truck.

    grip: friction coefficient. rail: whether, or on which headings (H,), the tyres it would tip
    over cannot slip.

    d(theta)/dm = c0 + cx x + cy y + cz z. Raises InputError as `builds.stacked` does.
    """
    heading = np.atleast_1d(np.asarray(headings, dtype=np.float64))
    count, against = len(heading), np.broadcast_to(np.asarray(rail, dtype=bool), heading.shape)
    places = np.vstack([np.zeros(3), REACH * truck.wheelbase * np.eye(3)])
    step = _STEP * sum(_body(truck, c).mass for c in CARRIERS)
    steps = (step, -step)
    builds = [truck, *(added(truck, c, p, m) for c in CARRIERS for p in places for m in steps)]
    tip = np.empty((len(builds), count))
    for held in (False, True):
        at = np.flatnonzero(against == held)
        if len(at):
            who = np.repeat(np.arange(len(builds)), len(at))
            psi = np.tile(heading[at], len(builds))
            found = tips_at(builds, who, psi, np.full(len(psi), grip), rail=held).tip
            tip[:, at] = found.reshape(len(builds), -1)
    rates = (tip[1::2] - tip[2::2]) / (2 * step)
    rates = rates.T.reshape(count, len(CARRIERS), 4)
    rates[..., 1:] = (rates[..., 1:] - rates[..., :1]) / (REACH * truck.wheelbase)
    return TipGradient(heading, tip[0], rates)


def added(truck: Truck, carrier: Carrier, place: Array | Sequence[float], mass: float) -> Truck:
    """The truck with a point mass (kg, may be negative) on `carrier` at place (3,) m, truck axes.

    c' = (M c + m p) / (M + m). Moments of inertia and the list of parts stay: no statics asks them.
    Not finite where nothing is left.
    """
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
