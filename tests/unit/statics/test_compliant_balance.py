"""The equations themselves: level equilibrium, exact derivatives, constraints."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from crossfall.statics.balance import Balance, balance, gap_slopes
from crossfall.statics.builds import Builds, locked_builds, rise_only, stacked
from crossfall.statics.kinematics import FREEDOMS, frames_at
from crossfall.statics.tyres import Patches, standing_patches
from crossfall.truck.model import GRAVITY, Array, Truck
from crossfall.truck.ride import spring_preloads, tyre_loads
from linkages import leaning_shocks, linked
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


def on_two_springs(truck: Truck) -> Truck:
    front = replace(truck.front.suspension, soft_rate=200.0, soft_travel=0.008)
    return replace(truck, front=replace(truck.front, suspension=front))


TRUCKS = (make_truck(), odd_truck())
LINKED = (
    linked(odd_truck(), "three links and a track bar", "wishbone"),
    linked(odd_truck(), "a bent truck", "four links", leaning_shocks()),
)


BY_MOTOR = tuple(
    replace(t, front=replace(t.front, shaft=-0.35), rear=replace(t.rear, shaft=0.3))
    for t in (odd_truck(), LINKED[0])
)


TWO_SPRINGS = (odd_truck(), on_two_springs(LINKED[1]))


N = len(FREEDOMS)
STICKS, SLIPS = np.inf, 0.15  # grips at which every tyre does


def on_the_ground(builds: Builds, grip: float) -> Patches:
    level = frames_at(builds, np.zeros((N, len(builds))))
    return standing_patches(builds, level, np.full((2, 4, len(builds)), grip))


def difference(at: Callable[[Array], Array], x: Array, step: float = 1e-6) -> Array:
    """Central differences, one unknown after the other, along a new second axis."""
    columns = []
    for row in range(len(x)):
        move = np.zeros_like(x)
        move[row] = step
        columns.append((at(x + move) - at(x - move)) / (2 * step))
    return np.stack(columns, axis=1)


@pytest.mark.parametrize("trucks", [TRUCKS, LINKED])
def test_level_at_ride_height_is_an_exact_equilibrium(trucks: tuple[Truck, Truck]) -> None:
    builds = stacked(trucks)
    patches = on_the_ground(builds, SLIPS)
    at = balance(builds, np.array([0.3, 2.0]), np.zeros((N, 2)), np.zeros(2), None, patches)
    np.testing.assert_allclose(at.load, 0.0, atol=1e-13)
    loads = at.contact.force.reshape(3, 4, 2, 2).sum(axis=2) * builds.weight
    np.testing.assert_allclose(loads[2].T, [tyre_loads(t) for t in trucks], rtol=1e-12)
    np.testing.assert_allclose(loads[:2], 0.0, atol=1e-12)
    np.testing.assert_allclose(
        (at.gaps[8:12] * builds.weight).T, [spring_preloads(t) for t in trucks], rtol=1e-12
    )


@pytest.mark.parametrize("grip", [STICKS, SLIPS])
@pytest.mark.parametrize("share", [0.3, 0.7, 1.0])
@pytest.mark.parametrize("trucks", [TRUCKS, LINKED, BY_MOTOR, TWO_SPRINGS])
def test_derivatives_are_exact(trucks: tuple[Truck, Truck], share: float, grip: float) -> None:
    rng = np.random.default_rng(int(10 * share))
    builds = stacked(trucks)
    patches = on_the_ground(builds, grip)
    heading, theta = np.array([0.3, 2.0]), np.array([0.5, 0.8])
    x = rng.normal(size=(N, 2)) * 0.01
    x[2] -= 0.02  # down, so that tyres that touch are loaded
    gaps = 8 + builds.corner_gaps
    on = rng.random((gaps, 2)) < share
    way = balance(builds, heading, x, theta, on, patches).contact.way[:, 0]
    turn = np.array([[0.8, -0.6], [0.6, 0.8]])
    patches.way[:, 0] = np.einsum("ij,j...->i...", turn, way)  # the front ones slipped before

    def at(x: Array, theta: Array = theta) -> Balance:
        return balance(builds, heading, x, theta, on, patches)

    exact = at(x)
    slipping = (exact.contact.way != 0).any(axis=0)
    assert slipping.any() == (grip == SLIPS)
    scale = np.abs(exact.stiffness).max()
    stiffness = -difference(lambda moved: at(moved).load, x)
    np.testing.assert_allclose(exact.stiffness, stiffness, atol=1e-8 * scale)
    tilted = (at(x, theta + 1e-6).load - at(x, theta - 1e-6).load) / 2e-6
    np.testing.assert_allclose(exact.slope, tilted, atol=1e-7)
    for gap in range(gaps):
        slopes = gap_slopes(builds, exact, np.array([gap, gap]))
        wanted = difference(lambda moved, g=gap: at(moved).gaps[g : g + 1], x)[0]
        np.testing.assert_allclose(slopes[:-1], wanted, atol=1e-7 * scale)


def test_constraints_keep_their_derivatives_and_their_sign() -> None:
    builds = stacked(TRUCKS)
    x = np.random.default_rng(4).normal(size=(N, 2)) * 0.02
    theta, heading = np.array([0.4, 0.6]), np.array([1.0, 3.0])
    for changed in (locked_builds(builds), rise_only(builds)):
        patches = on_the_ground(changed, STICKS)

        def at(x: Array, b: Builds = changed, patches: Patches = patches) -> Balance:
            return balance(b, heading, x, theta, np.ones((20, 2), dtype=bool), patches)

        exact = at(x)
        scale = np.abs(exact.stiffness).max()
        wanted = -difference(lambda moved, at=at: at(moved).load, x)
        np.testing.assert_allclose(exact.stiffness, wanted, atol=1e-8 * scale)
        level = balance(changed, heading, np.zeros((N, 2)), np.zeros(2), None, patches)
        assert (np.linalg.det(level.stiffness.transpose(2, 0, 1)) > 0).all()


def test_tyres_touch_the_table_within_their_grip() -> None:
    """Each carries its share of the weight at a point on the table; those that slip pull with
    exactly their grip, against the way they went."""
    builds = stacked(TRUCKS)
    x = np.random.default_rng(1).normal(size=(N, 2)) * 0.02
    for grip in (STICKS, SLIPS):
        patches = on_the_ground(builds, grip)
        at = balance(builds, np.zeros(2), x, np.array([0.2, 0.3]), None, patches)
        on, contact = at.gaps[:8].reshape(2, 4, 2) >= 0, at.contact
        assert 0 < on.sum() < on.size
        np.testing.assert_allclose(contact.point[2][on], 0.0, atol=1e-15)
        assert (contact.point[2][~on] > 0).all()
        np.testing.assert_array_equal(contact.force[:, ~on], 0.0)
        pull, load = np.hypot(*contact.force[:2]), contact.force[2]
        assert (load[on] > 0).all()
        assert (pull[on] <= grip * load[on] * (1 + 1e-9)).all()
        if grip == SLIPS:
            np.testing.assert_allclose(pull[on], grip * load[on], rtol=1e-9)
            rolled = builds.radius * (at.discs.arc - patches.arc) * patches.ahead
            way = (contact.point[:2] - patches.anchor - rolled)[:, on]
            across = way[0] * contact.force[1][on] - way[1] * contact.force[0][on]
            np.testing.assert_allclose(across, 0.0, atol=1e-9)
            assert ((way * contact.force[:2, on]).sum(axis=0) < 0).all()
        net = at.contact.force.sum(axis=(1, 2))[2]
        np.testing.assert_allclose(at.load[2], net - np.cos([0.2, 0.3]), atol=1e-12)


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
    a, b = stacked([one]), stacked([heavy])
    assert b.weight[0] == pytest.approx(2 * a.weight[0])
    assert a.weight[0] == pytest.approx((1.9 + 0.5 + 0.52) * GRAVITY)
    for name in ("mass", "moment", "tyre_rate", "tyre_load", "spring_rate", "preload"):
        np.testing.assert_allclose(getattr(a, name), getattr(b, name), rtol=1e-12)


def test_locked_suspension_holds_both_joints_of_its_axle() -> None:
    mixed = make_truck()
    front = with_suspension(mixed, locked=True).front
    builds = stacked([replace(mixed, front=front)])
    assert builds.held[:, 0].tolist() == [True, True, False, False]
    assert not rise_only(builds).tied[0]
    assert rise_only(builds).held[:, 0].tolist() == [True, True, False, True]
