"""Fits to what trials recorded, each with a confidence interval."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from crossfall.truck.model import Array


@dataclass(frozen=True)
class Fit:
    """value with its 95 % interval (low, high); coefficients of the model; samples used.

    scatter: standard deviation of the residuals, in the units of value.
    """

    value: float
    low: float
    high: float
    coefficients: tuple[float, ...]
    samples: int
    scatter: float


def zero_rate_angle(at: tuple[Array, Array], c0: float, c1: float, c2: float, lag: float) -> Array:
    """tan(theta) from (load, rate of load): c0 + c1 l + c2 l^2 - lag * rate.

    Along the path of equilibria the table angle is a smooth function of the uphill load l, both
    where the load runs out (a corner) and where it turns back first (a fold, where load against
    angle has a square root). A moving table is late by what its dampers take, in proportion to
    how fast the load changes; at rest rate is zero.
    """
    load, rate = at
    return c0 + c1 * load + c2 * load**2 - lag * rate


def turning_point(c: Array) -> tuple[float, Array]:
    """Greatest c0 + c1 l + c2 l^2 over l >= 0 near the lift, and its gradient in (c0, c1, c2)."""
    c0, c1, c2 = c[:3]
    if c1 > 0.0 and c2 < 0.0:
        peak = -c1 / (2 * c2)
        return float(c0 - c1**2 / (4 * c2)), np.array([1.0, peak, peak**2])
    return float(c0), np.array([1.0, 0.0, 0.0])


def fit_critical_angle(time: Array, theta: Array, load: Array) -> Fit | None:
    """Critical angle (rad) at zero rate from the last stretch of a trial.

    time: (n,) s; theta: (n,) rad; load: (n,) load of the pair that lifts over the weight. None
    where there is too little to fit.
    """
    from scipy.optimize import curve_fit
    from scipy.stats import t as student

    if len(time) < 12:
        return None
    load = load / np.cos(theta)
    rate = np.gradient(load, time)
    args = (load, rate)
    u = np.tan(theta)
    try:
        best, cov = curve_fit(zero_rate_angle, args, u, p0=(u[-1], 0.0, 0.0, 0.0))
    except (RuntimeError, ValueError):
        return None
    value, gradient = turning_point(best)
    spread = math.sqrt(max(0.0, gradient @ cov[:3, :3] @ gradient))
    residual = u - zero_rate_angle(args, *best)
    scatter = float(residual.std(ddof=4))
    slope = 1.0 / (1.0 + value**2)
    half = float(student.ppf(0.975, len(time) - 4)) * spread * slope
    angle = math.atan(value)
    return Fit(
        angle, angle - half, angle + half, tuple(map(float, best)), len(time), scatter * slope
    )
