"""Trials of trucks on links and shocks, in either engine, against the statics: in Bullet joints are
straight and forces make up for it, in MuJoCo the links are lengths held."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.statics.compliant import tips
from crossfall.trials.tilt import tilt_trials
from linked_files import linked
from support import INSTALLED

CASES = {
    ("bramble", False): (0.0, 45.0, 180.0),
    ("thistle", False): (90.0,),
    ("burdock", False): (135.0,),
    ("bramble", True): (45.0, 90.0),
}  # on shocks or not
NEAR = np.radians(0.1)  # what the two agree to on the demo trucks without links, too


@pytest.mark.parametrize("engine", INSTALLED)
@pytest.mark.parametrize(("name", "shocks"), CASES)
def test_a_trial_on_links_tips_where_the_statics_does(name, shocks, engine) -> None:
    truck, headings = linked(name, shocks=shocks).truck, np.radians(CASES[name, shocks])
    wanted = tips(truck, headings, 5.0).tip
    seen = tilt_trials(truck, headings.tolist(), grip=5.0, near=wanted.tolist(), engine=engine)
    for trial, tip in zip(seen, wanted, strict=True):
        low, high = trial.tip_ci
        assert low - NEAR < tip < high + NEAR
