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
    """tan(theta) = c0 + c1 l + c2 l^2, with l = load / cos(theta).

    For a rigid truck it is linear in l (moments about the tip line). With springs the table angle
    is still a smooth function of the load along the path of equilibria, at a corner, where the
    load runs out, and at a fold, where load against angle has a square root.
    """
    return c0 + c1 * load + c2 * load**2


def fit_tangent(approach: Approach, curved: bool = False) -> FittedValue:
    """Angle (rad) at which the load is gone, straight or curved, with its statistical interval.

    Fits load as a polynomial of tan(theta), since the table's angle is known and the load is what
    scatters, and takes its root next to that of the straight line; coefficients are those of the
    straight `tangent_at`. What the root's scatter is follows from that of the polynomial's
    coefficients, to the first order. Raises RuntimeError where a curved load never runs out.
    """
    load, tangent = approach.load / np.cos(approach.theta), np.tan(approach.theta)
    middle = tangent.mean()
    slope, start = np.polyfit(tangent - middle, load, 1)
    at = -start / (slope or 1e-9)
    powers = np.vander(tangent - middle, 3 if curved else 2)
    fitted = np.linalg.lstsq(powers, load)[0]
    if curved:
        roots = np.roots(fitted)
        if not len(roots) or np.iscomplexobj(roots):
            raise RuntimeError("a load that never runs out")
        at = roots[np.abs(roots - at).argmin()]
    falls = -float(np.polyval(np.polyder(fitted), at)) or 1e-9
    residual = load - powers @ fitted
    freedom = len(load) - powers.shape[1]
    by = np.linalg.lstsq(powers.T, np.vander([at], powers.shape[1])[0])[0]
    scatter = math.sqrt(float(residual @ residual) / freedom) / abs(falls)
    critical = float(middle + at)
    per_tangent = 1.0 / (1.0 + critical**2)
    half = student(freedom) * scatter * math.sqrt(by @ by) * per_tangent
    angle, straight = math.atan(critical), (critical, -1.0 / falls)
    scatter *= per_tangent
    return FittedValue(angle, angle - half, angle + half, straight, len(load), scatter)


def student(freedom: int) -> float:
    """What Student's t of so many degrees of freedom is within, either way, in 95 % of cases.

    By halving the angle atan(t / sqrt(freedom)) in the sums of Abramowitz and Stegun, Handbook of
    Mathematical Functions (1964), 26.7.3 and 26.7.4; scipy takes longer to load than a fit.
    """
    low, high, odd = 0.0, math.pi / 2, freedom % 2
    for _ in range(60):
        angle = (low + high) / 2
        cos = math.cos(angle)
        term, total = cos if odd else 1.0, 0.0
        for j in range(odd, freedom - 1, 2):
            total += term
            term *= (j + 1) / (j + 2) * cos * cos
        inside = math.sin(angle) * total
        inside = 2 / math.pi * (angle + inside) if odd else inside
        low, high = (angle, high) if inside < 0.95 else (low, angle)
    return math.sqrt(freedom) * math.tan(low)


def fit_critical_angle(approach: Approach) -> FittedValue | None:
    """Critical angle (rad) at which the load is gone, from a truck at rest at several angles.

    The straight fit. The 95 % interval joins the statistical one with what straight and curved
    models, and all angles and the half with the least load, disagree by: what a model lacks is more
    than scatter. It supposes that the truck stands until the load is gone; one that loses its
    balance with load left tips earlier. None where there is too little to fit, or no load that runs
    out.
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
