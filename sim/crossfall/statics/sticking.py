"""The sticking closure: tyres hold the table by friction with a history.

Each contact point is an elastic-Coulomb element (return mapping as in plasticity, e.g. Simo and
Hughes, Computational Inelasticity (1998), chapter 1): its tangential spring is stiff enough to
stand for hard sticking, its pull is limited to mu times its load, and it starts afresh where a
wheel comes down again. Wheels are held, so a disc that turns with its axle rolls on the table.
"""

from __future__ import annotations

from dataclasses import dataclass, fields

import numpy as np

from crossfall.statics.balance import Balance, Closure
from crossfall.statics.builds import Builds, Flags, Index
from crossfall.statics.kinematics import STICKING, place
from crossfall.statics.tyres import Contact, Discs, discs, hanging, uprightness
from crossfall.truck.model import Array

FRICTION = 5.0  # holds to 78 deg, so that trucks tip; light wheels may still slip
SLACK = 1e-8  # of the truck's weight, see below
RATIO = 1000.0  # tangential over vertical tyre stiffness; at 100 a truck tips up to 0.7 deg early


@dataclass(frozen=True)
class Sticking:
    """History of every contact point; the last axis is the case, arrays change as it moves on.

    friction: (B,). rate: (2, 1, B) tangential stiffness of a point. anchor: (2, 2, p, B) x and y
    of the point when last seen, arc: (2, 1, B), ahead: (2, 2, 1, B) rolling direction then,
    pull: (2, 2, p, B) friction force then.
    """

    friction: Array
    rate: Array
    anchor: Array
    arc: Array
    ahead: Array
    pull: Array
    freedoms: int = 10
    remembers: bool = True

    def take(self, index: Index) -> Sticking:
        arrays = {f.name: getattr(self, f.name) for f in fields(self)[:6]}
        return Sticking(**{name: values[..., index] for name, values in arrays.items()})

    def put(self, who: Index, other: Closure) -> None:
        for f in fields(self)[:6]:
            getattr(self, f.name)[..., who] = getattr(other, f.name)

    def remember(self, who: Index, at: Balance, chosen: Index) -> None:
        self.anchor[..., who] = at.discs.point[:2][..., chosen]
        self.arc[..., who] = at.discs.arc[..., chosen]
        self.ahead[..., who] = at.discs.ahead[:2][..., chosen]
        if at.contact.force is not None:
            self.pull[..., who] = at.contact.force[:2][..., chosen]

    def contact(
        self,
        builds: Builds,
        disc: Discs,
        gravity: Array,
        d_gravity: Array,
        touch: Flags | None,
    ) -> Contact:
        """Pull T = T_0 - k_T s while it sticks, with s the slip since last seen; else mu N T / |T|.

        Balance of the wheel along axle z = a: N a_z + T . a = A, with A = F0 - m (1 - u) + k d.
        """
        a, up = disc.along, disc.along[2]
        upright, d_upright = uprightness(disc, gravity, d_gravity)
        lift = builds.tyre_load - builds.disc_mass * (1 - upright) + builds.tyre_rate * disc.squash
        d_lift = builds.tyre_rate * disc.d_squash + builds.disc_mass * d_upright
        trial, d_trial = self._trial(builds, disc)
        size = np.sqrt(trial[0] ** 2 + trial[1] ** 2 + 1e-24)
        way = trial / size
        d_size = way[0] * d_trial[0] + way[1] * d_trial[1]

        # Turning of the axle's z axis: d a = w x a.
        d_a = np.zeros((3, 7, *up.shape))
        d_a[1, 0], d_a[2, 0] = -a[2], a[1]
        d_a[0, 1], d_a[2, 1] = a[2], -a[0]
        d_a[0, 2], d_a[1, 2] = -a[1], a[0]
        load = (lift - trial[0] * a[0] - trial[1] * a[1]) / up
        d_load = d_lift - a[0] * d_trial[0] - a[1] * d_trial[1]
        d_load = (d_load - trial[0] * d_a[0] - trial[1] * d_a[1] - load * d_a[2]) / up
        mu = self.friction
        touch = lift >= 0 if touch is None else touch
        stick = mu * load - size > SLACK  # one that has slipped is at its limit, and counted so

        slope = np.maximum(up + mu * (way[0] * a[0] + way[1] * a[1]), 0.1)
        d_way = (d_trial - way[:, None] * d_size) / size
        slid = lift / slope
        d_slope = d_a[2] + mu * (
            way[0] * d_a[0] + way[1] * d_a[1] + a[0] * d_way[0] + a[1] * d_way[1]
        )
        d_slid = (d_lift - slid * d_slope) / slope

        force, d_force = np.zeros((3, *load.shape)), np.zeros((3, 7, *load.shape))
        force[:2] = np.where(stick, trial, mu * slid * way)
        force[2] = np.where(stick, load, slid)
        d_force[:2] = np.where(stick, d_trial, mu * (slid * d_way + way[:, None] * d_slid))
        d_force[2] = np.where(stick, d_load, d_slid)
        travel, d_travel = hanging(builds, disc, touch, upright, d_upright)
        none = np.zeros_like(lift), np.zeros_like(d_lift)
        forces = force * touch, d_force * touch
        return Contact(lift, d_lift, travel, d_travel, *none, *forces)

    def _trial(self, builds: Builds, disc: Discs) -> tuple[Array, Array]:
        """Pull if it sticks, (2, 2, p, B), and derivatives (2, 7, 2, p, B)."""
        rolled = builds.radius * (disc.arc - self.arc)
        slip = disc.point[:2] - self.anchor - rolled * self.ahead
        d_slip = disc.d_point[:2].copy()
        turning = builds.radius / disc.tilt * disc.sideways
        d_slip[:, :2] -= turning[:2] * self.ahead[:, None]
        return self.pull - self.rate * slip, -self.rate * d_slip


def fresh(builds: Builds, friction: float = FRICTION, ratio: float = RATIO) -> Sticking:
    """Tyres that have just been set down on the level table, pulling nowhere."""
    count = len(builds)
    level = discs(builds, place(builds, np.zeros((len(STICKING), count))))
    return Sticking(
        np.full(count, friction),
        ratio * builds.tyre_rate,
        level.point[:2].copy(),
        level.arc,
        level.ahead[:2].copy(),
        np.zeros_like(level.point[:2]),
    )
