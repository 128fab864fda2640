"""The virtual trial against the compliant statics: two routes that share only the truck."""

from __future__ import annotations

import math

import numpy as np
import pytest
from trial_trucks import VARIED

from crossfall.statics.compliant import tips
from crossfall.trials.tilt import tilt_trials
from crossfall.truck.build import load_truck
from support import make_truck

SQUARE = np.radians([0.0, 90.0, 180.0])
DIAGONAL = np.radians([45.0, 135.0])
EIGHT = np.radians(np.arange(0.0, 360.0, 45.0))
CLOSE = math.radians(0.03)  # friction does not decide where both closures agree this well


@pytest.fixture(scope="module")
def square():
    """Trial less uniform closure (rad) and width of the window, per truck and square heading."""
    out = {}
    for name, truck in VARIED.items():
        found = [tips(truck, SQUARE, closure).tip for closure in ("uniform", "sticking")]
        trials = tilt_trials(truck, SQUARE, grip=5.0, near=found[0])
        out[name] = [
            (t, min(pair), max(pair)) for t, pair in zip(trials, np.transpose(found), strict=True)
        ]
    return out


def test_trial_agrees_where_friction_does_not_decide(square):
    apart = {
        (name, i): abs(trial.tip - low)
        for name, cases in square.items()
        for i, (trial, low, high) in enumerate(cases)
        if high - low <= CLOSE
    }
    assert len({name for name, _ in apart}) >= 6
    assert len(apart) >= 14
    assert math.degrees(max(apart.values())) <= 0.12
    assert math.degrees(float(np.median(list(apart.values())))) <= 0.05


def test_trial_lies_in_the_window_where_friction_decides(square):
    for name, cases in square.items():
        for trial, low, high in cases:
            slack = math.radians(0.06)
            assert low - slack <= trial.tip <= high + slack, name


def test_event_and_fit_tell_the_same_story(square):
    fits = [(t.event, t.fit) for cases in square.values() for t, *_ in cases]
    assert all(fit is not None for _, fit in fits)
    apart = np.degrees([abs(fit.value - event) for event, fit in fits])
    assert np.median(apart) <= 0.1
    assert (
        sum(t.tip_ci[0] <= t.event <= t.tip_ci[1] for cs in square.values() for t, *_ in cs) == 24
    )


def in_the_window(truck, headings, slack_deg, near=False):
    """The trials, each held against the window of both closures, give or take slack_deg."""
    ends = [tips(truck, headings, closure).tip for closure in ("uniform", "sticking")]
    trials = tilt_trials(truck, headings, grip=5.0, near=ends[0] if near else None)
    slack = math.radians(slack_deg)
    for trial, pair in zip(trials, np.transpose(ends), strict=True):
        assert min(pair) - slack <= trial.tip <= max(pair) + slack
    return trials


@pytest.mark.parametrize("name", VARIED)
def test_diagonals_lie_in_the_friction_window(name):
    for trial in in_the_window(VARIED[name], DIAGONAL, 0.3):
        assert trial.first_lift <= trial.tip


@pytest.mark.parametrize("name", ["bramble", "thistle", "burdock"])
def test_all_round_a_demo_truck_tips_in_its_window(name):
    in_the_window(load_truck(name).truck, EIGHT, 0.2, near=True)


def test_soft_trucks_do_not_fall_where_their_springs_let_them_jump():
    """Momentum may carry a truck over that would stand: each angle is come to from rest."""
    rng = np.random.default_rng(3)
    headings = np.radians([30.0, 150.0])
    for _ in range(4):
        truck = make_truck(
            chassis_mass=rng.uniform(1.3, 2.5),
            chassis_cg=(
                rng.uniform(-0.03, 0.03),
                rng.uniform(-0.01, 0.01),
                rng.uniform(0.08, 0.12),
            ),
            spring_rate=rng.uniform(100.0, 400.0),
            droop=rng.uniform(0.005, 0.03),
        )
        in_the_window(truck, headings, 0.3, near=True)


def test_first_snap_is_not_the_tip():
    # Springs that go slack before the wheels lift: the body snaps up and stands again.
    truck = make_truck(chassis_cg=(-0.01, 0.0, 0.12), spring_rate=500.0, droop=0.03, damping=4.0)
    climb = np.array([0.0])
    found = tips(truck, climb)
    assert found.snaps[0] >= 1
    assert found.first_snap[0] < found.tip[0] - math.radians(3.0)
    for trial in (
        *tilt_trials(truck, climb, grip=5.0),
        *tilt_trials(truck, climb, grip=5.0, near=found.first_snap),
    ):
        assert trial.outcome == "tips"
        assert trial.tip == pytest.approx(found.tip[0], abs=math.radians(0.12))
