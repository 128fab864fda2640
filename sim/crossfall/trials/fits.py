"""Fits to what trials recorded, each with a confidence interval."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from crossfall.truck.model import Array

LEAST = 16  # samples below which nothing is fitted


@dataclass(frozen=True)
class Fit:
    """A fitted value with its 95 % interval (low, high).

    coefficients: of the model named where it was fitted. samples: used. scatter: standard
    deviation of the residuals, in the units of value.
    """

    value: float
    low: float
    high: float
    coefficients: tuple[float, ...]
    samples: int
    scatter: float


@dataclass(frozen=True)
class Approach:
    """A pair of wheels losing its load on a tilting table, n samples.

    theta: (n,) rad. load: (n,) of the pair, as a fraction of the truck's weight. rate: (n,) rad/s
    of the table.
    """

    theta: Array
    load: Array
    rate: Array


def tangent_at(at: tuple[Array, Array], c0: float, c1: float, c2: float, lag: float) -> Array:
    """tan(theta) from (l, rate): c0 + c1 l + c2 l^2 + lag * rate, with l = load / cos(theta).

    For a rigid truck tan(theta) is linear in l (moments about the tip line). With springs the
    table angle is still a smooth function of the load along the path of equilibria, at a corner,
    where the load runs out, and at a fold, where load against angle has a square root. A moving
    table is ahead of its truck by what the dampers take, in proportion to its rate.
    """
    load, rate = at
    return c0 + c1 * load + c2 * load**2 + lag * rate


def straight_tangent_at(at: tuple[Array, Array], c0: float, c1: float, lag: float) -> Array:
    """`tangent_at` without curvature."""
    return tangent_at(at, c0, c1, 0.0, lag)


def critical_tangent(coefficients: Array) -> tuple[float, Array]:
    """Greatest c0 + c1 l + c2 l^2 over l >= 0 near zero, and its gradient in all coefficients."""
    c0, c1, c2 = (*coefficients[:-1], 0.0)[:3]
    gradient = np.zeros(len(coefficients))
    gradient[0] = 1.0
    if c1 > 0.0 and c2 < 0.0:  # a fold before the load runs out
        peak = -c1 / (2 * c2)
        gradient[1:3] = peak, peak**2
        return float(c0 + c1 * peak / 2), gradient
    return float(c0), gradient


def fit_critical_angle(approaches: Sequence[Approach]) -> Fit | None:
    """Critical angle (rad) at zero rate, from approaches at one or more rates.

    With a single rate its lag cannot be told apart and stays in. The interval joins the
    statistical one with the spread between a straight and a curved model and between all samples
    and the half with the least load, since what is missing in the model is more than scatter.
    None where there is too little to fit, or it makes no sense: the load must fall as the table
    rises, and be gone within a tenth of the tangent beyond the last sample.
    """
    theta = np.concatenate([a.theta for a in approaches])
    load = np.concatenate([a.load for a in approaches]) / np.cos(theta)
    rate = np.concatenate([a.rate for a in approaches])
    if len(theta) < LEAST:
        return None
    middle = (rate.min() + rate.max()) / 2
    few = min(np.sum(rate < middle), np.sum(rate > middle)) < LEAST // 4
    if few or np.ptp(rate) < 0.2 * np.abs(rate).max():
        rate = np.zeros_like(rate)
    near = load <= np.median(load)
    fits = [
        _fit(model, theta[keep], load[keep], rate[keep])
        for model, keep in (
            (tangent_at, np.ones_like(near)),
            (straight_tangent_at, near),
            (straight_tangent_at, np.ones_like(near)),
        )
    ]
    best, others = fits[1], (fits[0], fits[2])
    beyond = math.tan(best.value) / math.tan(float(theta.max()))
    if not (best.coefficients[1] < 0.0 and 0.99 < beyond < 1.1):
        return None
    statistical = best.high - best.value
    spread = max(abs(best.value - other.value) for other in others)
    half = math.hypot(statistical, spread)
    return Fit(
        best.value,
        best.value - half,
        best.value + half,
        best.coefficients,
        best.samples,
        best.scatter,
    )


def _fit(model: object, theta: Array, load: Array, rate: Array) -> Fit:
    from scipy.optimize import curve_fit
    from scipy.stats import t as student

    lagged = bool(np.ptp(rate) > 0.0)
    count = (4 if model is tangent_at else 3) - (not lagged)

    def values(at: tuple[Array, Array], *c: float) -> Array:
        full = c if lagged else (*c, 0.0)
        return np.asarray(model(at, *full))  # type: ignore[operator]

    tangent = np.tan(theta)
    start = np.zeros(count)
    start[0] = tangent[-1]
    best, covariance = curve_fit(values, (load, rate), tangent, p0=start)
    residual = tangent - values((load, rate), *best)
    freedom = max(1, len(theta) - count)
    full = best if lagged else np.append(best, 0.0)
    value, gradient = critical_tangent(full)
    gradient = gradient[:count]
    sd = math.sqrt(max(0.0, float(gradient @ covariance @ gradient)))
    slope = 1.0 / (1.0 + value**2)
    half = float(student.ppf(0.975, freedom)) * sd * slope
    scatter = float(np.sqrt(np.sum(residual**2) / freedom)) * slope
    angle = math.atan(value)
    return Fit(angle, angle - half, angle + half, tuple(map(float, full)), len(theta), scatter)
