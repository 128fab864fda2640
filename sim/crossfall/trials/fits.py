"""Fits to what trials recorded, each with a confidence interval."""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np

from crossfall.truck.model import Array

LEAST = 12  # samples below which nothing is fitted
ALLOWED_LAG = 0.03  # s that a truck on its dampers may be behind its table


@dataclass(frozen=True)
class Fit:
    """A fitted value with its 95 % interval (low, high).

    coefficients: of `tangent_at`. samples: used. scatter: standard deviation of
    the residuals, in the units of value.
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


def tangent_at(load: Array, c0: float, c1: float, c2: float = 0.0) -> Array:
    """tan(theta) = c0 + c1 l + c2 l^2, with l = load / cos(theta).

    For a rigid truck it is linear in l (moments about the tip line). With springs the table angle
    is still a smooth function of the load along the path of equilibria, at a corner, where the
    load runs out, and at a fold, where load against angle has a square root.
    """
    return c0 + c1 * load + c2 * load**2


def load_at(tangent: Array, critical: float, slope: float, bend: float = 0.0) -> Array:
    """The same as load from tan(theta): slope (u_c - u) + bend (u_c - u)^2, gone at u_c."""
    gap = critical - tangent
    return slope * gap + bend * gap**2


def fit_tangent(approach: Approach, curved: bool = False) -> Fit:
    """Angle (rad) at which the load is gone, straight or curved, with its statistical interval.

    Fits `load_at`, since the table's angle is known and the load is what scatters; coefficients
    are those of the straight `tangent_at`. Raises RuntimeError where it does not converge, as
    scipy.optimize.curve_fit does.
    """
    from scipy.optimize import curve_fit
    from scipy.stats import t as student

    load, tangent = approach.load / np.cos(approach.theta), np.tan(approach.theta)
    slope, start = np.polyfit(tangent, load, 1)
    if slope == 0.0:
        slope = -1e-9
    guess = (-start / slope, -slope, 0.0)[: 3 if curved else 2]
    best, covariance = curve_fit(load_at, tangent, load, p0=guess)
    residual = load - load_at(tangent, *best)
    freedom = len(load) - len(guess)
    per_tangent = 1.0 / (1.0 + best[0] ** 2)
    half = float(student.ppf(0.975, freedom) * np.sqrt(covariance[0, 0]) * per_tangent)
    scatter = float(np.sqrt(np.sum(residual**2) / freedom) / abs(best[1]) * per_tangent)
    angle = math.atan(best[0])
    straight = (float(best[0]), float(-1.0 / best[1]))
    return Fit(angle, angle - half, angle + half, straight, len(load), scatter)


def fit_critical_angle(slow: Approach, brisk: Approach | None = None) -> Fit | None:
    """Critical angle (rad) at zero rate, from approaches at two rates, or one.

    The straight fit of the slow approach, less its lag: a moving table is ahead of its truck in
    proportion to its rate, so two rates give the lag; with one it is only allowed for. The 95 %
    interval joins the statistical ones with what straight and curved models, and all samples and
    the half with the least load, disagree by: what a model lacks is more than scatter. It supposes
    that the truck stands until the load is gone; one that loses its balance with load left tips
    a little earlier. None where there is too little to fit or the load does not fall.
    """
    own = _straight(slow)
    if own is None:
        return None
    fit, doubt = own
    rate = float(np.median(slow.rate))
    lag = correction = 0.0
    other = _straight(brisk) if brisk is not None else None
    apart = 0.0 if brisk is None or other is None else float(np.median(brisk.rate)) - rate
    if other is not None and apart > rate / 2 and other[1] < 4 * ALLOWED_LAG * rate:
        gain = rate / apart
        correction = gain * (other[0].value - fit.value)
        lag = gain * math.hypot(other[1], doubt)
    else:
        lag = ALLOWED_LAG * rate
    value = fit.value - correction
    half = math.hypot(doubt, lag)
    return Fit(value, value - half, value + half, fit.coefficients, fit.samples, fit.scatter)


def _straight(approach: Approach) -> tuple[Fit, float] | None:
    """Straight fit of an approach and the half-width that its interval deserves."""
    if len(approach.theta) < LEAST:
        return None
    half = approach.load <= np.median(approach.load)
    nearest = Approach(approach.theta[half], approach.load[half], approach.rate[half])
    fit = fit_tangent(approach)
    if fit.coefficients[1] >= 0.0:
        return None
    others = fit_tangent(nearest), fit_tangent(approach, curved=True)
    spread = max(abs(fit.value - other.value) for other in others)
    return fit, math.hypot(fit.high - fit.value, spread)
