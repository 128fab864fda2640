"""The rigid closed form against brute force, finite differences and its own limits."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from crossfall.statics import rigid
from crossfall.truck.build import load_truck
from crossfall.truck.massprops import combine, whole
from crossfall.truck.model import GRAVITY, Truck, frozen
from crossfall.truck.steering import swung
from crossfall.truck.support import downhill_pair
from stability_measures import side_loads, static_stability_factor, tilt_table_ratio
from support import block, make_truck

HEADINGS = np.radians(np.arange(0.0, 360.0, 7.5))


def odd_truck() -> Truck:
    """Unequal tracks, wide contact, CG off the middle every way."""
    return make_truck(
        tracks=(0.150, 0.185), contact_half_width=0.008, chassis_cg=(0.012, 0.006, 0.105)
    )


def loaded(truck: Truck, mass: float, place: tuple[float, float, float]) -> Truck:
    """The truck with a mass more on its chassis."""
    return replace(truck, chassis=combine((truck.chassis, block(mass, place, (0.01,) * 3))))


def shifted(truck: Truck, move: tuple[float, float, float]) -> Truck:
    """The truck with its whole CG moved, by moving the chassis' as much more."""
    share = whole(truck).mass / truck.chassis.mass
    cg = truck.chassis.cg + np.array(move) * share
    return replace(truck, chassis=replace(truck.chassis, cg=frozen(cg)))


def inside(truck: Truck, point: np.ndarray) -> bool:
    """Whether a point of the ground lies within the tip points, by the sign of cross products."""
    ring = rigid.tip_points(truck)[[0, 2, 3, 1]]  # front left, rear left, rear right, front right
    side = np.roll(ring, -1, axis=0) - ring
    out = point - ring
    return bool(np.all(side[:, 0] * out[:, 1] - side[:, 1] * out[:, 0] > 0))


@pytest.mark.parametrize("heading", HEADINGS[::3])
def test_tips_as_gravity_leaves_the_polygon(heading: float) -> None:
    truck = odd_truck()
    low, high = 0.0, np.pi / 2 - 1e-6
    while high - low > 1e-12:
        middle = (low + high) / 2
        if inside(truck, rigid.pressure_point(whole(truck).cg, heading, middle)):
            low = middle
        else:
            high = middle
    assert rigid.tip_angle(truck, heading) == pytest.approx(low, abs=1e-10)


def test_square_cases() -> None:
    truck = make_truck(
        tracks=(0.17, 0.17), contact_half_width=0.005, chassis_cg=(-0.02, 0.004, 0.1)
    )
    x, y, h = whole(truck).cg
    half, b = truck.wheelbase / 2, 0.17 / 2 + 0.005
    expected = np.arctan([(x + half) / h, (b - y) / h, (half - x) / h, (b + y) / h])
    np.testing.assert_allclose(rigid.tip_angle(truck, rigid.QUARTERS), expected, rtol=1e-13)
    assert [rigid.EDGES[i] for i in rigid.tip_edge(truck, rigid.QUARTERS)] == list(rigid.EDGES)


def test_unequal_tracks_are_not_averaged() -> None:
    truck = make_truck(tracks=(0.13, 0.20), chassis_cg=(-0.06, 0.0, 0.11))
    even = make_truck(tracks=(0.165, 0.165), chassis_cg=(-0.06, 0.0, 0.11))
    side = np.pi / 2
    difference = rigid.tip_angle(truck, side) - rigid.tip_angle(even, side)
    x, _, h = whole(truck).cg
    half_there = 0.1 + (0.065 - 0.1) * (x + truck.wheelbase / 2) / truck.wheelbase
    expected = np.arctan(half_there / h) - np.arctan(0.165 / 2 / h)
    assert difference == pytest.approx(expected, abs=1e-12)
    assert np.degrees(difference) > 1.0


def test_normals_point_outward_and_are_units() -> None:
    truck = odd_truck()
    n = rigid.normals(truck)
    np.testing.assert_allclose(np.linalg.norm(n, axis=1), 1.0, rtol=1e-14)
    np.testing.assert_array_less(0.0, rigid.edge_distances(truck, (0.0, 0.0)))
    # Each edge passes through both its corners.
    corners = {0: (2, 3), 1: (0, 2), 2: (0, 1), 3: (1, 3)}
    on = rigid.edge_distances(truck, rigid.tip_points(truck))
    for edge, ends in corners.items():
        np.testing.assert_allclose(on[list(ends), edge], 0.0, atol=1e-15)


def test_many_builds_agree_with_one_truck() -> None:
    rng = np.random.default_rng(5)
    trucks = [
        make_truck(
            tracks=tuple(rng.uniform(0.13, 0.2, 2)),
            chassis_cg=(
                rng.uniform(-0.05, 0.05),
                rng.uniform(-0.02, 0.02),
                rng.uniform(0.06, 0.15),
            ),
            contact_half_width=rng.uniform(0, 0.01),
        )
        for _ in range(40)
    ]
    rows = []
    for t in trucks:
        halves = [rigid.tip_line(a.track, a.tyre.contact_half_width) for a in t.axles]
        rows.append((*halves, t.front.x, t.rear.x, *whole(t).cg))
    many = rigid.rigid_tip_angles(*np.array(rows).T, headings=HEADINGS)
    one = np.array([rigid.tip_angle(t, HEADINGS) for t in trucks])
    np.testing.assert_allclose(many, one, rtol=0, atol=1e-13)


def test_many_builds_on_turned_wheels_are_the_trucks_one_by_one() -> None:
    rng = np.random.default_rng(3)
    rows, one = [], []
    for turn in rng.uniform(-0.7, 0.7, 30):
        plain = make_truck(
            tracks=tuple(rng.uniform(0.13, 0.2, 2)),
            chassis_cg=(rng.uniform(-0.05, 0.05), rng.uniform(-0.02, 0.02), 0.1),
        )
        t = replace(plain, front=replace(plain.front, steered=swung(turn, 0.024)))
        halves = [rigid.tip_line(a.track, a.tyre.contact_half_width) for a in t.axles]
        rows.append((*halves, t.front.x, t.rear.x, *whole(t).cg, *t.front.steered[1]))
        one.append(rigid.tip_angle(t, HEADINGS))
    *columns, back, inwards = np.array(rows).T
    many = rigid.rigid_tip_angles(*columns, headings=HEADINGS, turned=(back, inwards))
    np.testing.assert_allclose(many, one, rtol=0, atol=1e-13)


def test_builds_broadcast_and_chunks_join() -> None:
    n = rigid.CHUNK + 3
    heights = np.linspace(0.08, 0.12, n)
    angles = rigid.rigid_tip_angles(0.085, 0.085, 0.15, -0.15, 0.0, 0.0, heights)
    assert angles.shape == (n, 4)
    np.testing.assert_allclose(angles[:, 1], np.arctan(0.085 / heights), rtol=1e-14)
    np.testing.assert_allclose(angles[:, 0], np.arctan(0.15 / heights), rtol=1e-14)


def test_a_truck_that_cannot_stand_has_no_angle_left() -> None:
    truck = make_truck(chassis_cg=(0.0, 0.16, 0.1), chassis_mass=5.0)
    assert not inside(truck, whole(truck).cg[:2])
    np.testing.assert_array_equal(rigid.tip_angle(truck, HEADINGS), 0.0)
    b = rigid.tip_line(truck.front.track, 0.0)
    row = rigid.rigid_tip_angles(
        b, b, truck.front.x, truck.rear.x, *whole(truck).cg, headings=HEADINGS
    )
    np.testing.assert_array_equal(row, 0.0)


# Loads


@pytest.mark.parametrize("degrees", [0.0, 15.0, 40.0])
def test_loads_balance_force_and_moment(degrees: float) -> None:
    truck = make_truck(chassis_cg=(0.02, 0.005, 0.1))
    body, theta = whole(truck), np.radians(degrees)
    for heading in HEADINGS[::5]:
        d = rigid.downhill(heading)
        ends = rigid.axle_loads(truck, heading, theta)
        sides = side_loads(truck, heading, theta)
        weight = body.mass * GRAVITY
        assert ends.sum() == pytest.approx(weight * np.cos(theta))
        assert sides.sum() == pytest.approx(weight * np.cos(theta))
        # Moments about the CG: loads at their places, friction (weight's share) at the ground.
        pitch = ends @ [a.x - body.cg[0] for a in truck.axles]
        roll = sides @ (np.array([1, -1]) * truck.front.track / 2 - body.cg[1])
        friction = weight * np.sin(theta) * body.cg[2] * d
        np.testing.assert_allclose([pitch, roll], friction, atol=1e-12)


def test_uphill_load_is_gone_at_the_tip() -> None:
    truck = make_truck(chassis_cg=(-0.03, 0.005, 0.11))
    climb, side, descent, other = rigid.tip_angle(truck, rigid.QUARTERS)
    assert rigid.axle_loads(truck, 0.0, climb)[0] == pytest.approx(0.0, abs=1e-12)
    assert rigid.axle_loads(truck, np.pi, descent)[1] == pytest.approx(0.0, abs=1e-12)
    assert side_loads(truck, np.pi / 2, side)[1] == pytest.approx(0.0, abs=1e-12)
    assert side_loads(truck, 3 * np.pi / 2, other)[0] == pytest.approx(0.0, abs=1e-12)


def test_side_loads_need_like_axles() -> None:
    with pytest.raises(ValueError, match="indeterminate"):
        side_loads(odd_truck(), 0.0, 0.1)


# What a change does


@pytest.mark.parametrize("heading", HEADINGS[1::4])
def test_derivatives_are_those_of_the_angle(heading: float) -> None:
    truck = odd_truck()
    step = 1e-6
    place = (0.13, -0.05, 0.03)
    up, down = (rigid.tip_angle(loaded(truck, s * step, place), heading) for s in (1, -1))
    slope = rigid.mass_derivative(truck, heading, place)
    assert slope == pytest.approx((up - down) / (2 * step), abs=1e-6)

    gradient = rigid.cg_gradient(truck, heading)
    for axis in range(3):
        move = tuple(step * (i == axis) for i in range(3))
        back = tuple(-m for m in move)
        up, down = (rigid.tip_angle(shifted(truck, m), heading) for m in (move, back))
        assert gradient[axis] == pytest.approx((up - down) / (2 * step), abs=1e-6)

    mass = 0.2
    moved = (place[0] + step, place[1], place[2])
    before, after = (rigid.tip_angle(loaded(truck, mass, at), heading) for at in (place, moved))
    slope = rigid.move_derivative(loaded(truck, mass, place), heading, mass)[0]
    assert slope == pytest.approx((after - before) / step, abs=1e-5)


def test_textbook_form_of_the_mass_derivative() -> None:
    """Square to an edge it is (a_i h - z_i a) / (M (a^2 + h^2))."""
    truck = make_truck()
    body = whole(truck)
    place = np.array([0.1, 0.0, 0.02])
    a, a_i = body.cg[0] - truck.rear.x, place[0] - truck.rear.x
    h, z_i = body.cg[2], place[2]
    expected = (a_i * h - z_i * a) / (body.mass * (a**2 + h**2))
    assert rigid.mass_derivative(truck, 0.0, place) == pytest.approx(expected, rel=1e-12)


def test_wedge_lines_part_what_helps_from_what_hurts() -> None:
    truck = odd_truck()
    x, y, _ = whole(truck).cg
    for heading, (foot, cg) in zip(rigid.QUARTERS, rigid.wedge_lines(truck), strict=True):
        for along in (0.2, 0.7, 1.5):
            s, z = foot + along * (cg - foot)
            in_side_view = heading in (rigid.QUARTERS[0], rigid.QUARTERS[2])
            at = (s, y) if in_side_view else (x, s)
            below, above = ((*at, z - 0.003), (*at, z + 0.003))
            assert rigid.mass_derivative(truck, heading, (*at, z)) == pytest.approx(0.0, abs=1e-12)
            assert rigid.mass_derivative(truck, heading, below) > 0
            assert rigid.mass_derivative(truck, heading, above) < 0


def test_only_the_wedge_under_both_lines_helps_both_ends() -> None:
    """A gram low on the front axle helps the climb and costs the descent."""
    truck = make_truck()
    front_low = (truck.front.x, 0.0, 0.03)
    middle_low = (0.0, 0.0, 0.03)
    climb, descent = 0.0, np.pi
    assert rigid.mass_derivative(truck, climb, front_low) > 0
    assert rigid.mass_derivative(truck, descent, front_low) < 0
    assert rigid.mass_derivative(truck, climb, middle_low) > 0
    assert rigid.mass_derivative(truck, descent, middle_low) > 0


# Measures read from a tip


@pytest.mark.parametrize("heading", HEADINGS[::6])
def test_cg_height_from_a_tip_angle(heading: float) -> None:
    truck = odd_truck()
    theta = float(rigid.tip_angle(truck, heading))
    flat = shifted(truck, (0.0, 0.0, 0.02))  # its own height must not matter
    assert rigid.cg_height(flat, heading, theta) == pytest.approx(whole(truck).cg[2], rel=1e-12)


def test_stability_factor_is_the_tilt_table_ratio_of_a_rigid_truck() -> None:
    truck = make_truck()
    side = rigid.tip_angle(truck, np.pi / 2)
    factor = static_stability_factor(truck.front.track, float(whole(truck).cg[2]))
    assert tilt_table_ratio(side) == pytest.approx(factor, rel=1e-12)


@pytest.mark.parametrize("name", ["bramble", "burdock", "thistle"])
def test_the_rail_is_under_the_edge_it_tips_over(name):
    """Near corners the two once named different tyres, one with their width and one without."""
    truck = load_truck(name).truck
    headings = np.radians(np.arange(0.0, 360.0, 0.25))
    wheels = {"left": (0, 2), "right": (1, 3), "front": (0, 1), "rear": (2, 3)}
    edges = [wheels[rigid.EDGES[i]] for i in rigid.tip_edge(truck, headings)]
    assert [downhill_pair(truck, float(h)) for h in headings] == edges
