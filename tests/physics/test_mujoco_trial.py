"""A third opinion: MuJoCo's own springs, tendons, stops and contacts."""

from __future__ import annotations

import math

import mujoco_truck
import numpy as np
import pytest
from trial_trucks import VARIED

from crossfall.statics.compliant import tips
from crossfall.trials.tilt import tilt_trial
from crossfall.truck.ride import tyre_loads

CASES = [
    ("plain", 0.0),
    ("soft springs", 180.0),
    ("droop limited", 90.0),
    ("anti-squat", 0.0),
    ("soft tyres", 180.0),
    ("offset CG", 180.0),
    ("stiff springs", 90.0),
]


@pytest.mark.parametrize("name", VARIED)
def test_it_stands_at_ride_height_there_too(name):
    bench = mujoco_truck.Bench(VARIED[name], 0.0)
    assert bench.stands(0.0, 0.5)
    np.testing.assert_allclose(bench.loads(), tyre_loads(VARIED[name]), rtol=0.01)
    np.testing.assert_allclose(bench.data.qpos[:3], 0.0, atol=1e-4)


@pytest.mark.parametrize(("name", "heading"), CASES)
def test_three_methods_agree_where_friction_does_not_decide(name, heading):
    truck, psi = VARIED[name], math.radians(heading)
    trial = tilt_trial(truck, psi).tip
    statics = float(tips(truck, np.array([psi])).tip[0])
    other = mujoco_truck.tip(truck, psi, trial - math.radians(1.0))
    bar = math.radians(0.15)
    assert other == pytest.approx(trial, abs=bar)
    assert other == pytest.approx(statics, abs=bar)


DIAGONALS = [
    ("plain", 15.0),
    ("plain", 30.0),
    ("plain", 135.0),
    ("soft tyres", 30.0),
    ("soft tyres", 135.0),
    ("stiff springs", 15.0),
]


@pytest.mark.parametrize(("name", "heading"), DIAGONALS)
def test_tyres_that_hold_tip_alike_on_diagonals(name, heading):
    """The sticking closure, our trial and the other engine, all with a friction coefficient of 5.

    Up to two degrees above the uniform closure, the other end of the window."""
    truck, psi = VARIED[name], np.radians([heading])
    held, free = (tips(truck, psi, closure) for closure in ("sticking", "uniform"))
    start = np.nanmin([held.first_lift[0], free.first_lift[0], held.tip[0]]) - math.radians(2.0)
    other = mujoco_truck.tip(truck, float(psi[0]), float(start))
    bar = math.radians(0.3)
    assert other == pytest.approx(float(held.tip[0]), abs=bar)
    assert other == pytest.approx(tilt_trial(truck, float(psi[0])).tip, abs=bar)
