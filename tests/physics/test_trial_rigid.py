"""The virtual trial against the rigid closed form: nothing gives, so nothing may differ."""

from __future__ import annotations

import math

import numpy as np
import pytest

from crossfall.trials.tilt import QUICK, tilt_trials
from crossfall.truck.massprops import whole
from support import make_truck, with_suspension, with_tyres

HEADINGS = np.radians(np.arange(0.0, 360.0, 45.0))
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


@pytest.mark.parametrize("name", TRUCKS)
def test_rigid_truck_tips_where_the_closed_form_says(name):
    truck = with_suspension(with_tyres(TRUCKS[name], stiffness=math.inf), locked=True)
    trials = tilt_trials(truck, HEADINGS)
    want = [rigid_tip(truck, h) for h in HEADINGS]
    assert [t.outcome for t in trials] == ["tips"] * 8
    worst = max(abs(t.tip - w) for t, w in zip(trials, want, strict=True))
    assert math.degrees(worst) <= 0.05
    fits = [abs(t.fit.value - w) for t, w in zip(trials, want, strict=True) if t.fit]
    assert len(fits) == 8
    assert math.degrees(max(fits)) <= 0.1
    covered = [t.tip_ci[0] <= w <= t.tip_ci[1] for t, w in zip(trials, want, strict=True)]
    assert all(covered)


def test_locked_suspension_on_stiff_tyres_is_nearly_rigid():
    truck = with_suspension(make_truck(tyre_stiffness=100_000.0), locked=True)
    trials = tilt_trials(truck, HEADINGS[::2], pace=QUICK)
    for trial, heading in zip(trials, HEADINGS[::2], strict=True):
        assert trial.tip == pytest.approx(rigid_tip(truck, heading), abs=math.radians(0.15))


def test_the_wheels_it_tips_over_are_those_downhill():
    truck = with_suspension(with_tyres(make_truck(), stiffness=math.inf), locked=True)
    over = [t.over for t in tilt_trials(truck, HEADINGS[::2], pace=QUICK)]
    assert over == [(2, 3), (0, 2), (0, 1), (1, 3)]
