"""Axle and side loads of the rigid truck while it drives: on a grade, and round a steady turn.

The closed forms of any vehicle dynamics text, e.g. Gillespie, Fundamentals of Vehicle Dynamics,
chapters 1 and 9: weight split by the CG's place, less what the couple of inertia and grade at CG
height moves from one end, or side, to the other.
"""

from __future__ import annotations

import numpy as np

from crossfall.statics.rigid import tip_angle
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Array, Truck
from stability_measures import side_loads

RIGHT_DOWN = 3 * np.pi / 2  # the table heading that pulls to the right


def driving_force(truck: Truck, grade: float, acceleration: float = 0.0) -> float:
    """N at the tyres to climb a grade (rad) and gain speed (m/s^2): M (g sin(grade) + a_x)."""
    return float(whole(truck).mass * (GRAVITY * np.sin(grade) + acceleration))


def grade_loads(truck: Truck, grade: float, acceleration: float = 0.0) -> Array:
    """(2,) N on the front and rear axle, nose up a grade (rad), gaining speed at a_x (m/s^2).

    N_f = M (g cos(grade) l_r - (g sin(grade) + a_x) h) / L, l_r from rear axle to CG in plan.
    Air and rolling resistance and the wheels' spin are left out.
    """
    body = whole(truck)
    square = body.mass * GRAVITY * np.cos(grade)
    couple = driving_force(truck, grade, acceleration) * body.cg[2]
    front = (square * (body.cg[0] - truck.rear.x) - couple) / truck.wheelbase
    return np.array([front, square - front])


def grip_needed(truck: Truck, grade: float, acceleration: float, driven: str) -> float:
    """F/N at the driven axle ("front", "rear") or at all wheels ("both") to do so."""
    front, rear = grade_loads(truck, grade, acceleration)
    load = {"front": front, "rear": rear, "both": front + rear}[driven]
    return float(driving_force(truck, grade, acceleration) / load)


def turn_angle(speed: float, radius: float) -> float:
    """rad, the table angle like a level turn: tan(theta) = v^2 / (R g), the sideways pull in g."""
    return float(np.arctan(speed**2 / (radius * GRAVITY)))


def turn_loads(truck: Truck, speed: float, radius: float) -> Array:
    """(2,) N on the left and right tyres in a steady level turn to the left; radius in m.

    N = M (g (b +- y) -+ h v^2/R) / 2b, b the tip line (`tip_line`): the loads of a truck on its
    right side on the table, without the table's cos(theta). ValueError as in `side_loads`.
    """
    theta = turn_angle(speed, radius)
    loads: Array = side_loads(truck, RIGHT_DOWN, theta) / np.cos(theta)
    return loads


def rollover_speed(truck: Truck, radius: float) -> float:
    """m/s at which the inner tyres of a level turn to the left lift: v^2 = R g tan(theta_tip)."""
    return float(np.sqrt(GRAVITY * radius * np.tan(tip_angle(truck, RIGHT_DOWN))))
