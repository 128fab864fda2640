"""What driven and braked wheels can do on a grade, from textbooks.

"Seen" and "worked" as in test_tipping. Only ratios enter, so the trucks have any mass.
"""

from __future__ import annotations

import numpy as np
import pytest
from vehicles import vehicle

from crossfall.statics.traction import DRIVEN, greatest_grade, traction
from crossfall.truck.model import Grip


def test_a_vehicle_braked_on_a_slope() -> None:
    """Worked example 31.6, Stability of a vehicle on a slope, in an automobile engineering text
    (what-when-how.com). Inputs seen, worked: wheelbase 2.25 m, CG 1.0 m ahead of the rear axle and
    1.5 m high, nose up, mu 0.35: overturns at 33.69 deg, slides at 19.29.
    """
    car = vehicle(height=1.5, wheelbase=2.25, behind_front=1.25)
    found = traction(car, Grip("as given", 0.35, 0.35, 0.35))
    all_braked = DRIVEN.index("both")
    np.testing.assert_allclose(np.degrees(found.slides_up[all_braked]), 19.29, atol=0.005)
    assert np.degrees(found.tips_up) == pytest.approx(33.69, abs=0.005)


def test_rear_drive_up_a_grade_with_the_load_it_shifts() -> None:
    """Meriam and Kraige, Engineering Mechanics: Dynamics, sample problem 6/1. Worked.

    3220 lb, CG 24 in high and 60 in from each axle, 10 % grade, 44 ft/s in 200 ft from rest, rear
    drive: F 804 lb, N 1441 + 1763 lb, so that F/N = 0.456 at the rear wheels. Gaining speed asks
    for the same as standing steeper, at tan(grade) = F over all of N.
    """
    car = vehicle(height=2.0, wheelbase=10.0)
    grade = greatest_grade(car, 0.456, "rear")
    assert np.tan(grade) == pytest.approx(804 / (1441 + 1763), abs=5e-4)


@pytest.mark.parametrize(("wheels", "gain"), [("front", 2.889), ("rear", 3.022), ("both", 5.886)])
def test_greatest_acceleration_as_a_grade(wheels: str, gain: float) -> None:
    """Example 31.7 of the same text. Inputs seen, worked: wheelbase 2.75 m, CG 0.85 m up and 1.15 m
    behind the front axle, adhesion 0.6, g 9.81. On the level, gain / g = tan(grade) as above.
    """
    car = vehicle(height=0.85, wheelbase=2.75, behind_front=1.15)
    assert np.tan(greatest_grade(car, 0.6, wheels)) == pytest.approx(gain / 9.81, abs=1e-4)


@pytest.mark.parametrize("mu", [0.4, 0.8])
def test_parked_uphill_on_one_axle(mu: float) -> None:
    """Jazar, Vehicle Dynamics: Theory and Application (2008), examples 46 to 49. Formulas seen.

    Facing uphill, a1 and a2 from CG to front and rear axle: rear brake
    tan(phi) = a1 mu / (l - mu h), as in ratio (2.69); front brake, by its balance (2.65),
    a2 mu / (l + mu h); all of them mu (2.86).
    """
    a1, a2, h = 1.10, 1.24, 0.40
    car = vehicle(height=h, wheelbase=a1 + a2, behind_front=a1)
    found = traction(car, Grip("as given", mu, mu, mu)).slides_up[:, 1]
    expected = [a2 * mu / (a1 + a2 + mu * h), a1 * mu / (a1 + a2 - mu * h), mu]
    np.testing.assert_allclose(np.tan(found), expected, rtol=1e-12)
