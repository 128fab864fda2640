"""What straight joints leave out of a driven axle's curved path on its links.

As `engines.curve` for held wheels; but here the engine itself finds what the ground does, where the
straight joints have the wheels. How hard each disc is pushed follows from how its tyre gives, and
with the same forces where the axle truly stands the axle is given the moment, and its joints the
forces, that are missing. On the ground's own slope beneath each wheel; as at rest: what tyres are
damped by, and what it takes to speed a wheel up, is not counted.

Each disc is in balance: K w + F_0 - m g is what the ground pushes it with.
Source: derived here from virtual work, as `engines.curve`, and from the balance of each disc.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from crossfall.engines.axle_forces import AXLE, WORK, step_rolling
from crossfall.engines.curve import set_curve
from crossfall.engines.multibody import SHARE, disc_places
from crossfall.engines.springs import TyreSpring
from crossfall.truck.massprops import unsprung
from crossfall.truck.model import Truck
from crossfall.truck.native import address, entry
from crossfall.truck.vectors import Vector


class RollingCurve:
    """One axle on links whose wheels turn. tyres: the springs of its discs, three for each, in the
    order of `multibody.tyre_joints`."""

    def __init__(self, truck: Truck, index: int, tyres: Sequence[TyreSpring]) -> None:
        axle, body = truck.axles[index], unsprung(truck, index)
        self._axle = np.zeros(1, AXLE)
        self._axle["radius"] = axle.tyre.radius
        share = SHARE * axle.body.mass / body.mass
        self._law = set_curve(self._axle[0], truck, index, share).copy()
        centre = (axle.x, 0.0, axle.suspension.roll_centre_height)
        discs: list[list[float]] = []
        for wheel in (2 * index, 2 * index + 1):
            places = disc_places(wheel, axle)
            mass = axle.wheels[wheel % 2].mass / len(places)
            for at in places:
                up, ahead, aside = tyres[3 * len(discs) : 3 * len(discs) + 3]
                own = (mass, ahead.rate, aside.rate, up.rate, up.force)
                discs.append([*(at - centre), *own])
        self._discs, self._gives = np.array(discs), np.empty((len(discs), 3))
        self._moves, self._out, self._work = np.empty(17), np.empty(5), np.empty(WORK)
        arrays = (self._axle, self._law, self._discs, self._moves, self._gives, self._out)
        self._at = [address(array) for array in (*arrays, self._work)]
        self._step = entry(step_rolling)

    def missing(
        self,
        origin: Vector,
        turn: Sequence[float],
        joints: Sequence[Sequence[float]],
        gives: Sequence[Sequence[float]],
        gravity: Vector,
    ) -> tuple[Vector, tuple[float, float]]:
        """Moment (N m) on the axle, and what besides on heave (N) and roll (N m).

        origin: m, the engine's roll centre of the axle. turn: (9,) its rotation, rows first.
        joints: state of heave and roll. gives: states of the tyres' joints.
        """
        self._moves[:] = [joints[0][0], joints[1][0], *origin, *turn, *gravity]
        self._gives.ravel()[:] = [state[0] for state in gives]
        self._step(*self._at, len(self._discs), self._law.shape[1])
        x, y, z, heave, roll = self._out.tolist()
        return (x, y, z), (heave, roll)
