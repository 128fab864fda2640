"""Laws of where a drive begins to fail, none of them logistic, each with its median at 0.

A drive fails where the slope is steeper than a threshold of its own; half of them do at the
median. The unit is the half width of the middle half of the law.
"""

from __future__ import annotations

from collections.abc import Callable

import numpy as np
from scipy import stats

Law = Callable[[np.random.Generator], float]


def _of(law: object) -> Law:
    """Shifted and scaled to median 0 and quartiles 2 apart."""
    low, middle, high = law.ppf([0.25, 0.5, 0.75])  # type: ignore[attr-defined]

    def draw(rng: np.random.Generator) -> float:
        return 2 * (float(law.ppf(rng.random())) - middle) / (high - low)  # type: ignore[attr-defined]

    return draw


_STEEP = _of(stats.expon())
LAWS: dict[str, Law] = {
    "logistic": _of(stats.logistic()),
    "normal": _of(stats.norm()),
    "uniform": _of(stats.uniform()),
    "skewed to the steep": _STEEP,
    "skewed to the gentle": lambda rng: -_STEEP(rng),
    "very skewed": _of(stats.lognorm(1.0)),
    "heavy tails": _of(stats.t(2)),
    "very heavy tails": _of(stats.cauchy()),
    "two kinds of ground": lambda rng: rng.choice([-1, 1]) + 0.2 * rng.standard_normal(),
}
