"""Force-angle measure and energy margin against what their authors say of them."""

from __future__ import annotations

import numpy as np
import pytest
from vehicles import vehicle

import stability_measures as stability
from crossfall.statics import rigid


def test_force_angle_on_level_ground_is_the_tip_angle() -> None:
    """Papadopoulos and Rey, Vehicle System Dynamics 33 (2000) 29-48. Property: under gravity alone
    on the level each edge's angle is the static tip angle about it.
    """
    car = vehicle(height=0.8, wheelbase=2.4, behind_front=1.0, track=1.5, left_of_middle=0.1)
    found = stability.force_angle(car, stability.table_gravity(0.0, 0.0))
    tips = rigid.tip_angle(car, rigid.QUARTERS)  # square to each edge in turn
    np.testing.assert_allclose(found.angle, tips, rtol=1e-12)
    assert np.min(found.angle) == pytest.approx(np.min(tips))


def test_force_angle_sees_height_and_weight() -> None:
    """The same paper, abstract. Seen: the measure is sensitive to CG height and to heaviness."""
    down = stability.table_gravity(0.0, 0.0)
    base, high, heavy = (
        stability.force_angle(vehicle(track=1.5, height=h, mass=m), down).measure
        for h, m in ((0.5, 1.0), (0.8, 1.0), (0.5, 2.0))
    )
    assert high < base
    assert heavy == pytest.approx(2 * base)


def test_energy_stability_margin() -> None:
    """Messuri and Klein, IEEE Journal of Robotics and Automation 1 (1985) 132-141. Formula from
    memory, numbers worked: 3 kg, edge 0.1 m off, CG 0.1 m up, g 9.81: 1.21903 J on the level,
    0.38995 J after 20 deg of tilt.
    """
    truck = vehicle(height=0.1, wheelbase=0.4, track=0.2, mass=3.0)
    to_book = 9.81 / rigid.GRAVITY
    left = rigid.EDGES.index("left")
    level = stability.energy_margin(truck)[left] * to_book
    tilted = stability.energy_margin(truck, np.pi / 2, np.radians(20.0))[left] * to_book
    assert level == pytest.approx(1.21903, abs=5e-6)
    assert tilted == pytest.approx(0.38995, abs=5e-6)
