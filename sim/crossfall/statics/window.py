"""What friction leaves open: the tip angle between two ways of sharing grip among the tyres.

How the tyres share the slope force is statically indeterminate. Two closures bracket it: every
contact force anti-parallel to gravity (`uniform`, least friction), and sticking with history
(`sticking`). Where they agree there is one number; elsewhere the answer is a window.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import radians

import numpy as np
from numpy.typing import NDArray

from crossfall.statics import compliant
from crossfall.truck.model import Array, Truck

ONE_NUMBER = radians(0.05)  # closures closer than this are one answer


@dataclass(frozen=True)
class Window:
    """(H,) each, rad: tips by both closures, and the window low to high between them.

    decides: where friction makes more than `ONE_NUMBER` of difference. nan where a closure found
    no tip.
    """

    uniform: compliant.CompliantTips
    sticking: compliant.CompliantTips
    low: Array
    high: Array
    decides: NDArray[np.bool_]


def window(truck: Truck, headings: Array) -> Window:
    """Both closures on every heading (H,) rad."""
    uniform = compliant.tips(truck, headings, "uniform")
    sticking = compliant.tips(truck, headings, "sticking")
    low = np.fmin(uniform.tip, sticking.tip)
    high = np.fmax(uniform.tip, sticking.tip)
    return Window(uniform, sticking, low, high, ~(high - low <= ONE_NUMBER))
