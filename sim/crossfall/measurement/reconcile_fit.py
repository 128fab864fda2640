"""Least squares in which what is known within limits stays within them."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from crossfall.measurement.scatter import Scatter
from crossfall.measurement.weighted_fit import (
    ROUNDS,
    Datum,
    Prior,
    ReadingModel,
    design,
    no_truck,
    solvable,
    weights_of,
)
from crossfall.truck.model import Array

_SETTLED = 1e-5  # of a parameter's size
_AT_LIMIT = 1e-6  # of a parameter's size
_LEAST_STEP = 1e-6  # of a Gauss-Newton step: no way down is found along a shorter one


@dataclass(frozen=True)
class Bounded:
    """As `weighted_fit.WeightedFit`; held: (P,) which parameters stand at their limit.

    covariance counts held parameters as fixed. redundancy: readings, as every parameter was known
    beforehand.
    """

    values: Array
    covariance: Array
    held: NDArray[np.bool_]
    normalised: Array
    slips: Array
    chi_square: float
    redundancy: int


@solvable()
def fit_within(
    model: ReadingModel, data: Sequence[Datum], kinds: Sequence[Scatter], known: Sequence[Prior]
) -> Bounded:
    """Gauss-Newton, each step a bounded linear least squares, halved until it leads downhill.

    model: (K, P) -> (K, D), in the units of data and known. Minimises sum ((y - f(p)) / s)^2 + sum
    ((p - p0) / s0)^2 within p's limits.

    Every parameter with an sd counts as observed at its known value, and stays within its limits: a
    ruler or an inclinometer is no further off than it says, whatever the readings would like.
    InputError where the readings fit no truck.
    Source: J. Nocedal and S. J. Wright, Numerical Optimization (Springer 2006), chapter 10; bounded
    steps by P. B. Stark and R. L. Parker, Bounded-Variable Least Squares (1995), as scipy has them
    (both from memory).
    """
    from scipy.optimize import lsq_linear

    start = np.array([k.value for k in known])
    values = start.copy()
    moving, sizes, weights, prior_weights = weights_of(data, kinds, known)
    readings = np.array([d.value for d in data])
    scale = sizes[moving]
    limits = np.array([k.limits for k in known])[moving].T

    def residual(at: Array) -> Array:
        return np.concatenate(
            [(readings - model(at[None])[0]) * weights, (start - at) * prior_weights]
        )

    for _ in range(ROUNDS):
        rows = design(model, values, sizes, weights, prior_weights)[:, moving] * scale
        left = residual(values)
        if not (np.isfinite(rows).all() and np.isfinite(left).all()):
            raise no_truck()
        bounds = (limits - values[moving]) / scale
        step = lsq_linear(
            rows, left, (bounds[0] - 1e-12, bounds[1] + 1e-12), tol=1e-14, method="bvls"
        ).x
        if np.all(np.abs(step) <= _SETTLED):
            break
        whole = np.zeros(len(known))
        whole[moving] = step * scale
        share = _downhill(residual, values, whole, float(left @ left))
        values = values + share * whole
        if share == 0.0:
            break
    held = np.zeros(len(known), dtype=np.bool_)
    edge = np.min(np.abs(limits - values[moving]) / scale, axis=0)
    held[moving] = edge < _AT_LIMIT
    free = moving & ~held
    rows = design(model, values, sizes, weights, prior_weights)[:, free]
    inverse = np.linalg.pinv(rows * sizes[free], rcond=1e-13) * sizes[free, None]
    effects = np.zeros((len(known), len(rows)))
    effects[free] = inverse
    left = residual(values)
    open_share = 1.0 - np.einsum("ij,ji->i", rows, inverse)[: len(data)]
    open_share = np.maximum(open_share, 1e-9)
    return Bounded(
        values,
        effects @ effects.T,
        held,
        left[: len(data)] / np.sqrt(open_share),
        left[: len(data)] / weights / open_share,
        float(left @ left),
        len(data),
    )


def _downhill(residual: Callable[[Array], Array], at: Array, step: Array, before: float) -> float:
    """How much of a step to take so that the sum of squares does not rise; none, if it must."""
    share = 1.0
    while share > _LEAST_STEP:
        if float(np.sum(residual(at + share * step) ** 2)) <= before:
            return share
        share /= 2
    return 0.0
