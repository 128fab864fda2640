"""The truck standing level at ride height: tyre loads and the spring preloads that hold it there.

Part of what the truck *is*: springs are taken as adjusted so that it sits level, which both the
statics and the trials start from.
"""

from __future__ import annotations

import numpy as np

from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import GRAVITY, Array, Truck


def axle_loads(truck: Truck) -> Array:
    """(2,) N on the ground under front and rear axle, level: moments about the other axle."""
    body = whole(truck)
    front = body.mass * GRAVITY * (body.cg[0] - truck.rear.x) / truck.wheelbase
    return np.array([front, body.mass * GRAVITY - front])


def spring_couples(truck: Truck) -> Array:
    """(2,) N m, the roll moment each axle's springs hold against the chassis CG's offset.

    How front and rear share it is a matter of adjustment; here each takes it in proportion to
    the sprung load it carries, so that an offset CG does not twist the chassis.
    """
    couples: Array = sprung_loads(truck) * truck.chassis.cg[1]
    return couples


def sprung_loads(truck: Truck) -> Array:
    """(2,) N of sprung weight on front and rear axle: axle load less unsprung weight."""
    own = np.array([unsprung(truck, i).mass for i in (0, 1)]) * GRAVITY
    return axle_loads(truck) - own


def spring_preloads(truck: Truck) -> Array:
    """(4,) N, force in each corner spring at ride height, along the heave axis.

    A leaning heave axis takes part of the load in its guides: the springs carry S cos(lean).
    """
    sprung, couple = sprung_loads(truck), spring_couples(truck)
    forces = []
    for load, moment, axle in zip(sprung, couple, truck.axles, strict=True):
        s = axle.suspension
        half = load * np.cos(s.heave_lean) / 2
        forces += [half + moment / s.spring_spacing, half - moment / s.spring_spacing]
    return np.array(forces)


def tyre_loads(truck: Truck) -> Array:
    """(4,) N on each tyre, level at ride height: axle load, and roll balance of each axle."""
    loads = []
    for i, (load, moment) in enumerate(zip(axle_loads(truck), spring_couples(truck), strict=True)):
        own = unsprung(truck, i)
        transfer = (moment + own.mass * GRAVITY * own.cg[1]) / truck.axles[i].track
        loads += [load / 2 + transfer, load / 2 - transfer]
    return np.array(loads)
