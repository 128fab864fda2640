"""The equations themselves: level equilibrium, exact derivatives, constraints."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import fields, replace

import numpy as np
import pytest

from crossfall.statics import balance as balance_file
from crossfall.statics.balance import Balance, balance, balances, picture, standing_patches
from crossfall.statics.builds import Builds, Ints, locked_builds, rise_only, stacked, with_rows
from crossfall.statics.case import CORNER_GAPS, FREEDOMS
from crossfall.statics.tyres import Patches
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
    return standing_patches(builds, np.array(grip))


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
    at = picture(builds, np.array([0.3, 2.0]), np.zeros((N, 2)), np.zeros(2), None, patches)
    np.testing.assert_allclose(at.load, 0.0, atol=1e-13)
    loads = at.force.reshape(3, 4, 2, 2).sum(axis=2) * builds.weight
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
    gaps = 16 + CORNER_GAPS
    on = rng.random((gaps, 2)) < share
    on[8 + CORNER_GAPS :] = False  # tyres may stick or slip
    seen = balance(builds, heading, x, theta, on, patches).history
    way = Patches(patches.friction, seen).way[:, 0]
    turn = np.array([[0.8, -0.6], [0.6, 0.8]])
    patches.way[:, 0] = np.einsum("ij,j...->i...", turn, way)  # the front ones slipped before

    def at(x: Array, theta: Array = theta, gap: Ints | None = None) -> Balance:
        return balance(builds, heading, x, theta, on, patches, gap)

    exact = at(x)
    slipping = (Patches(patches.friction, exact.history).way != 0).any(axis=0)
    assert slipping.any() == (grip == SLIPS)
    scale = np.abs(exact.stiffness).max()
    stiffness = -difference(lambda moved: at(moved).load, x).transpose(2, 0, 1)
    np.testing.assert_allclose(exact.stiffness, stiffness, atol=1e-8 * scale)
    tilted = (at(x, theta + 1e-6).load - at(x, theta - 1e-6).load) / 2e-6
    np.testing.assert_allclose(exact.slope.T, tilted, atol=1e-7)
    for gap in range(gaps):
        slopes = at(x, gap=np.array([gap, gap])).rates[:, -1].T
        wanted = difference(lambda moved, g=gap: at(moved).gaps[g : g + 1], x)[0]
        if gap >= 8 + CORNER_GAPS:  # of tyres that slip already it is not asked
            wanted[:, slipping.reshape(8, 2)[gap - 8 - CORNER_GAPS]] = np.nan
            slopes[:-1][np.isnan(wanted)] = np.nan
        close = 1e-6 if gap >= 8 + CORNER_GAPS else 1e-7  # a small pull's size bends on the way
        np.testing.assert_allclose(slopes[:-1], wanted, atol=close * scale)


@pytest.mark.parametrize("frozen", [False, True])
@pytest.mark.parametrize("trucks", [TRUCKS, LINKED, BY_MOTOR, TWO_SPRINGS])
def test_what_is_compiled_is_what_is_written(
    trucks: tuple[Truck, Truck], frozen: bool, monkeypatch: pytest.MonkeyPatch
) -> None:
    """The same file as plain Python, on open differentials where there are shafts."""
    rng = np.random.default_rng(3)
    builds = stacked(trucks)
    if trucks is BY_MOTOR:
        builds = with_rows(builds, open=np.ones((2, 2)))
    patches, x = on_the_ground(builds, SLIPS), rng.normal(size=(N, 2)) * 0.01
    x[2] -= 0.02
    on = rng.random((16 + CORNER_GAPS, 2)) < 0.7 if frozen else None
    asked = builds, np.array([0.3, 2.0]), x, np.array([0.5, 0.8]), on, patches

    def told() -> list[Array]:
        drawn = picture(*asked)
        rates = [balance(*asked, np.array([gap, 25])).rates for gap in (1, 12, 30)]
        return [getattr(drawn, f.name) for f in fields(drawn)] + rates

    compiled = told()
    monkeypatch.setattr(balance_file, "entry", {balances: balances}.__getitem__)
    for one, other in zip(compiled, told(), strict=True):
        np.testing.assert_allclose(one, other, rtol=1e-9, atol=1e-12)


def test_constraints_keep_their_derivatives_and_their_sign() -> None:
    builds = stacked(TRUCKS)
    x = np.random.default_rng(4).normal(size=(N, 2)) * 0.02
    theta, heading = np.array([0.4, 0.6]), np.array([1.0, 3.0])
    for held in (locked_builds(builds), rise_only(builds)):
        patches = on_the_ground(held, STICKS)

        def at(x: Array, b: Builds = held, patches: Patches = patches) -> Balance:
            return balance(
                b, heading, x, theta, np.ones((16 + CORNER_GAPS, 2), dtype=bool), patches
            )

        exact = at(x)
        scale = np.abs(exact.stiffness).max()
        wanted = -difference(lambda moved, at=at: at(moved).load, x).transpose(2, 0, 1)
        np.testing.assert_allclose(exact.stiffness, wanted, atol=1e-8 * scale)
        level = balance(held, heading, np.zeros((N, 2)), np.zeros(2), None, patches)
        assert (np.linalg.det(level.stiffness) > 0).all()


def test_tyres_touch_the_table_within_their_grip() -> None:
    """Each carries its share of the weight at a point on the table; those that slip pull with
    exactly their grip, against the way they went."""
    builds = stacked(TRUCKS)
    x = np.random.default_rng(1).normal(size=(N, 2)) * 0.02
    for grip in (STICKS, SLIPS):
        patches = on_the_ground(builds, grip)
        at = picture(builds, np.zeros(2), x, np.array([0.2, 0.3]), None, patches)
        on, seen = at.gaps[:8].reshape(2, 4, 2) >= 0, Patches(patches.friction, at.history)
        height = at.point[2] + at.give[2] + x[2]
        assert 0 < on.sum() < on.size
        np.testing.assert_allclose(height[on], 0.0, atol=1e-15)
        assert (height[~on] > 0).all()
        np.testing.assert_array_equal(at.force[:, ~on], 0.0)
        pull, load = np.hypot(*at.force[:2]), at.force[2]
        assert (load[on] > 0).all()
        assert (pull[on] <= grip * load[on] * (1 + 1e-9)).all()
        if grip == SLIPS:
            np.testing.assert_allclose(pull[on], grip * load[on], rtol=1e-9)
            rolled = builds.radius[:, None] * (seen.arc - patches.arc) * patches.ahead
            way = (seen.anchor - patches.anchor - rolled)[:, on]
            across = way[0] * at.force[1][on] - way[1] * at.force[0][on]
            np.testing.assert_allclose(across, 0.0, atol=1e-9)
            assert ((way * at.force[:2, on]).sum(axis=0) < 0).all()
        net = at.force.sum(axis=(1, 2))[2]
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
