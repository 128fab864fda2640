"""Mass, CG and inertia of bodies put together.

Source: sums and the parallel-axis theorem (Huygens-Steiner), e.g. J. L. Meriam and L. G. Kraige,
Engineering Mechanics: Dynamics, appendix B (from memory).
"""

from __future__ import annotations

from collections.abc import Callable, Iterable

import numpy as np

from crossfall.truck.model import Array, Body, Truck, frozen

_EYE = np.eye(3)


def steiner(mass: float | Array, offset: Array) -> Array:
    """Parallel-axis term m (d.d I - d d^T), kg m^2.

    offset: (..., 3) m with masses (...) kg to match; gives (..., 3, 3).

    Raises numpy's ValueError where the shapes do not fit.
    """
    d = np.asarray(offset, dtype=np.float64)
    square = np.sum(d * d, axis=-1)[..., None, None] * _EYE
    term: Array = np.asarray(mass)[..., None, None] * (square - d[..., :, None] * d[..., None, :])
    return term


def combine(bodies: Iterable[Body]) -> Body:
    """One body from many, in the same axes; no mass at all gives a body at the origin.

    M = sum m, c = sum m c_i / M, I = sum (I_i + m (d.d I - d d^T)), d = c_i - c; kg, m, kg m^2.
    Raises nothing.
    """
    bodies = tuple(bodies)
    masses = np.array([b.mass for b in bodies])
    mass = float(masses.sum())
    if mass == 0.0:
        return Body(0.0, frozen(np.zeros(3)), frozen(np.zeros((3, 3))))
    centres = np.array([b.cg for b in bodies])
    cg = masses @ centres / mass
    own = np.array([b.inertia for b in bodies])
    inertia = np.sum(own + steiner(masses, centres - cg), axis=0)
    return Body(mass, frozen(cg), frozen(inertia))


def whole(truck: Truck) -> Body:
    """The whole truck as one rigid body at ride height: `combine` of its seven."""
    return _kept(
        truck, "whole", lambda: combine((truck.chassis, *(unsprung(truck, i) for i in (0, 1))))
    )


def unsprung(truck: Truck, axle: int) -> Body:
    """One axle (0 front, 1 rear) with its wheels, as one rigid body. Raises IndexError beyond 1."""
    a = truck.axles[axle]
    return _kept(truck, f"unsprung {axle}", lambda: combine((a.body, *a.wheels)))


def _kept(truck: Truck, name: str, work: Callable[[], Body]) -> Body:
    """What is asked for dozens of times and cannot change is kept with the (frozen) truck."""
    kept: dict[str, Body] = vars(truck).setdefault("_kept", {})
    if name not in kept:
        kept[name] = work()
    return kept[name]
