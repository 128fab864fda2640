"""Least squares with limits on some parameters."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from crossfall.truck.model import Array
from crossfall.tuning.weighin_fit import ROUNDS, Datum, Known, Model, design, weights_of
from crossfall.tuning.weighin_scatter import Scatter

SETTLED = 1e-7  # of a parameter's size
AT_LIMIT = 1e-6  # of a limit


@dataclass(frozen=True)
class Bounded:
    """As `weighin_fit.Fit`; held: (P,) which parameters stand at their limit.

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


def fit_within(
    model: Model,
    data: Sequence[Datum],
    kinds: Sequence[Scatter],
    known: Sequence[Known],
    limits: Array,
) -> Bounded:
    """Gauss-Newton, each step a bounded linear least squares; limits (P,) either side of known.

    Every parameter with an sd counts as observed at its known value.
    """
    from scipy.optimize import lsq_linear

    start = np.array([k.value for k in known])
    values = start.copy()
    moving, sizes, weights, told = weights_of(data, kinds, known)
    readings = np.array([d.value for d in data])
    scale = sizes[moving]

    def gap(at: Array) -> Array:
        return np.concatenate([(readings - model(at[None])[0]) * weights, (start - at) * told])

    for _ in range(ROUNDS):
        rows = design(model, values, sizes, weights, told)[:, moving] * scale
        room = ((start - values)[moving] + np.array([-1, 1])[:, None] * limits[moving]) / scale
        solved = lsq_linear(rows, gap(values), (room[0] - 1e-12, room[1] + 1e-12), tol=1e-14)
        values[moving] += solved.x * scale
        if np.all(np.abs(solved.x) <= SETTLED):
            break
    edge = np.where(np.isfinite(limits), limits, 1.0)
    held = moving & np.isfinite(limits) & (np.abs(values - start) > edge * (1 - AT_LIMIT))
    free = moving & ~held
    rows = design(model, values, sizes, weights, told)[:, free]
    inverse = np.linalg.pinv(rows * sizes[free], rcond=1e-13) * sizes[free, None]
    effects = np.zeros((len(known), len(rows)))
    effects[free] = inverse
    left = gap(values)
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
