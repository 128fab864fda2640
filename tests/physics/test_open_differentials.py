"""Held by the motor through open differentials: by hand, and statics and trials against each other.

The headings and grips tried are those at which a truck neither swings round on its way nor goes
over and away at once: there where it goes is a matter of a degree, and what to call it of taste.
"""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from crossfall.answers.conditions import conditions
from crossfall.answers.ranges import ranges
from crossfall.answers.tips import tip_angles
from crossfall.statics.compliant import tips
from crossfall.statics.compliant_path import equilibrium_path
from crossfall.trials.tilt import tilt_trials
from crossfall.truck.build import build
from crossfall.truck.edits import set_values
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY, Truck
from numbered_files import numbered
from support import INSTALLED

NEAR = math.radians(0.1)  # what trial and statics agree to on straight wheels and brakes, too
APART = math.radians(0.25)  # the two engines
FRONT, REAR, BOTH = ("front",), ("rear",), ("front", "rear")


def by_motor(*opened: str) -> Truck:
    loaded, keys = numbered("bramble"), {f"{end}.differential": "open" for end in opened}
    keys |= {"chassis.held_by": "motor", "chassis.axle_ratio": 3.0}
    return build(set_values(loaded.spec, keys), loaded.folder)[0]


def pulls(truck: Truck, heading: float, angle: float, grip: float) -> np.ndarray:
    """(4,) N of the table on each tyre along its direction of rolling, by how far it has given."""
    psi = math.radians(heading)
    seen = equilibrium_path(truck, psi, np.radians([0.0, angle]), grip)
    down = np.array([-math.cos(psi), math.sin(psi), 0.0]) * math.sin(math.radians(angle))
    gravity = GRAVITY * (down - [0.0, 0.0, math.cos(math.radians(angle))])
    out = []
    for wheel in range(4):
        axle, turn = truck.axles[wheel // 2], seen.turn[1, wheel // 2]
        tyre, weight = axle.tyre, axle.wheels[wheel % 2].mass * GRAVITY
        spring = np.array([tyre.longitudinal, tyre.lateral, tyre.stiffness]) * seen.give[1, wheel]
        spring[2] += seen.load[0, wheel] - weight
        ahead = np.array([turn[1, 1], -turn[0, 1], 0.0]) / math.hypot(turn[0, 1], turn[1, 1])
        out.append(float((turn @ spring - weight / GRAVITY * gravity) @ ahead))
    return np.array(out)


def test_an_open_differential_shares_its_torque_evenly_and_a_locked_one_does_not() -> None:
    left, right, *rear = pulls(by_motor("front"), 40.0, 20.0, 5.0)
    # Torque counts along the direction of rolling at the last look, which has turned by a hair.
    assert left == pytest.approx(right, rel=1e-4)
    assert abs(rear[0] - rear[1]) > 0.1 * abs(sum(rear))
    left, right, *_ = pulls(by_motor(), 40.0, 20.0, 5.0)
    assert abs(left - right) > 0.1 * abs(left + right)


def test_an_axle_with_a_wheel_in_the_air_holds_nothing() -> None:
    truck, angle = by_motor("front"), 30.8
    load = equilibrium_path(truck, math.radians(60.0), np.radians([angle]), 0.9).load[0]
    assert load[1] == 0.0
    assert load[0] > 5.0
    left, _, *rear = pulls(truck, 60.0, angle, 0.9)
    slope = whole(truck).mass * GRAVITY * math.sin(math.radians(angle)) * math.cos(math.pi / 3)
    assert abs(left) < 1e-3 * slope
    assert sum(rear) == pytest.approx(slope, rel=0.05)  # but that the truck has swung a little


def test_it_rolls_away_when_twice_what_the_lighter_wheels_hold_is_less_than_the_slope() -> None:
    """Straight uphill nothing pulls across: each axle holds 2 mu times its lighter wheel's load."""
    truck, mu = by_motor("front", "rear"), 0.9
    found = tips(truck, np.zeros(1), mu)
    assert found.away.all()
    theta = float(found.tip[0])
    assert theta < math.atan(mu) - math.radians(3.0)
    load = equilibrium_path(truck, 0.0, np.array([theta - 1e-4]), mu).load[0]
    holds = 2 * mu * (min(load[:2]) + min(load[2:]))
    assert holds == pytest.approx(whole(truck).mass * GRAVITY * math.sin(theta), rel=2e-3)


def test_open_differentials_do_nothing_on_brakes_or_against_a_rail_at_both_ends() -> None:
    locked, loose = by_motor(), by_motor("front", "rear")
    still = [
        replace(t, front=replace(t.front, shaft=0.0), rear=replace(t.rear, shaft=0.0))
        for t in (locked, loose)
    ]
    headings = np.radians([0.0, 60.0, 200.0])
    one, two = (tips(t, headings, 0.9).tip for t in still)
    assert two == pytest.approx(one, abs=1e-12)
    side = np.radians([80.0, 90.0])  # a wheel of each axle against the rail
    one, two = (tips(t, side, 0.9, rail=True).tip for t in (locked, loose))
    assert two == pytest.approx(one, abs=1e-12)


def test_where_it_rolls_away_it_has_no_tip_but_against_a_rail() -> None:
    truck = by_motor("front", "rear")
    found = tip_angles(truck, np.radians([0.0, 30.0]), 0.9)
    assert found.slides.all()
    assert np.isnan(found.tip).all()
    assert (found.goes == found.slide).all()
    assert (found.slide < math.atan(0.9)).all()
    assert (found.free > found.goes).all()


def test_the_range_of_where_it_goes_knows_that_it_rolls_away() -> None:
    truck = by_motor("front", "rear")
    asked = conditions(truck, np.radians([30.0]), grip=0.9)
    likely, (seen,) = ranges(truck, asked)
    assert seen.goes[0] <= float(likely.goes[0]) + 1e-9
    assert float(likely.goes[0]) - 1e-9 <= seen.goes[1]
    assert seen.tips_first < 0.05


@pytest.mark.parametrize(
    ("opened", "headings"),
    [(REAR, (0.0, 30.0, 90.0)), (BOTH, (0.0, 30.0, 150.0)), (FRONT, (60.0, 150.0))],
)
def test_trials_go_where_the_statics_says(
    opened: tuple[str, ...], headings: tuple[float, ...]
) -> None:
    truck, psi = by_motor(*opened), np.radians(headings)
    wanted = tips(truck, psi, 0.9)
    ends = []
    for engine in INSTALLED:
        seen = tilt_trials(truck, psi.tolist(), grip=0.9, engine=engine)
        for trial, angle, away in zip(seen, wanted.tip, wanted.away, strict=True):
            assert trial.outcome == ("slides" if away else "tips")
            low, high = trial.slide_ci if away else trial.tip_ci
            assert low - NEAR < angle < high + NEAR
            ends.append(trial.slide if away else trial.tip)
    both = np.reshape(ends, (len(INSTALLED), -1))
    assert np.ptp(both, axis=0).max() < APART
