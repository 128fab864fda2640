"""Loads on a grade and in a turn against the table's own loads and plain balance."""

from __future__ import annotations

import numpy as np
import pytest

import driving_loads
from crossfall.statics import rigid
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY
from support import make_truck


@pytest.mark.parametrize("degrees", [-25.0, 0.0, 12.0])
def test_standing_on_a_grade_is_the_table(degrees: float) -> None:
    truck, grade = make_truck(chassis_cg=(0.02, 0.0, 0.1)), np.radians(degrees)
    heading = 0.0 if grade >= 0 else np.pi
    table = rigid.axle_loads(truck, heading, abs(grade))
    np.testing.assert_allclose(driving_loads.grade_loads(truck, grade), table, rtol=1e-12)


def test_gaining_speed_is_like_a_steeper_grade_for_the_couple_alone() -> None:
    truck, grade, gain = make_truck(), np.radians(10.0), 2.0
    body = whole(truck)
    standing, driving = (driving_loads.grade_loads(truck, grade, a) for a in (0.0, gain))
    moved = body.mass * gain * body.cg[2] / truck.wheelbase
    np.testing.assert_allclose(driving - standing, [-moved, moved], rtol=1e-12)
    force = body.mass * (GRAVITY * np.sin(grade) + gain)
    assert driving_loads.driving_force(truck, grade, gain) == pytest.approx(force)
    assert driving_loads.grip_needed(truck, grade, gain, "rear") == pytest.approx(
        force / driving[1]
    )
    assert driving_loads.grip_needed(truck, grade, 0.0, "both") == pytest.approx(np.tan(grade))


def test_the_inner_tyres_lift_at_the_rollover_speed() -> None:
    truck, radius = make_truck(chassis_cg=(0.0, 0.004, 0.1)), 3.0
    speed = driving_loads.rollover_speed(truck, radius)
    loads = driving_loads.turn_loads(truck, speed, radius)
    weight = whole(truck).mass * GRAVITY
    np.testing.assert_allclose(loads, [0.0, weight], atol=1e-9)
    _x, y, h = whole(truck).cg
    b = truck.front.track / 2
    assert speed**2 / (radius * GRAVITY) == pytest.approx((b + y) / h, rel=1e-12)
