"""The critical slope from trials that either hold or fail.

Outcome against angle is taken as logistic: P(fails at theta) = 1 / (1 + exp(-(theta - c) / s)),
with c the critical slope, where half of the trials fail, and s >= 0 how gradual the change is;
s = 0 is a sharp edge. c and s are found by maximum likelihood and the interval of c from the
profile likelihood: all c whose best log-likelihood is within half a quantile of the maximum. That
holds also where holds and failures do not overlap and no finite s is best, when the maximum is
any c in the gap. With few trials near c the likelihood ratio runs larger than its chi-squared
limit, the more so where a search chose the angles; the quantile is raised to match (`widening`).

Thresholds need not be logistic: on skewed ones that interval came to hold the median 77 to 85 % of
the time. So a search states the wider of it and one that takes the outcome to be likelier the
steeper it is, and nothing else (`median_interval`).

The next angle is the one whose outcome is expected to tell most about c and s, by the entropy of
a posterior on a grid (Kontsevich and Tyler, Vision Research 39 (1999) 2729-2737). On a sharp
edge this is bisection. The grid's prior only chooses angles; it does not enter the fit.

Angles are rad in and out, but any unit does.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import ArrayLike, NDArray

from crossfall.truck.model import Array

_LEVEL = 0.95
SCARCE = 5.0  # see `widening`
GRID_C, GRID_S = 31, 9  # of the posterior that chooses angles; finer grids choose no better
KEEP = 1e-4  # posterior mass outside which the grid is drawn in

Outcomes = NDArray[np.bool_]


@dataclass(frozen=True)
class LogisticFit:
    """Critical slope and its interval.

    angle: c. low, high: interval of c; -inf or inf where the outcomes do not bound it.
    spread: s, 0 where holds and failures do not overlap. log_likelihood: at the maximum.
    gap: (2,) the range of c that is equally best: from the highest hold to the lowest failure
    where they do not overlap, else c twice.
    """

    angle: float
    low: float
    high: float
    spread: float
    log_likelihood: float
    gap: tuple[float, float]


@dataclass(frozen=True)
class CriticalSlope:
    """A critical slope found by trials: the fit, and every trial in the order it was made.

    angles: (n,). failed: (n,). settled: whether the interval is as narrow as was asked.
    """

    fit: LogisticFit
    angles: Array
    failed: Outcomes
    settled: bool

    @property
    def trials(self) -> int:
        """How many it took."""
        return len(self.angles)


def find_critical(
    fails: Callable[[float, int], bool],
    low: float,
    high: float,
    *,
    half_width: float,
    most: int = 60,
    least: int = 8,
) -> CriticalSlope:
    """Search [low, high] for the critical slope by trials.

    fails: told an angle and the trial's running number (its seed), says whether it failed. Stops
    when the interval is within +-half_width of its middle, or after `most` trials. ValueError where
    low is not below high.
    Source: as `next_angle` and `stated`.
    """
    if not low < high:
        raise ValueError(f"the search needs low < high, not {low} and {high}")
    angles: list[float] = []
    failed: list[bool] = []
    fit = None
    for number in range(most):
        angle = next_angle(angles, failed, low, high)
        angles.append(angle)
        failed.append(bool(fails(angle, number)))
        if number + 1 >= least:
            fit = stated(angles, failed)
            if fit.high - fit.low <= 2 * half_width:
                break
    fit = fit or stated(angles, failed)
    settled = fit.high - fit.low <= 2 * half_width
    return CriticalSlope(fit, np.array(angles), np.array(failed), settled)


# The interval


MONOTONE = 2.27  # 95 % point of the likelihood ratio for the median of a smooth law that is only
# known to rise, whatever the law (Banerjee and Wellner, Ann. Statist. 29 (2001), from memory)


def median_interval(angles: ArrayLike, failed: ArrayLike) -> tuple[float, float]:
    """(low, high) of the angle at which half of the trials fail, if more fail the steeper it is.

    angles: (n,). failed: (n,) truth. Likelihood ratio of isotonic regression, free, and held to at
    most one half below the angle and at least one half above it: all angles whose ratio is within
    MONOTONE. It changes only at the angles tried, so each end is one of them; -inf or inf where the
    outcomes do not bound it.
    Source: M. Banerjee and J. A. Wellner, Likelihood ratio tests for monotone functions, Annals of
    Statistics 29 (2001) (from memory).
    """
    from scipy.optimize import isotonic_regression
    from scipy.special import xlog1py, xlogy

    x, at, count = np.unique(np.asarray(angles), return_inverse=True, return_counts=True)
    share = np.bincount(at, np.asarray(failed, np.float64)) / count

    def rising(some: slice) -> Array:
        if len(share[some]) == 0:
            return share[some]
        return np.asarray(isotonic_regression(share[some], weights=count[some]).x)

    def likelihood(p: Array) -> float:
        return float(np.sum(count * (xlogy(share, p) + xlog1py(1 - share, -p))))

    best = likelihood(rising(slice(None)))
    kept = []
    for k in range(len(x) + 1):
        below = np.minimum(rising(slice(None, k)), 0.5)
        above = np.maximum(rising(slice(k, None)), 0.5)
        if 2 * (best - likelihood(np.concatenate([below, above]))) <= MONOTONE:
            kept.append(k)
    ends = np.concatenate([[-np.inf], x, [np.inf]])
    return float(ends[kept[0]]), float(ends[kept[-1] + 1])


def stated(angles: ArrayLike, failed: ArrayLike) -> LogisticFit:
    """The fit with the interval a search states, which no law of thresholds has to bear out: from
    the lower of both low ends to the higher of both high ones. ValueError where n is 0.

    Source: derived here from `fit_logistic` and `median_interval`: whichever is wider.
    """
    fit, (low, high) = fit_logistic(angles, failed), median_interval(angles, failed)
    return replace(fit, low=min(fit.low, low), high=max(fit.high, high))


# The fit


def fit_logistic(angles: ArrayLike, failed: ArrayLike, level: float = _LEVEL) -> LogisticFit:
    """Maximum-likelihood c and s, and the profile-likelihood interval of c.

    angles: (n,). failed: (n,) truth. Where all outcomes are alike c lies beyond them: angle is then
    the last angle on that side, and the interval is open. ValueError where n is 0. P = 1 / (1 +
    exp(-(x - c) / s)); all c with 2 (l_max - l(c)) <= widening chi2(level, 1).
    Source: A. Agresti, Categorical Data Analysis (Wiley 2002), for logistic models and profile
    likelihood (from memory).
    """
    from scipy.stats import chi2

    x, y = np.asarray(angles, np.float64).ravel(), np.asarray(failed, bool).ravel()
    if len(x) == 0 or len(x) != len(y):
        raise ValueError(f"{len(x)} angles and {len(y)} outcomes")
    if y.all() or not y.any():
        edge = float(x.min() if y.all() else x.max())
        gap = (-np.inf, edge) if y.all() else (edge, np.inf)
        best = 0.0
        angle, spread = edge, 0.0
    elif x[~y].max() <= x[y].min():
        gap = (float(x[~y].max()), float(x[y].min()))
        angle, spread, best = sum(gap) / 2, 0.0, _best_of_ties(y[x == gap[0]], gap)
    else:
        angle, spread, best = _maximum(x, y)
        gap = (angle, angle)
    target = best - widening(x, angle, spread) * chi2.ppf(level, 1) / 2
    low = -np.inf if np.isinf(gap[0]) else _bound(x, y, gap[0], -1.0, target, spread)
    high = np.inf if np.isinf(gap[1]) else _bound(x, y, gap[1], 1.0, target, spread)
    return LogisticFit(angle, low, high, spread, best, gap)


def widening(angles: Array, angle: float, spread: float) -> float:
    """Factor on the chi-squared quantile: 1 + 5 / (5 + m), m = 4 sum p (1 - p). angles: (n,).

    m counts the trials that tell something of c, each at most 1: 0 on a sharp edge. The form is of
    a Bartlett correction; the 5 was found by simulated searches (coverage 94 to 97 % from 20 trials
    on, for spreads from 1/300 to 1/15 of the range; tests/benchmarks/bench_critical.py).
    Source: derived here from simulated searches.
    """
    from scipy.special import expit

    if spread <= 0:
        return 2.0
    p = expit((angles - angle) / spread)
    return float(1 + SCARCE / (SCARCE + 4 * np.sum(p * (1 - p))))


def log_likelihood(angle: float, spread: float, angles: Array, failed: Outcomes) -> float:
    """Of the outcomes, given c = angle and s = spread > 0: sum(log expit(+-(x - c) / s)), + of
    failures.

    angles, failed: (n,).
    Source: A. Agresti, Categorical Data Analysis (Wiley 2002) (from memory).
    """
    from scipy.special import log_expit

    sign = np.where(failed, 1.0, -1.0)
    return float(np.sum(log_expit(sign * (angles - angle) / spread)))


def profile(angle: float, angles: Array, failed: Outcomes) -> float:
    """The greatest log-likelihood of the outcomes (n,) with c = angle, over all s >= 0.

    In the steepness b = 1/s it is concave, so its one maximum is where the derivative changes sign;
    at a sharp edge it has none, and the log-likelihood tends to log(1/2) per trial made at c
    itself.
    Source: derived here from the concave log-likelihood; its root by R. P. Brent, Algorithms for
    Minimization without Derivatives (1973), as scipy has it (from memory).
    """
    from scipy.optimize import brentq
    from scipy.special import expit, log_expit

    margin = np.where(failed, 1.0, -1.0) * (angles - angle)  # > 0 where the outcome agrees
    if not np.any(margin < 0):
        return float(np.sum(margin == 0) * np.log(0.5))
    if np.sum(margin) <= 0:
        return float(len(margin) * np.log(0.5))  # b = 0: c explains nothing

    def slope(b: float) -> float:
        return float(np.sum(margin * expit(-b * margin)))

    steep = 1.0 / float(np.mean(np.abs(margin)))
    while slope(steep) > 0:
        steep *= 4.0
    b = brentq(slope, 0.0, steep, xtol=1e-9 * steep)  # flat there: the value is right to 1e-16
    return float(np.sum(log_expit(b * margin)))


def _best_of_ties(tied: Outcomes, gap: tuple[float, float]) -> float:
    """The log-likelihood as s goes to 0, where holds and failures meet at one angle at most."""
    from scipy.special import entr

    if gap[0] < gap[1]:
        return 0.0
    share = float(np.mean(tied))
    return -len(tied) * float(entr(share) + entr(1 - share))


def _maximum(x: Array, y: Outcomes) -> tuple[float, float, float]:
    """(c, s, log-likelihood) where holds and failures overlap.

    Solved for intercept and steepness of standardised angles, in which the problem is concave.
    """
    from scipy.optimize import minimize
    from scipy.special import expit, log_expit

    centre, scale = float(np.mean(x)), float(np.std(x)) or 1.0
    design = np.stack([np.ones_like(x), (x - centre) / scale])
    sign = np.where(y, 1.0, -1.0)

    def value(beta: Array) -> float:
        return -float(np.sum(log_expit(sign * (beta @ design))))

    def gradient(beta: Array) -> Array:
        slope: Array = -design @ (sign * expit(-sign * (beta @ design)))
        return slope

    def curvature(beta: Array) -> Array:
        p = expit(beta @ design)
        bent: Array = (design * (p * (1 - p))) @ design.T
        return bent

    found = minimize(
        value,
        np.array([0.0, 1.0]),
        jac=gradient,
        hess=curvature,
        method="trust-exact",
        options={"gtol": 1e-10},
    )
    a, b = found.x
    if b <= 1e-9:
        # More failures low down than high up: no rising curve explains them better than chance.
        return centre, np.inf, float(len(x) * np.log(0.5))
    return centre - scale * a / b, scale / b, -float(found.fun)


def _bound(x: Array, y: Outcomes, start: float, way: float, target: float, spread: float) -> float:
    """Where the profile falls to `target`, going from `start` up (way 1) or down (-1)."""
    from scipy.optimize import brentq

    reach = float(np.ptp(x)) or 1.0
    step = min(max(spread / 2, 1e-3 * reach), reach)
    inner = start + way * 1e-9 * reach
    if profile(inner, x, y) < target:
        return start  # repeats at one angle: the profile drops at once
    while True:
        outer = start + way * step
        if profile(outer, x, y) < target:
            break
        inner, step = outer, 2 * step
        if step > 1e4 * reach:
            return way * np.inf
    return float(brentq(lambda c: profile(c, x, y) - target, inner, outer, xtol=1e-8 * reach))


# The next angle


def next_angle(angles: Sequence[float], failed: Sequence[bool], low: float, high: float) -> float:
    """The angle in [low, high] to try next, given what has been tried: the one that tells most.

    angles, failed: n of each. Entropy of the outcome less what is left of it when c and s are
    known.
    Source: L. L. Kontsevich and C. W. Tyler, Vision Research 39 (1999) 2729-2737 (from memory).
    """
    x, y = np.asarray(angles, np.float64), np.asarray(failed, bool)
    spreads = np.geomspace((high - low) / 2000, (high - low) / 4, GRID_S)
    centres = np.linspace(low, high, GRID_C)
    while True:
        weight = _posterior(x, y, centres, spreads)
        mass = np.cumsum(weight.sum(axis=1))
        first = max(int(np.searchsorted(mass, KEEP)) - 1, 0)
        last = min(int(np.searchsorted(mass, 1 - KEEP)) + 1, GRID_C - 1)
        if last - first > GRID_C // 3:
            return float(centres[np.argmax(_information(centres, spreads, weight))])
        centres = np.linspace(centres[first], centres[last], GRID_C)


def _posterior(x: Array, y: Outcomes, centres: Array, spreads: Array) -> Array:
    """(C, S) posterior mass, flat in c and log s before any trial."""
    from scipy.special import log_expit

    signed = np.where(y, 1.0, -1.0) * (x - centres[:, None])
    log_mass = np.sum(log_expit(signed[:, None, :] / spreads[:, None]), axis=-1)
    mass = np.exp(log_mass - log_mass.max())
    posterior: Array = mass / mass.sum()
    return posterior


def _information(centres: Array, spreads: Array, weight: Array) -> Array:
    """(C,) information on c and s that a trial at each of the evenly spaced centres would bring.

    The entropy of its outcome, less what is left of it when c and s are known.
    """
    from scipy.special import entr, expit

    count = len(centres)
    apart = (centres[1] - centres[0]) * np.arange(1 - count, count)
    p = expit(apart[:, None] / spreads)  # (2C - 1, S): only the distance to c matters
    at = np.arange(count)
    index = at[:, None] - at + count - 1  # (trial, c)
    known = np.einsum("tcs,cs->t", (entr(p) + entr(1 - p))[index], weight)
    fails = np.einsum("tcs,cs->t", p[index], weight)
    gained: Array = entr(fails) + entr(1 - fails) - known
    return gained
