"""The force-angle margin: angle from the resultant through the CG to the nearest tip line."""

from __future__ import annotations

import math

import numpy as np
import pytest

from crossfall.trials.stability_margin import effective_gravity, force_angles
from crossfall.truck.model import GRAVITY, frozen

TRACK, BASE = 0.18, 0.32
CORNERS = frozen(
    [[x, y, 0.0] for x in (BASE / 2, -BASE / 2) for y in (TRACK / 2, -TRACK / 2)]
)  # front left, front right, rear left, rear right
CG = frozen([-0.02, 0.01, 0.11])


def margin(force: list[float]) -> float:
    return float(force_angles(CG[None], frozen([force]), CORNERS[None])[0])


def test_at_rest_on_the_level_it_is_the_least_static_tip_angle() -> None:
    """Papadopoulos and Rey, Vehicle System Dynamics 33 (2000) 29-48: property on level ground."""
    edges = [BASE / 2 - CG[0], BASE / 2 + CG[0], TRACK / 2 - CG[1], TRACK / 2 + CG[1]]
    least = min(math.atan(edge / CG[2]) for edge in edges)
    assert margin([0.0, 0.0, -1.0]) == pytest.approx(least, abs=1e-12)


@pytest.mark.parametrize("tilt", [5.0, 20.0, 36.0, 40.0])
def test_on_a_side_slope_it_falls_by_the_slope_and_turns_negative(tilt: float) -> None:
    lean = math.radians(tilt)
    level = math.atan((TRACK / 2 - CG[1]) / CG[2])
    assert margin([0.0, math.sin(lean), -math.cos(lean)]) == pytest.approx(level - lean, abs=1e-12)


def test_the_size_of_the_force_does_not_matter() -> None:
    assert margin([0.1, 0.2, -1.0]) == pytest.approx(margin([0.7, 1.4, -7.0]), abs=1e-12)


def test_a_body_that_speeds_up_is_pulled_back_by_its_inertia() -> None:
    time = frozen(np.arange(0.0, 1.0, 0.01))
    path = frozen(np.stack([1.5 * time**2, 0 * time, 0.11 + 0 * time], axis=1))
    pull = effective_gravity(time, path, frozen([0.0, 0.0, -GRAVITY]))
    middle = pull[len(time) // 2]
    assert middle == pytest.approx([-3.0, 0.0, -GRAVITY], abs=1e-9)


def test_too_short_a_path_counts_as_rest() -> None:
    time = frozen([0.0, 0.01, 0.02])
    pull = effective_gravity(time, frozen(np.ones((3, 3))), frozen([0.0, 0.0, -GRAVITY]))
    assert np.array_equal(pull, np.tile([0.0, 0.0, -GRAVITY], (3, 1)))
