"""How hard a corner's springs push: one law for statics, trials in any engine and drawings.

One spring, or a soft one stacked on it: until the soft one is bound (its coils touch, or its
adapter meets the other's) both give and the rate is k1 k2 / (k1 + k2); from there the stiff one
gives alone. Springs push only. With squeeze s, how far the stack is pressed from free,

    F = rate max(0, s) + more max(0, s - bound)

Nothing here raises but for a spring without a rate: ZeroDivisionError.

Source: springs in series, Off-Road, Spring Rates Explained (off-roadweb.com, 0909or, read 2026);
that springs only push, and the squeeze for a force, are derived here from the law above.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike

from crossfall.truck.model import Array, Suspension


@dataclass(frozen=True)
class SpringLaw:
    """rate: N/m while all of it gives. more: N/m it gains once the soft spring is bound, at
    `bound` (m of squeeze); 0 and infinite for one spring alone."""

    rate: float
    more: float = 0.0
    bound: float = math.inf

    def force(self, squeeze: ArrayLike) -> Array:
        """N at squeezes (m, any shape)."""
        s = np.asarray(squeeze, dtype=np.float64)
        return np.asarray(
            self.rate * np.maximum(s, 0.0) + self.more * np.maximum(s - self.bound, 0.0)
        )

    def rate_at(self, squeeze: ArrayLike) -> Array:
        """N/m at squeezes (m, any shape); where it changes, the one beyond."""
        s = np.asarray(squeeze, dtype=np.float64)
        return np.asarray(self.rate * (s >= 0.0) + self.more * (s >= self.bound))

    def squeeze(self, force: float) -> float:
        """m at which it pushes with a force (N); a force it would have to pull with goes on at the
        first rate."""
        first = force / self.rate
        if first <= self.bound:
            return first
        return self.bound + (force - self.rate * self.bound) / (self.rate + self.more)


def spring_law(suspension: Suspension) -> SpringLaw:
    """The law of one corner, along the shock where there is one.

    rate = k1 k2 / (k1 + k2), more = k1 - rate, bound = k2 travel / rate, k2 and travel of the soft
    one.
    """
    stiff, soft = suspension.spring_rate, suspension.soft_rate
    if soft == 0.0:
        return SpringLaw(stiff)
    both = stiff * soft / (stiff + soft)
    return SpringLaw(both, stiff - both, soft * suspension.soft_travel / both)
