"""Fits to what trials recorded, each with a confidence interval."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

import numpy as np

from crossfall.truck.model import Array

_LEAST = 5  # angles below which nothing is fitted


@dataclass(frozen=True)
class FittedValue:
    """A fitted value with its 95 % interval (low, high).

    coefficients: of `tangent_at`. samples: used. scatter: standard deviation of
    the residuals, in the units of value.

    value, low, high: rad.
    """

    value: float
    low: float
    high: float
    coefficients: tuple[float, ...]
    samples: int
    scatter: float


@dataclass(frozen=True)
class Approach:
    """A pair of wheels losing its load on a table held at n angles.

    theta: (n,) rad. load: (n,) of the pair, as a fraction of the truck's weight.
    """

    theta: Array
    load: Array


def tangent_at(load: Array, c0: float, c1: float, c2: float = 0.0) -> Array:
    """tan(theta) = c0 + c1 l + c2 l^2, with l = load / cos(theta), (n,) of the weight.

    For a rigid truck it is linear in l (moments about the tip line). With springs the table angle
    is still a smooth function of the load along the path of equilibria, at a corner, where the load
    runs out, and at a fold, where load against angle has a square root.
    Source: derived here from moments about the tip line; the square its Taylor series.
    """
    return c0 + c1 * load + c2 * load**2


def load_at(tangent: Array, critical: float, slope: float, bend: float = 0.0) -> Array:
    """The same as load from tan(theta) (n,): slope (u_c - u) + bend (u_c - u)^2, gone at u_c.

    l = load / cos(theta), a fraction of the weight; u = tan(theta), u_c = `critical`.
    Source: derived here from `tangent_at`, solved for the load.
    """
    gap = critical - tangent
    return slope * gap + bend * gap**2


def fit_tangent(approach: Approach, curved: bool = False) -> FittedValue:
    """Angle (rad) at which the load is gone, straight or curved, with its statistical interval.

    Fits `load_at`, since the table's angle is known and the load is what scatters; coefficients are
    those of the straight `tangent_at`. theta = atan(u_c) +- t(0.975, n - p) sd(u_c) / (1 + u_c^2),
    p parameters. Raises RuntimeError where it does not converge, as scipy.optimize.curve_fit does.
    Source: N. R. Draper and H. Smith, Applied Regression Analysis (Wiley 1998), for least squares
    and Student's interval; the fit itself by J. J. More, The Levenberg-Marquardt Algorithm (1978),
    as scipy has it (both from memory).
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
    return FittedValue(angle, angle - half, angle + half, straight, len(load), scatter)


def fit_critical_angle(approach: Approach) -> FittedValue | None:
    """Critical angle (rad) at which the load is gone, from a truck at rest at several angles.

    The straight fit. The 95 % interval joins the statistical one with what straight and curved
    models, and all angles and the half with the least load, disagree by: what a model lacks is more
    than scatter; both as squares, sqrt(half^2 + spread^2). It supposes that the truck stands until
    the load is gone; one that loses its balance with load left tips earlier. None where there is
    too little to fit, or no load that runs out.
    Source: derived here from `fit_tangent`; independent parts add as squares by JCGM 100 (GUM),
    5.1.2 (from memory).
    """
    if len(approach.theta) < _LEAST:
        return None
    half = approach.load <= np.median(approach.load)
    fit = fit_tangent(approach)
    if fit.coefficients[1] >= 0.0:
        return None
    nearest = Approach(approach.theta[half], approach.load[half])
    try:
        others = fit_tangent(nearest), fit_tangent(approach, curved=True)
    except RuntimeError:
        return None
    spread = max(abs(fit.value - other.value) for other in others)
    width = math.hypot(fit.high - fit.value, spread)
    return replace(fit, low=fit.value - width, high=fit.value + width)
