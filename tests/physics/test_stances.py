"""Held by the motor, and with wheels turned: statics, trial and another engine, and by hand."""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest
from mujoco_tips import tip

from crossfall.statics import rigid
from crossfall.statics.compliant import tips
from crossfall.statics.compliant_path import equilibrium_path
from crossfall.trials.tilt import tilt_trials
from crossfall.truck.build import build
from crossfall.truck.edits import set_values
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Truck
from numbered_files import numbered
from support import INSTALLED

OFFSET, TURN = 0.025, math.radians(30.0)
NEAR = math.radians(0.1)  # what trial and statics agree to on straight wheels and brakes, too
OTHER = 0.2  # deg, the other engine, which holds its own tyres and loops by springs


def stood(**keys: object) -> Truck:
    loaded = numbered("bramble")
    return build(set_values(loaded.spec, keys), loaded.folder)[0]


def by_motor() -> Truck:
    return stood(**{"chassis.held_by": "motor", "chassis.axle_ratio": 3.0})


def steered() -> Truck:
    return stood(**{"chassis.steer_deg": 30.0, "front.kingpin_offset_mm": 25.0})


def test_the_shafts_twist_the_axles_by_the_torque_that_holds_the_truck() -> None:
    """On a climb the ground holds the wheels by F along the table, which is F R about their axes
    and a third of it in the shafts. That rolls the axles against springs, bars, and what the ground
    does to the tyres about each roll axis, which pitches with the chassis."""
    truck, theta = by_motor(), math.radians(12.0)
    seen = equilibrium_path(truck, 0.0, np.array([0.0, theta]), 5.0)
    forward, _, up = seen.turn[1, 2, :, 0]
    bars = ground = 0.0
    for i, axle in enumerate(truck.axles):
        s, tyre, of = axle.suspension, axle.tyre, slice(2 * i, 2 * i + 2)
        bars += (s.spring_rate * s.spring_spacing**2 / 2 + s.anti_roll) * float(seen.roll[1, i])
        along, across = tyre.longitudinal * seen.give[1, of, 0], tyre.lateral * seen.give[1, of, 1]
        load = seen.load[1, of] - seen.load[0, of]
        about_x = (load[0] - load[1]) * axle.track / 2 + across.sum() * s.roll_centre_height
        about_z = (along[1] - along[0]) * axle.track / 2
        ground += float(about_x * forward + about_z * up)
    slope = whole(truck).mass * GRAVITY * math.sin(theta)
    shafts = slope * truck.front.tyre.radius / 3.0  # the wheels are all alike
    assert bars - ground == pytest.approx(shafts, rel=0.02)
    assert abs(bars) > 0.3 * shafts


def test_a_stiffer_chassis_against_roll_twists_less() -> None:
    truck = by_motor()
    stiff = replace(
        truck,
        front=replace(truck.front, suspension=replace(truck.front.suspension, anti_roll=20.0)),
        rear=replace(truck.rear, suspension=replace(truck.rear.suspension, anti_roll=20.0)),
    )
    bare = numbered("bramble").truck
    still = replace(
        stiff, front=replace(stiff.front, shaft=0.0), rear=replace(stiff.rear, shaft=0.0)
    )
    lost = [
        float(np.degrees(tips(a, np.zeros(1), 5.0).tip - tips(b, np.zeros(1), 5.0).tip)[0])
        for a, b in ((bare, truck), (still, stiff))
    ]
    assert lost[0] > 2.0
    assert abs(lost[1]) < 0.2 * lost[0]


def test_shafts_that_turn_the_other_way_are_the_mirror_image() -> None:
    truck = by_motor()
    other = stood(
        **{
            "chassis.held_by": "motor",
            "chassis.axle_ratio": 3.0,
            "front.shaft_turns": "anticlockwise",
            "rear.shaft_turns": "anticlockwise",
        }
    )
    headings = np.radians([0.0, 45.0, 315.0])
    one, two = (np.degrees(tips(t, headings, 5.0).tip) for t in (truck, other))
    # bramble's CG is 0.2 mm off the middle
    assert two == pytest.approx(one[[0, 2, 1]], abs=0.3)
    assert abs(one[1] - one[2]) > 0.3


def test_the_rigid_truck_on_turned_wheels_tips_over_the_line_through_them() -> None:
    """Left side down: over the line from the left front tyre, swung in and back, to the rear."""
    truck, body = steered(), whole(steered()).cg
    half = truck.front.track / 2
    front = np.array(
        [truck.front.x - OFFSET * math.sin(TURN), half - OFFSET * (1 - math.cos(TURN))]
    )
    rear = np.array([truck.rear.x, truck.rear.track / 2])
    width = truck.front.tyre.contact_half_width
    along = front - rear
    across = np.array([-along[1], along[0]]) / np.linalg.norm(along)
    reach = (front - body[:2] + np.array([0.0, width])) @ across
    wanted = math.atan2(reach, body[2] * across[1])
    assert rigid.tip_angle(truck, [math.pi / 2])[0] == pytest.approx(wanted, abs=1e-9)


@pytest.mark.parametrize(
    ("made", "headings"), [(by_motor, (0.0, 150.0, 270.0)), (steered, (45.0, 90.0))]
)
def test_a_trial_tips_where_the_statics_does(
    made: Callable[[], Truck], headings: tuple[float, ...]
) -> None:
    truck, psi = made(), np.radians(headings)
    wanted = tips(truck, psi, 5.0).tip
    for engine in INSTALLED:
        seen = tilt_trials(truck, psi.tolist(), grip=5.0, engine=engine)
        for trial, tip_angle in zip(seen, wanted, strict=True):
            low, high = trial.tip_ci
            assert low - NEAR < tip_angle < high + NEAR


@pytest.mark.parametrize(("made", "heading"), [(by_motor, 45.0), (steered, 90.0)])
def test_another_engine_agrees(made: Callable[[], Truck], heading: float) -> None:
    truck = made()
    seen = math.degrees(tip(truck, math.radians(heading), 5.0).angle)
    wanted = float(np.degrees(tips(truck, np.radians([heading]), 5.0).tip[0]))
    assert seen == pytest.approx(wanted, abs=OTHER)
