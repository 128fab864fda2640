"""What the wheels that drive or brake can do on a grade before they slip.

The rigid truck with the load that a grade shifts, straight up or down. Climbing steadily
with some wheels driven and standing nose up with the same ones braked ask the same of them, so one
number answers both.

Source: T. D. Gillespie, Fundamentals of Vehicle Dynamics (SAE, 1992), chapter 1 (from memory), for
the loads that a grade shifts; what wheels can do with them is derived here from the balance of
forces along the grade.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from crossfall.statics.rigid import QUARTERS, tip_angle
from crossfall.truck.massprops import whole
from crossfall.truck.model import Array, Grip, Truck

DRIVEN = ("front", "rear", "both")  # the axles that drive or brake, in order


@dataclass(frozen=True)
class Traction:
    """One surface; (3, 3) rad, a row for each of DRIVEN, at the low, likely and high grip.

    climbs: the greatest grade with those wheels driven. slides_up, slides_down: where it slides
    down, nose up or nose down, with those wheels braked and the others free. tips_up, tips_down:
    rad, where the rigid truck would go over backwards and forwards, whatever the grip.
    """

    grip: Grip
    climbs: Array
    slides_up: Array
    slides_down: Array
    tips_up: float
    tips_down: float


def traction(truck: Truck, grip: Grip) -> Traction:
    """Grades at which the grip of one surface gives out, by the wheels that drive or brake.

    Each is `greatest_grade` at low, likely and high grip; beside them the grades at which the rigid
    truck goes over backwards and forwards, `rigid.tip_angle` at headings 0 and 180.

    Raises nothing.
    """
    up, down = (
        np.array(
            [
                [greatest_grade(truck, mu, wheels, nose_up) for mu in _ends(grip)]
                for wheels in DRIVEN
            ]
        )
        for nose_up in (True, False)
    )
    back, over = (float(v) for v in tip_angle(truck, QUARTERS[[0, 2]]))
    return Traction(grip, up, up, down, back, over)


def _ends(grip: Grip) -> tuple[float, float, float]:
    return grip.low, grip.likely, grip.high


def greatest_grade(truck: Truck, grip: float, wheels: str, nose_up: bool = True) -> float:
    """rad, the steepest grade on which `wheels` ("front", "rear", "both") at that grip carry the
    truck: climbed steadily with them driven, or held with them braked and the others free.

    grip: friction coefficient. Force over load of those wheels = grip, solved: tan(grade) = grip l
    / (L -+ grip h), with l from the other axle to the CG in plan, - for the downhill axle, which
    the grade loads, + for the other; grip for both. Past the tip angle, where the uphill axle
    carries nothing, the other has all of the weight.

    Raises nothing, so `wheels` has to be one of the three.
    """
    along, _, height = whole(truck).cg
    if wheels == "both":
        return float(np.arctan(grip))
    reach = along - truck.rear.x if wheels == "front" else truck.front.x - along
    loaded = (wheels == "rear") == nose_up
    shift = grip * height if loaded else -grip * height
    grade = np.arctan2(grip * reach, truck.wheelbase - shift)
    return float(min(grade, np.arctan(grip)))
