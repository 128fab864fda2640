"""Grades at which grip gives out, against the balance and the general slide they come from."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.statics.rigid import tip_angle
from crossfall.statics.sliding import HELD, Held, slide
from crossfall.statics.traction import DRIVEN, greatest_grade, traction
from crossfall.truck.build import load_truck
from crossfall.truck.model import Grip
from driving_loads import grip_needed
from support import make_truck

BRAKED: dict[str, Held] = {
    "front": (True, True, False, False),
    "rear": (False, False, True, True),
    "both": HELD,
}


@pytest.mark.parametrize("wheels", DRIVEN)
@pytest.mark.parametrize("mu", [0.3, 0.6, 0.9])
def test_at_the_greatest_grade_all_grip_is_used(wheels: str, mu: float) -> None:
    truck = load_truck("bramble").truck
    grade = greatest_grade(truck, mu, wheels)
    assert grip_needed(truck, grade, 0.0, wheels) == pytest.approx(mu)


@pytest.mark.parametrize("name", ["bramble", "burdock", "thistle"])
def test_it_slides_where_the_least_power_of_friction_says(name: str) -> None:
    """With the weight a little to one side the truck yaws as it goes, by next to nothing."""
    truck = load_truck(name).truck
    for grip in truck.grips:
        found = traction(truck, grip)
        for row, wheels in enumerate(DRIVEN):
            other = slide(truck, [0.0, np.pi], grip.likely, BRAKED[wheels]).angle
            assert found.slides_up[row, 1] == pytest.approx(other[0], abs=1e-4)
            assert found.slides_down[row, 1] == pytest.approx(other[1], abs=1e-4)


def test_beyond_its_tip_the_lower_axle_carries_everything() -> None:
    truck = make_truck(chassis_cg=(0.0, 0.0, 0.2))
    back, over = tip_angle(truck, [0.0, np.pi])
    grip = Grip("glue", *(float(np.tan(back) * f) for f in (0.99, 1.01, 3.0)))
    found = traction(truck, grip)
    rear, both = DRIVEN.index("rear"), DRIVEN.index("both")
    assert found.slides_up[rear, 0] < found.slides_up[both, 0] < found.tips_up == back
    np.testing.assert_allclose(found.slides_up[rear, 1:], found.slides_up[both, 1:])
    assert np.all(found.slides_up[0] < back)  # the front has no weight left there
    assert found.tips_down == over


def test_nose_down_is_nose_up_of_the_truck_turned_round() -> None:
    truck, turned = (make_truck(chassis_cg=(x, 0.0, 0.11)) for x in (0.03, -0.03))
    grip = Grip("rock", 0.6, 0.8, 1.0)
    one, other = traction(truck, grip), traction(turned, grip)
    np.testing.assert_allclose(one.slides_down[[1, 0, 2]], other.slides_up, rtol=1e-9)
