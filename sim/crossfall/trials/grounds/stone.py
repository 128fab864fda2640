"""A rounded stone in the path of the wheels of one side.

Source: derived here from the geometry of a circle sunk to where its flank stands at FLANK.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Literal, Self

import numpy as np

from crossfall.trials.grounds.base import (
    STRAY,
    Ground,
    GroundKey,
    front_of_tyres,
    metres,
    passed,
)
from crossfall.truck.model import Truck

if TYPE_CHECKING:
    from crossfall.engines.rig import Rig

FLANK = math.radians(60.0)  # of a stone where it leaves the ground
Side = Literal["left", "right", "uphill"]


@dataclass(frozen=True)
class Stone(Ground):
    """A stone as wide as the tyres of the side it lies on.

    height: m above the ground. stray: m from the foremost point of the front tyres to its near
    foot. side: left, right, or uphill, the higher side of a side slope. It is a rod lying across,
    sunk so that its flanks leave the ground at 60 deg.
    """

    kind = "stone"
    keys = (GroundKey("height", "stone_mm", 1.0, 100.0, "height of a stone, uphill wheels"),)

    height: float = metres()
    stray: float = metres(0.0)
    side: Side = "uphill"

    def __post_init__(self) -> None:
        if not (self.height > 0 and self.stray >= 0):
            raise ValueError(f"no stone is {self.height} m high and {self.stray} m ahead")

    def lay(self, rig: Rig, truck: Truck, heading: float, reach: float) -> None:
        rig.world.plane(1.0)
        x = front_of_tyres(truck) + self.stray + stone_foot(self.height)
        y = stone_side(self.side, heading) * sum(a.track for a in truck.axles) / 4
        width = max(a.tyre.width + 2 * a.tyre.contact_half_width for a in truck.axles)
        lay_stone(rig, (x, y), self.height, width)

    def passage(self, truck: Truck) -> float:
        """m: as far as brings the rear wheels over it."""
        return passed(truck, front_of_tyres(truck) + self.stray + 2 * stone_foot(self.height))

    def drawn(self, rng: np.random.Generator) -> Self:
        return replace(self, stray=self.stray + rng.uniform(0.0, STRAY))


def lay_stone(rig: Rig, at: tuple[float, float], height: float, width: float) -> None:
    """A stone on the plane, its middle at `at` (m ahead and to the left), width m across."""
    s, radius = rig.scale.length, stone_radius(height)
    across = (math.sin(math.pi / 4), 0.0, 0.0, math.cos(math.pi / 4))
    centre = (at[0] * s, at[1] * s, (height - radius) * s)
    rig.world.capsule(radius * s, width * s, centre, across)


def stone_side(side: Side, heading: float) -> int:
    """+1 for the left wheels, -1 for the right. heading: rad; uphill is right where sin(heading) >
    0."""
    if side != "uphill":
        return 1 if side == "left" else -1
    return -1 if math.sin(heading) > 0 else 1  # downhill is (-cos, sin): heading 90 has left down


def stone_radius(height: float) -> float:
    """m, of the rod: height (m) = radius (1 - cos FLANK)."""
    return height / (1 - math.cos(FLANK))


def stone_foot(height: float) -> float:
    """m, from a stone's middle to where it leaves the ground: radius sin FLANK. height: m."""
    return stone_radius(height) * math.sin(FLANK)
