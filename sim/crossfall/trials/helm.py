"""Whoever holds the wheel: keeps a truck that drives straight on on its line.

Pure pursuit (R. C. Coulter, CMU-RI-TR-92-01, 1992, from memory): with wheelbase L, and the middle
of the rear axle y to the left of the line and heading psi, the front wheels point at a place on the
line that lies a look-ahead l further on,

    delta = atan(2 L sin(alpha) / l),   alpha = atan2(-y, l) - psi

On a side-hill a truck creeps downhill as it goes, so that it has to be pointed uphill a little; a
driver finds that out by and by, and so does a sum of y over the way.

Source: R. C. Coulter, Implementation of the Pure Pursuit Path Tracking Algorithm, CMU-RI-TR-92-01
(1992) (from memory); the sum of y, an integral term, is common practice, no source.
"""

from __future__ import annotations

import math

from crossfall.engines.multibody import steer_joint
from crossfall.engines.rig import Rig
from crossfall.truck.model import Truck

LOCK = math.radians(30)  # rad, of a truck whose file gives none; common practice, no source
TORQUE = 2.0  # N m of the servo at each wheel; common practice, no source
TURNS = math.radians(60) / 0.15  # rad/s of the servo; common practice, no source
_AHEAD = 1.2  # wheelbases of look-ahead
_LEARN = 3.0  # wheelbases of way over which a lasting offset is made up for
_MOST = 0.5  # wheelbases that it may aim beside the line
_RESPONSE = 0.02  # s in which the servo would make good its error, were it quick enough


class Helm:
    """Steers one rig, which must have knuckles; real size."""

    def __init__(self, rig: Rig, truck: Truck) -> None:
        self._rig, self._base = rig, truck.wheelbase
        self._joints = [rig.world.joints[steer_joint(wheel)] for wheel in (0, 1)]
        self._lock = LOCK if truck.steering_lock is None else truck.steering_lock
        self._aside = self._last = 0.0
        self._turn_to(0.0)

    def keep(self, ahead: float, left: float, heading: float) -> None:
        """After each look: middle of the rear axle (m along the line, m to its left), and rad by
        which the truck points to the left of the line."""
        base = self._base
        self._aside += left * (ahead - self._last) / (_LEARN * base)
        self._aside = max(-_MOST * base, min(_MOST * base, self._aside))
        self._last = ahead
        look = _AHEAD * base
        alpha = math.atan2(-left - self._aside, look) - heading
        self._turn_to(math.atan(2 * base * math.sin(alpha) / look))

    def _turn_to(self, angle: float) -> None:
        angle = max(-self._lock, min(self._lock, angle))
        world, scale = self._rig.world, self._rig.scale
        speeds = [
            max(-TURNS, min(TURNS, (angle - state[0]) / _RESPONSE)) / scale.time
            for state in world.joint_states(self._joints)
        ]
        world.motors(self._joints, speeds, [TORQUE * scale.force * scale.length] * 2)
