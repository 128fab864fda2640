"""Wheels, axles and shafts: what the drive does to a truck on level ground."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import numpy as np
import pytest

from crossfall.engines.settings import GroundSettings
from crossfall.trials.drive import Drive
from crossfall.trials.drive_run import Going, Journey, under_way
from crossfall.trials.grounds.plane import Plane
from crossfall.trials.ramp import ramp_entry
from crossfall.trials.slope import Command, cross_slope, running
from crossfall.truck.errors import InputError
from crossfall.truck.model import Truck
from support import make_truck


def driven(truck: Truck, drive: Drive, command: Command, until: float) -> tuple[Going, Journey]:
    """A drive on the level that is over, and what it saw."""
    with under_way(
        truck, Plane(), heading=0.0, reach=1.0, drive=drive, grip=None, settings=GroundSettings()
    ) as going:
        going.settle(0.0, 0.0, 1.0, 0.2)
        for _ in running(going, (replace(command, seconds=until),)):
            pass
        return going, going.journey()


@pytest.mark.parametrize("locked", [(True, True), (False, False)])
@pytest.mark.parametrize("half_width", [0.0, 0.006])
def test_it_goes_as_fast_as_asked_and_as_far_as_its_wheels_turn(
    locked: tuple[bool, bool], half_width: float
) -> None:
    truck = make_truck(contact_half_width=half_width)
    going, _ = driven(truck, Drive(locked=locked), Command(0.0, 0.3, ease=0.2), 0.8)
    assert going.travelled == pytest.approx(0.3 * (0.8 - 0.1), rel=0.03)
    assert going.rolled == pytest.approx(going.travelled, rel=0.01)
    assert abs(going.sideways) < 1e-3


def test_tyres_roll_as_round_as_they_are() -> None:
    """A wheel with corners (the engine's usual 32 sides) would shake its load by a tenth."""
    truck = make_truck(contact_half_width=0.006)
    _, seen = driven(truck, Drive(), Command(0.0, 0.3, ease=0.2), 0.9)
    loads = seen.record.loads[seen.record.time > 0.6]
    assert (loads.std(axis=0) < 0.03 * loads.mean(axis=0)).all()


def test_brakes_stop_it() -> None:
    truck = make_truck()
    with under_way(
        truck, Plane(), heading=0.0, reach=1.0, drive=Drive(), grip=None, settings=GroundSettings()
    ) as going:
        going.settle(0.0, 0.0, 1.0, 0.2)
        for _ in running(going, (Command(0.5, 0.3, ease=0.2), Command(0.4, 0.0))):
            pass
        there = going.travelled
        for _ in running(going, (Command(0.2, 0.0),)):
            pass
        assert there > 0.08
        assert going.travelled == pytest.approx(there, abs=5e-4)


def wheel_turns(locked: bool) -> tuple[list[float], list[float]]:
    """Turning of the rear wheels, m, and their torques, N m, with the rear left one lifted."""
    truck = replace(make_truck(contact_half_width=0.006), driven=(False, True))
    with under_way(
        truck,
        Plane(),
        heading=0.0,
        reach=1.0,
        drive=Drive(locked=(True, locked)),
        grip=None,
        settings=GroundSettings(),
    ) as going:
        going.settle(0.0, 0.0, 1.0, 0.2)
        going.rig.world.grip(2, 0.0)  # it may as well be in the air
        before = going.driveline.rolled()
        for _ in running(going, (Command(0.4, 0.2, ease=0.1),)):
            pass
        after, torques = going.driveline.rolled(), going.driveline.torques
        return [after[w] - before[w] for w in (2, 3)], [torques[w] for w in (2, 3)]


def test_an_open_axle_spins_the_wheel_without_grip_a_locked_one_does_not() -> None:
    (left, right), torques = wheel_turns(locked=False)
    assert left > 5 * abs(right)
    assert (left + right) / 2 == pytest.approx(0.2 * 0.35, rel=0.1)  # the mean is as asked
    assert torques[0] == torques[1]
    (left, right), _ = wheel_turns(locked=True)
    assert left == pytest.approx(right, rel=0.01)


def pressed(truck: Truck, way: int, ratio: float) -> tuple[np.ndarray, float]:
    """Loads (4,) and torque of the rear axle while the truck speeds up steadily."""
    drive = Drive(shaft_ratio=ratio, shaft_way=way)
    _, seen = driven(truck, drive, Command(0.0, 1.2, ease=0.6), 0.55)
    late = seen.record.time > 0.35
    return seen.record.loads[late].mean(axis=0), float(seen.torque[late, 2:].sum(axis=1).mean())


def test_the_shaft_presses_down_one_tyre_and_the_body_another() -> None:
    """The axle's couple T / i about x, and its reaction on the body, which a front axle ten times
    as stiff in roll takes nearly alone: two tyres of each axle change by T / (i track)."""
    truck = replace(make_truck(), driven=(False, True))
    stiff = replace(truck.front, suspension=replace(truck.front.suspension, anti_roll=30.0))
    truck = replace(truck, front=stiff)
    none, _ = pressed(truck, -1, 1e9)
    with_shaft, torque = pressed(truck, -1, 3.0)
    change = with_shaft - none
    expected = torque / 3.0 / 0.170
    assert expected > 0.2
    # Turning against the clock seen from behind, it presses the rear left tyre down.
    assert change == pytest.approx(expected * np.array([-1, 1, 1, -1]), rel=0.25)
    assert pressed(truck, 1, 3.0)[0] - none == pytest.approx(-change, rel=0.1)


def test_an_axle_fixed_to_the_chassis_feels_no_shaft() -> None:
    truck = make_truck(locked=True)
    assert pressed(truck, -1, 1e9)[0] == pytest.approx(pressed(truck, -1, 1.0)[0], rel=1e-9)


def test_a_truck_without_driven_wheels_can_be_held() -> None:
    truck = replace(make_truck(), driven=(False, False))
    going, _ = driven(truck, Drive(), Command(0.0, 0.3), 0.2)
    assert abs(going.travelled) < 1e-3


@pytest.mark.parametrize(
    "drive",
    [
        lambda truck, settings: cross_slope(truck, 0.1, settings=settings),
        lambda truck, settings: ramp_entry(truck, 0.2, settings=settings),
    ],
    ids=["slope", "ramp"],
)
def test_a_drive_has_a_budget_of_steps(
    drive: Callable[[Truck, GroundSettings], object],
) -> None:
    with pytest.raises(InputError, match=r"no end in 100 steps of 2\.1 ms; heavier wheels"):
        drive(make_truck(), GroundSettings(budget=100))
