"""The weakest heading found by search, against a scan all round in steps of a degree."""

from __future__ import annotations

import numpy as np
import pytest

from crossfall.answers import tips
from support import make_truck

SCAN = np.radians(np.arange(0.0, 360.0, 1.0))
BUILDS = 30


def build(seed):
    """A truck that is lopsided, with unlike axles and springs that may go slack."""
    u = np.random.default_rng((7, seed)).uniform
    return make_truck(
        tracks=(u(0.15, 0.2), u(0.15, 0.2)),
        chassis_mass=u(1.3, 2.5),
        chassis_cg=(u(-0.03, 0.03), u(-0.01, 0.01), u(0.08, 0.12)),
        tyre_stiffness=u(3000, 15000),
        spring_rate=u(200, 1500),
        bump=u(0.01, 0.02),
        droop=u(0.005, 0.03),
        anti_roll=u(0, 1),
        heave_lean=(u(-0.2, 0.2), u(-0.2, 0.2)),
    )


@pytest.mark.parametrize("grip", [0.9, "just enough not to slide"])
def test_no_heading_of_a_scan_is_weaker_than_the_weakest(grip):
    trucks = [build(seed) for seed in range(BUILDS)]
    if isinstance(grip, str):  # the slide begins a degree above the least tip there is
        mu = np.tan(tips.weakest(trucks, 5.0)[1] + np.radians(1.0))
    else:
        mu = np.full(BUILDS, grip)
    _, found = tips.weakest(trucks, mu)
    scanned = tips.tip_angles(trucks, SCAN, mu).free.min(axis=1)
    assert np.degrees(found - scanned).max() <= 0.05
