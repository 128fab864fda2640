"""The truck standing level at ride height: tyre loads and the spring preloads that hold it there.

Part of what the truck *is*: springs are taken as adjusted so that it sits level, which both the
statics and the trials start from.

Source: derived here from equilibrium: moments about the other axle, moments of an axle in rear
view, virtual work on its heave and roll. Wheels count as straight ahead.
"""

from __future__ import annotations

import numpy as np

from crossfall.truck.axle_law import BY_Q, BY_QQ, LEFT, VALUE, law_of
from crossfall.truck.massprops import unsprung, whole
from crossfall.truck.model import GRAVITY, Array, Axle, Truck
from crossfall.truck.spring_law import spring_law


def level_axle_loads(truck: Truck) -> Array:
    """(2,) N on the ground under front and rear axle, level: moments about the other axle.

    F_f = W (x - x_r) / L. Raises nothing; below zero where the CG is outside the axles.
    """
    body = whole(truck)
    front = body.mass * GRAVITY * (body.cg[0] - truck.rear.x) / truck.wheelbase
    return np.array([front, body.mass * GRAVITY - front])


def spring_couples(truck: Truck) -> Array:
    """(2,) N m, the roll moment each axle's springs hold against the chassis CG's offset: S y_c.

    How front and rear share it is a matter of adjustment; here each takes it in proportion to
    the sprung load it carries, so that an offset CG does not twist the chassis.
    """
    couples: Array = sprung_loads(truck) * truck.chassis.cg[1]
    return couples


def sprung_loads(truck: Truck) -> Array:
    """(2,) N of sprung weight on front and rear axle: S = F - U, axle load less unsprung weight."""
    own = np.array([unsprung(truck, i).mass for i in (0, 1)]) * GRAVITY
    return level_axle_loads(truck) - own


def spring_preloads(truck: Truck) -> Array:
    """(4,) N, force in each corner spring at ride height, along the spring.

    Both freedoms of an axle balance: the weight of axle and wheels and the ground's loads do no
    work on heave or roll but what the corners take. What heaves along a lean, or turns as it
    heaves, leaves part of the load to its guides.

    A^T f = sum of each force times its rise by heave and roll, A of `AxleLaw.ratios`. Raises
    LinkageError where the links bind, LinAlgError where the corners hold no roll.
    """
    return np.concatenate([_axle_preloads(truck, i) for i in (0, 1)])


def _axle_preloads(truck: Truck, i: int) -> Array:
    axle, ground = truck.axles[i], tyre_loads(truck)[2 * i : 2 * i + 2]
    law, own = law_of(axle), unsprung(truck, i)
    at = np.array([[axle.x, axle.track / 2, 0.0], [axle.x, -axle.track / 2, 0.0], own.cg])
    up = np.array([*ground, -own.mass * GRAVITY])
    arm, twist = at - law.point, law.twists()
    rise = twist[5] + np.outer(arm[:, 1], twist[0]) - np.outer(arm[:, 0], twist[1])
    return np.linalg.solve(law.ratios().T, up @ rise)


def axle_squeezes(truck: Truck, i: int) -> Array:
    """(2,) m, how far the springs of one axle (0 front, 1 rear) are pressed from free at ride
    height.

    `SpringLaw.squeeze` of the preloads. Raises as `spring_preloads` does.
    """
    law = spring_law(truck.axles[i].suspension)
    return np.array([law.squeeze(load) for load in _axle_preloads(truck, i).tolist()])


def spring_squeezes(truck: Truck) -> Array:
    """(4,) m, how far each corner's springs are pressed from free at ride height.

    `axle_squeezes` of both. Raises as `spring_preloads` does.
    """
    return np.concatenate([axle_squeezes(truck, i) for i in (0, 1)])


def corner_rates(truck: Truck) -> Array:
    """(4,) N/m of each corner at ride height, as if its springs stood upright on the axle: k m^2.

    m: how far the spring is pressed for each m of heave. Raises as `spring_preloads` does.

    Source: motion ratio squared, J. C. Dixon, Suspension Geometry and Computation (2009) (from
    memory).
    """
    rates = []
    for i, axle in enumerate(truck.axles):
        rate = spring_law(axle.suspension).rate_at(axle_squeezes(truck, i))
        rates.append(rate * law_of(axle).ratios()[:, 0] ** 2)
    return np.concatenate(rates)


def wheel_rates(axle: Axle, squeeze: float, heave: Array) -> Array:
    """(H,) N/m of one wheel's load by its travel, at heaves (H,) m without roll.

    k (dc/dq)^2 + F d2c/dq2, of the compression c over heave q. squeeze: m, how far the springs are
    pressed from free at ride height. Raises LinkageError where the links bind.
    Source: W. F. Milliken and D. L. Milliken, Race Car Vehicle Dynamics (SAE 1995), for rates
    through installation ratios (from memory).
    """
    springs = spring_law(axle.suspension)
    corner = law_of(axle).at(heave, np.zeros_like(heave))[LEFT]
    pressed = squeeze + corner[VALUE]
    rates: Array = (
        springs.rate_at(pressed) * corner[BY_Q] ** 2 + springs.force(pressed) * corner[BY_QQ]
    )
    return rates


def tyre_loads(truck: Truck) -> Array:
    """(4,) N on each tyre, level at ride height: axle load, and roll balance of each axle.

    F / 2 +- (S y_c + U y_u) / T. Raises nothing.
    """
    loads = []
    for i, (load, moment) in enumerate(
        zip(level_axle_loads(truck), spring_couples(truck), strict=True)
    ):
        own = unsprung(truck, i)
        transfer = (moment + own.mass * GRAVITY * own.cg[1]) / truck.axles[i].track
        loads += [load / 2 + transfer, load / 2 - transfer]
    return np.array(loads)
