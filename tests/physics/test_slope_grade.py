"""Up, down and onto slopes: load transfer, looping, sliding, spinning and hanging up."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from crossfall.statics.compliant_path import equilibrium_path
from crossfall.statics.rigid import tip_angle
from crossfall.trials.drive import Drive
from crossfall.trials.ramp import RampTrial, ramp_entry
from crossfall.trials.slope import Command, Manner, SlopeTrial, climb_slope, programmes
from crossfall.truck.build import load_truck
from crossfall.truck.clearance import clearance_angles
from crossfall.truck.edits import set_values
from crossfall.truck.massprops import whole
from crossfall.truck.model import Clearance, Truck, frozen
from crossfall.tuning.apply import built
from support import make_truck

UP, DOWN = 0.0, math.pi
CRAWL = (Command(0.6, 0.15, ease=0.3),)


def rigid_truck(height_share: float) -> Truck:
    """Rear drive, CG midway and height_share of the wheelbase high, light wheels, no springs."""
    truck = make_truck(
        locked=True,
        tyre_stiffness=math.inf,
        chassis_cg=(0.0, 0.0, 0.1),
        wheel_mass=0.004,
        axle_mass=0.05,
    )
    body = whole(truck)
    missing = height_share * truck.wheelbase - body.cg[2]
    lift = missing * body.mass / truck.chassis.mass
    chassis = replace(truck.chassis, cg=frozen(truck.chassis.cg + np.array([0.0, 0.0, lift])))
    return replace(truck, chassis=chassis, driven=(False, True))


def test_speeding_up_a_grade_shifts_the_published_load() -> None:
    """Meriam and Kraige, Engineering Mechanics: Dynamics, sample problem 6/1: W 3220 lb, CG 24 in
    high and 60 in from each axle, up a 10 % grade from rest to 44 ft/s in 200 ft, rear drive:
    1441 lb on the front wheels, 1763 on the rear, friction force 804. Here 1:10 size, as shares
    of W."""
    truck, grade = rigid_truck(24 / 120), math.atan(0.10)
    acceleration = 44**2 / (2 * 200) * 0.3048
    trial = climb_slope(
        truck, grade, (Command(0.5, 0.5 * acceleration, ease=0.5),), drive=Drive(shaft_ratio=1e9)
    )
    seen, weight = trial.journey, whole(truck).mass * 9.80665
    steady = (seen.record.time > 0.2) & (seen.record.time < 0.48)
    loads = seen.record.loads[steady].mean(axis=0) / weight
    thrust = seen.torque[steady].sum(axis=1).mean() / truck.rear.tyre.radius / weight
    assert loads[:2].sum() == pytest.approx(1441 / 3220, abs=0.005)
    assert loads[2:].sum() == pytest.approx(1763 / 3220, abs=0.005)
    assert thrust == pytest.approx(804 / 3220, rel=0.03)  # the wheels' own inertia takes a little


def test_a_slow_start_climbs_where_full_throttle_goes_over_backwards() -> None:
    truck = make_truck(chassis_cg=(-0.03, 0.0, 0.12))
    slope = float(tip_angle(truck, [UP])[0]) - math.radians(12.0)
    drive = Drive(thrust=2.5, shaft_ratio=30.0)
    slow = climb_slope(truck, slope, CRAWL, drive=drive)
    assert slow.outcome == "climbs"
    fast = climb_slope(truck, slope, (*CRAWL, Command(0.8, 2.0)), drive=drive)
    assert fast.outcome == "loops over"
    assert fast.least_margin < 0 < slow.least_margin


def test_beyond_its_static_angle_it_loops_over_standing() -> None:
    truck = make_truck(chassis_cg=(-0.03, 0.0, 0.13))
    slope = float(tip_angle(truck, [UP])[0]) + math.radians(1.0)
    assert climb_slope(truck, slope, CRAWL).outcome == "loops over"


def test_braking_down_a_grade_lightens_the_rear_and_locked_wheels_slide() -> None:
    truck, slope = make_truck(), math.radians(20.0)
    brake = programmes(0.15, Drive())["brake step"]

    def down(grip: float) -> SlopeTrial:
        return climb_slope(truck, slope, brake, heading=DOWN, grip=grip)

    held, slid = down(1.2), down(0.4)
    assert held.outcome == "descends"
    assert held.least_wheel in (2, 3)
    assert slid.outcome == "slides"
    assert slid.spun < -0.05  # further than its wheels turned


def test_with_little_grip_it_spins_and_with_little_torque_it_stalls() -> None:
    truck, slope = make_truck(), math.radians(25.0)
    step = (Command(0.3, 0.1, ease=0.2), Command(0.8, 1.5))
    assert climb_slope(truck, slope, step, grip=0.52).outcome == "spins"
    weak = climb_slope(truck, slope, (Command(0.8, 0.3),), drive=Drive(thrust=0.3), grip=1.0)
    assert weak.outcome in ("stalls", "slides")  # less than sin(25 deg): it cannot go up
    assert weak.travelled < 0.02


def test_it_stops_on_the_grade_and_stays() -> None:
    trial = climb_slope(make_truck(), 0.4, programmes(0.15, Drive())["stop"], grip=0.9)
    assert trial.outcome == "climbs"
    travelled = trial.journey.travelled[trial.journey.record.time > 1.0]
    assert np.ptp(travelled) < 2e-3


def test_shafts_twist_a_climbing_truck_as_they_twist_one_that_its_motor_holds() -> None:
    """The file's way and ratio, in the drive as in the statics of the truck held on the slope; the
    drive once took one way for all and the final drive. What the held axles' own roll adds to
    their torque, since their shafts stand still, is no part of a drive: they agree to half."""
    loaded, slope = load_truck("thistle"), math.radians(20.0)
    gentle = Manner(settle=0.2, tilt=math.radians(40.0))

    def across(turns: str) -> tuple[np.ndarray, np.ndarray]:
        """N by which front and rear left bear more than right, driven and held."""
        given = {"front.shaft_turns": turns, "rear.shaft_turns": turns, "chassis.axle_ratio": 2.0}
        truck = built(loaded, set_values(loaded.spec, given))
        held = built(loaded, set_values(loaded.spec, {**given, "chassis.held_by": "motor"}))
        going = (Command(0.8, 0.2, ease=0.2),)
        trial = climb_slope(truck, slope, going, grip=1.0, manner=gentle)
        assert trial.outcome == "climbs"
        seen = trial.journey.record
        driven = seen.loads[seen.time > seen.time[-1] - 0.3].mean(axis=0)
        stands = equilibrium_path(held, UP, np.array([slope]), 1.0).load[0]
        return driven[::2] - driven[1::2], stands[::2] - stands[1::2]

    (driven, held), (other_driven, other_held) = across("clockwise"), across("anticlockwise")
    by_shafts, expected = driven - other_driven, held - other_held
    assert np.all(np.abs(expected) > 0.4)
    assert by_shafts == pytest.approx(expected, rel=0.6)


# Ramps


def low_nosed(nose: float = 0.055, belly: float = 0.075, tail: float = 0.09) -> Truck:
    points = Clearance((0.27, nose), (0.0, belly), (-0.22, tail))
    return replace(make_truck(chassis_cg=(0.0, 0.0, 0.09)), clearance=points)


def entry(truck: Truck, degrees: float, **options: float) -> RampTrial:
    return ramp_entry(truck, math.radians(degrees), grip=1.0, speed=0.25, **options)


def test_the_nose_touches_beyond_the_approach_angle_only() -> None:
    truck = low_nosed()
    angles = clearance_angles(truck)
    assert angles is not None
    approach = math.degrees(angles.approach)
    gentle, steep = entry(truck, approach - 6.0), entry(truck, approach + 6.0)
    assert gentle.outcome == "up"
    assert math.isnan(gentle.touched[0])
    assert math.isfinite(steep.touched[0])


def test_a_nose_far_too_low_hangs() -> None:
    trial = entry(low_nosed(nose=0.02), 60.0)
    assert trial.outcome == "nose hangs"
    assert trial.travelled < trial.needed / 2


def test_the_belly_hangs_on_the_crest_and_the_tail_drags_at_the_foot() -> None:
    belly = entry(low_nosed(nose=0.10, belly=0.03), 40.0)
    assert math.isfinite(belly.touched[1])
    assert math.isnan(belly.touched[0])
    tail = entry(low_nosed(nose=0.10, tail=0.02), 30.0)
    assert math.isfinite(tail.touched[2])


def test_a_ramp_has_room_for_the_whole_truck_and_a_wheelbase_more() -> None:
    truck, angle = low_nosed(nose=0.12, tail=0.12), math.radians(25.0)
    trial = entry(truck, 25.0)
    assert trial.outcome == "up"
    assert trial.climbed
    assert trial.ramp.rise / math.sin(angle) > 2 * truck.wheelbase
    centres = trial.journey.record.chassis[:, 2]
    on_it = (centres > centres[0] + 0.02) & (centres < centres[-1] - 0.02)
    gone = np.ptp(trial.journey.travelled[on_it])
    assert gone / math.cos(angle) > truck.wheelbase


def test_on_a_low_step_nobody_has_climbed_the_slope() -> None:
    trial = entry(low_nosed(nose=0.12, tail=0.12), 35.0, rise=0.06)
    assert trial.outcome == "up"
    assert not trial.climbed
    assert trial.on_ramp == 0.0


@pytest.mark.parametrize("oblique", [-0.5, 0.5])
def test_an_askew_ramp_is_wide_enough_for_a_truck_that_goes_straight_on(oblique: float) -> None:
    trial = entry(low_nosed(nose=0.12, tail=0.12), 20.0, oblique=oblique)
    assert trial.outcome == "up"
    assert trial.climbed


def test_too_steep_a_ramp_is_never_climbed() -> None:
    """Either there is no grip for it, or with grip in plenty it goes over backwards."""
    for grip in (0.9, 3.0):
        trial = ramp_entry(low_nosed(nose=0.15, tail=0.15), math.radians(65.0), grip=grip)
        assert not trial.climbed
        assert trial.outcome in ("spins", "stalls", "slides", "loops over")


def test_oblique_entries_from_either_side_are_mirror_images() -> None:
    truck, drive = make_truck(), Drive(shaft_ratio=1e9)
    left, right = (
        ramp_entry(truck, 0.4, oblique=b, grip=1.0, speed=0.3, rise=0.05, drive=drive)
        for b in (0.4, -0.4)
    )
    assert left.outcome == right.outcome == "up"
    assert left.journey.sideways[-1] == pytest.approx(-right.journey.sideways[-1], abs=3e-3)
    # The way up is turned to the left: the front left wheel meets it first, and its tyre and spring
    # are pressed first.
    rises = left.journey.record.loads[:, 0] - left.journey.record.loads[0, 0] > 2.0
    other = left.journey.record.loads[:, 1] - left.journey.record.loads[0, 1] > 2.0
    assert 0 < np.argmax(rises) < np.argmax(other)
