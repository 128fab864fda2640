"""Poses and loads on the way to the tip."""

from __future__ import annotations

import numpy as np

from crossfall.statics.compliant import tips
from crossfall.statics.compliant_path import equilibrium_path
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY
from crossfall.truck.ride import tyre_loads
from support import make_truck

THETAS = np.radians(np.linspace(0.0, 62.0, 32))


def test_it_starts_level_and_ends_at_the_tip() -> None:
    for heading in np.radians([0.0, 90.0, 137.0]):
        truck = make_truck()
        found = equilibrium_path(truck, heading, THETAS)
        assert found.tip == tips(truck, heading).tip[0]
        np.testing.assert_allclose(found.load[0], tyre_loads(truck), rtol=1e-9)
        np.testing.assert_allclose(found.position[0], 0.0, atol=1e-12)
        np.testing.assert_allclose(found.turn[0], np.broadcast_to(np.eye(3), (3, 3, 3)), atol=1e-12)
        stands = found.tip >= THETAS
        for values in (found.position, found.turn, found.give, found.heave, found.load):
            flat = values.reshape(len(THETAS), -1)
            assert np.isfinite(flat[stands]).all()
            assert np.isnan(flat[~stands]).all()


def test_loads_carry_the_weight_and_wheels_touch() -> None:
    truck = make_truck()
    found = equilibrium_path(truck, np.radians(137.0), THETAS)
    stands = found.tip >= THETAS
    weight = whole(truck).mass * GRAVITY * np.cos(THETAS[stands])
    np.testing.assert_allclose(found.load[stands].sum(axis=1), weight, rtol=1e-8)
    assert (found.load[stands] >= 0).all()
    for w in range(4):
        i, side = w // 2, 1 - 2 * (w % 2)
        axle = truck.axles[i]
        hub = np.array([axle.x, side * axle.track / 2, axle.tyre.radius])
        turn, shift = found.turn[stands, i], found.position[stands, i]
        centre = turn @ hub + shift + np.einsum("nij,nj->ni", turn, found.give[stands, w])
        low = centre[:, 2] - axle.tyre.radius * np.sqrt(1 - turn[:, 2, 1] ** 2)
        loaded = found.load[stands, w] > 1e-9
        np.testing.assert_allclose(low[loaded], 0.0, atol=1e-10)
        assert (low[~loaded] > 0).all()


def test_order_and_company_do_not_matter() -> None:
    truck, heading = make_truck(), np.radians(200.0)
    forward, backward = (
        equilibrium_path(truck, heading, THETAS),
        equilibrium_path(truck, heading, THETAS[::-1]),
    )
    np.testing.assert_allclose(forward.load, backward.load[::-1], atol=1e-9)
    alone = equilibrium_path(truck, heading, THETAS[7:8])
    np.testing.assert_allclose(alone.position[0], forward.position[7], atol=1e-10)


def test_the_body_jumps_up_where_the_springs_go_slack() -> None:
    truck = make_truck(chassis_cg=(-0.01, 0.0, 0.1))
    snap = float(tips(truck, np.pi).first_snap[0])
    found = equilibrium_path(truck, np.pi, snap + np.array([-1e-3, 1e-3]))
    rise = np.diff(found.position[:, 2, 2])[0]
    assert rise > 0.002
