"""Trials of trucks on links and shocks, in either engine, against the statics: in Bullet joints are
straight and forces make up for it, in MuJoCo the links are lengths held."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.statics.compliant import tips
from crossfall.trials.tilt import tilt_trials
from linked_files import linked, on_whole_shocks
from support import INSTALLED

ON_LINKS = {
    ("bramble", "springs"): (0.0, 45.0, 180.0),
    ("thistle", "springs"): (90.0,),
    ("burdock", "springs"): (135.0,),
    ("bramble", "shocks"): (0.0, 90.0),
    ("burdock", "shocks"): (90.0, 270.0),  # jump to their droop stops on the way
    ("bramble", "two springs a shock"): (0.0, 150.0),
}
CASES = [
    (*case, headings, engine) for case, headings in ON_LINKS.items() for engine in INSTALLED
] + [("bramble", "shocks", (270.0,), e) for e in INSTALLED if e == "bullet"]
NEAR = np.radians(0.1)  # what the two agree to on the demo trucks without links, too


@pytest.mark.parametrize(("name", "on", "at", "engine"), CASES)
def test_a_trial_on_links_tips_where_the_statics_does(name, on, at, engine) -> None:
    loaded = on_whole_shocks(name) if "two" in on else linked(name, shocks=on == "shocks")
    truck, headings = loaded.truck, np.radians(at)
    wanted = tips(truck, headings, 5.0).tip
    seen = tilt_trials(truck, headings.tolist(), grip=5.0, engine=engine)
    for trial, tip in zip(seen, wanted, strict=True):
        low, high = trial.tip_ci
        assert low - NEAR < tip < high + NEAR
