"""Sliding on the tilt table: held wheels slide at atan(mu), whatever the heading."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from crossfall.trials.record import load_record
from crossfall.trials.slide import slide_trial
from crossfall.trials.tilt import QUICK, tilt_trial
from crossfall.truck.build import load_truck
from crossfall.truck.support import downhill_pair
from support import make_truck

LOW = make_truck(chassis_cg=(0.0, 0.0, 0.05), droop=0.006)
SIDE = math.pi / 2


@pytest.mark.parametrize("heading", [0.0, 90.0, 200.0])
@pytest.mark.parametrize("mu", [0.3, 0.5, 0.75, 1.0])
def test_slides_at_the_friction_angle(mu, heading):
    trial = slide_trial(LOW, math.radians(heading), mu)
    assert trial.outcome == "slides"
    assert math.degrees(abs(trial.slide - math.atan(mu))) <= 0.2
    assert trial.slide_ci[0] < trial.slide < trial.slide_ci[1]


@pytest.mark.parametrize(("name", "heading"), [("bramble", 90.0), ("burdock", 45.0)])
def test_a_soft_truck_creeps_before_it_slides(name, heading):
    trial = slide_trial(load_truck(name).truck, math.radians(heading), 0.5)
    assert math.degrees(abs(trial.slide - math.atan(0.5))) <= 0.2
    before = trial.record.theta < trial.slide - math.radians(0.5)
    assert trial.record.slip[before].max() > 0.001


def test_grip_must_be_above_zero():
    with pytest.raises(ValueError, match="grip"):
        slide_trial(LOW, 0.0, 0.0)


def test_low_grip_slides_first_and_says_where():
    trial = tilt_trial(make_truck(), SIDE, grip=0.5, pace=QUICK)
    assert trial.outcome == "slides"
    assert math.degrees(trial.slide) == pytest.approx(math.degrees(math.atan(0.5)), abs=0.2)
    assert trial.slide_ci[0] < trial.slide < trial.slide_ci[1]
    assert math.isnan(trial.tip)
    assert trial.record.slip.max() > 0.01


def test_the_rail_lets_it_tip_without_holding_it_up():
    truck = make_truck()
    free = tilt_trial(truck, SIDE)
    railed = tilt_trial(truck, SIDE, grip=0.5, rail=True)
    assert railed.outcome == "tips"
    assert railed.tip == pytest.approx(free.tip, abs=math.radians(0.15))


@pytest.mark.parametrize(
    ("heading", "pair"), [(0, (2, 3)), (80, (0, 2)), (180, (0, 1)), (280, (1, 3))]
)
def test_the_rail_is_on_the_downhill_side(heading, pair):
    assert downhill_pair(make_truck(), math.radians(heading)) == pair


def test_a_truck_that_never_goes_over_stands():
    trial = tilt_trial(make_truck(), SIDE, pace=replace(QUICK, limit=math.radians(30.0)))
    assert trial.outcome == "stands"
    assert math.isnan(trial.tip)
    assert math.isnan(trial.slide)
    assert trial.record.theta[-1] == pytest.approx(math.radians(30.0), abs=0.01)


def test_records_can_be_kept_and_read(tmp_path):
    truck = make_truck(chassis_cg=(-0.01, 0.005, 0.11))
    trial = tilt_trial(truck, SIDE, pace=QUICK)
    path = tmp_path / "trial.npz"
    trial.record.save(path)
    back = load_record(path)
    assert back.joint_names == trial.record.joint_names
    for name in ("time", "theta", "loads", "chassis", "joints", "slip"):
        np.testing.assert_array_equal(getattr(back, name), getattr(trial.record, name))
    assert [p.name for p in tmp_path.iterdir()] == ["trial.npz"]


def test_records_are_in_real_size_and_time():
    truck = make_truck()
    record = tilt_trial(truck, SIDE, pace=QUICK).record
    n = len(record)
    assert record.loads.shape == record.slip.shape == (n, 4)
    assert record.chassis.shape == (n, 7)
    assert record.joints.shape == (n, len(record.joint_names))
    np.testing.assert_allclose(np.linalg.norm(record.chassis[:, 3:], axis=1), 1.0, atol=1e-9)
    weight = 9.80665 * (1.9 + 2 * 0.25 + 4 * 0.13)
    early = record.theta < math.radians(15)
    normal = record.loads[early].sum(axis=1) / np.cos(record.theta[early])
    np.testing.assert_allclose(normal, weight, rtol=0.15)  # a hurried table shakes its truck
    assert np.abs(record.chassis[0, :3]).max() < 1e-4
    assert np.all(np.diff(record.time) > 0)
    assert record.time[-1] < 20.0
