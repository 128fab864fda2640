"""Sliding on the tilt table: held wheels slide at atan(mu), whatever the heading."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from crossfall.trials.pace import Pace
from crossfall.trials.record import load_record
from crossfall.trials.tilt import tilt_trial
from crossfall.truck.build import load_truck
from crossfall.truck.support import downhill_pair
from support import make_truck

LOW = make_truck(chassis_cg=(0.0, 0.0, 0.05), droop=0.006)
SIDE = math.pi / 2


@pytest.mark.parametrize("heading", [0.0, 90.0, 200.0])
@pytest.mark.parametrize("mu", [0.3, 0.5, 0.75, 1.0])
def test_slides_at_the_friction_angle(mu, heading):
    trial = tilt_trial(LOW, math.radians(heading), grip=mu)
    assert trial.outcome == "slides"
    assert trial.slide_ci[0] < math.atan(mu) < trial.slide_ci[1]
    assert trial.slide_ci[1] - trial.slide_ci[0] < math.radians(0.2)
    assert math.isnan(trial.tip)
    assert trial.over is None
    assert trial.record.slip[-1].min() > 0.5 * LOW.front.tyre.radius - 0.005


@pytest.mark.parametrize(("mu", "heading"), [(0.5, 90.0), (0.75, 90.0), (1.0, 0.0), (1.0, 90.0)])
def test_the_other_engine_slides_there_too(mu, heading):
    """A hop at the end of a hold, with no wheel loaded, once passed for rest: degrees late."""
    trial = tilt_trial(LOW, math.radians(heading), grip=mu, engine="mujoco")
    assert trial.outcome == "slides"
    assert trial.slide_ci[0] < math.atan(mu) < trial.slide_ci[1]


@pytest.mark.parametrize("near", [0.2, 0.9])
def test_an_expected_tip_does_not_move_where_it_slides(near):
    trial = tilt_trial(LOW, SIDE, grip=0.6, near=near)
    assert trial.slide_ci[0] < math.atan(0.6) < trial.slide_ci[1]


@pytest.mark.parametrize(("name", "heading"), [("bramble", 90.0), ("burdock", 45.0)])
def test_a_soft_truck_creeps_before_it_slides(name, heading):
    trial = tilt_trial(load_truck(name).truck, math.radians(heading), grip=0.5)
    assert trial.slide_ci[0] < math.atan(0.5) < trial.slide_ci[1]
    before = trial.record.theta < trial.slide - math.radians(0.5)
    assert trial.record.slip[before].max() > 5e-4


@pytest.mark.parametrize(
    ("name", "heading", "grip"), [("bramble", 65.0, 0.6), ("thistle", 90.0, 0.9)]
)
def test_a_truck_that_slides_is_soon_faster_or_at_rest(name, heading, grip):
    """With its drag it crept for eight seconds, above the angle of friction and just below it."""
    trial = tilt_trial(load_truck(name).truck, math.radians(heading), grip=grip)
    went = [s for s in trial.log.stretches if s.kind == "hold" and s.fate == "slides"]
    times = [np.ptp(trial.log.samples.time[s.first : s.last]) for s in went]
    assert times
    assert max(times) < 5.0


def test_grip_must_be_above_zero():
    with pytest.raises(ValueError, match="grip"):
        tilt_trial(LOW, 0.0, grip=0.0)


def test_grip_decides_whether_it_slides_or_tips():
    truck = make_truck()
    tip = tilt_trial(truck, SIDE, grip=5.0).tip
    for share, outcome in ((0.95, "slides"), (1.05, "tips")):
        assert tilt_trial(truck, SIDE, grip=share * math.tan(tip)).outcome == outcome


@pytest.mark.parametrize("heading", [0.0, 90.0])
def test_the_rail_lets_it_tip_without_holding_it_up(heading):
    truck = make_truck()
    free = tilt_trial(truck, math.radians(heading), grip=5.0)
    railed = tilt_trial(truck, math.radians(heading), grip=0.5, rail=True)
    assert railed.outcome == "tips"
    # Uphill tyres bear too little at the end to matter much, whether they slip or not.
    assert railed.tip == pytest.approx(free.tip, abs=math.radians(0.15))
    down = downhill_pair(truck, math.radians(heading))
    assert railed.record.slip[:, list(down)].max() < 1e-4  # a rail's own give, nothing in Bullet
    assert railed.record.slip.max() > 5e-4


@pytest.mark.parametrize(
    ("heading", "pair"), [(0, (2, 3)), (80, (0, 2)), (180, (0, 1)), (280, (1, 3))]
)
def test_the_rail_is_on_the_downhill_side(heading, pair):
    assert downhill_pair(make_truck(), math.radians(heading)) == pair


def test_a_truck_that_never_goes_over_stands():
    trial = tilt_trial(make_truck(), SIDE, grip=5.0, pace=replace(Pace(), limit=math.radians(30.0)))
    assert trial.outcome == "stands"
    assert math.isnan(trial.tip)
    assert math.isnan(trial.slide)
    assert trial.record.theta[-1] == pytest.approx(math.radians(30.0), abs=0.01)


def test_records_can_be_kept_and_read(tmp_path):
    truck = make_truck(chassis_cg=(-0.01, 0.005, 0.11))
    trial = tilt_trial(truck, SIDE, grip=0.9)
    path = tmp_path / "trial.npz"
    trial.record.save(path)
    back = load_record(path)
    assert back.joint_names == trial.record.joint_names
    for name in ("time", "theta", "loads", "chassis", "joints", "give", "slip"):
        np.testing.assert_array_equal(getattr(back, name), getattr(trial.record, name))
    assert [p.name for p in tmp_path.iterdir()] == ["trial.npz"]


def test_records_are_in_real_size_and_time():
    truck = make_truck()
    record = tilt_trial(truck, SIDE, grip=0.9).record
    n = len(record)
    assert record.loads.shape == record.slip.shape == (n, 4)
    assert record.chassis.shape == (n, 7)
    assert record.give.shape == (n, 4, 3)
    assert record.joints.shape == (n, len(record.joint_names))
    np.testing.assert_allclose(np.linalg.norm(record.chassis[:, 3:], axis=1), 1.0, atol=1e-9)
    weight = 9.80665 * (1.9 + 2 * 0.25 + 4 * 0.13)
    early = record.theta < math.radians(15)
    normal = record.loads[early].sum(axis=1) / np.cos(record.theta[early])
    np.testing.assert_allclose(normal, weight, rtol=0.15)  # a hurried table shakes its truck
    assert np.abs(record.chassis[0, :3]).max() < 1e-4
    assert np.all(np.diff(record.time) > 0)
    assert record.time[-1] < 20.0
