"""Derivatives of the compliant tip against the full answer worked out twice, by other steps."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.statics.compliant import tips
from crossfall.statics.compliant_gradient import CARRIERS, added, tip_gradient
from crossfall.truck.massprops import whole
from crossfall.truck.model import Carrier, Truck
from support import make_truck

HEADINGS = np.radians([12.0, 35.0, 95.0, 137.0, 195.0, 262.0])  # two things at once at none
PLACES: tuple[tuple[Carrier, tuple[float, float, float]], ...] = (
    ("chassis", (0.05, 0.02, 0.15)),
    ("front axle", (0.16, -0.03, 0.05)),
    ("rear left", (-0.15, 0.09, 0.06)),
)
TRUCKS = (
    make_truck(chassis_cg=(-0.012, 0.004, 0.105), tracks=(0.172, 0.168), droop=0.008),
    make_truck(contact_half_width=0.01, tyre_stiffness=2500.0, spring_rate=500.0, droop=0.006),
)


GRIP = 0.9
CLOSE = np.radians(0.003)  # of tip, per 10 g or 10 mm: what is promised, or else a hundredth


@pytest.mark.parametrize("truck", TRUCKS)
def test_added_mass(truck: Truck) -> None:
    mass, found = 0.01, tip_gradient(truck, HEADINGS, GRIP, rail=True)
    changed = [added(truck, c, p, m) for c, p in PLACES for m in (mass, -mass)]
    again = tips(changed, HEADINGS, GRIP, rail=True).tip
    for i, (carrier, place) in enumerate(PLACES):
        wanted = (again[2 * i] - again[2 * i + 1]) / 2
        said = mass * found.per_mass(carrier, np.array(place))[:, 0]
        np.testing.assert_allclose(said, wanted, rtol=0.01, atol=CLOSE)


def test_moved_mass() -> None:
    truck, mass, step = TRUCKS[0], 0.05, 0.01
    at = np.array([0.02, 0.01, 0.13])
    loaded = added(truck, "chassis", at, mass)
    said = step * tip_gradient(loaded, HEADINGS, GRIP, rail=True).per_move("chassis", mass)
    shifts = step * np.concatenate([np.eye(3), -np.eye(3)])
    moved = [added(truck, "chassis", at + s, mass) for s in shifts]
    again = tips(moved, HEADINGS, GRIP, rail=True).tip
    np.testing.assert_allclose(said, (again[:3] - again[3:]).T / 2, rtol=0.01, atol=CLOSE)


def test_adding_and_its_coefficients() -> None:
    truck = make_truck()
    heavier = added(truck, "front right", (0.15, -0.08, 0.05), 0.02)
    assert whole(heavier).mass == pytest.approx(whole(truck).mass + 0.02)
    back = added(heavier, "front right", (0.15, -0.08, 0.05), -0.02)
    np.testing.assert_allclose(whole(back).cg, whole(truck).cg, atol=1e-15)
    found = tip_gradient(truck, HEADINGS)
    assert found.coefficients.shape == (6, len(CARRIERS), 4)
    places = np.random.default_rng(2).normal(size=(5, 3))
    middle = found.per_mass("chassis", places.mean(axis=0))
    np.testing.assert_allclose(
        found.per_mass("chassis", places).mean(axis=1), middle[:, 0], rtol=1e-9
    )


def test_signs_a_tuner_knows() -> None:
    """Common practice, no source: a gram low on the axle helps on a side slope, one on the roof
    hurts; a gram on the front axle helps the climb and costs the descent."""
    found = tip_gradient(make_truck(spring_rate=800.0, droop=0.008), np.radians([0.0, 90.0, 180.0]))
    climb, side, descent = found.per_mass("front axle", np.array([0.157, 0.0, 0.04]))[:, 0]
    assert climb > 0
    assert side > 0
    assert descent < 0
    assert (found.per_mass("chassis", np.array([0.0, 0.0, 0.25])) < 0).all()
