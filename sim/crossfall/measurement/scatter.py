"""How far a mean of a few readings may be off: scatter, scale steps, small samples.

A reading is the true load plus placement scatter, rounded to the scale's step q. With scatter sd
s and the load anywhere within a step, the error of one reading splits into a part that changes
from repeat to repeat and a part that all repeats share:

    shared   B(s) = q^2 / (2 pi^2) sum_k exp(-4 pi^2 k^2 s^2 / q^2) / k^2                 (1)
    changing V(s) = s^2 + q^2 / 12 - B(s)                                                 (2)

(1) is the variance, over the position within a step, of the mean error of a dithered quantiser:
its Fourier series, e.g. Widrow and Kollar, Quantization Noise, ch. 4 (from memory). No scatter
gives B = q^2 / 12, as in JCGM 100 F.2.2.1, and repeats do not help; scatter of half a step or
more makes B vanish, and the sample variance already holds the rounding. The sample variance of
repeats estimates V, so s follows by solving (2).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from crossfall.truck.model import Array

_LEVEL = 0.95  # of every interval given
_DRAWS = 40_000  # of the interval's distribution: its half-width is then good to about 1 %


@dataclass(frozen=True)
class Scatter:
    """The error of single readings of one kind.

    changing: variance that averages out over repeats. shared: variance that does not (scale
    steps). dof: degrees of freedom behind `changing`. Variances in the square of the unit read.
    """

    changing: float
    shared: float
    dof: float
    label: str = "placement scatter"

    def variance(self, repeats: int) -> float:
        """Variance of the mean of so many repeats."""
        return self.changing / repeats + self.shared


def shared_variance(sd: float, step: float) -> float:
    """B(s), equation (1), in the square of the unit of sd and step, (sd, step) >= 0.

    Source: B. Widrow and I. Kollar, Quantization Noise (Cambridge 2008), chapter 4 (from memory).
    """
    k = np.arange(1, 60)
    if step == 0.0:
        return 0.0
    terms = np.exp(-((2 * np.pi * k * sd / step) ** 2)) / k**2
    tail = 0.0 if sd > 0 else np.pi**2 / 6 - float(np.sum(1.0 / k**2))
    return float(step**2 / (2 * np.pi**2) * (np.sum(terms) + tail))


def changing_variance(sd: float, step: float) -> float:
    """V(s), equation (2), in the square of the unit of sd and step.

    Source: derived here from (1): total variance s^2 + q^2 / 12 less what repeats share.
    """
    return max(sd**2 + step**2 / 12 - shared_variance(sd, step), 0.0)


def scatter_sd(variance: float, step: float) -> float:
    """s such that V(s) is the sample variance: equation (2) solved by bisection. In the unit of
    step.

    Source: derived here from (2).
    """
    if variance >= step**2:  # B is below 1e-16 of the step squared
        return float(np.sqrt(variance - step**2 / 12))
    low, high = 0.0, float(np.sqrt(variance))
    for _ in range(40):
        middle = (low + high) / 2
        low, high = (middle, high) if changing_variance(middle, step) < variance else (low, middle)
    return high


def pooled(groups: Sequence[Sequence[float]]) -> tuple[float, float]:
    """(variance, degrees of freedom) of repeats about their own group's mean, pooled: s^2 = sum
    over groups of sum (x - mean)^2, over nu = sum (n - 1). (0, 0) of no repeats.

    Source: JCGM 100 (GUM), 4.2.4 and H.3.6 in substance; ISO 5725-2 for repeatability (from
    memory).
    """
    squares = sum(float(np.sum((np.asarray(g) - np.mean(g)) ** 2)) for g in groups)
    dof = float(sum(len(g) - 1 for g in groups))
    return (squares / dof if dof else 0.0), dof


def scatter(
    groups: Sequence[Sequence[float]], step: float, stated: tuple[float, float] | None
) -> Scatter:
    """Scatter from repeats, together with a stated sd and the degrees of freedom it is worth.

    groups: repeats of each reading; step, of the instrument, and stated sd in the readings' unit.
    Variances are averaged by their degrees of freedom, s^2 = (nu s^2 + nu' V(s')) / (nu + nu').
    Source: derived here from `pooled`, the stated sd taken for repeats made before.
    """
    variance, dof = pooled(groups)
    if stated is not None:
        sd, worth = stated
        variance = (dof * variance + worth * changing_variance(sd, step)) / (dof + worth)
        dof += worth
    return Scatter(variance, shared_variance(scatter_sd(variance, step), step), dof)


def welch_satterthwaite(parts: Sequence[tuple[float, float]]) -> float:
    """Effective degrees of freedom u^4 / sum(u_i^4 / nu_i) of (u_i, nu_i); infinite where all nu_i
    are.

    Source: JCGM 100 (GUM), (G.2b) (from memory).
    """
    total = sum(u**2 for u, _ in parts)
    spread = sum(u**4 / nu for u, nu in parts if np.isfinite(nu))
    return float(total**2 / spread) if spread > 0 else float("inf")


def interval(
    normal: float, sampled: Sequence[tuple[float, float]], rectangular: Sequence[float]
) -> float:
    """Half-width of the 95 % interval of a sum of independent errors, in their unit.

    normal: sd of all Gaussian parts together. sampled: (sd, dof) of parts known from small samples,
    each a scaled t. rectangular: sd of each part that is equally likely anywhere within its limits.
    Propagated as distributions, by a fixed draw: no seed, same answer.
    Source: JCGM 101:2008, Monte Carlo propagation (from memory).
    """
    t, box, bell = _draws(tuple(dof for _, dof in sampled), len(rectangular))
    error = normal * bell
    error = error + t @ np.array([sd for sd, _ in sampled])
    error = error + box @ np.asarray(rectangular, dtype=np.float64)
    rank = int(_LEVEL * _DRAWS)
    return float(np.partition(np.abs(error), rank)[rank])


@lru_cache(maxsize=64)
def _draws(dofs: tuple[float, ...], boxes: int) -> tuple[Array, Array, Array]:
    """Standard draws: t per small sample, unit-variance uniform per box, one Gaussian."""
    rng = np.random.default_rng(1)
    bell = rng.standard_normal(_DRAWS)
    box = rng.uniform(-np.sqrt(3), np.sqrt(3), (_DRAWS, boxes))
    t = np.empty((_DRAWS, len(dofs)))
    for column, dof in enumerate(dofs):
        t[:, column] = rng.standard_t(dof, _DRAWS)
    return t, box, bell
