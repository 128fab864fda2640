"""Mass, CG and inertia of bodies put together."""

from __future__ import annotations

from collections.abc import Iterable

import numpy as np

from crossfall.truck.model import Array, Body, Truck, frozen


def steiner(mass: float, offset: Array) -> Array:
    """Parallel-axis term m (d.d I - d d^T), kg m^2, for a shift of `offset` (3,) m."""
    d = np.asarray(offset, dtype=np.float64)
    return mass * (np.dot(d, d) * np.eye(3) - np.outer(d, d))


def combine(bodies: Iterable[Body]) -> Body:
    """One body from many, in the same axes; no mass at all gives a body at the origin.

    Parallel-axis theorem: see any mechanics text, e.g. Meriam and Kraige, Dynamics, appendix B.
    """
    bodies = tuple(bodies)
    mass = float(sum(b.mass for b in bodies))
    if mass == 0.0:
        return Body(0.0, frozen(np.zeros(3)), frozen(np.zeros((3, 3))))
    cg = np.sum([b.mass * b.cg for b in bodies], axis=0) / mass
    inertia = np.sum([b.inertia + steiner(b.mass, b.cg - cg) for b in bodies], axis=0)
    return Body(mass, frozen(cg), frozen(inertia))


def whole(truck: Truck) -> Body:
    """The whole truck as one rigid body at ride height."""
    return combine((truck.chassis, *(unsprung(truck, i) for i in (0, 1))))


def unsprung(truck: Truck, axle: int) -> Body:
    """One axle (0 front, 1 rear) with its wheels, as one rigid body."""
    a = truck.axles[axle]
    return combine((a.body, *a.wheels))
