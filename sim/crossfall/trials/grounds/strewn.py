"""Stones and humps wherever they are, as a page's scene has them.

Source: derived here from plane geometry: a flank rises by its length over the ground times the
tangent of its angle, and boxes lie flush below.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from crossfall.trials.grounds.base import Ground
from crossfall.trials.grounds.ramp import yaw_pitch
from crossfall.trials.grounds.stone import lay_stone
from crossfall.truck.model import Truck

if TYPE_CHECKING:
    from crossfall.engines.rig import Rig


@dataclass(frozen=True)
class LaidStone:
    """A rounded stone anywhere, as `Stone` is. at: m ahead and to the left. width: m across."""

    at: tuple[float, float]
    height: float
    width: float

    def __post_init__(self) -> None:
        if not (0 < self.height < 1 and 0 < self.width < 1):
            raise ValueError(f"no stone: {self}")


@dataclass(frozen=True)
class Hump:
    """A ramp up, a top and a ramp down. at: m ahead and to the left, of its middle. turned: rad, of
    its way up, to the left. angle: rad, of both flanks. flank, top: m over the ground. width: m."""

    at: tuple[float, float]
    turned: float
    angle: float
    flank: float
    top: float
    width: float

    def __post_init__(self) -> None:
        sizes = (self.flank, self.top, self.width)
        if not (0 < self.angle < math.pi / 3 and all(0 < v < 10 for v in sizes)):
            raise ValueError(f"no ramp: {self}")


@dataclass(frozen=True)
class Strewn(Ground):
    """A plane with stones and humps on it, wherever they are."""

    kind = "strewn"
    chance = False

    stones: tuple[LaidStone, ...] = ()
    humps: tuple[Hump, ...] = ()

    def lay(self, rig: Rig, truck: Truck, heading: float, reach: float) -> None:
        rig.world.plane(1.0)
        for stone in self.stones:
            lay_stone(rig, stone.at, stone.height, stone.width)
        for hump in self.humps:
            _lay_hump(hump, rig)


def _lay_hump(hump: Hump, rig: Rig) -> None:
    s, thick = rig.scale.length, 0.5 * hump.flank
    cos, sin = math.cos(hump.angle), math.sin(hump.angle)
    rise, out = hump.flank * math.tan(hump.angle), (hump.top + hump.flank) / 2
    # In its own plan axes: u up the ramp from its middle, z up; tops flush with its surface.
    boxes = (
        (hump.flank / cos, -out + thick / 2 * sin, rise / 2 - thick / 2 * cos, -hump.angle),
        (hump.top, 0.0, rise - thick / 2, 0.0),
        (hump.flank / cos, out - thick / 2 * sin, rise / 2 - thick / 2 * cos, hump.angle),
    )
    cos_b, sin_b = math.cos(hump.turned), math.sin(hump.turned)
    for edge, u, z, pitch in boxes:
        centre = ((hump.at[0] + u * cos_b) * s, (hump.at[1] + u * sin_b) * s, z * s)
        size = (edge * s, hump.width * s, thick * s)
        rig.world.box(size, centre, yaw_pitch(hump.turned, pitch))
