"""The virtual trial against the compliant statics: two routes that share only the truck."""

from __future__ import annotations

import math

import numpy as np
import pytest
from trial_trucks import VARIED

from crossfall.statics.compliant import tips
from crossfall.trials.tilt import LEFT, QUICK, tilt_trials
from crossfall.trials.world import QUICK_SETTINGS
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
        trials = tilt_trials(truck, SQUARE, near=found[0])
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
    trials = tilt_trials(truck, headings, near=ends[0] if near else None)
    slack = math.radians(slack_deg)
    for trial, pair in zip(trials, np.transpose(ends), strict=True):
        assert min(pair) - slack <= trial.tip <= max(pair) + slack
    return trials


def test_a_truck_may_lose_its_balance_with_load_left():
    """On a diagonal it goes over before the load on its uphill tyres is gone, and says so."""
    truck = VARIED["droop limited"]
    diagonal, square = tilt_trials(truck, np.radians([45.0, 90.0]))
    assert diagonal.load_left > LEFT > square.load_left > 0.0
    assert diagonal.fit is not None
    assert diagonal.fit.value > diagonal.tip_ci[1]
    assert diagonal.tip_ci[1] - diagonal.tip_ci[0] < math.radians(0.4)


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
    for trial in (*tilt_trials(truck, climb), *tilt_trials(truck, climb, near=found.first_snap)):
        assert trial.outcome == "tips"
        assert trial.tip == pytest.approx(found.tip[0], abs=math.radians(0.12))


@pytest.mark.parametrize("name", ["plain", "wide contact"])
def test_quick_pace_is_within_about_a_tenth_of_a_degree(square, name):
    near = tips(VARIED[name], SQUARE).tip
    quick = tilt_trials(VARIED[name], SQUARE, near=near, pace=QUICK, settings=QUICK_SETTINGS)
    for (careful, *_), trial in zip(square[name], quick, strict=True):
        # Half of both brackets, 0.07 deg, and the floor of either.
        assert trial.tip == pytest.approx(careful.tip, abs=math.radians(0.12))


def test_a_late_start_is_thrown_away():
    truck = VARIED["plain"]
    fair, late = (tilt_trials(truck, [0.0], near=[math.radians(n)])[0] for n in (56.0, 66.0))
    assert late.tip == pytest.approx(fair.tip, abs=math.radians(0.06))
    assert late.record.theta[-1] > late.tip > late.record.theta[0]


def test_both_sides_of_a_symmetric_truck_agree():
    left, right = tilt_trials(VARIED["plain"], [math.pi / 2], both_sides=True)
    assert right.heading == pytest.approx(3 * math.pi / 2)
    assert right.tip == pytest.approx(left.tip, abs=math.radians(0.06))
    assert (left.over, right.over) == ((0, 2), (1, 3))


def test_the_same_trial_twice_is_the_same_to_the_last_digit():
    one, two = (tilt_trials(VARIED["plain"], [0.3], pace=QUICK)[0] for _ in range(2))
    assert one.tip == two.tip
    np.testing.assert_array_equal(one.record.loads, two.record.loads)
    np.testing.assert_array_equal(one.record.chassis, two.record.chassis)
