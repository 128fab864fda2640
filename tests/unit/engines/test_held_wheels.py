"""The force of held wheels on the table, against the equations written out with arrays."""

from __future__ import annotations

import math

import numpy as np
import pytest
from scipy.spatial.transform import Rotation

from crossfall.engines.axle_forces import slip
from crossfall.engines.held_wheels import HeldWheels
from crossfall.truck.model import GRAVITY
from crossfall.truck.ride import tyre_loads
from support import make_truck, with_tyres

LEVEL = np.array([0.0, 0.0, -GRAVITY])
STILL = 0.0  # damping: these poses are not movements
UP = np.array([0.0, 0.0, 1.0])


def front(damping=STILL, friction=math.inf, **changes):
    """The front axle of a lopsided truck, what stands on it, and its frame's place."""
    truck = with_tyres(make_truck(chassis_cg=(0.0, 0.01, 0.1)), **changes)
    loads = tyre_loads(truck).tolist()
    held = HeldWheels(truck, loads, damping, 1 / 240)
    held.grip([friction] * 4)
    return held, truck.front, loads[:2], np.array([truck.front.x, 0.0, 0.075])


def discs(held):
    """The front wheels' patches."""
    return [p for p in held.patches.view(np.recarray) if p.wheel < 2]


def borne(held):
    return [told[0] for told in held.told()[:2]]


def slipped(held):
    return [told[1] for told in held.told()]


def given(held):
    return [told[2:] for told in held.told()[:2]]


def by(x, y, z):
    return np.array([x, y, z])


def press(held, place, turn, gravity=LEVEL):
    turn = turn.as_matrix().ravel().tolist()
    force, moment = held.press(
        0, tuple(map(float, place)), turn, (0.0,) * 3, tuple(map(float, gravity))
    )
    return np.array(force), np.array(moment)


def written_out(axle, loads, place, turn, gravity, anchors):
    """Force and moment about the table's origin: F = A (F0 z + K d) - m g, all sticking."""
    a, tyre = turn.as_matrix(), axle.tyre
    e = a[:, 1]
    rates = np.diag([tyre.longitudinal, tyre.lateral, tyre.stiffness])
    low = -tyre.radius * (UP - e[2] * e) / math.sqrt(1 - e[2] ** 2)
    force, moment = np.zeros(3), np.zeros(3)
    for side in (0, 1):
        mass = axle.wheels[side].mass
        hub = np.array([0.0, (0.5 - side) * axle.track, tyre.radius - 0.075])
        d = a.T @ (anchors[side] - (place + a @ hub) - low)
        spring = np.array([0.0, 0.0, loads[side] - mass * GRAVITY]) + rates @ d
        ground = a @ spring - mass * gravity
        force += ground
        moment += np.cross(anchors[side], ground) + np.cross(a @ d, mass * gravity)
    return force, moment


def test_at_ride_height_it_carries_the_load():
    held, _, loads, place = front()
    force, _ = press(held, place, Rotation.identity())
    np.testing.assert_allclose(force, [0, 0, sum(loads)], atol=1e-12)
    np.testing.assert_allclose(borne(held), loads)


@pytest.mark.parametrize("seed", range(5))
def test_sticking_wheels_press_as_written(seed):
    rng = np.random.default_rng(seed)
    held, axle, loads, place = front(lateral=3000.0, longitudinal=5000.0)
    roll, yaw = rng.normal(0.0, 0.01, 2)
    turn = Rotation.from_euler("ZX", [yaw, roll])  # no pitch: nothing rolls
    place = place + rng.normal(0.0, 3e-4, 3) - by(0, 0, 1e-3)
    gravity = GRAVITY * np.array([0.3, -0.4, -math.sqrt(0.75)])
    anchors = [np.array([axle.x, (0.5 - s) * axle.track, 0.0]) for s in (0, 1)]
    want = written_out(axle, loads, place, turn, gravity, anchors)
    have = press(held, place, turn, gravity)
    np.testing.assert_allclose(have[0], want[0], rtol=1e-6, atol=1e-6)
    np.testing.assert_allclose(have[1], want[1], rtol=1e-6, atol=1e-6)


def test_a_disc_that_pitches_with_its_axle_rolls_along():
    held, axle, *_ = front(friction=0.01)
    yaw = Rotation.from_euler("z", 0.4)
    middle = np.array([axle.x, 0.0, 0.0])
    radius, arm = axle.tyre.radius, axle.tyre.radius - 0.075
    # Yawed in one go, it slips; what follows only rolls.
    for _ in range(50):
        press(held, middle + by(0, 0, 0.075), yaw)
    start, slips = [(p.x, p.y) for p in discs(held)], slipped(held)
    held.grip([math.inf] * 4)
    gives = given(held)
    for angle in np.linspace(0.0, 0.1, 101)[1:]:
        turn = yaw * Rotation.from_euler("y", angle)
        ahead = yaw.apply([radius * angle, 0.0, 0.0])
        press(held, middle + ahead + by(0, 0, radius) - turn.apply([0, 0, arm]), turn)
    way = np.array([(p.x, p.y) for p in discs(held)]) - start
    np.testing.assert_allclose(way, np.tile(yaw.apply([0.1 * radius, 0, 0])[:2], (2, 1)), atol=1e-9)
    assert slipped(held) == slips
    for now, before in zip(given(held), gives, strict=True):
        # Rolling gives nothing more way; the axle has turned under what there was.
        assert np.linalg.norm(now) == pytest.approx(np.linalg.norm(before), abs=1e-9)


def test_it_slips_against_friction_back_to_its_limit():
    held, axle, _, place = front(friction=0.6)
    aside = np.array([0.001, 0.004, 0.0])
    force, _ = press(held, place + aside, Rotation.identity())
    for patch in discs(held):
        moved = np.array([patch.x - axle.x, patch.y - patch.across])
        np.testing.assert_allclose(moved, patch.slip)
        assert moved @ aside[:2] > 0.0  # dragged along
    along, across = force[:2]
    assert math.hypot(along, across) == pytest.approx(0.6 * force[2])
    assert math.atan2(across, along) == pytest.approx(math.atan2(-0.004, -0.001), abs=0.02)
    # Nothing more happens while it stays there.
    again, _ = press(held, place + aside, Rotation.identity())
    np.testing.assert_allclose(again, force, rtol=1e-9)


def test_a_wheel_against_a_rail_never_slips():
    held, _, _, place = front(friction=math.inf)
    force, _ = press(held, place + by(0.0, 0.01, 0.0), Rotation.identity())
    assert abs(force[1]) > 5 * force[2]
    assert slipped(held) == [0.0] * 4


def test_a_lifted_wheel_hangs_and_is_anchored_anew_where_it_comes_down():
    held, axle, _, place = front(friction=5.0)
    gravity = GRAVITY * np.array([0.0, -0.5, -math.sqrt(0.75)])
    force, _ = press(held, place + by(0, 0, 0.01), Rotation.identity(), gravity)
    np.testing.assert_array_equal(force, 0.0)
    assert not any(p.on for p in discs(held))
    tyre, mass = axle.tyre, axle.wheels[0].mass
    hanging = mass * gravity / [tyre.longitudinal, tyre.lateral, tyre.stiffness]
    loads = [p.spring for p in discs(held)]
    for give, spring in zip(given(held), loads, strict=True):
        np.testing.assert_allclose(give, hanging - by(0, 0, spring / tyre.stiffness))
    there = place + by(0.05, 0.02, -1e-4)
    press(held, there, Rotation.identity(), gravity)
    force, _ = press(held, there, Rotation.identity(), gravity)
    assert all(p.on for p in discs(held))
    assert discs(held)[0].x == pytest.approx(there[0] + hanging[0])
    np.testing.assert_allclose(force[:2], 0.0, atol=1e-9)
    assert force[2] > 0.0


def test_two_discs_share_a_load_and_resist_turning():
    one, *_, place = front()
    two, axle, *_ = front(contact_half_width=0.012)
    lean = Rotation.from_euler("x", 0.01)
    # About the axle's middle on the ground: all that is left is what each wheel itself resists.
    below = place - [place[0], 0, 0]
    at = np.array([place[0], 0, 0]) + lean.apply(below)
    _, single = press(one, at, lean)
    _, double = press(two, at, lean)
    np.testing.assert_allclose(sum(borne(one)), sum(borne(two)), rtol=1e-4)
    stiffness = 2 * axle.tyre.stiffness * 0.012**2  # two wheels, k w^2 each
    assert single[0] - double[0] == pytest.approx(stiffness * 0.01, rel=0.02)
    assert len(discs(two)) == 4


def test_damping_only_settles():
    held, _, loads, place = front(damping=0.3)
    dip = place - by(0, 0, 1e-4)
    first, _ = press(held, dip, Rotation.identity())
    rest, _ = press(held, dip, Rotation.identity())
    assert first[2] > rest[2] > sum(loads)
    np.testing.assert_allclose(press(held, dip, Rotation.identity())[0], rest)


def test_the_damper_never_pulls():
    held, _, _, place = front(damping=3.0)
    force, _ = press(held, place + by(0, 0, 4e-4), Rotation.identity())
    assert force[2] == 0.0
    force, _ = press(held, place + by(0, 0, 4e-4), Rotation.identity())
    assert force[2] > 0.0


def test_going_back_gives_the_same_again():
    held, _, _, place = front(friction=0.5)
    hold = held.save()
    turn = Rotation.from_euler("xyz", [0.02, 0.01, 0.03])
    one = press(held, place + by(0, 0.004, 0), turn)
    press(held, place + by(0, 0, 0.02), turn)
    held.restore(hold)
    two = press(held, place + by(0, 0.004, 0), turn)
    np.testing.assert_array_equal(one, two)


def stance(matrix):
    return (matrix[0, 0], matrix[0, 1], matrix[0, 2], matrix[1, 1], matrix[1, 2], matrix[2, 2])


@pytest.mark.parametrize("seed", range(20))
def test_slipping_ends_at_the_limit(seed):
    rng = np.random.default_rng(seed)
    turn = Rotation.from_rotvec(rng.normal(0.0, 0.15, 3)).as_matrix()
    stiff = turn @ np.diag(rng.uniform(2000.0, 6000.0, 3)) @ turn.T
    friction, normal = rng.uniform(0.3, 1.5), rng.uniform(1.0, 10.0)
    angle, excess = rng.uniform(0.0, math.tau), rng.uniform(1.01, 1.5)
    t = np.array([math.cos(angle), math.sin(angle), 0.0])
    force = friction * normal * excess * t + normal * UP
    way = np.array([*slip(friction, tuple(force), stance(stiff)), 0.0])
    after = force + stiff @ way
    assert math.hypot(after[0], after[1]) == pytest.approx(friction * after[2])
    assert way @ force < 0.0
    np.testing.assert_allclose(np.cross(way, t), 0.0, atol=1e-12)


def test_where_slipping_takes_the_load_away_it_slips_until_nothing_pulls():
    turn = Rotation.from_euler("x", -0.6).as_matrix()
    stiff = turn @ np.diag([1500.0, 1500.0, 6000.0]) @ turn.T
    force = np.array([0.0, 11.0, 2.0])
    way = np.array([*slip(5.0, tuple(force), stance(stiff)), 0.0])
    after = force + stiff @ way
    assert after[2] <= 0.0 or math.hypot(*after[:2]) <= 5.0 * after[2] + 1e-9
