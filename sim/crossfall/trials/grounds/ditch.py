"""A ditch across the way of the lower wheels, which drop into it.

Source: derived here from a ditch asked to have no edge: a cosine along, a cubic across.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Self

import numpy as np

from crossfall.trials.grounds.base import (
    FINEST,
    STEEPEST_FIELD,
    STRAY,
    Ground,
    GroundKey,
    front_of_tyres,
    lay_heights,
    metres,
    passed,
)
from crossfall.truck.model import Array, Truck, frozen

if TYPE_CHECKING:
    from crossfall.engines.rig import Rig


@dataclass(frozen=True)
class Ditch(Ground):
    """depth: m. width: m from edge to edge, along the way. stray: m from the foremost point of the
    front tyres to its near edge.

    Along the way its bottom is one wave of a cosine, depth / 2 (1 - cos); it ends below the middle
    of the truck, by a bank half as wide as it is itself, so that the upper wheels stay level. As
    steep as 45 deg at most.
    """

    kind = "ditch"
    keys = (
        GroundKey("depth", "ditch_mm", 1.0, 150.0, "depth of a ditch, lower wheels"),
        GroundKey("width", "ditch_width_mm", 80.0, 1000.0, "width of the ditch"),
    )

    depth: float = metres()
    width: float = metres(0.15)
    stray: float = metres(0.0)

    def __post_init__(self) -> None:
        steepest = math.pi * self.depth / self.width if self.width > 0 else math.inf
        if not (self.depth > 0 and self.stray >= 0 and steepest <= math.tan(STEEPEST_FIELD)):
            raise ValueError(
                f"no ditch is {self.depth} m deep, {self.width} m wide and {self.stray} m ahead"
            )

    def lay(self, rig: Rig, truck: Truck, heading: float, reach: float) -> None:
        start = front_of_tyres(truck) + self.stray
        lower = -1 if math.sin(heading) < 0 else 1  # heading 90 has its left side down

        def heights(x: Array, y: Array) -> Array:
            return ditch_heights(self, frozen(x - start), frozen(lower * y))

        lay_heights(rig, truck, reach, max(FINEST, self.width / 16), heights)

    def passage(self, truck: Truck) -> float:
        """m: as far as brings the rear wheels through it."""
        return passed(truck, front_of_tyres(truck) + self.stray + self.width)

    def drawn(self, rng: np.random.Generator) -> Self:
        return replace(self, stray=self.stray + rng.uniform(0.0, STRAY))


def ditch_heights(ditch: Ditch, ahead: Array, down: Array) -> Array:
    """Heights (nx, ny) m, at most 0, at all `ahead` (nx,) m of its near edge and `down` (ny,) m
    from the middle of the truck to its lower side.

    -depth / 2 (1 - cos(2 pi a)) b^2 (3 - 2 b), with a = ahead / width and b = 2 down / width, each
    held to 0 to 1.
    """
    along = np.clip(ahead / ditch.width, 0.0, 1.0)
    bank = np.clip(2 * down / ditch.width, 0.0, 1.0)
    share = bank**2 * (3 - 2 * bank)
    return frozen(-ditch.depth / 2 * (1 - np.cos(math.tau * along))[:, None] * share)
