"""What a tilt trial says of itself: intervals, starts, sides, repeats; and how tyres change it."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from trial_trucks import VARIED

from crossfall.engines.settings import TrialSettings
from crossfall.trials.outcome import LEFT
from crossfall.trials.pace import Pace
from crossfall.trials.tilt import tilt_trial, tilt_trials
from crossfall.truck.model import WHEELS
from numbered_files import numbered
from support import make_truck, with_tyres

SIDE = math.pi / 2


def of_hard(ratio, truck):
    """The truck with that share of its tyres' vertical stiffness along the ground."""
    rates = [ratio * axle.tyre.stiffness for axle in truck.axles]
    front, rear = (
        replace(axle, tyre=replace(axle.tyre, lateral=rate, longitudinal=rate))
        for axle, rate in zip(truck.axles, rates, strict=True)
    )
    return replace(truck, front=front, rear=rear)


FINER = (
    replace(
        Pace(),
        approach=math.radians(5.0),
        brisk=math.radians(1.5),
        slow=math.radians(0.5),
        steady=math.radians(0.25),
        bracket=math.radians(0.01),
        stride=math.radians(0.25),
        gently=0.4,
        still=2e-6,
    ),
    TrialSettings(step=1 / 960, turn_per_step=0.45),
)


@pytest.mark.parametrize(
    ("name", "heading", "grip"),
    [
        ("plain", 0.0, 5.0),
        ("soft springs", 45.0, 5.0),
        ("droop limited", 150.0, 5.0),
        ("anti-squat", 90.0, 1.0),
        ("wide contact", 90.0, 1.0),
        ("offset CG", 45.0, 1.2),
    ],
)
def test_the_interval_holds_what_finer_settings_say(name, heading, grip):
    """A quarter of the rates and of the step, and a fifth of the stillness that counts as rest."""
    pace, settings = FINER
    trial = tilt_trial(VARIED[name], math.radians(heading), grip=grip)
    finer = tilt_trial(VARIED[name], math.radians(heading), grip=grip, pace=pace, settings=settings)
    assert trial.outcome == finer.outcome == "tips"
    assert trial.tip_ci[0] < finer.tip < trial.tip_ci[1]
    assert trial.terms.half < math.radians(0.1)


def test_where_the_way_it_came_decides_the_interval_says_so():
    """A light tyre that slips lets this one jump by half a degree; whether it stands again hangs on
    the way it came, and the trial sees that when it comes again, in one go or in other strides."""
    trial = tilt_trial(of_hard(0.5, VARIED["soft tyres"]), math.radians(120.0), grip=5.0)
    pace, settings = FINER
    truck = of_hard(0.5, VARIED["soft tyres"])
    finer = tilt_trial(truck, math.radians(120.0), grip=5.0, pace=pace, settings=settings)
    low, high = trial.tip_ci
    assert high - low > 6 * trial.terms.rest
    assert low < finer.tip < high


@pytest.mark.parametrize("name", ["bramble", "thistle"])
@pytest.mark.parametrize("heading", [0.0, 45.0, 90.0])
def test_softer_tyres_along_the_ground_tip_earlier(name, heading):
    trucks = [of_hard(ratio, numbered(name).truck) for ratio in (0.5, 1.0, 30.0)]
    trials = [tilt_trial(truck, math.radians(heading), grip=5.0) for truck in trucks]
    for soft, hard in pairwise(trials):
        assert soft.tip_ci[1] < hard.tip
    # Not only the downhill pair's give: on a diagonal it lets tyres leave the table early.
    gained = trials[-1].tip_ci[1] - trials[0].tip_ci[0]
    assert gained > math.radians(3.0 if heading == 45.0 else 0.5)


def test_wheels_give_against_the_slope_and_rims_hang_over_their_patches():
    trial = tilt_trial(make_truck(), SIDE, grip=0.9)
    steep = int(np.searchsorted(trial.record.theta, math.radians(30.0)))
    give = trial.record.give[steep]
    downhill, uphill = ([WHEELS.index(f"{end} {side}") for end in ("front", "rear")]
                        for side in ("left", "right"))  # fmt: skip
    assert (give[downhill, 2] > 0.0).all()
    assert (give[uphill, 2] < 0.0).all()
    assert (give[:, 1] < 0.0).all()  # the patches are left behind, uphill, to the right
    weight = trial.record.loads[steep].sum() / math.cos(trial.record.theta[steep])
    lateral = -give[:, 1].sum() * make_truck().front.tyre.lateral
    assert lateral == pytest.approx(weight * math.sin(trial.record.theta[steep]), rel=0.25)


def test_a_truck_may_lose_its_balance_with_load_left():
    """On a diagonal it goes over before the load on its uphill tyres is gone, and says so."""
    headings = np.radians([45.0, 0.0, 180.0])
    diagonal, *square = tilt_trials(VARIED["soft springs"], headings, grip=5.0)
    assert diagonal.load_left > 10 * LEFT
    assert LEFT > square[-1].load_left > 0.0
    fitted = [one for one in square if one.fit is not None]  # as many as have angles enough for it
    assert fitted
    for one in fitted:
        assert one.fit.value == pytest.approx(one.tip, abs=math.radians(0.05))
    if diagonal.fit is not None:  # as if the load had run out
        assert diagonal.fit.value > diagonal.tip_ci[1]


@pytest.mark.parametrize("name", VARIED)
def test_a_wheel_lifts_before_the_truck_tips(name):
    for trial in tilt_trials(VARIED[name], np.radians([0.0, 30.0, 135.0]), grip=5.0):
        assert 0.0 < trial.first_lift <= trial.tip
        assert np.isnan(trial.lift).sum() == 2
        assert np.nanmin(trial.lift) == trial.first_lift
        assert trial.event_bracket[0] < trial.event < trial.event_bracket[1]
        assert trial.event_bracket[0] <= trial.tip <= trial.event_bracket[1]


def test_a_jump_is_not_the_tip():
    """Springs that go slack before the wheels lift: the body snaps up and stands again."""
    truck = make_truck(chassis_cg=(-0.01, 0.0, 0.12), spring_rate=500.0, droop=0.03, damping=4.0)
    unhurried = tilt_trial(truck, 0.0, grip=5.0)
    from_the_jump = tilt_trial(truck, 0.0, grip=5.0, near=math.radians(46.0))
    for trial in (unhurried, from_the_jump):
        theta, height = trial.record.theta, trial.record.chassis[:, 2]
        assert height[theta < math.radians(42.0)].max() < 0.0035
        assert height[theta < trial.tip - math.radians(1.0)].max() > 0.012
        assert trial.outcome == "tips"
    assert from_the_jump.tip == pytest.approx(unhurried.tip, abs=math.radians(0.07))


def test_a_late_start_is_thrown_away():
    truck = VARIED["plain"]
    fair, late = (
        tilt_trials(truck, [0.0], grip=5.0, near=[math.radians(n)])[0] for n in (55.0, 65.0)
    )
    assert late.tip == pytest.approx(fair.tip, abs=math.radians(0.07))
    assert late.record.theta[-1] > late.tip > late.record.theta[0]


def test_both_sides_of_a_symmetric_truck_agree():
    left, right = tilt_trials(VARIED["plain"], [SIDE], grip=5.0, both_sides=True)
    assert right.heading == pytest.approx(3 * SIDE)
    assert right.tip == pytest.approx(left.tip, abs=math.radians(0.07))
    assert (left.over, right.over) == ((0, 2), (1, 3))


def test_the_same_trial_twice_is_the_same_to_the_last_digit():
    one, two = (tilt_trials(VARIED["plain"], [0.3], grip=0.9)[0] for _ in range(2))
    assert one.slide == two.slide
    np.testing.assert_array_equal(one.record.loads, two.record.loads)
    np.testing.assert_array_equal(one.record.chassis, two.record.chassis)


def test_a_tyre_that_does_not_give_is_refused():
    from crossfall.truck.errors import InputError

    with pytest.raises(InputError, match="does not give"):
        tilt_trial(with_tyres(make_truck(), stiffness=math.inf), SIDE, grip=5.0)
