"""Seeded rough ground."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Self

import numpy as np

from crossfall.trials.grounds.base import FINEST, Ground, GroundKey, lay_heights, metres
from crossfall.truck.model import Array, Truck, frozen

if TYPE_CHECKING:
    from crossfall.engines.rig import Rig


@dataclass(frozen=True)
class Rough(Ground):
    """rms: m, of its heights. length: m, over which they are alike.

    Gaussian heights with the correlation exp(-(d / length)^2), by random waves; level where the
    truck starts. The same seed gives the same ground for every truck.
    """

    kind = "rough"
    keys = (GroundKey("rms", "rough_mm", 0.1, 30.0, "rms height of rough ground"),)
    below = math.radians(20.0)

    rms: float = metres()
    length: float = metres(0.08)
    seed: int = 0

    def __post_init__(self) -> None:
        if not (self.rms >= 0 and self.length > 0):
            raise ValueError(f"no rough ground has an rms of {self.rms} m over {self.length} m")

    def lay(self, rig: Rig, truck: Truck, heading: float, reach: float) -> None:
        cell = max(FINEST, self.length / 4)
        lay_heights(rig, truck, reach, cell, lambda x, y: rough_heights(self, x, y))

    def drawn(self, rng: np.random.Generator) -> Self:
        return replace(self, seed=int(rng.integers(2**31)))


def rough_heights(rough: Rough, x: Array, y: Array) -> Array:
    """Heights (nx, ny) m at all x (nx,) and y (ny,) m, without the level start.

    A sum of N random waves sqrt(2 / N) rms cos(k.r + phase) with normal k of standard deviation
    sqrt(2) / length has the stated correlation.
    Source: Bochner's theorem, as in A. Rahimi and B. Recht, Random Features for Large-Scale Kernel
    Machines (2007) (from memory).
    """
    waves = 64
    rng = np.random.default_rng(rough.seed)
    k = rng.standard_normal((waves, 2)) * math.sqrt(2) / rough.length
    phase = rng.uniform(0.0, math.tau, waves)
    across = x[:, None, None] * k[:, 0] + y[None, :, None] * k[:, 1] + phase
    return frozen(rough.rms * math.sqrt(2 / waves) * np.cos(across).sum(axis=-1))
