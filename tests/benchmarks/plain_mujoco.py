"""The straightforward way to do a tilt trial in MuJoCo, to measure ours against.

The model that ours has, at 1 ms, 1 degree a second from the level, loads read in every step, until
the truck lies on its side. No prediction, no holding.
"""

from __future__ import annotations

import math

from crossfall.engines.held import gravity_on_table
from crossfall.engines.mujoco import MujocoTruck, SolverMethod
from crossfall.engines.settings import TrialSettings
from crossfall.truck.model import Truck

GRIP = 5.0
PLAIN = SolverMethod(step=0.001, firm=4.0)


def plain_mujoco(truck: Truck, heading: float) -> float:
    """Table angle (rad) when the truck has fallen."""
    theta = 0.0
    with MujocoTruck(truck, TrialSettings(), PLAIN) as rig:
        rig.grip([GRIP] * 4)
        while theta < math.radians(85.0):
            theta += math.radians(1.0) * rig.dt
            rig.step(gravity_on_table(heading, theta))
            rig.loads()
            if rig.lean() > math.radians(35.0):
                break
    return theta
