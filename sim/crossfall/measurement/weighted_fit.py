"""Least squares with priors: readings and rulers together, and what each contributes.

Every reading, and everything known beforehand within a tolerance, is an observation with its own
standard uncertainty; the best estimate minimises the sum of squared normalised residuals
(JCGM 102, and generalised least squares as in any adjustment text, e.g. Mikhail and Ackermann,
Observations and Least Squares).
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from crossfall.measurement.scatter import Scatter, interval, welch_satterthwaite
from crossfall.truck.errors import InputError, Problem
from crossfall.truck.model import Array

TOLERANCE = 1.0 / np.sqrt(3.0)  # sd of a value that may lie anywhere within +-1: JCGM 100 4.3.7
_STEP = 1e-3  # of a parameter's size, for central differences: the model is nearly linear over it
ROUNDS = 30
_SETTLED = 1e-6  # of a parameter's size: the next step would be far smaller still
CRITICAL = 0.01  # chance of calling any good reading bad


@dataclass(frozen=True)
class Prior:
    """Something known beforehand: value and sd (SI); rectangular if sd comes from limits.

    sd may be infinite: an unknown, for which `scale` says what size it is. least, most: beyond
    which it cannot be, whatever the sd.
    """

    name: str
    value: float
    sd: float
    scale: float = 0.0
    rectangular: bool = True
    label: str = ""
    least: float = -np.inf
    most: float = np.inf

    @property
    def size(self) -> float:
        """What counts as a big change of it."""
        return self.scale or self.sd

    @property
    def uncertain(self) -> bool:
        return self.sd > 0

    @property
    def limits(self) -> tuple[float, float]:
        """Between which it must lie: those its sd comes from, if any, and what is possible."""
        reach = self.sd / TOLERANCE if self.rectangular else np.inf
        return max(self.value - reach, self.least), min(self.value + reach, self.most)


@dataclass(frozen=True)
class Datum:
    """The mean of so many repeats of one reading; `kind` indexes the scatter it has."""

    label: str
    value: float
    repeats: int
    kind: int = 0


@dataclass(frozen=True)
class _Source:
    """One independent cause of error: how much of it goes into each parameter."""

    label: str
    effect: Array  # (P,) sd of each parameter due to it
    dof: float  # of a small sample; infinite otherwise
    rectangular: bool


@dataclass(frozen=True)
class WeightedFit:
    """Best values, covariance, causes, and residuals.

    values: (P,). covariance: (P, P). residuals: (D,) reading less model. normalised: (D,) the
    same over their own sd, nan where nothing else checks the reading. slips: (D,) how wrong a
    reading would have to be to leave that residual (it pulls the fit its own way). chi_square and
    redundancy: sum of squared normalised residuals of everything, and how many of them are free.

    normalised: r / sqrt(1 - leverage); slips: residual / (1 - leverage). values in the units of the
    priors.
    Source: E. M. Mikhail and F. Ackermann, Observations and Least Squares (1976) (from memory).
    """

    values: Array
    covariance: Array
    sources: tuple[_Source, ...]
    residuals: Array
    normalised: Array
    slips: Array
    chi_square: float
    redundancy: int

    def combine(self, gradient: Array) -> tuple[float, float, float]:
        """(u, half-width of the 95 % interval, effective dof) of a linear function (P,)."""
        effects = [(float(gradient @ s.effect), s) for s in self.sources]
        small: dict[tuple[str, float], float] = {}  # readings of a kind share one sample variance
        for effect, s in effects:
            if np.isfinite(s.dof):
                small[s.label, s.dof] = small.get((s.label, s.dof), 0.0) + effect**2
        sampled = [(float(np.sqrt(v)), dof) for (_, dof), v in small.items()]
        boxes = [e for e, s in effects if s.rectangular]
        bell = sum(e**2 for e, s in effects if not s.rectangular and not np.isfinite(s.dof))
        u = float(np.sqrt(sum(e**2 for e, _ in effects)))
        dof = welch_satterthwaite([*sampled, (np.sqrt(max(u**2 - sum(small.values()), 0)), np.inf)])
        return u, interval(float(np.sqrt(bell)), sampled, boxes), dof


ReadingModel = Callable[[Array], Array]  # (K, P) parameter sets -> (K, D) readings


@contextmanager
def solvable() -> Iterator[None]:
    """In a sentence: readings no truck could give, whose equations overflow or are singular."""
    try:
        with np.errstate(over="ignore", invalid="ignore", divide="ignore"):
            yield
    except (np.linalg.LinAlgError, FloatingPointError, ZeroDivisionError):
        raise no_truck() from None


def no_truck() -> InputError:
    """What to say of readings that fit no truck at all."""
    what = "no truck gives these readings, not even nearly"
    return InputError(Problem("readings", what, "look for a slip in a length, a load or an angle"))


def jacobian(model: ReadingModel, at: Array, sizes: Array) -> Array:
    """(D, P), by central differences, all columns in one call of the model. at, sizes: (P,).

    (f(p + h) - f(p - h)) / 2 h, h a thousandth of each parameter's size.
    Source: central differences, any numerical text, e.g. W. H. Press et al., Numerical Recipes
    (Cambridge 2007), chapter 5 (from memory).
    """
    steps = np.diag(_STEP * sizes)
    both = model(np.concatenate([at + steps, at - steps]))
    change: Array = ((both[: len(at)] - both[len(at) :]) / (2 * _STEP * sizes[:, None])).T
    return change


@solvable()
def fit(
    model: ReadingModel, data: Sequence[Datum], kinds: Sequence[Scatter], known: Sequence[Prior]
) -> WeightedFit:
    """Fit the parameters `known` (fixed order) to the data by Gauss-Newton.

    model: (K, P) -> (K, D). p += pinv(J) r with J and r over their sd; covariance pinv(J)
    pinv(J)^T. Parameters with zero sd stay where they are. InputError where the readings fit no
    truck.
    Source: E. M. Mikhail and F. Ackermann, Observations and Least Squares (1976); J. Nocedal and S.
    J. Wright, Numerical Optimization (Springer 2006), chapter 10 (from memory).
    """
    values = np.array([k.value for k in known])
    start = values.copy()
    moving, sizes, weights, prior_weights = weights_of(data, kinds, known)
    readings = np.array([d.value for d in data])
    inverse = rows = np.empty((0, 0))
    for _ in range(ROUNDS):
        rows = design(model, values, sizes, weights, prior_weights)[:, moving]
        residual = np.concatenate(
            [(readings - model(values[None])[0]) * weights, (start - values) * prior_weights]
        )
        inverse = np.linalg.pinv(rows * sizes[moving], rcond=1e-13) * sizes[moving, None]
        step = inverse @ residual
        values[moving] += step
        if np.all(np.abs(step) <= _SETTLED * sizes[moving]):
            break
    residual = np.concatenate(
        [(readings - model(values[None])[0]) * weights, (start - values) * prior_weights]
    )
    if not (np.isfinite(residual).all() and np.isfinite(inverse).all()):
        raise no_truck()
    effects = np.zeros((len(known), len(rows)))
    effects[moving] = inverse
    leverage = np.einsum("ij,ji->i", rows, inverse)[: len(data)]
    free = 1.0 - leverage
    checked = free > 1e-6
    normalised = np.full(len(data), np.nan)
    normalised[checked] = residual[: len(data)][checked] / np.sqrt(free[checked])
    slips = np.full(len(data), np.nan)
    slips[checked] = (residual[: len(data)] / weights)[checked] / free[checked]
    redundancy = len(data) + int(np.sum(prior_weights > 0)) - int(np.sum(moving))
    return WeightedFit(
        values,
        effects @ effects.T,
        _sources(effects, data, kinds, known),
        residual[: len(data)] / weights,
        normalised,
        slips,
        float(residual @ residual),
        redundancy,
    )


@solvable()
def foreseen(
    model: ReadingModel,
    at: Array,
    data: Sequence[Datum],
    kinds: Sequence[Scatter],
    known: Sequence[Prior],
) -> Array:
    """(P, P) covariance a fit would have if it came out at `at` (P,), whatever the readings show:
    pinv(J) pinv(J)^T. InputError as of `fit`.

    Source: linear theory of least squares, as `fit`.
    """
    moving, sizes, weights, prior_weights = weights_of(data, kinds, known)
    rows = design(model, at, sizes, weights, prior_weights)[:, moving]
    inverse = np.linalg.pinv(rows * sizes[moving], rcond=1e-13) * sizes[moving, None]
    effects = np.zeros((len(known), len(rows)))
    effects[moving] = inverse
    return effects @ effects.T


def weights_of(
    data: Sequence[Datum], kinds: Sequence[Scatter], known: Sequence[Prior]
) -> tuple[NDArray[np.bool_], Array, Array, Array]:
    """Which parameters move (P,), their sizes (P,), and 1/sd of the readings (D,) and of what was
    known (P,): the weights of weighted least squares.

    Source: as `fit`.
    """
    moving = np.array([k.uncertain for k in known])
    sizes = np.array([k.size if k.uncertain else 1.0 for k in known])
    weights = 1.0 / np.sqrt([max(kinds[d.kind].variance(d.repeats), 1e-24) for d in data])
    prior_weights = np.array([1.0 / k.sd if k.uncertain else 0.0 for k in known])
    return moving, sizes, weights, prior_weights


def design(
    model: ReadingModel, at: Array, sizes: Array, weights: Array, prior_weights: Array
) -> Array:
    """(D + P, P) derivatives of the normalised readings and of what was known beforehand: the rows
    of W^(1/2) J over those of the prior, so that least squares on them weigh both.

    Source: as `fit`.
    """
    return np.vstack([jacobian(model, at, sizes) * weights[:, None], np.diag(prior_weights)])


def _sources(
    effects: Array, data: Sequence[Datum], kinds: Sequence[Scatter], known: Sequence[Prior]
) -> tuple[_Source, ...]:
    """Split each observation's effect into its independent causes."""
    found = []
    for column, d in zip(effects.T, data, strict=False):
        kind = kinds[d.kind]
        whole = max(kind.variance(d.repeats), 1e-24)
        changing, shared = kind.changing / d.repeats / whole, kind.shared / whole
        found.append(_Source(kind.label, column * np.sqrt(changing), kind.dof, False))
        found.append(_Source("scale steps", column * np.sqrt(shared), np.inf, True))
    for column, k in zip(effects.T[len(data) :], known, strict=True):
        if k.uncertain and np.isfinite(k.sd):
            found.append(_Source(k.label or k.name, column, np.inf, k.rectangular))
    return tuple(s for s in found if np.any(s.effect))


def unbelievable(normalised: Array, dofs: Sequence[float]) -> list[int]:
    """Which readings are further out than chance allows, worst first.

    normalised: (D,), nan: unchecked; dofs: (D,). Baarda's test of each normalised residual, the
    chance shared over all of them, 1 - CRITICAL / (2 n) (Bonferroni's); Student's t where the
    scatter itself is known from few repeats.
    Source: W. Baarda, A Testing Procedure for Use in Geodetic Networks (1968) (from memory).
    """
    from scipy.special import ndtri, stdtrit

    checked = np.isfinite(normalised)
    tail = 1 - CRITICAL / max(int(checked.sum()), 1) / 2
    limits = [stdtrit(d, tail) if np.isfinite(d) else ndtri(tail) for d in dofs]
    size = np.where(checked, np.abs(normalised), 0.0)
    return [int(i) for i in np.argsort(-size) if size[i] > limits[i]]
