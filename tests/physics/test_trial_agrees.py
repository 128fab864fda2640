"""The virtual trial against the statics in the same conditions: they share only the truck.

All demo trucks and forty random builds are in benchmarks/bench_agreement.py.
"""

from __future__ import annotations

import numpy as np
import pytest
from trial_trucks import VARIED

from crossfall.answers.tips import tip_angles
from crossfall.trials.tilt import tilt_trials

HEADINGS = np.radians([0.0, 45.0, 90.0, 150.0])
BAR = 0.3  # deg, where neither sees a snap within a degree


@pytest.mark.parametrize("grip", [0.9, 1.5])
def test_trial_and_statics_agree_whatever_comes_first(grip: float) -> None:
    found = tip_angles(list(VARIED.values()), HEADINGS, grip)
    apart = []
    for i, truck in enumerate(VARIED.values()):
        trials = tilt_trials(truck, HEADINGS, near=found.free[i], grip=grip)
        for j, trial in enumerate(trials):
            seen = trial.tip if trial.outcome == "tips" else trial.slide
            snap = np.degrees(np.array([found.goes[i, j], seen]) - found.first_snap[i, j])
            if not (np.abs(snap) < 1.0).any():
                apart.append(abs(np.degrees(seen - found.goes[i, j])))
    assert len(apart) > 24
    assert max(apart) <= BAR
    assert np.median(apart) <= 0.08
