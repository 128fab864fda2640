"""Nothing in the way."""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

from crossfall.trials.grounds.base import Ground
from crossfall.truck.model import Truck

if TYPE_CHECKING:
    from crossfall.engines.rig import Rig


@dataclass(frozen=True)
class Plane(Ground):
    """The level ground itself."""

    kind = "plane"
    below = math.radians(3.0)
    chance = False

    def lay(self, rig: Rig, truck: Truck, heading: float, reach: float) -> None:
        rig.world.plane(1.0)
