"""The model of a truck on blocks, against energy and against the closed formulas."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.optimize import minimize

import axle_scales as formulas
from crossfall.measurement.weigh_in_model import (
    Springs,
    Stand,
    TruckGeometry,
    warp_stiffness,
    wheel_loads,
)
from crossfall.truck.model import GRAVITY, Array


def shape(**changes: float) -> TruckGeometry:
    values = {
        "mass": 2.75, "x": -0.012, "y": 0.004, "z": 0.098, "wheelbase": 0.313,
        "track_front": 0.17, "track_rear": 0.17, "radius_front": 0.056, "radius_rear": 0.056,
    } | changes  # fmt: skip
    return TruckGeometry(*(np.array([v]) for v in values.values()))


def stand(end: float = 0.0, side: float = 0.0, **changes: float) -> Stand:
    values = {"floor_pitch": 0.0, "floor_roll": 0.0, "cross": 0.0} | changes
    return Stand(*(np.array([v]) for v in (end, side, *values.values())))


SPRINGS = Springs(*(np.array([v]) for v in (300.0, 380.0, 0.11, 0.075, 0.5, 0.55)))


def test_locked_end_raise_is_the_axle_lift_formula() -> None:
    loads = wheel_loads(shape(), None, stand(0.09))[0]
    expected = formulas.raised_front_load(0.098, 2.75, 0.313 / 2 - 0.012, 0.313, 0.09, 0.056)
    assert loads[:2].sum() == pytest.approx(expected, rel=1e-12)
    assert loads.sum() == pytest.approx(2.75, rel=1e-12)


def test_locked_side_raise_is_the_same_formula_across_the_truck() -> None:
    loads = wheel_loads(shape(y=0.0), None, stand(0.0, 0.04))[0]
    expected = formulas.raised_front_load(0.098, 2.75, 0.085, 0.17, 0.04, 0.056)
    assert loads[[0, 2]].sum() == pytest.approx(expected, rel=1e-12)


def test_raising_the_rear_is_raising_the_front_of_the_truck_turned_round() -> None:
    s = {"radius_front": 0.056, "radius_rear": 0.052}
    there = wheel_loads(shape(**s), None, stand(-0.09))[0]
    s = {"radius_front": 0.052, "radius_rear": 0.056}
    back = wheel_loads(shape(x=0.012, **s), None, stand(0.09))[0]
    assert there[:2].sum() == pytest.approx(back[2:].sum(), rel=1e-12)


def test_unlike_tyres_turn_the_truck_about_the_rear_wheel_centre() -> None:
    """Geometry by hand: the wheel centres' line turns, the CG with it."""
    rf, rr, base, block = 0.060, 0.050, 0.313, 0.09
    apart = np.hypot(base, rf - rr)
    alpha = np.arcsin((block + rf - rr) / apart) - np.arctan2(rf - rr, base)
    cg = np.array([base / 2 - 0.012, 0.098 - rr])
    reach = cg[0] * np.cos(alpha) - cg[1] * np.sin(alpha)
    level = np.sqrt(apart**2 - (block + rf - rr) ** 2)
    loads = wheel_loads(shape(radius_front=rf, radius_rear=rr), None, stand(block))[0]
    assert loads[:2].sum() == pytest.approx(2.75 * reach / level, rel=1e-12)


def least_energy(s: TruckGeometry, k: Springs, block: float) -> float:
    """J of the truck at rest, front wheels on a block: gravity and springs, wheels rolling free.

    Chassis pose and both axles' movement along the chassis normal; the wheel centres' heights fix
    the movement. Written afresh, without the model's equations.
    """
    mass, x, z, base = (float(v[0]) for v in (s.mass, s.x, s.z, s.wheelbase))
    own = float(k.unsprung_front[0]), float(k.unsprung_rear[0])
    radii = float(s.radius_front[0]), float(s.radius_rear[0])
    rates = 2 * float(k.rate_front[0]), 2 * float(k.rate_rear[0])
    ends = base / 2, -base / 2
    sprung = mass - sum(own)
    sx = (mass * x - own[0] * ends[0] - own[1] * ends[1]) / sprung
    sz = (mass * z - own[0] * radii[0] - own[1] * radii[1]) / sprung
    front = mass * GRAVITY * (x + base / 2) / base
    preload = front - own[0] * GRAVITY, mass * GRAVITY - front - own[1] * GRAVITY

    def energy(pose: Array) -> float:
        up, pitch = pose  # of the chassis origin, nose up
        total = sprung * GRAVITY * (up + sx * np.sin(pitch) + sz * np.cos(pitch))
        for i, top in enumerate((block, 0.0)):
            # Height of the wheel centre fixes how far the axle has moved in the chassis.
            along = ends[i] * np.sin(pitch)
            q = (top + radii[i] - up - along) / np.cos(pitch) - radii[i]
            total += own[i] * GRAVITY * (top + radii[i])
            total += preload[i] * q + rates[i] * q**2 / 2
        return float(total)

    best = minimize(
        energy, [block / 2, np.arcsin(block / base)], method="BFGS", options={"gtol": 1e-10}
    )
    return float(best.fun)


def test_front_load_on_free_springs_is_the_work_of_lifting_the_front() -> None:
    """Virtual work: R_f g = dE/dH, with the whole truck settling as it likes."""
    s, step, block = shape(radius_front=0.057, radius_rear=0.054), 1e-3, 0.09
    loads = wheel_loads(s, SPRINGS, stand(block))[0]
    up, down = (least_energy(s, SPRINGS, block + d) for d in (step, -step))
    far_up, far_down = (least_energy(s, SPRINGS, block + d) for d in (2 * step, -2 * step))
    force = (8 * (up - down) - (far_up - far_down)) / (12 * step)
    assert loads[:2].sum() * GRAVITY == pytest.approx(force, rel=2e-6)
    locked = wheel_loads(s, None, stand(block))[0]
    assert abs(loads[:2].sum() - locked[:2].sum()) > 1e-3  # so that the springs matter at all


def test_stiff_springs_are_a_locked_suspension() -> None:
    stiff = Springs(*(np.array([v]) for v in (3e8, 3e8, 0.11, 0.075, 0.5, 0.55)))
    for way in (stand(0.09), stand(0.0, 0.04)):
        assert wheel_loads(shape(), stiff, way) == pytest.approx(
            wheel_loads(shape(), None, way), abs=1e-6
        )


def test_free_springs_change_nothing_on_the_level() -> None:
    assert wheel_loads(shape(), SPRINGS, stand()) == pytest.approx(
        wheel_loads(shape(), None, stand()), abs=1e-14
    )


def test_body_lean_on_a_side_raise_balances_the_roll_moment() -> None:
    """Left side raised: springs hold what gravity does to the leaned sprung mass."""
    s, k, beta = shape(y=0.0), SPRINGS, np.arcsin(0.04 / 0.17)
    free, locked = (wheel_loads(s, springs, stand(0.0, 0.04))[0] for springs in (k, None))
    shift = (locked[[0, 2]].sum() - free[[0, 2]].sum()) * 0.17  # kg m / cos(beta), to the right
    sprung = 2.75 - 1.05
    arm = (2.75 * 0.098 - 1.05 * 0.056) / sprung - 0.075
    stiffness = (300.0 + 380.0) * 0.11**2 / 2
    lean = (
        sprung * GRAVITY * arm * np.sin(beta) / (stiffness - sprung * GRAVITY * arm * np.cos(beta))
    )
    rise = 1 - np.cos(beta)
    # To first order in the lean: it carries the sprung mass sideways, the rise lifts it.
    lifted = (sprung * GRAVITY * rise / (2 * 680.0)) * sprung * np.tan(beta)
    assert shift == pytest.approx(sprung * arm * lean + lifted, rel=0.02)


def test_sloping_floor_leans_the_load_downhill() -> None:
    loads = wheel_loads(shape(), None, stand(floor_pitch=0.01))[0]
    level = wheel_loads(shape(), None, stand())[0]
    moved = 2.75 * 0.098 * np.tan(0.01) / 0.313
    assert level[:2].sum() - loads[:2].sum() == pytest.approx(moved, rel=1e-9)


def test_standing_diagonally_changes_wheels_but_neither_axles_nor_balance() -> None:
    s = shape(track_front=0.16, track_rear=0.18)
    plain, cross = (wheel_loads(s, None, stand(cross=c))[0] for c in (0.0, 0.05))
    assert cross[0] - plain[0] == pytest.approx(0.05)
    assert cross[:2].sum() == pytest.approx(plain[:2].sum())
    half = np.array([0.08, -0.08, 0.09, -0.09])
    assert cross @ half == pytest.approx(plain @ half) == pytest.approx(2.75 * 0.004)


def test_warp_stiffness_is_what_a_shim_under_one_wheel_costs() -> None:
    """Four tyres alone: lifting one by d leaves (+, -, -, +) k d / 4."""
    assert warp_stiffness(0.17, 6000.0) * GRAVITY == pytest.approx(6000.0 / 4)
    assert warp_stiffness(0.17, 6000.0, SPRINGS) < 0.1 * warp_stiffness(0.17, 6000.0)
