"""The virtual trial against closed forms: trucks that hardly give, or on their tyres alone."""

from __future__ import annotations

import math

import numpy as np
import pytest
from scipy.optimize import brentq

from crossfall.trials.outcome import LEFT
from crossfall.trials.tilt import tilt_trial, tilt_trials
from crossfall.truck.massprops import whole
from crossfall.truck.model import GRAVITY
from support import make_truck, with_suspension, with_tyres

HEADINGS = np.radians([0.0, 60.0, 90.0, 200.0, 315.0])
TRUCKS = {
    "plain": make_truck(),
    "uneven": make_truck(tracks=(0.160, 0.190), chassis_cg=(0.02, 0.006, 0.09)),
    "long and wide": make_truck(
        wheelbase=0.330,
        tracks=(0.200, 0.180),
        chassis_cg=(-0.03, -0.01, 0.12),
        contact_half_width=0.010,
    ),
}


def rigid_tip(truck, heading):
    """tan(theta) = a / (h n.d), least over the edges of the support polygon; own derivation."""
    half = [a.track / 2 + a.tyre.contact_half_width for a in truck.axles]
    corners = np.array(
        [[truck.front.x, half[0]], [truck.rear.x, half[1]], [truck.rear.x, -half[1]],
         [truck.front.x, -half[0]]]
    )  # fmt: skip
    cg = whole(truck).cg
    downhill, tangents = np.array([-math.cos(heading), math.sin(heading)]), []
    for a, b in zip(corners, np.roll(corners, -1, axis=0), strict=True):
        along = (b - a) / np.linalg.norm(b - a)
        normal = np.array([-along[1], along[0]])
        normal = normal if (a - cg[:2]) @ normal > 0 else -normal
        if normal @ downhill > 1e-9:
            tangents.append((a - cg[:2]) @ normal / (cg[2] * (normal @ downhill)))
    return math.atan(min(tangents))


def stiff(truck, rate):
    """On locked suspension, and tyres that give `rate` (N/m) any way."""
    tyres = with_tyres(truck, stiffness=rate, lateral=rate, longitudinal=rate)
    return with_suspension(tyres, locked=True)


@pytest.mark.parametrize("name", TRUCKS)
def test_a_truck_that_hardly_gives_tips_where_the_closed_form_says(name):
    truck = stiff(TRUCKS[name], 1e6)
    trials = tilt_trials(truck, HEADINGS, grip=5.0)
    want = [rigid_tip(truck, h) for h in HEADINGS]
    assert [t.outcome for t in trials] == ["tips"] * 5
    # What still gives: 30 N on 1e6 N/m turn it by 0.01 deg, and between a wheel's two discs 0.06.
    given = math.radians(0.06 if truck.front.tyre.contact_half_width else 0.01)
    fitted = [t for t in trials if t.fit is not None]
    assert len(fitted) >= 4 or truck.front.tyre.contact_half_width
    for trial, angle in zip(trials, want, strict=True):
        assert trial.tip_ci[0] - given <= angle <= trial.tip_ci[1] + given
        if not truck.front.tyre.contact_half_width:
            assert trial.load_left < LEFT
        if not truck.front.tyre.contact_half_width and trial.fit is not None:
            assert trial.fit.value == pytest.approx(angle, abs=math.radians(0.1))


def test_the_wheels_it_tips_over_are_those_downhill():
    truck = stiff(make_truck(), 2e5)
    over = [t.over for t in tilt_trials(truck, np.radians([0.0, 90.0, 180.0, 270.0]), grip=5.0)]
    assert over == [(2, 3), (0, 2), (0, 1), (1, 3)]


def locked_tip(truck):
    """Side slope, locked suspension, nothing off the middle, wheels without mass; own derivation.

    In axes of the body, which the slope pulls at an angle a, the downhill patches lie W sin(a) / 2
    k_y inside of their rims and (W cos(a) - W / 2) / 2 k_z higher than at ride height. It tips when
    the CG stands over them, its uphill wheels then just hanging, W / 4 k_z down. The table is less
    steep than a by the slope of the line from wheel to wheel.
    """
    weight, height = whole(truck).mass * GRAVITY, whole(truck).cg[2]
    track, tyre = truck.front.track, truck.front.tyre

    def patch(a):
        inside = weight * math.sin(a) / (2 * tyre.lateral)
        up = (weight * math.cos(a) - weight / 2) / (2 * tyre.stiffness)
        return track / 2 - inside, up

    def balance(a):
        arm, up = patch(a)
        return math.cos(a) * arm - math.sin(a) * (height - up)

    a = brentq(balance, 0.1, 1.4)
    arm, up = patch(a)
    return a - math.atan((up + weight / (4 * tyre.stiffness)) / (arm + track / 2))


@pytest.mark.parametrize(
    ("vertical", "lateral"), [(6e3, 6e3), (6e3, 2.5e3), (2e4, 8e3), (2e4, 1e6)]
)
def test_tyres_that_give_cost_what_the_closed_form_says(vertical, lateral):
    truck = make_truck(chassis_cg=(0.0, 0.0, 0.11), wheel_mass=0.002)
    truck = with_tyres(truck, stiffness=vertical, lateral=lateral, longitudinal=lateral)
    truck = with_suspension(truck, locked=True)
    trial = tilt_trial(truck, math.pi / 2, grip=5.0)
    assert trial.tip_ci[0] < locked_tip(truck) < trial.tip_ci[1]
    # And the springs along the ground are most of it: without them it is far off.
    hard = with_tyres(truck, lateral=math.inf, longitudinal=math.inf)
    if lateral < 1e4:
        assert locked_tip(hard) - trial.tip > math.radians(0.3)


def test_in_mujoco_too_a_truck_that_hardly_gives_has_a_narrow_interval():
    """With friction ten times softer than now it was a degree wide."""
    truck = stiff(TRUCKS["plain"], 1e6)
    for trial in tilt_trials(truck, HEADINGS[:2], grip=5.0, engine="mujoco"):
        assert trial.terms.half < math.radians(0.1)
