"""Axle poses, instant centres and roll centres against another engine's closed loops."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from mujoco_links import AxleBench

from crossfall.truck.axle_law import BY_Q, BY_QQ, LEFT, PITCH, VALUE, YAW, X, Y, law_of
from crossfall.truck.linkage import geometry, linkage_poses
from crossfall.truck.model import Array, Axle, Body, Links, Suspension, Tyre, frozen
from crossfall.truck.spring_law import spring_law
from linkages import AXLE_X, FRONT, RADIUS, leaning_shocks, links

NOTHING = Body(0.0, frozen(np.zeros(3)), frozen(np.zeros((3, 3))))
CORNERS = (-0.98, -0.5, 0.0, 0.5, 0.98)
MM, DEG = 1e-5, np.radians(0.01)  # 0.01 mm and 0.01 deg


def axle_on(own: Links) -> Axle:
    suspension = Suspension(300.0, own.spacing, 8.0, 0.08, own.bump, own.droop, links=own)
    tyre = Tyre(RADIUS / 1e3, 0.04, 0.0, 5000.0, 3000.0, 3000.0)
    return Axle(AXLE_X / 1e3, 0.176, tyre, suspension, NOTHING, (NOTHING, NOTHING))


def poses(own: Links) -> Array:
    """(n, 6) the other engine's, over the whole travel of both corners."""
    bench, middle = AxleBench(own), (own.bump - own.droop) / 2
    half, found = (own.bump + own.droop) / 2, []
    for i, a in enumerate(CORNERS):
        for b in CORNERS[:: 1 if i % 2 else -1]:
            left, right = middle + half * a, middle + half * b
            found.append(bench.pull((left + right) / 2, (left - right) / own.spacing))
    assert bench.open() < 1e-7
    return np.array(found)


@pytest.mark.parametrize("name", FRONT)
def test_the_axle_goes_where_rods_with_ball_ends_let_it_go(name: str) -> None:
    own = links(name)
    seen = poses(own)
    heave, roll = seen[:, 2], seen[:, 5]
    assert np.ptp(heave) > 0.8 * (own.bump + own.droop)
    assert np.ptp(roll) > 1.6 * (own.bump + own.droop) / own.spacing
    many = (len(seen), 4, 3)
    exact = linkage_poses(
        np.broadcast_to(own.chassis, many), np.broadcast_to(own.axle, many), heave, roll
    )
    law = law_of(axle_on(own)).at(heave, roll)[:, VALUE]
    for x, y, yaw, pitch in (
        (*exact.place[:, :2].T, exact.yaw, exact.pitch),
        (law[X], law[Y], law[YAW], law[PITCH]),
    ):
        assert np.abs(x - seen[:, 0]).max() < MM
        assert np.abs(y - seen[:, 1]).max() < MM
        assert np.abs(yaw - seen[:, 3]).max() < DEG
        assert np.abs(pitch - seen[:, 4]).max() < DEG


@pytest.mark.parametrize("name", FRONT)
def test_centres_and_steer_are_those_of_small_movements_in_the_other_engine(name: str) -> None:
    own = links(name)
    bench, step = AxleBench(own), 2e-4
    up, down = bench.pull(step, 0.0), bench.pull(-step, 0.0)
    by_heave = (up - down) / (up[2] - down[2])
    assert abs(up[5] - down[5]) < 1e-3 * (up[2] - down[2]) / own.spacing  # it hardly rolled
    turn = step / own.spacing
    left, right = bench.pull(0.0, turn), bench.pull(0.0, -turn)
    by_roll = (left - right) / (left[5] - right[5])
    by_roll -= by_roll[2] * by_heave  # what heave came along
    radius = RADIUS / 1e3
    got = geometry(own, AXLE_X / 1e3, radius, np.zeros(1), np.zeros(1))
    near = 2e-3
    assert got.wheelbase[0] == pytest.approx(by_heave[0], abs=near)
    assert got.castor[0] == pytest.approx(-by_heave[4], abs=near / 0.02)
    assert np.tan(got.lean[0]) == pytest.approx(by_heave[0] - radius * by_heave[4], abs=near)
    centre = np.array([AXLE_X / 1e3 + 1 / by_heave[4], radius - by_heave[0] / by_heave[4]])
    assert got.instant_centre[0] == pytest.approx(centre, rel=0.01)
    assert got.roll_axis[0] == pytest.approx(by_roll[3], abs=near)
    assert got.roll_centre[0] == pytest.approx(radius + by_roll[1], abs=1e-4)


def stored(squeeze: Array, stiff: float, soft: float, travel: float) -> Array:
    """J in two springs of which the soft one goes home after `travel`; soft 0: in one."""
    if soft == 0.0:
        return stiff * squeeze**2 / 2
    share = np.minimum(squeeze * stiff / (stiff + soft), travel)
    return stiff * (squeeze - share) ** 2 / 2 + soft * share**2 / 2


@pytest.mark.parametrize("soft", [0.0, 250.0])
@pytest.mark.parametrize("name", ["four links", "three links and a track bar"])
def test_shocks_are_pressed_and_wheels_sprung_as_in_the_other_engine(
    name: str, soft: float
) -> None:
    own, shocks, rate, squeeze, travel = links(name), leaning_shocks(), 300.0, 0.016, 0.010
    bench, axle = AxleBench(own), axle_on(own)
    suspension = replace(axle.suspension, shocks=shocks, soft_rate=soft, soft_travel=travel)
    axle, springs = replace(axle, suspension=suspension), spring_law(suspension)
    rest = np.linalg.norm(shocks.chassis - shocks.axle, axis=1)

    def seen(heave: float, roll: float) -> tuple[Array, Array]:
        pose = bench.pull(heave, roll)
        pairs = zip(shocks.chassis, shocks.axle, strict=True)
        return pose, rest - [bench.length(head, foot) for head, foot in pairs]

    for heave in (-0.012, 0.0, 0.015):
        for roll in (-0.1, 0.12):
            pose, pressed = seen(heave, roll)
            law = law_of(axle).at(pose[2:3], pose[5:6])[LEFT:, VALUE, 0]
            assert law == pytest.approx(pressed, abs=MM)
        # The load on both springs by energy: what a wheel carries, and how it grows with travel.
        energy, step = [], 1e-3
        for by in (-step, 0.0, step):
            pose, pressed = seen(heave + by, 0.0)
            energy.append((pose[2], stored(squeeze + pressed, rate, soft, travel).sum()))
        (a, ea), (b, eb), (c, ec) = energy
        wanted = 2 * ((ec - eb) / (c - b) - (eb - ea) / (b - a)) / (c - a) / 2  # of one wheel
        at = law_of(axle).at(np.array([b]), np.zeros(1))[LEFT:, :, 0]
        now = squeeze + at[:, VALUE]
        got = (springs.rate_at(now) * at[:, BY_Q] ** 2 + springs.force(now) * at[:, BY_QQ]).mean()
        assert got == pytest.approx(wanted, rel=0.01)
