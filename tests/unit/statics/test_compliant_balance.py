"""The equations themselves: level equilibrium, exact derivatives, constraints."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from crossfall.statics.balance import Balance, Closure, Uniform, balance, gap_slopes
from crossfall.statics.builds import Builds, lock, pack, rise_only
from crossfall.statics.sticking import fresh
from crossfall.truck.model import GRAVITY, Array, Truck
from crossfall.truck.ride import spring_preloads, tyre_loads
from support import make_truck, with_suspension


def odd_truck() -> Truck:
    """Nothing about it is symmetric."""
    return make_truck(
        contact_half_width=0.01,
        chassis_cg=(-0.02, 0.007, 0.12),
        heave_lean=(0.2, -0.1),
        tracks=(0.17, 0.20),
        anti_roll=0.3,
    )


TRUCKS = (make_truck(), odd_truck())


def closure_of(name: str, builds: Builds) -> Closure:
    return Uniform() if name == "uniform" else fresh(builds, ratio=3.0)


def difference(at: Callable[[Array], Array], x: Array, step: float = 1e-6) -> Array:
    """Central differences, one unknown after the other, along a new second axis."""
    columns = []
    for row in range(len(x)):
        move = np.zeros_like(x)
        move[row] = step
        columns.append((at(x + move) - at(x - move)) / (2 * step))
    return np.stack(columns, axis=1)


@pytest.mark.parametrize("name", ["uniform", "sticking"])
def test_level_at_ride_height_is_an_exact_equilibrium(name: str) -> None:
    builds = pack(TRUCKS)
    closure = closure_of(name, builds)
    x = np.zeros((closure.freedoms, 2))
    at = balance(builds, np.array([0.3, 2.0]), x, np.zeros(2), None, closure)
    np.testing.assert_allclose(at.load, 0.0, atol=1e-13)
    contact = at.gaps[:8].reshape(4, 2, 2).sum(axis=1) * builds.weight
    if name == "uniform":
        np.testing.assert_allclose(contact.T, [tyre_loads(t) for t in TRUCKS], rtol=1e-12)
    np.testing.assert_allclose(
        (at.gaps[8:12] * builds.weight).T, [spring_preloads(t) for t in TRUCKS], rtol=1e-12
    )


@pytest.mark.parametrize("name", ["uniform", "sticking"])
@pytest.mark.parametrize("share", [0.3, 0.7, 1.0])
def test_derivatives_are_exact(name: str, share: float) -> None:
    rng = np.random.default_rng(int(10 * share))
    builds = pack(TRUCKS)
    closure = closure_of(name, builds)
    n, heading, theta = closure.freedoms, np.array([0.3, 2.0]), np.array([0.5, 0.8])
    x = rng.normal(size=(n, 2)) * 0.05
    on = rng.random((20, 2)) < share

    def at(x: Array, theta: Array = theta) -> Balance:
        return balance(builds, heading, x, theta, on, closure)

    exact = at(x)
    scale = np.abs(exact.stiffness).max()
    stiffness = -difference(lambda moved: at(moved).load, x)
    np.testing.assert_allclose(exact.stiffness, stiffness, atol=1e-8 * scale)
    tilted = (at(x, theta + 1e-6).load - at(x, theta - 1e-6).load) / 2e-6
    np.testing.assert_allclose(exact.slope, tilted, atol=1e-7)
    for gap in range(20):
        slopes = gap_slopes(builds, exact, np.array([gap, gap]))
        wanted = difference(lambda moved, g=gap: at(moved).gaps[g : g + 1], x)[0]
        np.testing.assert_allclose(slopes[:-1], wanted, atol=1e-7 * scale)


def test_constraints_keep_their_derivatives_and_their_sign() -> None:
    builds = pack(TRUCKS)
    x = np.random.default_rng(4).normal(size=(7, 2)) * 0.03
    theta, heading = np.array([0.4, 0.6]), np.array([1.0, 3.0])
    for changed in (lock(builds), rise_only(builds)):

        def at(x: Array, b: Builds = changed) -> Balance:
            return balance(b, heading, x, theta, np.ones((20, 2), dtype=bool), Uniform())

        exact = at(x)
        wanted = -difference(lambda moved, at=at: at(moved).load, x)
        np.testing.assert_allclose(exact.stiffness, wanted, atol=1e-6)
        level = balance(changed, heading, np.zeros((7, 2)), np.zeros(2), None, Uniform())
        assert (np.linalg.det(level.stiffness.transpose(2, 0, 1)) > 0).all()


def test_the_whole_weight_is_carried_and_wheels_touch_the_table() -> None:
    builds = pack(TRUCKS)
    x = np.random.default_rng(1).normal(size=(7, 2)) * 0.03
    at = balance(builds, np.zeros(2), x, np.array([0.2, 0.3]), None, Uniform())
    np.testing.assert_array_equal(at.discs.point[2], 0.0)
    held = at.contact.held.sum(axis=(0, 1))
    np.testing.assert_allclose(at.load[0], np.cos([0.2, 0.3]) * (held - 1.0), atol=1e-12)


def test_packing_is_dimensionless() -> None:
    """Twice the masses and stiffnesses give the same arrays, apart from the weight."""
    one = make_truck()
    heavy = make_truck(
        chassis_mass=3.8,
        axle_mass=0.5,
        wheel_mass=0.26,
        tyre_stiffness=12000.0,
        spring_rate=600.0,
    )
    a, b = pack([one]), pack([heavy])
    assert b.weight[0] == pytest.approx(2 * a.weight[0])
    assert a.weight[0] == pytest.approx((1.9 + 0.5 + 0.52) * GRAVITY)
    for name in ("mass", "moment", "tyre_rate", "tyre_load", "spring_rate", "preload"):
        np.testing.assert_allclose(getattr(a, name), getattr(b, name), rtol=1e-12)


def test_locked_suspension_holds_both_joints_of_its_axle() -> None:
    mixed = make_truck()
    front = with_suspension(mixed, locked=True).front
    builds = pack([replace(mixed, front=front)])
    assert builds.held[:, 0].tolist() == [True, True, False, False]
    assert not rise_only(builds).tied[0]
    assert rise_only(builds).held[:, 0].tolist() == [True, True, False, True]
